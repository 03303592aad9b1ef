#pragma once

#include "core/model/step_context.h"

namespace tierloam::model {
namespace {

/// Softening at 25 °C per day of soft, mix, coffee, paper, cardboard, wood, coir, mineral. Judgement.
inline constexpr double softeningRate[softeningClasses] = {0.25, 0.12, 0.05, 0.02, 0.015, 0.003, 0.002, 0.0};

inline int softeningScaleRow(int c) { return c < 3 ? rowSofteningFood : rowSofteningPaper; }

/// Live mass and Σ n m^(2/3) of the worms.
inline void wormSums(StepContext& at)
{
    const MassClassTable& classes = at.classes;
    TIERLOAM_EACH_MEMBER(m) {
        double biomass = 0.0;
        double appetite = 0.0;
        for (int i = 0; i < massClasses; ++i) {
            biomass += at.stack.worms[i][m] * classes.kilograms[i];
            appetite += at.stack.worms[i][m] * classes.twoThirds[i];
        }
        at.biomass[m] = biomass;
        at.appetite[m] = appetite;
    }
}

/// Cocoons of all trays.
inline void cocoonSums(StepContext& at)
{
    TIERLOAM_EACH_MEMBER(m) at.cocoons[m] = 0.0;
    for (int t = 0; t < at.trayCount; ++t) {
        const TrayBlock& tray = at.trays[t];
        TIERLOAM_EACH_MEMBER(m) at.cocoons[m] += (tray.cocoons[0][m] + tray.cocoons[1][m]) + (tray.cocoons[2][m] + tray.cocoons[3][m]);
    }
}

/// What the later processes read off F of a tray, which only softening changes. Classes that were never given are passed over.
inline void unsoftenedSums(StepContext& at, int t)
{
    TrayBlock& tray = at.trays[t];
    const TrayShape& shape = at.shapes[t];
    TIERLOAM_EACH_MEMBER(m) {
        tray.unsoftenedDry[m] = tray.unsoftenedHeld[m] = 0.0;
        tray.unsoftenedCarbon[m] = tray.unsoftenedRate[m] = 0.0;
    }
    for (int c = 0; c < softeningClasses; ++c) {
        if (shape.weight[c] <= 0.0) continue;
        const double held = shape.held[c];
        const double carbonShare = shape.carbonShare[c];
        const double rate = softeningRate[c];
        const Members& scale = at.parameters.value[softeningScaleRow(c)];
        TIERLOAM_EACH_MEMBER(m) {
            const double here = tray.unsoftened[c][m];
            tray.unsoftenedDry[m] += here;
            tray.unsoftenedHeld[m] += held * here;
            tray.unsoftenedCarbon[m] += carbonShare * here;
            tray.unsoftenedRate[m] += rate * scale[m] * here;
        }
    }
}

}
}
