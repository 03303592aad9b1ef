#include "ui/trends/trend_words.h"

#include "ui/common/formats.h"

#include <QCoreApplication>

#include <cmath>

namespace tierloam::trends {

namespace {

QString tr(const char* text, int n = -1)
{
    return QCoreApplication::translate("Trends", text, nullptr, n);
}

/// How the median moved over the past that is shown; small moves are not worth a word.
QString moveOf(Measure measure, const Series& series, const Period& period)
{
    if (series.past.size() < 2) return {};
    const Point& first = series.past.front();
    const Point& last = series.past.back();
    const double change = last.band.p50 - first.band.p50;
    if (std::abs(change) < 0.08 * std::max(std::abs(first.band.p50), leastTop(measure) * 0.1)) {
        return tr("It has held since %1.").arg(ui::shortDay(first.day, period.today));
    }
    const QString was = valueText(measure, {first.band.p50, first.band.p50, first.band.p50});
    return (change > 0 ? tr("Up from %1 on %2.") : tr("Down from %1 on %2.")).arg(was, ui::shortDay(first.day, period.today));
}

QString nothingYet(Measure measure, bool reckoned)
{
    if (!reckoned) return tr("The estimates are being made.");
    switch (measure) {
    case Measure::processing: return tr("Here stands what the worms eat each day, from the first bedding on.");
    case Measure::drainage: return tr("Here stand the litres you drain each week, as bars, and what is to be expected, from the first bedding on.");
    case Measure::colony: return tr("Here stands the mass of the worms, from the first bedding on.");
    }
    return {};
}

}

QString measureName(Measure measure)
{
    switch (measure) {
    case Measure::processing: return tr("Processing rate");
    case Measure::drainage: return tr("Drainage");
    case Measure::colony: return tr("Colony");
    }
    return {};
}

QString measureNote(Measure measure)
{
    switch (measure) {
    case Measure::processing: return tr("dry matter that the worms eat, g a day");
    case Measure::drainage: return tr("bars: drained, %1 a week; line: to be expected").arg(axisUnit(measure).unit);
    case Measure::colony: return tr("live worms, %1; crosses: weighed").arg(axisUnit(measure).unit);
    }
    return {};
}

QString rangeName(Range range)
{
    switch (range) {
    case Range::days30: return tr("30 days");
    case Range::days90: return tr("90 days");
    case Range::year: return tr("1 year");
    case Range::twoYears: return tr("2 years");
    case Range::all: return tr("All");
    }
    return {};
}

AxisUnit axisUnit(Measure measure)
{
    const bool us = ui::measures() == ui::Measures::us;
    switch (measure) {
    case Measure::processing: return {1.0, tr("g/d")};
    case Measure::drainage: return us ? AxisUnit{1.0 / inBaseUnit(Unit::gal), tr("gal")} : AxisUnit{1.0, tr("L")};
    case Measure::colony: return us ? AxisUnit{1.0 / inBaseUnit(Unit::lb), tr("lb")} : AxisUnit{1.0, tr("kg")};
    }
    return {};
}

double leastTop(Measure measure)
{
    switch (measure) {
    case Measure::processing: return 10.0;
    case Measure::drainage: return 1.0;
    case Measure::colony: return 0.5;
    }
    return 1.0;
}

QString valueText(Measure measure, const reckoning::Band& band)
{
    switch (measure) {
    case Measure::processing: return ui::rateBand(band);
    case Measure::drainage: return ui::flowBand(band);
    case Measure::colony: return ui::massBand(band);
    }
    return {};
}

QString barText(double perWeek)
{
    return ui::flowText(perWeek);
}

QString sentenceOf(Measure measure, const Series& series, const Period& period, bool reckoned)
{
    if (series.past.empty() && series.bars.empty()) return nothingYet(measure, reckoned);
    QStringList parts;
    if (measure == Measure::drainage && !series.bars.empty()) {
        double sum = 0;
        int weeks = 0;
        for (auto bar = series.bars.rbegin(); bar != series.bars.rend() && weeks < 4; ++bar) {
            sum += bar->perWeek * bar->days / 7.0;
            weeks += bar->days / 7;
        }
        parts << tr("Drained %1 in %n week(s).", weeks).arg(ui::volumeText(sum));
    } else if (measure == Measure::drainage) {
        parts << tr("Nothing was drained in this time.");
    }
    if (!series.past.empty()) {
        const QString now = valueText(measure, series.past.back().band);
        switch (measure) {
        case Measure::processing: parts << tr("The worms eat %1 of dry matter.").arg(now); break;
        case Measure::drainage: parts << tr("To be expected: %1.").arg(now); break;
        case Measure::colony: parts << tr("The worms weigh %1.").arg(now); break;
        }
        if (measure != Measure::drainage) parts << moveOf(measure, series, period);
    }
    parts.removeAll(QString{});
    return parts.join(u' ');
}

QString readoutOf(Measure measure, const Series& series, Day day, Day today)
{
    QStringList parts;
    if (measure == Measure::drainage) {
        if (const Bar* bar = series.barAt(day)) parts << tr("drained %1").arg(barText(bar->perWeek));
    }
    if (const Point* point = series.at(day)) parts << valueText(measure, point->band);
    if (parts.isEmpty()) parts << tr("no estimate");
    return tr("%1: %2").arg(ui::shortDay(day, today), parts.join(tr(", ")));
}

QString markName(MarkKind kind)
{
    switch (kind) {
    case MarkKind::feed: return tr("fed");
    case MarkKind::bedding: return tr("bedding laid");
    case MarkKind::turn: return tr("lifted to the top");
    case MarkKind::harvest: return tr("castings taken");
    case MarkKind::worms: return tr("worms in or out");
    case MarkKind::weighing: return tr("worms weighed");
    case MarkKind::water: return tr("watered");
    case MarkKind::drain: return tr("drained");
    }
    return {};
}

}
