#include "ui/trends/measure_section.h"

#include "ui/common/dates.h"
#include "ui/common/flow_layout.h"
#include "ui/trends/line_key.h"
#include "ui/trends/readout_line.h"
#include "ui/trends/trend_chart.h"
#include "ui/trends/trend_sentence.h"
#include "ui/trends/trend_table.h"
#include "ui/trends/trend_words.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QMetaObject>
#include <QScrollBar>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace tierloam::trends {

MeasureSection::MeasureSection(Measure measure, const ui::Theme& theme, QWidget* parent)
    : Card{parent}, measure_{measure}, theme_{theme}, note_{ui::makeLabel(measureNote(measure, 7), ui::TextRole::smallMuted)}, nothing_{ui::makeLabel({}, ui::TextRole::muted, this, true)}, key_{new QWidget{this}},
      charts_{new QWidget{this}}, grid_{new QGridLayout{charts_}}
{
    auto* head = new QHBoxLayout;
    head->setSpacing(10);
    head->addWidget(ui::makeLabel(measureName(measure), ui::TextRole::section, this), 0, Qt::AlignTop);
    note_->setWordWrap(true);
    head->addWidget(note_, 1);
    column()->addLayout(head);
    new ui::FlowLayout{key_, 16};
    column()->addWidget(nothing_);
    column()->addWidget(key_);
    grid_->setContentsMargins(0, 0, 0, 0);
    grid_->setHorizontalSpacing(18);
    grid_->setVerticalSpacing(10);
    column()->addWidget(charts_);
}

void MeasureSection::makeTable()
{
    if (table_) return;
    model_ = new TrendTable{this};
    table_ = new QTableView{this};
    table_->setModel(model_);
    table_->setAlternatingRowColors(true);
    table_->setShowGrid(false);
    table_->verticalHeader()->hide();
    table_->horizontalHeader()->setStretchLastSection(true);
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table_->horizontalHeader()->setHighlightSections(false);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setTabKeyNavigation(false);
    table_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    ui::setAccess(table_, tr("%1 as table").arg(measureName(measure_)));
    table_->hide();
    column()->addWidget(table_);
}

MeasureSection::Cell MeasureSection::makeCell()
{
    Cell cell;
    cell.box = new QWidget{charts_};
    cell.head = new QWidget{cell.box};
    auto* words = new QVBoxLayout{cell.head};
    words->setContentsMargins(0, 0, 0, 0);
    words->setSpacing(1);
    cell.name = ui::makeLabel({}, ui::TextRole::strong, cell.head, true);
    cell.readout = new ReadoutLine{theme_, cell.head};
    words->addWidget(cell.name);
    words->addWidget(cell.readout);
    cell.chart = new TrendChart{theme_, cell.box};
    cell.sentence = ui::makeLabel({}, ui::TextRole::smallMuted, cell.box, true);
    auto* rows = new QVBoxLayout{cell.box};
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(3);
    rows->addWidget(cell.head);
    rows->addWidget(cell.chart);
    rows->addWidget(cell.sentence);
    rows->addStretch(1);
    connect(cell.chart, &TrendChart::cursorMoved, this, &MeasureSection::cursorMoved);
    connect(cell.chart, &TrendChart::zoomAsked, this, &MeasureSection::zoomAsked);
    connect(cell.chart, &TrendChart::moveAsked, this, &MeasureSection::moveAsked);
    connect(cell.chart, &TrendChart::spanAsked, this, &MeasureSection::spanAsked);
    connect(cell.chart, &TrendChart::wholeAsked, this, &MeasureSection::wholeAsked);
    return cell;
}

QString MeasureSection::noteText() const
{
    const auto& series = contents_.series;
    const auto some = std::ranges::find_if(series, [](const Series& each) { return !each.bars.empty(); });
    const std::vector<Bar> bars = some == series.end() ? std::vector<Bar>{} : fewerBars(some->bars, view_);
    return measureNote(measure_, bars.empty() ? 7 : bars.front().days, contents_.sums);
}

