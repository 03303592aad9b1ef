#include "core/reckoning/quantiles.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace tierloam::reckoning {

namespace {

/// Rank, from 0, of the quantile among n equally weighted values.
std::size_t rankOf(double share, std::size_t n)
{
    const double wanted = std::ceil(share * static_cast<double>(n) - 1e-9);
    return wanted < 1.0 ? 0 : static_cast<std::size_t>(wanted) - 1;
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

double quantile(std::vector<double>& values, Weights weights, double share)
{
    if (values.empty()) return 0.0;
    if (!weights.empty()) return weightedQuantile(inOrder(values, weights), share);
    const auto at = values.begin() + static_cast<std::ptrdiff_t>(rankOf(share, values.size()));
    std::nth_element(values.begin(), at, values.end());
    return *at;
}

Band band(std::vector<double>& values, Weights weights)
{
    if (values.empty()) return {};
    if (!weights.empty()) {
        const auto ordered = inOrder(values, weights);
        return {weightedQuantile(ordered, 0.05), weightedQuantile(ordered, 0.5), weightedQuantile(ordered, 0.95)};
    }
    // Three selections, each in the part that the one before left: a full sort costs several times as much.
    const auto rank = [&](double share) { return values.begin() + static_cast<std::ptrdiff_t>(rankOf(share, values.size())); };
    const auto low = rank(0.05);
    const auto middle = rank(0.5);
    const auto high = rank(0.95);
    std::nth_element(values.begin(), middle, values.end());
    if (low != middle) std::nth_element(values.begin(), low, middle);
    if (high != middle) std::nth_element(middle + 1, high, values.end());
    return {*low, *middle, *high};
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
