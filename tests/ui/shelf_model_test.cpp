#include "tests/support/sample_shelf.h"
#include "core/quantity/units.h"
#include "core/wording/formats.h"
#include "ui/common/formats.h"
#include "ui/shelf/shelf_verdict.h"
#include "ui/shelf/usual_acts.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QRegularExpression>

using namespace tierloam;
using namespace tierloam::shelf;
using std::chrono::days;

namespace {

const StackModel& stackOf(const ShelfModel& shelf, const std::string& name)
{
    const auto found = std::find_if(shelf.stacks.begin(), shelf.stacks.end(), [&](const StackModel& stack) { return stack.key == name; });
    if (found == shelf.stacks.end()) throw std::runtime_error{"no stack " + name};
    return *found;
}

std::shared_ptr<reckoning::Reckoning> changed(const ShelfInputs& inputs) { return std::make_shared<reckoning::Reckoning>(*inputs.reckoning); }

}

TEST(SampleHousehold, IsLegalAndAgreesWithItsJournal)
{
    const ShelfInputs inputs = tests::sampleInputs();
    EXPECT_TRUE(inputs.journal->replay.refusals.empty());
    for (const reckoning::StackReckoning& stack : inputs.reckoning->stacks)
        for (const reckoning::StackEstimate& day : stack.history) {
            const journal::Standing* standing = inputs.journal->replay.stack(stack.name)->on(day.day);
            ASSERT_TRUE(standing);
            std::vector<int> batches;
            for (const reckoning::TrayEstimate& tray : day.slots) batches.push_back(tray.batch);
            EXPECT_EQ(batches, standing->slots) << stack.name << " " << dayText(day.day);
        }
}

TEST(ShelfModel, FiguresUnderAllStacksHaveOneUnit)
{
    ShelfInputs inputs = tests::sampleInputs();
    auto young = changed(inputs); // one that has hardly begun beside two grown ones
    young->stacks[1].now.colonyKg = {0.2, 0.25, 0.3};
    young->stacks[1].now.drainedLPerWeek = {0.02, 0.06, 0.09};
    inputs.reckoning = young;
    const auto unit = [](const QString& value) { return value.section(QChar{0xA0}, 1).remove(QChar{0x2060}).toStdString(); };
    for (const auto& [measures, mass, flow] : {std::tuple{wording::Measures::metric, "kg", "L/wk"}, {wording::Measures::us, "lb", "gal/wk"}}) {
        wording::setMeasures(measures);
        const ShelfModel shelf = makeShelf(inputs);
        ASSERT_EQ(shelf.stacks.size(), 3U);
        for (const StackModel& stack : shelf.stacks) {
            EXPECT_EQ(unit(stack.colony.value), mass) << stack.key;
            EXPECT_EQ(unit(stack.drained.value), flow) << stack.key;
            EXPECT_TRUE(stack.line.contains(stack.colony.value)) << stack.line.toStdString() << ": the line above the stack tells the same";
        }
    }
    wording::setMeasures(wording::Measures::metric);
}

TEST(ShelfModel, SaysARateAndItsRangeInOneUnit)
{
    const auto numbers = [](const QString& range) {
        const QStringList ends = QString{range}.remove(u'(').remove(u')').split(u'–');
        return ends.size() == 2 ? std::pair{ends[0].toDouble(), ends[1].toDouble()} : std::pair{0.0, 0.0};
    };
    for (const auto measures : {wording::Measures::metric, wording::Measures::us}) {
        wording::setMeasures(measures);
        for (const StackModel& stack : makeShelf(tests::sampleInputs()).stacks) {
            const double rate = stack.processing.value.section(QRegularExpression{QStringLiteral("[^0-9.]")}, 0, 0).toDouble();
            const auto [low, high] = numbers(stack.processing.range);
            EXPECT_GT(rate, 0.0) << stack.processing.value.toStdString();
            EXPECT_LE(low, rate) << stack.processing.value.toStdString() << ' ' << stack.processing.range.toStdString();
            EXPECT_GE(high, rate);
            EXPECT_LT(high, 5.0 * rate);
        }
    }
    wording::setMeasures(wording::Measures::metric);
}

