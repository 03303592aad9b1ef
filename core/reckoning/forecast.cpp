#include "core/model/measures.h"
#include "core/reckoning/stack_run.h"

#include <algorithm>

namespace tierloam::reckoning {

using namespace model;

namespace {

constexpr int horizon = 365;
constexpr double declineTo = 0.85;           ///< of the present median colony, 60 days on
constexpr int declineAfter = 60;
constexpr double mostFreshPerArea = 0.7;     ///< kg fresh a day per m² of tray area in use
constexpr double overfedChance = 0.05;       ///< chance of air below 0.7 or a bed above 30 °C within a week
constexpr double overfedAir = 0.7;
constexpr double overfedWarmth = 30.0;       ///< °C

std::vector<double> perMember(const Ensemble& stack, double (*read)(const MemberOf&))
{
    std::vector<double> values(static_cast<std::size_t>(stack.members()));
    for (int i = 0; i < stack.members(); ++i) values[static_cast<std::size_t>(i)] = read(MemberOf{stack, i});
    return values;
}

double intoSump(const MemberOf& m) { return m.block.stack.intoSump[m.lane]; }
double sump(const MemberOf& m) { return m.block.stack.sump[m.lane]; }

}

/// All members go on under usual care; the present standing stays as it is.
bool StackRun::forecast(StackReckoning& result, std::stop_token stop)
{
    const UsualCare care = usualCare(entries_, history_, deeds_, options_.asOf);
    result.record.usualFeedKgPerWeek = care.medianFeedKg;
    const Population today = members_;
    const std::vector<double> sumpNow = perMember(members_.stack, sump);
    const std::vector<double> sumpInNow = perMember(members_.stack, intoSump);
    const std::vector<double> colonyNow = perMember(members_.stack, colony);
    std::vector<int> sumpFull(sumpNow.size(), never);
    std::vector<int> trayFull(sumpNow.size(), never);
    if (result.record.spigotShut)
        for (std::size_t i = 0; i < sumpNow.size(); ++i)
            if (sumpNow[i] >= members_.stack.sumpCapacity) sumpFull[i] = last_;
    const int top = members_.stack.topToFeed();
    const int topBatch = top >= 0 ? members_.stack.shapes[static_cast<std::size_t>(top)].batch : 0;
    if (!care.given.empty() && top >= 0) {
        const UsualCare::Weekly& food = care.given.front();
        const double volume = volumeOfDry(food.what.softening, food.what.bulk * food.what.dryShare) * food.what.dryShare;
        std::vector<double> room(sumpNow.size());
        for (int i = 0; i < members_.stack.members(); ++i) room[static_cast<std::size_t>(i)] = std::max(model::room(MemberOf{members_.stack, i}, top), 0.0) / volume;
        if (volume > 0.0) result.forecast.roomTopTrayFreshKg = quantile(room, members_.shares(), 0.5);
    }

    for (int ahead = 1; ahead <= horizon; ++ahead) {
        if (stop.stop_requested()) return false;
        const int day = last_ + ahead;
        if (ahead % 7 == 1) {
            const std::vector<char> cut = careForAWeek(members_.stack, care);
            for (std::size_t i = 0; i < cut.size(); ++i)
                if (cut[i] != 0 && trayFull[i] == never) trayFull[i] = day;
        }
        passDay(day);
        if (result.record.spigotShut) {
            const std::vector<double> in = perMember(members_.stack, intoSump);
            for (std::size_t i = 0; i < in.size(); ++i)
                if (sumpFull[i] == never && sumpNow[i] + in[i] - sumpInNow[i] >= members_.stack.sumpCapacity) sumpFull[i] = day;
        }
        if (ahead == 7) {
            std::vector<double> in = perMember(members_.stack, intoSump);
            for (std::size_t i = 0; i < in.size(); ++i) in[i] -= sumpInNow[i];
            result.forecast.drainedExpectedLPerWeek = band(in, members_.shares());
        }
        if (ahead == declineAfter) {
            std::vector<double> then = perMember(members_.stack, colony);
            result.forecast.colonyMedianIn60DaysKg = quantile(then, members_.shares(), 0.5);
        }
        if (ahead % 7 == 0) result.forecast.days.push_back(estimate(members_.stack, members_.week, members_.shares(), dayAt(day), day));
    }

    const Day start = *history_.firstBedding;
    const auto asDates = [&](const std::vector<int>& firstDays) { return dates(firstDays, members_.shares(), start, last_ + horizon); };
    for (TrayEstimate& tray : result.now.slots) tray.readyOn = asDates(members_.firsts[tray.batch].ready);
    if (topBatch != 0) result.forecast.turnOn = asDates(members_.firsts[topBatch].filled);
    result.forecast.turnLikelyOn = result.forecast.turnOn.p50;
    result.forecast.sumpFullOn = asDates(sumpFull);
    result.forecast.topTrayFullOn = asDates(trayFull);
    if (topBatch != 0) {
        const FirstDays& bottom = members_.firsts[today.stack.shapes.front().batch];
        const FirstDays& filling = members_.firsts[topBatch];
        std::vector<char> both(sumpNow.size());
        for (std::size_t i = 0; i < both.size(); ++i) both[i] = bottom.ready[i] <= last_ + 14 && filling.filled[i] <= last_ + 14 ? 1 : 0;
        result.forecast.readyAndTurnWithin14Days = probability(both, members_.shares());
    }
    // A bottom tray left although it is ready costs colony, and a full top tray has nowhere to go: overdue without waiting 30 days.
    if (!result.now.slots.empty() && result.now.slots.front().state == TrayState::ready && result.record.spareTrays == 0) {
        const double now = result.now.colonyKg.p50;
        const TrayEstimate& highest = result.now.slots[static_cast<std::size_t>(std::max(top, 0))];
        const bool declines = now > 0.0 && result.forecast.colonyMedianIn60DaysKg <= declineTo * now;
        const bool full = top > 0 && highest.depthCm >= result.record.trayHeightCm - 1.0;
        if (declines || full) result.now.slots.front().state = TrayState::overdue;
    }
    result.history.back() = result.now;

    members_ = today;
    result.forecast.feedUsualKg = care.medianFeedKg;
    feedLimits(result);
    return true;
}

/// Next week's feeding: what keeps the median member's ration at 1, and the most that 5 % of the members at most do not bear.
void StackRun::feedLimits(StackReckoning& result) const
{
    Forecast& to = result.forecast;
    const int top = members_.stack.topToFeed();
    const auto kitchen = deeds_.portion(std::string{journal::defaultFood}, Amount{1.0, Unit::kg});
    if (top < 0 || !kitchen) {
        to.feedUsualKg = 0.0;
        return;
    }
    const auto overfedBy = [&](double kg) {
        Ensemble trial = members_.stack;
        Deeds::giveWithinRoom(trial, top, kitchen->what, kg, true);
        std::vector<char> overfed(static_cast<std::size_t>(trial.members()), 0);
        for (int ahead = 1; ahead <= 7; ++ahead) {
            advanceDay(trial, forcingOf(last_ + ahead));
            for (int i = 0; i < trial.members(); ++i) {
                const MemberOf m{trial, i};
                if (m.tray(top).air[m.lane] < overfedAir || m.block.stack.bed[m.lane] > overfedWarmth) overfed[static_cast<std::size_t>(i)] = 1;
            }
        }
        return probability(overfed, members_.shares());
    };
    const double most = 7.0 * mostFreshPerArea * members_.stack.area * std::max(members_.stack.trays(), 1);
    const double bound = std::min(most, to.roomTopTrayFreshKg.value_or(most));
    double bearable = 0.0;
    if (overfedBy(bound) <= overfedChance) {
        bearable = bound;
    } else {
        double low = 0.0;
        double high = bound;
        for (int halving = 0; halving < 5; ++halving) {
            const double middle = 0.5 * (low + high);
            (overfedBy(middle) <= overfedChance ? low : high) = middle;
        }
        bearable = low;
    }
    to.feedHighKg = bearable;

    std::vector<double> wanted(static_cast<std::size_t>(members_.stack.members()));
    std::vector<double> need;
    const int days = members_.week.gain(PastWeek::maintenance, 7, need);
    for (int i = 0; i < members_.stack.members(); ++i) {
        const MemberOf m{members_.stack, i};
        const double perFresh = kitchen->what.dryShare * (1.0 - m.parameter(Parameter::respiredSoftening)) * m.parameter(Parameter::assimilation);
        const double upkeep = days > 0 ? need[static_cast<std::size_t>(i)] / days * 7.0 : 0.0;
        wanted[static_cast<std::size_t>(i)] = perFresh > 0.0 ? upkeep / perFresh : 0.0;
    }
    to.feedLowKg = std::min(quantile(wanted, members_.shares(), 0.5), to.feedHighKg);
    to.feedUsualKg = std::min(to.feedUsualKg, to.feedHighKg);
}

}
