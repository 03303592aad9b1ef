#include "core/model/measures.h"

#include "core/model/masses.h"

#include <algorithm>
#include <cmath>

namespace tierloam::model {

namespace {

constexpr double beyondMeasure = 999.0;

/// Settled part of the loose volume: food 1, cardboard 0.6, paper 0.4, what stays 1. Judgement.
constexpr double settled[softeningClasses] = {1.0, 1.0, 1.0, 0.4, 0.6, 1.0, 1.0, 1.0};

// The arithmetic of one measure, for one member and for a block alike.
double ratioOf(double raw, double castings) { return castings <= 0.0 ? (raw > 0.0 ? beyondMeasure : 0.0) : std::min(raw / castings, beyondMeasure); }
double depthOf(double castings, double area) { return castings * (100.0 / (castingsDensity * area)); }
double moistureOf(double water, double weight) { return weight > 0.0 ? 100.0 * water / weight : 0.0; }
double cappedShare(double part, double whole) { return whole > 0.0 ? std::min(part / whole, beyondMeasure) : 0.0; }
double conductivityOf(double salts, double litres) { return litres > 1e-6 ? 1000.0 * salts / litres / 0.64 : 0.0; }
constexpr int foodClasses = 3; ///< soft, mix and coffee; all other classes lie as bedding

void add(Members& to, const Members& what, double times)
{
    for (int m = 0; m < lanes; ++m) to[m] += what[m] * times;
}

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

double feedToCast(const MemberOf& of, int slot) { return ratioOf(unprocessed(of, slot), of.tray(slot).castings[of.lane]); }

double castingsDepth(const MemberOf& of, int slot) { return depthOf(of.tray(slot).castings[of.lane], of.ensemble.area); }

Layers layers(const MemberOf& of, int slot)
{
    const TrayShape& shape = of.ensemble.shapes[static_cast<std::size_t>(slot)];
    const double perArea = 100.0 / of.ensemble.area;
    Layers result{castingsDepth(of, slot), of.tray(slot).softened[of.lane] / softenedDensity * perArea, 0.0, 0.0};
    for (int c = 0; c < softeningClasses; ++c) {
        const double depth = of.tray(slot).unsoftened[c][of.lane] * volumeOfDry(c, shape.dryDensity[c]) * perArea;
        (c < foodClasses ? result.food : result.bedding) += depth;
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
    return moistureOf(of.tray(slot).water[of.lane], contentsWeight(of, slot));
}

double waterShare(const MemberOf& of, int slot)
{
    const TrayShape& shape = of.ensemble.shapes[static_cast<std::size_t>(slot)];
    const TrayBlock& tray = of.tray(slot);
    double held = softenedHeld * tray.softened[of.lane] + castingsHeld * tray.castings[of.lane];
    for (int c = 0; c < softeningClasses; ++c) held += shape.held[c] * tray.unsoftened[c][of.lane];
    held *= of.parameter(Parameter::fieldCapacity);
    return cappedShare(tray.water[of.lane], held);
}

double carbonToNitrogen(const MemberOf& of, int slot)
{
    const TrayBlock& tray = of.tray(slot);
    return cappedShare(tray.carbon[of.lane], tray.nitrogen[of.lane]);
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
    return conductivityOf(of.block.stack.sumpSalts[of.lane], of.block.stack.sump[of.lane]);
}

double room(const MemberOf& of, int slot)
{
    return (of.ensemble.height * 100.0 - 1.0 - layers(of, slot).total()) / 100.0 * of.ensemble.area;
}

bool ready(const MemberOf& of, int slot) { return ready(unprocessed(of, slot), of.tray(slot).castings[of.lane], castingsDepth(of, slot), of.ensemble.shapes[static_cast<std::size_t>(slot)].left); }
bool nearly(const MemberOf& of, int slot) { return nearly(unprocessed(of, slot), of.tray(slot).castings[of.lane]); }
bool filled(const MemberOf& of, int slot) { return filled(unprocessed(of, slot), of.tray(slot).castings[of.lane], castingsDepth(of, slot)); }

void readiness(const Ensemble& ensemble, int block, int slot, Readiness& out)
{
    const TrayBlock& tray = ensemble.blocks[static_cast<std::size_t>(block)].trays[static_cast<std::size_t>(slot)];
    Members raw{};
    for (int c = 0; c < quickClasses; ++c)
        if (ensemble.shapes[static_cast<std::size_t>(slot)].weight[c] > 0.0) add(raw, tray.unsoftened[c], 1.0);
    const double area = ensemble.area;
    const double left = ensemble.shapes[static_cast<std::size_t>(slot)].left;
    for (int m = 0; m < lanes; ++m) {
        const double depth = depthOf(tray.castings[m], area);
        const double unprocessed = tray.softened[m] + raw[m];
        out.ready[m] = ready(unprocessed, tray.castings[m], depth, left);
        out.filled[m] = filled(unprocessed, tray.castings[m], depth);
    }
}

void measures(const Ensemble& ensemble, int block, int slot, TrayMeasures& out)
{
    const Ensemble::Block& of = ensemble.blocks[static_cast<std::size_t>(block)];
    const TrayBlock& tray = of.trays[static_cast<std::size_t>(slot)];
    const TrayShape& shape = ensemble.shapes[static_cast<std::size_t>(slot)];
    const double area = ensemble.area;
    const double perArea = 100.0 / area;
    Members quick{}, held, dry{};
    for (int m = 0; m < lanes; ++m) {
        out.slow[m] = out.foodLayer[m] = out.beddingLayer[m] = out.cocoons[m] = 0.0;
        held[m] = softenedHeld * tray.softened[m] + castingsHeld * tray.castings[m];
    }
    for (int c = 0; c < softeningClasses; ++c) {
        if (shape.weight[c] <= 0.0) continue; // never given
        const double volume = volumeOfDry(c, shape.dryDensity[c]) * perArea;
        add(c < quickClasses ? quick : out.slow, tray.unsoftened[c], 1.0);
        add(dry, tray.unsoftened[c], 1.0);
        add(held, tray.unsoftened[c], shape.held[c]);
        add(c < foodClasses ? out.foodLayer : out.beddingLayer, tray.unsoftened[c], volume);
    }
    for (const Members& stage : tray.cocoons) add(out.cocoons, stage, 1.0);
    const Members& scale = of.parameters.value[static_cast<int>(Parameter::fieldCapacity)];
    for (int m = 0; m < lanes; ++m) {
        out.unprocessed[m] = tray.softened[m] + quick[m];
        out.castingsDepth[m] = depthOf(tray.castings[m], area);
        out.feedToCast[m] = ratioOf(out.unprocessed[m], tray.castings[m]);
        out.carbonToNitrogen[m] = cappedShare(tray.carbon[m], tray.nitrogen[m]);
        out.contentsWeight[m] = dry[m] + tray.softened[m] + tray.castings[m] + tray.water[m];
        out.moisture[m] = moistureOf(tray.water[m], out.contentsWeight[m]);
        out.waterShare[m] = cappedShare(tray.water[m], held[m] * scale[m]);
        out.softenedLayer[m] = tray.softened[m] / softenedDensity * perArea;
    }
}

void measures(const Ensemble& ensemble, int block, StackMeasures& out)
{
    const StackBlock& stack = ensemble.blocks[static_cast<std::size_t>(block)].stack;
    const MassClassTable& classes = massClassTable();
    for (int m = 0; m < lanes; ++m) out.colony[m] = out.worms[m] = out.adults[m] = 0.0;
    for (int i = 0; i < massClasses; ++i) {
        add(out.colony, stack.worms[i], classes.kilograms[i]);
        add(out.worms, stack.worms[i], 1.0);
        add(out.adults, stack.worms[i], classes.adultShare[i]);
    }
    for (int m = 0; m < lanes; ++m) out.leachateConductivity[m] = conductivityOf(stack.sumpSalts[m], stack.sump[m]);
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
