#include "core/exchange/sheet_values.h"

#include <array>
#include <charconv>
#include <vector>

namespace tierloam::exchange {

namespace {

bool isDigit(char c) { return c >= '0' && c <= '9'; }

std::string_view trimmed(std::string_view text)
{
    const auto blank = [](char c) { return c == ' ' || c == '\t'; };
    while (!text.empty() && blank(text.front())) text.remove_prefix(1);
    while (!text.empty() && blank(text.back())) text.remove_suffix(1);
    return text;
}

/// A number taken apart at its marks: groups of digits, and the mark before each but the first.
struct Groups {
    bool negative = false;
    std::vector<std::string_view> digits;
    std::string marks;
};

std::optional<Groups> groupsOf(std::string_view cell)
{
    std::string_view text = trimmed(cell);
    Groups groups;
    constexpr std::string_view longMinus = "\xE2\x88\x92";
    if (text.starts_with(longMinus)) {
        groups.negative = true;
        text.remove_prefix(longMinus.size());
    } else if (!text.empty() && (text.front() == '-' || text.front() == '+')) {
        groups.negative = text.front() == '-';
        text.remove_prefix(1);
    }
    if (text.empty()) return std::nullopt;
    std::size_t start = 0;
    for (std::size_t at = 0; at <= text.size(); ++at) {
        if (at < text.size() && isDigit(text[at])) continue;
        if (at < text.size() && text[at] != '.' && text[at] != ',') return std::nullopt;
        groups.digits.push_back(text.substr(start, at - start));
        if (at < text.size()) groups.marks += text[at];
        start = at + 1;
    }
    for (std::size_t i = 0; i < groups.digits.size(); ++i) {
        const bool mayBeEmpty = i == 0 && groups.digits.size() == 2; // ".5"
        if (groups.digits[i].empty() && !mayBeEmpty) return std::nullopt;
    }
    return groups;
}

/// Whether the groups between the first and `count` look like thousands.
bool areThousands(const Groups& groups, std::size_t count)
{
    const std::string_view first = groups.digits.front();
    if (first.empty() || first.size() > 3 || first.front() == '0') return false;
    for (std::size_t i = 1; i < count; ++i)
        if (groups.digits[i].size() != 3) return false;
    return true;
}

enum class Says { nothing, point, comma, open };

Says whatItSays(const Groups& groups)
{
    if (groups.marks.empty()) return Says::nothing;
    const char last = groups.marks.back();
    const auto decimal = [](char mark) { return mark == '.' ? Says::point : Says::comma; };
    const auto thousands = [](char mark) { return mark == '.' ? Says::comma : Says::point; };
    if (groups.marks.size() == 1) return groups.digits[1].size() == 3 && areThousands(groups, 2) ? Says::open : decimal(last);
    if (groups.marks.find_first_not_of(last) == std::string::npos) return areThousands(groups, groups.digits.size()) ? thousands(last) : Says::nothing;
    const bool oneAtTheEnd = groups.marks.find(last) == groups.marks.size() - 1;
    return oneAtTheEnd && areThousands(groups, groups.digits.size() - 1) ? decimal(last) : Says::nothing;
}

/// The parts of a date, and what follows it.
struct DateParts {
    std::array<int, 3> number{};
    std::array<std::size_t, 3> length{};
    std::string_view rest;
};

std::optional<DateParts> datePartsOf(std::string_view cell)
{
    std::string_view text = trimmed(cell);
    DateParts parts;
    char mark = 0;
    for (std::size_t i = 0; i < 3; ++i) {
        std::size_t length = 0;
        while (length < text.size() && isDigit(text[length])) ++length;
        if (length == 0 || length > 4) return std::nullopt;
        std::from_chars(text.data(), text.data() + length, parts.number[i]);
        parts.length[i] = length;
        text.remove_prefix(length);
        if (i == 2) break;
        if (text.empty() || std::string_view{"-/."}.find(text.front()) == std::string_view::npos || (i == 1 && text.front() != mark)) return std::nullopt;
        mark = text.front();
        text.remove_prefix(1);
        while (!text.empty() && text.front() == ' ') text.remove_prefix(1); // "1. 5. 2031"
    }
    parts.rest = text;
    return parts;
}

bool yearFirst(const DateParts& parts) { return parts.length[0] == 4; }
bool yearLast(const DateParts& parts) { return parts.length[0] <= 2 && parts.length[1] <= 2 && (parts.length[2] == 4 || parts.length[2] == 2); }

std::optional<Day> dayOf(int year, int month, int day)
{
    if (year < firstYear || year > lastYear || month < 1 || day < 1) return std::nullopt;
    const std::chrono::year_month_day date{std::chrono::year{year}, std::chrono::month{static_cast<unsigned>(month)}, std::chrono::day{static_cast<unsigned>(day)}};
    return date.ok() ? std::optional{Day{date}} : std::nullopt;
}

std::optional<Day> dayOf(const DateParts& parts, const WaysOfWriting& ways)
{
    if (yearFirst(parts)) return dayOf(parts.number[0], parts.number[1], parts.number[2]);
    if (!yearLast(parts)) return std::nullopt;
    int year = parts.number[2];
    if (parts.length[2] == 2) {
        if (!ways.century) return std::nullopt;
        year += *ways.century;
    }
    const bool dayFirst = ways.order == DateOrder::dayFirst;
    return dayOf(year, parts.number[dayFirst ? 1 : 0], parts.number[dayFirst ? 0 : 1]);
}

/// "18:30", "6:30:05 pm", "18:30:00.000", "18:30Z" (the zone is left out: a journal keeps local time). −1: no time of day.
int secondsOf(std::string_view text)
{
    text = trimmed(text);
    std::array<int, 3> number{};
    std::size_t count = 0;
    while (count < 3) {
        std::size_t length = 0;
        while (length < text.size() && isDigit(text[length])) ++length;
        if (length == 0 || length > 2) return -1;
        std::from_chars(text.data(), text.data() + length, number[count++]);
        text.remove_prefix(length);
        if (text.empty() || text.front() != ':') break;
        text.remove_prefix(1);
    }
    if (count < 2) return -1;
    if (count == 3 && !text.empty() && (text.front() == '.' || text.front() == ',')) {
        text.remove_prefix(1);
        while (!text.empty() && isDigit(text.front())) text.remove_prefix(1);
    }
    text = trimmed(text);
    auto& hour = number[0];
    if (text.size() == 2 && (text[1] == 'm' || text[1] == 'M')) {
        const char half = text[0];
        if (hour < 1 || hour > 12 || std::string_view{"aApP"}.find(half) == std::string_view::npos) return -1;
        hour = hour % 12 + (half == 'p' || half == 'P' ? 12 : 0);
    } else if (text != "Z" && !text.empty()) {
        return -1;
    }
    if (hour > 23 || number[1] > 59 || number[2] > 59) return -1;
    return (hour * 60 + number[1]) * 60 + number[2];
}

template <class Choice>
Evidence<Choice> weighed(Choice one, int oneLine, const std::string& oneCell, Choice other, int otherLine, const std::string& otherCell, int openLine, const std::string& openCell)
{
    Evidence<Choice> evidence;
    evidence.divided = oneLine > 0 && otherLine > 0;
    evidence.open = !oneLine && !otherLine && openLine > 0;
    if (evidence.divided) {
        const bool later = otherLine > oneLine; // the second of the two is where it comes to light
        evidence.line = later ? otherLine : oneLine;
        evidence.cell = later ? otherCell : oneCell;
    } else if (evidence.open) {
        evidence.line = openLine;
        evidence.cell = openCell;
    } else if (oneLine > 0 || otherLine > 0) {
        evidence.settled = oneLine > 0 ? one : other;
        evidence.line = oneLine > 0 ? oneLine : otherLine;
        evidence.cell = oneLine > 0 ? oneCell : otherCell;
    }
    return evidence;
}

void keepFirst(int& line, std::string& cell, int newLine, std::string_view newCell)
{
    if (line > 0) return;
    line = newLine;
    cell = trimmed(newCell);
}

}

void DecimalWitness::hear(std::string_view cell, int line)
{
    const auto groups = groupsOf(cell);
    if (!groups) return;
    switch (whatItSays(*groups)) {
    case Says::nothing: break;
    case Says::point: keepFirst(pointLine_, pointCell_, line, cell); break;
    case Says::comma: keepFirst(commaLine_, commaCell_, line, cell); break;
    case Says::open: keepFirst(openLine_, openCell_, line, cell); break;
    }
}

Evidence<DecimalMark> DecimalWitness::evidence() const
{
    return weighed(DecimalMark::point, pointLine_, pointCell_, DecimalMark::comma, commaLine_, commaCell_, openLine_, openCell_);
}

void DateWitness::hear(std::string_view cell, int line)
{
    const auto parts = datePartsOf(cell);
    if (!parts || yearFirst(*parts) || !yearLast(*parts)) return;
    shortYears_ = shortYears_ || parts->length[2] == 2;
    const auto [a, b] = std::pair{parts->number[0], parts->number[1]};
    if (a < 1 || b < 1 || (a > 12 && b > 12) || a > 31 || b > 31 || a == b) return; // no date, or the same either way
    if (a > 12) keepFirst(dayLine_, dayCell_, line, cell);
    else if (b > 12) keepFirst(monthLine_, monthCell_, line, cell);
    else keepFirst(openLine_, openCell_, line, cell);
}

Evidence<DateOrder> DateWitness::evidence() const
{
    return weighed(DateOrder::dayFirst, dayLine_, dayCell_, DateOrder::monthFirst, monthLine_, monthCell_, openLine_, openCell_);
}

std::optional<std::string> plainNumber(std::string_view cell, DecimalMark mark, bool thousandsTold)
{
    const auto groups = groupsOf(cell);
    if (!groups) return std::nullopt;
    const char decimal = mark == DecimalMark::point ? '.' : ',';
    std::size_t whole = groups->digits.size(); // groups before the decimal mark
    if (!groups->marks.empty()) {
        const bool ends = groups->marks.back() == decimal;
        if (ends) --whole;
        // One mark that is not the decimal one may be meant as a thousands mark, or be a slip: it is not read.
        if (!ends && groups->marks.size() == 1 && !thousandsTold) return std::nullopt;
        if (groups->marks.find(decimal) < groups->marks.size() - (ends ? 1 : 0)) return std::nullopt;
        if (whole > 1 && !areThousands(*groups, whole)) return std::nullopt;
    }
    std::string plain = groups->negative ? "-" : "";
    for (std::size_t i = 0; i < whole; ++i) plain += groups->digits[i];
    if (plain.empty() || plain == "-") plain += '0';
    if (whole < groups->digits.size()) plain.append(1, '.').append(groups->digits.back());
    return plain;
}

std::optional<Moment> momentOf(std::string_view date, std::string_view time, const WaysOfWriting& ways)
{
    const auto parts = datePartsOf(date);
    if (!parts) return std::nullopt;
    const auto day = dayOf(*parts, ways);
    if (!day) return std::nullopt;
    Moment moment{*day, std::nullopt};
    std::string_view rest = parts->rest;
    if (!rest.empty() && (rest.front() == 'T' || rest.front() == ' ' || rest.front() == ',')) rest.remove_prefix(1);
    else if (!rest.empty()) return std::nullopt;
    rest = trimmed(rest);
    if (rest.empty()) rest = trimmed(time);
    if (rest.empty()) return moment;
    const int seconds = secondsOf(rest);
    if (seconds < 0) return std::nullopt;
    moment.secondOfDay = seconds;
    return moment;
}

std::optional<DayAndTime> dayAndTimeOf(std::string_view date, std::string_view time, const WaysOfWriting& ways)
{
    const auto moment = momentOf(date, time, ways);
    if (!moment) return std::nullopt;
    DayAndTime made{moment->day, std::nullopt};
    if (moment->secondOfDay) made.minuteOfDay = *moment->secondOfDay / 60;
    return made;
}

}
