#include "ui/trends/measure_section.h"

#include "ui/common/flow_layout.h"
#include "ui/trends/line_key.h"
#include "ui/trends/trend_chart.h"
#include "ui/trends/trend_table.h"
#include "ui/trends/trend_words.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QScrollBar>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace tierloam::trends {

MeasureSection::MeasureSection(Measure measure, const ui::Theme& theme, QWidget* parent)
    : Card{parent}, measure_{measure}, theme_{theme}, note_{ui::makeLabel(measureNote(measure, 7), ui::TextRole::smallMuted)}, nothing_{ui::makeLabel({}, ui::TextRole::muted, this, true)}, key_{new QWidget{this}},
      charts_{new QWidget{this}}, grid_{new QGridLayout{charts_}}, model_{new TrendTable{this}}, table_{new QTableView{this}}
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
    ui::setAccess(table_, tr("%1 as table").arg(measureName(measure)));
    table_->hide();
    column()->addWidget(table_);
}

MeasureSection::Cell MeasureSection::makeCell()
{
    Cell cell;
    cell.box = new QWidget{charts_};
    cell.head = new QWidget{cell.box};
    auto* words = new ui::FlowLayout{cell.head, 8};
    cell.name = ui::makeLabel({}, ui::TextRole::strong, cell.head);
    cell.readout = ui::makeLabel({}, ui::TextRole::smallMuted, cell.head);
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
    return cell;
}

void MeasureSection::fillCell(Cell& cell, std::vector<Series> series, double top, double bottom)
{
    const bool alone = series.size() == 1;
    QStringList sentences;
    bool any = false;
    for (const Series& one : series) {
        const QString sentence = sentenceOf(measure_, one, contents_.period, contents_.reckoned);
        sentences << (alone ? sentence : tr("%1: %2").arg(one.stack, sentence));
        any = any || !one.empty();
    }
    cell.name->setText(alone ? series.front().stack : QString{});
    cell.head->setVisible(alone);
    cell.sentence->setText(sentences.join(alone ? u' ' : u'\n'));
    cell.chart->setVisible(any);
    const QString name = alone ? tr("%1, %2").arg(measureName(measure_), series.front().stack) : tr("%1, stacks together").arg(measureName(measure_));
    ui::setAccess(cell.chart, name);
    cell.chart->setSentence(sentences.join(u' '));
    cell.chart->setObjectName(QStringLiteral("chart"));
    cell.chart->setContents(measure_, std::move(series), contents_.period, top, bottom);
    cell.box->show();
}

void MeasureSection::setContents(Contents contents)
{
    contents_ = std::move(contents);
    const auto& series = contents_.series;
    nothing_->setVisible(series.empty());
    nothing_->setText(contents_.anyStack ? tr("No stack is chosen. Choose one above, and its chart stands here.") : sentenceOf(measure_, {}, contents_.period, true));
    table_->setVisible(contents_.table && !series.empty());
    charts_->setVisible(!contents_.table && !series.empty());
    const bool bars = !series.empty() && !series.front().bars.empty();
    note_->setText(measureNote(measure_, bars ? series.front().bars.front().days : 7));
    fillKey();
    if (contents_.table) {
        model_->setContents(measure_, series, contents_.period);
        table_->setFixedHeight(theme_.px(260));
        return;
    }
    const std::size_t wanted = contents_.together && !series.empty() ? 1 : series.size();
    while (cells_.size() > wanted) {
        delete cells_.back().box;
        cells_.pop_back();
    }
    while (cells_.size() < wanted) cells_.push_back(makeCell());
    const double top = roundTop(series, leastTop(measure_)), bottom = roundBottom(series);
    if (contents_.together && !series.empty()) {
        fillCell(cells_.front(), series, top, bottom);
    } else {
        for (std::size_t i = 0; i < series.size(); ++i) fillCell(cells_[i], {series[i]}, top, bottom);
    }
    columns_ = 0;
    layCells();
    setChartHeight(chartHeight_);
    tellReadouts();
}

void MeasureSection::setChartHeight(int height)
{
    chartHeight_ = height;
    const int held = std::clamp(height, theme_.px(140), theme_.px(320));
    for (const Cell& cell : cells_) cell.chart->setFixedHeight(contents_.together ? held * 3 / 2 : held);
}

int MeasureSection::chartRows() const
{
    if (contents_.table || cells_.empty()) return 0;
    const int columns = std::max(1, columns_);
    return (static_cast<int>(cells_.size()) + columns - 1) / columns;
}

void MeasureSection::fillKey()
{
    auto* flow = key_->layout();
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
        row->addWidget(new LineSample{theme_, series.place, item});
        row->addWidget(ui::makeLabel(series.stack, ui::TextRole::small, item));
        auto* readout = ui::makeLabel({}, ui::TextRole::smallMuted, item);
        readout->setObjectName(QStringLiteral("readout"));
        row->addWidget(readout);
        flow->addWidget(item);
        item->show();
    }
}

void MeasureSection::tellReadouts()
{
    const auto textOf = [this](const Series& series) {
        if (cursor_) return readoutOf(measure_, series, *cursor_, contents_.period.today);
        return series.past.empty() ? QString{} : valueText(measure_, series.past.back().band);
    };
    if (contents_.together) {
        const auto labels = key_->findChildren<QLabel*>(QStringLiteral("readout"));
        for (qsizetype i = 0; i < labels.size() && i < static_cast<qsizetype>(contents_.series.size()); ++i) {
            labels[i]->setText(textOf(contents_.series[static_cast<std::size_t>(i)]));
        }
        return;
    }
    for (std::size_t i = 0; i < cells_.size() && i < contents_.series.size(); ++i) cells_[i].readout->setText(textOf(contents_.series[i]));
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
