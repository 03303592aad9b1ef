#include "core/exchange/row_reader.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// Each action's cells, good and bad, as the journal format states them.
namespace tierloam::exchange {

using namespace journal;

namespace {

/// "date,stack,…" without quoting, for tests only.
Row rowOf(std::string_view line)
{
    Row row;
    std::size_t column = 0;
    for (const char c : line) {
        if (c == ',') ++column;
        else row.cells.at(column) += c;
    }
    EXPECT_EQ(column, columnCount - 1) << line;
    return row;
}

std::string lineOf(const Row& row)
{
    std::string line;
    for (std::size_t i = 0; i < columnCount; ++i) line += (i == 0 ? "" : ",") + row.cells[i];
    return line;
}

const materials::Table& table() { return materials::Table::builtIn(); }

Entry read(std::string_view line)
{
    auto made = rowToEntry(rowOf(line), table());
    if (const auto* fault = std::get_if<Fault>(&made)) {
        ADD_FAILURE() << line << ": " << faultText(QStringLiteral("row"), *fault).toStdString();
        return {};
    }
    return std::get<Entry>(made);
}

template <class Kind>
Kind readAs(std::string_view line)
{
    const Entry entry = read(line);
    const auto* action = std::get_if<Kind>(&entry.action);
    if (!action) {
        ADD_FAILURE() << line << " is another action";
        return {};
    }
    return *action;
}

}

class GoodRows : public testing::TestWithParam<const char*> {};

TEST_P(GoodRows, AreReadAndWrittenAsTheyWere)
{
    const Entry entry = read(GetParam());
    EXPECT_EQ(lineOf(entryToRow(entry)), GetParam());
}

INSTANTIATE_TEST_SUITE_P(
    EachAction, GoodRows,
    testing::Values("2031-05-01,Mill,setup,,,,,,", "2031-05-01,Mill,setup,,,,,area=0.16;height=11;trays=3;sump=4;spigot=shut;place=garage;temp=21.5;stand=legs;key=00000000000000ff,",
                    "2031-05-01,,material,,,,beet pulp,class=mix;moisture=84;n=2;cn=26;bulk=450;water=4,", "2031-05-01,,material,,,,beet pulp,,", "2031-05-01,,material,,,,goat manure,moisture=70;welcome=no;doubt=dewormer,", "2031-05-01,,material,,,,hulls,welcome=little,",
                    "2031-05-01,Mill,stock,,0.45,kg,,,", "2031-05-01,Mill,stock,2,1,lb,Eisenia andrei,count=500,from a neighbour",
                    "2031-05-01,Mill,bed,,900,g,corrugated cardboard shredded,,", "2031-05-01,Mill,bed,3,2,lb,newspaper shredded,moisture=74,",
                    "2031-05-01T18:30,Mill,feed,,300,g,,,", "2031-05-01,Mill,feed,1,1.5,cup,Kitchen Mix,side=left,", "2031-05-01,Mill,feed,,1,gal,,side=all,",
                    "2031-05-01,Mill,cover,,,,,,", "2031-05-01,Mill,cover,,30,g,newspaper shredded,,", "2031-05-01,Mill,water,,500,mL,,,", "2031-05-01,Mill,water,2,16,floz,,,",
                    "2031-05-01,Mill,routine,,0.5,L,water,every=3,", "2031-05-01,Mill,routine,,0,L,water,,", "2031-05-01,Mill,routine,,1,oz,cover,,",
                    "2031-05-01,Mill,drain,,1.2,L,,emptied=no;ec=2.1;worms=12;spigot=open,", "2031-05-01,Mill,drain,,,,,spigot=shut,", "2031-05-01,Mill,drain,,0,L,,,",
                    "2031-05-01,Mill,flush,,5,L,,drained=3.2;ec=1.5;worms=4,", "2031-05-01,Mill,flush,,0,L,,,",
                    "2031-05-01,Mill,reading,1,,,,bin=-2.5;air=19;rh=60;moisture=72;squeeze=3;ph=6.8;sump=1.5,", "2031-05-01,Mill,reading,,,,,sump=0,", "2031-05-01,Mill,reading,,,,,bin=21.5,",
                    "2031-05-01,Mill,check,1,,,,depth=3;bits=20;left=25;worms=some,", "2031-05-01,Mill,check,,,,,bits=0,",
                    "2031-05-01,Mill,weigh,,310,g,,share=50,", "2031-05-01,Mill,weigh,,0,g,,,", "2031-05-01,Mill,count,,42,count,,volume=0.5,", "2031-05-01,Mill,count,1,0,count,,,",
                    "2031-05-01,Mill,trayweight,,6.2,kg,,tare=1.1,", "2031-05-01,Mill,rotate,,,,,,", "2031-05-01,Mill,rotate,1,,,,,lifted", "2031-05-01,Mill,loosen,,,,,,",
                    "2031-05-01,Mill,lid,,,,,lid=off,", "2031-05-01,Mill,harvest,,2.4,kg,,moisture=66;share=60,", "2031-05-01,Mill,harvest,1,4,L,,,",
                    "2031-05-01,Mill,remove,,200,g,,,", "2031-05-01,Mill,move,1,200,g,,to=Yard = new,", "2031-05-01,Mill,event,,,,away,until=2031-05-14,",
                    "2031-05-01,Mill,event,2,,,smell,,", "2031-05-01,Mill,note,,,,,,all well", "2199-12-31,Mill,retire,,,,,,", "1900-01-01,Mill,retire,,,,,,",
                    "2031-05-01,Mill,feed,,1000,kg,,,", "2031-05-01,Mill,water,,2000,L,,,", "2031-05-01,Mill,feed,,0.000001,g,,,"));

TEST(Rows, AbsentCellsStayAbsent)
{
    EXPECT_EQ(readAs<Cover>("2031-05-01,Mill,cover,,,,,,"), Cover{});
    EXPECT_EQ(readAs<Feed>("2031-05-01,Mill,feed,,300,g,,,").material, "");
    EXPECT_EQ(readAs<Stock>("2031-05-01,Mill,stock,,1,kg,,,"), (Stock{{1, Unit::kg}, "", {}}));
    EXPECT_EQ(readAs<journal::Setup>("2031-05-01,Mill,setup,,,,,trays=4,").area, std::nullopt);
    EXPECT_EQ(readAs<Drain>("2031-05-01,Mill,drain,,1,L,,,").emptied, std::nullopt);
    EXPECT_EQ(read("2031-05-01,Mill,feed,,300,g,,,").slot, std::nullopt);
}

TEST(Rows, DetailsArriveWithTheirUnits)
{
    const auto setup = readAs<journal::Setup>("2031-05-01,Mill,setup,,,,,area=0.2;height=12.5;trays=5;sump=6;spigot=shut;place=outdoors;temp=-3;stand=base;key=cbf29ce484222325,");
    EXPECT_EQ(setup.area, squareMetres(0.2));
    EXPECT_EQ(setup.height, centimetres(12.5));
    EXPECT_EQ(setup.trays, 5);
    EXPECT_EQ(setup.sump, litres(6));
    EXPECT_EQ(setup.spigot, Spigot::shut);
    EXPECT_EQ(setup.place, Place::outdoors);
    EXPECT_EQ(setup.temp, celsius(-3));
    EXPECT_EQ(setup.stand, Stand::base);
    EXPECT_EQ(setup.key, 0xcbf29ce484222325ULL);
    EXPECT_EQ(readAs<TrayWeight>("2031-05-01,Mill,trayweight,,6,kg,,tare=1.1,").tare, kilograms(1.1));
    EXPECT_EQ(readAs<Check>("2031-05-01,Mill,check,,,,,left=25;worms=many,"), (Check{{}, {}, Share::fromPercent(25), WormsSeen::many}));
    EXPECT_EQ(readAs<Drain>("2031-05-01,Mill,drain,,1,L,,emptied=no,").emptied, false);
    EXPECT_EQ(readAs<Lid>("2031-05-01,Mill,lid,,,,,lid=on,").on, true);
    EXPECT_EQ(readAs<Event>("2031-05-01,Mill,event,,,,away,until=2031-06-01,").until, parseDay("2031-06-01"));
    EXPECT_EQ(readAs<Move>("2031-05-01,Mill,move,,1,kg,,to=Yard = new,").to, "Yard = new");
    EXPECT_EQ(readAs<Routine>("2031-05-01,Mill,routine,,1,L,water,every=7,").everyDays, 7);
}

TEST(Rows, PairsMayStandApart)
{
    EXPECT_EQ(lineOf(entryToRow(read("2031-05-01,Mill,check,,,,,bits = 20; depth=3 ,"))), "2031-05-01,Mill,check,,,,,depth=3;bits=20,") << "written in the order of the format";
}

TEST(Rows, ALineBreakInANoteIsKept)
{
    Row row = rowOf("2031-05-01,Mill,note,,,,,,x");
    row[Column::note] = "one\ntwo\r\nthree";
    const auto made = rowToEntry(row, table());
    ASSERT_TRUE(std::holds_alternative<Entry>(made));
    EXPECT_EQ(std::get<Entry>(made).note, "one\ntwo\r\nthree");
}

TEST(Rows, ControlCharactersAreToldInTheirColumn)
{
    for (std::size_t column = 0; column < columnCount; ++column)
        for (const char* control : {"\x07", "\t", "\r", "\x7F", "\xC2\x85"}) {
            Row row = rowOf("2031-05-01,Mill,feed,1,300,g,kitchen mix,side=left,a note");
            row.cells[column] += control;
            const auto made = rowToEntry(row, table());
            ASSERT_TRUE(std::holds_alternative<Fault>(made)) << column;
            EXPECT_EQ(std::get<Fault>(made).column.toStdString(), columnNames[column]);
        }
    Row row = rowOf("2031-05-01,Mill,feed,,300,g,,,");
    row[Column::stack] = "Mi\nll";
    EXPECT_EQ(std::get<Fault>(rowToEntry(row, table())).column, u"stack") << "a line break outside a note";
}

struct BadRow {
    const char* row;
    const char* told; ///< COLUMN: found «X»; allowed: …, as a substring
};

void PrintTo(const BadRow& bad, std::ostream* out) { *out << bad.row; }

class BadRows : public testing::TestWithParam<BadRow> {};

TEST_P(BadRows, SayColumnFoundAndAllowed)
{
    const auto made = rowToEntry(rowOf(GetParam().row), table());
    ASSERT_TRUE(std::holds_alternative<Fault>(made));
    EXPECT_THAT(faultText(QStringLiteral("f"), std::get<Fault>(made)).toStdString(), testing::HasSubstr(std::string{": "} + GetParam().told));
}

INSTANTIATE_TEST_SUITE_P(
    EachRule, BadRows,
    testing::Values(
        BadRow{"31-05-01,Mill,rotate,,,,,,", "date: found «31-05-01»; allowed: a date from 1900 to 2199"}, BadRow{"2031-02-30,Mill,rotate,,,,,,", "date: found «2031-02-30»"},
        BadRow{"1899-12-31,Mill,rotate,,,,,,", "date: "}, BadRow{"2200-01-01,Mill,rotate,,,,,,", "date: "}, BadRow{"2031-05-01T24:00,Mill,rotate,,,,,,", "date: "}, BadRow{",Mill,rotate,,,,,,", "date: found «»"},
        BadRow{"2031-05-01,Mill,fed,,,,,,", "action: found «fed»; allowed: setup, material, stock, bed, feed, cover, water, routine, drain, flush, reading, check, weigh, count, "
                                             "trayweight, rotate, loosen, lid, harvest, remove, move, event, note, retire"},
        BadRow{"2031-05-01,Mill,Feed,,300,g,,,", "action: found «Feed»"}, BadRow{"2031-05-01,Mill,feed,0,300,g,,,", "slot: found «0»; allowed: a whole number from 1 (bottom), or nothing"},
        BadRow{"2031-05-01,Mill,feed,top,300,g,,,", "slot: found «top»"}, BadRow{"2031-05-01,Mill,feed,-1,300,g,,,", "slot: "}, BadRow{"2031-05-01,Mill,feed,1.5,300,g,,,", "slot: "},
        BadRow{"2031-05-01,Mill,feed,99999999999999999999,300,g,,,", "slot: "}, BadRow{"2031-05-01,Mill,drain,1,1,L,,,", "slot: found «1»; allowed: nothing (drain is of the whole stack)"},
        BadRow{"2031-05-01,Mill,feed,,,g,,,", "amount: found «»; allowed: an amount, which is missing"}, BadRow{"2031-05-01,Mill,feed,,300,,,,", "unit: found «»; allowed: g, kg, oz, lb, mL, L, cup, gal, floz"},
        BadRow{"2031-05-01,Mill,feed,,3e2,g,,,", "amount: found «3e2»"}, BadRow{"2031-05-01,Mill,feed,,-3,g,,,", "amount: found «-3»; allowed: above 0, at most 1000 kg"},
        BadRow{"2031-05-01,Mill,feed,,+3,g,,,", "amount: "}, BadRow{"2031-05-01,Mill,feed,,nan,g,,,", "amount: "}, BadRow{"2031-05-01,Mill,feed,, 3,g,,,", "amount: "},
        BadRow{"2031-05-01,Mill,feed,,0,g,,,", "amount: found «0»; allowed: above 0, at most 1000 kg"}, BadRow{"2031-05-01,Mill,feed,,1000.1,kg,,,", "amount: "},
        BadRow{"2031-05-01,Mill,feed,,2204.7,lb,,,", "amount: "}, BadRow{"2031-05-01,Mill,water,,2000.1,L,,,", "amount: found «2000.1»; allowed: above 0, at most 2000 L"}, BadRow{"2031-05-01,Mill,water,,0,L,,,", "amount: "},
        BadRow{"2031-05-01,Mill,feed,,3,pints,,,", "unit: found «pints»"}, BadRow{"2031-05-01,Mill,feed,,3,G,,,", "unit: found «G»"}, BadRow{"2031-05-01,Mill,feed,,3,count,,,", "unit: "},
        BadRow{"2031-05-01,Mill,water,,3,g,,,", "unit: found «g»; allowed: mL, L, cup, gal, floz"}, BadRow{"2031-05-01,Mill,stock,,3,L,,,", "unit: found «L»; allowed: g, kg, oz, lb"},
        BadRow{"2031-05-01,Mill,rotate,,3,,,,", "amount: found «3»; allowed: nothing (rotate has no amount)"}, BadRow{"2031-05-01,Mill,rotate,,,g,,,", "unit: found «g»; allowed: nothing"},
        BadRow{"2031-05-01,Mill,water,,1,L,water,,", "item: found «water»; allowed: nothing (water has no item)"}, BadRow{"2031-05-01,Mill,water,,1,L,,side=left,", "detail: found «side=left»; allowed: nothing (water has no detail)"},
        BadRow{"2031-05-01,Mill,feed,,300,g,kichen mix,,", "item: found «kichen mix»; allowed: «kitchen mix»"}, BadRow{"2031-05-01,Mill,feed,,300,g,bread,,", "item: found «bread»; allowed: «bread, white», «bread, whole wheat»"}, BadRow{"2031-05-01,Mill,bed,,300,g,,,", "item: found «»"},
        BadRow{"2031-05-01,Mill,stock,,1,kg,Eisenia fetid,,", "item: found «Eisenia fetid»; allowed: Eisenia fetida, Eisenia andrei, Eudrilus eugeniae, Perionyx excavatus"},
        BadRow{"2031-05-01,Mill,routine,,1,L,Water,,", "item: found «Water»; allowed: water, cover"}, BadRow{"2031-05-01,Mill,routine,,1,L,cover,,", "unit: found «L»; allowed: g, kg, oz, lb"},
        BadRow{"2031-05-01,Mill,event,,,,,,", "item: found «»; allowed: a word such as smell"}, BadRow{"2031-05-01,,material,,,,,,", "item: found «»; allowed: the name of an own material"},
        BadRow{"2031-05-01,Mill,feed,,300,g,,colour=red,", "detail: found «colour=red»; allowed: key=value with the keys side"}, BadRow{"2031-05-01,Mill,feed,,300,g,,side,", "detail: found «side»; allowed: side= and a value"},
        BadRow{"2031-05-01,Mill,feed,,300,g,,side=,", "detail: "}, BadRow{"2031-05-01,Mill,feed,,300,g,,side=left;,", "detail: "}, BadRow{"2031-05-01,Mill,feed,,300,g,,side=left;side=left,", "detail: found «side=left»; allowed: side once"},
        BadRow{"2031-05-01,Mill,feed,,300,g,,side=top,", "detail: found «side=top»; allowed: side=left, right, front, back, all"},
        BadRow{"2031-05-01,Mill,setup,,,,,trays=0,", "detail: found «trays=0»; allowed: trays=a whole number, 1 to 100"}, BadRow{"2031-05-01,Mill,setup,,,,,trays=2.5,", "detail: "},
        BadRow{"2031-05-01,Mill,setup,,,,,area=0,", "detail: found «area=0»; allowed: area=above 0, at most 10"}, BadRow{"2031-05-01,Mill,setup,,,,,temp=81,", "detail: found «temp=81»; allowed: temp=-40 to 80"},
        BadRow{"2031-05-01,Mill,setup,,,,,temp=-41,", "detail: "}, BadRow{"2031-05-01,Mill,setup,,,,,key=12,", "detail: found «key=12»"}, BadRow{"2031-05-01,Mill,setup,,,,,spigot=closed,", "detail: found «spigot=closed»; allowed: spigot=open, shut"},
        BadRow{"2031-05-01,Mill,setup,,,,,place=cellar,", "detail: found «place=cellar»; allowed: place=indoors, garage, outdoors"}, BadRow{"2031-05-01,,material,,,,pulp,class=food,", "detail: found «class=food»"},
        BadRow{"2031-05-01,,material,,,,pulp,welcome=maybe,", "detail: found «welcome=maybe»; allowed: welcome=yes, little, no"}, BadRow{"2031-05-01,,material,,,,pulp,moisture=100,", "detail: found «moisture=100»; allowed: moisture=0 to 99"}, BadRow{"2031-05-01,Mill,reading,,,,,squeeze=6,", "detail: found «squeeze=6»; allowed: squeeze=a whole number, 1 to 5"},
        BadRow{"2031-05-01,Mill,reading,,,,,bin=80.5,", "detail: "}, BadRow{"2031-05-01,Mill,reading,,,,,sump=-1,", "detail: "}, BadRow{"2031-05-01,Mill,reading,,,,,rh=101,", "detail: "}, BadRow{"2031-05-01,Mill,reading,,,,,ph=14.5,", "detail: "}, BadRow{"2031-05-01,Mill,reading,,,,,,", "detail: found «»; allowed: at least one of bin"},
        BadRow{"2031-05-01,Mill,check,,,,,worms=lots,", "detail: found «worms=lots»; allowed: worms=few, some, many"}, BadRow{"2031-05-01,Mill,check,,,,,bits=-1,", "detail: "}, BadRow{"2031-05-01,Mill,check,,,,,,", "detail: "},
        BadRow{"2031-05-01,Mill,drain,,,,,,", "amount: found «»; allowed: a volume, or spigot="}, BadRow{"2031-05-01,Mill,drain,,,,,emptied=yes,", "amount: "}, BadRow{"2031-05-01,Mill,drain,,1,L,,emptied=maybe,", "detail: found «emptied=maybe»; allowed: emptied=yes, no"},
        BadRow{"2031-05-01,Mill,drain,,1,L,,worms=1.5,", "detail: "}, BadRow{"2031-05-01,Mill,count,,1.5,count,,,", "amount: found «1.5»; allowed: a whole number"}, BadRow{"2031-05-01,Mill,count,,5,g,,,", "unit: found «g»; allowed: count"},
        BadRow{"2031-05-01,Mill,weigh,,5,g,,share=0,", "detail: found «share=0»; allowed: share=above 0, at most 100"}, BadRow{"2031-05-01,Mill,lid,,,,,,", "detail: "}, BadRow{"2031-05-01,Mill,move,,5,g,,,", "detail: found «»; allowed: to= and the name of another stack"},
        BadRow{"2031-05-01,Mill,event,,,,away,until=2031-04-30,", "detail: found «until=2031-04-30»; allowed: until=a day not before"}, BadRow{"2031-05-01,Mill,event,,,,away,until=soon,", "detail: "}, BadRow{"2031-05-01,Mill,note,,,,,,", "note: found «»; allowed: a text"}));

}
