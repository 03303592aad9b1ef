#pragma once

#include "core/journal/action.h"
#include "core/reckoning/reckoning.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

/// What the drawing of a stack shows: plain values, made by a page, a report or a portrait; no text is composed while drawing.
namespace tierloam::drawing {

/// How a tray's readiness is told: the chance, and a word beside it.
struct Readiness {
    double probability = 0;           ///< that the tray is ready, 0…1
    reckoning::TrayState state = reckoning::TrayState::working;
};

struct TrayPicture {
    int slot = 1;                     ///< 1 = bottom
    int batch = 1;                    ///< seeds the surface line and the worms, so that they stay as they are from day to day
    int ageDays = 0;                  ///< shades its castings
    std::optional<reckoning::Strata> strata; ///< absent: no estimate yet, drawn as an open question
    double wormsKg = 0;               ///< live worms in this tray; one is drawn for each `kgPerDrawnWorm`
    bool drying = false;              ///< lid off, light from above
    std::optional<Readiness> ready;   ///< absent on the tray being fed and while there is no estimate
    QString ageLabel;                 ///< "214 d"
    QStringList labels;               ///< lines under it: "0.07 : 1", "ready"
};

struct SumpPicture {
    double capacityL = 4;
    std::optional<double> levelL;     ///< absent: no estimate yet
    journal::Spigot spigot = journal::Spigot::open;
    QString levelLabel;               ///< "1.4 L of 4"
    QStringList labels;               ///< "spigot open"
};

struct StackPicture {
    double trayHeightCm = 11;
    double trayAreaM2 = 0.16;
    journal::Stand stand = journal::Stand::none;
    bool lidOn = true;
    std::vector<TrayPicture> trays;   ///< from the bottom up; empty before the first bedding
    SumpPicture sump;
};

inline constexpr double kgPerDrawnWorm = 0.05;
/// Worms drawn for that mass: rounded, but at least one where there are 5 g or more; never more than 40 in one tray.
int wormsDrawn(double wormsKg);

}
