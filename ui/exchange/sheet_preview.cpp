#include "ui/exchange/sheet_preview.h"

#include <algorithm>

namespace tierloam::exchange_view {

using exchange::RowFate;

void SheetPreview::setSheet(std::shared_ptr<const exchange::Sheet> sheet)
{
    beginResetModel();
    sheet_ = std::move(sheet);
    plan_.reset();
    shown_ = Shown::first;
    rows_ = chosen();
    endResetModel();
}

void SheetPreview::goOn(std::shared_ptr<const exchange::Sheet> sheet)
{
    sheet_ = std::move(sheet);
    plan_.reset(); // of fewer rows
    show(shown_);
}

void SheetPreview::setPlan(std::shared_ptr<const exchange::SheetPlan> plan)
{
    plan_ = std::move(plan);
    show(shown_);
}

void SheetPreview::show(Shown shown)
{
    shown_ = shown;
    std::vector<std::size_t> rows = chosen();
    if (rows == rows_) {
        if (rowCount() > 1) Q_EMIT dataChanged(index(1, 0), index(rowCount() - 1, columnCount() - 1));
        return;
    }
    // Rows come and go beneath the first one, whose lists stay where they are.
    if (!rows_.empty()) {
        beginRemoveRows({}, 1, static_cast<int>(rows_.size()));
        rows_.clear();
        endRemoveRows();
    }
    if (rows.empty()) return;
    beginInsertRows({}, 1, static_cast<int>(rows.size()));
    rows_ = std::move(rows);
    endInsertRows();
}

std::vector<std::size_t> SheetPreview::chosen() const
{
    std::vector<std::size_t> rows;
    if (!sheet_) return rows;
    const auto wanted = [this](std::size_t row) {
        if (shown_ == Shown::first) return true;
        if (!plan_ || row >= plan_->fates.size()) return false;
        const RowFate fate = plan_->fates[row];
        return (shown_ == Shown::faults && fate == RowFate::fault) || (shown_ == Shown::there && fate == RowFate::there) || (shown_ == Shown::twice && fate == RowFate::twice)
            || (shown_ == Shown::unwanted && fate == RowFate::unwanted);
    };
    const std::size_t most = shown_ == Shown::first ? mostFirst : mostOthers;
    for (std::size_t row = 0; row < sheet_->rows.size() && rows.size() < most; ++row)
        if (wanted(row)) rows.push_back(row);
    return rows;
}

std::optional<std::size_t> SheetPreview::rowOfSheet(int row) const
{
    return row > 0 && row <= static_cast<int>(rows_.size()) ? std::optional{rows_[static_cast<std::size_t>(row) - 1]} : std::nullopt;
}

std::optional<int> SheetPreview::shownAt(std::size_t rowOfSheet) const
{
    const auto found = std::ranges::lower_bound(rows_, rowOfSheet);
    return found != rows_.end() && *found == rowOfSheet ? std::optional{static_cast<int>(found - rows_.begin()) + 1} : std::nullopt;
}

int SheetPreview::rowCount(const QModelIndex& parent) const { return parent.isValid() || !sheet_ ? 0 : static_cast<int>(rows_.size()) + 1; }
int SheetPreview::columnCount(const QModelIndex& parent) const { return parent.isValid() || !sheet_ ? 0 : static_cast<int>(sheet_->header.size()) + ownColumns; }

QString SheetPreview::fateText(std::size_t row) const
{
    if (!plan_ || row >= plan_->fates.size()) return {};
    switch (plan_->fates[row]) {
    case RowFate::added: return tr("added");
    case RowFate::there: return tr("there already, left out");
    case RowFate::twice: return tr("said before, left out");
    case RowFate::unwanted: return tr("left out as answered");
    case RowFate::fault:
        if (waiting_) return tr("waits for an answer");
        return tr("at fault: %1").arg(exchange::reasonText(plan_->faults.at(row)));
    }
    return {};
}

QVariant SheetPreview::data(const QModelIndex& index, int role) const
{
    const bool asks = role == Qt::DisplayRole || role == Qt::ToolTipRole || role == Qt::AccessibleTextRole;
    if (!index.isValid() || !asks) return {};
    if (index.row() == 0) return index.column() == 0 ? tr("The column holds") : QVariant{};
    const std::size_t row = rows_.at(static_cast<std::size_t>(index.row()) - 1);
    if (index.column() == 0) return fateText(row);
    const auto& cells = sheet_->rows.at(row).cells;
    const auto at = static_cast<std::size_t>(index.column() - ownColumns);
    if (at >= cells.size()) return {};
    const QString text = QString::fromStdString(cells[at]);
    return role == Qt::DisplayRole ? text.left(200).simplified() : text.left(2000);
}

QVariant SheetPreview::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (role != Qt::DisplayRole || !sheet_) return {};
    if (orientation == Qt::Vertical) return section == 0 ? QVariant{} : QVariant{sheet_->rows.at(rows_.at(static_cast<std::size_t>(section) - 1)).line};
    if (section == 0) return tr("What becomes of it");
    return QString::fromStdString(sheet_->header.at(static_cast<std::size_t>(section - ownColumns)));
}

}
