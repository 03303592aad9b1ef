#include "journal_builder.h"

#include <gtest/gtest.h>

#include <map>
#include <random>
#include <set>

// Whatever sequence of steps, legal or not: the replay agrees, step by step, with a shelf of trays kept as things rather than as
// numbers, and the rules that must never break hold. Seeds are fixed; the generator is std::mt19937_64, whose output the standard fixes.
namespace tierloam::journal {

using namespace building;

namespace {

/// A tray as a thing: it stands in a stack or in storage, never in both.
struct Tray {
    int number = 0;
    int batch = 0;
};

/// The stack rules once more, by moving trays between a pile and a storage.
class Pile {
public:
    explicit Pile(int owned) : owned_{owned}
    {
        for (int number = 1; number <= owned; ++number) storage_.insert(number);
    }

    bool retired = false;
    bool shut = false;
    std::vector<Tray> standing;
    int lastBatch = 0;
    int ended = 0;
    int dryingBatch = 0;

    int n() const { return static_cast<int>(standing.size()); }
    int fed() const { return dryingBatch ? n() - 1 : n(); }

    std::optional<RefusalReason> take(const Entry& entry)
    {
        if (retired) return std::holds_alternative<Setup>(entry.action) ? RefusalReason::nameTaken : RefusalReason::stackRetired;
        const bool there = !entry.slot || (*entry.slot >= 1 && *entry.slot <= n());
        const std::string_view name = actionName(entry.action);
        if (name == "setup") return own(std::get<Setup>(entry.action).trays);
        if (name == "bed") return layBedding(entry.slot);
        if (name == "rotate") {
            if (n() < 2) return RefusalReason::rotateNeedsTwo;
            if (entry.slot && entry.slot != 1) return RefusalReason::slotMissing;
            const Tray lifted = standing.front();
            standing.erase(standing.begin());
            standing.push_back(lifted);
            dryingBatch = lifted.batch;
            return {};
        }
        if (name == "loosen") {
            if (!dryingBatch || (entry.slot && entry.slot != n())) return RefusalReason::noneDrying;
            return {};
        }
        if (name == "harvest") return emptyTray(entry.slot, there, std::get<Harvest>(entry.action).whole());
        if (name == "retire") {
            retired = true;
            return {};
        }
        if (name == "drain") {
            if (const auto spigot = std::get<Drain>(entry.action).spigot) shut = spigot == Spigot::shut;
            return {};
        }
        if (!there) return RefusalReason::slotMissing;
        const bool toTheTop = name == "feed" || name == "cover" || name == "water" || name == "stock" || name == "check";
        if (toTheTop && !entry.slot && fed() < 1) return RefusalReason::noTrayToTake;
        const bool ofWorms = name == "weigh" || name == "remove" || name == "move";
        if ((ofWorms || name == "trayweight") && !entry.slot && n() == 0) return RefusalReason::noTrayToTake;
        if ((name == "feed" || name == "cover") && entry.slot && standing[static_cast<std::size_t>(*entry.slot) - 1].batch == dryingBatch) dryingBatch = 0;
        return {};
    }

private:
    std::optional<RefusalReason> own(std::optional<int> trays)
    {
        if (!trays) return {};
        if (*trays < n()) return RefusalReason::tooFewTrays;
        owned_ = *trays;
        storage_.clear();
        for (int number = 1; number <= owned_; ++number) storage_.insert(number);
        for (const Tray& tray : standing) storage_.erase(tray.number);
        return {};
    }

    std::optional<RefusalReason> layBedding(std::optional<int> slot)
    {
        if (slot && *slot != n() + 1) {
            if (*slot < 1 || *slot > n()) return RefusalReason::slotMissing;
            if (standing[static_cast<std::size_t>(*slot) - 1].batch == dryingBatch) dryingBatch = 0;
            return {};
        }
        if (owned_ - n() < 1) return RefusalReason::noSpareTray;
        dryingBatch = 0;
        standing.push_back({*storage_.begin(), ++lastBatch});
        storage_.erase(storage_.begin());
        return {};
    }

    std::optional<RefusalReason> emptyTray(std::optional<int> slot, bool there, bool whole)
    {
        if (!there) return RefusalReason::slotMissing;
        if (!slot && !dryingBatch) return RefusalReason::harvestNeedsSlot;
        const auto at = standing.begin() + (slot.value_or(n()) - 1);
        if (!whole) return {};
        if (at->batch == dryingBatch) dryingBatch = 0;
        if (at->number <= owned_) storage_.insert(at->number);
        standing.erase(at);
        ++ended;
        return {};
    }

    int owned_;
    std::set<int> storage_;
};

class Generator {
public:
    explicit Generator(std::uint64_t seed) : random_{seed} {}

    int upTo(int most) { return static_cast<int>(random_() % static_cast<std::uint64_t>(most + 1)); }
    bool oneIn(int n) { return upTo(n - 1) == 0; }

    std::optional<int> slot() { return upTo(2) == 0 ? std::optional{upTo(5)} : std::nullopt; }

