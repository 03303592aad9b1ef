// A stack's year with its trays in turn, beside what the plain forecast of the same members says.
#include "core/advice/too_early.h"
#include "core/planning/wish_text.h"
#include "core/planning/year_plan.h"
#include "core/reckoning/rotation_run.h"

#include "tests/support/households.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

namespace tierloam::reckoning {
namespace {

constexpr std::uint64_t series = 0x70a7e;

/// Households that hold a stack of three trays at work, none spare and none in the light.
std::vector<std::shared_ptr<const StackReckoning>> standing(int wanted)
{
    std::vector<std::shared_ptr<const StackReckoning>> all;
    for (int number = 0; static_cast<int>(all.size()) < wanted && number < 40; ++number) {
        const auto stack = tests::reckonHousehold(tests::makeHousehold(series, number), 512).stack;
        if (stack->now.slots.size() == 3 && stack->record.spareTrays == 0 && !stack->record.dryingSince) all.push_back(stack);
    }
    return all;
}

RotationCourse courseOf(const StackReckoning& stack, const RotationWish& wish = {})
{
    Crew alone{1};
    return runRotation(*stack.present, wish, alone).value();
}

TEST(RotationRun, TheFirstHarvestComesWhenHalfOfTheMembersHaveTheirTurn)
{
    const auto stacks = standing(4);
    ASSERT_EQ(stacks.size(), 4u);
    int compared = 0;
    for (const auto& stack : stacks) {
        RotationWish everyone;
        everyone.members = stack->present->members.stack.members(); // a choice of 128 would add its own error, some ten days
        const RotationCourse course = courseOf(*stack, everyone);
        if (course.harvests.empty()) continue;
        // The plain forecast knows for each member the first day of both; half of them have both on the later one of their days or after it.
        const auto& firsts = stack->present->base.firsts;
        const auto& bottom = firsts.at(stack->now.slots.front().batch).ready;
        const auto& top = firsts.at(stack->now.slots.back().batch).filled;
        std::vector<int> both;
        for (std::size_t i = 0; i < bottom.size(); ++i) both.push_back(std::max(bottom[i], top[i]));
        const std::vector<double> weights = stack->present->members.weights.normalised();
        const auto middle = dates(both, weights, stack->firstBedding, daysBetween(stack->firstBedding, stack->asOf) + 365).p50;
        ASSERT_TRUE(middle);
        // A feeding may undo for some days that a tray is filled: both at once come later than the first day of each.
        const int later = daysBetween(std::max(*middle, stack->asOf), course.harvests.front().window.natural);
        EXPECT_GE(later, -7);
        EXPECT_LE(later, 28);
        ++compared;
        const PlannedHarvest& first = course.harvests.front();
        EXPECT_EQ(first.batch, stack->now.slots.front().batch);
        EXPECT_EQ(first.tray, stack->now.slots.front().tray);
        EXPECT_EQ(daysBetween(first.liftOn, first.takeOn), 6);
        if (first.window.early && first.window.late) {
            EXPECT_LE(*first.window.early, *first.window.late);
        }
        EXPECT_GT(first.castingsL.p50, 1.0);
        EXPECT_LT(first.castingsL.p50, 20.0);
        for (std::size_t k = 1; k < course.harvests.size(); ++k) EXPECT_GT(course.harvests[k].liftOn, course.harvests[k - 1].takeOn);
        // Trays that stand on a day fill the slots without gaps, and none twice.
        for (Day day = stack->asOf + std::chrono::days{1}; day < stack->asOf + std::chrono::days{360}; day += std::chrono::days{9}) {
            std::vector<int> slots;
            for (const TrayStay& stay : course.stays)
                if (stay.from <= day && day < stay.to) slots.push_back(stay.slot);
            std::sort(slots.begin(), slots.end());
            for (std::size_t i = 0; i < slots.size(); ++i) EXPECT_EQ(slots[i], static_cast<int>(i) + 1);
        }
    }
    EXPECT_GE(compared, 2);
}

/// Half of the members have the turn already and the due list does not call it due: the year waits with it until it is surer, and does not say "tomorrow" for weeks.
TEST(RotationRun, ATurnThatHangsWaitsUntilItIsLikelyToBeCalled)
{
    int hung = 0, never = 0;
    for (const int number : {3, 60, 102, 105}) { // of 120 drawn ones, 13 hang, the third for more than a year
        const auto stack = tests::reckonHousehold(tests::makeHousehold(0x8a2e5, number, {}, {}, 400), 128).stack;
        if (stack->now.slots.size() != 3 || stack->record.spareTrays > 0 || stack->record.dryingSince || (stack->turnSince && stack->readySince)) continue;
        const auto& firsts = stack->present->base.firsts;
        const auto& bottom = firsts.at(stack->now.slots.front().batch).ready;
        const auto& top = firsts.at(stack->now.slots.back().batch).filled;
        const int today = daysBetween(stack->firstBedding, stack->asOf);
        const auto have = [&](int day) {
            int count = 0;
            for (std::size_t i = 0; i < bottom.size(); ++i) count += bottom[i] <= day && top[i] <= day ? 1 : 0;
            return static_cast<double>(count) / static_cast<double>(bottom.size());
        };
        if (have(today) < 0.55 || have(today) > 0.75) continue;
        RotationWish everyone;
        everyone.members = stack->present->members.stack.members();
        const RotationCourse course = courseOf(*stack, everyone);
        EXPECT_EQ(planning::turnHangs(*stack), true) << number;
        if (have(today + 365) < 0.7) {
            EXPECT_TRUE(course.harvests.empty()) << number << ": lifted though it is not sure within the year";
            ++never;
            continue;
        }
        ASSERT_FALSE(course.harvests.empty()) << number;
        const PlannedHarvest& first = course.harvests.front();
        const int lift = daysBetween(stack->firstBedding, first.liftOn);
        EXPECT_GE(have(lift), 0.7) << number << ": after " << lift - today;
        EXPECT_GE(lift, today + 1);
        EXPECT_EQ(first.window.natural, first.liftOn);
        ++hung;
    }
    EXPECT_GE(hung, 2);
    EXPECT_GE(never, 1);
}

TEST(RotationRun, AWishedDayIsKeptAndDelaysWhatFollows)
{
    const auto stacks = standing(3);
    int compared = 0;
    for (const auto& stack : stacks) {
        const RotationCourse plain = courseOf(*stack);
        if (plain.harvests.size() < 2 || daysBetween(stack->asOf, plain.harvests.front().liftOn) > 200) continue;
        RotationWish wish;
        wish.liftOn[0] = plain.harvests.front().liftOn + std::chrono::days{25};
        wish.windows = false;
        const RotationCourse late = courseOf(*stack, wish);
        EXPECT_EQ(late.harvests.front().liftOn, wish.liftOn[0]);
        EXPECT_EQ(late.harvests.front().window.natural, plain.harvests.front().window.natural);
        if (late.harvests.size() > 1) {
            EXPECT_GT(late.harvests[1].liftOn, plain.harvests[1].liftOn);
        }
        EXPECT_GE(late.harvests.front().readyWhenLifted, plain.harvests.front().readyWhenLifted - 0.05);
        ++compared;
    }
    EXPECT_GE(compared, 1);
}

TEST(RotationRun, IsTheSameEachTimeAndCanBeStopped)
{
    const auto stacks = standing(1);
    const RotationCourse once = courseOf(*stacks.front());
    const RotationCourse again = courseOf(*stacks.front());
    ASSERT_EQ(once.harvests.size(), again.harvests.size());
    for (std::size_t k = 0; k < once.harvests.size(); ++k) EXPECT_EQ(once.harvests[k].litresOfMember, again.harvests[k].litresOfMember);
    std::stop_source stop;
    stop.request_stop();
    Crew alone{1};
    EXPECT_FALSE(runRotation(*stacks.front()->present, {}, alone, stop.get_token()));
}

TEST(RotationRun, FewerMembersKeepTheBands)
{
    const auto stack = tests::reckonHousehold(tests::makeHousehold(series, 1), 512).stack;
    const Population few = fewer(stack->present->members, 128);
    ASSERT_EQ(few.stack.members(), 128);
    std::vector<double> colonies;
    for (int i = 0; i < 128; ++i) colonies.push_back(model::colony(model::MemberOf{few.stack, i}));
    const Band band = reckoning::band(colonies, {});
    EXPECT_NEAR(band.p50 / stack->now.colonyKg.p50, 1.0, 0.05);
    EXPECT_NEAR(band.p95 / stack->now.colonyKg.p95, 1.0, 0.12);
}

}
}

