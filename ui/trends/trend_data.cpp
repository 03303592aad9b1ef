#include "ui/trends/trend_data.h"

#include <algorithm>
#include <cmath>
#include <variant>

namespace tierloam::trends {

namespace {

using std::chrono::days;

reckoning::Band bandOf(Measure measure, const reckoning::StackEstimate& estimate)
{
    switch (measure) {
    case Measure::processing: return estimate.processingGDryPerDay;
    case Measure::drainage: return estimate.drainedLPerWeek;
    case Measure::colony: return estimate.colonyKg;
    case Measure::temperature: return estimate.binTempC;
    case Measure::moisture:
        // Of the tray that is fed: the highest that does not dry.
        for (auto tray = estimate.slots.rbegin(); tray != estimate.slots.rend(); ++tray)
            if (tray->state != reckoning::TrayState::drying) return tray->moisturePct;
        return {};
    }
    return {};
}

/// The mark that an entry of this stack makes in the chart of the measure; nullopt when it is of no interest there.
std::optional<Mark> markOf(Measure measure, const journal::Entry& entry, const std::string& stack)
{
    const auto mark = [&](MarkKind kind, std::optional<double> value = {}) { return Mark{entry.date.day, kind, value}; };
    const journal::Action& action = entry.action;
    const bool here = entry.stack == stack;
    if (const auto* move = std::get_if<journal::Move>(&action)) {
        return measure == Measure::colony && (here || move->to == stack) ? std::optional{mark(MarkKind::worms)} : std::nullopt;
    }
    if (!here) return std::nullopt;
    switch (measure) {
    case Measure::processing:
        if (std::holds_alternative<journal::Feed>(action)) return mark(MarkKind::feed);
        if (std::holds_alternative<journal::Bed>(action)) return mark(MarkKind::bedding);
        if (std::holds_alternative<journal::Rotate>(action)) return mark(MarkKind::turn);
        if (std::holds_alternative<journal::Harvest>(action)) return mark(MarkKind::harvest);
        break;
    case Measure::drainage:
        if (std::holds_alternative<journal::Water>(action)) return mark(MarkKind::water);
        break; // what was drained is told by the bars
    case Measure::colony:
        if (std::holds_alternative<journal::Stock>(action) || std::holds_alternative<journal::Remove>(action)) return mark(MarkKind::worms);
        if (std::holds_alternative<journal::Harvest>(action)) return mark(MarkKind::harvest);
        if (const auto* weigh = std::get_if<journal::Weigh>(&action)) {
            const auto mass = weigh->worms.mass();
            const double share = weigh->share ? weigh->share->fraction() : 1.0;
            if (mass && share > 0) return mark(MarkKind::weighing, mass->base() / share);
        }
        break;
    case Measure::temperature:
        if (const auto* reading = std::get_if<journal::Reading>(&action); reading && reading->bin) return mark(MarkKind::reading, reading->bin->base());
        break;
    case Measure::moisture:
        if (const auto* reading = std::get_if<journal::Reading>(&action); reading && reading->moisture) return mark(MarkKind::reading, reading->moisture->percent());
        break;
    }
    return std::nullopt;
}

}

Period periodOf(Range range, Day today, std::optional<Day> first)
{
    int back = 0, ahead = 0;
    switch (range) {
    case Range::days30: back = 30; ahead = 14; break;
    case Range::days90: back = 90; ahead = 28; break;
    case Range::year: back = 365; ahead = 91; break;
    case Range::twoYears: back = 730; ahead = 182; break;
    case Range::all: back = 73000; ahead = 182; break;
    }
    Day from = today - days{back};
    if (first) from = std::max(from, *first - days{std::max(1, daysBetween(*first, today) / 60)}); // room for the signs of the first day
    else if (range == Range::all) from = today - days{30};
    from = std::min(from, today - days{7});
    ahead = std::min(ahead, std::max(14, daysBetween(from, today) / 3)); // the past has most of the room
    return {from, today, today + days{ahead}};
}

const Point* Series::at(Day day) const
{
    const auto last = [day](const std::vector<Point>& points) -> const Point* {
        const auto after = std::ranges::upper_bound(points, day, {}, &Point::day);
        return after == points.begin() ? nullptr : &*std::prev(after);
    };
    const Point* forecast = last(ahead);
    const Point* point = forecast ? forecast : last(past);
    return point && daysBetween(point->day, day) <= 14 ? point : nullptr;
}

const Bar* Series::barAt(Day day) const
{
    for (const Bar& bar : bars) {
        if (bar.from <= day && day < bar.from + days{bar.days}) return &bar;
    }
    return nullptr;
}

const Logged* Series::loggedAt(Day day) const
{
    const auto after = std::ranges::upper_bound(logged, day, {}, &Logged::day);
    if (after == logged.begin()) return nullptr;
    const Logged& found = *std::prev(after);
    return daysBetween(found.day, day) < found.days ? &found : nullptr;
}

std::vector<Logged> loggedOf(store::LoggedKind kind, const std::vector<store::LoggedDay>& held, const Period& period, int most)
{
    const int length = daysBetween(period.from, period.today) + 1;
    const int step = (length + most - 1) / most;
    std::vector<Logged> spans;
    int readings = 0;
    for (const store::LoggedDay& day : held) {
        if (day.kind != kind || day.day < period.from || day.day > period.today) continue;
        const Day start = period.from + days{daysBetween(period.from, day.day) / step * step};
        if (spans.empty() || spans.back().day != start) {
            spans.push_back({start, step, day.low, day.mean, day.high});
            readings = day.readings;
            continue;
        }
        Logged& span = spans.back();
        span.low = std::min(span.low, day.low);
        span.high = std::max(span.high, day.high);
        span.mean = (span.mean * readings + day.mean * day.readings) / (readings + day.readings);
        readings += day.readings;
    }
    return spans;
}

std::vector<Point> thinned(std::vector<Point> points, std::size_t most)
{
    if (points.size() <= most || most < 4) return points;
    const std::size_t spans = (most - 2) / 2;
    const double first = static_cast<double>(points.front().day.time_since_epoch().count());
    const double length = static_cast<double>(points.back().day.time_since_epoch().count()) - first + 1.0;
    std::vector<std::size_t> keep{0};
    std::size_t i = 1;
    const std::size_t end = points.size() - 1;
    while (i < end) {
        const auto spanOf = [&](std::size_t k) {
            return static_cast<std::size_t>((static_cast<double>(points[k].day.time_since_epoch().count()) - first) / length * static_cast<double>(spans));
        };
        const std::size_t span = spanOf(i);
        std::size_t low = i, high = i;
        for (; i < end && spanOf(i) == span; ++i) {
            if (points[i].band.p50 < points[low].band.p50) low = i;
            if (points[i].band.p50 > points[high].band.p50) high = i;
        }
        keep.push_back(std::min(low, high));
        if (low != high) keep.push_back(std::max(low, high));
    }
    keep.push_back(end);
    std::vector<Point> kept;
    kept.reserve(keep.size());
    for (const std::size_t index : keep) kept.push_back(points[index]);
    return kept;
}

std::vector<Bar> drainedBars(const household::JournalView& journal, const std::string& stack, const Period& period)
{
    const int length = daysBetween(period.from, period.today) + 1;
    const int step = length > mostWeekBars * 7 ? 28 : 7;
    const int count = (length + step - 1) / step;
    const Day begin = period.today + days{1} - days{count * step};
    std::vector<double> sums(static_cast<std::size_t>(count), 0.0);
    bool measured = false;
    for (const journal::Entry& entry : journal.entries) {
        if (entry.stack != stack || entry.date.day < begin || entry.date.day > period.today) continue;
        double volume = 0;
        if (const auto* drain = std::get_if<journal::Drain>(&entry.action)) {
            if (!drain->volume) continue;
            const auto asVolume = drain->volume->volume();
            if (!asVolume) continue;
            volume = asVolume->base();
        } else if (const auto* flush = std::get_if<journal::Flush>(&entry.action)) {
            const auto poured = flush->poured.volume();
            if (!flush->drained || !poured) continue;
            volume = std::max(0.0, flush->drained->base() - poured->base());
        } else {
            continue;
        }
        measured = true;
        sums[static_cast<std::size_t>(daysBetween(begin, entry.date.day) / step)] += volume;
    }
    std::vector<Bar> bars;
    if (!measured) return bars;
    for (int i = 0; i < count; ++i) {
        bars.push_back({begin + days{i * step}, step, sums[static_cast<std::size_t>(i)] * 7.0 / step});
    }
    return bars;
}

Series seriesOf(Measure measure, const QString& name, int place, const reckoning::StackReckoning* stack,
                const household::JournalView& journal, const Period& period, const std::vector<store::LoggedDay>* logged)
{
    Series series;
    series.stack = name;
    series.place = place;
    const std::string plain = name.toStdString();
    if (stack) {
        for (const reckoning::StackEstimate& estimate : stack->history) {
            if (estimate.day >= period.from && estimate.day <= period.today) series.past.push_back({estimate.day, bandOf(measure, estimate)});
        }
        if (!series.past.empty()) series.ahead.push_back(series.past.back());
        for (const reckoning::StackEstimate& estimate : stack->forecast.days) {
            const bool later = series.ahead.empty() || estimate.day > series.ahead.back().day;
            if (later && estimate.day <= period.until) series.ahead.push_back({estimate.day, bandOf(measure, estimate)});
        }
        if (series.ahead.size() < 2) series.ahead.clear();
        series.past = thinned(std::move(series.past));
    }
    if (logged && measure == Measure::temperature) series.logged = loggedOf(store::LoggedKind::bin, *logged, period);
    if (logged && measure == Measure::moisture) series.logged = loggedOf(store::LoggedKind::moisture, *logged, period);
    if (measure == Measure::drainage) series.bars = drainedBars(journal, plain, period);
    for (const journal::Entry& entry : journal.entries) {
        if (entry.date.day < period.from || entry.date.day > period.until) continue;
        const auto mark = markOf(measure, entry, plain);
        // The entry of a logged day is the mean of what is drawn there already.
        if (mark && !(mark->kind == MarkKind::reading && series.loggedAt(mark->day))) series.marks.push_back(*mark);
    }
    return series;
}

double roundBottom(const std::vector<Series>& series)
{
    double bottom = 0.0;
    for (const Series& one : series) {
        for (const Point& point : one.past) bottom = std::min(bottom, point.band.p05);
        for (const Point& point : one.ahead) bottom = std::min(bottom, point.band.p05);
        for (const Mark& mark : one.marks) bottom = std::min(bottom, mark.value.value_or(0.0));
        for (const Logged& span : one.logged) bottom = std::min(bottom, span.low);
    }
    return std::floor(bottom / 5.0) * 5.0;
}

double roundTop(const std::vector<Series>& series, double least)
{
    double top = least;
    for (const Series& one : series) {
        for (const Point& point : one.past) top = std::max(top, point.band.p95);
        for (const Point& point : one.ahead) top = std::max(top, point.band.p95);
        for (const Bar& bar : one.bars) top = std::max(top, bar.perWeek);
        for (const Mark& mark : one.marks) top = std::max(top, mark.value.value_or(0.0));
        for (const Logged& span : one.logged) top = std::max(top, span.high);
    }
    const double size = std::pow(10.0, std::floor(std::log10(top)));
    for (const double step : {1.0, 1.5, 2.0, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0}) {
        if (top <= step * size * 1.000001) return step * size;
    }
    return 10.0 * size;
}

}
