#include "tests/support/two_years.h"

#include "tests/support/story.h"

#include "core/advice/food_limit.h"
#include "core/advice/rules.h"
#include "core/materials/table.h"
#include "core/model/measures.h"
#include "core/reckoning/stack_run.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace tierloam::tests {

using namespace journal;
using namespace reckoning;
using advice::Advice;
using advice::Code;

namespace {

const Day start{std::chrono::year{2031} / 1 / 6};
const Bed newBedding{{480, Unit::g}, "corrugated cardboard shredded", {}};
constexpr int dryingByCalendar = 6;

Day dayAt(int day) { return start + std::chrono::days{day}; }

/// A journal that grows, and the truth behind it.
class Life {
public:
    Life(std::uint64_t series, int number) : series_{series}, number_{number} {}

    void add(int day, Action action, std::optional<int> slot = {})
    {
        Entry entry;
        entry.id = EntryId{++count_};
        entry.positionInDay = count_;
        entry.date.day = dayAt(day);
        entry.stack = "Mill";
        entry.slot = slot;
        entry.action = std::move(action);
        entries_.push_back(std::move(entry));
    }

    /// The truth up to the end of that day, without the looks; the values read are written into the journal.
    StackReckoning truthOn(int day, Lived* to = nullptr)
    {
        Entries lived = entries_;
        std::stable_sort(lived.begin(), lived.end(), inJournalOrder);
        std::get<Setup>(lived.front().action).key = model::streamOf(series_, number_, model::Use::look, 1001);
        const Replay replay = journal::replay(lived);
        if (!replay.refusals.empty()) throw std::logic_error{"an illegal story"};
        const materials::Table table = materials::Table::withOwn(lived);
        Crew alone{1};
        FilterManner blind;
        blind.ignoresLooks = true;
        StackRun run{lived, replay.stacks.front(), table, optionsFor(dayAt(day), truthMembers), alone, blind};
        int draws = 0;
        run.onLook = [&](std::size_t index, const Look& look, const Population& population) {
            const model::MemberOf member{population.stack, truth};
            const Expectation expected = expectation(look, member, population.ranOffBefore[truth]);
            const std::uint64_t stream = model::streamOf(series_, number_, model::Use::look, 2000 + draws++);
            const auto own = std::find_if(entries_.begin(), entries_.end(), [&](const Entry& each) { return each.id == lived[index].id; });
            writeValue(own->action, look.kind, drawn(expected, model::standardNormal(stream, 0), model::uniform(stream, 1)));
            if (to != nullptr && look.kind == LookKind::harvestMass) took(*to, member, look.slot, daysBetween(start, lived[index].date.day));
        };
        StackReckoning result;
        run.run(result, {});
        return result;
    }

    /// What the household knows: the reckoning of what is written.
    StackReckoning reckoned(int day, int members) const
    {
        Entries written = entries_;
        std::get<Setup>(written.front().action).key = model::streamOf(series_, number_, model::Use::look, 1002);
        const Replay replay = journal::replay(written);
        const materials::Table table = materials::Table::withOwn(written);
        Crew alone{1};
        StackRun run{written, replay.stacks.front(), table, optionsFor(dayAt(day), members), alone};
        StackReckoning result;
        run.run(result, {});
        return result;
    }

    const Entries& entries() const { return entries_; }

private:
    static void took(Lived& to, const model::MemberOf& member, int slot, int day)
    {
        const double castings = member.tray(slot).castings[member.lane];
        const double ratio = model::feedToCast(member, slot);
        to.castingsKg += castings;
        to.unprocessedKg += ratio * castings;
        ++to.harvests;
        if (ratio > 0.10) ++to.unready;
        else to.readyKg += castings;
        if (!to.firstHarvest) to.firstHarvest = day;
    }

    std::uint64_t series_;
    int number_;
    Entries entries_;
    std::int64_t count_ = 0;
};

/// What stands at the end, and what was given.
void settle(Lived& to, Life& life, int days)
{
    const StackReckoning end = life.truthOn(days, &to);
    const model::MemberOf member{end.present->members.stack, truth};
    to.colonyKg = model::colony(member);
    to.trays = end.present->members.stack.trays();
    for (int slot = 0; slot < to.trays; ++slot) to.castingsStandingKg += member.tray(slot).castings[member.lane];
    for (const Entry& entry : life.entries()) {
        if (const auto* feed = std::get_if<Feed>(&entry.action)) to.fedKg += feed->food.mass().value_or(Mass{}).base();
        if (const auto* bed = std::get_if<Bed>(&entry.action)) to.beddedKg += bed->bedding.mass().value_or(Mass{}).base();
        if (const auto* stock = std::get_if<Stock>(&entry.action)) to.stockedKg += stock->worms.mass().value_or(Mass{}).base();
    }
}

const Advice* find(const std::vector<Advice>& all, Code code)
{
    const auto found = std::find_if(all.begin(), all.end(), [code](const Advice& each) { return each.code == code; });
    return found == all.end() ? nullptr : &*found;
}

/// One who does what is advised on the day of each week's feeding, and looks at a lifted tray daily.
class Follower {
public:
    Follower(Life& life, Dice& dice, const Following& manner, Lived& to) : life_{life}, dice_{dice}, manner_{manner}, to_{to} {}

