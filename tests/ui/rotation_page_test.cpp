// The year on the page: drawn from a real reckoning, moved by hand, kept and undone.
#include "tests/ui/rotation_fixture.h"

#include "core/planning/wish_text.h"
#include "core/store/setting_names.h"
#include "ui/common/amount_field.h"
#include "ui/common/date_field.h"
#include "ui/common/dates.h"
#include "ui/common/field_edit.h"
#include "ui/common/formats.h"
#include "ui/common/number_field.h"
#include "ui/rotation/asked_stacks.h"
#include "ui/rotation/background.h"
#include "ui/rotation/change_card.h"
#include "ui/rotation/change_words.h"
#include "ui/rotation/clock_card.h"
#include "ui/rotation/gain_words.h"
#include "ui/rotation/track_text.h"
#include "ui/rotation/wish_card.h"

#include <QAbstractItemModelTester>
#include <QCheckBox>
#include <QComboBox>
#include <QPushButton>
#include <QRegularExpression>
#include <QSignalSpy>
#include <QTableView>
#include <QUndoStack>

#include <set>

namespace tierloam::rotation {
namespace {

TEST_F(RotationPageTest, ShowsTheYearInLanesAndInTheTable)
{
    const YearLanes& year = page_->lanes()->year();
    ASSERT_EQ(year.lanes.lanes.size(), 1u);
    ASSERT_TRUE(firstLift());
    EXPECT_EQ(year.lanes.lanes.front().marks.size(), year.steps.front().size());
    static const QRegularExpression withRange{QStringLiteral("about \\d+(\\.\\d)?\u00a0L \\(\\d+(\\.\\d)?–\\d+(\\.\\d)?\\) of castings")};
    EXPECT_TRUE(text("planCost").contains(withRange)) << text("planCost").toStdString();
    auto* table = page_->findChild<QTableView*>(QStringLiteral("stepTable"));
    EXPECT_EQ(table->model()->rowCount(), static_cast<int>(year.steps.front().size()));
    QAbstractItemModelTester tester{table->model(), QAbstractItemModelTester::FailureReportingMode::Fatal};
    page_->findChild<QPushButton*>(QStringLiteral("stepsAsTable"))->click();
    EXPECT_TRUE(table->isVisible());
    table->setCurrentIndex(table->model()->index(0, 0));
    EXPECT_NE(page_->lanes()->chosen(), nullptr);
}

TEST_F(RotationPageTest, FoodThatTheAdviceWithholdsIsNotSplitAndTheCardSaysWhy)
{
    journal::Entry hot;
    hot.stack = household_->journal()->entries.front().stack;
    hot.date.day = today_;
    hot.action = journal::Reading{.bin = celsius(34)};
    household_->recordAll({hot}, QStringLiteral("hot"));
    household_->finishWrites();
    ASSERT_TRUE(QTest::qWaitFor([this] { return household_->reckoningIsCurrent(); }, patience));
    const auto says = [this](const QString& words) {
        const auto labels = page_->findChild<QWidget*>(QStringLiteral("feedingCard"))->findChildren<QLabel*>();
        return std::any_of(labels.begin(), labels.end(), [&](const QLabel* label) { return label->text().contains(words); });
    };
    EXPECT_TRUE(QTest::qWaitFor([&] { return says(QStringLiteral("give no food until it is cooler")); }, patience));
    EXPECT_FALSE(says(QStringLiteral("At most")));
}

TEST_F(RotationPageTest, TheKeyStandsWholeAtEachWidth)
{
    auto* key = page_->findChild<QWidget*>(QStringLiteral("lanesKey"));
    ASSERT_NE(key, nullptr);
    std::set<int> heights;
    for (const int width : {700, 820, 860, 1000, 1400}) {
        page_->resize(width, 900);
        QCoreApplication::processEvents();
        EXPECT_EQ(key->height(), key->heightForWidth(key->width())) << width;
        heights.insert(key->height());
    }
    EXPECT_GT(heights.size(), 1U) << "more rows where it is narrow";
}

TEST_F(RotationPageTest, AHarvestIsMovedByKeysKeptAndTakenBackByUndo)
{
    const auto lift = firstLift();
    ASSERT_TRUE(lift);
    page_->lanes()->choose(lift);
    const PlanStep before = *page_->lanes()->chosen();
    EXPECT_TRUE(page_->lanes()->accessibleName().contains(QStringLiteral("lift the bottom tray")));
    QTest::keyClick(page_->lanes(), Qt::Key_Right, Qt::ShiftModifier | Qt::ControlModifier);
    const Day on = before.on + std::chrono::days{7};
    ASSERT_TRUE(planned([&](const planning::YearPlan& plan) {
        return std::any_of(plan.stacks.front().planned.harvests.begin(), plan.stacks.front().planned.harvests.end(), [&](const auto& each) { return each.batch == before.batch && each.liftOn == on; });
    }));
    const PlanStep* moved = page_->lanes()->chosen();
    ASSERT_NE(moved, nullptr);
    EXPECT_TRUE(moved->pinned);
    EXPECT_EQ(moved->batch, before.batch);
    EXPECT_TRUE(text("chosenStep").contains(QStringLiteral("chosen by hand")));
    static const QRegularExpression colonies{QStringLiteral("colony at its end [^()]*\\([^()]*–[^()]*\\), usually [^()]*\\([^()]*–[^()]*\\)\\.")};
    EXPECT_TRUE(text("chosenStep").contains(colonies)) << text("chosenStep").toStdString();
    EXPECT_EQ(planning::wishesFrom(household_->kept(store::settingYearWishes).toStdString()).pinned.at("Mill").at(before.batch), on);
    household_->undoStack()->undo();
    ASSERT_TRUE(planned([](const planning::YearPlan& plan) { return std::find(plan.stacks.front().pinned.begin(), plan.stacks.front().pinned.end(), true) == plan.stacks.front().pinned.end(); }));
    EXPECT_EQ(page_->lanes()->chosen()->on, before.on);
}

/// What waiting costs comes with its range, of the members that bear it.
TEST_F(RotationPageTest, WhatWaitingCostsHasItsRange)
{
    const auto lift = firstLift();
    ASSERT_TRUE(lift);
    page_->lanes()->choose(lift);
    page_->lanes()->moveChosen(150);
    ASSERT_TRUE(planned([](const planning::YearPlan& plan) { return plan.delayDays > 100; }));
    const auto harvests = [](const reckoning::RotationCourse& course) { return std::ranges::count_if(course.harvests, [](const auto& each) { return !each.begun; }); };
    const planning::StackYear& year = page_->plan()->stacks.front();
    ASSERT_GT(harvests(year.natural), harvests(year.planned)) << "chosen so that one falls out of the year";
    EXPECT_TRUE(text("planCost").contains(QStringLiteral("more would come within the year if none waited"))) << text("planCost").toStdString();
    const auto lost = planning::colonyLost(*page_->plan());
    ASSERT_LT(lost.p05, lost.p95);
    ASSERT_GE(std::abs(lost.p50), 0.01) << "chosen so that there is something to tell";
    const auto words = waitingText(lost);
    ASSERT_TRUE(words);
    EXPECT_TRUE(text("planCost").contains(*words)) << text("planCost").toStdString();
    static const QRegularExpression range{QStringLiteral("\\(.*\\)")};
    EXPECT_TRUE(words->contains(range)) << words->toStdString();
}

TEST(WaitingText, SaysBothEndsWhereTheyLieInDifferentDirections)
{
    EXPECT_EQ(waitingText({0.01, 0.03, 0.05}), QStringLiteral("waiting costs 30\u00a0g (10–50) of worms"));
    EXPECT_EQ(waitingText({-0.05, -0.03, -0.01}), QStringLiteral("waiting leaves 30\u00a0g (10–50) more of worms"));
    EXPECT_EQ(waitingText({-0.01, 0.03, 0.06}), QStringLiteral("waiting costs 30\u00a0g of worms (from 10\u00a0g more to 60\u00a0g fewer)"));
    EXPECT_EQ(waitingText({-0.06, -0.03, 0.01}), QStringLiteral("waiting leaves 30\u00a0g more of worms (from 60\u00a0g more to 10\u00a0g fewer)"));
    EXPECT_FALSE(waitingText({-0.02, 0.004, 0.02}));
}

TEST_F(RotationPageTest, AHarvestIsDraggedToAnotherDay)
{
    const auto lift = firstLift();
    ASSERT_TRUE(lift);
    const PlanStep before = page_->lanes()->year().steps.front()[static_cast<std::size_t>(lift->second)];
    const QPoint at = page_->lanes()->markCentre(lift->first, lift->second);
    QTest::mousePress(page_->lanes(), Qt::LeftButton, {}, at);
    QMouseEvent move{QEvent::MouseMove, at + QPoint{60, 0}, page_->lanes()->mapToGlobal(at + QPoint{60, 0}), Qt::NoButton, Qt::LeftButton, {}};
    QApplication::sendEvent(page_->lanes(), &move);
    QTest::mouseRelease(page_->lanes(), Qt::LeftButton, {}, at + QPoint{60, 0});
    ASSERT_TRUE(planned([](const planning::YearPlan& plan) { return std::find(plan.stacks.front().pinned.begin(), plan.stacks.front().pinned.end(), true) != plan.stacks.front().pinned.end(); }));
    EXPECT_GT(page_->lanes()->chosen()->on, before.on);
    page_->findChild<QPushButton*>(QStringLiteral("unpin"))->click();
    ASSERT_TRUE(planned([](const planning::YearPlan& plan) { return std::find(plan.stacks.front().pinned.begin(), plan.stacks.front().pinned.end(), true) == plan.stacks.front().pinned.end(); }));
}

TEST_F(RotationPageTest, WeekdaysAndGatheringAreKeptAndObeyed)
{
    for (int day = 0; day < 5; ++day) page_->findChild<QPushButton*>(QStringLiteral("weekday%1").arg(day))->click();
    page_->findChild<QPushButton*>(QStringLiteral("planGathered"))->click();
    EXPECT_EQ(page_->wishes().weekdays, 0x60u);
    ASSERT_TRUE(planned([&](const planning::YearPlan& plan) {
        return std::all_of(plan.stacks.front().planned.harvests.begin(), plan.stacks.front().planned.harvests.end(),
                           [&](const auto& each) { return each.liftOn <= today_ || std::chrono::weekday{each.liftOn}.iso_encoding() >= 6; });
    }));
}

/// The bottom tray of each stack: when it is ready, in the lane, in the tip, and to who listens.
TEST_F(RotationPageTest, TheLanesSayWhenTheBottomTrayIsReady)
{
    const auto of = [&](double chance, std::optional<int> p10, std::optional<int> p50, std::optional<int> p90) {
        reckoning::StackReckoning stack = household_->reckoning()->stacks.front();
        const auto day = [&](std::optional<int> on) { return on ? std::optional{today_ + std::chrono::days{*on}} : std::nullopt; };
        reckoning::TrayEstimate& bottom = stack.now.slots.front();
        bottom.state = reckoning::TrayState::working;
        bottom.tray = 2;
        bottom.readyProbability = chance;
        bottom.readyOn = {day(p10), day(p50), day(p90)};
        return readyOf(stack, today_);
    };
    const auto soon = of(0.07, 12, 30, 55);
    ASSERT_TRUE(soon);
    EXPECT_FALSE(soon->already);
    EXPECT_EQ(soon->early, today_ + std::chrono::days{12});
    EXPECT_EQ(soon->middle, today_ + std::chrono::days{30});
    EXPECT_EQ(soon->late, today_ + std::chrono::days{55});
    EXPECT_TRUE(soon->words.startsWith(QStringLiteral("tray 2 ready %1; today 7").arg(ui::datesText({soon->early, soon->middle, soon->late}, today_)))) << soon->words.toStdString();
    const auto done = of(0.92, -30, -20, -10);
    ASSERT_TRUE(done);
    EXPECT_TRUE(done->already);
    EXPECT_EQ(done->early, today_) << "from the start";
    EXPECT_EQ(done->words, QStringLiteral("tray 2 ready, 92\u00a0%"));
    const auto open = of(0.0, 200, std::nullopt, std::nullopt);
    ASSERT_TRUE(open);
    EXPECT_TRUE(open->middleOpen && open->lateOpen);
    EXPECT_FALSE(of(0.0, std::nullopt, std::nullopt, std::nullopt)) << "not within the year";
    // On the page.
    LanesView* lanes = page_->lanes();
    const auto& ready = lanes->year().lanes.lanes.front().ready;
    ASSERT_TRUE(ready);
    EXPECT_EQ(lanes->readyText(0), QStringLiteral("Mill: ") + ready->words);
    EXPECT_EQ(lanes->layoutNow().readyAt(lanes->year().lanes, lanes->layoutNow().readyRoom(lanes->year().lanes, 0).center()), 0);
    QTest::keyClick(lanes, Qt::Key_Home);
    EXPECT_TRUE(lanes->accessibleName().contains(ready->words)) << lanes->accessibleName().toStdString();
    QTest::keyClick(lanes, Qt::Key_End);
    EXPECT_TRUE(lanes->accessibleName().contains(ready->words)) << lanes->accessibleName().toStdString();
}

/// Where nobody is there for one stack alone it is drawn in its lane, told over it, in the line beneath, and to who listens.
TEST_F(RotationPageTest, AStacksOwnAbsenceStandsInItsLane)
{
    const std::string name = household_->reckoning()->stacks.front().name;
    // Another stack that is fed is not written as left alone: the days are of the first one.
    journal::Entry begun;
    begun.stack = "Loft";
    begun.date.day = today_ - std::chrono::days{20};
    begun.action = journal::Setup{};
    journal::Entry bed = begun;
    bed.slot = 1;
    bed.action = journal::Bed{{480, Unit::g}, "corrugated cardboard shredded", {}};
    journal::Entry worms = bed;
    worms.action = journal::Stock{{400, Unit::g}, {}};
    journal::Entry fed = bed;
    fed.date.day = today_ - std::chrono::days{3};
    fed.action = journal::Feed{{200, Unit::g}, {}, {}};
    journal::Entry away;
    away.stack = name;
    away.date.day = today_ + std::chrono::days{40};
    away.action = journal::Event{"away", today_ + std::chrono::days{54}};
    household_->recordAll({begun, bed, worms, fed, away}, QStringLiteral("away"));
    household_->finishWrites();
    const auto days = std::pair{today_ + std::chrono::days{40}, today_ + std::chrono::days{54}};
    LanesView* lanes = page_->lanes();
    const auto lane = [&](const std::string& stack) {
        const auto& all = lanes->year().lanes.lanes;
        return static_cast<int>(std::find_if(all.begin(), all.end(), [&](const auto& each) { return each.name.toStdString() == stack; }) - all.begin());
    };
    ASSERT_TRUE(QTest::qWaitFor([&] { return lanes->year().lanes.lanes.size() == 2 && !lanes->year().lanes.lanes[static_cast<std::size_t>(lane(name))].away.empty(); }, patience));
    EXPECT_TRUE(lanes->year().lanes.away.empty());
    const int here = lane(name), there = lane("Loft");
    EXPECT_EQ(lanes->year().lanes.lanes[static_cast<std::size_t>(here)].away, (std::vector{days}));
    EXPECT_TRUE(lanes->year().lanes.lanes[static_cast<std::size_t>(there)].away.empty());
    const QString range = ui::dayRange(days.first, days.second, today_);
    EXPECT_EQ(lanes->awayText(here), QStringLiteral("nobody is there for this stack: %1").arg(range));
    EXPECT_TRUE(lanes->awayText(there).isEmpty());
    const auto layout = lanes->layoutNow();
    const QRectF room = layout.awayRoom(lanes->year().lanes, days, here);
    EXPECT_EQ(lanes->awayTextAt(room.center()), QStringLiteral("%1: nobody is there for it, %2").arg(QString::fromStdString(name), range));
    EXPECT_TRUE(lanes->awayTextAt({room.center().x(), layout.slotRoom(lanes->year().lanes, there, 1).center().y()}).isEmpty());
    ASSERT_FALSE(lanes->year().steps[static_cast<std::size_t>(here)].empty());
    lanes->choose(std::pair{here, 0});
    EXPECT_TRUE(lanes->accessibleName().contains(range)) << lanes->accessibleName().toStdString();
    EXPECT_TRUE(text("chosenStep").contains(QStringLiteral("Nobody is there for this stack: %1.").arg(range))) << text("chosenStep").toStdString();
    lanes->choose(std::pair{there, 0});
    EXPECT_FALSE(text("chosenStep").contains(range));
}

TEST(YearLanes, AStepPinnedBeforeItsTurnSaysSo)
{
    const Day today{std::chrono::year{2031} / 5 / 2};
    PlanStep step;
    step.stack = "Mill";
    step.kind = drawing::Lane::Mark::Kind::lift;
    step.on = today + std::chrono::days{10};
    step.pinned = true;
    step.delay = -26;
    EXPECT_TRUE(stepText(step, today).contains(QStringLiteral("before it is due"))) << stepText(step, today).toStdString();
    step.delay = 3;
    EXPECT_TRUE(stepText(step, today).contains(QStringLiteral("after it is due")));
    step.delay = 0;
    EXPECT_FALSE(stepText(step, today).contains(QStringLiteral("due")));
    step.stack = "Balcony %1";
    step.tray = 7;
    EXPECT_TRUE(stepText(step, today).startsWith(QStringLiteral("Balcony %1, "))) << stepText(step, today).toStdString();
    EXPECT_TRUE(stepText(step, today).contains(QStringLiteral("(tray 7)"))) << stepText(step, today).toStdString();
}

/// Another button that is let go meanwhile ends nothing.
TEST_F(RotationPageTest, OnlyTheButtonThatDragsLetsAHarvestGo)
{
    const auto lift = firstLift();
    ASSERT_TRUE(lift.has_value());
    LanesView* lanes = page_->lanes();
    const QPoint at = lanes->markCentre(lift->first, lift->second), there = at + QPoint{60, 0};
    QSignalSpy moved{lanes, &LanesView::moved};
    QTest::mousePress(lanes, Qt::LeftButton, {}, at);
    QMouseEvent move{QEvent::MouseMove, there, lanes->mapToGlobal(there), Qt::NoButton, Qt::LeftButton, {}};
    QApplication::sendEvent(lanes, &move);
    ASSERT_TRUE(lanes->year().lanes.dragged);
    QMouseEvent other{QEvent::MouseButtonRelease, there, lanes->mapToGlobal(there), Qt::RightButton, Qt::LeftButton, {}};
    QApplication::sendEvent(lanes, &other);
    EXPECT_TRUE(moved.isEmpty());
    EXPECT_TRUE(lanes->year().lanes.dragged) << "still held";
    QTest::mouseRelease(lanes, Qt::LeftButton, {}, there);
    EXPECT_EQ(moved.size(), 1);
    EXPECT_FALSE(lanes->year().lanes.dragged);
}

/// Planned anew while a step is held, the plan may no longer have it.
TEST_F(RotationPageTest, AStepThatLeftThePlanIsNoLongerDragged)
{
    const auto lift = firstLift();
    ASSERT_TRUE(lift.has_value());
    LanesView* lanes = page_->lanes();
    const QPoint at = lanes->markCentre(lift->first, lift->second);
    QTest::mousePress(lanes, Qt::LeftButton, {}, at);
    YearLanes without = lanes->year();
    for (auto& steps : without.steps) steps.clear();
    for (auto& lane : without.lanes.lanes) lane.marks.clear();
    without.lanes.chosen.reset();
    lanes->setYear(without, today_);
    QSignalSpy moved{lanes, &LanesView::moved};
    QMouseEvent move{QEvent::MouseMove, at + QPoint{60, 0}, lanes->mapToGlobal(at + QPoint{60, 0}), Qt::NoButton, Qt::LeftButton, {}};
    QApplication::sendEvent(lanes, &move);
    QTest::mouseRelease(lanes, Qt::LeftButton, {}, at + QPoint{60, 0});
    EXPECT_EQ(lanes->chosen(), nullptr);
    EXPECT_TRUE(moved.isEmpty());
}

TEST_F(RotationPageTest, APlanIsPresentUntilEstimatesOrWishesChange)
{
    EXPECT_TRUE(page_->planIsPresent());
    page_->hide();
    auto wishes = page_->wishes();
    wishes.weekdays = 0x60;
    page_->setWishes(wishes, QStringLiteral("weekends"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return page_->wishes().weekdays == 0x60u; }, patience));
    EXPECT_FALSE(page_->planIsPresent());
    page_->refreshNow();
    EXPECT_TRUE(page_->planIsPresent());
    journal::Entry note;
    note.date.day = today_;
    note.stack = household_->reckoning()->stacks.front().name;
    note.action = journal::Feed{{500, Unit::g}, {}, {}};
    const auto before = household_->reckoning();
    household_->recordAll({note}, QStringLiteral("fed"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return household_->reckoningIsCurrent() && household_->reckoning() != before; }, patience));
    EXPECT_FALSE(page_->planIsPresent()) << "it was made of the estimates of before";
}

