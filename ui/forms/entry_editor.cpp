#include "ui/forms/entry_editor.h"

#include "ui/common/panels.h"
#include "ui/forms/entry_sheet.h"

#include <QLabel>
#include <QPushButton>
#include <QShowEvent>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace tierloam::forms {

class EntryEditor::Private {
public:
    explicit Private(household::Household& door) : household{door} {}

    household::Household& household;
    journal::Entry before;
    EntrySheet* sheet = nullptr;         ///< nullptr when the entry was not there
    QPushButton* takeOut = nullptr;
    std::optional<household::Ticket> ticket;
    bool apart = false;                  ///< changed elsewhere in what was changed here too, and nobody has been told yet
    bool gone = false;                   ///< taken out of the journal meanwhile; undo or redo may bring it back

    void follow();
    QString label() const
    {
        const QString deed = formDeed(sheet->kind());
        return before.stack.empty() ? deed : EntryEditor::tr("%1: %2").arg(QString::fromStdString(before.stack), deed);
    }
};

/// The entry may become another one while it is edited: by undo, by a change of many together, by an import, by another program.
void EntryEditor::Private::follow()
{
    if (sheet->isBusy()) return; // it is this editor that changes it
    const auto view = household.journal();
    const auto now = std::ranges::find(view->entries, before.id, &journal::Entry::id);
    if (const bool missing = now == view->entries.end(); missing || gone) {
        gone = missing;
        sheet->setProblem(gone ? EntryEditor::tr("This entry has been taken out of the journal meanwhile. What you typed is still here: undo or redo brings the entry back, Esc gives it up.") : QString{});
        sheet->setAcceptEnabled(!gone && !household.readOnly());
        takeOut->setEnabled(!gone && !household.readOnly());
    }
    if (gone || *now == before) return;
    if (!sheet->rebase(*now)) apart = true;
    before = *now;
}

EntryEditor::EntryEditor(household::Household& household, journal::EntryId entry, QWidget* parent)
    : TypedForm{parent}, d_{std::make_unique<Private>(household)}
{
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    QSizePolicy policy{QSizePolicy::Preferred, QSizePolicy::Preferred};
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    const auto view = household.journal();
    const auto found = std::find_if(view->entries.begin(), view->entries.end(), [entry](const journal::Entry& each) { return each.id == entry; });
    if (found == view->entries.end()) {
        column->addWidget(ui::makeLabel(tr("This entry is no longer in the journal."), ui::TextRole::body, this, true));
        return;
    }
    d_->before = *found;
    d_->sheet = new EntrySheet{household, d_->before, this};
    column->addWidget(d_->sheet);
    d_->sheet->setTitle(tr("Edit: %1").arg(d_->label()));
    setAccessibleName(d_->sheet->title());
    d_->sheet->setAcceptText(tr("Save"));
    d_->takeOut = ui::makeButton(tr("Delete"), ui::Tone::brick, this);
    d_->takeOut->setObjectName(QStringLiteral("delete"));
    d_->takeOut->setToolTip(tr("Takes the entry out of the journal; undo brings it back"));
    d_->sheet->addButton(d_->takeOut);
    if (household.readOnly()) {
        d_->sheet->setProblem(tr("This household was opened for reading only; nothing can be changed."));
        d_->sheet->setAcceptEnabled(false);
        d_->takeOut->setEnabled(false);
    }
    connect(d_->takeOut, &QPushButton::clicked, this, &EntryEditor::removeEntry);
    connect(d_->sheet, &FormShell::accepted, this, &EntryEditor::save);
    connect(d_->sheet, &FormShell::cancelled, this, &EntryEditor::cancel);
    connect(&household, &household::Household::changed, this, [this] { d_->follow(); });
    connect(&household, &household::Household::recorded, this, [this](household::Ticket ticket) {
        if (d_->ticket != ticket) return;
        d_->ticket.reset();
        Q_EMIT finished();
    });
    connect(&household, &household::Household::failed, this, [this](household::Ticket ticket, const QString& why) {
        if (d_->ticket != ticket) return;
        d_->ticket.reset();
        d_->sheet->setBusy({});
        d_->takeOut->setEnabled(true);
        d_->sheet->setProblem(tr("Nothing was changed; what you typed is still here. %1").arg(why));
        d_->sheet->acceptButton()->setFocus();
    });
}

EntryEditor::~EntryEditor() = default;

journal::EntryId EntryEditor::entry() const
{
    return d_->before.id;
}

bool EntryEditor::touched() const
{
    return d_->sheet && d_->sheet->touched();
}

int EntryEditor::heightForWidth(int width) const
{
    return layout()->heightForWidth(width);
}

int EntryEditor::holdTo(int height, int width)
{
    return d_->sheet ? d_->sheet->holdTo(height, width) : heightForWidth(width);
}

void EntryEditor::save()
{
    if (!d_->sheet || d_->ticket || d_->gone || d_->household.readOnly() || !d_->sheet->check()) return;
    if (std::exchange(d_->apart, false)) {
        d_->sheet->setProblem(tr("Not saved yet: this entry has been changed elsewhere meanwhile, in what you have changed too. What you typed is still here; save once more to put it in its place, or leave it as it is now with Esc."));
        return;
    }
    const journal::Edit edit = d_->sheet->edit();
    if (edit.replaced.front() == d_->before) {
        Q_EMIT finished(); // nothing changed: nothing to write or to undo
        return;
    }
    if (const QString refusal = d_->household.refusalOf(edit); !refusal.isEmpty()) {
        d_->sheet->setEffect({});
        d_->sheet->setProblem(tr("This cannot be saved. %1").arg(refusal));
        return;
    }
    d_->sheet->setProblem({});
    d_->sheet->setBusy(tr("Saving…"));
    d_->takeOut->setEnabled(false);
    d_->ticket = d_->household.edit(edit.replaced.front(), tr("edit of %1").arg(d_->label()));
}

void EntryEditor::cancel()
{
    if (d_->ticket || !mayGo()) return;
    Q_EMIT finished();
}

void EntryEditor::removeEntry()
{
    if (!d_->sheet || d_->ticket || d_->gone || d_->household.readOnly()) return;
    journal::Edit edit;
    edit.deleted.push_back(d_->before.id);
    if (const QString refusal = d_->household.refusalOf(edit); !refusal.isEmpty()) {
        d_->sheet->setProblem(tr("This entry cannot be taken out. %1").arg(refusal));
        return;
    }
    d_->sheet->setBusy(tr("Deleting…"));
    d_->takeOut->setEnabled(false);
    d_->ticket = d_->household.remove({d_->before.id}, tr("deletion of %1").arg(d_->label()));
}

void EntryEditor::showEvent(QShowEvent* event)
{
    TypedForm::showEvent(event);
    if (d_->sheet && !event->spontaneous()) d_->sheet->focusFirst();
}

}