namespace tierloam::planning {
namespace {

TEST(WishText, ComesBackAsItWasAndPassesOverNonsense)
{
    const Day day{std::chrono::year{2031} / 5 / 2};
    YearWishes wishes;
    wishes.gathering = Gathering::gathered;
    wishes.weekdays = 0x60;
    wishes.mostWait = 21;
    wishes.away = {{day, day + std::chrono::days{13}}};
    wishes.pinned["Lean-to by the door"][12] = day + std::chrono::days{40};
    EXPECT_EQ(wishesFrom(wishText(wishes)), wishes);
    EXPECT_EQ(wishesFrom("gathering never\nweekdays 999\naway 2031-05-02\npin x\n\nmore\nwait 0\nwait 29\nwait long"), YearWishes{});
}

TEST(YearPlan, ALittleEachMonthLeavesOutMonthsThatAreCutOff)
{
    using namespace std::chrono;
    YearPlan plan;
    plan.from = Day{year{2031} / 11 / 27};
    plan.members = 1;
    StackYear& stack = plan.stacks.emplace_back();
    for (const Day day : {Day{year{2031} / 12 / 3}, Day{year{2032} / 1 / 20}}) {
        reckoning::PlannedHarvest& harvest = stack.planned.harvests.emplace_back();
        harvest.takeOn = day;
        harvest.litresOfMember = {5.0};
    }
    const WishAnswer served = answerWish(plan, {9.0, Day{year{2032} / 2 / 6}, true}); // four days of November, six of February
    EXPECT_EQ(served.monthsWithout, 0);
    EXPECT_EQ(served.chance, 1.0);
    const WishAnswer without = answerWish(plan, {9.0, Day{year{2032} / 2 / 16}, true});
    EXPECT_EQ(without.monthsWithout, 1);
    EXPECT_EQ(without.chance, 0.0);
}

TEST(YearPlan, KnowsTheDaysAheadOnWhichTheJournalSaysThatNobodyIsThere)
{
    const Day day{std::chrono::year{2031} / 5 / 2};
    const auto in = [day](int days) { return day + std::chrono::days{days}; };
    const auto away = [](Day from, std::optional<Day> until, std::string what = "away") {
        journal::Entry entry;
        entry.date.day = from;
        entry.action = journal::Event{std::move(what), until};
        return entry;
    };
    YearWishes wishes;
    wishes.away = {{in(30), in(40)}};
    const journal::Entries entries{away(in(-9), in(-2)), away(in(-3), in(4)), away(in(10), {}), away(in(10), {}), away(in(5), in(6), "moved")};
    wishes = withAbsences(wishes, entries, day);
    EXPECT_EQ(wishes.away, (std::vector<std::pair<Day, Day>>{{day, in(4)}, {in(10), in(10)}, {in(30), in(40)}}));
}

TEST(YearPlan, PutsAllStacksTogetherAndAnswersTheGarden)
{
    reckoning::Reckoning all;
    for (int number = 0; number < 12 && all.stacks.size() < 3; ++number) {
        auto stack = *tests::reckonHousehold(tests::makeHousehold(0x9a7d, number, {}, {}, 400), 128).stack;
        stack.name = "Stack " + std::to_string(number);
        all.asOf = stack.asOf;
        all.stacks.push_back(std::move(stack));
    }
    YearWishes wishes;
    wishes.gathering = Gathering::gathered;
    wishes.weekdays = 0x60;
    const auto plan = planYear(all, wishes, 2);
    ASSERT_TRUE(plan);
    ASSERT_EQ(plan->stacks.size(), 3u);
    int harvests = 0;
    for (const StackYear& year : plan->stacks) {
        EXPECT_EQ(year.pinned.size(), year.planned.harvests.size());
        EXPECT_GE(year.delayDays, 0);
        for (const reckoning::PlannedHarvest& harvest : year.planned.harvests) {
            if (harvest.liftOn <= all.asOf) continue;
            const auto weekday = std::chrono::weekday{harvest.liftOn}.iso_encoding();
            EXPECT_GE(weekday, 6u) << year.stack;
            ++harvests;
        }
    }
    EXPECT_GT(harvests, 3);
    EXPECT_LE(plan->days.days, plan->apart.days) << "beside harvests that come as soon as weekends let them";
    EXPECT_EQ(plan->days.lift.size(), plan->apart.lift.size());
    const Day far = all.asOf + std::chrono::days{364};
    EXPECT_DOUBLE_EQ(answerWish(*plan, {0.0, far, false}).chance, 1.0);
    EXPECT_DOUBLE_EQ(answerWish(*plan, {1e6, far, false}).chance, 0.0);
    const WishAnswer middle = answerWish(*plan, {answerWish(*plan, {0.0, far, false}).litres.p50, far, false});
    EXPECT_NEAR(middle.chance, 0.5, 0.02);
    EXPECT_LT(answerWish(*plan, {1.0, all.asOf + std::chrono::days{1}, false}).chance, 0.01);
    EXPECT_EQ(answerWish(*plan, {1.0, far, true}).chance, 0.0); // three stacks do not give something each month

    // Of the whole year, beside the harvests on their turns; the difference is of the same members.
    const YearCastings inAll = yearCastings(*plan);
    EXPECT_EQ(inAll.planned, answerWish(*plan, {0.0, all.asOf + std::chrono::days{500}, false}).litres);
    EXPECT_LT(inAll.planned.p05, inAll.planned.p50);
    EXPECT_LT(inAll.planned.p50, inAll.planned.p95);
    YearPlan onTurns = *plan;
    for (StackYear& stack : onTurns.stacks) stack.planned = stack.natural;
    EXPECT_EQ(yearCastings(onTurns).planned, inAll.natural);
    EXPECT_EQ(yearCastings(onTurns).less, (reckoning::Band{}));
    double lows = 0.0, middles = 0.0;
    for (const StackYear& stack : plan->stacks) {
        lows += yearCastings(*plan, stack.stack).planned.p05;
        middles += yearCastings(*plan, stack.stack).planned.p50;
    }
    EXPECT_NEAR(middles, inAll.planned.p50, 0.05 * inAll.planned.p50);
    EXPECT_LT(lows, inAll.planned.p05) << "not all stacks give little at once";

    // What would raise it: each lever on the same members; more patience can only add, and a tray more holds back the harvests of this year.
    const GardenWish hard{answerWish(*plan, {0.0, far, false}).litres.p95, all.asOf + std::chrono::days{300}, false};
    const auto raised = raiseWish(all, *plan, hard);
    ASSERT_TRUE(raised);
    const WishAnswer asItIs = answerWish(*plan, hard);
    EXPECT_GE(raised->later.chance, asItIs.chance);
    EXPECT_GE(raised->later.litres.p50, asItIs.litres.p50);
    EXPECT_GE(raised->onTheirTurns.litres.p50, 0.95 * asItIs.litres.p50);
    EXPECT_GE(raised->moreFood.litres.p50, 0.95 * asItIs.litres.p50);
    EXPECT_NE(raised->moreTrays.litres, asItIs.litres);
    EXPECT_NE(raised->warmer.litres, asItIs.litres);
    EXPECT_LE(raised->leastMoreFoodKg, raised->mostMoreFoodKg);
    EXPECT_LE(raised->mostMoreFoodKg, 0.15 + 1e-9);

    // A harvest pinned by hand stands, and is told as such.
    const StackYear* some = nullptr;
    std::size_t k = 0;
    for (const StackYear& year : plan->stacks)
        for (std::size_t i = 0; i < year.planned.harvests.size(); ++i)
            if (some == nullptr && year.planned.harvests[i].liftOn > all.asOf + std::chrono::days{20} && year.planned.harvests[i].liftOn < all.asOf + std::chrono::days{200}) {
                some = &year;
                k = i;
            }
    ASSERT_NE(some, nullptr);
    const Day pinned = some->planned.harvests[k].liftOn + std::chrono::days{9};
    wishes.pinned[some->stack][some->planned.harvests[k].batch] = pinned;
    const auto again = planYear(all, wishes, 1);
    ASSERT_TRUE(again);
    const auto same = std::find_if(again->stacks.begin(), again->stacks.end(), [&](const StackYear& year) { return year.stack == some->stack; });
    EXPECT_EQ(same->planned.harvests[k].liftOn, pinned);
    EXPECT_TRUE(same->pinned[k]);
    EXPECT_GT(same->delayDays, some->delayDays);
}

/// A stack at its limit is given none, and it is told so; what is told is what was given.
TEST(YearPlan, TheLeverOfFoodSaysWhatEachStackBears)
{
    reckoning::Reckoning all;
    for (const auto& drawn : reckoning::standing(2)) {
        all.asOf = drawn->asOf;
        all.stacks.push_back(*drawn);
        all.stacks.back().name = "Stack " + std::to_string(all.stacks.size());
    }
    ASSERT_EQ(all.stacks.size(), 2U);
    const auto bears = [&](std::size_t stack, double more) { all.stacks[stack].forecast.feedHighKg = all.stacks[stack].present->course.care.feedKg + more; };
    const auto raised = [&] {
        const auto plan = planYear(all, {}, 2);
        const GardenWish wish{10.0, all.asOf + std::chrono::days{200}, false};
        return std::pair{*raiseWish(all, *plan, wish), answerWish(*plan, wish)};
    };
    bears(0, -0.1);
    bears(1, 0.0);
    const auto [none, asUsual] = raised();
    EXPECT_EQ(none.mostMoreFoodKg, 0.0);
    EXPECT_EQ(none.moreFood.litres, asUsual.litres) << "the plan itself";
    bears(0, 0.04);
    bears(1, 1.0);
    const auto some = raised().first;
    EXPECT_NEAR(some.leastMoreFoodKg, 0.04, 1e-9);
    EXPECT_NEAR(some.mostMoreFoodKg, 0.15, 1e-9);
    EXPECT_NE(some.moreFood.litres, asUsual.litres);
}

/// What the due list calls due today stands on today in the plan, and the plan calls nothing due today that the due list does not.
TEST(YearPlan, BeginsTodayWithWhatIsDueToday)
{
    const auto firstLift = [](const reckoning::StackReckoning& stack) {
        reckoning::Reckoning all;
        all.asOf = stack.asOf;
        all.stacks.push_back(stack);
        const auto plan = planYear(all, {}, 1);
        return plan->stacks.front().planned;
    };
    int asked = 0;
    for (const auto& drawn : reckoning::standing(3)) {
        reckoning::StackReckoning stack = *drawn;
        stack.readySince = stack.turnSince = stack.asOf;
        stack.now.slots.front().state = reckoning::TrayState::ready;
        ASSERT_EQ(advice::stepDueToday(stack), advice::LifeStep::lift);
        const auto due = firstLift(stack);
        ASSERT_FALSE(due.harvests.empty());
        EXPECT_EQ(due.harvests.front().liftOn, stack.asOf);
        EXPECT_EQ(due.harvests.front().window.natural, stack.asOf);
        EXPECT_EQ(due.harvests.front().batch, stack.now.slots.front().batch);
        stack.readySince.reset();
        stack.turnSince.reset();
        stack.now.slots.front().state = reckoning::TrayState::working;
        ASSERT_EQ(advice::stepDueToday(stack), std::nullopt);
        const auto later = firstLift(stack);
        if (later.harvests.empty()) continue;
        EXPECT_GT(later.harvests.front().liftOn, stack.asOf);
        ++asked;
    }
    EXPECT_GT(asked, 0);
}

/// A neighbour looks after the Mill: only the Loft waits.
TEST(YearPlan, AnAbsenceIsOfTheStackItIsWrittenUnder)
{
    const Day day{std::chrono::year{2031} / 5 / 2};
    const auto in = [day](int days) { return day + std::chrono::days{days}; };
    journal::Entries entries;
    const auto add = [&](const char* stack, Day on, journal::Action action) {
        journal::Entry entry;
        entry.stack = stack;
        entry.date.day = on;
        entry.action = std::move(action);
        entries.push_back(entry);
    };
    using Days = std::vector<std::pair<Day, Day>>;
    for (const char* stack : {"Loft", "Mill"}) add(stack, in(-7), journal::Feed{{300, Unit::g}, {}, {}});
    add("Loft", in(5), journal::Event{"away", in(9)});
    add("Loft", in(10), journal::Event{"away", in(14)});
    const YearWishes one = withAbsences({}, entries, day);
    EXPECT_TRUE(one.away.empty());
    EXPECT_EQ(one.awayOf, (std::map<std::string, Days>{{"Loft", {{in(5), in(14)}}}}));
    add("Mill", in(12), journal::Event{"away", in(20)});
    const YearWishes both = withAbsences({}, entries, day);
    EXPECT_EQ(both.away, (Days{{in(12), in(14)}})) << "nobody is there for any stack";
    EXPECT_EQ(both.awayOf.at("Mill"), (Days{{in(12), in(20)}}));
}

}
}
