#pragma once

#include "core/model/acts.h"
#include "core/model/ensemble.h"
#include "core/model/measures.h"

#include <optional>
#include <string>
#include <utility>
#include <vector>

/// A household as the trade describes it, run on the median member: fed weekly by the worms' mass, trays added and harvested on their turn.
namespace tierloam::testing {

struct Habit {
    double wormsKg = 0.45;
    double temperature = 22;            ///< the bed is held there, and at field capacity
    std::string bedding = "corrugated cardboard shredded";
    double beddingCm = 5;               ///< depth as laid, loose
    int traysOwned = 3;
    double feedPerWormADay = 0.25;      ///< fresh, of the worms' mass
    double mostFeedAWeek = 1.5;         ///< kg fresh
    double paperAWeek = 0.030;          ///< kg
    bool addsTrays = true;
    bool harvests = true;
    int daysDrying = 5;
    std::optional<int> overfedFrom;     ///< from that day on, 3.5 kg a week whatever the worms weigh
    std::vector<std::pair<model::Parameter, double>> centres; ///< in place of those of the table, for tuning
};

struct Diary {
    std::vector<int> added;             ///< days on which a tray was added, after the first
    std::vector<int> harvested;         ///< days on which castings were taken
    std::vector<double> yieldRatio;     ///< quick DM put into the batch ÷ castings DM, at each harvest
    std::vector<double> dryingLeft;     ///< share of the tray's worms left, per day of the first light-drying
    std::optional<int> enoughCastings;  ///< first day with 2.5 cm in the first tray
    std::optional<int> firstReady;      ///< first day on which the first tray is ready
    std::optional<int> doubled;         ///< first day on which the colony is twice what was stocked
    std::vector<double> colony;         ///< kg, by day
    std::vector<double> air;            ///< worst tray, by day
    std::vector<double> ratio;          ///< feed-to-cast of the first tray, by day
    double worstLedger = 0;
};

Diary live(const Habit& habit, int days);

/// kg fresh of a bedding that lies loose `cm` deep on `area` m².
double beddingMass(const model::Substance& bedding, double area, double cm);

}
