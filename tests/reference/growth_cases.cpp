#include "tests/reference/growth_cases.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <fstream>
#include <regex>
#include <sstream>
#include <stdexcept>

namespace tierloam::testing {

namespace {

using model::PotFeeding;
using model::PotSetting;

constexpr double gram = 1e-3;

double number(const std::string& text)
{
    double value = 0.0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc{} || end != text.data() + text.size()) throw std::runtime_error{"not a number: '" + text + "'"};
    return value;
}

std::optional<double> numberOrNone(const std::string& text) { return text.empty() ? std::nullopt : std::optional{number(text)}; }

std::vector<std::string> split(const std::string& line, char mark)
{
    std::vector<std::string> cells;
    std::string cell;
    std::istringstream in{line};
    while (std::getline(in, cell, mark)) cells.push_back(cell);
    if (!line.empty() && line.back() == mark) cells.emplace_back();
    return cells;
}

std::string trimmed(const std::string& text)
{
    const auto first = text.find_first_not_of(' ');
    return first == std::string::npos ? std::string{} : text.substr(first, text.find_last_not_of(' ') - first + 1);
}

/// The clauses of `feed`, one function each; true if it was that.
class FeedReader {
public:
    FeedReader(const GrowthCase& measured, const PotBlanks& blanks, PotSetting& pot)
        : pot_{pot}, blanks_{blanks}, last_{measured.points.back().day} {}

    void read(const std::string& clause)
    {
        std::smatch part;
        double dryShare = blanks_.dryShare;
        if (static const std::regex moisture{R"((\d+(?:\.\d+)?) % moisture)"}; std::regex_search(clause, part, moisture)) dryShare = 1.0 - number(part[1]) / 100.0;
        static const std::regex every{R"((\d+(?:\.\d+)?) g\b.*\bevery (\d+) d from day (\d+))"};
        static const std::regex unknownMass{R"(food from day (\d+) every (\d+)-(\d+) d)"};
        static const std::regex removed{R"((\d+(?:\.\d+)?)(?: g)? removed at (\d+))"};
        static const std::regex at{R"((\d+(?:\.\d+)?)(?: g)? at (\d+))"};
        static const std::regex onDay{R"((\d+(?:\.\d+)?) g\b.*\bon day (\d+))"};
        static const std::regex atFirst{R"((\d+(?:\.\d+)?) g\b[^;]*)"};
        if (std::regex_match(clause, part, every)) {
            repeat(number(part[3]), number(part[2]), number(part[1]) * gram * dryShare);
        } else if (std::regex_match(clause, part, unknownMass)) {
            repeat(number(part[1]), 0.5 * (number(part[2]) + number(part[3])), blanks_.feedingOfUnknownMass * gram * pot_.worms / 10.0 * blanks_.dryShare);
        } else if (std::regex_match(clause, part, removed)) {
            give(number(part[2]), -number(part[1]) * gram * dryShare);
        } else if (std::regex_match(clause, part, at)) {
            give(number(part[2]), number(part[1]) * gram * dryShare);
        } else if (std::regex_match(clause, part, onDay)) {
            give(number(part[2]), number(part[1]) * gram * dryShare);
        } else if (std::regex_match(clause, part, atFirst)) {
            give(pot_.firstDay, number(part[1]) * gram * dryShare);
        } else {
            throw std::runtime_error{"feed not understood: '" + clause + "'"};
        }
    }

private:
    void give(double day, double dry) { pot_.feedings.push_back({static_cast<int>(std::lround(day)), dry}); }
    void repeat(double from, double gap, double dry)
    {
        for (double day = from; day < last_; day += gap) give(day, dry);
    }

    PotSetting& pot_;
    const PotBlanks& blanks_;
    int last_;
};

}

std::vector<GrowthCase> readGrowthCases(std::istream& csv)
{
    std::vector<GrowthCase> cases;
    std::string line;
    int at = 0;
    bool headed = false;
    while (std::getline(csv, line)) {
        ++at;
        if (!line.empty() && line.back() == '\r') line.pop_back();
        if (line.empty() || line[0] == '#') continue;
        if (!headed) {
            headed = true;
            continue;
        }
        const std::vector<std::string> cells = split(line, ',');
        try {
            if (cells.size() != 9) throw std::runtime_error{"nine cells are needed"};
            if (cases.empty() || cases.back().name != cells[0]) {
                GrowthCase& added = cases.emplace_back();
                added.name = cells[0];
                added.source = cells[1];
                added.feed = cells[5];
                added.temperature = number(cells[2]);
                if (!cells[3].empty()) added.worms = static_cast<int>(number(cells[3]));
                added.area = numberOrNone(cells[4]);
            }
            cases.back().points.push_back({static_cast<int>(number(cells[6])), numberOrNone(cells[7]), numberOrNone(cells[8])});
            if (cases.back().points.size() == 1 && !cases.back().points[0].mass) throw std::runtime_error{"the first point of a case needs a mass"};
            if (cases.back().points.size() > 1 && cases.back().points.end()[-2].day >= cases.back().points.back().day) throw std::runtime_error{"days must rise"};
        } catch (const std::runtime_error& error) {
            throw std::runtime_error{"line " + std::to_string(at) + ": " + error.what()};
        }
    }
    return cases;
}

