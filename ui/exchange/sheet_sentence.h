#pragma once

#include "core/exchange/sheet_import.h"

#include <QString>

namespace tierloam::exchange_view {

/// What was read of a file: how many rows, in which encoding, what is not certain of it, where its columns are named.
QString readSentence(const exchange::Sheet& sheet);

/// What becomes of its rows. `plan`: none while they are looked at; `asked`: something waits for an answer; `anew`: there is no household yet.
QString fateSentence(const exchange::Sheet& sheet, const exchange::SheetPlan* plan, bool noDate, bool asked, bool anew);

}
