#include "ui/rotation/clock_card.h"

#include "core/planning/year_plan.h"
#include "ui/common/dates.h"
#include "ui/common/formats.h"
#include "ui/rotation/asked_stacks.h"
#include "ui/rotation/gain_words.h"

#include <QGridLayout>
#include <QLabel>
#include <QVBoxLayout>

#include <algorithm>

namespace tierloam::rotation {

namespace {

constexpr double noWormsKg = 0.005; ///< as the advice asks for worms below it

QString limitText(planning::Limit limit)
{
    switch (limit) {
    case planning::Limit::cold: return tierloam::rotation::ClockCard::tr("Cold holds it back.");
    case planning::Limit::food: return tierloam::rotation::ClockCard::tr("Food holds it back.");
    case planning::Limit::worms: return tierloam::rotation::ClockCard::tr("Too few worms hold it back.");
    case planning::Limit::bedding: return tierloam::rotation::ClockCard::tr("Bedding that is not softened holds it back.");
    case planning::Limit::water: return tierloam::rotation::ClockCard::tr("Dryness holds it back.");
    case planning::Limit::none: break;
    }
    return tierloam::rotation::ClockCard::tr("Nothing holds it back much.");
}

QString orNotWithin(const reckoning::Dates& dates, Day today)
{
    const QString text = ui::datesText(dates, today);
    return text.isEmpty() ? ClockCard::tr("not within a year") : text;
}

QString leverText(const planning::Lever& lever)
{
    const QString gained = gainedText(lever.daysGained, ClockCard::tr("no difference"));
    switch (lever.of) {
    case planning::Limit::cold: return ClockCard::tr("%1 warmer: %2").arg(ui::warmerText(lever.amount), gained);
    case planning::Limit::food: return ClockCard::tr("%1 more a week: %2").arg(ui::massText(lever.amount), gained);
    case planning::Limit::worms: return ClockCard::tr("%1 more worms: %2").arg(ui::massText(lever.amount), gained);
    case planning::Limit::bedding: return ClockCard::tr("half the bedding in the top tray: %1").arg(gained);
    case planning::Limit::water: return ClockCard::tr("%1 of water: %2").arg(ui::volumeText(lever.amount), gained);
    case planning::Limit::none: break;
    }
    return {};
}

}

ClockCard::ClockCard(household::Household& household, Background& background, QWidget* parent)
    : Card{parent}, household_{household}, background_{background}, body_{new QWidget{this}}
{
    setObjectName(QStringLiteral("clockCard"));
    ui::setAccess(this, tr("Next step of each stack"));
    column()->addWidget(ui::makeLabel(tr("Next tray to be added or lifted, and what would bring it forward"), ui::TextRole::section, this, true));
    column()->addWidget(body_);
    column()->addStretch(1);
}

std::optional<ClockCard::Clocks> ClockCard::clocksOf(const reckoning::Reckoning& reckoning, const household::StackOrder& order, std::stop_token stop)
{
    Clocks clocks;
    const AskedStacks asked = askedStacks(reckoning, order);
    for (const reckoning::StackReckoning* stack : asked.stacks) {
        if (auto clock = planning::turnClock(*stack, 1, stop, asked.standing)) clocks[stack->name] = std::move(*clock);
        if (stop.stop_requested()) return std::nullopt;
    }
    return clocks;
}

void ClockCard::refresh()
{
    const auto reckoning = household_.reckoning();
    if (!reckoning) return;
    background_.ask(QStringLiteral("clock"), [this, reckoning, order = household_.stackOrder()](std::stop_token stop) -> Background::Use {
        auto clocks = clocksOf(*reckoning, order, stop);
        if (!clocks) return {};
        return [this, reckoning, clocks = std::move(*clocks)] { tell(clocks, *reckoning); };
    });
}

void ClockCard::refreshNow()
{
    if (const auto reckoning = household_.reckoning())
        if (const auto clocks = clocksOf(*reckoning, household_.stackOrder(), {})) tell(*clocks, *reckoning);
}

void ClockCard::tell(const Clocks& clocks, const reckoning::Reckoning& of)
{
    today_ = household_.today();
    delete body_->layout();
    qDeleteAll(body_->findChildren<QWidget*>(Qt::FindDirectChildrenOnly));
    auto* rows = new QVBoxLayout{body_};
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(4);
    household::StackOrder names;
    for (const auto& [stack, clock] : clocks) names.push_back(stack);
    for (const std::string& stack : household::ordered(names, household_.stackOrder())) {
        const planning::TurnClock& clock = clocks.at(stack);
        // The due list tells it once it is sure enough; half of the members alone have it before.
        const auto* known = of.stack(stack);
        const bool told = known != nullptr && known->turnSince && (known->record.spareTrays > 0 || known->readySince);
        const QString date = clock.takenOn ? tr("castings in the light, taken about %1; the next step due %2").arg(ui::shortDay(*clock.takenOn, today_), orNotWithin(clock.turn, today_))
            : !clock.has ? orNotWithin(clock.turn, today_) : told ? tr("due now") : tr("due about now; the list says so once it is 80 % sure");
        rows->addWidget(ui::makeLabel(tr("%1: %2").arg(QString::fromStdString(stack), date), ui::TextRole::strong, body_, true));
        if (known != nullptr && known->now.colonyKg.p50 < noWormsKg) {
            rows->addWidget(ui::makeLabel(tr("By what is known it has hardly any worms: nothing but worms brings it on."), ui::TextRole::small, body_, true));
            continue;
        }
        if (clock.levers.empty()) continue;
        QStringList levers{limitText(clock.limit)};
        for (const planning::Lever& lever : clock.levers) levers << leverText(lever);
        const QString first = levers.takeFirst();
        rows->addWidget(ui::makeLabel(QStringList{first, tr("It would be due: %1.").arg(levers.join(QStringLiteral("; ")))}.join(u' '), ui::TextRole::small, body_, true));
    }
    if (const AskedStacks asked = askedStacks(of, household_.stackOrder()); asked.leavesOut())
        rows->addWidget(ui::makeLabel(tr("Of %n stack(s) these are the first %1 on the shelf: each takes a while to foresee.", nullptr, static_cast<int>(asked.standing)).arg(AskedStacks::most), ui::TextRole::smallMuted, body_, true));
    if (clocks.empty()) rows->addWidget(ui::makeLabel(tr("There is no stack yet whose next step could be foreseen."), ui::TextRole::muted, body_, true));
}

}