TEST(ShelfModel, SaysWhatStandsWhere)
{
    const ShelfModel shelf = makeShelf(tests::sampleInputs());
    ASSERT_EQ(shelf.stacks.size(), 3U);
    EXPECT_FALSE(shelf.past());
    EXPECT_EQ(shelf.first, tests::sampleToday() - days{226});
    EXPECT_TRUE(shelf.line.startsWith(QStringLiteral("Friday 2 May"))) << shelf.line.toStdString();

    const StackModel& scullery = stackOf(shelf, "Scullery");
    EXPECT_EQ(scullery.line, QStringLiteral("colony 1.1\u00a0kg (0.9–1.4) · 21\u00a0°C"));
    ASSERT_EQ(scullery.picture.trays.size(), 3U);
    EXPECT_EQ(scullery.picture.trays[0].ageDays, 214);
    EXPECT_EQ(scullery.picture.trays[0].labels, (QStringList{QStringLiteral("0.07\u00a0:\u00a01"), QStringLiteral("ready")}));
    EXPECT_EQ(scullery.picture.trays[2].labels.back(), QStringLiteral("being fed"));
    EXPECT_TRUE(scullery.picture.lidOn);
    EXPECT_EQ(scullery.picture.sump.levelLabel, QStringLiteral("1.4\u00a0L of 4"));

    const StackModel& cellar = stackOf(shelf, "Cellar");
    EXPECT_FALSE(cellar.picture.lidOn);
    EXPECT_TRUE(cellar.picture.trays.back().drying);
    EXPECT_EQ(cellar.picture.trays.back().ageDays, 226);
    EXPECT_EQ(cellar.verdict.sign, Sign::light);
    EXPECT_TRUE(cellar.verdict.state.contains(QStringLiteral("day 4"))) << cellar.verdict.state.toStdString();
    EXPECT_EQ(stackOf(shelf, "Lean-to").picture.sump.spigot, journal::Spigot::shut);
}

TEST(ShelfModel, RingStandsOnEveryTrayButTheOneBeingFed)
{
    const ShelfModel shelf = makeShelf(tests::sampleInputs());
    for (const StackModel& stack : shelf.stacks) {
        int without = 0;
        for (const drawing::TrayPicture& tray : stack.picture.trays) without += !tray.ready;
        EXPECT_EQ(without, 1) << stack.key;
    }
    EXPECT_FALSE(stackOf(shelf, "Scullery").picture.trays[2].ready);
    EXPECT_FALSE(stackOf(shelf, "Cellar").picture.trays[1].ready); // the top one is drying: food goes beneath
    EXPECT_DOUBLE_EQ(stackOf(shelf, "Scullery").picture.trays[0].ready->probability, 0.93);
}

TEST(ShelfModel, WordsSayWhatTheDrawingSays)
{
    const ShelfModel shelf = makeShelf(tests::sampleInputs());
    const StackModel& scullery = stackOf(shelf, "Scullery");
    ASSERT_EQ(scullery.parts.size(), 4U);
    EXPECT_EQ(scullery.parts[0].name, QStringLiteral("Sump"));
    EXPECT_TRUE(scullery.parts[0].value.contains(QStringLiteral("1.4\u00a0L (1.2–1.6)"))) << scullery.parts[0].value.toStdString();
    EXPECT_TRUE(scullery.parts[0].value.contains(QStringLiteral("spigot open")));
    EXPECT_EQ(scullery.parts[1].name, QStringLiteral("Bottom tray, slot 1 of 3, batch 1"));
    const QString& bottom = scullery.parts[1].value;
    for (const QString& said : {QStringLiteral("214 day"), QStringLiteral("0.07\u00a0:\u00a01"), QStringLiteral("ready, chance 93\u00a0%"), QStringLiteral("castings 6.0\u00a0cm"), QStringLiteral("worms 180\u00a0g")})
        EXPECT_TRUE(bottom.contains(said)) << said.toStdString() << " in " << bottom.toStdString();
    EXPECT_TRUE(scullery.value.contains(QStringLiteral("Bottom tray is ready")));
    EXPECT_TRUE(scullery.parts[1].notes.join(u' ').contains(QStringLiteral("normal")));
}

TEST(ShelfModel, ButtonsCarryTheUsualAmount)
{
    const ShelfModel shelf = makeShelf(tests::sampleInputs());
    const StackModel& stack = stackOf(shelf, "Scullery");
    EXPECT_EQ(stack.feedLabel, QStringLiteral("Feed 450\u00a0g"));
    EXPECT_EQ(stack.waterLabel, QStringLiteral("Water 0.5\u00a0L"));
    EXPECT_EQ(stack.drainLabel, QStringLiteral("Drain 1.3\u00a0L"));
    EXPECT_TRUE(stack.feedTip.contains(QStringLiteral("30\u00a0g of paper")));
    EXPECT_TRUE(stack.drainTip.contains(QStringLiteral("never drunk")));
    EXPECT_TRUE(stack.canFeed && stack.canDrain);
}

