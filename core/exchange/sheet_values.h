#pragma once

#include "core/quantity/day_text.h"

#include <optional>
#include <string>
#include <string_view>

/// Numbers and dates as people write them. Whether a comma is a decimal mark and whether the day comes before the month is never guessed:
/// the cells settle it, or it is asked.
namespace tierloam::exchange {

enum class DecimalMark { point, comma };
enum class DateOrder { dayFirst, monthFirst };

/// What the cells of a file say about one way of writing.
template <class Choice>
struct Evidence {
    std::optional<Choice> settled;     ///< some cell can be read in this way alone, and none in the other alone
    int line = 0;                      ///< of the cell that settles it, or the first that leaves it open
    std::string cell;                  ///< that cell
    bool open = false;                 ///< some cell can be read both ways, and none settles it
    bool divided = false;              ///< some cells can only be read one way, others only the other

    bool mustBeAsked() const { return open || divided; }
};

/// Collects what cells say, in the order of the file. Cells that are no number (no date) say nothing.
class DecimalWitness {
public:
    void hear(std::string_view cell, int line);
    Evidence<DecimalMark> evidence() const;

private:
    int pointLine_ = 0, commaLine_ = 0, openLine_ = 0;
    std::string pointCell_, commaCell_, openCell_;
};

class DateWitness {
public:
    void hear(std::string_view cell, int line);
    Evidence<DateOrder> evidence() const;
    bool shortYears() const { return shortYears_; } ///< some year has two digits: its century must be asked

private:
    int dayLine_ = 0, monthLine_ = 0, openLine_ = 0;
    std::string dayCell_, monthCell_, openCell_;
    bool shortYears_ = false;
};

/// How the numbers and dates of a file are to be read.
struct WaysOfWriting {
    DecimalMark decimal = DecimalMark::point;
    DateOrder order = DateOrder::dayFirst;
    bool thousandsTold = false;        ///< people said that the other mark parts thousands: "1,250" may be read
    std::optional<int> century;        ///< 1900 or 2000, for years of two digits; none: such a date is no date

    bool operator==(const WaysOfWriting&) const = default;
};

/// The number as a plain decimal with a point, as the journal takes it; nullopt for what is no number in this way of writing. Thousands
/// marks are read only where nothing else is possible ("1.234,5"), or where people said so.
std::optional<std::string> plainNumber(std::string_view cell, DecimalMark mark, bool thousandsTold = false);

/// "2031-05-01", "1.5.2031", "5/1/2031 6:30 pm"; `time`: a cell of its own for the time of day, may be empty.
std::optional<DayAndTime> dayAndTimeOf(std::string_view date, std::string_view time, const WaysOfWriting& ways);

/// The same with the seconds kept: seconds of the day, none where no time was given.
struct Moment {
    Day day{};
    std::optional<int> secondOfDay;
};
std::optional<Moment> momentOf(std::string_view date, std::string_view time, const WaysOfWriting& ways);

}
