#include "ui/shelf/part_story.h"

#include "core/advice/too_early.h"
#include "core/household/batch_story.h"
#include "core/reckoning/drained.h"
#include "ui/common/formats.h"
#include "ui/common/volumes.h"
#include "ui/forms/form_kind.h"
#include "ui/forms/tray_lift.h"
#include "ui/shelf/shelf_series.h"

#include <QCoreApplication>

#include <algorithm>

namespace tierloam::shelf {

namespace {

struct PartStories {
    Q_DECLARE_TR_FUNCTIONS(PartStories)
};

using reckoning::Band;
using std::chrono::days;

constexpr int mostDaysAhead = 120;   // further on a forecast would press the past together
constexpr int sumpDaysBack = 180, sumpDaysAhead = 30;

const reckoning::TrayEstimate* trayOf(const reckoning::StackEstimate& stack, int batch)
{
    const auto found = std::find_if(stack.slots.begin(), stack.slots.end(), [batch](const reckoning::TrayEstimate& tray) { return tray.batch == batch; });
    return found == stack.slots.end() ? nullptr : &*found;
}

void addFood(PartStory& story, const StoryInputs& inputs, const journal::Batch& batch)
{
    const household::BatchStory told = household::batchStory(batch, inputs.history, inputs.journal.entries, inputs.journal.materials, inputs.shown);
    double top = 0;
    for (Day from = batch.bedded; from <= inputs.shown; from += days{7}) {
        drawing::Bars::Bar bar{from, from + days{7}, {}, {}};
        const std::size_t week = story.bars.bars.size();
        if (week < told.fedKgByWeek.size() && told.fedKgByWeek[week] > 0) bar.measured = told.fedKgByWeek[week];
        top = std::max(top, bar.measured.value_or(0));
        story.bars.bars.push_back(bar);
    }
    story.bars.top = drawing::roundTop(top);
    story.bars.title = PartStories::tr("food, fresh, a week");
    story.bars.value = told.feedings ? PartStories::tr("highest %1").arg(ui::massText(top)) : PartStories::tr("none");
    QStringList put;
    if (told.feedings) put << PartStories::tr("%1 of food in %2", "an amount; so many feedings").arg(ui::massText(told.fedKg), PartStories::tr("%n feeding(s)", nullptr, told.feedings));
    if (told.beddingKg > 0) put << PartStories::tr("%1 of bedding").arg(ui::massText(told.beddingKg));
    if (told.coverKg > 0) put << PartStories::tr("%1 of paper over it").arg(ui::massText(told.coverKg));
    story.facts.append({PartStories::tr("Put in, as it came"), put.join(QStringLiteral(", "))});
}

/// Samples of the past up to the day shown, then those of the forecast when that day is today.
template <class Then> void eachSample(const StoryInputs& inputs, const drawing::TimeAxis& axis, Then then)
{
    if (!inputs.reckoning) return;
    for (const reckoning::StackEstimate& sample : inputs.reckoning->history)
        if (sample.day >= axis.from && sample.day <= inputs.shown) then(sample);
    if (!axis.future) return;
    for (const reckoning::StackEstimate& sample : inputs.reckoning->forecast.days)
        if (sample.day > inputs.shown && sample.day <= axis.to) then(sample);
}

drawing::StripPoint pointOf(Day day, const Band& band) { return {day, band.p05, band.p50, band.p95}; }

/// From the bedding on; today's goes on to the late end of the ready date.
drawing::TimeAxis trayAxis(const StoryInputs& inputs, const journal::Batch& batch, const reckoning::TrayEstimate* now)
{
    drawing::TimeAxis axis;
    axis.from = batch.bedded;
    axis.to = std::max(inputs.shown, batch.bedded + days{7});
    if (inputs.shown < inputs.today || !now || inputs.reckoning->forecast.days.empty() || now->state == reckoning::TrayState::drying) return axis;
    const Day late = now->readyOn.p90.value_or(now->readyOn.p50.value_or(now->readyOn.p10.value_or(inputs.today)));
    axis.to = std::clamp(late + days{7}, inputs.today + days{21}, inputs.today + days{mostDaysAhead});
    axis.future = inputs.today;
    return axis;
}

void addLift(PartStory& story, const StoryInputs& inputs, int slot, const journal::Batch& batch, const reckoning::TrayEstimate& tray)
{
    const forms::TrayLiftWords lift = forms::trayLift(inputs.standing, slot, tray.weightKg.p95);
    if (lift.verdict.recommended && lift.verdict.word == guide::LiftVerdict::Word::fine) {
        story.facts.append({PartStories::tr("Lifting"), lift.words});
        return;
    }
    forms::CautionFacts facts;
    facts.kind = forms::FormKind::rotate;
    facts.tray = batch.tray;
    facts.weight = forms::CautionFacts::Weight{tray.weightKg.p05, tray.weightKg.p50, tray.weightKg.p95};
    facts.liftWords = lift.words;
    story.cautions.append(forms::liftingCaution(facts));
}

void addEarly(PartStory& story, const StoryInputs& inputs, advice::LifeStep step)
{
    if (!inputs.reckoning || inputs.shown < inputs.today) return;
    if (const auto early = advice::tooEarly(*inputs.reckoning, step))
        story.reasons << PartStories::tr("%1: %2.", "that a step would be too early, and why").arg(QString::fromStdString(early->text), QString::fromStdString(early->because));
}

/// Of a tray that does not stand at the bottom, or stands alone.
void addWhyNoLift(PartStory& story, const journal::Standing& standing, int slot)
{
    if (standing.dryingSlot() == slot) return;
    const QString lift = forms::formName(forms::FormKind::rotate);
    if (standing.trays() < 2) story.reasons << PartStories::tr("%1: not while it stands alone; the worms go down into the tray beneath.").arg(lift);
    else if (slot > 1) story.reasons << PartStories::tr("%1: only the tray in slot 1; this one comes down with each harvest.").arg(lift);
}

void addRatioWords(PartStory& story, const drawing::Strip& ratio)
{
    QStringList said;
    const auto at = [&](const drawing::StripPoint& point) { return PartStories::tr("%1 on %2", "a ratio and a day").arg(ui::ratioText(point.middle), ui::fullDay(point.day)); };
    if (!ratio.points.empty()) {
        said << at(ratio.points.front());
        if (ratio.points.size() > 2) said << at(ratio.points.back());
    }
    if (said.isEmpty()) story.chartsText = PartStories::tr("The estimates are being made.");
    else story.chartsText = PartStories::tr("Feed-to-cast: %1. Ready at 0.10 or below.").arg(said.join(QStringLiteral("; ")));
}

/// What will stand in a chart that holds next to nothing yet: in its plot, and in words.
template <class Chart> void sayWhatWillStand(PartStory& story, Chart& chart, const QString& text, bool unseen = false)
{
    if (!unseen && !drawing::isBare(chart, story.axis)) return;
    chart.nothing = text;
    if (!story.chartsText.contains(text)) story.chartsText += u' ' % text;
}

}

PartStory trayStory(const StoryInputs& inputs, int slot)
{
    PartStory story;
    if (!inputs.standing.has(slot)) return story;
    const journal::Batch& batch = inputs.history.batch(inputs.standing.batchIn(slot));
    const reckoning::StackEstimate* estimate = !inputs.reckoning ? nullptr : inputs.shown < inputs.today ? inputs.reckoning->on(inputs.shown) : &inputs.reckoning->now;
    const reckoning::TrayEstimate* tray = estimate ? trayOf(*estimate, batch.number) : nullptr;
    story.axis = trayAxis(inputs, batch, tray);
    addFood(story, inputs, batch);

    drawing::Strip castings, ratio;
    castings.title = PartStories::tr("castings, dry");
    ratio.title = PartStories::tr("feed-to-cast");
    ratio.log = true;
    ratio.top = ratioTop;
    ratio.bottom = ratioBottom;
    ratio.level = drawing::Strip::Level{readyRatio, PartStories::tr("ready")};
    double most = 0;
    eachSample(inputs, story.axis, [&](const reckoning::StackEstimate& sample) {
        const reckoning::TrayEstimate* then = trayOf(sample, batch.number);
        if (!then) return;
        castings.points.push_back(pointOf(sample.day, then->castingsDryKg));
        ratio.points.push_back(pointOf(sample.day, then->feedToCast));
        most = std::max(most, then->castingsDryKg.p95);
    });
    castings.top = drawing::roundTop(most);
    castings.value = tray ? ui::massText(tray->castingsDryKg.p50) : PartStories::tr("–");
    ratio.value = tray ? ui::ratioText(tray->feedToCast.p50) : PartStories::tr("–");
    if (tray) {
        castings.range = PartStories::tr("(%1)").arg(ui::massRange(tray->castingsDryKg));
        addLift(story, inputs, slot, batch, *tray);
    }
    addRatioWords(story, ratio);
    sayWhatWillStand(story, story.bars, PartStories::tr("Here stands a bar for each week's food."));
    sayWhatWillStand(story, castings, tray ? PartStories::tr("Here grows a line of its castings.") : PartStories::tr("The estimates are being made."));
    sayWhatWillStand(story, ratio, tray ? PartStories::tr("Here falls a line until it is ready.") : PartStories::tr("The estimates are being made."));
    story.strips = {castings, ratio};
    if (inputs.standing.dryingSlot() == slot) {
        story.cautions.append(forms::dustCaution());
        addEarly(story, inputs, advice::LifeStep::take);
    } else if (slot == 1 && inputs.standing.trays() > 1) {
        addEarly(story, inputs, advice::LifeStep::lift);
    }
    addWhyNoLift(story, inputs.standing, slot);
    return story;
}

PartStory sumpStory(const StoryInputs& inputs)
{
    PartStory story;
    story.axis.from = std::max(inputs.history.firstBedding.value_or(inputs.history.firstSetup), inputs.shown - days{sumpDaysBack});
    story.axis.to = std::max(inputs.shown, story.axis.from + days{7});
    if (inputs.shown == inputs.today && inputs.reckoning && !inputs.reckoning->forecast.days.empty()) {
        story.axis.future = inputs.today;
        story.axis.to = inputs.today + days{sumpDaysAhead};
    }
    const double capacity = inputs.standing.settings.sump.base();
    const reckoning::StackEstimate* estimate = !inputs.reckoning ? nullptr : inputs.shown < inputs.today ? inputs.reckoning->on(inputs.shown) : &inputs.reckoning->now;

    const ui::OneVolumeUnit alike{capacity}; // level, drains and the sump itself stand side by side
    drawing::Strip level;
    level.title = PartStories::tr("level");
    level.top = capacity * 1.1;
    level.level = drawing::Strip::Level{capacity, PartStories::tr("full")};
    level.value = estimate ? ui::volumeText(estimate->sumpL.p50) : PartStories::tr("–");
    eachSample(inputs, story.axis, [&](const reckoning::StackEstimate& sample) { level.points.push_back(pointOf(sample.day, sample.sumpL)); });
    story.bars = weeklyDrains(inputs.journal.entries, inputs.history, inputs.reckoning, story.axis.from, inputs.shown);
    double top = 0;
    for (const auto& bar : story.bars.bars) top = std::max({top, bar.measured.value_or(0), bar.expected.value_or(0)});
    story.bars.top = drawing::roundTop(top);
    story.bars.title = PartStories::tr("drained a week; mark: expected");
    story.bars.value = story.bars.bars.empty() ? PartStories::tr("none") : PartStories::tr("highest %1").arg(ui::volumeText(top));

    QStringList last;
    for (auto step = inputs.history.steps.rbegin(); step != inputs.history.steps.rend() && last.size() < 4; ++step) {
        if (step->day > inputs.shown) continue;
        const journal::Entry& entry = inputs.journal.entries[step->entry];
        const auto litres = reckoning::drainedBy(entry);
        if (!litres) continue;
        const QString what = std::holds_alternative<journal::Flush>(entry.action) ? PartStories::tr("%1 flushed %2", "an amount, a day") : PartStories::tr("%1 on %2", "an amount, a day");
        last << what.arg(ui::volumeText(*litres), ui::shortDay(step->day, inputs.today));
    }
    story.facts.append({PartStories::tr("Drained last"), last.isEmpty() ? PartStories::tr("never yet") : last.join(QStringLiteral(", "))});
    story.chartsText = estimate ? PartStories::tr("Level %1 of %2. Drained last: %3.").arg(ui::volumeBand(estimate->sumpL), ui::volumeText(capacity), story.facts.back().second)
                                : PartStories::tr("The estimates are being made.");
    sayWhatWillStand(story, story.bars, PartStories::tr("Here stands a bar for each drain."));
    const bool dry = std::ranges::all_of(level.points, [&](const drawing::StripPoint& point) { return point.middle < 0.05 * level.top; }); // a line along the bottom
    // With the spigot open nothing rises: what runs in runs out again.
    const bool open = inputs.standing.spigot == journal::Spigot::open;
    sayWhatWillStand(story, level, !estimate ? PartStories::tr("The estimates are being made.") : open ? PartStories::tr("The spigot is open: it runs out as it comes.") : PartStories::tr("Here rises a line of its level."), dry);
    if (open && dry) level.level.reset(); // it will not be full
    story.strips = {level};
    story.cautions.append(forms::leachateCaution());
    return story;
}

PartStory stackStory(const StoryInputs& inputs)
{
    PartStory story;
    if (inputs.standing.spare() > 0 && inputs.standing.trays() > 0) addEarly(story, inputs, advice::LifeStep::addTray);
    else if (inputs.standing.spare() <= 0) {
        const int owned = inputs.standing.settings.trays;
        story.reasons << PartStories::tr("%1: no tray is spare; all %n stand.", nullptr, owned).arg(forms::formName(forms::FormKind::addTray));
    }
    if (inputs.standing.trays() > 1 && !inputs.standing.drying) addEarly(story, inputs, advice::LifeStep::lift);
    return story;
}

}
