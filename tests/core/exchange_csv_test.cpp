#include "core/exchange/csv.h"
#include "core/exchange/spreadsheet_safe.h"
#include "core/exchange/text.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <array>
#include <random>

// Rules and examples: RFC 4180, section 2, read.
namespace tierloam::exchange {

using testing::ElementsAre;
using csv::Problem;

namespace {

std::vector<std::vector<std::string>> cellsOf(std::string_view text)
{
    std::vector<std::vector<std::string>> all;
    for (const csv::Record& record : csv::read(text)) {
        EXPECT_EQ(record.problem, Problem::none);
        all.push_back(record.cells);
    }
    return all;
}

Problem problemOf(std::string_view text) { return csv::read(text).front().problem; }

}

TEST(Csv, ReadsTheExamplesOfTheStandard)
{
    EXPECT_THAT(cellsOf("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"), ElementsAre(ElementsAre("aaa", "bbb", "ccc"), ElementsAre("zzz", "yyy", "xxx")));
    EXPECT_THAT(cellsOf("aaa,bbb,ccc\r\nzzz,yyy,xxx"), ElementsAre(ElementsAre("aaa", "bbb", "ccc"), ElementsAre("zzz", "yyy", "xxx")));
    EXPECT_THAT(cellsOf("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx"), ElementsAre(ElementsAre("aaa", "b\r\nbb", "ccc"), ElementsAre("zzz", "yyy", "xxx")));
    EXPECT_THAT(cellsOf("\"aaa\",\"b\"\"bb\",\"ccc\""), ElementsAre(ElementsAre("aaa", "b\"bb", "ccc")));
}

TEST(Csv, ReadsLfEmptyCellsAndBlanks)
{
    EXPECT_THAT(cellsOf("a,,\n,,b\n"), ElementsAre(ElementsAre("a", "", ""), ElementsAre("", "", "b")));
    EXPECT_THAT(cellsOf(" a , b "), ElementsAre(ElementsAre(" a ", " b ")));
    EXPECT_THAT(cellsOf("\"\",x"), ElementsAre(ElementsAre("", "x")));
    EXPECT_THAT(cellsOf("\n\r\na\n\n"), ElementsAre(ElementsAre("a"))) << "empty lines are no records";
    EXPECT_TRUE(csv::read("").empty());
}

TEST(Csv, SkipsAByteOrderMarkAtTheStartOnly)
{
    EXPECT_THAT(cellsOf("\xEF\xBB\xBF" "date,x"), ElementsAre(ElementsAre("date", "x")));
    EXPECT_THAT(cellsOf("a,\xEF\xBB\xBF" "b"), ElementsAre(ElementsAre("a", "\xEF\xBB\xBF" "b")));
}

TEST(Csv, TellsTheLineWhereARecordStarts)
{
    const auto records = csv::read("h\n\"a\nb\r\nc\"\nd\n\ne");
    ASSERT_EQ(records.size(), 4u);
    EXPECT_EQ(records[0].line, 1);
    EXPECT_EQ(records[1].line, 2);
    EXPECT_EQ(records[2].line, 5);
    EXPECT_EQ(records[3].line, 7);
    EXPECT_EQ(records[1].raw, "\"a\nb\r\nc\"");
}

TEST(Csv, TellsWhatIsBroken)
{
    EXPECT_EQ(problemOf("a,\"b\nc,d"), Problem::openQuote);
    EXPECT_EQ(csv::read("a,\"b\nc,d").size(), 1u) << "an open quote takes the rest";
    EXPECT_EQ(problemOf("a,b\"c"), Problem::strayQuote);
    EXPECT_EQ(problemOf("a,\"b\"c,d"), Problem::strayQuote);
    EXPECT_EQ(csv::read("a,\"b\"c,d\ne").back().problem, Problem::none) << "the next line is read again";
    // Each ill-formed in its own way: Unicode Standard 15, table 3-7.
    for (const char* bad : {"\xFF", "a\xC3", "\xC0\xAF", "\xED\xA0\x80", "\xF4\x90\x80\x80", "x,\"\x80\""}) EXPECT_EQ(problemOf(bad), Problem::notUtf8) << bad;
    EXPECT_EQ(problemOf("Gew\xC3\xB6lbe \xF0\x9F\xAA\xB1"), Problem::none);
}

TEST(Csv, WhatIsWrittenIsReadBack)
{
    std::mt19937_64 random{7};
    const std::string_view letters = "ab,\"\n\r;= \xC3\xA4";
    for (int round = 0; round < 2000; ++round) {
        std::vector<std::vector<std::string>> rows(1 + random() % 3);
        for (auto& row : rows) {
            row.resize(2 + random() % 3);
            for (std::string& cell : row)
                for (std::size_t n = random() % 6; n > 0; --n) {
                    const char c = letters[random() % (letters.size() - 1)];
                    if (c == '\xC3') cell += "\xC3\xA4";
                    else if (c != '\xA4') cell += c;
                }
        }
        std::string text;
        for (const auto& row : rows) csv::writeRecord(text, row);
        EXPECT_EQ(cellsOf(text), rows) << text;
    }
}

TEST(Csv, OtherSeparatorsAndAFewRecordsAlone)
{
    EXPECT_THAT(csv::read("a;b,c\n\"d;e\";f\n", ';')[1].cells, ElementsAre("d;e", "f"));
    EXPECT_THAT(csv::read("a\tb\n", '\t')[0].cells, ElementsAre("a", "b"));
    EXPECT_EQ(csv::read("a\nb\nc\n", ',', 2).size(), 2U);
    std::string text;
    csv::writeRecord(text, {"a;b", "c,d", "e"}, ';');
    EXPECT_EQ(text, "\"a;b\";\"c,d\";e\r\n");
}

TEST(Csv, WritesQuoteMarksOnlyWhereTheyMustBe)
{
    std::string text;
    csv::writeRecord(text, {"a b", "c,d", "e\"f", "g\nh", ""});
    EXPECT_EQ(text, "a b,\"c,d\",\"e\"\"f\",\"g\nh\",\r\n");
}

TEST(SpreadsheetSafe, NoTextBeginsLikeAFormulaAndAllComeBackUnchanged)
{
    for (const char* text : {"=SUM(A1)", "+1", "-1", "@x", "\\=x", "\\\\=x", "\\", "\\a", "", "a=b", "3.5", "\\-", "=", " =x"}) {
        const std::string safe = spreadsheetSafe(text);
        EXPECT_EQ(std::string_view{"=+-@"}.find(safe.empty() ? 'a' : safe[0]), std::string_view::npos) << text;
        EXPECT_EQ(fromSpreadsheetSafe(safe), text);
    }
    for (const char* text : {" =x", "\t=x", "\tx", "\rx", "\r\n+1", "\n@x", "\\ =x", "\xEF\xBC\x9D" "1", " \xEF\xBC\xA0x"}) {
        EXPECT_EQ(spreadsheetSafe(text), std::string{"\\"} + text) << "a spreadsheet leaves out what stands before the mark";
        EXPECT_EQ(fromSpreadsheetSafe(spreadsheetSafe(text)), text);
    }
    EXPECT_EQ(spreadsheetSafe("=1"), "\\=1");
    EXPECT_EQ(spreadsheetSafe("kitchen mix"), "kitchen mix");
    EXPECT_EQ(fromSpreadsheetSafe("=1"), "=1") << "typed by hand";
}

TEST(SpreadsheetSafe, RandomNastyTextsComeBackUnchanged)
{
    // A mutation that drops one rule of isMarked() lets a live cell through, or loses a backslash.
    std::mt19937_64 random{5};
    constexpr std::array pieces{"=", "+", "-", "@", "\\", "\\\\", "\t", "\r", "\n", " ", "\"", ",", ";", "a", "1", "\xEF\xBC\x9D", "\xC3\xBC"};
    for (int round = 0; round < 20000; ++round) {
        std::string text;
        for (auto length = random() % 7; length-- > 0;) text += pieces[random() % pieces.size()];
        const std::string safe = spreadsheetSafe(text);
        ASSERT_EQ(fromSpreadsheetSafe(safe), text);
        const std::size_t first = safe.find_first_not_of(" \t\r\n");
        if (first == std::string::npos) continue;
        ASSERT_EQ(std::string_view{"=+-@"}.find(safe[first]), std::string_view::npos) << text;
        ASSERT_FALSE(safe[0] == '\t' || safe[0] == '\r') << text;
    }
}

TEST(Shown, FitsOnOneLine)
{
    EXPECT_EQ(shown("kitchen mix"), u"kitchen mix");
    EXPECT_EQ(shown("a\nb\x07"), u"aU+000AbU+0007");
    EXPECT_EQ(shown("\xFF"), QString{QChar{0xFFFD}});
    EXPECT_EQ(shown("a\xE2\x80\xAE" "b"), u"aU+202Eb") << "a mark that turns the direction of writing";
    const QString cut = shown(std::string(100, 'x'));
    EXPECT_EQ(cut, QString(60, QLatin1Char{'x'}) + QChar{0x2026});
}

}
