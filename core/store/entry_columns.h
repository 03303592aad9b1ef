#pragma once

#include <array>
#include <cstddef>
#include <string_view>

/// The columns of the table `entries` that hold what was typed: one typed column for each detail of the journal, so that an
/// entry comes back bit for bit. Units are those of the journal's details.
namespace tierloam::store {

enum class Column : std::size_t {
    day, minute, positionInDay, stack, slot, action, amount, unit, item, note,
    area, height, trays, sump, spigot, place, temp, stand, stackKey,              // setup (spigot: drain too; sump: reading too)
    softening, moisture, nitrogen, carbonToNitrogen, bulk, waterHeld,             // material (moisture: bed, reading, harvest too)
    count, side, every, emptied, ec, wormsPutBack, drained,                       // stock, feed, routine, drain, flush
    bin, air, humidity, squeeze, ph,                                              // reading
    depth, bits, left, wormsSeen, share, volume, tare, lid, moveTo, until,        // check, weigh, harvest, count, …
    welcome, doubt,                                                               // material, since schema 5
    columns
};

inline constexpr std::size_t columnCount = static_cast<std::size_t>(Column::columns);

inline constexpr std::array<std::string_view, columnCount> columnNames{
    "day", "minute", "position_in_day", "stack", "slot", "action", "amount", "unit", "item", "note",
    "area_m2", "height_cm", "trays", "sump_l", "spigot", "place", "temp_c", "stand", "stack_key",
    "softening", "moisture_pct", "nitrogen_pct", "carbon_to_nitrogen", "bulk_kg_m3", "water_held_kg_kg",
    "counted", "side", "every_days", "emptied", "ec_ms_cm", "worms_put_back", "drained_l",
    "bin_c", "air_c", "humidity_pct", "squeeze", "ph",
    "depth_cm", "bits_pct", "left_pct", "worms_seen", "share_pct", "volume_l", "tare_kg", "lid", "move_to", "until_day", "welcome", "doubt"};

/// Files of earlier schemas, when they are read as they are, have none from here on.
inline constexpr Column firstOfSchema5 = Column::welcome;

}
