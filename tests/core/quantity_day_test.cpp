// Civil days as text: every day of the three centuries goes both ways, and nothing that is no date is read as one.
#include "core/quantity/day_text.h"

#include <gmock/gmock.h>

using namespace tierloam;
using namespace std::chrono_literals;

namespace {

constexpr Day day(int year, unsigned month, unsigned dayOfMonth)
{
    return Day{std::chrono::year{year} / std::chrono::month{month} / std::chrono::day{dayOfMonth}};
}

TEST(DayText, GoesBothWaysForEveryDayThatIsAccepted)
{
    int days = 0;
    for (Day at = day(firstYear, 1, 1); at <= day(lastYear, 12, 31); at += std::chrono::days{1}) {
        const std::string text = dayText(at);
        ASSERT_EQ(text.size(), 10u);
        ASSERT_EQ(parseDay(text), at) << text;
        ++days;
    }
    EXPECT_EQ(days, 300 * 365 + 73); // leap years from 1904 to 2196 but 2100; 2000 is one: 74 − 1
}

TEST(DayText, OfKnownDays)
{
    EXPECT_EQ(dayText(Day{std::chrono::days{0}}), "1970-01-01");
    EXPECT_EQ(dayText(day(2031, 5, 1)), "2031-05-01");
    EXPECT_EQ(daysBetween(day(2031, 2, 28), day(2031, 3, 1)), 1);
    EXPECT_EQ(daysBetween(day(2032, 2, 28), day(2032, 3, 1)), 2);
    EXPECT_EQ(daysBetween(day(2032, 3, 1), day(2032, 2, 28)), -2);
}

class NoDay : public testing::TestWithParam<const char*> {};
INSTANTIATE_TEST_SUITE_P(Table, NoDay,
    testing::Values("", "2031", "2031-05", "2031-5-1", "2031-05-1", "31-05-01", "01.05.2031", "05/01/2031", "2031/05/01", "2031-05-32",
                    "2031-00-01", "2031-13-01", "2031-02-29", "2100-02-29", "1899-12-31", "2200-01-01", "2031-05-00", " 2031-05-01",
                    "2031-05-01 ", "2031-05-01T", "+031-05-01", "-031-05-01", "2031-+5-01", "20310501", "2031-W18-4", "2031‐05‐01", "0000-00-00"));
TEST_P(NoDay, IsRefused) { EXPECT_EQ(parseDay(GetParam()), std::nullopt); }

struct MomentCase {
    const char* text;
    std::optional<int> minute;
    const char* written;
};
class Moment : public testing::TestWithParam<MomentCase> {};
INSTANTIATE_TEST_SUITE_P(Table, Moment,
    testing::Values(MomentCase{"2031-05-01", std::nullopt, "2031-05-01"}, MomentCase{"2031-05-01T18:30", 1110, "2031-05-01T18:30"},
                    MomentCase{"2031-05-01T00:00", 0, "2031-05-01T00:00"}, MomentCase{"2031-05-01T23:59", 1439, "2031-05-01T23:59"},
                    MomentCase{"2031-05-01T07:05:59", 425, "2031-05-01T07:05"}));
TEST_P(Moment, GoesBothWays)
{
    const auto moment = parseDayAndTime(GetParam().text);
    ASSERT_TRUE(moment);
    EXPECT_EQ(moment->day, day(2031, 5, 1));
    EXPECT_EQ(moment->minuteOfDay, GetParam().minute);
    EXPECT_EQ(dayAndTimeText(*moment), GetParam().written);
    EXPECT_EQ(parseDayAndTime(dayAndTimeText(*moment)), moment);
}

class NoMoment : public testing::TestWithParam<const char*> {};
INSTANTIATE_TEST_SUITE_P(Table, NoMoment,
    testing::Values("", "T18:30", "2031-05-01T", "2031-05-01T18", "2031-05-01T1830", "2031-05-01T24:00", "2031-05-01T18:60", "2031-05-01T18:30:60",
                    "2031-05-01 18:30", "2031-05-01t18:30", "2031-05-01T18:30Z", "2031-05-01T18:30+01:00", "2031-05-01T18:30:00.5", "2031-02-29T10:00",
                    "2031-05-01T-1:30", "2031-05-01T18:3"));
TEST_P(NoMoment, IsRefused) { EXPECT_EQ(parseDayAndTime(GetParam()), std::nullopt); }

TEST(DayOfYear, CountsFromOneAndKnowsLeapYears)
{
    EXPECT_EQ(dayOfYear(day(2031, 1, 1)), 1);
    EXPECT_EQ(dayOfYear(day(2031, 3, 1)), 60);
    EXPECT_EQ(dayOfYear(day(2032, 3, 1)), 61);
    EXPECT_EQ(dayOfYear(day(2031, 12, 31)), 365);
    EXPECT_EQ(dayOfYear(day(2032, 12, 31)), 366);
    EXPECT_EQ(dayOfYear(day(2031, 7, 19)), 200);
}

}
