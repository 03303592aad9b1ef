#pragma once

#include "ui/drawing/palette.h"
#include "ui/drawing/stack_picture.h"
#include "ui/drawing/type.h"

#include <QImage>
#include <QString>

#include <span>
#include <string_view>
#include <vector>

/// Stacks at each stage of their turns, invented, drawn by the routine that draws the shelf.
namespace tierloam::handbook {

struct Stage {
    QString caption;                                ///< what can be seen; also for those who do not see it
    std::vector<drawing::StackPicture> stacks;      ///< side by side
};

/// Empty without stacks for an unknown name.
Stage stageNamed(std::string_view name);
/// All names, for tests.
std::span<const std::string_view> stageNames();

/// The stage drawn at most `width` wide and about `height` high, in logical pixels, for a screen of that pixel ratio.
QImage drawStage(const Stage& stage, double width, double height, double pixelRatio, const drawing::Palette& palette, const drawing::Type& type, bool rightToLeft);

}
