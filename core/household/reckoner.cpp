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

Reckoner::Reckoner(Function reckon, Answer answer, Memory memory, Progress progress)
    : reckon_{std::move(reckon)}, answer_{std::move(answer)}, memory_{std::move(memory)}, progress_{std::move(progress)}, thread_{[this] { run(); }}
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
    bool first = true;
    std::weak_ptr<const reckoning::Reckoning> shown;         // what was remembered, as it was answered
    std::shared_ptr<const reckoning::Reckoning> latest;      // the same with members, then what the last run made
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
        if (const auto known = std::exchange(memory_.known, {}))
            if (auto before = known(request)) {
                answer_(request.number, before, true);
                shown = before;
                latest = memory_.fill ? memory_.fill(request, std::move(before)) : std::move(before);
            }
        // Whoever asks before the answer of a first run has reached them knows no more than what was remembered.
        if (latest && (!request.options.previous || request.options.previous == shown.lock())) request.options.previous = latest;
        request.options.progress = [&](std::size_t made, std::size_t all, std::shared_ptr<const reckoning::Reckoning> soFar) {
            if (soFar) answer_(request.number, std::move(soFar), false);
            if (progress_) progress_(request.number, made, all);
        };
        const auto result = reckon_(request.entries, request.options, stop);
        if (!result || stop.stop_requested()) continue;
        answer_(request.number, result, true);
        latest = result;
        request.options.previous = nullptr;
        if (memory_.keep) memory_.keep(request, *result, stop);
        if (std::exchange(first, false)) giveBackMemory();
    }
}

}
