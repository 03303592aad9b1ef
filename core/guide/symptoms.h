#pragma once

#include "core/guide/circumstances.h"
#include "core/reckoning/reckoning.h"

#include <span>
#include <string_view>
#include <vector>

/// From what is noticed to what may have caused it: Bayes over the known causes and "something else". P(cause | symptom, stack) ∝
/// P(cause | symptom) · Σ over members of weight · L(state of the member | cause); of something else L is 1, for it leaves no sign in the record.
///
/// How the figures are calibrated: one symptom in five comes of something that is not listed (`elsewhereBefore`); of causes that are at work the
/// record shows nothing in 4 % (`against`: the share of planted faults, tests/core/guide_symptoms_test.cpp) and all of the sign is 14 times as
/// likely as without them (`inFavour`); what the journal settles, the age of the stack, has no such exception. The chance of the cause that is told
/// first is held to how often it is the planted one. Priors and the share of one in five are our judgement; the state is the ensemble's and the
/// journal's.
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
    double probability = 0;           ///< with those of the other causes and of something else they sum to 1
    std::vector<Evidence> evidence;   ///< most telling first

    /// Likely enough that its remedy is worth the work. A cause that the record speaks against never is: the largest prior leaves it 8 %.
    bool isWorthARemedy() const { return probability >= 0.10; }
};
struct Ranking {
    std::vector<Ranked> causes;       ///< known for the symptom, likeliest first
    double elsewhere = 1;             ///< chance that it is none of them
};

/// A reckoning read from estimates has no members: its bands then stand for nineteen.
Ranking rankCauses(Symptom symptom, const reckoning::StackReckoning& stack, const Circumstances& circumstances);

/// What is believed of a cause before anything is known of the stack, if it is one of those known; 0 where it does not bring the symptom about. Our judgement.
double priorOf(Symptom symptom, Cause cause);

}
