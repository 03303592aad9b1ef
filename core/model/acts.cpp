#include "core/model/acts.h"

#include "core/model/elementary.h"
#include "core/model/masses.h"

#include <algorithm>
#include <array>
#include <cstring>

namespace tierloam::model {

namespace {

constexpr double wormCarbonShare = 0.45; ///< kg C per kg DM of worms put in. Judgement.

double& row(Ensemble::Block& block, Parameter p, int m) { return block.parameters.value[static_cast<int>(p)][m]; }

double cocoonDryMatter(const TrayBlock& tray, int m)
{
    double number = 0.0;
    for (const Members& stage : tray.cocoons) number += stage[m];
    return dryPerLive * cocoonMass * number;
}

/// Dry matter of worms, cocoons and reserve, of which wormCarbon is the carbon.
double livingDryMatter(const Ensemble::Block& block, int m)
{
    double dry = block.stack.reserve[m] + dryPerLive * liveMass(block.stack, m);
    for (const TrayBlock& tray : block.trays) dry += cocoonDryMatter(tray, m);
    return dry;
}

/// Takes a share of the worms and of their reserve, and books their carbon as taken out; returns the dry matter that left.
double wormsLeave(Ensemble::Block& block, int m, double share)
{
    StackBlock& stack = block.stack;
    const double living = livingDryMatter(block, m);
    double dry = stack.reserve[m] * share;
    stack.reserve[m] -= dry;
    for (int i = 0; i < massClasses; ++i) {
        const double number = stack.worms[i][m] * share;
        stack.worms[i][m] -= number;
        dry += dryPerLive * massClassTable().kilograms[i] * number;
    }
    const double carbon = living > 0.0 ? stack.wormCarbon[m] * least(1.0, dry / living) : 0.0;
    stack.wormCarbon[m] -= carbon;
    stack.carbonOut[m] += carbon;
    return dry;
}

double maintenanceAt(const StackBlock& stack, int m)
{
    // Arrhenius 0.25 eV, as the step has it.
    return exponential(0.25 / 8.617333262e-5 * (1.0 / 298.15 - 1.0 / (stack.bed[m] + 273.15)));
}

void putWorms(Ensemble::Block& block, int m, double kg, double each)
{
    StackBlock& stack = block.stack;
    const MassClassTable& classes = massClassTable();
    const double number = kg / each;
    const Neighbours to = neighboursOf(each);
    const std::array<double, 2> added{number * to.toLower, number * to.toUpper};
    double dry = 0.0;
    for (int k = 0; k < 2; ++k) {
        const int i = to.lower + k;
        const double count = added[static_cast<std::size_t>(k)];
        stack.worms[i][m] += count;
        const double need = 1e-3 * row(block, Parameter::maintenance, m) * classes.threeQuarters[i] * maintenanceAt(stack, m) * count;
        const double reserve = need / row(block, Parameter::reserveRate, m);
        stack.reserve[m] += reserve;
        dry += reserve + dryPerLive * classes.kilograms[i] * count;
    }
    stack.putIn[m] += dry;
    stack.wormCarbon[m] += wormCarbonShare * dry;
    stack.carbonIn[m] += wormCarbonShare * dry;
}

}

Substance Substance::of(const materials::Material& material)
{
    return {static_cast<int>(material.softening), material.dryShare(), material.nitrogenPercent / 100.0, material.carbonShare(),
            material.waterHeldKgPerKg, material.bulkKgPerM3};
}

void addTray(Ensemble& ensemble, int batch, int tray, int day)
{
    const bool only = ensemble.shapes.empty();
    TrayShape shape{};
    for (int c = 0; c < softeningClasses; ++c) shape.dryDensity[c] = 1.0;
    shape.tracerClass = -1;
    shape.batch = batch;
    shape.tray = tray;
    shape.beddedDay = day;
    shape.left = 1.0;
    for (TrayShape& other : ensemble.shapes) other.drying = false; // another tray on top ends it
    ensemble.shapes.push_back(shape);
    for (Ensemble::Block& block : ensemble.blocks) {
        TrayBlock& added = block.trays.emplace_back();
        std::memset(static_cast<void*>(&added), 0, sizeof added);
        for (int m = 0; m < lanes; ++m) {
            added.share[m] = only ? 1.0 : 0.0;
            added.air[m] = added.wet[m] = 1.0;
        }
    }
}

void addMatter(Ensemble& ensemble, int slot, const Substance& substance, const PerMember& fresh, const PerMember& dryShare,
               std::optional<double> waterInstead, bool isFeeding)
{
    TrayShape& shape = ensemble.shapes[static_cast<std::size_t>(slot)];
    const int c = substance.softening;
    // The shared means are weighted by the dry matter as written, which is the same for all members.
    double nominal = 0.0;
    for (std::size_t i = 0; i < fresh.size(); ++i) nominal += fresh[i];
    nominal = nominal / static_cast<double>(fresh.size()) * substance.dryShare;
    const double weight = shape.weight[c] + nominal;
    if (weight <= 0.0) return;
    const auto mean = [&](double& old, double added) { old = (old * shape.weight[c] + added * nominal) / weight; };
    mean(shape.held[c], substance.held);
    mean(shape.dryDensity[c], substance.bulk * substance.dryShare);
    mean(shape.carbonShare[c], substance.carbon);
    shape.weight[c] = weight;
    const double there = shape.left * shape.whole + nominal;
    shape.whole = std::max(shape.whole, there);
    shape.left = shape.whole > 0.0 ? there / shape.whole : 1.0;
    if (isFeeding) shape.tracerClass = c;
    for (int b = 0; b < static_cast<int>(ensemble.blocks.size()); ++b) {
        Ensemble::Block& block = ensemble.blocks[static_cast<std::size_t>(b)];
        TrayBlock& tray = block.trays[static_cast<std::size_t>(slot)];
        for (int m = 0; m < lanes; ++m) {
            const std::size_t member = static_cast<std::size_t>(b) * lanes + static_cast<std::size_t>(m);
            const double dry = fresh[member] * dryShare[member];
            tray.unsoftened[c][m] += dry;
            const double water = waterInstead ? dry * *waterInstead : fresh[member] - dry;
            tray.nitrogen[m] += dry * substance.nitrogen;
            tray.carbon[m] += dry * substance.carbon;
            tray.water[m] += water;
            tray.input[m] += dry;
            StackBlock& stack = block.stack;
            stack.putIn[m] += dry;
            stack.nitrogenIn[m] += dry * substance.nitrogen;
            stack.carbonIn[m] += dry * substance.carbon;
            stack.waterIn[m] += water;
            if (isFeeding) tray.tracer[m] = tray.tracerStart[m] = dry;
        }
    }
}

void pour(Ensemble& ensemble, int slot, double litres)
{
    const TrayShape& shape = ensemble.shapes[static_cast<std::size_t>(slot)];
    for (Ensemble::Block& block : ensemble.blocks) {
        TrayBlock& tray = block.trays[static_cast<std::size_t>(slot)];
        for (int m = 0; m < lanes; ++m) {
            // As the tray is now: what was given today holds water too.
            double capacity = softenedHeld * tray.softened[m] + castingsHeld * tray.castings[m];
            for (int c = 0; c < softeningClasses; ++c) capacity += shape.held[c] * tray.unsoftened[c][m];
            capacity *= row(block, Parameter::fieldCapacity, m);
            const double deficit = greatest(capacity - tray.water[m], 0.0);
            const double beyond = greatest(litres - deficit, 0.0);
            const double through = beyond * row(block, Parameter::bypass, m);
            const double salts = tray.salts[m] * through / (tray.water[m] + litres + 1e-30);
            tray.water[m] += litres - through;
            tray.salts[m] -= salts;
            block.stack.waterIn[m] += litres;
            block.stack.sump[m] += through; // a full sump runs over, an open spigot lets it off, at the next step
            block.stack.sumpSalts[m] += salts;
            block.stack.intoSump[m] += through;
        }
    }
}

namespace {

/// Worms of one member: counted ones of one mass, else a grown mixed colony.
void stockMember(Ensemble::Block& block, int m, int slot, double kg, std::optional<int> number)
{
    // Shares of its mass. Judgement.
    static constexpr std::array<std::array<double, 2>, 4> mixed{{{0.08, 50e-6}, {0.20, 120e-6}, {0.32, 250e-6}, {0.40, 400e-6}}};
    const double there = liveMass(block.stack, m);
    const double coming = kg > 0.0 ? kg / (there + kg) : 0.0;
    for (TrayBlock& tray : block.trays) tray.share[m] *= 1.0 - coming;
    block.trays[static_cast<std::size_t>(slot)].share[m] += coming;
    if (number && *number > 0) {
        putWorms(block, m, kg, kg / *number);
    } else {
        for (const auto& [share, each] : mixed) putWorms(block, m, kg * share, each);
    }
}

}

void stock(Ensemble& ensemble, int slot, double kg, std::optional<int> number, bool bought)
{
    for (Ensemble::Block& block : ensemble.blocks)
        for (int m = 0; m < lanes; ++m) stockMember(block, m, slot, kg * (number ? 1.0 : row(block, bought ? Parameter::stockBias : Parameter::scaleBias, m)), number);
}

void stockEach(Ensemble& ensemble, int slot, const PerMember& kg)
{
    for (std::size_t b = 0; b < ensemble.blocks.size(); ++b)
        for (int m = 0; m < lanes; ++m) stockMember(ensemble.blocks[b], m, slot, kg[b * lanes + static_cast<std::size_t>(m)], std::nullopt);
}

void takeWorms(Ensemble& ensemble, double kg)
{
    for (Ensemble::Block& block : ensemble.blocks) {
        for (int m = 0; m < lanes; ++m) {
            const double there = liveMass(block.stack, m);
            const double share = there > 0.0 ? least(kg / there, 1.0) : 0.0;
            block.stack.takenOut[m] += wormsLeave(block, m, share);
        }
    }
}

void takeWormShare(Ensemble& ensemble, double share) { takeWormShareEach(ensemble, PerMember(static_cast<std::size_t>(ensemble.members()), share)); }

void takeWormShareEach(Ensemble& ensemble, const PerMember& share)
{
    for (std::size_t b = 0; b < ensemble.blocks.size(); ++b) {
        Ensemble::Block& block = ensemble.blocks[b];
        for (int m = 0; m < lanes; ++m) block.stack.takenOut[m] += wormsLeave(block, m, least(share[b * lanes + static_cast<std::size_t>(m)], 1.0));
    }
}

void layCastingsEach(Ensemble& ensemble, int slot, const PerMember& dry)
{
    constexpr double carbonShare = 0.33, nitrogenShare = carbonShare / 15.0;
    for (std::size_t b = 0; b < ensemble.blocks.size(); ++b) {
        StackBlock& stack = ensemble.blocks[b].stack;
        TrayBlock& tray = ensemble.blocks[b].trays[static_cast<std::size_t>(slot)];
        for (int m = 0; m < lanes; ++m) {
            const double more = dry[b * lanes + static_cast<std::size_t>(m)];
            const double water = more * castingsHeld * row(ensemble.blocks[b], Parameter::fieldCapacity, m);
            tray.castings[m] += more;
            tray.carbon[m] += more * carbonShare;
            tray.nitrogen[m] += more * nitrogenShare;
            tray.water[m] += water;
            tray.input[m] += more;
            stack.putIn[m] += more;
            stack.carbonIn[m] += more * carbonShare;
            stack.nitrogenIn[m] += more * nitrogenShare;
            stack.waterIn[m] += water;
        }
    }
}

void allWormsInto(Ensemble& ensemble, int slot)
{
    for (Ensemble::Block& block : ensemble.blocks) {
        for (int m = 0; m < lanes; ++m) {
            double all = 0.0; // none where there are no worms
            for (TrayBlock& tray : block.trays) {
                all += tray.share[m];
                tray.share[m] = 0.0;
            }
            block.trays[static_cast<std::size_t>(slot)].share[m] = all;
        }
    }
}

void drain(Ensemble& ensemble, std::optional<double> litres)
{
    for (Ensemble::Block& block : ensemble.blocks) {
        StackBlock& stack = block.stack;
        for (int m = 0; m < lanes; ++m) {
            const double taken = litres ? least(*litres, stack.sump[m]) : stack.sump[m];
            const double share = stack.sump[m] > 0.0 ? taken / stack.sump[m] : 0.0;
            const double salts = stack.sumpSalts[m] * share;
            stack.sumpSalts[m] -= salts;
            stack.saltsOut[m] += salts;
            stack.sump[m] -= taken;
            stack.waterOut[m] += taken;
        }
    }
}

void lieInAir(Ensemble& ensemble, double celsius)
{
    for (Ensemble::Block& block : ensemble.blocks)
        for (int m = 0; m < lanes; ++m) block.stack.bed[m] = celsius + block.stack.warmth[m] + block.stack.drift[m];
}

void warmBedEach(Ensemble& ensemble, const PerMember& kelvin)
{
    for (std::size_t b = 0; b < ensemble.blocks.size(); ++b) {
        StackBlock& stack = ensemble.blocks[b].stack;
        for (int m = 0; m < lanes; ++m) {
            const double warmer = kelvin[b * lanes + static_cast<std::size_t>(m)];
            stack.bed[m] += warmer;
            stack.drift[m] += warmer;
        }
    }
}

void rotate(Ensemble& ensemble)
{
    std::rotate(ensemble.shapes.begin(), ensemble.shapes.begin() + 1, ensemble.shapes.end());
    for (TrayShape& shape : ensemble.shapes) shape.drying = false;
    ensemble.shapes.back().drying = true;
    for (Ensemble::Block& block : ensemble.blocks) std::rotate(block.trays.begin(), block.trays.begin() + 1, block.trays.end());
}

void endDrying(Ensemble& ensemble)
{
    for (TrayShape& shape : ensemble.shapes) shape.drying = false;
}

void harvest(Ensemble& ensemble, int slot, double share)
{
    const std::size_t at = static_cast<std::size_t>(slot);
    const bool whole = share >= 1.0;
    for (Ensemble::Block& block : ensemble.blocks) {
        TrayBlock& tray = block.trays[at];
        for (int m = 0; m < lanes; ++m) {
            double dry = 0.0;
            const auto take = [&](double& pool) {
                const double taken = whole ? pool : pool * share;
                pool -= taken;
                return taken;
            };
            for (Members& pool : tray.unsoftened) dry += take(pool[m]);
            dry += take(tray.softened[m]);
            dry += take(tray.castings[m]);
            StackBlock& stack = block.stack;
            const double living = livingDryMatter(block, m);
            double cocoons = 0.0;
            for (Members& stage : tray.cocoons) cocoons += take(stage[m]);
            stack.nitrogenOut[m] += take(tray.nitrogen[m]);
            stack.carbonOut[m] += take(tray.carbon[m]);
            stack.saltsOut[m] += take(tray.salts[m]);
            stack.waterOut[m] += take(tray.water[m]);
            take(tray.tracer[m]);
            take(tray.tracerStart[m]);
            const double cocoonDry = cocoons * dryPerLive * cocoonMass;
            const double cocoonCarbon = living > 0.0 ? stack.wormCarbon[m] * least(1.0, cocoonDry / living) : 0.0;
            stack.wormCarbon[m] -= cocoonCarbon;
            stack.carbonOut[m] += cocoonCarbon;
            const double worms = tray.share[m] * (whole ? 1.0 : share);
            dry += cocoonDry + wormsLeave(block, m, least(worms, 1.0));
            stack.takenOut[m] += dry;
            // Shares are of the worms that stay; by their own sum, since 1 − worms loses its digits when nearly all leave.
            tray.share[m] -= least(worms, tray.share[m]);
            double left = 0.0;
            for (const TrayBlock& any : block.trays) left += any.share[m];
            if (left > 1e-12)
                for (TrayBlock& any : block.trays) any.share[m] /= left;
        }
    }
    if (!whole) {
        ensemble.shapes[at].left *= 1.0 - share;
        return;
    }
    ensemble.shapes.erase(ensemble.shapes.begin() + slot);
    for (Ensemble::Block& block : ensemble.blocks) {
        block.trays.erase(block.trays.begin() + slot);
        // All worms were in the tray that went: whoever comes spreads anew from the lowest.
        for (int m = 0; m < lanes; ++m) {
            double sum = 0.0;
            for (const TrayBlock& any : block.trays) sum += any.share[m];
            if (sum <= 0.5 && !block.trays.empty()) block.trays.front().share[m] += 1.0 - sum;
        }
    }
}

}
