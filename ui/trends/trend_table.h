#pragma once

#include "ui/trends/trend_data.h"

#include <QAbstractTableModel>

namespace tierloam::trends {

/// The table twin of a chart: one row per week (per day for 30 days), newest first, forecast rows marked; for each stack the estimate
/// with its range and what was drained or read. Of yield one row for each harvest or year, of a tried change a column more.
class TrendTable : public QAbstractTableModel {
    Q_OBJECT

public:
    using QAbstractTableModel::QAbstractTableModel;

    void setContents(Measure measure, std::vector<Series> series, const Period& period);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    enum class Column { measured, estimate, changed, taken, expected };
    void layColumns();
    QString text(const Series& series, Column column, Day day) const;
    QString estimateText(const Point* point) const;

    Measure measure_{};
    std::vector<Series> series_;
    std::vector<Day> days_;
    std::vector<std::pair<std::size_t, Column>> columns_; ///< behind the date: of which series, and what
    Period period_;
};

}