TEST(ShelfModel, ACoverOfItsOwnHasItsUsualAmountAndMaterial)
{
    ShelfInputs inputs = tests::sampleInputs();
    inputs.usual = [](const std::string& stack) {
        household::Usual usual = tests::sampleUsual(stack);
        usual.coverWithFeed.reset(); // covers do not come with feedings here
        usual.coverMaterial = "leaves";
        return usual;
    };
    inputs.usualCover = [](const std::string&) { return Amount{80, Unit::g}; };
    const StackModel& stack = makeShelf(inputs).stacks[0];
    EXPECT_EQ(stack.coverLabel, QStringLiteral("Cover 80\u00a0g"));
    EXPECT_TRUE(stack.coverTip.contains(QStringLiteral("80\u00a0g of leaves"))) << stack.coverTip.toStdString();
}

TEST(ShelfModel, TheLimitNamesWhatHoldsIt)
{
    ShelfInputs inputs = tests::sampleInputs();
    const auto tipWith = [&](const std::function<void(reckoning::StackReckoning&)>& change) {
        const auto made = changed(inputs);
        for (reckoning::StackReckoning& stack : made->stacks) change(stack);
        ShelfInputs with = inputs;
        with.reckoning = made;
        return QString{stackOf(makeShelf(with), "Scullery").limitTip}.replace(QChar{0xA0}, u' ').remove(QChar{0x2060}).toStdString();
    };
    const auto has = [](const char* words) { return testing::HasSubstr(words); };
    const auto given = tipWith([](auto& stack) {
        stack.forecast.feedHighKg = 0.8;
        stack.forecast.feedNowKg = 0.33;
        stack.record.fedKg = {0.0, 0.2, 0.0, 0.27, 0.0, 0.0, 0.0};
    });
    EXPECT_THAT(given, testing::AllOf(has("470 g were given within these 7 days"), has("800 g is the most within any seven")));
    EXPECT_THAT(tipWith([](auto& stack) { stack.forecast.roomTopTrayFreshKg = stack.forecast.feedHighKg; }), has("does not fit under the rim"));
    EXPECT_THAT(tipWith([](auto& stack) {
        stack.forecast.roomTopTrayFreshKg.reset();
        stack.record.areaM2 = stack.forecast.feedHighKg / 7.0 / 0.7 / static_cast<double>(stack.now.slots.size());
    }), testing::AllOf(has("at most 0.7 kg/m² a day"), testing::Not(has("were given"))));
    EXPECT_THAT(tipWith([](auto& stack) {
        stack.forecast.roomTopTrayFreshKg.reset();
        stack.record.areaM2 = stack.forecast.feedHighKg / 7.0 / 0.35 / static_cast<double>(stack.now.slots.size()); // half of the rate
    }), has("too little air"));
}

/// What stands above 1 cm under the rim makes the tray full and its harvest overdue; the usual cover takes some of the room.
TEST(ShelfModel, NoMoreFoodIsOfferedThanFitsUnderTheRim)
{
    ShelfInputs inputs = tests::sampleInputs();
    const auto view = std::make_shared<household::JournalView>(*inputs.journal);
    view->materials = materials::Table::builtIn();
    inputs.journal = view;
    household::Usual usual = tests::sampleUsual("Scullery");
    ASSERT_EQ(usual.feed, (Amount{450, Unit::g}));
    usual.coverWithFeed = Amount{30, Unit::g};
    inputs.usual = [&usual](const std::string&) { return usual; };
    const auto with = [&](double roomKg) {
        const auto made = changed(inputs);
        for (reckoning::StackReckoning& stack : made->stacks) {
            stack.forecast.roomTopTrayFreshKg = roomKg;
            stack.forecast.foodBulkKgPerM3 = 500.0;
            stack.forecast.feedHighKg = stack.forecast.feedNowKg = std::min(2.0, roomKg);
        }
        inputs.reckoning = made;
        return makeShelf(inputs).stacks[0];
    };
    const StackModel roomy = with(3.0);
    EXPECT_EQ(roomy.feedLabel, QStringLiteral("Feed 450\u00a0g"));
    EXPECT_FALSE(roomy.feedTip.contains(QStringLiteral("under the rim")));
    const double paper = materials::Table::builtIn().find(std::string{journal::defaultCover})->bulkKgPerM3;
    ASSERT_GT(paper, 0.0);
    const double cover = 0.03 / paper * 500.0; // kg of food that the cover takes the room of
    ASSERT_GT(cover, 0.05);
    const StackModel part = with(0.45 + cover / 2);
    EXPECT_NE(part.feedLabel, roomy.feedLabel) << "the food alone would fit";
    EXPECT_EQ(part.feedLabel, QString{QStringLiteral("Feed ") % ui::amountText(*fittingFeeding(usual, view->materials, *inputs.reckoning->stack("Scullery")))});
    const Amount fits = *fittingFeeding(usual, view->materials, *inputs.reckoning->stack("Scullery"));
    EXPECT_LE(fits.value * inBaseUnit(fits.unit), 0.45 - cover / 2 + 1e-9);
    EXPECT_TRUE(part.feedTip.contains(QStringLiteral("of the usual 450\u00a0g fit under the rim"))) << part.feedTip.toStdString();
    EXPECT_EQ(part.limitLabel, QStringLiteral("no more fits"));
    EXPECT_FALSE(part.limitBelowUsual) << "one button, for what fits";
    const StackModel none = with(0.02);
    EXPECT_EQ(none.feedLabel, QStringLiteral("Feed…"));
    EXPECT_EQ(none.limitLabel, QStringLiteral("nothing fits"));
    EXPECT_FALSE(none.usualIsMeant);
    EXPECT_TRUE(none.canFeed) << "what was given can be written down";
}

