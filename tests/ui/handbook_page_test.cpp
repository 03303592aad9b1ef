#include "tests/support/pictures.h"
#include "tests/support/sample_reckoning.h"
#include "tests/ui/page_fixture.h"
#include "ui/common/seams.h"
#include "ui/common/theme.h"
#include "ui/handbook/handbook_page.h"
#include "ui/handbook/handbook_view.h"
#include "ui/handbook/stages.h"

#include <cmath>

#include <gtest/gtest.h>

#include <QTextBlock>
#include <QTextDocument>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTest>

namespace tierloam::handbook {

namespace {

class HandbookPageTest : public tests::PageTest<HandbookPage> {
protected:
    void SetUp() override { showPage({1000, 760}, false); }
};

}

TEST_F(HandbookPageTest, OpensOnItsFirstPageAndEveryPageCanBeOpened)
{
    EXPECT_EQ(page_->openId(), QStringLiteral("first"));
    for (int row = 0; row < page_->list()->count(); ++row) {
        page_->list()->setCurrentRow(row);
        EXPECT_TRUE(page_->view()->toPlainText().size() > 200) << page_->openId().toStdString();
        tests::keepPicture(page_->grab().toImage(), QStringLiteral("handbook-") + page_->openId());
        EXPECT_TRUE(page_->list()->item(row)->text().startsWith(pageTitle(*pageWithId(page_->openId().toStdString()))));
    }
    page_->open(QStringLiteral("no such page"));
    EXPECT_EQ(page_->openId(), QStringLiteral("sources")) << "stays where it was";
}

TEST_F(HandbookPageTest, FollowsALinkAndComesBack)
{
    Q_EMIT page_->view()->anchorClicked(QUrl{QStringLiteral("page:harvest")});
    EXPECT_EQ(page_->openId(), QStringLiteral("harvest"));
    Q_EMIT page_->view()->anchorClicked(QUrl{QStringLiteral("https://example.org")});
    EXPECT_EQ(page_->openId(), QStringLiteral("harvest")) << "nothing leads out";
    auto* back = page_->findChild<QPushButton*>(QStringLiteral("handbookBackButton"));
    QTest::mouseClick(back, Qt::LeftButton);
    EXPECT_EQ(page_->openId(), QStringLiteral("first"));
    EXPECT_FALSE(back->isEnabled());
    page_->goOn();
    EXPECT_EQ(page_->openId(), QStringLiteral("harvest"));
}

TEST_F(HandbookPageTest, NarrowsItsListToWhatIsSearchedAndMarksIt)
{
    auto* find = page_->findChild<QLineEdit*>(QStringLiteral("findInHandbook"));
    const int all = page_->list()->count();
    QTest::keyClicks(find, QStringLiteral("cocoon"));
    EXPECT_GT(page_->list()->count(), 1);
    EXPECT_LT(page_->list()->count(), all);
    page_->list()->setCurrentRow(0);
    EXPECT_TRUE(page_->view()->textCursor().selectedText().contains(QStringLiteral("cocoon"), Qt::CaseInsensitive));
    find->clear();
    EXPECT_EQ(page_->list()->count(), all);
}

TEST_F(HandbookPageTest, ItsTextHasTheThreeSizesOfTheProgram)
{
    QSet<int> sizes; // hundredths of a point
    int titles = 0;
    for (int row = 0; row < page_->list()->count(); ++row) {
        page_->list()->setCurrentRow(row);
        const QTextDocument* text = page_->view()->document();
        for (QTextBlock block = text->begin(); block.isValid(); block = block.next())
            for (auto at = block.begin(); !at.atEnd(); ++at) {
                const QFont font = at.fragment().charFormat().font();
                const double size = at.fragment().charFormat().hasProperty(QTextFormat::FontPointSize) ? font.pointSizeF() : text->defaultFont().pointSizeF();
                EXPECT_FALSE(at.fragment().charFormat().hasProperty(QTextFormat::FontSizeAdjustment)) << at.fragment().text().toStdString();
                sizes.insert(static_cast<int>(std::lround(100.0 * size)) / 10);
                titles += size > 1.3 * text->defaultFont().pointSizeF() ? 1 : 0;
            }
    }
    EXPECT_LE(sizes.size(), 3);
    EXPECT_GE(titles, page_->list()->count());
}

TEST_F(HandbookPageTest, DrawsTheStackAtEachStage)
{
    const auto type = drawing::Type::from(page_->font());
    for (const auto name : stageNames()) {
        for (const bool mirrored : {false, true}) {
            const QImage image = drawStage(stageNamed(name), 520, 230, 1.0, drawing::Palette::light(), type, mirrored);
            EXPECT_LE(image.width(), 620) << name;
            EXPECT_GT(image.height(), 60) << name;
            QSet<QRgb> colours;
            for (int y = 0; y < image.height(); y += 2)
                for (int x = 0; x < image.width(); x += 2) colours.insert(image.pixel(x, y));
            EXPECT_GT(colours.size(), 20) << name << ": an empty picture";
        }
    }
    page_->open(QStringLiteral("harvest"));
    tests::keepPicture(page_->grab().toImage(), QStringLiteral("handbook-harvest"));
}

TEST_F(HandbookPageTest, FollowsThemeAndLetters)
{
    theme_.setMode(ui::ThemeMode::dark);
    theme_.setFontScale(200);
    theme_.apply();
    page_->resize(760, 560);
    QCoreApplication::processEvents();
    EXPECT_TRUE(page_->view()->toHtml().contains(drawing::Palette::dark().ink.name()));
    EXPECT_LE(page_->view()->document()->idealWidth(), page_->view()->width() + 1);
    theme_.setFontScale(100);
    theme_.apply();
}

}
