#include "ui/journal/journal_filter.h"

#include "ui/journal/journal_model.h"

#include <algorithm>

namespace tierloam::journal_page {

JournalFilter::JournalFilter(JournalModel* model, QObject* parent) : QSortFilterProxyModel{parent}, model_{model}
{
    setSourceModel(model);
    setSortRole(JournalModel::sortRole);
    setDynamicSortFilter(true);
}

void JournalFilter::setWords(const QString& words)
{
    words_ = words.simplified().split(u' ', Qt::SkipEmptyParts);
    invalidateFilter();
}

void JournalFilter::setStack(const QString& stack)
{
    stack_ = stack;
    invalidateFilter();
}

void JournalFilter::setAction(std::optional<std::size_t> alternative)
{
    action_ = alternative;
    invalidateFilter();
}

void JournalFilter::setSince(std::optional<Day> since)
{
    since_ = since;
    invalidateFilter();
}

bool JournalFilter::anySet() const
{
    return !words_.isEmpty() || !stack_.isEmpty() || action_ || since_;
}

bool JournalFilter::filterAcceptsRow(int row, const QModelIndex& parent) const
{
    if (parent.isValid()) return false;
    const journal::Entry* entry = model_->entryAt(row);
    if (!entry) return false;
    if (action_ && entry->action.index() != *action_) return false;
    if (since_ && entry->date.day < *since_) return false;
    if (!stack_.isEmpty() && QString::fromStdString(entry->stack) != stack_) {
        // Worms moved into a stack belong to its story too.
        const auto* move = std::get_if<journal::Move>(&entry->action);
        if (!move || QString::fromStdString(move->to) != stack_) return false;
    }
    if (words_.isEmpty()) return true;
    const QString text = model_->data(model_->index(row, 0), JournalModel::searchRole).toString();
    return std::ranges::all_of(words_, [&](const QString& word) { return text.contains(word, Qt::CaseInsensitive); });
}

bool JournalFilter::lessThan(const QModelIndex& left, const QModelIndex& right) const
{
    if (left.column() != JournalModel::when) {
        const int order = QString::localeAwareCompare(left.data(JournalModel::sortRole).toString(), right.data(JournalModel::sortRole).toString());
        if (order != 0) return order < 0;
    }
    return left.row() < right.row();
}

}
