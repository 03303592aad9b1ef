#pragma once

namespace tierloam::wording {

/// While it lives every mass that is told as an estimate in this thread has one unit, so that figures beside each other can be compared: kilograms where the
/// largest of them is told so, else grams; in US units pounds or ounces. The innermost one holds. Volumes: OneVolumeUnit in volumes.h.
class OneMassUnit {
public:
    explicit OneMassUnit(double largestKg);
    ~OneMassUnit();
    OneMassUnit(const OneMassUnit&) = delete;
    OneMassUnit& operator=(const OneMassUnit&) = delete;

private:
    double before_;
};

}
