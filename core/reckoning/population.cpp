#include "core/reckoning/population.h"

#include "core/model/acts.h"
#include "core/model/elementary.h"
#include "core/model/masses.h"
#include "core/model/members.h"
#include "core/model/random.h"
#include "core/reckoning/bed_year.h"
#include "core/reckoning/expected_reading.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace tierloam::reckoning {

using namespace model;

namespace {

constexpr int undoneAfter = 14; ///< days: a meal undoes for some days that a tray is filled, and is then eaten

template <class Value>
void inheritValues(std::vector<Value>& values, std::span<const int> ancestors)
{
    if (values.empty()) return;
    const std::vector<Value> before = values;
    for (std::size_t i = 0; i < values.size(); ++i) values[i] = before[static_cast<std::size_t>(ancestors[i])];
}

/// log-density of the value under what each member expects.
std::vector<double> logLikelihood(std::span<Expectation> expected, const Look& look, double noiseScale, Crew& crew)
{
    std::vector<double> log(expected.size());
    crew.each(static_cast<int>(expected.size()) / lanes, [&](int block) {
        for (std::size_t m = static_cast<std::size_t>(block) * lanes; m < static_cast<std::size_t>(block + 1) * lanes; ++m) {
            if (expected[m].shape != Expectation::Shape::negativeBinomial) expected[m].sd *= noiseScale;
            const double value = logDensity(expected[m], look.value);
            log[m] = std::isfinite(value) ? value : -std::numeric_limits<double>::infinity();
        }
    });
    return log;
}

/// sd between the value and the mean of what is expected, all members and the noise of looking together.
double surpriseOf(std::span<const Expectation> expected, const Look& look, Weights weights, Crew& crew)
{
    if (expected.front().shape == Expectation::Shape::atLeast) return 0.0;
    const bool onLogScale = expected.front().shape == Expectation::Shape::logNormal;
    std::vector<Moments> of(expected.size());
    crew.each(static_cast<int>(expected.size()) / lanes, [&](int block) {
        for (std::size_t m = static_cast<std::size_t>(block) * lanes; m < static_cast<std::size_t>(block + 1) * lanes; ++m)
            of[m] = onLogScale ? Moments{naturalLog(expected[m].centre), expected[m].sd * expected[m].sd} : moments(expected[m]);
    });
    double mean = 0.0;
    double square = 0.0;
    for (std::size_t m = 0; m < of.size(); ++m) {
        const double w = weights.empty() ? 1.0 / static_cast<double>(of.size()) : weights[m];
        mean += w * of[m].mean;
        square += w * (of[m].variance + of[m].mean * of[m].mean);
    }
    const double variance = square - mean * mean;
    const double value = onLogScale ? naturalLog(std::max(look.value, 1e-300)) : look.value;
    return variance > 0.0 ? (value - mean) / std::sqrt(variance) : 0.0;
}

/// All that the kernel moves, standings of parameters and logarithms of the state together, so that it keeps how they go together.
std::vector<double> rowsOf(const Ensemble& stack, Crew& crew)
{
    std::vector<double> rows(static_cast<std::size_t>(movedRows(stack)) * static_cast<std::size_t>(stack.members()));
    crew.each(static_cast<int>(stack.blocks.size()), [&](int block) { readMoved(stack, block, rows); });
    return rows;
}

void setRows(Ensemble& stack, std::span<const double> rows, Crew& crew)
{
    crew.each(static_cast<int>(stack.blocks.size()), [&](int block) { setMoved(stack, block, rows); });
}

/// A row of standard normals, block by block.
void normalsOfRow(std::uint64_t stream, std::span<double> out)
{
    Members normals;
    for (std::size_t m = 0; m < out.size(); m += lanes) {
        standardNormals(stream, static_cast<int>(m) / lanes, normals);
        std::copy(std::begin(normals), std::end(normals), out.begin() + static_cast<std::ptrdiff_t>(m));
    }
}

/// Parameters and state move by their regression on what was read, where it is of a kind that allows it.
bool moveMembers(Population& population, const Look& look, std::span<const Expectation> expected, int day, int number, Crew& crew, const FilterManner& manner)
{
    Ensemble& stack = population.stack;
    const std::optional<double> read = evened(expected.front(), look.value);
    if (!read) return false;
    std::vector<double> even(expected.size());
    for (std::size_t i = 0; i < expected.size(); ++i) {
        Expectation open = expected[i]; // what a member expects may lie beyond what can be read
        open.low = -1e300;
        open.high = 1e300;
        even[i] = *evened(open, open.centre);
    }
    std::vector<double> rows = rowsOf(stack, crew);
    std::vector<double> normals(expected.size());
    normalsOfRow(streamOf(stack.key, day, Use::jitter, number * 256 + 255), normals);
    const double noise = manner.noiseScale * manner.noiseScale / manner.moves(look.kind);
    moveTowards(rows, population.weights.normalised(), static_cast<std::size_t>(movedRows(stack)), even, *read, noise, normals, crew);
    setRows(stack, rows, crew);
    return true;
}

/// Copies of the ancestors, moved a little.
void descend(Population& population, std::span<const int> ancestors, std::span<const double> weights, int day, int number, Crew& crew)
{
    Ensemble& stack = population.stack;
    const std::vector<double> before = rowsOf(stack, crew);
    population.inherit(ancestors);
    std::vector<double> z = rowsOf(stack, crew);
    const std::uint64_t key = stack.key;
    liuWest(z, before, weights, static_cast<std::size_t>(movedRows(stack)), liuWestKeeps,
            [&](std::size_t r, std::span<double> out) { normalsOfRow(streamOf(key, day, Use::jitter, number * 256 + static_cast<int>(r)), out); }, crew);
    setRows(stack, z, crew);
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

void Population::forgetFirstsUndone(int today)
{
    const auto forget = [today](std::vector<int>& first, const std::vector<char>& now) {
        for (std::size_t i = 0; i < now.size(); ++i)
            if (now[i] == 0 && first[i] != never && today - first[i] > undoneAfter) first[i] = never;
    };
    for (std::size_t slot = 0; slot < stack.shapes.size() && slot < readyNow.size(); ++slot) {
        FirstDays& first = firsts.at(stack.shapes[slot].batch);
        forget(first.ready, readyNow[slot]);
        forget(first.filled, filledNow[slot]);
    }
}

namespace {

constexpr double jumpFrom = 2.5; ///< sd between a bed as read and as expected, from which u has jumped; it is brought to within one
constexpr double slipFrom = 10.0; ///< sd from which it may as well be a slip of the pen, some 15 K, where the bed would kill worms
constexpr double partedFrom = 5.0; ///< K, sd of the members' beds where some took it for true: no regression joins them again, the weights choose
constexpr int foundWithin = 60;    ///< days since the first bedding in which castings may be older than the journal. Judgement, as all of these
constexpr int beddedAtFirst = 7;   ///< of the trays that were written down when it began
constexpr double foundTimes = 3.0; ///< as deep as by the estimate
constexpr double depthNoise = 0.2; ///< log-sd of a depth, as in looks.cpp
constexpr double noColony = 1e-3; ///< kg
constexpr double foundNoise = 0.5; ///< log-sd of what is given to members without worms
constexpr double grownWorm = 0.4e-3; ///< kg
constexpr double perM2[] = {0.1, 0.6, 1.8}; ///< kg/m² of "few", "some", "many": within the cuts of looks.cpp

double meanOf(const std::vector<double>& values, Weights weights)
{
    double sum = 0.0;
    for (std::size_t i = 0; i < values.size(); ++i) sum += values[i] * (weights.empty() ? 1.0 / static_cast<double>(values.size()) : weights[i]);
    return sum;
}

/// kg of colony that a look found, nothing where it is none or no look at worms.
double foundKg(const Look& look, const Ensemble& stack)
{
    switch (look.kind) {
    case LookKind::weigh: return look.value > 2.0 * noColony * look.share ? look.value / std::max(look.share, 1e-3) : 0.0;
    case LookKind::count: return look.value >= 1.0 ? look.value * grownWorm * std::max(1.0, stack.area * stack.height * 500.0 / std::max(look.litres, 0.1)) : 0.0; // of a tray half full
    case LookKind::wormsSeen: return perM2[std::clamp(static_cast<int>(look.value), 0, 2)] * stack.area;
    default: return 0.0;
    }
}

bool findWorms(Population& population, double kg, int slot, int day, int number)
{
    Ensemble& stack = population.stack;
    std::vector<char> none(static_cast<std::size_t>(stack.members()));
    for (int i = 0; i < stack.members(); ++i) none[static_cast<std::size_t>(i)] = colony(MemberOf{stack, i}) < noColony ? 1 : 0;
    if (probability(none, population.shares()) <= 0.5) return false;
    std::vector<double> normals(none.size());
    normalsOfRow(streamOf(stack.key, day, Use::jitter, number * 256 + 254), normals);
    PerMember more(none.size(), 0.0);
    for (std::size_t i = 0; i < none.size(); ++i)
        if (none[i] != 0) more[i] = kg * exponential(foundNoise * normals[i]);
    stockEach(stack, slot >= 0 ? slot : std::max(stack.topToFeed(), 0), more);
    return true;
}

/// A journal may begin when the stack has long been at work, and then a tray holds what no bedding of these days can have become.
bool findCastings(Population& population, const Look& look, std::span<const Expectation> expected, double surprise, int day, int number)
{
    Ensemble& stack = population.stack;
    if (look.kind != LookKind::depth || surprise <= jumpFrom || look.value > 100.0 * stack.height) return false;
    const TrayShape& shape = stack.shapes[static_cast<std::size_t>(look.slot)];
    if (day > foundWithin || shape.beddedDay > beddedAtFirst) return false;
    std::vector<double> depth(expected.size());
    for (std::size_t i = 0; i < depth.size(); ++i) depth[i] = castingsDepth(MemberOf{stack, static_cast<int>(i)}, look.slot);
    if (look.value < foundTimes * meanOf(depth, population.shares())) return false;
    std::vector<double> normals(depth.size());
    normalsOfRow(streamOf(stack.key, day, Use::jitter, number * 256 + 254), normals);
    PerMember more(depth.size(), 0.0);
    for (std::size_t i = 0; i < more.size(); ++i)
        more[i] = std::max(look.value * exponential(depthNoise * normals[i]) - depth[i], 0.0) / 100.0 * castingsDensity * stack.area;
    layCastingsEach(stack, look.slot, more);
    return true;
}

/// 35 °C in a cold garage: 3.5 is as likely, and what is taken for true without a doubt kills the colony for good.
bool mayBeASlip(const Look& look, double surprise)
{
    return look.kind == LookKind::bedTemperature && std::abs(surprise) > slipFrom && (look.value < coldKillsBelow || look.value > heatKillsAbove);
}

bool isParted(const Look& look, std::span<const Expectation> expected, Weights weights)
{
    if (look.kind != LookKind::bedTemperature) return false;
    std::vector<double> bed, square;
    for (const Expectation& each : expected) {
        bed.push_back(each.centre);
        square.push_back(each.centre * each.centre);
    }
    const double mean = meanOf(bed, weights);
    return meanOf(square, weights) - mean * mean > partedFrom * partedFrom;
}

/// Whether the members were changed.
bool meetSurprise(Population& population, const Look& look, double surprise, int day, int number)
{
    Ensemble& stack = population.stack;
    const double kg = foundKg(look, stack);
    if (kg > 0.0) return findWorms(population, kg, look.slot, day, number);
    if (look.kind != LookKind::bedTemperature || std::abs(surprise) <= jumpFrom) return false;
    std::vector<double> bed(static_cast<std::size_t>(stack.members()));
    for (int i = 0; i < stack.members(); ++i) bed[static_cast<std::size_t>(i)] = MemberOf{stack, i}.block.stack.bed[i % lanes];
    PerMember warmer(bed.size(), (look.value - meanOf(bed, population.shares())) * (1.0 - 1.0 / std::abs(surprise)));
    if (mayBeASlip(look, surprise)) {
        const std::uint64_t stream = streamOf(stack.key, day, Use::slip, number);
        for (std::size_t i = 0; i < warmer.size(); ++i)
            if (uniform(stream, static_cast<int>(i)) < 0.5) warmer[i] = 0.0;
    }
    warmBedEach(stack, warmer);
    return true;
}

}

void loseWorms(Population& population, int day, int number)
{
    constexpr double most = 0.95;
    PerMember share(static_cast<std::size_t>(population.stack.members()));
    const std::uint64_t stream = streamOf(population.stack.key, day, Use::loss, number);
    for (std::size_t i = 0; i < share.size(); ++i) {
        const double u = uniform(stream, static_cast<int>(i));
        share[i] = most * u * u * u; // median 12 %, one in ten above 69 %. Judgement
    }
    takeWormShareEach(population.stack, share);
}

void leavePlace(Population& population)
{
    Ensemble& stack = population.stack;
    std::vector<double> drift(static_cast<std::size_t>(stack.members()));
    for (int i = 0; i < stack.members(); ++i) drift[static_cast<std::size_t>(i)] = MemberOf{stack, i}.block.stack.drift[i % lanes];
    const double there = meanOf(drift, population.shares());
    for (Ensemble::Block& block : stack.blocks)
        for (double& each : block.stack.drift) each -= there;
}

Verdict weigh(Population& population, const Look& look, std::span<const Expectation> expected, int day, int number, Crew& crew, const FilterManner& manner)
{
    Verdict verdict;
    if (manner.ignoresLooks) {
        verdict.effectiveSize = population.weights.effectiveSize();
        return verdict;
    }
    const std::vector<double> weightsBefore = population.normalised;
    verdict.surprise = surpriseOf(expected, look, weightsBefore, crew);
    std::vector<Expectation> now(expected.begin(), expected.end());
    if (findCastings(population, look, expected, verdict.surprise, day, number)) {
        now = expectations(population, look, crew);
        verdict.surprise = surpriseOf(now, look, weightsBefore, crew);
    } else if (meetSurprise(population, look, verdict.surprise, day, number)) {
        if (mayBeASlip(look, verdict.surprise)) {
            verdict.effectiveSize = population.weights.effectiveSize();
            verdict.expected = expectedReading(expected, weightsBefore, population.stack.key, day, number);
            return verdict;
        }
        now = expectations(population, look, crew);
    }
    const bool moved = manner.movedBy > 0.0 && !isParted(look, now, weightsBefore) && moveMembers(population, look, now, day, number, crew, manner);
    if (moved) now = expectations(population, look, crew);
    std::vector<double> log = logLikelihood(now, look, manner.noiseScale, crew);
    for (double& each : log) each *= moved ? manner.weighedBy : manner.weighedAlone;
    const double u = uniform(streamOf(population.stack.key, day, Use::resample, number), 0);
    const Update update = reckoning::update(population.weights, log, u, [&](std::span<const int> ancestors, std::span<const double> weights) {
        descend(population, ancestors, weights, day, number, crew);
    });
    verdict.effectiveSize = update.effectiveSize;
    verdict.exponent = update.exponent;
    if (verdict.disagrees()) verdict.expected = expectedReading(expected, weightsBefore, population.stack.key, day, number);
    population.normalised = population.weights.equal() ? std::vector<double>{} : population.weights.normalised();
    return verdict;
}

}
