#include "demo-data/keeper.h"

#include "core/advice/advice.h"
#include "core/journal/replay.h"
#include "core/materials/table.h"
#include "core/model/measures.h"
#include "core/reckoning/reckon.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace tierloam::demo {

using namespace model;

namespace {

constexpr int truthMember = 5;

Substance substance(std::string_view name) { return Substance::of(*materials::Table::builtIn().find(name)); }

/// As a person writes it: to so many parts of a unit, at least one.
double inParts(double value, double perUnit) { return std::max(1.0, std::round(value * perUnit)) / perUnit; }
double roundedTo(double value, double step) { return std::max(1.0, std::round(value / step)) * step; }

Share percent(double value) { return *Share::fromPercent(std::clamp(std::round(value), 0.0, 100.0)); }

}

Keeper::Keeper(const Habits& habits, Day start)
    : habits_{habits}, start_{start}, random_{habits.seed}, truth_{Ensemble::drawn(habits.seed, 64, {}, habits.setup.temp->base())}
{
    truth_.area = habits.setup.area->base();
    truth_.height = habits.setup.height->base() / 100.0;
    truth_.sumpCapacity = habits.setup.sump->base();
}

void Keeper::write(journal::Action action, std::optional<int> slot, std::string note)
{
    journal::Entry entry;
    entry.date.day = start_ + std::chrono::days{day_};
    entry.id = journal::EntryId{static_cast<std::int64_t>(entries_.size()) + 1};
    entry.positionInDay = static_cast<std::int64_t>(entries_.size()) + 1;
    entry.stack = habits_.stack;
    entry.slot = slot;
    entry.action = std::move(action);
    entry.note = std::move(note);
    entries_.push_back(std::move(entry));
}

bool Keeper::advised(std::string_view code) const
{
    if (!estimate_) return false;
    for (const advice::Advice& each : advice::adviceFor(estimate_->stacks.front()))
        if (advice::codeName(each.code) == code) return true;
    return false;
}

void Keeper::layTray()
{
    const Substance bedding = substance(habits_.bedding);
    const double grams = roundedTo(habits_.beddingGrams * normal(1.0, 0.08), 10);
    ++batches_;
    addTray(truth_, batches_, batches_, day_);
    addMatter(truth_, truth_.trays() - 1, bedding, all(grams / 1000.0), all(bedding.dryShare), 0.95 * bedding.held, false);
    write(journal::Bed{{grams, Unit::g}, habits_.bedding, {}});
}

void Keeper::begin()
{
    write(habits_.setup);
    layTray();
    stock(truth_, 0, habits_.stockedGrams / 1000.0, std::nullopt, true);
    write(journal::Stock{{habits_.stockedGrams, Unit::g}, {}, {}}, {}, "from a grower in the next valley");
}

void Keeper::feed()
{
    static constexpr std::array<std::string_view, 5> foods{"kitchen mix", "vegetable scraps mixed", "coffee grounds", "fruit waste mixed", "banana peel"};
    if (chance(habits_.missed)) return;
    const int slot = truth_.topToFeed();
    if (slot < 0) return;
    const double young = std::min(1.0, 0.45 + 0.55 * day_ / 90.0); // a new stack is fed less
    const std::string material{foods[chance(0.8) ? 0 : std::uniform_int_distribution<std::size_t>{1, foods.size() - 1}(random_)]};
    const Substance food = substance(material);
    double grams = habits_.feedGrams * young * std::exp(normal(0.0, 0.22)) * (material == "coffee grounds" ? 0.35 : 1.0);
    const double fits = room(MemberOf{truth_, truthMember}, slot) / (volumeOfDry(food.softening, food.bulk * food.dryShare) * food.dryShare);
    if (fits < 0.15) return;
    grams = roundedTo(std::min(grams, 1000.0 * fits), 10);
    addMatter(truth_, slot, food, all(grams / 1000.0), all(std::clamp(food.dryShare * normal(1.0, 0.12), 0.02, 0.6)), std::nullopt, true);
    journal::Feed fed{{grams, Unit::g}, material == "kitchen mix" ? std::string{} : material, {}};
    if (chance(0.2)) fed.side = chance(0.5) ? journal::Side::left : journal::Side::right;
    if (chance(0.06)) fed.food = {inParts(grams / food.bulk, 10), Unit::L};
    write(fed);
    if (chance(0.85)) {
        const Substance paper = substance(journal::defaultCover);
        const double covered = roundedTo(normal(32, 6), 5);
        addMatter(truth_, slot, paper, all(covered / 1000.0), all(paper.dryShare), std::nullopt, false);
        write(journal::Cover{Amount{covered, Unit::g}, {}});
    }
    if (chance(0.05)) write(journal::Feed{{roundedTo(normal(25, 8), 5), Unit::g}, "eggshell crushed", {}});
}

void Keeper::drainIfFull()
{
    StackBlock& truth = truth_.blocks[0].stack;
    const bool open = habits_.setup.spigot.value_or(journal::Spigot::open) == journal::Spigot::open;
    const double litres = open ? truth.ranOff[truthMember] - ranOffAtLastDrain_ : truth.sump[truthMember];
    if (litres < habits_.drainAboveLitres * (0.8 + 0.4 * std::uniform_real_distribution<double>{}(random_))) return;
    journal::Drain drained;
    drained.volume = Amount{inParts(litres * std::exp(normal(0.0, 0.08)), 20), Unit::L};
    if (chance(0.25)) drained.wormsPutBack = std::uniform_int_distribution<int>{1, 9}(random_);
    if (chance(0.15)) drained.ecMilliSiemensPerCm = std::round(10.0 * leachateConductivity(MemberOf{truth_, truthMember}) * std::exp(normal(0, 0.15))) / 10.0;
    if (!open) drain(truth_, std::nullopt);
    ranOffAtLastDrain_ = truth.ranOff[truthMember];
    write(drained);
}

