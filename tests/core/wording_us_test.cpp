// Quantities in words: each in US units as reckoned by hand, none with a metric unit, and back again.
#include "core/wording/formats.h"
#include "core/wording/masses.h"
#include "core/wording/usual_amounts.h"
#include "core/wording/volumes.h"

#include <gtest/gtest.h>

#include <QLocale>

#include <functional>
#include <regex>

namespace tierloam::wording {
namespace {

class UsWords : public ::testing::Test {
protected:
    void SetUp() override
    {
        QLocale::setDefault(QLocale{QLocale::English, QLocale::UnitedStates});
        setMeasures(Measures::us);
    }
    void TearDown() override
    {
        setMeasures(Measures::metric);
        QLocale::setDefault(QLocale::c());
    }
};

std::string plain(QString text) { return text.replace(QChar{0xA0}, u' ').toStdString(); }

struct Case {
    std::function<QString()> said;
    const char* us;                  ///< 1 lb 0.45359237 kg, 1 oz 28.349523 g, 1 gal 3.785411784 L, 1 fl oz 29.5735 mL, 1 in 2.54 cm, 1 ft 0.3048 m
};

const std::vector<Case>& cases()
{
    static const std::vector<Case> all{
        {[] { return massText(1.1); }, "2.4 lb"},                       // 2.425
        {[] { return massText(0.085); }, "3.0 oz"},                     // 2.998
        {[] { return massBand({0.9, 1.1, 1.4}); }, "2.4 lb (2.0–3.1)"}, // 1.98, 2.43, 3.09
        {[] { return massRange({0.9, 1.1, 1.4}); }, "2.0–3.1"},
        {[] { return volumeText(4.0); }, "1.06 gal"},                   // 1.0567
        {[] { return volumeBand({3.0, 4.0, 6.0}); }, "1.06 gal (0.79–1.59)"},
        {[] { return lengthText(3.0); }, "1.2 in"},                     // 1.18
        {[] { return lengthMeant(2.5); }, "1.0 in"},
        {[] { return temperatureText(30.0); }, "86 °F"},
        {[] { return temperatureBand({20, 21, 22}); }, "70 °F (68–72)"},
        {[] { return temperatureRead(31.5); }, "88.7 °F"},
        {[] { return warmerText(2.0); }, "3.6 °F"},
        {[] { return areaText(0.16); }, "1.7 sq ft"},                   // 1.722
        {[] { return volumePerArea(12.0); }, "0.29 gal/sq ft"},         // 0.2945
        {[] { return bulkText(420.0); }, "26 lb/cu ft"},                // 26.2
        {[] { return perAreaText(1.6); }, "0.33 lb/sq ft"},             // 0.3277
        {[] { return strengthText(2.1); }, "0.28 oz/gal"},              // 0.2804
        {[] { return rateText(31.0); }, "1.1 oz/d"},                    // 1.0935
        {[] { return amountText({450, Unit::g}); }, "15.9 oz"},         // 15.873
        {[] { return amountText({0.5, Unit::L}); }, "16.9 fl oz"},      // 16.907
        {[] { return amountText({1, Unit::cup}); }, "1 cup"},
        {[] { return mostText(1.0); }, "2.2 lb"},                       // 2.2046, downwards
    };
    return all;
}

const std::regex metric{"(^|[0-9 (])(kg|g|mg|L|mL|cm|mm|m²|°C)($|[ .,;:)/])"};

TEST_F(UsWords, AreAsReckonedByHand)
{
    for (const Case& each : cases()) EXPECT_EQ(plain(each.said()), each.us);
}

TEST_F(UsWords, VolumesThatStandTogetherHaveOneUnit)
{
    EXPECT_EQ(plain(volumeText(0.3)), "10 fl oz"); // 10.14
    {
        const OneVolumeUnit alike{4.0};
        EXPECT_EQ(plain(volumeText(0.3)), "0.08 gal"); // 0.0793
        EXPECT_EQ(plain(volumeText(4.0)), "1.06 gal");
        EXPECT_EQ(plain(flowBand({0.1, 0.3, 0.5})), "0.08 gal/wk (0.03–0.13)"); // 0.0264, 0.1321
        const OneVolumeUnit within{0.9};
        EXPECT_EQ(plain(volumeText(1.0)), "34 fl oz") << "below a quart, 0.946 L: 33.8";
    }
    EXPECT_EQ(plain(volumeText(0.3)), "10 fl oz") << "each its own again";
    EXPECT_EQ(plain(volumeBand({0.3, 0.8, 2.0})), "0.21 gal (0.08–0.53)") << "a band by its upper end";
    setMeasures(Measures::metric);
    EXPECT_EQ(plain(volumeText(0.06)), "60 mL");
    const OneVolumeUnit alike{4.0};
    EXPECT_EQ(plain(volumeText(0.06)), "0.06 L");
    EXPECT_EQ(plain(flowBand({0.02, 0.06, 0.4})), "0.06 L/wk (0.02–0.40)");
    EXPECT_EQ(plain(volumeText(1.2)), "1.2 L");
    const OneVolumeUnit little{0.08};
    EXPECT_EQ(plain(volumeBand({0.02, 0.06, 0.12})), "60 mL (20–120)");
}

TEST_F(UsWords, MassesThatStandTogetherHaveOneUnit)
{
    EXPECT_EQ(plain(massText(0.25)), "8.8 oz"); // 8.818
    {
        const OneMassUnit alike{1.2};
        EXPECT_EQ(plain(massBand({0.2, 0.25, 0.5})), "0.55 lb (0.44–1.10)"); // 0.5512, 0.4409, 1.1023
        EXPECT_EQ(plain(massText(1.2)), "2.6 lb");                           // 2.6455
        const OneMassUnit within{0.3};
        EXPECT_EQ(plain(massText(0.5)), "18 oz"); // 17.637
    }
    EXPECT_EQ(plain(massText(0.25)), "8.8 oz") << "each its own again";
    setMeasures(Measures::metric);
    EXPECT_EQ(plain(massText(0.25)), "250 g");
    const OneMassUnit alike{1.2};
    EXPECT_EQ(plain(massText(0.25)), "0.25 kg");
    EXPECT_EQ(plain(massText(1.2)), "1.2 kg");
}

// What nobody recorded yet is proposed as an amount that a cup or a scale of the measures chosen has a mark for.
TEST_F(UsWords, DefaultsAreRoundAmountsOfTheirMeasures)
{
    const reckoning::Usual never;
    const reckoning::Usual us = roundDefaults([] {
        reckoning::Usual usual;
        usual.coverWithFeed = Amount{30, Unit::g};
        return usual;
    }());
    EXPECT_EQ(us.feed, (Amount{10, Unit::oz}));           // 300 g: 10.58 oz
    EXPECT_EQ(us.water, (Amount{16, Unit::floz}));        // 0.5 L: 16.9
    EXPECT_EQ(us.drain, (Amount{32, Unit::floz}));        // 1 L: 33.8
    EXPECT_EQ(us.coverWithFeed, (Amount{1, Unit::oz}));   // 30 g: 1.06
    EXPECT_EQ(roundAmount({5, Unit::g}), (Amount{1, Unit::oz})) << "never nothing";
    reckoning::Usual known = never;
    known.feedKnown = known.waterKnown = known.drainKnown = known.coverKnown = true;
    known.coverWithFeed = Amount{35, Unit::g};
    const reckoning::Usual kept = roundDefaults(known);
    EXPECT_EQ(kept.feed, known.feed) << "what was recorded stays as it was typed";
    EXPECT_EQ(kept.water, known.water);
    EXPECT_EQ(kept.drain, known.drain);
    EXPECT_EQ(kept.coverWithFeed, known.coverWithFeed);
    setMeasures(Measures::metric);
    const reckoning::Usual inMetric = roundDefaults(never);
    EXPECT_EQ(inMetric.feed, never.feed);
    EXPECT_EQ(inMetric.water, never.water);
    EXPECT_EQ(inMetric.drain, never.drain);
}

TEST_F(UsWords, HoldNoMetricUnitWhileTheMetricOnesDo)
{
    const std::vector<std::function<QString()>> more{[] { return massRead(0.8); }, [] { return volumeRead(0.72); }, [] { return volumeOf(1.4, 4.0); }, [] { return lengthBand({1, 2, 3}); },
                                                     [] { return bulkUnit(); },    [] { return perAreaBand({1, 2, 3}); }, [] { return strengthBand({1, 2, 3}); }, [] { return rateBand({20, 30, 40}); },
                                                     [] { return flowText(1.3); }, [] { return flowBand({1, 1.3, 2}); },  [] { return amountText(massAmount(0.45)); },
                                                     [] { return amountText(volumeAmount(0.45)); }, [] { return amountText(mostOf(1.6)); }, [] { return unitText(inMeasures({1, Unit::kg}).unit); }};
    const auto all = [&] {
        std::vector<std::string> texts;
        for (const Case& each : cases()) texts.push_back(plain(each.said()));
        for (const auto& said : more) texts.push_back(plain(said()));
        return texts;
    };
    for (const std::string& text : all()) EXPECT_FALSE(std::regex_search(text, metric)) << text;
    setMeasures(Measures::metric);
    int found = 0;
    for (const std::string& text : all()) found += std::regex_search(text, metric) ? 1 : 0;
    EXPECT_GE(found, 28) << "otherwise metric units would not be seen";
}

}
}
