#include "ui/shelf/story_charts.h"

#include "ui/common/panels.h"

#include <QEvent>
#include <QPainter>

#include <cmath>
#include <utility>

namespace tierloam::shelf {

namespace {

constexpr double gap = 5;

}

StoryCharts::StoryCharts(const ui::Theme& theme, PartStory story, QWidget* parent) : QWidget{parent}, theme_{theme}, story_{std::move(story)}
{
    setObjectName(QStringLiteral("storyCharts"));
    ui::setAccess(this, tr("Charts over its time"), story_.chartsText);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(&theme_, &ui::Theme::changed, this, qOverload<>(&QWidget::update));
}

QSize StoryCharts::sizeHint() const
{
    const drawing::Type type = drawing::Type::from(font());
    return {static_cast<int>(24 * drawing::lineHeight(type.small)), static_cast<int>(std::ceil(storyHeight(story_, type)))};
}

QSize StoryCharts::minimumSizeHint() const { return {120, sizeHint().height()}; }

void StoryCharts::paintEvent(QPaintEvent*)
{
    QPainter painter{this};
    fits_ = drawStory(painter, rect(), story_, theme_.palette(), drawing::Type::from(font()));
}

void StoryCharts::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange) updateGeometry();
}

double storyHeight(const PartStory& story, const drawing::Type& type)
{
    return static_cast<double>(story.strips.size() + 1) * (drawing::stripHeight(type, 1) + gap) + drawing::axisHeight(type);
}

bool drawStory(QPainter& painter, const QRectF& place, const PartStory& story, const drawing::Palette& palette, const drawing::Type& type)
{
    const double height = drawing::stripHeight(type, 1);
    QRectF room{place.left() + 1, place.top(), place.width() - 2.0, height};
    const bool tray = story.strips.size() > 1;
    drawing::Bars bars = story.bars;
    bars.colour = tray ? palette.moss : palette.water;
    bool fits = drawing::drawBars(painter, room, bars, story.axis, palette, type);
    for (drawing::Strip strip : story.strips) {
        strip.colour = !tray ? palette.water : strip.log ? palette.moss : palette.amber;
        room.translate(0, height + gap);
        fits &= drawing::drawStrip(painter, room, strip, story.axis, palette, type);
    }
    room.translate(0, height + gap);
    drawing::drawAxis(painter, {room.left(), room.top() - gap + 1, room.width(), drawing::axisHeight(type)}, story.axis, palette, type);
    return fits;
}

}
