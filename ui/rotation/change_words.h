#pragma once

#include "core/planning/another_stack.h"
#include "core/planning/changes.h"
#include "ui/rotation/tried_change.h"

namespace tierloam::rotation {

/// The usual course beside the changed one, as rows of figures and week by week.
void addCourse(TriedChange& to, const reckoning::PlanComparison& compared, Day today);
/// A compared plan in a sentence and its course.
TriedChange ofPlans(const reckoning::PlanComparison& compared, Day today);
/// What the plan asks for and the stack has not: room for the food, a tray that is spare.
void addWhatIsInTheWay(TriedChange& to, const reckoning::StackReckoning& stack, const reckoning::ChangedPlan& plan);
/// A usual temperature is the mean of the year, °C: what that makes of the coldest and the warmest month at that place, and whether worms die of it.
QString bedYearText(double yearMeanC, journal::Place place, bool southern);
/// The same of a changed plan, with the months beside those that are usual.
void addBedYear(TriedChange& to, const reckoning::Surroundings& around, double yearMeanC);
TriedChange ofGiveAway(const planning::GiveAway& give, int weeks);
/// The new stack, and when the old one is back; the old one's course is added by addCourse. Where none can go the sentence is that of ofGiveAway.
TriedChange ofAnotherStack(const planning::AnotherStack& another, const reckoning::StackReckoning& stack, int weeks, Day today);
/// The new stack's figures beside those that addCourse has put there.
void addNewStack(TriedChange& to, const planning::NewStack& young, Day today);
TriedChange ofAbsence(const planning::Absence& leave, Day from, Day to, Day today);
/// nullopt: the stack is not behind.
TriedChange ofWayBack(const std::optional<planning::WayBack>& way, const reckoning::StackReckoning& stack, Day today);
/// The stack as it would stand if an entry had not been.
TriedChange ofAnotherPast(const reckoning::StackReckoning& as, const reckoning::StackReckoning& other, Day today, std::optional<Day> harvested = {});

}
