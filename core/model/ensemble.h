#pragma once

#include "core/model/block.h"
#include "core/model/parameters.h"

#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

namespace tierloam::model {

/// The members of one stack: parameters and state in blocks of 64, and what all members share.
struct Ensemble {
    struct Block {
        StandingBlock standing;       ///< where the parameters stand in their prior
        ParameterBlock parameters;
        StackBlock stack;
        std::vector<TrayBlock> trays; ///< from slot 1 up
    };

    std::uint64_t key = 0;            ///< stack key, of the random numbers
    double area = 0.16;               ///< m² of one tray
    double height = 0.11;             ///< m of one tray
    double sumpCapacity = 4.0;        ///< L
    bool noisy = true;                ///< process noise and noise of amounts; off for a median member
    SpeciesTemperatures species{};
    std::vector<TrayShape> shapes;    ///< from slot 1 up
    std::vector<Block> blocks;

    int members() const { return static_cast<int>(blocks.size()) * lanes; }
    int trays() const { return static_cast<int>(shapes.size()); }
    /// Highest slot not drying, 0-based; −1 with none.
    int topToFeed() const;
    double parameter(Parameter p, int member) const { return blocks[static_cast<std::size_t>(member / lanes)].parameters.value[static_cast<int>(p)][member % lanes]; }

    /// Drawn from the prior, noise on. `members` is a multiple of 64.
    static Ensemble drawn(std::uint64_t key, int members, std::string_view species, double startTemperature);
    /// One block whose 64 members all sit at the centre, noise off.
    static Ensemble median(std::string_view species, double startTemperature);
};

/// What acts on one day from outside.
struct DayForcing {
    int day = 0;                        ///< days since the first bedding
    double usualTemperature = 20;       ///< °C, temp + season
    std::optional<double> airTemperature;
    double relativeHumidity = 0.55;
    bool spigotOpen = true;
    bool lidOff = false;
    bool holdTemperature = false;
    bool holdWater = false;
    bool noBackgroundDeath = false;
    bool hatchlingsRemoved = false;
};

inline constexpr int stepsPerDay = 2;   ///< the default step is 0.5 d

/// One day: drift of the parameters when it is due, process noise, then forward and backward steps in turn. `steps` is even; the first week
/// of a tray and light-drying take more.
void advanceDay(Ensemble& ensemble, const DayForcing& day, int steps = stepsPerDay);
/// The same for one block. Blocks know nothing of each other, so that threads may share them out.
void advanceDay(Ensemble& ensemble, int index, const DayForcing& day, int steps = stepsPerDay);

/// a·cos(2π(day of year − 200)/365): a = 1 indoors, 6 garage, 9 outdoors; half a year later in the south.
double seasonOffset(double amplitude, int dayOfYear, bool southern);

}
