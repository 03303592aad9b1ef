#include "ui/forms/action_form.h"

#include "ui/forms/entry_sheet.h"

#include <QPushButton>
#include <QShowEvent>
#include <QVBoxLayout>

namespace tierloam::forms {

class ActionForm::Private {
public:
    Private(household::Household& door, QString name) : household{door}, stack{std::move(name)} {}

    household::Household& household;
    QString stack;
    EntrySheet* sheet = nullptr;
    std::optional<household::Ticket> ticket; ///< of the write under way

    /// With its stack; an own material belongs to none.
    QString named(const QString& what) const { return stack.isEmpty() ? what : ActionForm::tr("%1: %2").arg(stack, what); }
};

ActionForm::ActionForm(household::Household& household, FormKind kind, const QString& stack, std::optional<int> slot, QWidget* parent)
    : TypedForm{parent}, d_{std::make_unique<Private>(household, stack)}
{
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    d_->sheet = new EntrySheet{household, kind, stack.toStdString(), slot, this};
    column->addWidget(d_->sheet);
    QSizePolicy policy{QSizePolicy::Preferred, QSizePolicy::Preferred};
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    d_->sheet->setTitle(d_->named(formName(kind)));
    setAccessibleName(d_->sheet->title());
    if (household.readOnly()) {
        d_->sheet->setProblem(tr("This household was opened for reading only; nothing can be recorded."));
        d_->sheet->setAcceptEnabled(false);
    }
    connect(d_->sheet, &FormShell::accepted, this, &ActionForm::record);
    connect(d_->sheet, &FormShell::cancelled, this, &ActionForm::cancel);
    connect(&household, &household::Household::recorded, this, [this](household::Ticket ticket, const std::vector<journal::EntryId>& ids) {
        if (d_->ticket != ticket) return;
        d_->ticket.reset();
        Q_EMIT recorded(ids);
        Q_EMIT finished();
    });
    connect(&household, &household::Household::failed, this, [this](household::Ticket ticket, const QString& why) {
        if (d_->ticket != ticket) return;
        d_->ticket.reset();
        d_->sheet->setBusy({});
        d_->sheet->setProblem(tr("Nothing was recorded; what you typed is still here. %1").arg(why));
        d_->sheet->acceptButton()->setFocus();
    });
}

ActionForm::~ActionForm() = default;

FormKind ActionForm::kind() const
{
    return d_->sheet->kind();
}

QString ActionForm::stack() const
{
    return d_->stack;
}

std::optional<int> ActionForm::slot() const
{
    return d_->sheet->slot();
}

void ActionForm::setDay(Day day)
{
    d_->sheet->setDay(day);
}

void ActionForm::propose(const journal::Action& action)
{
    d_->sheet->propose(action);
}

void ActionForm::askFor(reckoning::LookKind look)
{
    d_->sheet->askFor(look);
}

bool ActionForm::touched() const
{
    return d_->sheet->touched();
}

int ActionForm::heightForWidth(int width) const
{
    return layout()->heightForWidth(width);
}

int ActionForm::holdTo(int height, int width)
{
    return d_->sheet->holdTo(height, width);
}

void ActionForm::record()
{
    if (d_->ticket || d_->household.readOnly() || !d_->sheet->check()) return;
    const journal::Edit edit = d_->sheet->edit();
    if (const QString refusal = d_->household.refusalOf(edit); !refusal.isEmpty()) {
        d_->sheet->setEffect({});
        d_->sheet->setProblem(tr("This cannot be recorded. %1").arg(refusal));
        return;
    }
    d_->sheet->setProblem({});
    d_->sheet->setBusy(tr("Recording…"));
    d_->ticket = d_->household.recordAll(edit.added, d_->named(formDeed(kind())));
}

void ActionForm::cancel()
{
    if (d_->ticket || !mayGo()) return; // the write is under way; undo takes it back
    Q_EMIT finished();
}

void ActionForm::showEvent(QShowEvent* event)
{
    TypedForm::showEvent(event);
    if (!event->spontaneous()) d_->sheet->focusFirst();
}

}
