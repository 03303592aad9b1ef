#pragma once

#include "core/journal/welcome.h"
#include "core/quantity/day_text.h"
#include "core/quantity/measures.h"
#include "core/quantity/units.h"

#include <cstdint>
#include <iterator>
#include <optional>
#include <string>
#include <string_view>
#include <variant>

/// The things that can be written into the journal, one value type each. An absent detail is nullopt and stays absent on export;
/// what an absent detail means (a default) is said beside it and applied by the reader, never stored.
namespace tierloam::journal {

enum class Spigot { open, shut };
enum class Place { indoors, garage, outdoors };
enum class Stand { legs, base, none };
enum class Side { left, right, front, back, all };
enum class WormsSeen { few, some, many };

/// First of a stack: omitted keys default to area 0.16 m², height 11 cm, 3 trays, sump 4 L, spigot open, indoors, 20 °C, stand none.
/// A later one changes only the keys it names, from its date on.
struct Setup {
    std::optional<Area> area;         ///< of one tray
    std::optional<Length> height;     ///< of one tray
    std::optional<int> trays;         ///< owned
    std::optional<Volume> sump;
    std::optional<Spigot> spigot;
    std::optional<Place> place;
    std::optional<Temperature> temp;  ///< usual temperature of the bed
    std::optional<Stand> stand;
    std::optional<std::uint64_t> key; ///< stack key, given by export (16 hex digits)
    bool operator==(const Setup&) const = default;
};

enum class SofteningClass { soft, mix, coffee, paper, cardboard, wood, coir, mineral };

/// An own material of the household; belongs to no stack.
struct OwnMaterial {
    std::string name;
    std::optional<SofteningClass> softening;    ///< default mix
    std::optional<Share> moisture;              ///< of fresh mass
    std::optional<double> nitrogenPercent;      ///< of dry matter
    std::optional<double> carbonToNitrogen;
    std::optional<double> bulkKgPerM3;          ///< as it comes to hand
    std::optional<double> waterHeldKgPerKg;     ///< kg water per kg dry matter at field capacity
    std::optional<Welcome> welcome = {};        ///< default yes; a little where a doubt is given
    std::optional<Doubt> doubt = {};            ///< why not, or only a little
    bool operator==(const OwnMaterial&) const = default;
};

struct Stock {
    Amount worms;                  ///< mass
    std::string species;           ///< empty = Eisenia fetida
    std::optional<int> count;      ///< counted: their mean mass follows; else a grown mixed colony
    bool operator==(const Stock&) const = default;
};

struct Bed {
    Amount bedding;                ///< mass as it comes to hand, before it is wetted
    std::string material;
    std::optional<Share> moisture; ///< once wetted and laid; default: 95 % of what the material holds
    bool operator==(const Bed&) const = default;
};

struct Feed {
    Amount food;                   ///< mass or volume
    std::string material;          ///< empty = kitchen mix
    std::optional<Side> side;
    bool operator==(const Feed&) const = default;
};

struct Cover {
    std::optional<Amount> paper;   ///< mass, default 30 g
    std::string material;          ///< empty = newspaper shredded
    bool operator==(const Cover&) const = default;
};

struct Water {
    Amount poured;                 ///< volume
    bool operator==(const Water&) const = default;
};

enum class RoutineOf { water, cover };

/// Done every so many days without being written down, until changed; amount 0 ends it.
struct Routine {
    Amount each;
    RoutineOf of = RoutineOf::water;
    std::optional<int> everyDays;  ///< default 1
    bool operator==(const Routine&) const = default;
};

struct Drain {
    std::optional<Amount> volume;  ///< absent: only the spigot was turned
    std::optional<bool> emptied;   ///< default yes
    std::optional<double> ecMilliSiemensPerCm;
    std::optional<int> wormsPutBack;
    std::optional<Spigot> spigot;
    bool operator==(const Drain&) const = default;
};

/// Spigot shut, water through, everything drained at once, worms put back.
struct Flush {
    Amount poured;
    std::optional<Volume> drained;
    std::optional<double> ecMilliSiemensPerCm;
    std::optional<int> wormsPutBack;
    bool operator==(const Flush&) const = default;
};

struct Reading {
    std::optional<Temperature> bin;
    std::optional<Temperature> air;
    std::optional<Share> relativeHumidity;
    std::optional<Share> moisture;   ///< wet basis
    std::optional<int> squeeze;      ///< 1…5
    std::optional<double> ph;
    std::optional<Volume> sump{};    ///< what stands in it, nothing drained
    bool operator==(const Reading&) const = default;
};

struct Check {
    std::optional<Length> depth;     ///< of castings, 0 to the tray's height
    std::optional<Share> bits;       ///< of the tray still recognisable as food or bedding, by dry matter
    std::optional<Share> left;       ///< of the last feeding
    std::optional<WormsSeen> worms;
    bool operator==(const Check&) const = default;
};

struct Weigh {
    Amount worms;
    std::optional<Share> share;      ///< of the bed searched, default 100
    bool operator==(const Weigh&) const = default;
};

struct Count {
    Amount number;                   ///< unit count
    std::optional<Volume> volume;    ///< of bed searched
    bool operator==(const Count&) const = default;
};

struct TrayWeight {
    Amount weight;                   ///< tray with contents
    std::optional<Mass> tare;
    bool operator==(const TrayWeight&) const = default;
};

struct Rotate { bool operator==(const Rotate&) const = default; };
struct Loosen { bool operator==(const Loosen&) const = default; };

struct Lid {
    std::optional<bool> on;
    bool operator==(const Lid&) const = default;
};

struct Harvest {
    Amount taken;                    ///< mass or volume of all that is taken
    std::optional<Share> moisture;
    std::optional<Share> share;      ///< only that share is taken; the batch goes on
    bool operator==(const Harvest&) const = default;
    bool whole() const { return !share || share->percent() >= 100.0; }
};

struct Remove {
    Amount worms;
    bool operator==(const Remove&) const = default;
};

struct Move {
    Amount worms;
    std::string to;                  ///< name of the other stack
    bool operator==(const Move&) const = default;
};

struct Event {
    std::string what;                ///< free word: smell, flies, mites, escape, mould, away, …
    std::optional<Day> until;
    bool operator==(const Event&) const = default;
};

struct Note { bool operator==(const Note&) const = default; };
struct Retire { bool operator==(const Retire&) const = default; };

using Action = std::variant<Setup, OwnMaterial, Stock, Bed, Feed, Cover, Water, Routine, Drain, Flush, Reading, Check, Weigh, Count,
                            TrayWeight, Rotate, Loosen, Lid, Harvest, Remove, Move, Event, Note, Retire>;

/// The word of the journal's `action` column, e.g. "feed"; index() of the variant gives the row.
std::string_view actionName(const Action& action);
inline constexpr std::string_view actionNames[] = {"setup", "material", "stock", "bed", "feed", "cover", "water", "routine", "drain",
                                                   "flush", "reading", "check", "weigh", "count", "trayweight", "rotate", "loosen",
                                                   "lid", "harvest", "remove", "move", "event", "note", "retire"};
static_assert(std::size(actionNames) == std::variant_size_v<Action>);

inline constexpr std::string_view defaultFood = "kitchen mix";
inline constexpr std::string_view defaultCover = "newspaper shredded";
inline constexpr std::string_view defaultSpecies = "Eisenia fetida";
inline constexpr Amount defaultCoverAmount{30.0, Unit::g};

}
