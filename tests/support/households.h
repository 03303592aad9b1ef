#pragma once

#include "core/journal/replay.h"
#include "core/reckoning/stack_run.h"

#include <cstdint>
#include <optional>
#include <vector>

/// Households drawn from the prior: one member of the model is the truth, its journal is written down, and the reckoning is asked what
/// the truth was. Simulation-based calibration after Talts et al. 2018.
namespace tierloam::tests {

/// Which looks a household takes.
struct Looking {
    bool depthOrBits = true;      ///< once a month, the one or the other
    bool bitsEveryMonth = false;  ///< bits of the bottom tray each month instead
    bool weighings = true;        ///< two a year
    bool others = true;           ///< now and then: left, worms seen, count, tray weight, moisture, squeeze, temperature, strength
};

/// How the truth departs from what the model believes, for tests of misfit; the default is no departure.
struct Misfit {
    double unwrittenShare = 0;    ///< of the feedings are given and not written down
    bool classRates = false;      ///< classes of food and paper soften a fifth to a quarter off their rates
    double season = 0;            ///< K, amplitude that the settings do not know
    bool threeBeddings = false;   ///< shavings or coir for some
    double wetterMix = 0;         ///< of the kitchen mix's dry matter is missing
};

struct MadeUp {
    journal::Entries entries;                ///< of one stack, "Mill"
    Day firstBedding{};
    Day asOf{};
    double colonyKg = 0, castingsKg = 0, feedToCast = 0; ///< the truth at the end of asOf, bottom tray
    int batch = 0;                           ///< of the bottom tray at the end
    std::optional<Day> readyOn;              ///< of that batch; nullopt beyond the horizon
    bool bottomReady = false, topFilled = false; ///< now, by the rules of readiness
    std::optional<Day> sumpFullOn;           ///< if nobody drains; nullopt: open spigot, or beyond the horizon
    bool readyAhead = false;                 ///< it is not ready yet
    std::vector<std::pair<reckoning::Look, double>> lastLooks; ///< values read on the last day but one
    double logDensityOfLast = 0;             ///< of those, as the truth expects them at the end of asOf
};

/// Household number `number` of a series; `days` long, or drawn between 240 and 540 when 0.
MadeUp makeHousehold(std::uint64_t series, int number, const Looking& looking = {}, const Misfit& misfit = {}, int days = 0);

/// Reckons a made-up household; the run is kept, so that its members can be read.
struct Reckoned {
    std::shared_ptr<const reckoning::StackReckoning> stack;
    /// Weight of the members below a value (PIT): uniform over households when all is calibrated.
    double rank(const std::vector<double>& values, double truth) const;
    std::vector<double> colony() const, castings() const, feedToCast() const, logDensityOfLast(const MadeUp& household) const;
};
Reckoned reckonHousehold(const MadeUp& household, int members, const reckoning::FilterManner& manner = {});

/// How many households a test takes: TIERLOAM_HOUSEHOLDS, else 200 with TIERLOAM_LONG, else 24.
int householdsAsked();

/// χ² of `bins` equal bins.
double chiSquare(const std::vector<double>& ranks, int bins);

}
