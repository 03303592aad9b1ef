#pragma once

#include "core/journal/absences.h"
#include "core/reckoning/deeds.h"
#include "core/reckoning/reckoning.h"

#include <vector>

namespace tierloam::reckoning {

/// The base case of the forecast: mean weekly feeding per material, cover, water and drains of the last 8 weeks.
struct UsualCare {
    struct Weekly { model::Substance what; double kg = 0; bool isFood = true; };
    std::vector<Weekly> given;
    double waterLitres = 0;
    double drainLitres = 0;
    double feedKg = 0;             ///< fresh, all foods, mean week
    double medianFeedKg = 0;       ///< fresh, median of the last 8 weeks (weeks without a feeding count as 0)
    int firstIn = 1;               ///< days until it is given next, then every 7: when the usual gap since the last feeding ends, tomorrow at the earliest
    bool isDue(int daysAhead) const { return daysAhead >= firstIn && (daysAhead - firstIn) % 7 == 0; }
};

/// Of one stack, from the entries up to `asOf`. Younger stacks are averaged over the weeks that they have lived.
UsualCare usualCare(const journal::Entries& entries, const journal::StackHistory& history, const Deeds& deeds, Day asOf);

/// The usual care, all foods scaled to so many kg fresh a week; the kitchen's mix where nothing was fed.
UsualCare careWith(UsualCare care, double feedKgPerWeek, const model::Substance& kitchen);

/// One week of it into the highest tray not drying; returns the members for which a feeding did not fit.
std::vector<char> careForAWeek(model::Ensemble& stack, const UsualCare& care);

/// Somebody looked into the bed: check, weigh, count or tray weight.
bool isLook(const journal::Action& action);

/// Somebody looked for worms: few, some or many were seen, or they were weighed or counted.
bool isWormLook(const journal::Action& action);

/// The latest absence that has begun, and the next one that has not; `away` of the stack, joined (journal::absencesOf).
void noteAbsences(Record& record, const std::vector<journal::AwayDays>& away, Day asOf);

/// What the journal says without any model, absences to come among it as far as `entries` hold them.
Record recordOf(const journal::Entries& entries, const journal::StackHistory& history, const materials::Table& materials, Day asOf);

}
