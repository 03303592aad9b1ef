#include "ui/trends/trend_words.h"

#include "ui/common/formats.h"
#include "ui/common/volumes.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace tierloam::trends {

namespace {

struct TrendWords {
    Q_DECLARE_TR_FUNCTIONS(TrendWords)
};

/// How the median moved over the past that is shown; small moves are not worth a word.
QString moveOf(Measure measure, const Series& series, const Period& period)
{
    if (series.past.size() < 2) return {};
    const Point& first = series.past.front();
    const Point& last = series.past.back();
    const double change = last.band.p50 - first.band.p50;
    const auto told = [measure](double value) { return valueText(measure, {value, value, value}); };
    const double small = 0.08 * std::max(std::abs(first.band.p50), leastTop(measure) * 0.1);
    if (std::abs(change) < small) {
        // As much as at the beginning, and something else in between: that it held would be untrue.
        const auto [low, high] = std::ranges::minmax_element(series.past, {}, [](const Point& point) { return point.band.p50; });
        if (high->band.p50 - low->band.p50 > 4.0 * small)
            return TrendWords::tr("As on %1, and between %2 and %3 since.").arg(ui::shortDay(first.day, period.today), told(low->band.p50), told(high->band.p50));
        return TrendWords::tr("It has held since %1.").arg(ui::shortDay(first.day, period.today));
    }
    const QString was = told(first.band.p50);
    return (change > 0 ? TrendWords::tr("Up from %1 on %2.") : TrendWords::tr("Down from %1 on %2.")).arg(was, ui::shortDay(first.day, period.today));
}

/// A value that was read, not estimated.
QString readText(Measure measure, double value) { return measure == Measure::temperature ? ui::temperatureText(value) : ui::percentText(value / 100.0); }

/// When the bottom tray is likely ready, under usual care.
QString readySentence(const Series& series, const Period& period)
{
    if (series.past.back().band.p50 <= readyAtRatio) return TrendWords::tr("It is ready, more likely than not.");
    for (const Point& point : series.ahead)
        if (point.band.p50 <= readyAtRatio) return TrendWords::tr("The forecast reaches it about %1.").arg(ui::shortDay(point.day, period.today));
    return TrendWords::tr("The forecast that is shown does not reach it.");
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

}

QString measureName(Measure measure)
{
    switch (measure) {
    case Measure::processing: return TrendWords::tr("Processing rate");
    case Measure::drainage: return TrendWords::tr("Drainage");
    case Measure::colony: return TrendWords::tr("Colony");
    case Measure::temperature: return TrendWords::tr("Temperature");
    case Measure::moisture: return TrendWords::tr("Moisture");
    case Measure::feedToCast: return TrendWords::tr("Feed-to-cast");
    case Measure::yield: return TrendWords::tr("Yield");
    }
    return {};
}

QString measureNote(Measure measure, int barDays, Sums sums)
{
    switch (measure) {
    case Measure::processing: return TrendWords::tr("dry matter that the worms eat, %1").arg(axisUnit(measure).unit);
    case Measure::drainage:
        if (sums.drainageAddedUp)
            return TrendWords::tr("added up, %1; steps: drained; line: to be expected, its range as if every week erred to the same side").arg(axisUnit(measure).unit);
        return (barDays > 7 ? TrendWords::tr("bars: drained, %1 a week, each over four weeks; line: to be expected")
                            : TrendWords::tr("bars: drained, %1 a week; line: to be expected"))
            .arg(axisUnit(measure).unit);
    case Measure::colony: return TrendWords::tr("live worms, %1; crosses: weighed").arg(axisUnit(measure).unit);
    case Measure::temperature: return TrendWords::tr("of the bed, %1; strokes: a day's lowest to highest by a logger").arg(axisUnit(measure).unit);
    case Measure::moisture: return TrendWords::tr("of the tray that is fed, % water; strokes: a day's lowest to highest by a logger");
    case Measure::feedToCast: return TrendWords::tr("unprocessed dry matter to castings in the bottom tray, on a log scale; each batch has its own line");
    case Measure::yield:
        return (sums.yieldByYear ? TrendWords::tr("castings taken in a year, %1; upright stroke: to be expected") : TrendWords::tr("castings of each harvest, %1; upright stroke: to be expected")).arg(axisUnit(measure).unit);
    }
    return {};
}

QString rangeName(Range range)
{
    switch (range) {
    case Range::days30: return TrendWords::tr("30 days");
    case Range::days90: return TrendWords::tr("90 days");
    case Range::year: return TrendWords::tr("1 year");
    case Range::twoYears: return TrendWords::tr("2 years");
    case Range::all: return TrendWords::tr("All");
    }
    return {};
}

AxisUnit axisUnit(Measure measure)
{
    const bool us = ui::measures() == ui::Measures::us;
    switch (measure) {
    case Measure::processing: return us ? AxisUnit{0.001 / inBaseUnit(Unit::oz), ui::joined(TrendWords::tr("oz/d"))} : AxisUnit{1.0, ui::joined(TrendWords::tr("g/d"))};
    case Measure::drainage: return us ? AxisUnit{1.0 / inBaseUnit(Unit::gal), TrendWords::tr("gal")} : AxisUnit{1.0, TrendWords::tr("L")};
    case Measure::colony: return us ? AxisUnit{1.0 / inBaseUnit(Unit::lb), TrendWords::tr("lb")} : AxisUnit{1.0, TrendWords::tr("kg")};
    case Measure::temperature: return us ? AxisUnit{1.8, TrendWords::tr("°F"), 32.0} : AxisUnit{1.0, TrendWords::tr("°C")};
    case Measure::moisture: return {1.0, TrendWords::tr("%")};
    case Measure::feedToCast: return {};
    case Measure::yield: return axisUnit(Measure::colony);
    }
    return {};
}

double leastTop(Measure measure)
{
    switch (measure) {
    case Measure::processing: return 10.0;
    case Measure::drainage: return 1.0;
    case Measure::colony: return 0.5;
    case Measure::temperature: return 30.0;
    case Measure::moisture: return 100.0;
    case Measure::feedToCast:
    case Measure::yield: return 1.0;
    }
    return 1.0;
}

QString valueText(Measure measure, const reckoning::Band& band)
{
    switch (measure) {
    case Measure::processing: return ui::rateBand(band);
    case Measure::drainage: return ui::flowBand(band);
    case Measure::colony: return ui::massBand(band);
    case Measure::temperature: return ui::temperatureBand(band);
    case Measure::feedToCast: return ui::ratioBand(band);
    case Measure::yield: return ui::massBand(band);
    case Measure::moisture: return TrendWords::tr("%1 (%2–%3)").arg(ui::percentText(band.p50 / 100.0), QString::number(std::lround(band.p05)), QString::number(std::lround(band.p95)));
    }
    return {};
}

QString loggedText(Measure measure, const Logged& span)
{
    return TrendWords::tr("read %1 to %2, mean %3").arg(readText(measure, span.low), readText(measure, span.high), readText(measure, span.mean));
}

QString barText(double perWeek)
{
    return ui::flowText(perWeek);
}

QString yieldText(const Yield& yield)
{
    const QString taken = TrendWords::tr("%1 taken").arg(ui::massText(yield.kg));
    if (!yield.expected) return taken;
    const QString expected = ui::massBand(*yield.expected);
    if (yield.checked < yield.harvests) return TrendWords::tr("%1; %2 expected of %3 of it").arg(taken, expected, ui::massText(yield.checkedKg));
    return TrendWords::tr("%1, %2 expected").arg(taken, expected);
}

QString yieldTime(const Yield& yield, Day today)
{
    return yield.ofYear() ? QString::number(static_cast<int>(std::chrono::year_month_day{yield.from}.year())) : ui::shortDay(yield.from, today);
}

namespace {

QString yieldSentence(const Series& series, const Period& period, bool reckoned)
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
        parts << TrendWords::tr("%1: %2.").arg(yieldTime(series.yields.back(), period.today), yieldText(series.yields.back()));
        if (checked > 1) parts << TrendWords::tr("%1 of %2 bars lie within what was expected.").arg(within).arg(checked);
    }
    if (!series.marks.empty()) parts << TrendWords::tr("%n harvest(s) measured by volume: marked, without a bar.", nullptr, static_cast<int>(series.marks.size()));
    return parts.join(u' ');
}

}

