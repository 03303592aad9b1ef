#include "tests/support/households.h"

#include "tests/support/story.h"

#include "core/materials/table.h"
#include "core/model/elementary.h"
#include "core/model/measures.h"
#include "core/model/random.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <map>

namespace tierloam::tests {

using namespace journal;
using namespace reckoning;

Options optionsFor(Day asOf, int members)
{
    Options options;
    options.asOf = asOf;
    options.members = members;
    options.threads = 1;
    return options;
}

void writeValue(Action& action, LookKind kind, double value)
{
    if (auto* check = std::get_if<Check>(&action)) {
        if (kind == LookKind::depth) check->depth = centimetres(value);
        if (kind == LookKind::bits) check->bits = Share::fromPercent(value);
        if (kind == LookKind::left) check->left = Share::fromPercent(value);
        if (kind == LookKind::wormsSeen) check->worms = static_cast<WormsSeen>(static_cast<int>(value));
    } else if (auto* weigh = std::get_if<Weigh>(&action)) {
        weigh->worms = {value, Unit::kg};
    } else if (auto* count = std::get_if<Count>(&action)) {
        count->number = {value, Unit::count};
    } else if (auto* drained = std::get_if<Drain>(&action)) {
        if (kind == LookKind::drain) drained->volume = Amount{value, Unit::L};
        if (kind == LookKind::conductivity) drained->ecMilliSiemensPerCm = value;
    } else if (auto* weight = std::get_if<TrayWeight>(&action)) {
        weight->weight = {std::max(value, 0.05), Unit::kg};
    } else if (auto* reading = std::get_if<Reading>(&action)) {
        if (kind == LookKind::bedTemperature) reading->bin = celsius(value);
        if (kind == LookKind::moisture) reading->moisture = Share::fromPercent(std::clamp(value, 0.0, 100.0));
        if (kind == LookKind::sumpLevel) reading->sump = litres(std::max(value, 0.0));
        if (kind == LookKind::squeeze) reading->squeeze = static_cast<int>(value) + 1;
    } else if (auto* harvest = std::get_if<Harvest>(&action)) {
        if (kind == LookKind::harvestMass) harvest->taken = {value, Unit::kg};
    }
}

namespace {

const Day start{std::chrono::year{2031} / 1 / 6};

class Writer {
public:
    Entry& add(int day, Action action, std::optional<int> slot = {})
    {
        Entry entry;
        entry.id = EntryId{++number_};
        entry.positionInDay = number_;
        entry.date.day = start + std::chrono::days{day};
        entry.stack = "Mill";
        entry.slot = slot;
        entry.action = std::move(action);
        return entries_.emplace_back(std::move(entry));
    }
    Entries inOrder() const
    {
        Entries sorted = entries_;
        std::stable_sort(sorted.begin(), sorted.end(), inJournalOrder);
        return sorted;
    }

private:
    Entries entries_;
    std::int64_t number_ = 0;
};

/// The journal without its values: what is done and when, and where one looks.
Entries storyOf(Dice& dice, int days, const Looking& looking, const Misfit& misfit)
{
    Writer notes;
    Setup setup;
    setup.temp = celsius(dice.between(16, 24));
    setup.place = dice.chance(0.6) ? Place::indoors : dice.chance(0.6) ? Place::garage : Place::outdoors;
    setup.spigot = dice.chance(0.5) ? Spigot::open : Spigot::shut;
    notes.add(0, setup);
    const int bedding = misfit.threeBeddings ? dice.whole(0, 2) : 0;
    const char* const beddings[] = {"corrugated cardboard shredded", "pine shavings", "coconut coir (from a dry brick)"};
    const double beddingGrams[] = {480, 700, 700};
    const Bed bed{{beddingGrams[bedding], Unit::g}, beddings[bedding], {}};
    notes.add(0, bed);
    notes.add(0, Stock{{dice.between(150, 450), Unit::g}, {}, {}});
    const double weekly = dice.between(400, 900);
    const int second = dice.whole(75, 110);
    const int third = second + dice.whole(60, 100);
    const int rotated = third + dice.whole(50, 110);
    for (int day = 2; day <= days; day += 7) {
        if (dice.chance(0.1)) continue; // a week without an entry
        const double grams = weekly * std::exp(0.25 * dice.normal());
        notes.add(day, dice.chance(0.8) ? Feed{{grams, Unit::g}, {}, {}} : Feed{{grams / 450.0, Unit::L}, {}, {}});
        notes.add(day, Cover{});
        if (dice.chance(0.25)) notes.add(day, Water{{dice.between(200, 700), Unit::mL}});
    }
    if (second <= days) notes.add(second, bed);
    if (third <= days) notes.add(third, bed);
    bool harvested = false;
    if (rotated + 6 <= days) {
        notes.add(rotated, Rotate{});
        notes.add(rotated + 6, Harvest{{2, Unit::kg}, {}, {}});
        notes.add(rotated + 6, bed);
        harvested = true;
    }
    const auto drying = [&](int day) { return harvested && day >= rotated && day <= rotated + 6; };
    for (int day = 25; day <= days; day += dice.whole(26, 34)) {
        if (drying(day)) continue;
        const int trays = 1 + (day >= second ? 1 : 0) + (day >= third ? 1 : 0);
        const int drawnSlot = dice.chance(0.6) ? 1 : dice.whole(1, trays);
        const int slot = looking.bitsEveryMonth ? 1 : drawnSlot; // who asks when the bottom tray is ready looks there
        Check check;
        if (looking.bitsEveryMonth || (looking.depthOrBits && dice.chance(0.5))) {
            check.bits = Share::fromPercent(10);
        } else if (looking.depthOrBits) {
            check.depth = centimetres(2);
        }
        if (check != Check{}) notes.add(day, check, slot);
        notes.add(day, Drain{Amount{0.5, Unit::L}, {}, looking.others && dice.chance(0.3) ? std::optional{2.0} : std::nullopt, {}, {}});
        if (!looking.others) continue;
        if (dice.chance(0.2)) notes.add(day + 1, Check{{}, {}, Share::fromPercent(30), {}});
        if (dice.chance(0.2)) notes.add(day + 1, Check{{}, {}, {}, WormsSeen::some});
        if (dice.chance(0.15)) notes.add(day + 1, Count{{20, Unit::count}, litres(1)}, slot);
        if (dice.chance(0.2)) notes.add(day + 1, TrayWeight{{6, Unit::kg}, {}}, slot);
        Reading reading;
        if (dice.chance(0.4)) reading.bin = celsius(20);
        if (dice.chance(0.2)) reading.moisture = Share::fromPercent(70);
        if (dice.chance(0.2)) reading.squeeze = 3;
        if (reading != Reading{}) notes.add(day + 1, reading);
    }
    if (looking.weighings)
        for (int day = dice.whole(80, 180); day <= days; day += 182)
            if (!drying(day)) notes.add(day, Weigh{{300, Unit::g}, Share::fromPercent(dice.chance(0.5) ? 100 : 30)});
    Entries entries = notes.inOrder();
    std::erase_if(entries, [&](const Entry& entry) { return entry.date.day > start + std::chrono::days{days}; });
    return entries;
}

void setKey(Entries& entries, std::uint64_t key) { std::get<Setup>(entries.front().action).key = key; }

/// What the truth lives through where it departs from what is written: the journal that really happened.
Entries livedOf(const Entries& written, Dice& dice, const Misfit& misfit)
{
    Entries lived = written;
    if (misfit.classRates) {
        // A fifth of the kitchen mix's dry matter is of a class that softens more than twice as fast or as slowly, so that the mix as a whole
        // is about a fifth off its rate; and what is written as paper is cardboard, a quarter slower.
        const bool faster = dice.chance(0.5);
        const double drier = faster ? 0.16 / 0.0855 : 0.16 / 0.40;
        std::int64_t more = 700000;
        for (std::size_t i = lived.size(); i-- > 0;) {
            if (auto* cover = std::get_if<Cover>(&lived[i].action)) cover->material = "corrugated cardboard shredded";
            auto* feed = std::get_if<Feed>(&lived[i].action);
            if (feed == nullptr || kindOf(feed->food.unit) != UnitKind::mass) continue;
            Entry other = lived[i];
            other.id = EntryId{++more};
            other.action = Feed{{0.2 * drier * feed->food.value, feed->food.unit}, faster ? "watermelon flesh" : "coffee grounds", {}};
            feed->food.value *= 0.8;
            lived.insert(lived.begin() + static_cast<std::ptrdiff_t>(i), other);
        }
    }
    for (Entry& entry : lived) {
        if (auto* feed = std::get_if<Feed>(&entry.action); feed != nullptr && misfit.wetterMix > 0.0) feed->food.value *= 1.0 - misfit.wetterMix;
    }
    if (misfit.season > 0.0) {
        const double base = std::get<Setup>(written.front().action).temp->base();
        const double phase = dice.between(0.0, 365.0);
        const int days = daysBetween(start, written.back().date.day);
        for (int day = 1; day <= days; day += 10) {
            Entry entry = written.front();
            entry.id = EntryId{800000 + day};
            entry.positionInDay = -1;
            entry.date.day = start + std::chrono::days{day};
            Setup setup;
            setup.temp = celsius(base + misfit.season * std::cos(6.283185307 * (day - phase) / 365.0));
            entry.action = setup;
            lived.push_back(entry);
        }
        std::stable_sort(lived.begin(), lived.end(), inJournalOrder);
    }
    return lived;
}

double castingsIn(const model::MemberOf& of, int slot) { return of.tray(slot).castings[of.lane]; }

}

MadeUp makeHousehold(std::uint64_t series, int number, const Looking& looking, const Misfit& misfit, int wantedDays)
{
    Dice dice{series, number};
    const int days = wantedDays > 0 ? wantedDays : dice.whole(240, 540);
    MadeUp made;
    made.firstBedding = start;
    made.asOf = start + std::chrono::days{days};
    Entries written = storyOf(dice, days, looking, misfit);
    // The last looks are taken the day before the end, so that something known is asked of a filter that ignores what it is told.
    {
        Entry last = written.front();
        last.date.day = made.asOf - std::chrono::days{1};
        last.action = Weigh{{300, Unit::g}, {}};
        last.id = EntryId{900001};
        last.positionInDay = 900001;
        if (looking.weighings) written.push_back(last);
        last.action = Check{{}, Share::fromPercent(10), {}, {}};
        last.slot = 1;
        last.id = EntryId{900002};
        last.positionInDay = 900002;
        if (looking.depthOrBits) written.push_back(last);
        std::stable_sort(written.begin(), written.end(), inJournalOrder);
    }
    Entries lived = livedOf(written, dice, misfit);
    if (misfit.unwrittenShare > 0.0) // Given and not written: they stay in what was lived and leave what was written
        std::erase_if(written, [&](const Entry& entry) { return std::holds_alternative<Feed>(entry.action) && dice.chance(misfit.unwrittenShare); });
    setKey(lived, model::streamOf(series, number, model::Use::look, 1001));
    const Replay replay = journal::replay(lived);
    const materials::Table table = materials::Table::withOwn(lived);
    Crew alone{1};
    FilterManner blind;
    blind.ignoresLooks = true;
    StackRun run{lived, replay.stacks.front(), table, optionsFor(made.asOf, truthMembers), alone, blind};
    int draws = 0;
    std::map<std::int64_t, std::vector<std::pair<LookKind, double>>> values;
    run.onLook = [&](std::size_t entry, const Look& look, const Population& population) {
        const Expectation expected = expectation(look, model::MemberOf{population.stack, truth}, population.ranOffBefore[truth]);
        const std::uint64_t stream = model::streamOf(series, number, model::Use::look, 2000 + draws++);
        const double value = drawn(expected, model::standardNormal(stream, 0), model::uniform(stream, 1));
        values[static_cast<std::int64_t>(lived[entry].id)].emplace_back(look.kind, value);
        if (lived[entry].date.day + std::chrono::days{1} == made.asOf && look.kind != LookKind::drain) made.lastLooks.emplace_back(look, value);
    };
    StackReckoning result;
    run.run(result, {});
    for (Entry& entry : written)
        for (const auto& [kind, value] : values[static_cast<std::int64_t>(entry.id)]) writeValue(entry.action, kind, value);
    setKey(written, model::streamOf(series, number, model::Use::look, 1002));
    made.entries = std::move(written);
    const Present& present = *result.present;
    const model::MemberOf member{present.members.stack, truth};
    made.colonyKg = model::colony(member);
    made.castingsKg = castingsIn(member, 0);
    made.feedToCast = model::feedToCast(member, 0);
    made.batch = present.members.stack.shapes.front().batch;
    const int ready = present.base.firsts.at(made.batch).ready[truth];
    if (ready != never) made.readyOn = start + std::chrono::days{ready};
    made.bottomReady = model::ready(member, 0);
    made.topFilled = present.members.stack.topToFeed() >= 0 && model::filled(member, present.members.stack.topToFeed());
    if (const int full = present.base.sumpFull[truth]; full != never) made.sumpFullOn = start + std::chrono::days{full};
    made.readyAhead = ready > daysBetween(start, made.asOf);
    for (const auto& [look, value] : made.lastLooks)
        made.logDensityOfLast += logDensity(expectation(look, member, present.members.ranOffBefore[truth]), value);
    return made;
}

double Reckoned::rank(const std::vector<double>& values, double of) const
{
    const Population& members = stack->present->members;
    const std::vector<double> weights = members.weights.normalised();
    double below = 0.0;
    for (std::size_t i = 0; i < values.size(); ++i) below += values[i] < of ? weights[i] : 0.0;
    return below;
}

namespace {

template <class Read>
std::vector<double> readAll(const StackReckoning& stack, Read read)
{
    const Population& members = stack.present->members;
    std::vector<double> values;
    for (int i = 0; i < members.stack.members(); ++i) values.push_back(read(model::MemberOf{members.stack, i}, members.ranOffBefore[static_cast<std::size_t>(i)]));
    return values;
}

}

std::vector<double> Reckoned::colony() const { return readAll(*stack, [](const model::MemberOf& m, double) { return model::colony(m); }); }
std::vector<double> Reckoned::castings() const { return readAll(*stack, [](const model::MemberOf& m, double) { return castingsIn(m, 0); }); }
std::vector<double> Reckoned::feedToCast() const { return readAll(*stack, [](const model::MemberOf& m, double) { return model::feedToCast(m, 0); }); }
std::vector<double> Reckoned::logDensityOfLast(const MadeUp& household) const
{
    return readAll(*stack, [&](const model::MemberOf& m, double ranOff) {
        double sum = 0.0;
        for (const auto& [look, value] : household.lastLooks) sum += logDensity(expectation(look, m, ranOff), value);
        return sum;
    });
}

Reckoned reckonHousehold(const MadeUp& household, int members, const FilterManner& manner)
{
    const Replay replay = journal::replay(household.entries);
    const materials::Table table = materials::Table::withOwn(household.entries);
    Crew alone{1};
    StackRun run{household.entries, replay.stacks.front(), table, optionsFor(household.asOf, members), alone, manner};
    auto result = std::make_shared<StackReckoning>();
    run.run(*result, {});
    return {result};
}

int householdsAsked()
{
    if (const char* wanted = std::getenv("TIERLOAM_HOUSEHOLDS")) return std::atoi(wanted);
    return std::getenv("TIERLOAM_LONG") != nullptr ? 200 : 24;
}

double chiSquare(const std::vector<double>& ranks, int bins)
{
    std::vector<int> counts(static_cast<std::size_t>(bins), 0);
    for (const double rank : ranks) ++counts[static_cast<std::size_t>(std::min(static_cast<int>(rank * bins), bins - 1))];
    const double expected = static_cast<double>(ranks.size()) / bins;
    double sum = 0.0;
    for (const int count : counts) sum += (count - expected) * (count - expected) / expected;
    return sum;
}

}
