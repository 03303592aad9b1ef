#pragma once

#include <QByteArray>
#include <QFile>
#include <QFileInfo>
#include <QString>

#include <sqlite3.h>

#include <atomic>
#include <cstring>
#include <functional>
#include <map>
#include <memory>
#include <random>
#include <utility>
#include <vector>

/// A layer between SQLite and the disk that remembers what has been synced. Before each call that changes a file it can say what a power
/// cut at that moment would leave: what was synced, and of the rest any part, in sectors of 512 bytes, in any order. Works on all
/// connections of this process that are opened while it lives.
namespace tierloam::store::samples {

class PowerVfs {
public:
    using Disk = std::map<QString, QByteArray>; ///< file name to bytes

    PowerVfs() : real_{sqlite3_vfs_find(nullptr)}
    {
        vfs_ = *real_;
        vfs_.zName = "power";
        vfs_.szOsFile = static_cast<int>(sizeof(File)) + real_->szOsFile;
        vfs_.pAppData = this;
        vfs_.xOpen = open;
        vfs_.xDelete = remove;
        sqlite3_vfs_register(&vfs_, 1);
    }
    ~PowerVfs()
    {
        sqlite3_vfs_unregister(&vfs_);
        sqlite3_vfs_register(real_, 1);
    }
    PowerVfs(const PowerVfs&) = delete;
    PowerVfs& operator=(const PowerVfs&) = delete;

    /// Called before each write, sync, cut and removal.
    std::function<void()> beforeEach;
    /// Without memory that is shared between connections, as on many network shares: no write-ahead log. For files opened from now on.
    bool withoutSharedMemory = false;
    std::atomic<bool> full = false; ///< there is no room: writes are refused as a full disk refuses them

    /// What is left after a cut now. `kept`: share of the unsynced sectors that reached the disk all the same.
    Disk afterACut(std::mt19937& chance, double kept) const
    {
        std::bernoulli_distribution reached{kept};
        Disk left;
        for (const auto& [name, state] : files_) {
            QByteArray bytes = state->durable;
            if (!state->there && !(state->removedUnsynced && !reached(chance))) continue;
            for (const Write& write : state->unsynced) {
                if (write.cutTo >= 0) {
                    if (reached(chance)) bytes.truncate(write.cutTo);
                    continue;
                }
                for (qsizetype from = 0; from < write.bytes.size();) {
                    const qsizetype length = std::min<qsizetype>(write.bytes.size() - from, 512 - (write.at + from) % 512);
                    if (reached(chance)) put(bytes, write.at + from, write.bytes.mid(from, length));
                    from += length;
                }
            }
            if (state->created && state->durable.isEmpty() && bytes.isEmpty() && !reached(chance)) continue;
            left[name] = bytes;
        }
        return left;
    }
    int changes() const { return changes_; }

private:
    struct Write {
        qsizetype at = 0;
        QByteArray bytes;
        qsizetype cutTo = -1; ///< a truncation
    };
    struct State {
        QByteArray durable, now;
        std::vector<Write> unsynced;
        bool there = true, created = false, removedUnsynced = false;
    };
    struct File {
        sqlite3_file base;
        sqlite3_file* real;
        State* state; ///< none for files that SQLite forgets
        PowerVfs* self;
    };

    static void put(QByteArray& bytes, qsizetype at, const QByteArray& part)
    {
        if (bytes.size() < at + part.size()) bytes.append(at + part.size() - bytes.size(), '\0');
        std::memcpy(bytes.data() + at, part.constData(), static_cast<std::size_t>(part.size()));
    }
    static File& of(sqlite3_file* file) { return *reinterpret_cast<File*>(file); }
    void change()
    {
        ++changes_;
        if (beforeEach) beforeEach();
    }

    void folderSynced()
    {
        for (const auto& [name, state] : files_) state->removedUnsynced = false;
    }

