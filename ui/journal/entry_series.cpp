#include "ui/journal/entry_series.h"

#include "ui/common/choice_field.h"
#include "ui/common/field_edit.h"
#include "ui/common/flow_layout.h"
#include "ui/common/panels.h"
#include "ui/forms/action_form.h"

#include <QLabel>
#include <QVBoxLayout>

#include <algorithm>

namespace tierloam::journal_page {

EntrySeries::EntrySeries(household::Household& household, const QString& stack, forms::FormKind kind, QWidget* parent)
    : QWidget{parent}, household_{household}, rows_{new QVBoxLayout{this}}, line_{ui::makeLabel({}, ui::TextRole::smallMuted, this, true)}
{
    setObjectName(QStringLiteral("entrySeries"));
    rows_->setContentsMargins(0, 0, 0, 0);
    auto* choices = new QWidget{this};
    auto* flow = new ui::FlowLayout{choices, 8};
    stack_ = new ui::ChoiceField{choices};
    stack_->setName(tr("Stack"));
    stack_->setObjectName(QStringLiteral("seriesStack"));
    kind_ = new ui::ChoiceField{choices};
    kind_->setName(tr("What was done"));
    kind_->setObjectName(QStringLiteral("seriesKind"));
    flow->addWidget(stack_);
    flow->addWidget(kind_);
    rows_->addWidget(choices);
    rows_->addWidget(line_);
    line_->setText(tr("Enter records and opens the next; Esc ends."));
    fillStacks(stack);
    fillKinds(kind);
    connect(stack_, &ui::Field::edited, this, &EntrySeries::chooseAnew);
    connect(kind_, &ui::Field::edited, this, &EntrySeries::chooseAnew);
    if (const auto first = kind_->chosen<forms::FormKind>()) openForm(*first, stack_->value().toString());
    else line_->setText(tr("There is no stack yet; start one on the shelf."));
}

EntrySeries::EntrySeries(household::Household& household, const journal::Entry& like, QWidget* parent)
    : QWidget{parent}, household_{household}, rows_{new QVBoxLayout{this}}, line_{ui::makeLabel(tr("One more like the chosen entry, dated today."), ui::TextRole::smallMuted, this, true)}
{
    setObjectName(QStringLiteral("entryDuplicate"));
    rows_->setContentsMargins(0, 0, 0, 0);
    rows_->addWidget(line_);
    openForm(forms::kindOf(like), QString::fromStdString(like.stack), like.slot);
    form_->propose(like.action);
}

forms::TypedForm* EntrySeries::form() const { return form_; }

bool EntrySeries::touched() const { return form_ && form_->touched(); }

void EntrySeries::setMayThrowAway(forms::MayThrowAway ask)
{
    mayThrowAway_ = std::move(ask);
    if (form_) form_->setMayThrowAway(mayThrowAway_);
}

/// The form of the stack and act that are chosen now, unless what was typed into the one before is to stay: then the choices go back to it.
void EntrySeries::chooseAnew()
{
    const auto kind = kind_->chosen<forms::FormKind>().value_or(forms::FormKind::feed);
    const bool stays = form_ && !form_->mayGo();
    if (stays) stack_->setValue(form_->stack());
    fillKinds(stays ? form_->kind() : kind);
    if (!stays) openForm(*kind_->chosen<forms::FormKind>(), stack_->value().toString());
}

void EntrySeries::fillStacks(const QString& chosen)
{
    for (const journal::StackHistory& history : household::inOrder(household_.journal()->replay.stacks, household_.stackOrder())) {
        const journal::Standing* standing = history.on(household_.today());
        if (!standing || standing->retired) continue;
        const QString name = QString::fromStdString(history.name);
        stack_->addChoice(name, name);
        if (name == chosen || !stack_->value().isValid()) stack_->setValue(name);
    }
}

void EntrySeries::fillKinds(forms::FormKind chosen)
{
    kind_->clearChoices();
    const auto journal = household_.journal();
    const journal::StackHistory* history = journal->replay.stack(stack_->value().toString().toStdString());
    const journal::Standing* standing = history ? history->on(household_.today()) : nullptr;
    if (!standing) return;
    const auto kinds = forms::kindsForStack(*standing, static_cast<int>(journal->replay.stacks.size()) - 1);
    for (const forms::FormKind kind : kinds) kind_->addChoice(forms::formName(kind), static_cast<int>(kind));
    kind_->setValue(static_cast<int>(kinds.contains(chosen) ? chosen : kinds.front()));
}

void EntrySeries::openForm(forms::FormKind kind, const QString& stack, std::optional<int> slot)
{
    if (form_) {
        form_->hide();
        form_->deleteLater(); // it may be the sender
    }
    again_ = false;
    form_ = new forms::ActionForm{household_, kind, stack, slot, this};
    form_->setMayThrowAway(mayThrowAway_);
    if (day_) form_->setDay(*day_);
    rows_->addWidget(form_, 1);
    connect(form_, &forms::ActionForm::recorded, this, [this](const std::vector<journal::EntryId>& ids) {
        ++recorded_;
        again_ = stack_ != nullptr;
        if (again_) {
            const auto journal = household_.journal();
            const auto found = std::ranges::find(journal->entries, ids.front(), &journal::Entry::id);
            if (found != journal->entries.end()) day_ = found->date.day;
        }
        Q_EMIT recorded(static_cast<qint64>(ids.front()));
    });
    connect(form_, &forms::ActionForm::finished, this, [this] {
        if (!again_) {
            Q_EMIT finished();
            return;
        }
        line_->setText(tr("%n recorded; Enter records the next, Esc ends.", nullptr, recorded_));
        openForm(form_->kind(), form_->stack());
    });
    form_->show();
}

}
