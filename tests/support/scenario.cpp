#include "tests/support/scenario.h"

#include "core/materials/table.h"

#include <algorithm>
#include <cmath>

namespace tierloam::testing {

using namespace model;

namespace {

Substance substance(const std::string& name) { return Substance::of(*materials::Table::builtIn().find(name)); }

class MedianHousehold {
public:
    explicit MedianHousehold(const Habit& habit) : habit_{habit}, stack_{Ensemble::median({}, habit.temperature)}
    {
        for (const auto& [parameter, centre] : habit.centres)
            std::fill_n(stack_.blocks[0].parameters.value[static_cast<int>(parameter)], lanes, centre);
    }

    Diary live(int days)
    {
        layTray();
        stock(stack_, 0, habit_.wormsKg, std::nullopt, true);
        for (day_ = 0; day_ < days; ++day_) {
            tend();
            DayForcing forcing;
            forcing.day = day_;
            forcing.usualTemperature = habit_.temperature;
            forcing.holdTemperature = forcing.holdWater = true;
            forcing.lidOff = drying();
            advanceDay(stack_, forcing);
            note();
        }
        return diary_;
    }

private:
    bool drying() const { return !stack_.shapes.empty() && stack_.shapes.back().drying; }
    MemberOf median() const { return {stack_, 0}; }
    PerMember all(double value) const { return PerMember(static_cast<std::size_t>(stack_.members()), value); }

    void give(int slot, const Substance& what, double kg, bool feeding)
    {
        if (kg > 0.0) addMatter(stack_, slot, what, all(kg), all(what.dryShare), std::nullopt, feeding);
    }

    void layTray()
    {
        std::vector<bool> used(static_cast<std::size_t>(habit_.traysOwned) + 1, false);
        for (const TrayShape& shape : stack_.shapes) used[static_cast<std::size_t>(shape.tray)] = true;
        const int tray = static_cast<int>(std::find(used.begin() + 1, used.end(), false) - used.begin());
        addTray(stack_, ++batches_, tray, day_);
        const Substance bedding = substance(habit_.bedding);
        const double fresh = beddingMass(bedding, stack_.area, habit_.beddingCm);
        addMatter(stack_, stack_.trays() - 1, bedding, all(fresh), all(bedding.dryShare), 0.95 * bedding.held, false);
    }

    void tend()
    {
        if (drying() && day_ - liftedOn_ >= habit_.daysDrying) {
            noteHarvest();
            harvest(stack_, stack_.trays() - 1, 1.0);
            layTray();
        }
        if (day_ % 7 == 0 && day_ > 0) feedTheWeek();
        if (drying()) return;
        const bool turn = filled(median(), stack_.trays() - 1);
        if (!turn || !habit_.addsTrays) return;
        if (stack_.trays() < habit_.traysOwned) {
            layTray();
            diary_.added.push_back(day_);
        } else if (habit_.harvests && stack_.trays() > 1 && ready(median(), 0)) {
            rotate(stack_);
            liftedOn_ = day_;
            liftedShare_ = stack_.blocks[0].trays.back().share[0];
        }
    }

    void feedTheWeek()
    {
        const int slot = stack_.topToFeed();
        if (slot < 0) return;
        const Substance food = substance("kitchen mix");
        const Substance paper = substance("newspaper shredded");
        const bool overfed = habit_.overfedFrom && day_ >= *habit_.overfedFrom;
        const double wanted = overfed ? 3.5 : std::min(habit_.mostFeedAWeek, 7.0 * habit_.feedPerWormADay * colony(median()));
        const double paperVolume = habit_.paperAWeek * paper.dryShare * volumeOfDry(paper.softening, paper.bulk * paper.dryShare);
        const double roomForFood = std::max(0.0, room(median(), slot) - paperVolume);
        const double fits = roomForFood / volumeOfDry(food.softening, food.bulk * food.dryShare) / food.dryShare;
        give(slot, food, std::min(wanted, fits), true);
        if (room(median(), slot) >= paperVolume) give(slot, paper, habit_.paperAWeek, false);
    }

    void noteHarvest()
    {
        const int slot = stack_.trays() - 1;
        diary_.harvested.push_back(day_);
        double quick = 0.0;
        for (int c = 0; c < quickClasses; ++c) quick += stack_.shapes.back().weight[c];
        diary_.yieldRatio.push_back(quick / median().tray(slot).castings[0]);
    }

    void note()
    {
        const MemberOf member = median();
        const int slot = slotOfFirst();
        const double kg = colony(member);
        diary_.colony.push_back(kg);
        if (!diary_.doubled && kg >= 2.0 * habit_.wormsKg) diary_.doubled = day_;
        if (slot >= 0) {
            diary_.ratio.push_back(feedToCast(member, slot));
            if (!diary_.enoughCastings && castingsDepth(member, slot) >= 2.5) diary_.enoughCastings = day_;
            if (!diary_.firstReady && ready(member, slot)) diary_.firstReady = day_;
        }
        double worst = 1.0;
        for (int t = 0; t < stack_.trays(); ++t) worst = std::min(worst, member.tray(t).air[0]);
        diary_.air.push_back(worst);
        if (drying() && diary_.harvested.empty() && liftedShare_ > 0.0)
            diary_.dryingLeft.push_back(member.tray(stack_.trays() - 1).share[0] / liftedShare_);
        diary_.worstLedger = std::max(diary_.worstLedger, std::fabs(ledgerError(member)));
    }

    int slotOfFirst() const
    {
        for (int t = 0; t < stack_.trays(); ++t)
            if (stack_.shapes[static_cast<std::size_t>(t)].batch == 1) return t;
        return -1;
    }

    Habit habit_;
    Ensemble stack_;
    Diary diary_;
    int day_ = 0;
    int batches_ = 0;
    int liftedOn_ = 0;
    double liftedShare_ = 0;
};

}

double beddingMass(const Substance& bedding, double area, double cm) { return bedding.bulk * area * cm / 100.0; }

Diary live(const Habit& habit, int days) { return MedianHousehold{habit}.live(days); }

}
