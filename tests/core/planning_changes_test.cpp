// Changes of a stack and its turn clock, on members of the model: what is left for an absence, what can be given away, the way back, the levers.
#include "core/advice/chance.h"
#include "core/planning/changes.h"
#include "core/planning/turn_clock.h"
#include "core/planning/year_plan.h"

#include "tests/core/reckoning_notes.h"
#include "tests/support/households.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdio>

namespace tierloam::planning {
namespace {

using namespace reckoning;

constexpr std::uint64_t series = 0xc4a6e;
constexpr int members = 192;

/// A drawn household as it stands after so many days.
StackReckoning drawn(int number, int days) { return *tests::reckonHousehold(tests::makeHousehold(series, number, {}, {}, days), members).stack; }

Day in(const StackReckoning& stack, int days) { return stack.asOf + std::chrono::days{days}; }

/// The first drawn stack of which that holds.
template <class Holds>
StackReckoning firstOf(int days, Holds holds)
{
    for (int number = 0; number < 30; ++number) {
        StackReckoning stack = drawn(number, days);
        if (holds(stack)) return stack;
    }
    throw std::logic_error{"none of the drawn households is like that"};
}

bool works(const StackReckoning& stack) { return !stack.record.dryingSince && stack.now.slots.size() > 1 && stack.now.colonyKg.p50 > 0.15; }

TEST(Absence, LeavesFoodForItsLengthWithinTheLimitAndIsBetterThanNothing)
{
    const StackReckoning stack = firstOf(300, works);
    const auto week = prepareAbsence(stack, in(stack, 1), in(stack, 7), 1);
    const auto fortnight = prepareAbsence(stack, in(stack, 1), in(stack, 14), 1);
    ASSERT_TRUE(week && fortnight);
    EXPECT_LE(fortnight->feedKg, stack.forecast.feedHighKg + 1e-9);
    EXPECT_GE(fortnight->feedKg, week->feedKg);
    // Whoever leaves nothing comes back to hungrier worms and a drier bed, or to the same.
    ChangedPlan nothing = planOf(*fortnight, in(stack, 1), in(stack, 14));
    nothing.leave.reset();
    const auto left = comparePlans(stack, planOf(*fortnight, in(stack, 1), in(stack, 14)), 1);
    const auto none = comparePlans(stack, nothing, 1);
    ASSERT_TRUE(left && none);
    const auto ration = [](const PlanComparison& compared) { return compared.changed.days[1].ration.p50; };
    const auto water = [](const PlanComparison& compared) { return compared.changed.days[1].slots.back().waterShare.p50; };
    EXPECT_GT(ration(*left), ration(*none));
    EXPECT_GE(water(*left), water(*none));
    EXPECT_LE(fortnight->left.hungryChance, 1.0);
    EXPECT_FALSE(prepareAbsence(stack, in(stack, 3), in(stack, 2), 1)) << "an end before its beginning";
    EXPECT_FALSE(prepareAbsence(stack, in(stack, 0), in(stack, 2), 1)) << "today is too late to prepare";
}

/// One band says one chance, in the due list as here.
TEST(Absence, ItsChancesAreThoseOfTheAdvice)
{
    int beyond = 0;
    for (int number = 0; number < 3; ++number) {
        const StackReckoning stack = *tests::reckonHousehold(tests::makeHousehold(series, number, {}, {}, 200), 128).stack; // as many as an absence is asked of
        for (const int days : {7, 28, 56}) {
            const auto leave = prepareAbsence(stack, in(stack, 1), in(stack, days), 1);
            if (!leave) continue;
            Crew alone{1};
            const auto left = lookAhead(fewer(stack.present->members, 128), stack.present->course, planOf(*leave, in(stack, 1), in(stack, days)), alone, {}, days);
            ASSERT_TRUE(left);
            const Band& ration = left->days.back().ration;
            EXPECT_NEAR(leave->left.hungryChance, advice::chanceBelow(ration, 1.0).value_or(1.0), 1e-9) << number << ", " << days;
            beyond += ration.p05 > 1.0 || ration.p95 < 1.0 ? 1 : 0;
        }
    }
    EXPECT_GT(beyond, 0) << "where two ways to lead the line on would differ";
}

TEST(Absence, LaterOnIsAsUsualUntilItBegins)
{
    const StackReckoning stack = firstOf(300, works);
    const auto leave = prepareAbsence(stack, in(stack, 22), in(stack, 35), 1);
    ASSERT_TRUE(leave);
    const auto compared = comparePlans(stack, planOf(*leave, in(stack, 22), in(stack, 35)), 1);
    ASSERT_TRUE(compared);
    for (std::size_t week = 0; week < 2; ++week) EXPECT_EQ(compared->changed.days[week].ration, compared->base.days[week].ration) << "week " << week;
    EXPECT_NE(compared->changed.days[4].ration, compared->base.days[4].ration);
    EXPECT_EQ(planOf(*leave, in(stack, 22), in(stack, 35)).leave->on, in(stack, 21));
}

/// Fewer members say of the first week what all of them say: what was eaten before it is not counted in.
TEST(FewerMembers, RememberTheirLastWeek)
{
    const StackReckoning stack = firstOf(300, works);
    Crew crew{1};
    const auto outlook = lookAhead(fewer(stack.present->members, 128), stack.present->course, {}, crew, {}, 14);
    ASSERT_TRUE(outlook);
    for (std::size_t week = 0; week < 2; ++week) {
        const double all = stack.forecast.days[week].processingGDryPerDay.p50;
        EXPECT_NEAR(outlook->days[week].processingGDryPerDay.p50, all, 0.15 * all) << "week " << week;
    }
}

// "Harvested in March": with that entry more the journal is reckoned anew.
TEST(PastHarvest, TakesWhatLayInTheBottomTray)
{
    const StackReckoning stack = drawn(1, 300);
    const Day day = stack.asOf - std::chrono::days{20};
    const auto harvest = harvestInThePast(stack, day);
    ASSERT_TRUE(harvest);
    const auto& taken = std::get<journal::Harvest>(harvest->action);
    EXPECT_TRUE(taken.whole());
    const StackEstimate& then = *stack.on(day);
    EXPECT_NEAR(taken.taken.mass()->base(), then.slots.front().weightKg.p50 - 1.2, 0.006) << "what is weighed with its tray, without it";
    EXPECT_EQ(harvest->slot, 1);
    EXPECT_FALSE(harvestInThePast(stack, stack.asOf)) << "today is not past";
    EXPECT_FALSE(harvestInThePast(stack, stack.asOf - std::chrono::days{4000})) << "before the stack";
}

TEST(GiveAway, OfMoreTimeMoreCanGoAndWithThatGoneTheRateIsBack)
{
    int asked = 0, tooMuch = 0, moreCanGo = 0, nearlyAll = 0;
    for (int number = 0; number < 12; ++number) {
        const StackReckoning stack = drawn(number, 200);
        const auto month = works(stack) ? mostToGiveAway(stack, 28, 1) : std::nullopt;
        if (!month || month->share <= 0.02 || month->share >= 0.87) continue;
        const auto season = mostToGiveAway(stack, 84, 1);
        ASSERT_TRUE(season);
        moreCanGo += season->share >= month->share ? 1 : 0;
        EXPECT_GE(month->processingThen, month->goal()) << number;
        EXPECT_GE(month->colonyThen, month->colonyGoal()) << number;
        EXPECT_NEAR(month->kg, month->share * stack.now.colonyKg.p50, 1e-9) << number;
        EXPECT_LE(month->share, 0.9) << number;
        // A good deal more is too much: by then the stack is not back. Where food decides, and not worms, it hardly tells.
        ChangedPlan more;
        more.split = ChangedPlan::Split{in(stack, 1), month->share + 0.12};
        ASSERT_LT(more.split->share, 1.0);
        const auto compared = comparePlans(stack, more, 1);
        ASSERT_TRUE(compared);
        ++asked;
        tooMuch += compared->changed.days[3].processingGDryPerDay.p50 < month->goal() || compared->changed.days[3].colonyKg.p50 < month->colonyGoal() ? 1 : 0;
        nearlyAll += month->share > 0.6 ? 1 : 0;
    }
    std::printf("given away: %d asked, of %d a good deal more is too much\n", asked, tooMuch);
    ASSERT_GE(asked, 4);
    EXPECT_GE(10 * tooMuch, 9 * asked);
    EXPECT_EQ(nearlyAll, 0) << "where food decides what is processed, a colony is not given away for it";
    EXPECT_GE(2 * moreCanGo, asked);
}

/// As if the best week of the year had been better than it was.
StackReckoning behind(StackReckoning stack, double times)
{
    StackEstimate best = stack.now;
    best.day = in(stack, -100);
    best.processingGDryPerDay.p50 *= times;
    stack.history.insert(stack.history.begin(), best);
    return stack;
}

TEST(WayBack, IsNoneOfAStackThatIsNotBehind)
{
    StackReckoning stack = firstOf(300, works);
    for (StackEstimate& day : stack.history) day.processingGDryPerDay = stack.now.processingGDryPerDay;
    EXPECT_FALSE(shortestWayBack(stack, 1));
    EXPECT_TRUE(shortestWayBack(behind(stack, 1.5), 1));
}

TEST(WayBack, IsNeverLaterThanWaitingAndARampGoesUpWithinTheLimits)
{
    int found = 0, sooner = 0, ramps = 0;
    for (int number = 0; number < 12; ++number) {
        const StackReckoning plain = drawn(number, 300);
        if (!works(plain)) continue;
        const StackReckoning stack = behind(plain, 1.5);
        const auto way = shortestWayBack(stack, 1);
        if (!way) continue;
        ++found;
        EXPECT_GE(way->goal, 0.9 * 1.5 * stack.now.processingGDryPerDay.p50 - 1e-9); // of the best week of the last year
        ASSERT_FALSE(way->feed.empty());
        for (std::size_t i = 1; i < way->feed.size(); ++i) {
            EXPECT_GT(way->feed[i].from, way->feed[i - 1].from);
            EXPECT_GT(way->feed[i].kgPerWeek, way->feed[i - 1].kgPerWeek);
        }
        const double limit = std::max(stack.forecast.feedHighKg, stack.present->course.care.feedKg);
        if (!way->harvest && !way->newTray && way->feed.size() == 1) { EXPECT_LE(way->feed.front().kgPerWeek, limit + 1e-9) << "of the trays as they stand"; }
        sooner += way->on && (!way->asItIs || *way->on < *way->asItIs) ? 1 : 0;
        ramps += way->feed.size() > 1 ? 1 : 0;
        if (way->asItIs && way->on) { EXPECT_LE(*way->on, *way->asItIs); }
        EXPECT_TRUE(way->on || !way->asItIs);
    }
    std::printf("ways back: %d asked, %d sooner than waiting, %d with a ramp\n", found, sooner, ramps);
    EXPECT_GE(found, 6);
    EXPECT_GE(sooner, 1);
}

/// Fed well for half a year, then hardly: what is missing is food, and as the colony grows it bears more.
StackReckoning starved()
{
    Notes notes;
    notes.begun("Mill").fedWeekly("Mill", 2, 190, 900).fedWeekly("Mill", 198, 345, 60);
    for (int day = 205; day <= 345; day += 7) notes.add(day, "Mill", Water{{0.6, Unit::L}});
    return *reckon(notes.entries(), until(346))->stack("Mill");
}

TEST(WayBack, OfAStarvedStackIsFoodAndSoonerThanWaiting)
{
    const StackReckoning stack = starved();
    const auto way = shortestWayBack(stack, 1);
    ASSERT_TRUE(way);
    ASSERT_TRUE(way->on) << "goal " << way->goal << " of " << stack.now.processingGDryPerDay.p50;
    EXPECT_TRUE(!way->asItIs || *way->on < *way->asItIs);
    EXPECT_GT(way->feed.front().kgPerWeek, 2.0 * stack.present->course.care.feedKg);
    // Followed by all members it does come back about then, and without it does not.
    const auto compared = comparePlans(stack, planOf(*way, in(stack, 1)), 1);
    ASSERT_TRUE(compared);
    const auto firstWeek = [&](const PlanFigures& figures) {
        const auto reached = std::find_if(figures.days.begin(), figures.days.end(), [&](const StackEstimate& week) { return week.processingGDryPerDay.p50 >= way->goal; });
        return reached == figures.days.end() ? in(stack, 400) : reached->day;
    };
    EXPECT_LE(std::abs(daysBetween(firstWeek(compared->changed), *way->on)), 28);
    EXPECT_GT(firstWeek(compared->base), firstWeek(compared->changed));
    std::printf("way back of a starved stack: %d days, %zu steps of food, first %.2f kg a week, last %.2f\n", daysBetween(stack.asOf, *way->on), way->feed.size(), way->feed.front().kgPerWeek, way->feed.back().kgPerWeek);
}

TEST(WayBack, WhereFoodDoesNotSufficeNamesTheWormsThatDo)
{
    Notes notes;
    journal::Setup cellar;
    cellar.temp = celsius(10.0); // where a handful of worms takes years
    notes.add(0, "Mill", cellar).add(0, "Mill", Bed{{480, Unit::g}, "corrugated cardboard shredded", {}}).add(0, "Mill", Stock{{15, Unit::g}, {}, {}}).fedWeekly("Mill", 2, 58, 60);
    const StackReckoning stack = behind(*reckon(notes.entries(), until(60))->stack("Mill"), 14.0);
    const auto way = shortestWayBack(stack, 1);
    ASSERT_TRUE(way);
    ASSERT_TRUE(way->on) << way->goal << " of " << stack.now.processingGDryPerDay.p50;
    EXPECT_GT(way->wormsKg, 0.0);
    EXPECT_LE(way->wormsKg, WayBack::mostWormsKg);
    EXPECT_FALSE(way->feed.empty());
    EXPECT_FALSE(way->asItIs);
    const auto none = shortestWayBack(behind(stack, 1000.0), 1);
    ASSERT_TRUE(none);
    EXPECT_FALSE(none->on);
    EXPECT_EQ(none->wormsKg, 0.0) << "nothing is named that does not suffice";
}

TEST(FeedingRamp, ChangesNothingBeforeItsDayAndTheFeedAfterIt)
{
    const StackReckoning stack = firstOf(300, works);
    ChangedPlan ramp;
    ramp.ramp = {{in(stack, 29), 2.0 * stack.present->course.care.feedKg + 0.2}};
    const auto compared = comparePlans(stack, ramp, 1);
    ASSERT_TRUE(compared);
    for (std::size_t week = 0; week < 4; ++week) EXPECT_EQ(compared->changed.days[week].processingGDryPerDay, compared->base.days[week].processingGDryPerDay);
    EXPECT_NE(compared->changed.days[7].processingGDryPerDay, compared->base.days[7].processingGDryPerDay);
}

TEST(ComparePlans, SaysThatAHarvestTakesTheBottomTray)
{
    const StackReckoning stack = firstOf(300, works);
    ChangedPlan harvest, warmer;
    harvest.harvestOn = in(stack, 1);
    warmer.usualTemperature = 26;
    EXPECT_FALSE(comparePlans(stack, harvest, 1)->bottomStays);
    EXPECT_TRUE(comparePlans(stack, warmer, 1)->bottomStays);
}

TEST(TurnClockOf, AStackAtWorkHasOneDateAndLeversInOrder)
{
    const StackReckoning stack = firstOf(240, [](const StackReckoning& one) {
        const auto clock = works(one) ? turnClock(one, 1) : std::nullopt;
        return clock && !clock->has && clock->turn.p50;
    });
    const auto clock = turnClock(stack, 1);
    EXPECT_GT(*clock->turn.p50, stack.asOf);
    EXPECT_FALSE(clock->takenOn);
    ASSERT_GE(clock->levers.size(), 4u);
    for (std::size_t i = 1; i < clock->levers.size(); ++i) EXPECT_GE(clock->levers[i - 1].daysGained.p50, clock->levers[i].daysGained.p50);
    const double most = clock->levers.front().daysGained.p50;
    EXPECT_EQ(clock->limit, most >= 3.0 ? clock->levers.front().of : Limit::none);
    // The same members with the same random numbers: asked again, the same.
    EXPECT_EQ(turnClock(stack, 2)->levers.front().daysGained, clock->levers.front().daysGained);
    // The lever of warmth is the warmer plan's own turn, member by member.
    const auto warmth = std::find_if(clock->levers.begin(), clock->levers.end(), [](const Lever& lever) { return lever.of == Limit::cold; });
    ASSERT_NE(warmth, clock->levers.end());
    EXPECT_NE(warmth->daysGained, Band{});
}

TEST(TurnClockOf, AStackWithATrayInTheLightIsThatOfTheTurnAfterIt)
{
    tests::MadeUp household;
    StackReckoning stack;
    for (int number = 0; number < 30 && !stack.record.dryingSince; ++number) { // lifted today
        household = tests::makeHousehold(series, number, {}, {}, 420);
        const StackReckoning before = *tests::reckonHousehold(household, members).stack;
        if (before.now.slots.size() < 3 || before.record.dryingSince) continue;
        journal::Entry lift;
        lift.id = static_cast<journal::EntryId>(1000000);
        lift.date.day = household.asOf;
        lift.positionInDay = 1000;
        lift.stack = "Mill";
        lift.action = journal::Rotate{};
        household.entries.push_back(lift);
        stack = *tests::reckonHousehold(household, members).stack;
    }
    ASSERT_TRUE(stack.record.dryingSince);
    const auto clock = turnClock(stack, 1);
    ASSERT_TRUE(clock);
    ASSERT_TRUE(clock->takenOn);
    EXPECT_GE(*clock->takenOn, stack.asOf);
    EXPECT_FALSE(clock->has) << "what has just been lifted has no turn today";
    Reckoning all;
    all.asOf = stack.asOf;
    all.stacks.push_back(stack);
    const auto year = planYear(all, {}, 1);
    ASSERT_TRUE(year);
    const auto& harvests = year->stacks.front().natural.harvests;
    const auto next = std::find_if(harvests.begin(), harvests.end(), [](const PlannedHarvest& each) { return !each.begun; });
    if (next == harvests.end()) {
        EXPECT_FALSE(clock->turn.p50);
        return;
    }
    EXPECT_EQ(clock->turn.p50, next->window.natural) << "the lanes and the clock say the same";
    EXPECT_EQ(clock->levers.size(), 4u);
    bool gains = false;
    for (const Lever& lever : clock->levers) gains = gains || lever.daysGained.p50 != 0.0;
    EXPECT_TRUE(gains);
}

}
}
