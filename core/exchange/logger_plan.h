#pragma once

#include "core/exchange/logger_csv.h"
#include "core/journal/edit.h"
#include "core/store/household_file.h"

namespace tierloam::exchange {

/// What an import of logged readings writes: the readings that are new, and the journal's `reading` of each day that they touch: the mean of
/// all logged readings of that day, one entry for all kinds. An earlier entry of this sort is brought up to date, unless somebody has
/// changed it by hand: then it stays.
struct ReadingsPlan {
    journal::Edit edit;
    std::vector<store::LoggedSeries> add;
    std::size_t fresh = 0;            ///< readings that are added
    std::size_t there = 0;            ///< readings of the file that are there already
    std::size_t outside = 0;          ///< readings of days on which the stack did not stand: left out
    std::size_t days = 0;             ///< entries of the journal that are added or brought up to date
};

/// `entries`: the journal as it stands; `before`: what the store holds of the stack in the span of the readings.
ReadingsPlan planReadings(const LoggerRead& read, const std::string& stack, const store::LoggedBefore& before, const journal::Entries& entries);

}
