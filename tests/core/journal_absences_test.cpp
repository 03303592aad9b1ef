// Days on which nobody was there, reckoned by ranges, against looking at each day.
#include "core/journal/absences.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

namespace tierloam::journal {
namespace {

const Day base{std::chrono::year{2031} / 1 / 1};
Day at(int day) { return base + std::chrono::days{day}; }

std::vector<AwayDays> drawn(std::mt19937& dice)
{
    std::vector<AwayDays> away(dice() % 6U);
    for (AwayDays& days : away) {
        days.from = at(static_cast<int>(dice() % 60U));
        days.to = days.from + std::chrono::days{static_cast<int>(dice() % 15U) - 1}; // one in fifteen is empty
    }
    return away;
}

TEST(Absences, DaysPresentAreThoseCountedOneByOne)
{
    std::mt19937 dice{5};
    for (int round = 0; round < 400; ++round) {
        const auto away = drawn(dice);
        for (const auto& [day, today] : {std::pair{0, 70}, std::pair{10, 40}, std::pair{25, 25}, std::pair{33, 34}}) {
            int present = 0;
            for (int each = day + 1; each <= today; ++each) present += isAway(at(each), away) ? 0 : 1;
            EXPECT_EQ(daysPresentSince(at(day), at(today), away), present) << round;
        }
        for (const int days : {1, 7, 56}) {
            int left = days, day = 70;
            while (true) {
                left -= isAway(at(day), away) ? 0 : 1;
                if (left == 0) break;
                --day;
            }
            EXPECT_EQ(startOfDaysPresent(days, at(70), away), at(day)) << round;
        }
    }
}

TEST(Absences, MergedAndCommonOnesHoldTheSameDays)
{
    std::mt19937 dice{7};
    for (int round = 0; round < 400; ++round) {
        const auto one = drawn(dice), other = drawn(dice);
        const auto mergedOne = merged(one), both = inBoth(mergedOne, merged(other));
        for (int day = -2; day < 80; ++day) {
            EXPECT_EQ(isAway(at(day), mergedOne), isAway(at(day), one)) << round;
            EXPECT_EQ(isAway(at(day), both), isAway(at(day), one) && isAway(at(day), other)) << round;
        }
        for (std::size_t i = 1; i < mergedOne.size(); ++i) EXPECT_GT(daysBetween(mergedOne[i - 1].to, mergedOne[i].from), 1) << "touching ones are joined";
    }
}

}
}
