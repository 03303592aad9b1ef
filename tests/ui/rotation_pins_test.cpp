// Pins and moves while the plan that knows of them is still being made, and lanes on which nothing comes.
#include "tests/ui/rotation_fixture.h"

#include "core/store/setting_names.h"
#include "ui/rotation/year_lanes.h"

#include <QPushButton>
#include <QTableView>
#include <QUndoStack>

#include <map>
#include <vector>

namespace tierloam::rotation {
namespace {

TEST_F(RotationPageTest, AHarvestKeptOnItsDayIsShownAsKeptAtOnce)
{
    const auto lift = firstLift();
    ASSERT_TRUE(lift);
    LanesView* lanes = page_->lanes();
    lanes->choose(lift);
    const Day on = lanes->chosen()->on;
    const auto* plan = page_->plan();
    QTest::keyClick(lanes, Qt::Key_Return);
    ASSERT_EQ(page_->plan(), plan) << "the new plan is not there yet";
    EXPECT_TRUE(lanes->chosen()->pinned);
    EXPECT_EQ(lanes->chosen()->on, on);
    EXPECT_TRUE(page_->findChild<QPushButton*>(QStringLiteral("unpin"))->isVisible());
    EXPECT_FALSE(page_->findChild<QPushButton*>(QStringLiteral("pin"))->isVisible());
    page_->findChild<QPushButton*>(QStringLiteral("unpin"))->click();
    EXPECT_FALSE(lanes->chosen()->pinned) << "nor is one that was let go again";
    EXPECT_TRUE(page_->wishes().pinned.empty());
}

TEST_F(RotationPageTest, AMoveStandsInTheTableAndStaysWhileOtherWishesChange)
{
    const auto lift = firstLift();
    ASSERT_TRUE(lift);
    LanesView* lanes = page_->lanes();
    lanes->choose(lift);
    const PlanStep before = *lanes->chosen();
    const auto* plan = page_->plan();
    const int done = household_->undoStack()->index();
    lanes->moveChosen(30);
    const Day on = before.on + std::chrono::days{30};
    page_->findChild<QPushButton*>(QStringLiteral("weekday0"))->click(); // and no Mondays, before the plan has come
    household_->keep(store::settingStackOrder, household::orderText({"Mill"}), QStringLiteral("order"));
    ASSERT_EQ(page_->plan(), plan) << "the new plan is not there yet";
    ASSERT_NE(lanes->chosen(), nullptr);
    EXPECT_EQ(lanes->chosen()->on, on);
    EXPECT_TRUE(lanes->chosen()->pending);
    const auto* table = page_->findChild<QTableView*>(QStringLiteral("stepTable"))->model();
    bool told = false;
    for (int row = 0; row < table->rowCount(); ++row)
        told = told || table->index(row, 0).data(Qt::AccessibleDescriptionRole).toString().contains(QStringLiteral("is being reckoned"));
    EXPECT_TRUE(told) << "the table says where it was put";
    for (int index = done + 3; index > done; --index) { // the order, the Mondays, the move; each once it is written
        ASSERT_TRUE(QTest::qWaitFor([&] { return household_->undoStack()->index() == index; }, patience)) << index;
        household_->undoStack()->undo();
    }
    ASSERT_TRUE(QTest::qWaitFor([&] { return page_->wishes().pinned.empty(); }, patience));
    ASSERT_TRUE(QTest::qWaitFor([&] { return page_->planIsPresent(); }, patience));
    EXPECT_EQ(lanes->chosen()->on, before.on);
    EXPECT_FALSE(lanes->chosen()->pending);
}

TEST_F(RotationPageTest, TwoMovesBeforeThePlanHasComeAreBothKept)
{
    LanesView* lanes = page_->lanes();
    std::vector<int> lifts;
    const auto& steps = lanes->year().steps.front();
    for (int i = 0; i < static_cast<int>(steps.size()); ++i)
        if (steps[static_cast<std::size_t>(i)].isHarvest) lifts.push_back(i);
    ASSERT_GE(lifts.size(), 2U);
    std::map<int, Day> wanted;
    const auto* plan = page_->plan();
    for (const int mark : {lifts[1], lifts[0]}) {
        lanes->choose(std::pair{0, mark});
        const PlanStep step = *lanes->chosen();
        wanted[step.batch] = step.on + std::chrono::days{4};
        lanes->moveChosen(4);
    }
    ASSERT_EQ(page_->plan(), plan) << "the new plan is not there yet";
    EXPECT_EQ(page_->wishes().pinned.at("Mill"), wanted);
    ASSERT_TRUE(QTest::qWaitFor([&] { return page_->planIsPresent(); }, patience));
    for (const auto& step : lanes->year().steps.front()) {
        if (!step.isHarvest || !wanted.contains(step.batch)) continue;
        EXPECT_EQ(step.on, wanted.at(step.batch)) << step.batch;
    }
}

/// A lane on which nothing comes says whether that is sure.
TEST_F(RotationPageTest, ALaneWithoutAStepSaysWhy)
{
    reckoning::Reckoning estimates = *household_->reckoning();
    reckoning::StackReckoning& stack = estimates.stacks.front();
    ASSERT_TRUE(stack.present);
    planning::YearPlan plan;
    plan.from = today_;
    plan.stacks.emplace_back().stack = stack.name;
    const auto note = [&] { return yearLanes(plan, &estimates, *household_->journal(), {}, today_).lanes.lanes.front().note; };
    stack.turnSince.reset();
    stack.readySince.reset();
    stack.record.dryingSince.reset();
    stack.record.spareTrays = 1;
    stack.forecast.turnOn = {};
    ASSERT_FALSE(planning::turnHangs(stack));
    EXPECT_EQ(note(), QStringLiteral("nothing within a year"));
    stack.forecast.turnOn = {today_ - std::chrono::days{40}, today_ - std::chrono::days{3}, std::nullopt};
    ASSERT_TRUE(planning::turnHangs(stack)) << "half of the members have it, and it is not called due";
    EXPECT_EQ(note(), QStringLiteral("whether it is due is not sure; a look decides"));
    EXPECT_EQ(yearLanes(plan, nullptr, *household_->journal(), {}, today_).lanes.lanes.front().note, QStringLiteral("nothing within a year"));
    reckoning::PlannedTray& tray = plan.stacks.front().planned.trays.emplace_back();
    tray.on = today_ + std::chrono::days{9};
    EXPECT_TRUE(note().endsWith(QStringLiteral("add a tray"))) << note().toStdString();
}

}
}
