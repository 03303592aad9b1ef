#include "core/reckoning/crew.h"

namespace tierloam::reckoning {

namespace {

/// A day's work takes some tens of microseconds: looking again is cheaper than sleeping, up to a point.
constexpr int looksBeforeSleep = 40000;

}

Crew::Crew(int hands)
{
    for (int i = 1; i < hands; ++i) helpers_.emplace_back([this] { help(); });
}

Crew::~Crew()
{
    ended_ = true;
    ++round_;
    round_.notify_all();
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
    busy_ = static_cast<int>(helpers_.size());
    ++round_;
    round_.notify_all();
    share();
    for (int look = 0; busy_.load() != 0; ++look)
        if (look > looksBeforeSleep) std::this_thread::yield();
}

void Crew::share()
{
    for (int i = next_++; i < pieces_; i = next_++) (*work_)(i);
}

void Crew::help()
{
    unsigned seen = 0;
    while (true) {
        for (int look = 0; round_.load() == seen && look < looksBeforeSleep; ++look) {}
        if (round_.load() == seen) {
            round_.wait(seen);
            continue;
        }
        seen = round_.load();
        if (ended_) return;
        share();
        --busy_;
    }
}

}
