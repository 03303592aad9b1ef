#include "core/exchange/journal_csv.h"
#include "core/exchange/table_answers.h"
#include "core/exchange/sheet_import.h"
#include "core/materials/bedding.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <chrono>

// Words of somebody's table that the program does not know: asked once each, answered by a stack or an action of ours, by a new stack, or
// by leaving their rows out. Our own inventions throughout.
namespace tierloam::exchange {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

namespace {

Sheet sheetOf(std::string_view bytes) { return std::get<Sheet>(readSheet(bytes)); }

journal::Entries mill()
{
    const ReadJournal read = readJournal("date,stack,action,slot,amount,unit,item,detail,note\n2031-01-01,Mill,setup,,,,,,\n2031-01-01,Mill,bed,,900,g,corrugated cardboard shredded,,\n", {});
    EXPECT_THAT(read.faults, IsEmpty());
    journal::Entries entries = read.effect.after;
    std::int64_t id = 0;
    for (auto& entry : entries) entry.id = journal::EntryId{++id};
    return entries;
}

SheetAnswers answersFor(const Sheet& sheet)
{
    SheetAnswers answers;
    answers.columns = recogniseColumns(sheet.header);
    return answers;
}

std::vector<std::string> rowsOf(const SheetPlan& plan)
{
    std::vector<std::string> rows;
    for (const auto& entry : plan.entries) {
        const Row row = entryToRow(entry);
        std::string text;
        for (const std::string& cell : row.cells) text += (text.empty() ? "" : "|") + cell;
        rows.push_back(text);
    }
    return rows;
}

const std::string table = "date,stack,action,amount,unit,note\n"
                          "2031-03-01,the big one,tipped in,300,g,\n"
                          "2031-03-02,The_big one:,fed,310,g,\n"
                          "2031-03-03,mill,Tipped  in,320,g,\n"
                          "2031-03-04,Attic,tipped in,330,g,\n"
                          "2031-03-05,Attic,rained,,,\n";

}

TEST(SheetWords, EachUnknownWordIsAskedOnceWithWhereItStands)
{
    const Sheet sheet = sheetOf(table);
    const OpenWords open = openWordsOf(sheet, recogniseColumns(sheet.header), {}, {}, mill());
    EXPECT_THAT(open.stacks, ElementsAre(OpenWord{"the big one", "the big one", 2, 2}, OpenWord{"attic", "Attic", 5, 2})) << "«mill» is the only stack that is spelled like it";
    EXPECT_THAT(open.actions, ElementsAre(OpenWord{"tipped in", "tipped in", 2, 3}, OpenWord{"rained", "rained", 6, 1}));
    const Sheet own = sheetOf("date,stack,action\n2031-03-01,Attic,bed\n2031-03-01,Attic,set up\n2031-03-02,,material\n");
    const OpenWords none = openWordsOf(own, recogniseColumns(own.header), {}, {}, mill());
    EXPECT_THAT(none.stacks, IsEmpty()) << "the table sets it up itself";
    EXPECT_THAT(none.actions, IsEmpty());
}

TEST(SheetWords, ManyOfThemMeanWhatEachOfThemMeans)
{
    ActionWordsMet met;
    for (const std::string_view name : journal::actionNames) EXPECT_EQ(met.meant(name), actionMeant(name));
    for (const std::string_view word : {"Fed", "worms_put in:", " Scraps ", "rained", "", "|", "feed|fed"}) EXPECT_EQ(met.meant(word), actionMeant(word)) << word;
}

TEST(SheetWords, WithoutAnAnswerTheRowsAreAtFault)
{
    const Sheet sheet = sheetOf(table);
    const SheetPlan plan = planImport(sheet, answersFor(sheet), mill());
    EXPECT_THAT(plan.entries, IsEmpty());
    EXPECT_EQ(plan.count(RowFate::fault), 5U);
}

TEST(SheetWords, AnAnswerHoldsForAllRowsThatSayTheWord)
{
    const Sheet sheet = sheetOf(table);
    SheetAnswers answers = answersFor(sheet);
    answers.words.stacks = {{"the big one", "Mill"}, {"attic", std::nullopt}};
    answers.words.actions = {{"tipped in", "feed"}, {"rained", "note"}};
    const SheetPlan plan = planImport(sheet, answers, mill());
    EXPECT_THAT(rowsOf(plan), ElementsAre("2031-03-01|Mill|feed||300|g|||", "2031-03-02|Mill|feed||310|g|||", "2031-03-03|Mill|feed||320|g|||"));
    using enum RowFate;
    EXPECT_THAT(plan.fates, ElementsAre(added, added, added, unwanted, unwanted));
    EXPECT_THAT(plan.faults, IsEmpty());
    EXPECT_EQ(plan.begun, 0U);
}

TEST(SheetWords, RowsThatAreLeftOutAskForNothing)
{
    const Sheet sheet = sheetOf("date,stack,action,amount\n1/2/2031,Attic,rained,\"1,234\"\n2031-03-02,Mill,note,\n");
    const auto columns = recogniseColumns(sheet.header);
    const SheetQuestions all = questionsOf(sheet, columns);
    EXPECT_TRUE(all.order.mustBeAsked() && all.decimal.mustBeAsked() && all.unit);
    WordAnswers words;
    words.actions = {{"rained", std::nullopt}};
    const SheetQuestions left = questionsOf(sheet, columns, words);
    EXPECT_FALSE(left.order.mustBeAsked() || left.decimal.mustBeAsked() || left.unit);
    words.actions = {{"rained", "count"}};
    EXPECT_FALSE(questionsOf(sheet, columns, words).unit) << "worms are counted without a unit";
}

TEST(SheetWords, ANewStackIsBegunOnTheDayOfItsFirstRow)
{
    const Sheet sheet = sheetOf("date,stack,action,amount,unit\n2031-03-09,Attic,fed,330,g\n2031-03-04,Attic,fed,340,g\n2031-03-03,Attic,note,,\n2031-03-05,Shed,bed,500,g\n");
    SheetAnswers answers = answersFor(sheet);
    answers.columns = recogniseColumns(sheet.header);
    answers.words.stacks = {{"attic", "Attic"}, {"shed", std::nullopt}};
    answers.words.newStacks = {"Attic"};
    SheetPlan plan = planImport(sheet, answers, mill());
    ASSERT_EQ(plan.entries.size(), 4U) << "its note says nothing";
    EXPECT_EQ(plan.begun, 2U);
    const Row setup = entryToRow(plan.entries[0]), bed = entryToRow(plan.entries[1]);
    EXPECT_EQ(setup[Column::date] + setup[Column::stack] + setup[Column::action], "2031-03-04Atticsetup");
    EXPECT_EQ(bed[Column::date] + bed[Column::action] + bed[Column::item], "2031-03-04bedcorrugated cardboard shredded");
    // What the form for a new stack proposes: 5 cm laid on 0.16 m², in whole tens of grams.
    const materials::Material* board = materials::Table::builtIn().find(bed[Column::item]);
    ASSERT_NE(board, nullptr);
    EXPECT_NEAR(materials::laidDepth(grams(std::stod(bed[Column::amount])), squareMetres(0.16), *board).base(), 5.0, 0.1);
    EXPECT_FALSE(setup[Column::note].empty()) << "what nobody wrote is told to be so";
    // Bedding of its own: none is added to it.
    answers.words.stacks = {{"attic", std::nullopt}, {"shed", "Shed"}};
    answers.words.newStacks = {"Shed"};
    const Sheet withItem = sheetOf("date,stack,action,amount,unit,item\n2031-03-05,Shed,bed,500,g,corrugated cardboard shredded\n2031-03-06,Shed,feed,100,g,\n");
    SheetAnswers second = answers;
    second.columns = recogniseColumns(withItem.header);
    plan = planImport(withItem, second, mill());
    EXPECT_EQ(plan.begun, 1U);
    EXPECT_EQ(plan.entries.size(), 3U);
}

TEST(SheetWords, AStackOfWhichNoRowIsSoundIsNotBegun)
{
    const Sheet sheet = sheetOf("date,stack,action,amount,unit\n2031-03-09,Attic,feed,330,stones\n2031-03-10,Mill,feed,300,g\n");
    SheetAnswers answers = answersFor(sheet);
    answers.words.stacks = {{"attic", "Attic"}};
    answers.words.newStacks = {"Attic"};
    const SheetPlan plan = planImport(sheet, answers, mill());
    EXPECT_THAT(rowsOf(plan), ElementsAre("2031-03-10|Mill|feed||300|g|||"));
    EXPECT_EQ(plan.begun, 0U);
    EXPECT_EQ(plan.count(RowFate::fault), 1U);
}

TEST(SheetWords, AnOwnWordStaysWhereItSaysMoreThanItsAction)
{
    const Sheet sheet = sheetOf("date,stack,action,note\n2031-03-09,Mill,fruit gnats,\n2031-03-10,Mill,phoned the neighbour,\n2031-03-11,Mill,phoned the neighbour,twice\n");
    SheetAnswers answers = answersFor(sheet);
    answers.words.actions = {{"fruit gnats", "event"}, {"phoned the neighbour", "note"}};
    EXPECT_THAT(rowsOf(planImport(sheet, answers, mill())),
                ElementsAre("2031-03-09|Mill|event||||fruit gnats||", "2031-03-10|Mill|note||||||phoned the neighbour", "2031-03-11|Mill|note||||||twice"));
}

TEST(SheetWords, WhatWasFedIsAskedWhereTheRowsTakeAMaterial)
{
    const Sheet sheet = sheetOf("date,stack,action,amount,unit,item\n2031-03-01,Mill,tipped in,300,g,veg peels\n2031-03-02,Mill,feed,310,g,Veg_peels\n2031-03-03,Mill,feed,320,g,pebbles\n"
                                "2031-03-04,Mill,event,,,veg peels\n2031-03-05,,material,,,own stuff\n2031-03-05,Mill,feed,300,g,Own stuff\n2031-03-06,Mill,feed,330,g,Coffee grounds\n");
    SheetAnswers answers = answersFor(sheet);
    const auto asked = [&] { return openWordsOf(sheet, answers.columns, answers.words, {}, mill()).materials; };
    EXPECT_THAT(asked(), ElementsAre(OpenWord{"veg peels", "Veg_peels", 3, 1}, OpenWord{"pebbles", "pebbles", 4, 1}));
    answers.words.actions = {{"tipped in", "feed"}};
    EXPECT_THAT(asked(), ElementsAre(OpenWord{"veg peels", "veg peels", 2, 2}, OpenWord{"pebbles", "pebbles", 4, 1})) << "it is a feeding, as is known now";
    answers.words.materials = {{"veg peels", "kitchen mix"}, {"pebbles", std::nullopt}};
    const SheetPlan plan = planImport(sheet, answers, mill());
    EXPECT_THAT(rowsOf(plan), testing::IsSupersetOf({"2031-03-01|Mill|feed||300|g|kitchen mix||", "2031-03-02|Mill|feed||310|g|kitchen mix||", "2031-03-04|Mill|event||||veg peels||"}));
    EXPECT_EQ(plan.fates[2], RowFate::unwanted);
    const Sheet plain = sheetOf("date,stack,food,grams\n2031-03-01,Mill,veg peels,300\n");
    const auto columns = recogniseColumns(plain.header);
    EXPECT_THAT(openWordsOf(plain, columns, {}, {}, mill()).materials, IsEmpty());
    EXPECT_EQ(openWordsOf(plain, columns, {}, "feed", mill()).materials.size(), 1U) << "once it is said what was done";
}

TEST(SheetWords, TheSameTableAgainAddsNothing)
{
    const Sheet sheet = sheetOf("date,stack,action,amount,unit,item\n2031-03-01,the big one,tipped in,300,g,veg peels\n2031-03-02,Attic,tipped in,310,g,\n2031-03-03,Attic,phoned,,,\n");
    SheetAnswers answers = answersFor(sheet);
    answers.words.stacks = {{"the big one", "Mill"}, {"attic", "Attic"}};
    answers.words.actions = {{"tipped in", "feed"}, {"phoned", "note"}};
    answers.words.materials = {{"veg peels", "kitchen mix"}};
    answers.words.newStacks = {"Attic"};
    const SheetPlan first = planImport(sheet, answers, mill());
    EXPECT_EQ(first.entries.size(), 5U);
    // By then the new stack stands, and is not asked.
    const OpenWords open = openWordsOf(sheet, answers.columns, answers.words, {}, first.after);
    ASSERT_EQ(open.stacks.size(), 1U);
    EXPECT_EQ(open.stacks.front().word, "the big one");
    answers.words.stacks.erase("attic");
    answers.words.newStacks.clear();
    const SheetPlan again = planImport(sheet, answers, first.after);
    EXPECT_THAT(again.entries, IsEmpty());
    EXPECT_EQ(again.count(RowFate::there), 3U);
}

// What is allowed is looked up once for all of them: looked up for each, it took the square of their number.
TEST(SheetWords, ManyRowsAtFaultAreLookedAtInTime)
{
    std::string rows = "date,stack,action,amount,unit\n";
    for (int i = 0; i < 20'000; ++i) rows += i % 2 ? "2031-03-01,Nowhere,feed,300,g\n" : "2030-03-01,Mill,feed,300,g\n";
    const Sheet sheet = sheetOf(rows);
    const auto begin = std::chrono::steady_clock::now();
    const SheetPlan plan = planImport(sheet, answersFor(sheet), mill());
    EXPECT_EQ(plan.count(RowFate::fault), 20'000U);
    EXPECT_LT(std::chrono::steady_clock::now() - begin, std::chrono::seconds{20}) << "found: 2 s, without optimisation";
}

TEST(SheetWords, AnswersAreKeptAsText)
{
    WordAnswers words;
    words.stacks = {{"the «big» one", "Mill"}, {"attic", std::nullopt}};
    words.actions = {{"tipped in", "feed"}};
    words.materials = {{"veg peels", "kitchen mix"}};
    words.newStacks = {"Mill"};
    WordAnswers kept = wordsFrom(wordsText(words));
    EXPECT_EQ(kept.stacks, words.stacks);
    EXPECT_EQ(kept.actions, words.actions);
    EXPECT_EQ(kept.materials, words.materials);
    EXPECT_TRUE(kept.newStacks.empty());
    EXPECT_EQ(wordsFrom(QStringLiteral("[3")), WordAnswers{});
    EXPECT_EQ(wordsName({"Date", "Bin"}), wordsName({" date ", "bin:"}));
    EXPECT_NE(wordsName({"Date", "Bin"}), wordsName({"Date", "Tray"}));
}

TEST(SheetWords, AllThatWasAnsweredOfATableIsKeptAsText)
{
    TableAnswers said;
    said.words.actions = {{"tipped in", "feed"}};
    said.columns = {SheetField::date, std::nullopt, SheetField::note};
    said.decimal = DecimalMark::comma;
    said.order = DateOrder::monthFirst;
    said.century = 1900;
    said.unit = Unit::oz;
    said.action = "water";
    EXPECT_EQ(tableFrom(tableText(said)), said);
    EXPECT_EQ(tableFrom(tableText({})), TableAnswers{});
    EXPECT_EQ(tableFrom(wordsText(said.words)).words, said.words) << "as it was kept before columns were";
    EXPECT_EQ(tableFrom(QStringLiteral(R"({"columns":["date","colour"],"decimal":"dot","century":17,"unit":"stones","action":"sing"})")).columns,
              (std::vector<std::optional<SheetField>>{SheetField::date, std::nullopt}));
    const TableAnswers strange = tableFrom(QStringLiteral(R"({"decimal":"dot","order":7,"century":17,"unit":"stones","action":"sing"})"));
    EXPECT_EQ(strange, TableAnswers{});
    TableAnswers newer;
    newer.decimal = DecimalMark::point;
    newer.words.actions = {{"tipped in", std::nullopt}};
    const TableAnswers both = together(newer, said);
    EXPECT_EQ(both.decimal, DecimalMark::point);
    EXPECT_EQ(both.words.actions, newer.words.actions);
    EXPECT_EQ(both.columns, said.columns);
}

// Headings between the rows, remarks on a line of their own and a total cannot become entries, so nobody is asked about them.
TEST(SheetWords, RowsThatCannotBeEntriesAskForNothing)
{
    const Sheet sheet = sheetOf("date;stack;action;amount;unit;item\n1.6.2031;Mill;feed;0,4;kg;\n;;;;;\n*** holiday ***;;;;;\nsum of;All;in all;2,55;;oats\n20.6.2031;Mill;feed;0,3;kg;\n");
    const auto columns = recogniseColumns(sheet);
    const SheetQuestions questions = questionsOf(sheet, columns);
    EXPECT_FALSE(questions.action);
    EXPECT_FALSE(questions.stack);
    EXPECT_FALSE(questions.unit);
    EXPECT_EQ(openWordsOf(sheet, columns, {}, "feed", mill()), OpenWords{});
    SheetAnswers answers = answersFor(sheet);
    const SheetPlan plan = planImport(sheet, answers, mill());
    EXPECT_EQ(plan.count(RowFate::fault), 2U) << "told all the same";
    EXPECT_EQ(plan.count(RowFate::added), 2U);
    // A day that only one order can be read in is one, and so is each while no column holds the date.
    EXPECT_TRUE(questionsOf(sheetOf("date,stack\n5/31/31,\n"), recogniseColumns({"date", "stack"})).stack);
    EXPECT_TRUE(questionsOf(sheetOf("wann,stack\n5/31/31,\n"), recogniseColumns({"wann", "stack"})).stack);
}

}
