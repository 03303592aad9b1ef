#include "ui/forms/drain_doubt.h"

#include "core/reckoning/most_drained.h"
#include "ui/common/formats.h"

#include <QCoreApplication>

namespace tierloam::forms {

namespace {

struct DrainDoubt {
    Q_DECLARE_TR_FUNCTIONS(DrainDoubt)
};

constexpr double measuredTo = 0.15, measuredToL = 0.1;

}

QString drainDoubtText(const journal::Action& action, const journal::Standing& standing)
{
    const Volume sump = standing.settings.sump;
    double drained = 0.0, most = reckoning::mostDrained(sump, standing.spigot).base();
    if (const auto* drain = std::get_if<journal::Drain>(&action)) {
        drained = drain->volume ? drain->volume->volume().value_or(Volume{}).base() : 0.0;
    } else if (const auto* flush = std::get_if<journal::Flush>(&action)) {
        drained = flush->drained.value_or(Volume{}).base();
        most += flush->poured.volume().value_or(Volume{}).base(); // what was poured came through with it
    }
    if (drained <= most * (1.0 + measuredTo) + measuredToL) return {};
    return DrainDoubt::tr("%1 is more than can have run out: the sump holds %2. Is the amount right, and its unit?").arg(ui::volumeText(drained), ui::volumeText(sump.base()));
}

}
