#include "core/advice/rules.h"
#include "core/advice/words.h"

namespace tierloam::advice {

using reckoning::StackReckoning;

namespace {

constexpr int fullWithinDays = 7;

}

/// A shut spigot fills the sump; a full one runs over on the floor.
void rulesOfDrainage(const StackReckoning& stack, std::vector<Advice>& to)
{
    if (!stack.record.spigotShut) return;
    const double capacity = stack.record.sumpCapacityL;
    const double level = stack.now.sumpL.p50;
    const bool fullNow = capacity > 0.0 && level >= 0.97 * capacity;
    const auto& on = stack.forecast.sumpFullOn.p50;
    if (!fullNow && (!on || *on > stack.asOf + std::chrono::days{fullWithinDays})) return;
    const QString amount = say(QT_TRANSLATE_NOOP("Advice", "%1 of %2")).arg(volume(level), volume(capacity));
    if (fullNow) {
        add(to, stack, Code::sumpFull, Severity::urgent, std::nullopt, stack.asOf, say(QT_TRANSLATE_NOOP("Advice", "Drain the sump: it runs over")),
            amount + say(QT_TRANSLATE_NOOP("Advice", "; what comes now runs on the floor")));
        return;
    }
    add(to, stack, Code::sumpFull, Severity::due, std::nullopt, stack.asOf, say(QT_TRANSLATE_NOOP("Advice", "Drain the sump")),
        amount + say(QT_TRANSLATE_NOOP("Advice", "; full %1")).arg(whenRange(stack.forecast.sumpFullOn, stack.asOf)));
}

}
