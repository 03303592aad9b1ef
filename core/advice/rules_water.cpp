#include "core/advice/chance.h"
#include "core/advice/rules.h"
#include "core/advice/words.h"
#include "core/reckoning/tray_contents.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace tierloam::advice {

using reckoning::StackEstimate;
using reckoning::StackReckoning;
using reckoning::TrayEstimate;
using reckoning::TrayState;

namespace {

// Of field capacity; worms eat less below 0.65 and above 1.05 (core/model/process_air.h). Thresholds ours; common practice, no source.
constexpr double dryBelow = 0.65;
constexpr double wetAbove = 1.10;
constexpr Thresholds dryAt{0.5, 0.3};
constexpr Thresholds wetAt{0.8, 0.6};
constexpr Thresholds lookAt{0.2, 0.1}; ///< chance of it from which a handful is squeezed first …
constexpr int lookAgainAfter = 14;   ///< … unless the moisture was read or water poured within these days
constexpr double vagueFrom = 0.4;    ///< of field capacity: where the 90 % range is wider, a squeeze (0.12 of it) comes before water even when it is likely dry
constexpr int daysWet = 3;           ///< what was poured drains within two days; longer is too wet
constexpr int readingHolds = 5;      ///< days for which a squeeze or a moisture reading stands beside the estimate
constexpr double crumblesBelow = 0.45; ///< of field capacity: what crumbles in the hand holds no more
constexpr double leastDepthCm = 1.0; ///< a floor of bedding dries and wets with every breath
constexpr double wateredTo = 0.95;   ///< of field capacity
constexpr double leastPour = 0.1;    ///< L
constexpr double mostPourPerM2 = 12.5; ///< L at once: 2 L on a tray of 0.16 m²; more runs through a dry bed

/// What brings a tray with that share of field capacity to `wateredTo`, in steps of a kitchen jug, so that it does not change with every day.
Amount pourWanting(const TrayEstimate& tray, double share)
{
    if (tray.waterShare.p50 <= 0.0) return wording::volumeAmount(leastPour);
    return wording::volumeAmount(std::max(waterKg(tray) / tray.waterShare.p50 * (wateredTo - share), leastPour));
}

/// Of that what goes in at once.
Amount pourAtOnce(const StackReckoning& stack, const Amount& wanting)
{
    const double most = mostPourPerM2 * stack.record.areaM2;
    return wanting.value * inBaseUnit(wanting.unit) <= most ? wanting : wording::volumeAmount(most);
}

bool squeezed(const StackReckoning& stack, int value)
{
    const auto& record = stack.record;
    return record.lastSqueeze && record.squeeze == value && daysBetween(*record.lastSqueeze, stack.asOf) <= readingHolds;
}

bool wateredSince(const StackReckoning& stack, const std::optional<Day>& day) { return stack.record.lastWater && day && *stack.record.lastWater >= *day; }

/// Moisture in % wet basis as a share of field capacity: what the tray holds of dry matter and can hold of water is the estimate's.
double shareOf(double moisturePct, const TrayEstimate& tray)
{
    const auto perDry = [](double percent) { return percent / std::max(100.0 - percent, 1.0); };
    return tray.moisturePct.p50 > 0.0 ? tray.waterShare.p50 * perDry(moisturePct) / perDry(tray.moisturePct.p50) : tray.waterShare.p50;
}

/// A moisture read in the tray within some days that the estimate could not explain: one that it could it has taken in. Of the whole stack it is told of its
/// `uppermost` tray alone. Who has felt the bed since knows better.
const reckoning::Disagreement* moistureRead(const StackReckoning& stack, const TrayEstimate& tray, bool uppermost)
{
    const auto& all = stack.disagreements;
    const auto latest = std::find_if(all.rbegin(), all.rend(), [&](const reckoning::Disagreement& each) {
        return each.kind == reckoning::LookKind::moisture && (each.batch == 0 ? uppermost : each.batch == tray.batch); // slots change with a lift
    });
    if (latest == all.rend() || daysBetween(latest->day, stack.asOf) > readingHolds || stack.record.lastMoistureLook > latest->day) return nullptr;
    return &*latest;
}

/// A meter read with the last squeeze, or since, says the contrary of it: which of the two is wrong only another handful tells.
bool meterDenies(const StackReckoning& stack, const TrayEstimate& tray)
{
    const auto& record = stack.record;
    if (!record.lastMoistureRead || !record.lastSqueeze || *record.lastMoistureRead < *record.lastSqueeze) return false;
    const double share = shareOf(record.moistureReadPct, tray);
    return record.squeeze == 1 ? share >= dryBelow : record.squeeze == 5 && share <= wetAbove;
}

QString howWet(const TrayEstimate& tray)
{
    return say(QT_TRANSLATE_NOOP("Advice", "water %1 of what the tray holds (%2 to %3), moisture %4 %"))
        .arg(percent(tray.waterShare.p50), percent(tray.waterShare.p05), percent(tray.waterShare.p95), number(tray.moisturePct.p50, 0));
}

/// Whether nobody has felt the bed or watered it for so long that a squeeze may be asked for.
bool mayAskForSqueeze(const StackReckoning& stack)
{
    const auto within = [&](const std::optional<Day>& day) { return day && daysBetween(*day, stack.asOf) < lookAgainAfter; };
    return !within(stack.record.lastMoistureLook) && !within(stack.record.lastWater);
}

bool isVague(const reckoning::Band& share) { return share.p95 - share.p05 > vagueFrom; }

/// Dry beyond doubt on one of the evenings before, and nothing poured or felt since: that its range is wider today makes it no wetter.
bool wasClear(const StackReckoning& stack, int batch, const ChanceOn& dry)
{
    const Day known = std::max(stack.record.lastMoistureLook, stack.record.lastWater).value_or(stack.firstBedding);
    return std::any_of(stack.history.begin(), stack.history.end(), [&](const StackEstimate& day) {
        const TrayEstimate* at = day.day > known && daysBetween(day.day, stack.asOf) <= lookAgainAfter ? trayOfBatch(day, batch) : nullptr;
        return at != nullptr && !isVague(at->waterShare) && dry(day).value_or(0.0) >= dryAt.raise;
    });
}

/// How fast a bed dries is known to a factor of two before anybody has felt it, and a dry top tray starves the colony with food all round.
void squeezeFirst(const StackReckoning& stack, const TrayEstimate& tray, double chance, Severity severity, std::vector<Advice>& to)
{
    // Eating less than a third of what they could, or fewer by half already: it presses.
    const QString fewer = dwindledText(stack);
    const bool presses = severity != Severity::hint && (tray.waterShare.p50 < crumblesBelow || !fewer.isEmpty());
    add(to, stack, Code::tooDry, presses ? Severity::concern : severity, tray.slot, stack.asOf,
        severity == Severity::hint ? say(QT_TRANSLATE_NOOP("Advice", "Squeeze a handful of the bed: it may be dry"))
                                   : say(QT_TRANSLATE_NOOP("Advice", "Squeeze a handful of the bed, and water it if it crumbles: it is probably dry")),
        withMore(withMore(withMore(howWet(tray), say(QT_TRANSLATE_NOOP("Advice", "chance that it is too dry within a week: %1")).arg(percent(chance))), fewer),
                 say(QT_TRANSLATE_NOOP("Advice", "if it crumbles, pour %1, else nothing for two weeks")).arg(wording::amountText(pourAtOnce(stack, pourWanting(tray, crumblesBelow))))));
    to.back().look = reckoning::LookKind::squeeze;
}

/// Neither water nor paper on one of two readings that deny each other.
void squeezeAgain(const StackReckoning& stack, const TrayEstimate& tray, Code code, std::vector<Advice>& to)
{
    const char* const why = code == Code::tooDry ? QT_TRANSLATE_NOOP("Advice", "it crumbled when it was squeezed, and moisture was read as %1 %; %2")
                                                 : QT_TRANSLATE_NOOP("Advice", "it ran when it was squeezed, and moisture was read as %1 %; %2");
    add(to, stack, code, Severity::due, tray.slot, stack.asOf, say(QT_TRANSLATE_NOOP("Advice", "Squeeze another handful of the bed: two readings deny each other")),
        say(why).arg(number(stack.record.moistureReadPct, 0), howWet(tray)));
    to.back().look = reckoning::LookKind::squeeze;
}

void tooDry(const StackReckoning& stack, const TrayEstimate& tray, std::vector<Advice>& to)
{
    const auto onDay = [batch = tray.batch](const StackEstimate& day) -> std::optional<double> {
        const TrayEstimate* at = trayOfBatch(day, batch);
        return at != nullptr ? chanceBelow(at->waterShare, dryBelow) : std::nullopt;
    };
    const auto chance = [&onDay](const StackEstimate& day) {
        std::optional<double> dry = onDay(day);
        // What it comes to within a week counts as well, on the days before as today.
        if (dry && day.ahead) dry = std::max(*dry, chanceBelow(day.ahead->topWaterIn7Days, dryBelow).value_or(0.0));
        return dry;
    };
    std::optional<double> now = onDay(stack.now);
    if (!now) return;
    if (!stack.forecast.days.empty() && daysBetween(stack.asOf, stack.forecast.days.front().day) <= 7) now = std::max(*now, onDay(stack.forecast.days.front()).value_or(0.0));
    const bool felt = squeezed(stack, 1) && !wateredSince(stack, stack.record.lastSqueeze);
    const bool crumbled = felt && !meterDenies(stack, tray);
    const reckoning::Disagreement* measured = moistureRead(stack, tray, true);
    if (measured != nullptr && (wateredSince(stack, measured->day) || shareOf(measured->value, tray) >= dryBelow)) measured = nullptr;
    const bool read = crumbled || measured != nullptr;
    const bool dry = stands(stack, chance, dryAt, now);
    if (!read && (!dry || (isVague(tray.waterShare) && !wasClear(stack, tray.batch, onDay)))) {
        if (felt) return squeezeAgain(stack, tray, Code::tooDry, to);
        const bool ask = mayAskForSqueeze(stack);
        if (ask && (dry || stands(stack, chance, lookAt, now))) squeezeFirst(stack, tray, *now, dry ? Severity::due : Severity::hint, to);
        if (ask || !dry) return;
    }
    const double share = std::min({tray.waterShare.p50, crumbled ? crumblesBelow : tray.waterShare.p50, measured != nullptr ? shareOf(measured->value, tray) : tray.waterShare.p50});
    const Amount wanting = pourWanting(tray, share), pour = pourAtOnce(stack, wanting);
    const Severity severity = onDay(stack.now).value_or(0.0) >= dryAt.raise || read ? Severity::concern : Severity::due;
    QString reason = howWet(tray);
    if (crumbled) reason = withMore(reason, say(QT_TRANSLATE_NOOP("Advice", "it crumbled when it was squeezed")));
    if (measured != nullptr) reason = withMore(reason, say(QT_TRANSLATE_NOOP("Advice", "moisture was read as %1 %")).arg(number(measured->value, 0)));
    if (!(pour == wanting)) reason = withMore(reason, say(QT_TRANSLATE_NOOP("Advice", "in all %1 are wanting: more at once runs through")).arg(wording::amountText(wanting)));
    add(to, stack, Code::tooDry, severity, tray.slot, stack.asOf, say(QT_TRANSLATE_NOOP("Advice", "Pour %1 of water over the bed")).arg(wording::amountText(pour)), reason);
    to.back().litres = pour.value * inBaseUnit(pour.unit);
}

void tooWet(const StackReckoning& stack, const TrayEstimate& tray, bool highest, std::vector<Advice>& to)
{
    const auto onDay = [batch = tray.batch](const StackEstimate& day) -> std::optional<double> {
        const TrayEstimate* at = trayOfBatch(day, batch);
        return at != nullptr ? chanceAbove(at->waterShare, wetAbove) : std::nullopt;
    };
    // The least of the last days: a bed that drains is right again within two.
    const auto chance = [&](const StackEstimate& day) -> std::optional<double> {
        std::optional<double> least = onDay(day);
        for (int back = 1; least && back < daysWet; ++back) {
            const StackEstimate* before = stack.on(day.day - std::chrono::days{back});
            const std::optional<double> then = before != nullptr ? onDay(*before) : std::nullopt;
            least = then ? std::optional{std::min(*least, *then)} : std::nullopt;
        }
        return least;
    };
    const bool felt = highest && squeezed(stack, 5);
    const bool ran = felt && !meterDenies(stack, tray);
    const reckoning::Disagreement* measured = moistureRead(stack, tray, highest);
    if (measured != nullptr && shareOf(measured->value, tray) <= wetAbove) measured = nullptr;
    if (!ran && measured == nullptr && !stands(stack, chance, wetAt)) {
        if (felt) squeezeAgain(stack, tray, Code::tooWet, to);
        return;
    }
    QString reason = howWet(tray);
    if (ran) reason = withMore(reason, say(QT_TRANSLATE_NOOP("Advice", "it ran when it was squeezed")));
    if (measured != nullptr) reason = withMore(reason, say(QT_TRANSLATE_NOOP("Advice", "moisture was read as %1 %")).arg(number(measured->value, 0)));
    add(to, stack, Code::tooWet, Severity::concern, tray.slot, stack.asOf,
        say(QT_TRANSLATE_NOOP("Advice", "Mix dry shredded paper into the bed, and do not water")), reason);
}

}

/// Worms breathe through a wet skin: a dry bed stops them, a ponded one drowns what they breathe.
void rulesOfWater(const StackReckoning& stack, std::vector<Advice>& to)
{
    const TrayEstimate* top = trayToFeed(stack);
    bool highest = true; // of those that hold enough to be told of
    for (auto tray = stack.now.slots.rbegin(); tray != stack.now.slots.rend(); ++tray) {
        if (tray->state == TrayState::drying || tray->depthCm < leastDepthCm) continue;
        if (&*tray == top) tooDry(stack, *tray, to); // water reaches the others through it
        tooWet(stack, *tray, std::exchange(highest, false), to);
    }
}

}
