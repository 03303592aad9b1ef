#include "ui/trends/trends_page.h"

#include "ui/common/flow_layout.h"
#include "ui/common/formats.h"
#include "ui/common/panels.h"
#include "ui/common/seams.h"
#include "ui/common/toggle.h"
#include "ui/trends/line_key.h"
#include "ui/trends/measure_section.h"
#include "ui/trends/trend_words.h"

#include <QAction>
#include <QEvent>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace tierloam::trends {

namespace {

constexpr Range allRanges[] = {Range::days30, Range::days90, Range::year, Range::twoYears, Range::all};
constexpr ui::ActionId rangeActions[] = {ui::ActionId::range30, ui::ActionId::range90, ui::ActionId::rangeYear, ui::ActionId::range2Years,
                                         ui::ActionId::rangeAll};

/// So many stacks are shown at first; the others wait to be chosen.
constexpr int shownAtFirst = 4;

std::string plain(const QString& text)
{
    return text.toStdString();
}

}

TrendsPage::TrendsPage(household::Household& household, const ui::Theme& theme, ui::Settings& settings, QWidget* parent)
    : QWidget{parent}, household_{household}, theme_{theme}, settings_{settings}, head_{new ui::PageHead{this}}, controls_{new QWidget{this}},
      chips_{new QWidget{this}}, scroll_{new QScrollArea{this}}
{
    setObjectName(QStringLiteral("trendsPage"));
    setProperty("page", true);
    ui::setAccess(this, tr("Trends"));
    const int kept = settings_.value(QStringLiteral("trends/range"), static_cast<int>(range_)).toInt();
    if (kept >= 0 && kept <= static_cast<int>(Range::all)) range_ = static_cast<Range>(kept);
    together_ = settings_.value(QStringLiteral("trends/together"), false).toBool();

    auto* rows = new QVBoxLayout{this};
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
    auto* column = new QVBoxLayout{body};
    column->setContentsMargins(0, 0, 8, 16);
    column->setSpacing(12);
    for (const Measure measure : allMeasures) {
        auto* section = new MeasureSection{measure, theme_, body};
        section->setObjectName(QStringLiteral("section%1").arg(static_cast<int>(measure)));
        connect(section, &MeasureSection::cursorMoved, this, [this](std::optional<Day> day) {
            for (MeasureSection* one : sections_) one->setCursorDay(day);
        });
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

    const auto changed = [this] {
        stale_ = true;
        if (isVisible()) refresh();
    };
    connect(&household_, &household::Household::changed, this, changed);
    connect(&household_, &household::Household::reckoned, this, changed);
    connect(&theme_, &ui::Theme::changed, this, changed);
}

QPushButton* TrendsPage::toggle(ui::ActionId id) { return ui::addToggle(id, this, controls_); }

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
    syncControls();
}

void TrendsPage::syncControls()
{
    for (std::size_t i = 0; i < ranges_.size(); ++i) ranges_[i]->setChecked(allRanges[i] == range_);
    togetherButton_->setChecked(together_);
    tableButton_->setChecked(table_);
}

void TrendsPage::setRange(Range range)
{
    range_ = range;
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
    return QWidget::eventFilter(watched, event);
}

/// A tall window gives its height to the charts; a low one scrolls.
void TrendsPage::shareHeight()
{
    int rows = 0;
    for (const MeasureSection* section : sections_) rows += section->chartRows();
    if (rows == 0) return;
    const int words = static_cast<int>(sections_.size()) * theme_.px(44) + rows * theme_.px(64) + theme_.px(40); // headings, sentences, key
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
    for (const journal::StackHistory& stack : journal->replay.stacks) {
        const journal::Standing* standing = stack.on(today);
        if (!standing || !standing->retired) names << QString::fromStdString(stack.name);
    }
    if (names != known_ || chips_->layout()->count() != names.size()) refreshStacks(names);
    QString line = names.isEmpty() ? tr("Charts stand here once there is a stack.") : household_.name();
    if (!names.isEmpty() && !household_.reckoningIsCurrent()) line = tr("%1 · estimates are being made anew").arg(line);
    head_->setLine(line);
    controls_->setVisible(!names.isEmpty());
    key_->setVisible(!names.isEmpty() && !table_);

    const QStringList shown = shownStacks();
    std::optional<Day> first;
    for (const QString& name : shown) {
        const auto* history = journal->replay.stack(plain(name));
        if (history && history->firstBedding && (!first || *history->firstBedding < *first)) first = history->firstBedding;
    }
    const Period period = periodOf(range_, today, first);
    const auto logged = household_.logged();
    const auto held = [&](const QString& name) {
        const auto found = logged->find(plain(name));
        return found == logged->end() ? nullptr : &found->second;
    };
    for (std::size_t i = 0; i < sections_.size(); ++i) {
        MeasureSection::Contents contents;
        contents.period = period;
        contents.together = together_ && shown.size() > 1;
        contents.table = table_;
        contents.anyStack = !names.isEmpty();
        contents.reckoned = reckoning != nullptr;
        for (const QString& name : shown) {
            const auto* stack = reckoning ? reckoning->stack(plain(name)) : nullptr;
            contents.series.push_back(seriesOf(allMeasures[i], name, static_cast<int>(known_.indexOf(name)), stack, *journal, period, held(name)));
        }
        sections_[i]->setContents(std::move(contents));
    }
    shareHeight();
}

}
