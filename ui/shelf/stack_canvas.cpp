#include "ui/shelf/stack_canvas.h"

#include "ui/drawing/stack_drawing.h"
#include "ui/shelf/stack_access.h"

#include <QAccessible>
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
}

void StackCanvas::setStack(std::shared_ptr<const ShelfModel> model, std::size_t index)
{
    const bool other = !hasStack() || stack().key != model->stacks[index].key;
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
    lay();
    update();
}

void StackCanvas::setFrame(const ShelfFrame& frame)
{
    frame_ = frame;
    lay();
    update();
}

double StackCanvas::headHeight(const StackModel& stack, double width, const Type& type)
{
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
    layout_ = drawing::layOut(stack().picture, frame_.scale, frame_.labels, frame_.side, frame_.boxWidth, height() - 2.0);
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
    const StackModel& shown = stack();
    const double inset = 2;
    QRectF head{inset, 0, width() - 2 * inset, frame_.head};
    head.setTop(head.top() + drawing::drawWrapped(painter, head, shown.title, type.title, palette.ink));
    head.setTop(head.top() + 2 + drawing::drawWrapped(painter, head, shown.line, type.body, palette.mutedInk));
    const QString last = shown.flag.isEmpty() ? shown.lastLine : shown.flag % QStringLiteral(" · ") % shown.lastLine;
    drawing::drawWrapped(painter, head, last, type.small, shown.flag.isEmpty() ? palette.mutedInk : palette.amber);

    painter.setPen(QPen{palette.wood, 1.6});
    painter.drawLine(QPointF{0, height() - 1.5}, QPointF{static_cast<double>(width()), height() - 1.5});
    fits_ = drawing::drawStack(painter, shown.picture, layout_, frame_.scale, frame_.labels, palette, type);
    if (pointed_ >= 0 && pointed_ != selected_) drawing::drawEmphasis(painter, layout_, pointed_, drawing::Emphasis::pointed, palette);
    if (selected_) drawing::drawEmphasis(painter, layout_, *selected_, drawing::Emphasis::selected, palette);
    if (hasFocus()) drawing::drawEmphasis(painter, layout_, part_, drawing::Emphasis::focused, palette);
}

void StackCanvas::resizeEvent(QResizeEvent*) { lay(); }

void StackCanvas::keyPressEvent(QKeyEvent* event)
{
    const int onward = layoutDirection() == Qt::RightToLeft ? -1 : 1;
    if (event->modifiers() & ~Qt::KeypadModifier) return QWidget::keyPressEvent(event);
    switch (event->key()) {
    case Qt::Key_Up: return setCurrentPart(part_ + 1);
    case Qt::Key_Down: return setCurrentPart(part_ - 1);
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

void StackCanvas::mouseMoveEvent(QMouseEvent* event) { point(layout_.partAt(event->position())); }

void StackCanvas::mousePressEvent(QMouseEvent* event)
{
    if (event->button() == Qt::LeftButton) pressed_ = layout_.partAt(event->position());
}

void StackCanvas::mouseReleaseEvent(QMouseEvent* event)
{
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