void MeasureSection::setContents(Contents contents, const Period& view)
{
    contents_ = std::move(contents);
    view_ = view;
    const auto& series = contents_.series;
    nothing_->setVisible(series.empty());
    nothing_->setText(contents_.anyStack && series.empty() ? tr("No stack is chosen. Choose one above, and its chart stands here.") : sentenceOf(measure_, {}, contents_.period, contents_.reckoned || !contents_.anyStack));
    if (contents_.table) makeTable();
    if (table_) table_->setVisible(contents_.table && !series.empty());
    charts_->setVisible(!contents_.table && !series.empty());
    fillKey();
    const std::size_t wanted = contents_.table ? 0 : contents_.together && !series.empty() ? 1 : series.size();
    while (cells_.size() > wanted) {
        delete cells_.back().box;
        cells_.pop_back();
    }
    while (cells_.size() < wanted) cells_.push_back(makeCell());
    for (std::size_t i = 0; i < cells_.size(); ++i) {
        Cell& cell = cells_[i];
        const bool alone = !contents_.together;
        cell.name->setText(alone ? series[i].stack : QString{});
        cell.head->setVisible(alone);
        const bool any = alone ? !series[i].empty() : std::ranges::any_of(series, [](const Series& one) { return !one.empty(); });
        cell.chart->setVisible(any);
        cell.readout->setVisible(any);
        ui::setAccess(cell.chart, alone ? tr("%1, %2").arg(measureName(measure_), series[i].stack) : tr("%1, stacks together").arg(measureName(measure_)));
        cell.chart->setObjectName(QStringLiteral("chart"));
        cell.box->show();
    }
    columns_ = 0;
    layCells();
    setChartHeight(chartHeight_);
    showView();
    tellView();
}

std::vector<Series> MeasureSection::seenSeries() const
{
    std::vector<Series> seen;
    for (const Series& each : contents_.series) seen.push_back(seenOf(each, view_));
    return seen;
}

void MeasureSection::showView()
{
    waiting_ = false;
    if (cells_.empty()) return;
    std::vector<Series> seen = seenSeries();
    const Ends ends = endsOf(measure_, seen);
    if (contents_.together) {
        cells_.front().chart->setContents(measure_, std::move(seen), view_, ends.top, ends.bottom);
    } else {
        for (std::size_t i = 0; i < cells_.size(); ++i) cells_[i].chart->setContents(measure_, {std::move(seen[i])}, view_, ends.top, ends.bottom);
    }
}

void MeasureSection::setView(const Period& view)
{
    view_ = view;
    if (visibleRegion().isEmpty()) waiting_ = true;
    else showView();
}

void MeasureSection::paintEvent(QPaintEvent* event)
{
    Card::paintEvent(event);
    if (waiting_) QMetaObject::invokeMethod(this, [this] { if (waiting_) showView(); }, Qt::QueuedConnection);
}

void MeasureSection::tellView()
{
    note_->setText(noteText());
    if (contents_.table) {
        model_->setContents(measure_, seenSeries(), view_);
        table_->setFixedHeight(theme_.px(260));
        const bool some = model_->rowCount() > 0;
        table_->setVisible(some && !contents_.series.empty());
        nothing_->setVisible(!some || contents_.series.empty());
        return;
    }
    const std::vector<SeenChart> all = seen();
    for (std::size_t i = 0; i < cells_.size() && i < all.size(); ++i) {
        cells_[i].sentence->setText(all[i].sentence);
        cells_[i].chart->setSentence(all[i].sentence);
    }
    tellReadouts();
}

std::vector<SeenChart> MeasureSection::seen() const
{
    std::vector<Series> series = seenSeries();
    const Ends ends = endsOf(measure_, series);
    QStringList sentences;
    for (std::size_t i = 0; i < series.size(); ++i) {
        const Series& all = contents_.series[i];
        const bool gone = series[i].empty() && series[i].marks.empty() && !(all.empty() && all.marks.empty());
        sentences << (gone ? nothingThen(measure_, view_) : sentenceOf(measure_, series[i], view_, contents_.reckoned));
    }
    std::vector<SeenChart> all;
    if (contents_.together && !series.empty()) {
        for (std::size_t i = 0; i < series.size(); ++i) sentences[static_cast<qsizetype>(i)] = tr("%1: %2").arg(series[i].stack, sentences[static_cast<qsizetype>(i)]);
        all.push_back({{}, sentences.join(u'\n'), std::move(series), ends});
    } else {
        for (std::size_t i = 0; i < series.size(); ++i) {
            const QString name = series[i].stack;
            all.push_back({name, sentences[static_cast<qsizetype>(i)], {std::move(series[i])}, ends});
        }
    }
    return all;
}

