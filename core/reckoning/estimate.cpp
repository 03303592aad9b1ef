#include "core/reckoning/estimate.h"

#include "core/model/measures.h"
#include "core/reckoning/filter.h"

#include <algorithm>
#include <type_traits>

namespace tierloam::reckoning {

using namespace model;

namespace {

constexpr int weekLength = 7;

/// Bands over the members of one stack, with one scratch array for all. Members that differ in weight are made into as many that do not,
/// once for all bands of a day, since a selection among equals costs a fraction of a sort by weight; that is exact to one member.
class Reader {
public:
    Reader(const Ensemble& stack, Weights weights) : stack_{stack}, weights_{weights}, scratch_(static_cast<std::size_t>(stack.members()))
    {
        if (!weights.empty()) alike_ = systematic(weights, 0.5);
    }

    template <class Read>
    Band of(Read read)
    {
        fill(read);
        return bandOfScratch();
    }
    template <class Read>
    double median(Read read)
    {
        fill(read);
        return quantile(alike(), {}, 0.5);
    }
    template <class Rule>
    double share(Rule rule)
    {
        std::vector<char> holds(scratch_.size());
        for (int i = 0; i < stack_.members(); ++i) holds[static_cast<std::size_t>(i)] = rule(MemberOf{stack_, i}) ? 1 : 0;
        return probability(holds, weights_);
    }
    Band perDay(const PastWeek& week, PastWeek::Total total, double factor)
    {
        const int days = week.gain(total, weekLength, scratch_);
        for (double& value : scratch_) value *= days > 0 ? factor / days : 0.0;
        return bandOfScratch();
    }
    Band ratio(const PastWeek& week, PastWeek::Total above, PastWeek::Total below)
    {
        std::vector<double> divisor;
        week.gain(above, weekLength, scratch_);
        week.gain(below, weekLength, divisor);
        for (std::size_t i = 0; i < scratch_.size(); ++i) scratch_[i] = divisor[i] > 0.0 ? std::min(scratch_[i] / divisor[i], 999.0) : 0.0;
        return bandOfScratch();
    }

private:
    /// `read` takes a member, or a member and its number.
    template <class Read>
    void fill(Read read)
    {
        for (std::size_t i = 0; i < scratch_.size(); ++i) {
            const MemberOf member{stack_, static_cast<int>(i)};
            if constexpr (std::is_invocable_v<Read, const MemberOf&, std::size_t>) {
                scratch_[i] = read(member, i);
            } else {
                scratch_[i] = read(member);
            }
        }
    }
    const std::vector<double>& alike()
    {
        if (alike_.empty()) return scratch_;
        gathered_.resize(scratch_.size());
        for (std::size_t i = 0; i < alike_.size(); ++i) gathered_[i] = scratch_[static_cast<std::size_t>(alike_[i])];
        return gathered_;
    }
    Band bandOfScratch() { return band(alike(), {}); }

