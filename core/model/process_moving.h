#pragma once

#include "core/model/process_air.h"

namespace tierloam::model {
namespace {

/// Shares of the worms relax with a time constant of 3 d towards
///     0.15 + (H/A)/(H/A + 0.3) + 0.4·(F+H)/(F+H+C)     (last term 0.4 in an empty tray)
/// normalised over trays not drying. Those of a drying tray leave at s/τ (τ × 1.5 when dark or wetter than field capacity)
/// and spread by the same preference. Judgement. Shares sum to 1 before and after. Reads unsoftenedSums().
inline void moveWorms(StepContext& at)
{
    const int trays = at.trayCount;
    int open = 0;
    for (int t = 0; t < trays; ++t) open += at.shapes[t].drying ? 0 : 1;
    if (open == 0) return;
    const double days = at.forcing.days;
    const double follow = 1.0 - exponential(-days / 3.0);
    const double half = 0.3 * at.forcing.area;
    constexpr double wetterThanHeld = 1.05; // where ingestion begins to suffer; a film beyond field capacity is no hindrance
    const double light = at.forcing.lidOff ? 1.0 : 1.5;
    const Members& timeConstant = at.parameters.value[rowLightDrying];
    Members all, leaving, staying;
    TIERLOAM_EACH_MEMBER(m) all[m] = leaving[m] = staying[m] = 0.0;
    for (int t = 0; t < trays; ++t) {
        TrayBlock& tray = at.trays[t];
        if (at.shapes[t].drying) {
            TIERLOAM_EACH_MEMBER(m) {
                const double slow = tray.water[m] > wetterThanHeld * tray.capacity[m] ? 1.5 : light;
                const double gone = tray.share[m] * lossFactor(days, timeConstant[m] * slow);
                tray.share[m] -= gone;
                leaving[m] += gone;
            }
            continue;
        }
        TIERLOAM_EACH_MEMBER(m) {
            const double fresh = tray.unsoftenedDry[m] + tray.softened[m];
            const double whole = fresh + tray.castings[m];
            const double saturation = tray.softened[m] + half;
            // Both quotients with one division; an empty tray counts as all fresh.
            const double freshPart = whole > nothing ? fresh : 1.0;
            const double wholePart = whole > nothing ? whole : 1.0;
            tray.preference[m] = 0.15 + (tray.softened[m] * wholePart + 0.4 * freshPart * saturation) / (saturation * wholePart);
            all[m] += tray.preference[m];
            staying[m] += tray.share[m];
        }
    }
    // Of the wanted share of those who stay, and of those who leave, per unit of preference.
    TIERLOAM_EACH_MEMBER(m) all[m] = (staying[m] * follow + leaving[m]) / all[m];
    for (int t = 0; t < trays; ++t) {
        if (at.shapes[t].drying) continue;
        TrayBlock& tray = at.trays[t];
        TIERLOAM_EACH_MEMBER(m) tray.share[m] += tray.preference[m] * all[m] - tray.share[m] * follow;
    }
}

}
}
