#include "core/model/members.h"

#include "core/model/elementary.h"
#include "core/model/masses.h"

namespace tierloam::model {

namespace {

/// Blocks are made of rows of 64 doubles and of nothing else, so that members can be copied without knowing what they hold.
template <class Block>
constexpr std::size_t rowsOf()
{
    static_assert(sizeof(Block) % sizeof(Members) == 0);
    return sizeof(Block) / sizeof(Members);
}

template <class Block>
Members* rows(Block& block) { return reinterpret_cast<Members*>(&block); }
template <class Block>
const Members* rows(const Block& block) { return reinterpret_cast<const Members*>(&block); }

template <class Part>
void inheritPart(std::vector<Ensemble::Block>& to, const std::vector<Ensemble::Block>& from, std::span<const int> ancestors, Part part)
{
    using Block = std::remove_reference_t<decltype(part(to.front()))>;
    for (std::size_t r = 0; r < rowsOf<Block>(); ++r)
        for (std::size_t i = 0; i < ancestors.size(); ++i) {
            const std::size_t a = static_cast<std::size_t>(ancestors[i]);
            rows(part(to[i / lanes]))[r][i % lanes] = rows(part(from[a / lanes]))[r][a % lanes];
        }
}

}

void inherit(Ensemble& ensemble, std::span<const int> ancestors)
{
    const std::vector<Ensemble::Block> before = ensemble.blocks;
    inheritPart(ensemble.blocks, before, ancestors, [](auto& block) -> auto& { return block.standing; });
    inheritPart(ensemble.blocks, before, ancestors, [](auto& block) -> auto& { return block.parameters; });
    inheritPart(ensemble.blocks, before, ancestors, [](auto& block) -> auto& { return block.stack; });
    for (std::size_t t = 0; t < ensemble.shapes.size(); ++t)
        inheritPart(ensemble.blocks, before, ancestors, [t](auto& block) -> auto& { return block.trays[t]; });
}

std::vector<double> standings(const Ensemble& ensemble)
{
    const std::size_t members = static_cast<std::size_t>(ensemble.members());
    std::vector<double> z(members * parameterCount);
    for (std::size_t r = 0; r < parameterCount; ++r)
        for (std::size_t i = 0; i < members; ++i) z[r * members + i] = ensemble.blocks[i / lanes].standing.z[r][i % lanes];
    return z;
}

void setStandings(Ensemble& ensemble, std::span<const double> z)
{
    const std::size_t members = static_cast<std::size_t>(ensemble.members());
    for (std::size_t r = 0; r < parameterCount; ++r)
        for (std::size_t i = 0; i < members; ++i) ensemble.blocks[i / lanes].standing.z[r][i % lanes] = z[r * members + i];
    for (Ensemble::Block& block : ensemble.blocks) setFrom(block.parameters, block.standing, ensemble.species);
}

namespace {

constexpr double leastPool = 1e-6;      ///< kg: smaller pools stay as they are
constexpr double mostMove = 0.7;        ///< log: further than this nothing is moved at once

double logOf(double kg) { return naturalLog(kg > leastPool ? kg : leastPool); }

double unsoftened(const TrayBlock& tray, int m)
{
    double kg = 0.0;
    for (const Members& pool : tray.unsoftened) kg += pool[m];
    return kg;
}

/// The factor by which a pool goes from its own logarithm to another; 1 for one that is as good as empty.
double factorTo(double wanted, double kg)
{
    if (kg <= leastPool) return 1.0;
    const double move = wanted - naturalLog(kg);
    return exponential(move > mostMove ? mostMove : move < -mostMove ? -mostMove : move);
}

void scaleColony(Ensemble::Block& block, int m, double factor)
{
    StackBlock& stack = block.stack;
    double dry = stack.reserve[m] + dryPerLive * liveMass(stack, m);
    for (TrayBlock& tray : block.trays)
        for (Members& stage : tray.cocoons) {
            dry += dryPerLive * cocoonMass * stage[m];
            stage[m] *= factor;
        }
    for (Members& each : stack.worms) each[m] *= factor;
    stack.reserve[m] *= factor;
    stack.carbonIn[m] += (factor - 1.0) * stack.wormCarbon[m];
    stack.wormCarbon[m] *= factor;
    stack.putIn[m] += (factor - 1.0) * dry;
}

void scaleTray(StackBlock& stack, TrayBlock& tray, const TrayShape& shape, int m, double raw, double soft, double castings, double water)
{
    const double whole = unsoftened(tray, m) + tray.softened[m] + tray.castings[m];
    double rawCarbon = 0.0;
    for (int c = 0; c < softeningClasses; ++c) rawCarbon += tray.unsoftened[c][m] * shape.carbonShare[c];
    const double rest = tray.softened[m] + tray.castings[m];
    const double restShare = rest > 0.0 ? greatest(tray.carbon[m] - rawCarbon, 0.0) / rest : 0.0;
    const double more = (raw - 1.0) * unsoftened(tray, m) + (soft - 1.0) * tray.softened[m] + (castings - 1.0) * tray.castings[m];
    const double carbon = greatest((raw - 1.0) * rawCarbon + restShare * ((soft - 1.0) * tray.softened[m] + (castings - 1.0) * tray.castings[m]), -tray.carbon[m]);
    const double nitrogen = whole > 0.0 ? tray.nitrogen[m] * more / whole : 0.0;
    for (Members& pool : tray.unsoftened) pool[m] *= raw;
    tray.tracer[m] *= raw;
    tray.tracerStart[m] *= raw;
    tray.softened[m] *= soft;
    tray.castings[m] *= castings;
    tray.carbon[m] += carbon;
    tray.nitrogen[m] += nitrogen;
    tray.input[m] = greatest(tray.input[m] + more, 0.0);
    stack.putIn[m] += more;
    stack.carbonIn[m] += carbon;
    stack.nitrogenIn[m] += nitrogen;
    stack.waterIn[m] += (water - 1.0) * tray.water[m];
    tray.water[m] *= water;
}

}

std::vector<double> stateLogs(const Ensemble& ensemble)
{
    const std::size_t members = static_cast<std::size_t>(ensemble.members());
    std::vector<double> logs(members * static_cast<std::size_t>(stateRows(ensemble)));
    for (std::size_t i = 0; i < members; ++i) {
        const Ensemble::Block& block = ensemble.blocks[i / lanes];
        const int m = static_cast<int>(i % lanes);
        std::size_t r = 0;
        logs[r++ * members + i] = block.stack.drift[m];
        logs[r++ * members + i] = block.stack.softNoise[m];
        const auto put = [&](double kg) { logs[r++ * members + i] = logOf(kg); };
        put(liveMass(block.stack, m));
        for (const TrayBlock& tray : block.trays) {
            put(unsoftened(tray, m));
            put(tray.softened[m]);
            put(tray.castings[m]);
            put(tray.water[m]);
        }
    }
    return logs;
}

void setStateLogs(Ensemble& ensemble, std::span<const double> logs)
{
    const std::size_t members = static_cast<std::size_t>(ensemble.members());
    for (std::size_t i = 0; i < members; ++i) {
        Ensemble::Block& block = ensemble.blocks[i / lanes];
        const int m = static_cast<int>(i % lanes);
        std::size_t r = 0;
        block.stack.drift[m] = logs[r++ * members + i];
        block.stack.softNoise[m] = logs[r++ * members + i];
        block.stack.softFactor[m] = exponential(block.stack.softNoise[m]);
        const auto next = [&](double kg) { return factorTo(logs[r++ * members + i], kg); };
        scaleColony(block, m, next(liveMass(block.stack, m)));
        for (std::size_t t = 0; t < block.trays.size(); ++t) {
            TrayBlock& tray = block.trays[t];
            const double raw = next(unsoftened(tray, m));
            const double soft = next(tray.softened[m]);
            const double castings = next(tray.castings[m]);
            scaleTray(block.stack, tray, ensemble.shapes[t], m, raw, soft, castings, next(tray.water[m]));
        }
    }
}

}
