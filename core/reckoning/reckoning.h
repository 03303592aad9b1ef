#pragma once

#include "core/quantity/units.h"
#include "core/reckoning/look_kind.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

/// What the reckoning hands over: plain immutable values, shared between threads by shared_ptr<const Reckoning>.
namespace tierloam::reckoning {

/// Weighted quantiles over the members: the median and the 90 % range.
struct Band {
    double p05 = 0, p50 = 0, p95 = 0;
    bool operator==(const Band&) const = default;
};

/// Weighted quantiles of a date over all members; one beyond the horizon is nullopt alone.
struct Dates {
    std::optional<Day> p10, p50, p90;
    bool any() const { return p10 || p50 || p90; }
    bool operator==(const Dates&) const = default;
};

enum class TrayState { working, nearly, ready, overdue, drying };

/// Thickness in cm of what lies in a tray, medians, from the floor up: castings, softened, food, bedding. For drawing.
struct Strata {
    double castingsCm = 0, softenedCm = 0, foodCm = 0, beddingCm = 0;
    double total() const { return castingsCm + softenedCm + foodCm + beddingCm; }
};

/// One tray of a stack on one day. Masses kg dry matter unless said.
struct TrayEstimate {
    int slot = 0, tray = 0, batch = 0;
    int ageDays = 0;                 ///< 0 on the bedding day
    TrayState state = TrayState::working;
    Band inputDryKg, castingsDryKg, unprocessedDryKg, slowDryKg, castingsDepthCm;
    Band feedToCast;                 ///< capped at 999
    double readyProbability = 0;
    double nearlyProbability = 0;    ///< of feed-to-cast ≤ 0.20
    Band cnRatio, moisturePct, waterShare, wormShare, cocoons, weightKg;
    Band wormsKgPerM2;               ///< live worms per area of this tray
    double air = 1;                  ///< median of the air multiplier
    double depthCm = 0;              ///< median height of all that lies in it
    Strata strata;
    Dates readyOn;                   ///< only in `now`; first day, possibly past
};

/// A look that could be taken and what it would tell of a date: when the bottom tray is ready, or the turn comes.
struct LookChoice {
    LookKind kind{};
    int slot = 0;                       ///< 1 = bottom; 0: the whole stack
    double minutes = 1;
    double cut = 0;                     ///< expected cut in the variance of the log of the days to go, 0…1
    double perMinute() const { return cut / minutes; }
    bool operator==(const LookChoice&) const = default;
};

/// Fewer bits than this in the bottom tray: it can be lifted today; otherwise it is ready about then.
struct BitsRule {
    double fewerThanPercent = 0;
    std::optional<Day> otherwise;
    bool operator==(const BitsRule&) const = default;
};

/// What looks would have told on a day, of 128 members: kept of every seventh of the last 90 days on which one could have been advised.
struct LookForesight {
    Dates readyOn;                   ///< of the bottom tray
    Dates turnOn;                    ///< the top tray filled
    std::vector<LookChoice> nextLooks; ///< as in StackReckoning, and so are the others
    std::optional<LookChoice> turnLook;
    std::optional<BitsRule> bitsRule;
    bool operator==(const LookForesight&) const = default;
};

/// What the end of a day foresaw under usual care, of 128 members: kept for the last 90 days, so that advice of a day before can be asked again.
struct Foresight {
    double readyAndTurnWithin14Days = 0; ///< probability, bottom and top tray
    double airLowWithin14Days = 0;   ///< probability: air below 0.7 in some tray
    Dates sumpFullOn, topTrayFullOn; ///< within 21 days, or 14 of an open spigot
    Band bedIn7Days, bedIn14Days;    ///< °C
    Band drainedLPerWeek;            ///< next 7 days
    std::optional<double> roomTopTrayFreshKg; ///< as in Forecast
    double ownWarmthK = 0;
    double usualCarbonKg = 0, usualNitrogenKg = 0; ///< of what was usually given in a week, cover included
    double turnProbability = 0;      ///< as in StackReckoning, of all members
    std::optional<Day> turnSince;
    std::optional<Day> turnLikelyOn; ///< half of the members have it, within 14 days
    std::optional<double> colonyKeptIn60Days; ///< of the median colony; of every seventh day on which the bottom tray was ready and none spare
    Band topWaterIn7Days;            ///< water of the tray being fed, of what it holds
    std::optional<LookForesight> looks;
    bool operator==(const Foresight&) const = default;
};

/// One stack at the end of one day.
struct StackEstimate {
    Day day{};
    Band colonyKg, worms, adults;
    Band processingGDryPerDay;       ///< ingested, all trays, mean of 7 days
    Band ration;                     ///< assimilation over maintenance; above 1 it grows
    Band binTempC, sumpL, leachateEc;
    Band drainedLPerWeek;            ///< flow from the trays into the sump, the 7 days up to this one
    std::vector<TrayEstimate> slots; ///< from slot 1 up
    std::optional<Foresight> ahead;  ///< of the last 90 days; none of a stack without trays, and of a day to come
};

/// Colony mass that an estimate after a change would show, and so on: forecast figures of one stack from `asOf` on.
struct Forecast {
    std::vector<StackEstimate> days; ///< weekly, up to 365 days ahead, the base case
    Dates turnOn;                    ///< the top tray filled
    Dates sumpFullOn;
    Dates topTrayFullOn;             ///< the usual feed no longer fits under the rim less 1 cm
    Band drainedExpectedLPerWeek;    ///< next 7 days
    double readyAndTurnWithin14Days = 0; ///< probability, bottom tray
    std::optional<Day> turnLikelyOn; ///< first day on which half of the members have it
    double colonyMedianIn60DaysKg = 0;
    double feedLowKg = 0, feedUsualKg = 0, feedHighKg = 0; ///< fresh, next week
    double feedGivenKg = 0;          ///< fresh, what a week of the base case gives
    double feedNowKg = 0;            ///< the limit of the feeding plan: of feedHighKg what may be given as things stand, less where much was given within these 7 days
    double airLowWithin14Days = 0;   ///< probability: air below 0.7 in some tray under usual care
    double ownWarmthK = 0;           ///< median of what the bed's own heat adds now
    double usualCarbonKg = 0, usualNitrogenKg = 0; ///< of what is usually given in a week, cover included
    std::optional<double> roomTopTrayFreshKg; ///< of the food that is given most, as all limits are; fits under the rim less 1 cm, median
    double foodBulkKgPerM3 = 0;      ///< of that food as it comes to hand; 0: not known
    double coverAsFoodKg = 0;        ///< of that room, what a usual week's cover takes, as so much food
};

/// Facts of the record that pages and advice need beside the estimates.
struct Record {
    std::optional<Day> lastEntry;    ///< any action
    std::optional<Day> lastFeed, lastDrain, lastWater, lastLook;
    double medianFeedGapDays = 7;
    double usualFeedKgPerWeek = 0;   ///< fresh, median week of the last 8
    int daysDrying = 0;              ///< of the tray in light-drying
    bool spigotShut = false;
    double sumpCapacityL = 4;
    int spareTrays = 0;
    double trayHeightCm = 11;
    double areaM2 = 0.16;            ///< of one tray
    std::optional<Day> lastFlush;    ///< the sump was last emptied by a flush when it is also lastDrain
    std::optional<Day> lastTrayAdded; ///< on top of another
    std::optional<Day> dryingSince;
    std::optional<Day> awayFrom, awayUntil; ///< of the stack's latest absence that has begun, both days included; those that follow each other are one
    std::optional<Day> nextAwayFrom, nextAwayUntil; ///< of the next one that is written down and has not begun, likewise
    std::vector<std::pair<Day, Day>> laterAway; ///< those after it, ascending, with at least a day between on which somebody is there
    std::optional<Day> lastSqueeze;
    int squeeze = 0;                 ///< 1 to 5, as read then
    std::optional<Day> lastBedRead;
    double bedReadC = 0;             ///< °C, as read then
    std::optional<Day> bedReadUnder; ///< when place or usual temperature were last written down before that reading; nothing: they were written anew since
    double waterLPerWeek = 0;        ///< poured, mean of the last 8 weeks or of those lived, and what the routine in force gives
    std::optional<Day> lastSumpLook; ///< its level was read, nothing drained
    std::optional<Day> lastMoistureLook; ///< squeezed or measured, in any tray
    std::optional<Day> lastMoistureRead;
    double moistureReadPct = 0;      ///< wet basis, as read then
    std::optional<Day> lastStocked;  ///< worms were put in, as newcomers or from another stack
    std::optional<Day> lastWormLook; ///< worms were seen, weighed or counted
    Amount usualFeed{};              ///< one usual feeding as it is typed (core/reckoning/usual.h)
    double usualFeedKg = 0;          ///< the same fresh; 0: never fed
    std::vector<double> fedKg;       ///< fresh, today and each of the 6 days before it; empty: not asked (a day of the diary)
};

/// What was drained beside what was expected at that moment, the noise of measuring included.
struct DrainCheck {
    Day day{};
    double litres = 0;
    Band expected;
    bool operator==(const DrainCheck&) const = default;
};

/// A whole harvest by mass beside what was expected of it: the track record.
struct HarvestCheck {
    Day day{};
    int batch = 0;
    double takenKg = 0;
    Band expectedKg;                 ///< wet, the noise of weighing included
    std::optional<Day> liftedOn;
    double readyWhenLifted = 0;      ///< probability on that day, before it was lifted
    bool within() const { return takenKg >= expectedKg.p05 && takenKg <= expectedKg.p95; }
    bool operator==(const HarvestCheck&) const = default;
};

/// From when to when the turn of a stack was advised, and whether it was followed: the diary of advice.
struct TurnNote {
    enum class What { addTray, lift };
    What what{};
    int batch = 0;                   ///< the filled top tray, or the bottom one that was to be lifted
    Day from{};
    std::optional<Day> to;           ///< nullopt: still advised
    bool done = false;               ///< ended by the act, not by a look
    bool operator==(const TurnNote&) const = default;
};

/// A value that the members could not explain, or hardly.
struct Disagreement {
    std::int64_t entry = 0;             ///< id of the entry
    Day day{};
    LookKind kind{};
    int slot = 0;                       ///< 1 = bottom; 0: the whole stack
    double value = 0;
    Band expected;                      ///< what they expected to be read
    std::optional<Day> settledOn{};     ///< a later look in the same place agreed
    int batch = 0;                      ///< that lay in `slot` on that day; 0: the whole stack
    bool operator==(const Disagreement&) const = default;
};

/// An entry that puts more into a stack than it can hold or carry. It is kept as it was written.
struct Oversized {
    enum class What { matter, worms };
    What what{};
    std::int64_t entry = 0;             ///< id of the entry
    Day day{};
    int slot = 0;                       ///< 1 = bottom; of worms 0
    double comesTo = 0;                 ///< cm that the tray is filled to, median; kg of worms that were put in
    double most = 0;                    ///< cm under its rim less 1 cm; kg that its trays carry (core/reckoning/crowding.h)
    double adds = 0;                    ///< of it by this entry alone
    bool operator==(const Oversized&) const = default;
};

/// Usual feedings that are not in the journal and yet seem to have been given.
struct UnwrittenGuess {
    Day from{}, to{};                   ///< the usual days that have no entry, first and last
    int feedings = 0;
    double probability = 0;             ///< that they were so many or more
    double kgEach = 0;                  ///< fresh
    std::string material;
    std::vector<Day> days;              ///< likeliest first, as many as `feedings`
    bool operator==(const UnwrittenGuess&) const = default;
};

struct Present;  // outlook.h: the members themselves
struct Snapshot; // stack_run.h

struct StackReckoning {
    std::string name;
    std::uint64_t digest = 0;           ///< of the entries that it rests on
    Day firstBedding{};
    Day asOf{};
    StackEstimate now;
    std::vector<StackEstimate> history; ///< ascending by day; daily for the last 90 days and around observations, weekly before; the last is `now`
    Forecast forecast;
    Record record;
    double turnProbability = 0;         ///< the top tray is filled now
    std::optional<Day> turnSince;       ///< since when it has been raised (0.8, withdrawn at 0.6)
    std::optional<Day> readySince;      ///< the bottom tray likewise
    std::vector<Oversized> oversized;        ///< in order of the journal
    std::vector<Disagreement> disagreements; ///< in order of the journal, those not settled
    std::vector<Disagreement> settled;       ///< of the last 150 days, for the diary
    std::vector<UnwrittenGuess> unwritten;   ///< of the last half year, by month
    std::vector<DrainCheck> drains;          ///< in order of the journal
    std::vector<HarvestCheck> harvests;      ///< in order of the journal
    std::vector<TurnNote> turns;             ///< in order of their beginnings
    std::vector<LookChoice> nextLooks;       ///< most telling of the bottom tray's ready date for the minute first
    std::optional<LookChoice> turnLook;      ///< what the depth of the top tray would tell of the turn
    std::optional<BitsRule> bitsRule;
    double effectiveSize = 0;           ///< of the members' weights
    bool retired = false;
    std::shared_ptr<const Present> present; ///< for questions about what would be; empty in a reckoning read from estimates
    std::vector<std::shared_ptr<const Snapshot>> snapshots; ///< ascending; the next reckoning goes on from the last that still holds

    /// The sample of `history` on that day or the last before it; nullptr before the first.
    const StackEstimate* on(Day day) const;
};

struct Reckoning {
    Day asOf{};
    std::uint64_t journalDigest = 0;
    int members = 0;
    std::vector<StackReckoning> stacks; ///< in journal order; retired ones and those not yet bedded are left out

    const StackReckoning* stack(const std::string& name) const;
};

}
