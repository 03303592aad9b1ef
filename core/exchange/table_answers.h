#pragma once

#include "core/exchange/sheet_import.h"

#include <QString>

#include <optional>
#include <string>
#include <vector>

namespace tierloam::exchange {

/// What people said of a table before its rows could be read: kept for the next table with the same header (wordsName()). The stack of rows that name none is not
/// among it: one file of a stack is followed by that of another.
struct TableAnswers {
    WordAnswers words;                 ///< without newStacks
    std::vector<std::optional<SheetField>> columns; ///< what each holds; empty: as its name says
    std::optional<DecimalMark> decimal;
    std::optional<DateOrder> order;
    std::optional<int> century;
    std::optional<Unit> unit;
    std::string action;                ///< of rows that say none; empty: not said

    bool operator==(const TableAnswers&) const = default;
};

/// As a setting (JSON, which holds the words as wordsText() does), and back; what makes no sense in it is left out.
QString tableText(const TableAnswers& answers);
TableAnswers tableFrom(const QString& text);

/// `newer` where it says something, else `older`.
TableAnswers together(TableAnswers newer, const TableAnswers& older);

}
