#pragma once

#include "core/exchange/table_answers.h"

namespace tierloam::household {
class Household;
}
namespace tierloam::ui {
class Settings;
}

/// Where answers about tables are kept: a household has those of the tables that it took in. Those of a table that was closed before, or looked at without a
/// household, lie in the program's settings until a household takes them over.
namespace tierloam::exchange_view {

inline constexpr int mostTablesKept = 8;

/// Both, the ones in the settings first: they are newer. `household`: none while none is open.
exchange::TableAnswers keptFor(const exchange::Sheet& sheet, const ui::Settings& settings, const household::Household* household);

/// In the settings; the oldest of more than mostTablesKept tables go.
void keepAside(const exchange::Sheet& sheet, ui::Settings& settings, const exchange::TableAnswers& answers);

/// In the household, with what an earlier such table was answered besides, and no longer in the settings. `label`: of the step that can be undone.
void keepIn(household::Household& household, const exchange::Sheet& sheet, ui::Settings& settings, const exchange::TableAnswers& answers, const QString& label);

}
