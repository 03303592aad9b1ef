#include "core/reckoning/reckon.h"

#include "core/journal/absences.h"
#include "core/journal/edit.h"
#include "core/materials/table.h"
#include "core/reckoning/care.h"
#include "core/reckoning/stack_run.h"

#include <algorithm>
#include <atomic>
#include <chrono>
#include <mutex>
#include <thread>

namespace tierloam::reckoning {

namespace {

constexpr std::chrono::seconds between{2}; ///< hand-overs of what there is so far
/// Everything that one stack's estimates rest on: its entries, those that move worms into it, and the household's own materials.
std::uint64_t digestOf(const journal::Entries& entries, const journal::StackHistory& history)
{
    journal::Entries own;
    for (const journal::Entry& entry : entries)
        if (std::holds_alternative<journal::OwnMaterial>(entry.action)) own.push_back(entry);
    for (const journal::Step& step : history.steps) own.push_back(entries[step.entry]);
    return journal::digest(own);
}

/// Tells how far a reckoning of many stacks is. Called from several threads.
class Progress {
public:
    Progress(const Options& options, const Reckoning& whole, const std::vector<std::size_t>& toRun, std::size_t first)
        : options_{options}, whole_{whole}, first_{first}, all_{toRun.size()}, made_(whole.stacks.size(), 1)
    {
        for (const std::size_t i : toRun) made_[i] = 0;
    }

    /// The stack at this place has been made; nothing is written to it any more.
    void note(std::size_t place, const std::vector<std::string>& names)
    {
        if (!options_.progress) return;
        const std::lock_guard lock{mutex_};
        made_[place] = 1;
        const std::size_t done = ++done_;
        const auto now = std::chrono::steady_clock::now();
        const bool handOver = done < all_ && (done == first_ || now - last_ >= between);
        if (handOver) last_ = now;
        options_.progress(done, all_, handOver ? soFar(names) : nullptr);
    }

private:
    std::shared_ptr<const Reckoning> soFar(const std::vector<std::string>& names) const
    {
        auto part = std::make_shared<Reckoning>();
        part->asOf = whole_.asOf;
        part->journalDigest = whole_.journalDigest;
        part->members = whole_.members;
        for (std::size_t i = 0; i < whole_.stacks.size(); ++i) {
            const StackReckoning* before = options_.previous ? options_.previous->stack(names[i]) : nullptr;
            if (made_[i] != 0) part->stacks.push_back(whole_.stacks[i]);
            else if (before != nullptr) part->stacks.push_back(*before);
        }
        return part;
    }

    const Options& options_;
    const Reckoning& whole_;
    std::size_t first_, all_, done_ = 0;
    std::vector<char> made_;
    std::chrono::steady_clock::time_point last_ = std::chrono::steady_clock::now();
    std::mutex mutex_;
};

/// Those shown first before the others, each in the order of the journal. How many of `toRun` are shown first.
std::size_t putShownFirst(std::vector<std::size_t>& toRun, const std::vector<std::string>& names, const std::vector<std::string>& shown)
{
    const auto rest = std::stable_partition(toRun.begin(), toRun.end(), [&](std::size_t i) { return std::find(shown.begin(), shown.end(), names[i]) != shown.end(); });
    return static_cast<std::size_t>(rest - toRun.begin());
}

}

const StackEstimate* StackReckoning::on(Day day) const
{
    const auto after = std::upper_bound(history.begin(), history.end(), day, [](Day wanted, const StackEstimate& at) { return wanted < at.day; });
    return after == history.begin() ? nullptr : &*(after - 1);
}

const StackReckoning* Reckoning::stack(const std::string& name) const
{
    const auto found = std::find_if(stacks.begin(), stacks.end(), [&](const StackReckoning& each) { return each.name == name; });
    return found == stacks.end() ? nullptr : &*found;
}

std::shared_ptr<const Reckoning> reckon(const journal::Entries& all, const Options& options, std::stop_token stop)
{
    const auto end = std::upper_bound(all.begin(), all.end(), options.asOf, [](Day day, const journal::Entry& entry) { return day < entry.date.day; });
    const journal::Entries entries{all.begin(), end};
    const materials::Table materials = materials::Table::withOwn(all);
    const journal::Replay replay = journal::replay(entries);

    std::vector<const journal::StackHistory*> wanted;
    for (const journal::StackHistory& history : replay.stacks) {
        const journal::Standing* now = history.on(options.asOf);
        if (history.firstBedding && *history.firstBedding <= options.asOf && now != nullptr && !now->retired) wanted.push_back(&history);
    }
    auto result = std::make_shared<Reckoning>();
    result->asOf = options.asOf;
    result->journalDigest = journal::digest(entries);
    const bool many = wanted.size() > manyStacks;
    result->members = many ? std::min(options.members, membersOfMany) : options.members;
    result->stacks.resize(wanted.size());

    Options own = options;
    own.previous = nullptr;
    own.members = result->members;
    own.fewSnapshots = options.fewSnapshots || many;
    std::vector<std::size_t> toRun;
    std::vector<std::string> names;
    names.reserve(wanted.size());
    for (const journal::StackHistory* each : wanted) names.push_back(each->name);
    // What is written down of days to come says nothing of the stack, but who will be there; before anything is handed over.
    const auto noteToCome = [&](std::size_t i) { noteAbsences(result->stacks[i].record, journal::absencesOf(all, names[i]), options.asOf); };
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        const std::uint64_t digest = digestOf(entries, *wanted[i]);
        const Reckoning* before = options.previous.get();
        const StackReckoning* same = before != nullptr && before->asOf == options.asOf && before->members == result->members
            ? before->stack(wanted[i]->name) : nullptr;
        if (same != nullptr && same->digest == digest && same->present != nullptr // one read from what was kept has no members
            && same->present->course.surroundings.southern == options.southern) {
            result->stacks[i] = *same;
            noteToCome(i);
        } else {
            result->stacks[i].digest = digest;
            toRun.push_back(i);
        }
    }

    Progress progress{options, *result, toRun, putShownFirst(toRun, names, options.shownFirst)};

    std::atomic<bool> stopped{false};
    const auto run = [&](std::size_t i, Crew& crew) {
        const StackReckoning* before = options.previous ? options.previous->stack(wanted[i]->name) : nullptr;
        StackRun one{entries, *wanted[i], materials, own, crew};
        if (!one.run(result->stacks[i], stop, before)) {
            stopped = true;
            return;
        }
        noteToCome(i);
        progress.note(i, names);
    };
    // As many stacks at once as there are threads; the few that are left over are shared out by blocks of members.
    const std::size_t threads = static_cast<std::size_t>(std::max(options.threads, 1));
    const std::size_t together = toRun.size() - toRun.size() % threads;
    std::atomic<std::size_t> next{0};
    FirstFailure failure;
    const auto work = [&] {
        failure.guard([&] {
            Crew alone{1};
            for (std::size_t k = next++; k < together && !stopped; k = next++) run(toRun[k], alone);
        });
        if (failure.any()) stopped = true;
    };
    {
        std::vector<std::jthread> helpers;
        for (std::size_t t = 1; t < threads && t < together; ++t) helpers.emplace_back(work);
        work();
    }
    failure.rethrow();
    if (together < toRun.size() && !stopped) {
        Crew crew{static_cast<int>(threads)};
        for (std::size_t k = together; k < toRun.size() && !stopped; ++k) run(toRun[k], crew);
    }
    if (stopped) return nullptr;
    return result;
}

}
