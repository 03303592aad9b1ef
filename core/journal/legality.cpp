#include "core/journal/legality.h"

namespace tierloam::journal {

namespace {

using Resolved = std::variant<Target, RefusalReason>;

/// One overload per kind of action; `asked` is the slot as typed.
struct Resolver {
    std::optional<int> asked;
    const Standing& standing;

    Resolved wholeStack() const { return Target{}; }

    Resolved typed() const
    {
        if (!standing.has(*asked)) return RefusalReason::slotMissing;
        return Target{asked};
    }

    Resolved typedOrWholeStack() const { return asked ? typed() : wholeStack(); }

    Resolved typedOrFeedSlot() const { return asked ? typed() : resolveIncoming(standing); }

    /// What is searched or taken out must be somewhere: a stack without a tray holds no worms.
    Resolved wormsOf() const
    {
        if (asked) return typed();
        if (standing.slots.empty()) return RefusalReason::noTrayToTake;
        return wholeStack();
    }

    Resolved operator()(const Setup& setup) const
    {
        if (setup.trays && *setup.trays < standing.trays()) return RefusalReason::tooFewTrays;
        return wholeStack();
    }

    Resolved operator()(const Bed&) const
    {
        const int top = standing.trays() + 1;
        if (asked && *asked != top) return typed();
        if (standing.spare() < 1) return RefusalReason::noSpareTray;
        return Target{top};
    }

    Resolved operator()(const Check& check) const
    {
        if (check.depth && *check.depth > standing.settings.height) return RefusalReason::tooDeep;
        return typedOrFeedSlot();
    }

    Resolved operator()(const TrayWeight&) const
    {
        if (asked) return typed();
        if (standing.slots.empty()) return RefusalReason::noTrayToTake;
        return Target{standing.trays()};
    }

    Resolved operator()(const Rotate&) const
    {
        if (standing.trays() < 2) return RefusalReason::rotateNeedsTwo;
        if (asked && *asked != 1) return RefusalReason::slotMissing;
        return Target{1};
    }

    Resolved operator()(const Loosen&) const
    {
        if (!standing.drying || (asked && asked != standing.dryingSlot())) return RefusalReason::noneDrying;
        return Target{standing.dryingSlot()};
    }

    Resolved operator()(const Harvest&) const
    {
        if (asked) return typed();
        if (!standing.drying) return RefusalReason::harvestNeedsSlot;
        return Target{standing.dryingSlot()};
    }

    Resolved operator()(const Stock&) const { return typedOrFeedSlot(); }
    Resolved operator()(const Feed&) const { return typedOrFeedSlot(); }
    Resolved operator()(const Cover&) const { return typedOrFeedSlot(); }
    Resolved operator()(const Water&) const { return typedOrFeedSlot(); }
    Resolved operator()(const Weigh&) const { return wormsOf(); }
    Resolved operator()(const Count&) const { return wormsOf(); }
    Resolved operator()(const Remove&) const { return wormsOf(); }
    Resolved operator()(const Move&) const { return wormsOf(); }
    Resolved operator()(const Reading&) const { return typedOrWholeStack(); }
    Resolved operator()(const Routine&) const { return typedOrWholeStack(); }
    Resolved operator()(const Event&) const { return typedOrWholeStack(); }
    Resolved operator()(const Note&) const { return typedOrWholeStack(); }
    Resolved operator()(const Drain&) const { return wholeStack(); }
    Resolved operator()(const Flush&) const { return wholeStack(); }
    Resolved operator()(const Lid&) const { return wholeStack(); }
    Resolved operator()(const Retire&) const { return wholeStack(); }
    Resolved operator()(const OwnMaterial&) const { return RefusalReason::stackNameInOwnMaterial; }
};

}

std::variant<Target, RefusalReason> resolve(const Entry& entry, const Standing& standing)
{
    return std::visit(Resolver{entry.slot, standing}, entry.action);
}

std::variant<Target, RefusalReason> resolveIncoming(const Standing& standing)
{
    const auto slot = standing.feedSlot();
    if (!slot) return RefusalReason::noTrayToTake;
    return Target{slot};
}

}
