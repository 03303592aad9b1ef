#include "core/advice/put_off.h"

#include <gtest/gtest.h>

namespace tierloam::advice {
namespace {

const Day today{std::chrono::year{2031} / 5 / 2};

Advice piece(const char* stack, Code code, Severity severity = Severity::due)
{
    Advice one;
    one.stack = stack;
    one.code = code;
    one.severity = severity;
    return one;
}

TEST(PutOff, IsToldAgainOnItsDayAndNotOfOtherStacksOrMatters)
{
    const Day later = today + std::chrono::days{3};
    const auto all = withPutOff({}, piece("Mill by the door", Code::feedDue), later, today);
    EXPECT_TRUE(isPutOff(all, piece("Mill by the door", Code::feedDue), today));
    EXPECT_TRUE(isPutOff(all, piece("Mill by the door", Code::feedDue), later - std::chrono::days{1}));
    EXPECT_FALSE(isPutOff(all, piece("Mill by the door", Code::feedDue), later));
    EXPECT_FALSE(isPutOff(all, piece("Mill by the door", Code::sumpFull), today));
    EXPECT_FALSE(isPutOff(all, piece("Shed", Code::feedDue), today));
    EXPECT_FALSE(isPutOff(all, piece("Mill by the door", Code::feedDue, Severity::urgent), today));
}

TEST(PutOff, ComesBackAsItWasAndDropsWhatIsOver)
{
    auto all = withPutOff({}, piece("Mill by the door", Code::lookNext), today + std::chrono::days{7}, today);
    all = withPutOff(all, piece("Shed", Code::tooDry), today + std::chrono::days{2}, today);
    EXPECT_EQ(putOffFrom(putOffText(all)), all);
    EXPECT_EQ(putOffFrom("nonsense\n2031-05-09 never Mill\n2031-05-09 feed-due\n2031-05-09 feed-due Mill").size(), 1u);
    all = withPutOff(all, piece("Mill", Code::heat), today + std::chrono::days{9}, today + std::chrono::days{4});
    ASSERT_EQ(all.size(), 2u); // the dry one is over
    all = withPutOff(all, piece("Mill by the door", Code::lookNext), today, today); // told at once again
    EXPECT_EQ(all.size(), 1u);
}

TEST(PutOff, OfALookHidesNotWhatIsThenKnown)
{
    const Day later = today + std::chrono::days{2};
    Advice look = piece("Mill", Code::tooDry, Severity::hint);
    look.look = reckoning::LookKind::squeeze;
    const auto all = withPutOff({}, look, later, today);
    EXPECT_EQ(putOffText(all), "2031-05-04 too-dry/look Mill\n");
    EXPECT_EQ(putOffFrom(putOffText(all)), all);
    EXPECT_TRUE(isPutOff(all, look, today));
    EXPECT_FALSE(isPutOff(all, piece("Mill", Code::tooDry), today)) << "it was squeezed and is dry";
    EXPECT_EQ(withPutOff(all, piece("Mill", Code::tooDry), later, today).size(), 2u);
}

TEST(PutOff, WhatWasNotedAsDoneIsKeptBesideAndPutsNothingOff)
{
    const Advice heat = piece("Mill by the door", Code::heat);
    auto all = withDone(withPutOff({}, heat, today + std::chrono::days{2}, today), heat, today);
    EXPECT_EQ(putOffText(all), "2031-05-04 heat Mill by the door\n2031-05-02 heat/done Mill by the door\n");
    EXPECT_EQ(putOffFrom(putOffText(all)), all);
    EXPECT_TRUE(isNotedDone(all, heat, today));
    EXPECT_FALSE(isNotedDone(all, heat, today + std::chrono::days{1}));
    EXPECT_FALSE(isNotedDone(all, heat, today + std::chrono::days{2})) << "put off until then, not done then";
    EXPECT_FALSE(isNotedDone(all, piece("Shed", Code::heat), today));
    EXPECT_FALSE(isNotedDone(all, piece("Mill by the door", Code::cold), today));
    EXPECT_FALSE(isPutOff(withDone({}, heat, today), heat, today - std::chrono::days{1}));
    const auto told = withoutPutOffs(all);
    EXPECT_FALSE(isPutOff(told, heat, today));
    EXPECT_TRUE(isNotedDone(told, heat, today));
    EXPECT_TRUE(isNotedDone(withPutOff(told, heat, today + std::chrono::days{9}, today + std::chrono::days{5}), heat, today)) << "told again and put off again";
    EXPECT_EQ(withDone(all, heat, today + std::chrono::days{90}).size(), 3u);
    EXPECT_EQ(withDone(all, heat, today + std::chrono::days{91}).size(), 2u) << "further back than the diary goes";
}

TEST(PutOff, StandsInTheCalendarOnTheDayToWhichItWasPutOff)
{
    const Day later = today + std::chrono::days{7};
    Advice soon = piece("Mill", Code::feedDue), other = piece("Shed", Code::feedDue), late = piece("Mill", Code::addTray), burning = piece("Mill", Code::heat, Severity::urgent);
    soon.on = other.on = burning.on = today;
    late.on = today + std::chrono::days{20};
    std::vector<PutOff> off = withPutOff({}, soon, later, today);
    for (const Advice& each : {late, burning}) off = withPutOff(off, each, later, today);
    const auto all = postponed({soon, other, late, burning}, off, today);
    EXPECT_EQ(all[0].on, later);
    EXPECT_EQ(all[1].on, today);
    EXPECT_EQ(all[2].on, late.on);
    EXPECT_EQ(all[3].on, today) << "what is urgent cannot be put off";
}

}
}
