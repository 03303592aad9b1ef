#include "ui/rotation/two_courses.h"

#include "ui/common/formats.h"
#include "ui/common/panels.h"
#include "ui/drawing/type.h"

#include <QPainter>

#include <algorithm>

namespace tierloam::rotation {

TwoCourses::TwoCourses(const ui::Theme& theme, QWidget* parent) : QWidget{parent}, theme_{theme}
{
    setObjectName(QStringLiteral("twoCourses"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void TwoCourses::setCourses(const TriedChange& change, Day today)
{
    change_ = change;
    today_ = today;
    setVisible(change_.usual.size() > 1);
    ui::setAccess(this, change_.another.empty() ? tr("Colony of the coming year, as usual and with the change: the figures stand in the table above")
                                                : tr("Colony of the coming year, as usual, with the change, and of the new stack: the figures stand in the table above"));
    updateGeometry();
    update();
}

QSize TwoCourses::sizeHint() const
{
    const auto type = drawing::Type::from(theme_.font(ui::TextSize::body));
    return {theme_.px(320), static_cast<int>((change_.another.empty() ? 2 : 3) * drawing::stripHeight(type, 1.0) + drawing::axisHeight(type)) + 6};
}

void TwoCourses::paintEvent(QPaintEvent*)
{
    if (change_.usual.size() < 2) return;
    QPainter painter{this};
    const auto type = drawing::Type::from(theme_.font(ui::TextSize::body));
    drawing::TimeAxis axis;
    axis.from = change_.usual.front().day;
    axis.to = change_.usual.back().day;
    double top = 0;
    for (const auto* points : {&change_.usual, &change_.changed, &change_.another})
        for (const drawing::StripPoint& point : *points) top = std::max(top, point.high);
    const double height = drawing::stripHeight(type, 1.0);
    double y = 0;
    for (const auto& [points, title] : {std::pair{&change_.usual, tr("colony, as usual")}, std::pair{&change_.changed, tr("colony, with the change")}, std::pair{&change_.another, tr("colony, the new stack")}}) {
        if (points->empty()) continue;
        drawing::Strip strip;
        strip.title = title;
        strip.points = *points;
        strip.top = drawing::roundTop(top);
        strip.value = tr("up to %1").arg(ui::massText(strip.top));
        strip.colour = theme_.palette().brick;
        drawing::drawStrip(painter, QRectF{0.0, y, static_cast<double>(width()), height}, strip, axis, theme_.palette(), type);
        y += height;
    }
    drawing::drawAxis(painter, QRectF{0.0, y + 2, static_cast<double>(width()), drawing::axisHeight(type)}, axis, theme_.palette(), type);
}

}
