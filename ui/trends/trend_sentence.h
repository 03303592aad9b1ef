#pragma once

#include "ui/trends/trend_data.h"

#include <QString>

/// What a chart of the trends shows, in words.
namespace tierloam::trends {

/// A few sentences on one stack's chart, of the days that `view` shows: of now, of what was when all of it has gone by, of what is foreseen when none
/// of it has come. `series` as seenOf gives it. When there is nothing to draw, what will appear there and when; `reckoned`: estimates are there.
QString sentenceOf(Measure measure, const Series& series, const Period& view, bool reckoned);
/// Of a chart that has nothing to show in these days, and has in others.
QString nothingThen(Measure measure, const Period& view);

}
