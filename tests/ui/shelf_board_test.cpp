#include "tests/support/pictures.h"
#include "tests/support/sample_shelf.h"
#include "ui/shelf/shelf_board.h"
#include "ui/shelf/strips_view.h"

#include <QAccessible>
#include <QElapsedTimer>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalSpy>
#include <QtTest/QTest>

#include <gtest/gtest.h>

using namespace tierloam;
using namespace tierloam::shelf;

namespace {

struct Shown {
    ui::Theme theme;
    QScrollArea area;
    ShelfBoard* board;

    explicit Shown(const ShelfInputs& inputs = tests::sampleInputs(), QSize size = {940, 760}, bool dark = false, int fontPercent = 100)
    {
        theme.setMode(dark ? ui::ThemeMode::dark : ui::ThemeMode::light);
        theme.setFontScale(fontPercent);
        theme.apply();
        board = new ShelfBoard{theme};
        area.setFrameShape(QFrame::NoFrame);
        area.setWidget(board);
        area.resize(size);
        area.show();
        board->setModel(std::make_shared<const ShelfModel>(makeShelf(inputs)));
        board->setView(area.viewport()->size());
        area.activateWindow();
        if (!QTest::qWaitForWindowActive(&area)) ADD_FAILURE() << "the window does not become active";
    }
    ~Shown()
    {
        theme.setFontScale(100);
        theme.setMode(ui::ThemeMode::light);
    }
    StackCanvas* canvas(int i) const { return board->columns()[static_cast<std::size_t>(i)]->canvas(); }
    QImage picture() const
    {
        QImage image{board->size(), QImage::Format_RGB32};
        board->render(&image);
        return image;
    }
};

QAccessibleInterface* accessOf(QObject* object) { return QAccessible::queryAccessibleInterface(object); }

}

TEST(ShelfBoard, IsDrawnWithoutClippingAtEverySize)
{
    for (const bool dark : {false, true})
        for (const int percent : {100, 150, 200})
            for (const QSize size : {QSize{860, 520}, QSize{940, 760}, QSize{2300, 1300}}) {
                const Shown shown{tests::sampleInputs(), size, dark, percent};
                const QImage image = shown.picture();
                tests::keepPicture(image, QStringLiteral("board-%1-%2-%3").arg(dark ? QStringLiteral("dark") : QStringLiteral("light")).arg(percent).arg(size.width()));
                for (const StackColumn* column : shown.board->columns()) {
                    EXPECT_TRUE(column->canvas()->labelsFit()) << percent << " " << size.width();
                    EXPECT_TRUE(column->strips()->labelsFit()) << percent << " " << size.width();
                    for (QPushButton* button : {column->feedButton(), column->waterButton(), column->drainButton(), column->moreButton()}) {
                        EXPECT_GE(button->width(), button->fontMetrics().horizontalAdvance(button->text()) + 4) << button->text().toStdString() << percent << " " << size.width();
                        EXPECT_LE(button->mapTo(column, QPoint{button->width(), 0}).x(), column->width()) << percent << " " << size.width();
                    }
                    EXPECT_LE(column->geometry().right(), shown.board->width());
                }
                if (size.width() >= 940 && percent == 100) {
                    EXPECT_LE(shown.board->width(), size.width());
                }
            }
}

TEST(ShelfBoard, AllStacksStandOnOneGroundAtOneScale)
{
    const Shown shown;
    const double one = shown.canvas(0)->layoutShown().trays[0].box.height();
    for (int i = 0; i < 3; ++i) {
        EXPECT_DOUBLE_EQ(shown.canvas(i)->layoutShown().trays[0].box.height(), one);
        EXPECT_EQ(shown.canvas(i)->geometry(), shown.canvas(0)->geometry());
        EXPECT_DOUBLE_EQ(shown.canvas(i)->layoutShown().ground, shown.canvas(0)->layoutShown().ground);
    }
}

