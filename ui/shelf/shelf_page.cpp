#include "ui/shelf/shelf_page.h"

#include "core/advice/put_off.h"
#include "core/advice/too_early.h"
#include "core/household/usual_cover.h"
#include "core/store/setting_names.h"
#include "ui/common/formats.h"
#include "ui/common/panels.h"
#include "ui/common/usual_amounts.h"
#include "ui/forms/action_form.h"
#include "ui/forms/new_stack.h"
#include "ui/shelf/date_bar.h"
#include "ui/shelf/form_host.h"
#include "ui/shelf/part_panel.h"
#include "ui/shelf/shelf_board.h"
#include "ui/shelf/usual_acts.h"

#include <QAction>
#include <QFrame>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

namespace tierloam::shelf {

using forms::FormKind;

ShelfPage::ShelfPage(household::Household& household, const ui::Theme& theme, QWidget* parent)
    : QWidget{parent}, household_{household}, theme_{theme}, head_{new ui::PageHead{this}}, host_{new FormHost{this}}, dates_{new DateBar{this}}
{
    setProperty("page", true);
    setObjectName(QStringLiteral("shelfPage"));
    shown_ = household_.today();

    auto* failure = new QFrame{this};
    failure->setProperty("failure", true);
    failureText_ = ui::makeLabel({}, ui::TextRole::body, failure, true);
    auto* seen = ui::makeButton(tr("Close"), ui::Tone::plain, failure);
    connect(seen, &QPushButton::clicked, failure, &QWidget::hide);
    auto* failureRow = new QHBoxLayout{failure};
    failureRow->addWidget(failureText_, 1);
    failureRow->addWidget(seen, 0, Qt::AlignTop);
    failure_ = failure;
    failure_->hide();

    seen_ = new QTimer{this};
    seen_->setSingleShot(true);
    seen_->setInterval(0);
    connect(seen_, &QTimer::timeout, this, &ShelfPage::tellShownFirst);

    scroll_ = new QScrollArea{this};
    scroll_->setFrameShape(QFrame::NoFrame);
    scroll_->setFocusPolicy(Qt::NoFocus);
    scroll_->setMinimumSize(60, 60);
    board_ = new ShelfBoard{theme_};
    scroll_->setWidget(board_);
    scroll_->viewport()->installEventFilter(this);

    const auto inset = [](QWidget* widget) {
        auto* row = new QHBoxLayout;
        row->setContentsMargins(18, 0, 18, 0);
        row->addWidget(widget);
        return row;
    };
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 14, 0, 10);
    column->setSpacing(8);
    column->addLayout(inset(head_));
    column->addLayout(inset(failure_));
    column->addWidget(scroll_, 1);
    column->addLayout(inset(host_));
    column->addLayout(inset(dates_));

