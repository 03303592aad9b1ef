#pragma once

#include "core/household/household.h"
#include "core/reckoning/reckoning.h"
#include "core/store/logged.h"

#include <QString>

#include <optional>
#include <vector>

/// What the trends page shows, as plain values: made from the reckoning and the journal, drawn and told elsewhere.
namespace tierloam::trends {

enum class Measure { processing, drainage, colony, temperature, moisture, feedToCast, yield };
/// In the order in which they stand on the page and on paper.
inline constexpr Measure allMeasures[] = {Measure::processing, Measure::drainage, Measure::colony, Measure::feedToCast,
                                          Measure::temperature, Measure::moisture, Measure::yield};

/// The line on the feed-to-cast chart: ready at or below it.
inline constexpr double readyAtRatio = 0.10;

/// How far back the charts go.
enum class Range { days30, days90, year, twoYears, all };

/// The days that the charts show: the past [from, today] and the forecast up to `until`.
struct Period {
    Day from{}, today{}, until{};
    bool operator==(const Period&) const = default;
};

/// The forecast takes at most a quarter of the width. `first`: the first day of any chosen stack; nothing starts before it, so that a young stack is not a sliver at the edge.
Period periodOf(Range range, Day today, std::optional<Day> first);

/// An estimate on one day, in the measure's base: g dry per day, L per week (L in all when added up), kg, °C of the bed, % moisture of the
/// tray that is fed, feed-to-cast ratio of the bottom tray.
struct Point {
    Day day{};
    reckoning::Band band;
    int batch = 0;                   ///< of the bottom tray, feed-to-cast only: a line does not run from one batch into the next
};

/// What was drained in so many days from `from` on, as L per week; what a flush poured in is taken off.
struct Bar {
    Day from{};
    int days = 7;
    double perWeek = 0;
};

/// `drainLow`, `drainHigh`: two drains in a row outside what was expected, as the advice counts them.
enum class MarkKind { feed, bedding, turn, harvest, worms, weighing, water, reading, event, drainLow, drainHigh };

/// An entry of the journal on the time axis; with a value it stands at its height (a weighing on the colony chart).
struct Mark {
    Day day{};
    MarkKind kind{};
    std::optional<double> value;
    QString words;                   ///< of an event, as it was typed
};

/// What was drained in all from the beginning of the charts to the end of that day, L.
struct Total {
    Day day{};
    double litres = 0;
};

/// Castings taken by mass, kg, on one day or in one civil year.
struct Yield {
    Day from{}, until{};             ///< the same day for one harvest
    double kg = 0;                   ///< of all of them
    double checkedKg = 0;            ///< of those whose mass was expected: whole ones
    std::optional<reckoning::Band> expected; ///< of these
    int harvests = 1, checked = 0;

    bool ofYear() const { return from != until; }
};

/// What a logger read on a day, or over a few days where there would be too many: lowest, mean and highest.
struct Logged {
    Day day{};
    int days = 1;
    double low = 0, mean = 0, high = 0;
    int readings = 1;
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
    std::vector<Total> totals;       ///< drainage added up only; then there are no bars
    std::vector<Yield> yields;       ///< yield only; ascending
    std::vector<Point> changed;      ///< as `ahead`, with a change that is tried; another past begins in the past

    bool empty() const { return past.empty() && ahead.empty() && bars.empty() && logged.empty() && totals.empty() && yields.empty(); }
    /// The estimate on that day: the last point not after it, unless it is older than a sample step.
    const Point* at(Day day) const;
    const Point* changedAt(Day day) const;
    const Total* totalAt(Day day) const;
    const Yield* yieldAt(Day day) const;
    const Bar* barAt(Day day) const;
    const Logged* loggedAt(Day day) const;
};

inline constexpr std::size_t mostPoints = 1000;

/// What one stack has to show in a measure.
struct Source {
    QString name;
    int place = 0;
    const reckoning::StackReckoning* stack = nullptr; ///< nullptr while there is no reckoning yet; then only marks, bars and what was taken are filled
    const std::vector<store::LoggedDay>* logged = nullptr;
    const std::vector<reckoning::StackEstimate>* changed = nullptr; ///< with a change that is tried
};

/// How a measure is summed.
struct Sums {
    bool drainageAddedUp = false;    ///< from the first day of the charts on
    bool yieldByYear = false;
    bool operator==(const Sums&) const = default;
};

/// All of the period, as fine as it is known: weeks, days, every estimate.
Series wholeSeries(Measure measure, const Source& source, const household::JournalView& journal, const Period& period, Sums sums = {});

/// What of it is seen in a part of the period, at most mostPoints, mostWeekBars and mostLogged; the lines reach the edges.
Series seenOf(const Series& whole, const Period& view);

/// Both in one, for the whole period. `stack` may be nullptr.
Series seriesOf(Measure measure, const QString& name, int place, const reckoning::StackReckoning* stack,
                const household::JournalView& journal, const Period& period, const std::vector<store::LoggedDay>* logged = nullptr);

/// Keeps the highest and the lowest median of each of `most`/2 equal spans of time, and both ends; order is kept.
std::vector<Point> thinned(std::vector<Point> points, std::size_t most = mostPoints);

/// More bars than these are too thin to be read beside each other.
inline constexpr int mostWeekBars = 60;
/// And of strokes of logged days.
inline constexpr int mostLogged = 400;

/// Measured drainage in weeks that end at `period.today`.
std::vector<Bar> drainedWeeks(const household::JournalView& journal, const std::string& stack, const Period& period);
/// Four weeks in one where the view would hold more than mostWeekBars.
std::vector<Bar> fewerBars(const std::vector<Bar>& weeks, const Period& view);
/// Both in one.
std::vector<Bar> drainedBars(const household::JournalView& journal, const std::string& stack, const Period& period);
/// What was drained in all, from `period.from` on; empty when nothing was measured.
std::vector<Total> drainedTotals(const household::JournalView& journal, const std::string& stack, const Period& period);
/// A flow per week turned into a sum from its first day on; its ends are summed as if every week erred to the same side.
void addUp(Series& series);
/// Castings of the past of the period by mass; `stack` may be nullptr. By year: what was expected of several harvests has the root of the
/// summed squares of their half widths, since they err apart.
std::vector<Yield> yieldsOf(const household::JournalView& journal, const std::string& name, const reckoning::StackReckoning* stack, const Period& period, bool byYear);

/// Of the kind, within the past of the period: a day each, or equal spans of days when there would be more than `most`; the lowest of the
/// lows and the highest of the highs are kept.
std::vector<Logged> loggedOf(store::LoggedKind kind, const std::vector<store::LoggedDay>& held, const Period& period, int most = mostLogged);

/// Strokes put together in equal spans of days, at most `most` within the past of the period.
std::vector<Logged> fewerLogged(const std::vector<Logged>& held, const Period& period, int most = mostLogged);

/// The lower end: 0, or a round number below it where something lies below.
double roundBottom(const std::vector<Series>& series);

/// The upper end of the value axis that holds all series: a round number, at least `least`.
double roundTop(const std::vector<Series>& series, double least);

/// Both ends of the value axis. Feed-to-cast, on a log axis: 1, 2 or 5 of a decade around what its medians are, from at most half the ready line.
struct Ends { double bottom = 0, top = 1; };
Ends endsOf(Measure measure, const std::vector<Series>& series);

}
