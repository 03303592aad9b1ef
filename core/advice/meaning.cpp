#include "core/advice/rules.h"
#include "core/advice/words.h"
#include "core/model/measures.h"

/// Rules and what follows from leaving them, as people read them under "Why". The table in DEVELOPERS.md says the same with its sources.
namespace tierloam::advice {

namespace {

struct Meaning { const char* rule; const char* ifLeft; };

Meaning meaningOf(Code code)
{
    switch (code) {
    case Code::harvestReady:
        return {QT_TRANSLATE_NOOP("Advice", "The top tray is filled ({filled} of castings, feed-to-cast at most 0.60), no tray is spare, and the bottom tray is ready (feed-to-cast at most 0.10, at least {ready}), both at 80 %. The bottom one is taken back at 60 %; the top one after 7 days of it, since fresh food is eaten by then, or by a check. Where a tray between both is ready and the bottom one is not, its castings are taken instead."),
                QT_TRANSLATE_NOOP("Advice", "The top tray fills to its rim, spent bedding crowds the colony, and it shrinks.")};
    case Code::readyNoHurry:
        return {QT_TRANSLATE_NOOP("Advice", "The bottom tray is ready at 80 %, but the top tray is not filled yet, or a tray is spare. Once the top tray has stood for 60 days and holds {ready} of castings, it may be lifted all the same."),
                QT_TRANSLATE_NOOP("Advice", "Nothing is lost: the castings keep where they are.")};
    case Code::harvestSoon:
        return {QT_TRANSLATE_NOOP("Advice", "The chance that the bottom tray is ready and its turn has come within 14 days is at least 50 %, and no tray is spare. Where its turn has come already, readiness is what is missing."),
                QT_TRANSLATE_NOOP("Advice", "Nothing yet; have bedding at hand for the emptied tray.")};
    case Code::harvestOverdue:
        return {QT_TRANSLATE_NOOP("Advice", "Ready and its turn for 30 days; or the top tray within {rim} of its rim; or the colony falls to 85 % or less in 60 days without a harvest, and not for want of food or in cold or heat."),
                QT_TRANSLATE_NOOP("Advice", "There is no room for food, and the colony goes on shrinking.")};
    case Code::addTray:
        return {QT_TRANSLATE_NOOP("Advice", "The top tray is filled at 80 % ({filled} of castings, feed-to-cast at most 0.60) and a tray is spare. It is taken back after 7 days at 60 % or less, since fresh food is eaten by then, or by a check."),
                QT_TRANSLATE_NOOP("Advice", "The tray fills to its rim and food no longer fits.")};
    case Code::tooEarly:
        return {QT_TRANSLATE_NOOP("Advice", "A tray was added while the chance that the one beneath is filled was below 50 % and a week's food still fitted into it, or lifted while the chance that it is ready was below 30 %."),
                QT_TRANSLATE_NOOP("Advice", "The worms are spread thin and every step after it comes later; of a tray lifted early much is food, not castings.")};
    case Code::feedDue:
        return {QT_TRANSLATE_NOOP("Advice", "The usual gap since the last feeding ends within 2 days, and at least {least} can be borne. More than the usual amount is named where that is below 0.7 of what keeps the worms and they assimilate less than 90 % of what they need, until they get all of it."),
                QT_TRANSLATE_NOOP("Advice", "After two to three weeks the worms live on bedding and reserves.")};
    case Code::overfed:
        return {QT_TRANSLATE_NOOP("Advice", "The air in a tray is below 0.7 of full, or falls below it within 14 days with at least even chances. It is taken back above 0.8 and below 30 %. Also where what was given within 7 days is more than a quarter above the most. As a hint: food is due and not even {least} is borne, or what lies in the tray would last for more than 45 days as it is eaten now, until it is 30."),
                QT_TRANSLATE_NOOP("Advice", "The bed heats and smells; below half of full air worms die.")};
    case Code::hungry:
        return {QT_TRANSLATE_NOOP("Advice", "With 80 % the worms assimilate less than they need, little that they can eat lies there, and the bed is warm enough. It is taken back at 60 %."),
                QT_TRANSLATE_NOOP("Advice", "They stop laying and shrink; some die.")};
    case Code::trayFull:
        return {QT_TRANSLATE_NOOP("Advice", "The usual week's food does not fit under the rim less {rim}, now or within 7 days. It is taken back when a quarter more fits."),
                QT_TRANSLATE_NOOP("Advice", "Food lies against the lid, and the trays above cannot rest on it.")};
    case Code::lowCarbon:
        return {QT_TRANSLATE_NOOP("Advice", "What was given in 8 weeks, cover included, has a C:N below 20 (taken back at 22); up to 25 when that of the bed is below 18 (taken back at 19). Less than {paper} of paper a week is not asked for."),
                QT_TRANSLATE_NOOP("Advice", "Nitrogen is lost as ammonia, which smells and burns worms.")};
    case Code::tooWet:
        return {QT_TRANSLATE_NOOP("Advice", "For three days the water is above 1.1 of what the tray holds at 80 %, or it ran when it was squeezed, or the moisture read says so, within 5 days. It is taken back at 60 %."),
                QT_TRANSLATE_NOOP("Advice", "The bed runs short of air, smells, and worms climb out.")};
    case Code::tooDry:
        return {QT_TRANSLATE_NOOP("Advice", "The water is below 0.65 of what the tray holds, now or within 7 days, at 50 %, or it crumbled when it was squeezed or the moisture read says so, within 5 days. It is taken back at 30 %. From 20 % on a handful is squeezed first, once in 14 days; above 50 % too, where the range is wider than 0.4."),
                QT_TRANSLATE_NOOP("Advice", "Worms eat less, below a third they stop and die.")};
    case Code::sumpFull:
        return {QT_TRANSLATE_NOOP("Advice", "The spigot is shut and the sump is full within 7 days by the middle estimate. It is taken back when that is more than 10 days off. Where the day is known to no better than a week, and one case in ten has it full within 14 days, a look comes first; it holds for 5 days."),
                QT_TRANSLATE_NOOP("Advice", "What comes then runs over on the floor.")};
    case Code::drainageLow:
        return {QT_TRANSLATE_NOOP("Advice", "Twice in a row less was drained than the lower 5 % of what the water balance expects; for 60 days or until a drain fits again."),
                QT_TRANSLATE_NOOP("Advice", "Water stands in the trays, or the bed is drier than it looks from above.")};
    case Code::drainageHigh:
        return {QT_TRANSLATE_NOOP("Advice", "Twice in a row more was drained than the upper 5 % of what is expected; or more than {much} a week run through a watered stack (taken back at {much-less})."),
                QT_TRANSLATE_NOOP("Advice", "Salts and nitrogen leave the castings, and the bed stays wet.")};
    case Code::heat:
        return {QT_TRANSLATE_NOOP("Advice", "The bed is above {hot} now or within 14 days with at least even chances, its own heat and the season included. It is taken back at 30 %."),
                QT_TRANSLATE_NOOP("Advice", "At {deadly} 2 worms in 100 die a day, at {deadlier} 15.")};
    case Code::cold:
        return {QT_TRANSLATE_NOOP("Advice", "The bed is below {cold} now or within 14 days with at least even chances. It is taken back at 30 %."),
                QT_TRANSLATE_NOOP("Advice", "They stop eating, food rots; near {frost} they die.")};
    case Code::dryingDone:
        return {QT_TRANSLATE_NOOP("Advice", "After at least 2 days in the light at most 5 % of the worms that were in the tray are left. It is taken back above 8 %."),
                QT_TRANSLATE_NOOP("Advice", "The castings dry out and cocoons in them die.")};
    case Code::dryingLong:
        return {QT_TRANSLATE_NOOP("Advice", "The tray has been in the light for more than 10 days."),
                QT_TRANSLATE_NOOP("Advice", "The castings dry hard, and the stack has one tray less meanwhile.")};
    case Code::staleRecord:
        return {QT_TRANSLATE_NOOP("Advice", "Nothing was written for more than 21 days, or for three usual gaps between feedings if that is longer; days away are left out."),
                QT_TRANSLATE_NOOP("Advice", "Every date and amount grows less certain by the week.")};
    case Code::lookNext:
        return {QT_TRANSLATE_NOOP("Advice", "A look is likely to settle whether the bottom tray is ready or the top tray filled, or it narrows the ready date by 14 days after a month without any; no look in the last 7 days. Or hardly any worms are left: less than {few}, after cold or heat less than a tenth of what there was within 60 days, or half of what there was within 120 (taken back at 0.6)."),
                QT_TRANSLATE_NOOP("Advice", "The tray is lifted too early or too late; food is given to nobody.")};
    case Code::recordDisagrees:
        return {QT_TRANSLATE_NOOP("Advice", "A value of the last 60 days lies outside what the record leads to expect; readings of the bed do not fit the set-up; more was put in than a tray holds or its trays carry; usual feedings seem to be missing; or no worms are in a stack that has bedding."),
                QT_TRANSLATE_NOOP("Advice", "Estimates rest on it as it stands.")};
    }
    return {"", ""};
}

/// The thresholds that stand in the rules, in the units chosen.
std::string withThresholds(QString text)
{
    const std::pair<const char*, QString> all[] = {
        {"{filled}", wording::lengthMeant(model::filledDepth)}, {"{ready}", wording::lengthMeant(model::readyDepth)}, {"{rim}", wording::lengthMeant(1.0)}, {"{least}", massText(0.05)}, {"{few}", massText(fewWorms)}, {"{paper}", massText(leastPaperKg)},
        {"{much}", wording::volumePerArea(muchPerM2)},    {"{much-less}", wording::volumePerArea(muchLessPerM2)}, {"{hot}", temperatureText(hotAbove)}, {"{deadly}", temperatureText(33.0)},
        {"{deadlier}", temperatureText(35.0)},       {"{cold}", temperatureText(coldBelow)},          {"{frost}", temperatureText(0.0)}};
    for (const auto& [key, value] : all) text.replace(QLatin1StringView{key}, value);
    return plain(text);
}

}

std::string ruleOf(Code code) { return withThresholds(say(meaningOf(code).rule)); }
std::string ifLeft(Code code) { return withThresholds(say(meaningOf(code).ifLeft)); }

}
