#include "core/exchange/sheet.h"

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
    if (records.empty() || records.front().cells.size() < 2) return 0.0;
    const std::size_t columns = records.front().cells.size();
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
    csv::Record& header = records.front();
    if (header.problem != csv::Problem::none) return ExchangeText::tr("The first row, which names the columns, cannot be read: its quote marks are not in order.");
    for (const std::string& name : header.cells) sheet.header.push_back(trimmed(name));
    sheet.headerLine = header.line;
    records.erase(records.begin());
    // Rows of nothing but separators are what spreadsheets leave behind below a table.
    std::erase_if(records, [](const csv::Record& record) {
        return record.problem == csv::Problem::none && std::ranges::all_of(record.cells, [](const std::string& cell) { return cell.find_first_not_of(" \t") == std::string::npos; });
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
