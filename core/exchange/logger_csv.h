#pragma once

#include "core/exchange/fault.h"
#include "core/exchange/sheet.h"
#include "core/exchange/sheet_values.h"
#include "core/store/logged.h"

#include <QString>

#include <functional>
#include <map>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

/// Tables that an instrument wrote: a column with the time and columns with temperature or moisture. Which is which is said once and
/// remembered for every table with the same header.
namespace tierloam::exchange {

enum class LoggerRole { none, moment, timeOfDay, bin, air, moisture, humidity };
enum class Degree { celsius, fahrenheit };

struct LoggerColumn {
    LoggerRole role = LoggerRole::none;
    std::optional<Degree> degree;      ///< of a temperature; none: not known yet, to be asked
    bool operator==(const LoggerColumn&) const = default;
};

/// What the columns of a table hold and how it is written.
struct LoggerMapping {
    std::vector<LoggerColumn> columns;
    std::optional<DecimalMark> decimal;
    std::optional<DateOrder> order;
    std::optional<int> century;
    std::string stack;                 ///< where the instrument lies

    bool operator==(const LoggerMapping&) const = default;
};

/// What the names of the columns say. A temperature whose name does not say where it was taken is that of the bed; one that does not say in
/// which degrees is left open.
LoggerMapping guessMapping(const std::vector<std::string>& header);

/// Name of the household's setting that holds the mapping of tables with this header, and its text (JSON).
QString mappingName(const std::vector<std::string>& header);
QString mappingText(const LoggerMapping& mapping);
/// nullopt for a text that is no mapping of so many columns.
std::optional<LoggerMapping> mappingFrom(const QString& text, std::size_t columns);

struct LoggerQuestions {
    Evidence<DecimalMark> decimal;
    Evidence<DateOrder> order;
    bool century = false;
    bool noTime = false;               ///< no column holds the time
    bool noValue = false;              ///< no column holds a reading
    bool degrees = false;              ///< some temperature could be in either
    bool any() const { return noTime || noValue || degrees; }
};
LoggerQuestions questionsOf(const Sheet& sheet, const LoggerMapping& mapping);

/// All readings of a table. Empty cells are no readings and nothing is said of them; a row without a time, or with a value that none can be,
/// is at fault.
struct LoggerRead {
    std::array<std::vector<store::LoggedReading>, store::loggedKinds> readings; ///< by kind, in the order of the file
    std::map<std::size_t, Fault> faults; ///< by row of the sheet; lines are set; the first `mostFaults` of them
    std::size_t faultyRows = 0;          ///< all of them
    static constexpr std::size_t mostFaults = 2000;
    Day first{}, last{};                 ///< only when there are readings
    std::size_t count() const;
};

/// `today`: rows of later days are at fault; none: any day is taken.
/// `progress` is told the share read so far, 0 to 1; both may be empty. An empty result when it was told to stop.
LoggerRead readLogger(const Sheet& sheet, const LoggerMapping& mapping, std::optional<Day> today = {}, const std::function<void(double)>& progress = {}, const std::stop_token& stop = {});

/// The rows at fault as CSV, with line and reason before them.
std::string faultyRows(const Sheet& sheet, const LoggerRead& read);

}
