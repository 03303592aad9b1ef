#pragma once

#include "core/household/household.h"
#include "core/reckoning/look_kind.h"
#include "ui/forms/form_kind.h"
#include "ui/forms/held_to_room.h"
#include "ui/forms/typed_form.h"

#include <memory>
#include <optional>

namespace tierloam::forms {

/// A small form in place, never a dialog: records one thing done to a stack (with a feeding, its cover too: one undo step).
/// Usual amounts and the last choices are filled in and the date is today until changed. Enter records, Esc gives up.
/// It says in words what is wrong with a field, why a step is impossible, and which tray the entry falls to on its date.
/// When a write fails it keeps its contents and says why. The owner shows it and lets it go by deleteLater() on finished().
class ActionForm : public TypedForm, public HeldToRoom {
    Q_OBJECT

public:
    /// `slot`: the tray that was clicked; nullopt leaves it to the form's default (kept empty in the entry).
    ActionForm(household::Household& household, FormKind kind, const QString& stack, std::optional<int> slot = std::nullopt,
               QWidget* parent = nullptr);
    ~ActionForm() override;

    FormKind kind() const;
    QString stack() const;
    std::optional<int> slot() const;
    /// Starts on another day than today (the shelf's date slider).
    void setDay(Day day);
    /// Fills in what the entry would hold instead of the usual; its alternative is that of the kind.
    void propose(const journal::Action& action);
    /// What it is opened to read: that field takes the focus.
    void askFor(reckoning::LookKind look);
    bool touched() const override;
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    int holdTo(int height, int width) override;

public Q_SLOTS:
    /// As the Record button: checks, then writes; finished() follows once it is durable.
    void record();
    void cancel() override;

Q_SIGNALS:
    /// The entries are durable on disk; comes just before finished().
    void recorded(const std::vector<tierloam::journal::EntryId>& ids);

protected:
    void showEvent(QShowEvent* event) override;

private:
    class Private;
    std::unique_ptr<Private> d_;
};

}
