#include "ui/exchange/sheet_table.h"

#include "core/exchange/sheet_columns.h"
#include "ui/common/field_edit.h"
#include "ui/common/panels.h"

#include <QHash>
#include <QHeaderView>
#include <QScrollBar>
#include <QTimer>

#include <algorithm>

namespace tierloam::exchange_view {

namespace {

using exchange::SheetField;

constexpr int leastTable = 11; ///< lines: the head, the lists that name the columns, three rows and the bar beneath
constexpr int leastFate = 34; ///< letters for what becomes of a row

}

SheetTable::SheetTable(QWidget* parent) : QTableView{parent}, model_{new SheetPreview{this}}
{
    setModel(model_);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setTabKeyNavigation(false);
    setMinimumHeight(fontMetrics().height() * leastTable);
    verticalHeader()->setDefaultSectionSize(fontMetrics().height() * 9 / 5);
    horizontalHeader()->setDefaultAlignment(Qt::AlignLeading | Qt::AlignVCenter);
    ui::setAccess(this, tr("Rows of the file"), tr("In the first row the content of each column is chosen"));
}

void SheetTable::setSheet(std::shared_ptr<const exchange::Sheet> sheet, const std::vector<exchange::SheetColumn>& columns)
{
    model_->setSheet(sheet);
    if (!sheet) return;
    for (std::size_t at = 0; at < columns.size(); ++at) {
        auto* list = new ui::FieldCombo{this};
        list->setObjectName(QStringLiteral("column%1").arg(at));
        list->addItem(tr("nothing, left out"));
        for (const SheetField field : exchange::allSheetFields) list->addItem(exchange::fieldText(field), static_cast<int>(field));
        ui::setAccess(list, tr("Column «%1» holds").arg(QString::fromStdString(sheet->header[at])));
        connect(list, &QComboBox::activated, this, [this, at, list] {
            const QVariant value = list->currentData();
            Q_EMIT columnChosen(at, value.isValid() ? std::optional{static_cast<SheetField>(value.toInt())} : std::nullopt);
        });
        setIndexWidget(model_->index(0, static_cast<int>(at) + SheetPreview::ownColumns), list);
    }
    showColumns(columns);
    setRowHeight(0, fontMetrics().height() * 2 + 4);
    resizeColumnsToContents();
    const int letter = fontMetrics().averageCharWidth();
    setColumnWidth(0, letter * leastFate);
    for (int column = 1; column < model_->columnCount(); ++column) setColumnWidth(column, std::clamp(columnWidth(column) + letter * 2, letter * 18, letter * 40));
}

void SheetTable::showColumns(const std::vector<exchange::SheetColumn>& columns)
{
    for (std::size_t at = 0; at < columns.size(); ++at)
        if (auto* list = findChild<QComboBox*>(QStringLiteral("column%1").arg(at))) list->setCurrentIndex(columns[at].field ? list->findData(static_cast<int>(*columns[at].field)) : 0);
}

void SheetTable::setPlan(std::shared_ptr<const exchange::SheetPlan> plan, bool waiting)
{
    const Place before = place();
    model_->setWaiting(waiting);
    model_->setPlan(std::move(plan));
    fitRows();
    goBackTo(before);
}

void SheetTable::showRows(SheetPreview::Shown shown)
{
    model_->show(shown);
    fitRows();
}

void SheetTable::resizeEvent(QResizeEvent* event)
{
    QTableView::resizeEvent(event);
    QTimer::singleShot(0, this, &SheetTable::fitRows); // when the table has its new width
}

/// Where people are in the rows: what comes back after these were made anew. By rows of the file, since those that are shown may be others.
SheetTable::Place SheetTable::place() const
{
    Place place;
    const auto rowAt = [this](int row) { return row > 0 ? model_->rowOfSheet(row) : std::nullopt; };
    if (const QModelIndex current = currentIndex(); current.isValid()) place.current = std::pair{rowAt(current.row()), current.column()};
    for (const QModelIndex& each : selectionModel()->selectedRows())
        if (const auto row = rowAt(each.row())) place.selected.push_back(*row);
    // The bar counts rows.
    place.down = verticalScrollBar()->value();
    place.top = rowAt(place.down);
    place.across = horizontalScrollBar()->value();
    return place;
}

void SheetTable::goBackTo(const Place& place)
{
    QItemSelection selected;
    for (const std::size_t row : place.selected)
        if (const auto at = model_->shownAt(row)) selected.select(model_->index(*at, 0), model_->index(*at, model_->columnCount() - 1));
    selectionModel()->select(selected, QItemSelectionModel::ClearAndSelect);
    if (place.current && place.current->first)
        if (const auto at = model_->shownAt(*place.current->first)) selectionModel()->setCurrentIndex(model_->index(*at, place.current->second), QItemSelectionModel::NoUpdate);
    const auto top = place.top ? model_->shownAt(*place.top) : std::nullopt;
    verticalScrollBar()->setValue(top.value_or(place.down));
    horizontalScrollBar()->setValue(place.across);
}

/// What becomes of a row is read whole: its column takes up to three fifths of the table, and what is longer goes on in more lines.
void SheetTable::fitRows()
{
    const int letter = fontMetrics().averageCharWidth();
    const int most = std::max(letter * leastFate, viewport()->width() * 3 / 5);
    const int margin = letter * 4, usual = verticalHeader()->defaultSectionSize();
    QHash<QString, QSize> measured; // thousands of rows have a few fates
    const auto room = [&](int row) {
        const QString words = model_->index(row, 0).data().toString();
        const auto found = measured.constFind(words);
        if (found != measured.constEnd()) return *found;
        return *measured.insert(words, fontMetrics().boundingRect(QRect{0, 0, most - margin, QWIDGETSIZE_MAX}, Qt::TextWordWrap, words).size());
    };
    int widest = 0;
    for (int row = 1; row < model_->rowCount(); ++row) {
        const QSize wanted = room(row);
        widest = std::max(widest, wanted.width());
        const int height = usual + wanted.height() - std::min(wanted.height(), fontMetrics().height());
        if (rowHeight(row) != height) setRowHeight(row, height);
    }
    // It grows and does not shrink again, or all columns would jump sideways with every answer.
    setColumnWidth(0, std::min(std::max(columnWidth(0), widest + margin), most));
}

}
