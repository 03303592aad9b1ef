#include "ui/shelf/shelf_verdict.h"

#include "ui/common/dates.h"
#include "ui/common/formats.h"
#include "ui/common/percent.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace tierloam::shelf {

namespace {

struct ShelfVerdict {
    Q_DECLARE_TR_FUNCTIONS(ShelfVerdict)
};

using advice::Code;
using reckoning::TrayState;
using ui::Tone;

QString wormsBelow() { return ShelfVerdict::tr("Worms in the bottom tray are normal: they go down in the light."); }

Verdict said(Sign sign, Tone tone, const QString& state, const QString& reason, const QString& normal = {}) { return {sign, tone, state, ui::oneStop(reason), normal}; }

/// As a sentence: begun with a capital, ended with a stop, ratios and percentages unbroken over two lines.
QString sentence(const std::string& text)
{
    QString said = QString::fromStdString(text).trimmed();
    if (!said.isEmpty()) said[0] = said[0].toUpper();
    said = ui::unbroken(said);
    return said.isEmpty() || said.endsWith(u'.') || said.endsWith(u'!') || said.endsWith(u'?') || said.endsWith(u'…') ? said : said % u'.';
}

Verdict ofAdvice(const advice::Advice& advice)
{
    const QString why = sentence(advice.because);
    const QString reason = why.isEmpty() ? sentence(advice.text) : ShelfVerdict::tr("%1 %2", "what to do, and why").arg(sentence(advice.text), why);
    if (advice.look) return said(Sign::question, Tone::plain, ShelfVerdict::tr("A look would tell"), reason);
    switch (advice.code) {
    case Code::harvestReady:
        if (advice.slot.value_or(1) > 1) return said(Sign::ready, Tone::moss, ShelfVerdict::tr("Tray in slot %1 is ready").arg(*advice.slot), reason);
        return said(Sign::ready, Tone::moss, ShelfVerdict::tr("Bottom tray is ready"), reason, wormsBelow());
    case Code::readyNoHurry: return said(Sign::ready, Tone::moss, ShelfVerdict::tr("Ready, no hurry"), reason, wormsBelow());
    case Code::harvestSoon: return said(Sign::soon, Tone::amber, ShelfVerdict::tr("Ready soon"), reason, wormsBelow());
    case Code::harvestOverdue: return said(Sign::danger, Tone::brick, ShelfVerdict::tr("Harvest is overdue"), reason, wormsBelow());
    case Code::addTray: return said(Sign::ready, Tone::moss, ShelfVerdict::tr("Time for another tray"), reason);
    case Code::tooEarly: return said(Sign::soon, Tone::plain, ShelfVerdict::tr("A step came early"), reason);
    case Code::feedDue: return said(Sign::soon, Tone::moss, ShelfVerdict::tr("Feeding is due"), reason);
    case Code::overfed: return said(Sign::danger, Tone::amber, ShelfVerdict::tr("Overfed"), reason);
    case Code::hungry: return said(Sign::soon, Tone::amber, ShelfVerdict::tr("Hungry"), reason);
    case Code::lowCarbon: return said(Sign::question, Tone::plain, ShelfVerdict::tr("Short of paper"), reason);
    case Code::tooWet: return said(Sign::drop, Tone::water, ShelfVerdict::tr("Too wet"), reason);
    case Code::tooDry: return said(Sign::drop, Tone::amber, ShelfVerdict::tr("Too dry"), reason);
    case Code::drainageLow: return said(Sign::drop, Tone::amber, ShelfVerdict::tr("Little runs out"), reason);
    case Code::drainageHigh: return said(Sign::drop, Tone::water, ShelfVerdict::tr("Much runs out"), reason);
    case Code::heat: return said(Sign::danger, advice.severity == advice::Severity::urgent ? Tone::brick : Tone::amber, ShelfVerdict::tr("It gets too hot"), reason);
    case Code::cold: return said(Sign::danger, advice.severity == advice::Severity::urgent ? Tone::brick : Tone::amber, ShelfVerdict::tr("It gets too cold"), reason);
    case Code::dryingDone: return said(Sign::light, Tone::amber, ShelfVerdict::tr("Light-drying is done"), reason, ShelfVerdict::tr("Cocoons and some young always stay in the castings."));
    case Code::dryingLong: return said(Sign::light, Tone::amber, ShelfVerdict::tr("Drying for long"), reason, ShelfVerdict::tr("Cocoons and some young always stay in the castings."));
    case Code::staleRecord: return said(Sign::silent, Tone::amber, ShelfVerdict::tr("The record is silent"), reason);
    case Code::trayFull: return said(Sign::danger, Tone::amber, ShelfVerdict::tr("Top tray is full"), reason);
    case Code::sumpFull:
        return said(Sign::drop, Tone::water, ShelfVerdict::tr("Drain the sump"), reason, ShelfVerdict::tr("A few worms in the sump are normal: put them back."));
    case Code::lookNext: return said(Sign::question, Tone::plain, ShelfVerdict::tr("A look would tell"), reason);
    case Code::recordDisagrees:
        if (advice.wormsMissing) return said(Sign::question, Tone::amber, ShelfVerdict::tr("No worms in it"), reason);
        return said(Sign::question, Tone::plain, ShelfVerdict::tr("The record does not fit"), reason);
    }
    return said(Sign::working, Tone::plain, {}, reason);
}

Verdict drying(const VerdictFacts& facts)
{
    const bool known = facts.dryingWormsLeft >= 0;
    const QString share = ui::percentText(std::clamp(facts.dryingWormsLeft, 0.0, 1.0));
    const QString left = known ? ShelfVerdict::tr("About %1 of its worms are still in it.").arg(share) : QString{};
    const bool done = std::any_of(facts.advice.begin(), facts.advice.end(), [](const advice::Advice& each) { return each.code == Code::dryingDone || each.code == Code::dryingLong; });
    const QString act = done ? ShelfVerdict::tr("Take the castings.") : ShelfVerdict::tr("Leave it in the light; most worms go down in 2 to 7 days.");
    const QString state = done ? ShelfVerdict::tr("Light-drying is done, day %1") : ShelfVerdict::tr("Light-drying, day %1");
    return said(Sign::light, Tone::amber, state.arg(facts.dryingDays), left.isEmpty() ? act : ShelfVerdict::tr("%1 %2").arg(left, act), ShelfVerdict::tr("Cocoons and some young always stay in the castings."));
}

/// When nothing presses: how far the bottom tray is.
Verdict byState(const VerdictFacts& facts)
{
    const reckoning::TrayEstimate& bottom = facts.estimate->slots.front();
    const QString ratio = ShelfVerdict::tr("Feed-to-cast %1, ready with %2\u00a0%.")
                              .arg(ui::ratioText(bottom.feedToCast.p50)).arg(ui::percentShown(bottom.readyProbability));
    const QString dates = facts.reckoning ? ui::datesText(bottom.readyOn, facts.today) : QString{};
    const QString when = dates.isEmpty() ? QString{} : ShelfVerdict::tr("Ready about %1.").arg(dates);
    const auto reason = [&](const QString& first) { return when.isEmpty() ? first : ShelfVerdict::tr("%1 %2").arg(when, first); };
    switch (bottom.state) {
    case TrayState::ready: return said(Sign::ready, Tone::moss, ShelfVerdict::tr("Bottom tray is ready"), ratio, wormsBelow());
    case TrayState::overdue: return said(Sign::danger, Tone::brick, ShelfVerdict::tr("Harvest is overdue"), ratio, wormsBelow());
    case TrayState::nearly: return said(Sign::soon, Tone::amber, ShelfVerdict::tr("Bottom tray is nearly ready"), reason(ratio), wormsBelow());
    case TrayState::drying:
    case TrayState::working: break;
    }
    if (facts.estimate->slots.size() == 1) {
        return said(Sign::working, Tone::plain, ShelfVerdict::tr("Young stack"),
                    ShelfVerdict::tr("Castings %1 deep so far; another tray at %2. %3").arg(ui::lengthText(bottom.castingsDepthCm.p50), ui::lengthText(2.5), when).trimmed());
    }
    return said(Sign::working, Tone::plain, ShelfVerdict::tr("Working"), reason(ratio));
}

}

