#include "core/exchange/journal_csv.h"

#include <cstdlib>

/// Any bytes as a journal CSV: told row by row, or read; and what was read comes back the same from its own export.
extern "C" int LLVMFuzzerTestOneInput(const unsigned char* bytes, std::size_t length)
{
    using namespace tierloam;
    const std::string_view csv{reinterpret_cast<const char*>(bytes), length};
    const auto read = exchange::readJournal(csv, {});
    if (!read.faults.empty()) return 0;
    const std::string once = exchange::writeJournal(read.effect.after);
    const auto again = exchange::readJournal(once, {});
    if (!again.faults.empty() || exchange::writeJournal(again.effect.after) != once) std::abort();
    return 0;
}
