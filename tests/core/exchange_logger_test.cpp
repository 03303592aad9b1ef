#include "core/exchange/journal_csv.h"
#include "core/exchange/logger_plan.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// Tables of loggers: what their columns hold, how they are read, what is kept. The tables are our own inventions.
namespace tierloam::exchange {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using store::LoggedKind;
using store::LoggedReading;

namespace {

Sheet sheetOf(std::string_view bytes) { return std::get<Sheet>(readSheet(bytes)); }
Day day(int year, unsigned month, unsigned dayOfMonth) { return Day{std::chrono::year{year} / std::chrono::month{month} / std::chrono::day{dayOfMonth}}; }
std::int64_t secondOf(Day on, int hour, int minute = 0) { return std::chrono::duration_cast<std::chrono::seconds>(on.time_since_epoch()).count() + hour * 3600LL + minute * 60LL; }
const std::vector<LoggedReading>& of(const LoggerRead& read, LoggedKind kind) { return read.readings[static_cast<std::size_t>(kind)]; }

std::vector<LoggerRole> rolesOf(const std::vector<std::string>& header)
{
    std::vector<LoggerRole> roles;
    for (const LoggerColumn& column : guessMapping(header).columns) roles.push_back(column.role);
    return roles;
}

journal::Entries mill()
{
    const ReadJournal read = readJournal("date,stack,action,slot,amount,unit,item,detail,note\n2031-01-01,Mill,setup,,,,,,\n"
                                         "2031-01-01,Mill,bed,,900,g,corrugated cardboard shredded,,\n2031-01-02,Mill,stock,,450,g,,,\n",
                                         {});
    journal::Entries entries = read.effect.after;
    std::int64_t id = 0;
    for (auto& entry : entries) entry.id = journal::EntryId{++id};
    return entries;
}

}

TEST(Logger, ColumnsAreGuessedFromTheirNames)
{
    using enum LoggerRole;
    EXPECT_THAT(rolesOf({"No.", "Timestamp", "Temp (°C)", "Ambient temp °F", "Soil moisture %", "RH"}), ElementsAre(none, moment, bin, air, moisture, humidity));
    EXPECT_THAT(rolesOf({"Date", "Time", "Temperature"}), ElementsAre(moment, timeOfDay, bin));
    EXPECT_THAT(rolesOf({"Temperature 1", "Temperature 2"}), ElementsAre(bin, none)) << "each thing once; the other is chosen by hand";
    const LoggerMapping mapping = guessMapping({"time", "temp C", "air temp [F]", "temp"});
    EXPECT_EQ(mapping.columns[1].degree, Degree::celsius);
    EXPECT_EQ(mapping.columns[2].degree, Degree::fahrenheit);
    EXPECT_FALSE(guessMapping({"time", "temp"}).columns[1].degree) << "never guessed";
}

TEST(Logger, DegreesAndWaysOfWritingAreAsked)
{
    const Sheet sheet = sheetOf("time;temp\n03/04/2031 00:00;1,250\n03/04/2031 01:00;2,250\n");
    LoggerMapping mapping = guessMapping(sheet.header);
    LoggerQuestions questions = questionsOf(sheet, mapping);
    EXPECT_TRUE(questions.degrees);
    EXPECT_TRUE(questions.order.open);
    EXPECT_TRUE(questions.decimal.open);
    EXPECT_EQ(readLogger(sheet, mapping).count(), 0U) << "nothing is read before the answers";
    mapping.columns[1].degree = Degree::celsius;
    mapping.order = DateOrder::dayFirst;
    EXPECT_EQ(readLogger(sheet, mapping).count(), 0U);
    mapping.decimal = DecimalMark::comma;
    const LoggerRead read = readLogger(sheet, mapping);
    EXPECT_THAT(of(read, LoggedKind::bin), ElementsAre(LoggedReading{secondOf(day(2031, 4, 3), 0), 1.25}, LoggedReading{secondOf(day(2031, 4, 3), 1), 2.25}));
}

TEST(Logger, ReadsWhatInstrumentsWrite)
{
    const Sheet sheet = sheetOf("Date,Time,Bed °F,Air °C,Moisture\n"
                                "2031-05-01,12:00 AM,68.0,19.5 °C,70 %\n"
                                "2031-05-01,06:00 PM,---,,NaN\n"       // no readings, and no fault
                                "2031-05-02,06:30 AM,50,999.9,101\n"   // two values that none can be
                                "broken,06:30 AM,50,20,70\n"
                                "2031-05-03,06:30:15 AM,-4,20,0\n");
    const LoggerRead read = readLogger(sheet, guessMapping(sheet.header));
    EXPECT_THAT(of(read, LoggedKind::bin), ElementsAre(LoggedReading{secondOf(day(2031, 5, 1), 0), 20.0}, LoggedReading{secondOf(day(2031, 5, 2), 6, 30), 10.0},
                                                       LoggedReading{secondOf(day(2031, 5, 3), 6, 30) + 15, -20.0}));
    EXPECT_EQ(of(read, LoggedKind::air).size(), 2U);
    EXPECT_EQ(of(read, LoggedKind::moisture).size(), 2U);
    EXPECT_EQ(read.first, day(2031, 5, 1));
    EXPECT_EQ(read.last, day(2031, 5, 3));
    ASSERT_EQ(read.faults.size(), 2U);
    EXPECT_EQ(read.faults.at(2).line, 4);
    EXPECT_EQ(read.faults.at(2).found, QStringLiteral("999.9"));
    EXPECT_EQ(read.faults.at(3).found, QStringLiteral("broken"));
    EXPECT_THAT(faultyRows(sheet, read), HasSubstr("999.9,101"));
}

// A clock that is set wrong writes days that have not come; whoever reads them would take them for known.
TEST(Logger, RowsOfDaysThatHaveNotComeAreAtFault)
{
    const Sheet sheet = sheetOf("time,bed C,air C\n2031-05-01 23:59,20.5,18\n2031-05-02 00:00,21.5,19\n2131-05-02 00:10,,19\n");
    const LoggerMapping mapping = guessMapping(sheet.header);
    EXPECT_EQ(readLogger(sheet, mapping).count(), 5U) << "without a day to hold them to";
    const LoggerRead read = readLogger(sheet, mapping, parseDay("2031-05-01"));
    EXPECT_EQ(read.count(), 2U) << "the evening of today has come";
    EXPECT_EQ(read.last, *parseDay("2031-05-01"));
    ASSERT_EQ(read.faults.size(), 2U);
    EXPECT_EQ(read.faults.at(1).line, 3);
    EXPECT_EQ(read.faults.at(1).column, QStringLiteral("time"));
    EXPECT_EQ(read.faults.at(1).found, QStringLiteral("2031-05-02 00:00"));
    EXPECT_THAT(read.faults.at(1).allowed.toStdString(), HasSubstr("has not come"));
}

TEST(Logger, AllRowsAtFaultAreCountedAndTheFirstKept)
{
    std::string rows = "time,bed C,air C\n";
    for (std::size_t i = 0; i < LoggerRead::mostFaults + 7; ++i) rows += "2031-05-01 10:00,999,999\n";
    const Sheet sheet = sheetOf(rows);
    const LoggerRead read = readLogger(sheet, guessMapping(sheet.header));
    EXPECT_EQ(read.faults.size(), LoggerRead::mostFaults);
    EXPECT_EQ(read.faultyRows, LoggerRead::mostFaults + 7) << "a row with two such values is one";
}

TEST(Logger, AMappingIsRememberedByItsHeader)
{
    LoggerMapping mapping = guessMapping({"time", "temp", "x"});
    mapping.columns[1].degree = Degree::fahrenheit;
    mapping.decimal = DecimalMark::comma;
    mapping.order = DateOrder::monthFirst;
    mapping.century = 2000;
    mapping.stack = "Mühle \"B\"";
    EXPECT_EQ(mappingFrom(mappingText(mapping), 3), mapping);
    EXPECT_EQ(mappingFrom(mappingText(mapping), 4), std::nullopt) << "not of this table";
    for (const char* text : {"", "[]", "{\"columns\":[{\"holds\":\"magic\"}]}"}) EXPECT_EQ(mappingFrom(QString::fromUtf8(text), 1), std::nullopt) << text;
    EXPECT_EQ(mappingName({"Time ", "TEMP", "x"}), mappingName({"time", "temp", "x"}));
    EXPECT_NE(mappingName({"time", "temp", "x"}), mappingName({"time", "temp", "y"}));
}

TEST(LoggerPlan, EachDayGetsItsMeanAndEveryReadingIsKept)
{
    const Sheet sheet = sheetOf("time,temp C,air C\n2031-05-01 00:00,20,10\n2031-05-01 12:00,21,\n2031-05-01 23:59,23.5,12\n2031-05-02 00:00,30,\n2030-05-02 00:00,30,\n");
    const LoggerRead read = readLogger(sheet, guessMapping(sheet.header));
    const ReadingsPlan plan = planReadings(read, "Mill", {}, mill());
    EXPECT_EQ(plan.fresh, 6U);
    EXPECT_EQ(plan.outside, 1U) << "before the stack was set up";
    EXPECT_EQ(plan.days, 2U);
    ASSERT_EQ(plan.edit.added.size(), 2U);
    const auto& first = std::get<journal::Reading>(plan.edit.added[0].action);
    EXPECT_EQ(first.bin, celsius(21.5));
    EXPECT_EQ(first.air, celsius(11.0));
    EXPECT_EQ(std::get<journal::Reading>(plan.edit.added[1].action).bin, celsius(30.0));
    EXPECT_FALSE(std::get<journal::Reading>(plan.edit.added[1].action).air);
    EXPECT_FALSE(journal::applyEdit(mill(), plan.edit).refusal);
    EXPECT_EQ(planReadings(read, "Barn", {}, mill()).fresh, 0U) << "no such stack";
}

TEST(LoggerPlan, AFileThatGrowsBringsOnlyWhatIsNew)
{
    journal::Entries entries = mill();
    journal::Entry mean;
    mean.id = journal::EntryId{9};
    mean.stack = "Mill";
    mean.date.day = day(2031, 5, 1);
    mean.action = journal::Reading{celsius(20.5), {}, {}, {}, {}, {}};
    entries.push_back(mean);
    store::LoggedBefore before;
    before.readings[0] = {{secondOf(day(2031, 5, 1), 0), 20.0}, {secondOf(day(2031, 5, 1), 12), 21.0}};
    before.entries[day(2031, 5, 1)] = mean.id;
    const Sheet sheet = sheetOf("time,temp C\n2031-05-01 00:00,20\n2031-05-01 12:00,21\n2031-05-01 12:00,21\n2031-05-01 18:00,22\n2031-05-02 00:00,30\n");
    const LoggerRead read = readLogger(sheet, guessMapping(sheet.header));
    const ReadingsPlan plan = planReadings(read, "Mill", before, entries);
    EXPECT_EQ(plan.there, 2U);
    EXPECT_EQ(plan.fresh, 3U) << "the hour that clocks repeat is kept twice";
    ASSERT_EQ(plan.edit.replaced.size(), 1U) << "at most one reading a day";
    EXPECT_EQ(plan.edit.replaced[0].id, mean.id);
    EXPECT_EQ(std::get<journal::Reading>(plan.edit.replaced[0].action).bin, celsius(21.0));
    EXPECT_EQ(plan.edit.added.size(), 1U);

    // What people changed by hand stays, and what they took out does not come back.
    std::get<journal::Reading>(entries.back().action).bin = celsius(19.0);
    const ReadingsPlan byHand = planReadings(read, "Mill", before, entries);
    EXPECT_THAT(byHand.edit.replaced, IsEmpty());
    EXPECT_EQ(byHand.fresh, 3U);
    before.entries.clear();
    EXPECT_EQ(planReadings(read, "Mill", before, mill()).edit.added.size(), 1U);
    // The same file once more: nothing is new.
    before.readings[0] = of(read, LoggedKind::bin);
    EXPECT_EQ(planReadings(read, "Mill", before, mill()).fresh, 0U);
}

TEST(LoggerPlan, AHundredThousandRowsAreReadWithProgressAndCanBeCalledOff)
{
    std::string text = "time,temp C\n";
    for (int i = 0; i < 100'000; ++i) {
        const auto minute = i * 5;
        char row[64];
        const std::chrono::year_month_day date{day(2031, 2, 1) + std::chrono::days{minute / 1440}};
        std::snprintf(row, sizeof row, "%d-%02u-%02u %02d:%02d,%d.%d\n", static_cast<int>(date.year()), static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()),
                      minute % 1440 / 60, minute % 60, 18 + i % 9, i % 10);
        text += row;
    }
    const Sheet sheet = sheetOf(text);
    const LoggerMapping mapping = guessMapping(sheet.header);
    double told = -1;
    int times = 0;
    const LoggerRead read = readLogger(sheet, mapping, {}, [&](double share) {
        EXPECT_GT(share, told);
        told = share;
        ++times;
    });
    EXPECT_EQ(read.count(), 100'000U);
    EXPECT_GE(times, 10);
    const ReadingsPlan plan = planReadings(read, "Mill", {}, mill());
    EXPECT_EQ(plan.fresh, 100'000U);
    EXPECT_EQ(plan.days, 348U);
    std::stop_source stop;
    EXPECT_EQ(readLogger(sheet, mapping, {}, [&](double share) { if (share > 0.5) stop.request_stop(); }, stop.get_token()).count(), 0U);
}

}
