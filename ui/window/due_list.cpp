#include "ui/window/due_list.h"

#include "core/advice/household_advice.h"
#include "core/store/setting_names.h"
#include "ui/common/flow_layout.h"
#include "ui/common/formats.h"
#include "ui/common/panels.h"
#include "ui/drawing/tray_icon.h"

#include <QAction>
#include <QApplication>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPainter>
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
constexpr int delays[] = {1, 2, 3, 7, 14, 30}; ///< days by which a line can be put off

/// So many lines are made at a time, about 1 ms each: a screen holds some ten, three stacks seldom have more than these.
constexpr std::size_t linesAtOnce = 24;

ui::Tone toneOf(advice::Code code, advice::Severity severity)
{
    if (severity == advice::Severity::urgent) return ui::Tone::brick;
    switch (code) {
    case advice::Code::sumpFull:
    case advice::Code::tooWet:
    case advice::Code::tooDry:
    case advice::Code::drainageHigh:
    case advice::Code::drainageLow: return ui::Tone::water;
    case advice::Code::harvestOverdue:
    case advice::Code::harvestSoon:
    case advice::Code::trayFull:
    case advice::Code::overfed:
    case advice::Code::heat:
    case advice::Code::cold:
    case advice::Code::dryingDone:
    case advice::Code::dryingLong:
    case advice::Code::staleRecord: return ui::Tone::amber;
    default: return ui::Tone::moss;
    }
}

/// The same line after a rebuild; of the record there can be two.
QString lineKey(const advice::Advice& advice)
{
    const QString key = QString::fromStdString(advice.stack) % u'/' % QString::number(static_cast<int>(advice.code));
    return advice.unwritten ? QString{key % QStringLiteral("/unwritten")} : key;
}

QColor colourOf(ui::Tone tone, const drawing::Palette& palette)
{
    switch (tone) {
    case ui::Tone::plain: return palette.outline;
    case ui::Tone::moss: return palette.moss;
    case ui::Tone::amber: return palette.amber;
    case ui::Tone::brick: return palette.brick;
    case ui::Tone::water: return palette.water;
    }
    return palette.outline;
}

/// A small button for what is done less often than the act itself.
QPushButton* makeQuiet(const QString& text, const QString& key, QWidget* parent)
{
    auto* button = ui::makeButton(text, ui::Tone::plain, parent);
    button->setProperty("line", key);
    button->setProperty("compact", true);
    return button;
}

/// The small stack beside a line.
class TrayMark final : public QWidget {
public:
    TrayMark(const ui::Theme& theme, int trays, std::optional<int> slot, ui::Tone tone, QWidget* parent)
        : QWidget{parent}, theme_{theme}, trays_{trays}, slot_{slot}, tone_{tone}
    {
        setObjectName(QStringLiteral("dueMark"));
        setFixedSize(theme.px(24), theme.px(44));
    }

protected:
    void paintEvent(QPaintEvent*) override
    {
        QPainter painter{this};
        painter.setRenderHint(QPainter::Antialiasing);
        drawing::TrayIcon icon;
        icon.trays = std::clamp(trays_, 1, 5);
        icon.slot = slot_;
        icon.colour = colourOf(tone_, theme_.palette());
        drawing::drawTrayIcon(painter, rect(), icon, theme_.palette());
        if (tone_ == ui::Tone::brick) drawUrgent(painter);
    }

private:
    /// What cannot wait has a sign of its own, not a colour alone.
    void drawUrgent(QPainter& painter)
    {
        const double size = theme_.px(14);
        const QRectF box{width() - size, 0.5, size - 1, size - 1};
        painter.setPen(QPen{theme_.palette().panel, 3, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin});
        painter.setBrush(theme_.palette().brick);
        const QPolygonF sign{{{box.center().x(), box.top()}, box.bottomRight(), box.bottomLeft()}};
        painter.drawPolygon(sign);
        painter.setPen(Qt::NoPen);
        painter.drawPolygon(sign);
        painter.setPen(QPen{theme_.palette().panel, 1.5 * theme_.scale(), Qt::SolidLine, Qt::FlatCap});
        painter.drawLine(QPointF{box.center().x(), box.top() + size * 0.35}, QPointF{box.center().x(), box.top() + size * 0.65});
        painter.drawLine(QPointF{box.center().x(), box.top() + size * 0.74}, QPointF{box.center().x(), box.top() + size * 0.86});
    }

