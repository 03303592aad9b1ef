#pragma once

#include "core/journal/edit.h"

#include <string_view>
#include <utility>

/// Builds journals for tests, one entry a line; ids run 1, 2, … in the order of writing, positions as a file would give them.
namespace tierloam::journal::building {

inline Day day(std::string_view text) { return parseDay(text).value(); }

inline Entry entry(std::string_view date, std::string stack, Action action, std::optional<int> slot = {})
{
    Entry made;
    made.date.day = day(date);
    made.stack = std::move(stack);
    made.slot = slot;
    made.action = std::move(action);
    return made;
}

inline Setup setup(std::optional<int> trays = {})
{
    Setup made;
    made.trays = trays;
    return made;
}
inline Bed bed() { return {{1.0, Unit::kg}, "cardboard", {}}; }
inline Feed feed() { return {{300.0, Unit::g}, {}, {}}; }
inline Stock stock() { return {{450.0, Unit::g}, {}, {}}; }
inline Harvest harvest(std::optional<double> sharePercent = {})
{
    Harvest made{{2.0, Unit::kg}, {}, {}};
    if (sharePercent) made.share = Share::fromPercent(*sharePercent);
    return made;
}
inline Check depth(double cm)
{
    Check made;
    made.depth = centimetres(cm);
    return made;
}
inline Move move(std::string to) { return {{100.0, Unit::g}, std::move(to)}; }

class Journal {
public:
    Journal& add(std::string_view date, std::string stack, Action action, std::optional<int> slot = {})
    {
        Entry made = entry(date, std::move(stack), std::move(action), slot);
        made.id = EntryId{++lastId_};
        Edit edit;
        edit.added.push_back(std::move(made));
        entries_ = applyEdit(entries_, edit).after;
        return *this;
    }
    const Entries& entries() const { return entries_; }
    Replay replayed() const { return replay(entries_); }

private:
    Entries entries_;
    std::int64_t lastId_ = 0;
};

/// "Mill" with that many trays bedded a week apart from 2031-01-01, owning `owned`.
inline Journal stackOf(int trays, int owned = 3)
{
    Journal journal;
    journal.add("2031-01-01", "Mill", setup(owned));
    for (int tray = 0; tray < trays; ++tray) journal.add(dayText(day("2031-01-01") + std::chrono::days{7 * tray}), "Mill", bed());
    return journal;
}

/// How "Mill" stands after all of it: batch numbers from the bottom up.
inline const Standing& last(const Replay& replayed, const std::string& stack = "Mill") { return replayed.stack(stack)->steps.back().after; }
inline const Step& lastStep(const Replay& replayed, const std::string& stack = "Mill") { return replayed.stack(stack)->steps.back(); }

}