TEST(ShelfBoard, MoreThanThreeGoOnBeyondTheView)
{
    const Shown shown{tests::sampleInputs(7), {900, 700}};
    EXPECT_EQ(shown.board->columns().size(), 7U);
    EXPECT_GT(shown.board->width(), 900);
    const Shown wide{tests::sampleInputs(7), {2500, 900}};
    EXPECT_LE(wide.board->width(), 2500);
}

TEST(ShelfBoard, KeysWalkStacksAndParts)
{
    const Shown shown;
    QSignalSpy opened{shown.board, &ShelfBoard::partActivated};
    shown.canvas(0)->setFocus(Qt::TabFocusReason);
    ASSERT_TRUE(shown.canvas(0)->hasFocus());
    EXPECT_EQ(shown.canvas(0)->currentPart(), 3); // the top tray
    QTest::keyClick(shown.canvas(0), Qt::Key_Down);
    EXPECT_EQ(shown.canvas(0)->currentPart(), 2);
    QTest::keyClick(shown.canvas(0), Qt::Key_End);
    EXPECT_EQ(shown.canvas(0)->currentPart(), 0);
    QTest::keyClick(shown.canvas(0), Qt::Key_Down);
    EXPECT_EQ(shown.canvas(0)->currentPart(), 0); // held at the sump
    QTest::keyClick(shown.canvas(0), Qt::Key_Up);
    QTest::keyClick(shown.canvas(0), Qt::Key_Right);
    EXPECT_TRUE(shown.canvas(1)->hasFocus());
    EXPECT_EQ(shown.canvas(1)->currentPart(), 1);
    EXPECT_EQ(shown.board->current()->key(), "Lean-to");
    QTest::keyClick(shown.canvas(1), Qt::Key_Return);
    ASSERT_EQ(opened.size(), 1);
    EXPECT_EQ(opened[0][0].toString(), QStringLiteral("Lean-to"));
    EXPECT_EQ(opened[0][1].toInt(), 1);
    QTest::keyClick(shown.canvas(1), Qt::Key_Left);
    EXPECT_TRUE(shown.canvas(0)->hasFocus());
    QTest::keyClick(shown.canvas(0), Qt::Key_Left);
    EXPECT_TRUE(shown.canvas(0)->hasFocus()); // there is none before it
    // Tab goes on to the buttons of the same stack, then to the next stack.
    QTest::keyClick(shown.canvas(0), Qt::Key_Tab);
    EXPECT_TRUE(shown.board->columns()[0]->feedButton()->hasFocus());
    for (int i = 0; i < 4; ++i) QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    EXPECT_TRUE(shown.canvas(1)->hasFocus());
}

TEST(ShelfBoard, FocusIsSeen)
{
    const Shown shown;
    shown.board->columns()[0]->feedButton()->setFocus();
    const QImage before = shown.canvas(0)->grab().toImage();
    shown.canvas(0)->setFocus();
    const QImage on = shown.canvas(0)->grab().toImage();
    EXPECT_NE(before, on);
    shown.canvas(0)->setCurrentPart(1);
    EXPECT_NE(on, shown.canvas(0)->grab().toImage());
}

TEST(ShelfBoard, ClicksOpenPartsAndPressButtons)
{
    const Shown shown;
    QSignalSpy opened{shown.board, &ShelfBoard::partActivated}, fed{shown.board, &ShelfBoard::feedWanted}, more{shown.board, &ShelfBoard::moreWanted};
    const auto& layout = shown.canvas(2)->layoutShown();
    QTest::mouseClick(shown.canvas(2), Qt::LeftButton, {}, layout.trays[1].box.center().toPoint());
    QTest::mouseClick(shown.canvas(2), Qt::LeftButton, {}, layout.sump.center().toPoint());
    QTest::mouseClick(shown.canvas(2), Qt::LeftButton, {}, QPoint{5, 5}); // the name: nothing to open
    ASSERT_EQ(opened.size(), 2);
    EXPECT_EQ(opened[0][1].toInt(), 2);
    EXPECT_EQ(opened[1][1].toInt(), 0);
    QTest::mouseClick(shown.board->columns()[1]->feedButton(), Qt::LeftButton);
    QTest::mouseClick(shown.board->columns()[1]->moreButton(), Qt::LeftButton);
    ASSERT_EQ(fed.size(), 1);
    EXPECT_EQ(fed[0][0].toString(), QStringLiteral("Lean-to"));
    EXPECT_EQ(more.size(), 1);
}

