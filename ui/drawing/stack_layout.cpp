#include "ui/drawing/stack_layout.h"

#include <algorithm>
#include <cmath>

namespace tierloam::drawing {

namespace {

constexpr double rimCm = 0.9;
constexpr double lidCm = 1.5;
constexpr double lightCm = 4.5;      // arrows above a drying tray
constexpr double sumpRimCm = 0.9;
constexpr double floorGapCm = 0.5;   // under the water, so that an empty sump still has a bottom

double standCm(journal::Stand stand)
{
    switch (stand) {
    case journal::Stand::legs: return 4.6;
    case journal::Stand::base: return 2.4;
    case journal::Stand::none: return 0.4;
    }
    return 0.4;
}

double sideCm(const StackPicture& stack) { return std::sqrt(std::max(stack.trayAreaM2, 0.001)) * 100.0; }

double sumpDepthCm(const StackPicture& stack)
{
    return stack.sump.capacityL / 1000.0 / std::max(stack.trayAreaM2, 0.001) * 100.0;
}

double overhang(double pxPerCm) { return std::clamp(0.5 * pxPerCm, 3.0, 6.0); }

bool anyDrying(const StackPicture& stack)
{
    return std::any_of(stack.trays.begin(), stack.trays.end(), [](const TrayPicture& tray) { return tray.drying; });
}

double widestCm(std::span<const StackPicture> stacks)
{
    double widest = 1;
    for (const StackPicture& stack : stacks) widest = std::max(widest, sideCm(stack));
    return widest;
}

}

double heightCm(const StackPicture& stack)
{
    const double n = static_cast<double>(stack.trays.size());
    const double lid = stack.lidOn ? lidCm : 0.0;
    const double light = anyDrying(stack) ? lightCm : 0.0;
    return standCm(stack.stand) + (sumpDepthCm(stack) + sumpRimCm + floorGapCm) * ShelfScale::sumpStretch + n * (stack.trayHeightCm + rimCm) + lid + light;
}

LabelSpace labelSpace(std::span<const StackPicture> stacks, const Type& type)
{
    LabelSpace space;
    space.ring = std::ceil(std::max(textWidth(type.smallStrong, QStringLiteral("100")) * 1.45, 28.0));
    double tray = 0, sump = 0;
    for (const StackPicture& stack : stacks) {
        for (const TrayPicture& each : stack.trays) {
            double width = textWidth(type.strong, each.ageLabel);
            for (const QString& line : each.labels) width = std::max(width, textWidth(type.small, line));
            tray = std::max(tray, width);
            space.height = std::max(space.height, lineHeight(type.strong) + static_cast<double>(each.labels.size()) * lineHeight(type.small));
        }
        sump = std::max(sump, textWidth(type.strong, stack.sump.levelLabel));
        for (const QString& line : stack.sump.labels) sump = std::max(sump, textWidth(type.small, line));
        space.sumpHeight = std::max(space.sumpHeight, lineHeight(type.strong) + static_cast<double>(stack.sump.labels.size()) * lineHeight(type.small));
    }
    space.width = std::max(tray + 6 + space.ring, sump) + 2;
    space.height = std::max(space.height, space.ring);
    return space;
}

double smallestScale(std::span<const StackPicture> stacks, const LabelSpace& labels)
{
    double scale = 2;
    for (const StackPicture& stack : stacks) {
        scale = std::max(scale, (labels.height + 2) / (stack.trayHeightCm + rimCm));
        const double sumpCm = (sumpDepthCm(stack) + sumpRimCm + floorGapCm) * ShelfScale::sumpStretch + standCm(stack.stand);
        scale = std::max(scale, labels.sumpHeight / sumpCm);
    }
    return std::min(scale, 40.0);
}

ShelfScale scaleFor(std::span<const StackPicture> stacks, const LabelSpace& labels, double boxWidth, double height)
{
    ShelfScale scale;
    double tallest = 20;
    for (const StackPicture& stack : stacks) tallest = std::max(tallest, heightCm(stack));
    scale.pxPerWidthCm = boxWidth / widestCm(stacks);
    const double fits = height / tallest;
    const double shapely = scale.pxPerWidthCm * 2.0;
    scale.pxPerCm = std::max(std::min(fits, shapely), smallestScale(stacks, labels));
    return scale;
}

double sideSpace(const ShelfScale& scale) { return std::clamp(3.2 * scale.pxPerCm, 18.0, 44.0); }

double labelGap(const ShelfScale& scale) { return overhang(scale.pxPerCm) + 9; }

StackLayout layOut(const StackPicture& stack, const ShelfScale& scale, const LabelSpace& labels, double left, double boxWidth, double ground)
{
    StackLayout layout;
    layout.ground = ground;
    const double cm = scale.pxPerCm;
    // Boxes of a small tray keep a width that its strata can be read in.
    const double width = std::clamp(sideCm(stack) * scale.pxPerWidthCm, boxWidth * 0.5, boxWidth);
    const double x = left + (boxWidth - width) / 2;
    const double over = overhang(cm);
    double y = ground;

    const double standHeight = standCm(stack.stand) * cm;
    if (stack.stand != journal::Stand::none) layout.stand = QRectF{x - over, y - standHeight, width + 2 * over, standHeight};
    y -= standHeight;

    const double sumpCm = scale.sumpPxPerCm();
    const double sumpHeight = (sumpDepthCm(stack) + sumpRimCm + floorGapCm) * sumpCm;
    layout.sump = QRectF{x, y - sumpHeight, width, sumpHeight};
    const double water = sumpDepthCm(stack) * sumpCm;
    layout.sumpInside = QRectF{x + 4, y - floorGapCm * sumpCm - water, width - 8, water};
    const double labelLeft = left + boxWidth + labelGap(scale);
    layout.sumpLabels = QRectF{labelLeft, layout.sump.top(), labels.width, sumpHeight + standHeight};
    y -= sumpHeight;

    for (std::size_t i = 0; i < stack.trays.size(); ++i) {
        StackLayout::Tray tray;
        const double height = stack.trayHeightCm * cm;
        const double rim = rimCm * cm;
        tray.box = QRectF{x, y - height, width, height};
        tray.inside = QRectF{x + 5, y - height, width - 10, height - 2};
        tray.rim = QRectF{x - over, y - height - rim, width + 2 * over, rim};
        tray.labels = QRectF{labelLeft, y - height - rim, labels.width, height + rim};
        y -= height + rim;
        layout.trays.push_back(tray);
    }
    if (stack.lidOn) {
        const double lid = lidCm * cm;
        layout.lid = QRectF{x - over - 2, y - lid, width + 2 * over + 4, lid};
        y -= lid;
    }
    if (anyDrying(stack)) y -= lightCm * cm;
    layout.top = y;
    return layout;
}

void StackLayout::mirror(double axis)
{
    const auto turned = [axis](QRectF& r) { r.moveLeft(2 * axis - r.right()); };
    for (Tray& tray : trays)
        for (QRectF* part : {&tray.box, &tray.rim, &tray.inside, &tray.labels}) turned(*part);
    for (QRectF* part : {&lid, &sump, &sumpInside, &sumpLabels, &stand}) turned(*part);
    mirrored = !mirrored;
}

int StackLayout::partAt(const QPointF& point) const
{
    for (std::size_t i = 0; i < trays.size(); ++i)
        if (trays[i].whole().contains(point) || trays[i].labels.contains(point)) return static_cast<int>(i) + 1;
    if (sump.contains(point) || sumpLabels.contains(point)) return 0;
    return -1;
}

}