TEST_F(RotationPageTest, AHarvestIsKeptOnItsDayWithoutBeingMoved)
{
    const auto lift = firstLift();
    ASSERT_TRUE(lift);
    auto* pin = page_->findChild<QPushButton*>(QStringLiteral("pin"));
    page_->lanes()->choose(lift);
    ASSERT_TRUE(pin->isVisibleTo(page_.get()));
    EXPECT_FALSE(pin->accessibleName().isEmpty());
    const PlanStep before = *page_->lanes()->chosen();
    QTest::keyClick(page_->lanes(), Qt::Key_Return);
    const auto isPinned = [](const planning::YearPlan& plan) { return std::find(plan.stacks.front().pinned.begin(), plan.stacks.front().pinned.end(), true) != plan.stacks.front().pinned.end(); };
    ASSERT_TRUE(planned(isPinned));
    EXPECT_EQ(page_->lanes()->chosen()->on, before.on);
    EXPECT_TRUE(page_->lanes()->chosen()->pinned);
    EXPECT_FALSE(pin->isVisibleTo(page_.get()));
    page_->findChild<QPushButton*>(QStringLiteral("unpin"))->click();
    ASSERT_TRUE(planned([&](const planning::YearPlan& plan) { return !isPinned(plan); }));
    pin->click();
    ASSERT_TRUE(planned(isPinned));
}

