#include "ui/paper/sheet_figures.h"

#include "ui/drawing/legend.h"
#include "ui/drawing/stack_drawing.h"
#include "ui/paper/look.h"
#include "ui/shelf/story_charts.h"
#include "ui/trends/chart_picture.h"
#include "ui/trends/mark_sign.h"
#include "ui/trends/trend_words.h"

#include <QGuiApplication>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace tierloam::paper {

namespace {

constexpr double stackHeightMm = 78, chartHeightMm = 34, boxWidthMm = 62, leastLegendMm = 30;

}

Figure stackFigure(const shelf::StackModel& stack, double width)
{
    const drawing::Type type = paperType();
    const std::vector<drawing::StackPicture> pictures{stack.picture};
    const drawing::LabelSpace labels = drawing::labelSpace(pictures, type);
    // The box takes what labels and legend leave, up to a size that looks right beside the text.
    const double widest = drawing::sideSpace({40, 1}) + drawing::labelGap({40, 1}) + labels.width;
    const double box = std::clamp(width - widest - dots(leastLegendMm) - dots(6), dots(20), dots(boxWidthMm));
    const double room = dots(stackHeightMm);
    const drawing::ShelfScale scale = drawing::scaleFor(pictures, labels, box, room);
    const double side = drawing::sideSpace(scale);
    const double drawn = side + box + drawing::labelGap(scale) + labels.width + dots(6);
    const double legend = width - drawn;
    const double height = std::ceil(std::max(drawing::heightCm(stack.picture) * scale.pxPerCm + 6, drawing::legendHeight(legend, type) + 2));
    const auto paint = [picture = stack.picture, labels, scale, side, box, drawn, legend, height, width](QPainter& painter, const QRectF& place) {
        const drawing::Type fonts = paperType();
        painter.save();
        painter.setRenderHint(QPainter::Antialiasing);
        painter.translate(place.topLeft());
        drawing::StackLayout layout = drawing::layOut(picture, scale, labels, side, box, height - 2);
        const bool leftToRight = QGuiApplication::layoutDirection() == Qt::LeftToRight;
        if (!leftToRight) layout.mirror(width / 2);
        drawing::drawStack(painter, picture, layout, scale, labels, paperPalette(), fonts);
        const QRectF beside{leftToRight ? drawn : 0.0, 1, legend, height};
        drawing::drawLegend(painter, beside, paperPalette(), fonts);
        painter.restore();
    };
    return {{width, height}, paint};
}

Figure storyFigure(const shelf::PartStory& story, double width)
{
    const auto paint = [story](QPainter& painter, const QRectF& place) {
        painter.save();
        painter.setRenderHint(QPainter::Antialiasing);
        shelf::drawStory(painter, place, story, paperPalette(), paperType());
        painter.restore();
    };
    return {{width, std::ceil(shelf::storyHeight(story, paperType()))}, paint};
}

Figure chartFigure(trends::Measure measure, const std::vector<trends::Series>& series, const trends::Period& period, double width)
{
    const double height = std::round(dots(chartHeightMm));
    const auto paint = [measure, series, period](QPainter& painter, const QRectF& place) {
        trends::paintChart(painter, place, *paperTheme(), measure, series, period, trends::endsOf(measure, series));
    };
    return {{width, height}, paint};
}

Figure chartKey(double width) { return chartKey(width, paperType(), paperPalette()); }

Figure chartKey(double width, const drawing::Type& type, const drawing::Palette& palette)
{
    using trends::MarkKind;
    struct Item { MarkKind kind; QString words; QPointF at; };
    const double line = drawing::lineHeight(type.small), sign = line * 0.62, gap = dots(4);
    std::vector<Item> items;
    double x = 0, y = 0;
    for (const MarkKind kind : {MarkKind::feed, MarkKind::bedding, MarkKind::turn, MarkKind::harvest, MarkKind::worms, MarkKind::weighing, MarkKind::water, MarkKind::reading,
                                MarkKind::event, MarkKind::drainLow, MarkKind::drainHigh}) {
        const QString words = trends::markName(kind);
        const double wide = line + drawing::textWidth(type.small, words);
        if (x > 0 && x + wide > width) {
            x = 0;
            y += line + 2;
        }
        items.push_back({kind, words, {x, y}});
        x += wide + gap;
    }
    const auto paint = [=](QPainter& painter, const QRectF& place) {
        const bool leftToRight = QGuiApplication::layoutDirection() == Qt::LeftToRight;
        painter.setRenderHint(QPainter::Antialiasing);
        for (const Item& item : items) {
            const double from = leftToRight ? place.left() + item.at.x() : place.right() - item.at.x();
            const double top = place.top() + item.at.y(), wide = drawing::textWidth(type.small, item.words);
            painter.save();
            trends::paintSign(painter, item.kind, {from + (leftToRight ? 1 : -1) * line / 2, top + line / 2}, sign, palette);
            painter.restore();
            drawing::drawLine(painter, {leftToRight ? from + line : from - line - wide, top, wide, line}, item.words, type.small, palette.mutedInk);
        }
    };
    return {{width, y + line + 2}, paint};
}

}
