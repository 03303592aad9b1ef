// Fits centres of parameters to the measured pots A, B, C and E, with the timing of the trade as constraint. F, J and the life table
// are only printed: they are checks. Run by hand, any number of times; the same seed gives the same centres:
//     cmake -G Ninja -DCMAKE_BUILD_TYPE=Release -B build-tune && cmake --build build-tune --target tune_pots && build-tune/tests/reference/tune_pots [generations [seed]]
// It prints the figures of the present centres, then those of the best it finds, each within its 90 % range.
// With the option --figures FILE it prints the figures of the present centres for any file of curves (columns in growth_cases.h).
#include "tests/reference/growth_cases.h"
#include "tests/reference/trade_rows.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <random>
#include <stdexcept>
#include <string_view>

namespace tierloam::testing {
namespace {

using model::Ensemble;
using model::lanes;
using model::Parameter;
using model::ParameterRow;

/// Those that the pots tell of, then those that only the trade's timing holds.
constexpr Parameter tuned[] = {Parameter::ingestion, Parameter::halfSaturation, Parameter::assimilation, Parameter::maintenance, Parameter::reserveRate,
    Parameter::layingShare, Parameter::crowdingGrowth, Parameter::crowdingLaying, Parameter::wormFactor, Parameter::airHalf,
    Parameter::respiredSoftening, Parameter::castingsRespiration, Parameter::softeningFood, Parameter::softeningPaper};
constexpr std::size_t dimensions = std::size(tuned);
constexpr std::size_t ofPots = 8;

const ParameterRow& rowOf(std::size_t i) { return model::parameterTable()[static_cast<std::size_t>(tuned[i])]; }

/// Centres as places between the ends of their range, 0 to 1, on the logarithm for ranges above 0.
using Place = std::array<double, dimensions>;

double centreAt(std::size_t i, double place)
{
    const ParameterRow& row = rowOf(i);
    return row.lower * std::pow(row.upper / row.lower, place);
}

double placeOf(std::size_t i, double centre)
{
    const ParameterRow& row = rowOf(i);
    return std::log(centre / row.lower) / std::log(row.upper / row.lower);
}

/// Centres of the first design, before any fit, in the order of `tuned`; the pull goes there however often the tuning is run.
constexpr std::array<double, dimensions> firstCentres{0.20, 0.35, 0.20, 0.0036, 0.15, 0.45, 2.5, 2.5, 0.95, 0.12, 0.30, 0.0015, 1, 1};

Place present()
{
    Place place;
    for (std::size_t i = 0; i < dimensions; ++i) place[i] = placeOf(i, rowOf(i).centre);
    return place;
}

Place firstPlace()
{
    Place place;
    for (std::size_t i = 0; i < dimensions; ++i) place[i] = placeOf(i, firstCentres[i]);
    return place;
}

struct PotFigures { double a, b, c, e, cocoonsB, layingE, lowC75, lowC145, againC; };

PotFigures figuresOf(const std::vector<GrowthCase>& cases, const std::array<GrowthRun, 4>& runs)
{
    const GrowthCase& a = caseNamed(cases, "A");
    const GrowthCase& b = caseNamed(cases, "B");
    const GrowthCase& c = caseNamed(cases, "C");
    const GrowthCase& e = caseNamed(cases, "E");
    const double peakC = *std::max_element(runs[2].cocoons.begin(), runs[2].cocoons.end());
    const auto at = [&](int day) {
        for (std::size_t i = 0; i < c.points.size(); ++i)
            if (c.points[i].day == day) return runs[2].cocoons[i] / peakC;
        throw std::runtime_error{"case C has no such day"};
    };
    const double weeks = (597 - 112) / 7.0;
    return {massError(a, runs[0]), massError(b, runs[1]), massError(c, runs[2]), massError(e, runs[3]), meanCocoons(b, runs[1], 35, 205),
            (runs[3].laidAt(e, 597) - runs[3].laidAt(e, 112)) / weeks, at(75), at(145), std::min(std::max(at(95), at(105)), std::max(at(185), at(195)))};
}

/// 0 well inside the bounds; grows outside and in their margin.
double outside(double value, double low, double high)
{
    const double margin = 0.06 * (high - low);
    const double beyond = std::max({0.0, low + margin - value, value - high + margin}) / (high - low);
    return 100.0 * beyond * beyond;
}

double badness(const PotFigures& f)
{
    double sum = 0.0;
    for (const double share : {f.a / 0.10, f.b / 0.08, f.c / 0.15, f.e / 0.20}) {
        const double beyond = std::max(0.0, share - 0.92);
        sum += 2000.0 * beyond * beyond + 0.2 * share * share;
    }
    sum += 3.0 * (outside(f.cocoonsB / 38.6, 0.78, 1.22) + outside(f.layingE / 2.45, 0.78, 1.22));
    sum += outside(f.lowC75, -0.2, 0.2) + outside(f.lowC145, -0.2, 0.2) + outside(f.againC, 0.2, 1.8);
    return sum;
}

/// A pull to the centres of the first design, so that what no measurement asks for stays where the literature put it.
double pull(const Place& place, const Place& home)
{
    double sum = 0.0;
    for (std::size_t i = 0; i < dimensions; ++i) sum += (i < ofPots ? 2.0 : 4.0) * (place[i] - home[i]) * (place[i] - home[i]);
    return sum;
}

std::vector<PotFigures> runPots(const std::vector<GrowthCase>& cases, const std::vector<Place>& places, const PotBlanks& blanks)
{
    std::array<std::vector<GrowthRun>, 4> runs;
    const std::array<const char*, 4> names{"A", "B", "C", "E"};
    for (std::size_t k = 0; k < names.size(); ++k) {
        const GrowthCase& measured = caseNamed(cases, names[k]);
        Ensemble members = Ensemble::median({}, measured.temperature);
        for (std::size_t lane = 0; lane < places.size(); ++lane)
            for (std::size_t i = 0; i < dimensions; ++i)
                members.blocks[0].parameters.value[static_cast<int>(tuned[i])][lane] = centreAt(i, places[lane][i]);
        runs[k] = runGrowth(measured, potOf(measured, blanks), members, static_cast<int>(places.size()));
    }
    std::vector<PotFigures> figures;
    for (std::size_t lane = 0; lane < places.size(); ++lane)
        figures.push_back(figuresOf(cases, {runs[0][lane], runs[1][lane], runs[2][lane], runs[3][lane]}));
    return figures;
}

Centres centresOf(const Place& place)
{
    Centres centres;
    for (std::size_t i = 0; i < dimensions; ++i) centres.emplace_back(tuned[i], centreAt(i, place[i]));
    return centres;
}

double tradeBadness(const Place& place)
{
    double sum = 0.0;
    for (const TradeRow& row : tradeRows(centresOf(place))) sum += outside(row.value, row.low, row.high);
    return sum;
}

void print(const std::vector<GrowthCase>& cases, const Place& place, const PotBlanks& blanks)
{
    for (std::size_t i = 0; i < dimensions; ++i) std::printf("  %-42s %.4g\n", std::string{rowOf(i).name}.c_str(), centreAt(i, place[i]));
    std::printf("  unknown dry share %.3f, feeding of unknown mass %.1f g for ten worms\n", blanks.dryShare, blanks.feedingOfUnknownMass);
    const PotFigures f = runPots(cases, {place}, blanks)[0];
    std::printf("  A %.3f (0.10)  B %.3f (0.08)  C %.3f (0.15)  E %.3f g (0.20)\n", f.a, f.b, f.c, f.e);
    std::printf("  B cocoons %.1f (38.6)  E laying %.2f a week (2.45)  C low %.2f, %.2f of peak (0.2), again %.2f\n", f.cocoonsB, f.layingE, f.lowC75, f.lowC145, f.againC);
    Ensemble members = Ensemble::median({}, 25);
    for (const auto& [parameter, centre] : centresOf(place)) std::fill_n(members.blocks[0].parameters.value[static_cast<int>(parameter)], lanes, centre);
    std::printf("  checks, not tuned to: doubling %.1f d (17 to 30)", colonyDoubling(members));
    for (const char* name : {"F10", "F15", "F20", "F25", "J3", "J16"}) {
        const GrowthCase& one = caseNamed(cases, name);
        const GrowthRun run = runGrowth(one, potOf(one, blanks), members, 1)[0];
        std::printf("\n    %-3s error %.3f, highest %.3f (%.3f), last %.3f (%.3f) g", name, massError(one, run), *std::max_element(run.mass.begin(), run.mass.end()),
                    std::ranges::max(massesOf(one)), run.mass.back(), massesOf(one).back());
        if (name[0] == 'F') std::printf(", doubled after %.1f (%.1f) d", doublingTime(daysOf(one), run.mass).value_or(-1), doublingTime(daysOf(one), massesOf(one)).value_or(-1));
    }
    std::printf("\n");
    for (const TradeRow& row : tradeRows(centresOf(place)))
        std::printf("  %-50s %8.2f  %g to %g%s\n", row.name.c_str(), row.value, row.low, row.high, row.value < row.low || row.value > row.high ? "  OUT" : "");
}

class Search {
public:
    Search(const std::vector<GrowthCase>& cases, unsigned seed) : cases_{cases}, random_{seed} { judge(best_, blanks_, true); }

