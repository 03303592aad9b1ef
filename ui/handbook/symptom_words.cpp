#include "ui/handbook/symptom_words.h"

#include "ui/common/figure_words.h"
#include "ui/common/formats.h"
#include "ui/common/usual_amounts.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace tierloam::handbook {

namespace {

using guide::Cause;
using guide::Quantity;
using guide::Symptom;

struct SymptomWords {
    Q_DECLARE_TR_FUNCTIONS(SymptomWords)
};

constexpr Amount someCover{100, Unit::g};
constexpr auto dryBoard = "corrugated cardboard shredded";

/// "1.12 (1.05–1.20)"; one number where the journal says it outright.
QString spread(const reckoning::Band& band, int decimals, double scale = 1.0)
{
    const auto number = [&](double value) { return ui::numberText(scale * value, decimals); };
    return band.p95 - band.p05 < 1e-9 ? number(band.p50) : ui::withRange(number(band.p50), number(band.p05), number(band.p95));
}

/// Water that brings the driest tray to what bedding is wetted to; L, rounded to a tenth.
double litresLacking(const reckoning::StackReckoning& stack)
{
    double litres = 0;
    for (const reckoning::TrayEstimate& tray : stack.now.slots) {
        const double share = tray.waterShare.p50;
        if (tray.state == reckoning::TrayState::drying || !(share > 0.05)) continue;
        const double contents = std::max(0.0, tray.weightKg.p50 - guide::lowOf(guide::Figure::lightTray));
        const double held = contents * tray.moisturePct.p50 / 100.0 / share;
        litres = std::max(litres, held * (guide::lowOf(guide::Figure::wetted) - share));
    }
    return std::round(10 * litres) / 10;
}

}

QString symptomText(Symptom symptom)
{
    switch (symptom) {
    case Symptom::smell: return SymptomWords::tr("It smells");
    case Symptom::flies: return SymptomWords::tr("Flies");
    case Symptom::mites: return SymptomWords::tr("Mites");
    case Symptom::ants: return SymptomWords::tr("Ants");
    case Symptom::wormsLeaving: return SymptomWords::tr("Worms leave");
    case Symptom::wormsDying: return SymptomWords::tr("Worms die");
    case Symptom::mould: return SymptomWords::tr("Mould");
    case Symptom::sourBed: return SymptomWords::tr("Sour bed");
    case Symptom::heat: return SymptomWords::tr("It is hot inside");
    case Symptom::standingWater: return SymptomWords::tr("Standing water");
    case Symptom::fewWorms: return SymptomWords::tr("Too few worms");
    case Symptom::noCastings: return SymptomWords::tr("No castings");
    case Symptom::count: break;
    }
    return {};
}

QString causeText(Cause cause)
{
    switch (cause) {
    case Cause::overfed: return SymptomWords::tr("More food than the worms and the air can take");
    case Cause::tooWet: return SymptomWords::tr("The bed is too wet");
    case Cause::tooDry: return SymptomWords::tr("The bed is too dry");
    case Cause::sumpFull: return SymptomWords::tr("The sump is full");
    case Cause::tooHot: return SymptomWords::tr("The bed is too hot");
    case Cause::tooCold: return SymptomWords::tr("The bed is too cold");
    case Cause::hungry: return SymptomWords::tr("The worms are hungry");
    case Cause::unsuitable: return SymptomWords::tr("Food that does not belong in");
    case Cause::uncovered: return SymptomWords::tr("Food lies open");
    case Cause::lowCarbon: return SymptomWords::tr("Too much nitrogen, too little carbon");
    case Cause::young: return SymptomWords::tr("The stack is still young");
    case Cause::crowded: return SymptomWords::tr("Crowded, or castings left in too long");
    case Cause::disturbed: return SymptomWords::tr("The worms are new here, or were moved");
    case Cause::count: break;
    }
    return {};
}

