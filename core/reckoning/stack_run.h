#pragma once

#include "core/journal/replay.h"
#include "core/reckoning/care.h"
#include "core/reckoning/deeds.h"
#include "core/reckoning/crew.h"
#include "core/reckoning/outlook.h"
#include "core/reckoning/population.h"
#include "core/reckoning/reckon.h"
#include "core/reckoning/unwritten.h"

#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <stop_token>

namespace tierloam::reckoning {

/// A rule that is raised when its probability reaches 0.8 and withdrawn when it has been at most 0.6 for `keptFor` days, replayed along the days.
class Raised {
public:
    void note(double probability, Day day, int keptFor = 0);
    const std::optional<Day>& since() const { return since_; }

private:
    friend struct ArchiveAccess; // kept_members.cpp
    std::optional<Day> since_;
    std::optional<Day> low_;                 ///< first of the days up to now on which it was at most 0.6
};

/// Done so many days or so often without being written down.
struct Habit { double each = 0; int every = 1; int from = 0; };

/// Where a run stands at the end of a day: all that the days after it depend on.
struct RunState {
    int day = -1;                            ///< the last one that has passed
    Population members;
    std::map<int, Raised> ready;             ///< by batch
    Raised turn;
    int turnBatch = 0;                       ///< top batch that `turn` speaks of
    std::size_t stepsDone = 0;
    std::optional<Habit> waterHabit, coverHabit;
    Surroundings surroundings;
    std::vector<Oversized> oversized;
    std::vector<Disagreement> disagreements;
    std::vector<Disagreement> settled;       ///< in order of the days on which they were
    std::vector<DrainCheck> drains;
    std::vector<HarvestCheck> harvests;
    std::vector<TurnNote> turns;
    struct Lifted { Day on{}; double ready = 0; };
    std::map<int, Lifted> lifted;            ///< by batch
};

/// Kept of a run, so that an entry runs again about twice its age and not the years before it. The samples up to its day stand in the history of
/// the reckoning that holds it.
struct Snapshot {
    std::uint64_t prefix = 0;                ///< of all that the run rests on up to its day
    RunState state;
};

/// One stack through its journal, day by day: entries at the start of a day in the order of the journal, each weighed for what it reads and
/// then done; then what is usual and unwritten; then the day passes.
class StackRun {
public:
    StackRun(const journal::Entries& entries, const journal::StackHistory& history, const materials::Table& materials, const Options& options,
             Crew& crew, const FilterManner& manner = {});

    /// False when it was stopped. Goes on from the last snapshot of `before` that still holds, or from the start; both give the same.
    bool run(StackReckoning& result, std::stop_token stop, const StackReckoning* before = nullptr);

    /// Called at each value that is read, before it is weighed; for tests that make journals.
    std::function<void(std::size_t entry, const Look&, const Population&)> onLook;
    const Population& population() const { return now_.members; }

private:
    void entriesOf(int day);
    void weighEntry(const journal::Step& step, const journal::Standing& before, int day);
    void noteVerdict(const Verdict& verdict, const Look& look, std::int64_t entry, int day);
    void emptied(const journal::Action& action);
    void keepCheck(const journal::Step& step, const Look& look, std::span<const Expectation> expectations, int day);
    void noteTurn(Day day, int topBatch);
    void routinesOf(int day);
    void passDay(int day);
    void noteDay(int day, StackReckoning& result);
    void foreseeFrom(int day, StackEstimate& sample);
    bool couldBeLookedAt(const StackEstimate& sample, int day) const;
    bool lookedWithin(int days, int day) const;
    bool worthASample(int day) const;
    bool wasChecked(int day) const;
    bool worthASnapshot(int day) const;
    void goOnFrom(const StackReckoning& before, StackReckoning& result);
    void thinSnapshots(std::vector<std::shared_ptr<const Snapshot>>& snapshots) const;
    const journal::Standing* standing() const;
    void hashPrefixes(const std::string& species);
    void settleStates(StackEstimate& at, int day) const;
    /// As the journal stands at the end of this day, the last that has passed.
    Course courseFrom(int day) const;
    bool forecast(StackReckoning& result, std::stop_token stop);
    void feedLimits(StackReckoning& result, const Course& course) const;
    Day dayAt(int day) const { return *history_.firstBedding + std::chrono::days{day}; }

    const journal::Entries& entries_;
    const journal::StackHistory& history_;
    Deeds deeds_;
    Options options_;
    Crew& crew_;
    FilterManner manner_;
    int last_ = 0;                           ///< day number of asOf
    std::vector<std::size_t> firstStepOf_;   ///< by day number: index of the first step of that day; size last_ + 2
    std::vector<char> looked_;               ///< days with an observation
    std::vector<MissedFeeding> missed_;
    std::vector<std::uint64_t> prefixOf_;    ///< by day number
    RunState now_;
    int looksToday_ = 0;
};

}
