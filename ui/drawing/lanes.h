#pragma once

#include "ui/drawing/palette.h"
#include "ui/drawing/strip.h"
#include "ui/drawing/type.h"

#include <QString>

#include <optional>
#include <vector>

class QPainter;

/// A year of all stacks as lanes, one below the other on one time axis: trays as bars in their slots, windows of a harvest as bands, chosen
/// days as marks. For screen, print and pictures.
namespace tierloam::drawing {

struct Lane {
    QString name;
    QString note;                     ///< small, under the name
    int slots = 3;                    ///< rows, slot 1 at the bottom

    struct Stay { int tray = 0, slot = 1; Day from{}, to{}; int ageAtFrom = 0; bool drying = false, planned = false; };
    std::vector<Stay> stays;

    /// From a tenth of the chance to nine tenths, with the day on which it is even.
    struct Window { Day early{}, middle{}, late{}; bool lateOpen = false; };
    struct Mark {
        enum class Kind { lift, take, add };
        Kind kind{};
        Day day{};
        bool pinned = false;
        bool done = false;            ///< begun before today: cannot be moved
        std::optional<Window> window;
        bool pending = false;         ///< moved, and what follows from it is still being reckoned: hollow and dashed
    };
    std::vector<Mark> marks;

    /// When the tray at the bottom is ready, from a tenth of the chance to nine tenths: a dotted line along the lower edge, a ring on the day on which it
    /// is even. One that is ready already has a disc on today instead, as on the shelf.
    struct Ready { Day early{}, middle{}, late{}; bool middleOpen = false, lateOpen = false, already = false; QString words; };
    std::optional<Ready> ready;

    std::vector<std::pair<Day, Day>> away; ///< nobody is there for this stack alone, both included
};

struct Lanes {
    TimeAxis axis;
    Day today{};
    std::vector<Lane> lanes;
    std::vector<std::pair<Day, Day>> away;   ///< for all stacks, both included
    std::optional<std::pair<int, int>> chosen; ///< lane and mark
    std::optional<Day> dragged;       ///< where the chosen mark is held while it is dragged
    bool focused = false;
};

/// Where everything stands; made once a size, asked for by drawing, mouse and screen readers alike.
struct LanesLayout {
    QRectF axisRoom;
    QRectF plot;                      ///< x of all lanes
    std::vector<QRectF> rows;         ///< one a lane, names included
    std::vector<QRectF> heads;        ///< of each: for its name and, beneath it, its note, both broken into lines
    double rowHeight = 0;             ///< of a slot

    QRectF slotRoom(const Lanes& lanes, int lane, int slot) const;
    QRectF markRoom(const Lanes& lanes, int lane, int mark) const;
    /// Of the line that says when the bottom tray is ready; empty where there is none.
    QRectF readyRoom(const Lanes& lanes, int lane) const;
    std::optional<int> readyAt(const Lanes& lanes, QPointF at) const;
    /// Where days on which nobody is there are shaded: in all lanes, or in that of one stack alone. Empty outside the axis.
    QRectF awayRoom(const Lanes& lanes, const std::pair<Day, Day>& away) const;
    QRectF awayRoom(const Lanes& lanes, const std::pair<Day, Day>& away, int lane) const;
    /// The lane at that height.
    std::optional<int> laneAt(QPointF at) const;
    std::optional<std::pair<int, int>> markAt(const Lanes& lanes, QPointF at) const;
    Day dayAt(const Lanes& lanes, double x) const;
};

double lanesHeight(const Lanes& lanes, double width, const Type& type);
LanesLayout layOutLanes(const Lanes& lanes, const QRectF& room, const Type& type);
void drawLanes(QPainter& painter, const Lanes& lanes, const LanesLayout& layout, const Palette& palette, const Type& type);
/// What the marks and bars mean; returns the height used.
double drawLanesKey(QPainter& painter, const QRectF& room, const Palette& palette, const Type& type);

}