QString evidenceText(const guide::Evidence& evidence)
{
    const reckoning::Band& v = evidence.value;
    const int whole = static_cast<int>(std::lround(v.p50));
    switch (evidence.quantity) {
    case Quantity::waterShareMost: return SymptomWords::tr("wettest tray (slot %1) holds %2 of the water it can hold").arg(evidence.slot).arg(SymptomWords::tr("%1 %").arg(spread(v, 0, 100)));
    case Quantity::waterShareLeast: return SymptomWords::tr("driest tray (slot %1) holds %2 of the water it can hold").arg(evidence.slot).arg(SymptomWords::tr("%1 %").arg(spread(v, 0, 100)));
    case Quantity::squeeze: return SymptomWords::tr("pressed in the hand: %1 on the scale from one, dry, to five, streaming").arg(whole);
    case Quantity::air: return SymptomWords::tr("air in the worst tray %1, where one is all that worms want").arg(spread(v, 2));
    case Quantity::fedPerWorms: return SymptomWords::tr("fed %1 of the worms' own mass a day, in two weeks").arg(spread(v, 2));
    case Quantity::softened: return SymptomWords::tr("%1 of softened food waits in slot %2").arg(ui::perAreaBand(v)).arg(evidence.slot);
    case Quantity::sumpShare: return SymptomWords::tr("the sump is filled to %1").arg(SymptomWords::tr("%1 %").arg(spread(v, 0, 100)));
    case Quantity::bedCelsius: return SymptomWords::tr("bed estimated at %1").arg(ui::temperatureBand(v));
    case Quantity::bedRead: return SymptomWords::tr("bed read at %1").arg(ui::temperatureText(v.p50));
    case Quantity::daysSinceFed: return SymptomWords::tr("last feeding written down %n day(s) ago", nullptr, whole);
    case Quantity::ration: return SymptomWords::tr("they take up %1 of what they need").arg(spread(v, 1));
    case Quantity::doubtfulShare: return SymptomWords::tr("%1 of what was fed in a month is doubtful").arg(ui::percentText(v.p50));
    case Quantity::uncoveredShare: return SymptomWords::tr("%1 of the feedings of three weeks have no cover written down").arg(ui::percentText(v.p50));
    case Quantity::carbonToNitrogen: return SymptomWords::tr("C:N of what was fed in three weeks %1, wished %2").arg(ui::numberText(v.p50, 0), ui::figureText(guide::Figure::carbonRange));
    case Quantity::ageDays: return SymptomWords::tr("%n day(s) since the first bedding", nullptr, whole);
    case Quantity::wormsPerArea: return SymptomWords::tr("worms %1, best %2").arg(ui::perAreaBand(v), ui::figureText(guide::Figure::bestDensity));
    case Quantity::bottomAge: return SymptomWords::tr("the bottom tray has stood for %n day(s)", nullptr, whole);
    case Quantity::daysSinceDisturbed: return SymptomWords::tr("worms put in, moved or lifted %n day(s) ago", nullptr, whole);
    }
    return {};
}

QString lookText(Cause cause)
{
    switch (cause) {
    case Cause::overfed: return SymptomWords::tr("Lift the cover: is much of the last feeding still there, matted and wet?");
    case Cause::tooWet: return SymptomWords::tr("Press a handful hard: does it stream?");
    case Cause::tooDry: return SymptomWords::tr("Press a handful from the middle hard: does nothing come?");
    case Cause::sumpFull: return SymptomWords::tr("Open the spigot over a jar: how much runs out?");
    case Cause::tooHot: return SymptomWords::tr("Put a thermometer a hand deep into the bed.");
    case Cause::tooCold: return SymptomWords::tr("Put a thermometer a hand deep into the bed, in the morning.");
    case Cause::hungry: return SymptomWords::tr("Lift the cover: is nothing left of the last feeding?");
    case Cause::unsuitable: return SymptomWords::tr("Smell at the places of the last feedings: is it one of them, and which?");
    case Cause::uncovered: return SymptomWords::tr("Look before you lift anything: does food lie open?");
    case Cause::lowCarbon: return SymptomWords::tr("Smell: sharp, like ammonia? And is there hardly any paper left in the top tray?");
    case Cause::young: return SymptomWords::tr("Dig to the floor of the tray: is there a dark, crumbly layer, however thin?");
    case Cause::crowded: return SymptomWords::tr("Weigh the worms of a part of the bed: it tells how crowded they are.");
    case Cause::disturbed: return SymptomWords::tr("Wait two nights with a light on: do they stay then?");
    case Cause::count: break;
    }
    return {};
}

