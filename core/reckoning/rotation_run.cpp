#include "core/reckoning/rotation_run.h"

#include "core/model/measures.h"

#include <algorithm>

namespace tierloam::reckoning {

using namespace model;

namespace {

constexpr int lateWithin = 120;          ///< days beyond which nine tenths are no longer waited for
constexpr double castingsKgPerL = 0.182; ///< dry matter as castings lie (model/measures)

/// The members' first days of a turn, and the days on which a tenth, half and nine tenths of them have it.
class Turn {
public:
    explicit Turn(int members) : first_(static_cast<std::size_t>(members), never) {}

    /// `bottomToo`: the bottom tray has to be ready as well.
    void note(const Population& members, bool bottomToo, int day)
    {
        const int top = members.stack.topToFeed();
        if (top < 0) return;
        const std::vector<char>& filled = members.filledNow[static_cast<std::size_t>(top)];
        const std::vector<char>& ready = members.readyNow.front();
        std::size_t reached = 0;
        for (std::size_t i = 0; i < first_.size(); ++i) {
            if (first_[i] == never && filled[i] != 0 && (!bottomToo || ready[i] != 0)) first_[i] = day;
            reached += first_[i] != never ? 1 : 0;
        }
        if (!early && reached * 10 >= first_.size()) early = day;
        if (!middle && reached * 2 >= first_.size()) middle = day;
        if (!sure && reached * 10 >= first_.size() * 8) sure = day;
        if (!late && reached * 10 >= first_.size() * 9) late = day;
    }

    std::optional<int> early, middle, sure, late;

private:
    std::vector<int> first_;
};

class Year {
public:
    Year(const Present& present, const RotationWish& wish, Crew& crew, std::stop_token stop)
        : course_{present.course}, wish_{wish}, crew_{crew}, stop_{std::move(stop)}, members_{fewer(present.members, wish.members)},
          around_{present.course.surroundings}, care_{present.course.care}, turn_{members_.stack.members()}
    {
        if (wish.change.usualTemperature) around_.settings.temp = celsius(*wish.change.usualTemperature);
        if (wish.change.feedKgPerWeek) care_ = careWith(care_, *wish.change.feedKgPerWeek, course_.kitchen);
        lastBatch_ = course_.batches;
    }

    std::optional<RotationCourse> live()
    {
        const Ensemble& stack = members_.stack;
        if (stack.trays() == 0) return std::nullopt;
        if (drying()) takeOn_ = around_.lidBackOn = takingDay(0, dryingEnds(course_.today, wish_.dryingSoFar, wish_.daysDrying));
        turn_.note(members_, !spare(), course_.today);
        standFrom(course_.today);
        // Today is over for the model: what is due today is done to what stands this evening.
        if (drying() && (wish_.takeToday || takeOn_ == course_.today)) take(course_.today);
        else if (dueToday()) stepOn(course_.today);
        for (int step = 1; step <= wish_.ahead && !(wish_.nextStepOnly && hasStepped()); ++step) {
            if (stop_.stop_requested()) return std::nullopt;
            const int day = course_.today + step;
            pass(members_, day);
            turn_.note(members_, !spare(), day);
            if (takeOn_ && *takeOn_ <= day) take(day); // in the evening, on the day on which it falls due
            else if (due(day)) stepOn(day);
        }
        for (TrayStay& stay : made_.stays)
            if (stay.to == Day{}) stay.to = at(course_.today + wish_.ahead);
        if (!made_.harvests.empty() && made_.harvests.back().takeOn == Day{} && !wish_.nextStepOnly) made_.harvests.pop_back(); // lifted within the year, taken after it
        std::vector<double> colonies(static_cast<std::size_t>(stack.members()));
        for (int i = 0; i < stack.members(); ++i) colonies[static_cast<std::size_t>(i)] = colony(MemberOf{stack, i});
        made_.colonyAtEnd = band(std::vector<double>{colonies}, {});
        made_.colonyOfMember = std::move(colonies);
        return std::move(made_);
    }

private:
    Day at(int day) const { return around_.firstBedding + std::chrono::days{day}; }
    bool spare() const { return members_.stack.trays() < around_.settings.trays; }
    bool onlyTray() const { return around_.settings.trays <= 1; }
    bool drying() const { return !members_.stack.shapes.empty() && members_.stack.shapes.back().drying; }

