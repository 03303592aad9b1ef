#include "core/advice/diary.h"

#include "core/reckoning/care.h"
#include "core/reckoning/looks.h"
#include "core/reckoning/next_look.h"

#include <algorithm>
#include <utility>

namespace tierloam::advice {

namespace {

constexpr int daysBack = 90;         ///< for which there is an estimate of each day
constexpr int longestReplay = 60;    ///< days that a rule looks back

/// Of these a day's estimates, what it foresaw and the journal up to it decide.
bool isOfTheDay(const Advice& advice)
{
    switch (advice.code) {
    case Code::feedDue:
    case Code::overfed:
    case Code::hungry:
    case Code::trayFull:
    case Code::lowCarbon:
    case Code::sumpFull:
    case Code::tooWet:
    case Code::tooDry:
    case Code::drainageLow:
    case Code::drainageHigh:
    case Code::heat:
    case Code::cold:
    case Code::dryingDone:
    case Code::dryingLong:
    case Code::lookNext:
    case Code::recordDisagrees:
    case Code::staleRecord: return true;
    default: return false;
    }
}

/// What the due list of that day had for later: a feeding for its day, a tray that fills up for the week before.
bool isYetToCome(const Advice& advice, Day day, Day today)
{
    // A feeding is told on the morning of its day, which the evening before foresaw.
    const Day told = std::min(day + std::chrono::days{1}, today);
    return (advice.code == Code::feedDue && advice.on > told) || (advice.code == Code::trayFull && advice.on > day + std::chrono::days{7});
}

template <class... Actions>
bool isOneOf(const journal::Action& action) { return (std::holds_alternative<Actions>(action) || ...); }

/// Whether the entry reads what was to be looked for.
bool reads(const Advice& advice, const journal::Entry& entry, const journal::Step& step)
{
    const std::vector<reckoning::Look> looks = reckoning::looksOf(entry.action, step.slot, step.after);
    return std::any_of(looks.begin(), looks.end(), [&](const reckoning::Look& look) { return look.kind == advice.look && (!advice.slot || look.slot + 1 == *advice.slot); });
}

/// To a place that swings less with the season, or with a usual temperature further in the direction wanted (+1: warmer): a reading changes nothing.
bool movesIt(const journal::Step& step, const journal::Standing* before, int direction)
{
    if (before == nullptr) return false;
    const journal::StackSettings &was = before->settings, &is = step.after.settings;
    const auto shelter = [](journal::Place place) { return place == journal::Place::indoors ? 2 : place == journal::Place::garage ? 1 : 0; };
    if (shelter(is.place) < shelter(was.place)) return false;
    const double warmer = direction * (is.temp.base() - was.temp.base());
    return warmer > 0.0 || (warmer == 0.0 && is.place != was.place) || shelter(is.place) > shelter(was.place);
}

/// Whether the entry does what was advised.
bool does(const Advice& advice, const journal::Entry& entry, const journal::Step& step, const journal::Standing* before, const std::vector<PutOff>& kept)
{
    using namespace journal;
    // Noted from the due list, of what leaves no figure. Notes of older releases, and of a journal that came from elsewhere, are known by their words alone.
    if (std::holds_alternative<Note>(entry.action)) return isNotedDone(kept, advice, step.day) || entry.note.find(advice.text) != std::string::npos;
    switch (advice.code) {
    case Code::feedDue:
    case Code::hungry: return isOneOf<Feed>(entry.action);
    case Code::overfed: return isOneOf<Cover, Check>(entry.action);
    case Code::trayFull: return isOneOf<Bed, Rotate>(entry.action);
    case Code::lowCarbon: return isOneOf<Cover>(entry.action);
    case Code::sumpFull: return isOneOf<Drain, Flush>(entry.action) || (advice.look && reads(advice, entry, step));
    case Code::tooWet: return isOneOf<Cover, Bed>(entry.action);
    case Code::tooDry: return isOneOf<Water>(entry.action) || (advice.look && reads(advice, entry, step));
    case Code::drainageLow: return isOneOf<Drain, Flush, Water>(entry.action);
    case Code::drainageHigh: return isOneOf<Drain, Flush>(entry.action);
    case Code::heat: return isOneOf<Setup>(entry.action) && movesIt(step, before, -1);
    case Code::cold: return isOneOf<Setup>(entry.action) && movesIt(step, before, 1);
    case Code::dryingDone:
    case Code::dryingLong: return isOneOf<Harvest>(entry.action);
    case Code::recordDisagrees: return advice.wormsMissing && isOneOf<Stock, Move>(entry.action); // an odd value: doneOn is when it was settled
    case Code::staleRecord: return true;
    case Code::lookNext: return reads(advice, entry, step);
    default: return false;
    }
}

/// The odd values that nobody had settled by then.
std::vector<reckoning::Disagreement> oddBy(Day day, const reckoning::StackReckoning& stack)
{
    std::vector<reckoning::Disagreement> odd;
    for (const auto* all : {&stack.settled, &stack.disagreements})
        std::copy_if(all->begin(), all->end(), std::back_inserter(odd), [day](const reckoning::Disagreement& each) { return each.day <= day && (!each.settledOn || *each.settledOn > day); });
    std::stable_sort(odd.begin(), odd.end(), [](const auto& a, const auto& b) { return a.day < b.day; });
    return odd;
}

/// The same piece of advice on another day; one odd value is not another, nor one look.
bool sameAs(const Advice& a, const Advice& b)
{
    const bool sameLook = a.code != Code::lookNext || (a.look == b.look && a.slot == b.slot);
    return a.code == b.code && a.entry == b.entry && a.wormsMissing == b.wormsMissing && sameLook;
}

/// The day on which the odd value that was told was found to be settled.
std::optional<Day> settledOn(const Advice& told, const reckoning::StackReckoning& stack)
{
    const auto settled = std::find_if(stack.settled.begin(), stack.settled.end(), [&](const reckoning::Disagreement& each) { return each.entry == told.entry; });
    return settled != stack.settled.end() ? settled->settledOn : std::nullopt;
}

/// What the due list had of the days to come.
reckoning::Forecast forecastOf(const reckoning::StackEstimate& on, const reckoning::Record& record)
{
    reckoning::Forecast forecast;
    forecast.feedLowKg = forecast.feedUsualKg = forecast.feedHighKg = forecast.feedNowKg = record.usualFeedKg; // the limits of that week are not kept
    if (!on.ahead) return forecast;
    const reckoning::Foresight& seen = *on.ahead;
    for (const auto& [days, bed] : {std::pair{7, seen.bedIn7Days}, std::pair{14, seen.bedIn14Days}}) {
        reckoning::StackEstimate week;
        week.day = on.day + std::chrono::days{days};
        week.binTempC = bed;
        forecast.days.push_back(std::move(week));
    }
    forecast.readyAndTurnWithin14Days = seen.readyAndTurnWithin14Days;
    forecast.airLowWithin14Days = seen.airLowWithin14Days;
    forecast.sumpFullOn = seen.sumpFullOn;
    forecast.topTrayFullOn = seen.topTrayFullOn;
    forecast.drainedExpectedLPerWeek = seen.drainedLPerWeek;
    forecast.roomTopTrayFreshKg = seen.roomTopTrayFreshKg;
    forecast.ownWarmthK = seen.ownWarmthK;
    forecast.usualCarbonKg = seen.usualCarbonKg;
    forecast.usualNitrogenKg = seen.usualNitrogenKg;
    return forecast;
}

/// What looks would tell: as it was foreseen in the week up to the day. One lifted tray later it is of another tray.
class LooksByThen {
public:
    void tell(reckoning::StackReckoning& then, const reckoning::StackReckoning& stack)
    {
        then.nextLooks.clear();
        then.turnLook.reset();
        then.bitsRule.reset();
        then.turnProbability = 0.0;
        then.turnSince.reset();
        then.readySince.reset();
        if (then.now.slots.empty()) return;
        reckoning::TrayEstimate& bottom = then.now.slots.front();
        if (then.asOf == stack.asOf) {
            give(then, {bottom.readyOn, stack.forecast.turnOn, stack.nextLooks, stack.turnLook, stack.bitsRule});
            then.turnProbability = stack.turnProbability;
            then.turnSince = stack.turnSince;
            then.readySince = stack.readySince;
            then.forecast.turnLikelyOn = stack.forecast.turnLikelyOn;
            return;
        }
        const auto& ahead = then.now.ahead;
        if (ahead && ahead->looks) last_ = Kept{*ahead->looks, then.asOf, bottom.batch};
        if (ahead) {
            then.turnProbability = ahead->turnProbability;
            then.turnSince = ahead->turnSince;
            then.forecast.turnLikelyOn = ahead->turnLikelyOn;
        }
        if (bottom.state == reckoning::TrayState::ready || bottom.state == reckoning::TrayState::overdue) then.readySince = then.asOf;
        if (last_ && bottom.batch == last_->bottom && daysBetween(last_->day, then.asOf) < reckoning::lookAgainAfter) give(then, last_->seen);
    }

private:
    static void give(reckoning::StackReckoning& then, const reckoning::LookForesight& seen)
    {
        then.now.slots.front().readyOn = seen.readyOn;
        then.forecast.turnOn = seen.turnOn;
        then.nextLooks = seen.nextLooks;
        then.turnLook = seen.turnLook;
        then.bitsRule = seen.bitsRule;
    }
    struct Kept { reckoning::LookForesight seen; Day day; int bottom; };
    std::optional<Kept> last_;
};

/// The journal's part up to a day.
journal::StackHistory until(const journal::StackHistory& history, Day day)
{
    journal::StackHistory past = history;
    past.steps.erase(std::find_if(past.steps.begin(), past.steps.end(), [day](const journal::Step& step) { return step.day > day; }), past.steps.end());
    return past;
}

}

std::vector<DiaryLine> diaryOf(const reckoning::StackReckoning& stack, const journal::Entries& entries, const journal::StackHistory& history, const materials::Table& materials,
                               const std::vector<PutOff>& kept)
{
    std::vector<DiaryLine> lines;
    reckoning::StackReckoning then;
    then.name = stack.name;
    then.firstBedding = stack.firstBedding;
    LooksByThen looks;
    for (const reckoning::StackEstimate& sample : stack.history) {
        const int ago = daysBetween(sample.day, stack.asOf);
        if (ago > daysBack + longestReplay || sample.day > stack.asOf) continue;
        then.history.push_back(sample);
        if (ago > daysBack) continue;
        then.asOf = sample.day;
        then.now = sample;
        const journal::StackHistory past = until(history, sample.day);
        if (past.steps.empty()) continue;
        then.record = reckoning::recordOf(entries, past, materials, sample.day);
        then.forecast = forecastOf(sample, then.record);
        then.drains.clear();
        std::copy_if(stack.drains.begin(), stack.drains.end(), std::back_inserter(then.drains), [&](const reckoning::DrainCheck& drain) { return drain.day <= sample.day; });
        then.disagreements = oddBy(sample.day, stack);
        looks.tell(then, stack);
        std::vector<Advice> said = adviceFor(then);
        std::erase_if(said, [&](const Advice& each) { return !isOfTheDay(each) || isYetToCome(each, sample.day, stack.asOf); });
        for (DiaryLine& line : lines) {
            if (line.to) continue;
            const auto still = std::find_if(said.begin(), said.end(), [&](const Advice& each) { return sameAs(each, line.advice); });
            if (still == said.end()) line.to = std::max(sample.day, line.from);
            else said.erase(still);
        }
        for (Advice& each : said) {
            const Day from = each.code == Code::feedDue ? std::max(sample.day, each.on) : sample.day;
            lines.push_back({std::move(each), from, std::nullopt, std::nullopt});
        }
    }
    for (DiaryLine& line : lines) {
        const Day end = line.to.value_or(stack.asOf);
        if (line.advice.entry) line.doneOn = settledOn(line.advice, stack);
        const journal::Standing* before = nullptr;
        for (const journal::Step& step : history.steps) {
            const journal::Standing* stood = std::exchange(before, &step.after);
            if (line.doneOn || step.incoming || step.day < line.from || step.day > end || !does(line.advice, entries[step.entry], step, stood, kept)) continue;
            line.doneOn = step.day;
            break;
        }
    }
    return lines;
}

}
