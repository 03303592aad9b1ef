#include "ui/window/due_list.h"

#include "core/advice/food_limit.h"
#include "core/advice/household_advice.h"
#include "core/store/setting_names.h"
#include "ui/common/actions.h"
#include "ui/common/formats.h"
#include "ui/common/panels.h"
#include "ui/window/due_line.h"

#include <QAction>
#include <QApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace tierloam::window {

namespace {

/// Advice that lies further ahead is not for this list.
constexpr int daysAhead = 7;

/// So many lines are made at a time, about 1 ms each: a screen holds some ten, three stacks seldom have more than these.
constexpr std::size_t linesAtOnce = 24;

}

DueList::DueList(household::Household& household, const ui::Theme& theme, QWidget* parent)
    : QFrame{parent}, household_{household}, theme_{theme}, title_{ui::makeLabel(tr("Due"), ui::TextRole::title, this)},
      summary_{ui::makeLabel({}, ui::TextRole::smallMuted, this)}, nothing_{ui::makeLabel({}, ui::TextRole::muted, this, true)},
      again_{ui::makeButton({}, ui::Tone::plain, this)}
{
    setProperty("due", true);
    setObjectName(QStringLiteral("dueList"));
    ui::setAccess(this, tr("Due list"), tr("Up and Down go from line to line, Home and End to the first and the last one"));
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(16, 14, 0, 10);
    column->setSpacing(8);
    auto* head = new QHBoxLayout;
    head->addWidget(title_);
    head->addStretch(1);
    head->addWidget(summary_, 0, Qt::AlignBottom);
    head->setContentsMargins(4, 0, 18, 0);
    column->addLayout(head);

    list_ = new QWidget;
    list_->setObjectName(QStringLiteral("dueLines"));
    rows_ = new QVBoxLayout{list_};
    rows_->setContentsMargins(0, 0, 14, 0);
    rows_->setSpacing(6);
    auto* scroll = scroll_ = new QScrollArea{this};
    scroll->setObjectName(QStringLiteral("dueScroll"));
    scroll->setWidget(list_);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->viewport()->setAutoFillBackground(false);
    list_->setAutoFillBackground(false);
    auto* beside = new QHBoxLayout; // a label under a style sheet keeps no margins of its own
    beside->setContentsMargins(4, 0, 18, 0);
    beside->addWidget(nothing_);
    column->addLayout(beside);
    column->addWidget(scroll, 1);
    // Also when the list grows or the window does. Queued: a line that asks for more while it is being scrolled to must not be laid out within that.
    connect(scroll->verticalScrollBar(), &QScrollBar::valueChanged, this, &DueList::makeMoreIfNear, Qt::QueuedConnection);
    connect(scroll->verticalScrollBar(), &QScrollBar::rangeChanged, this, &DueList::makeMoreIfNear, Qt::QueuedConnection);
    connect(scroll->verticalScrollBar(), &QScrollBar::rangeChanged, this, &DueList::keepInSight, Qt::QueuedConnection);
    for (QWidget* each : std::initializer_list<QWidget*>{scroll->viewport(), scroll->verticalScrollBar()}) each->installEventFilter(this);
    again_->setObjectName(QStringLiteral("dueAgain"));
    again_->setAccessibleDescription(tr("Shows what was put off"));
    ui::setAct(again_, ui::ActionId::dueAgain);
    again_->setToolTip(ui::withKeys(tr("Shows what was put off"), again_));
    connect(again_, &QPushButton::clicked, this, [this] { tellAll(); });
    column->addWidget(again_, 0, Qt::AlignLeading);

    makeKeys();

    connect(&household_, &household::Household::reckoned, this, [this] { rebuild(); });
    connect(&household_, &household::Household::changed, this, [this] { rebuild(); });
    connect(&theme_, &ui::Theme::changed, this, [this] { rebuild(); });
    rebuild();
}