QString remedyText(Cause cause)
{
    switch (cause) {
    case Cause::overfed: return SymptomWords::tr("Stop feeding until most of it is gone. Spread what lies there flat, loosen it, and lay dry shredded paper or cardboard on it.");
    case Cause::tooWet: return SymptomWords::tr("Drain the sump and leave the spigot open. Loosen the bed and work dry shredded cardboard in. No water until a pressed handful gives only a few drops.");
    case Cause::tooDry: return SymptomWords::tr("Pour slowly, all over, in two or three goes, until a pressed handful gives a few drops. Cover with wet paper.");
    case Cause::sumpFull: return SymptomWords::tr("Drain it now and leave the spigot open over a jar. Put worms that swim in it back into the top tray.");
    case Cause::tooHot: return SymptomWords::tr("Carry the stack to a cooler place, tray by tray. No food for now; spread what heats. Lid open under a cloth; a wrapped bottle of frozen water on top buys a day.");
    case Cause::tooCold: return SymptomWords::tr("Bring the stack in, or wrap sides and lid and stand it off the ground. Feed little until it is warmer.");
    case Cause::hungry: return SymptomWords::tr("Feed the usual amount and cover it. If there are few worms, feed little: they multiply by themselves.");
    case Cause::unsuitable: return SymptomWords::tr("Take out what can be taken out, with gloves, and put it into the household waste. Cover the rest thickly.");
    case Cause::uncovered: return SymptomWords::tr("Bury the food a little and cover it with paper, now and with each feeding. Flies that are there are gone in {fly-days} if nothing new lies open.");
    case Cause::lowCarbon: return SymptomWords::tr("Work dry shredded cardboard into the top tray, and feed less of grounds and greens for some weeks.");
    case Cause::young: return SymptomWords::tr("Wait. Food has to soften first, and a first tray takes {first-tray-alone}. Feed a little and keep the bed moist.");
    case Cause::crowded: return SymptomWords::tr("Give them room: a further tray if one is spare, or a harvest of the bottom one once its castings are ready. Or give some worms away, or begin another stack with them.");
    case Cause::disturbed: return SymptomWords::tr("Leave a light on and the lid closed for some nights. They settle; it is no sign of a bad bed.");
    case Cause::count: break;
    }
    return {};
}

QString byHandText(Symptom symptom)
{
    switch (symptom) {
    case Symptom::smell: return SymptomWords::tr("smell at the lid, at each tray, at the sump and at what stands beside the stack. Where does it come from?");
    case Symptom::flies: return SymptomWords::tr("see where they sit: in the bed, in the sump, or beside the stack on fruit and flower pots. Their eggs come in with peel.");
    case Symptom::mites: return SymptomWords::tr("see where they sit. On one piece of food alone they are usual and do no harm: take that piece out.");
    case Symptom::ants: return SymptomWords::tr("follow their trail back. The nest may lie beneath the stand or in a pot beside it.");
    case Symptom::wormsLeaving: return SymptomWords::tr("see when and from where they go: on a stormy night, when a light went out, from one tray alone?");
    case Symptom::wormsDying: return SymptomWords::tr("see what came in last: treated peel, salt, cleaning agents, paint? Take it out with gloves.");
    case Symptom::mould: return SymptomWords::tr("see how far it goes. White threads on fresh food are usual and gone in some days.");
    case Symptom::sourBed: return SymptomWords::tr("smell at a handful from several places. One heap of food may be sour and the rest of the bed sound.");
    case Symptom::heat: return SymptomWords::tr("feel each tray. One alone is warm from its food; all of them are warm from sun, stove or pipe.");
    case Symptom::standingWater: return SymptomWords::tr("see where it comes from: holes that are clogged, a lid that lets rain in, a stack that is not level?");
    case Symptom::fewWorms: return SymptomWords::tr("look under the cover, in each tray and in the sump. They may sit elsewhere than where you looked.");
    case Symptom::noCastings: return SymptomWords::tr("dig to the floor of the bottom tray. Castings lie there first, beneath food and bedding.");
    case Symptom::count: break;
    }
    return {};
}

