#include "core/model/ensemble.h"

#include "core/model/elementary.h"
#include "core/model/masses.h"
#include "core/model/random.h"
#include "core/model/step.h"

#include <algorithm>
#include <cmath>
#include <cstring>
#include <numbers>

namespace tierloam::model {

namespace {

void clear(StackBlock& stack, double temperature)
{
    std::memset(&stack, 0, sizeof stack);
    for (int m = 0; m < lanes; ++m) {
        stack.bed[m] = temperature;
        stack.softFactor[m] = 1.0;
    }
}

/// Steps of a day that a tray asks for besides the usual. In a tray just laid everything starts from nothing and grows as a power of
/// time, and in one that dries the worms leave within days: steps of half a day would miss them by more than a hundredth.
int stepsFor(const TrayShape& shape, int day)
{
    if (shape.drying) return 4;
    const int age = day - shape.beddedDay;
    if (age < 0 || age >= 8) return 0;
    if (age < 1) return 16;
    return age < 2 ? 8 : 4;
}

}

int Ensemble::topToFeed() const
{
    for (int t = trays() - 1; t >= 0; --t)
        if (!shapes[static_cast<std::size_t>(t)].drying) return t;
    return -1;
}

Ensemble Ensemble::drawn(std::uint64_t key, int members, std::string_view species, double startTemperature)
{
    Ensemble ensemble;
    ensemble.key = key;
    ensemble.species = speciesTemperatures(species);
    ensemble.blocks.resize(static_cast<std::size_t>(members / lanes));
    for (int b = 0; b < members / lanes; ++b) {
        Block& block = ensemble.blocks[static_cast<std::size_t>(b)];
        draw(block.standing, key, b);
        setFrom(block.parameters, block.standing, ensemble.species);
        clear(block.stack, startTemperature);
    }
    return ensemble;
}

Ensemble Ensemble::median(std::string_view species, double startTemperature)
{
    Ensemble ensemble;
    ensemble.noisy = false;
    ensemble.species = speciesTemperatures(species);
    ensemble.blocks.resize(1);
    std::memset(&ensemble.blocks[0].standing, 0, sizeof ensemble.blocks[0].standing);
    setToCentre(ensemble.blocks[0].parameters, ensemble.species);
    clear(ensemble.blocks[0].stack, startTemperature);
    return ensemble;
}

void advanceDay(Ensemble& ensemble, const DayForcing& day, int steps)
{
    for (int b = 0; b < static_cast<int>(ensemble.blocks.size()); ++b) advanceDay(ensemble, b, day, steps);
}

void advanceDay(Ensemble& ensemble, int index, const DayForcing& day, int steps)
{
    const Kernels& kernels = chosenKernels();
    Ensemble::Block& block = ensemble.blocks[static_cast<std::size_t>(index)];
    if (ensemble.noisy) {
        if (day.day > 0 && day.day % driftEveryDays == 0) {
            drift(block.standing, ensemble.key, day.day, index);
            setFrom(block.parameters, block.standing, ensemble.species);
        }
        kernels.noise(block.stack, streamOf(ensemble.key, day.day, Use::noise), index, day.day == 0);
    }
    for (const TrayShape& shape : ensemble.shapes) steps = std::max(steps, stepsFor(shape, day.day));
    StepForcing forcing{};
    forcing.days = 1.0 / steps;
    forcing.area = ensemble.area;
    forcing.height = ensemble.height;
    forcing.sumpCapacity = ensemble.sumpCapacity;
    forcing.spigotOpen = day.spigotOpen;
    forcing.lidOff = day.lidOff;
    forcing.usualTemperature = day.usualTemperature;
    forcing.airKnown = day.airTemperature.has_value();
    forcing.airTemperature = day.airTemperature.value_or(0.0);
    forcing.relativeHumidity = day.relativeHumidity;
    forcing.noBackgroundDeath = day.noBackgroundDeath;
    forcing.hatchlingsRemoved = day.hatchlingsRemoved;
    forcing.holdTemperature = day.holdTemperature;
    forcing.holdWater = day.holdWater;
    const MassClassTable& classes = massClassTable();
    for (int pair = 0; pair < steps / 2; ++pair)
        kernels.step(block.stack, block.trays.data(), ensemble.shapes.data(), ensemble.trays(), block.parameters, classes, forcing);
}

double seasonOffset(double amplitude, int dayOfYear, bool southern)
{
    const int warmest = southern ? 17 : 200;
    return amplitude * std::cos(2.0 * std::numbers::pi * (dayOfYear - warmest) / 365.0);
}

}
