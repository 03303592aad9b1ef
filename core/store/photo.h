#pragma once

#include "core/journal/entry.h"

#include <QByteArray>
#include <QString>

namespace tierloam::store {

/// A picture that belongs to an entry. Pictures lie in the household file itself: one file to move, one transaction with the journal, and
/// every backup and copy holds them. Price: each backup is larger by them; so they are kept small (long side at most 1600 px).
struct Photo {
    qint64 id = 0;                   ///< 0 while it has not been written
    journal::EntryId entry{};
    QString mediaType;               ///< "image/jpeg" or "image/png"
    int width = 0, height = 0;       ///< px, 1 to 1600
    QString caption;
    QByteArray bytes;
};

/// One change of a picture as a write of its own. Removal only marks the row, so that it can be undone after a restart too.
struct PhotoJob {
    enum class What { add, remove, bringBack };
    What what = What::add;
    Photo photo;                     ///< whole to add; only the id for the others
};

}
