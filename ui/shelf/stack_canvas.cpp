#include "ui/shelf/stack_canvas.h"

#include "ui/drawing/stack_drawing.h"
#include "ui/shelf/stack_access.h"
#include "ui/shelf/verdict_box.h"

#include <QAccessible>
#include <QApplication>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>

#include <algorithm>
#include <cmath>

namespace tierloam::shelf {

using drawing::Type;

namespace {

QString tipOf(const Part& part)
{
    QStringList lines{part.name};
    for (const auto& [name, value] : part.facts)
        if (!value.isEmpty()) lines << StackCanvas::tr("%1: %2", "a name and its value").arg(name, value);
    return (lines + part.notes).join(u'\n');
}

}

StackCanvas::StackCanvas(const ui::Theme& theme, QWidget* parent) : QWidget{parent}, theme_{theme}
{
    installStackAccess();
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setAttribute(Qt::WA_Hover);
    motion_.setStartValue(0.0);
    motion_.setEndValue(1.0);
    motion_.setDuration(motionMs);
    motion_.setEasingCurve(QEasingCurve::InOutCubic);
    connect(&motion_, &QVariantAnimation::valueChanged, this, qOverload<>(&QWidget::update));
}

void StackCanvas::setStack(std::shared_ptr<const ShelfModel> model, std::size_t index, bool moves)
{
    const bool other = !hasStack() || stack().key != model->stacks[index].key;
    const drawing::StackMoment before{picture_, layout_};
    model_ = std::move(model);
    index_ = index;
    setAccessibleName(stack().title);
    setAccessibleDescription(stack().value);
    if (other) {
        part_ = partCount() - 1; // the top tray: where the next thing is usually done
        selected_.reset();
    }
    part_ = std::clamp(part_, 0, partCount() - 1);
    if (selected_ && *selected_ >= partCount()) selected_.reset();
    picture_ = compact_ ? compactPicture(stack()) : stack().picture;
    if (other) motion_.stop();
    else if (moves && theme_.moves() && isVisible() && drawing::standsOtherwise(before.picture, picture_)) {
        before_ = before;
        motion_.stop();
        motion_.start();
    }
    lay();
    update();
}

void StackCanvas::setFrame(const ShelfFrame& frame)
{
    frame_ = frame;
    lay();
    update();
}

void StackCanvas::setCompact(bool compact)
{
    if (compact == compact_) return;
    compact_ = compact;
    motion_.stop();
    if (hasStack()) picture_ = compact_ ? compactPicture(stack()) : stack().picture;
    lay();
    update();
}

drawing::StackPicture StackCanvas::compactPicture(const StackModel& stack)
{
    drawing::StackPicture picture = stack.picture;
    for (drawing::TrayPicture& tray : picture.trays)
        if (tray.labels.size() > 1) tray.labels = {tray.labels.back()}; // the word; the ratio is in the panel
    picture.sump.labels.clear();
    return picture;
}

void StackCanvas::setLifted(bool lifted)
{
    if (lifted == lifted_) return;
    lifted_ = lifted;
    update();
}

namespace {

double signSide(const Type& type) { return std::floor(drawing::lineHeight(type.smallStrong) * 0.8); }

}

double StackCanvas::headHeight(const StackModel& stack, double width, const Type& type, bool compact)
{
    if (compact) return drawing::wrappedHeight(type.strong, stack.title, width) + drawing::wrappedHeight(type.small, stack.verdict.state, width - signSide(type) - 5) + 6;
    double height = drawing::wrappedHeight(type.title, stack.title, width) + drawing::wrappedHeight(type.body, stack.line, width) + 2;
    const QString last = stack.flag.isEmpty() ? stack.lastLine : stack.flag % QStringLiteral(" · ") % stack.lastLine;
    height += std::max(drawing::lineHeight(type.small), drawing::wrappedHeight(type.small, last, width));
    return height + 6;
}

int StackCanvas::partCount() const { return hasStack() ? static_cast<int>(stack().parts.size()) : 0; }

const Part* StackCanvas::partModel(int part) const
{
    return part >= 0 && part < partCount() ? &stack().parts[static_cast<std::size_t>(part)] : nullptr;
}

void StackCanvas::lay()
{
    if (!hasStack()) return;
    layout_ = drawing::layOut(picture_, frame_.scale, frame_.labels, frame_.side, frame_.boxWidth, height() - 2.0);
    if (layoutDirection() == Qt::RightToLeft) layout_.mirror(width() / 2.0);
}

QRect StackCanvas::partRect(int part) const
{
    if (part == 0) return layout_.sump.united(layout_.sumpLabels).toAlignedRect();
    if (part > 0 && part <= static_cast<int>(layout_.trays.size())) {
        const auto& tray = layout_.trays[static_cast<std::size_t>(part) - 1];
        return tray.whole().united(tray.labels).toAlignedRect();
    }
    return {};
}

void StackCanvas::setCurrentPart(int part)
{
    const int held = std::clamp(part, 0, std::max(0, partCount() - 1));
    if (held == part_) return;
    part_ = held;
    update();
    tellFocus();
    Q_EMIT walked();
}

void StackCanvas::setSelectedPart(std::optional<int> part)
{
    if (part == selected_) return;
    selected_ = part;
    update();
}

void StackCanvas::tellFocus()
{
    if (!hasFocus() || !QAccessible::isActive()) return;
    QAccessibleEvent focus{this, QAccessible::Focus};
    focus.setChild(part_);
    QAccessible::updateAccessibility(&focus);
}

bool StackCanvas::event(QEvent* event)
{
    if (event->type() == QEvent::ToolTip) {
        const auto* help = static_cast<QHelpEvent*>(event);
        const Part* part = partModel(layout_.partAt(help->pos()));
        if (part) QToolTip::showText(help->globalPos(), tipOf(*part), this, partRect(part->slot));
        else QToolTip::hideText();
        return true;
    }
    return QWidget::event(event);
}

void StackCanvas::paintEvent(QPaintEvent*)
{
    if (!hasStack()) return;
    QPainter painter{this};
    const drawing::Palette& palette = theme_.palette();
    const Type type = Type::from(font());
    const double inset = 2;
    drawHead(painter, QRectF{inset, 0, width() - 2 * inset, frame_.head}, type);
    painter.setPen(QPen{palette.wood, 1.6});
    painter.drawLine(QPointF{0, height() - 1.5}, QPointF{static_cast<double>(width()), height() - 1.5});
    if (lifted_) painter.setOpacity(0.4);
    if (motion_.state() != QAbstractAnimation::Stopped && before_) {
        const drawing::StackMoment now = drawing::between(*before_, {picture_, layout_}, motion_.currentValue().toDouble());
        drawing::drawStack(painter, now.picture, now.layout, frame_.scale, frame_.labels, palette, type);
    } else {
        fits_ = drawing::drawStack(painter, picture_, layout_, frame_.scale, frame_.labels, palette, type);
    }
    painter.setOpacity(1);
    if (lifted_) drawing::drawEmphasis(painter, layout_, -1, drawing::Emphasis::selected, palette);
    if (pointed_ >= 0 && pointed_ != selected_) drawing::drawEmphasis(painter, layout_, pointed_, drawing::Emphasis::pointed, palette);
    if (selected_) drawing::drawEmphasis(painter, layout_, *selected_, drawing::Emphasis::selected, palette);
    if (hasFocus()) drawing::drawEmphasis(painter, layout_, part_, drawing::Emphasis::focused, palette);
}

void StackCanvas::drawHead(QPainter& painter, QRectF head, const Type& type) const
{
    const drawing::Palette& palette = theme_.palette();
    const StackModel& shown = stack();
    if (compact_) {
        const QColor colour = toneColour(shown.verdict.tone, palette);
        const double side = signSide(type), line = drawing::lineHeight(type.small);
        head.setTop(head.top() + drawing::drawWrapped(painter, head, shown.title, type.strong, palette.ink));
        const bool leftToRight = layoutDirection() == Qt::LeftToRight;
        drawSign(painter, {leftToRight ? head.left() : head.right() - side, head.top() + (line - side) / 2, side, side}, shown.verdict.sign, colour, palette.ground);
        head.adjust(leftToRight ? side + 5 : 0, 0, leftToRight ? 0 : -side - 5, 0);
        drawing::drawWrapped(painter, head, shown.verdict.state, type.small, shown.verdict.tone == ui::Tone::plain ? palette.ink : colour);
        return;
    }
    head.setTop(head.top() + drawing::drawWrapped(painter, head, shown.title, type.title, palette.ink));
    head.setTop(head.top() + 2 + drawing::drawWrapped(painter, head, shown.line, type.body, palette.mutedInk));
    const QString last = shown.flag.isEmpty() ? shown.lastLine : shown.flag % QStringLiteral(" · ") % shown.lastLine;
    drawing::drawWrapped(painter, head, last, type.small, shown.flag.isEmpty() ? palette.mutedInk : palette.amber);
}

void StackCanvas::resizeEvent(QResizeEvent*) { lay(); }

void StackCanvas::keyPressEvent(QKeyEvent* event)
{
    const int onward = layoutDirection() == Qt::RightToLeft ? -1 : 1;
    if (event->modifiers() & ~Qt::KeypadModifier) return QWidget::keyPressEvent(event);
    switch (event->key()) {
    case Qt::Key_Up:
        if (part_ < partCount() - 1) return setCurrentPart(part_ + 1);
        Q_EMIT rowWanted(-1);
        return;
    case Qt::Key_Down:
        if (part_ > 0) return setCurrentPart(part_ - 1);
        Q_EMIT rowWanted(1);
        return;
    case Qt::Key_Escape:
        if (dragging_) return endDrag();
        return QWidget::keyPressEvent(event);
    case Qt::Key_PageUp:
    case Qt::Key_Home: return setCurrentPart(partCount() - 1);
    case Qt::Key_PageDown:
    case Qt::Key_End: return setCurrentPart(0);
    case Qt::Key_Left: Q_EMIT neighbourWanted(-onward); return;
    case Qt::Key_Right: Q_EMIT neighbourWanted(onward); return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space: Q_EMIT partActivated(part_); return;
    default: QWidget::keyPressEvent(event);
    }
}

void StackCanvas::focusInEvent(QFocusEvent* event)
{
    QWidget::focusInEvent(event);
    update();
    tellFocus();
    Q_EMIT walked();
}

void StackCanvas::focusOutEvent(QFocusEvent* event)
{
    QWidget::focusOutEvent(event);
    update();
}

void StackCanvas::point(int part)
{
    if (part == pointed_) return;
    pointed_ = part;
    setCursor(part >= 0 ? Qt::PointingHandCursor : Qt::ArrowCursor);
    update();
}

void StackCanvas::mouseMoveEvent(QMouseEvent* event)
{
    if (!dragging_ && pressedAt_ && (event->buttons() & Qt::LeftButton)
        && (event->position().toPoint() - *pressedAt_).manhattanLength() >= QApplication::startDragDistance()) {
        dragging_ = true;
        point(-1);
        setCursor(Qt::ClosedHandCursor);
    }
    if (dragging_) Q_EMIT dragged(event->globalPosition().toPoint());
    else point(layout_.partAt(event->position()));
}

void StackCanvas::mousePressEvent(QMouseEvent* event)
{
    if (event->button() != Qt::LeftButton) return;
    pressed_ = layout_.partAt(event->position());
    pressedAt_ = event->position().toPoint();
}

void StackCanvas::endDrag()
{
    dragging_ = false;
    pressedAt_.reset(); // a button still held down begins nothing new
    setCursor(Qt::ArrowCursor);
    Q_EMIT dragEnded();
}

void StackCanvas::mouseReleaseEvent(QMouseEvent* event)
{
    if (event->button() == Qt::LeftButton && dragging_) {
        const QPoint at = event->globalPosition().toPoint();
        endDrag();
        Q_EMIT dropped(at);
        return;
    }
    const bool calledOff = !pressedAt_;
    pressedAt_.reset();
    if (calledOff) return;
    const int part = layout_.partAt(event->position());
    if (event->button() != Qt::LeftButton || part < 0 || part != pressed_) return;
    setCurrentPart(part);
    Q_EMIT partActivated(part);
}

void StackCanvas::leaveEvent(QEvent*) { point(-1); }

void StackCanvas::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LayoutDirectionChange || event->type() == QEvent::FontChange) {
        lay();
        update();
    }
}

}
