#pragma once

#include "core/journal/replay.h"

#include <cmath>
#include <random>
#include <string>

/// Journals that nobody writes, for what must hold of any.
namespace tierloam::tests {

/// Two stacks and anything that may be written down of them, in any order, amounts from nothing to what nobody has.
inline journal::Entries anything(unsigned seed, int days)
{
    std::mt19937 random{seed};
    const auto upTo = [&](double most) { return std::uniform_real_distribution<double>{0.0, most}(random); };
    const auto oneIn = [&](int n) { return std::uniform_int_distribution<int>{1, n}(random) == 1; };
    const auto wild = [&](double usual) { return usual * std::exp(8.0 * (upTo(1.0) - 0.5)); }; // a fiftieth to fifty times
    const auto grams = [&](double usual) { return Amount{wild(usual), Unit::g}; };
    const auto share = [&] { return Share::fromPercent(upTo(100.0)); };
    const char* const foods[] = {"", "coffee grounds", "eggshell crushed", "bread", "banana peel"};
    const char* const beddings[] = {"corrugated cardboard shredded", "coir", "straw"};
    const std::string stacks[] = {"Mill", "Barn"};
    journal::Entries entries;
    const auto add = [&](int day, const std::string& stack, journal::Action action, std::optional<int> slot = {}) {
        journal::Entry entry;
        entry.id = journal::EntryId{static_cast<std::int64_t>(entries.size()) + 1};
        entry.positionInDay = static_cast<std::int64_t>(entries.size()) + 1;
        entry.date.day = Day{std::chrono::year{2031} / 1 / 6} + std::chrono::days{day};
        entry.stack = stack;
        entry.slot = slot;
        entry.action = std::move(action);
        entries.push_back(std::move(entry));
        if (!journal::replay(entries).refusals.empty()) entries.pop_back(); // not possible at that point
    };
    for (const std::string& stack : stacks) {
        journal::Setup setup;
        setup.trays = 5;
        add(0, stack, setup);
        add(0, stack, journal::Bed{grams(400), beddings[0], {}});
    }
    for (int day = 0; day < days; day += oneIn(20) ? 60 : 1)
        for (int times = oneIn(3) ? 0 : oneIn(10) ? 8 : 2; times > 0; --times) {
            const std::string& stack = stacks[oneIn(2) ? 0 : 1];
            const int slot = std::uniform_int_distribution<int>{1, 4}(random);
            switch (std::uniform_int_distribution<int>{0, 21}(random)) {
            case 0: add(day, stack, journal::Bed{grams(400), beddings[std::uniform_int_distribution<int>{0, 2}(random)], oneIn(2) ? std::optional{share()} : std::nullopt}); break;
            case 1: add(day, stack, journal::Stock{grams(300), {}, oneIn(3) ? std::optional<int>{500} : std::nullopt}); break;
            case 2: case 3: case 4: add(day, stack, journal::Feed{grams(800), foods[std::uniform_int_distribution<int>{0, 4}(random)], {}}); break;
            case 5: add(day, stack, journal::Cover{grams(30), {}}); break;
            case 6: add(day, stack, journal::Water{{wild(0.5), Unit::L}}); break;
            case 7: add(day, stack, journal::Drain{Amount{oneIn(4) ? 0.0 : wild(0.5), Unit::L}, !oneIn(4), oneIn(3) ? std::optional{wild(3.0)} : std::nullopt, {}, oneIn(3) ? std::optional{journal::Spigot::shut} : std::nullopt}); break;
            case 8: add(day, stack, journal::Flush{{wild(2.0), Unit::L}, litres(wild(1.5)), {}, {}}); break;
            case 9: add(day, stack, journal::Reading{celsius(upTo(70.0) - 20.0), celsius(upTo(60.0) - 20.0), share(), share(), 1 + static_cast<int>(upTo(4.9)), 7.0, {}}); break;
            case 10: add(day, stack, journal::Check{centimetres(upTo(11.0)), share(), share(), journal::WormsSeen::many}, slot); break;
            case 11: add(day, stack, journal::Weigh{grams(400), oneIn(2) ? std::optional{Share::fromPercent(1.0 + upTo(99.0))} : std::nullopt}); break;
            case 12: add(day, stack, journal::Count{{std::floor(wild(20.0)), Unit::count}, {}}, slot); break;
            case 13: add(day, stack, journal::TrayWeight{grams(6000), {}}, slot); break;
            case 14: case 15: add(day, stack, journal::Rotate{}); break;
            case 16: add(day, stack, journal::Lid{oneIn(2)}); break;
            case 17: case 18: add(day, stack, journal::Harvest{grams(3000), share(), oneIn(2) ? std::optional{share()} : std::nullopt}); break;
            case 19: add(day, stack, journal::Remove{grams(200)}); break;
            case 20: add(day, stack, journal::Move{grams(200), stacks[stack == stacks[0] ? 1 : 0]}); break;
            default: {
                journal::Setup setup;
                setup.temp = celsius(upTo(45.0) - 5.0);
                setup.place = oneIn(2) ? journal::Place::outdoors : journal::Place::indoors;
                setup.area = squareMetres(0.02 + upTo(0.8));
                add(day, stack, setup);
            }
            }
        }
    return entries;
}

}