    static int open(sqlite3_vfs* vfs, sqlite3_filename name, sqlite3_file* file, int flags, int* given)
    {
        auto* self = static_cast<PowerVfs*>(vfs->pAppData);
        File& mine = of(file);
        mine.base.pMethods = nullptr;
        mine.self = self;
        mine.real = reinterpret_cast<sqlite3_file*>(&mine + 1);
        mine.state = nullptr;
        const QString path = name ? QString::fromUtf8(name) : QString{};
        const bool was = name && QFileInfo::exists(path);
        const int answer = self->real_->xOpen(self->real_, name, mine.real, flags, given);
        if (mine.real->pMethods) mine.base.pMethods = self->withoutSharedMemory ? &plain() : &methods();
        if (answer == SQLITE_OK && name && !(flags & SQLITE_OPEN_DELETEONCLOSE)) {
            auto& state = self->files_[QFileInfo{path}.fileName()];
            if (!state || !state->there) {
                const bool comesBack = state && state->removedUnsynced;
                const QByteArray old = comesBack ? state->durable : QByteArray{};
                state = std::make_unique<State>();
                QFile bytes{path};
                if (was && bytes.open(QIODevice::ReadOnly)) state->durable = state->now = bytes.readAll();
                if (comesBack) state->durable = old;
                state->created = !was;
            }
            mine.state = state.get();
        }
        return answer;
    }
    static int remove(sqlite3_vfs* vfs, const char* name, int syncFolder)
    {
        auto* self = static_cast<PowerVfs*>(vfs->pAppData);
        self->change();
        const int answer = self->real_->xDelete(self->real_, name, syncFolder);
        const auto found = self->files_.find(QFileInfo{QString::fromUtf8(name)}.fileName());
        if (answer == SQLITE_OK && found != self->files_.end()) {
            found->second->there = false;
            found->second->removedUnsynced = true;
            if (syncFolder) self->folderSynced();
        }
        return answer;
    }
    static int write(sqlite3_file* file, const void* bytes, int length, sqlite3_int64 at)
    {
        File& mine = of(file);
        mine.self->change();
        if (mine.self->full) return SQLITE_FULL;
        const int answer = mine.real->pMethods->xWrite(mine.real, bytes, length, at);
        if (answer == SQLITE_OK && mine.state) {
            const QByteArray part{static_cast<const char*>(bytes), length};
            mine.state->unsynced.push_back({static_cast<qsizetype>(at), part, -1});
            put(mine.state->now, static_cast<qsizetype>(at), part);
        }
        return answer;
    }
    static int truncate(sqlite3_file* file, sqlite3_int64 size)
    {
        File& mine = of(file);
        mine.self->change();
        const int answer = mine.real->pMethods->xTruncate(mine.real, size);
        if (answer == SQLITE_OK && mine.state) {
            mine.state->unsynced.push_back({0, {}, static_cast<qsizetype>(size)});
            mine.state->now.truncate(static_cast<qsizetype>(size));
        }
        return answer;
    }
    static int sync(sqlite3_file* file, int flags)
    {
        File& mine = of(file);
        mine.self->change();
        const int answer = mine.real->pMethods->xSync(mine.real, flags);
        if (answer == SQLITE_OK && mine.state) {
            mine.state->durable = mine.state->now;
            mine.state->unsynced.clear();
            // SQLite syncs the folder with the first sync of a journal or a log that it made.
            if (std::exchange(mine.state->created, false)) mine.self->folderSynced();
        }
        return answer;
    }
    static sqlite3_io_methods make(int version)
    {
        sqlite3_io_methods made{};
        made.iVersion = version;
        made.xClose = [](sqlite3_file* f) { return of(f).real->pMethods->xClose(of(f).real); };
        made.xRead = [](sqlite3_file* f, void* into, int n, sqlite3_int64 at) { return of(f).real->pMethods->xRead(of(f).real, into, n, at); };
        made.xWrite = write;
        made.xTruncate = truncate;
        made.xSync = sync;
        made.xFileSize = [](sqlite3_file* f, sqlite3_int64* size) { return of(f).real->pMethods->xFileSize(of(f).real, size); };
        made.xLock = [](sqlite3_file* f, int lock) { return of(f).real->pMethods->xLock(of(f).real, lock); };
        made.xUnlock = [](sqlite3_file* f, int lock) { return of(f).real->pMethods->xUnlock(of(f).real, lock); };
        made.xCheckReservedLock = [](sqlite3_file* f, int* held) { return of(f).real->pMethods->xCheckReservedLock(of(f).real, held); };
        made.xFileControl = [](sqlite3_file* f, int op, void* arg) { return of(f).real->pMethods->xFileControl(of(f).real, op, arg); };
        made.xSectorSize = [](sqlite3_file*) { return 512; };
        made.xDeviceCharacteristics = [](sqlite3_file*) { return 0; }; // no promise of atomic or ordered writes
        made.xShmMap = [](sqlite3_file* f, int page, int size, int extend, void volatile** into) {
            return of(f).real->pMethods->xShmMap(of(f).real, page, size, extend, into);
        };
        made.xShmLock = [](sqlite3_file* f, int offset, int n, int flags) { return of(f).real->pMethods->xShmLock(of(f).real, offset, n, flags); };
        made.xShmBarrier = [](sqlite3_file* f) { of(f).real->pMethods->xShmBarrier(of(f).real); };
        made.xShmUnmap = [](sqlite3_file* f, int removing) { return of(f).real->pMethods->xShmUnmap(of(f).real, removing); };
        return made;
    }
    static const sqlite3_io_methods& methods()
    {
        static const sqlite3_io_methods made = make(2);
        return made;
    }
    static const sqlite3_io_methods& plain()
    {
        static const sqlite3_io_methods made = make(1);
        return made;
    }

    sqlite3_vfs* real_;
    sqlite3_vfs vfs_{};
    std::map<QString, std::unique_ptr<State>> files_;
    int changes_ = 0;
};

}
