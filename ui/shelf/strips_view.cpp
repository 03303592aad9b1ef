#include "ui/shelf/strips_view.h"

#include "ui/drawing/strip.h"

#include <QPainter>

#include <cmath>

namespace tierloam::shelf {

namespace {

constexpr double gap = 4;

}

StripsView::StripsView(const ui::Theme& theme, QWidget* parent) : QWidget{parent}, theme_{theme} {}

void StripsView::setStack(std::shared_ptr<const ShelfModel> model, std::size_t index)
{
    model_ = std::move(model);
    index_ = index;
    const StackModel& stack = model_->stacks[index_];
    setAccessibleName(tr("Small charts of %1").arg(stack.title));
    setAccessibleDescription(stack.stripsText);
    update();
}

double StripsView::heightFor(const QFont& font, double roomy)
{
    const drawing::Type type = drawing::Type::from(font);
    return 3 * (drawing::stripHeight(type, roomy) + gap) + drawing::axisHeight(type);
}

void StripsView::paintEvent(QPaintEvent*)
{
    if (!model_ || index_ >= model_->stacks.size()) return;
    QPainter painter{this};
    const drawing::Palette& palette = theme_.palette();
    const drawing::Type type = drawing::Type::from(font());
    StackModel stack = model_->stacks[index_];
    stack.processing.colour = palette.moss;
    stack.drained.colour = palette.water;
    stack.colony.colour = palette.brick;
    const double height = std::floor((this->height() - drawing::axisHeight(type)) / 3 - gap);
    QRectF room{1, 0, width() - 2.0, height};
    fits_ = drawing::drawStrip(painter, room, stack.processing, model_->axis, palette, type);
    room.translate(0, height + gap);
    fits_ &= drawing::drawBars(painter, room, stack.drained, model_->axis, palette, type);
    room.translate(0, height + gap);
    fits_ &= drawing::drawStrip(painter, room, stack.colony, model_->axis, palette, type);
    room.translate(0, height + gap);
    drawing::drawAxis(painter, {room.left(), room.top() - gap + 1, room.width(), drawing::axisHeight(type)}, model_->axis, palette, type);
}

}
