#include "core/guide/member_state.h"

#include "core/model/measures.h"
#include "core/reckoning/outlook.h"

#include <algorithm>

namespace tierloam::guide {

namespace {

/// The value of a band at a share of the distribution, straight between and beyond its three.
double at(const reckoning::Band& band, double share)
{
    return share < 0.5 ? band.p50 + (share - 0.5) / 0.45 * (band.p50 - band.p05) : band.p50 + (share - 0.5) / 0.45 * (band.p95 - band.p50);
}

std::vector<MemberState> fromBands(const reckoning::StackReckoning& stack)
{
    std::vector<MemberState> states;
    for (int i = 1; i < 20; ++i) {
        const double share = i / 20.0;
        MemberState state;
        state.weight = 1.0 / 19.0;
        state.driest = 10;
        for (const reckoning::TrayEstimate& tray : stack.now.slots) {
            if (tray.state == reckoning::TrayState::drying) continue;
            state.wettest = std::max(state.wettest, at(tray.waterShare, share));
            state.driest = std::min(state.driest, at(tray.waterShare, share));
            state.air = std::min(state.air, tray.air);
        }
        if (state.driest > 9) state.driest = 1;
        state.sumpShare = stack.record.sumpCapacityL > 0 ? at(stack.now.sumpL, share) / stack.record.sumpCapacityL : 0;
        state.bed = at(stack.now.binTempC, share);
        state.colony = std::max(0.0, at(stack.now.colonyKg, share));
        state.ration = at(stack.now.ration, share);
        states.push_back(state);
    }
    return states;
}

}

std::vector<MemberState> memberStates(const reckoning::StackReckoning& stack)
{
    if (!stack.present || stack.present->members.stack.members() == 0) return fromBands(stack);
    const reckoning::Population& members = stack.present->members;
    const std::vector<double> weights = members.weights.normalised();
    const int top = members.stack.topToFeed();
    const reckoning::Band& ration = stack.now.ration;
    std::vector<MemberState> states;
    states.reserve(weights.size());
    for (int m = 0; m < members.stack.members(); ++m) {
        const model::MemberOf member{members.stack, m};
        MemberState state;
        state.weight = weights[static_cast<std::size_t>(m)];
        state.driest = 10;
        for (int slot = 0; slot < members.stack.trays(); ++slot) {
            if (members.stack.shapes[static_cast<std::size_t>(slot)].drying) continue;
            const double water = model::waterShare(member, slot);
            state.wettest = std::max(state.wettest, water);
            state.driest = std::min(state.driest, water);
            state.air = std::min(state.air, member.tray(slot).air[member.lane]);
        }
        if (state.driest > 9) state.driest = 1;
        if (top >= 0) state.softened = member.tray(top).softened[member.lane] / members.stack.area;
        state.sumpShare = members.stack.sumpCapacity > 0 ? member.block.stack.sump[member.lane] / members.stack.sumpCapacity : 0;
        state.bed = member.block.stack.bed[member.lane];
        state.colony = model::colony(member);
        state.ration = ration.p50; // a week's mean, which the reckoning keeps for all members together
        states.push_back(state);
    }
    return states;
}

}
