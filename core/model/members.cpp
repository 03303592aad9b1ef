#include "core/model/members.h"

#include "core/model/elementary.h"
#include "core/model/masses.h"
#include "core/model/step.h"
#include "core/model/step_context.h"

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

namespace {

constexpr double leastPool = 1e-6;      ///< kg: smaller pools stay as they are
constexpr double mostMove = 0.7;        ///< log: further than this nothing is moved at once
constexpr double farthest = 8.0;        ///< sd from the middle of its prior: further no parameter is moved, whatever a record says

/// What one pool, or a sum of pools, of a block's members holds.
struct Pool { Members kg; };

/// Rows of all members as a block sees them: its own 64 of each, one after the other.
template <class Value>
class Rows {
public:
    Rows(std::span<Value> rows, int index, int members) : next_{rows.data() + static_cast<std::ptrdiff_t>(index) * lanes}, members_{members} {}
    Value* next()
    {
        Value* const row = next_;
        next_ += members_;
        return row;
    }

private:
    Value* next_;
    int members_;
};

template <class Each>
void eachMember(Each each)
{
    for (int m = 0; m < lanes; ++m) each(m);
}

Pool unsoftened(const TrayBlock& tray)
{
    Pool sum{};
    for (const Members& pool : tray.unsoftened) eachMember([&](int m) { sum.kg[m] += pool[m]; });
    return sum;
}

Pool colonyOf(const StackBlock& stack)
{
    Pool sum{};
    const MassClassTable& classes = massClassTable();
    for (int i = 0; i < massClasses; ++i) eachMember([&](int m) { sum.kg[m] += stack.worms[i][m] * classes.kilograms[i]; });
    return sum;
}

void readLogs(const Members& kg, double* row)
{
    Members some, logs;
    eachMember([&](int m) { some[m] = kg[m] > leastPool ? kg[m] : leastPool; });
    chosenKernels().logarithms(some, logs);
    eachMember([&](int m) { row[m] = logs[m]; });
}

/// The factors by which a pool goes from its own logarithm to another; 1 for one that is as good as empty.
Pool factorsTo(const double* wanted, const Members& kg)
{
    Members some, move;
    Pool factor;
    eachMember([&](int m) { some[m] = kg[m] > leastPool ? kg[m] : leastPool; });
    chosenKernels().logarithms(some, move);
    eachMember([&](int m) { move[m] = least(greatest(wanted[m] - move[m], -mostMove), mostMove); });
    chosenKernels().exponentials(move, factor.kg);
    eachMember([&](int m) { factor.kg[m] = kg[m] > leastPool ? factor.kg[m] : 1.0; });
    return factor;
}

void scaleColony(Ensemble::Block& block, const Pool& live, const Pool& by)
{
    StackBlock& stack = block.stack;
    Members dry;
    eachMember([&](int m) { dry[m] = stack.reserve[m] + dryPerLive * live.kg[m]; });
    for (TrayBlock& tray : block.trays)
        for (Members& stage : tray.cocoons)
            eachMember([&](int m) {
                dry[m] += dryPerLive * cocoonMass * stage[m];
                stage[m] *= by.kg[m];
            });
    for (Members& each : stack.worms) eachMember([&](int m) { each[m] *= by.kg[m]; });
    eachMember([&](int m) {
        stack.reserve[m] *= by.kg[m];
        stack.carbonIn[m] += (by.kg[m] - 1.0) * stack.wormCarbon[m];
        stack.wormCarbon[m] *= by.kg[m];
        stack.putIn[m] += (by.kg[m] - 1.0) * dry[m];
    });
}

struct TrayFactors { Pool raw, soft, castings, water; };

void scaleTray(StackBlock& stack, TrayBlock& tray, const TrayShape& shape, const Pool& unsoftened, const TrayFactors& by)
{
    Members rawCarbon{};
    for (int c = 0; c < softeningClasses; ++c) eachMember([&](int m) { rawCarbon[m] += tray.unsoftened[c][m] * shape.carbonShare[c]; });
    eachMember([&](int m) {
        const double whole = unsoftened.kg[m] + tray.softened[m] + tray.castings[m];
        const double restShare = carbonShareOfSoftened(tray.carbon[m], rawCarbon[m], tray.softened[m] + tray.castings[m]);
        const double soft = (by.soft.kg[m] - 1.0) * tray.softened[m];
        const double castings = (by.castings.kg[m] - 1.0) * tray.castings[m];
        const double more = (by.raw.kg[m] - 1.0) * unsoftened.kg[m] + soft + castings;
        const double carbon = greatest((by.raw.kg[m] - 1.0) * rawCarbon[m] + restShare * (soft + castings), -tray.carbon[m]);
        const double moved = tray.nitrogen[m] * more / (whole > 0.0 ? whole : 1.0);
        const double nitrogen = whole > 0.0 ? moved : 0.0;
        tray.softened[m] *= by.soft.kg[m];
        tray.castings[m] *= by.castings.kg[m];
        tray.tracer[m] *= by.raw.kg[m];
        tray.tracerStart[m] *= by.raw.kg[m];
        tray.carbon[m] += carbon;
        tray.nitrogen[m] += nitrogen;
        tray.input[m] = greatest(tray.input[m] + more, 0.0);
        stack.putIn[m] += more;
        stack.carbonIn[m] += carbon;
        stack.nitrogenIn[m] += nitrogen;
        stack.waterIn[m] += (by.water.kg[m] - 1.0) * tray.water[m];
        tray.water[m] *= by.water.kg[m];
    });
    for (Members& pool : tray.unsoftened) eachMember([&](int m) { pool[m] *= by.raw.kg[m]; });
}

}

