#include "ui/shelf/stack_column.h"

#include "ui/common/flow_layout.h"
#include "ui/common/panels.h"
#include "ui/shelf/strips_view.h"
#include "ui/shelf/verdict_box.h"

#include <QPushButton>

namespace tierloam::shelf {

StackColumn::StackColumn(const ui::Theme& theme, QWidget* parent)
    : QWidget{parent},
      canvas_{new StackCanvas{theme, this}},
      verdict_{new VerdictBox{theme, this}},
      buttons_{new QWidget{this}},
      flow_{new ui::FlowLayout{buttons_, 4}},
      feed_{ui::makeButton({}, ui::Tone::moss, buttons_)},
      water_{ui::makeButton({}, ui::Tone::plain, buttons_)},
      drain_{ui::makeButton({}, ui::Tone::plain, buttons_)},
      more_{ui::makeButton(tr("…"), ui::Tone::plain, buttons_)},
      strips_{new StripsView{theme, this}}
{
    flow_->setContentsMargins(0, 0, 0, 0);
    for (QPushButton* button : {feed_, water_, drain_, more_}) {
        button->setProperty("compact", true);
        flow_->addWidget(button);
    }
    feed_->setObjectName(QStringLiteral("feedButton"));
    water_->setObjectName(QStringLiteral("waterButton"));
    drain_->setObjectName(QStringLiteral("drainButton"));
    more_->setObjectName(QStringLiteral("moreButton"));
    connect(feed_, &QPushButton::clicked, this, &StackColumn::feedWanted);
    connect(water_, &QPushButton::clicked, this, &StackColumn::waterWanted);
    connect(drain_, &QPushButton::clicked, this, &StackColumn::drainWanted);
    connect(more_, &QPushButton::clicked, this, &StackColumn::moreWanted);
    setTabOrder(canvas_, feed_);
    setTabOrder(feed_, water_);
    setTabOrder(water_, drain_);
    setTabOrder(drain_, more_);
}

void StackColumn::setStack(std::shared_ptr<const ShelfModel> model, std::size_t index)
{
    const StackModel& stack = model->stacks[index];
    canvas_->setStack(model, index);
    verdict_->setVerdict(stack.verdict, stack.title);
    strips_->setStack(model, index);
    const auto named = [&](QPushButton* button, const QString& label, const QString& tip, bool enabled) {
        button->setText(label);
        button->setToolTip(enabled ? tip : stack.whyNot);
        ui::setAccess(button, tr("%1, %2", "what a button does, and the stack").arg(label, stack.title), button->toolTip());
        button->setEnabled(enabled);
    };
    named(feed_, stack.feedLabel, stack.feedTip, stack.canFeed);
    named(water_, stack.waterLabel, stack.waterTip, stack.canFeed);
    named(drain_, stack.drainLabel, stack.drainTip, stack.canDrain);
    more_->setToolTip(tr("Everything else that can be recorded for %1").arg(stack.title));
    ui::setAccess(more_, tr("More for %1").arg(stack.title), more_->toolTip());
}

int StackColumn::verdictHeight(int width) const { return verdict_->heightForWidth(width); }

int StackColumn::buttonsHeight(int width) const { return flow_->heightForWidth(width); }

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
        widget->setGeometry(0, y, width(), height);
        y += height + rows_.gap;
    };
    row(canvas_, rows_.canvas);
    row(verdict_, rows_.verdict);
    row(buttons_, rows_.buttons);
    row(strips_, rows_.strips);
}

}
