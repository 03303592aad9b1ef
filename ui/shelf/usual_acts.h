#pragma once

#include "core/advice/food_limit.h"
#include "core/household/household.h"
#include "core/reckoning/reckoning.h"
#include "ui/common/actions.h"
#include "ui/forms/form_kind.h"

#include <optional>

/// What one click or one key means on the shelf.
namespace tierloam::shelf {

/// The form that an action of the shelf opens, or whose usual entry it writes; nullopt for those of the date slider and "more".
std::optional<forms::FormKind> formOf(ui::ActionId id);
/// Writes the usual amount at once instead of opening a form.
bool isUsual(ui::ActionId id);
/// Days that an action of the date slider moves, negative into the past; nullopt for the others.
std::optional<int> daysMoved(ui::ActionId id);

/// What one click on Feed, Cover, Water or Drain writes down: a feeding comes with its usual cover; a cover of its own takes its amount from
/// `coverWithFeed` too, where the caller has put household::usualCover. Empty for every other kind.
journal::Entries usualEntries(forms::FormKind kind, const household::Usual& usual, const std::string& stack, Day day);
/// The limit of the feeding plan for this week where the usual feeding is above it, rounded downwards. nullopt: all of the usual is borne, or
/// nothing is known, food is withheld, or less than 50 g is borne.
std::optional<Amount> borneFeeding(const household::Usual& usual, const materials::Table& materials, const advice::FoodLimit& limit);
/// What of the usual feeding fits under the rim of the tray being fed, with its cover over it, rounded downwards: more would bring up that the tray is full
/// and its harvest overdue (core/reckoning/overdue.h). nullopt: all of it fits, or nothing is known of the room. 0: less than is worth giving.
std::optional<Amount> fittingFeeding(const household::Usual& usual, const materials::Table& materials, const reckoning::StackReckoning& stack);
/// "Feed 450 g, Scullery": names the undo step.
QString usualLabel(forms::FormKind kind, const household::Usual& usual, const QString& stack);

}
