#include "ui/materials/bench.h"

#include "ui/common/choice_field.h"
#include "ui/common/panels.h"

#include <QLabel>
#include <QVBoxLayout>

#include <algorithm>

namespace tierloam::materials_page {

Bench::Bench(household::Household& household, const ui::Theme& theme, QWidget* parent)
    : QWidget{parent}, household_{household}, theme_{theme}, column_{new QVBoxLayout{this}}
{
    column_->setContentsMargins(0, 0, 0, 0);
    column_->setSpacing(8);
    QSizePolicy policy{QSizePolicy::Preferred, QSizePolicy::Preferred};
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void Bench::setCautions(const QList<forms::Caution>& cautions)
{
    if (std::ranges::equal(cautions, told_, {}, &forms::Caution::text, &forms::Caution::text)) return;
    told_ = cautions;
    Q_EMIT cautionsChanged();
}

QStringList Bench::standingStacks() const
{
    QStringList names;
    for (const journal::StackHistory& stack : household::inOrder(household_.journal()->replay.stacks, household_.stackOrder())) {
        const journal::Standing* standing = stack.on(household_.today());
        if (standing && !standing->retired) names << QString::fromStdString(stack.name);
    }
    return names;
}

const reckoning::StackReckoning* Bench::estimateOf(const QString& stack) const
{
    reckoning_ = household_.reckoning();
    return reckoning_ ? reckoning_->stack(stack.toStdString()) : nullptr;
}

const journal::Standing* Bench::standingOf(const QString& stack) const
{
    journal_ = household_.journal();
    const journal::StackHistory* history = journal_->replay.stack(stack.toStdString());
    return history ? history->on(household_.today()) : nullptr;
}

void Bench::fillStacks(ui::ChoiceField* field, const QString& none) const
{
    const QString before = field->value().toString();
    const QStringList stacks = standingStacks();
    field->clearChoices();
    if (!none.isEmpty()) field->addChoice(none);
    for (const QString& stack : stacks) field->addChoice(stack, stack);
    if (stacks.contains(before)) field->setValue(before);
    else if (none.isEmpty() && !stacks.isEmpty()) field->setValue(stacks.front());
}

QLabel* Bench::addNote(const QString& text)
{
    auto* label = ui::makeLabel(text, ui::TextRole::smallMuted, this, true);
    column_->addWidget(label);
    return label;
}

}
