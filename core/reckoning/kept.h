#pragma once

#include "core/reckoning/reckoning.h"

#include <memory>
#include <string>
#include <string_view>

/// A reckoning as bytes, so that estimates stand on the screen before the model has run again. Derived data: read back only by the release that wrote
/// it, on the same machine; anything else is made anew, never migrated.
namespace tierloam::reckoning {

/// What kept estimates must agree in to be of use; the journal they rest on is told by Reckoning::journalDigest.
struct KeptFor {
    std::string program;             ///< version of the program
    bool southern = false;
    bool operator==(const KeptFor&) const = default;
};

/// All that pages show; the members themselves and the snapshots stay out.
std::string keptBytes(const Reckoning& reckoning, const KeptFor& made);
/// nullptr when the bytes are damaged, cut short, of another release or made for something else. Never throws on what it is given.
std::shared_ptr<const Reckoning> fromKept(std::string_view bytes, const KeptFor& wanted);

}
