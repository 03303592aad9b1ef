#include "core/reckoning/next_look.h"

#include "core/model/elementary.h"

#include <algorithm>
#include <cmath>

namespace tierloam::reckoning {

using namespace model;

namespace {

constexpr double sureEnough = 0.8;   ///< as alerts are raised
constexpr int mostBits = 50;         ///< %

}

double minutesOf(LookKind kind)
{
    switch (kind) {
    case LookKind::bits: return 2.0;
    case LookKind::depth: return 3.0;
    case LookKind::left:
    case LookKind::wormsSeen:
    case LookKind::sumpLevel:
    case LookKind::squeeze: return 1.0;
    case LookKind::bedTemperature: return 2.0;
    case LookKind::moisture: return 5.0;
    case LookKind::drain: return 4.0;
    case LookKind::trayWeight: return 6.0;
    case LookKind::count: return 12.0;
    case LookKind::weigh: return 40.0;
    default: return 10.0;
    }
}

Look openLook(LookKind kind, int slot, const Present& present)
{
    Look look;
    look.kind = kind;
    look.slot = slot;
    look.litres = kind == LookKind::count ? 1.0 : 0.0;
    look.spigotOpen = present.course.surroundings.spigot == journal::Spigot::open;
    return look;
}

std::vector<double> logDaysTo(const std::vector<int>& first, int today)
{
    std::vector<double> log(first.size());
    for (std::size_t i = 0; i < first.size(); ++i) log[i] = naturalLog(1.0 + std::clamp(first[i] == never ? outlookDays + 1 : first[i] - today, 0, outlookDays + 1));
    return log;
}

std::vector<double> logDaysToReady(const Present& present)
{
    return logDaysTo(present.base.firsts.at(present.members.stack.shapes.front().batch).ready, present.course.today);
}

double cutOf(const Look& look, const Present& present, const std::vector<double>& days)
{
    const Ensemble& stack = present.members.stack;
    const std::vector<double> weights = present.members.weights.normalised();
    double mean = 0.0;
    double variance = 0.0;
    for (std::size_t i = 0; i < days.size(); ++i) mean += weights[i] * days[i];
    for (std::size_t i = 0; i < days.size(); ++i) variance += weights[i] * (days[i] - mean) * (days[i] - mean);
    if (variance < 1e-6) return 0.0;
    double centre = 0.0;
    double square = 0.0;
    double noise = 0.0;
    double with = 0.0;
    for (int i = 0; i < stack.members(); ++i) {
        const std::size_t m = static_cast<std::size_t>(i);
        const Expectation e = expectation(look, MemberOf{stack, i}, present.members.ranOffBefore[m]);
        const Moments of = e.shape == Expectation::Shape::logNormal ? Moments{naturalLog(e.centre), e.sd * e.sd} : moments(e);
        centre += weights[m] * of.mean;
        square += weights[m] * of.mean * of.mean;
        noise += weights[m] * of.variance / FilterManner{}.countsFor(look.kind, e, e.centre);
        with += weights[m] * of.mean * (days[m] - mean);
    }
    const double spread = std::max(square - centre * centre, 0.0);
    return spread + noise > 0.0 ? std::min(with * with / (variance * (spread + noise)), 1.0) : 0.0;
}

std::vector<LookChoice> nextLooks(const Present& present)
{
    const Ensemble& stack = present.members.stack;
    if (stack.trays() == 0) return {};
    const std::vector<double> days = logDaysToReady(present);
    if (std::all_of(days.begin(), days.end(), [&](double each) { return std::abs(each - days.front()) < 1e-3; })) return {}; // nothing to be told

    std::vector<Look> looks;
    const int top = stack.topToFeed();
    for (int slot = 0; slot < stack.trays(); ++slot)
        for (const LookKind kind : {LookKind::bits, LookKind::depth, LookKind::trayWeight}) looks.push_back(openLook(kind, slot, present));
    if (top >= 0) looks.push_back(openLook(LookKind::left, top, present));
    if (top >= 0) looks.push_back(openLook(LookKind::wormsSeen, top, present));
    for (const LookKind kind : {LookKind::weigh, LookKind::count, LookKind::bedTemperature, LookKind::squeeze, LookKind::moisture, LookKind::drain})
        looks.push_back(openLook(kind, -1, present));

    std::vector<LookChoice> choices;
    for (const Look& look : looks) {
        const double cut = cutOf(look, present, days);
        choices.push_back({look.kind, look.slot + 1, minutesOf(look.kind), cut});
    }
    std::stable_sort(choices.begin(), choices.end(), [](const LookChoice& a, const LookChoice& b) { return a.perMinute() > b.perMinute(); });
    return choices;
}

std::optional<LookChoice> turnLook(const Present& present)
{
    const Ensemble& stack = present.members.stack;
    const int top = stack.topToFeed();
    if (top < 0) return std::nullopt;
    const std::vector<double> days = logDaysTo(present.base.firsts.at(stack.shapes[static_cast<std::size_t>(top)].batch).filled, present.course.today);
    return LookChoice{LookKind::depth, top + 1, minutesOf(LookKind::depth), cutOf(openLook(LookKind::depth, top, present), present, days)};
}

std::optional<BitsRule> bitsRule(const Present& present)
{
    const Population& members = present.members;
    if (members.stack.trays() == 0) return std::nullopt;
    const std::vector<double> weights = members.weights.normalised();
    const std::vector<int>& first = present.base.firsts.at(members.stack.shapes.front().batch).ready;
    const int today = present.course.today;
    const auto chanceReady = [&](const std::vector<double>& w) {
        double ready = 0.0;
        double all = 0.0;
        for (std::size_t i = 0; i < w.size(); ++i) {
            all += w[i];
            ready += first[i] <= today ? w[i] : 0.0;
        }
        return all > 0.0 ? ready / all : 0.0;
    };
    const double now = chanceReady(weights);
    if (now < 0.02 || now >= sureEnough) return std::nullopt;
    std::vector<Expectation> expected;
    const Look look = openLook(LookKind::bits, 0, present);
    expected.reserve(static_cast<std::size_t>(members.stack.members()));
    for (int i = 0; i < members.stack.members(); ++i) expected.push_back(expectation(look, MemberOf{members.stack, i}, 0.0));
    const FilterManner manner;
    const auto saysReady = [&](double percent) {
        std::vector<double> w = weights;
        for (std::size_t i = 0; i < w.size(); ++i) w[i] *= exponential(manner.countsFor(LookKind::bits, expected[i], percent) * logDensity(expected[i], percent));
        return chanceReady(w) >= sureEnough;
    };
    int few = -1;
    while (few < mostBits && saysReady(few + 1)) ++few;
    if (few < 1) return std::nullopt;
    // Between whole per cents too: from one to the next the date of the other outcome would jump by a fortnight.
    double most = few;
    for (double step = 0.5; few < mostBits && step > 0.02; step /= 2.0)
        if (saysReady(most + step)) most += step;
    BitsRule rule;
    rule.fewerThanPercent = most;
    std::vector<double> more = weights;
    double sum = 0.0;
    for (std::size_t i = 0; i < more.size(); ++i) sum += more[i] *= 1.0 - normalCdf((rule.fewerThanPercent - expected[i].centre) / expected[i].sd);
    if (sum <= 0.0) return std::nullopt;
    for (double& each : more) each /= sum;
    rule.otherwise = dates(first, more, present.course.surroundings.firstBedding, today + outlookDays).p50;
    if (rule.otherwise) rule.otherwise = std::max(*rule.otherwise, present.course.surroundings.firstBedding + std::chrono::days{today + 1});
    return rule;
}

}
