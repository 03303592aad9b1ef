#pragma once

#include "core/quantity/measures.h"

#include <QSortFilterProxyModel>

#include <optional>

namespace tierloam::journal_page {

class JournalModel;

/// What of the journal is shown: words anywhere in the row (all of them must be there, in any order and case), one stack, one action,
/// days from `since` on. Sorts by journal order within equal texts.
class JournalFilter : public QSortFilterProxyModel {
    Q_OBJECT

public:
    explicit JournalFilter(JournalModel* model, QObject* parent = nullptr);

    void setWords(const QString& words);
    void setStack(const QString& stack);                       ///< empty: all
    void setAction(std::optional<std::size_t> alternative);
    void setSince(std::optional<Day> since);
    bool anySet() const;

protected:
    bool filterAcceptsRow(int row, const QModelIndex& parent) const override;
    bool lessThan(const QModelIndex& left, const QModelIndex& right) const override;

private:
    const JournalModel* model_;
    QStringList words_;
    QString stack_;
    std::optional<std::size_t> action_;
    std::optional<Day> since_;
};

}