    bool isAway(int day) const { return isWithin(wish_.away, at(day)); }

    /// The day on which the castings of a harvest are taken.
    int takingDay(int harvest, int usual) const
    {
        const auto wished = wish_.takeOn.find(harvest);
        return wished != wish_.takeOn.end() ? std::max(daysBetween(around_.firstBedding, wished->second), course_.today) : usual;
    }

    bool hasStepped() const { return !made_.trays.empty() || std::any_of(made_.harvests.begin(), made_.harvests.end(), [](const PlannedHarvest& each) { return !each.begun; }); }

    void stepOn(int day)
    {
        if (spare()) addOnTurn(day);
        else lift(day);
    }

    /// Half of the members have it. Where they had it when the year began, and it has not been called due, the due list waits until it is surer, and so does
    /// the year, however long: some trays hang between, and a look decides.
    bool hasTurn(int day) const
    {
        if (const Dates* told = toldTurn()) return told->p50 && at(day) >= *told->p50;
        return turn_.middle && (!hangs() || turn_.sure);
    }
    bool hangs() const { return turn_.middle && *turn_.middle <= course_.today && !wish_.turnToday; }
    /// Of the first step alone: what comes after it nobody else tells.
    const Dates* toldTurn() const { return wish_.firstTurn && !hasStepped() ? &*wish_.firstTurn : nullptr; }

    /// A tray on its turn; a lift on its wished day, or else on its turn.
    bool due(int day) const
    {
        if (drying() || members_.stack.trays() == 0) return false;
        if (spare()) return hasTurn(day) && !isAway(day);
        if (members_.stack.trays() < 2 && !onlyTray()) return false;
        const auto wished = wish_.liftOn.find(static_cast<int>(made_.harvests.size()));
        return wished != wish_.liftOn.end() ? at(day) >= wished->second : hasTurn(day);
    }

    /// Only what has been called due, or was wished for today; a turn that half of the members have is from tomorrow on.
    bool dueToday() const
    {
        const auto wished = wish_.liftOn.find(0);
        if (!spare() && wished != wish_.liftOn.end()) return due(course_.today);
        return wish_.turnToday && !drying() && !(spare() && isAway(course_.today)) && members_.stack.trays() > (spare() || onlyTray() ? 0 : 1);
    }

    void pass(Population& members, int day)
    {
        const bool away = wish_.change.away && at(day) >= wish_.change.away->first && at(day) <= wish_.change.away->second;
        if (care_.isDue(day - course_.today) && !away) careForAWeek(members.stack, care_);
        const DayForcing forcing = around_.on(day);
        crew_.each(static_cast<int>(members.stack.blocks.size()), [&](int block) {
            advanceDay(members.stack, block, forcing);
            members.noteReadiness(day, block);
        });
    }

    /// The edges that are not known yet are found on a copy to which nothing is done.
    TurnWindow window(int day, bool bottomToo)
    {
        if (const Dates* told = toldTurn(); told && !(wish_.turnToday && day == course_.today)) {
            const Day horizon = at(course_.today + wish_.ahead + 1);
            return {std::max(told->p50.value_or(horizon), at(course_.today + 1)), told->p10, told->p90};
        }
        Turn turn = turn_;
        const auto known = [&] { return wish_.windows ? turn.late.has_value() : turn.middle.has_value(); };
        const bool hung = hangs();
        if (!known()) {
            Population copy = members_;
            for (int on = day + 1; on <= day + lateWithin && !known() && !stop_.stop_requested(); ++on) {
                pass(copy, on);
                turn.note(copy, bottomToo, on);
            }
        }
        const auto dayOf = [&](const std::optional<int>& number) { return number ? std::optional{at(*number)} : std::nullopt; };
        TurnWindow made{dayOf(turn.middle).value_or(at(day + lateWithin)), dayOf(turn.early), dayOf(turn.late)};
        if (wish_.turnToday && day == course_.today) { // called due by the chances of tray and turn apart; their meeting may lag behind
            made.natural = at(day);
            made.early = std::min(made.early.value_or(at(day)), at(day));
        } else {
            // Half of them have it already, but it has not been called due: when it is likely to be.
            made.natural = std::max(made.natural, hung ? at(turn.sure.value_or(day)) : at(course_.today + 1));
            made.natural = std::max(made.natural, at(course_.today + 1));
        }
        return made;
    }

