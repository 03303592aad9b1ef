#include "ui/shelf/shelf_page.h"

#include "ui/common/panels.h"
#include "ui/forms/action_form.h"
#include "ui/forms/new_stack.h"
#include "ui/forms/take_keys.h"
#include "ui/shelf/date_bar.h"
#include "ui/shelf/form_host.h"
#include "ui/shelf/legend_bar.h"
#include "ui/shelf/part_panel.h"
#include "ui/shelf/shelf_board.h"

#include <QScrollArea>

#include <algorithm>
#include <utility>

/// What opens in place under the shelf: forms, the guided new stack, the panel of a part; and the room that shelf and form have of the page.
namespace tierloam::shelf {

using forms::FormKind;

/// What stands above and below shelf and form.
int ShelfPage::aroundHeight() const
{
    return head_->heightForWidth(width() - 36) + dates_->sizeHint().height() + 64 + theme_.px(12); // margins, a scroll bar
}

/// Room for the form or panel. In a small window with large letters title and days give way to a form whose cautions and buttons need their place; a
/// fifth of the page stays the shelf's.
void ShelfPage::giveRoom(const QWidget* content)
{
    const bool first = qobject_cast<const forms::NewStack*>(content) && board_->columns().empty();
    scroll_->setHidden(first); // the form for the first stack stands where that stack will
    host_->setRoom(roomFor(content), first ? roomFor(content) : height() * 4 / 5 - 60);
}

/// A panel leaves the shelf in view; a form may take more; the guided first stack nearly all.
int ShelfPage::roomFor(const QWidget* content) const
{
    const int others = aroundHeight();
    const bool guided = qobject_cast<const forms::NewStack*>(content);
    if (guided && board_->columns().empty()) return height() - theme_.px(40);
    const int shelf = guided ? theme_.px(16) : height() * (qobject_cast<const PartPanel*>(content) ? 30 : 22) / 100;
    const int most = guided ? height() : height() * 11 / 20;
    const int left = height() - others - shelf;
    // With large letters in a small window little would be left: then title and days give way (see the constructor).
    return std::max(height() / 4, std::min(left < theme_.px(230) ? height() - shelf - theme_.px(20) : left, most));
}

/// The part whose panel is open stays seen when the panel takes room from the shelf.
void ShelfPage::keepSelectedInView()
{
    for (const StackColumn* column : board_->columns()) {
        const std::optional<int> part = column->canvas()->selectedPart();
        if (!part) continue;
        const QRect place = column->canvas()->partRect(*part).translated(column->canvas()->mapTo(board_, QPoint{}));
        const int covered = legend_->covered() / 2;
        scroll_->ensureVisible(place.center().x(), place.center().y() + covered, place.width() / 2 + 10, place.height() / 2 + 6 + covered);
    }
}

forms::TypedForm* ShelfPage::form() const { return qobject_cast<forms::TypedForm*>(host_->content()); }

bool ShelfPage::formBegun() const
{
    return form() && form()->touched();
}

/// Another form is asked for in its place.
bool ShelfPage::makesWay()
{
    if (!formBegun() || (mayThrowAway_ && form()->mayGo())) return true;
    forms::takeKeys(*form());
    return false;
}

void ShelfPage::showForm(forms::TypedForm* form)
{
    form->setMayThrowAway(mayThrowAway_);
    form->setProperty("scrollsItself", true);
    focusTaken_ = false;
    giveRoom(form);
    host_->show(form); // which takes the focus to its first field
    if (!form->isAncestorOf(focusWidget())) form->setFocus(Qt::OtherFocusReason);
    Q_EMIT formShown(true);
}

bool ShelfPage::isFormOpen() const { return host_->content() && !qobject_cast<const PartPanel*>(host_->content()); }

bool ShelfPage::openForm(const QString& stack, FormKind kind, std::optional<int> slot)
{
    if (!makesWay()) return false;
    chooseStack(stack);
    auto* form = new forms::ActionForm{household_, kind, stack, slot};
    if (shown_ < household_.today()) form->setDay(shown_);
    connect(form, &forms::ActionForm::finished, this, [this, form] {
        if (host_->content() == form) closePanel(true);
    });
    showForm(form);
    board_->markSelected(stack.toStdString(), slot ? slot : kind == FormKind::drain || kind == FormKind::flush ? std::optional{0} : std::nullopt);
    return true;
}

bool ShelfPage::openFeeding(const QString& stack, Day day, const journal::Feed& feed)
{
    if (!openForm(stack, FormKind::feed)) return false;
    auto* form = static_cast<forms::ActionForm*>(host_->content());
    form->propose(feed);
    form->setDay(day);
    return true;
}

bool ShelfPage::openProposed(const QString& stack, const journal::Action& action, std::optional<int> slot)
{
    journal::Entry entry;
    entry.action = action;
    entry.slot = slot;
    if (!openForm(stack, forms::kindOf(entry), slot)) return false;
    static_cast<forms::ActionForm*>(host_->content())->propose(action);
    return true;
}

bool ShelfPage::openNewStack()
{
    if (!makesWay()) return false;
    auto* form = new forms::NewStack{household_};
    connect(form, &forms::NewStack::started, this, [this](const QString& stack) {
        showDay(household_.today());
        chooseStack(stack);
    });
    connect(form, &forms::NewStack::finished, this, [this, form] {
        if (host_->content() == form) closePanel(true);
    });
    board_->markSelected({}, std::nullopt);
    showForm(form);
    return true;
}

PartStory ShelfPage::storyOf(const QString& stack, const journal::Standing& standing, std::optional<int> part) const
{
    const auto journal = household_.journal();
    const auto reckoning = household_.reckoning();
    const StoryInputs inputs{*journal, *journal->replay.stack(stack.toStdString()), standing, reckoning ? reckoning->stack(stack.toStdString()) : nullptr, household_.today(), shown_};
    return !part ? stackStory(inputs) : *part == 0 ? sumpStory(inputs) : trayStory(inputs, *part);
}

bool ShelfPage::openPanel(const QString& stack, std::optional<int> part)
{
    if (formBegun()) {
        forms::takeKeys(*form());
        return false;
    }
    const journal::Standing* standing = standingOf(stack);
    const StackColumn* column = board_->column(stack.toStdString());
    if (!standing || !column) return false;
    const auto* open = qobject_cast<PartPanel*>(host_->content());
    const bool again = open && open->stack() == stack.toStdString() && open->part() == part;
    const bool hadFocus = host_->content() && host_->content()->isAncestorOf(focusWidget());
    const std::optional<FormKind> act = again ? open->focusedAct() : std::nullopt;
    auto* panel = new PartPanel{theme_, {column->canvas()->stack(), *standing, static_cast<int>(model_->stacks.size()) - 1, part, storyOf(stack, *standing, part)}};
    connect(panel, &PartPanel::closeWanted, this, [this] { closePanel(true); });
    connect(panel, &PartPanel::actWanted, this, [this, stack, part](FormKind kind) { openForm(stack, kind, part && *part > 0 ? part : std::nullopt); });
    giveRoom(panel);
    host_->show(panel);
    Q_EMIT formShown(false);
    if (hadFocus || !again) panel->focusAct(act);
    board_->markSelected(stack.toStdString(), part);
    return true;
}

bool ShelfPage::closePanel(bool force)
{
    if (!host_->content()) return true;
    if (!force && formBegun()) return false;
    const bool hadFocus = host_->content()->isAncestorOf(focusWidget()) || std::exchange(focusTaken_, false);
    host_->clear();
    scroll_->show();
    head_->show();
    dates_->show();
    board_->markSelected({}, std::nullopt);
    if (hadFocus) focusStack();
    Q_EMIT formShown(false);
    return true;
}

/// While what was typed is being written, its fields and buttons take no keys, and Qt hands the focus to what comes next: the date slider, which the arrow
/// keys move into the past. It goes to the stack at once; a write that fails takes it back into the form.
void ShelfPage::followFocus(const QWidget* from, const QWidget* to)
{
    const QWidget* content = host_->content();
    if (!content || !from || !content->isAncestorOf(from)) {
        if (from && to) focusTaken_ = false; // somebody went on from where it was
        return;
    }
    if (from->isEnabled() || content->isAncestorOf(to)) return;
    if (StackColumn* column = board_->current()) column->canvas()->setFocus(Qt::OtherFocusReason);
    focusTaken_ = true;
}

void ShelfPage::focusStack()
{
    const QWidget* content = host_->content();
    if (content && content->isAncestorOf(focusWidget())) {
        focusWidget()->setFocus(Qt::OtherFocusReason);
    } else if (StackColumn* column = board_->current()) {
        column->canvas()->setFocus(Qt::OtherFocusReason);
        bringIntoView(*column);
    }
}

void ShelfPage::refreshPanel()
{
    const auto* panel = qobject_cast<PartPanel*>(host_->content());
    if (!panel) return;
    const StackColumn* column = board_->column(panel->stack());
    const bool there = column && (!panel->part() || *panel->part() < static_cast<int>(column->canvas()->stack().parts.size()));
    if (there) openPanel(QString::fromStdString(panel->stack()), panel->part());
    else closePanel(true);
}

}