    /// 64 trials around the best, run as the 64 members of one block; the stack is lived only for those whose pots alone would win.
    void generation(bool withTrade)
    {
        std::vector<Place> trials(static_cast<std::size_t>(lanes));
        PotBlanks blanks = blanks_;
        if (uniform() < 0.3) {
            blanks.dryShare = std::clamp(blanks.dryShare + 0.02 * normal(), 0.20, 0.30);
            blanks.feedingOfUnknownMass = std::clamp(blanks.feedingOfUnknownMass * std::exp(0.1 * normal()), 10.0, 40.0);
        }
        for (Place& trial : trials) {
            trial = best_;
            const double few = uniform() < 0.5 ? 0.25 : 1.0;
            for (std::size_t i = 0; i < dimensions; ++i)
                if (uniform() < few) trial[i] = std::clamp(trial[i] + reach_ * normal(), 0.0, 1.0);
        }
        const std::vector<PotFigures> figures = runPots(cases_, trials, blanks);
        std::vector<std::pair<double, std::size_t>> order;
        for (std::size_t k = 0; k < trials.size(); ++k) order.emplace_back(badness(figures[k]) + pull(trials[k], home_), k);
        std::sort(order.begin(), order.end());
        bool better = false;
        int lived = 0;
        for (const auto& [pots, k] : order) {
            if (pots >= bestBadness_ || ++lived > 4) break;
            const double all = pots + (withTrade ? tradeBadness(trials[k]) : 0.0);
            if (all >= bestBadness_) continue;
            bestBadness_ = all;
            best_ = trials[k];
            blanks_ = blanks;
            better = true;
        }
        reach_ = std::clamp(reach_ * (better ? 1.15 : 0.93), 0.004, 0.25);
    }

