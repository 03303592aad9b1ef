#include "ui/shelf/story_charts.h"

#include "ui/common/panels.h"

#include <QEvent>
#include <QPainter>

#include <cmath>

namespace tierloam::shelf {

namespace {

constexpr double gap = 5;

}

StoryCharts::StoryCharts(const ui::Theme& theme, const PartStory& story, QWidget* parent) : QWidget{parent}, theme_{theme}, story_{story}
{
    setObjectName(QStringLiteral("storyCharts"));
    ui::setAccess(this, tr("Charts over its time"), story_.chartsText);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(&theme_, &ui::Theme::changed, this, qOverload<>(&QWidget::update));
}

QSize StoryCharts::sizeHint() const
{
    const drawing::Type type = drawing::Type::from(font());
    const double height = static_cast<double>(story_.strips.size() + 1) * (drawing::stripHeight(type, 1) + gap) + drawing::axisHeight(type);
    return {static_cast<int>(24 * drawing::lineHeight(type.small)), static_cast<int>(std::ceil(height))};
}

QSize StoryCharts::minimumSizeHint() const { return {120, sizeHint().height()}; }

void StoryCharts::paintEvent(QPaintEvent*)
{
    QPainter painter{this};
    const drawing::Palette& palette = theme_.palette();
    const drawing::Type type = drawing::Type::from(font());
    const double height = drawing::stripHeight(type, 1);
    QRectF room{1, 0, width() - 2.0, height};
    const bool tray = story_.strips.size() > 1;
    story_.bars.colour = tray ? palette.moss : palette.water;
    fits_ = drawing::drawBars(painter, room, story_.bars, story_.axis, palette, type);
    for (drawing::Strip& strip : story_.strips) {
        strip.colour = !tray ? palette.water : strip.log ? palette.moss : palette.amber;
        room.translate(0, height + gap);
        fits_ &= drawing::drawStrip(painter, room, strip, story_.axis, palette, type);
    }
    room.translate(0, height + gap);
    drawing::drawAxis(painter, {room.left(), room.top() - gap + 1, room.width(), drawing::axisHeight(type)}, story_.axis, palette, type);
}

void StoryCharts::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange) updateGeometry();
}

}
