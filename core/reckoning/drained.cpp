#include "core/reckoning/drained.h"

#include <variant>

namespace tierloam::reckoning {

namespace {

constexpr double nearlyFull = 0.9; ///< of the sump: the rest ran over

}

Drained drainedOf(const DrainCheck& drain, const Record& record)
{
    const bool ranOver = record.spigotShut && drain.litres >= nearlyFull * record.sumpCapacityL;
    if (drain.litres < drain.expected.p05) return ranOver ? Drained::asExpected : Drained::less;
    return drain.litres > drain.expected.p95 ? Drained::more : Drained::asExpected;
}

std::optional<double> drainedBy(const journal::Entry& entry)
{
    if (const auto* drain = std::get_if<journal::Drain>(&entry.action))
        if (const auto volume = drain->volume ? drain->volume->volume() : std::nullopt) return volume->base();
    if (const auto* flush = std::get_if<journal::Flush>(&entry.action))
        if (flush->drained) return flush->drained->base();
    return std::nullopt;
}

Drained drainedTwice(const DrainCheck& before, const DrainCheck& last, const Record& record)
{
    const Drained side = drainedOf(last, record);
    return drainedOf(before, record) == side ? side : Drained::asExpected;
}

}
