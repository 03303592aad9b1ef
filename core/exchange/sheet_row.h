#pragma once

#include "core/exchange/sheet_import.h"

#include <variant>

namespace tierloam::exchange {

/// The cells of a record by what they hold.
class SheetCells {
public:
    explicit SheetCells(const std::vector<SheetColumn>& columns);

    bool has(SheetField field) const { return places_[static_cast<std::size_t>(field)].has_value(); }
    /// Empty where the column or the cell is not there; blanks around it taken off, and what keeps it from being a formula.
    std::string_view of(const csv::Record& record, SheetField field) const;
    /// The same with its blanks: of a text that is kept as it is.
    std::string_view asItIs(const csv::Record& record, SheetField field) const;

    /// "300 g" taken apart; the unit from the cell, else from its own column, else from the header, else empty.
    struct Amount {
        std::string_view number;
        std::string unit;
    };
    Amount amount(const csv::Record& record) const;

    /// The amount and the values of the details that look like numbers.
    template <class Hear>
    void eachNumber(const csv::Record& record, Hear hear) const
    {
        if (const std::string_view number = amount(record).number; !number.empty()) hear(number);
        std::string_view detail = of(record, SheetField::detail);
        while (!detail.empty()) {
            const std::size_t end = std::min(detail.find(';'), detail.size());
            const std::size_t equals = detail.substr(0, end).find('=');
            if (equals != std::string_view::npos) hear(detail.substr(equals + 1, end - equals - 1));
            detail.remove_prefix(std::min(end + 1, detail.size()));
        }
    }

private:
    std::array<std::optional<std::size_t>, allSheetFields.size()> places_;
    std::optional<Unit> unit_;
};

/// Whether the row can become an entry as far as its date goes, in whatever order that is read. A total, a heading between the rows or a remark on a line of its own
/// cannot: it is at fault however its other cells are answered, and asks for nothing. True while no column holds the date.
bool mayBeAnEntry(const SheetCells& cells, const csv::Record& record);

/// Whether people left out the rows of one of its words.
bool isLeftOut(const SheetCells& cells, const csv::Record& record, const WordAnswers& words, std::optional<std::string_view> action);

/// Rows of the sheet as rows of the journal's format: dates, numbers, units and actions in its words.
class SheetRows {
public:
    SheetRows(const Sheet& sheet, const SheetAnswers& answers, const SheetQuestions& questions, StackNames names);

    struct LeftOut {}; ///< as people answered of one of its words

    /// Fault::line is not set.
    std::variant<Row, Fault, LeftOut> read(std::size_t index);

private:
    std::string detailOf(std::string_view detail) const;
    std::string stackOf(std::string_view written) const;

    const Sheet& sheet_;
    const SheetAnswers& answers_;
    const SheetQuestions& questions_;
    StackNames names_;
    ActionWordsMet actions_;
    SheetCells cells_;
    WaysOfWriting ways_;
    bool decimalKnown_ = false, orderKnown_ = false;
};

}
