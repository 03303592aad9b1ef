#include "core/store/failures.h"

#include "core/store/text.h"

#include <sqlite3.h>

namespace tierloam::store {

namespace {

constexpr int primary(int code) { return code & 0xff; }

OpenProblem problemOf(int code)
{
    if (code == SQLITE_IOERR_SHMSIZE) return OpenProblem::diskFull; // no room for the index of the log
    switch (primary(code)) {
    case SQLITE_BUSY:
    case SQLITE_LOCKED: return OpenProblem::inUse;
    case SQLITE_FULL: return OpenProblem::diskFull;
    case SQLITE_CORRUPT:
    case SQLITE_NOTADB: return OpenProblem::damaged;
    case SQLITE_PERM:
    case SQLITE_AUTH:
    case SQLITE_READONLY:
    case SQLITE_CANTOPEN: return OpenProblem::noPermission;
    default: return OpenProblem::other;
    }
}

QString sentence(OpenProblem problem, const QString& path)
{
    switch (problem) {
    case OpenProblem::absent:
        return StoreText::tr("%1 is not there. Nothing was made; check the name and the folder.").arg(path);
    case OpenProblem::notAHousehold:
        return StoreText::tr("%1 is not a household file. It was left as it is; choose another file.").arg(path);
    case OpenProblem::damaged:
        return StoreText::tr("%1 is damaged: it was cut short or changed by something else. It was left as it is; restore a backup.").arg(path);
    case OpenProblem::newer:
        return StoreText::tr("%1 was written by a newer release. It was left as it is and can only be read; update the program to write to it.").arg(path);
    case OpenProblem::noPermission:
        return StoreText::tr("%1 cannot be opened: there is no permission for the file or its folder. It was left as it is; change its permissions.").arg(path);
    case OpenProblem::inUse:
        return StoreText::tr("%1 is in use by another program. It was left as it is; try again when that program is done.").arg(path);
    case OpenProblem::diskFull:
        return StoreText::tr("The disk with %1 is full. Nothing was written; make room and try again.").arg(path);
    case OpenProblem::noBackup: // told where it happens, with the reason
    case OpenProblem::other: break;
    }
    return StoreText::tr("%1 cannot be opened. It was left as it is.").arg(path);
}

}

int resultCode(const QSqlError& error)
{
    bool ok = false;
    const int code = error.nativeErrorCode().toInt(&ok);
    return ok ? code : 0;
}

OpenFailure openFailure(OpenProblem problem, const QString& path) { return {problem, sentence(problem, path)}; }

OpenFailure openFailure(const QSqlError& error, const QString& path)
{
    OpenFailure failure = openFailure(problemOf(resultCode(error)), path);
    if (failure.problem == OpenProblem::other) failure.why += QLatin1Char(' ') + StoreText::tr("The reason given: %1.").arg(error.text().trimmed());
    return failure;
}

bool leavesItOpen(const QSqlError& error) { return primary(resultCode(error)) == SQLITE_IOERR; }

WriteFailure unconfirmedFailure(const QSqlError& error, const QString& path)
{
    WriteFailure failure;
    failure.why = StoreText::tr("The disk with %1 did not confirm the write. See that the disk is in order, then look whether the entry is there before it is recorded "
                                "again. The reason given: %2.").arg(path, error.text().trimmed());
    return failure;
}

WriteFailure goneFailure(const QString& path)
{
    WriteFailure failure;
    failure.gone = true;
    failure.why = StoreText::tr("%1 was moved or removed while it was open. Nothing was written; put it back, or open it where it is now.").arg(path);
    return failure;
}

WriteFailure logTakenAwayFailure(const QString& path)
{
    WriteFailure failure;
    failure.inUse = true;
    failure.why = StoreText::tr("Another program removed the log of %1 while this was written. Nothing was written; close that program and try again.").arg(path);
    return failure;
}

WriteFailure writeFailure(const QSqlError& error, const QString& path)
{
    const int code = resultCode(error);
    if (code == SQLITE_READONLY_DBMOVED) return goneFailure(path);
    WriteFailure failure;
    switch (code == SQLITE_IOERR_SHMSIZE ? SQLITE_FULL : primary(code)) {
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        failure.inUse = true;
        failure.why = StoreText::tr("%1 is in use by another program. Nothing was written; try again when that program is done.").arg(path);
        break;
    case SQLITE_FULL:
        failure.diskFull = true;
        failure.why = StoreText::tr("The disk with %1 is full. Nothing was written; make room and try again.").arg(path);
        break;
    case SQLITE_CORRUPT:
    case SQLITE_NOTADB:
        failure.why = StoreText::tr("%1 is damaged. Nothing was written; restore a backup.").arg(path);
        break;
    case SQLITE_PERM:
    case SQLITE_READONLY:
    case SQLITE_CANTOPEN:
        failure.why = StoreText::tr("%1 cannot be written to: there is no permission for the file or its folder. Nothing was written.").arg(path);
        break;
    default:
        failure.why = StoreText::tr("%1 could not be read or written. Nothing was changed. The reason given: %2.").arg(path, error.text().trimmed());
    }
    return failure;
}

}
