#pragma once

#include "core/quantity/measures.h"

#include <optional>

/// What runs out of a stack, by its strength in mS/cm. It is salty water that has passed the trays; it is neither a tea nor a feed of known
/// content. Targets and strengths of tap water are rows of the table of figures, most of them from memory.
namespace tierloam::guide {

/// A value with its 90 % range; for a reading the three are one.
struct Spread {
    double low = 0, middle = 0, high = 0;
};

enum class DilutionAnswer {
    dilute,          ///< with `water`
    weakEnough,      ///< even at the upper end it is no stronger than wished
    cannot,          ///< the water itself is as strong as wished, or stronger
};

/// Parts of water for one of leachate. The middle for the likely strength, the high for the strongest that it may be: use that one.
struct Dilution {
    DilutionAnswer answer{};
    Spread parts;
    Spread whole;    ///< L of diluted leachate from the volume given
};

/// From conductivities that mix by volume: parts = (leachate − wished)/(wished − water). All in mS/cm, not negative; `volume` in L.
Dilution diluteTo(const Spread& leachate, double wished, double water, Volume volume);

/// g of salts in a litre of that strength.
double saltsPerLitre(double milliSiemens);

}