std::vector<GrowthCase> measuredGrowth()
{
    std::ifstream csv{TIERLOAM_SOURCE_DIR "/tests/reference/growth.csv"};
    if (!csv) throw std::runtime_error{"tests/reference/growth.csv cannot be read"};
    return readGrowthCases(csv);
}

const GrowthCase& caseNamed(std::span<const GrowthCase> cases, const std::string& name)
{
    const auto found = std::find_if(cases.begin(), cases.end(), [&](const GrowthCase& one) { return one.name == name; });
    if (found == cases.end()) throw std::runtime_error{"no case " + name};
    return *found;
}

PotSetting potOf(const GrowthCase& measured, const PotBlanks& blanks)
{
    PotSetting pot;
    pot.area = measured.area.value_or(blanks.area);
    pot.temperature = measured.temperature;
    pot.firstDay = measured.points.front().day;
    pot.worms = measured.worms.value_or(blanks.worms);
    pot.wormMass = *measured.points.front().mass * gram;
    pot.ample = measured.feed.empty();
    FeedReader reader{measured, blanks, pot};
    for (const std::string& clause : split(measured.feed, ';')) reader.read(trimmed(clause));
    return pot;
}

double GrowthRun::laidAt(const GrowthCase& measured, int day) const
{
    double value = 0.0;
    for (std::size_t i = 0; i < measured.points.size() && measured.points[i].day <= day; ++i) value = laid[i];
    return value;
}

std::vector<GrowthRun> runGrowth(const GrowthCase& measured, const PotSetting& setting, const model::Ensemble& members, int first)
{
    std::vector<GrowthRun> runs(static_cast<std::size_t>(first));
    model::LaboratoryPot pot{setting, members};
    for (std::size_t i = 0; i < measured.points.size(); ++i) {
        const int day = measured.points[i].day;
        std::vector<double> before(runs.size(), 0.0);
        if (measured.points[i].cocoons && day - 10 >= pot.day()) {
            pot.liveUntil(day - 10);
            for (std::size_t m = 0; m < runs.size(); ++m) before[m] = pot.cocoonsLaid(static_cast<int>(m));
        }
        pot.liveUntil(day);
        for (std::size_t m = 0; m < runs.size(); ++m) {
            const int member = static_cast<int>(m);
            const double laid = pot.cocoonsLaid(member);
            runs[m].mass.push_back(pot.meanMass(member) / gram);
            runs[m].laid.push_back(laid / setting.worms);
            runs[m].cocoons.push_back(i == 0 || !measured.points[i].cocoons ? 0.0 : (laid - before[m]) * 10.0 / setting.worms);
            runs[m].worstLedger = std::max(runs[m].worstLedger, std::fabs(pot.ledger(member)));
        }
    }
    return runs;
}

double massError(const GrowthCase& measured, const GrowthRun& run)
{
    double sum = 0.0;
    int count = 0;
    for (std::size_t i = 1; i < measured.points.size(); ++i) {
        if (!measured.points[i].mass) continue;
        const double difference = run.mass[i] - *measured.points[i].mass;
        sum += difference * difference;
        ++count;
    }
    return std::sqrt(sum / count);
}

double meanCocoons(const GrowthCase& measured, const GrowthRun& run, int from, int to)
{
    double sum = 0.0;
    int count = 0;
    for (std::size_t i = 0; i < measured.points.size(); ++i) {
        const GrowthPoint& point = measured.points[i];
        if (!point.cocoons || point.day < from || point.day > to) continue;
        sum += run.cocoons[i];
        ++count;
    }
    return count > 0 ? sum / count : 0.0;
}

double measuredCocoons(const GrowthCase& measured, int from, int to)
{
    GrowthRun itself;
    for (const GrowthPoint& point : measured.points) itself.cocoons.push_back(point.cocoons.value_or(0.0));
    return meanCocoons(measured, itself, from, to);
}

std::optional<double> doublingTime(const std::vector<int>& days, const std::vector<double>& mass)
{
    const double goal = 2.0 * mass.front();
    for (std::size_t i = 1; i < mass.size(); ++i) {
        if (mass[i] < goal) continue;
        const double part = std::log(goal / mass[i - 1]) / std::log(mass[i] / mass[i - 1]);
        return days[i - 1] + part * (days[i] - days[i - 1]) - days.front();
    }
    return std::nullopt;
}

std::vector<int> daysOf(const GrowthCase& measured)
{
    std::vector<int> days;
    for (const GrowthPoint& point : measured.points)
        if (point.mass) days.push_back(point.day);
    return days;
}

std::vector<double> massesOf(const GrowthCase& measured)
{
    std::vector<double> masses;
    for (const GrowthPoint& point : measured.points)
        if (point.mass) masses.push_back(*point.mass);
    return masses;
}

double colonyDoubling(const model::Ensemble& members)
{
    model::PotSetting pot;
    pot.area = 1e4; // m²: no crowding however it grows
    pot.worms = 4;
    pot.wormMass = 0.5e-3;
    pot.ample = true;
    pot.hatchlingsRemoved = false;
    model::LaboratoryPot colony{pot, members};
    colony.liveUntil(160);
    const double before = colony.worms() * colony.meanMass();
    colony.liveUntil(240);
    return 80.0 * std::log(2.0) / std::log(colony.worms() * colony.meanMass() / before);
}

}
