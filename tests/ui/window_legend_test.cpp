// What the drawings mean is in sight on the shelf, without scrolling, in a window of a small screen and in each language.
#include "tests/ui/language_fixture.h"

#include "tests/support/pictures.h"
#include "ui/shelf/legend_bar.h"
#include "ui/window/demo.h"

#include <QScrollArea>
#include <QScrollBar>

namespace tierloam::window {

namespace {

class WindowLegend : public LanguageTest, public testing::WithParamInterface<const char*> {
protected:
    /// The demo household, of which all three stacks have something to say: the most words a shelf of three has.
    void openDemo(QSize size)
    {
        const Demo demo = freshDemo(today_);
        ASSERT_TRUE(window_->openFile(demo.path)) << demo.why.toStdString();
        show(size);
        ASSERT_TRUE(QTest::qWaitFor([this] { return household().reckoning() != nullptr && household().reckoningIsCurrent(); }, patience));
        settled();
    }
    shelf::ShelfBoard& board() { return *window_->findChild<shelf::ShelfBoard*>(); }
    QScrollArea* area() { return qobject_cast<QScrollArea*>(board().parentWidget()->parentWidget()); }
    /// All of the board with its legend.
    bool allInSight()
    {
        const QRect seen{board().mapFrom(area()->viewport(), QPoint{}), area()->viewport()->size()};
        return !board().legend().isNull() && seen.contains(board().legend().toAlignedRect()) && area()->verticalScrollBar()->maximum() == 0;
    }
    /// The legend over the lower edge, since the board's own lies below it.
    bool legendOverEdge()
    {
        auto* bar = area()->findChild<shelf::LegendBar*>();
        return bar && bar->isVisible() && area()->viewport()->rect().contains(bar->geometry()) && bar->height() >= board().legend().height() && drawn(*bar);
    }
    /// Words stand on it.
    static bool drawn(QWidget& bar)
    {
        const QImage picture = bar.grab().toImage();
        int dark = 0;
        for (int y = 2; y < picture.height(); ++y)
            for (int x = 0; x < picture.width(); ++x) dark += qGray(picture.pixel(x, y)) < 120;
        return dark > 500;
    }
};

}

TEST_P(WindowLegend, StandsInAWindowOf1280By800)
{
    estimates_ = nullptr;
    members_ = 512; // as people see it: with few, the words of the cards follow chance
    today_ = *parseDay("2031-05-04");
    ASSERT_NO_FATAL_FAILURE(speak(GetParam()));
    ASSERT_NO_FATAL_FAILURE(openDemo({1280, 800}));
    ASSERT_EQ(board().columns().size(), 3U);
    tests::keepPicture(window_->grab().toImage(), QStringLiteral("legend-1280-") + QString::fromLatin1(GetParam()));
    EXPECT_TRUE(allInSight()) << "it ends at " << board().legend().bottom() << " of " << board().parentWidget()->height();
    EXPECT_FALSE(legendOverEdge()) << board().legend().bottom() << " of " << area()->viewport()->height();
    window_->resize(1280, 700);
    settled();
    EXPECT_FALSE(allInSight()) << "a check that cannot fail shows nothing";
    EXPECT_TRUE(legendOverEdge());
}

TEST_P(WindowLegend, StaysInSightUnderTheLongestCard)
{
    estimates_ = nullptr;
    members_ = 512;
    today_ = *parseDay("2031-05-04");
    ASSERT_NO_FATAL_FAILURE(speak(GetParam()));
    ASSERT_NO_FATAL_FAILURE(openDemo({1280, 800}));
    auto longer = std::make_shared<shelf::ShelfModel>(desk().shelf()->model());
    for (shelf::StackModel& stack : longer->stacks) { // what any of them says, on one card
        for (const shelf::StackModel& other : desk().shelf()->model().stacks) stack.verdict.reason += u' ' % other.verdict.reason;
        stack.verdict.normal += u' ' % stack.verdict.reason;
    }
    desk().shelf()->chooseStack(longer->stacks.front().title);
    board().setModel(longer);
    settled();
    tests::keepPicture(window_->grab().toImage(), QStringLiteral("legend-long-") + QString::fromLatin1(GetParam()));
    EXPECT_FALSE(allInSight()) << "the card is to be too long for the window";
    EXPECT_TRUE(legendOverEdge());
    auto* bar = area()->verticalScrollBar();
    bar->setValue(bar->maximum() / 2);
    settled();
    EXPECT_TRUE(legendOverEdge());
    bar->setValue(bar->maximum());
    settled();
    EXPECT_FALSE(legendOverEdge()) << "the board's own is seen";
}

TEST_P(WindowLegend, TellsTheShadesInASmallWindowWithTheLargestLetters)
{
    estimates_ = nullptr;
    today_ = *parseDay("2031-05-04");
    ASSERT_NO_FATAL_FAILURE(speak(GetParam()));
    theme_->setFontScale(200);
    theme_->apply();
    ASSERT_NO_FATAL_FAILURE(openDemo({1024, 700}));
    tests::keepPicture(window_->grab().toImage(), QStringLiteral("legend-large-") + QString::fromLatin1(GetParam()));
    ASSERT_FALSE(allInSight()) << "a check that cannot fail shows nothing";
    auto* bar = area()->findChild<shelf::LegendBar*>();
    ASSERT_NE(bar, nullptr);
    ASSERT_TRUE(bar->isVisible()) << area()->viewport()->height();
    EXPECT_EQ(bar->form(), drawing::LegendForm::shades);
    EXPECT_TRUE(area()->viewport()->rect().contains(bar->geometry()));
    EXPECT_LE(bar->height(), area()->viewport()->height() / 3);
    EXPECT_TRUE(drawn(*bar));
}

INSTANTIATE_TEST_SUITE_P(Languages, WindowLegend, testing::Values("en", "de", "es", "fr"), [](const auto& each) { return std::string{each.param}; });

}
