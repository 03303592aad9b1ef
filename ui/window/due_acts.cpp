#include "ui/window/due_acts.h"

#include "ui/common/formats.h"
#include "ui/shelf/usual_acts.h"

#include <QCoreApplication>

#include <algorithm>

namespace tierloam::window {

namespace {

using advice::Advice;
using advice::Code;

struct DueActs {
    Q_DECLARE_TR_FUNCTIONS(DueActs)
};

/// The last of that kind in the stack; nullptr when there is none.
template <class Action>
const Action* lastOf(const household::JournalView& journal, const std::string& stack)
{
    const auto last = std::find_if(journal.entries.rbegin(), journal.entries.rend(), [&](const journal::Entry& entry) { return entry.stack == stack && std::holds_alternative<Action>(entry.action); });
    return last == journal.entries.rend() ? nullptr : &std::get<Action>(last->action);
}

class Maker {
public:
    Maker(const household::Household& household, const Advice& advice)
        : advice_{advice}, journal_{household.journal()}, usual_{household.usual(advice.stack)}, today_{household.today()}, flushes_{flushesTheSump(household, advice.stack)}
    {
        const auto* history = journal_->replay.stack(advice.stack);
        standing_ = history != nullptr ? history->on(today_) : nullptr;
    }

    std::optional<DueAct> made()
    {
        if (standing_ == nullptr || advice_.look) return std::nullopt; // something is to be read
        const bool drying = standing_->drying.has_value();
        switch (advice_.code) {
        case Code::feedDue:
        case Code::hungry: return feeding(advice_.kg > 0.0 ? std::optional{ui::mostOf(advice_.kg)} : std::nullopt, {});
        case Code::tooEarly: return drying ? paper(std::nullopt) : feeding(std::nullopt, advice_.slot);
        case Code::lowCarbon: return paper(ui::massAmount(std::max(advice_.kg, 0.01)));
        case Code::tooWet: return paper(std::nullopt);
        case Code::tooDry: return water();
        case Code::sumpFull: return flushes_ ? flush() : drain();
        case Code::addTray: return tray();
        default: return std::nullopt; // something is to be read, weighed or decided
        }
    }

private:
    DueAct named(const QString& what, journal::Entries entries) const
    {
        return {std::move(entries), DueActs::tr("%1: %2", "stack, what is recorded").arg(QString::fromStdString(advice_.stack), what)};
    }

    DueAct one(journal::Action action, std::optional<int> slot, const QString& what) const
    {
        journal::Entry entry;
        entry.date.day = today_;
        entry.stack = advice_.stack;
        entry.slot = slot;
        entry.action = std::move(action);
        return named(what, {std::move(entry)});
    }

    /// With its usual cover. The usual amount where none is named, and never more than is usual.
    DueAct feeding(std::optional<Amount> borne, std::optional<int> slot) const
    {
        household::Usual given = usual_;
        const auto usually = usual_.feed.mass();
        const bool usualIsBorne = advice_.code == Code::feedDue && usually && borne && borne->mass()->base() >= usually->base();
        if (borne && !usualIsBorne) given.feed = *borne;
        journal::Entries entries = shelf::usualEntries(forms::FormKind::feed, given, advice_.stack, today_);
        for (journal::Entry& entry : entries) entry.slot = slot;
        return named(DueActs::tr("feed %1", "amount").arg(ui::amountText(given.feed)), std::move(entries));
    }

    DueAct paper(std::optional<Amount> amount)
    {
        const Amount sheets = amount ? *amount : usual_.coverWithFeed.value_or(journal::defaultCoverAmount);
        return one(journal::Cover{sheets, usual_.coverMaterial}, advice_.slot, DueActs::tr("%1 of paper", "amount").arg(ui::amountText(sheets)));
    }

    /// What the bed wants, not what is usual: the advice has named it.
    std::optional<DueAct> water()
    {
        if (advice_.litres <= 0.0) return std::nullopt;
        const Amount poured = ui::volumeAmount(advice_.litres);
        return one(journal::Water{poured}, advice_.slot, DueActs::tr("water %1", "amount").arg(ui::amountText(poured)));
    }

    /// The usual volume stands for what was not measured; the form takes what was.
    DueAct drain() const
    {
        return named(DueActs::tr("drain %1", "amount").arg(ui::amountText(usual_.drain)), shelf::usualEntries(forms::FormKind::drain, usual_, advice_.stack, today_));
    }

    std::optional<DueAct> flush()
    {
        const auto* last = lastOf<journal::Flush>(*journal_, advice_.stack);
        if (last == nullptr) return std::nullopt;
        return one(journal::Flush{last->poured, {}, {}, {}}, {}, DueActs::tr("flush with %1", "amount").arg(ui::amountText(last->poured)));
    }

    std::optional<DueAct> tray()
    {
        const auto* last = lastOf<journal::Bed>(*journal_, advice_.stack);
        if (last == nullptr) return std::nullopt;
        return one(journal::Bed{*last}, {}, DueActs::tr("tray on top, %1 of %2", "amount, bedding").arg(ui::amountText(last->bedding), QString::fromStdString(last->material)));
    }

    const Advice& advice_;
    std::shared_ptr<const household::JournalView> journal_;
    household::Usual usual_;
    Day today_;
    bool flushes_;
    const journal::Standing* standing_ = nullptr;
};

}

std::optional<DueAct> dueAct(const household::Household& household, const Advice& advice) { return Maker{household, advice}.made(); }

bool flushesTheSump(const household::Household& household, const std::string& stack)
{
    const auto reckoning = household.reckoning();
    const auto* one = reckoning ? reckoning->stack(stack) : nullptr;
    return one != nullptr && one->record.lastFlush && one->record.lastFlush == one->record.lastDrain;
}

}
