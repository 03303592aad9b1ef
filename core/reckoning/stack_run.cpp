#include "core/reckoning/stack_run.h"

#include "core/model/measures.h"

#include <algorithm>

namespace tierloam::reckoning {

using namespace model;

namespace {

constexpr double raiseAt = 0.8;
constexpr double withdrawAt = 0.6;
constexpr int dailyBack = 90;        ///< days before asOf with a sample each
constexpr int overdueAfter = 30;     ///< days after turn and ready

/// The species of the latest `stock` rules.
std::string speciesOf(const journal::Entries& entries, const journal::StackHistory& history)
{
    std::string name{journal::defaultSpecies};
    for (const journal::Step& step : history.steps)
        if (const auto* stock = std::get_if<journal::Stock>(&entries[step.entry].action)) {
            const materials::Species* known = materials::speciesNamed(stock->species);
            name = known != nullptr ? std::string{known->name} : name;
        }
    return name;
}

}

void Raised::note(double probability, Day day)
{
    if (!since_ && probability >= raiseAt) since_ = day;
    if (since_ && probability <= withdrawAt) since_.reset();
}

StackRun::StackRun(const journal::Entries& entries, const journal::StackHistory& history, const materials::Table& materials, const Options& options,
                   Crew& crew, const FilterManner& manner)
    : entries_{entries}, history_{history}, deeds_{entries, materials}, options_{options}, crew_{crew}, manner_{manner},
      last_{daysBetween(*history.firstBedding, options.asOf)},
      members_{Ensemble::drawn(history.key, options.members, speciesOf(entries, history), history.steps.front().after.settings.temp.base())}
{
    firstStepOf_.assign(static_cast<std::size_t>(last_) + 2, history.steps.size());
    looked_.assign(static_cast<std::size_t>(last_) + 1, 0);
    for (std::size_t i = history.steps.size(); i-- > 0;) {
        const int day = std::max(daysBetween(*history.firstBedding, history.steps[i].day), 0);
        firstStepOf_[static_cast<std::size_t>(day)] = i;
        const journal::Action& action = entries[history.steps[i].entry].action;
        if (isLook(action) || std::holds_alternative<journal::Harvest>(action)) looked_[static_cast<std::size_t>(day)] = 1;
    }
    for (std::size_t day = firstStepOf_.size() - 1; day-- > 0;) firstStepOf_[day] = std::min(firstStepOf_[day], firstStepOf_[day + 1]);
    firstStepOf_[0] = 0; // what was written before the first bedding acts on the first day
    surroundings_.firstBedding = *history.firstBedding;
    surroundings_.southern = options.southern;
    missed_ = missedFeedings(entries, history, deeds_, last_);
}

void StackRun::entriesOf(int day)
{
    int number = 0;
    looksToday_ = 0;
    for (std::size_t i = firstStepOf_[static_cast<std::size_t>(day)]; i < firstStepOf_[static_cast<std::size_t>(day) + 1]; ++i, ++number) {
        const journal::Step& step = history_.steps[i];
        const journal::Action& action = entries_[step.entry].action;
        const journal::Standing& before = standing_ != nullptr ? *standing_ : step.after;
        if (const auto* routine = std::get_if<journal::Routine>(&action)) {
            const bool water = routine->of == journal::RoutineOf::water;
            const double each = water ? routine->each.volume().value_or(Volume{}).base() : routine->each.mass().value_or(Mass{}).base();
            (water ? waterHabit_ : coverHabit_) = each > 0.0 ? std::optional{Habit{each, std::max(routine->everyDays.value_or(1), 1), day}} : std::nullopt;
        } else if (const auto* reading = std::get_if<journal::Reading>(&action)) {
            if (reading->air) surroundings_.air = {day, reading->air->base()};
            if (reading->relativeHumidity) surroundings_.humidity = {day, reading->relativeHumidity->fraction()};
        }
        // What was read is weighed before the entry takes anything.
        weighEntry(step, before, day);
        standing_ = &step.after;
        surroundings_.settings = step.after.settings;
        surroundings_.spigot = step.after.spigot;
        surroundings_.lidOn = step.after.lidOn;
        if (deeds_.perform(members_.stack, step, history_, day, number)) flags_.push_back("beyond-room:" + dayText(dayAt(day)));
        emptied(action);
        members_.forgetBatchesGone();
    }
    for (const MissedFeeding& missed : missed_)
        if (missed.day == day) giveUnwritten(members_, missed, deeds_);
}

void StackRun::weighEntry(const journal::Step& step, const journal::Standing& before, int day)
{
    if (members_.stack.trays() == 0 || step.incoming) return;
    const journal::Entry& entry = entries_[step.entry];
    for (const Look& look : looksOf(entry.action, step.slot, before)) {
        if (look.slot >= members_.stack.trays()) continue;
        if (onLook) onLook(step.entry, look, members_);
        const Verdict verdict = weigh(members_, look, day, looksToday_++, manner_);
        if (verdict.disagrees()) disagreements_.push_back({static_cast<std::int64_t>(entry.id), dayAt(day), look.kind, look.slot + 1, look.value, verdict.expected});
    }
}

/// What ran off through an open spigot is counted anew from here.
void StackRun::emptied(const journal::Action& action)
{
    const auto* drain = std::get_if<journal::Drain>(&action);
    if (!(drain != nullptr && drain->volume) && !std::holds_alternative<journal::Flush>(action)) return;
    for (int i = 0; i < members_.stack.members(); ++i) {
        const MemberOf member{members_.stack, i};
        members_.ranOffBefore[static_cast<std::size_t>(i)] = member.block.stack.ranOff[member.lane];
    }
}

void StackRun::routinesOf(int day)
{
    const int slot = members_.stack.topToFeed();
    if (slot < 0) return;
    const auto due = [&](const std::optional<Habit>& habit) { return habit && (day - habit->from) % habit->every == 0; };
    if (due(waterHabit_)) pour(members_.stack, slot, waterHabit_->each);
    if (due(coverHabit_))
        if (const auto paper = deeds_.portion(std::string{journal::defaultCover}, Amount{coverHabit_->each, Unit::kg}))
            Deeds::giveWithinRoom(members_.stack, slot, paper->what, paper->kg, false);
}

void StackRun::passDay(int day)
{
    const DayForcing forcing = surroundings_.on(day);
    crew_.each(static_cast<int>(members_.stack.blocks.size()), [&](int block) {
        advanceDay(members_.stack, block, forcing);
        members_.noteReadiness(day, block);
    });
    members_.week.note(members_.stack);
}

bool StackRun::worthASample(int day) const
{
    return last_ - day <= dailyBack || (last_ - day) % 7 == 0 || looked_[static_cast<std::size_t>(day)] != 0;
}

void StackRun::settleStates(StackEstimate& at, int day) const
{
    for (TrayEstimate& tray : at.slots) {
        if (tray.state == TrayState::drying) continue;
        const auto raised = ready_.find(tray.batch);
        if (raised == ready_.end() || !raised->second.since()) continue;
        tray.state = TrayState::ready;
        const bool noneSpare = standing_ != nullptr && standing_->spare() <= 0;
        if (tray.slot != 1 || !noneSpare || !turn_.since()) continue;
        const Day both = std::max(*raised->second.since(), *turn_.since());
        if (daysBetween(both, dayAt(day)) >= overdueAfter) tray.state = TrayState::overdue;
    }
}

void StackRun::noteDay(int day, StackReckoning& result)
{
    const int top = members_.stack.topToFeed();
    const int topBatch = top >= 0 ? members_.stack.shapes[static_cast<std::size_t>(top)].batch : 0;
    if (topBatch != turnBatch_) {
        turn_ = {};
        turnBatch_ = topBatch;
    }
    if (top >= 0) turn_.note(members_.filledProbability(top), dayAt(day));
    for (int slot = 0; slot < members_.stack.trays(); ++slot)
        ready_[members_.stack.shapes[static_cast<std::size_t>(slot)].batch].note(members_.readyProbability(slot), dayAt(day));
    if (!worthASample(day)) return;
    StackEstimate sample = estimate(members_.stack, members_.week, members_.shares(), dayAt(day), day);
    settleStates(sample, day);
    result.history.push_back(std::move(sample));
}

bool StackRun::run(StackReckoning& result, std::stop_token stop)
{
    result.name = history_.name;
    result.firstBedding = *history_.firstBedding;
    result.asOf = options_.asOf;
    for (int day = 0; day <= last_; ++day) {
        if (stop.stop_requested()) return false;
        entriesOf(day);
        routinesOf(day);
        passDay(day);
        noteDay(day, result);
    }
    result.now = result.history.back();
    result.retired = standing_->retired;
    result.flags = flags_;
    result.disagreements = disagreements_;
    result.unwritten = guessUnwritten(members_, missed_, result.firstBedding);
    result.effectiveSize = members_.weights.effectiveSize();
    result.record = recordOf(entries_, history_, options_.asOf);
    const int top = members_.stack.topToFeed();
    result.turnProbability = top >= 0 ? members_.filledProbability(top) : 0.0;
    result.turnSince = turn_.since();
    if (!members_.stack.shapes.empty()) {
        const auto bottom = ready_.find(members_.stack.shapes.front().batch);
        if (bottom != ready_.end()) result.readySince = bottom->second.since();
    }
    return forecast(result, stop);
}

}
