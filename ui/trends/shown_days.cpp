#include "ui/trends/shown_days.h"

#include <algorithm>
#include <cmath>

namespace tierloam::trends {

namespace {

using std::chrono::days;

constexpr int fewestDays = 7; ///< shown at once

}

bool ShownDays::set(Day from, Day until)
{
    const int whole = daysBetween(whole_.from, whole_.until);
    const int length = std::clamp(daysBetween(from, until), std::min(fewestDays, whole), whole);
    from += days{(daysBetween(from, until) - length) / 2};
    from = std::clamp(from, whole_.from, whole_.until - days{length});
    const Period view{from, whole_.today, from + days{length}};
    zoomed_ = view != whole_;
    if (view == view_) return false;
    view_ = view;
    return true;
}

bool ShownDays::zoom(double factor, Day about)
{
    about = std::clamp(about, view_.from, view_.until);
    const double before = daysBetween(view_.from, about), after = daysBetween(about, view_.until);
    // A notch always moves something, however few the days are.
    const auto scaled = [factor](double length) { return factor < 1 ? std::floor(length * factor) : std::ceil(length * factor); };
    return set(about - days{static_cast<int>(scaled(before))}, about + days{static_cast<int>(scaled(after))});
}

bool ShownDays::move(double share)
{
    const int wanted = static_cast<int>(std::lround(share * daysBetween(view_.from, view_.until)));
    const int by = std::clamp(wanted == 0 ? (share < 0 ? -1 : 1) : wanted, daysBetween(view_.from, whole_.from), daysBetween(view_.until, whole_.until));
    return set(view_.from + days{by}, view_.until + days{by});
}

void ShownDays::follow(const Period& period)
{
    const Period before = view_;
    const bool part = zoomed_;
    if (part && period == whole_) return;
    whole_ = view_ = period;
    zoomed_ = false;
    if (part) set(before.from, before.until);
}

}
