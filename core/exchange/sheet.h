#pragma once

#include "core/exchange/csv.h"

#include <QString>

#include <cstddef>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

/// Any table that people or instruments keep as delimited text: what it is encoded in and what parts its cells is found out and told.
namespace tierloam::exchange {

/// UTF-8 is known by being valid; UTF-16 only by its mark; anything else is taken for Latin-1, where every byte has a meaning.
enum class Encoding { utf8, utf8Marked, utf16, latin1 };

struct Sheet {
    Encoding encoding = Encoding::utf8;
    char separator = ',';              ///< ',' ';' or tab
    bool separatorIsSure = true;       ///< false: another would also have given columns
    std::vector<std::string> header;   ///< names of the columns as they stand, blanks around them taken off
    int headerLine = 1;                ///< 0: no row names them, they are numbered
    std::size_t above = 0;             ///< rows that hold something and stand above the header (a title, a date of printing): left out
    std::vector<csv::Record> rows;     ///< behind the header; Record::raw points into `text`
    std::shared_ptr<const std::string> text; ///< UTF-8
    bool whole = true;                 ///< false: the first rows of a longer file
};

/// `separator`: the one to use; none: it is recognised. Or, in words, why nothing can be read. The header is the first row, but for a table whose first rows
/// are a title above it, or whose first row is an entry already.
std::variant<Sheet, QString> readSheet(std::string_view bytes, std::optional<char> separator = {});

/// As readSheet, from a file; files above this size are refused rather than held in memory.
std::variant<Sheet, QString> readSheetFile(const QString& path, std::optional<char> separator = {});
/// The rows of about the first `firstSheetBytes` of a longer file, so that people need not wait for the whole before they are asked; nullopt: it has
/// to be read as a whole, or fails and will say why. What only later rows tell (the encoding too) may turn out otherwise.
std::optional<Sheet> readSheetStart(const QString& path, std::optional<char> separator = {});
inline constexpr qint64 firstSheetBytes = 256LL << 10;
inline constexpr qint64 largestSheetBytes = 256LL << 20;

QString encodingText(Encoding encoding);
QString separatorText(char separator);

}
