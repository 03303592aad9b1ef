#pragma once

#include "core/household/household.h"
#include "ui/forms/form_kind.h"
#include "ui/forms/typed_form.h"

#include <vector>

class QLabel;
class QVBoxLayout;

namespace tierloam::forms {
class ActionForm;
}

namespace tierloam::ui {
class ChoiceField;
}

namespace tierloam::journal_page {

/// Entries one after the other without the mouse: stack and act are chosen once, Enter records and the next form of the same kind and
/// day stands ready; Esc ends. A duplicate is the same with a first form filled in, and ends with it. The owner lets it go on finished().
class EntrySeries : public QWidget {
    Q_OBJECT

public:
    /// `stack` empty: the first that stands.
    EntrySeries(household::Household& household, const QString& stack, forms::FormKind kind, QWidget* parent = nullptr);
    /// One more entry like this, dated today.
    EntrySeries(household::Household& household, const journal::Entry& like, QWidget* parent = nullptr);

    bool touched() const;
    forms::TypedForm* form() const;
    /// Asked before what was typed is thrown away, by Esc or by another stack or act.
    void setMayThrowAway(forms::MayThrowAway ask);
    int recordedSoFar() const { return recorded_; }

Q_SIGNALS:
    void recorded(qint64 entryId);
    void finished();

private:
    void chooseAnew();
    void fillStacks(const QString& chosen);
    void fillKinds(forms::FormKind chosen);
    void openForm(forms::FormKind kind, const QString& stack, std::optional<int> slot = std::nullopt);

    household::Household& household_;
    QVBoxLayout* rows_;
    ui::ChoiceField* stack_ = nullptr; ///< none in a duplicate
    ui::ChoiceField* kind_ = nullptr;
    QLabel* line_;
    forms::ActionForm* form_ = nullptr;
    forms::MayThrowAway mayThrowAway_;
    std::optional<Day> day_;
    int recorded_ = 0;
    bool again_ = false;             ///< the form has recorded, so that another follows
};

}
