#include "core/model/measures.h"

#include "core/model/masses.h"

#include <algorithm>
#include <cmath>

namespace tierloam::model {

namespace {

constexpr double beyondMeasure = 999.0;

/// Settled part of the loose volume: food 1, cardboard 0.6, paper 0.4, what stays 1. Judgement.
constexpr double settled[softeningClasses] = {1.0, 1.0, 1.0, 0.4, 0.6, 1.0, 1.0, 1.0};

double sumOf(const MemberOf& of, int slot, int from, int to)
{
    double sum = 0.0;
    for (int c = from; c < to; ++c) sum += of.tray(slot).unsoftened[c][of.lane];
    return sum;
}

}

double volumeOfDry(int softeningClass, double dryDensity) { return dryDensity > 0.0 ? settled[softeningClass] / dryDensity : 0.0; }

double quickUnsoftened(const MemberOf& of, int slot) { return sumOf(of, slot, 0, quickClasses); }
double slowUnsoftened(const MemberOf& of, int slot) { return sumOf(of, slot, quickClasses, softeningClasses); }
double unprocessed(const MemberOf& of, int slot) { return of.tray(slot).softened[of.lane] + quickUnsoftened(of, slot); }

double feedToCast(const MemberOf& of, int slot)
{
    const double castings = of.tray(slot).castings[of.lane];
    const double raw = unprocessed(of, slot);
    if (castings <= 0.0) return raw > 0.0 ? beyondMeasure : 0.0;
    return std::min(raw / castings, beyondMeasure);
}

double castingsDepth(const MemberOf& of, int slot) { return of.tray(slot).castings[of.lane] / castingsDensity / of.ensemble.area * 100.0; }

Layers layers(const MemberOf& of, int slot)
{
    const TrayShape& shape = of.ensemble.shapes[static_cast<std::size_t>(slot)];
    const double perArea = 100.0 / of.ensemble.area;
    Layers result{castingsDepth(of, slot), of.tray(slot).softened[of.lane] / softenedDensity * perArea, 0.0, 0.0};
    for (int c = 0; c < softeningClasses; ++c) {
        const double depth = of.tray(slot).unsoftened[c][of.lane] * volumeOfDry(c, shape.dryDensity[c]) * perArea;
        (c < 3 ? result.food : result.bedding) += depth;
    }
    return result;
}

double dryMatter(const MemberOf& of, int slot)
{
    return sumOf(of, slot, 0, softeningClasses) + of.tray(slot).softened[of.lane] + of.tray(slot).castings[of.lane];
}

double contentsWeight(const MemberOf& of, int slot) { return dryMatter(of, slot) + of.tray(slot).water[of.lane]; }

double trayWeight(const MemberOf& of, int slot) { return trayWeight(of, slot, colony(of)); }

double trayWeight(const MemberOf& of, int slot, double colonyKg)
{
    return contentsWeight(of, slot) + colonyKg * of.tray(slot).share[of.lane] + of.parameter(Parameter::tare);
}

double moisture(const MemberOf& of, int slot)
{
    const double weight = contentsWeight(of, slot);
    return weight > 0.0 ? 100.0 * of.tray(slot).water[of.lane] / weight : 0.0;
}

double waterShare(const MemberOf& of, int slot)
{
    const TrayShape& shape = of.ensemble.shapes[static_cast<std::size_t>(slot)];
    const TrayBlock& tray = of.tray(slot);
    double held = softenedHeld * tray.softened[of.lane] + castingsHeld * tray.castings[of.lane];
    for (int c = 0; c < softeningClasses; ++c) held += shape.held[c] * tray.unsoftened[c][of.lane];
    held *= of.parameter(Parameter::fieldCapacity);
    return held > 0.0 ? std::min(tray.water[of.lane] / held, beyondMeasure) : 0.0;
}

double carbonToNitrogen(const MemberOf& of, int slot)
{
    const TrayBlock& tray = of.tray(slot);
    const double nitrogen = tray.nitrogen[of.lane];
    return nitrogen > 0.0 ? std::min(tray.carbon[of.lane] / nitrogen, beyondMeasure) : 0.0;
}

double cocoons(const MemberOf& of, int slot)
{
    double number = 0.0;
    for (const Members& stage : of.tray(slot).cocoons) number += stage[of.lane];
    return number;
}

double tracerLeft(const MemberOf& of, int slot)
{
    const TrayBlock& tray = of.tray(slot);
    return tray.tracerStart[of.lane] > 0.0 ? 100.0 * tray.tracer[of.lane] / tray.tracerStart[of.lane] : 0.0;
}

double bits(const MemberOf& of, int slot)
{
    const TrayBlock& tray = of.tray(slot);
    const double mineral = tray.unsoftened[softeningClasses - 1][of.lane];
    const double recognisable = sumOf(of, slot, 0, softeningClasses) - mineral;
    const double whole = recognisable + tray.softened[of.lane] + tray.castings[of.lane];
    return whole > 0.0 ? 100.0 * recognisable / whole : 0.0;
}

double colony(const MemberOf& of)
{
    double kg = 0.0;
    for (int i = 0; i < massClasses; ++i) kg += of.block.stack.worms[i][of.lane] * massClassTable().kilograms[i];
    return kg;
}

double worms(const MemberOf& of)
{
    double number = 0.0;
    for (const Members& each : of.block.stack.worms) number += each[of.lane];
    return number;
}

double adults(const MemberOf& of)
{
    double number = 0.0;
    for (int i = 0; i < massClasses; ++i) number += of.block.stack.worms[i][of.lane] * massClassTable().adultShare[i];
    return number;
}

double leachateConductivity(const MemberOf& of)
{
    const StackBlock& stack = of.block.stack;
    return stack.sump[of.lane] > 1e-6 ? 1000.0 * stack.sumpSalts[of.lane] / stack.sump[of.lane] / 0.64 : 0.0;
}

double room(const MemberOf& of, int slot)
{
    return (of.ensemble.height * 100.0 - 1.0 - layers(of, slot).total()) / 100.0 * of.ensemble.area;
}

bool ready(const MemberOf& of, int slot) { return feedToCast(of, slot) <= readyRatio && castingsDepth(of, slot) >= readyDepth; }
bool nearly(const MemberOf& of, int slot) { return feedToCast(of, slot) <= nearlyRatio; }
bool filled(const MemberOf& of, int slot) { return castingsDepth(of, slot) >= filledDepth && feedToCast(of, slot) <= filledRatio; }

void readiness(const Ensemble& ensemble, int block, int slot, Readiness& out)
{
    const TrayBlock& tray = ensemble.blocks[static_cast<std::size_t>(block)].trays[static_cast<std::size_t>(slot)];
    Members raw;
    for (int m = 0; m < lanes; ++m) raw[m] = 0.0;
    for (int c = 0; c < quickClasses; ++c)
        for (int m = 0; m < lanes; ++m) raw[m] += tray.unsoftened[c][m];
    const double area = ensemble.area;
    for (int m = 0; m < lanes; ++m) {
        const double castings = tray.castings[m];
        const double ratio = (tray.softened[m] + raw[m]) / castings; // without castings the depth rules it out
        const double depth = castings / castingsDensity / area * 100.0;
        out.ready[m] = depth >= readyDepth && ratio <= readyRatio;
        out.filled[m] = depth >= filledDepth && ratio <= filledRatio;
    }
}

double ledgerError(const MemberOf& of)
{
    const StackBlock& stack = of.block.stack;
    double held = stack.reserve[of.lane] + dryPerLive * colony(of);
    for (int slot = 0; slot < of.ensemble.trays(); ++slot) held += dryMatter(of, slot) + dryPerLive * cocoonMass * cocoons(of, slot);
    const double put = stack.putIn[of.lane];
    return put > 0.0 ? (put - held - stack.respired[of.lane] - stack.takenOut[of.lane]) / put : held;
}

}
