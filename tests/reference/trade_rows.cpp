#include "tests/reference/trade_rows.h"

#include <algorithm>

namespace tierloam::testing {

namespace {

constexpr double never = 999;

double dayOr(const std::optional<int>& day) { return day ? *day : never; }
double firstOr(const std::vector<int>& days) { return days.empty() ? never : days[0]; }

class Rows {
public:
    explicit Rows(const Centres& centres) : centres_{centres} {}

    Diary lived(Habit habit, int days) const
    {
        habit.centres = centres_;
        return live(habit, days);
    }
    void add(std::string name, double value, double low, double high) { rows.push_back({std::move(name), value, low, high}); }

    void usual()
    {
        const Diary diary = lived({}, 3 * 365);
        add("2.5 cm of castings", dayOr(diary.enoughCastings), 35, 90);
        const bool twice = diary.added.size() >= 2;
        add("second tray", firstOr(diary.added), 60, 120);
        add("third tray after the second", twice ? diary.added[1] - diary.added[0] : never, 55, 100);
        firstHarvest_ = firstOr(diary.harvested);
        add("first harvest, 22", firstHarvest_, 185, 250);
        intervals(diary, 22);
        for (const auto [least, most] = std::ranges::minmax(diary.yieldRatio); const double ratio : {least, most}) add("quick matter in per castings", ratio, 1.7, 2.7);
        add("worst air of usual feeding", std::ranges::min(diary.air), 0.5, 1.5);
        add("harvested stack after three years, of its peak", diary.colony.back() / std::ranges::max(diary.colony), 0.5, 1.5);
        small(diary);
    }

    void small(const Diary& usual)
    {
        Habit habit;
        habit.wormsKg = 0.11;
        const Diary diary = lived(habit, 500);
        add("0.11 kg: 2.5 cm", dayOr(diary.enoughCastings), 70, 150);
        add("0.11 kg: doubled", dayOr(diary.doubled), 50, 200);
        add("0.11 kg: harvest later", firstOr(diary.harvested) - firstOr(usual.harvested), 0, 400);
        add("0.11 kg: second tray later", firstOr(diary.added) - firstOr(usual.added), 0, 400);
        habit.wormsKg = 0.9;
        add("ready after 0.9 kg", dayOr(diary.firstReady) - dayOr(lived(habit, 500).firstReady), 15, 400);
    }

    void temperatures()
    {
        struct Season { double celsius; double low, high; };
        for (const Season& season : {Season{15, 270, 370}, Season{18, 230, 300}, Season{20, 190, 290}, Season{25, 160, 210}}) {
            Habit habit;
            habit.temperature = season.celsius;
            const bool repeated = season.celsius == 18 || season.celsius == 20;
            const Diary diary = lived(habit, repeated ? 900 : 450);
            if (season.celsius != 20) add("first harvest, " + std::to_string(static_cast<int>(season.celsius)), firstOr(diary.harvested), season.low, season.high);
            if (repeated) intervals(diary, static_cast<int>(season.celsius));
        }
    }

    void beddings()
    {
        for (const char* bedding : {"pine shavings", "coconut coir (from a dry brick)"}) {
            Habit habit;
            habit.bedding = bedding;
            add(std::string{"first harvest on "} + bedding, firstOr(lived(habit, 400).harvested), 150, 250);
        }
        for (const double cm : {2.5, 9.0}) {
            Habit habit;
            habit.beddingCm = cm;
            add("other depth of cardboard: harvest later by", firstOr(lived(habit, 400).harvested) - firstHarvest_, -25, 25);
        }
    }

    void misuse()
    {
        Habit habit;
        habit.harvests = false;
        const Diary full = lived(habit, 3 * 365);
        add("never harvested: colony of its peak", full.colony.back() / std::ranges::max(full.colony), -0.5, 0.5);
        habit = {};
        habit.addsTrays = false;
        habit.overfedFrom = 30;
        const Diary fed = lived(habit, 300);
        const auto foul = std::ranges::find_if(fed.air, [](double air) { return air < 0.5; });
        add("overfed: foul air after", foul == fed.air.end() ? never : static_cast<double>(foul - fed.air.begin()) - 30, 0, 40);
        double peak = 0.0;
        double fallen = never;
        for (std::size_t day = 0; day < fed.colony.size() && fallen == never; ++day) {
            peak = std::max(peak, fed.colony[day]);
            if (fed.colony[day] < 0.6 * peak) fallen = static_cast<double>(day);
        }
        add("overfed: colony below 0.6 of its peak after", fallen - 30, 0, 200);
        habit = {};
        habit.feedPerWormADay = 0.05;
        const Diary starved = lived(habit, 450);
        add("starved: 2.5 cm late", dayOr(starved.enoughCastings), 90, 1200);
        add("starved: harvest late", firstOr(starved.harvested), 250, 1200);
    }

    std::vector<TradeRow> rows;

private:
    void intervals(const Diary& diary, int celsius)
    {
        double least = never, most = diary.harvested.size() < 4 ? never : 0;
        for (std::size_t i = 1; i < diary.harvested.size(); ++i) {
            least = std::min(least, static_cast<double>(diary.harvested[i] - diary.harvested[i - 1]));
            most = std::max(most, static_cast<double>(diary.harvested[i] - diary.harvested[i - 1]));
        }
        add("between harvests, least, " + std::to_string(celsius), least, 50, 90);
        add("between harvests, most, " + std::to_string(celsius), most, 50, 90);
    }

    const Centres& centres_;
    double firstHarvest_ = never;
};

}

std::vector<TradeRow> tradeRows(const Centres& centres)
{
    Rows rows{centres};
    rows.usual();
    rows.temperatures();
    rows.beddings();
    rows.misuse();
    return std::move(rows.rows);
}

}
