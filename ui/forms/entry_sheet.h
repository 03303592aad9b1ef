#pragma once

#include "ui/forms/body.h"
#include "ui/forms/form_shell.h"

#include <QTimer>

namespace tierloam::ui {
class ChoiceField;
class DateField;
class TextField;
}

namespace tierloam::forms {

/// The common inside of the form that records and of the one that edits: the fields of a kind, then slot, date and note; the cautions of
/// the work; in words what the entry will do. It writes nothing: its owner takes the edit from it.
class EntrySheet : public FormShell {
    Q_OBJECT

public:
    /// To record: `slot` as clicked.
    EntrySheet(household::Household& household, FormKind kind, const std::string& stack, std::optional<int> slot, QWidget* parent = nullptr);
    /// To edit an entry that is there.
    EntrySheet(household::Household& household, const journal::Entry& entry, QWidget* parent = nullptr);
    ~EntrySheet() override;

    FormKind kind() const { return kind_; }
    std::optional<int> slot() const;
    void setDay(Day day);
    /// Fills in what an entry would hold; its alternative is that of the kind. Counts as nothing typed.
    void propose(const journal::Action& action);
    bool touched() const { return touched_; }
    /// The entry that is edited has become another one meanwhile: what was not changed in the form follows it. Date, tray, note and what was
    /// done are one thing each; false when one of them was changed in the form as well, to something else, and stands there as it was typed.
    bool rebase(const journal::Entry& now);

    /// Fields sound, and nothing against the form as a whole; else the words are shown and false comes back.
    bool check();
    /// What would be written; only after check().
    journal::Edit edit() const;
    /// Looks at the journal anew: what the edit would do, or why it is refused.
    void lookAhead();
    /// The field of what was asked for, else the first.
    void focusFirst();
    /// What the form is opened to read: its field takes the focus.
    void askFor(reckoning::LookKind look);

private:
    void build();
    void refreshTrays();
    void followDay();
    void sayWhatIsDone();
    void refreshCautions();
    void noteEdited();
    journal::Entry entryWith(const journal::Action& action) const;
    Day day() const;
    bool hasSlot() const;
    void takeInstead();

    household::Household& household_;
    FormKind kind_;
    std::optional<journal::Entry> edited_;
    std::optional<int> clickedSlot_;
    FormContext context_;
    FieldGrid* grid_ = nullptr;
    std::unique_ptr<Body> body_;
    ui::ChoiceField* slot_ = nullptr;
    ui::DateField* date_ = nullptr;
    ui::TextField* note_ = nullptr;
    QTimer ahead_;
    bool touched_ = false;
    ui::Field* asked_ = nullptr;
    std::optional<Amount> instead_;  ///< what is not doubted
};

}
