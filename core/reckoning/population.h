#pragma once

#include "core/reckoning/estimate.h"
#include "core/reckoning/filter.h"
#include "core/reckoning/looks.h"

#include <map>
#include <vector>

namespace tierloam::reckoning {

/// A usual feeding that is not in the journal, as each member has it.
struct UnwrittenFeeding {
    int day = 0;              ///< since the first bedding
    double usualKg = 0;       ///< fresh
    std::vector<char> given;  ///< by member
};

/// One stack's members and all that goes with each of them when one takes another's place.
struct Population {
    model::Ensemble stack;
    LogWeights weights;
    std::vector<double> normalised;     ///< weights that sum to 1; empty while all are equal
    PastWeek week;
    std::map<int, FirstDays> firsts;    ///< by batch, of those that stand
    std::vector<double> ranOffBefore;   ///< L that had run off when the sump was last emptied
    std::vector<UnwrittenFeeding> unwritten; ///< of the last half year

    Population() = default;             ///< without members: room for those of a snapshot
    explicit Population(model::Ensemble drawn);
    Weights shares() const { return normalised; }
    /// Member i becomes what ancestors[i] was.
    void inherit(std::span<const int> ancestors);
    /// Which members of a block are ready and filled today, and the first day of those that were not before.
    void noteReadiness(int day, int block);
    void forgetBatchesGone();
    /// A first day long ago of members that are so no longer counts no more: what is asked is when they will be so again.
    void forgetFirstsUndone(int today);
    /// Weight of the members whose tray in this slot (0-based) was ready, or filled, when it was noted last.
    double readyProbability(int slot) const;
    double filledProbability(int slot) const;

    std::vector<std::vector<char>> readyNow, filledNow; ///< by slot and member
};

/// How the members took an observation.
struct Verdict {
    double effectiveSize = 0;  ///< after it, before any resampling; as it stands without tempering
    double exponent = 1;       ///< below 1: no member could explain it, and it was weighed that much less
    Band expected;             ///< what the members expected to be read, set only where they disagree
    double surprise = 0;       ///< sd between the value and what was expected
    /// Told from three standard deviations on, the limits of a control chart (ISO 7870-2; from memory): of a household's some 50 looks a year one in three years for nothing.
    bool disagrees() const { return exponent < 1.0 || surprise > 3.0 || surprise < -3.0; }
};

/// How the filter of one run weighs. Anything but the default is for tests that must see a broken filter fail.
struct FilterManner {
    bool ignoresLooks = false;
    double noiseScale = 1.0;
    /// A value's likelihood is shared out: this exponent of it moves the members (moveTowards), that much weighs them afterwards. Together they are
    /// less than 1 (a coarsened posterior: Miller & Dunson 2019), since a household's looks share errors that the likelihoods take for independent.
    double movedBy = 0.6;
    double movedByWeighing = 0.3; ///< a search finds what this household's hands find, and its next one no more: shared errors again
    double weighedBy = 0.1;
    double weighedAlone = 0.3;   ///< of values that no member can be moved by: ordered words, counts, the ends of a range
    /// Both exponents together, for this value.
    double countsFor(LookKind kind, const Expectation& expected, double value) const { return evened(expected, value) ? moves(kind) + weighedBy : weighedAlone; }
    double moves(LookKind kind) const { return kind == LookKind::weigh ? movedByWeighing : movedBy; }
};

/// A place left: what the bed differed by there (u) stays there.
void leavePlace(Population& population);

/// Worms crawled off or lay dead, and nobody knows how many: each member loses a share of its own, most of them little, some nearly all. Looks tell them apart.
void loseWorms(Population& population, int day, int number);

/// Takes one value in: the members move towards it by their regression on it, then they are weighed by what is left of its likelihood: tempering
/// where less than 10 effective members would be left, systematic resampling below half, and the Liu–West jitter. `number` counts the values of the day.
/// `expected`: what each member expects (expected_reading.h).
/// What members cannot explain is brought to them first, so that it does not pass for something else: a bed read far from what all expect is as it was
/// read (u jumps), and where worms were found and most members have none, those get some. A bed that would kill them and lies so far off that a slip of the pen
/// is as likely is so for half of the members, and nothing is weighed: the next look tells. The verdict is that of before. In the first weeks castings are
/// found that nobody can have made since: the tray was at work before its journal began, which is no disagreement.
Verdict weigh(Population& population, const Look& look, std::span<const Expectation> expected, int day, int number, Crew& crew, const FilterManner& manner);

}
