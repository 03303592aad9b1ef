#pragma once

#include "core/reckoning/outlook.h"

namespace tierloam::reckoning {

/// What is given most, by weight: what limits are told for; kitchen mix where nothing was given of late.
const model::Substance& mainFood(const Course& course);
/// What of that food, kg fresh, still fits under the rim less 1 cm of the tray being fed: median. nullopt where there is no tray.
std::optional<double> roomForFood(const model::Ensemble& stack, Weights weights, const model::Substance& food);
/// Carbon and nitrogen, kg, of what is usually given in a week, cover included.
struct UsualElements { double carbonKg = 0, nitrogenKg = 0; };
UsualElements usualElements(const UsualCare& care);
/// Probability that on this day number or before it the bottom tray is ready and the top one filled.
double readyAndTurnBy(int day, const model::Ensemble& stack, const Outlook& ahead, Weights weights);
/// Probability that within 14 days the air of some tray falls below overfedAir.
double airLowAhead(const Outlook& ahead, Weights weights);

/// The two weeks (three while the spigot is shut) after `course.today` under usual care, by the first 128 of the members with their weights: members are drawn alike, so that the
/// first stand for all. nullopt of a stack without trays.
std::optional<Foresight> foresee(const Population& members, const Course& course, Crew& crew);
/// What is left of the median colony after 60 days, by the same members.
double colonyKept(const Population& members, const Course& course, Crew& crew);
/// What looks would tell on that day, by the same members half a year ahead.
LookForesight foreseeLooks(const Population& members, const Course& course, Crew& crew);

}
