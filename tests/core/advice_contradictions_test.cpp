// Advice over households drawn from the prior: no two pieces of one day contradict each other, whatever a household is like.
#include "tests/support/households.h"

#include "core/advice/advice.h"

#include <gtest/gtest.h>

#include <cstdio>
#include <map>

namespace tierloam::tests {
namespace {

using advice::Advice;
using advice::Code;

constexpr std::uint64_t series = 0x0ad51ce;
constexpr int households = 200;
constexpr int fewMembers = 64;

/// Independent of the program's own table: what nobody could do on one day.
bool clash(Code a, Code b)
{
    const auto is = [&](Code x, Code y) { return (a == x && b == y) || (a == y && b == x); };
    return is(Code::feedDue, Code::overfed) || is(Code::hungry, Code::overfed) || is(Code::tooDry, Code::tooWet) || is(Code::tooDry, Code::drainageHigh)
        || is(Code::feedDue, Code::cold) || is(Code::hungry, Code::trayFull) || is(Code::addTray, Code::tooEarly) || is(Code::harvestReady, Code::tooEarly)
        || is(Code::harvestReady, Code::addTray) || is(Code::heat, Code::cold) || is(Code::feedDue, Code::hungry) || is(Code::drainageLow, Code::drainageHigh)
        || is(Code::harvestReady, Code::readyNoHurry) || is(Code::dryingDone, Code::dryingLong);
}

TEST(AdviceOfManyHouseholds, NeverContradictsItself)
{
    std::map<std::string, int> seen;
    for (int number = 0; number < households; ++number) {
        const MadeUp household = makeHousehold(series, number);
        const Reckoned reckoned = reckonHousehold(household, fewMembers);
        const std::vector<Advice> all = advice::adviceFor(*reckoned.stack);
        for (std::size_t i = 0; i < all.size(); ++i) {
            ++seen[std::string{advice::codeName(all[i].code)}];
            EXPECT_FALSE(all[i].text.empty());
            EXPECT_FALSE(all[i].because.empty());
            EXPECT_GE(all[i].on, household.asOf);
            for (std::size_t j = i + 1; j < all.size(); ++j)
                EXPECT_FALSE(clash(all[i].code, all[j].code)) << "household " << number << ": " << all[i].text << " | " << all[j].text;
        }
    }
    for (const auto& [code, count] : seen) std::printf("%-18s %d\n", code.c_str(), count);
    EXPECT_GE(seen.size(), 8u); // otherwise nothing was tested
}

/// The check can fail: two pieces that clash are seen as such by both tables.
TEST(AdviceOfManyHouseholds, AClashIsSeen)
{
    Advice feed, stop;
    feed.stack = stop.stack = "Mill";
    feed.code = Code::feedDue;
    stop.code = Code::overfed;
    EXPECT_TRUE(clash(feed.code, stop.code));
    EXPECT_TRUE(advice::contradict(feed, stop));
    stop.code = Code::sumpFull;
    EXPECT_FALSE(clash(feed.code, stop.code));
    EXPECT_FALSE(advice::contradict(feed, stop));
}

}
}
