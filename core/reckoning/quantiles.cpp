#include "core/reckoning/quantiles.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <numeric>

namespace tierloam::reckoning {

namespace {

/// Rank, from 0, of the quantile among n equally weighted values.
std::size_t rankOf(double share, std::size_t n)
{
    const double wanted = std::ceil(share * static_cast<double>(n) - 1e-9);
    return wanted < 1.0 ? 0 : static_cast<std::size_t>(wanted) - 1;
}

/// Order statistics of the same values, several in a row: values are counted into bins between the least and the greatest, and only those of
/// the bin that holds the wanted rank are put in order. A selection over all of them costs several times as much.
class Selection {
public:
    explicit Selection(const std::vector<double>& values) : values_{values}, bins_(values.size())
    {
        const auto [low, high] = std::minmax_element(values.begin(), values.end());
        const double width = *high - *low;
        const double perBin = width > 0.0 ? (binCount - 1) / width : 0.0;
        if (std::isfinite(perBin)) // else a width so small, or so great, that it cannot be divided: all stay in bin 0
            for (std::size_t i = 0; i < values.size(); ++i) bins_[i] = static_cast<std::uint8_t>((values[i] - *low) * perBin);
        for (const std::uint8_t bin : bins_) ++counts_[bin];
    }

    double at(std::size_t rank)
    {
        std::size_t bin = 0;
        while (rank >= counts_[bin]) rank -= counts_[bin++];
        inBin_.clear();
        for (std::size_t i = 0; i < bins_.size(); ++i)
            if (bins_[i] == bin) inBin_.push_back(values_[i]);
        const auto wanted = inBin_.begin() + static_cast<std::ptrdiff_t>(rank);
        std::nth_element(inBin_.begin(), wanted, inBin_.end());
        return *wanted;
    }

private:
    static constexpr int binCount = 256;

    const std::vector<double>& values_;
    std::vector<std::uint8_t> bins_;
    std::array<std::size_t, binCount> counts_{};
    std::vector<double> inBin_;
};

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
    return Selection{values}.at(rankOf(share, values.size()));
}

Band band(const std::vector<double>& values, Weights weights)
{
    if (values.empty()) return {};
    if (!weights.empty()) {
        const auto ordered = inOrder(values, weights);
        return {weightedQuantile(ordered, 0.05), weightedQuantile(ordered, 0.5), weightedQuantile(ordered, 0.95)};
    }
    Selection selection{values};
    return {selection.at(rankOf(0.05, values.size())), selection.at(rankOf(0.5, values.size())), selection.at(rankOf(0.95, values.size()))};
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
