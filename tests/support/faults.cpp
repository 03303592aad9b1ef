#include "tests/support/faults.h"

#include "core/materials/table.h"
#include "core/model/measures.h"
#include "core/model/random.h"

#include <algorithm>
#include <cmath>

namespace tierloam::tests {

using namespace journal;
using guide::Cause;
using guide::Symptom;

namespace {

constexpr int faultDays = 21;
constexpr std::int64_t firstFaultId = 950000;

class Story {
public:
    Story(std::uint64_t series, int number, Day from) : stream_{model::streamOf(series, number, model::Use::look, 4001)}, from_{from} {}

    double unit() { return model::uniform(stream_, next_++); }
    double between(double low, double high) { return low + (high - low) * unit(); }
    bool chance(double p) { return unit() < p; }

    /// Something that happens; `toldIn` of such entries are written down as well.
    void happens(int day, Action action, double toldIn = 1.0, std::optional<int> slot = {})
    {
        Entry entry;
        entry.id = EntryId{firstFaultId + static_cast<std::int64_t>(lived_.size())};
        entry.positionInDay = static_cast<std::int64_t>(entry.id);
        entry.date.day = from_ + std::chrono::days{day};
        entry.stack = "Mill";
        entry.slot = slot;
        entry.action = std::move(action);
        lived_.push_back(entry);
        if (chance(toldIn)) written_.push_back(entry);
    }
    Entries lived() const { return lived_; }
    Entries written() const { return written_; }

private:
    std::uint64_t stream_;
    int next_ = 0;
    Day from_;
    Entries lived_, written_;
};

Feed fed(double grams, const char* what = "") { return {{grams, Unit::g}, what, {}}; }

/// Three usual weeks: a feeding with its cover each week.
void usualWeeks(Story& story, double grams, bool covered = true)
{
    for (int day = 3; day < faultDays; day += 7) {
        story.happens(day, fed(grams), 0.9);
        if (covered) story.happens(day, Cover{});
    }
}

/// What goes wrong, and how much of it is written down.
void plant(Story& story, Cause cause)
{
    const double usual = story.between(400, 800);
    switch (cause) {
    case Cause::overfed:
        for (int day = 2; day < faultDays; day += 3) {
            story.happens(day, fed(story.between(1800, 3200)), 0.8);
            story.happens(day, Cover{});
        }
        break;
    case Cause::tooWet:
        usualWeeks(story, usual);
        story.happens(1, Drain{{}, {}, {}, {}, Spigot::open});
        for (int day = faultDays - 8; day < faultDays; ++day) story.happens(day, Water{{story.between(1.5, 3.0), Unit::L}}, 0.8);
        break;
    case Cause::tooDry:
        usualWeeks(story, usual * 0.5);
        story.happens(1, Lid{false}, 0.5);
        break;
    case Cause::sumpFull:
        usualWeeks(story, usual);
        story.happens(1, Drain{{}, {}, {}, {}, Spigot::shut});
        for (int day = 2; day < 12; day += 2) story.happens(day, Water{{story.between(1.2, 1.8), Unit::L}}, 0.9);
        break;
    case Cause::tooHot: {
        usualWeeks(story, usual);
        Setup hot;
        hot.temp = celsius(story.between(31.5, 34.5));
        story.happens(faultDays - 8, hot, 0.0);
        break;
    }
    case Cause::tooCold: {
        usualWeeks(story, usual);
        Setup cold;
        cold.temp = celsius(story.between(3.0, 8.0));
        story.happens(2, cold, 0.0);
        break;
    }
    case Cause::hungry: break; // nobody comes: neither in these weeks nor before, see below
    case Cause::unsuitable:
        for (int day = 3; day < faultDays; day += 7) {
            story.happens(day, fed(usual * 0.6), 0.9);
            story.happens(day, fed(usual * 0.4, story.chance(0.5) ? "oily food" : "cheese"), 0.9);
            story.happens(day, Cover{});
        }
        break;
    case Cause::uncovered: usualWeeks(story, usual, false); break;
    case Cause::lowCarbon:
        for (int day = 3; day < faultDays; day += 4) {
            story.happens(day, fed(usual * 0.5, "coffee grounds"), 0.9);
            story.happens(day, fed(usual * 0.5, "spinach"), 0.9);
            story.happens(day, Cover{Amount{5, Unit::g}, {}});
        }
        break;
    case Cause::crowded:
        usualWeeks(story, usual);
        for (int lot = 0; lot < 3; ++lot) story.happens(4, Stock{{story.between(500, 800), Unit::g}, {}, {}});
        break;
    case Cause::disturbed:
        usualWeeks(story, usual);
        story.happens(faultDays - 2, Stock{{story.between(100, 250), Unit::g}, {}, {}});
        break;
    case Cause::young: usualWeeks(story, usual * 0.6); break;
    case Cause::count: break;
    }
    // A person who notices something looks: at least one of these, their values drawn from the truth.
    const bool temperature = cause == Cause::tooHot || cause == Cause::tooCold || story.chance(0.5);
    const bool wet = cause == Cause::tooWet || cause == Cause::tooDry || story.chance(0.4);
    Reading reading;
    if (temperature) reading.bin = celsius(20);
    if (wet) reading.squeeze = 3;
    if (wet && story.chance(0.5)) reading.moisture = Share::fromPercent(70);
    if (reading != Reading{}) story.happens(faultDays - 1, reading);
    if (story.chance(0.5)) story.happens(faultDays - 1, Check{{}, {}, Share::fromPercent(40), {}});
}

void write(Action& action, reckoning::LookKind kind, double value)
{
    if (auto* reading = std::get_if<Reading>(&action)) {
        if (kind == reckoning::LookKind::bedTemperature) reading->bin = celsius(value);
        if (kind == reckoning::LookKind::moisture) reading->moisture = Share::fromPercent(std::clamp(value, 0.0, 100.0));
        if (kind == reckoning::LookKind::squeeze) reading->squeeze = static_cast<int>(value) + 1;
    }
    if (auto* check = std::get_if<Check>(&action); check && kind == reckoning::LookKind::left) check->left = Share::fromPercent(std::clamp(value, 0.0, 100.0));
}

}

std::vector<Symptom> symptomsOf(Cause cause)
{
    switch (cause) {
    case Cause::overfed: return {Symptom::smell, Symptom::sourBed, Symptom::heat, Symptom::mould, Symptom::flies};
    case Cause::tooWet: return {Symptom::standingWater, Symptom::smell, Symptom::mites, Symptom::wormsLeaving};
    case Cause::tooDry: return {Symptom::ants, Symptom::wormsDying, Symptom::mould, Symptom::noCastings};
    case Cause::sumpFull: return {Symptom::standingWater, Symptom::smell};
    case Cause::tooHot: return {Symptom::heat, Symptom::wormsDying, Symptom::wormsLeaving};
    case Cause::tooCold: return {Symptom::noCastings, Symptom::fewWorms, Symptom::wormsDying};
    case Cause::hungry: return {Symptom::fewWorms, Symptom::noCastings};
    case Cause::unsuitable: return {Symptom::smell, Symptom::flies, Symptom::mites, Symptom::sourBed};
    case Cause::uncovered: return {Symptom::flies, Symptom::mould};
    case Cause::lowCarbon: return {Symptom::smell, Symptom::heat};
    case Cause::young: return {Symptom::noCastings, Symptom::fewWorms};
    case Cause::crowded: return {Symptom::fewWorms, Symptom::wormsLeaving};
    case Cause::disturbed: return {Symptom::wormsLeaving};
    case Cause::count: break;
    }
    return {};
}

Faulty makeFaulty(std::uint64_t series, int number)
{
    Faulty faulty;
    faulty.cause = static_cast<Cause>(number % static_cast<int>(Cause::count));
    const int days = faulty.cause == Cause::young ? 24 : faulty.cause == Cause::hungry ? 200 : 0;
    faulty.household = makeHousehold(series, number, {}, {}, days);
    MadeUp& made = faulty.household;
    Entries base = made.entries;
    if (faulty.cause == Cause::hungry) { // nothing was fed since a month before
        std::erase_if(base, [&](const Entry& entry) { return daysBetween(entry.date.day, made.asOf) < 45 && (std::holds_alternative<Feed>(entry.action) || std::holds_alternative<Cover>(entry.action)); });
    }
    Story story{series, number, made.asOf};
    plant(story, faulty.cause);
    const auto symptoms = symptomsOf(faulty.cause);
    faulty.symptom = symptoms[static_cast<std::size_t>(story.unit() * static_cast<double>(symptoms.size()))];

    Entries lived = base, written = base;
    for (const Entry& entry : story.lived()) lived.push_back(entry);
    for (const Entry& entry : story.written()) written.push_back(entry);
    std::stable_sort(lived.begin(), lived.end(), inJournalOrder);
    std::stable_sort(written.begin(), written.end(), inJournalOrder);
    std::get<Setup>(lived.front().action).key = model::streamOf(series, number, model::Use::look, 1001); // the truth's own members
    made.asOf += std::chrono::days{faultDays};

    // The truth lives through the fault; what is read then is drawn from it.
    const Replay replay = journal::replay(lived);
    const materials::Table table = materials::Table::withOwn(lived);
    reckoning::Crew alone{1};
    reckoning::FilterManner blind;
    blind.ignoresLooks = true;
    reckoning::Options options;
    options.asOf = made.asOf;
    options.members = 64;
    options.threads = 1;
    reckoning::StackRun run{lived, replay.stacks.front(), table, options, alone, blind};
    int draws = 0;
    run.onLook = [&](std::size_t index, const reckoning::Look& look, const reckoning::Population& population) {
        if (static_cast<std::int64_t>(lived[index].id) < firstFaultId) return;
        const reckoning::Expectation expected = reckoning::expectation(look, model::MemberOf{population.stack, 0}, population.ranOffBefore[0]);
        const std::uint64_t stream = model::streamOf(series, number, model::Use::look, 5000 + draws++);
        const double value = reckoning::drawn(expected, model::standardNormal(stream, 0), model::uniform(stream, 1));
        for (Entry& entry : written)
            if (entry.id == lived[index].id) write(entry.action, look.kind, value);
    };
    reckoning::StackReckoning unused;
    run.run(unused, {});
    made.entries = std::move(written);
    return faulty;
}

}
