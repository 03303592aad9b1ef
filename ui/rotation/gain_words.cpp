#include "ui/rotation/gain_words.h"

#include "ui/common/dates.h"
#include "ui/common/formats.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace tierloam::rotation {

namespace {

class Words {
    Q_DECLARE_TR_FUNCTIONS(GainWords)
};

QString soonerOrLater(int days) { return days >= 0 ? Words::tr("%1 sooner").arg(ui::daysLong(days)) : Words::tr("%1 later").arg(ui::daysLong(-days)); }

QString heavierOrLighter(double kg)
{
    const QString amount = ui::massText(std::abs(kg));
    return kg >= 0 ? Words::tr("%1 heavier").arg(amount) : Words::tr("%1 lighter").arg(amount);
}

bool isNone(double kg) { return ui::massText(std::abs(kg)) == ui::massText(0.0); }

reckoning::Band turned(const reckoning::Band& band) { return {-band.p95, -band.p50, -band.p05}; }

}

QString gainedText(const reckoning::Band& days, const QString& none)
{
    const int middle = static_cast<int>(std::lround(days.p50));
    const int low = std::min(static_cast<int>(std::lround(days.p05)), middle), high = std::max(static_cast<int>(std::lround(days.p95)), middle);
    const QString value = middle == 0 ? none : soonerOrLater(middle);
    if (low == high) return value;
    if (middle > 0 && low >= 0) return ui::withRange(value, QString::number(low), QString::number(high));
    if (middle < 0 && high <= 0) return ui::withRange(value, QString::number(-high), QString::number(-low));
    if (low == 0) return Words::tr("%1 (up to %2)", "no difference, 3 days sooner").arg(value, soonerOrLater(high));
    if (high == 0) return Words::tr("%1 (up to %2)", "no difference, 3 days sooner").arg(value, soonerOrLater(low));
    return Words::tr("%1 (from %2 to %3)", "3 days sooner, 1 day later, 9 days sooner").arg(value, soonerOrLater(low), soonerOrLater(high));
}

std::optional<QString> heavierText(const reckoning::Band& kg)
{
    if (isNone(kg.p50)) return std::nullopt;
    const reckoning::Band whole{std::min(kg.p05, kg.p50), kg.p50, std::max(kg.p95, kg.p50)};
    if (whole.p05 >= 0) return Words::tr("%1 heavier").arg(ui::massBand(whole));
    if (whole.p95 <= 0) return Words::tr("%1 lighter").arg(ui::massBand(turned(whole)));
    return Words::tr("%1 (from %2 to %3)", "3 days sooner, 1 day later, 9 days sooner").arg(heavierOrLighter(whole.p50), heavierOrLighter(whole.p05), heavierOrLighter(whole.p95));
}

std::optional<QString> waitingText(const reckoning::Band& kg)
{
    constexpr double worthSaying = 0.01; ///< kg
    if (std::abs(kg.p50) < worthSaying) return std::nullopt;
    const reckoning::Band whole{std::min(kg.p05, kg.p50), kg.p50, std::max(kg.p95, kg.p50)};
    if (whole.p05 >= 0) return Words::tr("waiting costs %1 of worms").arg(ui::massBand(whole));
    if (whole.p95 <= 0) return Words::tr("waiting leaves %1 more of worms").arg(ui::massBand(turned(whole)));
    const QString range = Words::tr("from %1 more to %2 fewer", "amounts of worms").arg(ui::massText(-whole.p05), ui::massText(whole.p95));
    return whole.p50 > 0 ? Words::tr("waiting costs %1 of worms (%2)", "amount, range in words").arg(ui::massText(whole.p50), range)
                         : Words::tr("waiting leaves %1 more of worms (%2)", "amount, range in words").arg(ui::massText(-whole.p50), range);
}

QString volumeOfYear(const reckoning::Band& litres)
{
    const Unit unit = ui::measures() == ui::Measures::us ? Unit::gal : Unit::L;
    const double size = inBaseUnit(unit);
    if (litres.p50 < size) return ui::volumeBand(litres);
    const int decimals = litres.p50 / size < 9.95 ? 1 : 0;
    const auto number = [&](double value) { return ui::numberText(value / size, decimals); };
    return ui::withRange(QString{number(litres.p50) % QChar::Nbsp % ui::unitText(unit)}, number(litres.p05), number(litres.p95));
}

bool gainedByGathering(const planning::YearPlan& plan) { return plan.wishes.gathering == planning::Gathering::gathered && plan.days.days < plan.apart.days; }

QString gatheredText(const planning::YearPlan& plan)
{
    const int fewer = plan.apart.days - plan.days.days;
    const int delay = std::max(plan.days.delay - plan.apart.delay, 0);
    if (gainedByGathering(plan)) {
        const QString days = Words::tr("%n day(s) of lifting fewer", nullptr, fewer);
        return delay > 0 ? Words::tr("Gathered: %1, for %2 of delay in all; none waits more than %3 for others.").arg(days, ui::daysLong(delay), ui::daysLong(plan.wishes.mostWait))
                         : Words::tr("Gathered: %1, and none waits.").arg(days);
    }
    const auto stacks = std::count_if(plan.apart.lift.begin(), plan.apart.lift.end(), [](const std::vector<int>& each) { return !each.empty(); });
    if (stacks < 2) return Words::tr("Nothing can be gathered: harvests of two stacks meet, and only one stack has any.");
    const auto nearest = planning::nearestApart(plan.apart);
    if (!nearest) return Words::tr("Nothing is left to be gathered: the harvests meet as they come.");
    if (*nearest > plan.wishes.mostWait)
        return Words::tr("Nothing can be gathered: the two harvests that come nearest to each other are %1 apart, and none may wait more than %2.").arg(ui::daysLong(*nearest), ui::daysLong(plan.wishes.mostWait));
    return Words::tr("Nothing is gathered: a day saved is worth %1 of delay here, and the wait, with what it holds up in its stack, would come to more.")
        .arg(ui::daysLong(static_cast<int>(std::lround(planning::tripFor(plan.wishes.mostWait)))));
}

QString heavierRange(const reckoning::Band& kg)
{
    return isNone(kg.p05) && isNone(kg.p95) ? QString{} : Words::tr("from %1 to %2", "10 g lighter, 30 g heavier").arg(heavierOrLighter(kg.p05), heavierOrLighter(kg.p95));
}

}