    const Ensemble& stack_;
    Weights weights_;
    std::vector<int> alike_;
    std::vector<double> scratch_, gathered_;
};

TrayEstimate trayEstimate(Reader& read, const Ensemble& stack, const std::vector<double>& colonies, int slot, int dayNumber)
{
    const TrayShape& shape = stack.shapes[static_cast<std::size_t>(slot)];
    TrayEstimate tray;
    tray.slot = slot + 1;
    tray.tray = shape.tray;
    tray.batch = shape.batch;
    tray.ageDays = dayNumber - shape.beddedDay;
    tray.inputDryKg = read.of([&](const MemberOf& m) { return m.tray(slot).input[m.lane]; });
    tray.castingsDryKg = read.of([&](const MemberOf& m) { return m.tray(slot).castings[m.lane]; });
    tray.unprocessedDryKg = read.of([&](const MemberOf& m) { return unprocessed(m, slot); });
    tray.slowDryKg = read.of([&](const MemberOf& m) { return slowUnsoftened(m, slot); });
    tray.castingsDepthCm = read.of([&](const MemberOf& m) { return castingsDepth(m, slot); });
    tray.feedToCast = read.of([&](const MemberOf& m) { return feedToCast(m, slot); });
    tray.cnRatio = read.of([&](const MemberOf& m) { return carbonToNitrogen(m, slot); });
    tray.moisturePct = read.of([&](const MemberOf& m) { return moisture(m, slot); });
    tray.waterShare = read.of([&](const MemberOf& m) { return waterShare(m, slot); });
    tray.wormShare = read.of([&](const MemberOf& m) { return m.tray(slot).share[m.lane]; });
    tray.cocoons = read.of([&](const MemberOf& m) { return cocoons(m, slot); });
    tray.weightKg = read.of([&](const MemberOf& m, std::size_t i) { return trayWeight(m, slot, colonies[i]); });
    tray.wormsKgPerM2 = read.of([&](const MemberOf& m, std::size_t i) { return colonies[i] * m.tray(slot).share[m.lane] / stack.area; });
    tray.air = read.median([&](const MemberOf& m) { return m.tray(slot).air[m.lane]; });
    std::vector<Layers> lying;
    for (int i = 0; i < stack.members(); ++i) lying.push_back(layers(MemberOf{stack, i}, slot));
    tray.strata.castingsCm = tray.castingsDepthCm.p50;
    tray.strata.softenedCm = read.median([&](const MemberOf&, std::size_t i) { return lying[i].softened; });
    tray.strata.foodCm = read.median([&](const MemberOf&, std::size_t i) { return lying[i].food; });
    tray.strata.beddingCm = read.median([&](const MemberOf&, std::size_t i) { return lying[i].bedding; });
    tray.depthCm = tray.strata.total();
    tray.readyProbability = read.share([&](const MemberOf& m) { return ready(m, slot); });
    tray.nearlyProbability = read.share([&](const MemberOf& m) { return nearly(m, slot); });
    tray.state = shape.drying ? TrayState::drying : tray.nearlyProbability >= 0.5 ? TrayState::nearly : TrayState::working;
    return tray;
}

}

void PastWeek::note(const Ensemble& stack)
{
    DayTotals today;
    for (std::vector<double>& values : today.values) values.reserve(static_cast<std::size_t>(stack.members()));
    for (const Ensemble::Block& block : stack.blocks) {
        const auto append = [&](Total total, const Members& values) {
            auto& to = today.values[static_cast<std::size_t>(total)];
            to.insert(to.end(), values, values + lanes);
        };
        append(ingested, block.stack.ingested);
        append(assimilated, block.stack.assimilated);
        append(maintenance, block.stack.maintenanceNeed);
        append(intoSump, block.stack.intoSump);
        append(overflowed, block.stack.overflowed);
    }
    days_.push_back(std::move(today));
    if (days_.size() > weekLength + 1) days_.pop_front();
}

int PastWeek::gain(Total total, int days, std::vector<double>& values) const
{
    if (days_.empty()) {
        std::fill(values.begin(), values.end(), 0.0);
        return 0;
    }
    const std::size_t t = static_cast<std::size_t>(total);
    values = days_.back().values[t];
    // The day before the first bedding had totals of zero.
    const int known = static_cast<int>(days_.size());
    if (days >= known) return known;
    const std::vector<double>& before = days_[static_cast<std::size_t>(known - 1 - days)].values[t];
    for (std::size_t i = 0; i < values.size(); ++i) values[i] -= before[i];
    return days;
}

void PastWeek::inherit(std::span<const int> ancestors)
{
    std::vector<double> before;
    for (DayTotals& day : days_)
        for (std::vector<double>& values : day.values) {
            before = values;
            for (std::size_t i = 0; i < values.size(); ++i) values[i] = before[static_cast<std::size_t>(ancestors[i])];
        }
}

double readyProbability(const Ensemble& stack, int slot, Weights weights)
{
    return Reader{stack, weights}.share([&](const MemberOf& m) { return ready(m, slot); });
}

double filledProbability(const Ensemble& stack, int slot, Weights weights)
{
    return Reader{stack, weights}.share([&](const MemberOf& m) { return filled(m, slot); });
}

StackEstimate estimate(const Ensemble& stack, const PastWeek& week, Weights weights, Day day, int dayNumber, Crew& crew)
{
    Reader read{stack, weights};
    StackEstimate at;
    at.day = day;
    std::vector<double> colonies(static_cast<std::size_t>(stack.members()));
    for (std::size_t i = 0; i < colonies.size(); ++i) colonies[i] = colony(MemberOf{stack, static_cast<int>(i)});
    at.colonyKg = read.of([&](const MemberOf&, std::size_t i) { return colonies[i]; });
    at.worms = read.of([](const MemberOf& m) { return worms(m); });
    at.adults = read.of([](const MemberOf& m) { return adults(m); });
    at.processingGDryPerDay = read.perDay(week, PastWeek::ingested, 1000.0);
    at.ration = read.ratio(week, PastWeek::assimilated, PastWeek::maintenance);
    at.binTempC = read.of([](const MemberOf& m) { return m.block.stack.bed[m.lane]; });
    at.sumpL = read.of([](const MemberOf& m) { return m.block.stack.sump[m.lane]; });
    at.leachateEc = read.of([](const MemberOf& m) { return leachateConductivity(m); });
    at.drainedLPerWeek = read.perDay(week, PastWeek::intoSump, 7.0);
    at.slots.resize(static_cast<std::size_t>(stack.trays()));
    crew.each(stack.trays(), [&](int slot) {
        Reader own{stack, weights};
        at.slots[static_cast<std::size_t>(slot)] = trayEstimate(own, stack, colonies, slot, dayNumber);
    });
    return at;
}

}