/// What else was advised in the last 90 days stands in the diary, counted and line by line; the weekly feedings are counted alone.
TEST_F(RotationPageTest, TheDiarySaysWhatWasAdvisedAndWhatWasDone)
{
    auto* card = page_->findChild<TrackCard*>(QStringLiteral("trackCard"));
    const auto line = [this](advice::Code code, const char* text, int from, std::optional<int> to, std::optional<int> done) {
        const auto day = [this](int ago) { return today_ - std::chrono::days{ago}; };
        advice::DiaryLine made;
        made.advice.code = code;
        made.advice.text = text;
        made.from = day(from);
        if (to) made.to = day(*to);
        if (done) made.doneOn = day(*done);
        return made;
    };
    using advice::Code;
    card->tell({{"Mill", {line(Code::tooDry, "Pour 1.5 L of water over the bed", 9, 5, 7), line(Code::tooWet, "Mix dry shredded paper into the bed", 4, 1, std::nullopt),
                          line(Code::heat, "Move the stack", 2, std::nullopt, std::nullopt), line(Code::feedDue, "Feed", 30, 28, 28), line(Code::feedDue, "Feed", 20, 12, 12)}}});
    const QString said = card->recordText();
    EXPECT_TRUE(said.contains(QStringLiteral("eedings due in the last 90 days: 2, given within 3 days: 1"))) << said.toStdString();
    EXPECT_TRUE(said.contains(QStringLiteral("ther advice in that time: 2, followed: 1"))) << said.toStdString();
    EXPECT_TRUE(said.front().isUpper());
    QString diary;
    for (const auto* label : card->findChildren<QLabel*>()) diary += label->text() + u'\n';
    EXPECT_TRUE(diary.contains(QStringLiteral("Mill: “Pour 1.5\u00a0L of water over the bed”; done %1 later").arg(ui::daysLong(2)))) << diary.toStdString();
    EXPECT_TRUE(diary.contains(QStringLiteral("“Mix dry shredded paper into the bed”; not done, taken back after %1").arg(ui::daysLong(3))));
    EXPECT_TRUE(diary.contains(QStringLiteral("“Move the stack”; still due")));
    EXPECT_LT(diary.indexOf(QStringLiteral("Move the stack")), diary.indexOf(QStringLiteral("Pour 1.5"))) << "the latest first";
    EXPECT_FALSE(diary.contains(QStringLiteral("“Feed”")));
}