void Keeper::look()
{
    const MemberOf truth{truth_, truthMember};
    const int slot = chance(0.6) ? 0 : std::max(truth_.topToFeed(), 0);
    journal::Check check;
    if (chance(0.6)) check.depth = centimetres(std::clamp(std::round(10.0 * castingsDepth(truth, slot) * std::exp(normal(0, 0.15))) / 10.0, 0.0, 11.0));
    if (!check.depth || chance(0.5)) check.bits = percent(5.0 * std::round((bits(truth, slot) + normal(0, 5)) / 5.0));
    if (chance(0.5)) {
        const double perArea = colony(truth) / truth_.area;
        check.worms = perArea < 0.4 ? journal::WormsSeen::few : perArea < 1.4 ? journal::WormsSeen::some : journal::WormsSeen::many;
    }
    write(check, slot + 1);
    if (chance(0.14)) write(journal::Weigh{{roundedTo(850.0 * colony(truth) * std::exp(normal(0, 0.15)), 10), Unit::g}, {}}, {}, "dumped on a sheet under the lamp, put back");
    if (chance(0.14) && truth_.trays() > 1)
        write(journal::TrayWeight{{inParts(trayWeight(truth, truth_.trays() - 1) + normal(0, 0.1), 10), Unit::kg}, {}}, truth_.trays());
}

void Keeper::readThermometer()
{
    journal::Reading reading;
    reading.bin = celsius(std::round(2.0 * (truth_.blocks[0].stack.bed[truthMember] + normal(0, 0.5))) / 2.0);
    if (chance(0.3)) reading.squeeze = std::uniform_int_distribution<int>{2, 4}(random_);
    write(reading);
}

void Keeper::oddities()
{
    if (chance(0.004)) write(journal::Event{"flies", {}}, {}, "a few small ones, covered deeper");
    if (chance(0.002)) write(journal::Event{"mites", {}}, {}, "white, on the melon rind");
    if (chance(0.003)) write(journal::Note{}, {}, "turned the cover, smells of woodland");
    const MemberOf truth{truth_, truthMember};
    const int top = truth_.topToFeed();
    if (top >= 0 && waterShare(truth, top) < 0.85 && chance(0.3)) {
        pour(truth_, top, 0.3);
        write(journal::Water{{0.3, Unit::L}});
    }
}

void Keeper::tendTrays()
{
    if (liftedOn_) {
        const int drying = day_ - *liftedOn_;
        if (drying == 2 && chance(0.7)) write(journal::Loosen{});
        if (drying < dryFor_) return;
        const double kilograms = inParts(contentsWeight(MemberOf{truth_, truthMember}, truth_.trays() - 1) * normal(1.0, 0.05), 20);
        harvest(truth_, truth_.trays() - 1, 1.0);
        write(journal::Harvest{{kilograms, Unit::kg}, {}, {}});
        liftedOn_.reset();
        layTray();
        return;
    }
    if (advised("add-tray")) {
        layTray();
    } else if (advised("harvest-ready") || advised("harvest-overdue")) {
        rotate(truth_);
        write(journal::Rotate{});
        liftedOn_ = day_;
        dryFor_ = std::uniform_int_distribution<int>{4, 6}(random_);
    }
}

void Keeper::reckonNow()
{
    reckoning::Options options;
    options.asOf = start_ + std::chrono::days{day_};
    options.members = day_ >= habits_.carefulFrom ? 512 : 64;
    options.threads = 1;
    estimate_ = reckoning::reckon(entries_, options);
}

int Keeper::live(int most, const std::function<bool(const Keeper&)>& enough)
{
    for (day_ = 0; day_ < most; ++day_) {
        if (day_ == 0) begin();
        if (day_ > 0 && day_ % 7 == 6) tendTrays();
        else if (liftedOn_) tendTrays();
        if (day_ == nextFeed_) {
            feed();
            nextFeed_ += std::uniform_int_distribution<int>{5, 9}(random_);
        }
        if (day_ % 3 == 1) drainIfFull();
        if (day_ == nextReading_) {
            readThermometer();
            nextReading_ += std::uniform_int_distribution<int>{9, 24}(random_);
        }
        if (day_ == nextLook_) {
            look();
            nextLook_ += habits_.looksEvery + std::uniform_int_distribution<int>{-8, 8}(random_);
        }
        oddities();
        DayForcing forcing;
        forcing.day = day_;
        forcing.usualTemperature = habits_.setup.temp->base() + seasonOffset(1.0, dayOfYear(start_ + std::chrono::days{day_}), false);
        forcing.spigotOpen = habits_.setup.spigot.value_or(journal::Spigot::open) == journal::Spigot::open;
        forcing.lidOff = liftedOn_.has_value();
        advanceDay(truth_, forcing);
        if ((day_ % 7 == 5 && day_ > 40) || (habits_.dailyFrom && day_ >= *habits_.dailyFrom)) {
            reckonNow();
            if (enough(*this)) return day_ + 1;
        } else if (liftedOn_ && enough(*this)) {
            return day_ + 1;
        }
    }
    return most;
}

}
