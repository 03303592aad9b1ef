#pragma once

#include "core/reckoning/first_failure.h"

#include <atomic>
#include <functional>
#include <thread>
#include <vector>

namespace tierloam::reckoning {

/// A few threads that share out short pieces of work, thousands of times in a row: blocks of members, day after day. One caller at a time.
class Crew {
public:
    /// `hands` counts the caller too; with 1 everything is done by the caller. Fewer come where the system gives no more threads.
    explicit Crew(int hands);
    ~Crew();
    Crew(const Crew&) = delete;
    Crew& operator=(const Crew&) = delete;

    /// work(0) … work(pieces − 1), in any order and at once; returns when all are done. What is done must not depend on the order. What one of them
    /// throws is thrown here, when nobody is at work any more; pieces may then be left undone.
    void each(int pieces, const std::function<void(int)>& work);

private:
    void help();
    void share();

    std::vector<std::jthread> helpers_;
    const std::function<void(int)>* work_ = nullptr;
    int pieces_ = 0;
    std::atomic<int> next_{0};
    /// Number of the round, whether it takes helpers in, and how many are in it: one value, so that nobody comes in while the caller shuts it.
    std::atomic<unsigned> gate_{0};
    std::atomic<bool> ended_{false};
    FirstFailure failure_;
};

}
