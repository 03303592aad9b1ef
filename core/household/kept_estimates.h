#pragma once

#include "core/reckoning/kept.h"

#include <QString>

/// The estimates of the last session, beside the file and not in it: $XDG_CACHE_HOME/tierloam/NAME.estimates. They may be lost at any time.
/// Callable from any thread; nothing is ever reported, since nothing is lost when it fails.
namespace tierloam::household {

class KeptEstimates {
public:
    /// `folder` empty: none are kept.
    KeptEstimates(QString folder, const QString& householdPath, std::string program);

    /// nullptr when there are none, or they are damaged or of another release.
    std::shared_ptr<const reckoning::Reckoning> read(bool southern) const;
    /// In place of those before, whole or not at all; of other households' the newest thirty stay.
    void write(const reckoning::Reckoning& reckoning, bool southern) const;

private:
    QString folder_, file_;
    std::string program_;
};

}
