#include "core/reckoning/outlook.h"

#include "core/model/measures.h"
#include "core/reckoning/bed_year.h"

#include <algorithm>

namespace tierloam::reckoning {

using namespace model;

namespace {

constexpr int readingHolds = 14;     ///< days that a reading of the air is used …
constexpr int readingWhole = 7;      ///< … and for which it counts whole; judgement
constexpr int declineAfter = 60;
constexpr int airWatched = 14;

template <class Read>
std::vector<double> perMember(const Ensemble& stack, Read read)
{
    std::vector<double> values(static_cast<std::size_t>(stack.members()));
    for (int i = 0; i < stack.members(); ++i) values[static_cast<std::size_t>(i)] = read(MemberOf{stack, i});
    return values;
}

double intoSump(const MemberOf& m) { return m.block.stack.intoSump[m.lane]; }

/// The last thing before nobody comes by.
void leaveBehind(Ensemble& stack, const Course& course, const ChangedPlan::Leave& left)
{
    const int top = stack.topToFeed();
    if (top < 0) return;
    if (left.feedKg > 0.0) Deeds::giveWithinRoom(stack, top, course.kitchen, left.feedKg, true);
    if (left.waterL > 0.0) pour(stack, top, left.waterL);
    if (left.drain) drain(stack, std::nullopt);
}

void deedsOf(Population& members, const Course& course, const ChangedPlan& plan, Day day, int number)
{
    Ensemble& stack = members.stack;
    if (plan.leave && plan.leave->on == day) leaveBehind(stack, course, *plan.leave);
    if (plan.split && plan.split->on == day) takeWormShare(stack, plan.split->share);
    if (plan.harvestOn == day && stack.trays() > 0) harvest(stack, 0, 1.0);
    if (plan.trayAddedOn == day) {
        addTray(stack, course.batches + 1, 0, number);
        const PerMember fresh(static_cast<std::size_t>(stack.members()), course.beddingKg);
        addMatter(stack, stack.trays() - 1, course.bedding, fresh, PerMember(fresh.size(), course.bedding.dryShare), course.beddingWater, false);
    }
    members.forgetBatchesGone();
}

}

double Surroundings::usualOn(int day) const
{
    return bedOn(settings.temp.base(), settings.place, firstBedding + std::chrono::days{day}, southern);
}

DayForcing Surroundings::on(int day) const
{
    DayForcing forcing;
    forcing.day = day;
    forcing.usualTemperature = usualOn(day);
    // The season goes on since the reading, and its difference from what is usual fades: held as it was, heat would be told on the day it is there, and
    // fall away overnight.
    if (const int age = air ? day - air->first : 0; air && age <= readingHolds) {
        const double counts = std::min(1.0, static_cast<double>(readingHolds + 1 - age) / (readingHolds + 1 - readingWhole));
        forcing.airTemperature = forcing.usualTemperature + counts * (air->second - usualOn(air->first));
    }
    if (humidity && day - humidity->first <= readingHolds) forcing.relativeHumidity = humidity->second;
    forcing.spigotOpen = spigot == journal::Spigot::open;
    forcing.lidOff = !lidOn && !(lidBackOn && day >= *lidBackOn);
    return forcing;
}

std::optional<Outlook> lookAhead(Population members, const Course& course, const ChangedPlan& plan, Crew& crew, std::stop_token stop, int ahead, bool sampled, WeeklyRates* rates)
{
    Surroundings around = course.surroundings;
    if (plan.usualTemperature) around.settings.temp = celsius(*plan.usualTemperature);
    UsualCare care = plan.feedKgPerWeek ? careWith(course.care, *plan.feedKgPerWeek, course.kitchen) : course.care;
    auto nextFeed = plan.ramp.begin();
    members.forgetFirstsUndone(course.today);
    Ensemble& stack = members.stack;
    if (plan.leave && plan.leave->on <= around.firstBedding + std::chrono::days{course.today}) leaveBehind(stack, course, *plan.leave);
    const std::size_t count = static_cast<std::size_t>(stack.members());
    Outlook out;
    out.sumpFull.assign(count, never);
    out.trayFull.assign(count, never);
    out.leastAir.assign(count, 1.0);
    // An open spigot never fills the sump; of a shut one the usual drains are left out: the date is that on which it must be drained.
    const bool shut = around.spigot == journal::Spigot::shut;
    std::vector<double> sumpThen = perMember(stack, [](const MemberOf& m) { return m.block.stack.sump[m.lane]; });
    const std::vector<double> inNow = perMember(stack, intoSump);
    std::vector<double> inThen = inNow; // when the level was that
    for (std::size_t i = 0; shut && i < count; ++i)
        if (sumpThen[i] >= stack.sumpCapacity) out.sumpFull[i] = course.today;

    for (int step = 1; step <= ahead; ++step) {
        if (stop.stop_requested()) return std::nullopt;
        const int number = course.today + step;
        const Day day = around.firstBedding + std::chrono::days{number};
        deedsOf(members, course, plan, day, number);
        if (plan.leave && plan.leave->drain && plan.leave->on == day) {
            sumpThen = perMember(stack, [](const MemberOf& m) { return m.block.stack.sump[m.lane]; });
            inThen = perMember(stack, intoSump);
        }
        for (; nextFeed != plan.ramp.end() && nextFeed->from <= day; ++nextFeed) care = careWith(course.care, nextFeed->kgPerWeek, course.kitchen);
        const bool away = plan.away && day >= plan.away->first && day <= plan.away->second;
        if (care.isDue(step) && !away) {
            const std::vector<char> cut = careForAWeek(stack, care);
            for (std::size_t i = 0; i < count; ++i)
                if (cut[i] != 0 && out.trayFull[i] == never) out.trayFull[i] = number;
        }
        const DayForcing forcing = around.on(number);
        crew.each(static_cast<int>(stack.blocks.size()), [&](int b) {
            advanceDay(stack, b, forcing);
            members.noteReadiness(number, b);
            const Ensemble::Block& block = stack.blocks[static_cast<std::size_t>(b)];
            const std::size_t from = static_cast<std::size_t>(b) * lanes;
            for (std::size_t m = 0; shut && m < lanes; ++m)
                if (out.sumpFull[from + m] == never && sumpThen[from + m] + block.stack.intoSump[m] - inThen[from + m] >= stack.sumpCapacity)
                    out.sumpFull[from + m] = number;
            if (step > airWatched) return;
            for (const TrayBlock& tray : block.trays)
                for (std::size_t m = 0; m < lanes; ++m) out.leastAir[from + m] = std::min(out.leastAir[from + m], tray.air[m]);
        });
        if (sampled) members.week.note(stack);
        if (step == 7) {
            out.drainedNextWeek = perMember(stack, intoSump);
            for (std::size_t i = 0; i < count; ++i) out.drainedNextWeek[i] -= inNow[i];
        }
        if (step == 7) out.bedIn7Days = perMember(stack, [](const MemberOf& m) { return m.block.stack.bed[m.lane]; });
        if (const int top = stack.topToFeed(); step == 7 && top >= 0) out.topWaterIn7Days = perMember(stack, [top](const MemberOf& m) { return waterShare(m, top); });
        if (step == 14) out.bedIn14Days = perMember(stack, [](const MemberOf& m) { return m.block.stack.bed[m.lane]; });
        if (step == declineAfter) out.colonyIn60Days = perMember(stack, colony);
        if (sampled && step % 7 == 0) {
            out.days.push_back(estimate(stack, members.week, members.shares(), day, number, crew));
            if (rates != nullptr) {
                std::vector<double>& eaten = rates->emplace_back();
                const int over = members.week.gain(PastWeek::ingested, 7, eaten);
                for (double& kg : eaten) kg /= std::max(over, 1);
            }
        }
    }
    out.colonyAtEnd = perMember(stack, colony);
    out.firsts = std::move(members.firsts);
    return out;
}

}
