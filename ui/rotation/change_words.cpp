#include "ui/rotation/change_words.h"

#include "core/reckoning/bed_year.h"
#include "core/reckoning/overfeeding.h"
#include "ui/common/dates.h"
#include "ui/common/formats.h"
#include "ui/rotation/gain_words.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>
#include <cmath>

namespace tierloam::rotation {

namespace {

class Words {
    Q_DECLARE_TR_FUNCTIONS(ChangeWords)
};

constexpr double mayBeHungry = 0.5;   ///< on the return, above which it is said

QString orNever(const reckoning::Dates& dates, Day today)
{
    if (dates.p50 && *dates.p50 <= today) return Words::tr("already"); // a day without its year would be read as one of the next
    const QString text = ui::datesText(dates, today);
    return text.isEmpty() ? Words::tr("not within a year") : text;
}

std::vector<drawing::StripPoint> colonyOf(const std::vector<reckoning::StackEstimate>& days)
{
    std::vector<drawing::StripPoint> points;
    points.reserve(days.size());
    for (const reckoning::StackEstimate& day : days) points.push_back({day.day, day.colonyKg.p05, day.colonyKg.p50, day.colonyKg.p95});
    return points;
}

constexpr std::size_t stepsInASentence = 2;

/// Another sentence after what is said already.
void say(TriedChange& to, const QString& sentence) { to.sentence = to.sentence.isEmpty() ? sentence : QStringList{to.sentence, sentence}.join(u' '); }

QString neverRelease() { return Words::tr("Never release them into wild land, and keep to local rules on species and sale."); }

/// "200 g a week, from 3 Mar on 260 g"; of more steps only where they begin and end, and each is a line of `to`.
QString amountsText(const std::vector<reckoning::ChangedPlan::FeedFrom>& feed, Day today, TriedChange& to)
{
    if (feed.size() > stepsInASentence) {
        for (const auto& step : feed) to.feeding << Words::tr("from %1 on: %2 a week", "day, amount of food").arg(ui::shortDay(step.from, today), ui::massText(step.kgPerWeek));
        return Words::tr("%1 a week at first, step by step %2 from %3 on", "amount of food, amount, day").arg(ui::massText(feed.front().kgPerWeek), ui::massText(feed.back().kgPerWeek), ui::shortDay(feed.back().from, today));
    }
    QStringList amounts;
    for (const auto& step : feed)
        amounts << (amounts.isEmpty() ? Words::tr("%1 a week", "amount of food").arg(ui::massText(step.kgPerWeek))
                                      : Words::tr("from %1 on %2", "day, amount of food a week").arg(ui::shortDay(step.from, today), ui::massText(step.kgPerWeek)));
    return amounts.join(Words::tr(", "));
}

QString monthText(int month) { return QLocale{}.standaloneMonthName(month); }

/// A difference that would be told as none.
bool isNoFigure(double kg) { return ui::massText(std::abs(kg)) == ui::massText(0.0); }

}

void addCourse(TriedChange& to, const reckoning::PlanComparison& compared, Day today)
{
    const auto& base = compared.base;
    const auto& changed = compared.changed;
    // A harvest is the end of today's bottom tray: of another one nothing is said.
    if (compared.bottomStays) to.rows.push_back({Words::tr("bottom tray ready"), orNever(base.readyOn, today), orNever(changed.readyOn, today)});
    to.rows.push_back({Words::tr("top tray filled"), orNever(base.turnOn, today), orNever(changed.turnOn, today)});
    to.rows.push_back({Words::tr("sump full, if shut"), orNever(base.sumpFullOn, today), orNever(changed.sumpFullOn, today)});
    to.rows.push_back({Words::tr("air below 0.7 within 14 days"), ui::percentText(base.airLowWithin14Days), ui::percentText(changed.airLowWithin14Days)});
    to.rows.push_back({Words::tr("colony in 60 days"), ui::massBand(base.colonyIn60Days), ui::massBand(changed.colonyIn60Days)});
    to.rows.push_back({Words::tr("colony in a year"), ui::massBand(base.colonyInAYear), ui::massBand(changed.colonyInAYear)});
    to.usual = colonyOf(base.days);
    to.changed = colonyOf(changed.days);
    to.days = changed.days;
}

TriedChange ofPlans(const reckoning::PlanComparison& compared, Day today)
{
    TriedChange made;
    const QString sooner = gainedText(compared.readyEarlierByDays, Words::tr("no day sooner or later"));
    const reckoning::Band& more = compared.colonyMoreIn60Days;
    if (const auto heavier = heavierText(more))
        made.sentence = compared.bottomStays ? Words::tr("The bottom tray is ready %1; in 60 days the colony is %2.").arg(sooner, *heavier)
                                             : Words::tr("With the bottom tray taken, in 60 days the colony is %1.").arg(*heavier);
    else if (const QString range = heavierRange(more); !range.isEmpty())
        made.sentence = compared.bottomStays ? Words::tr("The bottom tray is ready %1; in 60 days the colony is as heavy as without the change (%2).").arg(sooner, range)
                                             : Words::tr("With the bottom tray taken, in 60 days the colony is as heavy as without the change (%1).").arg(range);
    else
        made.sentence = compared.bottomStays ? Words::tr("The bottom tray is ready %1; in 60 days the colony is as heavy as without the change.").arg(sooner)
                                             : Words::tr("With the bottom tray taken, in 60 days the colony is as heavy as without the change.");
    // What makes the colony heavier in 60 days may have choked it before.
    if (compared.changed.airLowWithin14Days > std::max(reckoning::overfedChance, compared.base.airLowWithin14Days))
        say(made, Words::tr("That is more than it can bear: with %1 the air in the bed falls below 0.7 within 14 days; it heats and smells, and below 0.5 worms die.").arg(ui::percentText(compared.changed.airLowWithin14Days)));
    addCourse(made, compared, today);
    return made;
}

void addWhatIsInTheWay(TriedChange& to, const reckoning::StackReckoning& stack, const reckoning::ChangedPlan& plan)
{
    const auto& room = stack.forecast.roomTopTrayFreshKg;
    if (plan.feedKgPerWeek && room && *plan.feedKgPerWeek > *room)
        say(to, Words::tr("Of such a week's food only about %1 fit into the tray now; what finds no room is left out.").arg(ui::massText(*room)));
    if (plan.trayAddedOn && stack.record.spareTrays <= 0) say(to, Words::tr("All its trays stand: it takes one more than there are."));
}

QString bedYearText(double yearMeanC, journal::Place place, bool southern)
{
    const reckoning::BedYear year = reckoning::bedYear(yearMeanC, place, southern);
    QStringList said{Words::tr("%1 is the mean of the whole year, and the season goes on around it: at this place the bed has about %2 in %3 and %4 in %5.", "temperature, temperature, month, temperature, month")
                         .arg(ui::temperatureText(yearMeanC), ui::temperatureText(year.coldestC), monthText(year.coldestMonth), ui::temperatureText(year.warmestC), monthText(year.warmestMonth))};
    if (year.coldestC < reckoning::coldKillsBelow) said << Words::tr("Below %1 worms die.").arg(ui::temperatureText(reckoning::coldKillsBelow));
    if (year.warmestC > reckoning::heatKillsAbove) said << Words::tr("Above %1 worms die.").arg(ui::temperatureText(reckoning::heatKillsAbove));
    return said.join(u' ');
}

void addBedYear(TriedChange& to, const reckoning::Surroundings& around, double yearMeanC)
{
    say(to, bedYearText(yearMeanC, around.settings.place, around.southern));
    const double usualC = around.settings.temp.base();
    const reckoning::BedYear usual = reckoning::bedYear(usualC, around.settings.place, around.southern), changed = reckoning::bedYear(yearMeanC, around.settings.place, around.southern);
    to.rows.insert(to.rows.begin(), {{Words::tr("bed, mean of the year"), ui::temperatureText(usualC), ui::temperatureText(yearMeanC)},
                                     {Words::tr("bed in %1", "month").arg(monthText(usual.coldestMonth)), ui::temperatureText(usual.coldestC), ui::temperatureText(changed.coldestC)},
                                     {Words::tr("bed in %1", "month").arg(monthText(usual.warmestMonth)), ui::temperatureText(usual.warmestC), ui::temperatureText(changed.warmestC)}});
}

TriedChange ofGiveAway(const planning::GiveAway& give, int weeks)
{
    TriedChange made;
    if (give.share <= 0.0) {
        made.sentence = Words::tr("None: with fewer worms the stack would not be back at its rate, or its colony at nine tenths, within %n week(s) (%1 then, %2 now).", nullptr, weeks)
                            .arg(ui::rateText(give.processingUsual), ui::rateText(give.processingNow));
        return made;
    }
    made.sentence = give.processingUsual >= give.processingNow
        ? Words::tr("Up to %1 of worms can go (%2 of the colony); within %n week(s) the stack processes as much as today again, and its worms are back to nine tenths.", nullptr, weeks).arg(ui::massText(give.kg), ui::percentText(give.share))
        : Words::tr("Up to %1 of worms can go (%2 of the colony); within %n week(s) the stack processes as much as it would with all of them, which is less than today, and its worms are back to nine tenths.", nullptr, weeks)
              .arg(ui::massText(give.kg), ui::percentText(give.share));
    say(made, neverRelease());
    made.rows = {{Words::tr("processing, dry, by then"), ui::rateText(give.processingUsual), ui::rateText(give.processingThen)},
                 {Words::tr("colony by then"), ui::massText(give.colonyUsual), ui::massText(give.colonyThen)}};
    return made;
}

TriedChange ofAnotherStack(const planning::AnotherStack& another, const reckoning::StackReckoning& stack, int weeks, Day today)
{
    if (another.share <= 0.0) return ofGiveAway(another.give, weeks);
    const planning::NewStack& young = another.young;
    TriedChange made;
    made.sentence = Words::tr("Lay %1 of bedding in the new stack's first tray, put %2 of worms in, and feed it %3.").arg(ui::massText(young.beddingKg), ui::massText(young.wormsKg), amountsText(young.feed, today, made));
    if (young.boughtKg > 0.0)
        say(made, Words::tr("This stack can spare only %1 within %n week(s): give it more weeks, or buy the rest.", nullptr, weeks).arg(ui::massText(young.wormsKg - young.boughtKg)));
    say(made, Words::tr("Its first tray is full, and the next one due: %1. The castings of the first are ready: %2. This stack is back at its rate: %3.")
                         .arg(orNever(young.secondTray, today), orNever(young.firstReady, today), orNever(another.backOn, today)));
    say(made, neverRelease());
    const reckoning::Band& colony = stack.now.colonyKg;
    const double stays = 1.0 - another.share;
    const QString food = ui::massText(stack.present->course.care.feedKg);
    made.rows = {{Words::tr("worms at the beginning"), ui::massBand(colony), ui::massBand({stays * colony.p05, stays * colony.p50, stays * colony.p95}), ui::massText(young.wormsKg)},
                 {Words::tr("food a week"), food, food, young.feed.size() < 2 ? amountsText(young.feed, today, made) : Words::tr("%1, later up to %2", "amounts of food a week").arg(ui::massText(young.feed.front().kgPerWeek), ui::massText(young.feed.back().kgPerWeek))},
                 {Words::tr("back at its rate"), Words::tr("–"), orNever(another.backOn, today)}};
    return made;
}

void addNewStack(TriedChange& to, const planning::NewStack& young, Day today)
{
    const std::pair<QString, QString> figures[] = {{Words::tr("bottom tray ready"), orNever(young.firstReady, today)},
                                                   {Words::tr("top tray filled"), orNever(young.secondTray, today)},
                                                   {Words::tr("air below 0.7 within 14 days"), ui::percentText(young.airLowWithin14Days)},
                                                   {Words::tr("colony in 60 days"), ui::massBand(young.colonyIn60Days)},
                                                   {Words::tr("colony in a year"), ui::massBand(young.colonyInAYear)}};
    for (const auto& [name, text] : figures)
        for (TriedChange::Row& row : to.rows)
            if (row.name == name) row.another = text;
    to.another = colonyOf(young.days);
}

TriedChange ofAbsence(const planning::Absence& leave, Day from, Day to, Day today)
{
    TriedChange made;
    QStringList todo;
    todo << (leave.feedKg >= reckoning::leastWorthGiving ? Words::tr("feed %1 with its cover").arg(ui::mostText(leave.feedKg)) : Words::tr("give no food"));
    if (leave.waterL >= 0.1) todo << Words::tr("pour %1 of water").arg(ui::volumeText(leave.waterL));
    if (leave.drainBefore) todo << Words::tr("drain the sump and leave the spigot over a bowl");
    made.sentence = Words::tr("Before you leave for %1: %2. Nobody need come by.").arg(ui::dayRange(from, to, today), todo.join(Words::tr(", ")));
    if (leave.left.hungryChance > mayBeHungry)
        made.sentence = Words::tr("Before you leave for %1: %2. Nobody need come by; towards the end they may live on their reserves: feed them when you are back.").arg(ui::dayRange(from, to, today), todo.join(Words::tr(", ")));
    if (leave.left.dryChance > 0.3 || leave.left.hungryChance > 0.8)
        made.sentence = Words::tr("Before you leave for %1: %2. Let somebody look in half-way.").arg(ui::dayRange(from, to, today), todo.join(Words::tr(", ")));
    made.rows = {{Words::tr("too dry on the return"), ui::percentText(leave.usual.dryChance), ui::percentText(leave.left.dryChance)},
                 {Words::tr("hungry on the return"), ui::percentText(leave.usual.hungryChance), ui::percentText(leave.left.hungryChance)}};
    return made;
}

TriedChange ofWayBack(const std::optional<planning::WayBack>& way, const reckoning::StackReckoning& stack, Day today)
{
    TriedChange made;
    if (!way) {
        made.sentence = Words::tr("The stack is not behind: it processes %1, at least 70 % of its best week of the last year.").arg(ui::rateText(stack.now.processingGDryPerDay.p50));
        return made;
    }
    QStringList todo;
    if (way->wormsKg > 0.0) todo << Words::tr("put %1 of worms in").arg(ui::massText(way->wormsKg));
    if (way->harvest) todo << Words::tr("take the bottom tray's castings");
    if (way->newTray) todo << Words::tr("lay a new tray");
    if (!way->feed.empty()) todo << Words::tr("feed %1", "amounts a week").arg(amountsText(way->feed, today, made));
    const QString date = way->on ? ui::shortDay(*way->on, today) : Words::tr("not within half a year");
    made.sentence = way->on && way->wormsKg > 0.0 ? Words::tr("None of harvest, new tray and more food brings it back by itself. With worms it does: %1. It processes %2 again about %3.").arg(todo.join(Words::tr(", ")), ui::rateText(way->goal), date)
        : way->on           ? Words::tr("The shortest way back: %1. It processes %2 again about %3.").arg(todo.join(Words::tr(", ")), ui::rateText(way->goal), date)
                            : Words::tr("None of harvest, new tray and more food brings it back to %1 within half a year, nor do %2 of worms: begin its bed anew.").arg(ui::rateText(way->goal), ui::massText(planning::WayBack::mostWormsKg));
    made.rows = {{Words::tr("back at its former rate"), way->asItIs ? ui::shortDay(*way->asItIs, today) : Words::tr("not within half a year"), date}};
    return made;
}

TriedChange ofAnotherPast(const reckoning::StackReckoning& as, const reckoning::StackReckoning& other, Day today, std::optional<Day> harvested)
{
    TriedChange made;
    const double more = other.now.colonyKg.p50 - as.now.colonyKg.p50;
    const QString now = ui::massText(as.now.colonyKg.p50), instead = ui::massText(other.now.colonyKg.p50);
    const QString on = harvested ? ui::shortDay(*harvested, today) : QString{};
    if (now == instead || isNoFigure(more)) {
        made.sentence = harvested ? Words::tr("With the bottom tray taken on %1 the colony would be what it is today, %2.").arg(on, now)
                                  : Words::tr("Without that entry the colony would be what it is today, %1.").arg(now);
    } else {
        const QString by = ui::massText(std::abs(more));
        if (harvested)
            made.sentence = (more >= 0 ? Words::tr("With the bottom tray taken on %1 the colony would be %2 today instead of %3, that is %4 heavier.")
                                       : Words::tr("With the bottom tray taken on %1 the colony would be %2 today instead of %3, that is %4 lighter.")).arg(on, instead, now, by);
        else
            made.sentence = (more >= 0 ? Words::tr("Without that entry the colony would be %1 today instead of %2, that is %3 heavier.")
                                       : Words::tr("Without that entry the colony would be %1 today instead of %2, that is %3 lighter.")).arg(instead, now, by);
    }
    const auto ready = [&](const reckoning::StackReckoning& stack) { return stack.now.slots.empty() ? QString{} : orNever(stack.now.slots.front().readyOn, today); };
    made.rows = {{Words::tr("bottom tray ready"), ready(as), ready(other)},
                 {Words::tr("top tray filled"), orNever(as.forecast.turnOn, today), orNever(other.forecast.turnOn, today)},
                 {Words::tr("colony"), ui::massBand(as.now.colonyKg), ui::massBand(other.now.colonyKg)},
                 {Words::tr("processing, dry"), ui::rateBand(as.now.processingGDryPerDay), ui::rateBand(other.now.processingGDryPerDay)}};
    made.usual = colonyOf(as.forecast.days);
    made.changed = colonyOf(other.forecast.days);
    made.days = other.history;
    made.days.insert(made.days.end(), other.forecast.days.begin(), other.forecast.days.end());
    return made;
}

}
