#include "core/exchange/sheet.h"
#include "core/exchange/sheet_columns.h"
#include "core/exchange/sheet_values.h"

#include <QFile>
#include <QTemporaryDir>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// Tables of other people: what they are encoded in, what parts their cells, what their columns hold, how their numbers and dates are meant.
// The examples are our own inventions.
namespace tierloam::exchange {

using testing::ElementsAre;

namespace {

Sheet sheetOf(std::string_view bytes, std::optional<char> separator = {})
{
    auto read = readSheet(bytes, separator);
    if (const auto* why = std::get_if<QString>(&read)) {
        ADD_FAILURE() << why->toStdString();
        return {};
    }
    return std::get<Sheet>(read);
}

Day day(int year, unsigned month, unsigned dayOfMonth) { return Day{std::chrono::year{year} / std::chrono::month{month} / std::chrono::day{dayOfMonth}}; }

template <class Witness>
auto evidenceOf(std::initializer_list<const char*> cells)
{
    Witness witness;
    int line = 1;
    for (const char* cell : cells) witness.hear(cell, ++line);
    return witness.evidence();
}

std::vector<std::optional<SheetField>> fieldsOf(const std::vector<std::string>& header)
{
    std::vector<std::optional<SheetField>> fields;
    for (const SheetColumn& column : recogniseColumns(header)) fields.push_back(column.field);
    return fields;
}

}

TEST(Sheet, SeparatorIsRecognisedAlsoWhereTheOthersOccurInText)
{
    EXPECT_EQ(sheetOf("date,note\n2031-05-01,a; b; c\n2031-05-02,d\n").separator, ',');
    EXPECT_EQ(sheetOf("date;amount;note\n1.5.2031;0,5;\"a, b\"\n2.5.2031;1,25;c\n").separator, ';');
    EXPECT_EQ(sheetOf("date\tamount\tnote\n1.5.2031\t0,5\ta; b, c\n").separator, '\t');
    EXPECT_TRUE(sheetOf("date;amount\n1.5.2031;5\n").separatorIsSure);
    EXPECT_FALSE(sheetOf("a;b,c\n1;2,3\n").separatorIsSure) << "two columns either way";
    EXPECT_THAT(sheetOf("a;b,c\n1;2,3\n", ',').header, ElementsAre("a;b", "c"));
    EXPECT_THAT(sheetOf("only\n1\n2\n").header, ElementsAre("only"));
}

TEST(Sheet, EncodingIsFoundOut)
{
    EXPECT_EQ(sheetOf("date,note\n2031-05-01,m\xC3\xBC\n").encoding, Encoding::utf8);
    EXPECT_EQ(sheetOf("\xEF\xBB\xBF" "date,note\n2031-05-01,m\xC3\xBC\n").encoding, Encoding::utf8Marked);
    EXPECT_THAT(sheetOf("\xEF\xBB\xBF" "date,note\n").header, ElementsAre("date", "note"));
    const Sheet latin = sheetOf("date;note\n1.5.2031;M\xFCll \x80 5\n");
    EXPECT_EQ(latin.encoding, Encoding::latin1);
    EXPECT_EQ(latin.rows.at(0).cells.at(1), "Müll € 5");
    const QString wide = QStringLiteral("date,note\n2031-05-01,mü\n");
    const QByteArray utf16 = QByteArray{"\xFF\xFE"} + QByteArray{reinterpret_cast<const char*>(wide.utf16()), wide.size() * 2};
    EXPECT_EQ(sheetOf({utf16.constData(), static_cast<std::size_t>(utf16.size())}).rows.at(0).cells.at(1), "mü");
}

TEST(Sheet, RowsOfNothingAreLeftOutAndLinesStayTrue)
{
    const Sheet sheet = sheetOf("date,note\n,\n2031-05-01,\"two\nlines\"\n , \n2031-05-02,x\n");
    ASSERT_EQ(sheet.rows.size(), 2U);
    EXPECT_EQ(sheet.rows[0].line, 3);
    EXPECT_EQ(sheet.rows[1].line, 6);
    EXPECT_EQ(sheetOf("date,note\r2031-05-01,a\r2031-05-02,b\r").rows.size(), 2U) << "line ends of CR alone";
}

// A title, names of groups and a day of printing stand above many tables; and some have no names at all.
TEST(Sheet, TheColumnsAreNamedWhereTheirNamesStand)
{
    const auto of = [](const char* text) { return std::get<Sheet>(readSheet(text)); };
    const Sheet titled = of("Worm diary 2031\nprinted;27.11.2031\n;;;;\nDate;Bin;Action;Amount;Unit\n1.5.2031;Mill;fed;300;g\n");
    EXPECT_EQ(titled.separator, ';');
    EXPECT_EQ(titled.headerLine, 4);
    EXPECT_EQ(titled.above, 2U);
    EXPECT_EQ(titled.header.size(), 5U);
    EXPECT_EQ(titled.rows.size(), 1U);
    const Sheet grouped = of("When,,What,,\nDate,Bin,Action,Amount,Unit\n1.5.2031,Mill,fed,300,g\n");
    EXPECT_EQ(grouped.headerLine, 2);
    EXPECT_EQ(grouped.header.front(), "Date");
    const Sheet none = of("1.5.2031;Mill;fed;300;g\n2.5.2031;Mill;fed;310;g\n");
    EXPECT_EQ(none.headerLine, 0);
    EXPECT_EQ(none.header.size(), 5U);
    EXPECT_EQ(none.rows.size(), 2U) << "the first is an entry, not a header";
    const Sheet usual = of("Wann;Kiste;Menge\n1.5.2031;Mill;300\n");
    EXPECT_EQ(usual.headerLine, 1) << "names that nobody knows";
    EXPECT_EQ(usual.above, 0U);
    EXPECT_EQ(of("time,bed\n2031-05-01 00:00,20.5\n").headerLine, 1);
    EXPECT_EQ(of("note,feed\nbin,feed\n").headerLine, 1) << "rows that look like names do not go above it";
}

// What a long file asks is asked before it is read to its end.
TEST(Sheet, TheFirstRowsOfALongFileAreReadAtOnce)
{
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("long.csv"));
    const auto fill = [&](const QByteArray& row, qint64 bytes, const QByteArray& start) {
        QFile file{path};
        ASSERT_TRUE(file.open(QIODevice::WriteOnly | QIODevice::Truncate));
        file.write(start);
        while (file.size() < bytes) file.write(row.repeated(500));
    };
    fill("2031-05-01;Mill;fed;\"two\nlines\"\n", firstSheetBytes * 3, "date;stack;action;note\n");
    const auto start = readSheetStart(path);
    ASSERT_TRUE(start);
    const auto all = std::get<Sheet>(readSheetFile(path));
    EXPECT_FALSE(start->whole);
    EXPECT_TRUE(all.whole);
    EXPECT_EQ(start->header, all.header);
    EXPECT_EQ(start->separator, ';');
    EXPECT_GT(start->rows.size(), 1000U);
    EXPECT_LT(start->rows.size(), all.rows.size());
    for (std::size_t row = 0; row < start->rows.size(); ++row) {
        ASSERT_EQ(start->rows[row].cells, all.rows[row].cells) << "the last one whole, too";
        ASSERT_EQ(start->rows[row].problem, csv::Problem::none);
    }
    fill(QByteArray{"1\0,\0" "a\0\n\0", 8}, firstSheetBytes * 2, QByteArray{"\xFF\xFE" "d\0,\0b\0\n\0", 10});
    const auto wide = readSheetStart(path);
    ASSERT_TRUE(wide);
    EXPECT_EQ(wide->encoding, Encoding::utf16);
    EXPECT_EQ(wide->rows.back().cells, (std::vector<std::string>{"1", "a"}));
    fill("2031-05-01;Mill\n", 100, "date;stack\n");
    EXPECT_FALSE(readSheetStart(path)) << "short enough to be read as a whole";
    EXPECT_FALSE(readSheetStart(folder.filePath(QStringLiteral("none.csv"))));
}

