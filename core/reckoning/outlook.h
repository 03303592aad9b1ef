#pragma once

#include "core/journal/standing.h"
#include "core/reckoning/care.h"
#include "core/reckoning/crew.h"
#include "core/reckoning/population.h"

#include <optional>
#include <stop_token>

/// A stack from today on: all members under usual care, or under a changed plan with the same members and the same random numbers.
namespace tierloam::reckoning {

/// From the lift to the taking, days (2 to 7: common practice, no source); the lid is off meanwhile.
inline constexpr int usualDryingDays = 6;
/// The day number on which a tray's light-drying ends that has lasted `soFar` days by `today`.
constexpr int dryingEnds(int today, int soFar, int daysDrying = usualDryingDays) { return today + (daysDrying > soFar ? daysDrying - soFar : 1); }

/// What acts on a stack from outside, on any day.
struct Surroundings {
    Day firstBedding{};
    journal::StackSettings settings;
    journal::Spigot spigot = journal::Spigot::open;
    bool lidOn = true;
    std::optional<int> lidBackOn;     ///< day number from which usual care has the lid on again: castings have been in the light for long enough
    bool southern = false;
    std::optional<std::pair<int, double>> air, humidity; ///< last reading at this place: day number, °C and 0…1; used for 14 days, the air's difference from what is usual fading in the second 7

    /// °C of the bed without readings: what is written as usual, and the season.
    double usualOn(int day) const;
    model::DayForcing on(int day) const;
};

/// How a stack goes on: everything but the members themselves.
struct Course {
    int today = 0;                    ///< day number of the last day of the journal
    int batches = 0;                  ///< that ever stood: the next one laid has the number after it, as the journal will number it
    Surroundings surroundings;
    UsualCare care;
    model::Substance kitchen;         ///< of a feeding that is planned
    model::Substance bedding;         ///< of a tray that is added: that of the last bedding
    double beddingKg = 0.48;          ///< fresh, as the last
    double beddingWater = 0;          ///< kg per kg DM
};

/// What is done otherwise than usual; an empty plan is the base case.
struct ChangedPlan {
    std::optional<double> feedKgPerWeek;      ///< fresh, all foods together, in the proportions of the usual care
    std::optional<Day> trayAddedOn;           ///< with the bedding of the last one
    std::optional<Day> harvestOn;             ///< all of the bottom tray
    struct FeedFrom { Day from; double kgPerWeek; };
    std::vector<FeedFrom> ramp;               ///< another weekly amount from each of these days on, ascending; usual before the first
    std::optional<std::pair<Day, Day>> away;  ///< nobody feeds, waters or drains, both days included
    struct Leave { Day on; double feedKg = 0, waterL = 0; bool drain = false; };
    std::optional<Leave> leave;               ///< for an absence: fresh food of the kitchen, water, and the sump emptied; on a day before tomorrow: at once
    std::optional<double> usualTemperature;   ///< °C from tomorrow on
    struct Split { Day on; double share; };
    std::optional<Split> split;               ///< that share of the colony leaves
};

/// What becomes of every member; days are counted from the first bedding, `never` within the horizon stays never.
struct Outlook {
    std::map<int, FirstDays> firsts;          ///< by batch
    std::vector<int> sumpFull, trayFull;
    std::vector<double> drainedNextWeek;      ///< L from the trays into the sump
    std::vector<double> colonyIn60Days, colonyAtEnd; ///< kg
    std::vector<double> leastAir;             ///< least air multiplier of any tray, first 14 days
    std::vector<double> bedIn7Days, bedIn14Days; ///< °C
    std::vector<double> topWaterIn7Days;      ///< of the tray being fed, of what it holds; empty where none is
    std::vector<StackEstimate> days;          ///< weekly, when asked for
};

inline constexpr int outlookDays = 365;

/// What each member eats, kg of dry matter a day, mean of each week ahead: by week, and there by member.
using WeeklyRates = std::vector<std::vector<double>>;

/// nullopt when it was stopped. `ahead` days; weekly estimates, and `rates` where they are asked for, only if `sampled`.
std::optional<Outlook> lookAhead(Population members, const Course& course, const ChangedPlan& plan, Crew& crew, std::stop_token stop,
                                 int ahead = outlookDays, bool sampled = true, WeeklyRates* rates = nullptr);

/// The stack as it stands at the end of a run, kept for questions about what would be.
struct Present {
    Population members;
    Course course;
    Outlook base;
};

}
