// Whose absence it is, and which days it holds.
#include "core/journal/absences.h"

#include <gtest/gtest.h>

namespace tierloam::journal {
namespace {

const Day start{std::chrono::year{2031} / 8 / 1};
Day on(int day) { return start + std::chrono::days{day - 1}; }

class AbsencesOf : public testing::Test {
protected:
    void away(const char* stack, int from, std::optional<int> to = {}) { add(stack, from, Event{"away", to ? std::optional{on(*to)} : std::nullopt}); }
    void add(const char* stack, int day, Action action)
    {
        Entry entry;
        entry.stack = stack;
        entry.date.day = on(day);
        entry.action = std::move(action);
        entries_.push_back(entry);
    }
    Entries entries_;
};
using Days = std::vector<AwayDays>;

TEST_F(AbsencesOf, ThatTouchOrOverlapAreOne)
{
    away("Mill", 5, 10);
    away("Mill", 11, 20);
    away("Mill", 12, 14);
    away("Mill", 22);
    EXPECT_EQ(absencesOf(entries_, "Mill"), (Days{{on(5), on(20)}, {on(22), on(22)}}));
}

TEST_F(AbsencesOf, AreOfTheStackTheyAreWrittenUnder)
{
    away("Mill", 5, 10);
    away("Loft", 9, 12);
    add("Mill", 6, Event{"moved", on(9)});
    EXPECT_EQ(absencesOf(entries_, "Mill"), (Days{{on(5), on(10)}}));
    EXPECT_EQ(absencesOf(entries_, "Loft"), (Days{{on(9), on(12)}}));
    EXPECT_TRUE(absencesOf(entries_, "Shed").empty());
}

TEST_F(AbsencesOf, OfAllStacksAreThoseUnderEachThatIsFed)
{
    away("Mill", 5, 10);
    away("Loft", 9, 12);
    EXPECT_EQ(absencesOfAll(entries_, on(1)), (Days{{on(9), on(10)}})) << "none is fed: those that have any";
    add("Mill", 1, Feed{{300, Unit::g}, {}, {}});
    EXPECT_EQ(absencesOfAll(entries_, on(1)), (Days{{on(5), on(10)}}));
    add("Loft", 1, Feed{{300, Unit::g}, {}, {}});
    EXPECT_EQ(absencesOfAll(entries_, on(1)), (Days{{on(9), on(10)}}));
    add("Shed", 1, Feed{{300, Unit::g}, {}, {}});
    EXPECT_TRUE(absencesOfAll(entries_, on(1)).empty()) << "somebody feeds the shed";
    EXPECT_EQ(absencesOfAll(entries_, on(200)), (Days{{on(9), on(10)}})) << "nothing was fed for half a year";
}

}
}
