#include "core/model/pot.h"

#include "core/model/acts.h"
#include "core/model/elementary.h"
#include "core/model/masses.h"
#include "core/model/measures.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace tierloam::model {

namespace {

// Of manure, judgement: nothing in a pot's growth depends on them, but the pools of carbon and nitrogen must not run empty.
constexpr double feedCarbon = 0.42;
constexpr double feedNitrogen = 0.02;

void putSoftened(Ensemble::Block& block, int m, double dry)
{
    TrayBlock& tray = block.trays[0];
    tray.softened[m] += dry;
    tray.carbon[m] += feedCarbon * dry;
    tray.nitrogen[m] += feedNitrogen * dry;
    tray.input[m] += dry;
    block.stack.putIn[m] += dry;
}

/// Takes up to `dry` kg of softened matter and castings as they lie; returns what was there to be taken.
double takeMixed(Ensemble::Block& block, int m, double dry)
{
    TrayBlock& tray = block.trays[0];
    const double there = tray.softened[m] + tray.castings[m];
    if (there <= 0.0) return 0.0;
    const double share = least(dry / there, 1.0);
    for (Members* pool : {&tray.softened, &tray.castings, &tray.carbon, &tray.nitrogen, &tray.salts, &tray.water}) (*pool)[m] -= (*pool)[m] * share;
    block.stack.takenOut[m] += there * share;
    return there * share;
}

}

LaboratoryPot::LaboratoryPot(PotSetting setting, Ensemble members)
    : setting_{std::move(setting)}, ensemble_{std::move(members)}, feedRemoved_(static_cast<std::size_t>(ensemble_.members()), 0.0), day_{setting_.firstDay}
{
    ensemble_.noisy = false;
    ensemble_.area = setting_.area;
    for (Ensemble::Block& block : ensemble_.blocks) std::fill(std::begin(block.stack.bed), std::end(block.stack.bed), setting_.temperature);
    addTray(ensemble_, 1, 1, 0);
    const double each = std::max(setting_.wormMass, smallestWorm); // so that the number holds, by which cocoons and mean mass are told
    stock(ensemble_, 0, each * setting_.worms, setting_.worms, false);
    for (PotFeeding& feeding : setting_.feedings) feeding.day = std::max(feeding.day, setting_.firstDay);
}

void LaboratoryPot::feedOfToday()
{
    for (int b = 0; b < static_cast<int>(ensemble_.blocks.size()); ++b) {
        Ensemble::Block& block = ensemble_.blocks[static_cast<std::size_t>(b)];
        for (int m = 0; m < lanes; ++m) {
            for (const PotFeeding& feeding : setting_.feedings) {
                if (feeding.day != day_) continue;
                if (feeding.dry >= 0.0) putSoftened(block, m, feeding.dry);
                else feedRemoved_[static_cast<std::size_t>(b) * lanes + static_cast<std::size_t>(m)] += takeMixed(block, m, -feeding.dry);
            }
            if (setting_.ample) putSoftened(block, m, greatest(ampleFeed * setting_.area - block.trays[0].softened[m], 0.0));
        }
    }
}

void LaboratoryPot::liveUntil(int day)
{
    for (; day_ < day; ++day_) {
        feedOfToday();
        DayForcing forcing;
        forcing.day = day_ - setting_.firstDay;
        forcing.usualTemperature = setting_.temperature;
        forcing.holdTemperature = forcing.holdWater = forcing.noBackgroundDeath = true;
        forcing.hatchlingsRemoved = setting_.hatchlingsRemoved;
        advanceDay(ensemble_, forcing);
    }
}

double LaboratoryPot::worms(int member) const { return model::worms(MemberOf{ensemble_, member}); }

double LaboratoryPot::meanMass(int member) const
{
    const double number = worms(member);
    return number > 0.0 ? colony(MemberOf{ensemble_, member}) / number : 0.0;
}

double LaboratoryPot::cocoonsLaid(int member) const
{
    // Laid = still there + ended; every ended cocoon put its share of hatchlings of known mass among what was taken out.
    const MemberOf of{ensemble_, member};
    const double young = of.parameter(Parameter::youngPerCocoon);
    const double hatchlingsOfCocoon = dryPerLive * of.parameter(Parameter::hatchSuccess) * young * std::min(hatchlingMass, cocoonMass / young);
    const double hatchlings = of.block.stack.takenOut[of.lane] - feedRemoved_[static_cast<std::size_t>(member)];
    return cocoons(of, 0) + hatchlings / hatchlingsOfCocoon;
}

double LaboratoryPot::softened(int member) const { return MemberOf{ensemble_, member}.tray(0).softened[member % lanes]; }

double LaboratoryPot::ledger(int member) const { return ledgerError(MemberOf{ensemble_, member}); }

}
