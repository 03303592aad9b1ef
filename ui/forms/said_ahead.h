#pragma once

#include "core/journal/edit.h"
#include "ui/forms/form_context.h"
#include "ui/forms/form_kind.h"

#include <QString>

#include <optional>

namespace tierloam::forms {

/// An entry as it stands in a form.
struct Intended {
    FormKind kind{};
    bool edited = false;             ///< it is in the journal already
    Day day{};
    std::optional<int> slot;
};

/// What an entry will do, in words: the tray it falls to, how far that tray is, which later entries move to another batch.
QString effectText(const FormContext& context, const Intended& intended, const journal::EditEffect& effect, const journal::Entry& entry);

/// What is likely a slip, and what would be right instead.
struct Doubt {
    QString words;                   ///< empty: none
    std::optional<Amount> instead;   ///< an amount that is not doubted
};

/// Of an action that is typed: amounts that no tray, stack or sump of that day can hold, food beyond what the stack takes today. It stands in nobody's way.
Doubt doubtOf(const FormContext& context, const Intended& intended, const journal::Action& action);

}
