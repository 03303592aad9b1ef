#include "ui/trends/trend_data.h"

#include "core/reckoning/drained.h"
#include "ui/trends/trend_words.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <variant>

/// What was measured, put together: drained by weeks and in all, castings by harvest and by year; and the axis that holds it.
namespace tierloam::trends {

namespace {

using std::chrono::days;

constexpr int weeksTogether = 4;

double sumOf(const Point& before, const Point& point, double reckoning::Band::*end)
{
    return before.band.*end + point.band.*end / 7.0 * daysBetween(before.day, point.day);
}

}

std::vector<Bar> drainedWeeks(const household::JournalView& journal, const std::string& stack, const Period& period)
{
    // Whole groups of weeks, so that they can be put together.
    const int length = daysBetween(period.from, period.today) + 1;
    const int count = (length + 7 * weeksTogether - 1) / (7 * weeksTogether) * weeksTogether;
    const Day begin = period.today + days{1} - days{count * 7};
    std::vector<double> sums(static_cast<std::size_t>(count), 0.0);
    bool measured = false;
    for (const journal::Entry& entry : journal.entries) {
        if (entry.stack != stack || entry.date.day < begin || entry.date.day > period.today) continue;
        if (const auto litres = reckoning::drainedBy(entry)) {
            measured = true;
            sums[static_cast<std::size_t>(daysBetween(begin, entry.date.day) / 7)] += *litres;
        }
    }
    std::vector<Bar> bars;
    if (!measured) return bars;
    for (int i = 0; i < count; ++i) bars.push_back({begin + days{i * 7}, 7, sums[static_cast<std::size_t>(i)]});
    return bars;
}

std::vector<Bar> fewerBars(const std::vector<Bar>& weeks, const Period& view)
{
    const Day last = std::min(view.today, view.until);
    const bool together = daysBetween(view.from, last) + 1 > mostWeekBars * 7;
    std::vector<Bar> bars;
    for (std::size_t i = 0; i < weeks.size(); i += together ? weeksTogether : 1) {
        Bar bar = weeks[i];
        if (together) {
            bar.days = 0;
            double litres = 0;
            for (std::size_t k = i; k < std::min(i + weeksTogether, weeks.size()); ++k) {
                bar.days += weeks[k].days;
                litres += weeks[k].perWeek * weeks[k].days / 7.0;
            }
            bar.perWeek = litres * 7.0 / bar.days;
        }
        if (bar.from + days{bar.days} > view.from && bar.from <= last) bars.push_back(bar);
    }
    return bars;
}

std::vector<Bar> drainedBars(const household::JournalView& journal, const std::string& stack, const Period& period)
{
    return fewerBars(drainedWeeks(journal, stack, period), period);
}

std::vector<Total> drainedTotals(const household::JournalView& journal, const std::string& stack, const Period& period)
{
    std::vector<Total> totals{{period.from, 0.0}};
    for (const journal::Entry& entry : journal.entries) {
        if (entry.stack != stack || entry.date.day < period.from || entry.date.day > period.today) continue;
        if (const auto litres = reckoning::drainedBy(entry)) totals.push_back({entry.date.day, totals.back().litres + *litres});
    }
    if (totals.size() == 1) return {};
    totals.push_back({period.today, totals.back().litres});
    return totals;
}

void addUp(Series& series)
{
    const auto sum = [](std::vector<Point>& points, const Point& start) {
        Point before = start;
        for (Point& point : points) {
            if (point.day <= before.day) {
                point = before;
                continue;
            }
            point.band = {sumOf(before, point, &reckoning::Band::p05), sumOf(before, point, &reckoning::Band::p50), sumOf(before, point, &reckoning::Band::p95)};
            before = point;
        }
    };
    if (series.past.empty()) return;
    const Day today = series.past.back().day;
    sum(series.past, Point{series.past.front().day, {}, 0});
    const Point now = series.past.back();
    sum(series.ahead, now);
    const bool anotherPast = !series.changed.empty() && series.changed.front().day < today;
    if (!series.changed.empty()) sum(series.changed, anotherPast ? Point{series.past.front().day, {}, 0} : now);
}

std::vector<Yield> yieldsOf(const household::JournalView& journal, const std::string& name, const reckoning::StackReckoning* stack, const Period& period, bool byYear)
{
    std::vector<Yield> yields;
    std::map<Day, std::size_t> checked; // harvests of one day, in the order of the journal
    for (const journal::Entry& entry : journal.entries) {
        const auto* harvest = std::get_if<journal::Harvest>(&entry.action);
        if (!harvest || entry.stack != name || entry.date.day < period.from || entry.date.day > period.today) continue;
        const auto mass = harvest->taken.mass();
        if (!mass) continue;
        Yield one{entry.date.day, entry.date.day, mass->base(), 0, {}, 1, 0};
        if (harvest->whole() && stack) {
            std::size_t seen = 0;
            for (const reckoning::HarvestCheck& check : stack->harvests) {
                if (check.day != entry.date.day || seen++ < checked[check.day]) continue;
                ++checked[check.day];
                one.expected = check.expectedKg;
                one.checkedKg = one.kg;
                one.checked = 1;
                break;
            }
        }
        yields.push_back(one);
    }
    if (!byYear) return yields;
    std::vector<Yield> years;
    for (const Yield& one : yields) {
        const std::chrono::year year = std::chrono::year_month_day{one.from}.year();
        const Day first{std::chrono::sys_days{year / std::chrono::January / 1}}, last{std::chrono::sys_days{year / std::chrono::December / 31}};
        if (years.empty() || years.back().from != first) years.push_back({first, last, 0, 0, {}, 0, 0});
        Yield& sum = years.back();
        sum.kg += one.kg;
        ++sum.harvests;
        if (!one.expected) continue;
        const reckoning::Band before = sum.expected.value_or(reckoning::Band{}), &more = *one.expected;
        const double middle = before.p50 + more.p50;
        sum.expected = {middle - std::hypot(before.p50 - before.p05, more.p50 - more.p05), middle, middle + std::hypot(before.p95 - before.p50, more.p95 - more.p50)};
        sum.checkedKg += one.checkedKg;
        ++sum.checked;
    }
    return years;
}

double roundBottom(const std::vector<Series>& series)
{
    double bottom = 0.0;
    for (const Series& one : series) {
        for (const auto* points : {&one.past, &one.ahead, &one.changed})
            for (const Point& point : *points) bottom = std::min(bottom, point.band.p05);
        for (const Mark& mark : one.marks) bottom = std::min(bottom, mark.value.value_or(0.0));
        for (const Logged& span : one.logged) bottom = std::min(bottom, span.low);
    }
    return std::floor(bottom / 5.0) * 5.0;
}

constexpr double whiskerRoom = 1.04; ///< the cap of an upright stroke stands below the edge of the plot

double roundTop(const std::vector<Series>& series, double least)
{
    double top = least;
    for (const Series& one : series) {
        for (const auto* points : {&one.past, &one.ahead, &one.changed})
            for (const Point& point : *points) top = std::max(top, point.band.p95);
        for (const Bar& bar : one.bars) top = std::max(top, bar.perWeek);
        for (const Mark& mark : one.marks) top = std::max(top, mark.value.value_or(0.0));
        for (const Logged& span : one.logged) top = std::max(top, span.high);
        for (const Total& total : one.totals) top = std::max(top, total.litres);
        for (const Yield& yield : one.yields) top = std::max({top, yield.kg, yield.expected ? yield.expected->p95 * whiskerRoom : 0.0});
    }
    const double size = std::pow(10.0, std::floor(std::log10(top)));
    for (const double step : {1.0, 1.5, 2.0, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0}) {
        if (top <= step * size * 1.000001) return step * size;
    }
    return 10.0 * size;
}

Ends endsOf(Measure measure, const std::vector<Series>& series)
{
    if (measure != Measure::feedToCast) return {roundBottom(series), roundTop(series, leastTop(measure))};
    constexpr double steps[] = {0.001, 0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100};
    double low = readyAtRatio / 2, high = 1;
    for (const Series& one : series)
        for (const auto* points : {&one.past, &one.ahead, &one.changed})
            for (const Point& point : *points) {
                low = std::min(low, point.band.p50);
                if (point.band.p50 < steps[std::size(steps) - 1]) high = std::max(high, point.band.p50); // a fresh bed has no castings to divide by
            }
    Ends ends{steps[0], steps[std::size(steps) - 1]};
    for (const double step : steps)
        if (step <= low) ends.bottom = step;
    for (const double step : steps)
        if (step >= high) {
            ends.top = step;
            break;
        }
    return ends;
}

}
