#include "ui/trends/trends_page.h"

#include "ui/common/flow_layout.h"
#include "ui/common/panels.h"
#include "ui/common/seams.h"
#include "ui/rotation/change_card.h"
#include "ui/trends/line_key.h"
#include "ui/trends/measure_section.h"
#include "ui/trends/stack_chips.h"

#include <QEvent>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace tierloam::trends {

namespace {

/// A tall window shows so many rows of charts at once.
constexpr int rowsInSight = 4;

constexpr int restMs = 150;          ///< until the view counts as at rest
constexpr int scrollMs = 350;        ///< between turns of the wheel that are one movement

std::string plain(const QString& text)
{
    return text.toStdString();
}

}

TrendsPage::TrendsPage(household::Household& household, const ui::Theme& theme, ui::Settings& settings, QWidget* parent)
    : QWidget{parent}, household_{household}, theme_{theme}, settings_{settings}, frame_{new QTimer{this}}, telling_{new QTimer{this}}, scrolling_{new QTimer{this}}, filling_{new QTimer{this}},
      head_{new ui::PageHead{this}}, controls_{new QWidget{this}}, chips_{new StackChips{this}}, scroll_{new QScrollArea{this}}
{
    setObjectName(QStringLiteral("trendsPage"));
    setProperty("page", true);
    ui::setAccess(this, tr("Trends"));
    const int kept = settings_.value(QStringLiteral("trends/range"), static_cast<int>(range_)).toInt();
    if (kept >= 0 && kept <= static_cast<int>(Range::all)) range_ = static_cast<Range>(kept);
    together_ = settings_.value(QStringLiteral("trends/together"), false).toBool();

    auto* rows = rows_ = new QVBoxLayout{this};
    rows->setContentsMargins(18, 14, 10, 0);
    rows->setSpacing(10);
    head_->setTitle(tr("Trends"));
    rows->addWidget(head_);
    buildControls();
    rows->addWidget(controls_);
    rows->addWidget(chips_);
    connect(chips_, &StackChips::chosen, this, &TrendsPage::refresh);

    auto* body = new QWidget;
    body->setProperty("page", true);
    auto* column = column_ = new QVBoxLayout{body};
    column->setContentsMargins(0, 0, 8, 16);
    column->setSpacing(12);
    for (const Measure measure : allMeasures) {
        auto* section = new MeasureSection{measure, theme_, body};
        section->setObjectName(QStringLiteral("section%1").arg(static_cast<int>(measure)));
        connect(section, &MeasureSection::cursorMoved, this, &TrendsPage::setCursor);
        connect(section, &MeasureSection::zoomAsked, this, &TrendsPage::zoom);
        connect(section, &MeasureSection::moveAsked, this, &TrendsPage::move);
        connect(section, &MeasureSection::spanAsked, this, &TrendsPage::setView);
        connect(section, &MeasureSection::wholeAsked, this, &TrendsPage::showWhole);
        column->addWidget(section);
        sections_.push_back(section);
    }
    key_ = new SignKey{theme_, body};
    column->addWidget(key_);
    column->addStretch(1);
    scroll_->setWidget(body);
    scroll_->setWidgetResizable(true);
    scroll_->setFrameShape(QFrame::NoFrame);
    scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll_->setFocusPolicy(Qt::NoFocus);
    scroll_->viewport()->installEventFilter(this);
    rows->addWidget(scroll_, 1);

    frame_->setSingleShot(true);
    frame_->setInterval(0);
    connect(frame_, &QTimer::timeout, this, &TrendsPage::showView);
    telling_->setSingleShot(true);
    telling_->setInterval(restMs);
    connect(telling_, &QTimer::timeout, this, [this] {
        for (MeasureSection* section : sections_) section->tellView();
    });
    scrolling_->setSingleShot(true);
    scrolling_->setInterval(scrollMs);
    connect(scrolling_, &QTimer::timeout, this, [this] {
        for (MeasureSection* section : sections_) section->setScrolling(false);
    });
    filling_->setSingleShot(true);
    filling_->setInterval(0);
    connect(filling_, &QTimer::timeout, this, [this] { fillRest(false); });
    const auto changed = [this] {
        stale_ = true;
        if (isVisible()) refresh();
    };
    connect(&household_, &household::Household::changed, this, changed);
    connect(&household_, &household::Household::reckoned, this, changed);
    connect(&theme_, &ui::Theme::changed, this, changed);
}