void DueList::makeKeys()
{
    for (const ui::ActionRow& row : ui::actionTable()) {
        if (row.where != ui::Where::due) continue;
        int which = 0;
        for (const QKeySequence& key : ui::actionKeys(row.id)) {
            auto* action = ui::makeAction(row.id, this);
            action->setShortcut(key); // each answer has its own
            action->setAutoRepeat(false); // a key held down does nothing that was not meant
            connect(action, &QAction::triggered, this, [this, id = row.id, which] { press(id, which); });
            addAction(action);
            ++which;
        }
    }
}

/// As a click on that button of the line that has the focus.
void DueList::press(ui::ActionId act, int which)
{
    const QWidget* focus = QApplication::focusWidget();
    const auto line = std::ranges::find_if(lines_, [focus](const QWidget* each) { return each->isAncestorOf(focus); });
    QList<QPushButton*> buttons{again_};
    if (line != lines_.end()) buttons += (*line)->findChildren<QPushButton*>();
    for (QPushButton* each : buttons)
        if (each->isVisible() && each->isEnabled() && ui::keyOf(*each) == ui::actionKeys(act).value(which)) return each->click();
}

int DueList::wantedWidth() const
{
    return theme_.px(318); // the last line of buttons in German, and a scroll bar
}

void DueList::goToLine(std::size_t line)
{
    while (line >= lines_.size() && !waiting_.empty()) makeMore();
    if (lines_.empty()) return;
    QWidget* to = lines_[std::min(line, lines_.size() - 1)];
    for (const char* name : {"dueButton", "dueWhy"}) { // the second is there where nothing can be written
        auto* button = to->findChild<QPushButton*>(QString::fromLatin1(name));
        if (!button || !button->isEnabled()) continue;
        button->setFocus(Qt::TabFocusReason);
        sought_ = to;
        keepInSight();
        return;
    }
}

/// The line that was gone to, while it has the focus: lines just made take their places only afterwards.
void DueList::keepInSight()
{
    if (sought_ && sought_->isAncestorOf(QApplication::focusWidget())) scroll_->ensureWidgetVisible(sought_, 0, theme_.px(12));
}

bool DueList::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::Wheel) sought_ = nullptr; // who scrolls by hand looks elsewhere
    const auto* key = event->type() == QEvent::KeyPress ? static_cast<QKeyEvent*>(event) : nullptr;
    const auto* button = qobject_cast<QWidget*>(watched);
    if (!key || !button || (key->modifiers() & ~Qt::KeypadModifier)) return QFrame::eventFilter(watched, event);
    const auto here = std::ranges::find_if(lines_, [button](const QWidget* line) { return line->isAncestorOf(button); });
    if (here == lines_.end()) return QFrame::eventFilter(watched, event);
    const auto line = static_cast<std::size_t>(here - lines_.begin());
    switch (key->key()) {
    case Qt::Key_Down: goToLine(line + 1); return true;
    case Qt::Key_Up: goToLine(line == 0 ? 0 : line - 1); return true;
    case Qt::Key_Home: goToLine(0); return true;
    case Qt::Key_End: goToLine(shown_.size() - 1); return true;
    default: return QFrame::eventFilter(watched, event);
    }
}

void DueList::addStack(const OfStack& stack)
{
    auto* heading = ui::makeLabel(QString::fromStdString(stack.name), ui::TextRole::section, list_);
    heading->setContentsMargins(4, 4, 0, 0);
    const int end = rows_->count() - 1; // above the stretch
    rows_->insertWidget(end, heading);
    auto* card = new ui::Card{list_};
    for (std::size_t i = 0; i < stack.lines.size(); ++i) {
        if (i > 0) card->column()->addWidget(ui::makeHairline(card));
        card->column()->addWidget(makeLine(stack.lines[i], stack.trays, stack.drying));
    }
    rows_->insertWidget(end + 1, card);
}

void DueList::makeMore()
{
    for (const std::size_t until = made_ + linesAtOnce; !waiting_.empty() && made_ < until;) {
        made_ += waiting_.front().lines.size();
        addStack(waiting_.front());
        waiting_.pop_front();
    }
}

