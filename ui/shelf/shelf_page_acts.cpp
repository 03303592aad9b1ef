#include "ui/shelf/shelf_page.h"

#include "core/advice/too_early.h"
#include "core/household/usual_cover.h"
#include "ui/common/usual_amounts.h"
#include "ui/shelf/date_bar.h"
#include "ui/shelf/shelf_board.h"
#include "ui/shelf/usual_acts.h"

#include <QAction>
#include <QLabel>

/// What is done by key or at one click: the page's actions, which of them can be done now, and the usual amounts that are written down.
namespace tierloam::shelf {

using forms::FormKind;

void ShelfPage::makeActions()
{
    for (const ui::ActionRow& row : ui::actionTable()) {
        if (row.where != ui::Where::shelf) continue;
        QAction* made = ui::makeAction(row.id, this);
        connect(made, &QAction::triggered, this, [this, id = row.id] { act(id); });
        addAction(made);
        actions_[row.id] = made;
    }
}

QAction* ShelfPage::action(ui::ActionId id) const
{
    const auto found = actions_.find(id);
    return found == actions_.end() ? nullptr : found->second;
}

QList<QAction*> ShelfPage::stackActions() const
{
    QList<QAction*> all;
    for (const ui::ActionRow& row : ui::actionTable())
        if (QAction* each = action(row.id)) all << each;
    return all;
}

void ShelfPage::act(ui::ActionId id)
{
    if (const std::optional<int> days = daysMoved(id)) return showDay(shown_ + std::chrono::days{*days});
    if (id == ui::ActionId::backToToday) return showDay(household_.today());
    const QString stack = currentStack();
    if (stack.isEmpty()) return;
    if (id == ui::ActionId::moreActs) {
        openPanel(stack, std::nullopt);
        return;
    }
    if (id == ui::ActionId::moveStackLeft || id == ui::ActionId::moveStackRight) {
        const bool on = (id == ui::ActionId::moveStackRight) == (layoutDirection() == Qt::LeftToRight);
        moveStack(stack, placeOf(stack) + (on ? 1 : -1));
        return;
    }
    const std::optional<FormKind> kind = formOf(id);
    if (!kind) return;
    if (isUsual(id) && !model_->past() && asksForStack()) return;
    if (isUsual(id) && !model_->past()) recordUsual(stack, *kind, id == ui::ActionId::feedBorne);
    else openForm(stack, *kind);
}

/// A key means the stack that was chosen. Where several stand and none was, nothing is written into the first of them unasked: it gets the focus, which
/// shows it, and the next press means it.
bool ShelfPage::asksForStack()
{
    if (board_->anyChosen() || model_->stacks.size() < 2) return false;
    focusStack();
    board_->setCurrent(currentStack().toStdString());
    Q_EMIT stackNeeded(tr("No stack was chosen, and nothing is written down yet. %1 has the focus now: press again for it, or go to another one with Left and Right.").arg(currentStack()));
    return true;
}

void ShelfPage::enableActions()
{
    const journal::Standing* standing = standingOf(currentStack());
    const int others = model_ ? static_cast<int>(model_->stacks.size()) - 1 : 0;
    const QList<FormKind> kinds = standing ? forms::kindsForStack(*standing, others) : QList<FormKind>{};
    for (const auto& [id, action] : actions_) {
        if (daysMoved(id) || id == ui::ActionId::backToToday) {
            const int days = daysMoved(id).value_or(1);
            action->setEnabled(model_ && model_->first < model_->today && (days > 0 ? model_->past() : shown_ > model_->first));
        } else if (id == ui::ActionId::moveStackLeft || id == ui::ActionId::moveStackRight) {
            const bool on = (id == ui::ActionId::moveStackRight) == (layoutDirection() == Qt::LeftToRight);
            const int place = placeOf(currentStack()) + (on ? 1 : -1);
            action->setEnabled(standing && place >= 0 && place <= others && !household_.readOnly());
        } else if (id == ui::ActionId::moreActs) {
            action->setEnabled(standing);
        } else if (id == ui::ActionId::feedBorne) {
            const int place = placeOf(currentStack());
            action->setEnabled(standing && place >= 0 && model_->stacks[static_cast<std::size_t>(place)].limitBelowUsual && !household_.readOnly());
        } else if (const std::optional<FormKind> kind = formOf(id)) {
            action->setEnabled(kinds.contains(*kind));
        }
    }
}

void ShelfPage::recordUsual(const QString& stack, FormKind kind, bool onlyWhatIsBorne)
{
    household::Usual usual = ui::roundDefaults(household_.usual(stack.toStdString()));
    if (kind == FormKind::cover) usual.coverWithFeed = household::usualCover(household::usualCovers(household_.journal()->entries, household_.journal()->materials, household_.today()), stack.toStdString(), ui::roundAmount(journal::defaultCoverAmount));
    const auto reckoning = household_.reckoning();
    const auto* reckoned = reckoning ? reckoning->stack(stack.toStdString()) : nullptr;
    const auto fits = kind == FormKind::feed && reckoned ? fittingFeeding(usual, household_.journal()->materials, *reckoned) : std::nullopt;
    if (fits && fits->value <= 0.0) { // the button says so; the form records what was given all the same
        openForm(stack, kind);
        return;
    }
    if (fits) usual.feed = *fits;
    if (onlyWhatIsBorne && reckoned) usual.feed = borneFeeding(usual, household_.journal()->materials, advice::foodLimit(*reckoned)).value_or(usual.feed);
    journal::Entries entries = usualEntries(kind, usual, stack.toStdString(), household_.today());
    const journal::Standing* standing = standingOf(stack);
    // Into the tray that the due list and the plan name, where a tray on top came too early.
    if (kind == FormKind::feed && reckoned && standing)
        if (const auto slot = advice::slotForFood(*reckoned); slot && slot != standing->feedSlot())
            for (journal::Entry& entry : entries) entry.slot = slot;
    if (entries.empty() || !standing || model_->past()) {
        openForm(stack, kind);
        return;
    }
    const QString label = usualLabel(kind, usual, stack);
    journal::Edit edit;
    edit.added = entries;
    if (const QString refusal = household_.refusalOf(edit); !refusal.isEmpty()) {
        failureText_->setText(tr("%1: not written down. %2").arg(label, refusal));
        failure_->show();
        return;
    }
    failure_->hide();
    board_->setCurrent(stack.toStdString());
    const household::Ticket ticket = household_.recordAll(entries, label);
    asked_[ticket] = label;
    Q_EMIT usualRecorded(kind);
}

void ShelfPage::recorded(household::Ticket ticket)
{
    asked_.erase(ticket);
    refresh();
}

void ShelfPage::failed(household::Ticket ticket, const QString& why)
{
    const auto found = asked_.find(ticket);
    if (found == asked_.end()) return; // asked for elsewhere, told there
    failureText_->setText(tr("%1: not written down. %2 Nothing else was changed; try again when that is put right.").arg(found->second, why));
    failure_->show();
    asked_.erase(found);
    refresh();
}

}