TEST(ShelfAccess, EachStackTrayAndSumpHasNameAndValue)
{
    const Shown shown;
    QAccessibleInterface* stack = accessOf(shown.canvas(0));
    ASSERT_TRUE(stack);
    EXPECT_EQ(stack->text(QAccessible::Name), QStringLiteral("Scullery"));
    EXPECT_TRUE(stack->text(QAccessible::Value).contains(QStringLiteral("colony 1.1\u00a0kg")));
    ASSERT_EQ(stack->childCount(), 4);
    EXPECT_EQ(stack->child(0)->text(QAccessible::Name), QStringLiteral("Sump"));
    EXPECT_TRUE(stack->child(0)->text(QAccessible::Value).contains(QStringLiteral("spigot open")));
    EXPECT_TRUE(stack->child(1)->text(QAccessible::Value).contains(QStringLiteral("ready, chance 93\u00a0%")));
    for (int i = 0; i < stack->childCount(); ++i) {
        QAccessibleInterface* part = stack->child(i);
        EXPECT_EQ(part, stack->child(i)); // the same object each time
        EXPECT_EQ(stack->indexOfChild(part), i);
        EXPECT_EQ(part->parent(), stack);
        EXPECT_TRUE(part->isValid());
        const QPoint middle = part->rect().center();
        EXPECT_EQ(stack->childAt(middle.x(), middle.y()), part);
        EXPECT_FALSE(part->state().invisible);
    }
    EXPECT_EQ(stack->child(4), nullptr);
    for (QPushButton* button : shown.board->findChildren<QPushButton*>()) {
        if (!button->isVisible()) continue;
        EXPECT_FALSE(accessOf(button)->text(QAccessible::Name).isEmpty());
    }
}

TEST(ShelfAccess, FocusAndActionsGoThrough)
{
    const Shown shown;
    QAccessibleInterface* stack = accessOf(shown.canvas(1));
    QSignalSpy opened{shown.board, &ShelfBoard::partActivated};
    QAccessibleActionInterface* action = stack->child(1)->actionInterface();
    ASSERT_TRUE(action);
    action->doAction(QAccessibleActionInterface::setFocusAction());
    EXPECT_TRUE(shown.canvas(1)->hasFocus());
    EXPECT_EQ(stack->focusChild(), stack->child(1));
    EXPECT_TRUE(stack->child(1)->state().focused);
    EXPECT_FALSE(stack->child(2)->state().focused);
    action->doAction(QAccessibleActionInterface::pressAction());
    ASSERT_EQ(opened.size(), 1);
    EXPECT_EQ(opened[0][1].toInt(), 1);
}

TEST(ShelfAccess, PartsThatAreGoneAreInvalid)
{
    const Shown shown;
    QAccessibleInterface* stack = accessOf(shown.canvas(0));
    QAccessibleInterface* top = stack->child(3);
    ShelfInputs inputs = tests::sampleInputs();
    inputs.shown = tests::sampleToday() - std::chrono::days{100};
    shown.board->setModel(std::make_shared<const ShelfModel>(makeShelf(inputs)));
    EXPECT_EQ(stack->childCount(), 3);
    EXPECT_FALSE(top->isValid());
    EXPECT_TRUE(top->text(QAccessible::Name).isEmpty());
}

