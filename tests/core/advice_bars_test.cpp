// Advice against the drawn truth of households that no rule has seen: 48 of them with TIERLOAM_LONG, 2 else, each looked at on three days.
#include "tests/support/households.h"

#include "core/advice/advice.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdio>
#include <cstdlib>

namespace tierloam::tests {
namespace {

using advice::Advice;
using advice::Code;

constexpr std::uint64_t series = 0xba25;
constexpr int members = 256;

int households()
{
    if (const char* wanted = std::getenv("TIERLOAM_HOUSEHOLDS")) return std::atoi(wanted);
    return std::getenv("TIERLOAM_LONG") != nullptr ? 48 : 2;
}

bool has(const std::vector<Advice>& all, Code code)
{
    return std::any_of(all.begin(), all.end(), [code](const Advice& each) { return each.code == code; });
}

/// One that asks for a look tells no date.
bool tellsAFullSump(const std::vector<Advice>& all)
{
    return std::any_of(all.begin(), all.end(), [](const Advice& each) { return each.code == Code::sumpFull && !each.look; });
}

struct Told {
    int right = 0, wrong = 0, missed = 0;
    int positives() const { return right + missed; }
};

/// One pass over all households.
struct Figures {
    Told harvest;
    int sumps = 0, sumpsWithin = 0;
    double precision() const { return harvest.right + harvest.wrong > 0 ? static_cast<double>(harvest.right) / (harvest.right + harvest.wrong) : 1.0; }
    double recall() const { return harvest.right + harvest.missed > 0 ? static_cast<double>(harvest.right) / (harvest.right + harvest.missed) : 1.0; }
};

Figures figuresOf(int count)
{
    Looking monthly;
    monthly.bitsEveryMonth = true;
    Figures made;
    for (int number = 0; number < count; ++number)
        for (const int days : {300, 380, 460}) {
            const MadeUp household = makeHousehold(series, number, monthly, {}, days);
            const auto stack = reckonHousehold(household, members).stack;
            const std::vector<Advice> all = advice::adviceFor(*stack);
            if (!stack->record.dryingSince && stack->record.spareTrays <= 0) {
                const bool told = has(all, Code::harvestReady) || has(all, Code::harvestOverdue);
                const bool is = household.bottomReady && household.topFilled;
                (told ? (is ? made.harvest.right : made.harvest.wrong) : made.harvest.missed) += told || is ? 1 : 0;
            }
            const auto& full = stack->forecast.sumpFullOn.p50;
            if (tellsAFullSump(all) && full && *full > household.asOf) {
                ++made.sumps;
                made.sumpsWithin += household.sumpFullOn && std::abs(daysBetween(*household.sumpFullOn, *full)) <= 3 ? 1 : 0;
            }
        }
    return made;
}

TEST(AdviceBars, HarvestReadyAndSumpFullAgainstTheDrawnTruth)
{
    const int count = households();
    const Figures figures = figuresOf(count);
    std::printf("%d households, %d days each: harvest-ready right %d, wrong %d, missed %d; precision %.2f, recall %.2f; sump-full %d of %d within 3 days\n", count, 3,
                figures.harvest.right, figures.harvest.wrong, figures.harvest.missed, figures.precision(), figures.recall(), figures.sumpsWithin, figures.sumps);
    EXPECT_LE(figures.harvest.wrong + figures.harvest.missed, 3 * count / 2); // at worst every other look
    if (figures.harvest.positives() > 0) { EXPECT_LT(figures.harvest.missed, figures.harvest.positives()) << "one that is never told"; }
    if (count < 48) return; // few cases bound no more
    EXPECT_GT(figures.harvest.positives(), 20);
    EXPECT_GE(figures.precision(), 0.8);
    EXPECT_GE(figures.recall(), 0.8);
}

}
}
