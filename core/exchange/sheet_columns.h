#pragma once

#include "core/exchange/sheet.h"
#include "core/quantity/units.h"

#include <QString>

#include <array>
#include <cstdint>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

/// Which column of somebody's table holds what, and which of our words theirs stand for. The words are tables that translators extend:
/// English ones are always understood, and beside them those of the language the program runs in.
namespace tierloam::exchange {

/// What a column can hold: the columns of the journal, and the time of day where it has a column of its own.
enum class SheetField { date, time, stack, action, slot, amount, unit, item, detail, note };
inline constexpr std::array allSheetFields{SheetField::date,   SheetField::time, SheetField::stack, SheetField::action, SheetField::slot,
                                           SheetField::amount, SheetField::unit, SheetField::item,  SheetField::detail, SheetField::note};

QString fieldText(SheetField field);

struct SheetColumn {
    std::optional<SheetField> field;   ///< none: the column is left out
    std::optional<Unit> unit;          ///< named in the header: "amount (g)"
    bool operator==(const SheetColumn&) const = default;
};

/// One for each column of the header, whatever their order. The journal's own names come first; of two columns that could hold the same
/// thing the first is taken, and the other left out.
std::vector<SheetColumn> recogniseColumns(const std::vector<std::string>& header);

/// The same with the cells looked at: where no name says what was done, "what" over words for acts does, and the material is another column's.
std::vector<SheetColumn> recogniseColumns(const Sheet& sheet);

/// Gives what no column holds to those that hold nothing and whose name says it; columns in `kept` stay as they are.
void recogniseMore(const std::vector<std::string>& header, std::vector<SheetColumn>& columns, const std::set<std::size_t>& kept = {});

/// The action that a word of the table stands for: "feed" for "Fed" or "feeding". nullopt when it stands for none.
std::optional<std::string_view> actionMeant(std::string_view word);

/// "g", "Grams", "lbs": any spelling in use.
std::optional<Unit> unitMeant(std::string_view word);

/// The same for tables with the same columns: under it the household keeps what was answered for them.
std::uint64_t headerNumber(const std::vector<std::string>& header);

/// Lower case, blanks and underscores alike, no marks around it: as the words of the tables are compared.
std::string comparable(std::string_view word);

}
