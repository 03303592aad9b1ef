#pragma once

#include "core/store/connection.h"
#include "core/store/household_file.h"

#include <future>

namespace tierloam::store {

enum class Origin { wasThere, madeNow, wasEmpty };

/// A household file that was found to be one, whole, and of a schema this release knows (or newer, to be read).
struct Opened {
    std::unique_ptr<Connection> connection;
    Origin origin = Origin::wasThere;
    bool readOnly = false;
    bool newer = false;
    int schema = 0;                  ///< of the file as it now is
    QString realPath;                ///< where the file lies, links followed
    std::future<std::optional<OpenFailure>> whole; ///< valid: every page is being looked at beside, and this is what comes of it
    QString told;                    ///< what people must know of what was done; empty: nothing
};

/// Looks at what lies at the path before anything is done to it, opens it, and brings the schema up to date.
/// Whatever is not a whole household file is left as it is. A file that was made for this and could not be set up is removed again.
std::variant<Opened, OpenFailure> openHousehold(const QString& absolutePath, HouseholdFile::Mode mode, std::chrono::milliseconds busyTimeout,
                                                HouseholdFile::Check check = HouseholdFile::Check::first);

/// Closes a file that was made or set up by openHousehold and holds nothing yet, and leaves things as they were: no file, or one of 0 bytes.
/// A file into which anything was written stays.
void discardUnused(Opened opened, const QString& absolutePath);

/// Puts the entry of the file in its folder onto the disk; false when the folder cannot be synced.
bool syncFolderOf(const QString& absolutePath);

}
