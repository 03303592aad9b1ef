#include "core/store/held_locks.h"

#include "core/store/connection.h"

#include <fcntl.h>
#include <sqlite3.h>
#include <sys/stat.h>
#include <sys/vfs.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstdarg>
#include <cstdio>
#include <map>
#include <mutex>
#include <set>
#include <string>
#include <string_view>
#include <utility>

namespace tierloam::store {

namespace {

using Inode = std::pair<dev_t, ino_t>;
using Open = int (*)(const char*, int, int);
using Close = int (*)(int);
using Fcntl = int (*)(int, int, ...);

/// The calls of the system as they were.
Open openAsBefore = nullptr;
Close closeAsBefore = nullptr;
Fcntl fcntlAsBefore = nullptr;

/// The description that holds the locks of a file, and the handles of SQLite that have asked for any.
struct Holder {
    int description = -1; ///< -1: POSIX locks
    std::set<int> askers;
};

struct Log {
    std::string path;
    Inode inode;
};

struct Tables {
    std::mutex mutex;
    std::map<Inode, Holder> holders;
    std::map<int, Log> logs; ///< by handle: the logs and indexes that are open
};

/// Never destroyed: a connection may close after what is static is gone.
Tables& tables()
{
    static auto* const kept = new Tables;
    return *kept;
}

/// A description of its own for the same file, for writing; -1 where there cannot be one that locks.
int describe(int handle)
{
    struct statfs found{};
    if (::fstatfs(handle, &found) != 0 || !logIsSafeOn(static_cast<long>(found.f_type))) return -1;
    std::array<char, 40> name{};
    std::snprintf(name.data(), name.size(), "/proc/self/fd/%d", handle);
    const int description = ::open(name.data(), O_RDWR | O_CLOEXEC);
    if (description < 0) return -1;
    struct flock any{};
    any.l_type = F_WRLCK;
    any.l_whence = SEEK_SET;
    if (::fcntl(description, F_OFD_GETLK, &any) == 0) return description;
    // Before any lock of this file is held by this process, so that closing the handle lets go of none.
    ::close(description);
    return -1;
}

int lockBy(int handle, int command, struct flock* lock)
{
    struct stat found{};
    if (::fstat(handle, &found) != 0) return fcntlAsBefore(handle, command, lock);
    Tables& all = tables();
    const std::lock_guard guard{all.mutex};
    const auto [place, fresh] = all.holders.try_emplace(Inode{found.st_dev, found.st_ino});
    Holder& holder = place->second;
    if (fresh) holder.description = describe(handle);
    holder.askers.insert(handle);
    if (holder.description < 0) return fcntlAsBefore(handle, command, lock);
    lock->l_pid = 0; // as F_OFD_… wants it
    return fcntlAsBefore(holder.description, command == F_SETLK ? F_OFD_SETLK : F_OFD_GETLK, lock);
}

int fcntlHolding(int handle, int command, ...)
{
    va_list rest;
    va_start(rest, command);
    int result = -1;
    if (command == F_SETLK || command == F_GETLK) result = lockBy(handle, command, va_arg(rest, struct flock*));
    else result = fcntlAsBefore(handle, command, va_arg(rest, int)); // SQLite asks for nothing else that takes an argument
    va_end(rest);
    return result;
}

bool isLog(std::string_view path) { return path.ends_with("-wal") || path.ends_with("-shm"); }

int openNoting(const char* path, int flags, int mode)
{
    const int handle = openAsBefore(path, flags, mode);
    struct stat found{};
    if (handle < 0 || !isLog(path) || ::fstat(handle, &found) != 0) return handle;
    Tables& all = tables();
    const std::lock_guard guard{all.mutex};
    all.logs.insert_or_assign(handle, Log{path, {found.st_dev, found.st_ino}});
    return handle;
}

int closeLettingGo(int handle)
{
    struct stat found{};
    const bool known = ::fstat(handle, &found) == 0;
    Tables& all = tables();
    const std::lock_guard guard{all.mutex};
    all.logs.erase(handle);
    const auto place = known ? all.holders.find({found.st_dev, found.st_ino}) : all.holders.end();
    if (place != all.holders.end()) {
        place->second.askers.erase(handle);
        if (place->second.askers.empty()) {
            if (place->second.description >= 0) ::close(place->second.description);
            all.holders.erase(place);
        }
    }
    return closeAsBefore(handle);
}

}

void holdLocks()
{
    static std::once_flag once;
    std::call_once(once, [] {
        sqlite3_vfs* vfs = sqlite3_vfs_find("unix"); // whose calls all file systems of SQLite's own on this system share
        if (!vfs || vfs->iVersion < 3) return;
        openAsBefore = reinterpret_cast<Open>(vfs->xGetSystemCall(vfs, "open"));
        closeAsBefore = reinterpret_cast<Close>(vfs->xGetSystemCall(vfs, "close"));
        fcntlAsBefore = reinterpret_cast<Fcntl>(vfs->xGetSystemCall(vfs, "fcntl"));
        if (!openAsBefore || !closeAsBefore || !fcntlAsBefore) return;
        vfs->xSetSystemCall(vfs, "open", reinterpret_cast<sqlite3_syscall_ptr>(&openNoting));
        vfs->xSetSystemCall(vfs, "close", reinterpret_cast<sqlite3_syscall_ptr>(&closeLettingGo));
        vfs->xSetSystemCall(vfs, "fcntl", reinterpret_cast<sqlite3_syscall_ptr>(&fcntlHolding));
    });
}

bool logStands(std::string_view databasePath)
{
    const std::string path{databasePath};
    Tables& all = tables();
    const std::lock_guard guard{all.mutex};
    return std::ranges::all_of(all.logs, [&](const auto& open) {
        const Log& log = open.second;
        if (log.path != path + "-wal" && log.path != path + "-shm") return true;
        struct stat found{};
        return ::stat(log.path.c_str(), &found) == 0 && Inode{found.st_dev, found.st_ino} == log.inode;
    });
}

}