    void newTurn(int day)
    {
        members_.forgetBatchesGone();
        turn_ = Turn{members_.stack.members()};
        standFrom(day);
    }

    void layTray(int day)
    {
        const TrayShape* bottom = members_.stack.shapes.data();
        int tray = 1;
        const auto stands = [&](int number) {
            return std::any_of(bottom, bottom + members_.stack.trays(), [number](const TrayShape& shape) { return shape.tray == number; });
        };
        while (stands(tray)) ++tray;
        model::addTray(members_.stack, ++lastBatch_, tray, day);
        const PerMember fresh(static_cast<std::size_t>(members_.stack.members()), course_.beddingKg);
        addMatter(members_.stack, members_.stack.trays() - 1, course_.bedding, fresh, PerMember(fresh.size(), course_.bedding.dryShare), course_.beddingWater, false);
    }

    void addOnTurn(int day)
    {
        PlannedTray planned{window(day, false), at(day), 0, 0};
        layTray(day);
        planned.batch = lastBatch_;
        planned.tray = members_.stack.shapes.back().tray;
        made_.trays.push_back(planned);
        newTurn(day);
    }

    void lift(int day)
    {
        PlannedHarvest planned;
        planned.window = window(day, true);
        planned.liftOn = at(day);
        planned.batch = members_.stack.shapes.front().batch;
        planned.tray = members_.stack.shapes.front().tray;
        planned.readyWhenLifted = members_.readyProbability(0);
        std::vector<double> colonies;
        colonies.reserve(static_cast<std::size_t>(members_.stack.members()));
        for (int i = 0; i < members_.stack.members(); ++i) colonies.push_back(colony(MemberOf{members_.stack, i}));
        planned.colonyKg = quantile(colonies, {}, 0.5);
        made_.harvests.push_back(std::move(planned));
        if (onlyTray()) return takeTheOnly(day);
        rotate(members_.stack);
        around_.lidOn = false; // as the journal takes a rotation
        // A lift that had to wait, for the tray before it was still in the light, takes its taking day along.
        const int harvest = static_cast<int>(made_.harvests.size()) - 1;
        const auto wished = wish_.liftOn.find(harvest);
        const bool waited = wished != wish_.liftOn.end() && wished->second < at(day);
        takeOn_ = around_.lidBackOn = waited ? day + wish_.daysDrying : takingDay(harvest, day + wish_.daysDrying);
        newTurn(day);
    }

    /// The worms of the only tray go back into new bedding; its cocoons go with the castings.
    void takeTheOnly(int day)
    {
        made_.harvests.back().atOnce = true;
        layTray(day);
        members_.stack.shapes[1].tray = members_.stack.shapes[0].tray; // there is but one: emptied, and filled again
        allWormsInto(members_.stack, 1);
        noteTaken(made_.harvests.back(), 0, day);
        harvest(members_.stack, 0, 1.0);
        newTurn(day);
    }

    void noteTaken(PlannedHarvest& planned, int slot, int day) const
    {
        planned.takeOn = at(day);
        std::vector<double> dry;
        for (int i = 0; i < members_.stack.members(); ++i) {
            const MemberOf member{members_.stack, i};
            dry.push_back(member.tray(slot).castings[member.lane]);
        }
        for (const double kg : dry) planned.litresOfMember.push_back(kg / castingsKgPerL);
        planned.castingsL = band(std::vector<double>{planned.litresOfMember}, {});
        planned.castingsDryKg = band(dry, {});
    }

    /// The castings go; their tray is bedded anew at once and comes on top.
    void take(int day)
    {
        takeOn_.reset();
        around_.lidBackOn.reset();
        around_.lidOn = true;
        const int slot = members_.stack.trays() - 1;
        const TrayShape gone = members_.stack.shapes.back();
        if (made_.harvests.empty() || made_.harvests.back().takeOn != Day{}) { // it was in the light when the year began
            PlannedHarvest begun;
            begun.window = {at(course_.today), at(course_.today), at(course_.today)};
            begun.liftOn = at(course_.today - wish_.dryingSoFar);
            begun.begun = true;
            begun.batch = gone.batch;
            begun.tray = gone.tray;
            begun.readyWhenLifted = 1.0;
            made_.harvests.push_back(std::move(begun));
        }
        noteTaken(made_.harvests.back(), slot, day);
        harvest(members_.stack, slot, 1.0);
        if (members_.stack.trays() < around_.settings.trays) layTray(day);
        newTurn(day);
    }

