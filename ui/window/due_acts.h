#pragma once

#include "core/advice/advice.h"
#include "core/household/household.h"

#include <QString>

#include <optional>

/// What one click on a line of the due list writes down.
namespace tierloam::window {

struct DueAct {
    journal::Entries entries;        ///< of today, unless the advice is about another day
    QString label;                   ///< "Scullery: feed 610 g", names the undo step and what the button does
};

/// nullopt where something has to be read, weighed or decided first: then the form opens. Usual amounts where the advice names none: the last
/// bedding for a tray that is added, the usual volume for a drain, the last one's water for a flush.
std::optional<DueAct> dueAct(const household::Household& household, const advice::Advice& advice);

/// Those who emptied the sump last by a flush.
bool flushesTheSump(const household::Household& household, const std::string& stack);

}
