#include "core/reckoning/population.h"

#include "core/model/elementary.h"
#include "core/model/members.h"
#include "core/model/random.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace tierloam::reckoning {

using namespace model;

namespace {

template <class Value>
void inheritValues(std::vector<Value>& values, std::span<const int> ancestors)
{
    if (values.empty()) return;
    const std::vector<Value> before = values;
    for (std::size_t i = 0; i < values.size(); ++i) values[i] = before[static_cast<std::size_t>(ancestors[i])];
}

std::vector<double> logLikelihood(const Population& population, const Look& look, double noiseScale)
{
    std::vector<double> log(static_cast<std::size_t>(population.stack.members()));
    for (int i = 0; i < population.stack.members(); ++i) {
        const std::size_t m = static_cast<std::size_t>(i);
        Expectation expected = expectation(look, MemberOf{population.stack, i}, population.ranOffBefore[m]);
        if (expected.shape != Expectation::Shape::negativeBinomial) expected.sd *= noiseScale;
        const double value = logDensity(expected, look.value);
        log[m] = std::isfinite(value) ? value : -std::numeric_limits<double>::infinity();
    }
    return log;
}

/// sd between the value and the mean of what is expected, all members and the noise of looking together.
double surpriseOf(const Population& population, const Look& look, Weights weights)
{
    double mean = 0.0;
    double square = 0.0;
    bool onLogScale = false;
    for (int i = 0; i < population.stack.members(); ++i) {
        const std::size_t m = static_cast<std::size_t>(i);
        const Expectation e = expectation(look, MemberOf{population.stack, i}, population.ranOffBefore[m]);
        if (e.shape == Expectation::Shape::atLeast) return 0.0;
        onLogScale = e.shape == Expectation::Shape::logNormal;
        const Moments of = onLogScale ? Moments{naturalLog(e.centre), e.sd * e.sd} : moments(e);
        const double w = weights.empty() ? 1.0 / population.stack.members() : weights[m];
        mean += w * of.mean;
        square += w * (of.variance + of.mean * of.mean);
    }
    const double variance = square - mean * mean;
    const double value = onLogScale ? naturalLog(std::max(look.value, 1e-300)) : look.value;
    return variance > 0.0 ? (value - mean) / std::sqrt(variance) : 0.0;
}

Band expectedBand(const Population& population, const Look& look, Weights weights, int day, int number)
{
    const std::uint64_t stream = streamOf(population.stack.key, day, Use::look, number);
    std::vector<double> values(static_cast<std::size_t>(population.stack.members()));
    for (int i = 0; i < population.stack.members(); ++i) {
        const std::size_t m = static_cast<std::size_t>(i);
        const Expectation e = expectation(look, MemberOf{population.stack, i}, population.ranOffBefore[m]);
        values[m] = e.shape == Expectation::Shape::atLeast ? e.centre : drawn(e, standardNormal(stream, i), uniform(stream + 1, i));
    }
    return band(values, weights);
}

/// Standings in the prior and, below them, the logarithms of the state: all that the kernel moves, so that it keeps how they go together.
std::vector<double> rowsOf(const Ensemble& stack)
{
    std::vector<double> rows = standings(stack);
    const std::vector<double> logs = stateLogs(stack);
    rows.insert(rows.end(), logs.begin(), logs.end());
    return rows;
}

void setRows(Ensemble& stack, std::span<const double> rows)
{
    const std::size_t parameters = static_cast<std::size_t>(parameterCount) * static_cast<std::size_t>(stack.members());
    setStandings(stack, rows.first(parameters));
    setStateLogs(stack, rows.subspan(parameters));
}

/// Parameters and state move by their regression on what was read, where it is of a kind that allows it.
bool moveMembers(Population& population, const Look& look, int day, int number, const FilterManner& manner)
{
    Ensemble& stack = population.stack;
    const std::size_t members = static_cast<std::size_t>(stack.members());
    std::vector<double> expected(members);
    std::optional<double> read;
    for (std::size_t i = 0; i < members; ++i) {
        const Expectation e = expectation(look, MemberOf{stack, static_cast<int>(i)}, population.ranOffBefore[i]);
        if (i == 0 && !(read = evened(e, look.value))) return false;
        Expectation open = e; // what a member expects may lie beyond what can be read
        open.low = -1e300;
        open.high = 1e300;
        expected[i] = *evened(open, e.centre);
    }
    std::vector<double> rows = rowsOf(stack);
    const std::uint64_t stream = streamOf(stack.key, day, Use::jitter, number * 256 + 255);
    const std::vector<double> weights = population.weights.normalised();
    moveTowards(rows, weights, static_cast<std::size_t>(parameterCount) + static_cast<std::size_t>(stateRows(stack)), expected, *read,
                manner.noiseScale * manner.noiseScale / manner.moves(look.kind), [&](std::size_t i) { return standardNormal(stream, static_cast<int>(i)); });
    setRows(stack, rows);
    return true;
}

/// Copies of the ancestors, moved a little.
void descend(Population& population, std::span<const int> ancestors, std::span<const double> weights, int day, int number)
{
    Ensemble& stack = population.stack;
    const std::vector<double> before = rowsOf(stack);
    population.inherit(ancestors);
    std::vector<double> z = rowsOf(stack);
    const int rows = parameterCount + stateRows(stack);
    std::vector<std::uint64_t> streams;
    streams.reserve(static_cast<std::size_t>(rows));
    for (int r = 0; r < rows; ++r) streams.push_back(streamOf(stack.key, day, Use::jitter, number * 256 + r));
    liuWest(z, before, weights, static_cast<std::size_t>(rows), liuWestKeeps,
            [&](std::size_t r, std::size_t i) { return standardNormal(streams[r], static_cast<int>(i)); });
    setRows(stack, z);
}

}