TEST(ShelfBoard, StatesAreDesigned)
{
    ShelfInputs inputs = tests::sampleInputs();
    inputs.reckoning = nullptr;
    {
        const Shown estimating{inputs};
        tests::keepPicture(estimating.picture(), QStringLiteral("board-estimating"));
        EXPECT_EQ(estimating.board->columns().size(), 3U);
    }
    inputs = tests::sampleInputs();
    inputs.journal = tests::viewOf({});
    inputs.reckoning = std::make_shared<reckoning::Reckoning>();
    {
        const Shown empty{inputs};
        tests::keepPicture(empty.picture(), QStringLiteral("board-empty"));
        auto* start = empty.board->findChild<QPushButton*>(QStringLiteral("startStackButton"));
        ASSERT_TRUE(start && start->isVisible());
        QSignalSpy wanted{empty.board, &ShelfBoard::newStackWanted};
        QTest::mouseClick(start, Qt::LeftButton);
        EXPECT_EQ(wanted.size(), 1);
    }
    inputs = tests::sampleInputs();
    inputs.shown = tests::sampleToday() - std::chrono::days{60};
    const Shown past{inputs};
    tests::keepPicture(past.picture(), QStringLiteral("board-past"));
    EXPECT_FALSE(past.board->columns()[0]->feedButton()->isEnabled());
    EXPECT_TRUE(past.board->columns()[0]->moreButton()->isEnabled());
}

TEST(ShelfBoard, RightToLeftTurnsEverything)
{
    QApplication::setLayoutDirection(Qt::RightToLeft);
    {
        const Shown shown;
        tests::keepPicture(shown.picture(), QStringLiteral("board-rtl"));
        EXPECT_GT(shown.board->columns()[0]->x(), shown.board->columns()[2]->x());
        const auto& layout = shown.canvas(0)->layoutShown();
        EXPECT_LT(layout.trays[0].labels.right(), layout.trays[0].box.left());
        EXPECT_TRUE(shown.canvas(0)->labelsFit());
        shown.canvas(0)->setFocus();
        QTest::keyClick(shown.canvas(0), Qt::Key_Left); // on, in reading order
        EXPECT_TRUE(shown.canvas(1)->hasFocus());
    }
    QApplication::setLayoutDirection(Qt::LeftToRight);
}

TEST(ShelfBoard, TwoHundredStacksStandAndScroll)
{
    QElapsedTimer clock;
    clock.start();
    Shown shown{tests::sampleInputs(200), {1060, 860}};
    const qint64 built = clock.elapsed();
    EXPECT_EQ(shown.board->columns().size(), 200U);
    QImage image{shown.area.size(), QImage::Format_RGB32};
    shown.area.horizontalScrollBar()->setValue(shown.area.horizontalScrollBar()->maximum() / 2);
    clock.restart();
    shown.area.render(&image);
    std::printf("200 stacks: built in %lld ms, one view painted in %lld ms\n", static_cast<long long>(built), static_cast<long long>(clock.elapsed()));
    // What is far away is not painted: a view costs about as much as three stacks do.
    EXPECT_LT(clock.elapsed(), 1000);
}

TEST(ShelfBoard, RepaintsWithinAFrame)
{
    const Shown shown{tests::sampleInputs(), {1060, 860}};
    QImage image{shown.board->size(), QImage::Format_RGB32};
    shown.board->render(&image);
    std::vector<double> each;
    for (int i = 0; i < 21; ++i) {
        QElapsedTimer clock;
        clock.start();
        shown.board->render(&image);
        each.push_back(static_cast<double>(clock.nsecsElapsed()) / 1e6);
    }
    std::sort(each.begin(), each.end());
    RecordProperty("median_ms", std::to_string(each[10]));
    std::printf("repaint of three stacks: median %.1f ms, worst %.1f ms\n", each[10], each.back());
    // A frame of 60 a second in the builds that people use. The fastest counts: the machine may be busy with other tests.
#if defined(__OPTIMIZE__) && !defined(__SANITIZE_ADDRESS__)
    EXPECT_LT(each.front(), 16.0);
#else
    EXPECT_LT(each.front(), 160.0);
#endif
}
