#pragma once

#include <string>

namespace tierloam::tests {

/// While it lives, the settings, data, caches and documents of this process and of those it starts lie in a fresh folder of its own,
/// so that no test sees or touches what the person at this machine keeps. Removed with everything in it at the end.
class PrivateFolders {
public:
    PrivateFolders();
    ~PrivateFolders();
    PrivateFolders(const PrivateFolders&) = delete;
    PrivateFolders& operator=(const PrivateFolders&) = delete;

private:
    std::string root_;
};

/// Zone UTC and the C locale for everything that asks the system.
void fixZoneAndLocale();

}