    connect(board_, &ShelfBoard::feedWanted, this, [this](const QString& stack) { recordUsual(stack, FormKind::feed); });
    connect(board_, &ShelfBoard::borneWanted, this, [this](const QString& stack) { recordUsual(stack, FormKind::feed, true); });
    connect(board_, &ShelfBoard::coverWanted, this, [this](const QString& stack) { recordUsual(stack, FormKind::cover); });
    connect(board_, &ShelfBoard::waterWanted, this, [this](const QString& stack) { recordUsual(stack, FormKind::water); });
    connect(board_, &ShelfBoard::drainWanted, this, [this](const QString& stack) { recordUsual(stack, FormKind::drain); });
    connect(board_, &ShelfBoard::moreWanted, this, [this](const QString& stack) { openPanel(stack, std::nullopt); });
    connect(board_, &ShelfBoard::partActivated, this, [this](const QString& stack, int part) { openPanel(stack, part); });
    connect(board_, &ShelfBoard::newStackWanted, this, &ShelfPage::openNewStack);
    connect(board_, &ShelfBoard::columnWalked, this, [this](QWidget* walked) {
        bringIntoView(*static_cast<StackColumn*>(walked));
        enableActions();
        Q_EMIT currentStackChanged(currentStack());
    });
    connect(board_, &ShelfBoard::placeWanted, this, &ShelfPage::moveStack);
    connect(board_, &ShelfBoard::dragMoved, this, [this](const QPoint& at) { scroll_->ensureVisible(at.x(), at.y(), 60, 60); });
    for (QScrollBar* bar : {scroll_->verticalScrollBar(), scroll_->horizontalScrollBar()}) connect(bar, &QScrollBar::valueChanged, this, &ShelfPage::tellSeen);
    connect(host_, &FormHost::fitted, this, [this](int height) {
        const bool tight = height > this->height() - aroundHeight() - this->height() / 5;
        head_->setHidden(tight);
        dates_->setHidden(tight);
    });
    connect(dates_, &DateBar::dayChosen, this, &ShelfPage::showDay);
    connect(&household_, &household::Household::changed, this, &ShelfPage::refresh);
    connect(&household_, &household::Household::reckoned, this, &ShelfPage::refresh);
    connect(&household_, &household::Household::recorded, this, [this](household::Ticket ticket) { recorded(ticket); });
    connect(&household_, &household::Household::failed, this, &ShelfPage::failed);
    auto* midnight = new QTimer{this};
    midnight->setInterval(60'000);
    connect(midnight, &QTimer::timeout, this, [this] {
        if (model_ && model_->today != household_.today()) refresh();
    });
    midnight->start();
    makeActions();
}

ShelfPage::~ShelfPage() = default;

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
    if (isUsual(id) && !model_->past()) recordUsual(stack, *kind, id == ui::ActionId::feedBorne);
    else openForm(stack, *kind);
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

int ShelfPage::placeOf(const QString& stack) const
{
    if (!model_) return -1;
    const auto found = std::find_if(model_->stacks.begin(), model_->stacks.end(), [&](const StackModel& each) { return each.title == stack; });
    return found == model_->stacks.end() ? -1 : static_cast<int>(found - model_->stacks.begin());
}

void ShelfPage::moveStack(const QString& stack, int place)
{
    const int from = placeOf(stack);
    if (from < 0 || place < 0 || place >= static_cast<int>(model_->stacks.size()) || place == from || household_.readOnly()) return;
    board_->setCurrent(stack.toStdString());
    household::StackOrder shown;
    for (const StackModel& each : model_->stacks) shown.push_back(each.key);
    // Stacks that do not stand on the day shown keep their places behind those that do.
    household::StackOrder all = household::movedTo(shown, stack.toStdString(), static_cast<std::size_t>(place));
    for (const std::string& other : household_.stackOrder())
        if (std::find(all.begin(), all.end(), other) == all.end()) all.push_back(other);
    household_.keep(store::settingStackOrder, household::orderText(all), tr("Place of %1 on the shelf").arg(stack)); // changed() shows it
    if (StackColumn* column = board_->column(stack.toStdString())) bringIntoView(*column);
}

/// All of it where there is room, else from its name on.
void ShelfPage::bringIntoView(const StackColumn& column)
{
    const QRect place{column.mapTo(board_, QPoint{}), column.size()};
    const int height = std::min(place.height(), scroll_->viewport()->height());
    scroll_->ensureVisible(place.center().x(), place.y() + height / 2, place.width() / 2 + 20, height / 2);
}

QRect ShelfPage::seenPart() const { return {board_->mapFrom(scroll_->viewport(), QPoint{}), scroll_->viewport()->size()}; }

void ShelfPage::tellSeen()
{
    board_->showPart(seenPart());
    seen_->start();
}

/// The next reckoning of many stacks begins with those that can be seen.
void ShelfPage::tellShownFirst()
{
    const QRect seen = seenPart();
    std::vector<std::string> stacks;
    for (const StackColumn* column : board_->columns())
        if (column->geometry().intersects(seen)) stacks.push_back(column->key());
    household_.setShownFirst(std::move(stacks));
}

QString ShelfPage::currentStack() const
{
    const StackColumn* column = board_->current();
    return column ? QString::fromStdString(column->key()) : QString{};
}

void ShelfPage::chooseStack(const QString& stack)
{
    board_->setCurrent(stack.toStdString());
    if (StackColumn* column = board_->column(stack.toStdString())) bringIntoView(*column);
    enableActions();
    Q_EMIT currentStackChanged(currentStack());
}

const journal::Standing* ShelfPage::standingOf(const QString& stack) const
{
    const journal::StackHistory* history = household_.journal()->replay.stack(stack.toStdString());
    const journal::Standing* standing = history ? history->on(shown_) : nullptr;
    return standing && !standing->retired ? standing : nullptr;
}

void ShelfPage::recordUsual(const QString& stack, FormKind kind, bool onlyWhatIsBorne)
{
    household::Usual usual = ui::roundDefaults(household_.usual(stack.toStdString()));
    if (kind == FormKind::cover) usual.coverWithFeed = household::usualCover(household::usualCovers(household_.journal()->entries, household_.journal()->materials, household_.today()), stack.toStdString(), ui::roundAmount(journal::defaultCoverAmount));
    const auto reckoning = household_.reckoning();
    const auto* reckoned = reckoning ? reckoning->stack(stack.toStdString()) : nullptr;
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
        scroll_->ensureVisible(place.center().x(), place.center().y(), place.width() / 2 + 10, place.height() / 2 + 6);
    }
}

