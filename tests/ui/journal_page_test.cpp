// The journal page as a person uses it.
#include "tests/ui/page_fixture.h"

#include "core/household/photo_file.h"
#include "ui/journal/journal_page.h"
#include "ui/journal/picture_strip.h"

#include <QImage>
#include <QTableView>

#include <algorithm>

namespace tierloam::journal_page {
namespace {

/// The fixture hands every page its settings; this page keeps none.
class PageAlone : public JournalPage {
public:
    PageAlone(household::Household& household, const ui::Theme& theme, ui::Settings&) : JournalPage{household, theme} {}
};

class JournalPageTest : public tests::PageTest<PageAlone> {
protected:
    void SetUp() override
    {
        showPage({1000, 800});
        QApplication::setActiveWindow(page_.get());
        ASSERT_TRUE(QTest::qWaitForWindowActive(page_.get()));
        journal().table()->setFocus();
    }
    JournalPage& journal() { return *page_; }
    household::Household& household() { return *household_; }
    std::size_t entries() { return household().journal()->entries.size(); }
    void press(const char* keys) { QTest::keySequence(QApplication::focusWidget() ? QApplication::focusWidget() : page_.get(), QKeySequence{QString::fromLatin1(keys)}); }
    void settle()
    {
        QCoreApplication::sendPostedEvents();
        QCoreApplication::processEvents();
    }
    void chooseLast(auto wanted)
    {
        const auto& all = household().journal()->entries;
        const auto found = std::find_if(all.rbegin(), all.rend(), wanted);
        ASSERT_NE(found, all.rend());
        journal().choose(found->id);
        journal().table()->setFocus();
    }
};

TEST_F(JournalPageTest, PicturesOfTheChosenEntryStandBelowAsThumbnails)
{
    chooseLast([](const journal::Entry& entry) { return std::holds_alternative<journal::Feed>(entry.action); });
    auto* strip = journal().findChild<journal_page::PictureStrip*>();
    ASSERT_NE(strip, nullptr);
    EXPECT_FALSE(strip->isVisible());
    QImage image{800, 500, QImage::Format_RGB32};
    image.fill(Qt::darkGreen);
    ASSERT_TRUE(image.save(folder_.filePath(QStringLiteral("tray.png"))));
    auto read = household::readPhoto(folder_.filePath(QStringLiteral("tray.png")));
    household().addPhoto(journal().chosen().front(), std::get<store::Photo>(std::move(read)), QStringLiteral("picture"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return strip->isVisible(); }, patience));
    ASSERT_EQ(strip->count(), 1);
    EXPECT_FALSE(strip->item(0)->icon().isNull());
    EXPECT_LE(strip->item(0)->icon().actualSize({500, 500}).width(), 72) << "read small";
    journal().table()->selectAll();
    settle();
    EXPECT_FALSE(strip->isVisible()) << "of several entries none";
}

}
}