    Action action(const std::string& other)
    {
        switch (upTo(oneIn(60) ? 17 : 16)) {
        case 0: case 1: case 2: return bed();
        case 3: case 4: return feed();
        case 5: return Cover{};
        case 6: return Water{{1, Unit::L}};
        case 7: case 8: return Rotate{};
        case 9: case 10: return harvest(oneIn(3) ? std::optional{40.0} : std::nullopt);
        case 11: return Loosen{};
        case 12: return oneIn(2) ? setup(1 + upTo(5)) : setup();
        case 13: return TrayWeight{{5, Unit::kg}, {}};
        case 14: return Remove{{50, Unit::g}};
        case 15: return move(other);
        case 16: {
            Drain drain;
            drain.spigot = oneIn(2) ? Spigot::open : Spigot::shut;
            return drain;
        }
        default: return Retire{};
        }
    }

private:
    std::mt19937_64 random_;
};

struct Made {
    Entries entries;
    std::map<std::size_t, RefusalReason> refused;          ///< by the piles
    std::map<std::string, Pile> piles;
};

/// Steps in order, each also taken by the piles. `legalOnly` drops those that the piles refuse.
Made make(std::uint64_t seed, int steps, bool legalOnly)
{
    Generator generator{seed};
    Made made;
    std::int64_t id = 0;
    Day today = day("2031-01-01");
    const auto append = [&](Entry entry) {
        entry.id = EntryId{++id};
        entry.date.day = today;
        entry.positionInDay = id;
        made.entries.push_back(std::move(entry));
    };
    for (const char* name : {"Mill", "Yard"}) {
        const int owned = 1 + generator.upTo(5);
        append(entry("2031-01-01", name, setup(owned)));
        made.piles.emplace(name, owned);
    }
    for (int step = 0; step < steps; ++step) {
        today += std::chrono::days{generator.upTo(3)};
        const bool mill = generator.oneIn(2);
        const std::string name = mill ? "Mill" : "Yard";
        const std::string other = mill ? "Yard" : "Mill";
        Entry next = entry("2031-01-01", name, generator.action(other));
        if (!std::holds_alternative<Move>(next.action)) next.slot = generator.slot();
        if (std::holds_alternative<Setup>(next.action) || std::holds_alternative<Retire>(next.action)) next.slot.reset();
        Pile trial = made.piles.at(name);
        auto reason = trial.take(next);
        if (!reason && std::holds_alternative<Move>(next.action)) {
            const Pile& receiver = made.piles.at(other);
            if (receiver.retired) reason = RefusalReason::stackRetired;
            else if (receiver.fed() < 1) reason = RefusalReason::noTrayToTake;
        }
        if (reason && legalOnly) continue;
        if (reason) made.refused.emplace(made.entries.size(), *reason);
        else made.piles.at(name) = trial;
        append(std::move(next));
    }
    return made;
}

void expectSameStanding(const Pile& pile, const StackHistory& history)
{
    const Standing& standing = history.steps.back().after;
    ASSERT_EQ(standing.slots.size(), pile.standing.size());
    for (std::size_t i = 0; i < pile.standing.size(); ++i) {
        EXPECT_EQ(standing.slots[i], pile.standing[i].batch);
        EXPECT_EQ(history.batch(standing.slots[i]).tray, pile.standing[i].number);
    }
    EXPECT_EQ(standing.drying.value_or(0), pile.dryingBatch);
    EXPECT_EQ(standing.retired, pile.retired);
    EXPECT_EQ(standing.spigot == Spigot::shut, pile.shut);
    EXPECT_EQ(history.batches.size(), static_cast<std::size_t>(pile.lastBatch));
}

/// What must hold after every step of every history, by the replay alone.
void expectRulesHold(const Entries& entries, const StackHistory& history)
{
    std::size_t endedBefore = 0;
    std::size_t standingBefore = 0;
    for (const Step& step : history.steps) {
        const Standing& after = step.after;
        const std::set<int> batches{after.slots.begin(), after.slots.end()};
        ASSERT_EQ(batches.size(), after.slots.size()) << "a batch in two slots";
        std::set<int> trays;
        for (const int batch : after.slots) trays.insert(history.batch(batch).tray);
        ASSERT_EQ(trays.size(), after.slots.size()) << "a tray in two places";
        ASSERT_FALSE(trays.contains(0)) << "a batch without a tray";
        ASSERT_GE(after.spare(), 0);
        if (after.drying) {
            ASSERT_EQ(after.slots.back(), *after.drying);
            ASSERT_TRUE(after.dryingSince.has_value());
        }
        if (after.feedSlot()) {
            ASSERT_TRUE(after.has(*after.feedSlot()) && after.batchIn(*after.feedSlot()) != after.drying);
        }

        const auto* harvested = std::get_if<Harvest>(&entries[step.entry].action);
        const bool whole = harvested && harvested->whole() && !step.incoming;
        const bool onTop = std::holds_alternative<Bed>(entries[step.entry].action) && step.slot == static_cast<int>(standingBefore) + 1;
        const std::size_t expected = standingBefore + (onTop ? 1 : 0) - (whole ? 1 : 0);
        ASSERT_EQ(after.slots.size(), expected) << "only a bedding on top adds a batch, only a whole harvest ends one";
        standingBefore = after.slots.size();
        endedBefore += whole ? 1 : 0;
        if (whole) {
            ASSERT_EQ(history.batch(*step.batch).ended, step.day);
        }
    }
    std::size_t ended = 0;
    for (const Batch& batch : history.batches) ended += batch.ended ? 1 : 0;
    EXPECT_EQ(ended, endedBefore) << "a whole harvest ends exactly one batch";
    EXPECT_EQ(ended + standingBefore, history.batches.size());
}

}

class AnySequence : public testing::TestWithParam<std::uint64_t> {};

TEST_P(AnySequence, IsReplayedAsTraysWouldMoveAndEveryImpossibleStepIsRefusedWithItsReason)
{
    const Made made = make(GetParam(), 400, false);
    const Replay replayed = replay(made.entries);
    std::map<std::size_t, RefusalReason> refused;
    for (const Refusal& refusal : replayed.refusals) refused.emplace(refusal.entry, refusal.reason);
    EXPECT_EQ(refused, made.refused);
    ASSERT_EQ(replayed.stacks.size(), 2u);
    for (const StackHistory& history : replayed.stacks) {
        expectSameStanding(made.piles.at(history.name), history);
        expectRulesHold(made.entries, history);
    }
}

TEST_P(AnySequence, OfLegalStepsHasNoRefusal)
{
    const Made made = make(GetParam(), 400, true);
    const Replay replayed = replay(made.entries);
    EXPECT_TRUE(replayed.refusals.empty());
    for (const StackHistory& history : replayed.stacks) expectRulesHold(made.entries, history);
}

TEST_P(AnySequence, EditedAnywhereIsEitherRefusedOrLegalAndListsExactlyWhatMoved)
{
    const Made made = make(GetParam(), 120, true);
    Generator generator{GetParam() + 1000};
    int accepted = 0, refusals = 0;
    for (int round = 0; round < 40; ++round) {
        const Entry& chosen = made.entries[static_cast<std::size_t>(generator.upTo(static_cast<int>(made.entries.size()) - 1))];
        Edit edit;
        if (generator.oneIn(2)) edit.deleted.push_back(chosen.id);
        else edit.added.push_back(entry(dayText(chosen.date.day), "Mill", generator.action("Yard")));
        const EditEffect effect = applyEdit(made.entries, edit);
        const Replay after = replay(effect.after);
        EXPECT_EQ(effect.refusal.has_value(), !after.refusals.empty());
        EXPECT_TRUE(std::is_sorted(effect.after.begin(), effect.after.end(), inJournalOrder));
        if (effect.refusal) {
            ++refusals;
            continue;
        }
        ++accepted;
        // The bed that began each entry's batch, taken down afresh.
        const auto begun = [](const Entries& entries) {
            std::map<std::pair<EntryId, bool>, EntryId> found;
            for (const StackHistory& history : replay(entries).stacks)
                for (const Step& step : history.steps)
                    if (step.batch) found[{entries[step.entry].id, step.incoming}] = entries[history.batch(*step.batch).entry].id;
            return found;
        };
        const auto was = begun(made.entries), is = begun(effect.after);
        std::set<EntryId> expected;
        for (const Entry& entry : made.entries)
            for (const bool incoming : {false, true}) {
                const std::pair key{entry.id, incoming};
                const bool wasThere = was.contains(key), isThere = is.contains(key);
                if (entry.id != (edit.deleted.empty() ? EntryId::none : edit.deleted[0])
                    && (wasThere != isThere || (wasThere && was.at(key) != is.at(key))))
                    expected.insert(entry.id);
            }
        EXPECT_EQ((std::set<EntryId>{effect.movedToOtherBatch.begin(), effect.movedToOtherBatch.end()}), expected);
    }
    EXPECT_GT(accepted + refusals, 0);
}

INSTANTIATE_TEST_SUITE_P(Seeds, AnySequence, testing::Range<std::uint64_t>(1, 61));

TEST(PropertyGenerator, MeetsEveryReasonItCanAndLongLives)
{
    // The sequences above would prove little if they never turned a tray.
    std::set<RefusalReason> reasons;
    int batches = 0;
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        const Made made = make(seed, 400, false);
        for (const auto& [index, reason] : made.refused) reasons.insert(reason);
        for (const auto& [name, pile] : made.piles) batches += pile.ended;
    }
    using enum RefusalReason;
    for (const RefusalReason reason : {stackRetired, nameTaken, slotMissing, noTrayToTake, noSpareTray, rotateNeedsTwo, harvestNeedsSlot, noneDrying, tooFewTrays})
        EXPECT_TRUE(reasons.contains(reason)) << static_cast<int>(reason);
    EXPECT_GT(batches, 500);
}

}