/// It must not read as what was fed today.
TEST(ShelfModel, WhatIsBorneTodayReadsAsAProposal)
{
    ShelfInputs inputs = tests::sampleInputs();
    const auto view = std::make_shared<household::JournalView>(*inputs.journal);
    view->materials = materials::Table::builtIn();
    inputs.journal = view;
    const auto with = [&](double nowKg) {
        const auto made = changed(inputs);
        for (reckoning::StackReckoning& stack : made->stacks) {
            stack.forecast.feedHighKg = 1.5;
            stack.forecast.feedNowKg = nowKg;
            stack.record.fedKg = {0.0, 0.3, 0.0, 0.3, 0.0, 0.3, 0.0};
        }
        inputs.reckoning = made;
        return stackOf(makeShelf(inputs), "Scullery");
    };
    const StackModel more = with(0.58);
    EXPECT_FALSE(more.limitBelowUsual);
    EXPECT_EQ(more.limitLabel, QStringLiteral("could take 580\u00a0g today"));
    const StackModel less = with(0.09);
    EXPECT_TRUE(less.limitBelowUsual);
    EXPECT_EQ(less.limitLabel, QStringLiteral("Feed 90\u00a0g today")) << "a button that writes it down";
}

TEST(ShelfModel, NoFoodIsOfferedWhereTheAdviceGivesNone)
{
    ShelfInputs inputs = tests::sampleInputs();
    const auto hot = changed(inputs);
    for (reckoning::StackReckoning& stack : hot->stacks) {
        stack.record.lastBedRead = stack.asOf;
        stack.record.bedReadC = 34.0;
    }
    inputs.reckoning = hot;
    const ShelfModel shelf = makeShelf(inputs);
    const StackModel& scullery = stackOf(shelf, "Scullery");
    EXPECT_EQ(scullery.limitLabel, QStringLiteral("no food now"));
    EXPECT_TRUE(scullery.limitTip.contains(QStringLiteral("give no food until it is cooler"))) << scullery.limitTip.toStdString();
    EXPECT_FALSE(scullery.usualIsMeant) << "the button does not stand out";
    EXPECT_FALSE(scullery.limitBelowUsual);
    EXPECT_TRUE(scullery.canFeed) << "what was given can be written down";
}

TEST(ShelfModel, ALimitIsInTheUnitOfTheUsualAmount)
{
    ShelfInputs inputs = tests::sampleInputs();
    const auto cups = changed(inputs);
    for (reckoning::StackReckoning& stack : cups->stacks) {
        stack.record.usualFeed = {3, Unit::cup};
        stack.record.usualFeedKg = 0.3;
        stack.forecast.feedHighKg = stack.forecast.feedNowKg = 0.199;
    }
    inputs.reckoning = cups;
    const auto view = std::make_shared<household::JournalView>(*inputs.journal);
    view->materials = materials::Table::builtIn();
    inputs.journal = view;
    household::Usual usual;
    usual.feed = {3, Unit::cup};
    usual.feedKnown = true;
    inputs.usual = [usual](const std::string&) { return usual; };
    const ShelfModel shelf = makeShelf(inputs);
    const StackModel& scullery = stackOf(shelf, "Scullery");
    EXPECT_EQ(scullery.limitLabel, QStringLiteral("at most 1.75\u00a0cup"));
    EXPECT_TRUE(scullery.limitBelowUsual);
    EXPECT_EQ(borneFeeding(usual, inputs.journal->materials, advice::foodLimit(cups->stacks.front())), (Amount{1.75, Unit::cup})) << "what one click writes down";
}