/// A round wish, and one unit for it and for what the plan gives.
TEST_F(RotationPageTest, AWishIsProposedAndAnsweredInOneUnit)
{
    for (const auto measures : {ui::Measures::metric, ui::Measures::us}) {
        ui::setMeasures(measures);
        const bool us = measures == ui::Measures::us;
        Background background;
        WishCard card{*household_, background};
        card.setPlan(household_->reckoning(), std::make_shared<const planning::YearPlan>(*page_->plan()));
        const auto* litres = card.findChild<ui::VolumeField*>();
        ASSERT_NE(litres, nullptr);
        EXPECT_EQ(litres->edit()->text(), us ? u"5" : u"20");
        EXPECT_EQ(litres->unitList()->currentText(), us ? u"gal" : u"L");
        const auto labels = card.findChildren<QLabel*>();
        const auto answer = std::ranges::find_if(labels, [](const QLabel* each) { return each->text().contains(QStringLiteral("the plan gives")); });
        ASSERT_NE(answer, labels.end());
        EXPECT_TRUE((*answer)->text().contains(QString{QChar{0xa0} % litres->unitList()->currentText()})) << (*answer)->text().toStdString();
    }
    ui::setMeasures(ui::Measures::metric);
}

/// The cards ask as well, and nobody plans the year for that.
TEST_F(RotationPageTest, AComparisonIsNotCalledPlanningTheYear)
{
    const auto planning = [this] { return text("pageLine").contains(QStringLiteral("being planned")); };
    ASSERT_TRUE(QTest::qWaitFor([&] { return !planning(); }, patience));
    page_->findChild<QPushButton*>(QStringLiteral("compare"))->click();
    EXPECT_EQ(text("changeSentence"), QStringLiteral("Comparing…"));
    EXPECT_FALSE(planning());
    auto wishes = page_->wishes();
    wishes.gathering = planning::Gathering::spread;
    page_->setWishes(wishes, QStringLiteral("gathered"));
    EXPECT_TRUE(planning()) << "of the plan itself it is said";
}

