#pragma once

#include "core/advice/advice.h"
#include "core/reckoning/overdue.h"
#include "core/reckoning/overfeeding.h"

#include <QCoreApplication>
#include <QString>

#include <algorithm>
#include <utility>
#include <vector>

/// The rules by theme; each appends what holds now. See DEVELOPERS.md for the table of codes.
namespace tierloam::advice {

// Thresholds that the words of a rule name as well (meaning.cpp). °C; that something is to be done from 30 and 5 on is common practice, no source.
inline constexpr double hotAbove = reckoning::overfedWarmth;
inline constexpr double coldBelow = reckoning::chilledBelow;
inline constexpr double fewWorms = 0.005; // kg: a dozen grown ones, which eat nothing worth giving. Ours
inline constexpr double leastPaperKg = 0.03; // a week; less is within a handful. Ours
// Litres a week and m² of tray; common practice, no source.
inline constexpr double muchPerM2 = 12.0;
inline constexpr double muchLessPerM2 = 9.0;

void rulesOfHarvest(const reckoning::StackReckoning& stack, std::vector<Advice>& to);
/// What to look at next; after all others, since what is due anyway needs no look.
void rulesOfLooks(const reckoning::StackReckoning& stack, std::vector<Advice>& to);
void rulesOfFeeding(const reckoning::StackReckoning& stack, std::vector<Advice>& to);
void rulesOfDrainage(const reckoning::StackReckoning& stack, std::vector<Advice>& to);
void rulesOfRecord(const reckoning::StackReckoning& stack, std::vector<Advice>& to);
/// Whether any worms are left.
void rulesOfColony(const reckoning::StackReckoning& stack, std::vector<Advice>& to);
/// The tray in light-drying, and what was done before its time.
void rulesOfDrying(const reckoning::StackReckoning& stack, std::vector<Advice>& to);
/// Too much, too little, and what it is made of.
void rulesOfFood(const reckoning::StackReckoning& stack, std::vector<Advice>& to);
void rulesOfWater(const reckoning::StackReckoning& stack, std::vector<Advice>& to);
void rulesOfClimate(const reckoning::StackReckoning& stack, std::vector<Advice>& to);

/// Ready before its turn, no tray is spare, and the tray above has had the time that the trade gives it: it may be lifted, though nothing presses.
bool mayBeLifted(const reckoning::StackReckoning& stack);

/// A tray between the bottom and the one being fed that is ready while the bottom one is not, though the turn has come and none is spare: taken instead.
/// nullptr: none.
const reckoning::TrayEstimate* readyBetween(const reckoning::StackReckoning& stack);

/// What is said of a turn that has come and waits for readiness, where no look is asked for with it.
QString notReadyYet(const reckoning::StackReckoning& stack);

/// "on 3 May the colony was 390 g, now 190 g": where it has come down by half without a word of its keeper; empty: it has not.
QString dwindledText(const reckoning::StackReckoning& stack);

/// Days before which a feeding that falls due is told.
inline constexpr int feedToldAhead = 2;

/// Fewer worms than food is worth giving for.
bool hasHardlyAWorm(const reckoning::StackReckoning& stack);

/// The latest entry of the last 60 days by which a stack was given what it cannot hold or carry; nullptr: none.
const reckoning::Oversized* oversizedOf(const reckoning::StackReckoning& stack, reckoning::Oversized::What what);

/// Takes out what another piece of advice forbids.
void settleContradictions(std::vector<Advice>& all);

inline bool isAway(const reckoning::Record& record, Day day)
{
    return record.awayFrom && record.awayUntil && day >= *record.awayFrom && day <= *record.awayUntil;
}

/// The absences that have not begun, ascending, both days included; somebody is there between them.
inline std::vector<std::pair<Day, Day>> awaysAhead(const reckoning::Record& record)
{
    if (!record.nextAwayFrom || !record.nextAwayUntil) return {};
    std::vector<std::pair<Day, Day>> ahead{{*record.nextAwayFrom, *record.nextAwayUntil}};
    ahead.insert(ahead.end(), record.laterAway.begin(), record.laterAway.end());
    return ahead;
}

inline QString say(const char* text) { return QCoreApplication::translate("Advice", text); }

/// The highest tray not drying; nullptr when none is.
inline const reckoning::TrayEstimate* trayToFeed(const reckoning::StackReckoning& stack)
{
    for (auto tray = stack.now.slots.rbegin(); tray != stack.now.slots.rend(); ++tray)
        if (tray->state != reckoning::TrayState::drying) return &*tray;
    return nullptr;
}

/// All of one usual feeding is within this week's limit; false where nothing is usual yet.
inline bool usualIsBorne(const reckoning::StackReckoning& stack)
{
    return reckoning::isBorne(stack.record.usualFeedKg, stack.forecast.feedNowKg);
}

/// The usual feedings do not keep the worms, who eat what there is: they get less than nine tenths of what they need, until they get all of it.
bool getsTooLittle(const reckoning::StackReckoning& stack);

/// Of a stack's food, in the unit of its usual amount (food_limit.h): rounded downwards as a limit is, and to the nearest.
QString mostFoodText(const reckoning::StackReckoning& stack, double kg);
QString foodText(const reckoning::StackReckoning& stack, double kg);

/// Depth of castings as it is told: by a wrong entry there may be more of them than a tray holds, and nobody would believe the figure.
inline double castingsUnderTheRim(const reckoning::StackReckoning& stack, const reckoning::TrayEstimate& tray)
{
    return std::min(tray.castingsDepthCm.p50, stack.record.trayHeightCm);
}

inline bool isDrying(const reckoning::StackReckoning& stack)
{
    return !stack.now.slots.empty() && stack.now.slots.back().state == reckoning::TrayState::drying;
}

/// Texts of advice go into files and to screen readers too: plain blanks, which the window holds to their units again.
inline std::string plain(QString text) { return text.replace(QChar::Nbsp, u' ').toStdString(); }

inline void add(std::vector<Advice>& to, const reckoning::StackReckoning& stack, Code code, Severity severity, std::optional<int> slot, Day on,
                const QString& text, const QString& because)
{
    to.push_back({stack.name, code, severity, slot, std::max(on, stack.asOf), plain(text), plain(because)});
}

}
