#include "ui/journal/column_room.h"

#include "ui/journal/journal_model.h"

#include <QAbstractItemDelegate>
#include <QEvent>
#include <QHeaderView>
#include <QStyleOptionViewItem>
#include <QTableView>

#include <algorithm>
#include <numeric>

namespace tierloam::journal_page {

namespace {

constexpr int rowsMeasured = 600; ///< of thousands: the page has to be there at once; a longer text elsewhere is cut and has its tool tip
constexpr int leastWords = 18;    ///< average letters that a column of free text keeps in a small window

/// May be cut in a small window: its words are sentences, not names.
bool isFreeText(int column) { return column == JournalModel::details; }

}

std::vector<int> shareOut(const std::vector<ColumnNeed>& needs, int room)
{
    int least = 0, lacking = 0;
    for (const ColumnNeed& need : needs) {
        least += need.least;
        lacking += std::max(0, need.whole - need.least);
    }
    const int given = std::clamp(room - least, 0, lacking);
    std::vector<int> widths;
    widths.reserve(needs.size());
    for (const ColumnNeed& need : needs) {
        const int lacks = std::max(0, need.whole - need.least);
        widths.push_back(need.least + (lacking == 0 ? 0 : static_cast<int>(static_cast<qint64>(lacks) * given / lacking)));
    }
    return widths;
}

ColumnRoom::ColumnRoom(QTableView& table, const JournalModel& entries) : QObject{&table}, table_{table}, entries_{entries}
{
    table.horizontalHeader()->setStretchLastSection(false); // it would leave the notes next to nothing where the others need all
    table.viewport()->installEventFilter(this);
    connect(table.horizontalHeader(), &QHeaderView::sectionResized, this, [this](int, int before, int now) {
        if (sharing_ || before == 0 || now == 0) return; // hidden or shown again
        byHand_ = true;
        share();
    });
    connect(table.horizontalHeader(), &QHeaderView::sectionMoved, this, &ColumnRoom::share);
}

void ColumnRoom::refit()
{
    needs_.clear();
    share();
}

ColumnNeed ColumnRoom::needOf(int column) const
{
    const QFontMetrics letters = table_.fontMetrics();
    const QModelIndex first = table_.model()->index(0, column);
    QStyleOptionViewItem cell;
    cell.initFrom(&table_);
    cell.widget = &table_; // the paddings of the style sheet
    cell.font = table_.font();
    const int around = table_.itemDelegate()->sizeHint(cell, first).width() - letters.horizontalAdvance(first.data().toString());
    const int rows = entries_.rowCount(), step = std::max(1, rows / rowsMeasured);
    int words = 0;
    const int heading = table_.horizontalHeader()->sectionSizeHint(column);
    if (column == JournalModel::note) return {heading, heading}; // they take the rest
    for (int row = 0; row < rows; row += step) words = std::max(words, letters.horizontalAdvance(entries_.index(row, column).data().toString()));
    words = std::max(words + std::max(around, 0) + 1, heading);
    return {isFreeText(column) ? std::min(words, letters.averageCharWidth() * leastWords) : words, words};
}

void ColumnRoom::share()
{
    if (!table_.isVisible() || table_.model()->rowCount() == 0) return;
    std::vector<int> shown; // as they stand from left to right
    for (int place = 0; place < JournalModel::columns; ++place) {
        const int column = table_.horizontalHeader()->logicalIndex(place);
        if (!table_.isColumnHidden(column)) shown.push_back(column);
    }
    for (int column = static_cast<int>(needs_.size()); column < JournalModel::columns; ++column) needs_.push_back(needOf(column));
    const int room = table_.viewport()->width();
    std::vector<ColumnNeed> needs;
    for (const int column : shown) needs.push_back(needs_[static_cast<std::size_t>(column)]);
    std::vector<int> widths = shareOut(needs, room);
    if (byHand_) std::ranges::transform(shown, widths.begin(), [this](int column) { return table_.columnWidth(column); });
    const int others = std::accumulate(widths.begin(), widths.end() - 1, 0);
    widths.back() = std::max(needs.back().least, room - others);
    sharing_ = true;
    for (std::size_t i = 0; i < shown.size(); ++i) table_.setColumnWidth(shown[i], widths[i]);
    sharing_ = false;
}

bool ColumnRoom::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::Resize || event->type() == QEvent::Show) share();
    return QObject::eventFilter(watched, event);
}

}
