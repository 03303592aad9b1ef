#pragma once

#include "core/journal/action.h"

#include <string>
#include <vector>

namespace tierloam::journal {

/// Row id of an entry in the household file; 0 while it has not been written.
enum class EntryId : std::int64_t { none = 0 };

/// One line of the journal: something done or seen, on a date.
struct Entry {
    EntryId id = EntryId::none;
    DayAndTime date;
    std::int64_t positionInDay = 0;  ///< journal order is (day, positionInDay); a new row goes to the end of its day
    std::string stack;               ///< its name; empty for an own material
    std::optional<int> slot;         ///< as typed, 1 = bottom; replay resolves it as the stack stands at that moment
    Action action;
    std::string note;

    bool operator==(const Entry&) const = default;
};

/// In journal order.
using Entries = std::vector<Entry>;

/// (day, positionInDay, id): the order of the journal.
bool inJournalOrder(const Entry& a, const Entry& b);

}
