#include "ui/trends/trend_table.h"

#include "ui/common/dates.h"
#include "ui/trends/trend_words.h"

#include <algorithm>

namespace tierloam::trends {

void TrendTable::setContents(Measure measure, std::vector<Series> series, const Period& period)
{
    beginResetModel();
    measure_ = measure;
    series_ = std::move(series);
    period_ = period;
    days_.clear();
    const bool any = std::ranges::any_of(series_, [](const Series& one) { return !one.empty(); });
    const int step = daysBetween(period.from, period.today) <= 31 ? 1 : 7;
    if (any) {
        // Counted from today both ways, so that today has a row.
        Day last = period.today;
        for (const Series& one : series_) {
            if (!one.ahead.empty()) last = std::max(last, std::min(one.ahead.back().day, period.until));
        }
        const int later = daysBetween(period.today, last) / 7 * 7;
        for (Day day = period.today + std::chrono::days{later}; day > period.today; day -= std::chrono::days{7}) days_.push_back(day);
        for (Day day = period.today; day >= period.from; day -= std::chrono::days{step}) days_.push_back(day);
    }
    endResetModel();
}

int TrendTable::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(days_.size());
}

int TrendTable::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : 1 + static_cast<int>(series_.size()) * perStack();
}

QVariant TrendTable::data(const QModelIndex& index, int role) const
{
    if (!index.isValid()) return {};
    if (role == Qt::TextAlignmentRole) return QVariant{Qt::AlignLeading | Qt::AlignVCenter};
    if (role != Qt::DisplayRole && role != Qt::AccessibleTextRole) return {};
    const Day day = days_[static_cast<std::size_t>(index.row())];
    if (index.column() == 0) {
        const QString text = ui::shortDay(day, period_.today);
        if (day == period_.today) return tr("%1 (today)").arg(text);
        return day > period_.today ? tr("%1 (forecast)").arg(text) : text;
    }
    const Series& series = series_[static_cast<std::size_t>((index.column() - 1) / perStack())];
    if (perStack() == 2 && (index.column() - 1) % 2 == 0) {
        if (const Logged* span = series.loggedAt(day)) return loggedText(measure_, *span);
        const Bar* bar = series.barAt(day);
        return bar ? barText(bar->perWeek) : QString{};
    }
    const Point* point = series.at(day);
    return point ? valueText(measure_, point->band) : QString{};
}

QVariant TrendTable::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (role == Qt::TextAlignmentRole && orientation == Qt::Horizontal) return QVariant{Qt::AlignLeading | Qt::AlignVCenter};
    if (role != Qt::DisplayRole) return {};
    if (orientation == Qt::Vertical) return section + 1;
    if (section == 0) return tr("Date");
    const QString stack = series_[static_cast<std::size_t>((section - 1) / perStack())].stack;
    if (perStack() == 1) return stack;
    if (measure_ != Measure::drainage) return (section - 1) % 2 == 0 ? tr("%1, read by a logger").arg(stack) : tr("%1, estimate").arg(stack);
    return (section - 1) % 2 == 0 ? tr("%1, drained").arg(stack) : tr("%1, to be expected").arg(stack);
}

}
