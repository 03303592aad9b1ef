#include "core/exchange/sheet.h"

#include "core/exchange/sheet_columns.h"
#include "core/exchange/sheet_values.h"
#include "core/exchange/text.h"

#include <QDir>
#include <QFile>
#include <QStringDecoder>

#include <algorithm>
#include <array>

namespace tierloam::exchange {

namespace {

constexpr std::array separators{',', ';', '\t'};

/// What the bytes 0x80 to 0x9F stand for where Latin-1 is said: quotes, dashes, the euro sign. Source: WHATWG Encoding Standard, index
/// windows-1252, which it gives the label "latin1"; from memory. Five places are empty there and keep their number.
constexpr std::array<char16_t, 32> latin1Extras{0x20AC, 0x81,   0x201A, 0x0192, 0x201E, 0x2026, 0x2020, 0x2021, 0x02C6, 0x2030, 0x0160,
                                                0x2039, 0x0152, 0x8D,   0x017D, 0x8F,   0x90,   0x2018, 0x2019, 0x201C, 0x201D, 0x2022,
                                                0x2013, 0x2014, 0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0x9D,   0x017E, 0x0178};

std::string fromLatin1(std::string_view bytes)
{
    QString text;
    text.reserve(static_cast<qsizetype>(bytes.size()));
    for (const char c : bytes) {
        const auto byte = static_cast<unsigned char>(c);
        text += QChar{byte >= 0x80 && byte < 0xA0 ? latin1Extras[byte - 0x80U] : char16_t{byte}};
    }
    return text.toStdString();
}

std::string decoded(std::string_view bytes, Encoding& encoding)
{
    constexpr std::string_view utf8Mark = "\xEF\xBB\xBF";
    const bool utf16 = bytes.size() >= 2 && (bytes.substr(0, 2) == "\xFF\xFE" || bytes.substr(0, 2) == "\xFE\xFF");
    if (utf16) {
        encoding = Encoding::utf16;
        QStringDecoder decoder{QStringDecoder::Utf16};
        const QString text = decoder.decode(QByteArrayView{bytes.data(), static_cast<qsizetype>(bytes.size())});
        return text.toStdString();
    }
    if (QUtf8StringView{bytes.data(), static_cast<qsizetype>(bytes.size())}.isValidUtf8()) {
        encoding = bytes.substr(0, utf8Mark.size()) == utf8Mark ? Encoding::utf8Marked : Encoding::utf8;
        return std::string{bytes};
    }
    encoding = Encoding::latin1;
    return fromLatin1(bytes);
}

/// How well the first records fall into columns: none at all is 0, else the share of them with as many cells as the header, and a little
/// for each column, so that of two that fit alike the one with more columns is taken.
double fit(std::string_view text, char separator)
{
    constexpr std::size_t looked = 40;
    const auto records = csv::read(text, separator, looked);
    if (records.empty()) return 0.0;
    std::size_t columns = records.front().cells.size();
    // A title stands above the header: the widest row tells.
    if (columns < 2) columns = std::ranges::max_element(records, {}, [](const csv::Record& record) { return record.cells.size(); })->cells.size();
    if (columns < 2) return 0.0;
    const auto alike = std::ranges::count_if(records, [&](const csv::Record& record) { return record.problem == csv::Problem::none && record.cells.size() == columns; });
    return static_cast<double>(alike) / static_cast<double>(records.size()) + 0.001 * static_cast<double>(std::min<std::size_t>(columns, 100));
}

char recognised(std::string_view text, bool& sure)
{
    char best = ',';
    double bestFit = 0.0, second = 0.0;
    for (const char separator : separators) {
        const double found = fit(text, separator);
        if (found > bestFit) {
            second = bestFit;
            bestFit = found;
            best = separator;
        } else {
            second = std::max(second, found);
        }
    }
    sure = second < 0.9; // another fits as well when nearly all rows fall into its columns too
    return best;
}

std::string trimmed(const std::string& text) { return toQString(text).trimmed().toStdString(); }

bool isBlank(const std::string& cell) { return cell.find_first_not_of(" \t") == std::string::npos; }

std::size_t filled(const csv::Record& record)
{
    return static_cast<std::size_t>(std::ranges::count_if(record.cells, [](const std::string& cell) { return !isBlank(cell); }));
}

bool isDay(const std::string& cell)
{
    return dayAndTimeOf(cell, {}, {DecimalMark::point, DateOrder::dayFirst, false, 2000}) || dayAndTimeOf(cell, {}, {DecimalMark::point, DateOrder::monthFirst, false, 2000});
}

/// Which of the first records names the columns; none: there is an entry in the first row already.
std::optional<std::size_t> headerAmong(const std::vector<csv::Record>& records)
{
    constexpr std::size_t looked = 20;
    constexpr std::size_t aTitle = 2;  // cells: a title and a day, or a sheet's name and a year
    const auto known = [](const csv::Record& record) {
        const auto columns = recogniseColumns(record.cells);
        return std::ranges::count_if(columns, [](const SheetColumn& column) { return column.field.has_value(); });
    };
    const auto& first = records.front();
    if (first.problem == csv::Problem::none && known(first) == 0 && filled(first) > aTitle && std::ranges::any_of(first.cells, isDay)) return std::nullopt;
    std::size_t best = 0;
    for (std::size_t at = 1; at < std::min(looked, records.size()); ++at) {
        const csv::Record& record = records[at];
        if (record.problem != csv::Problem::none || (filled(record) > aTitle && std::ranges::any_of(record.cells, isDay))) break; // the entries begin
        // Names of groups of columns stand above those of the columns too.
        if (known(record) > std::max<std::ptrdiff_t>(1, known(records[best])) && filled(record) > filled(records[best])) best = at;
    }
    return best;
}

}

std::variant<Sheet, QString> readSheet(std::string_view bytes, std::optional<char> separator)
{
    Sheet sheet;
    auto text = std::make_shared<std::string>(decoded(bytes, sheet.encoding));
    if (text->find('\0') != std::string::npos) return ExchangeText::tr("This is not a table of text: it holds zero bytes. Save it as CSV and try again.");
    // Some programs still end lines with CR alone.
    if (text->find('\n') == std::string::npos) std::ranges::replace(*text, '\r', '\n');
    sheet.text = text;
    if (separator) sheet.separator = *separator;
    else sheet.separator = recognised(*text, sheet.separatorIsSure);
    auto records = csv::read(*text, sheet.separator);
    if (records.empty()) return ExchangeText::tr("The file is empty.");
    if (const auto at = headerAmong(records)) {
        const csv::Record& header = records[*at];
        if (header.problem != csv::Problem::none) return ExchangeText::tr("The first row, which names the columns, cannot be read: its quote marks are not in order.");
        for (const std::string& name : header.cells) sheet.header.push_back(trimmed(name));
        sheet.headerLine = header.line;
        const auto end = records.begin() + static_cast<std::ptrdiff_t>(*at);
        sheet.above = static_cast<std::size_t>(std::count_if(records.begin(), end, [](const csv::Record& record) { return filled(record) > 0; }));
        records.erase(records.begin(), end + 1);
    } else {
        for (std::size_t column = 0; column < records.front().cells.size(); ++column) sheet.header.push_back(ExchangeText::tr("column %1").arg(column + 1).toStdString());
        sheet.headerLine = 0;
    }
    // Rows of nothing but separators are what spreadsheets leave behind below a table.
    std::erase_if(records, [](const csv::Record& record) {
        return record.problem == csv::Problem::none && filled(record) == 0;
    });
    sheet.rows = std::move(records);
    return sheet;
}

std::variant<Sheet, QString> readSheetFile(const QString& path, std::optional<char> separator)
{
    const auto cannot = [&](const QString& why) { return ExchangeText::tr("%1 cannot be read: %2").arg(QDir::toNativeSeparators(path), why); };
    QFile file{path};
    if (!file.open(QIODevice::ReadOnly)) return cannot(file.errorString());
    if (file.size() > largestSheetBytes) return cannot(ExchangeText::tr("it is larger than %1 MB.").arg(largestSheetBytes >> 20));
    const QByteArray bytes = file.readAll();
    if (file.error() != QFileDevice::NoError) return cannot(file.errorString());
    auto read = readSheet({bytes.constData(), static_cast<std::size_t>(bytes.size())}, separator);
    if (const auto* why = std::get_if<QString>(&read)) return cannot(*why);
    return read;
}

std::optional<Sheet> readSheetStart(const QString& path, std::optional<char> separator)
{
    QFile file{path};
    if (!file.open(QIODevice::ReadOnly) || file.size() <= firstSheetBytes || file.size() > largestSheetBytes) return std::nullopt;
    QByteArray bytes = file.read(firstSheetBytes);
    // To the end of a line; in UTF-16 its other byte follows or stands before.
    const bool wide = bytes.startsWith("\xFF\xFE") || bytes.startsWith("\xFE\xFF");
    qsizetype end = bytes.lastIndexOf('\n') + 1;
    if (end == 0) return std::nullopt;
    if (wide && end % 2 != 0) ++end;
    bytes.truncate(end);
    auto read = readSheet({bytes.constData(), static_cast<std::size_t>(bytes.size())}, separator);
    auto* sheet = std::get_if<Sheet>(&read);
    if (!sheet) return std::nullopt;
    if (!sheet->rows.empty() && sheet->rows.back().problem == csv::Problem::openQuote) sheet->rows.pop_back(); // it goes on
    sheet->whole = false;
    return std::move(*sheet);
}

QString encodingText(Encoding encoding)
{
    switch (encoding) {
    case Encoding::utf8: return ExchangeText::tr("UTF-8");
    case Encoding::utf8Marked: return ExchangeText::tr("UTF-8 with a mark");
    case Encoding::utf16: return ExchangeText::tr("UTF-16");
    case Encoding::latin1: return ExchangeText::tr("not UTF-8, so read as Latin-1");
    }
    return {};
}

QString separatorText(char separator)
{
    switch (separator) {
    case ';': return ExchangeText::tr("semicolon");
    case '\t': return ExchangeText::tr("tab");
    default: return ExchangeText::tr("comma");
    }
}

}
