#pragma once

#include "core/household/household.h"

#include <QDialog>
#include <QString>
#include <QStringList>

/// A journal as a CSV file, read into the household that is open.
namespace tierloam::window {

/// What became of reading a CSV. Nothing was added unless `entries` is given.
struct Imported {
    QStringList faults;              ///< one per bad row: where, what was found, what is allowed
    QString why;                     ///< the file could not be read
    journal::Entries entries;        ///< to be recorded as one step
    QStringList warnings;
};

/// Reads the file against the journal as it stands; records nothing.
Imported readJournalFile(const QString& path, const journal::Entries& existing);

/// The list of bad rows, to read and to copy. Not modal; Esc closes it.
class FaultsView : public QDialog {
    Q_OBJECT

public:
    FaultsView(const QString& file, const QStringList& faults, QWidget* parent = nullptr);
};

}
