#include "ui/shelf/shelf_model.h"

#include "core/planning/feeding_plan.h"
#include "core/reckoning/overfeeding.h"
#include "ui/common/dates.h"
#include "ui/common/formats.h"
#include "ui/common/material_names.h"
#include "ui/shelf/shelf_series.h"
#include "ui/shelf/shelf_verdict.h"
#include "ui/shelf/shelf_words.h"
#include "ui/shelf/usual_acts.h"

#include <QCoreApplication>

#include <algorithm>

namespace tierloam::shelf {

namespace {

struct ShelfModelWords {
    Q_DECLARE_TR_FUNCTIONS(Shelf)
};

const reckoning::TrayEstimate* estimateOf(const reckoning::StackEstimate* stack, int batch)
{
    if (!stack) return nullptr;
    const auto found = std::find_if(stack->slots.begin(), stack->slots.end(), [batch](const reckoning::TrayEstimate& tray) { return tray.batch == batch; });
    return found == stack->slots.end() ? nullptr : &*found;
}

/// Worms now in the drying tray over those it held on the day before it was lifted; −1 when either is unknown.
double wormsLeft(const reckoning::StackReckoning* reckoning, const reckoning::StackEstimate* now, const journal::Standing& standing)
{
    if (!reckoning || !standing.drying || !standing.dryingSince) return -1;
    const auto* before = estimateOf(reckoning->on(*standing.dryingSince - std::chrono::days{1}), *standing.drying);
    const auto* after = estimateOf(now, *standing.drying);
    if (!before || !after || !(before->wormsKgPerM2.p50 > 1e-6)) return -1;
    return after->wormsKgPerM2.p50 / before->wormsKgPerM2.p50;
}

void addTrays(StackModel& stack, const journal::StackHistory& history, const journal::Standing& standing, const reckoning::StackEstimate* estimate,
              const ShelfInputs& inputs)
{
    const int slots = static_cast<int>(standing.slots.size());
    const double area = standing.settings.area.base();
    for (int slot = 1; slot <= slots; ++slot) {
        const journal::Batch& batch = history.batch(standing.slots[static_cast<std::size_t>(slot) - 1]);
        TrayFacts facts;
        facts.slot = slot;
        facts.slots = slots;
        facts.tray = batch.tray;
        facts.batch = batch.number;
        facts.bedded = batch.bedded;
        facts.ageDays = daysBetween(batch.bedded, inputs.shown);
        facts.drying = standing.drying == batch.number;
        if (facts.drying && standing.dryingSince) facts.dryingDays = daysBetween(*standing.dryingSince, inputs.shown);
        facts.fed = standing.feedSlot() == slot;
        facts.areaM2 = area;
        facts.estimate = estimateOf(estimate, batch.number);
        facts.today = inputs.today;

        drawing::TrayPicture picture;
        picture.slot = slot;
        picture.batch = batch.number;
        picture.ageDays = facts.ageDays;
        picture.drying = facts.drying;
        picture.ageLabel = ui::daysShort(facts.ageDays);
        picture.labels = trayLabels(facts);
        if (facts.estimate) {
            picture.strata = facts.estimate->strata;
            picture.wormsKg = facts.estimate->wormsKgPerM2.p50 * area;
            if (!facts.fed)
                picture.ready = drawing::Readiness{facts.estimate->readyProbability, facts.drying ? reckoning::TrayState::drying : facts.estimate->state};
        }
        stack.picture.trays.push_back(picture);
        stack.parts.push_back(trayPart(facts));
    }
}

QString spokenStack(const StackModel& stack, const journal::Standing& standing)
{
    QStringList said{stack.line};
    said << ShelfModelWords::tr("%n tray(s)", nullptr, static_cast<int>(standing.slots.size()));
    if (!standing.slots.empty()) said << (standing.lidOn ? ShelfModelWords::tr("lid on") : ShelfModelWords::tr("lid off"));
    QStringList sentences{said.join(QStringLiteral(", ")), stack.verdict.state, stack.verdict.reason};
    if (!stack.lastLine.isEmpty()) sentences << stack.lastLine;
    if (!stack.flag.isEmpty()) sentences << stack.flag;
    return sentences.join(QStringLiteral("; "));
}

/// What keeps the food of this week from being more.
QString whyNoMore(const reckoning::StackReckoning& stack)
{
    const QString rate = ui::perAreaText(reckoning::mostFreshPerM2AndDay);
    if (reckoning::asGoodAs * stack.forecast.feedNowKg < stack.forecast.feedHighKg)
        return ShelfModelWords::tr("The most that is borne today: %1 were given within these 7 days, and %2 is the most within any seven.").arg(ui::massText(advice::fedInTheWeekOf(stack, stack.asOf)), ui::mostText(advice::fedInTheWeekOf(stack, stack.asOf) + stack.forecast.feedNowKg));
    switch (advice::boundOf(stack)) {
    case advice::FoodBound::room: return ShelfModelWords::tr("The most that is borne this week: more does not fit under the rim of the tray being fed.");
    case advice::FoodBound::rate: return ShelfModelWords::tr("The most that is borne this week: a tray takes at most %1 a day.").arg(rate);
    case advice::FoodBound::worms: return ShelfModelWords::tr("The most that is borne this week: half of the worms' weight a day, and they are about %1.").arg(ui::massText(stack.now.colonyKg.p50));
    case advice::FoodBound::air: return ShelfModelWords::tr("The most that is borne this week: with more, the chance of too little air in the bed is above 5 %.");
    case advice::FoodBound::warmth: return ShelfModelWords::tr("The most that is borne this week: with more, the chance of too warm a bed is above 5 %.");
    }
    return {};
}

void addButtons(StackModel& stack, const journal::Standing& standing, const ShelfInputs& inputs)
{
    household::Usual usual = inputs.usual ? inputs.usual(stack.key) : household::Usual{};
    const reckoning::StackReckoning* reckoned = inputs.reckoning ? inputs.reckoning->stack(stack.key) : nullptr;
    const std::optional<Amount> fits = reckoned ? fittingFeeding(usual, inputs.journal->materials, *reckoned) : std::nullopt;
    const QString usually = ui::amountText(usual.feed);
    if (fits) usual.feed = *fits;
    const bool nothingFits = fits && fits->value <= 0.0;
    const QString feed = ui::amountText(usual.feed);
    stack.canDrain = inputs.shown == inputs.today && !inputs.readOnly;
    if (inputs.readOnly) stack.whyNot = ShelfModelWords::tr("The file is open for reading only: nothing can be written down.");
    else if (!stack.canDrain) stack.whyNot = ShelfModelWords::tr("Go back to today to record with one click; “…” records on the day shown.");
    else if (!standing.feedSlot()) stack.whyNot = ShelfModelWords::tr("No tray stands that takes food.");
    stack.canFeed = stack.canDrain && standing.feedSlot().has_value();
    stack.feedLabel = nothingFits ? ShelfModelWords::tr("Feed…") : ShelfModelWords::tr("Feed %1").arg(feed);
    const Amount cover = inputs.usualCover ? inputs.usualCover(stack.key) : usual.coverWithFeed.value_or(journal::defaultCoverAmount);
    const QString paper = ui::materialText(usual.coverMaterial.empty() ? journal::defaultCover : std::string_view{usual.coverMaterial});
    stack.coverLabel = ShelfModelWords::tr("Cover %1").arg(ui::amountText(cover));
    stack.waterLabel = ShelfModelWords::tr("Water %1").arg(ui::amountText(usual.water));
    stack.drainLabel = ShelfModelWords::tr("Drain %1").arg(ui::amountText(usual.drain));
    const QString food = ui::materialText(usual.feedMaterial.empty() ? journal::defaultFood : std::string_view{usual.feedMaterial});
    stack.feedTip = usual.coverWithFeed ? ShelfModelWords::tr("Writes down for today, at one click: %1 %2, and %3 of paper over it").arg(feed, food, ui::amountText(*usual.coverWithFeed))
                                        : ShelfModelWords::tr("Writes down for today, at one click: %1 %2").arg(feed, food);
    if (fits) {
        const QString why = nothingFits ? ShelfModelWords::tr("Nothing more fits under the rim of the tray being fed, with its cover over it.")
                                        : ShelfModelWords::tr("Only %1 of the usual %2 fit under the rim of the tray being fed, with the cover over it.").arg(feed, usually);
        stack.feedTip = nothingFits ? ShelfModelWords::tr("%1 The form records what was given all the same.").arg(why) : why % u' ' % stack.feedTip;
    }
    if (reckoned && stack.canFeed && !reckoned->now.slots.empty()) {
        const advice::FoodLimit limit = advice::foodLimit(*reckoned);
        const auto borne = nothingFits ? std::nullopt : borneFeeding(usual, inputs.journal->materials, limit);
        stack.limitBelowUsual = borne.has_value();
        stack.usualIsMeant = !borne && !nothingFits && limit.kg >= reckoning::leastWorthGiving;
        // The button is named by what it records: where no feeding is usual that is what keeps the worms, far below the limit.
        stack.limitLabel = limit.isWithheld() ? ShelfModelWords::tr("no food now", "beside the feeding button")
            : borne && limit.keeps ? ShelfModelWords::tr("%1 will do", "food that keeps the worms, where no feeding is usual").arg(ui::amountText(*borne))
            : nothingFits ? ShelfModelWords::tr("nothing fits", "beside the feeding button: under the rim of the tray")
            : fits && !borne ? ShelfModelWords::tr("no more fits", "beside the feeding button: under the rim of the tray")
            : limit.isSoonMore() && borne ? ShelfModelWords::tr("Feed %1 today", "a button: what is borne today, less than usual").arg(ui::amountText(limit.most))
            : limit.isSoonMore() ? ShelfModelWords::tr("could take %1 today", "food that is borne at most").arg(ui::amountText(limit.most))
            : ShelfModelWords::tr("at most %1", "food that is borne this week").arg(ui::amountText(limit.most));
        stack.limitTip = limit.isWithheld() ? ui::unbroken(QString::fromStdString(limit.withheld))
                                            : whyNoMore(*reckoned);
        if (borne && limit.keeps) stack.limitTip = ShelfModelWords::tr("No feeding is usual here: %1 keeps the worms, at most %2 is borne.").arg(ui::amountText(*borne), ui::amountText(limit.most)) % u' ' % stack.limitTip;
        stack.feedTip += u' ' % stack.limitTip;
        if (borne) stack.limitTip = ShelfModelWords::tr("%1 One click writes down %2, with its cover.").arg(stack.limitTip, ui::amountText(*borne));
    }
    stack.coverTip = ShelfModelWords::tr("Writes down for today, at one click: %1 of %2 over the tray being fed").arg(ui::amountText(cover), paper);
    stack.waterTip = ShelfModelWords::tr("Writes down for today, at one click: %1 of water into the tray being fed").arg(ui::amountText(usual.water));
    stack.drainTip = ShelfModelWords::tr("Writes down for today, at one click: %1 drained. Not for leaves eaten raw, never drunk; wash your hands. "
                                         "A few worms in it are normal: put them back.").arg(ui::amountText(usual.drain));
}

/// A word at the end of the title: what is going on with the data.
QString flagOf(const ShelfInputs& inputs, const std::string& name, const reckoning::StackEstimate* estimate, std::optional<int> silent)
{
    const auto& pending = inputs.journal->pending;
    const bool saving = !pending.empty() && std::any_of(inputs.journal->entries.begin(), inputs.journal->entries.end(), [&](const journal::Entry& entry) {
        return entry.stack == name && std::find(pending.begin(), pending.end(), entry.id) != pending.end();
    });
    if (saving) return ShelfModelWords::tr("saving…");
    if (estimate && !inputs.current) return ShelfModelWords::tr("updating…");
    if (silent) return ShelfModelWords::tr("silent for %1").arg(ui::daysShort(*silent));
    return {};
}

/// What is known of that stack on the day shown; nullptr when nothing is.
const reckoning::StackEstimate* estimateOf(const ShelfInputs& inputs, const std::string& stack)
{
    const reckoning::StackReckoning* reckoned = inputs.reckoning ? inputs.reckoning->stack(stack) : nullptr;
    return !reckoned ? nullptr : inputs.shown < inputs.today ? reckoned->on(inputs.shown) : &reckoned->now;
}

/// The largest of what is told under every stack.
Largest largestOf(const ShelfInputs& inputs)
{
    Largest largest;
    for (const journal::StackHistory& history : inputs.journal->replay.stacks) {
        const journal::Standing* standing = history.on(inputs.shown);
        const reckoning::StackEstimate* estimate = standing && !standing->retired ? estimateOf(inputs, history.name) : nullptr;
        if (!estimate) continue;
        largest.colonyKg = std::max(largest.colonyKg, estimate->colonyKg.p50);
        largest.drainedLPerWeek = std::max({largest.drainedLPerWeek, estimate->drainedLPerWeek.p50, estimate->drainedLPerWeek.p95 / 10.0}); // an upper end has three digits at most
    }
    return largest;
}

StackModel makeStack(const ShelfInputs& inputs, const Largest& largest, const journal::StackHistory& history, const journal::Standing& standing, const drawing::TimeAxis& axis)
{
    const bool past = inputs.shown < inputs.today;
    const reckoning::StackReckoning* reckoned = inputs.reckoning ? inputs.reckoning->stack(history.name) : nullptr;
    const reckoning::StackEstimate* estimate = estimateOf(inputs, history.name);

    StackModel stack;
    stack.key = history.name;
    stack.title = QString::fromStdString(history.name);
    stack.picture.trayHeightCm = standing.settings.height.base();
    stack.picture.trayAreaM2 = standing.settings.area.base();
    stack.picture.stand = standing.settings.stand;
    stack.picture.lidOn = standing.lidOn;
    stack.line = standing.slots.empty() ? ShelfModelWords::tr("no tray stands") : colonyLine(estimate, largest.colonyKg);
    stack.lastLine = lastLine(inputs.journal->entries, history, inputs.shown, inputs.today);

    SumpFacts sump;
    sump.capacityL = standing.settings.sump.base();
    sump.spigot = standing.spigot;
    sump.estimate = estimate;
    sump.today = inputs.today;
    if (reckoned && !past) sump.fullOn = reckoned->forecast.sumpFullOn;
    stack.picture.sump.capacityL = sump.capacityL;
    stack.picture.sump.spigot = sump.spigot;
    if (estimate) stack.picture.sump.levelL = estimate->sumpL.p50;
    stack.picture.sump.levelLabel = sumpLabel(sump);
    stack.picture.sump.labels = sumpLabels(sump);
    stack.parts.push_back(sumpPart(sump));
    addTrays(stack, history, standing, estimate, inputs);

    VerdictFacts verdict;
    verdict.standing = &standing;
    verdict.estimate = estimate;
    verdict.today = inputs.today;
    verdict.shown = inputs.shown;
    verdict.dryingWormsLeft = wormsLeft(reckoned, estimate, standing);
    if (standing.dryingSince) verdict.dryingDays = daysBetween(*standing.dryingSince, inputs.shown);
    if (reckoned && !past) {
        verdict.reckoning = reckoned;
        if (inputs.advice) verdict.advice = inputs.advice(*reckoned);
        if (reckoned->record.lastEntry) {
            const int silent = daysBetween(*reckoned->record.lastEntry, inputs.today);
            if (silent > silentAfter(reckoned->record.medianFeedGapDays)) verdict.silentDays = silent;
        }
    }
    stack.verdict = verdictOf(verdict);
    stack.flag = flagOf(inputs, history.name, estimate, verdict.silentDays);
    stack.value = spokenStack(stack, standing);
    addButtons(stack, standing, inputs);
    addStrips(stack, inputs.journal->entries, history, reckoned, estimate, axis, largest);
    return stack;
}

}

ShelfModel makeShelf(const ShelfInputs& inputs)
{
    ShelfModel shelf;
    shelf.household = inputs.household;
    shelf.today = inputs.today;
    shelf.shown = std::min(inputs.shown, inputs.today);
    shelf.first = inputs.today;
    shelf.axis = stripAxis(inputs.today, shelf.shown);
    bool anyBatch = false;
    const Largest largest = largestOf(inputs);
    for (const journal::StackHistory& history : household::inOrder(inputs.journal->replay.stacks, inputs.order)) {
        shelf.first = std::min(shelf.first, history.firstBedding.value_or(history.firstSetup));
        const journal::Standing* standing = history.on(shelf.shown);
        if (!standing) continue;
        if (standing->retired) {
            shelf.retiredOnly = true;
            continue;
        }
        anyBatch = anyBatch || !standing->slots.empty();
        shelf.stacks.push_back(makeStack(inputs, largest, history, *standing, shelf.axis));
    }
    shelf.retiredOnly = shelf.retiredOnly && shelf.stacks.empty();
    shelf.estimating = anyBatch && !inputs.reckoning;
    shareScales(shelf.stacks);

    shelf.line = ui::longDay(shelf.shown, shelf.shown == shelf.today ? shelf.today : inputs.today);
    // What the feeding plan has learned from the journal: one figure on both pages.
    const double usualKg = inputs.reckoning && !shelf.past() ? planning::learnedSupply(inputs.journal->entries, inputs.journal->materials, inputs.today) : 0.0;
    if (shelf.past()) shelf.line = ShelfModelWords::tr("As it stood on %1, the past").arg(shelf.line);
    else if (shelf.estimating) shelf.line = ShelfModelWords::tr("%1 · estimating…").arg(shelf.line);
    else if (usualKg > 0.005) shelf.line = ShelfModelWords::tr("%1 · usual feeding about %2 a week").arg(shelf.line, ui::massText(usualKg));
    return shelf;
}

}