    void live()
    {
        begin();
        for (int day = 2; day <= manner_.days; ++day) {
            if (day % 7 == 2) visit(day);
            else if (lifted_ && day >= *lifted_ + 2) lookAtTheLifted(day, adviceOn(day));
        }
    }

private:
    void begin()
    {
        Setup setup;
        setup.temp = celsius(dice_.between(16, 24));
        setup.place = dice_.chance(0.6) ? Place::indoors : dice_.chance(0.6) ? Place::garage : Place::outdoors;
        setup.spigot = dice_.chance(0.5) ? Spigot::open : Spigot::shut;
        if (manner_.spigotShut) setup.spigot = Spigot::shut;
        shut_ = setup.spigot == Spigot::shut;
        life_.add(0, setup);
        life_.add(0, newBedding);
        life_.add(0, Stock{{dice_.between(150, 450), Unit::g}, {}, {}});
        weekly_ = dice_.between(400, 900) / 1000.0;
    }

    std::vector<Advice> adviceOn(int day)
    {
        if (unread_) life_.truthOn(day);
        unread_ = false;
        seen_ = life_.reckoned(day, manner_.members);
        return advice::adviceFor(seen_);
    }

    void read(int day, Action action, std::optional<int> slot = {})
    {
        life_.add(day, std::move(action), slot);
        unread_ = true;
    }

    void visit(int day)
    {
        std::vector<Advice> all = adviceOn(day);
        for (const Code code : {Code::sumpFull, Code::tooDry})
            if (const Advice* one = find(all, code); one != nullptr && one->look) {
                read(day, lookEntry(*one->look), one->slot);
                ++(code == Code::sumpFull ? to_.sumpLooks : to_.squeezes);
                all = adviceOn(day);
            }
        emptyTheSump(day, all);
        if (lifted_) lookAtTheLifted(day, all);
        else if (!stepOfTrays(day, all) && look(day, all)) stepOfTrays(day, adviceOn(day));
        if ((find(all, Code::heat) != nullptr || find(all, Code::cold) != nullptr) && !broughtIn_) {
            Setup inside;
            inside.place = Place::indoors;
            inside.temp = celsius(20);
            life_.add(day, inside);
            broughtIn_ = true;
        }
        if (find(all, Code::tooWet) != nullptr) life_.add(day, Cover{Amount{100, Unit::g}, {}});
        if (const Advice* dry = find(all, Code::tooDry); dry != nullptr && !dry->look) life_.add(day, Water{{dry->litres, Unit::L}});
        feed(day, all);
    }

    /// What is due with the trays; false: nothing is.
    bool stepOfTrays(int day, const std::vector<Advice>& all)
    {
        const bool spare = seen_.record.spareTrays > 0;
        const bool whenYouLike = find(all, Code::readyNoHurry) != nullptr && seen_.turnSince == std::nullopt && advice::mayBeLifted(seen_);
        if (find(all, Code::harvestReady) != nullptr || find(all, Code::harvestOverdue) != nullptr || whenYouLike) {
            life_.add(day, Rotate{});
            lifted_ = day;
            return true;
        }
        if (find(all, Code::addTray) != nullptr || (spare && find(all, Code::trayFull) != nullptr)) {
            life_.add(day, newBedding);
            return true;
        }
        return false;
    }

    /// The look that is advised; bits of the bottom tray where none is for a month. False: none today.
    bool look(int day, const std::vector<Advice>& all)
    {
        const Advice* next = find(all, Code::lookNext);
        if (next != nullptr && next->look) {
            read(day, lookEntry(*next->look), next->slot);
            if (*next->look == LookKind::bits && next->slot == 1) lookedOn_ = day;
            return true;
        }
        if (!manner_.bitsEachMonth || day - lookedOn_ < 28) return false;
        read(day, lookEntry(LookKind::bits), 1);
        lookedOn_ = day;
        return true;
    }

    /// With a value that is overwritten by what is found.
    static Action lookEntry(LookKind kind)
    {
        switch (kind) {
        case LookKind::depth: return Check{centimetres(2), {}, {}, {}};
        case LookKind::left: return Check{{}, {}, Share::fromPercent(30), {}};
        case LookKind::wormsSeen: return Check{{}, {}, {}, WormsSeen::some};
        case LookKind::weigh: return Weigh{{300, Unit::g}, Share::fromPercent(100)};
        case LookKind::count: return Count{{20, Unit::count}, litres(1)};
        case LookKind::trayWeight: return TrayWeight{{6, Unit::kg}, {}};
        case LookKind::moisture: return Reading{{}, {}, {}, Share::fromPercent(70), {}, {}};
        case LookKind::sumpLevel: return Reading{{}, {}, {}, {}, {}, {}, litres(1)};
        case LookKind::squeeze: return Reading{{}, {}, {}, {}, 3, {}};
        case LookKind::bedTemperature: return Reading{celsius(20), {}, {}, {}, {}, {}};
        default: return Check{{}, Share::fromPercent(10), {}, {}};
        }
    }

