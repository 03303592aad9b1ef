#pragma once

#include "core/exchange/fault.h"
#include "core/exchange/sheet.h"
#include "core/exchange/sheet_columns.h"
#include "core/exchange/sheet_values.h"
#include "core/exchange/sheet_words.h"
#include "core/journal/edit.h"
#include "core/journal/warnings.h"

#include <map>
#include <stop_token>

/// Somebody's table as entries of the journal: what must be asked before, and what each row becomes.
namespace tierloam::exchange {

/// What the table leaves open.
struct SheetQuestions {
    Evidence<DecimalMark> decimal;
    Evidence<DateOrder> order;
    bool century = false;              ///< years of two digits
    bool stack = false;                ///< some row names no stack though its action needs one
    bool action = false;               ///< some row says not what was done
    bool unit = false;                 ///< some amount has no unit
    bool noDate = false;               ///< no column holds the date: nothing can be read
    std::vector<std::string> ignored;  ///< names of the columns that are left out
};

/// `words`: rows that they leave out ask for nothing.
SheetQuestions questionsOf(const Sheet& sheet, const std::vector<SheetColumn>& columns, const WordAnswers& words = {});

/// The answers; where one is missing that is needed, the rows that need it are at fault.
struct SheetAnswers {
    std::vector<SheetColumn> columns;
    std::optional<DecimalMark> decimal;
    std::optional<DateOrder> order;
    std::optional<int> century;
    std::string stack;                 ///< of the rows that name none; begun if it is one of words.newStacks
    std::string action;                ///< of the rows that say none
    std::optional<Unit> unit;          ///< of the amounts that have none
    WordAnswers words;                 ///< of openWordsOf(); rows with a word that has no answer are at fault
    std::optional<Day> today;          ///< rows of later days are at fault, but for absences, which are planned; none: any day is taken
    bool leaveOutThere = true;         ///< rows that the journal holds already
    bool leaveOutTwice = false;        ///< rows that say what an earlier row of the file says

    bool operator==(const SheetAnswers&) const = default;
};

enum class RowFate { added, there, twice, unwanted, fault };

/// What the table becomes. There is one fate for each row of the sheet.
struct SheetPlan {
    std::vector<RowFate> fates;
    std::map<std::size_t, Fault> faults;    ///< by row of the sheet; lines are set
    journal::Entries entries;               ///< to be added, in the order of the file, without ids; first what begins new stacks
    std::size_t begun = 0;                  ///< of them, those that no row says: they begin new stacks
    std::vector<journal::Warning> warnings; ///< index into `after`
    journal::Entries after;                 ///< the journal as it would be

    std::size_t count(RowFate fate) const;
};

/// Rows that are left out or at fault do not count for the others: a row that builds on one at fault is at fault too, and says why.
/// An empty plan when it was told to stop.
SheetPlan planImport(const Sheet& sheet, const SheetAnswers& answers, const journal::Entries& existing, const std::stop_token& stop = {});

/// The rows at fault as CSV in UTF-8: the columns of the file, with their line and the reason before them. Put right, it can be imported
/// like the file itself.
std::string faultyRows(const Sheet& sheet, const SheetPlan& plan);

/// What is allowed in place of a day that has not come.
QString hasNotCome();

/// The fault in a sentence, without its line.
QString reasonText(const Fault& fault);

}
