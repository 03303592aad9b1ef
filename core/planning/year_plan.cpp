#include "core/planning/year_plan.h"

#include "core/advice/too_early.h"
#include "core/journal/absences.h"
#include "core/planning/year_courses.h"
#include "core/reckoning/first_failure.h"

#include <algorithm>
#include <atomic>
#include <memory>
#include <set>
#include <thread>

namespace tierloam::planning {

using reckoning::Crew;
using reckoning::FirstFailure;
using reckoning::PlannedHarvest;
using reckoning::RotationCourse;
using reckoning::RotationWish;
using reckoning::StackReckoning;

namespace {

constexpr std::size_t fewStacks = 24;
constexpr std::size_t householdOfFew = 4; ///< stacks
constexpr int allMembers = 1 << 20;       ///< a course takes those that there are
constexpr int membersOfFew = 128;
constexpr int membersOfMany = 64;

/// work(i) for each i, by so many threads; each has a crew of its own. What one of them throws is thrown here.
template <class Work>
void shareOut(std::size_t count, int threads, const Work& work)
{
    std::atomic<std::size_t> next{0};
    FirstFailure failure;
    const auto help = [&] {
        failure.guard([&] {
            Crew alone{1};
            for (std::size_t i = next++; i < count && !failure.any(); i = next++) work(i, alone);
        });
    };
    {
        std::vector<std::jthread> helpers;
        for (int t = 1; t < threads && static_cast<std::size_t>(t) < count; ++t) helpers.emplace_back(help);
        help();
    }
    failure.rethrow();
}

/// Harvests that are still to be put on a day; one in the light has been lifted already.
bool isOpen(const PlannedHarvest& harvest) { return !harvest.begun; }

double castingsOf(const RotationCourse& course)
{
    double litres = 0.0;
    for (const PlannedHarvest& harvest : course.harvests) litres += harvest.castingsL.p50;
    return litres;
}

int weekdayOf(Day day) { return static_cast<int>(std::chrono::weekday{day}.iso_encoding()) - 1; }

std::vector<const StackReckoning*> standing(const reckoning::Reckoning& reckoning)
{
    std::vector<const StackReckoning*> stacks;
    for (const StackReckoning& stack : reckoning.stacks)
        if (isPlanned(stack)) stacks.push_back(&stack);
    return stacks;
}

std::vector<DaysAway> inDays(const std::vector<std::pair<Day, Day>>& away, Day today)
{
    std::vector<DaysAway> days;
    days.reserve(away.size());
    for (const auto& [from, to] : away) days.push_back({daysBetween(today, from), daysBetween(today, to)});
    return days;
}

HarvestWishes wishesFor(const YearWishes& wishes, Day today)
{
    HarvestWishes made;
    made.gathering = wishes.gathering;
    made.weekdays = wishes.weekdays;
    made.todaysWeekday = weekdayOf(today);
    made.away = inDays(wishes.away, today);
    return made;
}

/// The pin of a harvest, where it lies ahead.
std::optional<Day> pinOf(const YearWishes& wishes, const std::string& stack, int batch, Day today)
{
    const auto pins = wishes.pinned.find(stack);
    if (pins == wishes.pinned.end()) return std::nullopt;
    const auto pin = pins->second.find(batch);
    return pin != pins->second.end() && pin->second >= today ? std::optional{pin->second} : std::nullopt;
}

/// One stack under the wishes: as it comes, as it comes around what is pinned and while nobody is there, and on the chosen days.
class Courses {
public:
    Courses(const StackReckoning& stack, const YearWishes& wishes, const CourseTrial& trial, int members, bool windows)
        : wishes_{wishes}, today_{stack.asOf}, name_{stack.name}, present_{stack.present.get()}, plain_{plainWish(stack, members)}
    {
        plain_.windows = windows;
        if (const auto own = wishes.awayOf.find(name_); own != wishes.awayOf.end()) own_ = own->second;
        away_ = wishes.away;
        away_.insert(away_.end(), own_.begin(), own_.end());
        if (trial.change) plain_.change = trial.change(stack);
        isChanged_ = static_cast<bool>(trial.change);
        if (trial.moreTrays == 0) return;
        changed_ = *stack.present;
        changed_->course.surroundings.settings.trays += trial.moreTrays;
        present_ = &*changed_;
        plain_.firstTurn = nextTurn(stack, trial.moreTrays);
    }