    /// Of the week's scraps what the stack is said to bear; the rest goes elsewhere.
    void feed(int day, const std::vector<Advice>& all)
    {
        const double supply = weekly_ * std::exp(0.25 * dice_.normal());
        if (dice_.chance(0.1)) return; // nobody at home
        const double given = std::min(supply, advice::foodLimit(seen_, all).kg);
        if (given < 0.05) return;
        life_.add(day, Feed{{given, Unit::kg}, {}, {}});
        life_.add(day, Cover{});
    }

    void lookAtTheLifted(int day, const std::vector<Advice>& all)
    {
        if (find(all, Code::dryingDone) == nullptr && find(all, Code::dryingLong) == nullptr) return;
        read(day, Harvest{{2, Unit::kg}, {}, {}});
        life_.add(day, newBedding);
        lifted_.reset();
    }

    void emptyTheSump(int day, const std::vector<Advice>& all)
    {
        if (!shut_) {
            if (day - drainedOn_ >= 28) drain(day);
            return;
        }
        const StackReckoning truly = life_.truthOn(day);
        const model::MemberOf member{truly.present->members.stack, truth};
        const bool runsOver = member.block.stack.sump[member.lane] >= 0.999 * seen_.record.sumpCapacityL;
        to_.ranOver += runsOver ? 1 : 0;
        const Advice* full = find(all, Code::sumpFull);
        const bool told = full != nullptr && !full->look; // one that asks for a look tells no date
        if (runsOver && !told) ++to_.ranOverUntold;
        const auto& foreseen = seen_.forecast.sumpFullOn.p50;
        if (told && foreseen) {
            const int first = truly.present->base.sumpFull[truth];
            const Day said = full->severity == advice::Severity::urgent ? dayAt(day) : *foreseen; // "it runs over"
            to_.sumps.push_back({dayAt(day), said, first == reckoning::never ? std::nullopt : std::optional{dayAt(first)}, seen_.forecast.sumpFullOn.p10, seen_.forecast.sumpFullOn.p90});
        }
        if (told || runsOver) drain(day);
    }

    void drain(int day)
    {
        read(day, Drain{Amount{0.5, Unit::L}, {}, {}, {}, {}});
        drainedOn_ = day;
    }

    Life& life_;
    Dice& dice_;
    const Following& manner_;
    Lived& to_;
    StackReckoning seen_;
    bool shut_ = false, unread_ = false, broughtIn_ = false;
    double weekly_ = 0;
    int lookedOn_ = 0, drainedOn_ = 0;
    std::optional<int> lifted_;
};

/// The same care, the trays by the calendar.
void byCalendar(Life& life, const Entries& followed, int days, bool sameBedding)
{
    std::vector<int> lifts;
    for (int lift = 210; lift + dryingByCalendar <= days; lift += 75) lifts.push_back(lift);
    Bed bedding = newBedding;
    if (sameBedding) { // beside the first, which is the same
        const auto beds = std::count_if(followed.begin(), followed.end(), [](const Entry& entry) { return std::holds_alternative<Bed>(entry.action); });
        bedding.bedding.value *= static_cast<double>(beds - 1) / static_cast<double>(2 + lifts.size());
    }
    std::vector<std::pair<int, Action>> steps;
    steps.emplace_back(90, bedding);
    steps.emplace_back(150, bedding);
    for (const int lift : lifts) {
        steps.emplace_back(lift, Rotate{});
        steps.emplace_back(lift + dryingByCalendar, Harvest{{2, Unit::kg}, {}, {}});
        steps.emplace_back(lift + dryingByCalendar, bedding);
    }
    auto next = steps.begin();
    bool first = true;
    for (const Entry& entry : followed) {
        const int day = daysBetween(start, entry.date.day);
        for (; next != steps.end() && next->first <= day; ++next) life.add(next->first, next->second);
        const bool ofTrays = std::holds_alternative<Rotate>(entry.action) || std::holds_alternative<Harvest>(entry.action)
            || std::holds_alternative<Check>(entry.action) || (std::holds_alternative<Bed>(entry.action) && !first);
        if (std::holds_alternative<Bed>(entry.action)) first = false;
        if (!ofTrays) life.add(day, entry.action);
    }
    for (; next != steps.end(); ++next) life.add(next->first, next->second);
}

}

TwoLives liveBoth(std::uint64_t series, int number, const Following& following)
{
    TwoLives both;
    Dice dice{series, number};
    Life one{series, number};
    Follower{one, dice, following, both.following}.live();
    settle(both.following, one, following.days);
    for (const bool sameBedding : {false, true}) {
        Life other{series, number};
        byCalendar(other, one.entries(), following.days, sameBedding);
        settle(sameBedding ? both.sameBedding : both.calendar, other, following.days);
    }
    return both;
}

}