TrendsPage::~TrendsPage()
{
    // A chart that goes with the focus in it tells of its crosshair, when there is no page any more to hear it.
    for (MeasureSection* section : sections_) section->disconnect(this);
}

void TrendsPage::setSums(const Sums& sums)
{
    sums_ = sums;
    syncControls();
    refresh();
}

void TrendsPage::setView(Day from, Day until) { if (days_.set(from, until)) frame_->start(); }
void TrendsPage::showWhole() { setView(period().from, period().until); }
void TrendsPage::zoom(double factor, Day about) { if (days_.zoom(factor, about)) frame_->start(); }
void TrendsPage::move(double share) { if (days_.move(share)) frame_->start(); }

void TrendsPage::showView()
{
    frame_->stop();
    syncZoom();
    for (MeasureSection* section : sections_) section->setView(view());
    if (cursor_ && (*cursor_ < view().from || *cursor_ > view().until)) setCursor(std::clamp(*cursor_, view().from, view().until));
    telling_->start();
}

void TrendsPage::setCursor(std::optional<Day> day)
{
    cursor_ = day;
    for (MeasureSection* one : sections_) one->setCursorDay(day);
}

rotation::ChangeCard& TrendsPage::changeCard()
{
    if (change_) return *change_;
    change_ = new rotation::ChangeCard{household_, background_, theme_, scroll_->widget()};
    change_->leaveCoursesOut();
    change_->giveKeys(ui::ActionId::compareOnTrends, this);
    connect(change_, &rotation::ChangeCard::tried, this, &TrendsPage::showChange);
    column_->insertWidget(column_->indexOf(sections_.front()), change_);
    return *change_;
}

void TrendsPage::openChange(bool open)
{
    changeButton_->setChecked(open);
    if (!open && !change_) return;
    changeCard().setVisible(open);
    if (!open) {
        background_.forget();
        change_->forget();
        return;
    }
    change_->refresh();
    scroll_->ensureVisible(0, 0);
    QWidget* first = change_->nextInFocusChain();
    while (first != change_ && (first->focusPolicy() == Qt::NoFocus || !first->isVisibleTo(change_))) first = first->nextInFocusChain();
    if (change_->isAncestorOf(first)) first->setFocus(Qt::ShortcutFocusReason);
}

bool TrendsPage::changeOpen() const { return changeButton_->isChecked(); }

void TrendsPage::showChange()
{
    basis_ = household_.reckoning();
    refresh();
}

SeenTrends TrendsPage::seen()
{
    fillRest(true);
    SeenTrends seen{household_.name(), view(), false, {}, {}};
    for (const MeasureSection* section : sections_) {
        seen.measures.push_back({section->measure(), section->noteText(), section->columns(), section->seen(), section->contents().series});
        for (const Series& series : section->contents().series) seen.changed = seen.changed || !series.changed.empty();
    }
    if (seen.changed && change_) seen.changeSentence = change_->shown().sentence;
    return seen;
}

void TrendsPage::setRange(Range range)
{
    range_ = range;
    days_.forget(); // a range is asked for to be seen whole
    settings_.setValue(QStringLiteral("trends/range"), static_cast<int>(range_));
    syncControls();
    refresh();
}

void TrendsPage::setTogether(bool together)
{
    together_ = together;
    settings_.setValue(QStringLiteral("trends/together"), together_);
    syncControls();
    refresh();
}

void TrendsPage::setTable(bool table)
{
    table_ = table;
    syncControls();
    refresh();
}

void TrendsPage::setStackShown(const QString& stack, bool shown)
{
    chips_->setShown(stack, shown);
    refresh();
}

QStringList TrendsPage::shownStacks() const { return chips_->shown(); }

void TrendsPage::refreshNow()
{
    refresh();
    fillRest(true);
}

void TrendsPage::fillRest(bool all)
{
    if (!fill_ || filled_ >= sections_.size()) return;
    do fill_(filled_++);
    while (all && filled_ < sections_.size());
    shareHeight();
    if (filled_ < sections_.size()) filling_->start();
    else fill_ = nullptr; // it holds journal and estimates
}