    bool runNatural(Crew& crew, const std::stop_token& stop)
    {
        if (isChanged_ && plain_.firstTurn && !plain_.firstTurn->p50) plain_.firstTurn.reset(); // a change may bring it into the year
        if (isChanged_ && plain_.firstTurn && !moveFirstTurn(crew, stop)) return false;
        const auto course = run(plain_, crew, stop);
        if (!course) return false;
        natural = held = *course;
        // A pin may bring a harvest into the year that is pinned in its turn: until no new one is found.
        RotationWish wish = plain_;
        wish.away = away_;
        const bool waits = std::any_of(natural.trays.begin(), natural.trays.end(), [&](const reckoning::PlannedTray& tray) { return reckoning::isWithin(wish.away, tray.on); });
        for (bool first = true;; first = false) {
            const std::size_t known = wish.liftOn.size();
            for (std::size_t k = 0; k < held.harvests.size(); ++k)
                if (const auto pin = isOpen(held.harvests[k]) ? pinOf(wishes_, name_, held.harvests[k].batch, today_) : std::nullopt) wish.liftOn[static_cast<int>(k)] = *pin;
            if (wish.liftOn.size() == known && !(first && waits)) return true;
            const auto again = run(wish, crew, stop);
            if (!again) return false;
            held = *again;
        }
    }

    /// Days of what is still to be lifted, from today on.
    StackTurns turns() const
    {
        StackTurns made;
        made.away = inDays(own_, today_);
        for (const PlannedHarvest& harvest : held.harvests) {
            if (!isOpen(harvest)) continue;
            made.natural.push_back(daysBetween(today_, harvest.liftOn));
            const auto pin = pinOf(wishes_, name_, harvest.batch, today_);
            made.pinned.push_back(pin ? std::optional{daysBetween(today_, *pin)} : std::nullopt);
        }
        return made;
    }

    /// `again`: run with the chosen days; else they are only written over those that come.
    std::optional<RotationCourse> onDays(const std::vector<int>& lift, const std::vector<int>& take, const HarvestWishes& days, bool again, Crew& crew, const std::stop_token& stop)
    {
        RotationWish wish = plain_;
        wish.away = away_;
        HarvestWishes here = days;
        here.away = inDays(away_, today_);
        RotationCourse made = held;
        bool moved = false;
        std::size_t open = 0;
        for (std::size_t k = 0; k < made.harvests.size(); ++k) {
            PlannedHarvest& harvest = made.harvests[k];
            const PlannedHarvest before = harvest;
            if (isOpen(harvest)) {
                harvest.liftOn = today_ + std::chrono::days{lift[open]};
                harvest.takeOn = harvest.atOnce ? harvest.liftOn : today_ + std::chrono::days{take[open]};
                wish.liftOn[static_cast<int>(k)] = harvest.liftOn;
                ++open;
            } else {
                harvest.takeOn = today_ + std::chrono::days{takingOfBegun(daysBetween(today_, harvest.liftOn), daysBetween(today_, harvest.takeOn), here)};
                wish.takeToday = wish.takeToday && harvest.takeOn == today_;
            }
            wish.takeOn[static_cast<int>(k)] = harvest.takeOn;
            moved = moved || harvest.liftOn != before.liftOn || harvest.takeOn != before.takeOn;
        }
        return moved && again ? run(wish, crew, stop) : made;
    }

    RotationCourse natural;          ///< each step on its turn, whoever is there
    RotationCourse held;             ///< with the pins and the days away

private:
    /// What a change does to the first turn is told by the members followed, with it and without it; the turn itself by all of them.
    bool moveFirstTurn(Crew& crew, const std::stop_token& stop)
    {
        RotationWish wish = plain_;
        wish.firstTurn.reset();
        wish.nextStepOnly = true;
        wish.windows = false;
        const auto with = run(wish, crew, stop);
        wish.change = {};
        const auto without = run(wish, crew, stop);
        if (!with || !without) return false;
        const Day beyond = today_ + std::chrono::days{wish.ahead + 1};
        const auto first = [&](const RotationCourse& course) {
            if (!course.trays.empty()) return course.trays.front().on;
            return course.harvests.empty() ? beyond : course.harvests.back().liftOn;
        };
        const auto by = first(*with) - first(*without);
        for (std::optional<Day>* edge : {&plain_.firstTurn->p10, &plain_.firstTurn->p50, &plain_.firstTurn->p90})
            if (*edge) **edge = std::max(**edge + by, today_ + std::chrono::days{1});
        return true;
    }
    std::optional<RotationCourse> run(const RotationWish& wish, Crew& crew, const std::stop_token& stop) const { return reckoning::runRotation(*present_, wish, crew, stop); }

