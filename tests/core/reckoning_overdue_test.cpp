// A ready tray that is left is called overdue before its 30 days are over, and stays so from day to day.
#include "core/reckoning/overdue.h"

#include <gtest/gtest.h>

#include <vector>

namespace tierloam::reckoning {
namespace {

const Day today{std::chrono::year{2031} / 5 / 2};

struct Past { double kept, depthCm; TrayState bottom = TrayState::ready; int batch = 1; };

/// The last days, today's last; of it the colony is a kilogram.
bool overdueAfter(const std::vector<Past>& days, std::optional<double> todaysKept = {}, int fedAgo = 3, double givenKg = 0.9, double keepsKg = 0.3, double bedIn50DaysC = 18)
{
    StackReckoning stack;
    stack.record.trayHeightCm = 11;
    stack.forecast.feedGivenKg = givenKg;
    stack.forecast.feedLowKg = keepsKg;
    stack.record.lastFeed = today - std::chrono::days{fedAgo};
    for (std::size_t i = 0; i < days.size(); ++i) {
        StackEstimate day;
        day.day = today - std::chrono::days{static_cast<int>(days.size() - 1 - i)};
        day.colonyKg = {0.8, 1.0, 1.2};
        day.slots.resize(2);
        day.slots[0].state = days[i].bottom;
        day.slots[0].batch = days[i].batch;
        day.slots[1].depthCm = days[i].depthCm;
        day.ahead.emplace().colonyKeptIn60Days = days[i].kept;
        stack.history.push_back(day);
    }
    stack.now = stack.history.back();
    stack.now.binTempC = {16, 18, 20};
    for (const int ahead : {50, 70}) {
        StackEstimate week;
        week.day = today + std::chrono::days{ahead};
        week.binTempC = ahead == 50 ? Band{bedIn50DaysC - 2, bedIn50DaysC, bedIn50DaysC + 2} : Band{0, 2, 4};
        stack.forecast.days.push_back(week);
    }
    if (todaysKept) stack.now.ahead->colonyKeptIn60Days.reset(); // the weekly look was on another day
    return isOverdueEarly(stack, todaysKept.value_or(days.back().kept));
}

TEST(OverdueEarly, WhenTheColonyFallsAndUntilItNoLongerDoes)
{
    EXPECT_FALSE(overdueAfter({{1.0, 6}, {0.88, 6}}));
    EXPECT_TRUE(overdueAfter({{1.0, 6}, {0.85, 6}}));
    EXPECT_TRUE(overdueAfter({{0.84, 6}, {0.88, 6}, {0.91, 6}})) << "a week's feeding moves it by some hundredths";
    EXPECT_FALSE(overdueAfter({{0.84, 6}, {0.93, 6}, {0.88, 6}}));
}

TEST(OverdueEarly, TodayAloneDecidesOnlyWhatIsClear)
{
    EXPECT_FALSE(overdueAfter({{0.88, 6}, {0.88, 6}}, 0.84)) << "a day before a feeding is lower than one after it";
    EXPECT_TRUE(overdueAfter({{0.88, 6}, {0.88, 6}}, 0.81));
    EXPECT_TRUE(overdueAfter({{0.84, 6}, {0.84, 6}}, 0.94));
    EXPECT_FALSE(overdueAfter({{0.84, 6}, {0.84, 6}}, 0.96));
}

TEST(OverdueEarly, NotOfAColonyThatFallsForWantOfFood)
{
    EXPECT_TRUE(overdueAfter({{0.8, 6}}, {}, 14));
    EXPECT_FALSE(overdueAfter({{0.8, 6}}, {}, 15));
    EXPECT_TRUE(overdueAfter({{0.8, 10.5}}, {}, 40)) << "a full tray is one all the same";
}

TEST(OverdueEarly, NotOfAColonyThatFallsInTheColdOrTheHeat)
{
    EXPECT_TRUE(overdueAfter({{0.8, 6}}, {}, 3, 0.9, 0.3, 5.5)) << "in 70 days it is colder: too far off to count";
    EXPECT_FALSE(overdueAfter({{0.8, 6}}, {}, 3, 0.9, 0.3, 4.5));
    EXPECT_FALSE(overdueAfter({{0.8, 6}}, {}, 3, 0.9, 0.3, 31));
    EXPECT_TRUE(overdueAfter({{0.8, 10.5}}, {}, 3, 0.9, 0.3, 4.5)) << "a full tray is one all the same";
}

TEST(OverdueEarly, WhenTheTopTrayIsFullAndUntilItHasSunk)
{
    EXPECT_FALSE(overdueAfter({{1.0, 9.9}}));
    EXPECT_TRUE(overdueAfter({{1.0, 10.0}}));
    EXPECT_TRUE(overdueAfter({{1.0, 10.2}, {1.0, 9.5}, {1.0, 9.1}}));
    EXPECT_FALSE(overdueAfter({{1.0, 10.2}, {1.0, 8.9}, {1.0, 9.5}}));
}

TEST(OverdueEarly, OnlyOfATrayThatIsReadyAndOfNoOther)
{
    EXPECT_FALSE(overdueAfter({{0.5, 10.5, TrayState::nearly}}));
    EXPECT_FALSE(overdueAfter({{0.84, 6, TrayState::ready, 1}, {0.88, 6, TrayState::working, 1}, {0.88, 6, TrayState::ready, 1}}));
    EXPECT_FALSE(overdueAfter({{0.84, 6, TrayState::ready, 1}, {0.88, 6, TrayState::ready, 2}})) << "the tray beneath was lifted";
}

/// Fed again eight days ago after a famine: what is usual is still far less than what keeps them, and no lift brings food.
TEST(OverdueEarly, NotOfAColonyThatIsGivenFarLessThanKeepsIt)
{
    EXPECT_TRUE(overdueAfter({{0.8, 6}}, {}, 3, 0.4, 0.5));
    EXPECT_FALSE(overdueAfter({{0.8, 6}}, {}, 3, 0.39, 0.5));
    EXPECT_TRUE(overdueAfter({{0.8, 10.5}}, {}, 3, 0.1, 0.5)) << "a full tray is one all the same";
}

}
}
