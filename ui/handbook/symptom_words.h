#pragma once

#include "core/guide/symptoms.h"
#include "core/household/usual.h"
#include "ui/forms/cautions.h"

#include <QString>

/// Symptoms, causes, looks and remedies in words, and the entries that belong to them.
namespace tierloam::handbook {

QString symptomText(guide::Symptom symptom);
QString causeText(guide::Cause cause);
/// "wettest tray (slot 2): 1.12 (1.05–1.20) of the water it can hold".
QString evidenceText(const guide::Evidence& evidence);
/// The look that would tell this cause from the others, and what it would show.
QString lookText(guide::Cause cause);
QString remedyText(guide::Cause cause);
/// Where to look when the record shows none of the causes of a symptom.
QString byHandText(guide::Symptom symptom);
/// What to beware of while doing it; never empty.
QList<forms::Caution> remedyCautions(guide::Cause cause);

/// An entry to record, as far as it can be filled in without making a reading up.
struct Proposed {
    journal::Action action;
    std::optional<int> slot;
};
Proposed remedyEntry(guide::Cause cause, guide::Symptom symptom, const reckoning::StackReckoning& stack, const household::Usual& usual);
Proposed lookEntry(guide::Cause cause);
/// What the buttons that open these say.
QString remedyButton(guide::Cause cause, const Proposed& entry);
QString lookButton(guide::Cause cause);

}
