#include "core/reckoning/estimate.h"

#include "core/model/measures.h"
#include "core/reckoning/filter.h"

#include <algorithm>

namespace tierloam::reckoning {

using namespace model;

namespace {

constexpr int weekLength = 7;

/// Bands over the members of one stack, with one scratch array for all. Members that differ in weight are made into as many that do not
/// (`alike`, empty where they do not differ), since a selection among equals costs a fraction of a sort by weight; that is exact to one member.
class Reader {
public:
    Reader(const Ensemble& stack, Weights weights, std::span<const int> alike)
        : stack_{stack}, weights_{weights}, alike_{alike}, scratch_(static_cast<std::size_t>(stack.members()))
    {
    }

    /// `rows(block)` gives the 64 values of a block.
    template <class Rows>
    Band of(Rows rows)
    {
        fill(rows);
        return bandOfScratch();
    }
    template <class Rows>
    double median(Rows rows)
    {
        fill(rows);
        return quantile(alike(), {}, 0.5);
    }
    /// `rule(member)` for each, in the order of the members.
    template <class Rule>
    double share(Rule rule)
    {
        std::vector<char> holds(scratch_.size());
        for (std::size_t i = 0; i < holds.size(); ++i) holds[i] = rule(i) ? 1 : 0;
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
    template <class Rows>
    void fill(Rows rows)
    {
        for (std::size_t b = 0; b < stack_.blocks.size(); ++b) {
            const double* const values = rows(b);
            std::copy(values, values + lanes, scratch_.begin() + static_cast<std::ptrdiff_t>(b * lanes));
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
    std::span<const int> alike_;
    std::vector<double> scratch_, gathered_;
};

TrayEstimate trayEstimate(Reader& read, const Ensemble& stack, const std::vector<StackMeasures>& whole, int slot, int dayNumber)
{
    const TrayShape& shape = stack.shapes[static_cast<std::size_t>(slot)];
    TrayEstimate tray;
    tray.slot = slot + 1;
    tray.tray = shape.tray;
    tray.batch = shape.batch;
    tray.ageDays = dayNumber - shape.beddedDay;
    std::vector<TrayMeasures> measured(stack.blocks.size());
    for (std::size_t b = 0; b < measured.size(); ++b) measures(stack, static_cast<int>(b), slot, measured[b]);
    const auto own = [&](Members TrayMeasures::*row) { return [&measured, row](std::size_t b) { return &(measured[b].*row)[0]; }; };
    const auto state = [&](Members TrayBlock::*row) {
        return [&stack, slot, row](std::size_t b) { return &(stack.blocks[b].trays[static_cast<std::size_t>(slot)].*row)[0]; };
    };
    tray.inputDryKg = read.of(state(&TrayBlock::input));
    tray.castingsDryKg = read.of(state(&TrayBlock::castings));
    tray.unprocessedDryKg = read.of(own(&TrayMeasures::unprocessed));
    tray.slowDryKg = read.of(own(&TrayMeasures::slow));
    tray.castingsDepthCm = read.of(own(&TrayMeasures::castingsDepth));
    tray.feedToCast = read.of(own(&TrayMeasures::feedToCast));
    tray.cnRatio = read.of(own(&TrayMeasures::carbonToNitrogen));
    tray.moisturePct = read.of(own(&TrayMeasures::moisture));
    tray.waterShare = read.of(own(&TrayMeasures::waterShare));
    tray.wormShare = read.of(state(&TrayBlock::share));
    tray.cocoons = read.of(own(&TrayMeasures::cocoons));
    Members row;
    const auto withWorms = [&](auto value) {
        return [&, value](std::size_t b) {
            const Members& share = stack.blocks[b].trays[static_cast<std::size_t>(slot)].share;
            for (int m = 0; m < lanes; ++m) row[m] = value(b, m, whole[b].colony[m] * share[m]);
            return &row[0];
        };
    };
    tray.weightKg = read.of(withWorms([&](std::size_t b, int m, double worms) {
        return measured[b].contentsWeight[m] + worms + stack.blocks[b].parameters.value[static_cast<int>(Parameter::tare)][m];
    }));
    tray.wormsKgPerM2 = read.of(withWorms([&](std::size_t, int, double worms) { return worms / stack.area; }));
    tray.air = read.median(state(&TrayBlock::air));
    tray.strata.castingsCm = tray.castingsDepthCm.p50;
    tray.strata.softenedCm = read.median(own(&TrayMeasures::softenedLayer));
    tray.strata.foodCm = read.median(own(&TrayMeasures::foodLayer));
    tray.strata.beddingCm = read.median(own(&TrayMeasures::beddingLayer));
    tray.depthCm = tray.strata.total();
    const auto raw = [&](std::size_t i) { return measured[i / lanes].unprocessed[i % lanes]; };
    const auto cast = [&](std::size_t i) { return stack.blocks[i / lanes].trays[static_cast<std::size_t>(slot)].castings[i % lanes]; };
    tray.readyProbability = read.share([&](std::size_t i) { return ready(raw(i), cast(i), measured[i / lanes].castingsDepth[i % lanes], shape.left); });
    tray.nearlyProbability = read.share([&](std::size_t i) { return nearly(raw(i), cast(i)); });
    tray.state = shape.drying ? TrayState::drying : tray.nearlyProbability >= 0.5 ? TrayState::nearly : TrayState::working;
    return tray;
}

/// All but the trays.
void readStack(Reader& read, const Ensemble& stack, const PastWeek& week, const std::vector<StackMeasures>& whole, StackEstimate& at)
{
    const auto own = [&](Members StackMeasures::*row) { return [&whole, row](std::size_t b) { return &(whole[b].*row)[0]; }; };
    const auto state = [&](Members StackBlock::*row) { return [&stack, row](std::size_t b) { return &(stack.blocks[b].stack.*row)[0]; }; };
    at.colonyKg = read.of(own(&StackMeasures::colony));
    at.worms = read.of(own(&StackMeasures::worms));
    at.adults = read.of(own(&StackMeasures::adults));
    at.processingGDryPerDay = read.perDay(week, PastWeek::ingested, 1000.0);
    at.ration = read.ratio(week, PastWeek::assimilated, PastWeek::maintenance);
    at.binTempC = read.of(state(&StackBlock::bed));
    at.sumpL = read.of(state(&StackBlock::sump));
    at.leachateEc = read.of(own(&StackMeasures::leachateConductivity));
    at.drainedLPerWeek = read.perDay(week, PastWeek::intoSump, 7.0);
}

}

void PastWeek::note(const Ensemble& stack)
{
    DayTotals today;
    if (days_.size() > weekLength) { // the oldest gives its room
        today = std::move(days_.front());
        days_.pop_front();
    }
    for (std::vector<double>& values : today.values) {
        values.clear();
        values.reserve(static_cast<std::size_t>(stack.members()));
    }
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

void PastWeek::keep(std::size_t members)
{
    for (DayTotals& day : days_)
        for (std::vector<double>& values : day.values) values.resize(std::min(values.size(), members));
}

double readyProbability(const Ensemble& stack, int slot, Weights weights)
{
    return Reader{stack, weights, {}}.share([&](std::size_t i) { return ready(MemberOf{stack, static_cast<int>(i)}, slot); });
}

StackEstimate estimate(const Ensemble& stack, const PastWeek& week, Weights weights, Day day, int dayNumber, Crew& crew)
{
    const std::vector<int> alike = weights.empty() ? std::vector<int>{} : systematic(weights, 0.5);
    StackEstimate at;
    at.day = day;
    std::vector<StackMeasures> whole(stack.blocks.size());
    for (std::size_t b = 0; b < whole.size(); ++b) measures(stack, static_cast<int>(b), whole[b]);
    at.slots.resize(static_cast<std::size_t>(stack.trays()));
    crew.each(stack.trays() + 1, [&](int slot) {
        Reader read{stack, weights, alike};
        if (slot == stack.trays()) readStack(read, stack, week, whole, at);
        else at.slots[static_cast<std::size_t>(slot)] = trayEstimate(read, stack, whole, slot, dayNumber);
    });
    return at;
}

}