Population::Population(Ensemble drawn) : stack{std::move(drawn)}, weights{static_cast<std::size_t>(stack.members())},
    ranOffBefore(static_cast<std::size_t>(stack.members()), 0.0)
{
}

void Population::inherit(std::span<const int> ancestors)
{
    model::inherit(stack, ancestors);
    week.inherit(ancestors);
    for (auto& [batch, first] : firsts) {
        inheritValues(first.ready, ancestors);
        inheritValues(first.filled, ancestors);
    }
    inheritValues(ranOffBefore, ancestors);
    for (UnwrittenFeeding& each : unwritten) inheritValues(each.given, ancestors);
}

void Population::noteReadiness(int day, int block)
{
    const int top = stack.topToFeed();
    for (int slot = 0; slot < stack.trays(); ++slot) {
        FirstDays& first = firsts.at(stack.shapes[static_cast<std::size_t>(slot)].batch);
        Readiness now;
        readiness(stack, block, slot, now);
        const std::size_t from = static_cast<std::size_t>(block) * lanes;
        char* isReady = readyNow[static_cast<std::size_t>(slot)].data() + from;
        char* isFilled = filledNow[static_cast<std::size_t>(slot)].data() + from;
        int* readyOn = first.ready.data() + from;
        int* filledOn = first.filled.data() + from;
        for (int m = 0; m < lanes; ++m) {
            isReady[m] = now.ready[m] ? 1 : 0;
            isFilled[m] = now.filled[m] ? 1 : 0;
            if (now.ready[m] && readyOn[m] == never) readyOn[m] = day;
            if (slot == top && now.filled[m] && filledOn[m] == never) filledOn[m] = day;
        }
    }
}

double Population::readyProbability(int slot) const { return probability(readyNow[static_cast<std::size_t>(slot)], shares()); }
double Population::filledProbability(int slot) const { return probability(filledNow[static_cast<std::size_t>(slot)], shares()); }

void Population::forgetBatchesGone()
{
    const auto stands = [&](int batch) {
        return std::any_of(stack.shapes.begin(), stack.shapes.end(), [&](const TrayShape& shape) { return shape.batch == batch; });
    };
    std::erase_if(firsts, [&](const auto& each) { return !stands(each.first); });
    for (std::vector<std::vector<char>>* now : {&readyNow, &filledNow})
        now->resize(stack.shapes.size(), std::vector<char>(static_cast<std::size_t>(stack.members()), 0));
    for (const TrayShape& shape : stack.shapes) {
        FirstDays& first = firsts[shape.batch];
        if (!first.ready.empty()) continue;
        first.ready.assign(static_cast<std::size_t>(stack.members()), never);
        first.filled = first.ready;
    }
}

Verdict weigh(Population& population, const Look& look, int day, int number, const FilterManner& manner)
{
    Verdict verdict;
    if (manner.ignoresLooks) {
        verdict.effectiveSize = population.weights.effectiveSize();
        return verdict;
    }
    verdict.surprise = surpriseOf(population, look, population.shares());
    const Band expected = expectedBand(population, look, population.shares(), day, number);
    const bool moved = manner.movedBy > 0.0 && moveMembers(population, look, day, number, manner);
    std::vector<double> log = logLikelihood(population, look, manner.noiseScale);
    for (double& each : log) each *= moved ? manner.weighedBy : manner.weighedAlone;
    const double u = uniform(streamOf(population.stack.key, day, Use::resample, number), 0);
    const Update update = reckoning::update(population.weights, log, u, [&](std::span<const int> ancestors, std::span<const double> weights) {
        descend(population, ancestors, weights, day, number);
    });
    verdict.effectiveSize = update.effectiveSize;
    verdict.exponent = update.exponent;
    if (verdict.disagrees()) verdict.expected = expected;
    population.normalised = population.weights.equal() ? std::vector<double>{} : population.weights.normalised();
    return verdict;
}

}