    const ui::Theme& theme_;
    int trays_;
    std::optional<int> slot_;
    ui::Tone tone_;
};

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
    nothing_->setContentsMargins(4, 0, 18, 0);
    column->addWidget(nothing_);
    column->addWidget(scroll, 1);
    // Also when the list grows or the window does. Queued: a line that asks for more while it is being scrolled to must not be laid out within that.
    connect(scroll->verticalScrollBar(), &QScrollBar::valueChanged, this, &DueList::makeMoreIfNear, Qt::QueuedConnection);
    connect(scroll->verticalScrollBar(), &QScrollBar::rangeChanged, this, &DueList::makeMoreIfNear, Qt::QueuedConnection);
    connect(scroll->verticalScrollBar(), &QScrollBar::rangeChanged, this, &DueList::keepInSight, Qt::QueuedConnection);
    for (QWidget* each : std::initializer_list<QWidget*>{scroll->viewport(), scroll->verticalScrollBar()}) each->installEventFilter(this);
    again_->setObjectName(QStringLiteral("dueAgain"));
    again_->setAccessibleDescription(tr("Shows what was put off"));
    connect(again_, &QPushButton::clicked, this, [this] { tellAll(); });
    column->addWidget(again_, 0, Qt::AlignLeading);

    connect(&household_, &household::Household::reckoned, this, [this] { rebuild(); });
    connect(&household_, &household::Household::changed, this, [this] { rebuild(); });
    connect(&theme_, &ui::Theme::changed, this, [this] { rebuild(); });
    rebuild();
}

int DueList::wantedWidth() const
{
    return theme_.px(318); // the last line of buttons in German, and a scroll bar
}

QString DueList::actName(const advice::Advice& advice, bool drying)
{
    if (advice.look) return tr("Look");
    switch (advice.code) {
    case advice::Code::harvestReady:
    case advice::Code::readyNoHurry:
    case advice::Code::harvestOverdue: return drying ? tr("Take") : tr("Lift");
    case advice::Code::harvestSoon:
    case advice::Code::lookNext: return tr("Look");
    case advice::Code::addTray: return tr("Add");
    case advice::Code::tooEarly: return drying ? tr("Cover") : tr("Feed");
    case advice::Code::feedDue:
    case advice::Code::hungry: return tr("Feed");
    case advice::Code::trayFull:
    case advice::Code::overfed:
    case advice::Code::staleRecord: return tr("Look");
    case advice::Code::lowCarbon:
    case advice::Code::tooWet: return tr("Paper", "shredded, to be put in");
    case advice::Code::tooDry: return tr("Water");
    case advice::Code::sumpFull:
    case advice::Code::drainageLow: return tr("Drain");
    case advice::Code::drainageHigh: return tr("Write", "what was poured into the journal");
    case advice::Code::heat:
    case advice::Code::cold: return tr("Read", "a thermometer");
    case advice::Code::dryingDone:
    case advice::Code::dryingLong: return tr("Take");
    case advice::Code::recordDisagrees:
        if (advice.wormsMissing) return tr("Stock", "worms, to be put in");
        return advice.unwritten ? tr("Write", "a feeding into the journal") : tr("Check");
    }
    return {};
}

