#pragma once

#include <QString>

/// The few calls on plain files that a copy needs to be on the disk and under its name. Each returns 0, or the errno of what failed.
namespace tierloam::store {

/// All that was written to the file, by whomever, is on the disk.
int syncFile(const QString& path);
/// Gives a file its name; fails with EEXIST when another has it.
int renameToNew(const QString& from, const QString& to);
/// Words of the system for an errno.
QString errnoText(int error);
/// Differs for every call of every process that runs now.
QString uniquePart();

}
