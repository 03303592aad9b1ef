#include "ui/trends/trends_page.h"

#include "ui/common/flow_layout.h"
#include "ui/common/formats.h"
#include "ui/common/menu_letters.h"
#include "ui/common/panels.h"
#include "ui/common/seams.h"
#include "ui/common/toggle.h"
#include "ui/rotation/change_card.h"
#include "ui/trends/line_key.h"
#include "ui/trends/measure_section.h"
#include "ui/trends/trend_words.h"

#include <QAction>
#include <QEvent>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace tierloam::trends {

namespace {

constexpr Range allRanges[] = {Range::days30, Range::days90, Range::year, Range::twoYears, Range::all};
constexpr ui::ActionId rangeActions[] = {ui::ActionId::range30, ui::ActionId::range90, ui::ActionId::rangeYear, ui::ActionId::range2Years,
                                         ui::ActionId::rangeAll};

/// So many stacks are shown at first; the others wait to be chosen.
constexpr int shownAtFirst = 4;

/// A tall window shows so many rows of charts at once.
constexpr int rowsInSight = 4;

constexpr double mostControls = 0.3; ///< of the page's height

constexpr int fewestDays = 7;        ///< shown at once
constexpr double notch = 0.8;        ///< of a key or button that zooms
constexpr double stride = 0.2;       ///< of the days shown, of a key that moves along
constexpr int restMs = 150;          ///< until the view counts as at rest
constexpr int scrollMs = 350;        ///< between turns of the wheel that are one movement

std::string plain(const QString& text)
{
    return text.toStdString();
}

}

TrendsPage::TrendsPage(household::Household& household, const ui::Theme& theme, ui::Settings& settings, QWidget* parent)
    : QWidget{parent}, household_{household}, theme_{theme}, settings_{settings}, frame_{new QTimer{this}}, telling_{new QTimer{this}}, scrolling_{new QTimer{this}}, filling_{new QTimer{this}},
      head_{new ui::PageHead{this}}, controls_{new QWidget{this}}, chips_{new QWidget{this}}, scroll_{new QScrollArea{this}}
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
    new ui::FlowLayout{chips_, 8};
    rows->addWidget(chips_);

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

QPushButton* TrendsPage::toggle(ui::ActionId id) { return ui::addToggle(id, this, controls_); }

QPushButton* TrendsPage::press(ui::ActionId id)
{
    QPushButton* button = toggle(id);
    button->setCheckable(false);
    return button;
}

void TrendsPage::buildControls()
{
    new ui::FlowLayout{controls_, 8};
    for (std::size_t i = 0; i < std::size(allRanges); ++i) {
        QPushButton* button = toggle(rangeActions[i]);
        ui::setAccess(button, tr("Show %1").arg(rangeName(allRanges[i])));
        connect(button, &QPushButton::clicked, this, [this, i] { setRange(allRanges[i]); });
        ranges_.push_back(button);
    }
    togetherButton_ = toggle(ui::ActionId::chartsTogether);
    connect(togetherButton_, &QPushButton::clicked, this, [this](bool on) { setTogether(on); });
    tableButton_ = toggle(ui::ActionId::showTable);
    connect(tableButton_, &QPushButton::clicked, this, [this](bool on) { setTable(on); });
    sumButton_ = toggle(ui::ActionId::sumDrainage);
    connect(sumButton_, &QPushButton::clicked, this, [this](bool on) { setSums({on, sums_.yieldByYear}); });
    yearButton_ = toggle(ui::ActionId::yieldByYear);
    connect(yearButton_, &QPushButton::clicked, this, [this](bool on) { setSums({sums_.drainageAddedUp, on}); });
    changeButton_ = toggle(ui::ActionId::tryChange);
    connect(changeButton_, &QPushButton::clicked, this, [this](bool on) { openChange(on); });
    const auto about = [this] { return cursor_.value_or(view_.from + std::chrono::days{daysBetween(view_.from, view_.until) / 2}); };
    connect(press(ui::ActionId::zoomIn), &QPushButton::clicked, this, [this, about] { zoom(notch, about()); });
    connect(press(ui::ActionId::zoomOut), &QPushButton::clicked, this, [this, about] { zoom(1 / notch, about()); });
    wholeButton_ = press(ui::ActionId::zoomWhole);
    connect(wholeButton_, &QPushButton::clicked, this, &TrendsPage::showWhole);
    for (const auto& [id, share] : {std::pair{ui::ActionId::moveEarlier, -stride}, std::pair{ui::ActionId::moveLater, stride}}) {
        QAction* action = ui::makeAction(id, this);
        addAction(action);
        connect(action, &QAction::triggered, this, [this, by = share] { move(by); });
    }
    buildMenu();
    syncControls();
}

