#include "ui/rotation/year_lanes.h"

#include "ui/common/dates.h"
#include "ui/common/formats.h"

#include <QCoreApplication>

#include <algorithm>

namespace tierloam::rotation {

namespace {

using drawing::Lane;
using Kind = Lane::Mark::Kind;

class Words {
    Q_DECLARE_TR_FUNCTIONS(YearLanes)
};

constexpr int daysBack = 30;
constexpr int daysAhead = 365;
constexpr double readyAt = 0.8;      ///< of the chance: from here on the due list calls it ready

std::optional<Lane::Window> windowOf(const reckoning::TurnWindow& window)
{
    if (!window.early) return std::nullopt;
    constexpr int openFor = 120;
    return Lane::Window{*window.early, window.natural, window.late.value_or(window.natural + std::chrono::days{openFor}), !window.late};
}

/// The trays as they stood before today, from the journal.
void pastStays(Lane& lane, const journal::StackHistory& history, Day from, Day today)
{
    std::vector<Lane::Stay> open;
    const auto close = [&](Day day) {
        for (Lane::Stay& stay : open) {
            stay.to = day;
            if (stay.to > stay.from) lane.stays.push_back(stay);
        }
        open.clear();
    };
    std::vector<int> slots;
    bool drying = false;
    for (Day day = from; day <= today; day += std::chrono::days{1}) {
        const journal::Standing* at = history.on(day);
        if (at == nullptr) continue;
        if (at->slots == slots && at->drying.has_value() == drying) continue;
        close(day);
        slots = at->slots;
        drying = at->drying.has_value();
        for (std::size_t i = 0; i < slots.size(); ++i) {
            const journal::Batch& batch = history.batch(slots[i]);
            open.push_back({batch.tray, static_cast<int>(i) + 1, day, today, daysBetween(batch.bedded, day), drying && i + 1 == slots.size(), false});
        }
    }
    close(today);
}

}

std::optional<drawing::Lane::Ready> readyOf(const reckoning::StackReckoning& stack, Day today)
{
    if (stack.now.slots.empty() || stack.now.slots.front().state == reckoning::TrayState::drying) return std::nullopt;
    const reckoning::TrayEstimate& tray = stack.now.slots.front();
    const reckoning::Dates& on = tray.readyOn;
    const Day horizon = today + std::chrono::days{daysAhead};
    Lane::Ready ready;
    ready.already = tray.readyProbability >= readyAt;
    if (!ready.already && (!on.p10 || *on.p10 > horizon)) return std::nullopt;
    ready.middleOpen = !on.p50;
    ready.lateOpen = !on.p90 && !ready.already;
    ready.early = ready.already ? today : *on.p10;
    ready.middle = ready.already ? today : on.p50.value_or(horizon);
    ready.late = std::max(on.p90.value_or(ready.already ? today : horizon), ready.early);
    const QString chance = ui::percentText(tray.readyProbability);
    if (ready.already) ready.words = Words::tr("tray %1 ready, %2").arg(tray.tray).arg(chance);
    else if (const QString dates = on.p50 && *on.p50 > today ? ui::datesText(on, today) : QString{}; !dates.isEmpty())
        ready.words = Words::tr("tray %1 ready %2; today %3", "number, dates, chance").arg(tray.tray).arg(dates, chance);
    else if (on.p50) ready.words = Words::tr("tray %1 ready about now; today %2", "number, chance").arg(tray.tray).arg(chance);
    else ready.words = Words::tr("tray %1 ready from %2 on; today %3", "number, day, chance").arg(tray.tray).arg(ui::shortDay(std::max(*on.p10, today), today), chance);
    return ready;
}

YearLanes yearLanes(const planning::YearPlan& plan, const reckoning::Reckoning* estimates, const household::JournalView& journal, const household::StackOrder& order, Day today)
{
    YearLanes year;
    year.lanes.today = plan.from;
    year.lanes.axis.from = plan.from - std::chrono::days{daysBack};
    year.lanes.axis.to = plan.from + std::chrono::days{daysAhead};
    for (const planning::StackYear& stack : household::inOrder(plan.stacks, order)) {
        Lane lane;
        std::vector<PlanStep> steps;
        lane.name = QString::fromStdString(stack.stack);
        const journal::StackHistory* history = journal.replay.stack(stack.stack);
        const journal::Standing* standing = history != nullptr ? history->on(plan.from) : nullptr;
        lane.slots = std::max(standing != nullptr ? standing->settings.trays : 1, 1);
        if (history != nullptr) pastStays(lane, *history, year.lanes.axis.from, plan.from);
        std::map<int, Day> bedded;
        if (history != nullptr)
            for (const journal::Batch& batch : history->batches) bedded[batch.number] = batch.bedded;
        for (const reckoning::TrayStay& stay : stack.planned.stays) {
            const Day since = bedded.emplace(stay.batch, stay.from).first->second;
            lane.stays.push_back({stay.tray, stay.slot, stay.from, stay.to, daysBetween(since, stay.from), stay.drying, true});
            lane.slots = std::max(lane.slots, stay.slot);
        }
        for (const reckoning::PlannedTray& tray : stack.planned.trays) {
            PlanStep step{stack.stack, Kind::add, tray.on, tray.batch, tray.tray, false, false, windowOf(tray.window), std::nullopt, 0.0, 0, false};
            steps.push_back(step);
        }
        for (std::size_t k = 0; k < stack.planned.harvests.size(); ++k) {
            const reckoning::PlannedHarvest& harvest = stack.planned.harvests[k];
            const bool done = harvest.begun;
            if (!done)
                steps.push_back({stack.stack, harvest.atOnce ? Kind::take : Kind::lift, harvest.liftOn, harvest.batch, harvest.tray, k < stack.pinned.size() && stack.pinned[k], false,
                                 windowOf(harvest.window), harvest.castingsL, harvest.readyWhenLifted, daysBetween(harvest.window.natural, harvest.liftOn), true});
            if (!harvest.atOnce)
                steps.push_back({stack.stack, Kind::take, harvest.takeOn, harvest.batch, harvest.tray, false, done, std::nullopt, harvest.castingsL, 0.0, 0, false});
        }
        std::stable_sort(steps.begin(), steps.end(), [](const PlanStep& a, const PlanStep& b) { return a.on < b.on; });
        const auto next = std::find_if(steps.begin(), steps.end(), [&](const PlanStep& step) { return step.on >= plan.from; });
        const reckoning::StackReckoning* known = estimates != nullptr ? estimates->stack(stack.stack) : nullptr;
        lane.note = next == steps.end() ? (known != nullptr && planning::turnHangs(*known) ? Words::tr("whether it is due is not sure; a look decides") : Words::tr("nothing within a year"))
                                                        : Words::tr("%1: %2").arg(next->on == today ? ui::dueDay(next->on, today) : ui::shortDay(next->on, today), kindText(next->kind));
        if (known != nullptr) lane.ready = readyOf(*known, plan.from);
        if (lane.ready)
            for (PlanStep& step : steps)
                if (step.isHarvest && step.batch == known->now.slots.front().batch) step.ready = lane.ready->words;
        for (const PlanStep& step : steps) lane.marks.push_back({step.kind, step.on, step.pinned, step.done, step.window});
        year.lanes.lanes.push_back(std::move(lane));
        year.steps.push_back(std::move(steps));
    }
    return year;
}

void moveStep(YearLanes& year, std::pair<int, int> mark, Day on)
{
    Lane& lane = year.lanes.lanes[static_cast<std::size_t>(mark.first)];
    std::vector<PlanStep>& steps = year.steps[static_cast<std::size_t>(mark.first)];
    const PlanStep lift = steps[static_cast<std::size_t>(mark.second)];
    const auto by = on - lift.on;
    std::vector<Day> moved;              // edges of bars that go along
    for (std::size_t i = 0; i < steps.size(); ++i) {
        PlanStep& step = steps[i];
        if (step.batch != lift.batch || step.kind == Kind::add) continue;
        moved.push_back(step.on);
        step.on += by;
        step.pending = true;
        if (step.window) step.delay = daysBetween(step.window->middle, step.on);
        step.pinned = step.isHarvest;
        lane.marks[i].day = step.on;
        lane.marks[i].pending = true;
        lane.marks[i].pinned = step.pinned;
    }
    for (Lane::Stay& stay : lane.stays)
        for (Day* edge : {&stay.from, &stay.to})
            if (std::ranges::find(moved, *edge) != moved.end()) *edge += by;
    lane.note = Words::tr("being reckoned…");
}

void layPins(YearLanes& year, const planning::YearWishes& plannedWith, const planning::YearWishes& wanted)
{
    const auto pinOf = [](const planning::YearWishes& wishes, const PlanStep& step) -> std::optional<Day> {
        const auto pins = wishes.pinned.find(step.stack);
        if (pins == wishes.pinned.end()) return std::nullopt;
        const auto pin = pins->second.find(step.batch);
        return pin != pins->second.end() ? std::optional{pin->second} : std::nullopt;
    };
    for (int lane = 0; lane < static_cast<int>(year.steps.size()); ++lane)
        for (int mark = 0; mark < static_cast<int>(year.steps[static_cast<std::size_t>(lane)].size()); ++mark) {
            const PlanStep step = year.steps[static_cast<std::size_t>(lane)][static_cast<std::size_t>(mark)];
            if (!step.isHarvest) continue;
            const auto pin = pinOf(wanted, step);
            if (pin == pinOf(plannedWith, step)) continue;
            moveStep(year, {lane, mark}, pin && *pin >= year.lanes.today ? *pin : step.on);
            if (pin) continue;
            year.steps[static_cast<std::size_t>(lane)][static_cast<std::size_t>(mark)].pinned = false; // when it comes then, the new plan says
            year.lanes.lanes[static_cast<std::size_t>(lane)].marks[static_cast<std::size_t>(mark)].pinned = false;
        }
}

QString kindText(Kind kind)
{
    switch (kind) {
    case Kind::lift: return Words::tr("lift the bottom tray");
    case Kind::take: return Words::tr("take the castings");
    case Kind::add: return Words::tr("add a tray");
    }
    return {};
}

QString windowText(const Lane::Window& window, Day today)
{
    if (window.lateOpen) return Words::tr("%1 (from %2 on)").arg(ui::shortDay(window.middle, today), ui::shortDay(window.early, today));
    return Words::tr("%1 (%2)").arg(ui::shortDay(window.middle, today), ui::dayRange(window.early, window.late, today));
}

QString stepText(const PlanStep& step, Day today)
{
    QStringList parts{Words::tr("%1, %2: %3 (tray %4)").arg(QString::fromStdString(step.stack), ui::longDay(step.on, today), kindText(step.kind), QString::number(step.tray))};
    if (step.window) parts << Words::tr("due %1").arg(windowText(*step.window, today));
    if (!step.ready.isEmpty()) parts << step.ready;
    if (step.isHarvest && !step.pending) parts << Words::tr("ready on that day %1").arg(ui::percentText(step.readyWhenLifted));
    if (step.litres && !step.pending) parts << Words::tr("about %1 of castings").arg(ui::volumeBand(*step.litres));
    if (step.delay > 0) parts << Words::tr("%1 after it is due").arg(ui::daysLong(step.delay));
    else if (step.delay < 0 && step.pinned) parts << Words::tr("%1 before it is due").arg(ui::daysLong(-step.delay));
    if (step.pinned) parts << Words::tr("day chosen by hand");
    if (step.pending) parts << Words::tr("what follows from it is being reckoned");
    return parts.join(QStringLiteral("; "));
}

void StepTable::setSteps(const YearLanes& year, Day today)
{
    beginResetModel();
    rows_.clear();
    today_ = today;
    for (int lane = 0; lane < static_cast<int>(year.steps.size()); ++lane)
        for (int mark = 0; mark < static_cast<int>(year.steps[static_cast<std::size_t>(lane)].size()); ++mark)
            rows_.push_back({lane, mark, year.steps[static_cast<std::size_t>(lane)][static_cast<std::size_t>(mark)]});
    std::stable_sort(rows_.begin(), rows_.end(), [](const Row& a, const Row& b) { return a.step.on < b.step.on; });
    endResetModel();
}

const PlanStep* StepTable::stepAt(int row) const { return row >= 0 && row < static_cast<int>(rows_.size()) ? &rows_[static_cast<std::size_t>(row)].step : nullptr; }

std::optional<std::pair<int, int>> StepTable::markAt(int row) const
{
    if (row < 0 || row >= static_cast<int>(rows_.size())) return std::nullopt;
    return std::pair{rows_[static_cast<std::size_t>(row)].lane, rows_[static_cast<std::size_t>(row)].mark};
}

int StepTable::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : static_cast<int>(rows_.size()); }
int StepTable::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : 6; }

QVariant StepTable::data(const QModelIndex& index, int role) const
{
    const PlanStep* step = index.isValid() ? stepAt(index.row()) : nullptr;
    if (step == nullptr) return {};
    if (role == Qt::ToolTipRole || role == Qt::AccessibleDescriptionRole) return stepText(*step, today_);
    if (role != Qt::DisplayRole) return {};
    switch (index.column()) {
    case 0: return ui::longDay(step->on, today_);
    case 1: return QString::fromStdString(step->stack);
    case 2: return step->pinned ? Words::tr("%1 (pinned)").arg(kindText(step->kind)) : kindText(step->kind);
    case 3: return step->tray;
    case 4: return step->window ? windowText(*step->window, today_) : QString{};
    case 5: return step->litres && step->kind == Kind::take ? ui::volumeBand(*step->litres) : QString{};
    default: return {};
    }
}

QVariant StepTable::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    const QString names[] = {Words::tr("Day"), Words::tr("Stack"), Words::tr("Step"), Words::tr("Tray"), Words::tr("Due, 80 % range"), Words::tr("Castings")};
    return section >= 0 && section < 6 ? names[section] : QVariant{};
}

}
