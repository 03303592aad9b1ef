#pragma once

#include "core/household/household.h"

#include <QAbstractTableModel>

#include <memory>
#include <optional>
#include <vector>

namespace tierloam::journal_page {

/// The journal as a table, one row per entry in journal order. Holds the shared value that the household hands out.
class JournalModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { when, stack, action, details, tray, note, columns };
    enum Role { sortRole = Qt::UserRole + 1, searchRole };

    using QAbstractTableModel::QAbstractTableModel;

    void setJournal(std::shared_ptr<const household::JournalView> journal);
    const journal::Entry* entryAt(int row) const;
    bool pendingAt(int row) const;
    int rowOf(journal::EntryId id) const;   ///< −1 when it is not there

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    struct Resolved {
        std::optional<int> slot, batch;
        int trayNumber = 0;
    };
    QString text(int row, int column) const;
    QString trayText(int row) const;

    std::shared_ptr<const household::JournalView> journal_;
    std::vector<Resolved> resolved_;
    std::vector<bool> pending_;
    mutable std::vector<QString> search_;   ///< all that can be found in a row, made when first asked for
};

}
