#include "core/exchange/journal_csv.h"
#include "core/exchange/sheet_import.h"
#include "tests/support/word_answers.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <array>
#include <random>

// From somebody's table to entries: what is asked, what each row becomes and why, what is there already. Our own inventions throughout.
namespace tierloam::exchange {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

namespace {

Sheet sheetOf(std::string_view bytes) { return std::get<Sheet>(readSheet(bytes)); }

/// A stack that stands, as the journal would hold it.
journal::Entries mill()
{
    const ReadJournal read = readJournal("date,stack,action,slot,amount,unit,item,detail,note\n2031-01-01,Mill,setup,,,,,,\n"
                                         "2031-01-01,Mill,bed,,900,g,corrugated cardboard shredded,,\n2031-01-02,Mill,stock,,450,g,,,\n"
                                         "2031-02-01,Mill,feed,,300,g,,,\n2031-02-01,Mill,feed,,300,g,,,\n",
                                         {});
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

std::vector<std::string> reasonsOf(const SheetPlan& plan)
{
    std::vector<std::string> reasons;
    for (const auto& [row, fault] : plan.faults) reasons.push_back(std::to_string(fault.line) + ": " + reasonText(fault).toStdString());
    return reasons;
}

}

TEST(SheetImport, ATableOfFeedingsWithItsOwnWordsIsRead)
{
    const Sheet sheet = sheetOf("When;Weather;Bin;Scraps;Weight (g);Comments\n"
                                "25.2.2031;rain;Mill;kitchen mix;350,5;first\n"
                                "3.3.2031;sun;Mill;coffee grounds;120;\"with; semicolon\"\n");
    SheetAnswers answers = answersFor(sheet);
    const SheetQuestions questions = questionsOf(sheet, answers.columns);
    EXPECT_THAT(questions.ignored, ElementsAre("Weather"));
    EXPECT_EQ(questions.order.settled, DateOrder::dayFirst);
    EXPECT_EQ(questions.order.line, 2);
    EXPECT_EQ(questions.decimal.settled, DecimalMark::comma);
    EXPECT_TRUE(questions.action) << "no column says what was done";
    EXPECT_FALSE(questions.stack);
    EXPECT_FALSE(questions.unit) << "the header says it";
    answers.action = "feed";
    const SheetPlan plan = planImport(sheet, answers, mill());
    EXPECT_THAT(reasonsOf(plan), IsEmpty());
    EXPECT_THAT(rowsOf(plan), ElementsAre("2031-02-25|Mill|feed||350.5|g|kitchen mix||first", "2031-03-03|Mill|feed||120|g|coffee grounds||with; semicolon"));
}

TEST(SheetImport, WhatIsOpenIsAskedAndNeverGuessed)
{
    const Sheet sheet = sheetOf("date,stack,action,amount\n3/4/2031,Mill,fed,\"1,250\"\n4/4/2031,Mill,fed,300\n");
    SheetAnswers answers = answersFor(sheet);
    const SheetQuestions questions = questionsOf(sheet, answers.columns);
    EXPECT_TRUE(questions.order.open);
    EXPECT_EQ(questions.order.cell, "3/4/2031");
    EXPECT_TRUE(questions.decimal.open);
    EXPECT_TRUE(questions.unit);
    const SheetPlan unanswered = planImport(sheet, answers, mill());
    EXPECT_THAT(unanswered.entries, IsEmpty());
    ASSERT_EQ(unanswered.faults.size(), 2U);
    EXPECT_THAT(reasonsOf(unanswered)[0], HasSubstr("which of day and month comes first"));
    EXPECT_THAT(reasonsOf(unanswered)[1], HasSubstr("unit"));
    answers.order = DateOrder::monthFirst;
    answers.unit = Unit::g;
    EXPECT_THAT(reasonsOf(planImport(sheet, answers, mill())), ElementsAre(HasSubstr("2: amount: found «1,250»")));
    answers.decimal = DecimalMark::comma;
    EXPECT_THAT(rowsOf(planImport(sheet, answers, mill())), ElementsAre("2031-03-04|Mill|feed||1.25|g|||", "2031-04-04|Mill|feed||300|g|||"));
    answers.decimal = DecimalMark::point;
    EXPECT_THAT(rowsOf(planImport(sheet, answers, mill())), ElementsAre("2031-03-04|Mill|feed||1250|g|||", "2031-04-04|Mill|feed||300|g|||"));
    answers.decimal = DecimalMark::comma;
    answers.order = DateOrder::dayFirst;
    EXPECT_THAT(rowsOf(planImport(sheet, answers, mill())), ElementsAre("2031-04-03|Mill|feed||1.25|g|||", "2031-04-04|Mill|feed||300|g|||"));
}

TEST(SheetImport, RowsAtFaultAreToldAndThoseThatBuildOnThemToo)
{
    const Sheet sheet = sheetOf("date,stack,action,slot,amount,unit,item,detail,note\n"
                                "2031-03-01,Mill,feed,,300,g,,,\n"
                                "2031-03-02,Mill,feed,,300,stones,,,\n"
                                "2031-03-03,Barn,setup,,,,,area=huge,\n"
                                "2031-03-04,Barn,bed,,900,g,corrugated cardboard shredded,,\n"
                                "2031-03-05,Mill,feed,7,300,g,,,\n"
                                "2031-03-06,Mill,feed,,300,g,kitchen mixx,,\n"
                                "yesterday,Mill,feed,,300,g,,,\n"
                                "2031-03-08,Mill,feed,,300,g,,,last,one more cell\n");
    const SheetPlan plan = planImport(sheet, answersFor(sheet), mill());
    EXPECT_THAT(rowsOf(plan), ElementsAre("2031-03-01|Mill|feed||300|g|||"));
    EXPECT_THAT(reasonsOf(plan), ElementsAre(HasSubstr("3: unit: found «stones»"), HasSubstr("4: detail: found «area=huge»"), HasSubstr("5: stack: found «Barn»"), HasSubstr("6: slot: found «7»"),
                                             HasSubstr("7: item: found «kitchen mixx»; allowed: «kitchen mix»"), HasSubstr("8: date: found «yesterday»"), HasSubstr("9 cells")));
    EXPECT_EQ(plan.count(RowFate::fault), 7U);
    EXPECT_EQ(plan.count(RowFate::added), 1U);
    // What could not be read goes out as CSV and comes in again once it is put right.
    std::string again = faultyRows(sheet, plan);
    EXPECT_THAT(again, HasSubstr("line,reason,date,stack"));
    const Sheet out = sheetOf(again);
    ASSERT_EQ(out.rows.size(), 7U);
    EXPECT_EQ(out.rows[0].cells[0], "3");
    for (const auto& [wrong, right] : {std::pair<std::string, std::string>{"stones", "g"}, {"area=huge", "area=0.2"}, {"Mill,feed,7", "Mill,feed,1"}, {"mixx,", "mix,"}, {"yesterday", "2031-03-07"}}) {
        const auto at = again.rfind(wrong);
        ASSERT_NE(at, std::string::npos);
        again.replace(at, wrong.size(), right);
    }
    const Sheet righted = sheetOf(again);
    SheetAnswers answers = answersFor(righted);
    EXPECT_THAT(questionsOf(righted, answers.columns).ignored, ElementsAre("line", "reason"));
    EXPECT_THAT(reasonsOf(planImport(righted, answers, mill())), ElementsAre(HasSubstr("cells")));
}

TEST(SheetImport, WhatIsThereAlreadyIsLeftOutOnRequestAndCountedEachOnce)
{
    const journal::Entries held = mill(); // holds the feeding of the first of February twice
    const Sheet sheet = sheetOf("date,stack,action,amount,unit,item\n"
                                "2031-02-01,Mill,feed,0.3,kg,Kitchen mix\n" // the same in other words
                                "2031-02-01,Mill,feed,300,g,\n"
                                "2031-02-01,Mill,feed,300,g,\n" // a third one
                                "2031-02-03,Mill,feed,300,g,\n"
                                "2031-02-03,Mill,feed,300,g,\n");
    SheetAnswers answers = answersFor(sheet);
    using enum RowFate;
    EXPECT_THAT(planImport(sheet, answers, held).fates, ElementsAre(RowFate::there, RowFate::there, added, added, added)) << "two feedings of a day may be two";
    answers.leaveOutTwice = true;
    EXPECT_THAT(planImport(sheet, answers, held).fates, ElementsAre(RowFate::there, RowFate::there, twice, added, twice));
    answers.leaveOutThere = false;
    answers.leaveOutTwice = false;
    EXPECT_EQ(planImport(sheet, answers, held).entries.size(), 5U);
}

TEST(SheetImport, OurOwnExportIsWholeAndAllOfItIsThereAlready)
{
    const journal::Entries there = mill();
    const Sheet sheet = sheetOf(writeJournal(there));
    SheetAnswers answers = answersFor(sheet);
    const SheetQuestions questions = questionsOf(sheet, answers.columns);
    EXPECT_FALSE(questions.decimal.mustBeAsked() || questions.order.mustBeAsked() || questions.stack || questions.action || questions.unit);
    EXPECT_EQ(planImport(sheet, answers, there).count(RowFate::there), there.size()) << "setup with its key included";
    const SheetPlan fresh = planImport(sheet, answers, {});
    EXPECT_EQ(fresh.entries.size(), there.size());
    EXPECT_EQ(writeJournal(fresh.after), writeJournal(there));
}

TEST(SheetImport, DetailsFollowTheDecimalMark)
{
    const Sheet sheet = sheetOf("date;stack;action;detail\n2031-03-01;Mill;reading;\"bin=21,5;moisture=72\"\n");
    EXPECT_THAT(rowsOf(planImport(sheet, answersFor(sheet), mill())), ElementsAre("2031-03-01|Mill|reading|||||bin=21.5;moisture=72|"));
}

TEST(SheetImport, ARowThatWouldBreakALaterEntryIsAtFault)
{
    const Sheet sheet = sheetOf("date,stack,action\n2031-01-15,Mill,retire\n");
    const SheetPlan plan = planImport(sheet, answersFor(sheet), mill());
    EXPECT_THAT(plan.entries, IsEmpty());
    EXPECT_EQ(plan.count(RowFate::fault), 1U);
}

TEST(SheetImport, MissingAnswersOfStackAndActionAreGivenOnce)
{
    const Sheet sheet = sheetOf("day,how much\n2031-03-01,300 g\n2031-03-02,0.5 kg\n");
    SheetAnswers answers = answersFor(sheet);
    EXPECT_TRUE(questionsOf(sheet, answers.columns).stack);
    EXPECT_THAT(reasonsOf(planImport(sheet, answers, mill())), ElementsAre(HasSubstr("what was done"), HasSubstr("what was done")));
    answers.action = "feed";
    answers.stack = "Mill";
    EXPECT_THAT(rowsOf(planImport(sheet, answers, mill())), ElementsAre("2031-03-01|Mill|feed||300|g|||", "2031-03-02|Mill|feed||0.5|kg|||"));
}

TEST(SheetImport, WhateverTheBytesEveryRowHasOneFate)
{
    std::mt19937_64 random{17};
    const std::string seed = "date;stack;action;slot;amount;unit;item;detail;note\n1.2.2031;Mill;fed;1;1.250,5;g;kitchen mix;side=left;\"a;b\"\n2/25/31;Mill;reading;;;;;bin=21,5;=x\n"
                             "2031-02-03;Mill;water;;0,5 L;;;;\n2031-02-03;Mill;rotate;;;;;;\n";
    constexpr std::array pieces{"\"", ";", ",", "\n", "\t", "\xFF", "=", "31", "-", ".", "\r", " ", "\xEF\xBB\xBF"};
    std::size_t rows = 0, faults = 0;
    for (int round = 0; round < 600; ++round) {
        std::string bytes = seed;
        for (auto changes = random() % 12; changes-- > 0;) {
            const std::size_t at = random() % bytes.size();
            if (random() % 2) bytes.insert(at, pieces[random() % pieces.size()]);
            else bytes.erase(at, 1 + random() % 6);
        }
        const auto read = readSheet(bytes);
        const auto* sheet = std::get_if<Sheet>(&read);
        if (!sheet) continue;
        SheetAnswers answers = answersFor(*sheet);
        if (random() % 2) answers.decimal = DecimalMark::comma;
        if (random() % 2) answers.order = DateOrder::monthFirst;
        if (random() % 2) answers.century = 2000;
        answers.leaveOutTwice = random() % 2;
        const SheetPlan plan = planImport(*sheet, answers, mill());
        ASSERT_EQ(plan.fates.size(), sheet->rows.size());
        ASSERT_EQ(plan.count(RowFate::fault), plan.faults.size());
        ASSERT_EQ(plan.count(RowFate::added), plan.entries.size()) << bytes;
        journal::Edit edit;
        edit.added = plan.entries;
        ASSERT_FALSE(journal::applyEdit(mill(), edit).refusal) << bytes;
        ASSERT_TRUE(std::holds_alternative<Sheet>(readSheet(faultyRows(*sheet, plan), sheet->separator)));
        rows += plan.fates.size();
        faults += plan.faults.size();
    }
    EXPECT_GT(rows, 1000U);
    EXPECT_GT(faults, 100U);
    EXPECT_LT(faults, rows);
}

// The same with words that nobody knows, answered in every way: as a stack that stands or a new one, as any action, or left out.
TEST(SheetImport, HoweverItsWordsAreAnsweredEveryRowHasOneFate)
{
    std::mt19937_64 random{23};
    const std::string seed = "day;bin;did;amount;unit;what;detail;note\n1.2.2031;attic;tipped in;300;g;veg peels;;\n2.2.2031;the big one;hosed;0,5;L;;;x\n3.2.2031;Mill;rained;;;;;\n"
                             "4.2.2031;attic;laid;900;g;egg boxes;;\n5.2.2031;cellar;weighed them;200;g;;;\n6.2.2031;attic;tipped in;310;g;oats;side=left;\n";
    constexpr std::array pieces{"\"", ";", "attic", "\n", "tipped in", "\xFF", "=", "31", "-", ".", "\r", " ", "Mill"};
    std::size_t rows = 0, added = 0, begun = 0, unwanted = 0;
    for (int round = 0; round < 400; ++round) {
        std::string bytes = seed;
        for (auto changes = random() % 8; changes-- > 0;) {
            const std::size_t at = random() % bytes.size();
            if (random() % 2) bytes.insert(at, pieces[random() % pieces.size()]);
            else bytes.erase(at, 1 + random() % 6);
        }
        const auto read = readSheet(bytes);
        const auto* sheet = std::get_if<Sheet>(&read);
        if (!sheet) continue;
        SheetAnswers answers = answersFor(*sheet);
        if (answers.columns.size() > 2 && !answers.columns[2].field) answers.columns[2].field = SheetField::action;
        answers.order = DateOrder::dayFirst;
        answers.decimal = DecimalMark::comma;
        answers.words = tests::answeredToTheEnd(*sheet, answers.columns, answers.action, mill(), random());
        ASSERT_TRUE(tests::areKept(answers.words)) << bytes;
        const SheetPlan plan = planImport(*sheet, answers, mill());
        ASSERT_EQ(plan.fates.size(), sheet->rows.size());
        ASSERT_EQ(plan.count(RowFate::fault), plan.faults.size());
        ASSERT_EQ(plan.count(RowFate::added) + plan.begun, plan.entries.size()) << bytes;
        journal::Edit edit;
        edit.added = plan.entries;
        ASSERT_FALSE(journal::applyEdit(mill(), edit).refusal) << bytes;
        rows += plan.fates.size();
        added += plan.count(RowFate::added);
        begun += plan.begun;
        unwanted += plan.count(RowFate::unwanted);
    }
    EXPECT_GT(rows, 1000U);
    EXPECT_GT(added, 100U);
    EXPECT_GT(begun, 50U);
    EXPECT_GT(unwanted, 100U);
}

// As keepers write who have one column of ounces, and look without measuring.
TEST(SheetImport, OuncesOfWaterAreFluidAndALookInWordsIsANote)
{
    const Sheet sheet = sheetOf("Date,Bin,Task,Amount (oz),Comments\n2031-03-01,Mill,Fed,12,\n2031-03-02,Mill,Watered,16,\n2031-03-03,Mill,Checked,,moist and ok\n2031-03-04,Mill,Checked,,\n2031-03-05,Mill,Drained,8 oz,\n");
    const SheetPlan plan = planImport(sheet, answersFor(sheet), mill());
    EXPECT_THAT(rowsOf(plan), ElementsAre("2031-03-01|Mill|feed||12|oz|||", "2031-03-02|Mill|water||16|floz|||", "2031-03-03|Mill|note||||||moist and ok", "2031-03-05|Mill|drain||8|floz|||"));
    EXPECT_THAT(reasonsOf(plan), ElementsAre(HasSubstr("5: "))) << "a look that says nothing is at fault";
}

// Whatever lies ahead has not been done; only an absence is planned.
TEST(SheetImport, RowsOfDaysThatHaveNotComeAreAtFault)
{
    const Sheet sheet = sheetOf("date,stack,action,amount,unit,item,detail\n2031-05-01,Mill,feed,300,g,,\n2031-05-02,Mill,feed,310,g,,\n"
                                "2032-05-01,Mill,feed,320,g,,\n2031-06-01,Mill,event,,,away,until=2031-06-14\n");
    SheetAnswers answers = answersFor(sheet);
    EXPECT_EQ(planImport(sheet, answers, mill()).count(RowFate::fault), 0U) << "without a day to hold them to";
    answers.today = parseDay("2031-05-01");
    const SheetPlan plan = planImport(sheet, answers, mill());
    EXPECT_THAT(plan.fates, ElementsAre(RowFate::added, RowFate::fault, RowFate::fault, RowFate::added));
    EXPECT_THAT(reasonsOf(plan), ElementsAre(testing::HasSubstr("3: date: found «2031-05-02»; allowed: today or a day before"), testing::HasSubstr("4: date")));
}

TEST(SheetImport, WhatWasDoneIsFoundByTheCellsWhereItsColumnIsCalledWhat)
{
    const Sheet sheet = sheetOf("Day;Bin;What;Weight;Unit;Material\n1.5.2031;Mill;fed;300;g;coffee grounds\n2.5.2031;Mill;emptied out;;;\n3.5.2031;Mill;watered;500;mL;\n");
    const auto columns = recogniseColumns(sheet);
    EXPECT_EQ(columns[2].field, SheetField::action);
    EXPECT_EQ(columns[5].field, SheetField::item);
    const Sheet foods = sheetOf("Day;Bin;What;Weight;Unit\n1.5.2031;Mill;coffee grounds;300;g\n2.5.2031;Mill;banana peel;200;g\n");
    EXPECT_EQ(recogniseColumns(foods)[2].field, SheetField::item) << "its cells are no acts";
    const Sheet both = sheetOf("Day;Bin;Action;What;Weight;Unit\n1.5.2031;Mill;fed;scraps;300;g\n");
    EXPECT_EQ(recogniseColumns(both)[2].field, SheetField::action);
    EXPECT_EQ(recogniseColumns(both)[3].field, SheetField::item) << "what was done has its own column";
}

TEST(SheetImport, AFieldThatComesFreeIsTheNextColumnsOfThatName)
{
    const std::vector<std::string> header{"Day", "What", "Material", "Food"};
    auto columns = recogniseColumns(header);
    ASSERT_EQ(columns[1].field, SheetField::item);
    ASSERT_EQ(columns[2].field, std::nullopt);
    columns[1].field = SheetField::action;
    auto kept = columns;
    recogniseMore(header, columns, {1});
    EXPECT_EQ(columns[1].field, SheetField::action);
    EXPECT_EQ(columns[2].field, SheetField::item);
    recogniseMore(header, kept, {1, 2});
    EXPECT_EQ(kept[2].field, std::nullopt) << "left out by hand";
    EXPECT_EQ(kept[3].field, SheetField::item);
}

TEST(SheetImport, AnAmountThatIsMissingIsToldAsMissing)
{
    const Sheet sheet = sheetOf("date;stack;action;amount;unit\n1.5.2031;Mill;feed;0,5;kg\n2.5.2031;Mill;feed;;kg\n13.5.2031;Mill;feed;x1;kg\n");
    const SheetPlan plan = planImport(sheet, answersFor(sheet), mill());
    ASSERT_EQ(plan.faults.size(), 2U);
    EXPECT_THAT(reasonsOf(plan)[0], testing::AllOf(testing::HasSubstr("missing"), testing::Not(testing::HasSubstr("point"))));
    EXPECT_THAT(reasonsOf(plan)[1], testing::HasSubstr("comma")) << "one way of writing in one file";
}

}
