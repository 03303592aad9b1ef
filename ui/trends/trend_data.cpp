#include "ui/trends/trend_data.h"

#include "core/reckoning/drained.h"

#include <algorithm>
#include <cmath>
#include <variant>

namespace tierloam::trends {

namespace {

using std::chrono::days;

std::optional<Point> pointOf(Measure measure, const reckoning::StackEstimate& estimate)
{
    switch (measure) {
    case Measure::processing: return Point{estimate.day, estimate.processingGDryPerDay};
    case Measure::drainage: return Point{estimate.day, estimate.drainedLPerWeek};
    case Measure::colony: return Point{estimate.day, estimate.colonyKg};
    case Measure::temperature: return Point{estimate.day, estimate.binTempC};
    case Measure::moisture:
        // Of the tray that is fed: the highest that does not dry.
        for (auto tray = estimate.slots.rbegin(); tray != estimate.slots.rend(); ++tray)
            if (tray->state != reckoning::TrayState::drying) return Point{estimate.day, tray->moisturePct};
        return std::nullopt;
    case Measure::feedToCast:
        if (estimate.slots.empty()) return std::nullopt;
        return Point{estimate.day, estimate.slots.front().feedToCast, estimate.slots.front().batch};
    case Measure::yield: return std::nullopt; // what is taken is known on its day alone
    }
    return std::nullopt;
}

/// The last of them not after the day.
const Point* lastOf(const std::vector<Point>& points, Day day)
{
    const auto after = std::ranges::upper_bound(points, day, {}, &Point::day);
    return after == points.begin() ? nullptr : &*std::prev(after);
}

/// A sample stands for so many days after it.
constexpr int sampleHolds = 14;

/// Points within the view and the neighbours beyond its ends, so that lines reach the edges.
std::vector<Point> within(const std::vector<Point>& points, const Period& view)
{
    auto first = std::ranges::lower_bound(points, view.from, {}, &Point::day);
    auto last = std::ranges::upper_bound(points, view.until, {}, &Point::day);
    if (first != points.begin() && first != points.end()) --first;
    if (last != points.end() && last != points.begin()) ++last;
    return first < last ? std::vector<Point>{first, last} : std::vector<Point>{};
}

/// The mark that an entry of this stack makes in the chart of the measure; nullopt when it is of no interest there.
std::optional<Mark> markOf(Measure measure, const journal::Entry& entry, const std::string& stack)
{
    const auto mark = [&](MarkKind kind, std::optional<double> value = {}) { return Mark{entry.date.day, kind, value, {}}; };
    const journal::Action& action = entry.action;
    const bool here = entry.stack == stack;
    if (const auto* move = std::get_if<journal::Move>(&action)) {
        return measure == Measure::colony && (here || move->to == stack) ? std::optional{mark(MarkKind::worms)} : std::nullopt;
    }
    if (!here) return std::nullopt;
    if (const auto* event = std::get_if<journal::Event>(&action)) {
        if (measure == Measure::feedToCast || measure == Measure::yield) return std::nullopt;
        Mark seen = mark(MarkKind::event);
        seen.words = QString::fromStdString(event->what);
        return seen;
    }
    switch (measure) {
    case Measure::feedToCast: // the same as of processing
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
    case Measure::yield:
        if (const auto* taken = std::get_if<journal::Harvest>(&action); taken && !taken->taken.mass()) return mark(MarkKind::harvest); // by volume: no bar
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
    const Point* forecast = lastOf(ahead, day);
    const Point* point = forecast ? forecast : lastOf(past, day);
    return point && daysBetween(point->day, day) <= sampleHolds ? point : nullptr;
}

const Point* Series::changedAt(Day day) const
{
    const Point* point = lastOf(changed, day);
    return point && daysBetween(point->day, day) <= sampleHolds ? point : nullptr;
}

const Total* Series::totalAt(Day day) const
{
    const auto after = std::ranges::upper_bound(totals, day, {}, &Total::day);
    return after == totals.begin() || day > totals.back().day ? nullptr : &*std::prev(after);
}

const Yield* Series::yieldAt(Day day) const
{
    const auto found = std::ranges::find_if(yields, [day](const Yield& each) { return each.from <= day && day <= each.until; });
    return found == yields.end() ? nullptr : &*found;
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

std::vector<Logged> fewerLogged(const std::vector<Logged>& held, const Period& period, int most)
{
    const Day last = std::min(period.today, period.until);
    const int length = daysBetween(period.from, last) + 1;
    const int step = std::max(1, (length + most - 1) / most);
    std::vector<Logged> spans;
    for (const Logged& day : held) {
        if (day.day < period.from || day.day > last) continue;
        const Day start = period.from + days{daysBetween(period.from, day.day) / step * step};
        if (spans.empty() || spans.back().day != start) {
            spans.push_back(day);
            spans.back().day = start;
            spans.back().days = step;
            continue;
        }
        Logged& span = spans.back();
        span.low = std::min(span.low, day.low);
        span.high = std::max(span.high, day.high);
        span.mean = (span.mean * span.readings + day.mean * day.readings) / (span.readings + day.readings);
        span.readings += day.readings;
    }
    return spans;
}

std::vector<Logged> loggedOf(store::LoggedKind kind, const std::vector<store::LoggedDay>& held, const Period& period, int most)
{
    std::vector<Logged> all;
    for (const store::LoggedDay& day : held)
        if (day.kind == kind && day.day >= period.from && day.day <= period.today) all.push_back({day.day, 1, day.low, day.mean, day.high, day.readings});
    return fewerLogged(all, period, most);
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

Series wholeSeries(Measure measure, const Source& source, const household::JournalView& journal, const Period& period, Sums sums)
{
    Series series;
    series.stack = source.name;
    series.place = source.place;
    const std::string plain = source.name.toStdString();
    const reckoning::StackReckoning* stack = source.stack;
    const auto add = [measure](std::vector<Point>& points, const reckoning::StackEstimate& estimate) {
        if (const auto point = pointOf(measure, estimate)) points.push_back(*point);
    };
    if (stack) {
        for (const reckoning::StackEstimate& estimate : stack->history)
            if (estimate.day >= period.from && estimate.day <= period.today) add(series.past, estimate);
        if (!series.past.empty()) series.ahead.push_back(series.past.back());
        for (const reckoning::StackEstimate& estimate : stack->forecast.days) {
            const bool later = series.ahead.empty() || estimate.day > series.ahead.back().day;
            if (later && estimate.day <= period.until) add(series.ahead, estimate);
        }
        if (series.ahead.size() < 2) series.ahead.clear();
    }
    if (source.changed && !series.past.empty()) {
        // It leaves the base case today, unless it tells of another past.
        if (!source.changed->empty() && source.changed->front().day > period.today) series.changed.push_back(series.past.back());
        for (const reckoning::StackEstimate& estimate : *source.changed)
            if (estimate.day >= period.from && estimate.day <= period.until) add(series.changed, estimate);
    }
    if (source.logged && measure == Measure::temperature) series.logged = loggedOf(store::LoggedKind::bin, *source.logged, period, daysBetween(period.from, period.today) + 1);
    if (source.logged && measure == Measure::moisture) series.logged = loggedOf(store::LoggedKind::moisture, *source.logged, period, daysBetween(period.from, period.today) + 1);
    if (measure == Measure::drainage && sums.drainageAddedUp) {
        addUp(series);
        series.totals = drainedTotals(journal, plain, period);
    } else if (measure == Measure::drainage) {
        series.bars = drainedWeeks(journal, plain, period);
    }
    if (measure == Measure::yield) series.yields = yieldsOf(journal, plain, stack, period, sums.yieldByYear);
    for (const journal::Entry& entry : journal.entries) {
        if (entry.date.day < period.from || entry.date.day > period.until) continue;
        const auto mark = markOf(measure, entry, plain);
        // The entry of a logged day is the mean of what is drawn there already.
        if (mark && !(mark->kind == MarkKind::reading && series.loggedAt(mark->day))) series.marks.push_back(*mark);
    }
    if (measure == Measure::drainage && stack) {
        for (std::size_t i = 1; i < stack->drains.size(); ++i) {
            const reckoning::DrainCheck& last = stack->drains[i];
            const auto side = reckoning::drainedTwice(stack->drains[i - 1], last, stack->record);
            if (side == reckoning::Drained::asExpected || last.day < period.from || last.day > period.today) continue;
            series.marks.push_back({last.day, side == reckoning::Drained::less ? MarkKind::drainLow : MarkKind::drainHigh, {}, {}});
        }
    }
    return series;
}

Series seenOf(const Series& whole, const Period& view)
{
    Series seen;
    seen.stack = whole.stack;
    seen.place = whole.place;
    seen.past = thinned(within(whole.past, view));
    seen.ahead = thinned(within(whole.ahead, view));
    seen.changed = thinned(within(whole.changed, view));
    seen.bars = fewerBars(whole.bars, view);
    seen.logged = fewerLogged(whole.logged, view);
    seen.totals = whole.totals;
    for (const Yield& each : whole.yields)
        if (each.until >= view.from && each.from <= view.until) seen.yields.push_back(each);
    for (const Mark& mark : whole.marks)
        if (mark.day >= view.from && mark.day <= view.until) seen.marks.push_back(mark);
    return seen;
}

Series seriesOf(Measure measure, const QString& name, int place, const reckoning::StackReckoning* stack,
                const household::JournalView& journal, const Period& period, const std::vector<store::LoggedDay>* logged)
{
    return seenOf(wholeSeries(measure, {name, place, stack, logged, nullptr}, journal, period), period);
}

}
