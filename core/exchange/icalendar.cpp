#include "core/exchange/icalendar.h"

#include "core/wording/dates.h"
#include "core/wording/formats.h"
#include "core/quantity/day_text.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>
#include <cstdio>

namespace tierloam::exchange {

namespace {

using reckoning::PlannedHarvest;

constexpr std::size_t octets = 75;   ///< of a line without its CRLF

class Words {
    Q_DECLARE_TR_FUNCTIONS(Calendar)
};

std::string compactDay(Day day)
{
    std::string text = dayText(day);
    std::erase(text, '-');
    return text;
}

std::string compactStamp(std::chrono::sys_seconds stamp)
{
    const Day day = std::chrono::floor<std::chrono::days>(stamp);
    const std::chrono::hh_mm_ss time{stamp - day};
    char text[16];
    std::snprintf(text, sizeof text, "T%02d%02d%02dZ", static_cast<int>(time.hours().count()), static_cast<int>(time.minutes().count()), static_cast<int>(time.seconds().count()));
    return compactDay(day) + text;
}

/// The stack's key and the day on which it was first bedded: two households that share a calendar may both have a stack of one name.
std::string keyOf(const std::string& stack, const journal::Replay& replay)
{
    const journal::StackHistory* history = replay.stack(stack);
    char hex[17];
    std::snprintf(hex, sizeof hex, "%016llx", static_cast<unsigned long long>(history != nullptr ? history->key : journal::stackKey(stack)));
    return history != nullptr && history->firstBedding ? hex + ('-' + compactDay(*history->firstBedding)) : hex;
}

std::string uid(const std::string& key, std::string_view what, const std::string& which)
{
    return key + '-' + std::string{what} + (which.empty() ? std::string{} : '-' + which) + "@tierloam";
}

/// The half-year of that day, from April and from October on: a summer and a winter lie in one each, on either half of the globe.
std::string seasonOf(Day day)
{
    const std::chrono::year_month_day date{day};
    const unsigned month = static_cast<unsigned>(date.month());
    const int year = static_cast<int>(date.year()) - (month < 4 ? 1 : 0);
    return std::to_string(year) + (month >= 4 && month < 10 ? "-april" : "-october");
}

std::string ofSlot(const advice::Advice& one, const reckoning::StackReckoning& stack)
{
    return one.slot && *one.slot <= static_cast<int>(stack.now.slots.size()) ? std::to_string(stack.now.slots[static_cast<std::size_t>(*one.slot) - 1].batch) : std::string{};
}

/// What tells this matter from the next of its kind.
std::string whichOf(const advice::Advice& one, const reckoning::StackReckoning* stack)
{
    using advice::Code;
    if (stack == nullptr) return {};
    switch (one.code) {
    case Code::feedDue:
    case Code::hungry: return stack->record.lastFeed ? dayText(*stack->record.lastFeed) : std::string{"first"};
    case Code::sumpFull:
    case Code::drainageLow:
    case Code::drainageHigh: return stack->record.lastDrain ? dayText(*stack->record.lastDrain) : std::string{"first"};
    case Code::dryingDone:
    case Code::dryingLong: return stack->now.slots.empty() ? std::string{} : std::to_string(stack->now.slots.back().batch);
    case Code::staleRecord: return stack->record.lastEntry ? dayText(*stack->record.lastEntry) : std::string{};
    case Code::heat:
    case Code::cold: return seasonOf(one.on);
    case Code::recordDisagrees: return one.wormsMissing ? "worms" : one.entry ? std::to_string(*one.entry) : one.unwritten ? dayText(one.unwritten->day) : std::string{};
    case Code::lookNext: return ofSlot(one, *stack) + (one.look ? '-' + std::to_string(static_cast<int>(*one.look)) : std::string{});
    default: return ofSlot(one, *stack);
    }
}

/// Advice that the plan holds as a step of its own.
bool isInPlan(advice::Code code)
{
    using advice::Code;
    return code == Code::harvestReady || code == Code::harvestSoon || code == Code::harvestOverdue || code == Code::addTray || code == Code::dryingDone || code == Code::dryingLong;
}

std::string said(const QString& text) { return text.toStdString(); }

QString litresText(const reckoning::Band& litres) { return Words::tr("about %1 of castings").arg(wording::volumeBand(litres)); }

void addPlan(std::vector<CalendarEvent>& events, const planning::YearPlan& plan, const journal::Replay& replay)
{
    for (const planning::StackYear& year : plan.stacks) {
        const std::string key = keyOf(year.stack, replay);
        const QString stack = QString::fromStdString(year.stack);
        const auto window = [](const reckoning::TurnWindow& turn) {
            const auto day = [](Day each) { return wording::fullDay(each); };
            if (!turn.early) return Words::tr("due %1").arg(day(turn.natural));
            return turn.late ? Words::tr("due %1 (%2 to %3)").arg(day(turn.natural), day(*turn.early), day(*turn.late))
                             : Words::tr("due %1 (from %2 on)").arg(day(turn.natural), day(*turn.early));
        };
        for (const reckoning::PlannedTray& tray : year.planned.trays)
            events.push_back({uid(key, "bed", std::to_string(tray.batch)), tray.on, said(Words::tr("%1: add a tray (tray %2)").arg(stack, QString::number(tray.tray))), said(window(tray.window))});
        for (const PlannedHarvest& harvest : year.planned.harvests) {
            const std::string batch = std::to_string(harvest.batch);
            if (harvest.atOnce) {
                events.push_back({uid(key, "take", batch), harvest.takeOn, said(Words::tr("%1: take the castings of the only tray, its worms back into new bedding").arg(stack)),
                                  said(Words::tr("%1; %2").arg(window(harvest.window), litresText(harvest.castingsL)))});
                continue;
            }
            if (!harvest.begun)
                events.push_back({uid(key, "lift", batch), harvest.liftOn, said(Words::tr("%1: lift the bottom tray (tray %2)").arg(stack, QString::number(harvest.tray))),
                                  said(Words::tr("%1; %2").arg(window(harvest.window), litresText(harvest.castingsL)))});
            events.push_back({uid(key, "take", batch), harvest.takeOn, said(Words::tr("%1: take the castings, lay new bedding (tray %2)").arg(stack, QString::number(harvest.tray))), said(litresText(harvest.castingsL))});
        }
    }
}

}

std::vector<CalendarEvent> calendarEvents(const std::vector<advice::Advice>& advice, const reckoning::Reckoning& reckoning, const planning::YearPlan* plan, const journal::Replay& replay)
{
    std::vector<CalendarEvent> events;
    for (const advice::Advice& one : advice) {
        if (plan != nullptr && isInPlan(one.code)) continue;
        const std::string which = whichOf(one, reckoning.stack(one.stack));
        events.push_back({uid(keyOf(one.stack, replay), advice::codeName(one.code), which), one.on,
                          said(Words::tr("%1: %2").arg(QString::fromStdString(one.stack), QString::fromStdString(one.text))), one.because});
    }
    if (plan != nullptr) addPlan(events, *plan, replay);
    std::stable_sort(events.begin(), events.end(), [](const CalendarEvent& a, const CalendarEvent& b) { return a.day != b.day ? a.day < b.day : a.uid < b.uid; });
    // One matter, one event: a UID that came twice (two values of one entry) is told once.
    std::vector<CalendarEvent> once;
    for (CalendarEvent& event : events)
        if (std::none_of(once.begin(), once.end(), [&](const CalendarEvent& each) { return each.uid == event.uid; })) once.push_back(std::move(event));
    return once;
}

std::string escapedText(std::string_view text)
{
    std::string out;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        if (c == '\r') {
            if (i + 1 < text.size() && text[i + 1] == '\n') continue;
            out += "\\n";
        } else if (c == '\n') {
            out += "\\n";
        } else if (c == '\\' || c == ';' || c == ',') {
            out += '\\';
            out += c;
        } else if (static_cast<unsigned char>(c) >= 0x20 || c == '\t') {
            if (c != 0x7f) out += c;
        }
    }
    return out;
}

