#include "core/journal/last_bedding.h"
#include "core/model/measures.h"
#include "core/reckoning/foresight.h"
#include "core/reckoning/next_look.h"
#include "core/reckoning/overdue.h"
#include "core/reckoning/overfeeding.h"
#include "core/reckoning/stack_run.h"

#include <algorithm>
#include <numeric>

namespace tierloam::reckoning {

using namespace model;

Course StackRun::courseFrom(int day) const
{
    Course course;
    course.today = day;
    course.batches = static_cast<int>(history_.batches.size());
    course.surroundings = now_.surroundings;
    if (const auto since = standing()->dryingSince) course.surroundings.lidBackOn = dryingEnds(day, daysBetween(*since, dayAt(day)));
    course.care = usualCare(entries_, history_, deeds_, dayAt(day));
    if (const auto kitchen = deeds_.portion(std::string{journal::defaultFood}, Amount{1.0, Unit::kg})) course.kitchen = kitchen->what;
    const journal::Bed* bed = journal::lastTrayBedding(entries_, history_, dayAt(day));
    if (const auto portion = bed != nullptr ? deeds_.portion(bed->material, bed->bedding) : std::nullopt) {
        course.bedding = portion->what;
        course.beddingKg = portion->kg;
        course.beddingWater = laidWetness * portion->what.held;
    }
    return course;
}

/// All members go on under usual care; the present standing stays as it is.
bool StackRun::forecast(StackReckoning& result, std::stop_token stop)
{
    Course course = courseFrom(last_);
    const UsualCare& care = course.care;
    const Ensemble& stack = now_.members.stack;
    const Weights weights = now_.members.shares();
    Forecast& to = result.forecast;
    result.record.usualFeedKgPerWeek = care.medianFeedKg;
    const int top = stack.topToFeed();
    // While a tray dries the turn has been done, and the next is that of a tray which does not stand yet.
    const bool drying = standing()->drying.has_value();
    const int topBatch = top >= 0 && !drying ? stack.shapes[static_cast<std::size_t>(top)].batch : 0;
    to.roomTopTrayFreshKg = roomForFood(stack, weights, mainFood(course));
    to.foodBulkKgPerM3 = mainFood(course).bulk;
    for (const UsualCare::Weekly& each : care.given)
        if (!each.isFood && each.what.bulk > 0.0) to.coverAsFoodKg += each.kg / each.what.bulk * to.foodBulkKgPerM3;

    std::optional<Outlook> ahead = lookAhead(now_.members, course, {}, crew_, stop);
    if (!ahead) return false;
    const Day start = *history_.firstBedding;
    const auto asDates = [&](const std::vector<int>& firstDays) { return dates(firstDays, weights, start, last_ + outlookDays); };
    to.days = std::move(ahead->days);
    to.drainedExpectedLPerWeek = band(ahead->drainedNextWeek, weights);
    to.colonyMedianIn60DaysKg = quantile(ahead->colonyIn60Days, weights, 0.5);
    for (TrayEstimate& tray : result.now.slots) tray.readyOn = asDates(ahead->firsts.at(tray.batch).ready);
    if (topBatch != 0) to.turnOn = asDates(ahead->firsts.at(topBatch).filled);
    to.turnLikelyOn = to.turnOn.p50;
    to.sumpFullOn = asDates(ahead->sumpFull);
    to.topTrayFullOn = asDates(ahead->trayFull);
    to.feedUsualKg = care.medianFeedKg;
    to.feedGivenKg = care.feedKg;
    feedLimits(result, course);
    if (topBatch != 0) to.readyAndTurnWithin14Days = readyAndTurnBy(last_ + 14, stack, *ahead, weights);
    if (!result.now.slots.empty() && result.now.slots.front().state == TrayState::ready && result.record.spareTrays == 0 && !drying && isOverdueEarly(result, to.colonyMedianIn60DaysKg))
        result.now.slots.front().state = TrayState::overdue;
    result.history.back() = result.now;
    to.airLowWithin14Days = airLowAhead(*ahead, weights);
    std::vector<double> warmth(static_cast<std::size_t>(stack.members()));
    for (int i = 0; i < stack.members(); ++i) {
        const MemberOf m{stack, i};
        warmth[static_cast<std::size_t>(i)] = m.block.stack.warmth[m.lane];
    }
    to.ownWarmthK = quantile(warmth, weights, 0.5);
    const UsualElements elements = usualElements(care);
    to.usualCarbonKg = elements.carbonKg;
    to.usualNitrogenKg = elements.nitrogenKg;
    result.present = std::make_shared<const Present>(Present{now_.members, std::move(course), std::move(*ahead)});
    result.nextLooks = nextLooks(*result.present);
    result.turnLook = turnLook(*result.present);
    result.bitsRule = bitsRule(*result.present);
    return true;
}

/// Next week's feeding: what keeps the median member's ration at 1, and the most that 5 % of the members at most do not bear.
void StackRun::feedLimits(StackReckoning& result, const Course& course) const
{
    Forecast& to = result.forecast;
    const int top = now_.members.stack.topToFeed();
    const Substance& food = mainFood(course);
    if (top < 0 || food.dryShare <= 0.0 || result.now.colonyKg.p50 < 1e-6) { // food that nobody eats rots
        to.feedUsualKg = 0.0;
        return;
    }
    // Too warm with no food at all is the place's doing, and none of the food's: what food adds to it counts.
    const std::size_t count = static_cast<std::size_t>(now_.members.stack.members());
    std::vector<double> warmestUnfed(7 * count, 0.0);
    const auto overfedBy = [&](double kg, bool unfed = false) {
        Ensemble trial = now_.members.stack;
        if (!unfed) Deeds::giveWithinRoom(trial, top, food, kg, true);
        std::vector<char> overfed(static_cast<std::size_t>(trial.members()), 0);
        for (int ahead = 1; ahead <= 7; ++ahead) {
            const DayForcing forcing = course.surroundings.on(last_ + ahead);
            crew_.each(static_cast<int>(trial.blocks.size()), [&](int block) {
                advanceDay(trial, block, forcing);
                for (int i = block * lanes; i < (block + 1) * lanes; ++i) {
                    const MemberOf m{trial, i};
                    const std::size_t member = static_cast<std::size_t>(i);
                    const double bed = m.block.stack.bed[m.lane];
                    double& without = warmestUnfed[static_cast<std::size_t>(ahead - 1) * count + member];
                    if (unfed) without = bed;
                    if (m.tray(top).air[m.lane] < overfedAir || (bed > overfedWarmth && bed > without + foodsOwnWarmth)) overfed[member] = 1;
                }
            });
        }
        return probability(overfed, now_.members.shares());
    };
    const double most = mostInAWeek(result.record.areaM2, now_.members.stack.trays(), result.now.colonyKg.p50);
    // The cover goes under the rim too.
    const double bound = std::min(most, to.roomTopTrayFreshKg ? std::max(*to.roomTopTrayFreshKg - to.coverAsFoodKg, 0.0) : most);
    double bearable = 0.0;
    if (overfedBy(bound) <= overfedChance) { // with nothing known of the unfed bed, which is the harder test
        bearable = bound;
    } else {
        overfedBy(0.0, true);
        double low = 0.0;
        double high = bound;
        for (int halving = 0; halving < 5; ++halving) {
            const double middle = 0.5 * (low + high);
            (overfedBy(middle) <= overfedChance ? low : high) = middle;
        }
        bearable = low;
    }
    // Worms that suffer from heat eat less each day.
    const double hot = std::clamp((noFoodWarmth - result.now.binTempC.p50) / (noFoodWarmth - overfedWarmth), 0.0, 1.0);
    to.feedHighKg = bearable * hot;

    std::vector<double> wanted(static_cast<std::size_t>(now_.members.stack.members()));
    std::vector<double> need;
    const int days = now_.members.week.gain(PastWeek::maintenance, 7, need);
    for (int i = 0; i < now_.members.stack.members(); ++i) {
        const MemberOf m{now_.members.stack, i};
        const double perFresh = food.dryShare * (1.0 - m.parameter(Parameter::respiredSoftening)) * m.parameter(Parameter::assimilation);
        const double upkeep = days > 0 ? need[static_cast<std::size_t>(i)] / days * 7.0 : 0.0;
        wanted[static_cast<std::size_t>(i)] = perFresh > 0.0 ? upkeep / perFresh : 0.0;
    }
    // The rate holds over any 7 days: what the last of them got counts, whatever the week ahead could take.
    std::vector<double>& fed = result.record.fedKg;
    fed.assign(7, 0.0);
    for (std::size_t i = 0; i < now_.stepsDone; ++i) {
        const journal::Entry& entry = entries_[history_.steps[i].entry];
        const auto* feed = std::get_if<journal::Feed>(&entry.action);
        const int ago = daysBetween(entry.date.day, dayAt(last_));
        if (feed == nullptr || ago >= 7) continue;
        if (const auto given = deeds_.portion(feed->material.empty() ? std::string{journal::defaultFood} : feed->material, feed->food)) fed[static_cast<std::size_t>(ago)] += given->kg;
    }
    to.feedNowKg = std::clamp(most - std::accumulate(fed.begin(), fed.end(), 0.0), 0.0, to.feedHighKg);
    to.feedLowKg = std::min(quantile(wanted, now_.members.shares(), 0.5), to.feedHighKg);
    to.feedUsualKg = std::min(to.feedUsualKg, to.feedHighKg);
}

}
