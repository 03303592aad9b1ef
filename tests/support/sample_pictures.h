#pragma once

#include "tests/support/sample_reckoning.h"
#include "ui/drawing/stack_picture.h"

/// Pictures of the sample's stacks, made without the shelf's own model, so that drawings are tested apart from it.
namespace tierloam::tests {

inline std::vector<drawing::StackPicture> samplePictures()
{
    std::vector<drawing::StackPicture> pictures;
    const std::shared_ptr<const reckoning::Reckoning> sample = sampleReckoning();
    for (const reckoning::StackReckoning& stack : sample->stacks) {
        drawing::StackPicture picture;
        picture.stand = stack.name == "Cellar" ? journal::Stand::base : journal::Stand::legs;
        for (const reckoning::TrayEstimate& tray : stack.now.slots) {
            drawing::TrayPicture drawn;
            drawn.slot = tray.slot;
            drawn.batch = tray.batch;
            drawn.ageDays = tray.ageDays;
            drawn.strata = tray.strata;
            drawn.wormsKg = tray.wormsKgPerM2.p50 * 0.16;
            drawn.drying = tray.state == reckoning::TrayState::drying;
            drawn.ageLabel = QStringLiteral("%1 d").arg(tray.ageDays);
            drawn.labels = {QStringLiteral("%1 : 1").arg(tray.feedToCast.p50, 0, 'g', 2), QStringLiteral("working")};
            if (tray.slot != static_cast<int>(stack.now.slots.size()) || drawn.drying) drawn.ready = drawing::Readiness{tray.readyProbability, tray.state};
            picture.lidOn = picture.lidOn && !drawn.drying;
            picture.trays.push_back(drawn);
        }
        picture.sump.levelL = stack.now.sumpL.p50;
        picture.sump.spigot = stack.record.spigotShut ? journal::Spigot::shut : journal::Spigot::open;
        picture.sump.levelLabel = QStringLiteral("%1 L of 4").arg(stack.now.sumpL.p50);
        picture.sump.labels = {stack.record.spigotShut ? QStringLiteral("spigot shut") : QStringLiteral("spigot open")};
        pictures.push_back(picture);
    }
    return pictures;
}

}
