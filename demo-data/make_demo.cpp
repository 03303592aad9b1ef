// Makes demo-data/journal.csv: a household of our own invention, two years of three stacks in a mill cottage.
// Run by hand (make_demo demo-data/journal.csv); the journal itself is kept, so that the demo is the same for everyone.
#include "core/exchange/journal_csv.h"
#include "demo-data/keeper.h"

#include <QFile>
#include <QString>
#include <QTextStream>

#include <algorithm>
#include <cstdio>

using namespace tierloam;

namespace {

journal::Setup setup(double celsiusOfBed, journal::Spigot spigot, journal::Stand stand)
{
    journal::Setup made;
    made.area = squareMetres(0.16);
    made.height = centimetres(11);
    made.trays = 3;
    made.sump = litres(4);
    made.spigot = spigot;
    made.place = journal::Place::indoors;
    made.temp = celsius(celsiusOfBed);
    made.stand = stand;
    return made;
}

/// Lives a stack and moves its dates so that it ends on `end`: indoors a few weeks of season are less than a degree.
journal::Entries livedUntil(Day end, const demo::Habits& habits, int most, const std::function<bool(const demo::Keeper&)>& enough)
{
    const Day start = end - std::chrono::days{most};
    demo::Keeper keeper{habits, start};
    const int lived = keeper.live(most, enough);
    std::fprintf(stderr, "%s: %d days\n", habits.stack.c_str(), lived);
    journal::Entries entries = keeper.entries();
    for (journal::Entry& entry : entries) entry.date.day += std::chrono::days{most - lived + 1};
    return entries;
}

}

int main(int argc, char** argv)
{
    if (argc != 2) return 2;
    const Day end = *parseDay("2031-05-04");
    demo::Habits scullery{.stack = "Scullery", .setup = setup(21, journal::Spigot::open, journal::Stand::legs), .stockedGrams = 450, .feedGrams = 1000, .carefulFrom = 680, .seed = 14};
    demo::Habits leanTo{.stack = "Lean-to", .setup = setup(19, journal::Spigot::shut, journal::Stand::legs), .stockedGrams = 450, .feedGrams = 850,
                        .missed = 0.03, .drainAboveLitres = 3.9, .carefulFrom = 120, .dailyFrom = 150, .seed = 23};
    demo::Habits cellar{.stack = "Cellar", .setup = setup(19, journal::Spigot::open, journal::Stand::legs), .stockedGrams = 500, .feedGrams = 800, .missed = 0.08, .carefulFrom = 480, .seed = 37};

    journal::Entries all = livedUntil(end, scullery, 770, [](const demo::Keeper& k) {
        return k.day() > 690 && k.daysDrying() < 0 && k.advised("harvest-ready")
            && k.estimate()->forecast.colonyMedianIn60DaysKg > 0.87 * k.estimate()->now.colonyKg.p50;
    });
    const journal::Entries young = livedUntil(end, leanTo, 260, [](const demo::Keeper& k) {
        return k.day() > 105 && k.trays() == 2 && k.daysDrying() < 0 && k.estimate()->forecast.sumpFullOn.p50
            && daysBetween(k.estimate()->asOf, *k.estimate()->forecast.sumpFullOn.p50) <= 5 && k.estimate()->now.sumpL.p50 < 3.85;
    });
    const journal::Entries drying = livedUntil(end, cellar, 800, [](const demo::Keeper& k) { return k.day() > 480 && k.daysDrying() == 1; });
    all.insert(all.end(), young.begin(), young.end());
    all.insert(all.end(), drying.begin(), drying.end());
    std::stable_sort(all.begin(), all.end(), [](const journal::Entry& a, const journal::Entry& b) { return a.date.day < b.date.day; });
    std::int64_t number = 0;
    for (journal::Entry& entry : all) {
        entry.id = journal::EntryId{++number};
        entry.positionInDay = number;
    }
    std::printf("%zu entries from %s\n", all.size(), dayText(all.front().date.day).c_str());
    if (const auto why = exchange::exportJournal(QString::fromLocal8Bit(argv[1]), all)) {
        std::fprintf(stderr, "%s\n", qPrintable(*why));
        return 1;
    }
    return 0;
}
