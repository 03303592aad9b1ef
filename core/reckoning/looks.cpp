#include "core/reckoning/looks.h"

#include "core/model/elementary.h"
#include "core/model/masses.h"

#include <algorithm>
#include <cmath>

namespace tierloam::reckoning {

using model::MemberOf;
using model::naturalLog;
using model::Parameter;
using Shape = Expectation::Shape;

namespace {

// Judgement, all of them, unless said.
constexpr double found = 30e-6;             ///< kg: lighter worms are not found in a weighing
constexpr double counted = 50e-6;           ///< kg: nor in a count
constexpr double countRecovery = 0.8;
constexpr double countSize = 3.0;           ///< of the negative binomial: worms sit in clumps
constexpr double usualCountLitres = 0.5;    ///< searched, when the entry does not say
constexpr double leastMass = 1e-4;          ///< kg: "none" on a kitchen scale
constexpr double fewUpTo = -1.2039728043259361;  ///< ln 0.3 kg/m²
constexpr double someUpTo = 0.18232155679395459; ///< ln 1.2 kg/m²
constexpr double seenCuts[] = {fewUpTo, someUpTo};
constexpr double squeezeCuts[] = {0.45, 0.70, 0.95, 1.10}; ///< of field capacity

double both(double share, double value, double constant) { return std::sqrt(share * value * share * value + constant * constant); }

/// sd² = (share·centre)² + constant².
void within(Expectation& e, Shape shape, double centre, double share, double constant)
{
    e.shape = shape;
    e.centre = centre;
    e.sd = both(share, centre, constant);
    e.share = share;
    e.constant = constant;
}

double litresOf(const Amount& amount) { return amount.volume().value_or(Volume{}).base(); }
double kilogramsOf(const Amount& amount) { return amount.mass().value_or(Mass{}).base(); }

template <class Read>
double overTrays(const MemberOf& of, int slot, Read read)
{
    if (slot >= 0) return read(slot);
    double sum = 0.0;
    for (int t = 0; t < of.ensemble.trays(); ++t) sum += read(t);
    return sum;
}

double volume(const MemberOf& of, int slot) ///< L
{
    return overTrays(of, slot, [&](int t) { return model::layers(of, t).total() * of.ensemble.area * 10.0; });
}

double wormsHere(const MemberOf& of, int slot) ///< share of the colony
{
    return slot >= 0 ? of.tray(slot).share[of.lane] : 1.0;
}

double moistureOf(const MemberOf& of, int slot)
{
    const double water = overTrays(of, slot, [&](int t) { return of.tray(t).water[of.lane]; });
    const double whole = overTrays(of, slot, [&](int t) { return model::contentsWeight(of, t); });
    return whole > 0.0 ? 100.0 * water / whole : 0.0;
}

double waterShareOf(const MemberOf& of, int slot)
{
    if (slot >= 0) return model::waterShare(of, slot);
    double sum = 0.0;
    double weight = 0.0;
    for (int t = 0; t < of.ensemble.trays(); ++t) {
        const double dry = model::dryMatter(of, t);
        sum += dry * model::waterShare(of, t);
        weight += dry;
    }
    return weight > 0.0 ? sum / weight : 0.0;
}

/// log-sd of what is taken: how it was measured, and the eye's guess of the share, 0.3 at a half.
double harvestNoise(double measured, double share) { return std::hypot(measured, 0.6 * (1.0 - share)); }

double inSump(const Look& look, const MemberOf& of, double ranOffBefore)
{
    const model::StackBlock& stack = of.block.stack;
    double litres = stack.sump[of.lane] + (look.spigotOpen ? stack.ranOff[of.lane] - ranOffBefore : 0.0);
    const int top = of.ensemble.topToFeed();
    if (look.litres > 0.0 && top >= 0) { // a flush: what the top tray does not hold goes through at once
        const model::TrayBlock& tray = of.tray(top);
        const double deficit = std::max(tray.capacity[of.lane] - tray.water[of.lane], 0.0);
        litres += std::max(look.litres - deficit, 0.0) * of.parameter(Parameter::bypass);
    }
    return litres;
}

}

Heavier heavierThan(const MemberOf& of, double kg)
{
    const model::MassClassTable& classes = model::massClassTable();
    const double width = naturalLog(classes.kilograms[1] / classes.kilograms[0]);
    Heavier sum{0.0, 0.0};
    for (int i = 0; i < model::massClasses; ++i) {
        const double above = std::clamp(0.5 + naturalLog(classes.kilograms[i] / kg) / width, 0.0, 1.0);
        const double number = of.block.stack.worms[i][of.lane] * above;
        sum.number += number;
        sum.kg += number * classes.kilograms[i];
    }
    return sum;
}

std::vector<Look> looksOf(const journal::Action& action, std::optional<int> slot, const journal::Standing& before)
{
    std::vector<Look> looks;
    const int at = slot ? *slot - 1 : -1;
    const auto add = [&](LookKind kind, double value) -> Look& {
        Look look;
        look.kind = kind;
        look.slot = at;
        look.value = value;
        look.spigotOpen = before.spigot == journal::Spigot::open;
        return looks.emplace_back(look);
    };
    if (const auto* check = std::get_if<journal::Check>(&action)) {
        if (at < 0) return looks;
        if (check->depth) add(LookKind::depth, check->depth->base());
        if (check->bits) add(LookKind::bits, check->bits->percent());
        if (check->left) add(LookKind::left, check->left->percent());
        if (check->worms) add(LookKind::wormsSeen, static_cast<double>(*check->worms));
    } else if (const auto* weighed = std::get_if<journal::Weigh>(&action)) {
        add(LookKind::weigh, std::max(kilogramsOf(weighed->worms), leastMass)).share = weighed->share ? weighed->share->fraction() : 1.0;
    } else if (const auto* count = std::get_if<journal::Count>(&action)) {
        add(LookKind::count, count->number.value).litres = count->volume ? count->volume->base() : usualCountLitres;
    } else if (const auto* drained = std::get_if<journal::Drain>(&action)) {
        // The strength first: it is that of what was in the sump.
        if (drained->ecMilliSiemensPerCm && *drained->ecMilliSiemensPerCm > 0.0) add(LookKind::conductivity, *drained->ecMilliSiemensPerCm);
        if (drained->volume) add(drained->emptied.value_or(true) ? LookKind::drain : LookKind::drainPart, litresOf(*drained->volume));
    } else if (const auto* flush = std::get_if<journal::Flush>(&action)) {
        if (flush->drained) add(LookKind::drain, flush->drained->base()).litres = litresOf(flush->poured);
    } else if (const auto* weight = std::get_if<journal::TrayWeight>(&action)) {
        if (at < 0) return looks;
        Look& look = add(LookKind::trayWeight, kilogramsOf(weight->weight));
        if (weight->tare) look.tareKg = weight->tare->base();
    } else if (const auto* reading = std::get_if<journal::Reading>(&action)) {
        if (reading->bin) add(LookKind::bedTemperature, reading->bin->base());
        if (reading->moisture) add(LookKind::moisture, reading->moisture->percent());
        if (reading->squeeze) add(LookKind::squeeze, *reading->squeeze - 1.0);
        if (reading->sump) add(LookKind::sumpLevel, reading->sump->base());
    } else if (const auto* harvest = std::get_if<journal::Harvest>(&action)) {
        if (at < 0) return looks;
        const double share = harvest->whole() ? 1.0 : harvest->share->fraction();
        const bool byVolume = kindOf(harvest->taken.unit) == UnitKind::volume;
        if (harvest->moisture) add(LookKind::moisture, harvest->moisture->percent());
        add(byVolume ? LookKind::harvestVolume : LookKind::harvestMass, byVolume ? litresOf(harvest->taken) : kilogramsOf(harvest->taken)).share = share;
    } else if (const auto* removed = std::get_if<journal::Remove>(&action)) {
        add(LookKind::wormsTaken, kilogramsOf(removed->worms)).slot = -1;
    } else if (const auto* moved = std::get_if<journal::Move>(&action)) {
        add(LookKind::wormsTaken, kilogramsOf(moved->worms)).slot = -1;
    }
    return looks;
}

Expectation expectation(const Look& look, const MemberOf& of, double ranOffBefore)
{
    Expectation e;
    const auto is = [&](Shape shape, double centre, double sd) {
        e.shape = shape;
        e.centre = centre;
        e.sd = sd;
    };
    const auto between = [&](double low, double high) {
        e.low = low;
        e.high = high;
    };
    switch (look.kind) {
    case LookKind::depth: {
        const double cm = model::castingsDepth(of, look.slot);
        within(e, Shape::censored, cm, 0.20, 0.3);
        between(0.0, of.ensemble.height * 100.0);
        break;
    }
    case LookKind::bits: {
        const double percent = model::bits(of, look.slot);
        within(e, Shape::censored, percent, 0.25, 5.0);
        between(0.0, 100.0);
        break;
    }
    case LookKind::left:
        within(e, Shape::censored, model::tracerLeft(of, look.slot), 0.0, 15.0);
        between(0.0, 100.0);
        break;
    case LookKind::weigh: {
        const double searched = std::clamp(look.share, 1e-3, 1.0);
        const double kg = heavierThan(of, found).kg * wormsHere(of, look.slot) * of.parameter(Parameter::recovery) * searched;
        is(Shape::logNormal, std::max(kg, leastMass), std::sqrt(0.15 * 0.15 + 0.03 * (1.0 / searched - 1.0)));
        break;
    }
    case LookKind::count: {
        const double bed = volume(of, look.slot);
        const double searched = bed > 0.0 ? std::min(look.litres / bed, 1.0) : 0.0;
        is(Shape::negativeBinomial, heavierThan(of, counted).number * wormsHere(of, look.slot) * countRecovery * searched, countSize);
        break;
    }
    case LookKind::wormsSeen: {
        const double perArea = model::colony(of) * wormsHere(of, look.slot) / of.ensemble.area;
        is(Shape::ordered, naturalLog(std::max(perArea, 1e-6)) - of.parameter(Parameter::abundanceSense), 0.5);
        e.cuts = seenCuts;
        e.cutCount = 2;
        break;
    }
    case LookKind::drain: {
        const double litres = inSump(look, of, ranOffBefore);
        within(e, Shape::censored, litres, 0.15, 0.1);
        between(0.0, 1e9);
        break;
    }
    case LookKind::drainPart: {
        const double litres = std::max(inSump(look, of, ranOffBefore), 1e-3);
        is(Shape::atLeast, litres, both(0.15, 1.0, 0.1 / litres));
        break;
    }
    case LookKind::sumpLevel: {
        // Read with a ruler, to 2 mm of some 8 cm; what it holds is the scale.
        const double full = of.ensemble.sumpCapacity;
        within(e, Shape::censored, of.block.stack.sump[of.lane], 0.0, 0.025 * full);
        between(0.0, full);
        break;
    }
    case LookKind::conductivity:
        is(Shape::logNormal, std::max(model::leachateConductivity(of), 0.01), 0.25);
        break;
    case LookKind::trayWeight: {
        const double kg = model::trayWeight(of, look.slot) + (look.tareKg ? *look.tareKg - of.parameter(Parameter::tare) : 0.0);
        within(e, Shape::normal, kg, 0.03, 0.1);
        break;
    }
    case LookKind::moisture:
        within(e, Shape::normal, moistureOf(of, look.slot), 0.0, 6.0);
        break;
    case LookKind::squeeze:
        is(Shape::ordered, waterShareOf(of, look.slot), 0.12);
        e.cuts = squeezeCuts;
        e.cutCount = 4;
        break;
    case LookKind::bedTemperature:
        within(e, Shape::normal, of.block.stack.bed[of.lane], 0.0, 0.7);
        break;
    case LookKind::harvestMass: {
        const double kg = model::contentsWeight(of, look.slot) + model::colony(of) * wormsHere(of, look.slot);
        is(Shape::logNormal, std::max(kg * look.share, leastMass), harvestNoise(0.10, look.share));
        break;
    }
    case LookKind::harvestVolume:
        is(Shape::logNormal, std::max(volume(of, look.slot) * look.share, 1e-3), harvestNoise(0.25, look.share)); // a heap is a looser measure than a scale
        break;
    case LookKind::wormsTaken:
        is(Shape::atLeast, std::max(model::colony(of), 1e-6), 0.15);
        break;
    }
    return e;
}

}
