#include "ui/trends/trend_csv.h"

#include "core/exchange/csv.h"
#include "core/exchange/spreadsheet_safe.h"
#include "core/quantity/day_text.h"

#include <charconv>
#include <optional>

namespace tierloam::trends {

namespace {

const char* codeOf(Measure measure)
{
    switch (measure) {
    case Measure::processing: return "processing";
    case Measure::drainage: return "drainage";
    case Measure::colony: return "colony";
    case Measure::temperature: return "temperature";
    case Measure::moisture: return "moisture";
    case Measure::feedToCast: return "feed-to-cast";
    case Measure::yield: return "yield";
    }
    return "";
}

const char* unitOf(Measure measure, bool added)
{
    switch (measure) {
    case Measure::processing: return "g/d";
    case Measure::drainage: return added ? "L" : "L/week";
    case Measure::colony:
    case Measure::yield: return "kg";
    case Measure::temperature: return "degC";
    case Measure::moisture: return "%";
    case Measure::feedToCast: return "1";
    }
    return "";
}

const char* codeOf(MarkKind kind)
{
    switch (kind) {
    case MarkKind::feed: return "feed";
    case MarkKind::bedding: return "bed";
    case MarkKind::turn: return "rotate";
    case MarkKind::harvest: return "harvest";
    case MarkKind::worms: return "worms";
    case MarkKind::weighing: return "weigh";
    case MarkKind::water: return "water";
    case MarkKind::reading: return "reading";
    case MarkKind::event: return "event";
    case MarkKind::drainLow: return "drained-low-twice";
    case MarkKind::drainHigh: return "drained-high-twice";
    }
    return "";
}

/// Six figures: finer than any estimate is worth.
std::string number(std::optional<double> value)
{
    if (!value) return {};
    char text[40];
    const auto end = std::to_chars(text, text + sizeof text, *value, std::chars_format::general, 6).ptr;
    return {text, end};
}

class Writer {
public:
    explicit Writer(const Period& view) : view_{view}
    {
        exchange::csv::writeRecord(out_, {"measure", "stack", "date", "until", "what", "low", "value", "high", "unit"});
    }

    void add(Measure measure, const Series& series)
    {
        measure_ = codeOf(measure);
        unit_ = unitOf(measure, !series.totals.empty());
        stack_ = exchange::spreadsheetSafe(series.stack.toStdString());
        const auto points = [this](const std::vector<Point>& all, const char* what, std::size_t from) {
            for (std::size_t i = from; i < all.size(); ++i) row(all[i].day, all[i].day, what, all[i].band.p05, all[i].band.p50, all[i].band.p95);
        };
        points(series.past, "estimate", 0);
        points(series.ahead, "forecast", series.past.empty() ? 0 : 1); // begins with the last of the past
        points(series.changed, "change", 0);
        for (const Bar& bar : series.bars) row(bar.from, bar.from + std::chrono::days{bar.days - 1}, "drained", {}, bar.perWeek, {});
        for (const Total& total : series.totals) row(total.day, total.day, "drained-in-all", {}, total.litres, {});
        for (const Logged& span : series.logged) row(span.day, span.day, "read", span.low, span.mean, span.high);
        for (const Yield& yield : series.yields) {
            row(yield.from, yield.until, "taken", {}, yield.kg, {});
            if (yield.expected) row(yield.from, yield.until, "expected", yield.expected->p05, yield.expected->p50, yield.expected->p95);
        }
        for (const Mark& mark : series.marks) row(mark.day, mark.day, std::string{"mark "} + codeOf(mark.kind), {}, mark.value, {});
    }

    std::string take() && { return std::move(out_); }

private:
    void row(Day from, Day until, const std::string& what, std::optional<double> low, std::optional<double> value, std::optional<double> high)
    {
        if (until < view_.from || from > view_.until) return;
        exchange::csv::writeRecord(out_, {measure_, stack_, dayText(from), dayText(until), what, number(low), number(value), number(high), unit_});
    }

    Period view_;
    std::string out_, measure_, stack_, unit_;
};

}

std::string seenCsv(const SeenTrends& seen)
{
    Writer writer{seen.view};
    for (const SeenMeasure& measure : seen.measures)
        for (const Series& series : measure.whole) writer.add(measure.measure, series);
    return std::move(writer).take();
}

}
