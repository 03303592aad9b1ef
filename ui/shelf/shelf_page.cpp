#include "ui/shelf/shelf_page.h"

#include "core/advice/put_off.h"
#include "core/household/usual_cover.h"
#include "core/store/setting_names.h"
#include "ui/common/panels.h"
#include "ui/common/usual_amounts.h"
#include "ui/forms/action_form.h"
#include "ui/forms/new_stack.h"
#include "ui/shelf/date_bar.h"
#include "ui/shelf/form_host.h"
#include "ui/shelf/legend_bar.h"
#include "ui/shelf/part_panel.h"
#include "ui/shelf/shelf_board.h"

#include <QApplication>
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
    legend_ = new LegendBar{theme_, *board_, scroll_->viewport()};

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
    connect(board_, &ShelfBoard::laid, this, [this] { legend_->follow(); });
    connect(board_, &ShelfBoard::dragMoved, this, [this](const QPoint& at) { scroll_->ensureVisible(at.x(), at.y(), 60, 60); });
    for (QScrollBar* bar : {scroll_->verticalScrollBar(), scroll_->horizontalScrollBar()}) {
        connect(bar, &QScrollBar::valueChanged, this, &ShelfPage::tellSeen);
        connect(bar, &QScrollBar::valueChanged, this, [this] { legend_->follow(); });
    }
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
    connect(qApp, &QApplication::focusChanged, this, &ShelfPage::followFocus);
    auto* midnight = new QTimer{this};
    midnight->setInterval(60'000);
    connect(midnight, &QTimer::timeout, this, [this] {
        if (model_ && model_->today != household_.today()) refresh();
    });
    midnight->start();
    makeActions();
}

ShelfPage::~ShelfPage()
{
    disconnect(qApp, nullptr, this, nullptr); // the focus goes on while its widgets go
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
        legend_->follow();
        tellSeen();
        QMetaObject::invokeMethod(this, &ShelfPage::keepSelectedInView, Qt::QueuedConnection); // after the scroll bars know
    }
    return QWidget::eventFilter(watched, event);
}

}
