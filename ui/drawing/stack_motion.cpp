#include "ui/drawing/stack_motion.h"

#include <algorithm>

namespace tierloam::drawing {

namespace {

std::optional<std::size_t> placeOf(const StackPicture& stack, int batch)
{
    const auto found = std::find_if(stack.trays.begin(), stack.trays.end(), [batch](const TrayPicture& tray) { return tray.batch == batch; });
    return found == stack.trays.end() ? std::nullopt : std::optional{static_cast<std::size_t>(found - stack.trays.begin())};
}

void shift(StackLayout::Tray& tray, double down)
{
    for (QRectF* part : {&tray.box, &tray.rim, &tray.inside, &tray.labels}) part->translate(0, down);
}

constexpr double reach = 1.2; ///< how far a tray comes from or goes to, in its own heights

}

bool standsOtherwise(const StackPicture& from, const StackPicture& to)
{
    return !std::equal(from.trays.begin(), from.trays.end(), to.trays.begin(), to.trays.end(), [](const TrayPicture& a, const TrayPicture& b) { return a.batch == b.batch; });
}

StackMoment between(const StackMoment& from, const StackMoment& to, double share)
{
    StackMoment now = to;
    const double left = 1 - std::clamp(share, 0.0, 1.0);
    const double ground = to.layout.ground - from.layout.ground; // the board may have been laid out anew meanwhile
    for (std::size_t i = 0; i < now.layout.trays.size(); ++i) {
        StackLayout::Tray& tray = now.layout.trays[i];
        if (const auto before = placeOf(from.picture, to.picture.trays[i].batch)) {
            shift(tray, (from.layout.trays[*before].rim.top() + ground - tray.rim.top()) * left);
        } else {
            shift(tray, -tray.whole().height() * reach * left);
            tray.opacity = 1 - left;
        }
    }
    if (from.picture.lidOn && to.picture.lidOn) now.layout.lid.translate(0, (from.layout.lid.top() + ground - to.layout.lid.top()) * left);
    for (std::size_t i = 0; i < from.picture.trays.size(); ++i) {
        if (placeOf(to.picture, from.picture.trays[i].batch)) continue;
        StackLayout::Tray tray = from.layout.trays[i];
        shift(tray, ground - tray.whole().height() * reach * (1 - left));
        tray.opacity = left;
        now.layout.trays.push_back(tray);
        now.picture.trays.push_back(from.picture.trays[i]);
        now.picture.trays.back().drying = false; // the light goes out at once
    }
    return now;
}

}
