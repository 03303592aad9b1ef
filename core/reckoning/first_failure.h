#pragma once

#include <atomic>
#include <exception>
#include <mutex>
#include <utility>

namespace tierloam::reckoning {

/// What a helping thread cannot throw (memory gave out, say) is kept and thrown again by whoever waits for it: an exception that leaves a thread's
/// function ends the program. Of several the first is kept.
class FirstFailure {
public:
    template <class Work>
    void guard(Work&& work) noexcept
    {
        try {
            std::forward<Work>(work)();
        } catch (...) {
            const std::lock_guard lock{mutex_};
            if (!first_) first_ = std::current_exception();
            any_ = true;
        }
    }
    bool any() const noexcept { return any_; }
    /// Called when no other thread is at work any more; afterwards there is none.
    void rethrow()
    {
        if (!any_.exchange(false)) return;
        std::rethrow_exception(std::exchange(first_, nullptr));
    }

private:
    std::mutex mutex_;
    std::exception_ptr first_;
    std::atomic<bool> any_{false};
};

}
