#include "core/guide/symptoms.h"

#include "core/guide/member_state.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>

namespace tierloam::guide {

namespace {

using reckoning::Band;

constexpr std::size_t causeCount = static_cast<std::size_t>(Cause::count);
constexpr std::size_t symptomCount = static_cast<std::size_t>(Symptom::count);

//                                       overfed wet  dry  sump  hot  cold hungry unsuit uncov lowC  young crowd disturbed
constexpr double prior[symptomCount][causeCount] = {
    /* smell         */ {0.30, 0.20, 0.00, 0.12, 0.03, 0.00, 0.00, 0.15, 0.05, 0.15, 0.00, 0.00, 0.00},
    /* flies         */ {0.25, 0.08, 0.00, 0.00, 0.04, 0.00, 0.00, 0.20, 0.38, 0.05, 0.00, 0.00, 0.00},
    /* mites         */ {0.25, 0.30, 0.00, 0.03, 0.00, 0.00, 0.00, 0.27, 0.10, 0.05, 0.00, 0.00, 0.00},
    /* ants          */ {0.05, 0.00, 0.55, 0.00, 0.05, 0.00, 0.00, 0.15, 0.20, 0.00, 0.00, 0.00, 0.00},
    /* worms leaving */ {0.18, 0.15, 0.10, 0.05, 0.13, 0.02, 0.05, 0.05, 0.00, 0.02, 0.00, 0.05, 0.20},
    /* worms dying   */ {0.18, 0.12, 0.18, 0.04, 0.20, 0.10, 0.05, 0.10, 0.00, 0.03, 0.00, 0.00, 0.00},
    /* mould         */ {0.28, 0.05, 0.20, 0.00, 0.00, 0.05, 0.00, 0.12, 0.20, 0.00, 0.10, 0.00, 0.00},
    /* sour bed      */ {0.35, 0.20, 0.00, 0.05, 0.00, 0.00, 0.00, 0.30, 0.00, 0.10, 0.00, 0.00, 0.00},
    /* heat          */ {0.40, 0.00, 0.00, 0.00, 0.40, 0.00, 0.00, 0.00, 0.00, 0.20, 0.00, 0.00, 0.00},
    /* standing water*/ {0.12, 0.44, 0.00, 0.44, 0.00, 0.00, 0.00, 0.00, 0.00, 0.00, 0.00, 0.00, 0.00},
    /* few worms     */ {0.05, 0.05, 0.13, 0.00, 0.10, 0.10, 0.17, 0.05, 0.00, 0.00, 0.20, 0.15, 0.00},
    /* no castings   */ {0.08, 0.03, 0.15, 0.00, 0.03, 0.20, 0.17, 0.00, 0.00, 0.00, 0.34, 0.00, 0.00},
};

/// 0 at `from` and beyond it, 1 at `to` and beyond it, a smooth rise between.
double ramp(double x, double from, double to)
{
    const double t = std::clamp((x - from) / (to - from), 0.0, 1.0);
    return t * t * (3.0 - 2.0 * t);
}

/// How much likelier a state is under a cause than in general: from `against` where nothing shows to `in favour` where all does.
constexpr double against = 0.04, inFavour = 14.0;
/// Of 100 symptoms, those that come of something not listed here.
constexpr double elsewhereBefore = 0.20;

double likelihood(Cause cause, double signs)
{
    if (cause == Cause::young && signs <= 0.0) return 0.0; // the journal's own days: nothing unwritten makes an old stack young
    return against * std::pow(inFavour / against, signs);
}

struct Seen {
    const MemberState& member;
    const Circumstances& journal;
    const reckoning::StackReckoning& stack;
};

double fedPerWorms(const Seen& s) { return s.member.colony > 0.005 ? s.journal.fedKg14 / 14.0 / s.member.colony : 0.0; }
double bottomAge(const reckoning::StackReckoning& stack) { return stack.now.slots.empty() ? 0 : stack.now.slots.front().ageDays; }
double density(const Seen& s)
{
    const double floor = s.stack.record.areaM2 * static_cast<double>(std::max<std::size_t>(1, s.stack.now.slots.size()));
    return s.member.colony / floor;
}

constexpr double fullWitness = 3.0; ///< feedings of which the covers tell a habit: one alone tells a third of it. Ours

/// How plainly a cause shows, 0 to 1. Thresholds are ours, near to where the model starts to do harm.
double signs(Cause cause, const Seen& s)
{
    switch (cause) {
    case Cause::overfed: return std::max({ramp(fedPerWorms(s), 0.25, 0.7), ramp(1.0 - s.member.air, 0.08, 0.35), ramp(s.member.softened, 0.9, 2.5)});
    case Cause::tooWet: return std::max(ramp(s.member.wettest, 1.0, 1.07), s.journal.squeeze ? ramp(*s.journal.squeeze, 3, 5) : 0.0);
    case Cause::tooDry: return std::max(ramp(-s.member.driest, -0.85, -0.60), s.journal.squeeze ? ramp(-*s.journal.squeeze, -3, -1) : 0.0);
    case Cause::sumpFull: return s.stack.record.spigotShut ? ramp(s.member.sumpShare, 0.75, 0.98) : 0.0;
    case Cause::tooHot: return std::max(ramp(s.member.bed, 27.5, 31.5), s.journal.bedCelsius ? ramp(*s.journal.bedCelsius, 27.5, 31.5) : 0.0);
    case Cause::tooCold: return std::max(ramp(-s.member.bed, -13.0, -8.0), s.journal.bedCelsius ? ramp(-*s.journal.bedCelsius, -13.0, -8.0) : 0.0);
    case Cause::hungry: {
        const double gap = std::max(5.0, s.stack.record.medianFeedGapDays);
        const double idle = s.journal.daysSinceFed ? *s.journal.daysSinceFed / gap : s.journal.ageDays > 14 ? 9.0 : 0.0;
        return std::max(ramp(idle, 2.0, 4.5), 0.8 * ramp(-s.member.ration, -0.9, -0.5));
    }
    case Cause::unsuitable: return ramp(s.journal.doubtfulShare, 0.03, 0.20);
    case Cause::uncovered: return std::min(1.0, s.journal.feedings21 / fullWitness) * ramp(s.journal.uncoveredShare, 0.30, 0.90);
    case Cause::lowCarbon: return s.journal.carbonToNitrogen ? ramp(-*s.journal.carbonToNitrogen, -26.0, -18.0) : 0.0;
    case Cause::young: return ramp(-s.journal.ageDays, -80.0, -35.0);
    case Cause::crowded: return std::max(ramp(density(s), 1.8, 3.2), ramp(bottomAge(s.stack), 330.0, 480.0));
    case Cause::disturbed: return s.journal.daysSinceDisturbed ? ramp(-*s.journal.daysSinceDisturbed, -8.0, -3.0) : 0.0;
    case Cause::count: break;
    }
    return 0.0;
}

Band bandOf(const std::vector<MemberState>& members, const std::function<double(const MemberState&)>& read)
{
    std::vector<std::pair<double, double>> values;
    values.reserve(members.size());
    for (const MemberState& member : members) values.emplace_back(read(member), member.weight);
    std::ranges::sort(values);
    const auto quantile = [&](double share) {
        double sum = 0;
        for (const auto& [value, weight] : values) {
            sum += weight;
            if (sum >= share) return value;
        }
        return values.empty() ? 0.0 : values.back().first;
    };
    return {quantile(0.05), quantile(0.50), quantile(0.95)};
}

Band outright(double value) { return {value, value, value}; }

int wettestSlot(const reckoning::StackReckoning& stack, bool wet)
{
    const auto& slots = stack.now.slots;
    int found = 0;
    for (const reckoning::TrayEstimate& tray : slots) {
        if (tray.state == reckoning::TrayState::drying) continue;
        const auto better = [&] { const double other = slots[static_cast<std::size_t>(found) - 1].waterShare.p50; return wet ? tray.waterShare.p50 > other : tray.waterShare.p50 < other; };
        if (found == 0 || better()) found = tray.slot;
    }
    return found;
}

std::vector<Evidence> evidenceFor(Cause cause, const std::vector<MemberState>& members, const Circumstances& journal, const reckoning::StackReckoning& stack)
{
    std::vector<Evidence> list;
    const auto add = [&](Quantity quantity, const Band& value, int slot, bool speaksFor) { list.push_back({quantity, value, slot, speaksFor}); };
    const auto members_ = [&](auto read) { return bandOf(members, read); };
    const int top = stack.now.slots.empty() ? 0 : static_cast<int>(stack.now.slots.size());
    switch (cause) {
    case Cause::overfed: {
        const Band fed = members_([&](const MemberState& m) { return m.colony > 0.005 ? journal.fedKg14 / 14.0 / m.colony : 0.0; });
        const Band air = members_([](const MemberState& m) { return m.air; });
        const Band soft = members_([](const MemberState& m) { return m.softened; });
        add(Quantity::fedPerWorms, fed, 0, fed.p50 > 0.45);
        add(Quantity::air, air, 0, air.p50 < 0.8);
        add(Quantity::softened, soft, top, soft.p50 > 1.5);
        break;
    }
    case Cause::tooWet: {
        const Band water = members_([](const MemberState& m) { return m.wettest; });
        add(Quantity::waterShareMost, water, wettestSlot(stack, true), water.p50 > 1.03);
        if (journal.squeeze) add(Quantity::squeeze, outright(*journal.squeeze), 0, *journal.squeeze >= 4);
        break;
    }
    case Cause::tooDry: {
        const Band water = members_([](const MemberState& m) { return m.driest; });
        add(Quantity::waterShareLeast, water, wettestSlot(stack, false), water.p50 < 0.72);
        if (journal.squeeze) add(Quantity::squeeze, outright(*journal.squeeze), 0, *journal.squeeze <= 2);
        break;
    }
    case Cause::sumpFull: {
        const Band level = members_([](const MemberState& m) { return m.sumpShare; });
        add(Quantity::sumpShare, level, 0, stack.record.spigotShut && level.p50 > 0.87);
        break;
    }
    case Cause::tooHot:
    case Cause::tooCold: {
        if (journal.bedCelsius) add(Quantity::bedRead, outright(*journal.bedCelsius), 0, cause == Cause::tooHot ? *journal.bedCelsius > 29.5 : *journal.bedCelsius < 10.5);
        const Band bed = members_([](const MemberState& m) { return m.bed; });
        add(Quantity::bedCelsius, bed, 0, cause == Cause::tooHot ? bed.p50 > 29.5 : bed.p50 < 10.5);
        break;
    }
    case Cause::hungry:
        if (journal.daysSinceFed) add(Quantity::daysSinceFed, outright(*journal.daysSinceFed), 0, *journal.daysSinceFed > 3 * std::max(5.0, stack.record.medianFeedGapDays));
        add(Quantity::ration, stack.now.ration, 0, stack.now.ration.p50 < 0.7);
        break;
    case Cause::unsuitable: add(Quantity::doubtfulShare, outright(journal.doubtfulShare), 0, journal.doubtfulShare > 0.1); break;
    case Cause::uncovered:
        if (journal.feedings21 > 0) add(Quantity::uncoveredShare, outright(journal.uncoveredShare), 0, journal.uncoveredShare > 0.6);
        break;
    case Cause::lowCarbon:
        if (journal.carbonToNitrogen) add(Quantity::carbonToNitrogen, outright(*journal.carbonToNitrogen), 0, *journal.carbonToNitrogen < 22);
        break;
    case Cause::young: add(Quantity::ageDays, outright(journal.ageDays), 0, journal.ageDays < 57); break;
    case Cause::crowded: {
        const double floor = stack.record.areaM2 * static_cast<double>(std::max<std::size_t>(1, stack.now.slots.size()));
        const Band crowd = members_([&](const MemberState& m) { return m.colony / floor; });
        add(Quantity::wormsPerArea, crowd, 0, crowd.p50 > 2.5);
        add(Quantity::bottomAge, outright(bottomAge(stack)), 1, bottomAge(stack) > 400);
        break;
    }
    case Cause::disturbed:
        if (journal.daysSinceDisturbed) add(Quantity::daysSinceDisturbed, outright(*journal.daysSinceDisturbed), 0, *journal.daysSinceDisturbed <= 5);
        break;
    case Cause::count: break;
    }
    std::ranges::stable_sort(list, [](const Evidence& a, const Evidence& b) { return a.speaksFor > b.speaksFor; });
    return list;
}

}

std::string_view eventWord(Symptom symptom)
{
    constexpr std::array<std::string_view, symptomCount> words{"smell", "flies", "mites", "ants", "escape", "dead worms", "mould", "sour bed", "heat", "standing water", "few worms", "no castings"};
    return words[static_cast<std::size_t>(symptom)];
}

double priorOf(Symptom symptom, Cause cause) { return prior[static_cast<std::size_t>(symptom)][static_cast<std::size_t>(cause)]; }

Ranking rankCauses(Symptom symptom, const reckoning::StackReckoning& stack, const Circumstances& circumstances)
{
    const std::vector<MemberState> members = memberStates(stack);
    Ranking ranking;
    double sum = elsewhereBefore;
    for (std::size_t c = 0; c < causeCount; ++c) {
        const auto cause = static_cast<Cause>(c);
        const double before = (1.0 - elsewhereBefore) * priorOf(symptom, cause);
        if (!(before > 0)) continue;
        double likely = 0;
        for (const MemberState& member : members) likely += member.weight * likelihood(cause, signs(cause, {member, circumstances, stack}));
        ranking.causes.push_back({cause, before * likely, evidenceFor(cause, members, circumstances, stack)});
        sum += ranking.causes.back().probability;
    }
    for (Ranked& each : ranking.causes) each.probability /= sum;
    ranking.elsewhere = elsewhereBefore / sum;
    std::ranges::stable_sort(ranking.causes, std::ranges::greater{}, &Ranked::probability);
    return ranking;
}

}
