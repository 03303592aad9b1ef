#include "ui/trends/trend_sentence.h"

#include "ui/common/formats.h"
#include "ui/common/volumes.h"
#include "ui/trends/trend_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace tierloam::trends {

namespace {

struct TrendWords {
    Q_DECLARE_TR_FUNCTIONS(TrendWords)
};

/// All days shown have gone by.
bool isPast(const Period& view) { return view.until < view.today; }

/// Of days that stand beyond the edges, only so that a line reaches them, nothing is told; the last before the end stands for it where none is between.
std::vector<Point> between(const std::vector<Point>& points, const Period& view)
{
    const auto last = std::ranges::upper_bound(points, view.until, {}, &Point::day);
    auto first = std::ranges::lower_bound(points, view.from, {}, &Point::day);
    if (first >= last && last != points.begin()) first = std::prev(last);
    return first < last ? std::vector<Point>{first, last} : std::vector<Point>{};
}

QString pointText(Measure measure, const Point& point, bool addedUp) { return addedUp ? ui::volumeBand(point.band) : valueText(measure, point.band); }

/// How the median moved over the past that is shown; small moves are not worth a word.
QString moveOf(Measure measure, const std::vector<Point>& past, const Period& view)
{
    if (past.size() < 2) return {};
    const Point& first = past.front();
    const Point& last = past.back();
    const double change = last.band.p50 - first.band.p50;
    const auto told = [measure](double value) { return valueText(measure, {value, value, value}); };
    const QString then = ui::shortDay(first.day, view.today);
    const double small = 0.08 * std::max(std::abs(first.band.p50), leastTop(measure) * 0.1);
    if (std::abs(change) < small) {
        // As much as at the beginning, and something else in between: that it held would be untrue.
        const auto [low, high] = std::ranges::minmax_element(past, {}, [](const Point& point) { return point.band.p50; });
        if (high->band.p50 - low->band.p50 > 4.0 * small)
            return (isPast(view) ? TrendWords::tr("As on %1, and between %2 and %3 in the meantime.") : TrendWords::tr("As on %1, and between %2 and %3 since."))
                .arg(then, told(low->band.p50), told(high->band.p50));
        return (isPast(view) ? TrendWords::tr("It had held since %1.") : TrendWords::tr("It has held since %1.")).arg(then);
    }
    const QString was = told(first.band.p50);
    return (change > 0 ? TrendWords::tr("Up from %1 on %2.") : TrendWords::tr("Down from %1 on %2.")).arg(was, then);
}

/// When the bottom tray is likely ready, under usual care; or whether it was.
QString readySentence(const Point& last, const std::vector<Point>& ahead, const Period& view)
{
    const bool ready = last.band.p50 <= readyAtRatio;
    if (isPast(view)) return ready ? TrendWords::tr("It was ready, more likely than not.") : TrendWords::tr("It was not ready then, more likely than not.");
    if (ready) return TrendWords::tr("It is ready, more likely than not.");
    for (const Point& point : ahead)
        if (point.band.p50 <= readyAtRatio) return TrendWords::tr("The forecast reaches it about %1.").arg(ui::shortDay(point.day, view.today));
    return TrendWords::tr("The forecast that is shown does not reach it.");
}

QString valueNow(Measure measure, const QString& value)
{
    switch (measure) {
    case Measure::processing: return TrendWords::tr("The worms eat %1 of dry matter.").arg(value);
    case Measure::drainage: return TrendWords::tr("To be expected: %1.").arg(value);
    case Measure::colony: return TrendWords::tr("The worms weigh %1.").arg(value);
    case Measure::temperature: return TrendWords::tr("The bed is at %1.").arg(value);
    case Measure::moisture: return TrendWords::tr("The tray that is fed holds %1 of water.").arg(value);
    case Measure::feedToCast: return TrendWords::tr("Of the bottom tray: %1. It is ready at %2.").arg(value, ui::ratioText(readyAtRatio));
    case Measure::yield: break;
    }
    return {};
}

QString valueThen(Measure measure, const QString& value, const QString& day)
{
    switch (measure) {
    case Measure::processing: return TrendWords::tr("On %1 the worms ate %2 of dry matter.").arg(day, value);
    case Measure::drainage: return TrendWords::tr("To be expected on %1: %2.").arg(day, value);
    case Measure::colony: return TrendWords::tr("On %1 the worms weighed %2.").arg(day, value);
    case Measure::temperature: return TrendWords::tr("On %1 the bed was at %2.").arg(day, value);
    case Measure::moisture: return TrendWords::tr("On %1 the tray that was fed held %2 of water.").arg(day, value);
    case Measure::feedToCast: return TrendWords::tr("Of the bottom tray on %1: %2. A tray is ready at %3.").arg(day, value, ui::ratioText(readyAtRatio));
    case Measure::yield: break;
    }
    return {};
}

/// What was drained: in all, or in the last four weeks that are shown.
QString drainedSentence(const Series& series, const Period& view)
{
    if (!series.totals.empty()) {
        const auto after = std::ranges::upper_bound(series.totals, view.until, {}, &Total::day);
        if (after == series.totals.begin()) return TrendWords::tr("Nothing had been drained until then.");
        const QString litres = ui::volumeText(std::prev(after)->litres), from = ui::shortDay(series.totals.front().day, view.today);
        return isPast(view) ? TrendWords::tr("Drained %1 in all from %2 to %3.").arg(litres, from, ui::shortDay(view.until, view.today))
                            : TrendWords::tr("Drained %1 in all since %2.").arg(litres, from);
    }
    if (series.bars.empty()) return TrendWords::tr("Nothing was drained in this time.");
    double sum = 0;
    int weeks = 0;
    for (auto bar = series.bars.rbegin(); bar != series.bars.rend() && weeks < 4; ++bar) {
        sum += bar->perWeek * bar->days / 7.0;
        weeks += bar->days / 7;
    }
    if (!isPast(view)) return TrendWords::tr("Drained %1 in %n week(s).", nullptr, weeks).arg(ui::volumeText(sum));
    const Day end = series.bars.back().from + std::chrono::days{series.bars.back().days - 1};
    return TrendWords::tr("Drained %1 in %n week(s) to %2.", nullptr, weeks).arg(ui::volumeText(sum), ui::shortDay(end, view.today));
}

QString nothingYet(Measure measure, bool reckoned)
{
    if (!reckoned) return TrendWords::tr("The estimates are being made.");
    switch (measure) {
    case Measure::processing: return TrendWords::tr("Here stands what the worms eat each day, from the first bedding on.");
    case Measure::drainage: return TrendWords::tr("Here stand the litres you drain each week, as bars, and what is to be expected, from the first bedding on.");
    case Measure::colony: return TrendWords::tr("Here stands the mass of the worms, from the first bedding on.");
    case Measure::temperature: return TrendWords::tr("Here stands the temperature of the bed, from the first bedding on, and what was read.");
    case Measure::moisture: return TrendWords::tr("Here stands the moisture of the tray that is fed, from the first bedding on, and what was read.");
    case Measure::feedToCast: return TrendWords::tr("Here stands how much unprocessed food and bedding the bottom tray holds beside its castings, from the first bedding on, with the line at which it is ready.");
    case Measure::yield: return TrendWords::tr("Here stands a bar for each harvest, once castings are taken and weighed, beside what was expected.");
    }
    return {};
}

/// Of the harvests that are seen.
QString yieldSentence(const Series& series, const Period& view, bool reckoned)
{
    QStringList parts;
    double kg = 0;
    int harvests = 0, within = 0, checked = 0;
    for (const Yield& each : series.yields) {
        kg += each.kg;
        harvests += each.harvests;
        if (!each.expected) continue;
        ++checked;
        within += each.checkedKg >= each.expected->p05 && each.checkedKg <= each.expected->p95;
    }
    if (harvests == 0 && series.marks.empty()) return nothingYet(Measure::yield, reckoned);
    if (harvests > 0) {
        parts << TrendWords::tr("%1 of castings in %n harvest(s).", nullptr, harvests).arg(ui::massText(kg));
        parts << TrendWords::tr("%1: %2.").arg(yieldTime(series.yields.back(), view.today), yieldText(series.yields.back()));
        if (checked > 1) parts << TrendWords::tr("%1 of %2 bars lie within what was expected.").arg(within).arg(checked);
    }
    if (!series.marks.empty()) parts << TrendWords::tr("%n harvest(s) measured by volume: marked, without a bar.", nullptr, static_cast<int>(series.marks.size()));
    return parts.join(u' ');
}

}