    const YearWishes& wishes_;
    Day today_;
    std::string name_;
    const reckoning::Present* present_;
    std::optional<reckoning::Present> changed_;
    RotationWish plain_;
    bool isChanged_ = false;
    std::vector<std::pair<Day, Day>> own_, away_; ///< days on which nobody is there for this stack alone, and at all
};

/// How much later than by themselves those harvests are lifted that come in both courses.
int delayOf(const RotationCourse& planned, const RotationCourse& natural)
{
    int days = 0;
    for (const PlannedHarvest& harvest : planned.harvests) {
        const auto same = std::find_if(natural.harvests.begin(), natural.harvests.end(), [&](const PlannedHarvest& each) { return each.batch == harvest.batch; });
        if (isOpen(harvest) && same != natural.harvests.end()) days += std::max(daysBetween(same->liftOn, harvest.liftOn), 0);
    }
    return days;
}

StackYear yearOf(const std::string& stack, RotationCourse natural, RotationCourse planned, const YearWishes& wishes, Day today)
{
    StackYear year;
    year.stack = stack;
    for (const PlannedHarvest& harvest : planned.harvests) year.pinned.push_back(isOpen(harvest) && pinOf(wishes, stack, harvest.batch, today).has_value());
    year.delayDays = delayOf(planned, natural);
    year.castingsL = castingsOf(planned);
    year.castingsNaturalL = castingsOf(natural);
    year.natural = std::move(natural);
    year.planned = std::move(planned);
    return year;
}

}

bool isPlanned(const StackReckoning& stack) { return !stack.retired && stack.present && !stack.now.slots.empty(); }

int yearMembers(std::size_t stacks) { return stacks <= householdOfFew ? allMembers : stacks <= fewStacks ? membersOfFew : membersOfMany; }

namespace {

/// Of a stack of which nothing is due today; its middle may be past.
std::optional<reckoning::Dates> turnOf(const StackReckoning& stack, int moreTrays)
{
    if (!stack.present || stack.record.dryingSince || stack.now.slots.empty()) return std::nullopt;
    const reckoning::Population& members = stack.present->members;
    const int top = members.stack.topToFeed();
    if (top < 0) return std::nullopt;
    const reckoning::TrayEstimate& bottom = stack.now.slots.front();
    const bool ready = stack.readySince || bottom.state == reckoning::TrayState::ready || bottom.state == reckoning::TrayState::overdue;
    reckoning::Dates turn;
    if (stack.record.spareTrays + moreTrays > 0 || (ready && !stack.turnSince)) {
        turn = stack.forecast.turnOn;
    } else if (stack.turnSince) {
        turn = bottom.readyOn;
    } else {
        const std::vector<int>& filled = stack.present->base.firsts.at(members.stack.shapes[static_cast<std::size_t>(top)].batch).filled;
        std::vector<int> both = stack.present->base.firsts.at(members.stack.shapes.front().batch).ready;
        for (std::size_t i = 0; i < both.size(); ++i) both[i] = std::max(both[i], filled[i]);
        turn = reckoning::dates(both, members.shares(), stack.firstBedding, daysBetween(stack.firstBedding, stack.asOf) + reckoning::outlookDays);
    }
    return turn;
}

/// A tray between whose castings are to be taken turns nothing.
bool isTurnToday(const std::optional<advice::LifeStep>& due) { return due == advice::LifeStep::addTray || due == advice::LifeStep::lift; }

bool isPast(const StackReckoning& stack, const reckoning::Dates& turn) { return turn.p50 && *turn.p50 <= stack.asOf; }

std::optional<reckoning::Dates> turnAhead(const StackReckoning& stack, int moreTrays)
{
    const auto turn = turnOf(stack, moreTrays);
    return turn && !isPast(stack, *turn) ? turn : std::nullopt;
}

}

bool turnHangs(const StackReckoning& stack)
{
    const auto turn = isTurnToday(advice::stepDueToday(stack)) ? std::nullopt : turnOf(stack, 0);
    return turn && isPast(stack, *turn);
}

std::optional<reckoning::Dates> nextTurn(const StackReckoning& stack, int moreTrays)
{
    return isTurnToday(advice::stepDueToday(stack)) ? std::nullopt : turnAhead(stack, moreTrays);
}

RotationWish plainWish(const StackReckoning& stack, int members)
{
    RotationWish wish;
    wish.members = members;
    wish.dryingSoFar = stack.record.daysDrying;
    const std::optional<advice::LifeStep> due = advice::stepDueToday(stack);
    wish.turnToday = isTurnToday(due);
    wish.takeToday = due == advice::LifeStep::take;
    if (!wish.turnToday) wish.firstTurn = turnAhead(stack, 0);
    return wish;
}

YearWishes withAbsences(YearWishes wishes, const journal::Entries& entries, Day today)
{
    const auto ahead = [today](const std::vector<journal::AwayDays>& away, std::vector<std::pair<Day, Day>>& to) {
        for (const journal::AwayDays& days : away)
            if (days.to >= today) to.emplace_back(std::max(days.from, today), days.to);
    };
    const std::vector<journal::AwayDays> nobody = journal::absencesOfAll(entries, today);
    ahead(nobody, wishes.away);
    std::sort(wishes.away.begin(), wishes.away.end());
    wishes.away.erase(std::unique(wishes.away.begin(), wishes.away.end()), wishes.away.end());
    std::set<std::string> stacks;
    for (const journal::Entry& entry : entries)
        if (journal::awayDaysOf(entry)) stacks.insert(entry.stack);
    for (const std::string& stack : stacks) {
        std::vector<journal::AwayDays> own = journal::absencesOf(entries, stack);
        std::erase_if(own, [&](const journal::AwayDays& days) { return std::find(nobody.begin(), nobody.end(), days) != nobody.end(); });
        std::vector<std::pair<Day, Day>> days;
        ahead(own, days);
        if (!days.empty()) wishes.awayOf.emplace(stack, std::move(days));
    }
    return wishes;
}

std::optional<YearPlan> coursesWith(const reckoning::Reckoning& reckoning, const YearWishes& wishes, const CourseTrial& trial, int threads, std::stop_token stop)
{
    const std::vector<const StackReckoning*> stacks = standing(reckoning);
    const Day today = reckoning.asOf;
    const bool few = stacks.size() <= fewStacks;
    YearPlan plan;
    plan.from = today;
    plan.wishes = wishes;
    plan.members = yearMembers(stacks.size());
    if (stacks.empty()) plan.members = 0;
    for (const StackReckoning* stack : stacks) plan.members = std::min(plan.members, stack->present->members.stack.members());
    std::vector<std::unique_ptr<Courses>> courses(stacks.size());
    std::atomic<bool> stopped{false};
    shareOut(stacks.size(), threads, [&](std::size_t i, Crew& crew) {
        courses[i] = std::make_unique<Courses>(*stacks[i], wishes, trial, plan.members, few && trial.windows);
        if (!courses[i]->runNatural(crew, stop)) stopped = true;
    });
    if (stopped) return std::nullopt;

    std::vector<StackTurns> turns;
    turns.reserve(courses.size());
    for (const auto& each : courses) turns.push_back(each->turns());
    const HarvestWishes days = wishesFor(wishes, today);
    plan.days = chooseDays(turns, days);

    plan.stacks.resize(stacks.size());
    shareOut(stacks.size(), threads, [&](std::size_t i, Crew& crew) {
        auto planned = courses[i]->onDays(plan.days.lift[i], plan.days.take[i], days, few, crew, stop);
        if (planned) plan.stacks[i] = yearOf(stacks[i]->name, std::move(courses[i]->natural), *std::move(planned), wishes, today);
        else stopped = true;
    });
    if (stopped || stop.stop_requested()) return std::nullopt;
    std::set<Day> lifts;
    for (const StackYear& year : plan.stacks) {
        plan.delayDays += year.delayDays;
        for (const PlannedHarvest& harvest : year.planned.harvests)
            if (isOpen(harvest)) lifts.insert(harvest.liftOn);
    }
    plan.liftDays = static_cast<int>(lifts.size());
    return plan;
}

std::optional<YearPlan> planYear(const reckoning::Reckoning& reckoning, const YearWishes& wishes, int threads, std::stop_token stop)
{
    return coursesWith(reckoning, wishes, {}, threads, std::move(stop));
}

}
