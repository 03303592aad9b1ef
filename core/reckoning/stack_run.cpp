#include "core/reckoning/stack_run.h"

#include "core/journal/edit.h"
#include "core/model/measures.h"
#include "core/model/random.h"
#include "core/reckoning/expected_reading.h"
#include "core/reckoning/foresight.h"
#include "core/reckoning/next_look.h"
#include "core/reckoning/overdue.h"

#include <algorithm>
#include <bit>
#include <span>
#include <utility>

namespace tierloam::reckoning {

using namespace model;

namespace {

constexpr double raiseAt = 0.8;
constexpr double withdrawAt = 0.6;
constexpr int dailyBack = 90;        ///< days before asOf with a sample each
/// Days for which a turn stands though its chance has fallen: fresh food undoes for some days that a tray is filled, and is then eaten. A check of
/// a tray takes it back at once.
constexpr int turnKeptFor = 7, readyKeptFor = 7;
constexpr int settledKeptFor = 150;  ///< days: the diary's 90 and the 60 for which a value that was odd is told
/// Ages of the snapshots, days: an entry runs again about twice its age. The last are beyond the record of anybody.
constexpr int ages[] = {1, 2, 4, 7, 14, 30, 60, 120, 240, 480, 960, 1920, 3840, 7680, 15360};
constexpr int fewAges[] = {1, 7, 30};
std::span<const int> agesOf(const Options& options) { return options.fewSnapshots ? std::span<const int>{fewAges} : std::span<const int>{ages}; }

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

void Raised::note(double probability, Day day, int keptFor)
{
    if (!since_ && probability >= raiseAt) since_ = day;
    if (probability > withdrawAt) low_.reset();
    else if (!low_) low_ = day;
    if (low_ && daysBetween(*low_, day) >= keptFor) since_.reset();
}

StackRun::StackRun(const journal::Entries& entries, const journal::StackHistory& history, const materials::Table& materials, const Options& options,
                   Crew& crew, const FilterManner& manner)
    : entries_{entries}, history_{history}, deeds_{entries, materials}, options_{options}, crew_{crew}, manner_{manner},
      last_{daysBetween(*history.firstBedding, options.asOf)},
      now_{-1, Population{Ensemble::drawn(history.key, options.members, speciesOf(entries, history), history.steps.front().after.settings.temp.base())},
           {}, {}, 0, 0, {}, {}, {}, {}, {}, {}, {}, {}, {}}
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
    now_.surroundings.firstBedding = *history.firstBedding;
    now_.surroundings.southern = options.southern;
    missed_ = missedFeedings(entries, history, deeds_, last_);
    hashPrefixes(speciesOf(entries, history));
}

const journal::Standing* StackRun::standing() const { return now_.stepsDone > 0 ? &history_.steps[now_.stepsDone - 1].after : nullptr; }

/// What a day's end rests on: the entries up to it, the feedings taken to be missing, and what holds for the whole run. Not on the day up to
/// which the journal is read, so that a snapshot holds tomorrow too.
void StackRun::hashPrefixes(const std::string& species)
{
    std::uint64_t hash = streamOf(history_.key, options_.members, Use::parameter, options_.southern ? 1 : 0);
    const auto mix = [&](std::uint64_t more) { hash = streamOf(hash ^ more, 0, Use::parameter); };
    mix(journal::stackKey(species));
    for (const journal::Entry& entry : entries_)
        if (std::holds_alternative<journal::OwnMaterial>(entry.action)) mix(journal::digest({&entry, 1}));
    prefixOf_.reserve(static_cast<std::size_t>(last_) + 1);
    for (int day = 0; day <= last_; ++day) {
        for (std::size_t i = firstStepOf_[static_cast<std::size_t>(day)]; i < firstStepOf_[static_cast<std::size_t>(day) + 1]; ++i) {
            const journal::Step& step = history_.steps[i];
            mix(journal::digest({&entries_[step.entry], 1}) + (step.incoming ? 1 : 0));
        }
        for (const MissedFeeding& missed : missed_)
            if (missed.day == day) mix(journal::stackKey(missed.material) ^ std::bit_cast<std::uint64_t>(missed.kg) ^ static_cast<std::uint64_t>(day));
        prefixOf_.push_back(hash);
    }
}

void StackRun::entriesOf(int day)
{
    int number = 0;
    looksToday_ = 0;
    for (std::size_t i = firstStepOf_[static_cast<std::size_t>(day)]; i < firstStepOf_[static_cast<std::size_t>(day) + 1]; ++i, ++number) {
        const journal::Step& step = history_.steps[i];
        const journal::Action& action = entries_[step.entry].action;
        const journal::Standing& before = standing() != nullptr ? *standing() : step.after;
        if (const auto* routine = std::get_if<journal::Routine>(&action)) {
            const bool water = routine->of == journal::RoutineOf::water;
            const double each = water ? routine->each.volume().value_or(Volume{}).base() : routine->each.mass().value_or(Mass{}).base();
            (water ? now_.waterHabit : now_.coverHabit) = each > 0.0 ? std::optional{Habit{each, std::max(routine->everyDays.value_or(1), 1), day}} : std::nullopt;
        } else if (const auto* reading = std::get_if<journal::Reading>(&action)) {
            if (reading->air) {
                // It was as warm in the hours before: a bed read along with it is read in this air, and what differs is the bed's own (u).
                now_.surroundings.air = {day, reading->air->base()};
                lieInAir(now_.members.stack, reading->air->base());
            }
            if (reading->relativeHumidity) now_.surroundings.humidity = {day, reading->relativeHumidity->fraction()};
        }
        if (std::holds_alternative<journal::Rotate>(action) && now_.members.stack.trays() > 1)
            now_.lifted[now_.members.stack.shapes.front().batch] = {dayAt(day), readyProbability(now_.members.stack, 0, now_.members.shares())};
        // What was read is weighed before the entry takes anything.
        weighEntry(step, before, day);
        if (const auto* event = std::get_if<journal::Event>(&action); event != nullptr && (event->what == "escape" || event->what == "dead worms"))
            loseWorms(now_.members, day, number);
        now_.stepsDone = i + 1;
        journal::StackSettings& settings = now_.surroundings.settings;
        if (now_.stepsDone > 1 && (settings.place != step.after.settings.place || settings.temp != step.after.settings.temp)) { // what was read, was read elsewhere
            now_.surroundings.air = now_.surroundings.humidity = std::nullopt;
            leavePlace(now_.members);
        }
        settings = step.after.settings;
        now_.surroundings.spigot = step.after.spigot;
        now_.surroundings.lidOn = step.after.lidOn;
        if (auto over = deeds_.perform(now_.members.stack, step, history_, day, number)) {
            over->entry = static_cast<std::int64_t>(entries_[step.entry].id);
            over->day = dayAt(day);
            now_.oversized.push_back(*over);
        }
        emptied(action);
        now_.members.forgetBatchesGone();
    }
    for (const MissedFeeding& missed : missed_)
        if (missed.day == day) giveUnwritten(now_.members, missed, deeds_);
}

void StackRun::weighEntry(const journal::Step& step, const journal::Standing& before, int day)
{
    if (now_.members.stack.trays() == 0 || step.incoming) return;
    const journal::Entry& entry = entries_[step.entry];
    for (const Look& look : looksOf(entry.action, step.slot, before)) {
        if (look.slot >= now_.members.stack.trays()) continue;
        if (onLook) onLook(step.entry, look, now_.members);
        const std::vector<Expectation> expected = expectations(now_.members, look, crew_);
        keepCheck(step, look, expected, day);
        noteVerdict(weigh(now_.members, look, expected, day, looksToday_++, crew_, manner_), look, static_cast<std::int64_t>(entry.id), day);
    }
}

/// A value that agrees settles what was odd before in the same place: whoever looked again need not be asked again.
void StackRun::noteVerdict(const Verdict& verdict, const Look& look, std::int64_t entry, int day)
{
    const int batch = look.slot >= 0 ? now_.members.stack.shapes[static_cast<std::size_t>(look.slot)].batch : 0;
    if (verdict.disagrees()) {
        now_.disagreements.push_back({entry, dayAt(day), look.kind, look.slot + 1, look.value, verdict.expected, std::nullopt, batch});
        return;
    }
    std::erase_if(now_.settled, [&](const Disagreement& each) { return daysBetween(*each.settledOn, dayAt(day)) > settledKeptFor; });
    // A slip of the pen is put right within the hour; and a squeeze tells the same as a moisture read.
    const auto isOf = [&](const Disagreement& odd) {
        return odd.batch == batch && (odd.kind == look.kind || (odd.kind == LookKind::moisture && look.kind == LookKind::squeeze));
    };
    for (std::size_t i = now_.disagreements.size(); i-- > 0;)
        if (isOf(now_.disagreements[i])) {
            now_.settled.push_back(now_.disagreements[i]);
            now_.settled.back().settledOn = dayAt(day);
            now_.disagreements.erase(now_.disagreements.begin() + static_cast<std::ptrdiff_t>(i));
        }
}

/// What the household reads against what was expected, kept for advice and its track record.
void StackRun::keepCheck(const journal::Step& step, const Look& look, std::span<const Expectation> expectations, int day)
{
    const bool drained = look.kind == LookKind::drain;
    const auto* harvest = look.kind == LookKind::harvestMass ? std::get_if<journal::Harvest>(&entries_[step.entry].action) : nullptr;
    if (!drained && (harvest == nullptr || !harvest->whole() || !step.batch)) return;
    const Band expected = expectedReading(expectations, now_.members.shares(), now_.members.stack.key, day, looksToday_);
    if (drained) {
        now_.drains.push_back({dayAt(day), look.value, expected});
        return;
    }
    HarvestCheck check{dayAt(day), *step.batch, look.value, expected, std::nullopt, 0.0};
    if (const auto lifted = now_.lifted.find(*step.batch); lifted != now_.lifted.end()) {
        check.liftedOn = lifted->second.on;
        check.readyWhenLifted = lifted->second.ready;
    }
    now_.harvests.push_back(check);
}

/// What ran off through an open spigot is counted anew from here.
void StackRun::emptied(const journal::Action& action)
{
    const auto* drain = std::get_if<journal::Drain>(&action);
    if (!(drain != nullptr && drain->volume) && !std::holds_alternative<journal::Flush>(action)) return;
    for (int i = 0; i < now_.members.stack.members(); ++i) {
        const MemberOf member{now_.members.stack, i};
        now_.members.ranOffBefore[static_cast<std::size_t>(i)] = member.block.stack.ranOff[member.lane];
    }
}

void StackRun::routinesOf(int day)
{
    const int slot = now_.members.stack.topToFeed();
    if (slot < 0) return;
    const auto due = [&](const std::optional<Habit>& habit) { return habit && (day - habit->from) % habit->every == 0; };
    if (due(now_.waterHabit)) pour(now_.members.stack, slot, now_.waterHabit->each);
    if (due(now_.coverHabit))
        if (const auto paper = deeds_.portion(std::string{journal::defaultCover}, Amount{now_.coverHabit->each, Unit::kg}))
            Deeds::giveWithinRoom(now_.members.stack, slot, paper->what, paper->kg, false);
}

void StackRun::passDay(int day)
{
    const DayForcing forcing = now_.surroundings.on(day);
    crew_.each(static_cast<int>(now_.members.stack.blocks.size()), [&](int block) {
        advanceDay(now_.members.stack, block, forcing);
        now_.members.noteReadiness(day, block);
    });
    now_.members.week.note(now_.members.stack);
}

bool StackRun::worthASample(int day) const
{
    return last_ - day <= dailyBack || day % 7 == 0 || looked_[static_cast<std::size_t>(day)] != 0;
}

void StackRun::settleStates(StackEstimate& at, int day) const
{
    for (TrayEstimate& tray : at.slots) {
        if (tray.state == TrayState::drying) continue;
        const auto raised = now_.ready.find(tray.batch);
        if (raised == now_.ready.end() || !raised->second.since()) continue;
        tray.state = TrayState::ready;
        const bool noneSpare = standing() != nullptr && standing()->spare() <= 0 && !standing()->drying; // while one dries, the turn has been done
        if (tray.slot != 1 || !noneSpare || !now_.turn.since()) continue;
        const Day both = std::max(*raised->second.since(), *now_.turn.since());
        if (daysBetween(both, dayAt(day)) >= overdueAfter) tray.state = TrayState::overdue;
    }
}

/// The diary: a turn that is due opens a note; it ends when the act is done, or when a look takes it back.
void StackRun::noteTurn(Day day, int topBatch)
{
    const journal::Standing* at = standing();
    const std::vector<TrayShape>& shapes = now_.members.stack.shapes;
    std::optional<TurnNote> due;
    if (at != nullptr && !at->drying && topBatch != 0 && now_.turn.since()) {
        const int bottom = shapes.front().batch;
        if (at->spare() > 0) due = TurnNote{TurnNote::What::addTray, topBatch, day, std::nullopt, false};
        else if (now_.ready[bottom].since()) due = TurnNote{TurnNote::What::lift, bottom, day, std::nullopt, false};
    }
    TurnNote* open = !now_.turns.empty() && !now_.turns.back().to ? &now_.turns.back() : nullptr;
    if (open != nullptr && due && due->what == open->what && due->batch == open->batch) return;
    if (open != nullptr) {
        open->to = day;
        open->done = open->what == TurnNote::What::addTray ? topBatch != 0 && topBatch != open->batch
                                                           : shapes.empty() || shapes.front().batch != open->batch;
    }
    if (due) now_.turns.push_back(*due);
}

bool StackRun::wasChecked(int day) const
{
    const auto at = static_cast<std::size_t>(day);
    const auto isCheck = [this](const journal::Step& step) { return std::holds_alternative<journal::Check>(entries_[step.entry].action); };
    return std::any_of(history_.steps.begin() + static_cast<std::ptrdiff_t>(firstStepOf_[at]), history_.steps.begin() + static_cast<std::ptrdiff_t>(firstStepOf_[at + 1]), isCheck);
}

void StackRun::noteDay(int day, StackReckoning& result)
{
    const int top = now_.members.stack.topToFeed();
    const int topBatch = top >= 0 ? now_.members.stack.shapes[static_cast<std::size_t>(top)].batch : 0;
    if (topBatch != now_.turnBatch) {
        now_.turn = {};
        now_.turnBatch = topBatch;
    }
    const bool checked = wasChecked(day);
    if (top >= 0) now_.turn.note(now_.members.filledProbability(top), dayAt(day), checked ? 0 : turnKeptFor);
    // Likewise of the tray that is fed: fresh food undoes its readiness, and is eaten.
    for (int slot = 0; slot < now_.members.stack.trays(); ++slot)
        now_.ready[now_.members.stack.shapes[static_cast<std::size_t>(slot)].batch].note(now_.members.readyProbability(slot), dayAt(day), slot == top && !checked ? readyKeptFor : 0);
    noteTurn(dayAt(day), topBatch);
    if (!worthASample(day)) return;
    StackEstimate sample = estimate(now_.members.stack, now_.members.week, now_.members.shares(), dayAt(day), day, crew_);
    settleStates(sample, day);
    if (last_ - day <= dailyBack) foreseeFrom(day, sample);
    result.history.push_back(std::move(sample));
}

void StackRun::foreseeFrom(int day, StackEstimate& sample)
{
    const Course course = courseFrom(day);
    sample.ahead = foresee(now_.members, course, crew_);
    if (!sample.ahead) return;
    const int top = now_.members.stack.topToFeed();
    sample.ahead->turnProbability = top >= 0 ? now_.members.filledProbability(top) : 0.0;
    sample.ahead->turnSince = now_.turn.since();
    // What looks would tell takes months to simulate: once a week, where one could be advised. Of the last day all members are asked (forecast.cpp).
    const TrayState bottom = sample.slots.front().state;
    if (day % 7 == 0 && standing()->spare() <= 0 && (bottom == TrayState::ready || bottom == TrayState::overdue)) sample.ahead->colonyKeptIn60Days = colonyKept(now_.members, course, crew_);
    if (day % 7 == 0 && day != last_ && couldBeLookedAt(sample, day)) sample.ahead->looks = foreseeLooks(now_.members, course, crew_);
}

/// Whether a rule of core/advice/rules_look.cpp could ask for a look on that day.
bool StackRun::couldBeLookedAt(const StackEstimate& sample, int day) const
{
    if (standing()->drying || lookedWithin(lookAgainAfter, day)) return false;
    const TrayState bottom = sample.slots.front().state;
    const bool isReady = bottom == TrayState::ready || bottom == TrayState::overdue;
    const bool nearTurn = sample.ahead->turnSince || sample.ahead->turnLikelyOn;
    const bool noneSpare = standing()->spare() <= 0;
    const bool bits = !isReady && noneSpare && sample.slots.size() >= 2 && nearTurn;
    const bool depth = !sample.ahead->turnSince && nearTurn && (!noneSpare || isReady);
    const bool any = !isReady && day >= lookMonthly && !lookedWithin(lookMonthly, day);
    return bits || depth || any;
}

/// Whether there was a look on this day or the days before it, so many in all.
bool StackRun::lookedWithin(int days, int day) const
{
    const std::size_t from = firstStepOf_[static_cast<std::size_t>(std::max(day - days + 1, 0))];
    const std::size_t to = firstStepOf_[static_cast<std::size_t>(day) + 1];
    return std::any_of(history_.steps.begin() + static_cast<std::ptrdiff_t>(from), history_.steps.begin() + static_cast<std::ptrdiff_t>(to),
                       [this](const journal::Step& step) { return isLook(entries_[step.entry].action); });
}

bool StackRun::worthASnapshot(int day) const
{
    const int age = last_ - day;
    const std::span<const int> wanted = agesOf(options_);
    return std::find(wanted.begin(), wanted.end(), age) != wanted.end();
}

/// Days pass and snapshots age: the oldest stays of those that lie between the same two ages.
void StackRun::thinSnapshots(std::vector<std::shared_ptr<const Snapshot>>& snapshots) const
{
    const std::span<const int> wanted = agesOf(options_);
    const auto between = [&](const std::shared_ptr<const Snapshot>& each) {
        return std::lower_bound(wanted.begin(), wanted.end(), last_ - each->state.day) - wanted.begin();
    };
    std::ptrdiff_t before = -1;
    std::erase_if(snapshots, [&](const auto& each) { return std::exchange(before, between(each)) == between(each); });
}

/// Takes over what holds of an earlier reckoning: snapshots, and the samples up to the last of them that this one would have taken too.
void StackRun::goOnFrom(const StackReckoning& before, StackReckoning& result)
{
    if (before.firstBedding != result.firstBedding || before.asOf > result.asOf) return; // of later days it holds too few samples before this one
    for (const std::shared_ptr<const Snapshot>& each : before.snapshots) {
        const int day = each->state.day;
        if (day > last_ || each->prefix != prefixOf_[static_cast<std::size_t>(day)]) break; // they ascend
        result.snapshots.push_back(each);
    }
    if (result.snapshots.empty()) return;
    now_ = result.snapshots.back()->state;
    for (const StackEstimate& sample : before.history) {
        const int day = daysBetween(result.firstBedding, sample.day);
        if (day > now_.day || !worthASample(day)) continue;
        result.history.push_back(sample);
        if (last_ - day > dailyBack) result.history.back().ahead.reset(); // as a run from the start would have it
    }
    thinSnapshots(result.snapshots);
}

bool StackRun::run(StackReckoning& result, std::stop_token stop, const StackReckoning* before)
{
    result.name = history_.name;
    result.firstBedding = *history_.firstBedding;
    result.asOf = options_.asOf;
    if (before != nullptr) goOnFrom(*before, result);
    for (int day = now_.day + 1; day <= last_; ++day) {
        if (stop.stop_requested()) return false;
        entriesOf(day);
        routinesOf(day);
        passDay(day);
        noteDay(day, result);
        now_.day = day;
        if (worthASnapshot(day)) result.snapshots.push_back(std::make_shared<const Snapshot>(Snapshot{prefixOf_[static_cast<std::size_t>(day)], now_}));
    }
    result.now = result.history.back();
    result.retired = standing()->retired;
    result.oversized = now_.oversized;
    result.disagreements = now_.disagreements;
    std::erase_if(now_.settled, [&](const Disagreement& each) { return daysBetween(*each.settledOn, options_.asOf) > settledKeptFor; });
    result.settled = now_.settled;
    result.drains = now_.drains;
    result.harvests = now_.harvests;
    result.turns = now_.turns;
    result.unwritten = guessUnwritten(now_.members, missed_, result.firstBedding);
    result.effectiveSize = now_.members.weights.effectiveSize();
    result.record = recordOf(entries_, history_, deeds_.materials(), options_.asOf);
    const int top = now_.members.stack.topToFeed();
    result.turnProbability = top >= 0 ? now_.members.filledProbability(top) : 0.0;
    if (!standing()->drying) result.turnSince = now_.turn.since();
    if (!now_.members.stack.shapes.empty()) {
        const auto bottom = now_.ready.find(now_.members.stack.shapes.front().batch);
        if (bottom != now_.ready.end()) result.readySince = bottom->second.since();
    }
    return forecast(result, stop);
}

}
