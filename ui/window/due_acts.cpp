#include "ui/window/due_acts.h"

#include "core/advice/food_limit.h"
#include "core/advice/too_early.h"
#include "core/household/usual_cover.h"
#include "core/journal/last_bedding.h"
#include "core/reckoning/next_look.h"
#include "ui/common/formats.h"
#include "ui/common/material_names.h"
#include "ui/common/usual_amounts.h"
#include "ui/forms/cautions.h"
#include "ui/forms/tray_lift.h"
#include "ui/shelf/usual_acts.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

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
        : household_{household}, advice_{advice}, journal_{household.journal()}, usual_{ui::roundDefaults(household.usual(advice.stack))}, today_{household.today()}, flushes_{flushesTheSump(household, advice.stack)}
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
        case Code::hungry: return feeding(asMeasured(advice_.kg), advice_.slot == standing_->feedSlot() ? std::nullopt : advice_.slot);
        case Code::tooEarly: return drying ? paper(std::nullopt) : feeding(std::nullopt, advice_.slot);
        case Code::lowCarbon: return paper(ui::massAmount(std::max(advice_.kg, 0.01)));
        case Code::tooWet: return paper(std::nullopt);
        case Code::tooDry: return water();
        case Code::sumpFull: return flushes_ ? flush() : drain();
        case Code::addTray: return tray();
        case Code::harvestReady:
        case Code::harvestOverdue:
        case Code::readyNoHurry: return drying || advice_.slot.value_or(1) > 1 ? std::nullopt : lift();
        default: return std::nullopt; // something is to be read, weighed or decided
        }
    }