void MeasureSection::setScrolling(bool on)
{
    for (const Cell& cell : cells_) cell.chart->setScrolling(on);
}

void MeasureSection::setChartHeight(int height)
{
    chartHeight_ = height;
    const int held = std::clamp(height, theme_.px(165), theme_.px(320));
    for (const Cell& cell : cells_) cell.chart->setFixedHeight(contents_.together ? held * 3 / 2 : held);
}

int MeasureSection::chartRows() const
{
    if (cells_.empty()) return 0;
    const int columns = std::max(1, columns_);
    return (static_cast<int>(cells_.size()) + columns - 1) / columns;
}

void MeasureSection::fillKey()
{
    auto* flow = key_->layout();
    keyReadouts_.clear();
    while (QLayoutItem* item = flow->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    const bool shown = contents_.together && !contents_.table && contents_.series.size() > 1;
    key_->setVisible(shown);
    if (!shown) return;
    for (const Series& series : contents_.series) {
        auto* item = new QWidget{key_};
        auto* row = new QHBoxLayout{item};
        row->setContentsMargins(0, 0, 0, 0);
        row->setSpacing(6);
        row->addWidget(new LineSample{theme_, series.place, measure_ == Measure::drainage || measure_ == Measure::yield, item});
        row->addWidget(ui::makeLabel(series.stack, ui::TextRole::small, item));
        keyReadouts_.push_back(new ReadoutLine{theme_, item});
        row->addWidget(keyReadouts_.back(), 1);
        flow->addWidget(item);
        item->show();
    }
}

void MeasureSection::tellReadouts()
{
    const auto textOf = [this](const Series& series) {
        if (cursor_) return readoutOf(measure_, series, *cursor_, contents_.period.today);
        if (series.past.empty()) return QString{};
        if (view_.until < view_.today || view_.from > view_.today) { // its last day, not today
            const Point* last = series.totals.empty() ? series.at(view_.until) : nullptr;
            return last ? tr("%1: %2").arg(ui::shortDay(view_.until, view_.today), valueText(measure_, last->band)) : readoutOf(measure_, series, view_.until, view_.today);
        }
        return series.totals.empty() ? valueText(measure_, series.past.back().band) : readoutOf(measure_, series, contents_.period.today, contents_.period.today);
    };
    const auto tell = [&](ReadoutLine* line, const Series& whole, const Series& shown) { line->setText(textOf(cursor_ ? shown : whole)); };
    if (cells_.empty()) return;
    if (contents_.together) {
        const auto& shown = cells_.front().chart->contents();
        for (std::size_t i = 0; i < keyReadouts_.size() && i < shown.size() && i < contents_.series.size(); ++i) tell(keyReadouts_[i], contents_.series[i], shown[i]);
        return;
    }
    for (std::size_t i = 0; i < cells_.size() && i < contents_.series.size(); ++i) {
        const auto& shown = cells_[i].chart->contents();
        if (!shown.empty()) tell(cells_[i].readout, contents_.series[i], shown.front());
    }
}

void MeasureSection::setCursorDay(std::optional<Day> day)
{
    cursor_ = day;
    for (Cell& cell : cells_) cell.chart->setCursorDay(day);
    tellReadouts();
}

int MeasureSection::columnsFor(int width) const
{
    const int cells = std::max(1, static_cast<int>(cells_.size()));
    return std::clamp(width / theme_.px(250), 1, std::min(cells, 4));
}

void MeasureSection::layCells()
{
    const int columns = columnsFor(width() - 26);
    if (columns == columns_) return;
    columns_ = columns;
    while (QLayoutItem* item = grid_->takeAt(0)) delete item;
    for (int c = 0; c < 4; ++c) grid_->setColumnStretch(c, c < columns ? 1 : 0);
    int place = 0;
    for (const Cell& cell : cells_) {
        grid_->addWidget(cell.box, place / columns, place % columns, Qt::AlignTop);
        ++place;
    }
}

void MeasureSection::resizeEvent(QResizeEvent* event)
{
    Card::resizeEvent(event);
    layCells();
}

}
