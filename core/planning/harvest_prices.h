#pragma once

#include "core/planning/harvest_choices.h"

#include <vector>

/// A proof of how good a gathering can be at best: the trip of each day is shared out over the stacks, and each stack then goes its own best way.
namespace tierloam::planning {

/// What each stack pays for a harvest on a day. On no day do all together pay more than its trip, and days pinned by hand, whose trip is made anyhow, are
/// free; so the sum of what each stack costs by itself, and the trips of the pinned days, is never more than the best choice costs.
/// Lagrangian relaxation with subgradients (Fisher 1981, Management Science 27:1-18, from memory).
class TripPrices {
public:
    /// All stacks pay alike where the harvests are gathered, else nothing.
    TripPrices(const std::vector<StackTurns>& stacks, const HarvestWishes& wishes, const WelcomeOfEach& is);

    double of(std::size_t stack, int day) const { return prices_[stack][cell(day)]; }
    /// What the best choice costs at least.
    double bound() const { return bound_; }
    /// Trips of the pinned days after that one.
    double pinnedAfter(int day) const;
    /// Shares the trips out better, until `known`, the cost of a choice there is, is proved to be the best, or for so many rounds.
    void raise(double known, int rounds);
    /// Another choice that costs less costs less by this.
    double leastStep() const;

private:
    using ByStack = std::vector<std::vector<double>>;
    static std::size_t cell(int day);
    void share(ByStack& prices) const;

    const std::vector<StackTurns>& stacks_;
    const HarvestWishes& wishes_;
    const WelcomeOfEach& is_;
    std::vector<int> pinned_;                ///< different days, ascending
    ByStack prices_;                         ///< by stack and day
    double bound_ = 0;
};

}