QString sentenceOf(Measure measure, const Series& series, const Period& period, bool reckoned)
{
    const ui::OneVolumeUnit asTheAxis{leastTop(Measure::drainage)};
    if (measure == Measure::yield) return yieldSentence(series, period, reckoned);
    if (series.past.empty() && series.bars.empty() && series.logged.empty() && series.totals.empty()) return nothingYet(measure, reckoned);
    QStringList parts;
    if (!series.totals.empty()) {
        parts << TrendWords::tr("Drained %1 in all since %2.").arg(ui::volumeText(series.totals.back().litres), ui::shortDay(series.totals.front().day, period.today));
    } else if (measure == Measure::drainage && !series.bars.empty()) {
        double sum = 0;
        int weeks = 0;
        for (auto bar = series.bars.rbegin(); bar != series.bars.rend() && weeks < 4; ++bar) {
            sum += bar->perWeek * bar->days / 7.0;
            weeks += bar->days / 7;
        }
        parts << TrendWords::tr("Drained %1 in %n week(s).", nullptr, weeks).arg(ui::volumeText(sum));
    } else if (measure == Measure::drainage) {
        parts << TrendWords::tr("Nothing was drained in this time.");
    }
    if (!series.past.empty()) {
        const bool added = !series.totals.empty();
        const QString now = added ? ui::volumeBand(series.past.back().band) : valueText(measure, series.past.back().band);
        switch (measure) {
        case Measure::processing: parts << TrendWords::tr("The worms eat %1 of dry matter.").arg(now); break;
        case Measure::drainage: parts << TrendWords::tr("To be expected: %1.").arg(now); break;
        case Measure::colony: parts << TrendWords::tr("The worms weigh %1.").arg(now); break;
        case Measure::temperature: parts << TrendWords::tr("The bed is at %1.").arg(now); break;
        case Measure::moisture: parts << TrendWords::tr("The tray that is fed holds %1 of water.").arg(now); break;
        case Measure::feedToCast: parts << TrendWords::tr("Of the bottom tray: %1. It is ready at %2.").arg(now, ui::ratioText(readyAtRatio)); break;
        case Measure::yield: break;
        }
        if (measure == Measure::feedToCast) parts << readySentence(series, period);
        else if (measure != Measure::drainage) parts << moveOf(measure, series, period);
    }
    for (const MarkKind kind : {MarkKind::drainLow, MarkKind::drainHigh}) {
        const auto last = std::find_if(series.marks.rbegin(), series.marks.rend(), [kind](const Mark& mark) { return mark.kind == kind; });
        if (last != series.marks.rend()) parts << TrendWords::tr("On %1: %2.").arg(ui::shortDay(last->day, period.today), markName(kind));
    }
    if (const Point* then = series.changed.empty() ? nullptr : &series.changed.back()) {
        parts << TrendWords::tr("With the change: %1 on %2.").arg(series.totals.empty() ? valueText(measure, then->band) : ui::volumeBand(then->band), ui::shortDay(then->day, period.today));
    }
    if (!series.logged.empty()) {
        const auto low = std::ranges::min_element(series.logged, {}, &Logged::low);
        const auto high = std::ranges::max_element(series.logged, {}, &Logged::high);
        parts << TrendWords::tr("A logger read %1 at the lowest, %2 at the highest.").arg(readText(measure, low->low), readText(measure, high->high));
    }
    parts.removeAll(QString{});
    return ui::oneStop(parts.join(u' '));
}

