#include "core/household/reckoner.h"

#include <utility>

#ifdef __GLIBC__
#include <malloc.h>
#endif

namespace tierloam::household {

namespace {

/// What the first reckoning of a session needed on its way the allocator would keep for another from scratch, which as a rule never comes.
void giveBackMemory()
{
#ifdef __GLIBC__
    malloc_trim(0);
#endif
}

}

Reckoner::Reckoner(Function reckon, Answer answer, Memory memory, Progress progress, Failure failed)
    : reckon_{std::move(reckon)}, answer_{std::move(answer)}, memory_{std::move(memory)}, progress_{std::move(progress)}, failed_{std::move(failed)}, thread_{[this] { run(); }}
{
}

Reckoner::~Reckoner()
{
    {
        const std::lock_guard lock{mutex_};
        closing_ = true;
        running_.request_stop();
    }
    wake_.notify_one();
}

void Reckoner::ask(Request request)
{
    {
        const std::lock_guard lock{mutex_};
        next_ = std::move(request);
        running_.request_stop();
    }
    wake_.notify_one();
}

void Reckoner::run()
{
    for (;;) {
        Request request;
        std::stop_token stop;
        {
            std::unique_lock lock{mutex_};
            wake_.wait(lock, [this] { return closing_ || next_; });
            if (closing_) return;
            request = std::move(*next_);
            next_.reset();
            running_ = std::stop_source{};
            stop = running_.get_token();
        }
        // Memory may give out in a run, and what leaves a thread's function ends the program with all that is typed into it.
        const std::uint64_t number = request.number;
        try {
            answer(std::move(request), stop);
        } catch (...) {
            if (failed_ && !stop.stop_requested()) failed_(number);
        }
    }
}

void Reckoner::answer(Request request, const std::stop_token& stop)
{
    if (const auto known = std::exchange(memory_.known, {}))
        if (auto before = known(request)) {
            answer_(request.number, before, true);
            shown_ = before;
            latest_ = memory_.fill ? memory_.fill(request, std::move(before)) : std::move(before);
        }
    // Whoever asks before the answer of a first run has reached them knows no more than what was remembered.
    if (latest_ && (!request.options.previous || request.options.previous == shown_.lock())) request.options.previous = latest_;
    request.options.progress = [&](std::size_t made, std::size_t all, std::shared_ptr<const reckoning::Reckoning> soFar) {
        if (soFar) answer_(request.number, std::move(soFar), false);
        if (progress_) progress_(request.number, made, all);
    };
    const auto result = reckon_(request.entries, request.options, stop);
    if (!result || stop.stop_requested()) return;
    answer_(request.number, result, true);
    latest_ = result;
    request.options.previous = nullptr;
    try {
        if (memory_.keep) memory_.keep(request, *result, stop);
    } catch (...) {
        // The answer stands; the next session makes anew what is not kept.
    }
    if (std::exchange(first_, false)) giveBackMemory();
}

}
