#pragma once

#include "core/guide/circumstances.h"
#include "core/reckoning/reckoning.h"

#include <span>
#include <string_view>
#include <vector>

/// From what is noticed to what may have caused it: Bayes over causes. P(cause | symptom, stack) ∝ P(cause | symptom) · Σ over members of
/// weight · L(state of the member | cause). Priors and likelihoods are our judgement; the state is the ensemble's and the journal's.
namespace tierloam::guide {

enum class Symptom { smell, flies, mites, ants, wormsLeaving, wormsDying, mould, sourBed, heat, standingWater, fewWorms, noCastings, count };

enum class Cause {
    overfed,        ///< more food than the colony and the air can take
    tooWet,         ///< more water than the trays hold
    tooDry,
    sumpFull,       ///< the sump is full and the spigot shut
    tooHot,
    tooCold,
    hungry,         ///< not fed for long, or a ration below what the colony needs
    unsuitable,     ///< food that is welcome only a little, or not
    uncovered,      ///< feedings without paper on them
    lowCarbon,      ///< too much nitrogen in what is fed
    young,          ///< the stack is new
    crowded,        ///< many worms on little floor, or a harvest put off
    disturbed,      ///< worms put in, moved or lifted within days
    count
};

/// The word that an event of the journal bears for it.
std::string_view eventWord(Symptom symptom);

/// What speaks for a cause, as a number that the page puts into words.
enum class Quantity {
    waterShareMost, waterShareLeast, squeeze, air, fedPerWorms, softened, sumpShare, bedCelsius, bedRead, daysSinceFed, ration, doubtfulShare, uncoveredShare, carbonToNitrogen,
    ageDays, wormsPerArea, bottomAge, daysSinceDisturbed
};
struct Evidence {
    Quantity quantity{};
    reckoning::Band value;            ///< all three alike for what the journal says outright
    int slot = 0;                     ///< 1 = bottom; 0: the whole stack
    bool speaksFor = false;           ///< it makes the cause likelier than it is in general
};

struct Ranked {
    Cause cause{};
    double probability = 0;           ///< of the causes known for the symptom; they sum to 1
    std::vector<Evidence> evidence;   ///< most telling first
};

/// Causes known for a symptom, likeliest first. A reckoning read from estimates has no members: its bands then stand for nineteen.
std::vector<Ranked> rankCauses(Symptom symptom, const reckoning::StackReckoning& stack, const Circumstances& circumstances);

/// What is believed of a cause before anything is known of the stack; 0 where it does not bring the symptom about. Our judgement.
double priorOf(Symptom symptom, Cause cause);

}
