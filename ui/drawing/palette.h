#pragma once

#include <QColor>

#include <array>

namespace tierloam::drawing {

/// The colours of the program by what they mean. Both themes have the same roles in the same order of weight; nothing is ever told
/// by colour alone, so each use stands beside a word or a shape. Text roles keep a contrast of 4.5 on ground, panel, rail and every
/// soft fill, outlines, rings and chart lines 3 (tests/ui/palette_test.cpp).
struct Palette {
    bool isDark = false;

    QColor ground;      ///< of pages
    QColor panel;       ///< cards, fields, buttons
    QColor rail;        ///< page list, due list
    QColor line;        ///< hairlines between panels
    QColor ink;         ///< text, lines between strata
    QColor mutedInk;    ///< ranges, reasons, axis labels
    QColor outline;     ///< outlines of trays and things, 3:1

    QColor moss;        ///< do, ready
    QColor amber;       ///< soon, drying
    QColor brick;       ///< danger, colony line
    QColor water;       ///< sump, drainage
    QColor mossSoft, amberSoft, brickSoft, waterSoft; ///< quiet fills behind text

    QColor inside;      ///< the empty inside of a tray
    QColor waterFill;   ///< the body of water; ink on it keeps 4.5
    QColor wood;        ///< lid and stand

    QColor bedding, food, softened;
    QColor worm;        ///< body of a worm, always drawn with wormEdge around it: one of the two stands off every fill
    QColor wormEdge;

    static constexpr int ageClasses = 6;
    static constexpr int ageSpanDays = 240;
    std::array<QColor, ageClasses> age; ///< castings of a batch aged 0, 48, 96, 144, 192 and 240 days or more

    /// Colour of castings in a batch of that age; between two classes it lies between their colours. Held at the ends.
    QColor ageColour(double days) const;
    /// Ink that stands off `fill` where a pattern is drawn on it.
    QColor patternOn(const QColor& fill) const;

    static const Palette& light();
    static const Palette& dark();
};

/// `share` of b in a, channel by channel.
QColor mixed(const QColor& a, const QColor& b, double share);

}
