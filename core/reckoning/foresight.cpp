#include "core/reckoning/foresight.h"

#include "core/model/measures.h"
#include "core/reckoning/next_look.h"
#include "core/reckoning/overfeeding.h"

#include <algorithm>

namespace tierloam::reckoning {

using namespace model;

namespace {

constexpr std::size_t asked = 128;   ///< members
constexpr int turnWithin = 14;
constexpr int declineAfter = 60;     ///< days
constexpr int looksWithin = 182;     ///< half a year: a date is looked for when it is at most 120 days off, and later ones count as never
constexpr int fullWithin = 21;       ///< the range of a full sump's date is told within two weeks and a week (core/advice/rules_drainage.cpp)

/// Copies no member that is not asked.
Population firstOf(const Population& members)
{
    const std::size_t kept = std::min(asked, static_cast<std::size_t>(members.stack.members()));
    Population some;
    const Ensemble& all = members.stack;
    some.stack = {all.key, all.area, all.height, all.sumpCapacity, all.noisy, all.species, all.shapes, {all.blocks.begin(), all.blocks.begin() + static_cast<std::ptrdiff_t>(kept / lanes)}};
    const std::span<const double> log = members.weights.log();
    some.weights.restore({log.begin(), log.begin() + static_cast<std::ptrdiff_t>(kept)});
    if (!members.normalised.empty()) some.normalised = some.weights.normalised();
    some.ranOffBefore.assign(members.ranOffBefore.begin(), members.ranOffBefore.begin() + static_cast<std::ptrdiff_t>(kept));
    const auto cut = [kept](const auto& values) { return std::decay_t<decltype(values)>(values.begin(), values.begin() + static_cast<std::ptrdiff_t>(std::min(kept, values.size()))); };
    for (const auto& [batch, first] : members.firsts) some.firsts.emplace(batch, FirstDays{cut(first.ready), cut(first.filled)});
    for (const auto& row : members.readyNow) some.readyNow.push_back(cut(row));
    for (const auto& row : members.filledNow) some.filledNow.push_back(cut(row));
    return some;
}

}

const Substance& mainFood(const Course& course)
{
    const UsualCare::Weekly* most = nullptr;
    for (const UsualCare::Weekly& each : course.care.given)
        if (each.isFood && each.kg > 0.0 && (most == nullptr || each.kg > most->kg)) most = &each;
    return most != nullptr ? most->what : course.kitchen;
}

std::optional<double> roomForFood(const Ensemble& stack, Weights weights, const Substance& food)
{
    const int top = stack.topToFeed();
    if (top < 0) return std::nullopt;
    const double volume = volumeOfDry(food.softening, food.bulk * food.dryShare) * food.dryShare;
    if (volume <= 0.0) return std::nullopt;
    std::vector<double> room(static_cast<std::size_t>(stack.members()));
    for (int i = 0; i < stack.members(); ++i) room[static_cast<std::size_t>(i)] = std::max(model::room(MemberOf{stack, i}, top), 0.0) / volume;
    return quantile(room, weights, 0.5);
}

UsualElements usualElements(const UsualCare& care)
{
    UsualElements sum;
    for (const UsualCare::Weekly& each : care.given) {
        sum.carbonKg += each.kg * each.what.dryShare * each.what.carbon;
        sum.nitrogenKg += each.kg * each.what.dryShare * each.what.nitrogen;
    }
    return sum;
}

double readyAndTurnBy(int day, const Ensemble& stack, const Outlook& ahead, Weights weights)
{
    const int top = stack.topToFeed();
    if (top < 0) return 0.0;
    const FirstDays& bottom = ahead.firsts.at(stack.shapes.front().batch);
    const FirstDays& filling = ahead.firsts.at(stack.shapes[static_cast<std::size_t>(top)].batch);
    std::vector<char> both(bottom.ready.size());
    for (std::size_t i = 0; i < both.size(); ++i) both[i] = bottom.ready[i] <= day && filling.filled[i] <= day ? 1 : 0;
    return probability(both, weights);
}

double airLowAhead(const Outlook& ahead, Weights weights)
{
    std::vector<char> low(ahead.leastAir.size());
    for (std::size_t i = 0; i < low.size(); ++i) low[i] = ahead.leastAir[i] < overfedAir ? 1 : 0;
    return probability(low, weights);
}

std::optional<Foresight> foresee(const Population& members, const Course& course, Crew& crew)
{
    if (members.stack.trays() == 0) return std::nullopt;
    const Population some = firstOf(members);
    const Weights weights = some.shares();
    const int days = course.surroundings.spigot == journal::Spigot::shut ? fullWithin : turnWithin;
    const std::optional<Outlook> ahead = lookAhead(some, course, {}, crew, {}, days, false);
    const int last = course.today + days;
    const auto asDates = [&](const std::vector<int>& firstDays) { return dates(firstDays, weights, course.surroundings.firstBedding, last); };
    Foresight seen;
    seen.readyAndTurnWithin14Days = readyAndTurnBy(course.today + turnWithin, some.stack, *ahead, weights);
    seen.airLowWithin14Days = airLowAhead(*ahead, weights);
    if (const int top = some.stack.topToFeed(); top >= 0) {
        const FirstDays& filling = ahead->firsts.at(some.stack.shapes[static_cast<std::size_t>(top)].batch);
        seen.turnLikelyOn = dates(filling.filled, weights, course.surroundings.firstBedding, course.today + turnWithin).p50;
    }
    seen.sumpFullOn = asDates(ahead->sumpFull);
    seen.topTrayFullOn = asDates(ahead->trayFull);
    seen.bedIn7Days = band(ahead->bedIn7Days, weights);
    seen.bedIn14Days = band(ahead->bedIn14Days, weights);
    seen.drainedLPerWeek = band(ahead->drainedNextWeek, weights);
    seen.roomTopTrayFreshKg = roomForFood(some.stack, weights, mainFood(course));
    std::vector<double> warmth(static_cast<std::size_t>(some.stack.members()));
    for (int i = 0; i < some.stack.members(); ++i) warmth[static_cast<std::size_t>(i)] = some.stack.blocks[static_cast<std::size_t>(i / lanes)].stack.warmth[i % lanes];
    seen.ownWarmthK = quantile(warmth, weights, 0.5);
    seen.topWaterIn7Days = band(ahead->topWaterIn7Days, weights);
    const UsualElements elements = usualElements(course.care);
    seen.usualCarbonKg = elements.carbonKg;
    seen.usualNitrogenKg = elements.nitrogenKg;
    return seen;
}

double colonyKept(const Population& members, const Course& course, Crew& crew)
{
    const Population some = firstOf(members);
    const Weights weights = some.shares();
    std::vector<double> now(static_cast<std::size_t>(some.stack.members()));
    for (int i = 0; i < some.stack.members(); ++i) now[static_cast<std::size_t>(i)] = colony(MemberOf{some.stack, i});
    const double before = quantile(now, weights, 0.5);
    const std::optional<Outlook> ahead = lookAhead(some, course, {}, crew, {}, declineAfter, false);
    return before > 0.0 ? quantile(ahead->colonyAtEnd, weights, 0.5) / before : 1.0;
}

LookForesight foreseeLooks(const Population& members, const Course& course, Crew& crew)
{
    Present present{firstOf(members), course, {}};
    present.base = *lookAhead(present.members, course, {}, crew, {}, looksWithin, false);
    const Ensemble& stack = present.members.stack;
    const Weights weights = present.members.shares();
    const auto asDates = [&](const std::vector<int>& firstDays) { return dates(firstDays, weights, course.surroundings.firstBedding, course.today + looksWithin); };
    LookForesight seen;
    seen.readyOn = asDates(present.base.firsts.at(stack.shapes.front().batch).ready);
    if (const int top = stack.topToFeed(); top >= 0) seen.turnOn = asDates(present.base.firsts.at(stack.shapes[static_cast<std::size_t>(top)].batch).filled);
    seen.nextLooks = nextLooks(present);
    seen.turnLook = turnLook(present);
    seen.bitsRule = bitsRule(present);
    return seen;
}

}