void TrendsPage::buildMenu()
{
    saveButton_ = ui::makeButton(tr("Save or print"), ui::Tone::plain, head_);
    saveButton_->setObjectName(QStringLiteral("saveTrends"));
    ui::setAccess(saveButton_, tr("Save or print"), tr("What the charts show now, as a picture, a drawing, pages or figures"));
    auto* menu = new QMenu{saveButton_};
    for (const auto& [id, kind] : {std::pair{ui::ActionId::savePng, "png"}, std::pair{ui::ActionId::saveSvg, "svg"}, std::pair{ui::ActionId::savePdf, "pdf"},
                                   std::pair{ui::ActionId::saveFigures, "csv"}}) {
        QAction* action = ui::makeAction(id, this);
        addAction(action);
        menu->addAction(action);
        connect(action, &QAction::triggered, this, [this, what = QString::fromLatin1(kind)] { if (!known_.isEmpty()) Q_EMIT saveAsked(what); });
    }
    QAction* print = ui::makeAction(ui::ActionId::printCharts, this);
    addAction(print);
    menu->addAction(print);
    connect(print, &QAction::triggered, this, [this] { if (!known_.isEmpty()) Q_EMIT printAsked(); });
    ui::keepLettersApart(menu);
    saveButton_->setMenu(menu);
    head_->addButton(saveButton_);
}

void TrendsPage::syncControls()
{
    for (std::size_t i = 0; i < ranges_.size(); ++i) ranges_[i]->setChecked(allRanges[i] == range_);
    togetherButton_->setChecked(together_);
    tableButton_->setChecked(table_);
    sumButton_->setChecked(sums_.drainageAddedUp);
    yearButton_->setChecked(sums_.yieldByYear);
    wholeButton_->setEnabled(zoomed_);
}

void TrendsPage::setSums(const Sums& sums)
{
    sums_ = sums;
    syncControls();
    refresh();
}

void TrendsPage::setView(Day from, Day until)
{
    const int whole = daysBetween(whole_.from, whole_.until);
    const int length = std::clamp(daysBetween(from, until), std::min(fewestDays, whole), whole);
    from += std::chrono::days{(daysBetween(from, until) - length) / 2};
    from = std::clamp(from, whole_.from, whole_.until - std::chrono::days{length});
    const Period view{from, whole_.today, from + std::chrono::days{length}};
    if (view == view_) return;
    view_ = view;
    zoomed_ = view != whole_;
    frame_->start();
}

void TrendsPage::showWhole() { setView(whole_.from, whole_.until); }

void TrendsPage::zoom(double factor, Day about)
{
    about = std::clamp(about, view_.from, view_.until);
    const double before = daysBetween(view_.from, about), after = daysBetween(about, view_.until);
    // A notch always moves something, however few the days are.
    const auto scaled = [factor](double days) { return factor < 1 ? std::floor(days * factor) : std::ceil(days * factor); };
    setView(about - std::chrono::days{static_cast<int>(scaled(before))}, about + std::chrono::days{static_cast<int>(scaled(after))});
}

void TrendsPage::move(double share)
{
    const int days = static_cast<int>(std::lround(share * daysBetween(view_.from, view_.until)));
    const int by = std::clamp(days == 0 ? (share < 0 ? -1 : 1) : days, daysBetween(view_.from, whole_.from), daysBetween(view_.until, whole_.until));
    setView(view_.from + std::chrono::days{by}, view_.until + std::chrono::days{by});
}

