#include "core/journal/entry.h"

#include <tuple>

namespace tierloam::journal {

bool inJournalOrder(const Entry& a, const Entry& b)
{
    return std::tie(a.date.day, a.positionInDay, a.id) < std::tie(b.date.day, b.positionInDay, b.id);
}

}
