#include "core/reckoning/kept_members.h"

#include "core/reckoning/kept_fields.h"
#include "core/reckoning/stack_run.h"

#include <algorithm>

namespace tierloam::reckoning {

/// What the run's own types hide from everybody else.
struct ArchiveAccess {
    template <class Archive>
    static void pass(Archive& archive, LogWeights& of) { archive::each(archive, of.log_, of.equal_); }
    template <class Archive>
    static void pass(Archive& archive, PastWeek& of)
    {
        std::size_t many = archive::passSize(archive, of.days_.size());
        of.days_.resize(many);
        for (auto& day : of.days_) archive::each(archive, day.values);
    }
    template <class Archive>
    static void pass(Archive& archive, Raised& of) { archive::each(archive, of.since_, of.low_); }
};

namespace archive {

// As kept_fields.h: one list for both ways, and each names every member of its type.

template <class Archive>
void pass(Archive& archive, LogWeights& of) { ArchiveAccess::pass(archive, of); }
template <class Archive>
void pass(Archive& archive, PastWeek& of) { ArchiveAccess::pass(archive, of); }
template <class Archive>
void pass(Archive& archive, Raised& of) { ArchiveAccess::pass(archive, of); }

template <class Archive, class Dimension>
void pass(Archive& archive, Measure<Dimension>& of)
{
    double base = of.base();
    archive.raw(&base, sizeof base);
    of = Measure<Dimension>{base};
}

/// Blocks are rows of 64 numbers and nothing else.
template <class Archive, class Block>
void passRows(Archive& archive, Block& of)
{
    static_assert(std::is_trivially_copyable_v<Block> && sizeof(Block) % sizeof(model::Members) == 0);
    archive.raw(&of, sizeof of);
}

template <class Archive>
void pass(Archive& archive, model::TrayBlock& of) { passRows(archive, of); }

template <class Archive>
void pass(Archive& archive, model::Ensemble::Block& of)
{
    auto& [standing, parameters, stack, trays] = of;
    passRows(archive, standing);
    passRows(archive, parameters);
    passRows(archive, stack);
    each(archive, trays);
}

template <class Archive, std::size_t many>
void passAll(Archive& archive, double (&values)[many]) { archive.raw(values, sizeof values); }

template <class Archive>
void pass(Archive& archive, model::TrayShape& of)
{
    auto& [held, dryDensity, carbonShare, weight, tracerClass, batch, tray, bedded, drying, left, whole] = of;
    passAll(archive, held);
    passAll(archive, dryDensity);
    passAll(archive, carbonShare);
    passAll(archive, weight);
    each(archive, tracerClass, batch, tray, bedded, drying, left, whole);
}

template <class Archive>
void pass(Archive& archive, model::SpeciesTemperatures& of)
{
    auto& [coldest, best, hottest] = of;
    each(archive, coldest, best, hottest);
}

template <class Archive>
void pass(Archive& archive, model::Ensemble& of)
{
    auto& [key, area, height, sump, noisy, species, shapes, blocks] = of;
    each(archive, key, area, height, sump, noisy, species, shapes, blocks);
}

template <class Archive>
void pass(Archive& archive, FirstDays& of)
{
    auto& [ready, filled] = of;
    each(archive, ready, filled);
}

template <class Archive>
void pass(Archive& archive, UnwrittenFeeding& of)
{
    auto& [day, usual, given] = of;
    each(archive, day, usual, given);
}

template <class Archive>
void pass(Archive& archive, Population& of)
{
    auto& [stack, weights, normalised, week, firsts, ranOff, unwritten, ready, filled] = of;
    each(archive, stack, weights, normalised, week, firsts, ranOff, unwritten, ready, filled);
}

template <class Archive>
void pass(Archive& archive, Habit& of)
{
    auto& [amount, every, from] = of;
    each(archive, amount, every, from);
}

template <class Archive>
void pass(Archive& archive, journal::StackSettings& of)
{
    auto& [area, height, trays, sump, place, temp, stand] = of;
    each(archive, area, height, trays, sump, place, temp, stand);
}

template <class Archive>
void pass(Archive& archive, Surroundings& of)
{
    auto& [bedded, settings, spigot, lid, lidBack, southern, air, humidity] = of;
    each(archive, bedded, settings, spigot, lid, lidBack, southern, air, humidity);
}

template <class Archive>
void pass(Archive& archive, RunState::Lifted& of)
{
    auto& [on, ready] = of;
    each(archive, on, ready);
}

template <class Archive>
void pass(Archive& archive, RunState& of)
{
    auto& [day, members, ready, turn, turnBatch, steps, water, cover, around, oversized, odd, settled, drains, harvests, turns, lifted] = of;
    each(archive, day, members, ready, turn, turnBatch, steps, water, cover, around, oversized, odd, settled, drains, harvests, turns, lifted);
}

template <class Archive>
void pass(Archive& archive, Snapshot& of)
{
    auto& [prefix, state] = of;
    each(archive, prefix, state);
}

}

namespace {

constexpr std::string_view mark = "tierloam members 1\n";

/// Whether all rows of a snapshot are as long as each other asks for.
bool isWhole(const RunState& state)
{
    const Population& members = state.members;
    const auto count = static_cast<std::size_t>(members.stack.members());
    const std::size_t trays = members.stack.shapes.size();
    const auto rows = [&](const std::vector<std::vector<char>>& values) {
        return std::all_of(values.begin(), values.end(), [&](const std::vector<char>& each) { return each.size() == count; });
    };
    return count > 0 && members.weights.size() == count && (members.normalised.empty() || members.normalised.size() == count)
        && members.ranOffBefore.size() == count && rows(members.readyNow) && rows(members.filledNow)
        && std::all_of(members.stack.blocks.begin(), members.stack.blocks.end(), [&](const auto& block) { return block.trays.size() == trays; })
        && std::all_of(members.firsts.begin(), members.firsts.end(), [&](const auto& each) { return each.second.ready.size() == count && each.second.filled.size() == count; })
        && std::all_of(members.unwritten.begin(), members.unwritten.end(), [&](const auto& each) { return each.given.size() == count; });
}

Day dayOf(const Snapshot& snapshot, const StackReckoning& stack) { return stack.firstBedding + std::chrono::days{snapshot.state.day}; }

}

bool KeptSnapshots::standFor(const StackReckoning& stack) const
{
    if (stack.snapshots.empty()) return true;
    if (held.empty() || daysBetween(held.back().day, dayOf(*stack.snapshots.back(), stack)) > keptDays) return false;
    return std::any_of(stack.snapshots.begin(), stack.snapshots.end(), [&](const auto& each) { return each->prefix == held.back().prefix; });
}

std::string keptMembers(const StackReckoning& stack, const KeptFor& made, bool few, KeptSnapshots& written)
{
    written.held.clear();
    std::vector<const Snapshot*> chosen; // youngest first
    for (const int age : keptAges) {
        if (few && !chosen.empty()) break;
        for (auto each = stack.snapshots.rbegin(); each != stack.snapshots.rend(); ++each)
            if (daysBetween(dayOf(**each, stack), stack.asOf) >= age) {
                if (chosen.empty() || chosen.back() != each->get()) chosen.push_back(each->get());
                break;
            }
    }
    if (chosen.empty()) return {};
    std::reverse(chosen.begin(), chosen.end());
    for (const Snapshot* each : chosen) written.held.push_back({dayOf(*each, stack), each->prefix});
    KeptFor key = made; // copies of all: one list of fields serves both ways, and reading needs them mutable
    std::string name = stack.name;
    Day firstBedding = stack.firstBedding;
    std::vector<Snapshot> copies;
    for (const Snapshot* each : chosen) copies.push_back(*each);
    return archive::written(mark, key, name, firstBedding, copies);
}

std::vector<std::shared_ptr<const Snapshot>> membersFromKept(std::string_view bytes, const KeptFor& wanted, const StackReckoning& stack, KeptSnapshots& read)
{
    read.held.clear();
    archive::In in{mark, bytes};
    KeptFor key;
    std::string name;
    Day firstBedding{};
    std::vector<Snapshot> all;
    archive::each(in, key, name, firstBedding);
    if (!in.good() || !(key == wanted) || name != stack.name || firstBedding != stack.firstBedding) return {};
    archive::each(in, all);
    if (!in.good() || !in.atEnd() || !std::all_of(all.begin(), all.end(), [](const Snapshot& each) { return isWhole(each.state); })) return {};
    std::vector<std::shared_ptr<const Snapshot>> snapshots;
    for (Snapshot& each : all) snapshots.push_back(std::make_shared<const Snapshot>(std::move(each)));
    for (const auto& each : snapshots) read.held.push_back({dayOf(*each, stack), each->prefix});
    return snapshots;
}

}
