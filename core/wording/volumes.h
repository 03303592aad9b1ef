#pragma once

namespace tierloam::wording {

/// While it lives every volume and flow of this thread is told in one unit, so that the figures of one sentence, axis or band can be compared: litres
/// where the largest of them is told so, else millilitres; in US units fluid ounces where it is below a quart, else gallons. The innermost one holds.
class OneVolumeUnit {
public:
    explicit OneVolumeUnit(double largestLitres);
    ~OneVolumeUnit();
    OneVolumeUnit(const OneVolumeUnit&) = delete;
    OneVolumeUnit& operator=(const OneVolumeUnit&) = delete;

private:
    double before_;
};

}
