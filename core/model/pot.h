#pragma once

#include "core/model/ensemble.h"

#include <string>
#include <vector>

/// Laboratory mode: one pot of known area, worms of known number and mass, feed on given days, a fixed temperature. It is the step of the
/// household stack and nothing else: one tray held at field capacity, worms dying of hunger, heat and bad air but not of age, hatchlings
/// taken away. So a measured growth curve judges the very equations that reckon a household.
namespace tierloam::model {

/// Feed put in, as softened dry matter that worms can eat at once; a negative mass is taken out of the pot's contents as they are, mixed.
struct PotFeeding {
    int day = 0;     ///< on the pot's own count; done at the start of that day
    double dry = 0;  ///< kg DM
};

struct PotSetting {
    std::string species;               ///< as in speciesTemperatures(); empty: Eisenia fetida
    double area = 0.0078;              ///< m²
    double temperature = 25;           ///< °C
    int firstDay = 0;                  ///< day of the count on which the worms are put in
    int worms = 1;
    double wormMass = 0.3e-3;          ///< kg live, of each. Lighter than the first class (4 mg): taken as that
    std::vector<PotFeeding> feedings;  ///< in any order; those before firstDay count as given on it
    bool ample = false;                ///< besides: topped up every morning to ampleFeed
    bool hatchlingsRemoved = true;     ///< off: they stay and grow, for the growth of a colony
};

inline constexpr double ampleFeed = 3.0; ///< kg softened DM per m²: far beyond half-saturation, too little to foul the air

/// One pot, one curve for each member of the ensemble it is given.
class LaboratoryPot {
public:
    /// `members` comes without trays (Ensemble::median, Ensemble::drawn); its parameters may have been changed. Noise is switched off.
    /// Precondition: area and wormMass above 0, at least one worm.
    LaboratoryPot(PotSetting setting, Ensemble members);

    /// Lives up to the start of `day`, before what is fed on it. Going back in time does nothing.
    void liveUntil(int day);

    int day() const { return day_; }
    double worms(int member = 0) const;        ///< number alive
    double meanMass(int member = 0) const;     ///< kg live per worm; 0 when none is left
    double cocoonsLaid(int member = 0) const;  ///< by all worms since firstDay; told only while hatchlings are removed
    double softened(int member = 0) const;     ///< kg DM that can still be eaten
    double ledger(int member = 0) const;       ///< relative error of the dry-matter ledger, see ledgerError()

private:
    void feedOfToday();

    PotSetting setting_;
    Ensemble ensemble_;
    std::vector<double> feedRemoved_; ///< kg DM by member, to tell it from hatchlings in what was taken out
    int day_;
};

}
