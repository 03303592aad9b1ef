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

QString readText(Measure measure, double value) { return measure == Measure::temperature ? ui::temperatureText(value) : ui::percentText(value / 100.0); }

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
