#pragma once

#include "core/household/household.h"
#include "ui/common/choice_field.h"

namespace tierloam::handbook {

/// The stack that a page of the handbook speaks of: those that stand today.
class StackChoice : public ui::ChoiceField {
    Q_OBJECT

public:
    explicit StackChoice(const household::Household& household, QWidget* parent = nullptr);

    QString stack() const { return value().toString(); }
    /// Takes the stacks anew and keeps what was chosen; with none chosen, the one in which a tray dries (`dryingFirst`), else the first.
    void follow(bool dryingFirst = false);

private:
    const household::Household& household_;
};

}
