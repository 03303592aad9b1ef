// Ledgers of dry matter, carbon, nitrogen, salts and water, closed to 1e-9 for every member under any order of acts and days.
// The bound is ours (the design of the model). Each pool and each running total is robbed in turn, and its ledger must see it.
#include "core/model/acts.h"
#include "core/model/ledgers.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace tierloam::model {
namespace {

const Substance kitchen{1, 0.16, 0.0195, 0.4875, 4.0, 450};
const Substance grounds{2, 0.35, 0.021, 0.51, 2.5, 420};
const Substance cardboard{4, 0.92, 0.001, 0.563, 3.0, 60};
const Substance shavings{5, 0.88, 0.0008, 0.50, 2.2, 110};
const Substance eggshell{7, 0.98, 0.005, 0.0, 0.3, 900};

constexpr int journals = 200;
constexpr int days = 400;
constexpr double bound = 1e-9;

/// A stack whose 64 members all differ, and one who does anything to it that the acts allow, in any order.
class Household {
public:
    explicit Household(unsigned seed)
        : random_{seed}, stack_{Ensemble::drawn(seed, lanes, seed % 2 != 0 ? "Eudrilus eugeniae" : "", 20)}
    {
        layTray(0);
        stock(stack_, 0, 0.1 + upTo(1.0), oneIn(2) ? std::optional<int>{300} : std::nullopt, true);
    }

    void live(int day)
    {
        if (stack_.trays() > 0) tend();
        if (oneIn(30)) spigotOpen_ = !spigotOpen_;
        if (oneIn(10)) drain(stack_, oneIn(2) ? std::optional{upTo(2.0)} : std::nullopt);
        if (stack_.trays() < 4 && oneIn(50)) layTray(day);
        DayForcing forcing;
        forcing.day = day;
        forcing.usualTemperature = 20 + 16 * std::sin(day / 40.0); // frost and deadly heat among them
        if (oneIn(3)) forcing.airTemperature = forcing.usualTemperature - 2.0 + upTo(4.0);
        forcing.relativeHumidity = 0.3 + upTo(0.7);
        forcing.spigotOpen = spigotOpen_;
        forcing.lidOff = oneIn(3);
        advanceDay(stack_, forcing);
    }

    Ensemble& stack() { return stack_; }

private:
    double upTo(double most) { return std::uniform_real_distribution<double>{0.0, most}(random_); }
    bool oneIn(int n) { return std::uniform_int_distribution<int>{1, n}(random_) == 1; }
    PerMember all(double value) const { return PerMember(static_cast<std::size_t>(stack_.members()), value); }
    PerMember around(double value)
    {
        PerMember values = all(value);
        for (double& each : values) each *= 0.5 + upTo(1.0);
        return values;
    }

    void layTray(int day)
    {
        ++batch_;
        addTray(stack_, batch_, batch_, day);
        const Substance& bedding = oneIn(3) ? shavings : cardboard;
        addMatter(stack_, stack_.trays() - 1, bedding, around(0.2 + upTo(0.6)), all(bedding.dryShare), 0.95 * bedding.held, false);
    }

    void tend()
    {
        const int slot = std::uniform_int_distribution<int>{0, stack_.trays() - 1}(random_);
        if (oneIn(5)) addMatter(stack_, slot, kitchen, around(upTo(3.0)), all(0.16), std::nullopt, true);
        if (oneIn(9)) addMatter(stack_, slot, grounds, around(upTo(0.5)), all(0.35), std::nullopt, true);
        if (oneIn(9)) addMatter(stack_, slot, eggshell, all(upTo(0.1)), all(0.98), std::nullopt, true);
        if (oneIn(10)) pour(stack_, slot, upTo(2.0));
        if (oneIn(60)) stock(stack_, slot, upTo(0.3), std::nullopt, false);
        if (oneIn(40)) takeWorms(stack_, upTo(0.3));
        if (oneIn(80) && stack_.trays() > 1) rotate(stack_);
        if (oneIn(90)) endDrying(stack_);
        if (oneIn(70)) harvest(stack_, slot, oneIn(2) ? 1.0 : upTo(1.0));
    }

