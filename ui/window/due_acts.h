#pragma once

#include "core/advice/advice.h"
#include "core/household/household.h"

#include <QString>

#include <optional>
#include <vector>

/// What one click on a line of the due list writes down.
namespace tierloam::window {

struct DueAct {
    journal::Entries entries;        ///< of today, unless the advice is about another day
    QString label;                   ///< "Scullery: feed 610 g", names the undo step and what the button does
    QString caution;                 ///< of the work itself, shown beside the button; empty where there is none
    std::optional<QString> putOff;   ///< what is put off from now on and what is noted as done (store::settingPutOff), written and undone together with the entries
};

/// One of the answers to a look that needs no number: the value is the one that is named, not a range.
struct DueAnswer {
    QString text;                    ///< "1 in 8", "half", "few"
    DueAct act;
};

/// nullopt where something has to be read, weighed or decided first, or where the step would come too early: then the form opens. Usual amounts where the advice names none: the last
/// bedding for a tray that is added, the usual volume for a drain, the last one's water for a flush.
std::optional<DueAct> dueAct(const household::Household& household, const advice::Advice& advice);

/// What can be answered by one click in the line: bits, what is left of the last feeding, how many worms, a handful squeezed,
/// the bed's temperature in whole degrees, the depth in half centimetres. Empty for what is weighed or read with a ruler: that has its form.
std::vector<DueAnswer> dueAnswers(const household::Household& household, const advice::Advice& advice);

/// Of what is done without anything to be written down (a stack moved, a spigot cleared, feeding stopped): a note that says so, of today.
std::optional<DueAct> dueDone(const household::Household& household, const advice::Advice& advice);

/// What it asks to be read, if anything.
std::optional<reckoning::LookKind> lookOf(const advice::Advice& advice);

/// Those who emptied the sump last by a flush.
bool flushesTheSump(const household::Household& household, const std::string& stack);

}
