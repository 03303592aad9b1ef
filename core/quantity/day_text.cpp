#include "core/quantity/day_text.h"

namespace tierloam {

namespace {

std::optional<int> digits(std::string_view text)
{
    int value = 0;
    for (const char c : text) {
        if (c < '0' || c > '9') return std::nullopt;
        value = value * 10 + (c - '0');
    }
    return value;
}

std::string padded(int value, int width)
{
    std::string text = std::to_string(value);
    const auto wanted = static_cast<std::size_t>(width);
    if (text.size() < wanted) text.insert(0, wanted - text.size(), '0');
    return text;
}

}

std::string dayText(Day day)
{
    const std::chrono::year_month_day date{day};
    return padded(static_cast<int>(date.year()), 4) + '-' + padded(static_cast<int>(static_cast<unsigned>(date.month())), 2) + '-'
        + padded(static_cast<int>(static_cast<unsigned>(date.day())), 2);
}

std::string dayAndTimeText(const DayAndTime& moment)
{
    if (!moment.minuteOfDay) return dayText(moment.day);
    return dayText(moment.day) + 'T' + padded(*moment.minuteOfDay / 60, 2) + ':' + padded(*moment.minuteOfDay % 60, 2);
}

std::optional<Day> parseDay(std::string_view text)
{
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') return std::nullopt;
    const auto year = digits(text.substr(0, 4));
    const auto month = digits(text.substr(5, 2));
    const auto day = digits(text.substr(8, 2));
    if (!year || !month || !day || *year < firstYear || *year > lastYear) return std::nullopt;
    const std::chrono::year_month_day date{std::chrono::year{*year}, std::chrono::month{static_cast<unsigned>(*month)},
                                           std::chrono::day{static_cast<unsigned>(*day)}};
    if (!date.ok()) return std::nullopt;
    return Day{date};
}

std::optional<DayAndTime> parseDayAndTime(std::string_view text)
{
    const auto day = parseDay(text.substr(0, 10));
    if (!day) return std::nullopt;
    if (text.size() == 10) return DayAndTime{*day, std::nullopt};
    const std::string_view time = text.substr(10);
    const bool withSeconds = time.size() == 9 && time[6] == ':';
    if ((time.size() != 6 && !withSeconds) || time[0] != 'T' || time[3] != ':') return std::nullopt;
    const auto hour = digits(time.substr(1, 2));
    const auto minute = digits(time.substr(4, 2));
    const auto second = withSeconds ? digits(time.substr(7, 2)) : std::optional{0};
    if (!hour || !minute || !second || *hour > 23 || *minute > 59 || *second > 59) return std::nullopt;
    return DayAndTime{*day, *hour * 60 + *minute};
}

int dayOfYear(Day day)
{
    const std::chrono::year_month_day date{day};
    return daysBetween(Day{date.year() / std::chrono::January / 1}, day) + 1;
}

}
