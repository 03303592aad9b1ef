#pragma once

#include <string_view>

/// Locks of SQLite that nothing else in this process can let go of.
///
/// POSIX record locks belong to the process: when it closes any handle of a file, all its locks on that file are gone (fcntl(2), "Advisory
/// record locking"). A file dialog that looks what kind of file lies there does just that, and so does whoever reads the file that people
/// chose. Another program then takes itself for the last user of the household and removes the log into which this one goes on writing.
/// Locks of open file descriptions (F_OFD_SETLK, Linux 3.15) stay until they are given back, and other programs' POSIX locks meet them as
/// they meet each other. SQLite's VFS lets its calls of the system be replaced (sqlite3_vfs::xSetSystemCall).
namespace tierloam::store {

/// Makes SQLite lock by open file descriptions from now on; done once, before the first connection is opened. Each file has one description
/// that holds all locks of this process, since SQLite takes a lock by one handle and may give it back by another. POSIX locks stay in use
/// where a description cannot lock (an older kernel), where the file may not be written, and on file systems of several machines.
void holdLocks();

/// Whether the log and its index that this process has open for a database (its path as sqlite3_db_filename gives it) are still those that
/// lie beside it; true where it has none open. A log that was removed or replaced takes writes that nobody will ever read.
bool logStands(std::string_view databasePath);

}
