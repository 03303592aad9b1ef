// Stacks run over a journal: what the estimates say, what they rest on, and that they are the same however they are made.
#include "core/journal/replay.h"
#include "core/reckoning/reckon.h"
#include "core/reckoning/stack_run.h"
#include "tests/core/reckoning_notes.h"

#include <gtest/gtest.h>

#include <cmath>
#include <future>

namespace tierloam::reckoning {
namespace {

const StackReckoning& mill(const std::shared_ptr<const Reckoning>& all) { return *all->stack("Mill"); }

bool same(const Band& a, const Band& b) { return a == b; }

void expectSame(const StackReckoning& a, const StackReckoning& b)
{
    ASSERT_EQ(a.history.size(), b.history.size());
    for (std::size_t i = 0; i < a.history.size(); ++i) {
        EXPECT_TRUE(same(a.history[i].colonyKg, b.history[i].colonyKg)) << i;
        EXPECT_TRUE(same(a.history[i].sumpL, b.history[i].sumpL)) << i;
        EXPECT_TRUE(a.history[i].ahead == b.history[i].ahead) << i;
        ASSERT_EQ(a.history[i].slots.size(), b.history[i].slots.size());
        for (std::size_t s = 0; s < a.history[i].slots.size(); ++s) EXPECT_TRUE(same(a.history[i].slots[s].feedToCast, b.history[i].slots[s].feedToCast));
    }
    EXPECT_EQ(a.forecast.turnOn, b.forecast.turnOn);
    EXPECT_EQ(a.forecast.feedHighKg, b.forecast.feedHighKg);
}

TEST(Reckon, SaysWhatStandsWithBandsInOrder)
{
    Notes notes;
    notes.begun("Mill").fedWeekly("Mill", 2, 60);
    const auto all = reckon(notes.entries(), until(60));
    ASSERT_EQ(all->stacks.size(), 1u);
    const StackReckoning& stack = mill(all);
    EXPECT_EQ(stack.now.day, onDay(60));
    ASSERT_EQ(stack.now.slots.size(), 1u);
    EXPECT_EQ(stack.now.slots[0].ageDays, 60);
    EXPECT_EQ(stack.now.slots[0].batch, 1);
    EXPECT_EQ(stack.now.slots[0].tray, 1);
    for (const StackEstimate& at : stack.history) {
        EXPECT_LE(at.colonyKg.p05, at.colonyKg.p50);
        EXPECT_LE(at.colonyKg.p50, at.colonyKg.p95);
        EXPECT_GT(at.colonyKg.p05, 0.0);
        for (const TrayEstimate& tray : at.slots) EXPECT_TRUE(std::isfinite(tray.feedToCast.p95) && std::isfinite(tray.cnRatio.p95));
    }
    EXPECT_GT(stack.now.colonyKg.p95 / stack.now.colonyKg.p05, 1.3) << "a band that says nothing of uncertainty";
    EXPECT_GT(stack.now.slots[0].castingsDepthCm.p50, 0.5);
    EXPECT_GT(stack.now.processingGDryPerDay.p50, 1.0);
    EXPECT_EQ(stack.forecast.days.size(), 52u);
    EXPECT_LE(stack.forecast.feedLowKg, stack.forecast.feedHighKg);
    EXPECT_LE(stack.forecast.feedUsualKg, stack.forecast.feedHighKg);
    EXPECT_LE(stack.forecast.feedHighKg, 7 * 0.7 * 0.16 + 1e-12);
}

TEST(Reckon, IsTheSameForAnyNumberOfThreadsAndWithOtherStacksBeside)
{
    Notes one, three;
    one.begun("Mill").fedWeekly("Mill", 2, 100);
    three.begun("Barn").fedWeekly("Barn", 1, 100, 500).begun("Mill").fedWeekly("Mill", 2, 100).begun("Yard").fedWeekly("Yard", 4, 100, 900);
    const auto alone = reckon(one.entries(), until(100, 1));
    const auto beside = reckon(three.entries(), until(100, 1));
    const auto threaded = reckon(three.entries(), until(100, 2));
    expectSame(mill(alone), mill(beside));
    for (std::size_t i = 0; i < 3; ++i) expectSame(beside->stacks[i], threaded->stacks[i]);
}

TEST(Reckon, TakesOverStacksThatDidNotChangeAndNoOthers)
{
    Notes notes;
    notes.begun("Mill").begun("Barn").fedWeekly("Mill", 2, 50).fedWeekly("Barn", 2, 50);
    const auto first = reckon(notes.entries(), until(60));
    notes.add(55, "Barn", Feed{{1, Unit::kg}, {}, {}});
    Options options = until(60);
    options.previous = first;
    const auto second = reckon(notes.entries(), options);
    const auto fresh = reckon(notes.entries(), until(60));
    expectSame(mill(second), mill(fresh));
    expectSame(*second->stack("Barn"), *fresh->stack("Barn"));
    EXPECT_FALSE(same(first->stack("Barn")->now.slots[0].unprocessedDryKg, second->stack("Barn")->now.slots[0].unprocessedDryKg));
    options.asOf = onDay(61); // another day is another reckoning
    EXPECT_EQ(reckon(notes.entries(), options)->stack("Mill")->now.day, onDay(61));
}

TEST(Reckon, GoesOnFromSnapshotsToTheSameBitsAsFromTheStart)
{
    Notes notes;
    notes.begun("Mill").fedWeekly("Mill", 2, 300).add(90, "Mill", Bed{{480, Unit::g}, "corrugated cardboard shredded", {}});
    notes.add(150, "Mill", Weigh{{280, Unit::g}, {}}).add(280, "Mill", Drain{Amount{400, Unit::mL}, {}, {}, {}, {}});
    const auto first = reckon(notes.entries(), until(300));
    EXPECT_GT(mill(first).snapshots.size(), 8u);
    // Today, a month back, before all snapshots but the oldest, and at the very start; each also makes the later ones anew.
    for (const int day : {300, 271, 100, 40, 3}) {
        Notes more = notes;
        more.add(day, "Mill", Feed{{700, Unit::g}, {}, {}}).add(day, "Mill", Check{{}, Share::fromPercent(30), {}, {}}, 1);
        Options options = until(300);
        options.previous = first;
        const auto resumed = reckon(more.entries(), options);
        const auto fresh = reckon(more.entries(), until(300));
        expectSame(mill(resumed), mill(fresh));
        EXPECT_EQ(mill(resumed).nextLooks, mill(fresh).nextLooks) << day;
        EXPECT_FALSE(same(mill(resumed).now.slots.back().unprocessedDryKg, mill(first).now.slots.back().unprocessedDryKg)) << day;
        // And from those of the second run.
        more.add(299, "Mill", Feed{{100, Unit::g}, {}, {}});
        options.previous = resumed;
        expectSame(mill(reckon(more.entries(), options)), mill(reckon(more.entries(), until(300))));
    }
}

TEST(Reckon, GoesOnFromTheReckoningOfADayBefore)
{
    Notes notes;
    notes.begun("Mill").fedWeekly("Mill", 2, 400).add(90, "Mill", Bed{{480, Unit::g}, "corrugated cardboard shredded", {}});
    notes.add(150, "Mill", Weigh{{280, Unit::g}, {}}).add(303, "Mill", Weigh{{250, Unit::g}, {}});
    Options options = until(290);
    options.previous = reckon(notes.entries(), options);
    const std::size_t snapshots = mill(options.previous).snapshots.size();
    for (const int day : {291, 292, 295, 303, 304, 305, 306, 307, 308, 309, 310, 345, 400}) {
        options.asOf = onDay(day);
        const auto resumed = reckon(notes.entries(), options);
        if (day % 2 == 1) expectSame(mill(resumed), mill(reckon(notes.entries(), until(day))));
        EXPECT_EQ(mill(resumed).now.day, onDay(day));
        EXPECT_EQ(mill(resumed).snapshots.front(), mill(options.previous).snapshots.front()) << day << ": the oldest was there already";
        EXPECT_LE(mill(resumed).snapshots.size(), snapshots + 1) << day;
        options.previous = resumed;
    }
    // Backwards nothing is taken over: too few samples before that day.
    options.asOf = onDay(320);
    expectSame(mill(reckon(notes.entries(), options)), mill(reckon(notes.entries(), until(320))));
}

TEST(Reckon, ReadsTheJournalUpToItsDayOnly)
{
    Notes notes;
    notes.begun("Mill").fedWeekly("Mill", 2, 50);
    const auto before = reckon(notes.entries(), until(50));
    notes.add(51, "Mill", Harvest{{2, Unit::kg}, {}, {}}, 1);
    expectSame(mill(before), mill(reckon(notes.entries(), until(50))));
    EXPECT_TRUE(reckon(notes.entries(), until(51))->stack("Mill")->now.slots.empty());
}

TEST(Reckon, LeavesOutStacksNotBeddedYetAndThoseRetired)
{
    Notes notes;
    notes.begun("Mill").add(0, "Empty", journal::Setup{}).begun("Old").add(20, "Old", Retire{});
    const auto all = reckon(notes.entries(), until(30));
    ASSERT_EQ(all->stacks.size(), 1u);
    EXPECT_EQ(all->stacks[0].name, "Mill");
    EXPECT_NE(reckon(notes.entries(), until(10))->stack("Old"), nullptr);
    EXPECT_TRUE(reckon(notes.entries(), until(-1))->stacks.empty());
}

TEST(Reckon, OfManyStacksMakesThoseShownFirstWithFewerMembersAndTellsHowFarItIs)
{
    Notes notes;
    const int many = static_cast<int>(manyStacks) + 3;
    const auto name = [](int i) { return "Stack " + std::to_string(100 + i); };
    for (int i = 0; i < many; ++i) notes.begun(name(i)).fedWeekly(name(i), 2, 10);
    Options options = until(12);
    options.members = 512;
    options.shownFirst = {name(7), name(9)};
    notes.add(20, name(7), Event{"away", onDay(25)});
    std::vector<std::size_t> told;
    std::vector<std::string> first;
    options.progress = [&](std::size_t made, std::size_t all, const std::shared_ptr<const Reckoning>& soFar) {
        EXPECT_EQ(all, static_cast<std::size_t>(many));
        told.push_back(made);
        if (soFar && first.empty())
            for (const StackReckoning& stack : soFar->stacks) {
                first.push_back(stack.name);
                EXPECT_EQ(stack.record.nextAwayFrom.has_value(), stack.name == name(7)) << "known when it is handed over";
            }
    };
    options.threads = 1;
    const auto whole = reckon(notes.entries(), options);
    EXPECT_EQ(whole->members, membersOfMany);
    EXPECT_EQ(first, options.shownFirst);
    ASSERT_EQ(told.size(), static_cast<std::size_t>(many));
    for (std::size_t i = 0; i < told.size(); ++i) EXPECT_EQ(told[i], i + 1);
    ASSERT_EQ(whole->stacks.size(), static_cast<std::size_t>(many));
    EXPECT_EQ(whole->stacks[0].name, name(0)) << "in the order of the journal all the same";
    EXPECT_LE(whole->stacks[0].snapshots.size(), 3U);
    // The same as from two threads.
    options.threads = 2;
    options.progress = {};
    expectSame(whole->stacks[5], reckon(notes.entries(), options)->stacks[5]);
}

TEST(Reckon, StopsWhenAsked)
{
    Notes notes;
    notes.begun("Mill").fedWeekly("Mill", 2, 700);
    std::stop_source source;
    source.request_stop();
    EXPECT_EQ(reckon(notes.entries(), until(700), source.get_token()), nullptr);
}

TEST(Reckon, HistoryIsDailyForNinetyDaysWeeklyBeforeAndAroundLooks)
{
    Notes notes;
    notes.begun("Mill").fedWeekly("Mill", 2, 300);
    Check look;
    look.bits = Share::fromPercent(30);
    notes.add(101, "Mill", look);
    const StackReckoning stack = mill(reckon(notes.entries(), until(300)));
    EXPECT_EQ(stack.history.back().day, onDay(300));
    for (int day = 210; day <= 300; ++day) EXPECT_EQ(stack.on(onDay(day))->day, onDay(day));
    EXPECT_EQ(stack.on(onDay(101))->day, onDay(101));
    for (std::size_t i = 1; i < stack.history.size(); ++i) EXPECT_LE(daysBetween(stack.history[i - 1].day, stack.history[i].day), 7);
    EXPECT_EQ(stack.on(onDay(-1)), nullptr);
    EXPECT_LT(stack.history.size(), 150u);
}

TEST(Reckon, WhatLooksWouldHaveToldIsKeptByTheWeekWhereOneCouldBeAdvised)
{
    Notes notes;
    notes.begun("Mill").fedWeekly("Mill", 2, 200).add(75, "Mill", Bed{{480, Unit::g}, "corrugated cardboard shredded", {}});
    Check look;
    look.bits = Share::fromPercent(40);
    notes.add(120, "Mill", look, 1);
    const auto atOf = [&](int asOf) { return mill(reckon(notes.entries(), until(asOf))); };
    const StackReckoning stack = atOf(200);
    int kept = 0;
    for (int day = 110; day <= 200; ++day) {
        const StackEstimate* at = stack.on(onDay(day));
        ASSERT_TRUE(at->ahead) << day;
        if (!at->ahead->looks) continue;
        ++kept;
        EXPECT_EQ(day % 7, 0) << day;
        EXPECT_FALSE(day >= 120 && day < 127) << "looked " << day - 120 << " days before";
        ASSERT_FALSE(at->ahead->looks->nextLooks.empty()) << day;
        EXPECT_TRUE(std::is_sorted(at->ahead->looks->nextLooks.rbegin(), at->ahead->looks->nextLooks.rend(), [](const LookChoice& a, const LookChoice& b) { return a.perMinute() < b.perMinute(); }));
    }
    EXPECT_GE(kept, 3);
    EXPECT_FALSE(stack.now.ahead->looks) << "of the last day all members are asked";
    // What was kept of a day is what the due list of that day rested on, but for members beyond the first and dates beyond half a year.
    int compared = 0;
    for (int day = 112; day < 200; day += 7) {
        const auto& looks = stack.on(onDay(day))->ahead->looks;
        if (!looks || ++compared > 3) continue;
        const StackReckoning then = atOf(day);
        EXPECT_EQ(looks->readyOn.p50, then.now.slots.front().readyOn.p50) << day;
        EXPECT_EQ(looks->turnOn.p10, then.forecast.turnOn.p10) << day;
        EXPECT_EQ(looks->nextLooks.front().kind, then.nextLooks.front().kind) << day;
        EXPECT_EQ(looks->turnLook.has_value(), then.turnLook.has_value());
        EXPECT_NEAR(looks->turnLook->cut, then.turnLook->cut, 0.1) << day;
    }
}

TEST(Reckon, ActsChangeTheState)
{
    Notes notes;
    notes.begun("Mill").fedWeekly("Mill", 2, 60);
    const auto usual = reckon(notes.entries(), until(60));
    {
        Notes other = notes;
        other.add(59, "Mill", Remove{{200, Unit::g}});
        EXPECT_LT(reckon(other.entries(), until(60))->stack("Mill")->now.colonyKg.p50, mill(usual).now.colonyKg.p50 - 0.1);
    }
    {
        Notes other = notes;
        other.begun("Barn");
        const double barnBefore = reckon(other.entries(), until(60))->stack("Barn")->now.colonyKg.p50;
        other.add(59, "Mill", Move{{200, Unit::g}, "Barn"});
        const auto moved = reckon(other.entries(), until(60));
        EXPECT_LT(moved->stack("Mill")->now.colonyKg.p50, mill(usual).now.colonyKg.p50 - 0.1);
        EXPECT_NEAR(moved->stack("Barn")->now.colonyKg.p50, barnBefore + 0.2, 0.03);
    }
    {
        Notes other = notes;
        other.add(59, "Mill", Bed{{480, Unit::g}, "corrugated cardboard shredded", {}});
        const auto added = reckon(other.entries(), until(60));
        ASSERT_EQ(added->stack("Mill")->now.slots.size(), 2u);
        EXPECT_LT(added->stack("Mill")->now.slots[1].wormShare.p50, 0.6);
    }
    {
        Notes other = notes;
        other.add(50, "Mill", Water{{4, Unit::L}});
        EXPECT_GT(reckon(other.entries(), until(51))->stack("Mill")->now.drainedLPerWeek.p50, 0.8);
    }
}

TEST(Reckon, RoutinesActWithoutBeingWrittenDown)
{
    Notes dry, watered;
    dry.begun("Mill").fedWeekly("Mill", 2, 60);
    watered.begun("Mill").fedWeekly("Mill", 2, 60).add(10, "Mill", Routine{{100, Unit::mL}, RoutineOf::water, 1});
    EXPECT_GT(mill(reckon(watered.entries(), until(60))).now.drainedLPerWeek.p50, mill(reckon(dry.entries(), until(60))).now.drainedLPerWeek.p50 + 0.2);
    watered.add(20, "Mill", Routine{{0, Unit::mL}, RoutineOf::water, {}});
    EXPECT_LT(mill(reckon(watered.entries(), until(60))).now.drainedLPerWeek.p50, mill(reckon(dry.entries(), until(60))).now.drainedLPerWeek.p50 + 0.1);
}

TEST(Reckon, ShutSumpFillsAndTellsWhen)
{
    journal::Setup shut;
    shut.spigot = Spigot::shut;
    Notes notes;
    notes.begun("Mill", shut).fedWeekly("Mill", 2, 80, 500);
    const StackReckoning stack = mill(reckon(notes.entries(), until(80)));
    EXPECT_TRUE(stack.record.spigotShut);
    EXPECT_GT(stack.now.sumpL.p50, 0.3);
    ASSERT_TRUE(stack.forecast.sumpFullOn.p50);
    EXPECT_GT(*stack.forecast.sumpFullOn.p50, onDay(80));
    notes.add(80, "Mill", Drain{Amount{1, Unit::L}, {}, {}, {}, {}});
    const StackReckoning drained = mill(reckon(notes.entries(), until(80)));
    EXPECT_LT(drained.now.sumpL.p50, 0.3);
    EXPECT_GT(drained.forecast.sumpFullOn.p50.value_or(onDay(9999)), *stack.forecast.sumpFullOn.p50);
}

TEST(Reckon, LightDryingEmptiesTheTrayOfWorms)
{
    Notes notes;
    notes.begun("Mill").fedWeekly("Mill", 2, 120).add(70, "Mill", Bed{{480, Unit::g}, "corrugated cardboard shredded", {}}).add(115, "Mill", Rotate{});
    const StackReckoning stack = mill(reckon(notes.entries(), until(120)));
    ASSERT_EQ(stack.now.slots.size(), 2u);
    EXPECT_EQ(stack.now.slots[1].state, TrayState::drying);
    EXPECT_EQ(stack.record.daysDrying, 5);
    EXPECT_LT(stack.now.slots[1].wormShare.p50, 0.05);
    EXPECT_GT(stack.now.slots[0].wormShare.p50, 0.9);
}

TEST(Reckon, UsualCarePutsTheLidBackWhenTheLightDryingEnds)
{
    Notes notes;
    notes.begun("Mill").fedWeekly("Mill", 2, 120).add(70, "Mill", Bed{{480, Unit::g}, "corrugated cardboard shredded", {}}).add(115, "Mill", Rotate{});
    const StackReckoning stack = mill(reckon(notes.entries(), until(118)));
    ASSERT_TRUE(stack.present);
    const Course& course = stack.present->course;
    ASSERT_EQ(course.today, 118);
    EXPECT_TRUE(course.surroundings.on(120).lidOff) << "days 115 to 120 are in the light";
    EXPECT_FALSE(course.surroundings.on(121).lidOff);
    // The same members with the lid left off for good dry out at the top, and those with the lid on from today stay wettest.
    Crew crew{1};
    const auto waterOnTop = [&](std::optional<int> backOn) {
        Course other = course;
        other.surroundings.lidBackOn = backOn;
        return lookAhead(stack.present->members, other, {}, crew, {}, 28)->days.back().slots.back().waterShare.p50;
    };
    const double usual = stack.forecast.days[3].slots.back().waterShare.p50;
    EXPECT_DOUBLE_EQ(waterOnTop(121), usual);
    EXPECT_LT(waterOnTop(std::nullopt), 0.5 * usual);
    EXPECT_GT(waterOnTop(119), usual);
    // Later than usual it goes back on the next day; a lid that is off without light-drying stays as it was left.
    const StackReckoning late = mill(reckon(notes.entries(), until(130)));
    EXPECT_FALSE(late.present->course.surroundings.on(131).lidOff);
    Notes open;
    open.begun("Mill").fedWeekly("Mill", 2, 50).add(50, "Mill", Lid{false});
    EXPECT_TRUE(mill(reckon(open.entries(), until(60))).present->course.surroundings.on(100).lidOff);
}

TEST(Reckon, EntryBeyondTheRoomIsKeptAndFlagged)
{
    Notes notes;
    notes.begun("Mill").add(5, "Mill", Feed{{15, Unit::kg}, {}, {}});
    const StackReckoning stack = mill(reckon(notes.entries(), until(6)));
    ASSERT_EQ(stack.oversized.size(), 1u);
    EXPECT_EQ(stack.oversized[0].what, Oversized::What::matter);
    EXPECT_EQ(stack.oversized[0].day, onDay(5));
    EXPECT_EQ(stack.oversized[0].slot, 1);
    EXPECT_EQ(notes.entries()[static_cast<std::size_t>(stack.oversized[0].entry) - 1].date.day, onDay(5));
    EXPECT_GT(stack.oversized[0].comesTo, 18.0); // 15 kg are some 20 to 30 L on 0.16 m²
    EXPECT_LT(stack.oversized[0].comesTo, 40.0);
    EXPECT_NEAR(stack.oversized[0].adds, stack.oversized[0].comesTo - 4.0, 2.5) << "beside the bedding";
    EXPECT_GT(stack.now.slots[0].inputDryKg.p50, 2.0);
}

TEST(Reckon, MembersMovedOnTheDayOfABeddingKeepTheCarbonOfTheTray)
{
    // A look moves the members of a tray that holds nothing softened yet: what is over of its carbon is rounding then.
    Notes notes;
    notes.begun("Mill").fedWeekly("Mill", 2, 70).add(75, "Mill", Bed{{480, Unit::g}, "corrugated cardboard shredded", {}});
    for (int day = 12; day <= 75; day += 7) {
        Drain drained;
        drained.volume = Amount{0.3 + 0.01 * (day % 4), Unit::L};
        notes.add(day, "Mill", drained);
        Reading read;
        read.bin = celsius(19.0 + day % 3);
        notes.add(day, "Mill", read);
    }
    const auto all = reckon(notes.entries(), until(90));
    const model::Ensemble& stack = mill(all).present->members.stack;
    ASSERT_EQ(stack.trays(), 2);
    for (int t = 0; t < stack.trays(); ++t)
        for (int i = 0; i < stack.members(); ++i) {
            const model::TrayBlock& tray = model::MemberOf{stack, i}.tray(t);
            const int m = i % model::lanes;
            double unsoftened = 0.0;
            for (int c = 0; c < model::softeningClasses; ++c) unsoftened += tray.unsoftened[c][m] * stack.shapes[static_cast<std::size_t>(t)].carbonShare[c];
            // Food, cardboard and worms hold 0.45 to 0.57.
            const double share = (tray.carbon[m] - unsoftened) / (tray.softened[m] + tray.castings[m]);
            EXPECT_GT(share, 0.44) << t << ' ' << i;
            EXPECT_LT(share, 0.57) << t << ' ' << i;
        }
}

TEST(Reckon, ColdStackIsSlower)
{
    journal::Setup warm, cold;
    warm.temp = celsius(22);
    cold.temp = celsius(12);
    Notes notes;
    notes.begun("Mill", warm).fedWeekly("Mill", 2, 90).begun("Barn", cold).fedWeekly("Barn", 2, 90);
    const auto all = reckon(notes.entries(), until(90));
    EXPECT_GT(all->stack("Mill")->now.slots[0].castingsDryKg.p50, 1.15 * all->stack("Barn")->now.slots[0].castingsDryKg.p50);
}

TEST(Raised, AtFourFifthsAndWithdrawnAtThreeFifths)
{
    Raised raised;
    raised.note(0.79, onDay(1));
    EXPECT_FALSE(raised.since());
    raised.note(0.80, onDay(2));
    raised.note(0.65, onDay(3));
    EXPECT_EQ(raised.since(), onDay(2));
    raised.note(0.60, onDay(4));
    EXPECT_FALSE(raised.since());
    raised.note(0.79, onDay(5));
    EXPECT_FALSE(raised.since());
}

TEST(Raised, IsKeptForSomeDaysBelowThreeFifths)
{
    Raised raised;
    raised.note(0.9, onDay(1), 7);
    raised.note(0.2, onDay(2), 7);
    raised.note(0.2, onDay(8), 7);
    EXPECT_EQ(raised.since(), onDay(1)) << "six days of it";
    raised.note(0.61, onDay(9), 7);
    raised.note(0.2, onDay(10), 7);
    raised.note(0.2, onDay(16), 7);
    EXPECT_EQ(raised.since(), onDay(1)) << "counted anew";
    raised.note(0.2, onDay(17), 7);
    EXPECT_FALSE(raised.since());
    raised.note(0.9, onDay(18), 7);
    raised.note(0.2, onDay(19), 0);
    EXPECT_FALSE(raised.since()) << "a check counts at once";
}

// A stack's turn: fresh food undoes for some days that its tray is filled; what is advised on Monday is not taken back by Tuesday's scraps.
TEST(Reckon, ATurnIsNotTakenBackByAFeedingAndIsByACheck)
{
    Notes notes;
    notes.begun("Mill").fedWeekly("Mill", 2, 130);
    int turn = 0;
    for (int day = 60; day <= 129 && turn == 0; ++day)
        if (mill(reckon(notes.entries(), until(day))).turnSince) turn = day;
    ASSERT_GT(turn, 0);
    Notes fed = notes;
    fed.add(turn + 1, "Mill", Feed{{3, Unit::kg}, {}, {}});
    const StackReckoning after = mill(reckon(fed.entries(), until(turn + 2)));
    EXPECT_LT(after.turnProbability, 0.6) << "otherwise nothing is tested";
    EXPECT_TRUE(after.turnSince);
    ASSERT_EQ(after.turns.size(), 1u);
    EXPECT_FALSE(after.turns.front().to);
    Notes checked = fed;
    checked.add(turn + 2, "Mill", Check{centimetres(0.5), {}, {}, {}}, 1);
    EXPECT_FALSE(mill(reckon(checked.entries(), until(turn + 2))).turnSince);
}

// An only tray that is ready and goes on being fed: each feeding undoes it for some days.
TEST(Reckon, AnOnlyTrayStaysReadyWhileAFeedingIsEatenAndNotAgainstACheck)
{
    Notes notes;
    notes.begun("Mill").fedWeekly("Mill", 2, 130);
    const int ready = 262;
    for (int day = ready - 22; day <= ready; day += 11) notes.add(day, "Mill", Check{{}, Share::fromPercent(2), {}, {}}, 1);
    const StackReckoning before = mill(reckon(notes.entries(), until(ready)));
    ASSERT_TRUE(before.readySince) << before.now.slots.front().readyProbability;
    Notes fed = notes;
    fed.add(ready + 1, "Mill", Feed{{1, Unit::kg}, {}, {}});
    const StackReckoning after = mill(reckon(fed.entries(), until(ready + 2)));
    EXPECT_LT(after.now.slots.front().readyProbability, 0.6) << "otherwise nothing is tested";
    EXPECT_TRUE(after.readySince);
    EXPECT_EQ(after.now.slots.front().state, TrayState::ready);
    Notes checked = fed;
    checked.add(ready + 2, "Mill", Check{{}, Share::fromPercent(40), {}, {}}, 1);
    EXPECT_FALSE(mill(reckon(checked.entries(), until(ready + 2))).readySince);
    Notes often = fed;
    for (int day = ready + 3; day <= ready + 9; day += 2) often.add(day, "Mill", Feed{{1, Unit::kg}, {}, {}});
    EXPECT_FALSE(mill(reckon(often.entries(), until(ready + 10))).readySince) << "a week of it counts";
}

}
}