void TrendsPage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    if (stale_) refresh();
}

void TrendsPage::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LocaleChange && isVisible()) refresh();
}

bool TrendsPage::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == scroll_->viewport() && event->type() == QEvent::Resize) shareHeight();
    if (watched == scroll_->viewport() && event->type() == QEvent::Wheel) {
        for (MeasureSection* section : sections_) section->setScrolling(true);
        scrolling_->start();
    }
    return QWidget::eventFilter(watched, event);
}

void TrendsPage::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    placeControls();
}

/// A tall window gives its height to the charts; a low one scrolls.
void TrendsPage::shareHeight()
{
    int rows = 0;
    for (const MeasureSection* section : sections_) rows += section->chartRows();
    if (rows == 0) return;
    rows = std::min(rows, rowsInSight);
    const int words = rows * theme_.px(44 + 64) + placeKey(); // headings, sentences
    for (MeasureSection* section : sections_) section->setChartHeight((scroll_->viewport()->height() - words) / (together_ ? rows * 3 / 2 : rows));
}

void TrendsPage::refresh()
{
    stale_ = false;
    const auto journal = household_.journal();
    const auto reckoning = household_.reckoning();
    const Day today = household_.today();
    QStringList names;
    for (const journal::StackHistory& stack : household::inOrder(journal->replay.stacks, household_.stackOrder())) {
        const journal::Standing* standing = stack.on(today);
        if (!standing || !standing->retired) names << QString::fromStdString(stack.name);
    }
    chips_->setStacks(names);
    QString line = names.isEmpty() ? tr("Charts stand here once there is a stack.") : household_.name();
    if (!names.isEmpty() && !household_.reckoningIsCurrent()) line = tr("%1 · estimates are being made anew").arg(line);
    head_->setLine(line);
    controls_->setVisible(!names.isEmpty());
    saveButton_->setVisible(!names.isEmpty());
    key_->setVisible(!names.isEmpty() && !table_);

    const QStringList shown = shownStacks();
    std::optional<Day> first;
    for (const QString& name : shown) {
        const auto* history = journal->replay.stack(plain(name));
        if (history && history->firstBedding && (!first || *history->firstBedding < *first)) first = history->firstBedding;
    }
    const Period period = periodOf(range_, today, first);
    days_.follow(period);
    if (change_ && basis_ && basis_ != reckoning && household_.reckoningIsCurrent()) {
        const QSignalBlocker quiet{change_};
        basis_ = nullptr;
        change_->forget();
    }
    if (change_ && change_->isVisibleTo(this)) change_->refresh();
    const rotation::TriedChange* tried = change_ && basis_ && !change_->shown().days.empty() ? &change_->shown() : nullptr;
    key_->setChanged(tried != nullptr);
    const auto logged = household_.logged();
    const auto held = [logged](const QString& name) {
        const auto found = logged->find(plain(name));
        return found == logged->end() ? nullptr : &found->second;
    };
    fill_ = [this, journal, reckoning, period, shown, held, tried, any = !names.isEmpty()](std::size_t i) {
        MeasureSection::Contents contents;
        contents.period = period;
        contents.sums = sums_;
        contents.together = together_ && shown.size() > 1;
        contents.table = table_;
        contents.anyStack = any;
        contents.reckoned = reckoning != nullptr;
        for (const QString& name : shown) {
            const auto* stack = reckoning ? reckoning->stack(plain(name)) : nullptr;
            const auto* changed = tried && tried->stack == plain(name) ? &tried->days : nullptr;
            contents.series.push_back(wholeSeries(allMeasures[i], {name, static_cast<int>(chips_->stacks().indexOf(name)), stack, held(name), changed}, *journal, period, sums_));
        }
        sections_[i]->setContents(std::move(contents), view());
    };
    // The first time those in sight, so that the page is there at once; the others follow one by one. From then on all together.
    const std::size_t before = filled_;
    int rows = 0;
    filled_ = 0;
    while (filled_ < sections_.size() && (filled_ < before || rows < rowsInSight || names.isEmpty())) {
        fill_(filled_);
        rows += sections_[filled_++]->chartRows();
    }
    if (filled_ < sections_.size()) filling_->start();
    else fill_ = nullptr;
    syncZoom();
    placeControls();
    shareHeight();
}

}
