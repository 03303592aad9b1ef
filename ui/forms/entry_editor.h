#pragma once

#include "core/household/household.h"
#include "ui/forms/held_to_room.h"

#include <QWidget>

#include <memory>

namespace tierloam::forms {

/// Edits one entry of the journal in place, with the form of its kind filled in: what was done, date, slot and note.
/// Before it is saved it says which later entries would move to another batch, or why the edit is impossible.
/// When the write fails it keeps its contents and says why. Enter saves, Esc gives up; the owner lets it go by deleteLater() on finished().
class EntryEditor : public QWidget, public HeldToRoom {
    Q_OBJECT

public:
    EntryEditor(household::Household& household, journal::EntryId entry, QWidget* parent = nullptr);
    ~EntryEditor() override;

    journal::EntryId entry() const;
    bool touched() const;
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    int holdTo(int height, int width) override;

public Q_SLOTS:
    void save();
    void cancel();
    /// Takes the entry out of the journal (undo brings it back); refused with its reason when a later entry rests on it.
    void removeEntry();

Q_SIGNALS:
    /// Saved, taken out or given up: the editor may go.
    void finished();

protected:
    void showEvent(QShowEvent* event) override;

private:
    class Private;
    std::unique_ptr<Private> d_;
};

}
