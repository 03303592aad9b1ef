#pragma once

namespace tierloam::reckoning {

/// What people read off a stack, as the filter weighs it.
enum class LookKind {
    depth,          ///< cm of castings
    bits,           ///< % of the tray still recognisable
    left,           ///< % of the last feeding
    weigh,          ///< kg of worms found
    count,          ///< worms found in some litres of bed
    wormsSeen,      ///< 0 few, 1 some, 2 many
    drain,          ///< L, all that the sump held or what ran off since the last time
    drainPart,      ///< L drawn off, more was there
    sumpLevel,      ///< L that stand in the sump
    conductivity,   ///< mS/cm
    trayWeight,     ///< kg
    moisture,       ///< %, wet basis
    squeeze,        ///< 0…4
    bedTemperature, ///< °C
    harvestMass,    ///< kg wet
    harvestVolume,  ///< L
    wormsTaken      ///< kg taken away: so many were there
};

}
