#pragma once

#include "core/reckoning/outlook.h"

#include <algorithm>
#include <map>
#include <optional>
#include <stop_token>
#include <vector>

/// A stack's coming year with its trays added, lifted and taken in turn: the only forecast that does so.
namespace tierloam::reckoning {

/// A step that falls due in the year, and how sure its day is.
struct TurnWindow {
    Day natural{};                   ///< half of the members have it, all steps before it taken as planned; tomorrow at the earliest, unless it is due today. Of one
                                     ///< that half of them have already and that is not called due: 80 in 100 have it
    std::optional<Day> early, late;  ///< a tenth, nine tenths; `late` is looked for 120 days beyond, nullopt: later than that
};

struct PlannedTray {                 ///< a spare tray that goes on top
    TurnWindow window;
    Day on{};
    int batch = 0, tray = 0;         ///< as the journal would number them
};

struct PlannedHarvest {
    TurnWindow window;
    Day liftOn{}, takeOn{};
    bool begun = false;              ///< in the light already when the year begins
    bool atOnce = false;             ///< the only tray: taken on the day itself, its worms picked back into new bedding; nothing is lifted
    int batch = 0, tray = 0;
    double readyWhenLifted = 0;      ///< probability of feed-to-cast at most 0.10 on that day
    Band castingsL, castingsDryKg;   ///< taken, as castings lie
    std::vector<double> litresOfMember;
    double colonyKg = 0;             ///< median when lifted
};

/// A tray on its way through the year, for drawing: which slot it stands in from when to when.
struct TrayStay { int tray = 0, batch = 0, slot = 0; Day from{}, to{}; bool drying = false; };

struct RotationCourse {
    std::vector<PlannedTray> trays;
    std::vector<PlannedHarvest> harvests;
    std::vector<TrayStay> stays;
    std::vector<double> colonyOfMember; ///< kg at the end
    Band colonyAtEnd;                ///< of these
};

/// Whether one of the spans, both days included, holds the day.
inline bool isWithin(const std::vector<std::pair<Day, Day>>& spans, Day day)
{
    return std::any_of(spans.begin(), spans.end(), [day](const auto& span) { return day >= span.first && day <= span.second; });
}

struct RotationWish {
    std::map<int, Day> liftOn;       ///< by the harvest's number from today, 0, 1, …: on that day whatever the tray is like
    std::map<int, Day> takeOn;       ///< by the same number; without one so many days after the lift
    std::vector<std::pair<Day, Day>> away; ///< both included: a tray on its turn waits until somebody is there
    int daysDrying = usualDryingDays;
    int dryingSoFar = 0;             ///< days, of a tray that is in the light today
    bool turnToday = false;          ///< what the stack's turn asks for (a tray, a lift) is due today: the first day of the year is today itself
    std::optional<Dates> firstTurn;  ///< of the first tray added or lifted, as it is told elsewhere of more members; p50 lies ahead, or it is not within the year. nullopt: by
                                     ///< the members followed
    bool takeToday = false;          ///< the tray in the light is to be taken today
    int members = 128;               ///< a multiple of 64; a systematic choice of those that there are
    int ahead = outlookDays;
    ChangedPlan change;              ///< only feed, temperature and absence are looked at
    bool windows = true;             ///< false: `late` is left out, which halves the work
    bool nextStepOnly = false;       ///< the course ends with the first tray added or lifted
};

/// nullopt when it was stopped or nothing stands. Of a stack that owns one tray the castings are taken on its turn, and it is bedded anew.
std::optional<RotationCourse> runRotation(const Present& present, const RotationWish& wish, Crew& crew, std::stop_token stop = {});

/// A systematic choice of the members, alike in weight.
Population fewer(const Population& members, int wanted);

}
