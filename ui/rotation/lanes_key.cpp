#include "ui/rotation/lanes_key.h"

#include "ui/drawing/lanes.h"

#include <QPainter>

#include <cmath>

namespace tierloam::rotation {

LanesKey::LanesKey(const ui::Theme& theme, QWidget* parent) : QWidget{parent}, theme_{theme}
{
    setObjectName(QStringLiteral("lanesKey"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(&theme_, &ui::Theme::changed, this, [this] { fit(); update(); });
}

int LanesKey::heightForWidth(int width) const
{
    QPixmap nowhere{1, 1};
    QPainter painter{&nowhere};
    return static_cast<int>(std::ceil(drawing::drawLanesKey(painter, QRectF{6, 0, width - 12.0, 1000}, theme_.palette(), type()))) + 2;
}

QSize LanesKey::sizeHint() const { return {theme_.px(600), heightForWidth(theme_.px(900))}; }

void LanesKey::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    fit();
}

void LanesKey::paintEvent(QPaintEvent*)
{
    QPainter painter{this};
    drawing::drawLanesKey(painter, QRectF{rect()}.adjusted(6, 0, -6, 0), theme_.palette(), type());
}

/// The columns around it ask for one height only: as many rows as this width takes.
void LanesKey::fit() { setFixedHeight(heightForWidth(width())); }

}
