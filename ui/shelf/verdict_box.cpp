#include "ui/shelf/verdict_box.h"

#include "ui/drawing/type.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace tierloam::shelf {

namespace {

constexpr double padding = 8, bar = 5;

double signSize(const drawing::Type& type) { return std::floor(drawing::lineHeight(type.strong) * 0.8); }

}

QColor toneColour(ui::Tone tone, const drawing::Palette& palette)
{
    switch (tone) {
    case ui::Tone::plain: return palette.outline;
    case ui::Tone::moss: return palette.moss;
    case ui::Tone::amber: return palette.amber;
    case ui::Tone::brick: return palette.brick;
    case ui::Tone::water: return palette.water;
    }
    return palette.outline;
}

void drawSign(QPainter& painter, const QRectF& square, Sign sign, const QColor& colour, const QColor& ground)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const QPointF c = square.center();
    const double r = square.width() / 2;
    const double thin = std::max(1.4, r * 0.24);
    painter.setPen(QPen{colour, thin, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin});
    painter.setBrush(Qt::NoBrush);
    switch (sign) {
    case Sign::ready:
        painter.setBrush(colour);
        painter.drawEllipse(c, r - thin / 2, r - thin / 2);
        painter.setPen(QPen{ground, thin, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin});
        painter.drawPolyline(QPolygonF{c + QPointF{-r * 0.42, 0.02 * r}, c + QPointF{-r * 0.1, r * 0.36}, c + QPointF{r * 0.44, -r * 0.34}});
        break;
    case Sign::soon:
        painter.drawEllipse(c, r - thin / 2, r - thin / 2);
        painter.setBrush(colour);
        painter.drawPie(QRectF{c.x() - r + thin / 2, c.y() - r + thin / 2, 2 * r - thin, 2 * r - thin}, 90 * 16, -240 * 16);
        break;
    case Sign::danger: {
        painter.setBrush(colour);
        painter.drawPolygon(QPolygonF{c + QPointF{0, -r * 0.85}, c + QPointF{r * 0.9, r * 0.75}, c + QPointF{-r * 0.9, r * 0.75}});
        painter.setPen(QPen{ground, thin, Qt::SolidLine, Qt::RoundCap});
        painter.drawLine(c + QPointF{0, -r * 0.2}, c + QPointF{0, r * 0.2});
        painter.drawPoint(c + QPointF{0, r * 0.55});
        break;
    }
    case Sign::drop: {
        QPainterPath drop;
        drop.moveTo(c + QPointF{0, -r});
        drop.cubicTo(c + QPointF{r * 0.35, -r * 0.4}, c + QPointF{r * 0.75, 0}, c + QPointF{r * 0.7, r * 0.35});
        drop.cubicTo(c + QPointF{r * 0.6, r * 1.1}, c + QPointF{-r * 0.6, r * 1.1}, c + QPointF{-r * 0.7, r * 0.35});
        drop.cubicTo(c + QPointF{-r * 0.75, 0}, c + QPointF{-r * 0.35, -r * 0.4}, c + QPointF{0, -r});
        painter.fillPath(drop, colour);
        break;
    }
    case Sign::light:
        painter.setBrush(colour);
        painter.drawEllipse(c, r * 0.36, r * 0.36);
        for (int i = 0; i < 8; ++i) {
            const double a = i * std::numbers::pi / 4;
            painter.drawLine(c + QPointF{std::cos(a), std::sin(a)} * (r * 0.66), c + QPointF{std::cos(a), std::sin(a)} * (r * 0.92));
        }
        break;
    case Sign::working: painter.drawEllipse(c, r - thin / 2, r - thin / 2); break;
    case Sign::silent:
        for (const double x : {-0.62, 0.0, 0.62}) painter.drawEllipse(c + QPointF{r * x, 0}, thin * 0.35, thin * 0.35);
        break;
    case Sign::question: {
        QPen dashed{colour, thin};
        dashed.setDashPattern({1.2, 1.4});
        painter.setPen(dashed);
        painter.drawEllipse(c, r - thin / 2, r - thin / 2);
        break;
    }
    }
    painter.restore();
}

VerdictBox::VerdictBox(const ui::Theme& theme, QWidget* parent) : QWidget{parent}, theme_{theme}
{
    QSizePolicy policy{QSizePolicy::Preferred, QSizePolicy::Preferred};
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void VerdictBox::setVerdict(const Verdict& verdict, const QString& stack)
{
    verdict_ = verdict;
    setAccessibleName(tr("%1: %2", "name of a stack, state").arg(stack, verdict.state));
    setAccessibleDescription(QStringList{verdict.reason, verdict.normal}.join(u' ').trimmed());
    updateGeometry();
    update();
}

int VerdictBox::heightForWidth(int width) const
{
    const drawing::Type type = drawing::Type::from(font());
    const double room = width - 1 - bar - 2 * padding; // as painted: half a pixel off each side
    double height = drawing::wrappedHeight(type.strong, verdict_.state, room - signSize(type) - 6);
    height += drawing::wrappedHeight(type.small, verdict_.reason, room);
    if (!verdict_.normal.isEmpty()) height += 3 + drawing::wrappedHeight(type.small, verdict_.normal, room);
    return static_cast<int>(std::ceil(height + 2 * padding - 2));
}

QSize VerdictBox::sizeHint() const { return {260, heightForWidth(260)}; }

void VerdictBox::paintEvent(QPaintEvent*)
{
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    const drawing::Palette& palette = theme_.palette();
    const drawing::Type type = drawing::Type::from(font());
    const QColor colour = toneColour(verdict_.tone, palette);
    const bool leftToRight = layoutDirection() == Qt::LeftToRight;
    const QRectF box = QRectF{rect()}.adjusted(0.5, 0.5, -0.5, -0.5);
    QPainterPath shape;
    shape.addRoundedRect(box, 7, 7);
    painter.fillPath(shape, palette.panel);
    painter.save();
    painter.setClipPath(shape);
    painter.fillRect(QRectF{leftToRight ? box.left() : box.right() - bar, box.top(), bar, box.height()}, colour);
    painter.restore();
    painter.setPen(QPen{palette.line, 1});
    painter.drawPath(shape);

    const double side = signSize(type);
    QRectF room = box.adjusted((leftToRight ? bar : 0) + padding, padding - 1, -(leftToRight ? 0 : bar) - padding, 0);
    const double line = drawing::lineHeight(type.strong);
    drawSign(painter, {leftToRight ? room.left() : room.right() - side, room.top() + (line - side) / 2, side, side}, verdict_.sign, colour, palette.panel);
    QRectF state = room.adjusted(leftToRight ? side + 6 : 0, 0, leftToRight ? 0 : -side - 6, 0);
    room.setTop(room.top() + drawing::drawWrapped(painter, state, verdict_.state, type.strong, verdict_.tone == ui::Tone::plain ? palette.ink : colour));
    room.setTop(room.top() + drawing::drawWrapped(painter, room, verdict_.reason, type.small, palette.ink));
    if (!verdict_.normal.isEmpty()) {
        room.setTop(room.top() + 3);
        drawing::drawWrapped(painter, room, verdict_.normal, type.small, palette.mutedInk);
    }
}

}