int silentAfter(double medianFeedGapDays) { return std::max(21, static_cast<int>(std::lround(3 * medianFeedGapDays))); }

Verdict verdictOf(const VerdictFacts& facts)
{
    if (!facts.standing || facts.standing->slots.empty())
        return said(Sign::question, Tone::plain, ShelfVerdict::tr("No tray stands"), ShelfVerdict::tr("Lay bedding in a tray to begin."));
    if (!facts.estimate || facts.estimate->slots.empty())
        return said(Sign::question, Tone::plain, ShelfVerdict::tr("Estimating…"), ShelfVerdict::tr("Trays are drawn from the journal; depths follow in a moment."));
    const auto pressing = std::find_if(facts.advice.begin(), facts.advice.end(), [](const advice::Advice& a) { return a.severity >= advice::Severity::concern; });
    const bool urgent = pressing != facts.advice.end() && pressing->severity == advice::Severity::urgent;
    if (facts.standing->drying && !urgent) return drying(facts);
    if (facts.silentDays && !urgent)
        return said(Sign::silent, Tone::amber, ShelfVerdict::tr("No entry for %1").arg(ui::daysLong(*facts.silentDays)),
                    ShelfVerdict::tr("The estimates take it that hardly any food and no water were given since, but by a routine. Write down what was done since, or look into a tray."));
    if (pressing != facts.advice.end()) return ofAdvice(*pressing);
    // What is odd in the record and what a look would tell stand in the due list; they do not hide for weeks how the stack is.
    const auto first = std::find_if(facts.advice.begin(), facts.advice.end(), [&](const advice::Advice& a) { return (a.code != Code::recordDisagrees || a.wormsMissing) && a.code != Code::lookNext && a.code != Code::lowCarbon && !(a.code == Code::feedDue && a.on > facts.today); });
    if (first != facts.advice.end()) return ofAdvice(*first);
    return byState(facts);
}

}
