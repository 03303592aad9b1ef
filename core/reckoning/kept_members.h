#pragma once

#include "core/reckoning/kept.h"

/// Members of a stack as bytes, so that the next session goes on from them and does not run through all years again: some of its snapshots, a megabyte
/// each at 512 members. A snapshot says itself which entries it rests on, so that it may be older than the journal.
namespace tierloam::reckoning {

/// Ages in days of the snapshots that are kept: of each the youngest that is so old. Of a household of many stacks the first alone.
inline constexpr int keptAges[] = {1, 30, 240};
/// An entry runs again some days more than it must rather than that all members are written each day.
inline constexpr int keptDays = 7;

/// What of a stack's snapshots stands in a file: the days that they end, and what each rests on.
struct KeptSnapshots {
    struct One { Day day{}; std::uint64_t prefix = 0; };
    std::vector<One> held;
    /// Nothing is written anew while the youngest still holds and is at most keptDays older than the stack's own youngest.
    bool standFor(const StackReckoning& stack) const;
};

/// Empty when the stack has no snapshot yet. `few`: the youngest alone. `written` says what the bytes hold.
std::string keptMembers(const StackReckoning& stack, const KeptFor& made, bool few, KeptSnapshots& written);

/// Ascending, to be put into the `snapshots` of a stack read by fromKept; none when the bytes are damaged, cut short, of another program or of
/// another stack. Never throws on what it is given.
std::vector<std::shared_ptr<const Snapshot>> membersFromKept(std::string_view bytes, const KeptFor& wanted, const StackReckoning& stack, KeptSnapshots& read);

}
