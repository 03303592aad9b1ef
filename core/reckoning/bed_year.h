#pragma once

#include "core/journal/standing.h"

/// A bed through the year. What is written down as its usual temperature is the mean of the year under usual care; season and place make of it what the
/// bed has on a day. Forms and the model ask here, so that what is told is what is reckoned with.
///     bed(day) = mean + a·cos(2π(day of year − 200)/365), day 17 in the south; a = 1 K indoors, 6 in a garage, shed or porch, 9 outdoors
/// Source: our judgement (a temperate climate; the warmth of the heap itself is no part of it).
namespace tierloam::reckoning {

/// a, K.
double seasonAmplitude(journal::Place place);
/// °C of the bed on that day.
double bedOn(double yearMeanC, journal::Place place, Day day, bool southern);
/// The other way: the mean of the year, °C, of a bed that has `bedC` on that day.
double yearMeanFrom(double bedC, journal::Place place, Day day, bool southern);

/// The coldest and the warmest month, 1 to 12, and the mean of each, °C.
struct BedYear {
    int coldestMonth = 1, warmestMonth = 7;
    double coldestC = 0, warmestC = 0;
};
BedYear bedYear(double yearMeanC, journal::Place place, bool southern);

/// The mean of the year to propose for a place of which nothing is known, °C: 20 indoors, 14 in a garage, shed or porch, 12 outdoors. Judgement; the
/// journal's own default, where a first set-up leaves `temp` out, is 20 for every place.
double proposedYearMean(journal::Place place);

/// Beyond these the model has worms die of heat or cold (core/model/process_death.h), °C.
inline constexpr double coldKillsBelow = 3.0, heatKillsAbove = 31.0;

}
