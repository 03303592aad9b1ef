#pragma once

#include "core/exchange/sheet_import.h"

#include <QAbstractTableModel>

#include <optional>
#include <vector>

namespace tierloam::exchange_view {

/// Rows of a table as they stand in the file, each with what becomes of it. The first row is empty: the view sets lists into it, by which
/// people say what a column holds.
class SheetPreview : public QAbstractTableModel {
    Q_OBJECT

public:
    /// Which rows are shown.
    enum class Shown { first, faults, there, twice, unwanted };
    static constexpr std::size_t mostFirst = 60, mostOthers = 5000;

    explicit SheetPreview(QObject* parent = nullptr) : QAbstractTableModel{parent} {}

    void setSheet(std::shared_ptr<const exchange::Sheet> sheet);
    /// The same table with more rows: what is shown of its first ones stays.
    void goOn(std::shared_ptr<const exchange::Sheet> sheet);
    void setPlan(std::shared_ptr<const exchange::SheetPlan> plan);
    void show(Shown shown);
    /// While something is asked, rows that cannot be read are not at fault but wait.
    void setWaiting(bool waiting) { waiting_ = waiting; }

    /// The row of the sheet that stands in a row of the table, and the way back; nullopt: the row of lists, one that is not shown.
    std::optional<std::size_t> rowOfSheet(int row) const;
    std::optional<int> shownAt(std::size_t rowOfSheet) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;

    /// Columns before those of the file: what becomes of the row.
    static constexpr int ownColumns = 1;

private:
    std::vector<std::size_t> chosen() const;
    QString fateText(std::size_t row) const;

    std::shared_ptr<const exchange::Sheet> sheet_;
    std::shared_ptr<const exchange::SheetPlan> plan_;
    Shown shown_ = Shown::first;
    bool waiting_ = false;
    std::vector<std::size_t> rows_;  ///< of the sheet
};

}