QWidget* DueList::makeLine(const advice::Advice& advice, int trays, bool drying)
{
    const Day today = household_.today();
    const ui::Tone tone = toneOf(advice.code, advice.severity);
    auto* line = new QWidget;
    auto* grid = new QGridLayout{line};
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(9);
    grid->setVerticalSpacing(1);
    grid->setColumnStretch(1, 1);
    const bool sump = advice.code == advice::Code::sumpFull || advice.code == advice::Code::drainageLow || advice.code == advice::Code::drainageHigh;
    grid->addWidget(new TrayMark{theme_, trays, sump ? std::optional{0} : advice.slot, tone, line}, 0, 0, 4, 1, Qt::AlignTop);
    const QString what = ui::unbroken(QString::fromStdString(advice.text));
    const QString why = ui::unbroken(QString::fromStdString(advice.because));
    const QString when = ui::dueDay(advice.on, today);
    // The button stands beside the first line, so that the reasons have the whole width.
    grid->addWidget(ui::makeLabel(what, ui::TextRole::strong, line, true), 0, 1);
    grid->addWidget(ui::makeLabel(why, ui::TextRole::smallMuted, line, true), 1, 1, 1, 2);
    auto* foot = new QWidget{line};
    auto* footRow = new ui::FlowLayout{foot, 6}; // longer words go on below
    auto* date = ui::makeLabel(when, ui::TextRole::small, foot);
    ui::setTone(date, tone);
    footRow->addWidget(date);
    const auto oneClick = dueAct(household_, advice);
    const QString key = lineKey(advice);
    const QString whole = tr("%1: %2").arg(QString::fromStdString(advice.stack), what);
    const QString atRest = whyAtRest(advice);
    const bool open = !household_.readOnly() && atRest.isEmpty();
    auto* explain = makeQuiet(tr("Why"), key, foot);
    explain->setObjectName(QStringLiteral("dueWhy"));
    explain->setCheckable(true);
    explain->setChecked(explained_ == key);
    ui::setAccess(explain, tr("Why %1").arg(whole));
    connect(explain, &QPushButton::clicked, this, [this, key](bool on) {
        explained_ = on ? key : QString{};
        rebuild();
    });
    footRow->addWidget(explain);
    const int usually = advice::usualDelay(advice.code);
    auto* later = makeQuiet(tr("In %n day(s)", "put off by so many", usually), key, foot);
    later->setObjectName(QStringLiteral("dueLater"));
    later->setEnabled(open && advice.severity != advice::Severity::urgent);
    later->setToolTip(tr("Not told again for %n day(s); for another time: right click, or the menu key", nullptr, usually));
    ui::setAccess(later, tr("Put off %1").arg(whole), later->toolTip());
    connect(later, &QPushButton::clicked, this, [this, advice, usually] { putOff(advice, usually); });
    later->setContextMenuPolicy(Qt::ActionsContextMenu);
    for (const int days : delays) {
        auto* action = new QAction{tr("Put off by %n day(s)", nullptr, days), later};
        connect(action, &QAction::triggered, this, [this, advice, days] { putOff(advice, days); });
        later->addAction(action);
    }
    footRow->addWidget(later);
    if (oneClick) {
        auto* form = makeQuiet(tr("…", "opens the form of what is due"), key, foot);
        form->setObjectName(QStringLiteral("dueOther"));
        form->setEnabled(open);
        form->setToolTip(tr("Another amount or day: opens the form"));
        ui::setAccess(form, tr("Other amount or day for %1").arg(whole), form->toolTip());
        connect(form, &QPushButton::clicked, this, [this, advice] { Q_EMIT other(advice); });
        footRow->addWidget(form);
    }
    if (const auto done = dueDone(household_, advice)) {
        auto* noted = makeQuiet(tr("Done"), key, foot);
        noted->setObjectName(QStringLiteral("dueDone"));
        noted->setEnabled(open);
        noted->setToolTip(tr("Writes a note that it is done, at one click"));
        ui::setAccess(noted, tr("Done: %1").arg(whole), noted->toolTip());
        connect(noted, &QPushButton::clicked, this, [this, advice, done = *done] { noteDone(advice, done); });
        footRow->addWidget(noted);
    }
    grid->addWidget(foot, 3, 1, 1, 2);
    if (!atRest.isEmpty()) {
        auto* resting = ui::makeLabel(atRest, ui::TextRole::small, line, true);
        resting->setObjectName(QStringLiteral("dueAtRest"));
        grid->addWidget(resting, 2, 1, 1, 2);
    } else if (oneClick && !oneClick->caution.isEmpty()) {
        auto* caution = ui::makeLabel(oneClick->caution, ui::TextRole::small, line, true);
        caution->setObjectName(QStringLiteral("dueCaution"));
        grid->addWidget(caution, 2, 1, 1, 2);
    } else if (QWidget* answers = makeAnswers(advice, whole, line)) {
        grid->addWidget(answers, 2, 1, 1, 2);
    }
    if (explained_ == key) {
        auto* reasons = ui::makeLabel(ui::unbroken(tr("%1 If it is left: %2").arg(QString::fromStdString(advice::ruleOf(advice.code)), QString::fromStdString(advice::ifLeft(advice.code)))),
                                      ui::TextRole::smallMuted, line, true);
        reasons->setObjectName(QStringLiteral("dueReasons"));
        grid->addWidget(reasons, 4, 1, 1, 2);
    }
    const QString name = actName(advice, drying);
    auto* button = ui::makeButton(name, tone, line);
    button->setObjectName(QStringLiteral("dueButton"));
    button->setProperty("line", lineKey(advice));
    const QString urgent = advice.severity == advice::Severity::urgent ? tr("Urgent. ") : QString{};
    ui::setAccess(button, tr("%1: %2").arg(QString::fromStdString(advice.stack), what), urgent + (oneClick ? tr("%1 %2. Writes down at one click: %3").arg(why, when, oneClick->label) : tr("%1 %2").arg(why, when)));
    button->setToolTip(oneClick ? tr("Writes down at one click: %1").arg(oneClick->label) : tr("%1: %2").arg(QString::fromStdString(advice.stack), what));
    button->setMinimumWidth(theme_.px(56));
    button->setEnabled(open);
    connect(button, &QPushButton::clicked, this, [this, advice] { doIt(advice); });
    grid->addWidget(button, 0, 2, Qt::AlignTop);
    for (QPushButton* each : line->findChildren<QPushButton*>()) each->installEventFilter(this);
    lines_.push_back(line);
    return line;
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
    // Those that were kept from an earlier day: what was written down since may be the very thing.
    const auto reckoning = household_.reckoning();
    const auto journal = household_.journal();
    for (auto entry = journal->entries.rbegin(); reckoning && entry != journal->entries.rend() && entry->date.day > reckoning->asOf; ++entry)
        if (entry->stack == advice.stack && entry->date.day <= household_.today()) return tr("The estimates are being made anew: they do not know the latest entries yet.");
    return {};
}

