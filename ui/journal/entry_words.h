#pragma once

#include "core/journal/entry.h"

#include <QString>

/// The lines of the journal in words.
namespace tierloam::journal_page {

/// What was done: "Fed", "Watered", "Looked". By the index of the action's alternative, for the filter.
QString actionWord(std::size_t alternative);
QString actionWord(const journal::Action& action);
/// How much and of what: "450 g kitchen mix, on the left". The tray and the note are not in it.
QString detailWords(const journal::Entry& entry);

}
