#include "ui/drawing/palette.h"

#include <algorithm>
#include <cmath>

namespace tierloam::drawing {

QColor mixed(const QColor& a, const QColor& b, double share)
{
    const double s = std::clamp(share, 0.0, 1.0);
    const auto channel = [s](int x, int y) { return static_cast<int>(std::lround(x + s * (y - x))); };
    return QColor{channel(a.red(), b.red()), channel(a.green(), b.green()), channel(a.blue(), b.blue())};
}

QColor Palette::ageColour(double days) const
{
    const double place = std::clamp(days / ageSpanDays, 0.0, 1.0) * (ageClasses - 1);
    const int below = std::min(static_cast<int>(place), ageClasses - 2);
    return mixed(age[static_cast<std::size_t>(below)], age[static_cast<std::size_t>(below) + 1], place - below);
}

QColor Palette::patternOn(const QColor& fill) const
{
    const bool darkFill = fill.lightnessF() < 0.40f;
    return darkFill ? mixed(fill, QColor{0xFF, 0xF4, 0xE0}, 0.24) : mixed(fill, QColor{0x2B, 0x24, 0x20}, 0.30);
}

const Palette& Palette::light()
{
    static const Palette palette = [] {
        Palette p;
        p.ground = QColor{0xF4, 0xEF, 0xE2};
        p.panel = QColor{0xFF, 0xFF, 0xFF};
        p.rail = QColor{0xED, 0xE6, 0xD6};
        p.line = QColor{0xD8, 0xCF, 0xBE};
        p.ink = QColor{0x2B, 0x24, 0x20};
        p.mutedInk = QColor{0x65, 0x5B, 0x53};
        p.outline = QColor{0x5A, 0x52, 0x4B};
        p.moss = QColor{0x46, 0x66, 0x30};
        p.amber = QColor{0x85, 0x54, 0x07};
        p.brick = QColor{0xA0, 0x3A, 0x27};
        p.water = QColor{0x2C, 0x64, 0x88};
        p.mossSoft = QColor{0xED, 0xF2, 0xE4};
        p.amberSoft = QColor{0xF8, 0xEE, 0xD9};
        p.brickSoft = QColor{0xF8, 0xE6, 0xE0};
        p.waterSoft = QColor{0xE2, 0xEC, 0xF2};
        p.inside = QColor{0xFB, 0xFA, 0xF4};
        p.waterFill = QColor{0x6C, 0x9F, 0xC0};
        p.wood = QColor{0x8B, 0x7D, 0x6B};
        p.bedding = QColor{0xE6, 0xDA, 0xC0};
        p.food = QColor{0xA9, 0xBE, 0x77};
        p.softened = QColor{0xB9, 0x9B, 0x6B};
        p.worm = QColor{0xF8, 0xCF, 0xC5};
        p.wormEdge = QColor{0x55, 0x12, 0x10};
        p.age = {QColor{0xEB, 0xDD, 0xB4}, QColor{0xD6, 0xB6, 0x7F}, QColor{0xB7, 0x8D, 0x58},
                 QColor{0x8F, 0x66, 0x3D}, QColor{0x65, 0x43, 0x29}, QColor{0x3A, 0x27, 0x1A}};
        return p;
    }();
    return palette;
}

const Palette& Palette::dark()
{
    static const Palette palette = [] {
        Palette p;
        p.isDark = true;
        p.ground = QColor{0x1F, 0x1B, 0x17};
        p.panel = QColor{0x2A, 0x25, 0x20};
        p.rail = QColor{0x18, 0x14, 0x11};
        p.line = QColor{0x4A, 0x42, 0x39};
        p.ink = QColor{0xF1, 0xE9, 0xDC};
        p.mutedInk = QColor{0xB5, 0xA9, 0x9B};
        p.outline = QColor{0xA7, 0x9B, 0x8E};
        p.moss = QColor{0xA3, 0xC5, 0x85};
        p.amber = QColor{0xE0, 0xAC, 0x5A};
        p.brick = QColor{0xEE, 0x95, 0x80};
        p.water = QColor{0x86, 0xBC, 0xE0};
        p.mossSoft = QColor{0x2A, 0x33, 0x21};
        p.amberSoft = QColor{0x3A, 0x2D, 0x18};
        p.brickSoft = QColor{0x40, 0x26, 0x1F};
        p.waterSoft = QColor{0x1E, 0x30, 0x3D};
        p.inside = QColor{0x12, 0x0F, 0x0C};
        p.waterFill = QColor{0x2F, 0x63, 0x88};
        p.wood = QColor{0x7D, 0x70, 0x5F};
        p.bedding = QColor{0x85, 0x7A, 0x65};
        p.food = QColor{0x64, 0x78, 0x3A};
        p.softened = QColor{0x7A, 0x61, 0x38};
        p.worm = QColor{0xF6, 0xC2, 0xB6};
        p.wormEdge = QColor{0x3A, 0x0F, 0x0D};
        // The oldest castings keep 1.6 against an empty tray: the older, the more there is to be seen of them.
        p.age = {QColor{0xA3, 0x94, 0x6A}, QColor{0x8F, 0x7A, 0x48}, QColor{0x7C, 0x62, 0x3A},
                 QColor{0x6D, 0x52, 0x34}, QColor{0x5D, 0x43, 0x2B}, QColor{0x4A, 0x36, 0x27}};
        return p;
    }();
    return palette;
}

}