// A stack that was never fed bears much, and one click writes down the little that keeps its worms: the button says that little.
TEST(ShelfModel, TheButtonBesideAnUnknownUsualNamesWhatItRecords)
{
    ShelfInputs inputs = tests::sampleInputs();
    const auto unfed = changed(inputs);
    for (reckoning::StackReckoning& stack : unfed->stacks) {
        stack.record.usualFeedKg = 0.0;
        stack.forecast.feedUsualKg = 0.0;
        stack.forecast.feedLowKg = 0.05;
        stack.forecast.feedHighKg = stack.forecast.feedNowKg = 0.79;
    }
    inputs.reckoning = unfed;
    const auto view = std::make_shared<household::JournalView>(*inputs.journal);
    view->materials = materials::Table::builtIn();
    inputs.journal = view;
    inputs.usual = [](const std::string&) { return household::Usual{}; };
    const auto limit = advice::foodLimit(unfed->stacks.front());
    ASSERT_TRUE(limit.keeps) << limit.withheld;
    const auto recorded = borneFeeding(household::Usual{}, view->materials, limit);
    ASSERT_TRUE(recorded);
    ASSERT_LT(recorded->mass()->base(), 0.5 * limit.kg);
    const ShelfModel shelf = makeShelf(inputs);
    const StackModel& stack = stackOf(shelf, unfed->stacks.front().name);
    EXPECT_TRUE(stack.limitBelowUsual);
    EXPECT_TRUE(stack.limitLabel.contains(wording::amountText(*recorded))) << stack.limitLabel.toStdString();
    EXPECT_FALSE(stack.limitLabel.contains(wording::amountText(limit.most)));
    EXPECT_TRUE(stack.limitTip.contains(wording::amountText(limit.most))) << "the limit is told all the same";
}

// Strip and panel tell the same flow, whatever unit the sump's litres stand in.
TEST(ShelfModel, AFlowHasOneUnitByUsMeasures)
{
    wording::setMeasures(wording::Measures::us);
    ShelfInputs inputs = tests::sampleInputs();
    const auto little = changed(inputs);
    for (reckoning::StackReckoning& stack : little->stacks) {
        stack.now.drainedLPerWeek = {0.05, 0.1, 0.2};
        for (reckoning::StackEstimate& day : stack.history) day.drainedLPerWeek = {0.05, 0.1, 0.2};
    }
    inputs.reckoning = little;
    const ShelfModel shelf = makeShelf(inputs);
    wording::setMeasures(wording::Measures::metric);
    const StackModel& stack = stackOf(shelf, "Scullery");
    const auto sump = std::ranges::find_if(stack.parts, [](const auto& part) { return part.slot == 0; });
    ASSERT_NE(sump, stack.parts.end());
    bool met = false;
    for (const auto& [name, value] : sump->facts) {
        if (name != QStringLiteral("Runs in now")) continue;
        met = true;
        EXPECT_TRUE(value.startsWith(stack.drained.value)) << value.toStdString() << " | " << stack.drained.value.toStdString();
        EXPECT_TRUE(value.contains(QStringLiteral("fl oz")) || value.contains(QStringLiteral("fl oz"))) << value.toStdString();
    }
    EXPECT_TRUE(met);
}

TEST(ShelfModel, SaysWhyAButtonCannotBePressed)
{
    ShelfInputs inputs = tests::sampleInputs();
    EXPECT_TRUE(makeShelf(inputs).stacks[0].whyNot.isEmpty());
    inputs.readOnly = true;
    const ShelfModel shelf = makeShelf(inputs);
    EXPECT_FALSE(shelf.stacks[0].canFeed || shelf.stacks[0].canDrain);
    EXPECT_TRUE(shelf.stacks[0].whyNot.contains(QStringLiteral("reading only")));
    inputs.readOnly = false;
    inputs.shown -= days{1};
    EXPECT_TRUE(makeShelf(inputs).stacks[0].whyNot.contains(QStringLiteral("today")));
}

