#include "core/model/parameters.h"

#include "core/model/cardinal.h"
#include "core/model/elementary.h"
#include "core/model/random.h"
#include "core/model/step.h"

#include <array>

namespace tierloam::model {

namespace {

using enum Scale;
using P = Parameter;

constexpr std::array<ParameterRow, parameterCount> rows{{
    {P::ingestion, "ingestion of a worm of 1 g", "g DM/d", 0.28, 0.11, 0.30, logarithmic,
     "fitted within the range to measured pots (Gunadi et al. 2002; Reinecke & Viljoen 1990; Venter & Reinecke 1988); Johnston et al. 2014 (0.70 g/d fresh x M^(2/3)); Alabama Cooperative Extension (0.25 to 0.5 of their mass a day, fresh)"},
    {P::halfSaturation, "half-saturation of ingestion", "kg/m2", 0.21, 0.10, 0.90, logarithmic, "fitted within the range to measured pots (Gunadi et al. 2002; Reinecke & Viljoen 1990; Venter & Reinecke 1988); Johnston et al. 2014 (0.35)"},
    {P::assimilation, "assimilated share", "", 0.243, 0.12, 0.35, logit,
     "fitted within the range to measured pots (Gunadi et al. 2002; Reinecke & Viljoen 1990; Venter & Reinecke 1988); worm yield 3.5 to 10 % of DM (Lalander et al. 2015, Edwards 1985, abstracts)"},
    {P::maintenance, "maintenance of a worm of 1 g at 25 C", "g DM/d", 0.0037, 0.0036 * 0.7, 0.0036 * 1.5, logarithmic,
     "fitted within the range to measured pots (Gunadi et al. 2002; Reinecke & Viljoen 1990; Venter & Reinecke 1988); Johnston et al. 2014 (0.0036: 58 J/d at 1 g, 25 C; 16 kJ/g DM)"},
    {P::reserveRate, "mobilisation of the reserve", "1/d", 0.15, 0.07, 0.3, logarithmic, "judgement"},
    {P::layingShare, "share of the surplus to laying", "", 0.43, 0.3, 0.6, logit, "fitted within the range to measured pots (Gunadi et al. 2002; Reinecke & Viljoen 1990; Venter & Reinecke 1988); Venter & Reinecke 1988 (2.45 cocoons a week, peak 4.9)"},
    {P::hatchSuccess, "cocoons that hatch", "", 0.73, 0.55, 0.85, logit, "Venter & Reinecke 1988"},
    {P::youngPerCocoon, "young of a cocoon that hatches", "", 2.7, 2.2, 3.3, logarithmic, "Venter & Reinecke 1988"},
    {P::incubation, "incubation", "d K", 437, 437 * 0.8, 437 * 1.25, logarithmic, "Venter & Reinecke 1988 (23 d at 25 C)"},
    {P::death, "death", "1/d", 0.0017, 0.0005, 0.004, logarithmic, "judgement; mean life 590 d, Michon 1954 through a review, from memory"},
    {P::crowdingGrowth, "crowding that halves the greatest mass", "kg/m2", 4.0, 1.2, 5, logarithmic, "fitted within the range to measured pots (Gunadi et al. 2002; Reinecke & Viljoen 1990; Venter & Reinecke 1988); Neuhauser et al. 1980; Ndegwa et al. 2000 (1.6 best); Reeh 1992"},
    {P::crowdingLaying, "crowding that slows laying", "kg/m2", 2.45, 1.2, 5, logarithmic, "fitted within the range to measured pots (Gunadi et al. 2002; Reinecke & Viljoen 1990; Venter & Reinecke 1988); Neuhauser et al. 1980; Ndegwa et al. 2000 (1.6 best); Reeh 1992"},
    {P::softeningFood, "softening of food, scale", "", 1, 0.5, 2, logarithmic, "judgement"},
    {P::softeningPaper, "softening of paper, cardboard and slower, scale", "", 1, 0.5, 2, logarithmic, "judgement"},
    {P::wormFactor, "worms' help in softening", "", 0.95, 0.6, 1.4, logarithmic, "judgement; x1.5 to 3.8 on decay (Acquah et al. 2021; a thesis of Makerere University)"},
    {P::airHalf, "respiration that halves the air", "kg DM/m2/d", 0.12, 0.08, 0.18, logarithmic, "judgement"},
    {P::respiredSoftening, "respired in softening", "", 0.28, 0.2, 0.4, logit, "whole-bin loss 0.46 to 0.60 (Lalander et al. 2015, Zziwa et al. 2021, abstracts); within its range for the timing of the trade"},
    {P::castingsRespiration, "respiration of castings", "1/d", 0.0012, 0.0005, 0.004, logarithmic, "judgement"},
    {P::growthColdest, "coldest for growth", "C", 3, 0, 5, linear, "Edwards 1988; Tripathi & Bhardwaj 2004; Loehr et al. 1985"},
    {P::growthBest, "best for growth", "C", 26, 24, 29, linear, "Edwards 1988; Tripathi & Bhardwaj 2004; Loehr et al. 1985"},
    {P::growthHottest, "hottest for growth", "C", 36, 34, 39, linear, "Edwards 1988; Tripathi & Bhardwaj 2004; Loehr et al. 1985"},
    {P::fieldCapacity, "field capacity, scale", "", 1, 0.8, 1.25, logarithmic, "judgement"},
    {P::bypass, "poured water that runs through at once", "", 0.6, 0.3, 0.8, logit, "judgement"},
    {P::evaporation, "evaporation under the lid", "kg/m2/d/kPa", 0.12, 0.05, 0.4, logarithmic, "judgement"},
    {P::lightDrying, "time constant of light-drying", "d", 1.6, 0.7, 2.3, logarithmic, "judgement"},
    {P::saltYield, "salts formed of what is eaten", "kg/kg", 0.015, 0.006, 0.04, logarithmic,
     "judgement; leachate 2.6 mS/cm (Garcia-Gomez et al. 2008), 1.5 to 3 harmless (Kaplan et al. 1980)"},
    {P::stockBias, "worms bought, true mass to mass written", "", 1, 0.6628, 1.5087, logarithmic, "judgement (25 %)"},
    {P::scaleBias, "household's scale, true mass to mass read", "", 1, 0.7813, 1.2799, logarithmic, "judgement (15 %)"},
    {P::tare, "empty tray", "kg", 1.2, 0.7065, 1.6935, linear, "judgement"},
    {P::recovery, "worms found in a search", "", 0.85, 0.7, 0.95, logit, "judgement"},
    {P::abundanceSense, "what is called some or many worms, log shift", "", 0, -0.8225, 0.8225, linear, "judgement (sd 0.5)"},
    {P::unwritten, "usual feedings not written down", "", 0.087, 0.019, 0.226, logit, "judgement; Beta(2, 18) as a logit-normal of the same median and 90 % range"},
}};

double onScale(double x, Scale scale)
{
    switch (scale) {
    case logarithmic: return naturalLog(x);
    case logit: return naturalLog(x / (1.0 - x));
    case linear: break;
    }
    return x;
}

/// Back from the scale, 64 members at once: drifting parameters are set anew every month of every member.
void fromScale(Members& y, Scale scale)
{
    if (scale == linear) return;
    Members powers;
    if (scale == logit)
        for (double& each : y) each = -each;
    chosenKernels().exponentials(y, powers);
    for (int m = 0; m < lanes; ++m) y[m] = scale == logit ? 1.0 / (1.0 + powers[m]) : powers[m];
}

void derive(ParameterBlock& block, const SpeciesTemperatures& species)
{
    const auto row = [&](P p) -> Members& { return block.value[static_cast<int>(p)]; };
    const SpeciesTemperatures usual = speciesTemperatures({});
    for (int m = 0; m < lanes; ++m) {
        row(P::growthColdest)[m] += species.coldest - usual.coldest;
        row(P::growthBest)[m] += species.best - usual.best;
        row(P::growthHottest)[m] += species.hottest - usual.hottest;
        // Far beyond the ranges, for records that contradict themselves: every species of these bins grows at 25 °C.
        row(P::growthColdest)[m] = least(row(P::growthColdest)[m], 18.0);
        row(P::growthHottest)[m] = greatest(row(P::growthHottest)[m], 29.0);
        // Rosso's curve has a pole inside its range, and is negative beyond it, when the best lies below the middle of coldest and hottest.
        const double middle = 0.5 * (row(P::growthColdest)[m] + row(P::growthHottest)[m]) + 0.5;
        row(P::growthBest)[m] = least(greatest(row(P::growthBest)[m], middle), row(P::growthHottest)[m] - 0.5);
        block.growthAt25[m] = cardinal(25.0, row(P::growthColdest)[m], row(P::growthBest)[m], row(P::growthHottest)[m]);
    }
}

}

std::span<const ParameterRow> parameterTable() { return rows; }

// Eisenia: Edwards 1988 and others as in the table; the last two weak (few measurements).
SpeciesTemperatures speciesTemperatures(std::string_view species)
{
    if (species == "Eudrilus eugeniae") return {12, 27, 36};
    if (species == "Perionyx excavatus") return {9, 28, 37};
    return {3, 26, 36};
}

void setToCentre(ParameterBlock& block, const SpeciesTemperatures& species)
{
    for (const ParameterRow& row : rows)
        for (int m = 0; m < lanes; ++m) block.value[static_cast<int>(row.parameter)][m] = row.centre;
    derive(block, species);
}

void draw(StandingBlock& standing, std::uint64_t stackKey, int index)
{
    for (int r = 0; r < parameterCount; ++r) standardNormals(streamOf(stackKey, -1, Use::parameter, r), index, standing.z[r]);
}

void setFrom(ParameterBlock& block, const StandingBlock& standing, const SpeciesTemperatures& species)
{
    constexpr double width90 = 3.29; // of the standard normal, both sides
    for (const ParameterRow& row : rows) {
        const int r = static_cast<int>(row.parameter);
        const double centre = onScale(row.centre, row.scale);
        const double sd = (onScale(row.upper, row.scale) - onScale(row.lower, row.scale)) / width90;
        for (int m = 0; m < lanes; ++m) block.value[r][m] = centre + sd * standing.z[r][m];
        fromScale(block.value[r], row.scale);
    }
    for (int m = 0; m < lanes; ++m) { // physical limits of what was drawn on a linear scale
        double& tare = block.value[static_cast<int>(P::tare)][m];
        if (tare < 0.1) tare = 0.1;
    }
    derive(block, species);
}

void drift(StandingBlock& standing, std::uint64_t stackKey, int day, int index)
{
    static const double keep = exponential(-driftEveryDays / 730.0);
    static const double renew = __builtin_sqrt(1.0 - keep * keep);
    for (int r = 0; r < parameterCount; ++r) {
        Members normal;
        standardNormals(streamOf(stackKey, day, Use::drift, r), index, normal);
        for (int m = 0; m < lanes; ++m) standing.z[r][m] = keep * standing.z[r][m] + renew * normal[m];
    }
}

}
