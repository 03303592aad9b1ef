#include "core/model/ledgers.h"

#include <cmath>

namespace tierloam::model {

namespace {

constexpr double waterPerRespired = 0.6; ///< kg made per kg DM respired

/// Relative to what came in; what is there without anything having come in counts whole.
double relative(double in, double held, double out) { return in > 0.0 ? (in - held - out) / in : held + out; }

}

double LedgerErrors::worst() const
{
    double most = 0.0;
    for (const double error : {dryMatter, carbon, nitrogen, salts, water}) {
        const double size = std::fabs(error);
        if (std::isnan(size)) return size;
        most = size > most ? size : most;
    }
    return most;
}

LedgerErrors ledgerErrors(const MemberOf& of)
{
    const StackBlock& stack = of.block.stack;
    const int m = of.lane;
    double carbon = stack.wormCarbon[m];
    double nitrogen = 0.0;
    double salts = stack.sumpSalts[m];
    double water = stack.sump[m];
    for (const TrayBlock& tray : of.block.trays) {
        carbon += tray.carbon[m];
        nitrogen += tray.nitrogen[m];
        salts += tray.salts[m];
        water += tray.water[m];
    }
    LedgerErrors errors;
    errors.dryMatter = ledgerError(of);
    errors.carbon = relative(stack.carbonIn[m], carbon, stack.carbonRespired[m] + stack.carbonOut[m]);
    errors.nitrogen = relative(stack.nitrogenIn[m], nitrogen, stack.nitrogenOut[m]);
    errors.salts = relative(stack.saltsFormed[m], salts, stack.saltsOut[m]);
    errors.water = relative(stack.waterIn[m] + waterPerRespired * stack.respired[m], water,
                            stack.evaporated[m] + stack.ranOff[m] + stack.overflowed[m] + stack.waterOut[m]);
    return errors;
}

}
