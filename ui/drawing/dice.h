#pragma once

#include <cstdint>

namespace tierloam::drawing {

/// Numbers that look thrown but are always the same for the same key, so that a picture stays as it is from one repaint to the next.
class Dice {
public:
    explicit constexpr Dice(std::uint64_t key) : state_{key * 0x9E3779B97F4A7C15ULL + 0x632BE59BD9B4E019ULL} {}

    /// Next value in 0…1 (splitmix64).
    constexpr double next()
    {
        state_ += 0x9E3779B97F4A7C15ULL;
        std::uint64_t z = state_;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9ULL;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBULL;
        z ^= z >> 31;
        return static_cast<double>(z >> 11) * 0x1.0p-53;
    }
    constexpr double between(double low, double high) { return low + (high - low) * next(); }

private:
    std::uint64_t state_;
};

}
