#include "ui/materials/name_column.h"

#include "ui/materials/materials_model.h"

#include <QHeaderView>
#include <QStyle>
#include <QStyleOptionViewItem>
#include <QTableView>
#include <QTextLayout>
#include <QTimer>

#include <algorithm>

namespace tierloam::materials_page {

namespace {

constexpr int leastLetters = 15;
constexpr int mostLetters = 18; ///< of a word that must not be cut: an own name may be one word without an end
constexpr int slack = 1; ///< px: whole pixels of a text and what a cell takes for it differ by fractions

}

NameColumn::NameColumn(QTableView& table, const MaterialsFilter& rows) : QObject{&table}, table_{table}, rows_{rows}, laying_{new QTimer{this}}
{
    table.setWordWrap(true);
    laying_->setSingleShot(true);
    laying_->setInterval(0);
    connect(laying_, &QTimer::timeout, this, &NameColumn::layRows);
    const auto later = [this] { laying_->start(); };
    connect(&rows, &QAbstractItemModel::modelReset, this, later);
    connect(&rows, &QAbstractItemModel::layoutChanged, this, later);
    connect(&rows, &QAbstractItemModel::rowsInserted, this, later);
    connect(&rows, &QAbstractItemModel::rowsRemoved, this, later);
}

void NameColumn::measure()
{
    const QAbstractItemModel& all = *rows_.sourceModel();
    table_.ensurePolished(); // before it is first shown, its style sheet has not reached it
    const QFontMetrics letters = table_.fontMetrics();
    lines_.clear();
    width_ = 0;
    QStyleOptionViewItem cell;
    cell.initFrom(&table_);
    cell.widget = &table_; // the paddings of the style sheet
    cell.font = table_.font();
    cell.features = QStyleOptionViewItem::HasDisplay | QStyleOptionViewItem::WrapText;
    cell.showDecorationSelected = true; // else the room would be told that these words take
    cell.text = QStringLiteral("–");
    cell.rect = QRect{0, 0, 1000, 100};
    const QStyle& style = *table_.style();
    const int room = style.subElementRect(QStyle::SE_ItemViewItemText, &cell, &table_).width() - 2 * (style.pixelMetric(QStyle::PM_FocusFrameHMargin, &cell, &table_) + 1);
    around_ = cell.rect.width() - room + slack;
    int word = letters.averageCharWidth() * leastLetters;
    whole_ = table_.horizontalHeader()->sectionSizeHint(MaterialsModel::name);
    for (int row = 0; row < all.rowCount(); ++row) {
        const QString name = all.index(row, MaterialsModel::name).data().toString();
        whole_ = std::max(whole_, letters.horizontalAdvance(name) + around_);
        for (const QString& each : name.split(u' ')) word = std::max(word, letters.horizontalAdvance(each));
    }
    least_ = std::min(whole_, word + around_);
}

void NameColumn::setRoom(int width, int rowHeight)
{
    if (whole_ == 0) return; // not measured yet
    width = std::clamp(width, std::min(least_, table_.fontMetrics().averageCharWidth() * mostLetters + around_), whole_);
    if (width == width_ && rowHeight == rowHeight_) return;
    if (width != width_) lines_.clear();
    width_ = width;
    rowHeight_ = rowHeight;
    table_.setColumnWidth(MaterialsModel::name, width);
    layRows();
}

int NameColumn::linesOf(const QString& name)
{
    const auto known = lines_.constFind(name);
    if (known != lines_.constEnd()) return *known;
    int lines = 1;
    if (table_.fontMetrics().horizontalAdvance(name) > width_ - around_) { // broken as the cell breaks it
        QTextLayout text{name, table_.font()};
        QTextOption breaks{Qt::AlignLeading};
        breaks.setWrapMode(QTextOption::WordWrap);
        text.setTextOption(breaks);
        text.beginLayout();
        for (QTextLine line = text.createLine(); line.isValid(); line = text.createLine()) line.setLineWidth(width_ - around_);
        text.endLayout();
        lines = std::max(1, text.lineCount());
    }
    return *lines_.insert(name, lines);
}

void NameColumn::layRows()
{
    if (width_ == 0) return;
    const int line = table_.fontMetrics().lineSpacing();
    for (int row = 0; row < rows_.rowCount(); ++row) {
        const int height = rowHeight_ + (linesOf(rows_.index(row, MaterialsModel::name).data().toString()) - 1) * line;
        if (table_.rowHeight(row) != height) table_.setRowHeight(row, height);
    }
}

}