TEST(ShelfModel, StripsShareOneAxisAndOneScale)
{
    const ShelfModel shelf = makeShelf(tests::sampleInputs());
    EXPECT_EQ(daysBetween(shelf.axis.from, shelf.axis.to), stripDays);
    EXPECT_EQ(shelf.axis.to, tests::sampleToday());
    for (const StackModel& stack : shelf.stacks) {
        EXPECT_EQ(stack.processing.top, shelf.stacks[0].processing.top);
        EXPECT_EQ(stack.drained.top, shelf.stacks[0].drained.top);
        EXPECT_EQ(stack.colony.top, shelf.stacks[0].colony.top);
        EXPECT_GT(stack.processing.points.size(), 80U);
        for (const auto& point : stack.processing.points) EXPECT_LE(point.high, stack.processing.top);
    }
    EXPECT_EQ(stackOf(shelf, "Scullery").processing.value, QStringLiteral("31\u00a0g/\u2060d"));
}

TEST(ShelfModel, BarsAddUpWhatWasDrainedInTheirWeek)
{
    ShelfInputs inputs = tests::sampleInputs();
    double inJournal = 0, inBars = 0;
    const ShelfModel shelf = makeShelf(inputs);
    const StackModel& stack = stackOf(shelf, "Scullery");
    for (const auto& bar : stack.drained.bars) inBars += bar.measured.value_or(0);
    const Day from = stack.drained.bars.front().from;
    EXPECT_EQ(stack.drained.bars.back().to, tests::sampleToday() + days{1});
    for (const journal::Entry& entry : inputs.journal->entries)
        if (const auto* drain = std::get_if<journal::Drain>(&entry.action); drain && entry.stack == "Scullery" && entry.date.day >= from) inJournal += drain->volume->volume()->base();
    EXPECT_NEAR(inBars, inJournal, 1e-9);
    EXPECT_GT(inBars, 20);
    // Weeks without an entry have no bar, rather than one of no height.
    EXPECT_TRUE(std::any_of(stackOf(shelf, "Lean-to").drained.bars.begin(), stackOf(shelf, "Lean-to").drained.bars.end(), [](const auto& bar) { return !bar.measured; }));
}

TEST(ShelfModel, ThePastIsDrawnAsItStood)
{
    ShelfInputs inputs = tests::sampleInputs();
    inputs.shown = tests::sampleToday() - days{10}; // before the rotation in the cellar
    const ShelfModel shelf = makeShelf(inputs);
    EXPECT_TRUE(shelf.past());
    EXPECT_TRUE(shelf.line.contains(QStringLiteral("the past"))) << shelf.line.toStdString();
    EXPECT_EQ(shelf.axis.mark, inputs.shown);
    const StackModel& cellar = stackOf(shelf, "Cellar");
    EXPECT_EQ(cellar.picture.trays.front().ageDays, 216); // still at the bottom
    EXPECT_TRUE(cellar.picture.lidOn);
    EXPECT_FALSE(cellar.canFeed || cellar.canDrain);
    EXPECT_NE(cellar.verdict.sign, Sign::light);
    EXPECT_EQ(cellar.picture.trays.front().strata->castingsCm, inputs.reckoning->stack("Cellar")->on(inputs.shown)->slots.front().strata.castingsCm);

    inputs.shown = tests::sampleToday() - days{100};
    EXPECT_EQ(stackOf(makeShelf(inputs), "Scullery").picture.trays.size(), 2U); // the third was bedded 41 days ago
    inputs.shown = tests::sampleToday() - days{220};
    EXPECT_EQ(stackOf(makeShelf(inputs), "Cellar").picture.trays.size(), 1U);
    EXPECT_TRUE(stackOf(makeShelf(inputs), "Scullery").picture.trays.empty()); // set up, not bedded yet
    inputs.shown = tests::sampleToday() - days{231};
    EXPECT_TRUE(makeShelf(inputs).stacks.empty());
    EXPECT_FALSE(makeShelf(inputs).retiredOnly);
}

TEST(ShelfModel, WithoutEstimatesTheJournalIsDrawn)
{
    ShelfInputs inputs = tests::sampleInputs();
    inputs.reckoning = nullptr;
    const ShelfModel shelf = makeShelf(inputs);
    EXPECT_TRUE(shelf.estimating);
    ASSERT_EQ(shelf.stacks.size(), 3U);
    for (const StackModel& stack : shelf.stacks) {
        EXPECT_FALSE(stack.picture.trays.empty());
        for (const auto& tray : stack.picture.trays) {
            EXPECT_FALSE(tray.strata || tray.ready);
            EXPECT_FALSE(tray.ageLabel.isEmpty());
        }
        EXPECT_FALSE(stack.picture.sump.levelL);
        EXPECT_EQ(stack.verdict.sign, Sign::question);
        EXPECT_FALSE(stack.feedLabel.isEmpty());
    }
}

