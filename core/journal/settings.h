#pragma once

#include "core/journal/action.h"

namespace tierloam::journal {

/// The keys of `setup` in force, defaults filled in.
struct StackSettings {
    Area area = squareMetres(0.16);
    Length height = centimetres(11);
    int trays = 3;                   ///< owned
    Volume sump = litres(4);
    Place place = Place::indoors;
    Temperature temp = celsius(20);
    Stand stand = Stand::none;
    bool operator==(const StackSettings&) const = default;
};

/// Changes only what the setup names. The spigot is no setting: it is turned by drains too, see Standing.
void applySetup(StackSettings& settings, const Setup& setup);

}