/// Between new estimates and the plan made on them the plan before may be shown once more; it still rests on the estimates before.
TEST_F(RotationPageTest, AWishIsComparedOnTheEstimatesOnWhichThePlanWasMade)
{
    const auto lift = firstLift();
    ASSERT_TRUE(lift);
    const PlanStep step = page_->lanes()->year().steps.front()[static_cast<std::size_t>(lift->second)];
    const auto* wish = page_->findChild<WishCard*>();
    ASSERT_NE(wish, nullptr);
    const auto before = household_->reckoning();
    ASSERT_EQ(wish->basis(), before.get());
    const auto* plan = page_->plan();
    bool looked = false;
    const auto looking = QObject::connect(household_.get(), &household::Household::reckoned, page_.get(), [&] {
        if (looked || household_->reckoning() == before) return;
        looked = true;
        for (int again = 0; again < 2; ++again) Q_EMIT page_->lanes()->moved(step, step.on + std::chrono::days{7}); // the second changes no wish: the plan is shown as it is
        EXPECT_EQ(page_->plan(), plan) << "none came meanwhile";
        EXPECT_EQ(wish->basis(), before.get());
    });
    journal::Entry entry;
    entry.date.day = today_;
    entry.stack = step.stack;
    entry.action = journal::Feed{{200, Unit::g}, "", {}};
    household_->record(entry, QStringLiteral("a feeding"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return looked && page_->plan() != plan && page_->planIsPresent(); }, patience));
    EXPECT_EQ(wish->basis(), household_->reckoning().get());
    QObject::disconnect(looking);
}