QString readoutOf(Measure measure, const Series& series, Day day, Day today)
{
    const ui::OneVolumeUnit asTheAxis{leastTop(Measure::drainage)};
    QStringList parts;
    if (measure == Measure::drainage) {
        if (const Bar* bar = series.barAt(day)) parts << TrendWords::tr("drained %1").arg(barText(bar->perWeek));
    }
    if (const Logged* span = series.loggedAt(day)) parts << loggedText(measure, *span);
    const auto text = [&](const Point& point) { return series.totals.empty() ? valueText(measure, point.band) : ui::volumeBand(point.band); };
    if (const Total* total = series.totalAt(day)) parts << TrendWords::tr("drained %1 in all").arg(ui::volumeText(total->litres));
    if (const Yield* yield = series.yieldAt(day)) parts << (yield->ofYear() ? TrendWords::tr("in all of %1: %2").arg(yieldTime(*yield, today), yieldText(*yield)) : yieldText(*yield));
    if (const Point* point = series.at(day)) parts << text(*point);
    if (const Point* point = series.changedAt(day)) parts << TrendWords::tr("with the change %1").arg(text(*point));
    if (parts.isEmpty()) parts << (measure == Measure::yield ? TrendWords::tr("nothing taken") : TrendWords::tr("no estimate"));
    for (const Mark& mark : series.marks)
        if (mark.day == day) parts << (mark.words.isEmpty() ? markName(mark.kind) : TrendWords::tr("%1: %2").arg(markName(mark.kind), mark.words));
    parts.removeDuplicates();
    return TrendWords::tr("%1: %2").arg(ui::shortDay(day, today), parts.join(TrendWords::tr(", ")));
}

QString markName(MarkKind kind)
{
    switch (kind) {
    case MarkKind::feed: return TrendWords::tr("fed");
    case MarkKind::bedding: return TrendWords::tr("bedding laid");
    case MarkKind::turn: return TrendWords::tr("lifted to the top");
    case MarkKind::harvest: return TrendWords::tr("castings taken");
    case MarkKind::worms: return TrendWords::tr("worms in or out");
    case MarkKind::weighing: return TrendWords::tr("worms weighed");
    case MarkKind::water: return TrendWords::tr("watered");
    case MarkKind::reading: return TrendWords::tr("read by hand");
    case MarkKind::event: return TrendWords::tr("something seen");
    case MarkKind::drainLow: return TrendWords::tr("less drained than expected, twice: blocked, or a dry bed?");
    case MarkKind::drainHigh: return TrendWords::tr("more drained than expected, twice: too much water?");
    }
    return {};
}

QString markWords(MarkKind kind)
{
    switch (kind) {
    case MarkKind::drainLow: return TrendWords::tr("blocked?");
    case MarkKind::drainHigh: return TrendWords::tr("too much water?");
    default: return {};
    }
}

QString readyLineText() { return TrendWords::tr("ready"); }

}