TEST(ShelfModel, SaysWhatIsOnItsWayAndWhatIsStale)
{
    ShelfInputs inputs = tests::sampleInputs();
    inputs.current = false;
    EXPECT_EQ(makeShelf(inputs).stacks[0].flag, QStringLiteral("updating…"));
    auto view = std::make_shared<household::JournalView>(*inputs.journal);
    const auto lastOf = std::find_if(view->entries.rbegin(), view->entries.rend(), [](const journal::Entry& entry) { return entry.stack == "Scullery"; });
    view->pending = {lastOf->id};
    inputs.journal = view;
    const ShelfModel saving = makeShelf(inputs);
    EXPECT_EQ(stackOf(saving, "Scullery").flag, QStringLiteral("saving…"));
    EXPECT_EQ(stackOf(saving, "Cellar").flag, QStringLiteral("updating…"));

    inputs = tests::sampleInputs();
    auto reckoned = changed(inputs);
    for (auto& stack : reckoned->stacks) stack.record.lastEntry = tests::sampleToday() - days{60};
    inputs.reckoning = reckoned;
    inputs.advice = [](const reckoning::StackReckoning&) { return std::vector<advice::Advice>{}; };
    const ShelfModel silent = makeShelf(inputs);
    EXPECT_EQ(stackOf(silent, "Scullery").verdict.sign, Sign::silent);
    EXPECT_TRUE(stackOf(silent, "Scullery").verdict.state.contains(QStringLiteral("60 day")));
    // An unwritten usual feeding is given to few members, and water to none of them but by a routine.
    const QString said = stackOf(silent, "Scullery").verdict.reason;
    EXPECT_FALSE(said.contains(QStringLiteral("as usual"))) << said.toStdString();
    EXPECT_TRUE(said.contains(QStringLiteral("hardly any food and no water")) && said.contains(QStringLiteral("routine"))) << said.toStdString();
}

TEST(ShelfModel, EmptyAndRetired)
{
    ShelfInputs inputs = tests::sampleInputs();
    inputs.journal = tests::viewOf({});
    inputs.reckoning = std::make_shared<reckoning::Reckoning>();
    EXPECT_TRUE(makeShelf(inputs).stacks.empty());
    EXPECT_FALSE(makeShelf(inputs).retiredOnly);
    EXPECT_EQ(makeShelf(inputs).first, inputs.today);

    journal::Entries entries = tests::sampleJournal(1);
    journal::Entry retire;
    retire.date.day = tests::sampleToday();
    retire.positionInDay = 99;
    retire.stack = "Scullery";
    retire.action = journal::Retire{};
    entries.push_back(retire);
    inputs.journal = tests::viewOf(entries);
    EXPECT_TRUE(makeShelf(inputs).stacks.empty());
    EXPECT_TRUE(makeShelf(inputs).retiredOnly);
    inputs.shown = tests::sampleToday() - days{1};
    EXPECT_EQ(makeShelf(inputs).stacks.size(), 1U);
}

TEST(ShelfModel, AStackWithoutTraysSaysSo)
{
    ShelfInputs inputs = tests::sampleInputs();
    journal::Entry setup;
    setup.date.day = tests::sampleToday();
    setup.stack = "Bothy";
    setup.action = journal::Setup{};
    inputs.journal = tests::viewOf({setup});
    inputs.reckoning = std::make_shared<reckoning::Reckoning>();
    const ShelfModel shelf = makeShelf(inputs);
    ASSERT_EQ(shelf.stacks.size(), 1U);
    EXPECT_EQ(shelf.stacks[0].verdict.state, QStringLiteral("No tray stands"));
    EXPECT_FALSE(shelf.stacks[0].canFeed);
    EXPECT_EQ(shelf.stacks[0].parts.size(), 1U);
}

TEST(Verdict, UrgentAdviceComesBeforeDryingAndSilence)
{
    ShelfInputs inputs = tests::sampleInputs();
    inputs.advice = [](const reckoning::StackReckoning& stack) {
        return std::vector{tests::adviceOf(stack.name, advice::Code::sumpFull, advice::Severity::urgent, "Drain.", "Full.")};
    };
    EXPECT_EQ(stackOf(makeShelf(inputs), "Cellar").verdict.sign, Sign::drop);
    inputs.advice = [](const reckoning::StackReckoning& stack) {
        return std::vector{tests::adviceOf(stack.name, advice::Code::feedDue, advice::Severity::due, "Feed.", "9 days.")};
    };
    EXPECT_EQ(stackOf(makeShelf(inputs), "Cellar").verdict.sign, Sign::light);
    EXPECT_EQ(silentAfter(7), 21);
    EXPECT_EQ(silentAfter(14), 42);
}