/// One clock in words, of a stack that it is asked of.
TEST_F(RotationPageTest, WhatRaisesAWishIsNotToldOfAnother)
{
    Background background;
    WishCard card{*household_, background};
    card.show();
    card.setPlan(household_->reckoning(), std::make_shared<const planning::YearPlan>(*page_->plan()));
    auto* ask = card.findChild<QPushButton*>(QStringLiteral("raiseWish"));
    ASSERT_TRUE(ask && ask->isEnabled());
    const auto told = [&] {
        EXPECT_TRUE(QTest::qWaitFor([&] { return !background.busy(); }, patience));
        const auto labels = card.findChildren<QLabel*>();
        return std::ranges::any_of(labels, [](const QLabel* each) { return each->isVisible() && each->text().contains(QStringLiteral("more food a week")); });
    };
    ask->click();
    EXPECT_TRUE(told());
    ask->click();
    card.findChild<QCheckBox*>()->toggle(); // another wish, while the answer is on its way
    EXPECT_FALSE(told());
}

class ClockWords : public RotationPageTest {
protected:
    QString said(const planning::TurnClock& clock, const std::function<void(reckoning::StackReckoning&)>& change = {})
    {
        auto all = std::make_shared<reckoning::Reckoning>(*household_->reckoning());
        if (change) change(all->stacks.front());
        ClockCard* card = page_->findChild<ClockCard*>(QStringLiteral("clockCard"));
        card->tell({{"Mill", clock}}, *all);
        QStringList lines;
        for (const auto* label : card->findChildren<QLabel*>()) lines << label->text();
        return lines.join(u'\n');
    }
};

