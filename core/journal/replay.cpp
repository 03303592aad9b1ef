#include "core/journal/replay.h"

#include "core/journal/effect.h"
#include "core/journal/legality.h"
#include "core/journal/names.h"

#include <algorithm>
#include <string_view>
#include <unordered_map>

namespace tierloam::journal {

namespace {

/// Goes through the entries once. Names are views into them, so nothing is copied but how each stack stands after a step.
class Replayer {
public:
    explicit Replayer(const Entries& entries) : entries_{entries}
    {
        for (const Entry& entry : entries_)
            if (std::holds_alternative<Setup>(entry.action) && isStackName(entry.stack)) firstSetup_.try_emplace(entry.stack, entry.date.day);
    }

    Replay run()
    {
        for (std::size_t index = 0; index < entries_.size(); ++index) step(index);
        return std::move(result_);
    }

private:
    void refuse(RefusalReason reason, std::size_t index, std::string_view stack)
    {
        const Entry& entry = entries_[index];
        Refusal refusal{reason, index, std::string{stack}, entry.slot, 0, entry.date.day};
        if (const StackHistory* history = known(stack)) refusal.slotsThere = history->steps.back().after.trays();
        if (reason == RefusalReason::beforeFirstSetup) refusal.day = firstSetup_.at(stack);
        result_.refusals.push_back(std::move(refusal));
    }

    StackHistory* known(std::string_view name)
    {
        const auto found = indexOf_.find(name);
        return found == indexOf_.end() ? nullptr : &result_.stacks[found->second];
    }

    /// The stack if it can take a step now; else refuses and returns nullptr.
    StackHistory* live(std::string_view name, std::size_t index)
    {
        StackHistory* history = known(name);
        if (!history) {
            const bool later = firstSetup_.contains(name);
            refuse(later ? RefusalReason::beforeFirstSetup : RefusalReason::stackUnknown, index, name);
            return nullptr;
        }
        if (history->steps.back().after.retired) {
            const bool again = std::holds_alternative<Setup>(entries_[index].action) && name == entries_[index].stack;
            refuse(again ? RefusalReason::nameTaken : RefusalReason::stackRetired, index, name);
            return nullptr;
        }
        return history;
    }

    void step(std::size_t index)
    {
        const Entry& entry = entries_[index];
        if (std::holds_alternative<OwnMaterial>(entry.action)) {
            if (!entry.stack.empty()) refuse(RefusalReason::stackNameInOwnMaterial, index, entry.stack);
            return;
        }
        if (std::holds_alternative<Setup>(entry.action) && !known(entry.stack)) {
            begin(index);
            return;
        }
        StackHistory* history = live(entry.stack, index);
        if (!history) return;
        const auto resolved = resolve(entry, history->steps.back().after);
        if (const auto* reason = std::get_if<RefusalReason>(&resolved)) {
            refuse(*reason, index, entry.stack);
            return;
        }
        const auto* move = std::get_if<Move>(&entry.action);
        std::optional<int> incomingSlot;
        StackHistory* receiver = nullptr;
        if (move) { // both sides must be possible before either is written
            receiver = receiverOf(*move, index, incomingSlot);
            if (!receiver) return;
        }
        const auto slot = std::get<Target>(resolved).slot;
        Standing after = history->steps.back().after;
        const auto batch = takeEffect(entry, slot, index, after, history->batches);
        if (std::holds_alternative<Bed>(entry.action) && !history->firstBedding) history->firstBedding = entry.date.day;
        history->steps.push_back({index, entry.date.day, slot, batch, false, std::move(after)});
        if (receiver) {
            const Standing& there = receiver->steps.back().after;
            receiver->steps.push_back({index, entry.date.day, incomingSlot, there.batchIn(*incomingSlot), true, Standing{there}});
        }
    }

    StackHistory* receiverOf(const Move& move, std::size_t index, std::optional<int>& slot)
    {
        if (move.to == entries_[index].stack) {
            refuse(RefusalReason::sameStack, index, move.to);
            return nullptr;
        }
        StackHistory* receiver = live(move.to, index);
        if (!receiver) return nullptr;
        const auto resolved = resolveIncoming(receiver->steps.back().after);
        if (const auto* reason = std::get_if<RefusalReason>(&resolved)) {
            refuse(*reason, index, move.to);
            return nullptr;
        }
        slot = std::get<Target>(resolved).slot;
        return receiver;
    }

    void begin(std::size_t index)
    {
        const Entry& entry = entries_[index];
        if (!isStackName(entry.stack)) {
            // An empty name is no name at all: such a row names no stack.
            refuse(entry.stack.empty() ? RefusalReason::stackUnknown : RefusalReason::badName, index, entry.stack);
            return;
        }
        const Setup& setup = std::get<Setup>(entry.action);
        StackHistory history;
        history.name = entry.stack;
        history.key = setup.key.value_or(stackKey(entry.stack));
        history.firstSetup = entry.date.day;
        Standing standing;
        takeEffect(entry, std::nullopt, index, standing, history.batches);
        history.steps.push_back({index, entry.date.day, std::nullopt, std::nullopt, false, std::move(standing)});
        indexOf_.emplace(entry.stack, result_.stacks.size());
        result_.stacks.push_back(std::move(history));
    }

    const Entries& entries_;
    std::unordered_map<std::string_view, Day> firstSetup_;
    std::unordered_map<std::string_view, std::size_t> indexOf_;
    Replay result_;
};

}

const Standing* StackHistory::on(Day day) const
{
    const auto after = std::upper_bound(steps.begin(), steps.end(), day, [](Day wanted, const Step& step) { return wanted < step.day; });
    return after == steps.begin() ? nullptr : &std::prev(after)->after;
}

const StackHistory* Replay::stack(const std::string& name) const
{
    const auto found = std::find_if(stacks.begin(), stacks.end(), [&](const StackHistory& history) { return history.name == name; });
    return found == stacks.end() ? nullptr : &*found;
}

Replay replay(const Entries& entries) { return Replayer{entries}.run(); }

std::uint64_t stackKey(std::string_view name)
{
    std::uint64_t hash = 0xcbf29ce484222325ULL;
    for (const char c : name) {
        hash ^= static_cast<unsigned char>(c);
        hash *= 0x100000001b3ULL;
    }
    return hash;
}

}
