#include "core/reckoning/crew.h"

#include <algorithm>
#include <system_error>

namespace tierloam::reckoning {

namespace {

/// A day's work takes some tens of microseconds: looking again is cheaper than sleeping, up to a point.
constexpr int looksBeforeSleep = 40000;

// The gate: lowest bits count who is in the round, then comes whether it is open, then its number.
constexpr unsigned inside = 0x7f;
constexpr unsigned open = 0x80;
constexpr unsigned oneRound = 0x100;
constexpr unsigned number = ~(oneRound - 1);

}

Crew::Crew(int hands)
{
    const int all = std::min(hands, static_cast<int>(inside));
    helpers_.reserve(static_cast<std::size_t>(std::max(all, 1)));
    try {
        for (int i = 1; i < all; ++i) helpers_.emplace_back([this] { help(); });
    } catch (const std::system_error&) {
        // Those who came do it alone: left from here, they would wait for their end for ever.
    }
}

Crew::~Crew()
{
    ended_ = true;
    gate_ = ((gate_ & number) + oneRound) | open;
    gate_.notify_all();
    helpers_.clear();
}

void Crew::each(int pieces, const std::function<void(int)>& work)
{
    if (helpers_.empty() || pieces < 2) {
        for (int i = 0; i < pieces; ++i) work(i);
        return;
    }
    work_ = &work;
    pieces_ = pieces;
    next_ = 0;
    gate_ = ((gate_ & number) + oneRound) | open;
    gate_.notify_all();
    share();
    // Nobody is waited for who has not come: on a busy machine a helper may sleep through many rounds.
    gate_ &= ~open;
    for (int look = 0; (gate_ & inside) != 0; ++look)
        if (look > looksBeforeSleep) std::this_thread::yield();
    failure_.rethrow();
}

void Crew::share()
{
    failure_.guard([this] {
        for (int i = next_++; i < pieces_; i = next_++) (*work_)(i);
    });
    if (failure_.any()) next_ = pieces_; // what is left is of no use any more
}

void Crew::help()
{
    unsigned seen = 0;
    while (true) {
        unsigned gate = gate_;
        for (int look = 0; ((gate & open) == 0 || (gate & number) == seen) && look < looksBeforeSleep; ++look) gate = gate_;
        if ((gate & open) == 0 || (gate & number) == seen) {
            gate_.wait(gate);
            continue;
        }
        if (!gate_.compare_exchange_weak(gate, gate + 1)) continue;
        if (ended_) return;
        share();
        seen = gate & number;
        --gate_;
    }
}

}