TEST(Sheet, WhatIsNoTableIsToldWithItsPath)
{
    EXPECT_TRUE(std::holds_alternative<QString>(readSheet("")));
    EXPECT_TRUE(std::holds_alternative<QString>(readSheet(std::string_view{"a\0b", 3})));
    EXPECT_TRUE(std::holds_alternative<QString>(readSheet("\"open,b\n")));
    const QTemporaryDir folder;
    const auto absent = readSheetFile(folder.filePath(QStringLiteral("gone.csv")));
    ASSERT_TRUE(std::holds_alternative<QString>(absent));
    EXPECT_TRUE(std::get<QString>(absent).contains(QStringLiteral("gone.csv")));
}

TEST(SheetColumns, AreKnownByOurNamesAndPlainOnesInAnyOrder)
{
    using enum SheetField;
    EXPECT_THAT(fieldsOf({"note", "date", "stack", "action", "slot", "amount", "unit", "item", "detail"}), ElementsAre(note, date, stack, action, slot, amount, unit, item, detail));
    EXPECT_THAT(fieldsOf({"Comments", "When", "Weight (g)", "Scraps", "Bin", "Weather"}), ElementsAre(note, date, amount, item, stack, std::nullopt));
    EXPECT_EQ(recogniseColumns({"Weight (g)"})[0].unit, Unit::g);
    EXPECT_EQ(recogniseColumns({"amount in kg"})[0].unit, Unit::kg);
    EXPECT_EQ(recogniseColumns({"How much [litres]"})[0].unit, Unit::L);
    EXPECT_EQ(recogniseColumns({"Quantity"})[0].unit, std::nullopt);
    EXPECT_THAT(fieldsOf({"feed", "item"}), ElementsAre(std::nullopt, item)) << "our own name goes first";
    EXPECT_THAT(fieldsOf({"Note", "Remarks"}), ElementsAre(note, std::nullopt)) << "each thing once";
}