/// A screen ahead, so that the wheel and Tab never come to an end that is none.
void DueList::makeMoreIfNear()
{
    const QScrollBar* bar = scroll_->verticalScrollBar();
    if (!waiting_.empty() && bar->value() + 2 * bar->pageStep() > bar->maximum()) makeMore();
}

void DueList::rebuild()
{
    const std::optional<Place> focused = focusedPlace();
    if (household_.reckoningIsCurrent()) done_.clear();
    while (QLayoutItem* item = rows_->takeAt(0)) {
        if (item->widget()) {
            item->widget()->hide();
            item->widget()->deleteLater(); // one of its buttons may be the sender
        }
        delete item;
    }
    shown_.clear();
    waiting_.clear();
    lines_.clear();
    rows_->addStretch(1);
    const std::vector<advice::PutOff> later = putOffs();
    int waiting = 0;
    const auto reckoning = household_.reckoning();
    const auto journal = household_.journal();
    const Day today = household_.today();
    if (reckoning) {
        const std::vector<advice::Advice> all = advice::adviceForAll(*reckoning);
        for (const reckoning::StackReckoning& stack : household::inOrder(reckoning->stacks, household_.stackOrder())) {
            std::vector<advice::Advice> lines = advice::ofStack(all, stack.name);
            std::erase_if(lines, [&](const advice::Advice& one) { return daysBetween(today, one.on) > daysAhead; });
            waiting += static_cast<int>(std::erase_if(lines, [&](const advice::Advice& one) { return advice::isPutOff(later, one, today); }));
            if (lines.empty()) continue;
            const auto* history = journal->replay.stack(stack.name);
            const auto* standing = history ? history->on(today) : nullptr;
            shown_.insert(shown_.end(), lines.begin(), lines.end());
            waiting_.push_back({stack.name, std::move(lines), static_cast<int>(stack.now.slots.size()), standing && standing->drying});
        }
    }
    // As many as there were: where one was looking, there are lines again.
    const std::size_t madeBefore = std::exchange(made_, 0);
    do makeMore();
    while (!waiting_.empty() && made_ < madeBefore);
    summary_->setText(shown_.empty() ? QString{} : tr("%n this week", nullptr, static_cast<int>(shown_.size())));
    nothing_->setVisible(shown_.empty());
    again_->setVisible(waiting > 0);
    again_->setText(tr("%n put off: show", nullptr, waiting));
    if (journal->replay.stacks.empty()) nothing_->setText(tr("What is to be done stands here, with its reason, once there is a stack."));
    else if (!reckoning) nothing_->setText(tr("The estimates are being made; then what is due stands here."));
    else nothing_->setText(tr("Nothing is due this week."));
    if (focused) focusAgain(*focused);
    Q_EMIT counted(count());
}

std::optional<DueList::Place> DueList::focusedPlace() const
{
    const QWidget* focus = list_->focusWidget();
    if (!focus || !focus->hasFocus()) return std::nullopt;
    const auto line = std::ranges::find_if(lines_, [focus](const QWidget* each) { return each->isAncestorOf(focus); });
    if (line == lines_.end()) return std::nullopt;
    return Place{focus->property("line").toString(), focus->objectName(), static_cast<std::size_t>(line - lines_.begin())};
}

/// Only among the lines that stand now: those of before are still children of the list until they are deleted.
QPushButton* DueList::buttonOf(std::size_t line, const QString& name) const
{
    auto* button = line < lines_.size() ? lines_[line]->findChild<QPushButton*>(name) : nullptr;
    return button && button->isEnabled() ? button : nullptr;
}

