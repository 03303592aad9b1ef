#include "ui/forms/said_ahead.h"

#include "core/advice/too_early.h"
#include "core/exchange/refusal_text.h"
#include "core/reckoning/crowding.h"
#include "ui/common/formats.h"
#include "ui/forms/drain_doubt.h"
#include "ui/forms/food_doubt.h"
#include "ui/forms/tray_words.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace tierloam::forms {

namespace {

struct SaidAhead {
    Q_DECLARE_TR_FUNCTIONS(SaidAhead)
};

/// The entry itself in the journal after the edit: by id, or the last of its day that is new.
std::optional<std::size_t> indexOf(const journal::Entries& after, const journal::Entry& entry)
{
    for (std::size_t i = after.size(); i-- > 0;) {
        if (entry.id != journal::EntryId::none ? after[i].id == entry.id
                                               : after[i].id == journal::EntryId::none && after[i].action == entry.action && after[i].date == entry.date) {
            return i;
        }
    }
    return std::nullopt;
}

const journal::Step* stepOf(const journal::StackHistory& history, std::size_t index)
{
    for (const journal::Step& step : history.steps) {
        if (step.entry == index && !step.incoming) return &step;
    }
    return nullptr;
}

/// Why a step of the stack's life would be too early, and when it would be right; it stands in nobody's way.
QString earlyText(const FormContext& context, const Intended& intended)
{
    const reckoning::StackReckoning* stack = context.estimates();
    if (intended.edited || !stack || intended.day != context.today) return {};
    const auto step = intended.kind == FormKind::addTray ? std::optional{advice::LifeStep::addTray}
        : intended.kind == FormKind::rotate              ? std::optional{advice::LifeStep::lift}
        : intended.kind == FormKind::harvest             ? std::optional{advice::LifeStep::take}
                                                         : std::nullopt;
    const journal::Standing* standing = context.standing(intended.day);
    const bool between = intended.kind == FormKind::harvest && intended.slot.value_or(1) > 1 && standing != nullptr && standing->dryingSlot() != intended.slot;
    const auto early = step && !between ? advice::tooEarly(*stack, *step) : std::nullopt;
    return early ? SaidAhead::tr("%1: %2.").arg(QString::fromStdString(early->text), QString::fromStdString(early->because)) : QString{};
}

/// For the steps of a turn: how far the tray is, in numbers.
QString standText(const FormContext& context, const Intended& intended)
{
    if (const QString early = earlyText(context, intended); !early.isEmpty()) return early;
    if (intended.edited || (intended.kind != FormKind::rotate && intended.kind != FormKind::harvest)) return {};
    const journal::Standing* standing = context.standing(intended.day);
    if (!standing) return {};
    const std::optional<int> meant = intended.kind == FormKind::rotate ? std::optional{1} : intended.slot ? intended.slot : standing->dryingSlot();
    const reckoning::TrayEstimate* tray = meant ? context.tray(*meant) : nullptr;
    if (!tray) return {};
    return SaidAhead::tr("Ready %1; feed-to-cast %2.").arg(ui::percentText(tray->readyProbability), ui::ratioBand(tray->feedToCast));
}

/// Worms that the trays of that day cannot carry are mostly a slip of the pen or of the unit.
QString wormsDoubtText(const journal::Stock& stock, const journal::Standing& standing)
{
    const Mass most = reckoning::mostWorms(standing.settings.area * std::max(1, standing.trays()));
    if (!stock.worms.mass() || *stock.worms.mass() <= most) return {};
    return SaidAhead::tr("%1 of worms is more than the trays here can carry, about %2. Is the amount right, and its unit?").arg(ui::amountText(stock.worms), ui::massText(most.base()));
}

}

QString effectText(const FormContext& context, const Intended& intended, const journal::EditEffect& effect, const journal::Entry& entry)
{
    QStringList lines;
    if (const auto index = indexOf(effect.after, entry)) {
        const journal::Replay after = journal::replay(effect.after);
        const journal::StackHistory* history = after.stack(entry.stack);
        const journal::Step* step = history ? stepOf(*history, *index) : nullptr;
        if (step) lines.append(stepText(*history, *step, entry));
    }
    lines.append(standText(context, intended));
    lines.append(exchange::movedText(effect, exchange::entryWords));
    lines.removeAll(QString{});
    return lines.join(QLatin1Char('\n'));
}

Doubt doubtOf(const FormContext& context, const Intended& intended, const journal::Action& action)
{
    const journal::Standing* standing = context.standing(intended.day);
    if (!standing) return {};
    switch (intended.kind) {
    case FormKind::drain:
    case FormKind::flush: return {drainDoubtText(action, *standing), {}};
    case FormKind::stock: return {wormsDoubtText(std::get<journal::Stock>(action), *standing), {}};
    case FormKind::feed: // what is known of room and limit is of today, before this feeding
        return intended.edited || intended.day != context.today ? Doubt{} : foodDoubt(context, std::get<journal::Feed>(action), intended.slot);
    default: return {};
    }
}

}
