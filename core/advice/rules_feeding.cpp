#include "core/advice/chance.h"
#include "core/advice/food_limit.h"
#include "core/advice/rules.h"
#include "core/advice/too_early.h"
#include "core/advice/words.h"

#include <cmath>

namespace tierloam::advice {

using reckoning::leastWorthGiving;
using reckoning::StackReckoning;
using reckoning::TrayEstimate;

namespace {

constexpr int fullWithinDays = 7;
constexpr int keptFullWithinDays = 10;    ///< once raised, it stays until the day is further off than this
constexpr double roomAgain = 1.25;        ///< of the usual week's food
constexpr int unfedFor = 28;              ///< days; ours
constexpr double muchCarbon = 70.0;       ///< C:N, twice what is wanted
constexpr double noRoomKg = 0.005;        ///< less is told as none
constexpr double rimCm = 1.0;             ///< kept free under the rim

/// Raised where the usual week no longer fits, withdrawn where a quarter more does. The days before by their depth: what a centimetre under the
/// rim takes today it took then.
bool noRoomForAWeek(const StackReckoning& stack, const TrayEstimate& top, double room)
{
    const double usual = std::max(leastWorthGiving, stack.forecast.feedUsualKg);
    const double free = stack.record.trayHeightCm - rimCm - top.depthCm;
    const auto chanceOf = [usual](double kg) { return kg < usual ? 1.0 : std::clamp(1.0 - (kg / usual - 1.0) / (roomAgain - 1.0) * 0.5, 0.0, 0.99); };
    const auto chance = [&](const reckoning::StackEstimate& day) -> std::optional<double> {
        const TrayEstimate* at = trayOfBatch(day, top.batch);
        if (at == nullptr || free <= 0.1) return std::nullopt;
        return chanceOf(room / free * (stack.record.trayHeightCm - rimCm - at->depthCm));
    };
    return stands(stack, chance, {1.0, 0.5}, chanceOf(room));
}

/// Foreseen within a week on two evenings running: a week's food is laid in at once, so that the day jumps by weeks from one evening to the next.
/// Taken back when two evenings have it more than ten days off.
bool fillsUp(const StackReckoning& stack, int batch)
{
    const auto near = [](const std::optional<Day>& full, Day then) { return nearness(full, then, fullWithinDays, keptFullWithinDays).value_or(0.0); };
    // That of the tray which is fed today: another one was full, and is no longer on top.
    const auto onEvening = [&](Day evening) {
        const reckoning::StackEstimate* day = stack.on(evening);
        return day != nullptr && day->day == evening && day->ahead && trayOfBatch(*day, batch) != nullptr ? near(day->ahead->topTrayFullOn.p50, evening) : 0.0;
    };
    const auto yesterday = [&](Day evening) { return onEvening(evening - std::chrono::days{1}); };
    const auto before = [&](const reckoning::StackEstimate& day) { return std::optional{(onEvening(day.day) + yesterday(day.day)) / 2.0}; };
    return stands(stack, before, {1.0, 0.0}, (near(stack.forecast.topTrayFullOn.p50, stack.asOf) + yesterday(stack.asOf)) / 2.0);
}

/// How far the tray being fed is from full.
struct Fullness {
    bool nothingFits = false;        ///< food is due, or was never given, and not even 50 g of it fit, whatever filled the tray
    bool now = false;                ///< the usual week does not fit
    bool soon = false;
    bool told() const { return now || soon; }
};

Fullness fullnessOf(const StackReckoning& stack, const TrayEstimate& top)
{
    Fullness full;
    if (!stack.forecast.roomTopTrayFreshKg) return full;
    const double room = *stack.forecast.roomTopTrayFreshKg;
    // What lies there sinks until it is fed again: full is what does not take the next feeding either.
    const bool next = stack.forecast.topTrayFullOn.p50 && daysBetween(stack.asOf, *stack.forecast.topTrayFullOn.p50) <= keptFullWithinDays;
    const bool due = !stack.record.lastFeed || daysBetween(*stack.record.lastFeed, stack.asOf) >= stack.record.medianFeedGapDays;
    full.nothingFits = due && room < leastWorthGiving;
    full.now = (next || full.nothingFits) && noRoomForAWeek(stack, top, room);
    full.soon = fillsUp(stack, top.batch);
    return full;
}

/// Bedding is food too, a poor one: of a bed that has got nothing else for weeks and holds far too much carbon that is worth a word.
QString ofPaperAlone(const StackReckoning& stack, const TrayEstimate& top)
{
    const Day fed = stack.record.lastFeed.value_or(stack.firstBedding);
    if (daysBetween(fed, stack.asOf) < unfedFor || top.cnRatio.p50 < muchCarbon) return {};
    return say(QT_TRANSLATE_NOOP("Advice", "C:N of the bed %1, 25 to 35 is wanted: paper and bedding alone hardly feed them")).arg(number(top.cnRatio.p50, 0));
}

/// Why no more than the limit is borne.
QString boundText(const StackReckoning& stack)
{
    switch (boundOf(stack)) {
    case FoodBound::room: return say(QT_TRANSLATE_NOOP("Advice", "more does not fit under the rim"));
    case FoodBound::rate: return say(QT_TRANSLATE_NOOP("Advice", "%1 kg a day and m² are the most")).arg(number(reckoning::mostFreshPerM2AndDay, 1));
    case FoodBound::worms: return say(QT_TRANSLATE_NOOP("Advice", "half of the worms' weight a day is the most, and they are about %1")).arg(massText(stack.now.colonyKg.p50));
    case FoodBound::warmth: return say(QT_TRANSLATE_NOOP("Advice", "with more the chance of a bed above %1 is above 5 %")).arg(temperatureText(hotAbove));
    case FoodBound::air: break;
    }
    return say(QT_TRANSLATE_NOOP("Advice", "with more the chance of too little air is above 5 %"));
}

/// Both of one kind.
bool isLess(const Amount& a, const Amount& b) { return a.value * inBaseUnit(a.unit) < b.value * inBaseUnit(b.unit) - 1e-9; }

void feedDue(const StackReckoning& stack, const TrayEstimate& top, bool tight, std::vector<Advice>& to)
{
    const Day since = stack.record.lastFeed.value_or(stack.firstBedding);
    const int gap = std::max(1, static_cast<int>(std::lround(stack.record.medianFeedGapDays)));
    const Day usually = stack.record.lastFeed ? since + std::chrono::days{gap} : since;
    // What falls due while nobody is there is given the day before they leave.
    const auto ahead = awaysAhead(stack.record);
    const auto leave = std::find_if(ahead.begin(), ahead.end(), [&](const auto& away) { return usually >= away.first && usually <= away.second; });
    const Day due = leave != ahead.end() ? leave->first - std::chrono::days{1} : usually;
    // One usual feeding, the same that the shelf's button writes down, within what 5 % of the members at most do not bear this week and what fits. Where
    // nothing is usual yet it is what keeps the worms: the most that is borne is much for a new bed.
    const double limit = foodLimitOn(stack, std::max(due, stack.asOf));
    const double usualKg = usualFeedingKg(stack);
    const bool borne = reckoning::isBorne(usualKg, limit);
    const bool more = borne && getsTooLittle(stack);
    const double amount = more ? std::min(std::max(usualKg, stack.forecast.feedLowKg * std::min(gap, 7) / 7.0), limit) : borne ? usualKg : usualKg > 0.0 ? limit : keepsThemKg(stack, limit);
    if (due > stack.asOf + std::chrono::days{feedToldAhead} || amount < leastWorthGiving) return;
    QString reason = stack.record.lastFeed && since >= stack.asOf
        ? say(QT_TRANSLATE_NOOP("Advice", "fed today, usually every %1; in the tray %2 not yet eaten, dry")).arg(days(gap), massText(top.unprocessedDryKg.p50))
        : stack.record.lastFeed && usualKg <= 0.0
        ? say(QT_TRANSLATE_NOOP("Advice", "last fed %1 ago; in the tray %2 not yet eaten, dry")).arg(days(daysBetween(since, stack.asOf)), massText(top.unprocessedDryKg.p50))
        : stack.record.lastFeed
        ? say(QT_TRANSLATE_NOOP("Advice", "last fed %1 ago, usually every %2; in the tray %3 not yet eaten, dry"))
              .arg(days(daysBetween(since, stack.asOf)), days(gap), massText(top.unprocessedDryKg.p50))
        : stack.forecast.feedLowKg >= stack.forecast.feedHighKg ? say(QT_TRANSLATE_NOOP("Advice", "not fed yet; %1")).arg(boundText(stack))
        : say(QT_TRANSLATE_NOOP("Advice", "not fed yet; %1 a week keep the worms that are in it")).arg(mostFoodText(stack, stack.forecast.feedLowKg)); // as it is told to be given
    // The same limit as in the feeding plan and beside the feeding button.
    const QString most = mostFoodText(stack, limit);
    const QString usual = wording::amountText(stack.record.usualFeed);
    if (usualKg > 0.0 && !borne)
        reason = withMore(reason, limit < stack.forecast.feedHighKg
            ? say(QT_TRANSLATE_NOOP("Advice", "of the usual feeding of %1 only %2: %3 were given within 7 days, and %4 kg a day and m² are the most")).arg(usual, most, foodText(stack, fedInTheWeekOf(stack, std::max(due, stack.asOf))), number(reckoning::mostFreshPerM2AndDay, 1))
            : say(QT_TRANSLATE_NOOP("Advice", "of the usual feeding of %1 only %2 are borne this week: %3")).arg(usual, most, boundText(stack)));
    if (more)
        reason = withMore(reason, say(QT_TRANSLATE_NOOP("Advice", "the worms assimilate %1 of what they need; %2 a week keep as many as there are")).arg(percent(stack.now.ration.p50), mostFoodText(stack, stack.forecast.feedLowKg)));
    reason = withMore(reason, ofPaperAlone(stack, top));
    const bool noMore = !isLess(stack.record.usualFeed, mostOfFood(stack, limit)); // one usual feeding is all that the week takes
    add(to, stack, Code::feedDue, Severity::due, slotForFood(stack), due,
        more ? say(QT_TRANSLATE_NOOP("Advice", "Feed %1 rather than the usual %2")).arg(mostFoodText(stack, amount), usual)
        : borne && tight && noMore ? say(QT_TRANSLATE_NOOP("Advice", "Feed at most %1 this week")).arg(usual)
        : borne && tight         ? say(QT_TRANSLATE_NOOP("Advice", "Feed at most %1 at once and %2 this week")).arg(usual, most)
        : !borne && amount < limit ? say(QT_TRANSLATE_NOOP("Advice", "Feed %1, at most %2 this week")).arg(mostFoodText(stack, amount), most)
        : borne && noMore ? say(QT_TRANSLATE_NOOP("Advice", "Feed the usual %1, and no more this week")).arg(usual)
        : borne           ? say(QT_TRANSLATE_NOOP("Advice", "Feed the usual %1, at most %2 this week")).arg(usual, most)
                          : say(QT_TRANSLATE_NOOP("Advice", "Feed at most %1 this week")).arg(most), reason);
    to.back().kg = amount;
    to.back().food = Food::give;
}

void trayFull(const StackReckoning& stack, const TrayEstimate& top, const Fullness& full, std::vector<Advice>& to)
{
    if (!full.told()) return;
    const double room = *stack.forecast.roomTopTrayFreshKg;
    const auto& on = stack.forecast.topTrayFullOn.p50;
    const bool nothingFits = full.nothingFits || room < leastWorthGiving; // to feed less is no way then, due or not
    const bool spare = stack.record.spareTrays > 0;
    const bool alone = stack.now.slots.size() == 1 && !spare; // nothing is lifted where one tray is all there is
    const bool between = readyBetween(stack) != nullptr; // where the bottom tray is not what is taken
    const bool may = mayBeLifted(stack);
    const QString soonText = alone           ? say(QT_TRANSLATE_NOOP("Advice", "The only tray fills up: feed less until its castings are taken"))
        : isDrying(stack) ? say(QT_TRANSLATE_NOOP("Advice", "The top tray fills up: feed less until the castings above are taken"))
        : spare                              ? say(QT_TRANSLATE_NOOP("Advice", "The top tray fills up: add a tray, or feed less"))
        : between                            ? say(QT_TRANSLATE_NOOP("Advice", "The top tray fills up: feed less until castings are taken"))
        : may                                ? say(QT_TRANSLATE_NOOP("Advice", "The top tray fills up: lift the bottom tray, which is ready, or feed less"))
                                             : say(QT_TRANSLATE_NOOP("Advice", "The top tray fills up: feed less until the bottom tray is lifted"));
    const QString noneText = alone ? say(QT_TRANSLATE_NOOP("Advice", "The only tray is full: no food fits until its castings are taken"))
        : isDrying(stack)          ? say(QT_TRANSLATE_NOOP("Advice", "The top tray is full: no food fits until the castings above are taken"))
        : spare                    ? say(QT_TRANSLATE_NOOP("Advice", "The top tray is full: add a tray, then feed"))
        : between                  ? say(QT_TRANSLATE_NOOP("Advice", "The top tray is full: no food fits until castings are taken"))
        : may                      ? say(QT_TRANSLATE_NOOP("Advice", "The top tray is full: lift the bottom tray, which is ready; no food fits until then"))
                                   : say(QT_TRANSLATE_NOOP("Advice", "The top tray is full: no food fits until the bottom tray is lifted"));
    const QString remedy = nothingFits ? noneText
        : !full.now        ? soonText
        : alone            ? say(QT_TRANSLATE_NOOP("Advice", "The only tray is full: feed less until its castings are taken"))
        : isDrying(stack)  ? say(QT_TRANSLATE_NOOP("Advice", "The top tray is full: feed less until the castings above are taken"))
        : spare            ? say(QT_TRANSLATE_NOOP("Advice", "The top tray is full: add a tray, or feed less"))
        : between          ? say(QT_TRANSLATE_NOOP("Advice", "The top tray is full: feed less until castings are taken"))
        : may              ? say(QT_TRANSLATE_NOOP("Advice", "The top tray is full: lift the bottom tray, which is ready, or feed less"))
                           : say(QT_TRANSLATE_NOOP("Advice", "The top tray is full: feed less until the bottom tray is lifted"));
    const QString height = lengthText(stack.record.trayHeightCm);
    QString why = top.depthCm > stack.record.trayHeightCm ? say(QT_TRANSLATE_NOOP("Advice", "by the estimate it is heaped above its %1")).arg(height)
                                                          : say(QT_TRANSLATE_NOOP("Advice", "%1 of %2 used")).arg(lengthText(top.depthCm), height);
    why = withMore(why, room < noRoomKg ? say(QT_TRANSLATE_NOOP("Advice", "no more food fits")) : say(QT_TRANSLATE_NOOP("Advice", "%1 of the usual food still fit")).arg(foodText(stack, room)));
    if (full.nothingFits && stack.now.ration.p50 < 1.0 && stack.now.ration != reckoning::Band{})
        why = withMore(why, say(QT_TRANSLATE_NOOP("Advice", "the worms assimilate %1 of what they need")).arg(percent(stack.now.ration.p50)));
    if (full.nothingFits) why = withMore(why, ofPaperAlone(stack, top)); // else it stands with the food that is due
    add(to, stack, Code::trayFull, full.now ? Severity::concern : Severity::due, top.slot, full.now || nothingFits ? stack.asOf : std::min(on.value_or(stack.asOf), stack.asOf + std::chrono::days{fullWithinDays}), remedy, why); // kept from the evening before, it may be foreseen for a day far off
}

}

void rulesOfFeeding(const StackReckoning& stack, std::vector<Advice>& to)
{
    const TrayEstimate* top = trayToFeed(stack);
    if (top == nullptr) return;
    const Fullness full = fullnessOf(stack, *top);
    feedDue(stack, *top, full.told(), to);
    trayFull(stack, *top, full, to);
}

}