void TrendsPage::showView()
{
    frame_->stop();
    wholeButton_->setEnabled(zoomed_);
    for (MeasureSection* section : sections_) section->setView(view_);
    if (cursor_ && (*cursor_ < view_.from || *cursor_ > view_.until)) setCursor(std::clamp(*cursor_, view_.from, view_.until));
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
    SeenTrends seen{household_.name(), view_, false, {}, {}};
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
    zoomed_ = false; // a range is asked for to be seen whole
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
    if (shown) hidden_.erase(stack);
    else hidden_.insert(stack);
    refresh();
}

QStringList TrendsPage::shownStacks() const
{
    QStringList names;
    for (const QString& name : known_) {
        if (!hidden_.contains(name)) names << name;
    }
    return names;
}

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

/// Where large letters or a small window leave little room below them, the buttons scroll with the charts.
void TrendsPage::placeControls()
{
    const int room = width() - rows_->contentsMargins().left() - rows_->contentsMargins().right();
    const int taken = controls_->layout()->heightForWidth(room) + (chips_->isHidden() ? 0 : chips_->layout()->heightForWidth(room));
    const bool scroll = taken > height() * mostControls;
    if (scroll == controlsScroll_) return;
    controlsScroll_ = scroll;
    QWidget* const both[] = {controls_, chips_};
    for (int place = 0; place < 2; ++place) {
        (scroll ? rows_ : column_)->removeWidget(both[place]);
        const bool hidden = both[place]->isHidden();
        if (scroll) column_->insertWidget(place, both[place]);
        else rows_->insertWidget(1 + place, both[place]); // beneath the head
        both[place]->setHidden(hidden);
    }
}

/// A tall window gives its height to the charts; a low one scrolls.
void TrendsPage::shareHeight()
{
    int rows = 0;
    for (const MeasureSection* section : sections_) rows += section->chartRows();
    if (rows == 0) return;
    rows = std::min(rows, rowsInSight);
    const int words = rows * theme_.px(44 + 64); // headings, sentences
    for (MeasureSection* section : sections_) section->setChartHeight((scroll_->viewport()->height() - words) / (together_ ? rows * 3 / 2 : rows));
}

void TrendsPage::refreshStacks(const QStringList& names)
{
    for (const QString& name : names) {
        const bool isNew = !known_.contains(name);
        if (isNew && known_.size() >= shownAtFirst && names.size() > shownAtFirst + 2) hidden_.insert(name);
        if (isNew) known_ << name;
    }
    known_ = names;
    auto* flow = chips_->layout();
    QString focused;
    if (QWidget* focus = chips_->focusWidget(); focus && focus->hasFocus()) focused = focus->property("stack").toString();
    while (QLayoutItem* item = flow->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    chips_->setVisible(names.size() > 1);
    for (const QString& name : names) {
        auto* chip = ui::makeButton({}, ui::Tone::plain, chips_);
        chip->setCheckable(true);
        chip->setChecked(!hidden_.contains(name));
        chip->setProperty("stack", name);
        const auto say = [chip, name] {
            const QString box = chip->isChecked() ? QStringLiteral("☑ ") : QStringLiteral("☐ ");
            chip->setText(box % QString{name}.replace(u'&', QStringLiteral("&&")));
        };
        say();
        connect(chip, &QPushButton::toggled, chip, say);
        ui::setAccess(chip, tr("Show stack %1").arg(name));
        // Queued: the chips are made anew by the refresh, and the one that was clicked must live until its click is over.
        connect(chip, &QPushButton::toggled, this, [this, name](bool on) { setStackShown(name, on); }, Qt::QueuedConnection);
        flow->addWidget(chip);
        chip->show();
        if (name == focused) chip->setFocus();
    }
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
    if (names != known_ || chips_->layout()->count() != names.size()) refreshStacks(names);
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
    if (!zoomed_) {
        view_ = period;
    } else if (period != whole_) { // another range or another day: what was looked at stays, as far as it can
        const Period old = view_;
        whole_ = view_ = period;
        setView(old.from, old.until);
        frame_->stop();
    }
    whole_ = period;
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
            contents.series.push_back(wholeSeries(allMeasures[i], {name, static_cast<int>(known_.indexOf(name)), stack, held(name), changed}, *journal, period, sums_));
        }
        sections_[i]->setContents(std::move(contents), view_);
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
    wholeButton_->setEnabled(zoomed_);
    placeControls();
    shareHeight();
}

}