QList<forms::Caution> remedyCautions(Cause cause)
{
    switch (cause) {
    case Cause::sumpFull:
    case Cause::tooWet: return {forms::leachateCaution()};
    case Cause::tooHot:
    case Cause::crowded: return {forms::liftingCaution({})};
    case Cause::tooCold: return {forms::heaterCaution()};
    case Cause::young:
    case Cause::disturbed:
    case Cause::tooDry:
    case Cause::hungry: return {forms::dustCaution()};
    case Cause::overfed:
    case Cause::unsuitable:
    case Cause::uncovered:
    case Cause::lowCarbon:
    case Cause::count: break;
    }
    return {forms::remedyCaution()};
}

Proposed remedyEntry(Cause cause, Symptom symptom, const reckoning::StackReckoning& stack, const household::Usual& usual)
{
    switch (cause) {
    case Cause::overfed: return {journal::Cover{someCover, {}}, {}};
    case Cause::tooWet:
    case Cause::lowCarbon: return {journal::Cover{someCover, dryBoard}, {}};
    case Cause::tooDry: {
        const double litres = litresLacking(stack);
        return {journal::Water{litres >= 0.1 ? Amount{litres, Unit::L} : usual.water}, {}};
    }
    case Cause::sumpFull: return {journal::Drain{Amount{std::max(0.1, std::round(10 * stack.now.sumpL.p50) / 10), Unit::L}, {}, {}, {}, journal::Spigot::open}, {}};
    case Cause::hungry: return {journal::Feed{usual.feed, usual.feedMaterial, {}}, {}};
    case Cause::unsuitable:
    case Cause::uncovered: return {journal::Cover{usual.coverWithFeed.value_or(ui::roundAmount(journal::defaultCoverAmount)), usual.coverMaterial}, {}};
    case Cause::crowded:
        if (stack.now.slots.size() > 1) return {journal::Rotate{}, {}};
        return {journal::Remove{Amount{std::max(10.0, std::round(stack.now.colonyKg.p50 * guide::lowOf(guide::Figure::giveAtMost)) * 10), Unit::g}}, {}};
    case Cause::tooHot:
    case Cause::tooCold: return {journal::Reading{}, {}};
    case Cause::young:
    case Cause::disturbed:
    case Cause::count: break;
    }
    return {journal::Event{std::string{guide::eventWord(symptom)}, {}}, {}};
}

Proposed lookEntry(Cause cause)
{
    switch (cause) {
    case Cause::tooWet:
    case Cause::tooDry:
    case Cause::tooHot:
    case Cause::tooCold:
    case Cause::lowCarbon: return {journal::Reading{}, {}};
    case Cause::sumpFull: return {journal::Drain{}, {}};
    case Cause::crowded: return {journal::Weigh{}, {}};
    default: break;
    }
    return {journal::Check{}, {}};
}

QString remedyButton(Cause cause, const Proposed& entry)
{
    if (std::holds_alternative<journal::Remove>(entry.action)) return SymptomWords::tr("Record the worms taken out…");
    switch (cause) {
    case Cause::overfed:
    case Cause::tooWet:
    case Cause::lowCarbon:
    case Cause::unsuitable:
    case Cause::uncovered: return SymptomWords::tr("Record the cover…");
    case Cause::tooDry: return SymptomWords::tr("Record the water…");
    case Cause::sumpFull: return SymptomWords::tr("Record the draining…");
    case Cause::hungry: return SymptomWords::tr("Record the feeding…");
    case Cause::crowded: return SymptomWords::tr("Record the lifting…");
    case Cause::tooHot:
    case Cause::tooCold: return SymptomWords::tr("Record the temperature…");
    case Cause::young:
    case Cause::disturbed:
    case Cause::count: break;
    }
    return SymptomWords::tr("Record what you saw…");
}

QString lookButton(Cause cause)
{
    switch (cause) {
    case Cause::tooWet:
    case Cause::tooDry:
    case Cause::tooHot:
    case Cause::tooCold:
    case Cause::lowCarbon: return SymptomWords::tr("Record the reading…");
    case Cause::sumpFull: return SymptomWords::tr("Record how much ran out…");
    case Cause::crowded: return SymptomWords::tr("Record the weighing…");
    default: break;
    }
    return SymptomWords::tr("Record the look…");
}

}