TEST(SheetColumns, WordsOfActionsAndUnits)
{
    EXPECT_EQ(actionMeant("Feeding"), "feed");
    EXPECT_EQ(actionMeant(" FED "), "feed");
    EXPECT_EQ(actionMeant("worms_added"), "stock");
    EXPECT_EQ(actionMeant("trayweight"), "trayweight");
    EXPECT_EQ(actionMeant("danced"), std::nullopt);
    EXPECT_EQ(unitMeant("Grams"), Unit::g);
    EXPECT_EQ(unitMeant("lbs."), Unit::lb);
    EXPECT_EQ(unitMeant("fl oz"), Unit::floz);
    EXPECT_EQ(unitMeant("L"), Unit::L);
    EXPECT_EQ(unitMeant("stone"), std::nullopt);
}

TEST(SheetNumbers, CommaOrPointIsSettledByACellOrAsked)
{
    EXPECT_FALSE(evidenceOf<DecimalWitness>({"300", "12", "kilo"}).mustBeAsked());
    EXPECT_FALSE(evidenceOf<DecimalWitness>({"300"}).settled) << "nothing to settle";
    EXPECT_EQ(evidenceOf<DecimalWitness>({"0,5"}).settled, DecimalMark::comma);
    EXPECT_EQ(evidenceOf<DecimalWitness>({"1.25"}).settled, DecimalMark::point);
    EXPECT_EQ(evidenceOf<DecimalWitness>({"0.125"}).settled, DecimalMark::point) << "no thousands begin with 0";
    EXPECT_EQ(evidenceOf<DecimalWitness>({"1.234,5"}).settled, DecimalMark::comma);
    EXPECT_EQ(evidenceOf<DecimalWitness>({"1,234,567"}).settled, DecimalMark::point);
    const auto open = evidenceOf<DecimalWitness>({"300", "1,250", "2,500"});
    EXPECT_TRUE(open.open);
    EXPECT_EQ(open.line, 3);
    EXPECT_EQ(open.cell, "1,250");
    const auto settled = evidenceOf<DecimalWitness>({"1,250", "2,5"});
    EXPECT_EQ(settled.settled, DecimalMark::comma);
    EXPECT_EQ(settled.line, 3) << "the cell that settles it, to be told";
    const auto divided = evidenceOf<DecimalWitness>({"2,5", "2.5"});
    EXPECT_TRUE(divided.divided);
    EXPECT_TRUE(divided.mustBeAsked());
    EXPECT_FALSE(divided.settled);
}