/// The same button of the same line. Where it can no longer be pressed, or the line is gone, "Why" there: who presses the key
/// once more then does nothing that was not meant.
void DueList::focusAgain(const Place& place)
{
    const QString why = QStringLiteral("dueWhy");
    for (std::size_t line = 0; line < lines_.size(); ++line) {
        auto* same = lines_[line]->findChild<QPushButton*>(why);
        if (!same || same->property("line").toString() != place.line) continue;
        auto* button = buttonOf(line, place.button);
        (button ? button : same)->setFocus();
        return;
    }
    if (lines_.empty()) {
        if (again_->isVisibleTo(this)) again_->setFocus();
        return;
    }
    if (auto* next = buttonOf(std::min(place.at, lines_.size() - 1), why)) next->setFocus();
}

void DueList::ask(const QString& line, const std::function<void()>& asking)
{
    const auto before = household_.journal();
    done_.insert(line); // first: the list is built anew as soon as something is asked for
    asking();
    if (household_.journal() == before) done_.remove(line); // a form was opened, or it was refused
}

void DueList::doIt(const advice::Advice& advice)
{
    const advice::Advice kept = advice; // its line goes with the rebuild
    if (whyAtRest(kept).isEmpty()) ask(lineKey(kept), [&] { Q_EMIT act(kept); });
}

QString DueList::whyAtRest(const advice::Advice& advice) const
{
    if (done_.contains(lineKey(advice))) return tr("Written down. The estimates are being made anew.");
    // Food that is due tomorrow, when what was given a week before counts no longer.
    if (const auto current = household_.reckoning(); current && advice.code == advice::Code::feedDue && advice.on > household_.today()) {
        const auto* stack = current->stack(advice.stack);
        const advice::FoodLimit limit = stack != nullptr ? advice::foodLimit(*stack) : advice::FoodLimit{};
        if (stack != nullptr && !reckoning::isBorne(advice.kg, limit.kg))
            return tr("From %1 on: today %2 is the most, for what was given these days.").arg(ui::shortDay(advice.on, household_.today()), ui::amountText(limit.most));
    }
    // Those that were kept from an earlier day: what was written down since may be the very thing.
    const auto reckoning = household_.reckoning();
    const auto journal = household_.journal();
    for (auto entry = journal->entries.rbegin(); reckoning && entry != journal->entries.rend() && entry->date.day > reckoning->asOf; ++entry)
        if (entry->stack == advice.stack && entry->date.day <= household_.today()) return tr("The estimates are being made anew: they do not know the latest entries yet.");
    return {};
}

std::vector<advice::PutOff> DueList::putOffs() const { return advice::putOffFrom(household_.kept(store::settingPutOff).toStdString()); }

void DueList::noteDone(const advice::Advice& advice, const DueAct& act)
{
    DueAct noted = act;
    const Day today = household_.today();
    const auto later = advice::withPutOff(putOffs(), advice, today + std::chrono::days{advice::usualDelay(advice.code)}, today);
    noted.putOff = QString::fromStdString(advice::putOffText(advice::withDone(later, advice, today)));
    ask(lineKey(advice), [&] { Q_EMIT write(noted); });
}

QString DueList::withPutOff(const advice::Advice& advice, int days) const
{
    const Day today = household_.today();
    return QString::fromStdString(advice::putOffText(advice::withPutOff(putOffs(), advice, today + std::chrono::days{days}, today)));
}

/// One click; undo brings it back.
void DueList::putOff(const advice::Advice& advice, int days)
{
    household_.keep(store::settingPutOff, withPutOff(advice, days), tr("Put off: %1").arg(QString::fromStdString(advice.text)));
}

void DueList::tellAll() { household_.keep(store::settingPutOff, QString::fromStdString(advice::putOffText(advice::withoutPutOffs(putOffs()))), tr("Show what was put off")); }

void DueList::enter()
{
    for (auto* button : list_->findChildren<QPushButton*>(QStringLiteral("dueButton"))) {
        if (button->isVisible() && button->isEnabled()) {
            button->setFocus(Qt::ShortcutFocusReason);
            return;
        }
    }
}

void DueList::doFirst()
{
    if (!shown_.empty() && !household_.readOnly()) doIt(shown_.front());
}

}