TEST_F(ClockWords, SayOneDateWhatHoldsItBackAndWhatEachLeverGains)
{
    planning::TurnClock clock;
    clock.turn = {today_ + std::chrono::days{20}, today_ + std::chrono::days{30}, today_ + std::chrono::days{44}};
    clock.levers = {{planning::Limit::cold, 2.0, {9, 14, 20}}, {planning::Limit::food, 0.15, {4, 9, 12}}, {planning::Limit::worms, 0.2, {0, 0, 1}}, {planning::Limit::bedding, 0.5, {-6, -4, 0}},
                    {planning::Limit::water, 0.7, {0, 1, 2}}};
    clock.limit = planning::Limit::cold;
    const QString text = said(clock);
    const auto days = [](int number) { return ui::daysLong(number); };
    for (const QString& part : {QStringLiteral("Mill: "), QStringLiteral("Cold holds it back. It would be due: 2\u00a0°C warmer: %1 sooner (9–20); 150\u00a0g more a week: %2 sooner (4–12)").arg(days(14), days(9)),
                                QStringLiteral("200\u00a0g more worms: no difference (up to %1 sooner)").arg(days(1)), QStringLiteral("half the bedding in the top tray: %1 later (0–6)").arg(days(4)),
                                QStringLiteral("0.7\u00a0L of water: %1 sooner (0–2)").arg(days(1))})
        EXPECT_TRUE(text.contains(part)) << part.toStdString() << " is not in: " << text.toStdString();
    clock.limit = planning::Limit::none;
    EXPECT_TRUE(said(clock).contains(QStringLiteral("Nothing holds it back much.")));
    clock.turn = {};
    EXPECT_TRUE(said(clock).contains(QStringLiteral("Mill: not within a year")));
}

