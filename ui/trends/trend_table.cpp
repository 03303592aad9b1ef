#include "ui/trends/trend_table.h"

#include "ui/common/dates.h"
#include "ui/common/formats.h"
#include "ui/common/volumes.h"
#include "ui/trends/trend_words.h"

#include <algorithm>
#include <functional>

namespace tierloam::trends {

void TrendTable::setContents(Measure measure, std::vector<Series> series, const Period& period)
{
    beginResetModel();
    measure_ = measure;
    series_ = std::move(series);
    period_ = period;
    days_.clear();
    layColumns();
    if (measure_ == Measure::yield) {
        for (const Series& one : series_)
            for (const Yield& each : one.yields) days_.push_back(each.from);
        std::ranges::sort(days_, std::greater{});
        const auto same = std::ranges::unique(days_);
        days_.erase(same.begin(), same.end());
        endResetModel();
        return;
    }
    const bool any = std::ranges::any_of(series_, [](const Series& one) { return !one.empty(); });
    const int step = daysBetween(period.from, period.today) <= 31 ? 1 : 7;
    if (any) {
        // Counted from today both ways, so that today has a row when it is in view.
        Day last = period.from;
        for (const Series& one : series_) {
            if (!one.ahead.empty() && one.ahead.back().day > period.today) last = std::max(last, std::min(one.ahead.back().day, period.until));
        }
        const int later = daysBetween(period.today, last) / 7 * 7;
        for (Day day = period.today + std::chrono::days{later}; day > period.today; day -= std::chrono::days{7})
            if (day >= period.from) days_.push_back(day);
        for (Day day = period.today; day >= period.from; day -= std::chrono::days{step})
            if (day <= period.until) days_.push_back(day);
    }
    endResetModel();
}

int TrendTable::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(days_.size());
}

int TrendTable::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : 1 + static_cast<int>(columns_.size());
}

void TrendTable::layColumns()
{
    columns_.clear();
    const bool changed = std::ranges::any_of(series_, [](const Series& one) { return !one.changed.empty(); });
    for (std::size_t i = 0; i < series_.size(); ++i) {
        if (measure_ == Measure::yield) {
            columns_.emplace_back(i, Column::taken);
            columns_.emplace_back(i, Column::expected);
            continue;
        }
        if (measure_ == Measure::drainage || measure_ == Measure::temperature || measure_ == Measure::moisture) columns_.emplace_back(i, Column::measured);
        columns_.emplace_back(i, Column::estimate);
        if (changed) columns_.emplace_back(i, Column::changed);
    }
}

QString TrendTable::estimateText(const Point* point) const
{
    if (!point) return {};
    const bool added = std::ranges::any_of(series_, [](const Series& one) { return !one.totals.empty(); });
    return added ? ui::volumeBand(point->band) : valueText(measure_, point->band);
}

QString TrendTable::text(const Series& series, Column column, Day day) const
{
    const ui::OneVolumeUnit asTheAxis{leastTop(Measure::drainage)};
    switch (column) {
    case Column::measured: {
        QStringList parts;
        if (const Logged* span = series.loggedAt(day)) parts << loggedText(measure_, *span);
        if (const Total* total = series.totalAt(day)) parts << ui::volumeText(total->litres);
        if (const Bar* bar = series.barAt(day)) parts << barText(bar->perWeek);
        for (const Mark& mark : series.marks)
            if ((mark.kind == MarkKind::drainLow || mark.kind == MarkKind::drainHigh) && mark.day <= day && daysBetween(mark.day, day) < 7) parts << markName(mark.kind);
        return parts.join(QStringLiteral("; "));
    }
    case Column::estimate: return estimateText(series.at(day));
    case Column::changed: return estimateText(series.changedAt(day));
    case Column::taken:
    case Column::expected: {
        // Several harvests of one day in one cell.
        QStringList parts;
        for (const Yield& each : series.yields) {
            if (each.from != day) continue;
            if (column == Column::taken) parts << ui::massText(each.kg);
            else if (each.expected) parts << (each.checked < each.harvests ? tr("%1 of %2 of it").arg(ui::massBand(*each.expected), ui::massText(each.checkedKg)) : ui::massBand(*each.expected));
        }
        return parts.join(QStringLiteral("; "));
    }
    }
    return {};
}

QVariant TrendTable::data(const QModelIndex& index, int role) const
{
    if (!index.isValid()) return {};
    if (role == Qt::TextAlignmentRole) return QVariant{Qt::AlignLeading | Qt::AlignVCenter};
    if (role != Qt::DisplayRole && role != Qt::AccessibleTextRole) return {};
    const Day day = days_[static_cast<std::size_t>(index.row())];
    if (index.column() == 0) {
        for (const Series& one : series_)
            if (const Yield* yield = one.yieldAt(day); yield && yield->ofYear()) return yieldTime(*yield, period_.today);
        const QString text = ui::shortDay(day, period_.today);
        if (day == period_.today) return tr("%1 (today)").arg(text);
        return day > period_.today ? tr("%1 (forecast)").arg(text) : text;
    }
    const auto& [series, column] = columns_[static_cast<std::size_t>(index.column() - 1)];
    return text(series_[series], column, day);
}

QVariant TrendTable::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (role == Qt::TextAlignmentRole && orientation == Qt::Horizontal) return QVariant{Qt::AlignLeading | Qt::AlignVCenter};
    if (role != Qt::DisplayRole) return {};
    if (orientation == Qt::Vertical) return section + 1;
    if (section == 0) return tr("Date");
    const auto& [series, column] = columns_[static_cast<std::size_t>(section - 1)];
    const QString& stack = series_[series].stack;
    switch (column) {
    case Column::measured: return measure_ == Measure::drainage ? tr("%1, drained").arg(stack) : tr("%1, read by a logger").arg(stack);
    case Column::estimate:
        if (measure_ == Measure::drainage) return tr("%1, to be expected").arg(stack);
        return measure_ == Measure::temperature || measure_ == Measure::moisture ? tr("%1, estimate").arg(stack) : stack;
    case Column::changed: return tr("%1, with the change").arg(stack);
    case Column::taken: return tr("%1, castings taken").arg(stack);
    case Column::expected: return tr("%1, to be expected").arg(stack);
    }
    return {};
}

}
