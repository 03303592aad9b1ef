#include "tests/support/pictures.h"
#include "tests/support/sample_reckoning.h"
#include "ui/common/seams.h"
#include "ui/common/theme.h"
#include "ui/portrait/portrait.h"
#include "ui/window/main_window.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QFile>
#include <QTemporaryDir>

namespace tierloam::portrait {

namespace {

class PortraitTest : public testing::Test {
protected:
    void TearDown() override
    {
        qApp->setStyleSheet({});
        QApplication::setFont(font_);
    }

    /// Draws the file (made when it is not there) as a fresh program would, and returns the pages.
    QMap<QString, QImage> draw(const QString& household, ui::ThemeMode mode, int scale, QSize size, const QString& folder)
    {
        ui::Theme theme;
        theme.setMode(mode);
        theme.setFontScale(scale);
        theme.apply();
        ui::SystemDialogs dialogs;
        const auto settings = ui::passingSettings();
        household::Household::Settings how;
        how.reckon = [this](const journal::Entries& entries, const reckoning::Options& options, std::stop_token) {
            ++reckonings_;
            if (!entries.empty()) return tests::sampleReckoning();
            auto none = std::make_shared<reckoning::Reckoning>();
            none->asOf = options.asOf;
            return std::shared_ptr<const reckoning::Reckoning>{none};
        };
        window::MainWindow window{{std::make_shared<household::FixedClock>(tests::sampleToday()), theme, dialogs, *settings, how, QStringLiteral("1"), false}};
        const bool there = QFile::exists(household);
        EXPECT_TRUE(there ? window.openFile(household) : window.createFile(household));
        if (!there && fill_) {
            journal::Entries entries = tests::sampleJournal();
            for (journal::Entry& entry : entries) entry.id = journal::EntryId::none;
            window.household()->recordAll(entries, QStringLiteral("sample"));
            window.household()->finishWrites();
        }
        const auto why = drawPortraits(window, folder, size);
        EXPECT_FALSE(why.has_value()) << why->toStdString();
        QMap<QString, QImage> pages;
        for (const char* page : {"shelf", "trends", "journal", "materials", "handbook", "rotation"}) {
            const QImage image{folder + u'/' + QString::fromLatin1(page) + QStringLiteral(".png")};
            EXPECT_EQ(image.size(), size) << page;
            pages[QString::fromLatin1(page)] = image;
        }
        return pages;
    }

    QTemporaryDir folder_;
    std::atomic<int> reckonings_{0};
    bool fill_ = true;

private:
    QFont font_ = QApplication::font();
};

int coloursIn(const QImage& image)
{
    QSet<QRgb> colours;
    for (int y = 0; y < image.height(); y += 3)
        for (int x = 0; x < image.width(); x += 3) colours.insert(image.pixel(x, y));
    return static_cast<int>(colours.size());
}

}

TEST_F(PortraitTest, EachPageIsDrawnWithTheEstimatesAndTheSameEachTime)
{
    const QString file = folder_.filePath(QStringLiteral("mill.tierloam"));
    draw(file, ui::ThemeMode::light, 100, {1440, 900}, folder_.filePath(QStringLiteral("first")));
    const auto once = draw(file, ui::ThemeMode::light, 100, {1440, 900}, folder_.filePath(QStringLiteral("once")));
    const auto again = draw(file, ui::ThemeMode::light, 100, {1440, 900}, folder_.filePath(QStringLiteral("again")));
    EXPECT_GT(reckonings_, 0);
    for (const auto& page : once.keys()) {
        EXPECT_TRUE(once[page] == again[page]) << page.toStdString();
        tests::keepPicture(once[page], QStringLiteral("portrait-") + page);
        EXPECT_GT(coloursIn(once[page]), 40) << page.toStdString();
    }
    EXPECT_FALSE(once[QStringLiteral("shelf")] == once[QStringLiteral("trends")]);
    // Castings of the oldest class are drawn only when the estimates were there.
    EXPECT_GT(tests::countColour(once[QStringLiteral("shelf")], once[QStringLiteral("shelf")].rect(), drawing::Palette::light().moss, 2), 300);
}

TEST_F(PortraitTest, ThemeFontAndSizeAreAsAsked)
{
    const QString file = folder_.filePath(QStringLiteral("mill.tierloam"));
    const auto dark = draw(file, ui::ThemeMode::dark, 200, {1000, 640}, folder_.filePath(QStringLiteral("dark")));
    const QImage& journal = dark[QStringLiteral("journal")];
    EXPECT_GT(tests::countColour(journal, journal.rect(), drawing::Palette::dark().rail, 1), 40000);
}

TEST_F(PortraitTest, EmptyHouseholdIsDrawnToo)
{
    fill_ = false;
    const auto pages = draw(folder_.filePath(QStringLiteral("new.tierloam")), ui::ThemeMode::light, 100, {1440, 900}, folder_.filePath(QStringLiteral("empty")));
    for (const auto& page : pages.keys()) EXPECT_GT(coloursIn(pages[page]), 10) << page.toStdString();
}

TEST_F(PortraitTest, FolderThatCannotBeMadeIsToldAndLeavesNothing)
{
    ui::Theme theme;
    ui::SystemDialogs dialogs;
    const auto settings = ui::passingSettings();
    window::MainWindow window{{std::make_shared<household::FixedClock>(tests::sampleToday()), theme, dialogs, *settings, {}, QStringLiteral("1"), false}};
    EXPECT_TRUE(drawPortraits(window, folder_.path(), {100, 100}).has_value()) << "no household is open";
    ASSERT_TRUE(window.createFile(folder_.filePath(QStringLiteral("a.tierloam"))));
    QFile file{folder_.filePath(QStringLiteral("plain"))};
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    const auto why = drawPortraits(window, folder_.filePath(QStringLiteral("plain/deep")), {400, 300});
    ASSERT_TRUE(why.has_value());
    EXPECT_TRUE(why->contains(QStringLiteral("plain/deep")));
}

}
