// Which days the charts show, as plain values.
#include "ui/trends/shown_days.h"

#include <gtest/gtest.h>

namespace tierloam::trends {

namespace {

using std::chrono::days;

constexpr Day today = std::chrono::sys_days{std::chrono::year{2031} / 5 / 2};
constexpr Period year{today - days{365}, today, today + days{91}};

int length(const ShownDays& shown) { return daysBetween(shown.view().from, shown.view().until); }

}

TEST(ShownDays, APartLiesWithinAndHasAWeekAtLeast)
{
    ShownDays shown;
    shown.follow(year);
    EXPECT_FALSE(shown.zoomed());
    EXPECT_TRUE(shown.set(today - days{100}, today - days{50}));
    EXPECT_TRUE(shown.zoomed());
    EXPECT_FALSE(shown.set(today - days{100}, today - days{50})) << "the same days once more";
    EXPECT_TRUE(shown.set(today, today));
    EXPECT_EQ(length(shown), 7);
    EXPECT_TRUE(shown.set(today - days{900}, today - days{800}));
    EXPECT_EQ(shown.view().from, year.from);
    EXPECT_EQ(length(shown), 100);
    EXPECT_TRUE(shown.set(today - days{900}, today + days{900}));
    EXPECT_FALSE(shown.zoomed());
}

TEST(ShownDays, ZoomKeepsTheDayItIsAboutAndAlwaysMovesSomething)
{
    ShownDays shown;
    shown.follow(year);
    shown.set(today - days{100}, today);
    shown.zoom(0.5, today - days{40});
    EXPECT_EQ(shown.view().from, today - days{70});
    EXPECT_EQ(shown.view().until, today - days{20});
    shown.set(today - days{8}, today);
    EXPECT_TRUE(shown.zoom(0.9, today));
    EXPECT_EQ(length(shown), 7);
    EXPECT_TRUE(shown.move(0.01)) << "a day at least";
    EXPECT_EQ(shown.view().until, today + days{1});
    EXPECT_TRUE(shown.move(-9.0));
    EXPECT_EQ(length(shown), 7);
}

TEST(ShownDays, AnotherPeriodKeepsWhatWasLookedAt)
{
    ShownDays shown;
    shown.follow(year);
    shown.set(today - days{100}, today - days{50});
    const Period later{year.from + days{1}, today + days{1}, year.until + days{1}};
    shown.follow(later);
    EXPECT_EQ(shown.view().from, today - days{100});
    EXPECT_EQ(shown.view().today, today + days{1});
    EXPECT_TRUE(shown.zoomed());
    shown.forget();
    shown.follow(year);
    EXPECT_EQ(shown.view(), year);
    EXPECT_FALSE(shown.zoomed());
}

}
