#include "core/reckoning/drained.h"

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

Drained drainedTwice(const DrainCheck& before, const DrainCheck& last, const Record& record)
{
    const Drained side = drainedOf(last, record);
    return drainedOf(before, record) == side ? side : Drained::asExpected;
}

}
