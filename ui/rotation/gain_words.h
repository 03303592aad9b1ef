#pragma once

#include "core/planning/year_plan.h"

#include <QString>

#include <optional>

/// Differences that a change makes and sums of a year, with their 90 % range: where the range holds both directions each end names its own.
namespace tierloam::rotation {

/// "14 days sooner (9–20)", "3 days sooner (from 1 day later to 9 days sooner)". `none` stands where the middle is no whole day: "no difference".
/// days: positive = sooner.
QString gainedText(const reckoning::Band& days, const QString& none);

/// "30 g (10–50) heavier", "30 g heavier (from 10 g lighter to 60 g heavier)"; nullopt where the middle would be told as none.
std::optional<QString> heavierText(const reckoning::Band& kg);
/// "from 10 g lighter to 30 g heavier"; empty where both ends would be told as none.
QString heavierRange(const reckoning::Band& kg);

/// "waiting costs 30 g (10–50) of worms", "waiting costs 30 g of worms (from 10 g more to 60 g fewer)", "waiting leaves …"; nullopt below 10 g.
/// kg: positive = fewer worms.
std::optional<QString> waitingText(const reckoning::Band& kg);

/// What gathering gains beside harvests that come as soon as they may: "Gathered: 5 days of lifting fewer, for 61 days of delay"; or that nothing is gathered, and why.
QString gatheredText(const planning::YearPlan& plan);
/// Whether it gains a day.
bool gainedByGathering(const planning::YearPlan& plan);

/// What adds up over a year is worth two digits: "78 L (61–95)", "8.4 L (6.1–10.9)". litres
QString volumeOfYear(const reckoning::Band& litres);

}