std::string foldedLine(std::string_view line)
{
    std::string out;
    std::size_t room = octets;
    while (line.size() > room) {
        std::size_t cut = room;
        while (cut > 0 && (static_cast<unsigned char>(line[cut]) & 0xC0U) == 0x80U) --cut; // not inside a character
        if (cut == 0) cut = room;                                                          // no UTF-8: cut anywhere
        out += line.substr(0, cut);
        out += "\r\n ";
        line.remove_prefix(cut);
        room = octets - 1; // the blank counts
    }
    out += line;
    out += "\r\n";
    return out;
}

std::string calendarText(const CalendarHead& head, const std::vector<CalendarEvent>& events)
{
    std::string text;
    const auto line = [&](const std::string& content) { text += foldedLine(content); };
    line("BEGIN:VCALENDAR");
    line("VERSION:2.0");
    line("PRODID:-//Tierloam//Tierloam " + escapedText(head.version) + "//EN");
    line("CALSCALE:GREGORIAN");
    line("NAME:" + escapedText(head.household)); // RFC 7986, 5.1
    for (const CalendarEvent& event : events) {
        line("BEGIN:VEVENT");
        line("UID:" + event.uid);
        line("DTSTAMP:" + compactStamp(head.stamp));
        line("DTSTART;VALUE=DATE:" + compactDay(event.day));
        line("DTEND;VALUE=DATE:" + compactDay(event.day + std::chrono::days{1}));
        line("SUMMARY:" + escapedText(event.summary));
        if (!event.description.empty()) line("DESCRIPTION:" + escapedText(event.description));
        line("TRANSP:TRANSPARENT"); // it keeps nobody busy
        line("END:VEVENT");
    }
    line("END:VCALENDAR");
    return text;
}

}