TEST(SheetNumbers, AreReadInOneWayAlone)
{
    const auto point = [](const char* cell) { return plainNumber(cell, DecimalMark::point); };
    const auto comma = [](const char* cell) { return plainNumber(cell, DecimalMark::comma); };
    EXPECT_EQ(comma("0,35"), "0.35");
    EXPECT_EQ(comma(" 1.234,5 "), "1234.5");
    EXPECT_EQ(comma("1,250"), "1.250");
    EXPECT_EQ(comma("1.250"), std::nullopt) << "a thousands mark is never guessed";
    EXPECT_EQ(plainNumber("1.250", DecimalMark::comma, true), "1250") << "but it may be told";
    EXPECT_EQ(plainNumber("1.25", DecimalMark::comma, true), std::nullopt);
    EXPECT_EQ(comma("1.250.000"), "1250000");
    EXPECT_EQ(comma("0.35"), std::nullopt);
    EXPECT_EQ(point("1,250"), std::nullopt);
    EXPECT_EQ(point("1,250.5"), "1250.5");
    EXPECT_EQ(point(".5"), "0.5");
    EXPECT_EQ(point("-2.5"), "-2.5");
    EXPECT_EQ(point("\xE2\x88\x92" "2.5"), "-2.5") << "a typographic minus";
    for (const char* cell : {"", "-", ".", "1.", "1e5", "1,2.3,4", "12,34.5", "5 g", "1..2", "0x1"}) EXPECT_EQ(point(cell), std::nullopt) << cell;
}

TEST(SheetDates, DayOrMonthFirstIsSettledByACellOrAsked)
{
    EXPECT_FALSE(evidenceOf<DateWitness>({"2031-05-04", "2031/05/06"}).mustBeAsked());
    EXPECT_FALSE(evidenceOf<DateWitness>({"5/5/2031", "7.7.2031"}).mustBeAsked()) << "the same either way";
    const auto open = evidenceOf<DateWitness>({"05/05/2031", "04/05/2031"});
    EXPECT_TRUE(open.open);
    EXPECT_EQ(open.line, 3);
    EXPECT_EQ(evidenceOf<DateWitness>({"04/05/2031", "25/12/2031"}).settled, DateOrder::dayFirst);
    EXPECT_EQ(evidenceOf<DateWitness>({"04/05/2031", "12/25/2031"}).settled, DateOrder::monthFirst);
    EXPECT_TRUE(evidenceOf<DateWitness>({"25/12/2031", "12/25/2031"}).divided);
    EXPECT_TRUE(evidenceOf<DateWitness>({"1.2.2031"}).open) << "points promise nothing";
    DateWitness two;
    two.hear("1/2/31", 2);
    EXPECT_TRUE(two.shortYears());
}

TEST(SheetDates, AreReadAsTold)
{
    WaysOfWriting ways;
    EXPECT_EQ(dayAndTimeOf("2031-05-04", "", ways), (DayAndTime{day(2031, 5, 4), std::nullopt}));
    EXPECT_EQ(dayAndTimeOf("4.5.2031", "18:30", ways), (DayAndTime{day(2031, 5, 4), 18 * 60 + 30}));
    EXPECT_EQ(dayAndTimeOf("4. 5. 2031", "", ways), (DayAndTime{day(2031, 5, 4), std::nullopt}));
    ways.order = DateOrder::monthFirst;
    EXPECT_EQ(dayAndTimeOf("4/5/2031 6:30 pm", "", ways), (DayAndTime{day(2031, 4, 5), 18 * 60 + 30}));
    EXPECT_EQ(dayAndTimeOf("4/5/2031 12:05AM", "", ways), (DayAndTime{day(2031, 4, 5), 5}));
    EXPECT_EQ(dayAndTimeOf("2031-05-04T18:30:59.250Z", "", ways), (DayAndTime{day(2031, 5, 4), 18 * 60 + 30}));
    EXPECT_EQ(dayAndTimeOf("4/5/31", "", ways), std::nullopt) << "no century was chosen";
    ways.century = 2000;
    EXPECT_EQ(dayAndTimeOf("4/5/31", "", ways), (DayAndTime{day(2031, 4, 5), std::nullopt}));
    EXPECT_EQ(momentOf("2031-05-04", "18:30:07", ways)->secondOfDay, (18 * 60 + 30) * 60 + 7);
    for (const char* cell : {"", "yesterday", "31/4/2031", "2/29/2031", "2031-13-01", "4/5-2031", "4/5/231", "1/1/1899", "4/5/2031 25:00", "4/5/2031x", "20310504"})
        EXPECT_EQ(dayAndTimeOf(cell, "", ways), std::nullopt) << cell;
}

}
