#include "ui/forms/tray_lift.h"

#include "ui/common/formats.h"

#include <QCoreApplication>

namespace tierloam::forms {

namespace {

struct TrayLifts {
    Q_DECLARE_TR_FUNCTIONS(TrayLifts)
};

/// Height of what the sump stands on; ours.
Length standHeight(journal::Stand stand)
{
    switch (stand) {
    case journal::Stand::legs: return centimetres(15);
    case journal::Stand::base: return centimetres(5);
    case journal::Stand::none: break;
    }
    return centimetres(0);
}

std::optional<Length>& reachOf()
{
    static std::optional<Length> reach;
    return reach;
}

}

std::optional<Length> ownReach() { return reachOf(); }
void setOwnReach(std::optional<Length> reach) { reachOf() = reach; }

TrayLiftWords trayLift(const journal::Standing& standing, int slot, double kg)
{
    const auto rim = [&](int at) { return guide::rimHeight(at, standing.settings.height, standHeight(standing.settings.stand)); };
    const Length to = slot == 1 ? rim(standing.trays()) : standing.settings.height;
    const guide::Lift lift = guide::liftOf({standing.settings.area, rim(slot), to, ownReach()});
    TrayLiftWords made;
    made.verdict = guide::judge(kilograms(kg), lift);
    if (!made.verdict.recommended) {
        made.words = TrayLifts::tr("Out of a safe reach: take it out in parts, or with someone.");
        return made;
    }
    const QString most = ui::massText(made.verdict.recommended->base());
    switch (made.verdict.word) {
    case guide::LiftVerdict::Word::fine: made.words = TrayLifts::tr("For this lift up to %1 is advised: fine for most people.").arg(most); break;
    case guide::LiftVerdict::Word::heavy: made.words = TrayLifts::tr("For this lift up to %1 is advised: heavy, so in parts or with someone.").arg(most); break;
    case guide::LiftVerdict::Word::tooHeavy: made.words = TrayLifts::tr("For this lift up to %1 is advised: far too heavy, take it out in parts.").arg(most); break;
    case guide::LiftVerdict::Word::dont: break;
    }
    return made;
}

}
