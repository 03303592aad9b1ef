#pragma once

#include "core/exchange/row.h"
#include "core/journal/edit.h"
#include "core/journal/replay.h"
#include "core/journal/warnings.h"
#include "core/materials/table.h"

#include <QString>

/// What the journal's codes say, in words.
namespace tierloam::exchange {

/// The entry in a few words: "2031-07-01, Mill, rotate".
QString entryText(const journal::Entry& entry);

/// Why the step is impossible, as a sentence for people: "Mill has no slot 5: it has 3." `entries` are those replayed.
QString refusalText(const journal::Refusal& refusal, const journal::Entries& entries);

/// The same for people, in the words and by the locale of the journal's page: "«Lifted» of 1 Jul 2031, Mill".
QString entryWords(const journal::Entry& entry);

/// Why an edit is refused: the sentence alone when the edit's own entry is at fault; else the entry that needs what the edit takes is named before
/// it, and what to do.
/// Empty when the effect holds no refusal.
QString editRefusalText(const journal::EditEffect& effect, const journal::Edit& edit);

/// "Later entries now fall to another batch: …", each on a line of its own; empty when none does.
QString movedText(const journal::EditEffect& effect, QString (*named)(const journal::Entry&) = entryText);

QString warningText(const journal::Warning& warning, const journal::Entries& entries);

/// The column that holds what is at fault.
Column columnOf(const journal::Refusal& refusal, const journal::Entry& entry);

/// allowedText() of many refusals of one journal: what has to be looked up in all of it is looked up once.
class AllowedTexts {
public:
    explicit AllowedTexts(const journal::Entries& entries) : entries_{entries} {}
    QString of(const journal::Refusal& refusal);

private:
    const journal::Replay& replayed();
    const QString& stacks();
    const materials::Table& table();

    const journal::Entries& entries_;
    std::optional<journal::Replay> replayed_;
    std::optional<QString> stacks_;
    std::optional<materials::Table> table_;
};

/// What would be allowed instead, for `FILE:LINE: COLUMN: found «X»; allowed: …`.
QString allowedText(const journal::Refusal& refusal, const journal::Entries& entries);

}