bool ShelfPage::formBegun() const
{
    if (const auto* form = qobject_cast<forms::ActionForm*>(host_->content())) return form->touched();
    if (const auto* form = qobject_cast<forms::NewStack*>(host_->content())) return form->touched();
    return false;
}

void ShelfPage::showForm(QWidget* form)
{
    form->setProperty("scrollsItself", true);
    giveRoom(form);
    host_->show(form); // which takes the focus to its first field
    if (!form->isAncestorOf(focusWidget())) form->setFocus(Qt::OtherFocusReason);
}

bool ShelfPage::openForm(const QString& stack, FormKind kind, std::optional<int> slot)
{
    if (formBegun()) {
        host_->content()->setFocus(Qt::OtherFocusReason);
        return false;
    }
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
    if (formBegun()) {
        host_->content()->setFocus(Qt::OtherFocusReason);
        return false;
    }
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
        host_->content()->setFocus(Qt::OtherFocusReason);
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
    if (hadFocus || !again) panel->focusAct(act);
    board_->markSelected(stack.toStdString(), part);
    return true;
}

bool ShelfPage::closePanel(bool force)
{
    if (!host_->content()) return true;
    if (!force && formBegun()) return false;
    const bool hadFocus = host_->content()->isAncestorOf(focusWidget());
    host_->clear();
    scroll_->show();
    head_->show();
    dates_->show();
    board_->markSelected({}, std::nullopt);
    if (hadFocus)
        if (StackColumn* column = board_->current()) column->canvas()->setFocus(Qt::OtherFocusReason);
    return true;
}

void ShelfPage::showDay(Day day)
{
    const Day today = household_.today();
    const Day held = std::clamp(day, std::min(model_ ? model_->first : today, today), today);
    followsToday_ = held == today;
    if (held == shown_ && model_ && !stale_) return;
    shown_ = held;
    if (!formBegun()) closePanel();
    refresh();
}

void ShelfPage::refresh()
{
    stale_ = true;
    if (isVisible()) refreshNow();
}

void ShelfPage::refreshNow()
{
    stale_ = false;
    const Day today = household_.today();
    if (followsToday_ || shown_ > today) shown_ = today;
    ShelfInputs inputs;
    inputs.household = household_.name();
    inputs.today = today;
    inputs.shown = shown_;
    inputs.journal = household_.journal();
    inputs.reckoning = household_.reckoning();
    inputs.current = household_.reckoningIsCurrent();
    inputs.readOnly = household_.readOnly();
    inputs.usual = [this](const std::string& stack) { return ui::roundDefaults(household_.usual(stack)); };
    inputs.usualCover = [covers = household::usualCovers(inputs.journal->entries, inputs.journal->materials, today)](const std::string& stack) { return household::usualCover(covers, stack, ui::roundAmount(journal::defaultCoverAmount)); };
    inputs.advice = [this, today, later = advice::putOffFrom(household_.kept(store::settingPutOff).toStdString())](const reckoning::StackReckoning& stack) {
        std::vector<advice::Advice> all = advice::adviceFor(stack);
        if (shown_ == today) std::erase_if(all, [&](const advice::Advice& one) { return advice::isPutOff(later, one, today); }); // the verdict does not nag either
        return all;
    };
    inputs.order = household_.stackOrder();
    const QString before = currentStack();
    const bool sameDay = model_ && model_->shown == shown_; // the slider does not set stacks in motion
    model_ = std::make_shared<const ShelfModel>(makeShelf(inputs));
    head_->setTitle(model_->household);
    head_->setLine(model_->line);
    board_->setModel(model_, sameDay);
    board_->setView(scroll_->viewport()->size());
    tellSeen();
    dates_->setDays(model_->first, shown_, today);
    enableActions();
    refreshPanel();
    if (currentStack() != before) Q_EMIT currentStackChanged(currentStack());
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

void ShelfPage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    if (stale_) refreshNow();
}

void ShelfPage::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    if (host_->content()) giveRoom(host_->content());
}

void ShelfPage::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape && closePanel()) return;
    QWidget::keyPressEvent(event);
}

void ShelfPage::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange || event->type() == QEvent::LocaleChange) refresh();
}

bool ShelfPage::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == scroll_->viewport() && event->type() == QEvent::Resize) {
        board_->setView(scroll_->viewport()->size());
        tellSeen();
        QMetaObject::invokeMethod(this, &ShelfPage::keepSelectedInView, Qt::QueuedConnection); // after the scroll bars know
    }
    return QWidget::eventFilter(watched, event);
}

}
