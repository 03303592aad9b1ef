#include "ui/materials/materials_page.h"

#include "ui/common/flow_layout.h"
#include "ui/common/panels.h"
#include "ui/materials/bedding_bench.h"
#include "ui/materials/castings_bench.h"
#include "ui/materials/leachate_bench.h"
#include "ui/materials/mix_bench.h"

#include <QAction>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

/// The sums beside the table: which of them is shown, and how each is made when it is first asked for.
namespace tierloam::materials_page {

namespace {

constexpr ui::ActionId sumActions[] = {ui::ActionId::sumMix, ui::ActionId::sumBedding, ui::ActionId::sumCastings, ui::ActionId::sumLeachate};

/// A stack of widgets that is as high as the one shown, so that a short sum leaves no empty page under it.
class ShownAlone final : public QStackedWidget {
public:
    using QStackedWidget::QStackedWidget;
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override
    {
        const QWidget* shown = currentWidget();
        return shown ? std::max(shown->heightForWidth(width), shown->minimumSizeHint().height()) : 0;
    }
    QSize sizeHint() const override { return currentWidget() ? currentWidget()->sizeHint() : QSize{}; }
    QSize minimumSizeHint() const override { return {currentWidget() ? currentWidget()->minimumSizeHint().width() : 0, 0}; }
};

}

void MaterialsPage::buildSums()
{
    auto* column = new QVBoxLayout{right_};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    formBox_ = new ui::Card{right_, ui::Tone::moss};
    formBox_->hide();
    column->addWidget(formBox_);
    auto* choices = new QWidget{right_};
    auto* flow = new ui::FlowLayout{choices, 6};
    sums_ = new ShownAlone{right_};
    for (std::size_t i = 0; i < std::size(sumActions); ++i) {
        QAction* action = ui::makeAction(sumActions[i], this);
        addAction(action);
        auto* button = ui::makeButton(ui::actionName(sumActions[i]), ui::Tone::plain, choices);
        button->setCheckable(true);
        button->setObjectName(QString::fromLatin1(ui::actionRow(sumActions[i]).name));
        button->setToolTip(action->toolTip());
        const auto show = [this, i] { showSum(static_cast<Sum>(i)); };
        connect(action, &QAction::triggered, this, show);
        connect(button, &QPushButton::clicked, this, show);
        flow->addWidget(button);
        sumButtons_.push_back(button);
    }
    column->addWidget(choices);
    auto* card = new ui::Card{right_};
    card->column()->addWidget(sums_);
    column->addWidget(card);
    column->addStretch(1);
    showSum(Sum::mix);
}

Bench* MaterialsPage::bench(Sum sum)
{
    build();
    Bench*& made = benches_[static_cast<std::size_t>(sum)];
    if (made) return made;
    switch (sum) {
    case Sum::mix: made = new MixBench{household_, theme_}; break;
    case Sum::bedding: {
        auto* bedding = new BeddingBench{household_, theme_};
        connect(bedding, &BeddingBench::trayWanted, this, &MaterialsPage::trayWanted);
        made = bedding;
        break;
    }
    case Sum::castings: made = new CastingsBench{household_, theme_}; break;
    case Sum::leachate: made = new LeachateBench{household_, theme_}; break;
    }
    sums_->addWidget(made);
    connect(made, &Bench::cautionsChanged, this, &MaterialsPage::tellCautions);
    return made;
}

MixBench* MaterialsPage::mix() { return static_cast<MixBench*>(bench(Sum::mix)); }
BeddingBench* MaterialsPage::bedding() { return static_cast<BeddingBench*>(bench(Sum::bedding)); }
CastingsBench* MaterialsPage::castings() { return static_cast<CastingsBench*>(bench(Sum::castings)); }
LeachateBench* MaterialsPage::leachate() { return static_cast<LeachateBench*>(bench(Sum::leachate)); }

void MaterialsPage::showSum(Sum sum)
{
    sums_->setCurrentWidget(bench(sum));
    for (std::size_t i = 0; i < sumButtons_.size(); ++i) sumButtons_[i]->setChecked(i == static_cast<std::size_t>(sum));
    sums_->updateGeometry();
    tellCautions();
    // Where the sums stand under the table, one that is asked for by its keys would change out of sight.
    if (isVisible() && sides_->direction() == QBoxLayout::TopToBottom) QMetaObject::invokeMethod(this, &MaterialsPage::bringSumIntoSight, Qt::QueuedConnection);
}

void MaterialsPage::bringSumIntoSight()
{
    const QWidget* choices = sumButtons_.front()->parentWidget();
    const int top = choices->mapTo(body_, QPoint{}).y(), bottom = top + choices->height() + sums_->height();
    scroll_->ensureVisible(0, bottom, 0, 0);
    scroll_->ensureVisible(0, top, 0, 0);
}

MaterialsPage::Sum MaterialsPage::sum() const
{
    const auto shown = std::ranges::find(benches_, sums_ ? sums_->currentWidget() : nullptr);
    return shown == benches_.end() ? Sum::mix : static_cast<Sum>(shown - benches_.begin());
}

}