QString nothingThen(Measure measure, const Period& view)
{
    const QString from = ui::shortDay(view.from, view.today), until = ui::shortDay(view.until, view.today);
    if (measure == Measure::yield) return TrendWords::tr("No castings were taken from %1 to %2.").arg(from, until);
    return TrendWords::tr("From %1 to %2 there is nothing to show.").arg(from, until);
}

QString sentenceOf(Measure measure, const Series& series, const Period& view, bool reckoned)
{
    const ui::OneVolumeUnit asTheAxis{leastTop(Measure::drainage)};
    if (measure == Measure::yield) return yieldSentence(series, view, reckoned);
    const bool toCome = view.from > view.today, addedUp = !series.totals.empty();
    const std::vector<Point> past = toCome ? std::vector<Point>{} : between(series.past, view);
    const std::vector<Point> ahead = between(series.ahead, view);
    if (past.empty() && ahead.empty() && series.bars.empty() && series.logged.empty() && !addedUp) return nothingYet(measure, reckoned);
    QStringList parts;
    if (measure == Measure::drainage && !toCome) parts << drainedSentence(series, view);
    if (!past.empty()) {
        const QString value = pointText(measure, past.back(), addedUp);
        parts << (isPast(view) ? valueThen(measure, value, ui::shortDay(past.back().day, view.today)) : valueNow(measure, value));
        if (measure == Measure::feedToCast) parts << readySentence(past.back(), ahead, view);
        else if (measure != Measure::drainage) parts << moveOf(measure, past, view);
    } else if (!ahead.empty()) {
        parts << TrendWords::tr("Forecast for %1, fed as usual, no tray lifted: %2.").arg(ui::shortDay(ahead.back().day, view.today), pointText(measure, ahead.back(), addedUp));
    }
    for (const MarkKind kind : {MarkKind::drainLow, MarkKind::drainHigh}) {
        const auto last = std::find_if(series.marks.rbegin(), series.marks.rend(), [kind](const Mark& mark) { return mark.kind == kind; });
        if (last != series.marks.rend()) parts << TrendWords::tr("On %1: %2.").arg(ui::shortDay(last->day, view.today), markName(kind));
    }
    if (const auto changed = between(series.changed, view); !changed.empty()) {
        const Point& then = changed.back();
        parts << TrendWords::tr("With the change: %1 on %2.").arg(pointText(measure, then, addedUp), ui::shortDay(then.day, view.today));
    }
    if (!series.logged.empty()) {
        const auto low = std::ranges::min_element(series.logged, {}, &Logged::low);
        const auto high = std::ranges::max_element(series.logged, {}, &Logged::high);
        parts << TrendWords::tr("A logger read %1 at the lowest, %2 at the highest.").arg(readText(measure, low->low), readText(measure, high->high));
    }
    parts.removeAll(QString{});
    return ui::oneStop(parts.join(u' '));
}

}
