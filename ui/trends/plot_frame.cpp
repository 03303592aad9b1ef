#include "ui/trends/plot_frame.h"

#include <algorithm>
#include <cmath>

namespace tierloam::trends {

double Frame::y(double value) const
{
    const double share = log ? std::log10(std::max(value, bottom / 2) / bottom) / std::log10(top / bottom) : (value - bottom) / (top - bottom);
    return area.bottom() - std::min(share, 10.0) * area.height();
}

Day Frame::dayAt(double x) const
{
    const double day = from + (x - area.left()) / std::max(1.0, area.width()) * (until - from);
    return Day{std::chrono::days{static_cast<int>(std::floor(std::clamp(day, from, until) + 0.5))}};
}

}
