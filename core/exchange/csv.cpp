#include "core/exchange/csv.h"

#include <QUtf8StringView>

#include <algorithm>

namespace tierloam::exchange::csv {

namespace {

bool isUtf8(std::string_view text) { return QUtf8StringView{text.data(), static_cast<qsizetype>(text.size())}.isValidUtf8(); }

class Reader {
public:
    Reader(std::string_view text, char separator) : text_{text}, separator_{separator} {}

    std::vector<Record> all(std::size_t most)
    {
        constexpr std::string_view byteOrderMark = "\xEF\xBB\xBF";
        if (text_.substr(0, byteOrderMark.size()) == byteOrderMark) at_ = byteOrderMark.size();
        std::vector<Record> records;
        while (at_ < text_.size() && records.size() < most) {
            if (lineEndHere()) {
                skipLineEnd();
                continue;
            }
            records.push_back(record());
        }
        return records;
    }

private:
    bool lineEndHere() const { return at_ == text_.size() || text_[at_] == '\n' || (text_[at_] == '\r' && at_ + 1 < text_.size() && text_[at_ + 1] == '\n'); }

    void skipLineEnd()
    {
        if (at_ == text_.size()) return;
        at_ += text_[at_] == '\r' ? 2 : 1;
        ++line_;
    }

    Record record()
    {
        Record record;
        record.line = line_;
        const std::size_t start = at_;
        while (true) {
            record.cells.push_back(at_ < text_.size() && text_[at_] == '"' ? quoted(record.problem) : plain(record.problem));
            if (at_ < text_.size() && text_[at_] == separator_) {
                ++at_;
                continue;
            }
            break;
        }
        record.raw = text_.substr(start, at_ - start);
        skipLineEnd();
        if (!isUtf8(record.raw)) record.problem = Problem::notUtf8;
        return record;
    }

    std::string plain(Problem& problem)
    {
        const std::size_t start = at_;
        while (!lineEndHere() && text_[at_] != separator_) {
            if (text_[at_] == '"') problem = Problem::strayQuote;
            ++at_;
        }
        return std::string{text_.substr(start, at_ - start)};
    }

    std::string quoted(Problem& problem)
    {
        std::string cell;
        ++at_;
        while (at_ < text_.size()) {
            const char c = text_[at_++];
            if (c == '"') {
                if (at_ < text_.size() && text_[at_] == '"') {
                    cell += '"';
                    ++at_;
                    continue;
                }
                if (!lineEndHere() && text_[at_] != separator_) {
                    problem = Problem::strayQuote;
                    cell += plain(problem);
                }
                return cell;
            }
            if (c == '\n') ++line_;
            cell += c;
        }
        problem = Problem::openQuote;
        return cell;
    }

    std::string_view text_;
    char separator_;
    std::size_t at_ = 0;
    int line_ = 1;
};

}

std::vector<Record> read(std::string_view text, char separator, std::size_t most) { return Reader{text, separator}.all(most); }

void writeRecord(std::string& out, const std::vector<std::string>& cells, char separator)
{
    const std::string special = std::string{separator} + ",\"\r\n";
    for (std::size_t i = 0; i < cells.size(); ++i) {
        if (i > 0) out += separator;
        const std::string& cell = cells[i];
        if (cell.find_first_of(special) == std::string::npos) {
            out += cell;
            continue;
        }
        out += '"';
        for (const char c : cell) {
            if (c == '"') out += '"';
            out += c;
        }
        out += '"';
    }
    out += "\r\n";
}

}
