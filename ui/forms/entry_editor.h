#pragma once

#include "core/household/household.h"
#include "ui/forms/held_to_room.h"
#include "ui/forms/typed_form.h"

#include <memory>

namespace tierloam::forms {

/// Edits one entry of the journal in place, with the form of its kind filled in: what was done, date, slot and note.
/// Before it is saved it says which later entries would move to another batch, or why the edit is impossible.
/// When the write fails it keeps its contents and says why. Enter saves, Esc gives up.
/// An entry that is taken out of the journal meanwhile leaves what was typed where it is, until the entry is back or it is given up.
class EntryEditor : public TypedForm, public HeldToRoom {
    Q_OBJECT

public:
    EntryEditor(household::Household& household, journal::EntryId entry, QWidget* parent = nullptr);
    ~EntryEditor() override;

    journal::EntryId entry() const;
    bool touched() const override;
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    int holdTo(int height, int width) override;

public Q_SLOTS:
    void save();
    void cancel() override;
    /// Takes the entry out of the journal (undo brings it back); refused with its reason when a later entry rests on it.
    void removeEntry();

protected:
    void showEvent(QShowEvent* event) override;

private:
    class Private;
    std::unique_ptr<Private> d_;
};

}
