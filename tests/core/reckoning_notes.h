#pragma once

#include "core/journal/replay.h"
#include "core/reckoning/reckon.h"

#include <algorithm>
#include <string>

/// A journal in the making, for tests of the reckoning.
namespace tierloam::reckoning {

using namespace journal;

inline const Day start{std::chrono::year{2031} / 1 / 6};
inline Day onDay(int day) { return start + std::chrono::days{day}; }

/// A journal in the making; entries may be written in any order of days.
class Notes {
public:
    Notes& add(int day, const std::string& stack, Action action, std::optional<int> slot = {})
    {
        Entry entry;
        entry.id = EntryId{++number_};
        entry.positionInDay = number_;
        entry.date.day = onDay(day);
        entry.stack = stack;
        entry.slot = slot;
        entry.action = std::move(action);
        entries_.push_back(std::move(entry));
        std::stable_sort(entries_.begin(), entries_.end(), inJournalOrder);
        return *this;
    }
    Notes& begun(const std::string& stack, Setup setup = {})
    {
        add(0, stack, setup);
        add(0, stack, Bed{{480, Unit::g}, "corrugated cardboard shredded", {}});
        return add(0, stack, Stock{{450, Unit::g}, {}, {}});
    }
    Notes& fedWeekly(const std::string& stack, int from, int to, double grams = 800)
    {
        for (int day = from; day <= to; day += 7) {
            add(day, stack, Feed{{grams, Unit::g}, {}, {}});
            add(day, stack, Cover{});
        }
        return *this;
    }
    const Entries& entries() const { return entries_; }

private:
    Entries entries_;
    std::int64_t number_ = 0;
};

inline Options until(int day, int threads = 1)
{
    Options options;
    options.asOf = onDay(day);
    options.members = TIERLOAM_TEST_MEMBERS < 128 ? 64 : 128;
    options.threads = threads;
    return options;
}

}