std::vector<advice::PutOff> DueList::putOffs() const { return advice::putOffFrom(household_.kept(store::settingPutOff).toStdString()); }

QWidget* DueList::makeAnswers(const advice::Advice& advice, const QString& whole, QWidget* line)
{
    const std::vector<DueAnswer> answers = dueAnswers(household_, advice);
    if (answers.empty()) return nullptr;
    auto* row = new QWidget{line};
    auto* flow = new ui::FlowLayout{row, 6};
    for (const DueAnswer& answer : answers) {
        auto* button = makeQuiet(answer.text, lineKey(advice), row);
        button->setObjectName(QStringLiteral("dueAnswer"));
        button->setEnabled(!household_.readOnly()); // a line at rest asks nothing
        button->setToolTip(tr("Writes down at one click: %1").arg(answer.act.label));
        ui::setAccess(button, tr("%1: %2", "what is asked, an answer").arg(whole, answer.text), button->toolTip());
        connect(button, &QPushButton::clicked, this, [this, key = lineKey(advice), act = answer.act] { ask(key, [&] { Q_EMIT write(act); }); });
        flow->addWidget(button);
    }
    return row;
}

void DueList::noteDone(const advice::Advice& advice, const DueAct& act)
{
    DueAct noted = act;
    noted.putOff = withPutOff(advice, advice::usualDelay(advice.code));
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

void DueList::tellAll() { household_.keep(store::settingPutOff, {}, tr("Show what was put off")); }

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
