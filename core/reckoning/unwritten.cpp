#include "core/reckoning/unwritten.h"

#include "core/journal/absences.h"
#include "core/model/elementary.h"
#include "core/model/measures.h"
#include "core/model/random.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace tierloam::reckoning {

using namespace model;

namespace {

constexpr int habitDays = 56;         ///< feedings of so many days make the habit
constexpr int mostInOneGap = 40;      ///< after that the stack is left to itself, not fed in silence
constexpr double amountNoise = 0.5;   ///< log-sd
constexpr int remembered = 183;       ///< days for which it is kept who gave what
constexpr double likely = 0.6;        ///< from this probability on it is worth a word

struct Fed { int day; double kg; std::string material; };

double middle(std::vector<double> values)
{
    std::sort(values.begin(), values.end());
    const std::size_t half = values.size() / 2;
    return values.size() % 2 != 0 ? values[half] : 0.5 * (values[half - 1] + values[half]);
}

}

std::vector<MissedFeeding> missedFeedings(const journal::Entries& entries, const journal::StackHistory& history, const Deeds& deeds, int lastDay)
{
    std::vector<Fed> fed;
    std::vector<journal::AwayDays> away;
    for (const journal::Step& step : history.steps) {
        const int day = std::max(daysBetween(*history.firstBedding, step.day), 0);
        const journal::Action& action = entries[step.entry].action;
        if (const auto* feed = std::get_if<journal::Feed>(&action)) {
            const std::string material = feed->material.empty() ? std::string{journal::defaultFood} : feed->material;
            const auto portion = deeds.portion(material, feed->food);
            if (!portion) continue;
            if (!fed.empty() && fed.back().day == day) {
                fed.back().kg += portion->kg;
            } else {
                fed.push_back({day, portion->kg, material});
            }
        } else if (const auto days = journal::awayDaysOf(entries[step.entry])) {
            away.push_back(*days);
        }
    }
    std::vector<MissedFeeding> missed;
    for (std::size_t i = 0; i < fed.size(); ++i) {
        std::vector<double> gaps, amounts{fed[i].kg};
        for (std::size_t k = i; k > 0 && fed[i].day - fed[k - 1].day <= habitDays; --k) {
            gaps.push_back(fed[k].day - fed[k - 1].day);
            amounts.push_back(fed[k - 1].kg);
        }
        if (gaps.size() < 2) continue;
        const double gap = std::max(middle(gaps), 1.0);
        const int next = i + 1 < fed.size() ? fed[i + 1].day : lastDay;
        for (int k = 1; k <= mostInOneGap && fed[i].day + (k + 0.5) * gap <= next; ++k) {
            const int day = fed[i].day + static_cast<int>(std::lround(k * gap));
            if (!journal::isAway(*history.firstBedding + std::chrono::days{day}, away)) missed.push_back({day, middle(amounts), fed[i].material});
        }
    }
    return missed;
}

void giveUnwritten(Population& population, const MissedFeeding& missed, const Deeds& deeds)
{
    Ensemble& stack = population.stack;
    const int slot = stack.topToFeed();
    const auto portion = deeds.portion(missed.material, Amount{missed.kg, Unit::kg});
    if (slot < 0 || !portion || !stack.noisy) return;
    const std::size_t members = static_cast<std::size_t>(stack.members());
    UnwrittenFeeding given{missed.day, missed.kg, std::vector<char>(members, 0)};
    PerMember fresh(members, 0.0);
    const std::uint64_t chance = streamOf(stack.key, missed.day, Use::unwritten, 0);
    const std::uint64_t amount = streamOf(stack.key, missed.day, Use::unwritten, 1);
    for (int i = 0; i < stack.members(); ++i) {
        if (uniform(chance, i) >= stack.parameter(Parameter::unwritten, i)) continue;
        const std::size_t m = static_cast<std::size_t>(i);
        fresh[m] = portion->kg * exponential(amountNoise * standardNormal(amount, i));
        given.given[m] = 1;
    }
    Deeds::addWithinRoom(stack, slot, portion->what, fresh, false);
    std::erase_if(population.unwritten, [&](const UnwrittenFeeding& each) { return missed.day - each.day > remembered; });
    population.unwritten.push_back(std::move(given));
}

std::vector<UnwrittenGuess> guessUnwritten(const Population& population, const std::vector<MissedFeeding>& missed, Day firstBedding)
{
    const Weights weights = population.shares();
    const std::size_t members = static_cast<std::size_t>(population.stack.members());
    std::vector<UnwrittenGuess> guesses;
    const auto monthOf = [&](int day) {
        const std::chrono::year_month_day date{firstBedding + std::chrono::days{day}};
        return std::pair{date.year(), date.month()};
    };
    for (std::size_t first = 0; first < population.unwritten.size();) {
        std::size_t after = first;
        while (after < population.unwritten.size() && monthOf(population.unwritten[after].day) == monthOf(population.unwritten[first].day)) ++after;
        UnwrittenGuess guess;
        guess.from = firstBedding + std::chrono::days{population.unwritten[first].day};
        guess.to = firstBedding + std::chrono::days{population.unwritten[after - 1].day};
        for (int wanted = 1; wanted <= static_cast<int>(after - first); ++wanted) {
            std::vector<char> soMany(members, 0);
            for (std::size_t m = 0; m < members; ++m) {
                int count = 0;
                for (std::size_t k = first; k < after; ++k) count += population.unwritten[k].given[m];
                soMany[m] = count >= wanted ? 1 : 0;
            }
            const double chance = probability(soMany, weights);
            if (chance < likely) break;
            guess.feedings = wanted;
            guess.probability = chance;
        }
        if (guess.feedings > 0) {
            std::vector<std::pair<double, int>> days;
            for (std::size_t k = first; k < after; ++k) days.emplace_back(-probability(population.unwritten[k].given, weights), population.unwritten[k].day);
            std::sort(days.begin(), days.end());
            for (int k = 0; k < guess.feedings; ++k) guess.days.push_back(firstBedding + std::chrono::days{days[static_cast<std::size_t>(k)].second});
            guess.kgEach = population.unwritten[first].usualKg;
            const auto same = std::find_if(missed.begin(), missed.end(), [&](const MissedFeeding& each) { return each.day == population.unwritten[first].day; });
            if (same != missed.end()) guess.material = same->material;
            guesses.push_back(std::move(guess));
        }
        first = after;
    }
    return guesses;
}

}
