#pragma once

#include "core/reckoning/kept_members.h"

#include <QString>

#include <map>
#include <stop_token>

/// Members of the last session, a file a stack in $XDG_CACHE_HOME/tierloam/NAME.members: from them a reckoning goes on over the days since then. They may be
/// lost at any time. For one thread; nothing is ever reported, since nothing is lost when it fails.
namespace tierloam::household {

class KeptEnsembles {
public:
    /// `folder` empty: none are kept. `program` tells one build from another: what one build's model left is of no use to another's.
    KeptEnsembles(QString folder, const QString& householdPath, std::string program);

    /// The same estimates, with the snapshots that are kept of their stacks; as it was where there are none.
    std::shared_ptr<const reckoning::Reckoning> with(std::shared_ptr<const reckoning::Reckoning> estimates, bool southern);
    /// Writes what has become too old or holds no more, each file whole or not at all; of many stacks it gives up between two when stopped. Of other
    /// households' folders the newest four stay.
    void write(const reckoning::Reckoning& reckoning, bool southern, const std::stop_token& stop);

private:
    QString fileOf(const std::string& stack) const;
    void clear(const reckoning::Reckoning& reckoning) const;

    QString root_, folder_;
    std::string program_;
    std::map<std::string, reckoning::KeptSnapshots> held_; ///< by stack: what its file holds
};

}