private:
    /// That much food, as the line says it.
    std::optional<Amount> asMeasured(double kg) const
    {
        const auto* stack = estimates();
        return kg > 0.0 && stack != nullptr ? std::optional{advice::mostOfFood(*stack, kg)} : std::nullopt;
    }

    DueAct named(const QString& what, journal::Entries entries) const
    {
        return {std::move(entries), DueActs::tr("%1: %2", "stack, what is recorded").arg(QString::fromStdString(advice_.stack), what), {}};
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

    /// With its usual cover. The usual amount where none is named or it is the one that is named.
    DueAct feeding(std::optional<Amount> borne, std::optional<int> slot) const
    {
        household::Usual given = usual_;
        const auto usually = reckoning::usualFeedKg(usual_, journal_->materials);
        const bool asUsual = usually && std::abs(advice_.kg - *usually) < 1e-6; // as the line says it
        if (borne && !asUsual) given.feed = *borne;
        journal::Entries entries = shelf::usualEntries(forms::FormKind::feed, given, advice_.stack, today_);
        for (journal::Entry& entry : entries) entry.slot = slot;
        return named(DueActs::tr("feed %1", "amount").arg(ui::amountText(given.feed)), std::move(entries));
    }

    DueAct paper(std::optional<Amount> amount)
    {
        const Amount sheets = amount ? *amount : household::usualCover(household::usualCovers(journal_->entries, journal_->materials, today_), advice_.stack, ui::roundAmount(journal::defaultCoverAmount));
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
        return ofTheSump(named(DueActs::tr("drain %1", "amount").arg(ui::amountText(usual_.drain)), shelf::usualEntries(forms::FormKind::drain, usual_, advice_.stack, today_)));
    }

    /// What to beware of with leachate, and what is normal in it.
    static DueAct ofTheSump(DueAct made)
    {
        made.caution = forms::sumpCautionsBrief();
        return made;
    }

    std::optional<DueAct> flush()
    {
        const auto* last = lastOf<journal::Flush>(*journal_, advice_.stack);
        if (last == nullptr) return std::nullopt;
        return ofTheSump(one(journal::Flush{last->poured, {}, {}, {}}, {}, DueActs::tr("flush with %1", "amount").arg(ui::amountText(last->poured))));
    }

    /// Asks nothing; what the tray weighs and how it is lifted stands in the line. Taking the castings of the only tray has its form.
    std::optional<DueAct> lift() const
    {
        const auto reckoning = household_.reckoning();
        const auto* stack = reckoning ? reckoning->stack(advice_.stack) : nullptr;
        if (stack == nullptr || stack->now.slots.empty() || standing_->trays() < 2 || advice::tooEarly(*stack, advice::LifeStep::lift)) return std::nullopt;
        DueAct made = one(journal::Rotate{}, {}, DueActs::tr("bottom tray lifted to the top, lid off"));
        const reckoning::Band& weight = stack->now.slots.front().weightKg;
        made.caution = DueActs::tr("It weighs about %1. %2", "a tray; what is advised for the lift").arg(ui::massBand(weight), forms::trayLift(*standing_, 1, weight.p95).words);
        return made;
    }

public:
    /// Of a bottom tray that is not ready by now and was not looked into this week.
    bool bitsWouldTell() const
    {
        const auto reckoned = household_.reckoning();
        const auto* stack = reckoned ? reckoned->stack(advice_.stack) : nullptr;
        if (stack == nullptr) return true;
        return !stack->readySince && (!stack->record.lastLook || daysBetween(*stack->record.lastLook, today_) >= reckoning::lookAgainAfter);
    }

    std::vector<DueAnswer> answers() const
    {
        using reckoning::LookKind;
        std::vector<DueAnswer> all;
        if (standing_ == nullptr) return all;
        const auto look = lookOf(advice_);
        if (!look || (advice_.code == Code::harvestSoon && !bitsWouldTell())) return all;
        const auto check = [&](const QString& text, journal::Check made) {
            all.push_back({text, one(std::move(made), slotOf(*look), DueActs::tr("%1: %2", "what was looked for, what was seen").arg(asked(*look), text))});
        };
        const auto bits = [&](const QString& text, double percent) { journal::Check made; made.bits = Share::fromPercent(percent); check(text, made); };
        const auto left = [&](const QString& text, double percent) { journal::Check made; made.left = Share::fromPercent(percent); check(text, made); };
        const auto worms = [&](const QString& text, journal::WormsSeen seen) { journal::Check made; made.worms = seen; check(text, made); };
        switch (*look) {
        case LookKind::bits:
            bits(DueActs::tr("none", "bits"), 0);
            for (const int part : {20, 8, 4, 2}) bits(DueActs::tr("1 in %1", "of the tray is bits").arg(ui::numberText(part, 0)), 100.0 / part);
            break;
        case LookKind::left:
            left(DueActs::tr("nothing left"), 0);
            left(DueActs::tr("a quarter"), 25);
            left(DueActs::tr("half"), 50);
            left(DueActs::tr("three quarters"), 75);
            break;
        case LookKind::wormsSeen:
            worms(DueActs::tr("few", "worms"), journal::WormsSeen::few);
            worms(DueActs::tr("some", "worms"), journal::WormsSeen::some);
            worms(DueActs::tr("many", "worms"), journal::WormsSeen::many);
            break;
        case LookKind::squeeze:
            for (int mark = 1; mark <= 5; ++mark) {
                journal::Reading made;
                made.squeeze = mark;
                const QString text[] = {DueActs::tr("1 crumbles"), DueActs::tr("2"), DueActs::tr("3 moist"), DueActs::tr("4"), DueActs::tr("5 streams")};
                all.push_back({text[mark - 1], one(std::move(made), slotOf(*look), DueActs::tr("%1: %2", "what was looked for, what was seen").arg(asked(*look), text[mark - 1]))});
            }
            break;
        case LookKind::bedTemperature: {
            const auto* stack = estimates();
            if (stack == nullptr) break;
            const bool us = ui::measures() == ui::Measures::us;
            const auto shown = [us](double celsius) { return us ? celsius * 1.8 + 32.0 : celsius; };
            for (const double each : around(shown(stack->now.binTempC.p05), shown(stack->now.binTempC.p50), shown(stack->now.binTempC.p95), us ? 2.0 : 1.0)) {
                journal::Reading made;
                made.bin = celsius(us ? (each - 32.0) / 1.8 : each);
                const QString text = ui::temperatureText(made.bin->base());
                all.push_back({text, one(std::move(made), {}, DueActs::tr("%1: %2", "what was looked for, what was seen").arg(asked(*look), text))});
            }
            break;
        }
        case LookKind::depth: {
            const reckoning::TrayEstimate* tray = trayAsked();
            if (tray == nullptr) break;
            const double step = ui::measures() == ui::Measures::us ? 0.508 : 0.5; // a fifth of an inch
            for (const double cm : around(tray->castingsDepthCm.p05, tray->castingsDepthCm.p50, tray->castingsDepthCm.p95, step)) {
                if (cm < 0.0) continue;
                journal::Check made;
                made.depth = centimetres(cm);
                check(ui::lengthMeant(cm), made);
            }
            break;
        }
        default: break; // a scale or a ruler tells more than a few buttons could hold: it is typed
        }
        return all;
    }

    std::optional<DueAct> done() const
    {
        switch (advice_.code) {
        case Code::heat:
        case Code::cold:
        case Code::overfed:
        case Code::trayFull:
        case Code::drainageLow:
        case Code::drainageHigh: break;
        default: return std::nullopt; // these have an entry of their own
        }
        DueAct made = one(journal::Note{}, {}, DueActs::tr("noted as done"));
        made.entries.front().note = DueActs::tr("Done: %1", "what was advised").arg(QString::fromStdString(advice_.text)).toStdString();
        return made;
    }

private:
    const reckoning::StackReckoning* estimates() const
    {
        reckoning_ = household_.reckoning();
        return reckoning_ ? reckoning_->stack(advice_.stack) : nullptr;
    }

    const reckoning::TrayEstimate* trayAsked() const
    {
        const auto* stack = estimates();
        if (stack == nullptr || !advice_.slot) return nullptr;
        const auto tray = std::ranges::find(stack->now.slots, *advice_.slot, &reckoning::TrayEstimate::slot);
        return tray == stack->now.slots.end() ? nullptr : &*tray;
    }

    /// Values in steps that the reading is worth, over what is expected and a step beyond; of too many those about the middle. What lies outside is
    /// typed into the form.
    static std::vector<double> around(double low, double middle, double high, double step)
    {
        constexpr int most = 8;
        int from = static_cast<int>(std::floor(low / step)) - 1;
        int to = static_cast<int>(std::ceil(high / step)) + 1;
        if (to - from >= most) {
            from = std::max(from, static_cast<int>(std::lround(middle / step)) - most / 2);
            to = from + most - 1;
        }
        std::vector<double> values;
        for (int i = from; i <= to; ++i) values.push_back(i * step);
        return values;
    }

    std::optional<int> slotOf(reckoning::LookKind kind) const { return kind == reckoning::LookKind::left ? standing_->feedSlot() : advice_.slot; }

    static QString asked(reckoning::LookKind kind)
    {
        switch (kind) {
        case reckoning::LookKind::bits: return DueActs::tr("bits of food or bedding");
        case reckoning::LookKind::left: return DueActs::tr("left of the last feeding");
        case reckoning::LookKind::wormsSeen: return DueActs::tr("worms seen");
        case reckoning::LookKind::bedTemperature: return DueActs::tr("bed temperature");
        case reckoning::LookKind::depth: return DueActs::tr("depth of castings");
        default: return DueActs::tr("squeezed in the hand");
        }
    }

    std::optional<DueAct> tray()
    {
        const auto* history = journal_->replay.stack(advice_.stack);
        const auto* last = history != nullptr ? journal::lastTrayBedding(journal_->entries, *history, today_) : nullptr;
        if (last == nullptr) return std::nullopt;
        return one(journal::Bed{*last}, {}, DueActs::tr("tray on top, %1 of %2", "amount, bedding").arg(ui::amountText(last->bedding), ui::materialText(last->material)));
    }

    const household::Household& household_;
    const Advice& advice_;
    std::shared_ptr<const household::JournalView> journal_;
    household::Usual usual_;
    Day today_;
    bool flushes_;
    const journal::Standing* standing_ = nullptr;
    mutable std::shared_ptr<const reckoning::Reckoning> reckoning_; ///< held while its trays are read
};

}

std::optional<DueAct> dueAct(const household::Household& household, const Advice& advice) { return Maker{household, advice}.made(); }

std::vector<DueAnswer> dueAnswers(const household::Household& household, const Advice& advice) { return Maker{household, advice}.answers(); }

std::optional<DueAct> dueDone(const household::Household& household, const Advice& advice) { return Maker{household, advice}.done(); }

std::optional<reckoning::LookKind> lookOf(const Advice& advice)
{
    if (advice.look) return advice.look;
    switch (advice.code) {
    case Code::harvestSoon: return reckoning::LookKind::bits;
    case Code::overfed: return reckoning::LookKind::left;
    case Code::heat:
    case Code::cold: return reckoning::LookKind::bedTemperature;
    default: return std::nullopt;
    }
}

bool flushesTheSump(const household::Household& household, const std::string& stack)
{
    const auto reckoning = household.reckoning();
    const auto* one = reckoning ? reckoning->stack(stack) : nullptr;
    return one != nullptr && one->record.lastFlush && one->record.lastFlush == one->record.lastDrain;
}

}