TEST_F(ClockWords, SayOfWhichStacksTheyAreWhereTheyAreNotOfAll)
{
    const auto of = [&](int stacks) {
        reckoning::Reckoning all;
        for (int i = 0; i < stacks; ++i) {
            all.stacks.push_back(household_->reckoning()->stacks.front());
            all.stacks.back().name = "Mill " + std::to_string(i);
        }
        return all;
    };
    const auto said = [&](const reckoning::Reckoning& all) {
        auto* card = page_->findChild<ClockCard*>(QStringLiteral("clockCard"));
        card->tell({}, all);
        QStringList lines;
        for (const auto* label : card->findChildren<QLabel*>()) lines << label->text();
        return lines.join(u'\n');
    };
    EXPECT_FALSE(said(of(12)).contains(QStringLiteral("on the shelf")));
    EXPECT_TRUE(said(of(13)).contains(QStringLiteral("these are the first 12 on the shelf"))) << said(of(13)).toStdString();
    // As people put them, and those that stand before those that were given up.
    reckoning::Reckoning all = of(14);
    all.stacks[0].retired = true;
    const AskedStacks asked = askedStacks(all, {"Mill 13", "Mill 0", "Mill 12"});
    ASSERT_EQ(asked.stacks.size(), 12U);
    EXPECT_EQ(asked.standing, 13U);
    EXPECT_TRUE(asked.leavesOut());
    EXPECT_EQ(asked.stacks[0]->name, "Mill 13");
    EXPECT_EQ(asked.stacks[1]->name, "Mill 12");
    EXPECT_EQ(asked.stacks[2]->name, "Mill 1");
}

TEST_F(ClockWords, SayThatATurnHasComeOnlyWhereTheDueListDoes)
{
    planning::TurnClock clock;
    clock.has = true;
    const QString sure = QStringLiteral("Mill: due now"), about = QStringLiteral("due about now; the list says so once it is 80 % sure");
    const auto with = [&](bool turn, bool ready, int spare) {
        return said(clock, [&](reckoning::StackReckoning& stack) {
            stack.turnSince = turn ? std::optional{today_} : std::nullopt;
            stack.readySince = ready ? std::optional{today_} : std::nullopt;
            stack.record.spareTrays = spare;
        });
    };
    EXPECT_TRUE(with(true, true, 0).contains(sure));
    EXPECT_TRUE(with(true, false, 1).contains(sure));
    EXPECT_TRUE(with(true, false, 0).contains(about)) << "the bottom tray is not raised as ready";
    EXPECT_TRUE(with(false, true, 0).contains(about));
    EXPECT_FALSE(with(false, true, 0).contains(sure));
}

TEST_F(ClockWords, OfAStackWithATrayInTheLightSayTheTakingAndTheTurnAfterIt)
{
    planning::TurnClock clock;
    clock.takenOn = today_ + std::chrono::days{5};
    clock.turn = {today_ + std::chrono::days{50}, today_ + std::chrono::days{60}, today_ + std::chrono::days{80}};
    clock.levers = {{planning::Limit::food, 0.15, {4, 4, 4}}};
    clock.limit = planning::Limit::food;
    const QString text = said(clock, [&](reckoning::StackReckoning& stack) { stack.turnSince = today_; });
    EXPECT_TRUE(text.contains(QStringLiteral("castings in the light, taken about "))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("the next step due "))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("Food holds it back.")));
    EXPECT_FALSE(text.contains(QStringLiteral("due now")));
}

TEST(RotationPageEmpty, SaysInOneSentenceWhatWillAppearAndShowsNoCards)
{
    QTemporaryDir folder;
    ui::Theme theme;
    theme.setMode(ui::ThemeMode::light);
    theme.apply();
    household::Household::Settings settings;
    settings.createIfAbsent = true;
    auto opened = household::Household::open(folder.filePath(QStringLiteral("new.tierloam")), std::make_shared<household::FixedClock>(Day{std::chrono::year{2031} / 5 / 2}), settings);
    auto& household = std::get<std::unique_ptr<household::Household>>(opened);
    RotationPage page{*household, theme};
    page.resize(1000, 900);
    page.show();
    ASSERT_TRUE(QTest::qWaitFor([&] { return household->reckoningIsCurrent(); }, patience));
    int sentences = 0;
    for (const auto* label : page.findChildren<QLabel*>())
        if (label->isVisible() && label->text().contains(QStringLiteral("coming year appears here"))) ++sentences;
    EXPECT_EQ(sentences, 1);
    for (const char* card : {"feedingCard", "wishCard", "changeCard"}) {
        const auto* found = page.findChild<QWidget*>(QString::fromLatin1(card));
        ASSERT_NE(found, nullptr) << card;
        EXPECT_FALSE(found->isVisible()) << card;
    }
    qApp->setStyleSheet({});
}

}
}