void readMoved(const Ensemble& ensemble, int index, std::span<double> rows)
{
    const Ensemble::Block& block = ensemble.blocks[static_cast<std::size_t>(index)];
    Rows each{rows, index, ensemble.members()};
    const auto copy = [&](const Members& from) {
        double* const row = each.next();
        eachMember([&](int m) { row[m] = from[m]; });
    };
    for (const Members& standing : block.standing.z) copy(standing);
    copy(block.stack.drift);
    copy(block.stack.softNoise);
    readLogs(colonyOf(block.stack).kg, each.next());
    for (const TrayBlock& tray : block.trays) {
        readLogs(unsoftened(tray).kg, each.next());
        readLogs(tray.softened, each.next());
        readLogs(tray.castings, each.next());
        readLogs(tray.water, each.next());
    }
}

void setMoved(Ensemble& ensemble, int index, std::span<const double> rows)
{
    Ensemble::Block& block = ensemble.blocks[static_cast<std::size_t>(index)];
    Rows each{rows, index, ensemble.members()};
    const auto copy = [&](Members& to) {
        const double* const row = each.next();
        eachMember([&](int m) { to[m] = row[m]; });
    };
    for (Members& standing : block.standing.z) {
        copy(standing);
        eachMember([&](int m) { standing[m] = least(greatest(standing[m], -farthest), farthest); });
    }
    setFrom(block.parameters, block.standing, ensemble.species);
    copy(block.stack.drift);
    copy(block.stack.softNoise);
    chosenKernels().exponentials(block.stack.softNoise, block.stack.softFactor);
    const Pool live = colonyOf(block.stack);
    scaleColony(block, live, factorsTo(each.next(), live.kg));
    for (std::size_t t = 0; t < block.trays.size(); ++t) {
        TrayBlock& tray = block.trays[t];
        const Pool raw = unsoftened(tray);
        TrayFactors by;
        by.raw = factorsTo(each.next(), raw.kg);
        by.soft = factorsTo(each.next(), tray.softened);
        by.castings = factorsTo(each.next(), tray.castings);
        by.water = factorsTo(each.next(), tray.water);
        scaleTray(block.stack, tray, ensemble.shapes[t], raw, by);
    }
}

}
