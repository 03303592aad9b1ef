#pragma once

#include "core/store/household_file.h"

#include <QSqlError>
#include <QString>

/// SQLite's answers, turned into outcomes with words: what happened, what was kept, what to do.
namespace tierloam::store {

/// Extended result code of a failed statement; 0 when the driver gave none.
int resultCode(const QSqlError& error);

OpenFailure openFailure(OpenProblem problem, const QString& path);
OpenFailure openFailure(const QSqlError& error, const QString& path);
WriteFailure writeFailure(const QSqlError& error, const QString& path);
/// A commit that the disk did not confirm: most often nothing of it is there, but it may be.
WriteFailure unconfirmedFailure(const QSqlError& error, const QString& path);
/// Whether a failed commit leaves that open.
bool leavesItOpen(const QSqlError& error);
WriteFailure goneFailure(const QString& path);
WriteFailure logTakenAwayFailure(const QString& path);

}