    std::mt19937 random_;
    Ensemble stack_;
    int batch_ = 0;
    bool spigotOpen_ = true;
};

TEST(Ledgers, CloseForEveryMemberUnderTwoHundredRandomJournals)
{
    LedgerErrors worst;
    double saltsFormed = 0.0, evaporated = 0.0, ranOff = 0.0, overflowed = 0.0, nitrogenOut = 0.0;
    for (unsigned seed = 0; seed < journals; ++seed) {
        Household household{seed};
        for (int day = 0; day < days; ++day) {
            household.live(day);
            if (day % 10 != 9) continue;
            for (int i = 0; i < lanes; ++i) {
                const LedgerErrors now = ledgerErrors(MemberOf{household.stack(), i});
                ASSERT_LT(now.worst(), bound) << "journal " << seed << ", day " << day << ", member " << i << ": dry matter " << now.dryMatter
                                              << ", carbon " << now.carbon << ", nitrogen " << now.nitrogen << ", salts " << now.salts
                                              << ", water " << now.water;
            }
        }
        const StackBlock& block = household.stack().blocks[0].stack;
        saltsFormed += block.saltsFormed[0];
        evaporated += block.evaporated[0];
        ranOff += block.ranOff[0];
        overflowed += block.overflowed[0];
        nitrogenOut += block.nitrogenOut[0];
    }
    // The journals do reach what the ledgers count.
    EXPECT_GT(saltsFormed, 1.0);
    EXPECT_GT(evaporated, 100.0);
    EXPECT_GT(ranOff, 100.0);
    EXPECT_GT(overflowed, 100.0);
    EXPECT_GT(nitrogenOut, 1.0);
}

TEST(Ledgers, CloseInALaboratoryPotToo)
{
    Ensemble pot = Ensemble::median({}, 25);
    addTray(pot, 1, 1, 0);
    const PerMember some(static_cast<std::size_t>(pot.members()), 0.5);
    addMatter(pot, 0, kitchen, some, PerMember(some.size(), 0.16), std::nullopt, true);
    stock(pot, 0, 0.02, 40, false);
    for (int day = 0; day < 200; ++day) {
        DayForcing forcing;
        forcing.day = day;
        forcing.usualTemperature = 25;
        forcing.holdTemperature = forcing.holdWater = forcing.noBackgroundDeath = forcing.hatchlingsRemoved = true;
        advanceDay(pot, forcing);
    }
    EXPECT_GT(pot.blocks[0].stack.carbonOut[0], 0.0) << "hatchlings were taken away";
    EXPECT_LT(ledgerErrors(MemberOf{pot, 0}).worst(), bound);
}

enum Ledger : unsigned { dryMatter = 1, carbon = 2, nitrogen = 4, salts = 8, water = 16 };

unsigned brokenLedgers(const Ensemble& stack)
{
    const LedgerErrors now = ledgerErrors(MemberOf{stack, 0});
    const auto broken = [](double error, Ledger ledger) { return std::fabs(error) < bound ? 0U : static_cast<unsigned>(ledger); };
    return broken(now.dryMatter, dryMatter) | broken(now.carbon, carbon) | broken(now.nitrogen, nitrogen) | broken(now.salts, salts)
        | broken(now.water, water);
}

// Mutations: a millionth of a tray's pool, or a ten thousandth of what is a small part of its ledger, is seen by exactly the ledgers that count it.
TEST(LedgersMutation, ALittleAstrayAnywhereIsSeen)
{
    Household household{12};
    int day = 0;
    const auto livingMember = [&] { // with something in every pool
        const Ensemble& stack = household.stack();
        return stack.trays() > 0 && stack.blocks[0].trays[0].castings[0] > 0.1 && stack.blocks[0].trays[0].unsoftened[4][0] > 0.01
            && stack.blocks[0].stack.worms[5][0] > 1.0 && stack.blocks[0].stack.nitrogenOut[0] > 0.0 && stack.blocks[0].stack.overflowed[0] > 0.0;
    };
    while (day < 60 || (day < 400 && !livingMember())) household.live(day++);
    ASSERT_TRUE(livingMember());
    const Ensemble& sound = household.stack();
    ASSERT_EQ(brokenLedgers(sound), 0u);
    using Tray = TrayBlock;
    using Stack = StackBlock;
    struct OfTray { const char* name; Members Tray::*pool; unsigned ledgers; };
    for (const OfTray& fault : {OfTray{"softened", &Tray::softened, dryMatter}, {"castings", &Tray::castings, dryMatter}, {"carbon", &Tray::carbon, carbon},
                                {"nitrogen", &Tray::nitrogen, nitrogen}, {"salts", &Tray::salts, salts}, {"water", &Tray::water, water}}) {
        Ensemble faulty = sound;
        (faulty.blocks[0].trays[0].*fault.pool)[0] *= 1.0 + 1e-6;
        EXPECT_EQ(brokenLedgers(faulty), fault.ledgers) << fault.name;
    }
    struct OfStack { const char* name; Members Stack::*total; unsigned ledgers; };
    for (const OfStack& fault :
         {OfStack{"reserve", &Stack::reserve, dryMatter}, {"put in", &Stack::putIn, dryMatter}, {"respired", &Stack::respired, dryMatter | water},
          {"taken out", &Stack::takenOut, dryMatter}, {"worm carbon", &Stack::wormCarbon, carbon}, {"carbon in", &Stack::carbonIn, carbon},
          {"carbon respired", &Stack::carbonRespired, carbon}, {"carbon out", &Stack::carbonOut, carbon}, {"nitrogen in", &Stack::nitrogenIn, nitrogen},
          {"nitrogen out", &Stack::nitrogenOut, nitrogen}, {"salts formed", &Stack::saltsFormed, salts}, {"salts out", &Stack::saltsOut, salts},
          {"water in", &Stack::waterIn, water}, {"water out", &Stack::waterOut, water}, {"evaporated", &Stack::evaporated, water},
          {"ran off", &Stack::ranOff, water}, {"overflowed", &Stack::overflowed, water}}) {
        Ensemble faulty = sound;
        ASSERT_GT((faulty.blocks[0].stack.*fault.total)[0], 0.0) << fault.name << ": nothing there to lose";
        (faulty.blocks[0].stack.*fault.total)[0] *= 1.0 + 1e-4;
        EXPECT_EQ(brokenLedgers(faulty), fault.ledgers) << fault.name;
    }
    Ensemble faulty = sound;
    faulty.blocks[0].stack.worms[5][0] *= 1.01;
    EXPECT_EQ(brokenLedgers(faulty), static_cast<unsigned>(dryMatter));
    faulty = sound;
    faulty.blocks[0].trays[0].unsoftened[4][0] *= 1.0 + 1e-5;
    EXPECT_EQ(brokenLedgers(faulty), static_cast<unsigned>(dryMatter));
}

TEST(LedgersMutation, NotANumberIsNotClosed)
{
    LedgerErrors errors;
    errors.salts = std::nan("");
    EXPECT_FALSE(errors.worst() < bound);
}

}
}
