#include "ui/shelf/shelf_words.h"

#include "ui/common/dates.h"
#include "ui/common/formats.h"
#include "ui/common/volumes.h"

#include <QCoreApplication>

#include <algorithm>

namespace tierloam::shelf {

namespace {

struct ShelfWords {
    Q_DECLARE_TR_FUNCTIONS(ShelfWords)
};

QString ratioLabel(double ratio)
{
    return ratio >= 998.5 ? ShelfWords::tr("new", "a tray without castings") : ui::ratioText(ratio);
}

QString readyPercent(double probability) { return ui::percentText(probability); }

QString slotName(const TrayFacts& tray)
{
    if (tray.slots == 1) return ShelfWords::tr("Tray, batch %1").arg(tray.batch);
    if (tray.slot == 1) return ShelfWords::tr("Bottom tray, slot 1 of %1, batch %2").arg(tray.slots).arg(tray.batch);
    if (tray.slot == tray.slots) return ShelfWords::tr("Top tray, slot %1 of %1, batch %2").arg(tray.slots).arg(tray.batch);
    return ShelfWords::tr("Tray in slot %1 of %2, batch %3").arg(tray.slot).arg(tray.slots).arg(tray.batch);
}

QString strataSentence(const reckoning::Strata& strata)
{
    QStringList layers;
    const auto add = [&](double cm, const QString& words) {
        if (cm >= 0.05) layers << words.arg(ui::lengthText(cm));
    };
    add(strata.castingsCm, ShelfWords::tr("castings %1"));
    add(strata.softenedCm, ShelfWords::tr("softened %1"));
    add(strata.foodCm, ShelfWords::tr("food %1"));
    add(strata.beddingCm, ShelfWords::tr("bedding %1"));
    return layers.isEmpty() ? ShelfWords::tr("nothing in it") : ShelfWords::tr("from the floor up: %1").arg(layers.join(QStringLiteral(", ")));
}

QString doing(const TrayFacts& tray)
{
    if (tray.drying) return ShelfWords::tr("light-drying, day %1").arg(tray.dryingDays);
    if (tray.fed) return ShelfWords::tr("food goes in here");
    return {};
}

}

QString stateWord(reckoning::TrayState state)
{
    switch (state) {
    case reckoning::TrayState::working: return ShelfWords::tr("working");
    case reckoning::TrayState::nearly: return ShelfWords::tr("nearly");
    case reckoning::TrayState::ready: return ShelfWords::tr("ready");
    case reckoning::TrayState::overdue: return ShelfWords::tr("overdue");
    case reckoning::TrayState::drying: return ShelfWords::tr("drying");
    }
    return {};
}

QStringList trayLabels(const TrayFacts& tray)
{
    if (!tray.estimate) return {tray.drying ? stateWord(reckoning::TrayState::drying) : ShelfWords::tr("estimating…")};
    const QString word = tray.drying                                                 ? stateWord(reckoning::TrayState::drying)
                         : tray.fed && tray.estimate->state == reckoning::TrayState::working ? ShelfWords::tr("being fed")
                                                                                     : stateWord(tray.estimate->state);
    return {ratioLabel(tray.estimate->feedToCast.p50), word};
}

namespace {

QString countBand(const reckoning::Band& band)
{
    return ui::withRange(ui::countText(band.p50, true), ui::countText(band.p05, true), ui::countText(band.p95, true));
}

/// "chance 93 %; about 12 May (2 May – 3 Jun)".
QString readyWords(const TrayFacts& tray, const reckoning::TrayEstimate& e)
{
    QString said = ShelfWords::tr("chance %1", "that a tray is ready").arg(readyPercent(e.readyProbability));
    const QString dates = ui::datesText(e.readyOn, tray.today);
    if (dates.isEmpty() || tray.drying) return said;
    return e.readyOn.p50 && *e.readyOn.p50 <= tray.today ? ShelfWords::tr("%1; since about %2").arg(said, dates) : ShelfWords::tr("%1; about %2").arg(said, dates);
}

void addEstimates(Part& part, const TrayFacts& tray, const reckoning::TrayEstimate& e)
{
    const auto add = [&](const QString& name, const QString& value) { part.facts.append({name, value}); };
    add(ShelfWords::tr("Feed-to-cast"), ShelfWords::tr("%1; ready at 0.10 or below").arg(ui::ratioBand(e.feedToCast)));
    add(ShelfWords::tr("Ready"), readyWords(tray, e));
    add(ShelfWords::tr("Castings"), ShelfWords::tr("%1 deep, %2 dry").arg(ui::lengthBand(e.castingsDepthCm), ui::massBand(e.castingsDryKg)));
    add(ShelfWords::tr("Put in, dry"), ui::massBand(e.inputDryKg));
    const reckoning::Band& density = e.wormsKgPerM2;
    add(ShelfWords::tr("Worms in it"), ui::massBand({density.p05 * tray.areaM2, density.p50 * tray.areaM2, density.p95 * tray.areaM2}));
    add(ShelfWords::tr("Cocoons"), countBand(e.cocoons));
    add(ShelfWords::tr("Weight, tray and all"), ui::massBand(e.weightKg));
    if (e.slowDryKg.p50 > 0.02) add(ShelfWords::tr("Bulk that stays"), ShelfWords::tr("%1 dry: use as it is, or sift").arg(ui::massBand(e.slowDryKg)));
}

}

Part trayPart(const TrayFacts& tray)
{
    Part part;
    part.slot = tray.slot;
    part.name = slotName(tray);
    QStringList spoken{ShelfWords::tr("%1 old").arg(ui::daysLong(tray.ageDays))};
    if (const QString what = doing(tray); !what.isEmpty()) spoken << what;
    part.facts.append({ShelfWords::tr("Bedded"), ShelfWords::tr("%1, %2 ago; tray %3", "a day, how long ago, the tray's number").arg(ui::fullDay(tray.bedded), ui::daysLong(tray.ageDays)).arg(tray.tray)});
    if (!tray.estimate) {
        spoken << ShelfWords::tr("estimating");
        part.value = spoken.join(QStringLiteral("; "));
        part.notes << ShelfWords::tr("The estimates are being made.");
        return part;
    }
    const reckoning::TrayEstimate& e = *tray.estimate;
    spoken << ShelfWords::tr("feed-to-cast %1").arg(ui::ratioBand(e.feedToCast));
    if (!tray.fed) spoken << ShelfWords::tr("%1, chance %2").arg(stateWord(tray.drying ? reckoning::TrayState::drying : e.state), readyPercent(e.readyProbability));
    spoken << strataSentence(e.strata);
    spoken << ShelfWords::tr("worms %1").arg(ui::massText(e.wormsKgPerM2.p50 * tray.areaM2));
    part.value = spoken.join(QStringLiteral("; "));
    addEstimates(part, tray, e);
    if (tray.slot == 1 && tray.slots > 1 && !tray.drying) part.notes << ShelfWords::tr("Worms in the bottom tray are normal: they go down in the light.");
    if (tray.drying) part.notes << ShelfWords::tr("Most worms leave in 2 to 7 days; cocoons and some young go with the castings.");
    return part;
}

QString sumpLabel(const SumpFacts& sump)
{
    if (!sump.estimate) return ShelfWords::tr("sump of %1").arg(ui::volumeText(sump.capacityL));
    return ui::volumeOf(sump.estimate->sumpL.p50, sump.capacityL);
}

QStringList sumpLabels(const SumpFacts& sump)
{
    return {sump.spigot == journal::Spigot::open ? ShelfWords::tr("spigot open") : ShelfWords::tr("spigot shut")};
}

Part sumpPart(const SumpFacts& sump)
{
    Part part;
    part.slot = 0;
    part.name = ShelfWords::tr("Sump");
    const QString spigot = sumpLabels(sump).front();
    const auto add = [&](const QString& name, const QString& value) { part.facts.append({name, value}); };
    if (!sump.estimate) {
        part.value = ShelfWords::tr("holds up to %1; %2; estimating").arg(ui::volumeText(sump.capacityL), spigot);
        part.notes << ShelfWords::tr("The estimates are being made.");
    } else {
        const QString runsIn = ui::flowBand(sump.estimate->drainedLPerWeek); // in the unit of the strip of this flow, whatever that of the sump is
        const ui::OneVolumeUnit alike{std::max(sump.capacityL, sump.estimate->sumpL.p95)};
        part.value = ShelfWords::tr("%1 in it, room for %2; %3").arg(ui::volumeBand(sump.estimate->sumpL), ui::volumeText(sump.capacityL), spigot);
        add(ShelfWords::tr("In it"), ShelfWords::tr("%1, of %2; %3").arg(ui::volumeBand(sump.estimate->sumpL), ui::volumeText(sump.capacityL), spigot));
        if (sump.fullOn && sump.spigot == journal::Spigot::shut) add(ShelfWords::tr("Full about"), ui::datesText(*sump.fullOn, sump.today));
        add(ShelfWords::tr("Runs in now"), runsIn);
        const reckoning::Band& ec = sump.estimate->leachateEc;
        const QString strength = ui::withRange(ui::numberText(ec.p50, 1), ui::numberText(ec.p05, 1), ui::numberText(ec.p95, 1));
        add(ShelfWords::tr("Strength"), ui::joined(ShelfWords::tr("about %1 mS/cm").arg(strength)));
    }
    part.notes << ShelfWords::tr("A few worms in the sump are normal: put them back.");
    return part;
}

QString colonyLine(const reckoning::StackEstimate* estimate, double largestKg)
{
    const ui::OneMassUnit alike{largestKg};
    if (!estimate) return ShelfWords::tr("estimating…");
    return ShelfWords::tr("colony %1 · %2").arg(ui::massBand(estimate->colonyKg), ui::temperatureText(estimate->binTempC.p50));
}

QString lastLine(const journal::Entries& entries, const journal::StackHistory& history, Day shown, Day today)
{
    const journal::Entry* fed = nullptr;
    const journal::Entry* drained = nullptr;
    for (auto step = history.steps.rbegin(); step != history.steps.rend() && (!fed || !drained); ++step) {
        if (step->day > shown || step->incoming) continue;
        const journal::Entry& entry = entries[step->entry];
        if (!fed && std::holds_alternative<journal::Feed>(entry.action)) fed = &entry;
        const auto* drain = std::get_if<journal::Drain>(&entry.action);
        if (!drained && ((drain && drain->volume) || std::holds_alternative<journal::Flush>(entry.action))) drained = &entry;
    }
    const auto when = [&](Day day) { return day == today ? ShelfWords::tr("today") : ui::shortDay(day, today).replace(u' ', QChar::Nbsp); };
    QStringList said;
    if (fed) said << ShelfWords::tr("fed %1 %2", "an amount and a day").arg(ui::amountText(std::get<journal::Feed>(fed->action).food), when(fed->date.day));
    if (drained) said << ShelfWords::tr("drained %1", "a day").arg(when(drained->date.day)).replace(u' ', QChar::Nbsp); // goes on the next line as one
    return said.join(QStringLiteral(" · "));
}

}
