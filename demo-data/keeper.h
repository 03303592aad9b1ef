#pragma once

#include "core/journal/entry.h"
#include "core/model/acts.h"
#include "core/reckoning/reckoning.h"

#include <functional>
#include <optional>
#include <random>
#include <string>

namespace tierloam::demo {

/// How a made-up household treats one stack.
struct Habits {
    std::string stack;
    journal::Setup setup;
    double stockedGrams = 450;
    std::string bedding = "corrugated cardboard shredded";
    double beddingGrams = 480;
    double feedGrams = 900;          ///< a usual week
    double missed = 0.06;            ///< chance that a week is left out
    double drainAboveLitres = 0.6;   ///< of what is there or ran off
    int looksEvery = 31;             ///< days between looks at depth or bits
    int carefulFrom = 0;             ///< from this day on the keeper's estimates use as many members as the program does
    std::optional<int> dailyFrom;    ///< from this day on the keeper reckons every day, else once a week
    std::uint64_t seed = 1;
};

/// One stack of a made-up household: a drawn member of the model is the truth, the journal is what its keeper writes of it,
/// with odd amounts, missed weeks and errors of reading. The keeper follows the advice on trays and harvests.
class Keeper {
public:
    Keeper(const Habits& habits, Day start);

    /// Lives until `enough` says so at the end of a day (or for `most` days); returns the days lived.
    int live(int most, const std::function<bool(const Keeper&)>& enough);

    const journal::Entries& entries() const { return entries_; }
    const reckoning::StackReckoning* estimate() const { return estimate_ ? &estimate_->stacks.front() : nullptr; }
    int day() const { return day_; }
    int daysDrying() const { return liftedOn_ ? day_ - *liftedOn_ : -1; }
    int trays() const { return truth_.trays(); }
    bool advised(std::string_view code) const;

private:
    void write(journal::Action action, std::optional<int> slot = {}, std::string note = {});
    void begin();
    void tendTrays();
    void feed();
    void drainIfFull();
    void look();
    void readThermometer();
    void oddities();
    void layTray();
    void reckonNow();
    double normal(double mean, double sd) { return std::normal_distribution<double>{mean, sd}(random_); }
    bool chance(double share) { return std::bernoulli_distribution{share}(random_); }
    model::PerMember all(double value) const { return model::PerMember(static_cast<std::size_t>(truth_.members()), value); }

    Habits habits_;
    Day start_;
    int day_ = 0;
    std::mt19937_64 random_;
    model::Ensemble truth_;
    journal::Entries entries_;
    std::shared_ptr<const reckoning::Reckoning> estimate_;
    std::optional<int> liftedOn_;
    int nextFeed_ = 3;
    int nextLook_ = 24;
    int nextReading_ = 2;
    int dryFor_ = 5;
    int batches_ = 0;
    double ranOffAtLastDrain_ = 0;
};

}
