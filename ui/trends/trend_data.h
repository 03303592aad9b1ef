#pragma once

#include "core/household/household.h"
#include "core/reckoning/reckoning.h"
#include "core/store/logged.h"

#include <QString>

#include <optional>
#include <vector>

/// What the trends page shows, as plain values: made from the reckoning and the journal, drawn and told elsewhere.
namespace tierloam::trends {

enum class Measure { processing, drainage, colony, temperature, moisture };
inline constexpr Measure allMeasures[] = {Measure::processing, Measure::drainage, Measure::colony, Measure::temperature, Measure::moisture};

/// How far back the charts go.
enum class Range { days30, days90, year, twoYears, all };

/// The days that the charts show: the past [from, today] and the forecast up to `until`.
struct Period {
    Day from{}, today{}, until{};
    bool operator==(const Period&) const = default;
};

/// The forecast takes at most a quarter of the width. `first`: the first day of any chosen stack; nothing starts before it, so that a young stack is not a sliver at the edge.
Period periodOf(Range range, Day today, std::optional<Day> first);

/// An estimate on one day, in the measure's base: g dry per day, L per week, kg, °C of the bed, % moisture of the tray that is fed.
struct Point {
    Day day{};
    reckoning::Band band;
};

/// What was drained in so many days from `from` on, as L per week; what a flush poured in is taken off.
struct Bar {
    Day from{};
    int days = 7;
    double perWeek = 0;
};

enum class MarkKind { feed, bedding, turn, harvest, worms, weighing, water, reading };

/// An entry of the journal on the time axis; with a value it stands at its height (a weighing on the colony chart).
struct Mark {
    Day day{};
    MarkKind kind{};
    std::optional<double> value;
};

/// What a logger read on a day, or over a few days where there would be too many: lowest, mean and highest.
struct Logged {
    Day day{};
    int days = 1;
    double low = 0, mean = 0, high = 0;
};

/// One stack's line in one chart.
struct Series {
    QString stack;
    int place = 0;                   ///< of the stack among all, for its colour and dashes
    std::vector<Point> past;         ///< ascending, at most mostPoints
    std::vector<Point> ahead;        ///< the forecast; starts with the last of the past
    std::vector<Bar> bars;           ///< drainage only
    std::vector<Mark> marks;
    std::vector<Logged> logged;      ///< temperature and moisture only; ascending

    bool empty() const { return past.empty() && ahead.empty() && bars.empty() && logged.empty(); }
    /// The estimate on that day: the last point not after it, unless it is older than a sample step.
    const Point* at(Day day) const;
    const Bar* barAt(Day day) const;
    const Logged* loggedAt(Day day) const;
};

inline constexpr std::size_t mostPoints = 1000;

/// `stack` may be nullptr while there is no reckoning yet; then only marks and bars are filled.
Series seriesOf(Measure measure, const QString& name, int place, const reckoning::StackReckoning* stack,
                const household::JournalView& journal, const Period& period, const std::vector<store::LoggedDay>* logged = nullptr);

/// Keeps the highest and the lowest median of each of `most`/2 equal spans of time, and both ends; order is kept.
std::vector<Point> thinned(std::vector<Point> points, std::size_t most = mostPoints);

/// More bars than these are too thin to be read beside each other.
inline constexpr int mostWeekBars = 60;
/// And of strokes of logged days.
inline constexpr int mostLogged = 400;

/// Measured drainage in equal spans that end at `period.today`: weeks, or four weeks when there would be more than mostWeekBars.
std::vector<Bar> drainedBars(const household::JournalView& journal, const std::string& stack, const Period& period);

/// Of the kind, within the past of the period: a day each, or equal spans of days when there would be more than `most`; the lowest of the
/// lows and the highest of the highs are kept.
std::vector<Logged> loggedOf(store::LoggedKind kind, const std::vector<store::LoggedDay>& days, const Period& period, int most = mostLogged);

/// The lower end: 0, or a round number below it where something lies below.
double roundBottom(const std::vector<Series>& series);

/// The upper end of the value axis that holds all series: a round number, at least `least`.
double roundTop(const std::vector<Series>& series, double least);

}
