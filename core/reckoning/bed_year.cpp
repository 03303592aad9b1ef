#include "core/reckoning/bed_year.h"

#include "core/model/ensemble.h"
#include "core/quantity/day_text.h"

namespace tierloam::reckoning {

namespace {

constexpr int someYear = 2001; ///< not a leap year: 365 days, as the season has

/// Mean offset of a month, K.
double monthOffset(unsigned month, journal::Place place, bool southern)
{
    using namespace std::chrono;
    const Day first = sys_days{year{someYear} / static_cast<int>(month) / 1};
    const Day last = sys_days{year{someYear} / static_cast<int>(month) / std::chrono::last};
    double sum = 0;
    int count = 0;
    for (Day day = first; day <= last; day += days{1}, ++count) sum += bedOn(0.0, place, day, southern);
    return sum / count;
}

}

double seasonAmplitude(journal::Place place)
{
    switch (place) {
    case journal::Place::garage: return 6.0;
    case journal::Place::outdoors: return 9.0;
    case journal::Place::indoors: break;
    }
    return 1.0;
}

double bedOn(double yearMeanC, journal::Place place, Day day, bool southern)
{
    return yearMeanC + model::seasonOffset(seasonAmplitude(place), dayOfYear(day), southern);
}

double yearMeanFrom(double bedC, journal::Place place, Day day, bool southern) { return bedC - bedOn(0.0, place, day, southern); }

BedYear bedYear(double yearMeanC, journal::Place place, bool southern)
{
    BedYear year;
    double coldest = 0, warmest = 0;
    for (unsigned month = 1; month <= 12; ++month) {
        const double offset = monthOffset(month, place, southern);
        if (month == 1 || offset < coldest) {
            coldest = offset;
            year.coldestMonth = static_cast<int>(month);
        }
        if (month == 1 || offset > warmest) {
            warmest = offset;
            year.warmestMonth = static_cast<int>(month);
        }
    }
    year.coldestC = yearMeanC + coldest;
    year.warmestC = yearMeanC + warmest;
    return year;
}

double proposedYearMean(journal::Place place)
{
    switch (place) {
    case journal::Place::garage: return 14.0;
    case journal::Place::outdoors: return 12.0;
    case journal::Place::indoors: break;
    }
    return journal::StackSettings{}.temp.base();
}

}
