#pragma once

#include "core/model/process_air.h"

namespace tierloam::model {
namespace {

/// Shares of the worms relax with a time constant of 3 d towards
///     0.15 + (H/A)/(H/A + 0.3) + 0.4·(F+H)/(F+H+C)     (last term 0.4 in an empty tray)
/// normalised over trays not drying. Those of a drying tray leave at s/τ (τ × 1.5 when dark or wetter than field capacity)
/// and spread by the same preference. Judgement. Shares sum to 1 before and after.
inline void moveWorms(StepContext& at)
{
    const int trays = at.trayCount;
    Members all, leaving, staying;
    TIERLOAM_EACH_MEMBER(m) all[m] = leaving[m] = staying[m] = 0.0;
    const double follow = 1.0 - exponential(-at.forcing.days / 3.0);
    constexpr double wetterThanHeld = 1.05; // where ingestion begins to suffer; a film beyond field capacity is no hindrance
    const Members& timeConstant = at.parameters.value[rowLightDrying];
    int open = 0;
    for (int t = 0; t < trays; ++t) open += at.shapes[t].drying ? 0 : 1;
    if (open == 0) return;
    for (int t = 0; t < trays; ++t) {
        TrayBlock& tray = at.trays[t];
        if (at.shapes[t].drying) {
            TIERLOAM_EACH_MEMBER(m) {
                const bool slow = !at.forcing.lidOff || tray.water[m] > wetterThanHeld * tray.capacity[m];
                const double gone = tray.share[m] * lossFactor(at.forcing.days / (timeConstant[m] * (slow ? 1.5 : 1.0)));
                tray.share[m] -= gone;
                leaving[m] += gone;
            }
            continue;
        }
        Members unsoftened;
        TIERLOAM_EACH_MEMBER(m) unsoftened[m] = 0.0;
        for (int c = 0; c < softeningClasses; ++c) {
            if (at.shapes[t].weight[c] <= 0.0) continue;
            TIERLOAM_EACH_MEMBER(m) unsoftened[m] += tray.unsoftened[c][m];
        }
        TIERLOAM_EACH_MEMBER(m) {
            const double perArea = tray.softened[m] / at.forcing.area;
            const double fresh = unsoftened[m] + tray.softened[m];
            const double whole = fresh + tray.castings[m];
            const double freshness = whole > nothing ? fresh / (whole + nothing) : 1.0;
            tray.preference[m] = 0.15 + perArea / (perArea + 0.3) + 0.4 * freshness;
            all[m] += tray.preference[m];
            staying[m] += tray.share[m];
        }
    }
    for (int t = 0; t < trays; ++t) {
        if (at.shapes[t].drying) continue;
        TrayBlock& tray = at.trays[t];
        TIERLOAM_EACH_MEMBER(m) {
            const double wanted = tray.preference[m] / all[m];
            tray.share[m] += (wanted * staying[m] - tray.share[m]) * follow + leaving[m] * wanted;
        }
    }
}

}
}
