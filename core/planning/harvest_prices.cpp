#include "core/planning/harvest_prices.h"

#include <cmath>
#include <set>

namespace tierloam::planning {

namespace {

constexpr int days = 1024;               ///< from today on; later ones pay as the last of them
constexpr int patience = 15;             ///< rounds without a better bound, after which smaller steps are taken
constexpr double smaller = 0.6;

}

TripPrices::TripPrices(const std::vector<StackTurns>& stacks, const HarvestWishes& wishes, const WelcomeOfEach& is)
    : stacks_{stacks}, wishes_{wishes}, is_{is}, prices_(stacks.size(), std::vector<double>(days, 0.0))
{
    if (wishes.gathering != Gathering::gathered) return;
    std::set<int> pinned;
    for (const StackTurns& stack : stacks)
        for (std::size_t k = 0; k < stack.natural.size(); ++k)
            if (const auto pin = pinOf(stack, k)) pinned.insert(*pin);
    pinned_.assign(pinned.begin(), pinned.end());
    for (std::vector<double>& of : prices_) of.assign(days, wishes.trip / static_cast<double>(stacks.size()));
    share(prices_);
}

std::size_t TripPrices::cell(int day) { return static_cast<std::size_t>(std::clamp(day, 0, days - 1)); }

double TripPrices::pinnedAfter(int day) const
{
    return wishes_.trip * static_cast<double>(pinned_.end() - std::upper_bound(pinned_.begin(), pinned_.end(), day));
}

/// Days of delay are whole, and so are trips mostly.
double TripPrices::leastStep() const { return wishes_.trip == std::floor(wishes_.trip) ? 1.0 - 1e-6 : 1e-9; }

/// Puts them where they may be: none below nought, no day dearer than its trip, pinned days free.
void TripPrices::share(ByStack& prices) const
{
    std::vector<double> sum(days, 0.0);
    for (std::vector<double>& of : prices)
        for (std::size_t day = 0; day < of.size(); ++day) sum[day] += of[day] = std::max(of[day], 0.0);
    for (std::vector<double>& of : prices) {
        for (std::size_t day = 0; day < of.size(); ++day)
            if (sum[day] > wishes_.trip) of[day] *= wishes_.trip / sum[day];
        for (const int pin : pinned_) of[cell(pin)] = 0.0;
    }
}

void TripPrices::raise(double known, int rounds)
{
    ByStack tried = prices_;
    double scale = 1.0;
    int since = 0;
    for (int round = 0; round < rounds; ++round) {
        double bound = wishes_.trip * static_cast<double>(pinned_.size());
        ByStack lifted(stacks_.size(), std::vector<double>(days, 0.0));
        double square = 0.0;
        for (std::size_t i = 0; i < stacks_.size(); ++i) {
            const OneStack alone = bestOfOne(stacks_[i], is_[i], [&](int day) { return tried[i][cell(day)]; });
            bound += alone.cost;
            for (const int day : alone.days) square += lifted[i][cell(day)]++ == 0.0 ? 1.0 : 0.0;
        }
        if (bound > bound_ + 1e-6) {
            bound_ = bound;
            prices_ = tried;
            since = 0;
        } else if (++since == patience) {
            scale *= smaller;
            since = 0;
        }
        if (bound_ > known - leastStep() || square == 0.0) return;
        // Dearer for those who go there, so that the others, who do not, need not pay.
        const double step = scale * std::max(known - bound, 0.01) / square;
        for (std::size_t i = 0; i < stacks_.size(); ++i)
            for (std::size_t day = 0; day < tried[i].size(); ++day) tried[i][day] += step * lifted[i][day];
        share(tried);
    }
}

}
