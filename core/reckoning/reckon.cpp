#include "core/reckoning/reckon.h"

#include "core/journal/edit.h"
#include "core/materials/table.h"
#include "core/reckoning/stack_run.h"

#include <algorithm>
#include <atomic>
#include <thread>

namespace tierloam::reckoning {

namespace {

constexpr std::size_t manyStacks = 24; ///< more than these keep few snapshots

/// Everything that one stack's estimates rest on: its entries, those that move worms into it, and the household's own materials.
std::uint64_t digestOf(const journal::Entries& entries, const journal::StackHistory& history)
{
    journal::Entries own;
    for (const journal::Entry& entry : entries)
        if (std::holds_alternative<journal::OwnMaterial>(entry.action)) own.push_back(entry);
    for (const journal::Step& step : history.steps) own.push_back(entries[step.entry]);
    return journal::digest(own);
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
    result->members = options.members;
    result->stacks.resize(wanted.size());

    Options own = options;
    own.previous = nullptr;
    own.fewSnapshots = options.fewSnapshots || wanted.size() > manyStacks;
    std::vector<std::size_t> toRun;
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        const std::uint64_t digest = digestOf(entries, *wanted[i]);
        const Reckoning* before = options.previous.get();
        const StackReckoning* same = before != nullptr && before->asOf == options.asOf && before->members == options.members
            ? before->stack(wanted[i]->name) : nullptr;
        if (same != nullptr && same->digest == digest && same->present != nullptr) { // one read from what was kept has no members
            result->stacks[i] = *same;
        } else {
            result->stacks[i].digest = digest;
            toRun.push_back(i);
        }
    }

    std::atomic<bool> stopped{false};
    const auto run = [&](std::size_t i, Crew& crew) {
        const StackReckoning* before = options.previous ? options.previous->stack(wanted[i]->name) : nullptr;
        StackRun one{entries, *wanted[i], materials, own, crew};
        if (!one.run(result->stacks[i], stop, before)) stopped = true;
    };
    // As many stacks at once as there are threads; the few that are left over are shared out by blocks of members.
    const std::size_t threads = static_cast<std::size_t>(std::max(options.threads, 1));
    const std::size_t together = toRun.size() - toRun.size() % threads;
    std::atomic<std::size_t> next{0};
    const auto work = [&] {
        Crew alone{1};
        for (std::size_t k = next++; k < together && !stopped; k = next++) run(toRun[k], alone);
    };
    {
        std::vector<std::jthread> helpers;
        for (std::size_t t = 1; t < threads && t < together; ++t) helpers.emplace_back(work);
        work();
    }
    if (together < toRun.size() && !stopped) {
        Crew crew{static_cast<int>(threads)};
        for (std::size_t k = together; k < toRun.size() && !stopped; ++k) run(toRun[k], crew);
    }
    if (stopped) return nullptr;
    return result;
}

}