    void judge(const Place& place, const PotBlanks& blanks, bool withTrade)
    {
        bestBadness_ = badness(runPots(cases_, {place}, blanks)[0]) + pull(place, home_) + (withTrade ? tradeBadness(place) : 0.0);
    }

    void run(int generations)
    {
        judge(best_, blanks_, false);
        for (int g = 0; g < generations; ++g) generation(false); // pots alone, quick, to be near
        reach_ = 0.15;
        judge(best_, blanks_, true);
        for (int g = 0; g < generations; ++g) {
            generation(true);
            if (g % 20 == 0) std::fprintf(stderr, "generation %d: %.3f, reach %.3f\n", g, bestBadness_, reach_);
        }
    }

    const Place& best() const { return best_; }
    const PotBlanks& blanks() const { return blanks_; }
    double bestBadness() const { return bestBadness_; }

private:
    double uniform() { return static_cast<double>(random_() >> 11) * 0x1p-53; }
    double normal()
    {
        double sum = -6.0;
        for (int i = 0; i < 12; ++i) sum += uniform();
        return sum;
    }

    const std::vector<GrowthCase>& cases_;
    std::mt19937_64 random_;
    const Place home_ = firstPlace();
    Place best_ = present();
    PotBlanks blanks_;
    double bestBadness_ = 0.0;
    double reach_ = 0.15;
};

int figures(const char* file)
{
    std::ifstream csv{file};
    if (!csv) throw std::runtime_error{std::string{file} + " cannot be read"};
    for (const GrowthCase& one : readGrowthCases(csv)) {
        const GrowthRun run = runGrowth(one, potOf(one, {}), Ensemble::median({}, one.temperature), 1)[0];
        std::printf("%s (%s): error of mass %.3f g\n", one.name.c_str(), one.source.c_str(), massError(one, run));
        for (std::size_t i = 0; i < one.points.size(); ++i) {
            std::printf("  day %3d  %.3f g", one.points[i].day, run.mass[i]);
            if (one.points[i].mass) std::printf(" (%.3f)", *one.points[i].mass);
            if (one.points[i].cocoons) std::printf("  cocoons %.1f (%.1f)", run.cocoons[i], *one.points[i].cocoons);
            std::printf("\n");
        }
    }
    return 0;
}

}
}

int main(int argc, char** argv)
try {
    using namespace tierloam::testing;
    if (argc == 3 && std::string_view{argv[1]} == "--figures") return figures(argv[2]);
    const std::vector<GrowthCase> cases = measuredGrowth();
    std::printf("Present centres\n");
    print(cases, present(), {});
    const int generations = argc > 1 ? std::atoi(argv[1]) : 300;
    if (generations < 1) return 0;
    Search search{cases, argc > 2 ? static_cast<unsigned>(std::atoi(argv[2])) : 1u};
    search.run(generations);
    std::printf("Best found (%.3f)\n", search.bestBadness());
    print(cases, search.best(), search.blanks());
    return 0;
} catch (const std::exception& error) {
    std::fprintf(stderr, "tune_pots: %s\n", error.what());
    return 1;
}
