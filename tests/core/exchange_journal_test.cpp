#include "core/exchange/csv.h"
#include "core/exchange/journal_csv.h"
#include "core/quantity/number_text.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <random>

// A whole journal in and out: all bad rows told, nothing half added, and the same bytes after another round.
namespace tierloam::exchange {

using namespace journal;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::StartsWith;

namespace {

constexpr std::string_view header = "date,stack,action,slot,amount,unit,item,detail,note\n";

std::string file(std::string_view rows) { return std::string{header} + std::string{rows}; }

std::vector<std::string> faultsOf(const ReadJournal& read)
{
    std::vector<std::string> lines;
    for (const Fault& fault : read.faults) lines.push_back(faultText(QStringLiteral("J.csv"), fault).toStdString());
    return lines;
}

std::vector<std::string> faults(std::string_view rows, const Entries& existing = {}) { return faultsOf(readJournal(file(rows), existing)); }

/// As the store would give them back.
Entries stored(std::string_view csv)
{
    const ReadJournal read = readJournal(csv, {});
    EXPECT_THAT(faultsOf(read), IsEmpty());
    Entries entries = read.effect.after;
    std::int64_t id = 0;
    for (Entry& entry : entries) entry.id = EntryId{++id};
    return entries;
}

constexpr std::string_view begun = "2031-01-01,Mill,setup,,,,,,\n2031-01-01,Mill,bed,,900,g,corrugated cardboard shredded,,\n2031-01-02,Mill,stock,,450,g,,,\n";

}

TEST(JournalIn, ReadsColumnsInAnyOrderAndBothLineEnds)
{
    const std::string lf = file("2031-01-01,Mill,setup,,,,,trays=4,\n2031-01-02,Mill,bed,,900,g,corrugated cardboard shredded,,first\n");
    const std::string turned = "note,detail,item,unit,amount,slot,action,stack,date\r\n,trays=4,,,,,setup,Mill,2031-01-01\r\n"
                               "first,,corrugated cardboard shredded,g,900,,bed,Mill,2031-01-02\r\n";
    const ReadJournal one = readJournal(lf, {});
    const ReadJournal two = readJournal(turned, {});
    EXPECT_THAT(one.faults, IsEmpty());
    EXPECT_THAT(faultsOf(two), IsEmpty());
    ASSERT_EQ(one.edit.added.size(), 2u);
    EXPECT_EQ(one.edit.added, two.edit.added);
    EXPECT_EQ(one.edit.added[1].note, "first");
    EXPECT_EQ(one.edit.added[1].id, EntryId::none);
}

TEST(JournalIn, NamesUnknownMissingAndDoubledColumns)
{
    EXPECT_THAT(faultsOf(readJournal("date,stack,action,slot,amount,unit,item,detail,note,colour\n", {})),
                ElementsAre("J.csv:1: colour: found «colour»; allowed: date, stack, action, slot, amount, unit, item, detail, note"));
    EXPECT_THAT(faultsOf(readJournal("date,stack,action,slot,amount,unit,item,detail\n", {})), ElementsAre(StartsWith("J.csv:1: note: found «»; allowed: ")));
    EXPECT_THAT(faultsOf(readJournal("date,date,stack,action,slot,amount,unit,item,detail,note\n", {})), ElementsAre("J.csv:1: date: found «date»; allowed: each column once"));
    EXPECT_THAT(faultsOf(readJournal("Date,stack,action,slot,amount,unit,item,detail,note\n", {})), testing::SizeIs(2)) << "unknown, and date is missing";
    EXPECT_THAT(faultsOf(readJournal("", {})), ElementsAre(StartsWith("J.csv:1: found «»; allowed: a header")));
    EXPECT_THAT(faultsOf(readJournal("date,stack\xFF\n", {})), ElementsAre(StartsWith("J.csv:1: found «date,stack\xEF\xBF\xBD»; allowed: text in UTF-8")));
    EXPECT_THAT(readJournal(header, {}).faults, IsEmpty()) << "no rows is no fault";
}

// A table of another make is told for what it is, once, and not as many columns that are missing.
TEST(JournalIn, TellsOtherMarksBetweenCellsAnotherEncodingAndAHeaderThatIsNone)
{
    using testing::HasSubstr;
    const auto told = [](std::string_view text) {
        const ReadJournal read = readJournal(text, {});
        EXPECT_TRUE(read.foreign) << text;
        EXPECT_TRUE(read.edit.added.empty());
        return faultsOf(read);
    };
    EXPECT_THAT(told("\nDatum;Stapel;Menge, g\n1.5.2031;Mill;0,3\n"), ElementsAre("J.csv:2: found «Datum;Stapel;Menge, g»; allowed: cells parted by commas (,); in this file semicolons (;) part them"));
    EXPECT_THAT(told("date;stack;action;slot;amount;unit;item;detail;note\n"), ElementsAre(HasSubstr("semicolons (;) part them"))) << "our names, other marks";
    EXPECT_THAT(told("date\tstack\taction\n"), ElementsAre(HasSubstr("in this file tabs part them")));
    const std::string_view wide{"\xFF\xFE" "d\0a\0t\0e\0,\0", 12}, unmarked{"d\0a\0t\0e\0,\0s\0t\0", 14};
    for (const std::string_view text : {wide, unmarked}) EXPECT_THAT(told(text), ElementsAre("J.csv:1: found «text in UTF-16»; allowed: text in UTF-8"));
    EXPECT_THAT(told("date,M\xFCller\n"), ElementsAre(HasSubstr("allowed: text in UTF-8; this may be Latin-1")));
    EXPECT_THAT(told("2031-01-01,Mill,feed,,300,g,,,\n2031-01-02,Mill,feed,,300,g,,,\n"), ElementsAre(AllOf(StartsWith("J.csv:1: found «2031-01-01,Mill"), HasSubstr("this one is an entry"))));
    EXPECT_THAT(told("Day,Bin,Who\n"), ElementsAre("J.csv:1: Day: found «Day»; allowed: date", "J.csv:1: Bin: found «Bin»; allowed: stack", StartsWith("J.csv:1: Who: found «Who»; allowed: date, stack")));
    EXPECT_FALSE(readJournal(std::string{header} + "2031-01-01,Mill,fed,,300,g,,,\n", {}).foreign) << "a bad row is no other format";
    EXPECT_TRUE(readJournal(std::string{header} + "2031-01-01,M\xFChle,setup,,,,,,\n", {}).foreign);
}

TEST(JournalIn, TellsEveryBadRowWithItsLineOnceInOrder)
{
    const auto told = faults(std::string{begun} + "2031-01-05,Mill,feed,,300,g\n"
                                                  "2031-01-06,Mill,note,,,,,,\"two\nlines\"\n"
                                                  "2031-01-06,Mill,feed,9,300,g,,,\n"
                                                  "2031-01-07,Mill,feed,,300,pints,,side=top,\n"
                                                  "2031-01-08,Yard,feed,,300,g,,,\n"
                                                  "2030-12-31,Mill,feed,,300,g,,,\n"
                                                  "2031-01-09,Mill,feed,,300,g,,,a\x01note\n"
                                                  "2031-01-10,Mill,feed,,300,g,,,\xFF\n"
                                                  "2031-01-11,Mill,feed,,300,g,,,fine\n"
                                                  "2031-01-12,Mill,note,,,,,,\"open\n");
    EXPECT_THAT(told, ElementsAre(StartsWith("J.csv:5: found «2031-01-05,Mill,feed,,300,g»; allowed: 9 cells"), "J.csv:8: slot: found «9»; allowed: 1",
                                  StartsWith("J.csv:9: unit: found «pints»; allowed: g, kg"), "J.csv:10: stack: found «Yard»; allowed: a stack that has been set up: Mill",
                                  "J.csv:11: date: found «2030-12-31»; allowed: 2031-01-01 or later, behind the first setup of Mill",
                                  "J.csv:12: note: found «aU+0001note»; allowed: text without control characters",
                                  StartsWith("J.csv:13: found «2031-01-10,Mill,feed,,300,g,,,\xEF\xBF\xBD»; allowed: text in UTF-8"),
                                  StartsWith("J.csv:15: found «2031-01-12,Mill,note,,,,,,\"openU+000A»; allowed: a closing quote mark")));
}

TEST(JournalIn, TellsFiftyRowsAtMostAndAddsNone)
{
    std::string rows{begun};
    for (int i = 0; i < 80; ++i) rows += "2031-01-05,Mill,fed,,300,g,,,\n";
    const ReadJournal read = readJournal(file(rows), {});
    EXPECT_EQ(read.faults.size(), 50u);
    EXPECT_EQ(read.faults.front().line, 5);
    EXPECT_EQ(read.faults.back().line, 54);
    EXPECT_THAT(read.edit.added, IsEmpty());
}

TEST(JournalIn, OneBadRowIsNotToldAgainByThoseThatBuildOnIt)
{
    EXPECT_THAT(faults("2031-01-01,Mill,setup,,,,,trays=many,\n2031-01-01,Mill,bed,,900,g,corrugated cardboard shredded,,\n2031-01-02,Mill,feed,,300,g,,,\n"), testing::SizeIs(1));
    EXPECT_THAT(faults("2031-01-01,Mill,setup,,,,,,\n2031-01-01,Mill,bed,,0,g,corrugated cardboard shredded,,\n2031-01-02,Mill,feed,,300,g,,,\n"), testing::SizeIs(1));
    EXPECT_THAT(faults("2031-01-01,Mill,setup,,,,,,\n2031-13-01,Mill,bed,,1,kg,corrugated cardboard shredded,,\n2031-01-02,Mill,feed,,300,g,,,\n"), testing::SizeIs(1));
    EXPECT_THAT(faults(std::string{begun} + "2031-01-03,,material,,,,beet pulp,class=food,\n2031-01-04,Mill,feed,,300,g,beet pulp,,\n"), testing::SizeIs(1));
    EXPECT_THAT(faults(std::string{begun} + "2031-01-03,Mill,bed,,1,kg,corrugated cardboard shredded,,\n2031-01-04,Mill,rotate,,1,,,,\n2031-01-05,Mill,harvest,,1,kg,,,\n"), testing::SizeIs(1));
    // And yet what is bad by itself beside a bad row of the same stack is told.
    EXPECT_THAT(faults(std::string{begun} + "2031-01-03,Mill,bed,,0,kg,corrugated cardboard shredded,,\n2031-01-04,Mill,feed,7,1,kg,,,\n"), testing::SizeIs(2));
}

TEST(JournalIn, OwnMaterialsServeRowsBeforeAndAfterThemAndThoseOfTheJournal)
{
    const std::string_view material = "2031-06-01,,material,,,,Beet Pulp,class=mix;moisture=84,\n";
    const std::string feed = "2031-01-05,Mill,feed,,300,g,beet pulp,,\n";
    EXPECT_THAT(faults(std::string{begun} + feed + std::string{material}), IsEmpty());
    EXPECT_THAT(faults(std::string{material} + std::string{begun} + feed), IsEmpty());
    EXPECT_THAT(faults(std::string{begun} + feed), ElementsAre(StartsWith("J.csv:5: item: found «beet pulp»; allowed: ")));
    EXPECT_THAT(faults(feed, stored(file(std::string{begun} + std::string{material}))), IsEmpty());
    EXPECT_THAT(faults("2031-06-01,Mill,material,,,,x,,\n", stored(file(begun))), ElementsAre(StartsWith("J.csv:2: stack: found «Mill»; allowed: nothing")));
}

TEST(JournalIn, RowsOfADayKeepTheirOrderBehindThoseOfTheJournal)
{
    const Entries existing = stored(file(begun));
    const ReadJournal read = readJournal(file("2031-01-02,Mill,note,,,,,,one\n2031-01-01,Mill,note,,,,,,two\n2031-01-02,Mill,note,,,,,,three\n"), existing);
    ASSERT_THAT(faultsOf(read), IsEmpty());
    std::vector<std::string> notes;
    for (const Entry& entry : read.effect.after) notes.push_back(entry.note);
    EXPECT_THAT(notes, ElementsAre("", "", "two", "", "one", "three"));
}

TEST(JournalIn, EveryStackRuleIsToldInItsColumn)
{
    const auto column = [](std::string_view row, std::string_view before = "") {
        const auto told = readJournal(file(std::string{begun} + std::string{before} + std::string{row} + '\n'), {});
        EXPECT_EQ(told.faults.size(), 1u) << row;
        return told.faults.empty() ? std::string{} : told.faults[0].column.toStdString();
    };
    EXPECT_EQ(column("2031-02-01,Mill,rotate,,,,,,"), "action");
    EXPECT_EQ(column("2031-02-01,Mill,harvest,,1,kg,,,"), "slot");
    EXPECT_EQ(column("2031-02-01,Mill,loosen,,,,,,"), "action");
    EXPECT_EQ(column("2031-02-01,Mill,bed,3,1,kg,newspaper shredded,,"), "slot");
    EXPECT_EQ(column("2031-02-01,Mill,check,,,,,depth=12,"), "detail");
    EXPECT_EQ(column("2031-02-01,Mill,move,,1,g,,to=Mill,"), "detail");
    EXPECT_EQ(column("2031-02-01,Mill,move,,1,g,,to=Barn,"), "detail");
    EXPECT_EQ(column("2031-02-01,a;b,setup,,,,,,"), "stack");
    EXPECT_EQ(column("2031-02-02,Mill,feed,,1,g,,,", "2031-02-01,Mill,retire,,,,,,\n"), "stack");
    EXPECT_EQ(column("2031-02-02,Mill,setup,,,,,,", "2031-02-01,Mill,retire,,,,,,\n"), "stack");
    EXPECT_EQ(column("2031-02-02,Mill,setup,,,,,trays=1,", "2031-02-01,Mill,bed,,1,kg,newspaper shredded,,\n"), "detail");
    EXPECT_EQ(column("2031-02-02,Mill,bed,,1,kg,newspaper shredded,,", "2031-02-01,Mill,setup,,,,,trays=1,\n"), "slot");
    EXPECT_EQ(column("2031-02-02,,feed,,1,g,,,"), "stack");
}

TEST(JournalIn, ARowThatMakesAnEntryOfTheJournalImpossibleNamesIt)
{
    const Entries existing = stored(file(std::string{begun} + "2031-01-03,Mill,bed,,1,kg,newspaper shredded,,\n2031-03-01,Mill,rotate,,,,,,\n"));
    EXPECT_THAT(faults("2031-01-20,Mill,note,,,,,,x\n2031-02-01,Mill,harvest,1,1,kg,,,\n", existing),
                ElementsAre(testing::AllOf(StartsWith("J.csv:3: found «2031-02-01,Mill,harvest,1,1,kg,,,»; allowed: "), HasSubstr("entry 5 (2031-03-01, Mill, rotate)"))));
}

TEST(JournalIn, ListsEntriesThatFallToAnotherBatchAndASecondSpecies)
{
    const Entries existing = stored(file(std::string{begun} + "2031-02-01,Mill,feed,,1,kg,,,\n"));
    const ReadJournal read = readJournal(file("2031-01-20,Mill,bed,,1,kg,newspaper shredded,,\n2031-01-21,Mill,stock,,1,kg,Eisenia andrei,,\n"), existing);
    EXPECT_THAT(faultsOf(read), IsEmpty());
    EXPECT_THAT(read.effect.movedToOtherBatch, ElementsAre(EntryId{4}));
    ASSERT_EQ(read.warnings.size(), 1u);
    EXPECT_EQ(read.warnings[0].now, "Eisenia andrei");
    EXPECT_EQ(read.effect.after[read.warnings[0].entry].date.day, parseDay("2031-01-21"));
}

TEST(RecordIn, TakesOneRowInTheOrderOfTheColumns)
{
    const Entries existing = stored(file(begun));
    const ReadJournal read = readRecord("2031-02-01,Mill,feed,,300,g,,,\"peel, mostly\"", existing);
    ASSERT_THAT(faultsOf(read), IsEmpty());
    ASSERT_EQ(read.edit.added.size(), 1u);
    EXPECT_EQ(read.edit.added[0].note, "peel, mostly");
    EXPECT_THAT(readRecord("2031-02-01,Mill,feed,,300,g,,,\n", existing).faults, IsEmpty());
    EXPECT_THAT(faultsOf(readRecord("2031-02-01,Mill,feed,,300,pt,,,", existing)), ElementsAre(StartsWith("J.csv:1: unit: found «pt»")));
    EXPECT_THAT(faultsOf(readRecord("a\nb", existing)), ElementsAre(HasSubstr("allowed: one row")));
    EXPECT_THAT(faultsOf(readRecord("", existing)), ElementsAre(HasSubstr("allowed: one row")));
    EXPECT_THAT(faultsOf(readRecord(header.substr(0, header.size() - 1), existing)), ElementsAre(StartsWith("J.csv:1: date: found «date»")));
}

TEST(JournalOut, WritesTheKeyOnTheFirstSetupOnlyAndNoDefaults)
{
    const Entries entries = stored(file(std::string{begun} + "2031-03-01,Mill,setup,,,,,trays=4,\n2031-03-02,Mill,cover,,,,,,\n"));
    EXPECT_EQ(writeJournal(entries), "date,stack,action,slot,amount,unit,item,detail,note\r\n"
                                     "2031-01-01,Mill,setup,,,,,key=" "04e31baea90579a3" ",\r\n"
                                     "2031-01-01,Mill,bed,,900,g,corrugated cardboard shredded,,\r\n"
                                     "2031-01-02,Mill,stock,,450,g,,,\r\n"
                                     "2031-03-01,Mill,setup,,,,,trays=4,\r\n"
                                     "2031-03-02,Mill,cover,,,,,,\r\n");
    EXPECT_EQ(stackKey("Mill"), 0x04e31baea90579a3ULL);
}

TEST(JournalOut, AGivenKeyIsKept)
{
    const std::string csv = writeJournal(stored(file("2031-01-01,Mill,setup,,,,,key=00000000000000ff,\n")));
    EXPECT_THAT(csv, HasSubstr("key=00000000000000ff"));
    EXPECT_EQ(std::get<journal::Setup>(stored(csv)[0].action).key, 255u);
}

TEST(JournalOut, AnotherRoundGivesTheSameBytesAndEntries)
{
    const std::string csv = file(std::string{begun}
                                 + "2031-01-05T18:30,Mill,feed,1,1.25,cup,Kitchen Mix,side=left,\"peel, \"\"mostly\"\"\nand more\"\n"
                                   "2031-01-06,Mill,event,,,,=danger,,-note\n2031-01-06,Mill,note,,,,,,\\=x\n2031-01-07,Mill,note,,,,,,@home\n"
                                   "2031-01-08,=Yard,setup,,,,,,\n2031-01-08,=Yard,bed,,1,kg,newspaper shredded,,\n2031-01-09,Mill,move,,50,g,,to==Yard,\n");
    const Entries entries = stored(csv);
    const std::string once = writeJournal(entries);
    Entries again = stored(once);
    EXPECT_EQ(writeJournal(again), once);
    std::get<journal::Setup>(again[0].action).key.reset();
    for (Entry& entry : again)
        if (auto* setup = std::get_if<journal::Setup>(&entry.action)) setup->key.reset();
    EXPECT_EQ(again, entries);
    EXPECT_THAT(once, HasSubstr(",\\=Yard,setup"));
}

TEST(JournalOut, RandomJournalsComeBackAsTheyWere)
{
    std::mt19937_64 random{11};
    const auto pick = [&](auto&& list) { return *(std::begin(list) + random() % std::size(list)); };
    int compared = 0;
    for (int round = 0; round < 50; ++round) {
        std::string rows{begun};
        for (int i = 0; i < 40; ++i) {
            const std::string amount = numberText(static_cast<double>(1 + random() % 100000) / pick(std::array{1.0, 10.0, 1000.0, 7.0, 333.0}) / 200.0);
            const std::string date = dayText(*parseDay("2031-02-01") + std::chrono::days{random() % 300});
            rows += date + ",Mill," + pick(std::array<std::string, 5>{"feed,," + amount + ",g,,,", "feed,1," + amount + ",floz,kitchen mix,,", "water,," + amount + ",gal,,,",
                                                                      "reading,,,,,bin=" + amount.substr(0, 1) + ",", "drain,," + amount + ",L,,ec=2.125;worms=3,"}) + "\n";
        }
        const ReadJournal read = readJournal(file(rows), {});
        ASSERT_THAT(faultsOf(read), IsEmpty());
        const std::string once = writeJournal(read.effect.after);
        EXPECT_EQ(writeJournal(stored(once)), once);
        ++compared;
    }
    EXPECT_EQ(compared, 50);
}

/// Names, materials and notes that begin like formulas, in every column that takes free text.
TEST(JournalOut, NastyTextsAreNeverLiveAndComeBackUnchanged)
{
    std::mt19937_64 random{23};
    const auto nasty = [&](std::initializer_list<const char*> more) {
        std::vector<std::string> pieces{"=", "+", "-", "@", "\\", "'", "\"", ",", "a", "SUM(A1)", "\xC3\xBC", "\xEF\xBC\x9D"};
        pieces.insert(pieces.end(), more.begin(), more.end());
        std::string text;
        for (auto length = 1 + random() % 5; length-- > 0;) text += pieces[random() % pieces.size()];
        return text;
    };
    for (int round = 0; round < 60; ++round) {
        Entries entries;
        const auto add = [&](std::string stack, Action action, std::string note) {
            Entry entry;
            entry.date.day = *parseDay("2031-01-01");
            entry.stack = std::move(stack);
            entry.action = std::move(action);
            entry.note = std::move(note);
            entry.id = EntryId{static_cast<std::int64_t>(entries.size()) + 1};
            entry.positionInDay = static_cast<std::int64_t>(entries.size()) + 1;
            entries.push_back(std::move(entry));
        };
        const std::string stack = nasty({}), other = nasty({}) + "2", material = nasty({});
        journal::Setup setup, second;
        setup.key = stackKey(stack);
        second.key = stackKey(other);
        add(stack, setup, nasty({" ", "\n"}));
        add(other, second, {});
        add({}, OwnMaterial{material, {}, {}, {}, {}, {}, {}, Welcome::aLittle, Doubt::salty}, nasty({" ", "\n"}));
        add(stack, Bed{{900, Unit::g}, material, {}}, nasty({"\n", "\r\n"}));
        add(stack, Stock{{300, Unit::g}, "", {}}, {});
        add(stack, Event{nasty({" "}), {}}, nasty({" "}));
        add(other, Bed{{900, Unit::g}, material, {}}, {});
        add(stack, Move{{20, Unit::g}, other}, {});
        const std::string once = writeJournal(entries);
        const ReadJournal read = readJournal(once, {});
        ASSERT_THAT(faultsOf(read), IsEmpty()) << once;
        ASSERT_EQ(writeJournal(read.effect.after), once);
        for (std::size_t i = 0; i < entries.size(); ++i) {
            Entry back = read.effect.after[i];
            back.id = entries[i].id;
            back.positionInDay = entries[i].positionInDay;
            ASSERT_EQ(back, entries[i]) << once;
        }
        for (const csv::Record& record : csv::read(once))
            for (const std::string& cell : record.cells) {
                const std::size_t first = cell.find_first_not_of(" \t\r\n");
                ASSERT_TRUE(first == std::string::npos || std::string_view{"=+-@"}.find(cell[first]) == std::string_view::npos) << cell;
            }
    }
}

TEST(JournalOut, ReplacesTheTargetWholeOrLeavesIt)
{
    const QTemporaryDir folder;
    const QString target = folder.filePath(QStringLiteral("out.csv"));
    QFile old{target};
    ASSERT_TRUE(old.open(QIODevice::WriteOnly));
    old.write("old");
    old.close();
    const Entries entries = stored(file(begun));
    EXPECT_EQ(exportJournal(target, entries), std::nullopt);
    QFile now{target};
    ASSERT_TRUE(now.open(QIODevice::ReadOnly));
    EXPECT_EQ(now.readAll().toStdString(), writeJournal(entries));
    EXPECT_EQ(QDir{folder.path()}.entryList(QDir::Files), QStringList{QStringLiteral("out.csv")}) << "nothing is left beside it";

    EXPECT_NE(exportJournal(folder.filePath(QStringLiteral("none/out.csv")), entries), std::nullopt);
    EXPECT_NE(exportJournal(folder.path(), entries), std::nullopt) << "a folder is no file";
    EXPECT_EQ(QDir{folder.path()}.entryList(QDir::Files).size(), 1);
}

}
