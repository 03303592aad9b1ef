// The diary: what was advised in the past, from when to when, and what was done about it.
#include "core/advice/diary.h"

#include "tests/support/calm_stack.h"

#include <gtest/gtest.h>

namespace tierloam::tests {
namespace {

/// A stack that was bedded long ago and fed each week, and its estimates: dry from day -20 to day -14.
class Diary : public ::testing::Test {
protected:
    Diary()
    {
        add(-60, journal::Setup{});
        add(-60, journal::Bed{{480, Unit::g}, "corrugated cardboard shredded", {}});
        add(-60, journal::Stock{{300, Unit::g}, {}, {}});
        stack_ = calm();
        stack_.firstBedding = in(-60);
    }
    void add(int day, journal::Action action)
    {
        journal::Entry entry;
        entry.id = journal::EntryId{++count_};
        entry.positionInDay = count_;
        entry.date.day = in(day);
        entry.stack = "Mill";
        entry.action = std::move(action);
        entries_.push_back(std::move(entry));
    }
    void fedEvery(int gap, int from = -56)
    {
        for (int day = from; day <= 0; day += gap) add(day, journal::Feed{{900, Unit::g}, {}, {}});
    }
    void on(int from, int to, const std::function<void(StackEstimate&)>& change)
    {
        for (StackEstimate& day : stack_.history)
            if (day.day >= in(from) && day.day <= in(to)) change(day);
        if (to >= 0) change(stack_.now);
    }
    std::vector<advice::DiaryLine> lines(Code code, const std::vector<advice::PutOff>& kept = {})
    {
        std::stable_sort(entries_.begin(), entries_.end(), journal::inJournalOrder);
        const journal::Replay replay = journal::replay(entries_);
        EXPECT_TRUE(replay.refusals.empty());
        auto all = advice::diaryOf(stack_, entries_, replay.stacks.front(), materials::Table::builtIn(), kept);
        std::erase_if(all, [code](const advice::DiaryLine& line) { return line.advice.code != code; });
        return all;
    }
    journal::Entries entries_;
    StackReckoning stack_;
    std::int64_t count_ = 0;
};

const auto dry = [](StackEstimate& day) { day.slots[1].waterShare = {0.5, 0.6, 0.7}; };

TEST_F(Diary, HoldsAFeedingThatWasGivenOnItsDay)
{
    fedEvery(7, -57);
    const auto told = lines(Code::feedDue);
    const auto followed = std::count_if(told.begin(), told.end(), [](const advice::DiaryLine& line) { return line.doneOn && *line.doneOn == line.from; });
    EXPECT_GE(followed, 4) << "each of the last weeks";
    for (const advice::DiaryLine& line : told) EXPECT_LE(line.from, in(0));
}

TEST_F(Diary, IsEmptyOfACalmPast)
{
    fedEvery(7, -57);
    EXPECT_TRUE(lines(Code::tooDry).empty());
    EXPECT_TRUE(lines(Code::heat).empty());
}

TEST_F(Diary, SaysFromWhenToWhenAndWhatWasDone)
{
    on(-20, -15, dry);
    add(-17, journal::Water{{1, Unit::L}});
    const auto told = lines(Code::tooDry);
    ASSERT_EQ(told.size(), 1u);
    EXPECT_EQ(told.front().from, in(-20));
    EXPECT_EQ(told.front().to, in(-14));
    EXPECT_EQ(told.front().doneOn, in(-17));
    EXPECT_TRUE(told.front().advice.text.starts_with("Pour ")) << told.front().advice.text;
}

TEST_F(Diary, AnOddValueIsToldUntilALookSettlesIt)
{
    fedEvery(7, -57);
    reckoning::Disagreement odd{7, in(-20), reckoning::LookKind::depth, 2, 7.0, {1.2, 1.8, 2.4}};
    stack_.disagreements = {odd};
    auto told = lines(Code::recordDisagrees);
    ASSERT_EQ(told.size(), 1u);
    EXPECT_EQ(told.front().from, in(-20));
    EXPECT_EQ(told.front().to, std::nullopt);
    EXPECT_EQ(told.front().doneOn, std::nullopt) << "the odd value does not settle itself, nor does a feeding";
    odd.settledOn = in(-12);
    stack_.disagreements.clear();
    stack_.settled = {odd};
    told = lines(Code::recordDisagrees);
    ASSERT_EQ(told.size(), 1u);
    EXPECT_EQ(told.front().to, in(-12));
    EXPECT_EQ(told.front().doneOn, in(-12));
    EXPECT_EQ(told.front().advice.entry, 7);
    // Another odd value is another line: it was advised then, and the first was not settled by it.
    stack_.settled.clear();
    odd.settledOn.reset();
    stack_.disagreements = {odd, {9, in(-10), reckoning::LookKind::weigh, 0, 0.9, {0.2, 0.35, 0.52}}};
    told = lines(Code::recordDisagrees);
    ASSERT_EQ(told.size(), 2u);
    EXPECT_EQ(told[0].to, in(-10));
    EXPECT_EQ(told[0].doneOn, std::nullopt);
    EXPECT_EQ(told[1].from, in(-10));
}

TEST_F(Diary, WhatWasNotDoneIsNotSaidToBe)
{
    on(-20, -15, dry);
    add(-12, journal::Water{{1, Unit::L}}); // later: it was no longer advised
    add(-22, journal::Water{{1, Unit::L}}); // before
    ASSERT_EQ(lines(Code::tooDry).size(), 1u);
    EXPECT_FALSE(lines(Code::tooDry).front().doneOn);
}

TEST_F(Diary, WhatIsStillAdvisedHasNoEndAndTwoTimesAreTwoLines)
{
    on(-20, -15, dry);
    on(-4, 0, dry);
    const auto told = lines(Code::tooDry);
    ASSERT_EQ(told.size(), 2u);
    EXPECT_TRUE(told[0].to);
    EXPECT_FALSE(told[1].to);
    EXPECT_EQ(told[1].from, in(-4));
}

TEST_F(Diary, IsAskedOfTheJournalAsItWasThen)
{
    fedEvery(7, -56); // -56, …, 0
    std::erase_if(entries_, [](const journal::Entry& entry) { return std::holds_alternative<journal::Feed>(entry.action) && entry.date.day > in(-28) && entry.date.day < in(-10); });
    const auto told = lines(Code::feedDue); // fed on day -28, next on day -7: due on day -21
    const auto late = std::find_if(told.begin(), told.end(), [](const advice::DiaryLine& line) { return line.from > in(-28) && line.to && *line.to <= in(-5) && daysBetween(line.from, *line.to) > 5; });
    ASSERT_NE(late, told.end());
    EXPECT_EQ(late->from, in(-21));
    EXPECT_EQ(late->doneOn, in(-7));
}

TEST_F(Diary, WhatADayForesawIsToldOfIt)
{
    fedEvery(7, -57);
    std::get<journal::Setup>(entries_.front().action).spigot = journal::Spigot::shut;
    on(-20, -15, [](StackEstimate& day) {
        day.ahead->sumpFullOn = {day.day + std::chrono::days{4}, day.day + std::chrono::days{5}, day.day + std::chrono::days{7}};
        day.ahead->bedIn14Days = {31, 33, 35};
        day.ahead->airLowWithin14Days = 0.6;
    });
    add(-16, journal::Drain{Amount{1.5, Unit::L}, {}, {}, {}, {}});
    const auto sump = lines(Code::sumpFull);
    ASSERT_EQ(sump.size(), 1u);
    EXPECT_EQ(sump.front().from, in(-20));
    EXPECT_EQ(sump.front().to, in(-14));
    EXPECT_EQ(sump.front().doneOn, in(-16));
    for (const Code code : {Code::heat, Code::overfed}) {
        const auto told = lines(code);
        ASSERT_EQ(told.size(), 1u) << advice::codeName(code);
        EXPECT_EQ(told.front().from, in(-20));
        EXPECT_EQ(told.front().to, in(-14));
    }
}

TEST_F(Diary, AThermometerIsNoRemedy)
{
    fedEvery(7, -57);
    on(-20, -15, [](StackEstimate& day) { day.binTempC = {2, 3, 4}; });
    add(-19, journal::Reading{.bin = celsius(3)});
    add(-18, journal::Setup{.place = journal::Place::indoors}); // where it stands already
    add(-17, journal::Setup{.spigot = journal::Spigot::shut});
    ASSERT_EQ(lines(Code::cold).size(), 1u);
    EXPECT_EQ(lines(Code::cold).front().doneOn, std::nullopt);
    add(-16, journal::Setup{.temp = celsius(26)});
    EXPECT_EQ(lines(Code::cold).front().doneOn, in(-16));
    add(-17, journal::Setup{.place = journal::Place::garage}); // from indoors: colder still in winter
    EXPECT_EQ(lines(Code::cold).front().doneOn, in(-16));
}

TEST_F(Diary, TheNextLookIsToldByTheWeekUntilItIsTaken)
{
    fedEvery(7, -57);
    // Nobody has looked for a month when bits would take some 30 days off a range of 100.
    const auto looks = [](StackEstimate& day) {
        const auto at = [&](int days) { return day.day + std::chrono::days{days}; };
        LookForesight& seen = day.ahead->looks.emplace();
        seen.readyOn = {at(20), at(60), at(120)};
        seen.nextLooks = {{LookKind::bits, 1, 2.0, 0.5}, {LookKind::depth, 1, 3.0, 0.1}};
    };
    for (const int day : {-28, -21, -14, -7}) on(day, day, looks);
    auto told = lines(Code::lookNext);
    ASSERT_EQ(told.size(), 1u);
    EXPECT_EQ(told.front().from, in(-28));
    EXPECT_EQ(told.front().advice.look, LookKind::bits);
    EXPECT_EQ(told.front().advice.slot, 1);
    EXPECT_EQ(told.front().to, in(0)) << "today's own figures say that no look is worth it";
    EXPECT_FALSE(told.front().doneOn);
    // Another look is not the one that was asked for; of the other tray neither. Both end the advice for a week.
    journal::Check check;
    check.depth = centimetres(3.0);
    add(-17, check);
    entries_.back().slot = 1;
    told = lines(Code::lookNext);
    ASSERT_EQ(told.size(), 1u) << "no second one within a month of a look";
    EXPECT_EQ(told.front().to, in(-17));
    EXPECT_FALSE(told.front().doneOn);
    std::get<journal::Check>(std::find_if(entries_.begin(), entries_.end(), [](const journal::Entry& entry) { return std::holds_alternative<journal::Check>(entry.action); })->action).bits = Share::fromPercent(12);
    told = lines(Code::lookNext);
    ASSERT_EQ(told.size(), 1u);
    EXPECT_EQ(told.front().doneOn, in(-17));
    // What a tray that has gone would have told is not told of the next.
    on(-27, 0, [](StackEstimate& day) { day.slots.front().batch = 9; });
    told = lines(Code::lookNext);
    ASSERT_EQ(told.size(), 2u);
    EXPECT_EQ(told.front().to, in(-27));
    EXPECT_EQ(told[1].from, in(-21));
}

TEST_F(Diary, TheLookOfTodayIsThatOfTheDueList)
{
    fedEvery(7, -57);
    stack_.now.slots.front().readyOn = stack_.history.back().slots.front().readyOn = {in(20), in(60), in(120)};
    stack_.nextLooks = {{LookKind::bits, 1, 2.0, 0.5}};
    stack_.record.lastLook.reset();
    const auto told = lines(Code::lookNext);
    ASSERT_EQ(told.size(), 1u);
    EXPECT_EQ(told.front().from, in(0));
    const std::vector<Advice> due = advice::adviceFor(stack_);
    ASSERT_NE(find(due, Code::lookNext), nullptr);
    EXPECT_EQ(told.front().advice.text, find(due, Code::lookNext)->text);
}

TEST_F(Diary, AReadingOfSomethingElseIsNotTheLookThatWasAskedFor)
{
    fedEvery(7, -57);
    std::get<journal::Setup>(entries_.front().action).spigot = journal::Spigot::shut;
    on(-20, -10, [](StackEstimate& day) { day.ahead->sumpFullOn = {day.day + std::chrono::days{9}, day.day + std::chrono::days{20}, std::nullopt}; });
    journal::Reading warmth;
    warmth.bin = celsius(18.0);
    add(-18, warmth);
    auto told = lines(Code::sumpFull);
    ASSERT_EQ(told.size(), 1u);
    EXPECT_TRUE(told.front().advice.look);
    EXPECT_FALSE(told.front().doneOn);
    warmth.sump = litres(1.2);
    add(-16, warmth);
    told = lines(Code::sumpFull);
    ASSERT_FALSE(told.empty());
    EXPECT_EQ(told.front().doneOn, in(-16));
}

TEST_F(Diary, ANoteFromTheDueListCountsAsDone)
{
    on(-20, -15, [](StackEstimate& day) { day.binTempC = {31, 32, 33}; });
    add(-18, journal::Note{});
    entries_.back().note = "Done: Cool the stack: a cellar, or shade, the lid ajar and frozen bottles on the cover";
    const auto told = lines(Code::heat);
    ASSERT_EQ(told.size(), 1u);
    EXPECT_EQ(told.front().doneOn, in(-18));
}

/// What the line said then may be said in another language now, in other units, or in the words of another release.
TEST_F(Diary, ANoteOfWhichItIsKeptWhatItWasIsKnownWithoutItsWords)
{
    on(-20, -15, [](StackEstimate& day) { day.binTempC = {31, 32, 33}; });
    add(-18, journal::Note{});
    entries_.back().note = "Erledigt: den Stapel kühlen";
    advice::Advice heat;
    heat.code = Code::heat;
    heat.stack = "Mill";
    const auto told = lines(Code::heat, advice::withDone({}, heat, in(-18)));
    ASSERT_EQ(told.size(), 1u);
    EXPECT_EQ(told.front().doneOn, in(-18));
    EXPECT_FALSE(lines(Code::heat).front().doneOn);
    EXPECT_FALSE(lines(Code::heat, advice::withDone({}, heat, in(-17))).front().doneOn) << "no note of that day";
    EXPECT_FALSE(lines(Code::heat, advice::withPutOff({}, heat, in(-18), in(-20))).front().doneOn) << "put off is not done";
    heat.stack = "Shed";
    EXPECT_FALSE(lines(Code::heat, advice::withDone({}, heat, in(-18))).front().doneOn) << "of another stack";
    heat.stack = "Mill";
    heat.code = Code::cold;
    EXPECT_FALSE(lines(Code::heat, advice::withDone({}, heat, in(-18))).front().doneOn) << "another matter";
}

}
}
