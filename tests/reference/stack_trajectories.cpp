// Writes a household's year, member by member, as text for stack_numerics.py and the bench beside it:
//     stack_trajectories MEMBERS STEPS_PER_DAY [DAYS]
// First the parameters of each member, then, in turn, what is done to the stack (lines `usual`, `tray`,
// `bed`, `feed`, `pour`, `rotate`, `harvest`) and, after each day, the state (lines `state MEMBER SLOT …`, slot −1 the stack itself). Process noise is off; members differ in
// their parameters only, amounts are the same for all.
#include "core/model/acts.h"
#include "core/model/masses.h"

#include <cstdio>
#include <cstdlib>

using namespace tierloam::model;

namespace {

struct Named { const char* name; Parameter row; };
constexpr Named parameters[] = {
    {"ingestion", Parameter::ingestion}, {"half_saturation", Parameter::halfSaturation}, {"assimilation", Parameter::assimilation},
    {"maintenance", Parameter::maintenance}, {"reserve_rate", Parameter::reserveRate}, {"laying_share", Parameter::layingShare},
    {"hatch_success", Parameter::hatchSuccess}, {"young", Parameter::youngPerCocoon}, {"incubation", Parameter::incubation},
    {"death", Parameter::death}, {"crowding_growth", Parameter::crowdingGrowth}, {"crowding_laying", Parameter::crowdingLaying},
    {"softening_food", Parameter::softeningFood}, {"softening_paper", Parameter::softeningPaper}, {"worm_factor", Parameter::wormFactor},
    {"air_half", Parameter::airHalf}, {"respired_softening", Parameter::respiredSoftening}, {"castings_respiration", Parameter::castingsRespiration},
    {"coldest", Parameter::growthColdest}, {"best", Parameter::growthBest}, {"hottest", Parameter::growthHottest},
    {"field_capacity", Parameter::fieldCapacity}, {"evaporation", Parameter::evaporation}, {"light_drying", Parameter::lightDrying},
    {"salt_yield", Parameter::saltYield}, {"bypass", Parameter::bypass}};

const Substance kitchen{1, 0.16, 0.0195, 0.4875, 4.0, 450};
const Substance grounds{2, 0.35, 0.021, 0.51, 2.5, 420};
const Substance paper{3, 0.94, 0.001, 0.46, 2.5, 40};
const Substance cardboard{4, 0.92, 0.001, 0.563, 3.0, 60};

class Year {
public:
    Year(int members, int steps) : members_{members}, steps_{steps}, stack_{Ensemble::drawn(2024, (members + lanes - 1) / lanes * lanes, {}, 20)}
    {
        stack_.noisy = false;
        std::printf("area %.17g\nheight %.17g\n", stack_.area, stack_.height);
        for (const Named& each : parameters)
            for (int i = 0; i < members_; ++i) std::printf("parameter %s %d %.17g\n", each.name, i, stack_.parameter(each.row, i));
    }

    void live(int days)
    {
        DayForcing forcing;
        for (int day = 0; day < days; ++day) {
            acts(day, forcing);
            forcing.day = day;
            advanceDay(stack_, forcing, steps_);
            write(day + 1);
        }
    }

private:
    void acts(int day, DayForcing& forcing)
    {
        if (day % 7 == 0) {
            forcing.usualTemperature = 19 + seasonOffset(6, day + 60, false);
            std::printf("usual %d %.17g\n", day, forcing.usualTemperature);
        }
        if (day == 0 || day == 75 || day == 150) lay(day);
        if (day == 0) {
            stock(stack_, 0, 0.45, std::nullopt, true);
            write(0); // the solver starts from here
        }
        if (day == 250 || day == 256) {
            forcing.lidOff = day == 250;
            if (forcing.lidOff) rotate(stack_);
            else harvest(stack_, stack_.trays() - 1, 1.0);
            std::printf("%s %d\n", forcing.lidOff ? "rotate" : "harvest", day);
            if (!forcing.lidOff) lay(day);
        }
        if (stack_.topToFeed() < 0) return;
        if (day % 7 == 3) put("feed", day, kitchen, 0.9, std::nullopt);
        if (day % 7 == 0 && day > 0) {
            pour(stack_, stack_.topToFeed(), 0.5);
            std::printf("pour %d %d 0.5\n", day, stack_.topToFeed());
        }
        if (day % 14 == 5) put("feed", day, grounds, 0.15, std::nullopt);
        if (day % 7 == 3) put("bed", day, paper, 0.03, std::nullopt);
    }

    void lay(int day)
    {
        ++batch_;
        addTray(stack_, batch_, batch_, day);
        std::printf("tray %d\n", day);
        put("bed", day, cardboard, 0.48, 0.95 * cardboard.held);
    }

    void put(const char* what, int day, const Substance& given, double kg, std::optional<double> water)
    {
        const int slot = stack_.topToFeed();
        const std::size_t all = static_cast<std::size_t>(stack_.members());
        addMatter(stack_, slot, given, PerMember(all, kg), PerMember(all, given.dryShare), water, what[0] == 'f');
        const double dry = kg * given.dryShare;
        std::printf("%s %d %d %d %.17g %.17g %.17g %.17g\n", what, day, slot, given.softening, dry, given.held, given.carbon,
                    water ? dry * *water : kg - dry);
    }

    void write(int day) const
    {
        for (int i = 0; i < members_; ++i) {
            const Ensemble::Block& block = stack_.blocks[static_cast<std::size_t>(i / lanes)];
            const int m = i % lanes;
            std::printf("state %d %d -1", day, i);
            for (const Members& number : block.stack.worms) std::printf(" %.17g", number[m]);
            for (const Members* pool : {&block.stack.reserve, &block.stack.wormCarbon, &block.stack.bed, &block.stack.meanWarmth, &block.stack.intoSump,
                                        &block.stack.evaporated, &block.stack.respired})
                std::printf(" %.17g", (*pool)[m]);
            std::printf("\n");
            for (std::size_t t = 0; t < block.trays.size(); ++t) {
                const TrayBlock& tray = block.trays[t];
                std::printf("state %d %d %d", day, i, static_cast<int>(t));
                for (const Members& pool : tray.unsoftened) std::printf(" %.17g", pool[m]);
                for (const Members* pool : {&tray.softened, &tray.castings, &tray.carbon, &tray.salts}) std::printf(" %.17g", (*pool)[m]);
                for (const Members& stage : tray.cocoons) std::printf(" %.17g", stage[m]);
                for (const Members* pool : {&tray.water, &tray.share, &tray.tracer}) std::printf(" %.17g", (*pool)[m]);
                std::printf("\n");
            }
        }
    }

    int members_, steps_;
    int batch_ = 0;
    Ensemble stack_;
};

}

int main(int count, char** words)
{
    const int members = count > 1 ? std::atoi(words[1]) : 0;
    const int steps = count > 2 ? std::atoi(words[2]) : 0;
    const int days = count > 3 ? std::atoi(words[3]) : 365;
    if (members < 1 || members > 8192 || steps < 2 || steps % 2 != 0 || days < 1) {
        std::fputs("usage: stack_trajectories MEMBERS STEPS_PER_DAY(even) [DAYS]\n", stderr);
        return 2;
    }
    Year{members, steps}.live(days);
    return std::fflush(stdout) == 0 && std::ferror(stdout) == 0 ? 0 : 1;
}
