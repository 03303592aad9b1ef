#include "core/reckoning/quantiles.h"

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <cstdint>
#include <memory>
#include <numeric>

namespace tierloam::reckoning {

namespace {

/// Rank, from 0, of the quantile among n equally weighted values.
std::size_t rankOf(double share, std::size_t n)
{
    const double wanted = std::ceil(share * static_cast<double>(n) - 1e-9);
    return wanted < 1.0 ? 0 : static_cast<std::size_t>(wanted) - 1;
}

/// Least and greatest, eight side by side so that the compiler may take them at once.
std::pair<double, double> extent(const std::vector<double>& values)
{
    constexpr std::size_t abreast = 8;
    double low[abreast], high[abreast];
    for (std::size_t k = 0; k < abreast; ++k) low[k] = high[k] = values[0];
    std::size_t i = 0;
    for (; i + abreast <= values.size(); i += abreast)
        for (std::size_t k = 0; k < abreast; ++k) {
            low[k] = values[i + k] < low[k] ? values[i + k] : low[k];
            high[k] = values[i + k] > high[k] ? values[i + k] : high[k];
        }
    for (; i < values.size(); ++i) {
        low[0] = std::min(low[0], values[i]);
        high[0] = std::max(high[0], values[i]);
    }
    return {*std::min_element(low, low + abreast), *std::max_element(high, high + abreast)};
}

void fillBins(const double* __restrict values, std::size_t n, double low, double perBin, std::uint8_t* __restrict bins)
{
    for (std::size_t i = 0; i < n; ++i) bins[i] = static_cast<std::uint8_t>(static_cast<int>((values[i] - low) * perBin));
}

/// The values whose bin is this one, eight bins looked at in one go.
std::size_t gather(const double* values, const std::uint64_t* bins, std::size_t words, std::uint8_t bin, double* to)
{
    constexpr std::uint64_t each = 0x0101010101010101;
    constexpr std::uint64_t lowBits = 0x7f * each;
    std::size_t size = 0;
    for (std::size_t w = 0; w < words; ++w) {
        const std::uint64_t apart = bins[w] ^ (bin * each);
        std::uint64_t same = ~(((apart & lowBits) + lowBits) | apart | lowBits); // the highest bit of each byte that is 0
        for (; same != 0; same &= same - 1) to[size++] = values[w * 8 + static_cast<std::size_t>(std::countr_zero(same)) / 8];
    }
    return size;
}

/// Order statistics of the same values: they are counted into bins between the least and the greatest, and only those of the bins that hold
/// the wanted ranks are put in order. A selection over all of them costs several times as much.
template <std::size_t count>
std::array<double, count> ofRanks(const std::vector<double>& values, const std::array<std::size_t, count>& ranks)
{
    constexpr int binCount = 128; // one bit of a byte stays free for gather()
    const std::size_t n = values.size();
    const auto [low, high] = extent(values);
    const double width = high - low;
    const double perBin = width > 0.0 ? (binCount - 1) / width : 0.0;
    // Whole words, the last of them filled up with what is no bin.
    const std::size_t words = (n + 7) / 8;
    const auto bins = std::make_unique_for_overwrite<std::uint64_t[]>(words);
    bins[words - 1] = ~std::uint64_t{0};
    auto* const binOf = reinterpret_cast<std::uint8_t*>(bins.get());
    if (std::isfinite(perBin)) {
        fillBins(values.data(), n, low, perBin, binOf);
    } else { // a width so small, or so great, that it cannot be divided: all stay in one bin
        std::fill(binOf, binOf + n, std::uint8_t{0});
    }
    std::array<std::uint32_t, binCount> counts{};
    for (std::size_t i = 0; i < n; ++i) ++counts[binOf[i]];

    const auto inBin = std::make_unique_for_overwrite<double[]>(n);
    std::array<double, count> found{};
    for (std::size_t k = 0; k < count; ++k) {
        std::size_t rank = ranks[k];
        std::uint8_t bin = 0;
        while (rank >= counts[bin]) rank -= counts[bin++];
        const std::size_t size = gather(values.data(), bins.get(), words, bin, inBin.get());
        std::nth_element(inBin.get(), inBin.get() + rank, inBin.get() + size);
        found[k] = inBin[rank];
    }
    return found;
}

template <class Value>
Value weightedQuantile(const std::vector<std::pair<Value, double>>& ordered, double share)
{
    double sum = 0.0;
    for (const auto& [value, weight] : ordered) {
        sum += weight;
        if (sum >= share - 1e-12) return value;
    }
    return ordered.back().first;
}

template <class Value>
std::vector<std::pair<Value, double>> inOrder(const std::vector<Value>& values, Weights weights)
{
    std::vector<std::pair<Value, double>> ordered(values.size());
    for (std::size_t i = 0; i < values.size(); ++i) ordered[i] = {values[i], weights.empty() ? 1.0 / static_cast<double>(values.size()) : weights[i]};
    std::sort(ordered.begin(), ordered.end());
    return ordered;
}

}

double quantile(const std::vector<double>& values, Weights weights, double share)
{
    if (values.empty()) return 0.0;
    if (!weights.empty()) return weightedQuantile(inOrder(values, weights), share);
    return ofRanks<1>(values, {rankOf(share, values.size())}).front();
}

Band band(const std::vector<double>& values, Weights weights)
{
    if (values.empty()) return {};
    if (!weights.empty()) {
        const auto ordered = inOrder(values, weights);
        return {weightedQuantile(ordered, 0.05), weightedQuantile(ordered, 0.5), weightedQuantile(ordered, 0.95)};
    }
    const std::size_t n = values.size();
    const auto [low, middle, high] = ofRanks<3>(values, {rankOf(0.05, n), rankOf(0.5, n), rankOf(0.95, n)});
    return {low, middle, high};
}

Dates dates(const std::vector<int>& firstDays, Weights weights, Day start, int horizon)
{
    if (firstDays.empty()) return {};
    const auto ordered = inOrder(firstDays, weights);
    const auto day = [&](double share) -> std::optional<Day> {
        const int value = weightedQuantile(ordered, share);
        if (value == never || value > horizon) return std::nullopt;
        return start + std::chrono::days{value};
    };
    return {day(0.10), day(0.50), day(0.90)};
}

double probability(const std::vector<char>& holds, Weights weights)
{
    if (holds.empty()) return 0.0;
    if (weights.empty()) return static_cast<double>(std::count(holds.begin(), holds.end(), char{1})) / static_cast<double>(holds.size());
    double sum = 0.0;
    for (std::size_t i = 0; i < holds.size(); ++i) sum += holds[i] != 0 ? weights[i] : 0.0;
    return std::min(sum, 1.0);
}

}