    /// Closes the stays of the arrangement before and opens those of the one that stands now.
    void standFrom(int day)
    {
        const auto& shapes = members_.stack.shapes;
        for (TrayStay& stay : made_.stays) {
            if (stay.to != Day{}) continue;
            const bool same = stay.slot <= static_cast<int>(shapes.size()) && shapes[static_cast<std::size_t>(stay.slot) - 1].batch == stay.batch
                && shapes[static_cast<std::size_t>(stay.slot) - 1].drying == stay.drying;
            if (!same) stay.to = at(day);
        }
        for (std::size_t i = 0; i < shapes.size(); ++i) {
            const bool open = std::any_of(made_.stays.begin(), made_.stays.end(), [&](const TrayStay& stay) { return stay.to == Day{} && stay.slot == static_cast<int>(i) + 1; });
            if (!open) made_.stays.push_back({shapes[i].tray, shapes[i].batch, static_cast<int>(i) + 1, at(day), Day{}, shapes[i].drying});
        }
    }

    const Course& course_;
    const RotationWish& wish_;
    Crew& crew_;
    std::stop_token stop_;
    Population members_;
    Surroundings around_;
    UsualCare care_;
    Turn turn_;
    int lastBatch_ = 0;
    std::optional<int> takeOn_;
    RotationCourse made_;
};

}

Population fewer(const Population& members, int wanted)
{
    Population some = members;
    const int all = members.stack.members();
    if (wanted >= all || wanted % lanes != 0) wanted = all;
    // In order of the ancestors, each as often as its weight asks for; of these every n-th, so that weight is kept by number.
    const std::vector<double> weights = members.weights.normalised();
    std::vector<int> chosen;
    double sum = 0.0;
    int next = 0;
    for (int i = 0; i < all && next < wanted; ++i) {
        sum += weights[static_cast<std::size_t>(i)];
        while (next < wanted && sum * wanted >= next + 0.5) {
            chosen.push_back(i);
            ++next;
        }
    }
    while (static_cast<int>(chosen.size()) < wanted) chosen.push_back(all - 1);
    std::vector<int> ancestors(static_cast<std::size_t>(all));
    for (int i = 0; i < all; ++i) ancestors[static_cast<std::size_t>(i)] = i < wanted ? chosen[static_cast<std::size_t>(i)] : i;
    some.inherit(ancestors);
    const std::size_t kept = static_cast<std::size_t>(wanted);
    some.stack.blocks.resize(kept / lanes);
    some.weights = LogWeights{kept};
    some.normalised.clear();
    some.week.keep(kept);
    some.ranOffBefore.resize(kept);
    some.unwritten.clear();
    for (auto& [batch, first] : some.firsts) {
        first.ready.resize(kept);
        first.filled.resize(kept);
    }
    for (std::vector<std::vector<char>>* now : {&some.readyNow, &some.filledNow}) now->assign(some.stack.shapes.size(), std::vector<char>(kept, 0));
    for (int slot = 0; slot < some.stack.trays(); ++slot) {
        for (int block = 0; block < static_cast<int>(some.stack.blocks.size()); ++block) {
            Readiness is;
            readiness(some.stack, block, slot, is);
            for (std::size_t m = 0; m < lanes; ++m) {
                const std::size_t i = static_cast<std::size_t>(block) * lanes + m;
                some.readyNow[static_cast<std::size_t>(slot)][i] = is.ready[m] ? 1 : 0;
                some.filledNow[static_cast<std::size_t>(slot)][i] = is.filled[m] ? 1 : 0;
            }
        }
    }
    return some;
}

std::optional<RotationCourse> runRotation(const Present& present, const RotationWish& wish, Crew& crew, std::stop_token stop)
{
    if (present.members.stack.trays() == 0) return std::nullopt;
    return Year{present, wish, crew, std::move(stop)}.live();
}

}
