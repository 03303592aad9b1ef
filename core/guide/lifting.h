#pragma once

#include "core/quantity/measures.h"

#include <optional>

/// The revised NIOSH lifting equation: RWL = LC · HM · VM · DM · AM · FM · CM.
/// Source: Waters, Putz-Anderson, Garg & Fine 1993, Ergonomics 36:749. Which of its numbers are from memory stands in the table of figures.
/// It speaks of healthy adults who stand and lift with both hands; it is no medical advice.
namespace tierloam::guide {

enum class Grip { good, fair, poor };

/// One lift, seldom repeated (F = 1 unless given).
struct Lift {
    Length reach;                    ///< H: from the ankles to the hands, forward
    Length from;                     ///< V: height of the hands where it begins
    Length travel;                   ///< D: up or down
    double twistDegrees = 0;         ///< A
    double frequency = 1.0;          ///< FM, 0 to 1
    Grip grip = Grip::good;
};

/// nullopt where the equation advises against lifting at all: out of reach, too high, too far or too much of a twist.
std::optional<Mass> recommendedWeight(const Lift& lift);

/// How the weight compares: up to 1 most people can lift it; above 3 hardly anyone should (Waters et al. 1993).
struct LiftVerdict {
    std::optional<Mass> recommended;
    std::optional<double> index;     ///< weight ÷ recommended
    enum class Word { fine, heavy, tooHeavy, dont } word{};
};
LiftVerdict judge(Mass weight, const Lift& lift);

/// A tray lifted out of a stack: reach from the tray's depth as the equation's authors give it for boxes (half the width and 20 cm, 25 cm below a hand
/// height of 25 cm, from memory) unless the person's own is given; a rim is a fair grip.
struct TrayLift {
    Area floor;                      ///< of one tray; taken as a square
    Length from, to;                 ///< heights of the tray's rim before and after
    std::optional<Length> ownReach;
};
Lift liftOf(const TrayLift& tray);

/// How high the rim of a slot stands: feet or base, sump and the trays beneath.
Length rimHeight(int slot, Length trayHeight, Length stand);

}
