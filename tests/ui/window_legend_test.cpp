// What the drawings mean is in sight on the shelf, without scrolling, in a window of a small screen and in each language.
#include "tests/ui/language_fixture.h"

#include "tests/support/pictures.h"
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
        ASSERT_TRUE(QTest::qWaitFor([this] { return household().reckoning() != nullptr; }, patience));
        settled();
    }
    shelf::ShelfBoard& board() { return *window_->findChild<shelf::ShelfBoard*>(); }
    bool legendInSight()
    {
        const auto* area = qobject_cast<const QScrollArea*>(board().parentWidget()->parentWidget());
        const QRect seen{board().mapFrom(area->viewport(), QPoint{}), area->viewport()->size()};
        return !board().legend().isNull() && seen.contains(board().legend().toAlignedRect()) && area->verticalScrollBar()->maximum() == 0;
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
    EXPECT_TRUE(legendInSight()) << "it ends at " << board().legend().bottom() << " of " << board().parentWidget()->height();
    window_->resize(1280, 700);
    settled();
    EXPECT_FALSE(legendInSight()) << "a check that cannot fail shows nothing";
}

INSTANTIATE_TEST_SUITE_P(Languages, WindowLegend, testing::Values("en", "de", "es", "fr"), [](const auto& each) { return std::string{each.param}; });

}
