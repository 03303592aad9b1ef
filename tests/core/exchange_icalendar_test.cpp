// The calendar's text by the rules of RFC 5545; another library reads whole calendars in tests/cli/ics_read_back.py.
#include "core/exchange/icalendar.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tierloam::exchange {
namespace {

const Day today{std::chrono::year{2031} / 5 / 2};

TEST(Calendar, EscapesWhatTheFormatReserves) // RFC 5545, 3.3.11
{
    EXPECT_EQ(escapedText("a;b,c\\d\ne\r\nf\rg\a"), "a\\;b\\,c\\\\d\\ne\\nf\\ng");
    EXPECT_EQ(escapedText("plain: text"), "plain: text");
}

TEST(Calendar, FoldsAtSeventyFiveOctetsAndNeverInsideACharacter) // RFC 5545, 3.1
{
    EXPECT_EQ(foldedLine(std::string(75, 'a')), std::string(75, 'a').append("\r\n"));
    EXPECT_EQ(foldedLine(std::string(76, 'a')), std::string(75, 'a').append("\r\n a\r\n"));
    std::string worms;
    for (int i = 0; i < 60; ++i) worms += i % 3 == 0 ? "\xF0\x9F\xAA\xB1" : i % 3 == 1 ? "\xC3\xBC" : "x";
    const std::string folded = foldedLine(worms);
    std::string joined;
    std::size_t start = 0;
    while (start < folded.size()) {
        const std::size_t end = folded.find("\r\n", start);
        ASSERT_NE(end, std::string::npos);
        EXPECT_LE(end - start, 75u);
        const std::string_view line = std::string_view{folded}.substr(start, end - start);
        const std::string_view content = start == 0 ? line : line.substr(1);
        EXPECT_NE(static_cast<unsigned char>(content.front()) & 0xC0U, 0x80U) << "begins inside a character";
        joined += content;
        start = end + 2;
    }
    EXPECT_EQ(joined, worms);
}

advice::Advice piece(const char* stack, advice::Code code, int in, std::optional<int> slot = {})
{
    advice::Advice one;
    one.stack = stack;
    one.code = code;
    one.slot = slot;
    one.on = today + std::chrono::days{in};
    one.text = "Do it";
    one.because = "so";
    return one;
}

reckoning::Reckoning oneStack()
{
    reckoning::Reckoning all;
    all.asOf = today;
    reckoning::StackReckoning stack;
    stack.name = "Mill";
    stack.record.lastFeed = today - std::chrono::days{7};
    reckoning::TrayEstimate tray;
    tray.slot = 1;
    tray.batch = 4;
    stack.now.slots = {tray};
    all.stacks.push_back(stack);
    return all;
}

TEST(Calendar, AMatterKeepsItsUidWhileItsDateMoves)
{
    reckoning::Reckoning all = oneStack();
    const auto uid = [&](const advice::Advice& one) { return calendarEvents({one}, all, nullptr, {}).front().uid; };
    EXPECT_EQ(uid(piece("Mill", advice::Code::sumpFull, 1)), uid(piece("Mill", advice::Code::sumpFull, 3)));
    EXPECT_NE(uid(piece("Mill", advice::Code::sumpFull, 1)), uid(piece("Mill", advice::Code::feedDue, 1)));
    EXPECT_NE(uid(piece("Mill", advice::Code::sumpFull, 1)), uid(piece("Shed", advice::Code::sumpFull, 1)));
    const std::string before = uid(piece("Mill", advice::Code::feedDue, 1));
    all.stacks.front().record.lastFeed = today; // fed: the next feeding is another matter
    EXPECT_NE(uid(piece("Mill", advice::Code::feedDue, 7)), before);
    const std::string dry = uid(piece("Mill", advice::Code::tooDry, 0, 1));
    all.stacks.front().now.slots.front().batch = 5;
    EXPECT_NE(uid(piece("Mill", advice::Code::tooDry, 0, 1)), dry);
}

TEST(Calendar, ASummerOrAWinterIsOneMatterOnEitherHalfOfTheGlobe)
{
    const reckoning::Reckoning all = oneStack();
    const auto uid = [&](advice::Code code, int year, unsigned month) {
        advice::Advice one = piece("Mill", code, 0);
        one.on = std::chrono::sys_days{std::chrono::year{year} / static_cast<int>(month) / 20};
        return calendarEvents({one}, all, nullptr, {}).front().uid;
    };
    for (const advice::Code code : {advice::Code::heat, advice::Code::cold}) {
        EXPECT_EQ(uid(code, 2031, 11), uid(code, 2032, 2)) << "the southern summer, the northern winter";
        EXPECT_EQ(uid(code, 2031, 5), uid(code, 2031, 9)) << "the northern summer, the southern winter";
        EXPECT_NE(uid(code, 2031, 9), uid(code, 2031, 11));
        EXPECT_NE(uid(code, 2031, 5), uid(code, 2032, 5));
        EXPECT_NE(uid(code, 2031, 2), uid(code, 2031, 11));
    }
}

/// People may call a stack so; what is filled in afterwards belongs elsewhere.
TEST(Calendar, ANameWithAPlaceMarkKeepsIt)
{
    planning::YearPlan plan;
    plan.from = today;
    planning::StackYear year;
    year.stack = "Balcony %1 %2";
    reckoning::PlannedHarvest harvest;
    harvest.batch = 4;
    harvest.tray = 7;
    harvest.liftOn = today + std::chrono::days{9};
    harvest.takeOn = today + std::chrono::days{15};
    harvest.window = {harvest.liftOn, std::nullopt, std::nullopt};
    year.planned.harvests = {harvest};
    reckoning::PlannedTray tray;
    tray.batch = 5;
    tray.tray = 3;
    tray.on = today + std::chrono::days{20};
    tray.window = harvest.window;
    year.planned.trays = {tray};
    plan.stacks = {year};
    const auto events = calendarEvents({}, oneStack(), &plan, {});
    ASSERT_EQ(events.size(), 3u);
    EXPECT_EQ(events[0].summary, "Balcony %1 %2: lift the bottom tray (tray 7)");
    EXPECT_EQ(events[1].summary, "Balcony %1 %2: take the castings, lay new bedding (tray 7)");
    EXPECT_EQ(events[2].summary, "Balcony %1 %2: add a tray (tray 3)");
}

TEST(Calendar, TheStepsOfTheYearTakeThePlaceOfTheirAdvice)
{
    const reckoning::Reckoning all = oneStack();
    planning::YearPlan plan;
    plan.from = today;
    planning::StackYear year;
    year.stack = "Mill";
    reckoning::PlannedHarvest harvest;
    harvest.batch = 4;
    harvest.tray = 2;
    harvest.liftOn = today + std::chrono::days{9};
    harvest.takeOn = today + std::chrono::days{15};
    harvest.window = {harvest.liftOn, today + std::chrono::days{2}, std::nullopt};
    year.planned.harvests = {harvest};
    plan.stacks = {year};
    const auto events = calendarEvents({piece("Mill", advice::Code::harvestSoon, 9, 1), piece("Mill", advice::Code::sumpFull, 2)}, all, &plan, {});
    ASSERT_EQ(events.size(), 3u);
    EXPECT_THAT(events[0].uid, ::testing::HasSubstr("-sump-full-"));
    EXPECT_THAT(events[1].uid, ::testing::EndsWith("-lift-4@tierloam"));
    EXPECT_EQ(events[1].day, harvest.liftOn);
    EXPECT_THAT(events[2].uid, ::testing::EndsWith("-take-4@tierloam"));
    const std::string text = calendarText({"1", "Mill, all", std::chrono::sys_seconds{today}}, events);
    EXPECT_THAT(text, ::testing::StartsWith("BEGIN:VCALENDAR\r\nVERSION:2.0\r\n"));
    EXPECT_THAT(text, ::testing::HasSubstr("DTSTART;VALUE=DATE:20310511\r\nDTEND;VALUE=DATE:20310512\r\n"));
    EXPECT_THAT(text, ::testing::HasSubstr("NAME:Mill\\, all\r\n"));
    EXPECT_THAT(text, ::testing::EndsWith("END:VCALENDAR\r\n"));
}

}
}
