#pragma once

#include "core/reckoning/reckoning.h"

#include <functional>
#include <optional>

/// Chances read off the bands that the reckoning hands over, and rules that are replayed along the days so that they do not flicker.
namespace tierloam::advice {

/// Probability that a value lies above `x`: a straight line on the cumulative distribution through 5, 50 and 95 %, led on beyond them.
/// nullopt where nothing is known (a band of zeros).
std::optional<double> chanceAbove(const reckoning::Band& band, double x);
std::optional<double> chanceBelow(const reckoning::Band& band, double x);

/// At which chance a rule is raised, and at which it is withdrawn.
struct Thresholds { double raise = 0.8, withdraw = 0.6; };

/// The chance of what a rule is about on one day; nullopt: nothing can be said, which withdraws it.
using ChanceOn = std::function<std::optional<double>(const reckoning::StackEstimate&)>;

/// Whether the rule stands today, replayed along the daily estimates of the last 60 days. `now`, when given, is the chance of today.
bool stands(const reckoning::StackReckoning& stack, const ChanceOn& chance, Thresholds at, std::optional<double> now = std::nullopt);

/// Of a date that is foreseen: 1 when it is at most `raise` days off, 0 when it is more than `kept` off, so that a rule on it can be replayed with
/// the thresholds 1 and 0; nullopt: none.
std::optional<double> nearness(const std::optional<Day>& on, Day today, int raise, int kept);

/// The batch's tray on that day; nullptr when it did not stand.
const reckoning::TrayEstimate* trayOfBatch(const reckoning::StackEstimate& on, int batch);

}
