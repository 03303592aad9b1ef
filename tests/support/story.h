#pragma once

#include "core/journal/action.h"
#include "core/model/random.h"
#include "core/reckoning/look_kind.h"
#include "core/reckoning/reckon.h"

#include <cstdint>

/// What the stories of drawn households are told with.
namespace tierloam::tests {

/// The truth is one member of a block of 64.
inline constexpr int truthMembers = 64;
inline constexpr int truth = 0;

/// Random numbers of the story of one household.
class Dice {
public:
    Dice(std::uint64_t series, int number) : stream_{model::streamOf(series, number, model::Use::look, 77)} {}
    double unit() { return model::uniform(stream_, next_++); }
    double between(double low, double high) { return low + (high - low) * unit(); }
    bool chance(double p) { return unit() < p; }
    double normal() { return model::standardNormal(stream_ ^ 0x5bd1e995, next_++); }
    int whole(int low, int high) { return low + static_cast<int>(unit() * (high - low + 1)); }

private:
    std::uint64_t stream_;
    int next_ = 0;
};

/// One thread, and as many members as the test asks for.
reckoning::Options optionsFor(Day asOf, int members);

/// Writes a value that was read into the entry that reads it.
void writeValue(journal::Action& action, reckoning::LookKind kind, double value);

}
