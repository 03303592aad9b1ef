#include "ui/shelf/stack_column.h"

#include "ui/common/actions.h"
#include "ui/common/flow_layout.h"
#include "ui/common/panels.h"
#include "ui/shelf/strips_view.h"
#include "ui/shelf/verdict_box.h"

#include <QLabel>
#include <QPushButton>

namespace tierloam::shelf {

StackColumn::StackColumn(const ui::Theme& theme, bool compact, QWidget* parent)
    : QWidget{parent}, theme_{theme}, compact_{compact}, canvas_{new StackCanvas{theme, this}}
{
    canvas_->setCompact(compact_);
    if (!compact_) furnish();
}

void StackColumn::furnish()
{
    if (buttons_) return;
    if (!compact_) {
        verdict_ = new VerdictBox{theme_, this};
        strips_ = new StripsView{theme_, this};
    }
    buttons_ = new QWidget{this};
    flow_ = new ui::FlowLayout{buttons_, 4};
    flow_->setContentsMargins(0, 0, 0, 0);
    const auto add = [&](const char* name, ui::ActionId act, ui::Tone tone, void (StackColumn::*wanted)()) {
        QPushButton* button = ui::makeButton({}, tone, buttons_);
        button->setObjectName(QString::fromLatin1(name));
        button->setProperty("compact", true);
        ui::setAct(button, act);
        flow_->addWidget(button);
        connect(button, &QPushButton::clicked, this, wanted);
        return button;
    };
    feed_ = add("feedButton", ui::ActionId::feed, ui::Tone::moss, &StackColumn::feedWanted);
    borne_ = add("borneButton", ui::ActionId::feedBorne, ui::Tone::moss, &StackColumn::borneWanted);
    borne_->hide();
    if (!compact_) {
        limit_ = ui::makeLabel({}, ui::TextRole::smallMuted, buttons_);
        limit_->setObjectName(QStringLiteral("limitLabel"));
        limit_->hide();
        flow_->addWidget(limit_);
    }
    cover_ = add("coverButton", ui::ActionId::cover, ui::Tone::plain, &StackColumn::coverWanted);
    water_ = add("waterButton", ui::ActionId::water, ui::Tone::plain, &StackColumn::waterWanted);
    drain_ = add("drainButton", ui::ActionId::drain, ui::Tone::plain, &StackColumn::drainWanted);
    more_ = add("moreButton", ui::ActionId::moreActs, ui::Tone::plain, &StackColumn::moreWanted);
    more_->setText(tr("…"));
    if (compact_) { // the rarer of the daily things have their keys, and stand in the panel
        cover_->hide();
        water_->hide();
        drain_->hide();
    }
    if (model_) fill();
    place();
    for (QWidget* made : {static_cast<QWidget*>(verdict_), buttons_, static_cast<QWidget*>(strips_)})
        if (made) made->show();
}

void StackColumn::setStack(std::shared_ptr<const ShelfModel> model, std::size_t index, bool moves)
{
    model_ = std::move(model);
    index_ = index;
    canvas_->setStack(model_, index_, moves);
    if (furnished()) fill();
}

void StackColumn::fill()
{
    const StackModel& stack = model_->stacks[index_];
    if (verdict_) verdict_->setVerdict(stack.verdict, stack.title);
    if (strips_) strips_->setStack(model_, index_);
    const auto named = [&](QPushButton* button, const QString& label, const QString& tip, bool enabled) {
        button->setText(label);
        button->setToolTip(enabled ? ui::withKeys(tip, button) : stack.whyNot);
        ui::setAccess(button, tr("%1, %2", "what a button does, and the stack").arg(label, stack.title), button->toolTip());
        button->setEnabled(enabled);
    };
    named(feed_, stack.feedLabel, stack.feedTip, stack.canFeed);
    named(borne_, stack.limitLabel, stack.limitTip, stack.canFeed);
    borne_->setVisible(stack.limitBelowUsual);
    ui::setTone(feed_, stack.usualIsMeant ? ui::Tone::moss : ui::Tone::plain); // the button that stands out is not the one that overfeeds
    if (limit_) {
        limit_->setText(stack.limitLabel);
        limit_->setToolTip(stack.limitTip);
        ui::setAccess(limit_, stack.limitLabel, stack.limitTip);
        limit_->setVisible(!stack.limitLabel.isEmpty() && !stack.limitBelowUsual);
    }
    named(cover_, stack.coverLabel, stack.coverTip, stack.canFeed);
    named(water_, stack.waterLabel, stack.waterTip, stack.canFeed);
    named(drain_, stack.drainLabel, stack.drainTip, stack.canDrain);
    more_->setToolTip(ui::withKeys(tr("Everything else that can be recorded for %1").arg(stack.title), more_));
    ui::setAccess(more_, tr("More for %1").arg(stack.title), more_->toolTip());
}

int StackColumn::verdictHeight(int width) { return verdict_ ? verdict_->heightForWidth(width) : 0; }

int StackColumn::buttonsHeight(int width)
{
    furnish();
    return flow_->heightForWidth(width);
}

void StackColumn::setRows(const ColumnRows& rows, const ShelfFrame& frame)
{
    rows_ = rows;
    place();
    canvas_->setFrame(frame);
}

void StackColumn::resizeEvent(QResizeEvent*) { place(); }

void StackColumn::place()
{
    int y = 0;
    const auto row = [&](QWidget* widget, int height) {
        if (!widget) return;
        widget->setGeometry(0, y, width(), height);
        y += height + rows_.gap;
    };
    row(canvas_, rows_.canvas);
    row(verdict_, rows_.verdict);
    row(buttons_, rows_.buttons);
    row(strips_, rows_.strips);
}

}
