#pragma once

#include "core/journal/entry.h"
#include "core/reckoning/reckon.h"

#include <condition_variable>
#include <cstdint>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <stop_token>
#include <thread>

namespace tierloam::household {

/// The thread that makes estimates. A newer request stops the run of an older one and takes its place; an older one that was stopped is
/// never answered. No Qt inside: the answer is given from this thread, and hopping over to another is the asker's business.
class Reckoner {
public:
    using Function = std::function<std::shared_ptr<const reckoning::Reckoning>(const journal::Entries&, const reckoning::Options&, std::stop_token)>;
    /// `whole` is false for what there is while a run of many stacks goes on.
    using Answer = std::function<void(std::uint64_t number, std::shared_ptr<const reckoning::Reckoning>, bool whole)>;
    /// How many stacks of a run have been made.
    using Progress = std::function<void(std::uint64_t number, std::size_t made, std::size_t all)>;
    struct Request {
        std::uint64_t number = 0;      ///< given back with the answer
        journal::Entries entries;      ///< a copy of its own, in journal order and legal
        reckoning::Options options;
    };

    /// What is remembered from one session to the next; both run in this thread.
    struct Memory {
        /// What is known without running anything, asked before the first run; nullptr: nothing. It is answered, and the run follows all the same.
        std::function<std::shared_ptr<const reckoning::Reckoning>(const Request&)> known;
        /// The same estimates with what the run can go on from, asked when they have been answered.
        std::function<std::shared_ptr<const reckoning::Reckoning>(const Request&, std::shared_ptr<const reckoning::Reckoning>)> fill;
        /// After an answer, so that nobody waits for it; a newer request, and the end, ask it to stop.
        std::function<void(const Request&, const reckoning::Reckoning&, const std::stop_token&)> keep;
    };

    /// That a run came to nothing, since something was thrown in it: it has no answer. The next request is tried as any other.
    using Failure = std::function<void(std::uint64_t number)>;

    Reckoner(Function reckon, Answer answer, Memory memory = {}, Progress progress = {}, Failure failed = {});
    /// Stops the run, answers nothing any more.
    ~Reckoner();
    Reckoner(const Reckoner&) = delete;
    Reckoner& operator=(const Reckoner&) = delete;

    void ask(Request request);

private:
    void run();
    void answer(Request request, const std::stop_token& stop);

    Function reckon_;
    Answer answer_;
    Memory memory_;
    Progress progress_;
    Failure failed_;
    std::mutex mutex_;
    std::condition_variable wake_;
    std::optional<Request> next_;
    std::stop_source running_;
    bool closing_ = false;
    // Used by the thread alone.
    bool first_ = true;
    std::weak_ptr<const reckoning::Reckoning> shown_;         ///< what was remembered, as it was answered
    std::shared_ptr<const reckoning::Reckoning> latest_;      ///< the same with members, then what the last run made
    std::jthread thread_;              ///< last: the others outlive it
};

}
