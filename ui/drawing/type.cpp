#include "ui/drawing/type.h"

#include "ui/drawing/type_sizes.h"

#include <QColor>
#include <QFontMetricsF>
#include <QGuiApplication>
#include <QPainter>
#include <QTextLayout>

#include <cmath>

namespace tierloam::drawing {

namespace {

QFont sized(const QFont& base, double factor, QFont::Weight weight)
{
    QFont font{base};
    if (base.pixelSize() > 0) font.setPixelSize(static_cast<int>(std::lround(base.pixelSize() * factor)));
    else font.setPointSizeF(base.pointSizeF() * factor);
    font.setWeight(weight);
    return font;
}

/// Lays the paragraph out and calls `line` for each line; returns the height.
template <class Line>
double layOut(const QFont& font, const QString& text, double width, Line line)
{
    const double height = lineHeight(font);
    double y = 0;
    for (const QString& paragraph : text.split(u'\n')) {
        QTextLayout layout{paragraph, font};
        QTextOption option;
        option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
        option.setTextDirection(QGuiApplication::layoutDirection());
        option.setAlignment((QGuiApplication::layoutDirection() == Qt::RightToLeft ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignAbsolute);
        layout.setTextOption(option);
        layout.beginLayout();
        for (QTextLine each = layout.createLine(); each.isValid(); each = layout.createLine()) {
            each.setLineWidth(std::max(width, 1.0));
            each.setPosition({0, y});
            y += height;
        }
        layout.endLayout();
        line(layout);
    }
    return y;
}

}

Type Type::from(const QFont& base)
{
    return {sized(base, titleSize, QFont::DemiBold), sized(base, 1.0, QFont::Normal), sized(base, 1.0, QFont::DemiBold),
            sized(base, smallSize, QFont::Normal), sized(base, smallSize, QFont::DemiBold)};
}

double textWidth(const QFont& font, const QString& text) { return std::ceil(QFontMetricsF{font}.horizontalAdvance(text)); }

double lineHeight(const QFont& font) { return std::ceil(QFontMetricsF{font}.height() * 1.06); }

double wrappedHeight(const QFont& font, const QString& text, double width)
{
    return text.isEmpty() ? 0.0 : layOut(font, text, width, [](const QTextLayout&) {});
}

double drawWrapped(QPainter& painter, const QRectF& room, const QString& text, const QFont& font, const QColor& colour)
{
    if (text.isEmpty()) return 0;
    painter.setPen(colour);
    return layOut(font, text, room.width(), [&](const QTextLayout& layout) { layout.draw(&painter, room.topLeft()); });
}

bool drawLine(QPainter& painter, const QRectF& room, const QString& text, const QFont& font, const QColor& colour, bool atEnd)
{
    const bool fits = textWidth(font, text) <= room.width() + 0.5;
    const QString shown = fits ? text : QFontMetricsF{font}.elidedText(text, Qt::ElideRight, room.width());
    const bool left = (QGuiApplication::layoutDirection() == Qt::LeftToRight) != atEnd;
    painter.setFont(font);
    painter.setPen(colour);
    painter.drawText(QRectF{room.left(), room.top(), room.width(), lineHeight(font)}, (left ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignAbsolute | Qt::AlignVCenter | Qt::TextSingleLine | Qt::TextDontClip, shown);
    return fits;
}

}