TEST(Verdict, OddRecordsDoNotHideHowTheStackIs)
{
    ShelfInputs inputs = tests::sampleInputs();
    inputs.advice = [](const reckoning::StackReckoning&) { return std::vector<advice::Advice>{}; };
    const Verdict calm = stackOf(makeShelf(inputs), "Scullery").verdict;
    inputs.advice = [](const reckoning::StackReckoning& stack) {
        return std::vector{tests::adviceOf(stack.name, advice::Code::recordDisagrees, advice::Severity::hint, "Check.", "Odd.")};
    };
    EXPECT_EQ(stackOf(makeShelf(inputs), "Scullery").verdict.state, calm.state);
    inputs.advice = [](const reckoning::StackReckoning& stack) {
        return std::vector{tests::adviceOf(stack.name, advice::Code::recordDisagrees, advice::Severity::hint, "Check.", "Odd."),
                           tests::adviceOf(stack.name, advice::Code::harvestSoon, advice::Severity::hint, "Soon.", "60 %.")};
    };
    const Verdict soon = stackOf(makeShelf(inputs), "Scullery").verdict;
    EXPECT_EQ(soon.sign, Sign::soon);
    EXPECT_NE(soon.state, calm.state);
}

TEST(Verdict, EveryCodeHasAStateAndASign)
{
    using advice::Code;
    for (const Code code : {Code::harvestReady, Code::readyNoHurry, Code::harvestSoon, Code::harvestOverdue, Code::addTray, Code::feedDue, Code::trayFull, Code::sumpFull, Code::recordDisagrees, Code::lookNext}) {
        ShelfInputs inputs = tests::sampleInputs();
        inputs.advice = [code](const reckoning::StackReckoning& stack) { return std::vector{tests::adviceOf(stack.name, code, advice::Severity::concern, "Do", "feed-to-cast 0.02 : 1, ready 88 %")}; };
        const Verdict verdict = stackOf(makeShelf(inputs), "Scullery").verdict;
        EXPECT_FALSE(verdict.state.isEmpty());
        EXPECT_EQ(verdict.reason, QStringLiteral("Do. Feed-to-cast 0.02\u00a0:\u00a01, ready 88\u00a0%."));
    }
}

TEST(UsualActs, FeedComesWithItsCoverAndOthersStandAlone)
{
    const household::Usual usual = tests::sampleUsual("Scullery");
    const journal::Entries fed = usualEntries(forms::FormKind::feed, usual, "Scullery", tests::sampleToday());
    ASSERT_EQ(fed.size(), 2U);
    EXPECT_EQ(std::get<journal::Feed>(fed[0].action).food, (Amount{450, Unit::g}));
    EXPECT_EQ(std::get<journal::Cover>(fed[1].action).paper, (Amount{30, Unit::g}));
    const journal::Entries covered = usualEntries(forms::FormKind::cover, usual, "Scullery", tests::sampleToday());
    ASSERT_EQ(covered.size(), 1U);
    EXPECT_EQ(std::get<journal::Cover>(covered[0].action).paper, usual.coverWithFeed);
    EXPECT_EQ(usualEntries(forms::FormKind::water, usual, "Scullery", tests::sampleToday()).size(), 1U);
    const journal::Entries drained = usualEntries(forms::FormKind::drain, usual, "Scullery", tests::sampleToday());
    EXPECT_EQ(std::get<journal::Drain>(drained.at(0).action).volume, (Amount{1.3, Unit::L}));
    EXPECT_TRUE(usualEntries(forms::FormKind::rotate, usual, "Scullery", tests::sampleToday()).empty());
    // Every action of the shelf's part of the table means something.
    for (const ui::ActionRow& row : ui::actionTable())
        if (row.where == ui::Where::shelf) {
            const bool moves = row.id == ui::ActionId::moveStackLeft || row.id == ui::ActionId::moveStackRight;
            EXPECT_TRUE(formOf(row.id) || daysMoved(row.id) || moves || row.id == ui::ActionId::moreActs || row.id == ui::ActionId::backToToday) << row.name;
        }
}
