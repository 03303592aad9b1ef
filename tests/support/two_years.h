#pragma once

#include "core/journal/entry.h"
#include "core/reckoning/reckoning.h"

#include <cstdint>
#include <optional>
#include <vector>

/// Two years of a household drawn from the prior, lived day by day: who follows the advice sees nothing but the reckoning of the journal, and the
/// truth, one drawn member, answers each look. Beside it the same household with its trays on a fixed calendar.
namespace tierloam::tests {

/// How a household follows.
struct Following {
    int days = 730;
    int members = 256;
    bool spigotShut = false;         ///< and drained only when told, or when it is seen to run over; else as drawn
    bool bitsEachMonth = true;       ///< of the bottom tray, beside what is advised
};

/// A sump foreseen to be full: told on a day, with the median of the forecast, beside the truth if nobody drained.
struct SumpTold { Day on{}, foreseen{}; std::optional<Day> truly, early, late; };

/// What was taken, and what became of the stack. Dry matter of the truth.
struct Lived {
    double castingsKg = 0;           ///< in all that was taken, half-worked trays too
    double readyKg = 0;              ///< in trays that were ready when taken: what can be used as castings
    double unprocessedKg = 0;        ///< food and bedding not yet castings that went with it
    double castingsStandingKg = 0;   ///< in the trays at the end
    double fedKg = 0;                ///< fresh
    double beddedKg = 0;             ///< bedding of trays, as weighed
    int harvests = 0, unready = 0;   ///< taken; of these with a feed-to-cast above 0.10
    int trays = 0;                   ///< in use at the end
    double colonyKg = 0, stockedKg = 0; ///< at the end; at the start
    std::optional<int> firstHarvest; ///< day
    std::vector<SumpTold> sumps;
    int sumpLooks = 0, squeezes = 0; ///< into the sump, of the bed, as advised
    int ranOver = 0, ranOverUntold = 0; ///< weeks in which the sump was found full; of these nothing had been told
    /// Hardly anything lives at the end: less than a twentieth of what was stocked.
    bool lost() const { return colonyKg < 0.05 * stockedKg; }
};

/// `sameBedding`: the calendar again, its trays bedded with as much in all as those of the life that followed. Bedding is food for worms too, and
/// the calendar lays more trays.
struct TwoLives { Lived following, calendar, sameBedding; };

/// The calendar: second tray on day 90, third 60 days later, the first lift 60 days later, then every 75 days; what is lifted is taken six
/// days later and bedded anew. Food, paper, water and drains are those of the life that followed the advice.
TwoLives liveBoth(std::uint64_t series, int number, const Following& following = {});

}
