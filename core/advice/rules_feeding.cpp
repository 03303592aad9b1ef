#include "core/advice/rules.h"
#include "core/advice/words.h"

#include <cmath>

namespace tierloam::advice {

using reckoning::StackReckoning;
using reckoning::TrayEstimate;

namespace {

constexpr double leastWorthGiving = 0.05; ///< kg fresh; below it the tray is left alone
constexpr int fullWithinDays = 7;

/// What may be given: one usual feeding, the same that the shelf's button writes down, within what 5 % of the members at most do not bear
/// this week and what fits. What was never fed has no usual amount.
double amountToGive(const StackReckoning& stack)
{
    return stack.record.usualFeedKg > 0.0 ? std::min(stack.record.usualFeedKg, stack.forecast.feedHighKg) : stack.forecast.feedHighKg;
}

void feedDue(const StackReckoning& stack, const TrayEstimate& top, std::vector<Advice>& to)
{
    const Day since = stack.record.lastFeed.value_or(stack.firstBedding);
    const int gap = std::max(1, static_cast<int>(std::lround(stack.record.medianFeedGapDays)));
    const Day due = stack.record.lastFeed ? since + std::chrono::days{gap} : since;
    const double amount = amountToGive(stack);
    if (due > stack.asOf + std::chrono::days{2} || amount < leastWorthGiving) return;
    QString reason = stack.record.lastFeed
        ? say(QT_TRANSLATE_NOOP("Advice", "last fed %1 ago, usually every %2; in the tray %3 not yet eaten, dry"))
              .arg(days(daysBetween(since, stack.asOf)), days(gap), massText(top.unprocessedDryKg.p50))
        : say(QT_TRANSLATE_NOOP("Advice", "not fed yet; at most %1 this week")).arg(mostText(stack.forecast.feedHighKg));
    // The same limit as in the feeding plan and beside the feeding button.
    const QString most = mostText(stack.forecast.feedHighKg);
    const QString usual = wording::amountText(stack.record.usualFeed);
    const bool borne = usualIsBorne(stack);
    if (stack.record.usualFeedKg > 0.0 && !borne)
        reason += say(QT_TRANSLATE_NOOP("Advice", "; of the usual feeding of %1 only %2 are borne this week: with more the chance of too little air or a bed above %3 is above 5 %"))
                      .arg(usual, most, temperatureText(hotAbove));
    add(to, stack, Code::feedDue, Severity::due, top.slot, due,
        borne ? say(QT_TRANSLATE_NOOP("Advice", "Feed the usual %1, at most %2 this week")).arg(usual, most) : say(QT_TRANSLATE_NOOP("Advice", "Feed at most %1 this week")).arg(most), reason);
    to.back().kg = amount;
}

void trayFull(const StackReckoning& stack, const TrayEstimate& top, std::vector<Advice>& to)
{
    if (!stack.forecast.roomTopTrayFreshKg) return;
    const double room = *stack.forecast.roomTopTrayFreshKg;
    const bool fullNow = room < std::max(leastWorthGiving, stack.forecast.feedUsualKg);
    const auto& on = stack.forecast.topTrayFullOn.p50;
    const bool soon = on && *on <= stack.asOf + std::chrono::days{fullWithinDays};
    if (!fullNow && !soon) return;
    const bool spare = stack.record.spareTrays > 0;
    const QString remedy = isDrying(stack) ? say(QT_TRANSLATE_NOOP("Advice", "The top tray is full: feed less until the castings above are taken"))
        : spare                            ? say(QT_TRANSLATE_NOOP("Advice", "The top tray is full: add a tray, or feed less"))
                                           : say(QT_TRANSLATE_NOOP("Advice", "The top tray is full: feed less until the bottom tray is lifted"));
    add(to, stack, Code::trayFull, fullNow ? Severity::concern : Severity::due, top.slot, on.value_or(stack.asOf), remedy,
        say(QT_TRANSLATE_NOOP("Advice", "%1 of %2 used; %3 of the usual food still fit"))
            .arg(lengthText(top.depthCm), lengthText(stack.record.trayHeightCm), massText(room)));
}

}

void rulesOfFeeding(const StackReckoning& stack, std::vector<Advice>& to)
{
    const TrayEstimate* top = trayToFeed(stack);
    if (top == nullptr) return;
    feedDue(stack, *top, to);
    trayFull(stack, *top, to);
}

}
