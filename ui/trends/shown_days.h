#pragma once

#include "ui/trends/trend_data.h"

namespace tierloam::trends {

/// Which days the charts show: all of a period, or a part of it when one has zoomed. A part lies within the period and has a week at least.
class ShownDays {
public:
    const Period& whole() const { return whole_; }
    const Period& view() const { return view_; }
    bool zoomed() const { return zoomed_; }

    /// Each returns whether other days are shown than before.
    bool set(Day from, Day until);
    /// `factor` below 1: fewer days, with `about` where it was.
    bool zoom(double factor, Day about);
    /// By that share of the days shown, later or (below 0) earlier.
    bool move(double share);

    /// Another range or another day: what was looked at stays, as far as it can; all of it if all of it was shown.
    void follow(const Period& period);
    /// The next period is to be seen whole.
    void forget() { zoomed_ = false; }

private:
    Period whole_, view_;
    bool zoomed_ = false;
};

}
