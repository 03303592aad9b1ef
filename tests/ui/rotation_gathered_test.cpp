// Gathering on the page: how long a harvest may wait, what that gains, and why nothing is gathered where nothing is.
#include "tests/ui/rotation_fixture.h"

#include "ui/common/choice_field.h"
#include "ui/common/dates.h"
#include "ui/common/field_edit.h"
#include "ui/rotation/gain_words.h"

#include <QPushButton>
#include <QUndoStack>

#include <set>

namespace tierloam::rotation {
namespace {

planning::YearPlan gathered(std::vector<std::vector<int>> apart, std::vector<std::vector<int>> chosen, int delay, int mostWait = planning::usualWait)
{
    planning::YearPlan plan;
    plan.wishes.gathering = planning::Gathering::gathered;
    plan.wishes.mostWait = mostWait;
    const auto daysOf = [](const std::vector<std::vector<int>>& lift) {
        std::set<int> days;
        for (const auto& each : lift) days.insert(each.begin(), each.end());
        return static_cast<int>(days.size());
    };
    plan.apart.lift = std::move(apart);
    plan.apart.days = daysOf(plan.apart.lift);
    plan.days.lift = std::move(chosen);
    plan.days.days = daysOf(plan.days.lift);
    plan.days.delay = delay;
    return plan;
}

TEST(GatheredText, SaysWhatIsGainedOrWhyNothingIs)
{
    EXPECT_EQ(gatheredText(gathered({{10, 80}, {14, 90}}, {{14, 90}, {14, 90}}, 18)),
              QStringLiteral("Gathered: 2 day(s) of lifting fewer, for %1 of delay in all; none waits more than %2 for others.").arg(ui::daysLong(18), ui::daysLong(14)));
    EXPECT_EQ(gatheredText(gathered({{10}, {14}}, {{10}, {10}}, 0)), QStringLiteral("Gathered: 1 day(s) of lifting fewer, and none waits."));
    EXPECT_TRUE(gainedByGathering(gathered({{10}, {14}}, {{10}, {10}}, 0)));
    EXPECT_FALSE(gainedByGathering(gathered({{10}, {27}}, {{10}, {27}}, 0)));
    EXPECT_TRUE(gatheredText(gathered({{10, 80}, {}}, {{10, 80}, {}}, 0)).contains(QStringLiteral("only one stack has any")));
    EXPECT_TRUE(gatheredText(gathered({{10}, {10}}, {{10}, {10}}, 0)).contains(QStringLiteral("meet as they come")));
    EXPECT_TRUE(gatheredText(gathered({{10}, {27}}, {{10}, {27}}, 0)).contains(QStringLiteral("are %1 apart, and none may wait more than %2").arg(ui::daysLong(17), ui::daysLong(14))));
    EXPECT_TRUE(gatheredText(gathered({{10}, {17}}, {{10}, {17}}, 0, 7)).contains(QStringLiteral("a day saved is worth %1 of delay").arg(ui::daysLong(14))));
}

TEST_F(RotationPageTest, HowLongAHarvestMayWaitIsChosenKeptAndUndone)
{
    auto* wait = page_->findChild<ui::ChoiceField*>(QStringLiteral("mostWait"));
    ASSERT_NE(wait, nullptr);
    auto* gain = page_->findChild<QLabel*>(QStringLiteral("planGain"));
    ASSERT_NE(gain, nullptr);
    EXPECT_FALSE(wait->isVisible()) << "nobody asked for it";
    EXPECT_FALSE(gain->isVisible());
    page_->findChild<QPushButton*>(QStringLiteral("planGathered"))->click();
    ASSERT_TRUE(planned([](const planning::YearPlan& plan) { return plan.wishes.gathering == planning::Gathering::gathered; }));
    EXPECT_TRUE(wait->isVisible());
    EXPECT_EQ(wait->value().toInt(), 14);
    EXPECT_TRUE(wait->list()->accessibleName().contains(QStringLiteral("How long a harvest may wait"))) << wait->list()->accessibleName().toStdString();
    EXPECT_TRUE(gain->isVisible());
    EXPECT_TRUE(gain->text().contains(QStringLiteral("only one stack has any"))) << gain->text().toStdString();
    EXPECT_TRUE(text("planCost").contains(QStringLiteral("counts as %1 of delay").arg(ui::daysLong(28)))) << text("planCost").toStdString();
    wait->list()->setFocus();
    QTest::keyClick(wait->list(), Qt::Key_Down);
    EXPECT_EQ(page_->wishes().mostWait, 21) << "by the arrow keys";
    ASSERT_TRUE(planned([](const planning::YearPlan& plan) { return plan.wishes.mostWait == 21; }));
    household_->undoStack()->undo();
    ASSERT_TRUE(planned([](const planning::YearPlan& plan) { return plan.wishes.mostWait == 14; }));
    EXPECT_EQ(wait->value().toInt(), 14) << "the list follows";
    auto odd = page_->wishes();
    odd.mostWait = 5; // kept by hand
    page_->setWishes(odd, QStringLiteral("odd"));
    EXPECT_EQ(wait->value().toInt(), 5);
}

/// Until the new plan is there the page speaks of the one that stands on it.
TEST_F(RotationPageTest, WhatIsSaidOfAPlanIsSaidOfTheOneThatStands)
{
    page_->findChild<QPushButton*>(QStringLiteral("planGathered"))->click();
    ASSERT_NE(page_->plan(), nullptr);
    ASSERT_EQ(page_->plan()->wishes.gathering, planning::Gathering::asTheyCome) << "the new plan is not there yet";
    EXPECT_FALSE(page_->findChild<QLabel*>(QStringLiteral("planGain"))->isVisible());
    EXPECT_FALSE(text("planCost").contains(QStringLiteral("counts as")));
}

}
}
