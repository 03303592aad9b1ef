#include "tests/support/pictures.h"
#include "tests/support/sample_shelf.h"
#include "ui/common/reading_order.h"
#include "ui/shelf/shelf_board.h"
#include "ui/shelf/strips_view.h"
#include "ui/shelf/verdict_box.h"

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

/// In place of the window: Tab goes in reading order.
struct Area final : QScrollArea {
    bool focusNextPrevChild(bool next) override { return ui::focusInReadingOrder(this, next); }
};

struct Shown {
    ui::Theme theme;
    Area area;
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
                for (StackColumn* column : shown.board->columns()) {
                    EXPECT_TRUE(column->canvas()->labelsFit()) << percent << " " << size.width();
                    EXPECT_TRUE(column->strips()->labelsFit()) << percent << " " << size.width();
                    for (QPushButton* button : {column->feedButton(), column->coverButton(), column->waterButton(), column->drainButton(), column->moreButton()}) {
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
    for (int i = 0; i < 5; ++i) QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab); // feed, cover, water, drain, …
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

TEST(ShelfAccess, AllThatIsDrawnHasARoleAndTellsItsValueInTheOrderShown)
{
    ShelfInputs inputs = tests::sampleInputs();
    inputs.order = {"Cellar", "Scullery"};
    const Shown shown{inputs};
    QStringList stacks;
    QAccessibleInterface* board = accessOf(shown.board);
    for (int i = 0; i < board->childCount(); ++i) {
        QAccessibleInterface* column = board->child(i);
        for (int k = 0; k < column->childCount(); ++k)
            if (column->child(k)->role() == QAccessible::List) stacks << column->child(k)->text(QAccessible::Name);
    }
    EXPECT_EQ(stacks, (QStringList{QStringLiteral("Cellar"), QStringLiteral("Scullery"), QStringLiteral("Lean-to")}));
    QAccessibleInterface* canvas = accessOf(shown.canvas(1));
    for (int i = 0; i < canvas->childCount(); ++i) {
        EXPECT_EQ(canvas->child(i)->role(), QAccessible::ListItem);
        EXPECT_FALSE(canvas->child(i)->text(QAccessible::Value).isEmpty());
        EXPECT_TRUE(canvas->child(i)->state().focusable);
        EXPECT_TRUE(canvas->child(i)->actionInterface()->actionNames().contains(QAccessibleActionInterface::pressAction()));
        if (i > 0) {
            EXPECT_LT(canvas->child(i)->rect().bottom(), canvas->child(i - 1)->rect().bottom()) << "the sump first, then from the bottom up";
        }
    }
    QAccessibleInterface* strips = accessOf(shown.board->columns()[0]->strips());
    EXPECT_EQ(strips->role(), QAccessible::Chart);
    EXPECT_TRUE(strips->text(QAccessible::Value).contains(QStringLiteral("Processing")));
    auto* verdict = shown.board->columns()[0]->findChild<VerdictBox*>();
    EXPECT_EQ(accessOf(verdict)->role(), QAccessible::StaticText);
    EXPECT_FALSE(accessOf(verdict)->text(QAccessible::Value).isEmpty());
}

TEST(ShelfAccess, TheCompactGridTellsTheSame)
{
    const Shown shown{tests::sampleInputs(12), {1060, 800}};
    for (const StackColumn* column : shown.board->columns()) {
        QAccessibleInterface* stack = accessOf(column->canvas());
        EXPECT_FALSE(stack->text(QAccessible::Name).isEmpty());
        EXPECT_TRUE(stack->text(QAccessible::Value).contains(column->canvas()->stack().verdict.state));
        ASSERT_EQ(stack->childCount(), column->canvas()->partCount());
        EXPECT_TRUE(stack->child(1)->text(QAccessible::Value).contains(QStringLiteral("feed-to-cast")));
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

TEST(ShelfGrid, TwelveStacksStandInRowsAndStillShowStateAgeAndReadiness)
{
    for (const bool dark : {false, true})
        for (const int percent : {100, 150, 200})
            for (const QSize size : {QSize{760, 520}, QSize{1060, 800}, QSize{2300, 1300}}) {
                const Shown shown{tests::sampleInputs(12), size, dark, percent};
                tests::keepPicture(shown.picture(), QStringLiteral("grid-%1-%2-%3").arg(dark ? QStringLiteral("dark") : QStringLiteral("light")).arg(percent).arg(size.width()));
                ASSERT_TRUE(shown.board->compact());
                EXPECT_LE(shown.board->width(), size.width()) << percent << ": rows, not one long row";
                for (StackColumn* column : shown.board->columns()) {
                    const StackCanvas* canvas = column->canvas();
                    EXPECT_TRUE(canvas->labelsFit()) << percent << " " << size.width();
                    for (const drawing::TrayPicture& tray : canvas->picture().trays) {
                        EXPECT_FALSE(tray.ageLabel.isEmpty());
                        ASSERT_EQ(tray.labels.size(), 1) << "the word for its state";
                    }
                    for (QPushButton* button : {column->feedButton(), column->moreButton()}) {
                        EXPECT_GE(button->width(), button->fontMetrics().horizontalAdvance(button->text()) + 4) << button->text().toStdString() << percent << " " << size.width();
                        EXPECT_LE(button->mapTo(column, QPoint{button->width(), button->height()}).x(), column->width()) << percent << " " << size.width();
                        EXPECT_LE(button->mapTo(column, QPoint{0, button->height()}).y(), column->height()) << percent << " " << size.width();
                    }
                }
            }
    const Shown shown{tests::sampleInputs(12), {1060, 800}};
    EXPECT_GE(shown.board->perRow(), 4);
    // A large view is used: fewer in a row, and larger.
    const Shown large{tests::sampleInputs(12), {2300, 1300}};
    EXPECT_GT(large.canvas(0)->layoutShown().trays[0].box.height(), 1.3 * shown.canvas(0)->layoutShown().trays[0].box.height());
    EXPECT_LE(large.board->height(), 1300) << "and all of them are seen at once";
    EXPECT_TRUE(shown.canvas(0)->picture().trays[0].ready) << "the ring is there";
    EXPECT_EQ(shown.canvas(0)->picture().trays[0].labels.front(), QStringLiteral("ready"));
}

TEST(ShelfGrid, KeysWalkRowsToo)
{
    const Shown shown{tests::sampleInputs(12), {1060, 800}};
    const int row = shown.board->perRow();
    shown.canvas(1)->setFocus();
    QTest::keyClick(shown.canvas(1), Qt::Key_End);
    QTest::keyClick(shown.canvas(1), Qt::Key_Down); // beneath the sump stands the next row
    EXPECT_TRUE(shown.canvas(1 + row)->hasFocus());
    EXPECT_EQ(shown.canvas(1 + row)->currentPart(), shown.canvas(1 + row)->partCount() - 1);
    QTest::keyClick(shown.canvas(1 + row), Qt::Key_Up);
    EXPECT_TRUE(shown.canvas(1)->hasFocus());
    EXPECT_EQ(shown.canvas(1)->currentPart(), 0);
    QTest::keyClick(shown.canvas(1), Qt::Key_Tab);
    EXPECT_TRUE(shown.board->columns()[1]->feedButton()->hasFocus());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    EXPECT_TRUE(shown.board->columns()[1]->moreButton()->hasFocus());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    EXPECT_TRUE(shown.canvas(2)->hasFocus());
}

TEST(ShelfGrid, TurnsBackIntoColumnsWhenFewStand)
{
    Shown shown{tests::sampleInputs(12), {1060, 800}};
    shown.board->setModel(std::make_shared<const ShelfModel>(makeShelf(tests::sampleInputs(3))));
    EXPECT_FALSE(shown.board->compact());
    ASSERT_EQ(shown.board->columns().size(), 3U);
    EXPECT_TRUE(shown.board->columns()[0]->strips());
    EXPECT_EQ(shown.canvas(0)->picture().trays[0].labels.size(), 2);
    shown.board->setModel(std::make_shared<const ShelfModel>(makeShelf(tests::sampleInputs(9))));
    EXPECT_TRUE(shown.board->compact());
}

TEST(ShelfGrid, RightToLeftTurnsIt)
{
    QApplication::setLayoutDirection(Qt::RightToLeft);
    {
        const Shown shown{tests::sampleInputs(12), {1060, 800}};
        tests::keepPicture(shown.picture(), QStringLiteral("grid-rtl"));
        EXPECT_GT(shown.board->columns()[0]->x(), shown.board->columns()[1]->x());
        for (const StackColumn* column : shown.board->columns()) EXPECT_TRUE(column->canvas()->labelsFit());
    }
    QApplication::setLayoutDirection(Qt::LeftToRight);
}

TEST(ShelfDrag, AMarkShowsWhereTheStackWouldStand)
{
    for (const auto direction : {Qt::LeftToRight, Qt::RightToLeft}) {
        QApplication::setLayoutDirection(direction);
        const Shown shown;
        QSignalSpy wanted{shown.board, &ShelfBoard::placeWanted}, opened{shown.board, &ShelfBoard::partActivated};
        StackCanvas* from = shown.canvas(0);
        const QPoint start = from->layoutShown().trays[0].box.center().toPoint();
        const auto at = [&](int column, double share) {
            const QRect place = shown.board->columns()[static_cast<std::size_t>(column)]->geometry();
            const double across = direction == Qt::LeftToRight ? share : 1 - share;
            return from->mapFrom(shown.board, QPoint{place.left() + static_cast<int>(place.width() * across), place.top() + 60});
        };
        EXPECT_TRUE(shown.board->dropMark().isNull());
        QTest::mousePress(from, Qt::LeftButton, {}, start);
        QTest::mouseMove(from, start + QPoint{2, 0}); // a hand is never quite still
        EXPECT_TRUE(shown.board->dropMark().isNull());
        QTest::mouseMove(from, at(1, 0.8));
        const QRect mark = shown.board->dropMark();
        ASSERT_FALSE(mark.isNull());
        const QImage with = shown.picture();
        EXPECT_GT(tests::countColour(with, mark, shown.theme.palette().moss), mark.width() * mark.height() * 9 / 10) << "not hidden by a stack";
        QTest::mouseRelease(from, Qt::LeftButton, {}, at(1, 0.8));
        ASSERT_EQ(wanted.size(), 1);
        EXPECT_EQ(wanted[0][0].toString(), QStringLiteral("Scullery"));
        EXPECT_EQ(wanted[0][1].toInt(), 1);
        EXPECT_EQ(opened.size(), 0) << "a drag opens nothing";
        EXPECT_TRUE(shown.board->dropMark().isNull());

        QTest::mousePress(from, Qt::LeftButton, {}, start);
        QTest::mouseMove(from, at(2, 0.9));
        QTest::mouseRelease(from, Qt::LeftButton, {}, at(2, 0.9));
        ASSERT_EQ(wanted.size(), 2);
        EXPECT_EQ(wanted[1][1].toInt(), 2);
        // Let go over its own place, and called off by Esc: nothing is asked for.
        QTest::mousePress(from, Qt::LeftButton, {}, start);
        QTest::mouseMove(from, at(1, 0.3));
        QTest::mouseRelease(from, Qt::LeftButton, {}, at(1, 0.3));
        from->setFocus();
        QTest::mousePress(from, Qt::LeftButton, {}, start);
        QTest::mouseMove(from, at(2, 0.9));
        QTest::keyClick(from, Qt::Key_Escape);
        EXPECT_TRUE(shown.board->dropMark().isNull());
        QTest::mouseRelease(from, Qt::LeftButton, {}, at(2, 0.9));
        EXPECT_EQ(wanted.size(), 2);
        EXPECT_EQ(opened.size(), 0);
    }
    QApplication::setLayoutDirection(Qt::LeftToRight);
}

TEST(ShelfDrag, AcrossRowsOfTheGrid)
{
    const Shown shown{tests::sampleInputs(12), {1060, 800}};
    QSignalSpy wanted{shown.board, &ShelfBoard::placeWanted};
    StackCanvas* from = shown.canvas(0);
    const int row = shown.board->perRow();
    const QRect place = shown.board->columns()[static_cast<std::size_t>(row + 1)]->geometry();
    const QPoint before = from->mapFrom(shown.board, place.topLeft() + QPoint{5, 30});
    QTest::mousePress(from, Qt::LeftButton, {}, QPoint{20, 20});
    QTest::mouseMove(from, before);
    QTest::mouseRelease(from, Qt::LeftButton, {}, before);
    ASSERT_EQ(wanted.size(), 1);
    EXPECT_EQ(wanted[0][1].toInt(), row) << "before the second of the second row, once it is taken out of the first";
}

TEST(ShelfMotion, AStackThatChangesIsSeenToMove)
{
    Shown shown;
    const auto before = std::make_shared<const ShelfModel>(makeShelf(tests::sampleInputs()));
    ShelfModel less = *before;
    less.stacks[0].picture.trays.pop_back(); // its top tray was taken
    less.stacks[0].parts.pop_back();
    const auto after = std::make_shared<const ShelfModel>(less);
    StackCanvas* canvas = shown.canvas(0);
    QVariantAnimation* motion = canvas->motion();
    EXPECT_GE(motion->duration(), 150);
    EXPECT_LE(motion->duration(), 250);
    EXPECT_EQ(motion->state(), QAbstractAnimation::Stopped);
    ASSERT_TRUE(shown.theme.moves());

    shown.board->setModel(after, true);
    ASSERT_EQ(motion->state(), QAbstractAnimation::Running);
    EXPECT_EQ(shown.canvas(1)->motion()->state(), QAbstractAnimation::Stopped) << "only the one that changed";
    motion->pause();
    motion->setCurrentTime(motion->duration() / 2);
    const QImage onTheWay = canvas->grab().toImage();
    tests::keepPicture(onTheWay, QStringLiteral("motion-taken"));
    motion->setCurrentTime(motion->duration());
    const QImage there = canvas->grab().toImage();
    EXPECT_NE(onTheWay, there);
    motion->stop();
    EXPECT_EQ(canvas->grab().toImage(), there) << "it ends where it stands";
    // The same estimates anew: nothing moves. The slider: nothing moves.
    shown.board->setModel(std::make_shared<const ShelfModel>(less), true);
    EXPECT_EQ(motion->state(), QAbstractAnimation::Stopped);
    shown.board->setModel(before, false);
    EXPECT_EQ(motion->state(), QAbstractAnimation::Stopped);
    // Less motion was asked for.
    shown.theme.setLessMotion(true);
    EXPECT_FALSE(shown.theme.moves());
    shown.board->setModel(after, true);
    EXPECT_EQ(motion->state(), QAbstractAnimation::Stopped);
    EXPECT_EQ(canvas->grab().toImage(), there);
}

TEST(ShelfBoard, TwoHundredStacksStandAndScroll)
{
    QElapsedTimer clock;
    clock.start();
    Shown shown{tests::sampleInputs(200), {1060, 860}};
    const qint64 built = clock.elapsed();
    EXPECT_EQ(shown.board->columns().size(), 200U);
    QImage image{shown.area.size(), QImage::Format_RGB32};
    EXPECT_FALSE(shown.board->columns().back()->furnished()) << "what is far away is not made yet";
    shown.area.verticalScrollBar()->setValue(shown.area.verticalScrollBar()->maximum() / 2);
    shown.board->showPart(shown.board->visibleRegion().boundingRect());
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
