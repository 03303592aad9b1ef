#include "ui/shelf/shelf_series.h"

#include "core/reckoning/drained.h"
#include "ui/common/formats.h"
#include "ui/common/volumes.h"

#include <QCoreApplication>

#include <algorithm>

namespace tierloam::shelf {

namespace {

struct ShelfStrips {
    Q_DECLARE_TR_FUNCTIONS(ShelfStrips)
};

using reckoning::Band;
using std::chrono::days;

drawing::StripPoint pointOf(Day day, const Band& band) { return {day, band.p05, band.p50, band.p95}; }

}

drawing::Bars weeklyDrains(const journal::Entries& entries, const journal::StackHistory& history, const reckoning::StackReckoning* reckoning, Day from, Day last)
{
    drawing::Bars bars;
    const int weeks = daysBetween(from, last) / 7;
    const Day end = last + days{1};
    for (int week = weeks; week > 0; --week) {
        drawing::Bars::Bar bar;
        bar.from = end - days{7 * week};
        bar.to = bar.from + days{7};
        if (reckoning)
            if (const auto* sample = reckoning->on(bar.to - days{1}); sample && sample->day >= bar.from) bar.expected = sample->drainedLPerWeek.p50;
        bars.bars.push_back(bar);
    }
    if (bars.bars.empty()) return bars;
    const Day first = bars.bars.front().from;
    for (auto step = history.steps.rbegin(); step != history.steps.rend() && step->day >= first; ++step) {
        if (step->day > last || step->incoming) continue;
        const auto litres = reckoning::drainedBy(entries[step->entry]);
        if (!litres) continue;
        drawing::Bars::Bar& bar = bars.bars[static_cast<std::size_t>(daysBetween(first, step->day) / 7)];
        bar.measured = bar.measured.value_or(0) + *litres;
    }
    return bars;
}

drawing::TimeAxis stripAxis(Day today, Day shown)
{
    drawing::TimeAxis axis;
    axis.to = shown > today - days{stripDays - 14} ? today : std::min(today, shown + days{14});
    axis.from = axis.to - days{stripDays};
    if (shown < today) axis.mark = shown;
    return axis;
}

void addStrips(StackModel& stack, const journal::Entries& entries, const journal::StackHistory& history, const reckoning::StackReckoning* reckoning, const reckoning::StackEstimate* onShown,
               const drawing::TimeAxis& axis, const Largest& largest)
{
    const ui::OneMassUnit masses{largest.colonyKg};
    const ui::OneVolumeUnit volumes{largest.drainedLPerWeek};
    stack.processing.title = ShelfStrips::tr("processing, dry");
    stack.drained = weeklyDrains(entries, history, reckoning, axis.from, axis.to);
    stack.drained.title = ShelfStrips::tr("drained");
    stack.colony.title = ShelfStrips::tr("colony");
    if (reckoning) {
        for (const reckoning::StackEstimate& sample : reckoning->history) {
            if (sample.day < axis.from || sample.day > axis.to) continue;
            stack.processing.points.push_back(pointOf(sample.day, sample.processingGDryPerDay));
            stack.colony.points.push_back(pointOf(sample.day, sample.colonyKg));
        }
    }
    const auto sayWhatWillStand = [&](const QString& processing, const QString& drained, const QString& colony) {
        const auto say = [&](auto& chart, const QString& text) {
            if (!drawing::isBare(chart, axis)) return;
            chart.nothing = text;
            if (!stack.stripsText.contains(text)) stack.stripsText += u' ' % text;
        };
        say(stack.processing, processing);
        say(stack.drained, drained);
        say(stack.colony, colony);
    };
    if (!onShown) {
        for (QString* value : {&stack.processing.value, &stack.drained.value, &stack.colony.value}) *value = ShelfStrips::tr("–");
        const QString making = stack.stripsText = ShelfStrips::tr("The estimates are being made.");
        sayWhatWillStand(making, making, making);
        return;
    }
    const Band& rate = onShown->processingGDryPerDay;
    const auto [eaten, eatenRange] = ui::rateParts(rate);
    stack.processing.value = eaten;
    if (!eatenRange.isEmpty()) stack.processing.range = ShelfStrips::tr("(%1)").arg(eatenRange);
    const auto [flow, flowRange] = ui::flowParts(onShown->drainedLPerWeek);
    stack.drained.value = flow;
    if (!flowRange.isEmpty()) stack.drained.range = ShelfStrips::tr("(%1)").arg(flowRange);
    stack.colony.value = ui::massText(onShown->colonyKg.p50);
    stack.colony.range = ShelfStrips::tr("(%1)").arg(ui::massRange(onShown->colonyKg));
    stack.stripsText = ShelfStrips::tr("Processing %1, dry matter. Runs into the sump %2. Colony %3.")
                           .arg(ui::rateBand(rate), ui::flowBand(onShown->drainedLPerWeek), ui::massBand(onShown->colonyKg));
    sayWhatWillStand(ShelfStrips::tr("Here grows a line of what is eaten."), ShelfStrips::tr("Here stands a bar for each drain."), ShelfStrips::tr("Here grows a line of the worms' mass."));
}

void shareScales(std::vector<StackModel>& stacks)
{
    double processing = 0, drained = 0, colony = 0;
    for (const StackModel& stack : stacks) {
        for (const auto& point : stack.processing.points) processing = std::max(processing, point.high);
        for (const auto& point : stack.colony.points) colony = std::max(colony, point.high);
        for (const auto& bar : stack.drained.bars) drained = std::max({drained, bar.measured.value_or(0), bar.expected.value_or(0)});
    }
    for (StackModel& stack : stacks) {
        stack.processing.top = drawing::roundTop(processing);
        stack.drained.top = drawing::roundTop(drained);
        stack.colony.top = drawing::roundTop(colony);
    }
}

}
