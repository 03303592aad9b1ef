#pragma once

#include "core/model/pot.h"

#include <istream>
#include <optional>
#include <span>
#include <string>
#include <vector>

/// Measured growth curves and the pots that stand for them. Columns of a file of curves:
///     case,source,temp_c,worms,area_m2,feed,day,mass_g,cocoons_per_10_worms_per_10_d
/// with lines that begin with # left out, and cells that may be empty. `feed` is one or more clauses parted by ";", grams fresh:
///     150 g fresh cattle solids at 80 % moisture on day 0 · 20 g every 20 d from day 25 · 10 g at 25 · 25 removed at 125 ·
///     320 g manure at 75 % moisture (from the first day) · food from day 60 every 10-20 d (amount not told)
namespace tierloam::testing {

/// What the papers do not tell and must be assumed.
struct PotBlanks {
    double area = 0.0078;             ///< m², where none is given
    int worms = 1;                    ///< where none is given
    double dryShare = 0.30;           ///< softened DM of fresh feed where no moisture is given; 0.20 to 0.30
    double feedingOfUnknownMass = 19; ///< g fresh for each ten worms, where only its days are told
};

struct GrowthPoint {
    int day = 0;
    std::optional<double> mass;    ///< g, mean of a worm
    std::optional<double> cocoons; ///< by 10 worms in the 10 days before
};

struct GrowthCase {
    std::string name, source, feed;
    double temperature = 25;
    std::optional<int> worms;
    std::optional<double> area;
    std::vector<GrowthPoint> points; ///< by day; the first has the mass the worms begin with
};

/// Throws std::runtime_error that names the line, or the clause of `feed` that is not understood.
std::vector<GrowthCase> readGrowthCases(std::istream& csv);
/// growth.csv beside this file.
std::vector<GrowthCase> measuredGrowth();
const GrowthCase& caseNamed(std::span<const GrowthCase> cases, const std::string& name);

model::PotSetting potOf(const GrowthCase& measured, const PotBlanks& blanks);

/// What one member of the model does where `measured` has points.
struct GrowthRun {
    std::vector<double> mass;    ///< g, at each point
    std::vector<double> cocoons; ///< by 10 worms put in, in the 10 days before each point; 0 at the first
    double worstLedger = 0;
    double laidAt(const GrowthCase& measured, int day) const; ///< cocoons laid by each worm put in up to the last point not after `day`
    std::vector<double> laid;    ///< cocoons by each worm put in since the start, at each point
};
std::vector<GrowthRun> runGrowth(const GrowthCase& measured, const model::PotSetting& pot, const model::Ensemble& members, int first);

/// Root of the mean squared difference of mass over the points that have one, the first left out, since it was given.
double massError(const GrowthCase& measured, const GrowthRun& run);
/// Mean cocoons by 10 worms in 10 d over points from `from` to `to` that have a count: of the run, and as measured.
double meanCocoons(const GrowthCase& measured, const GrowthRun& run, int from, int to);
double measuredCocoons(const GrowthCase& measured, int from, int to);
/// Days until the mass is twice that of the first point, log-linear between points; nullopt if never.
std::optional<double> doublingTime(const std::vector<int>& days, const std::vector<double>& mass);
std::vector<int> daysOf(const GrowthCase& measured);
std::vector<double> massesOf(const GrowthCase& measured);

/// Doubling time in days of a colony of a few adults under plenty at 25 °C, from the last third of 240 days.
double colonyDoubling(const model::Ensemble& members);

}
