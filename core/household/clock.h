#pragma once

#include "core/quantity/measures.h"

namespace tierloam::household {

/// The seam through which the program learns the date.
class Clock {
public:
    virtual ~Clock() = default;
    virtual Day today() const = 0;
    virtual int minuteOfDay() const = 0;
};

class SystemClock final : public Clock {
public:
    Day today() const override;      ///< the local civil day
    int minuteOfDay() const override;
};

class FixedClock final : public Clock {
public:
    explicit FixedClock(Day day, int minuteOfDay = 12 * 60) : day_{day}, minute_{minuteOfDay} {}
    Day today() const override { return day_; }
    int minuteOfDay() const override { return minute_; }
    void set(Day day) { day_ = day; }

private:
    Day day_;
    int minute_;
};

}
