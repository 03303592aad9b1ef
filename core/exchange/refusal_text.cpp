#include "core/exchange/refusal_text.h"

#include "core/exchange/cells.h"
#include "core/exchange/text.h"
#include "core/quantity/number_text.h"
#include "core/wording/action_words.h"
#include "core/wording/dates.h"
#include "core/wording/formats.h"

#include <QStringBuilder>

#include <algorithm>

namespace tierloam::exchange {

namespace {

using journal::RefusalReason;

/// Names of the stacks that are set up, for a name that is not; one that holds a comma stands in quotes.
QString knownStacks(const journal::Replay& replayed)
{
    constexpr int most = 8;
    QString list;
    int count = 0;
    for (const journal::StackHistory& history : replayed.stacks) {
        if (history.steps.back().after.retired) continue;
        if (++count > most) return list + QStringLiteral(", …");
        if (!list.isEmpty()) list += QStringLiteral(", ");
        list += history.name.find(',') == std::string::npos ? shown(history.name) : QString{u'«' % shown(history.name) % u'»'};
    }
    return list;
}

QString slotText(const journal::Refusal& refusal) { return refusal.slot ? QString::number(*refusal.slot) : QString{}; }

QString heightText(const journal::Refusal& refusal, const journal::Replay& replayed)
{
    const journal::StackHistory* history = replayed.stack(refusal.stack);
    const journal::Standing* standing = history ? history->on(refusal.day) : nullptr;
    return wording::lengthText(standing ? standing->settings.height.base() : journal::StackSettings{}.height.base());
}

}

QString entryText(const journal::Entry& entry)
{
    QString text = toQString(dayText(entry.date.day));
    if (!entry.stack.empty()) text += QStringLiteral(", ") + shown(entry.stack);
    return text + QStringLiteral(", ") + toQString(journal::actionName(entry.action));
}

QString entryWords(const journal::Entry& entry)
{
    const QString what = wording::actionWord(entry.action);
    const QString when = wording::fullDay(entry.date.day);
    return entry.stack.empty() ? ExchangeText::tr("«%1» of %2").arg(what, when) : ExchangeText::tr("«%1» of %2, %3").arg(what, when, shown(entry.stack));
}

QString refusalText(const journal::Refusal& refusal, const journal::Entries& entries)
{
    const QString stack = shown(refusal.stack);
    const QString there = QString::number(refusal.slotsThere);
    switch (refusal.reason) {
    case RefusalReason::stackUnknown:
        return refusal.stack.empty() ? ExchangeText::tr("The entry names no stack.") : ExchangeText::tr("%1 has never been set up.").arg(stack);
    case RefusalReason::beforeFirstSetup:
        return ExchangeText::tr("%1 was first set up on %2; nothing can be dated before that.").arg(stack, wording::fullDay(refusal.day));
    case RefusalReason::stackRetired:
        return ExchangeText::tr("%1 has been retired.").arg(stack);
    case RefusalReason::nameTaken:
        return ExchangeText::tr("%1 is the name of a retired stack and cannot be used again.").arg(stack);
    case RefusalReason::badName:
        return ExchangeText::tr("A stack cannot be called «%1»: no semicolon, no control character, and no blank at either end.").arg(stack);
    case RefusalReason::slotMissing:
        return ExchangeText::tr("%1 has no slot %2 then; trays that stand: %3.").arg(stack, slotText(refusal), there);
    case RefusalReason::noTrayToTake:
        return refusal.slotsThere == 0 ? ExchangeText::tr("No tray of %1 is bedded then.").arg(stack)
                                       : ExchangeText::tr("The only tray of %1 is drying in the light then.").arg(stack);
    case RefusalReason::noSpareTray:
        return ExchangeText::tr("%1 has no tray in storage then; trays that stand: %2.").arg(stack, there);
    case RefusalReason::rotateNeedsTwo:
        return ExchangeText::tr("A rotation needs two trays or more; trays of %1 that stand then: %2.").arg(stack, there);
    case RefusalReason::harvestNeedsSlot:
        return ExchangeText::tr("No tray of %1 is drying then, so the harvest must say its slot.").arg(stack);
    case RefusalReason::noneDrying:
        return refusal.slot ? ExchangeText::tr("The tray in slot %2 of %1 is not drying then.").arg(stack, slotText(refusal))
                            : ExchangeText::tr("No tray of %1 is drying then.").arg(stack);
    case RefusalReason::tooFewTrays:
        return ExchangeText::tr("Fewer trays cannot be owned than stand; trays of %1 that stand then: %2.").arg(stack, there);
    case RefusalReason::sameStack:
        return ExchangeText::tr("Worms cannot be moved from %1 to itself.").arg(stack);
    case RefusalReason::tooDeep:
        return ExchangeText::tr("The castings cannot be deeper than the tray, %1.").arg(heightText(refusal, journal::replay(entries)));
    case RefusalReason::stackNameInOwnMaterial:
        return ExchangeText::tr("An own material belongs to the household and to no stack.");
    case RefusalReason::itemUnknown:
        return ExchangeText::tr("«%1» is known neither to the table of materials nor as an own material.").arg(shown(itemOf(entries[refusal.entry].action)));
    case RefusalReason::entryGone:
        return ExchangeText::tr("The entry is not there any more.");
    }
    return {};
}

QString editRefusalText(const journal::EditEffect& effect, const journal::Edit& edit)
{
    if (!effect.refusal) return {};
    const QString why = refusalText(*effect.refusal, effect.after);
    if (effect.refusal->entry >= effect.after.size()) return why;
    const journal::Entry& refused = effect.after[effect.refusal->entry];
    const auto isRefused = [&](const journal::Entry& entry) { return entry.id == refused.id; };
    const bool own = refused.id == journal::EntryId::none || std::any_of(edit.added.begin(), edit.added.end(), isRefused)
        || std::any_of(edit.replaced.begin(), edit.replaced.end(), isRefused);
    if (own) return why;
    return ExchangeText::tr("%1 would not be possible any more: %2 Delete or change that entry first.").arg(entryWords(refused), why);
}

QString movedText(const journal::EditEffect& effect, QString (*named)(const journal::Entry&))
{
    if (effect.movedToOtherBatch.empty()) return {};
    QString text = ExchangeText::tr("Later entries that now fall to another batch: %1").arg(effect.movedToOtherBatch.size());
    auto next = effect.movedToOtherBatch.begin();
    for (const journal::Entry& entry : effect.after) {
        if (next == effect.movedToOtherBatch.end()) break;
        if (entry.id != *next) continue;
        text += QLatin1Char{'\n'} + named(entry);
        ++next;
    }
    return text;
}

QString warningText(const journal::Warning& warning, const journal::Entries& entries)
{
    const auto name = [](const std::string& species) { return species.empty() ? toQString(journal::defaultSpecies) : shown(species); };
    switch (warning.reason) {
    case journal::WarningReason::secondSpecies:
        return ExchangeText::tr("%1: a second species in this stack; from here on all its worms are reckoned as %2, not %3.")
            .arg(entryText(entries[warning.entry]), name(warning.now), name(warning.before));
    }
    return {};
}

Column columnOf(const journal::Refusal& refusal, const journal::Entry& entry)
{
    // What a move says of the receiving stack stands in its detail.
    if (std::holds_alternative<journal::Move>(entry.action) && refusal.stack != entry.stack) return Column::detail;
    switch (refusal.reason) {
    case RefusalReason::stackUnknown:
    case RefusalReason::stackRetired:
    case RefusalReason::nameTaken:
    case RefusalReason::badName:
    case RefusalReason::stackNameInOwnMaterial:
    case RefusalReason::entryGone:
        return Column::stack;
    case RefusalReason::itemUnknown:
        return Column::item;
    case RefusalReason::beforeFirstSetup:
        return Column::date;
    case RefusalReason::slotMissing:
    case RefusalReason::noTrayToTake:
    case RefusalReason::noSpareTray:
    case RefusalReason::harvestNeedsSlot:
        return Column::slot;
    case RefusalReason::noneDrying:
        return refusal.slot ? Column::slot : Column::action;
    case RefusalReason::rotateNeedsTwo:
        return Column::action;
    case RefusalReason::tooFewTrays:
    case RefusalReason::sameStack:
    case RefusalReason::tooDeep:
        return Column::detail;
    }
    return Column::action;
}

QString allowedText(const journal::Refusal& refusal, const journal::Entries& entries) { return AllowedTexts{entries}.of(refusal); }

const journal::Replay& AllowedTexts::replayed()
{
    if (!replayed_) replayed_ = journal::replay(entries_);
    return *replayed_;
}

const QString& AllowedTexts::stacks()
{
    if (!stacks_) stacks_ = knownStacks(replayed());
    return *stacks_;
}

const materials::Table& AllowedTexts::table()
{
    if (!table_) table_ = materials::Table::withOwn(entries_);
    return *table_;
}

QString AllowedTexts::of(const journal::Refusal& refusal)
{
    const journal::Entries& entries = entries_;
    const QString stack = shown(refusal.stack);
    const bool noTray = refusal.slotsThere == 0;
    const QString range = refusal.slotsThere == 1 ? QStringLiteral("1") : ExchangeText::tr("1 to %1").arg(refusal.slotsThere);
    switch (refusal.reason) {
    case RefusalReason::stackUnknown: {
        const QString& known = stacks();
        return known.isEmpty() ? ExchangeText::tr("a stack that has been set up (there is none)") : ExchangeText::tr("a stack that has been set up: %1").arg(known);
    }
    case RefusalReason::beforeFirstSetup:
        return ExchangeText::tr("%1 or later, behind the first setup of %2").arg(toQString(dayText(refusal.day)), stack);
    case RefusalReason::stackRetired:
        return ExchangeText::tr("a stack that is not retired");
    case RefusalReason::nameTaken:
        return ExchangeText::tr("a name that no retired stack bears");
    case RefusalReason::badName:
        return ExchangeText::tr("a name without semicolon and control characters, without blanks around it");
    case RefusalReason::slotMissing:
        if (std::holds_alternative<journal::Rotate>(entries[refusal.entry].action)) return ExchangeText::tr("1 or nothing");
        if (std::holds_alternative<journal::Bed>(entries[refusal.entry].action)) return ExchangeText::tr("1 to %1, or nothing").arg(refusal.slotsThere + 1);
        return noTray ? ExchangeText::tr("none: no tray of %1 is bedded then").arg(stack) : range;
    case RefusalReason::noTrayToTake:
        return noTray ? ExchangeText::tr("none: no tray of %1 is bedded then").arg(stack)
                                       : ExchangeText::tr("%1, said in full: the only tray is drying").arg(refusal.slotsThere);
    case RefusalReason::noSpareTray:
        return ExchangeText::tr("%1: no tray is in storage").arg(range);
    case RefusalReason::harvestNeedsSlot:
        return noTray ? ExchangeText::tr("none: no tray of %1 is bedded then").arg(stack)
                                       : ExchangeText::tr("%1, said in full: no tray is drying").arg(range);
    case RefusalReason::noneDrying:
        return ExchangeText::tr("a step that needs no drying tray: %1").arg(refusalText(refusal, entries));
    case RefusalReason::rotateNeedsTwo:
        return ExchangeText::tr("a step that needs no second tray; trays that stand then: %1").arg(refusal.slotsThere);
    case RefusalReason::tooFewTrays:
        return ExchangeText::tr("trays=%1 or more: so many stand then").arg(refusal.slotsThere);
    case RefusalReason::sameStack:
        return ExchangeText::tr("to= and the name of another stack");
    case RefusalReason::tooDeep:
        return ExchangeText::tr("depth=0 to %1").arg(heightText(refusal, replayed()));
    case RefusalReason::stackNameInOwnMaterial:
        return ExchangeText::tr("nothing (an own material is of the household)");
    case RefusalReason::itemUnknown:
        return Cells::quoted(table().nearest(itemOf(entries[refusal.entry].action)));
    case RefusalReason::entryGone:
        return ExchangeText::tr("an entry that is there");
    }
    return {};
}

}
