#include "tests/support/colour_science.h"
#include "ui/drawing/palette.h"

#include <gtest/gtest.h>

#include <string>
#include <utility>
#include <vector>

using namespace tierloam;
using drawing::Palette;
using test::contrast;

namespace {

using Named = std::pair<std::string, QColor>;

std::vector<Named> texts(const Palette& p)
{
    return {{"ink", p.ink}, {"muted ink", p.mutedInk}, {"moss", p.moss}, {"amber", p.amber}, {"brick", p.brick}, {"water", p.water}};
}

std::vector<Named> grounds(const Palette& p)
{
    return {{"ground", p.ground}, {"panel", p.panel}, {"rail", p.rail}, {"moss soft", p.mossSoft}, {"amber soft", p.amberSoft},
            {"brick soft", p.brickSoft}, {"water soft", p.waterSoft}};
}

/// Every text pair below 4.5, as words; empty when all hold.
std::vector<std::string> failingTextPairs(const Palette& p)
{
    std::vector<std::string> failing;
    for (const auto& [textName, text] : texts(p))
        for (const auto& [groundName, ground] : grounds(p))
            if (contrast(text, ground) < 4.5) failing.push_back(textName + " on " + groundName);
    return failing;
}

/// Every fault of the age scale: not falling in L*, or two neighbours nearer than 5, seen with and without deuteranopia.
std::vector<std::string> faultsOfAgeScale(const Palette& p)
{
    std::vector<std::string> faults;
    for (std::size_t i = 1; i < p.age.size(); ++i) {
        const test::Rgb before = test::linearRgb(p.age[i - 1]), after = test::linearRgb(p.age[i]);
        if (!(test::labOf(after).L < test::labOf(before).L)) faults.push_back("L* does not fall at class " + std::to_string(i));
        if (test::ciede2000(test::labOf(before), test::labOf(after)) < 5) faults.push_back("too near at class " + std::to_string(i));
        if (test::ciede2000(test::labOf(test::deuteranopia(before)), test::labOf(test::deuteranopia(after))) < 5)
            faults.push_back("too near under deuteranopia at class " + std::to_string(i));
    }
    return faults;
}

class BothPalettes : public testing::TestWithParam<bool> {
protected:
    const Palette& palette() const { return GetParam() ? Palette::dark() : Palette::light(); }
};
INSTANTIATE_TEST_SUITE_P(Themes, BothPalettes, testing::Values(false, true),
                         [](const auto& theme) { return theme.param ? "Dark" : "Light"; });

}

// WCAG 2, published example: #767676 on white is 4.54.
TEST(Contrast, AgreesWithWcag) { EXPECT_NEAR(contrast(QColor{0x76, 0x76, 0x76}, Qt::white), 4.54, 0.005); }

// Sharma, Wu & Dalal 2005, Color Res. Appl. 30:21–30, table 1, first pair.
TEST(Ciede2000, AgreesWithSharmaWuDalal)
{
    EXPECT_NEAR(test::ciede2000({50, 2.6772, -79.7751}, {50, 0, -82.7485}), 2.0425, 0.00005);
    EXPECT_NEAR(test::ciede2000({50, 0, -82.7485}, {50, 2.6772, -79.7751}), 2.0425, 0.00005);
    EXPECT_EQ(test::ciede2000({50, 2.6772, -79.7751}, {50, 2.6772, -79.7751}), 0.0);
}

TEST(Deuteranopia, KeepsGreyGreyAndBringsRedAndGreenTogether)
{
    const test::Rgb grey = test::deuteranopia({0.4, 0.4, 0.4});
    for (const double c : grey) EXPECT_NEAR(c, 0.4, 1e-5);
    const test::Rgb red{0.4, 0.1, 0.05}, green{0.1, 0.25, 0.05};
    EXPECT_LT(test::ciede2000(test::labOf(test::deuteranopia(red)), test::labOf(test::deuteranopia(green))),
              test::ciede2000(test::labOf(red), test::labOf(green)) / 2);
}

TEST_P(BothPalettes, TextPairsKeep4Point5) { EXPECT_EQ(failingTextPairs(palette()), std::vector<std::string>{}); }

TEST_P(BothPalettes, InkStandsOnWaterAndInsideATray)
{
    EXPECT_GE(contrast(palette().ink, palette().waterFill), 4.5);
    EXPECT_GE(contrast(palette().ink, palette().inside), 4.5);
    EXPECT_GE(contrast(palette().mutedInk, palette().inside), 4.5);
}

TEST_P(BothPalettes, OutlinesRingsAndChartLinesKeep3)
{
    const Palette& p = palette();
    for (const QColor& ground : {p.ground, p.panel, p.rail, p.inside}) {
        for (const auto& [name, mark] : {Named{"outline", p.outline}, Named{"moss", p.moss}, Named{"amber", p.amber},
                                         Named{"brick", p.brick}, Named{"water", p.water}})
            EXPECT_GE(contrast(mark, ground), 3.0) << name << " on " << ground.name().toStdString();
    }
    EXPECT_GE(contrast(p.wood, p.ground), 3.0);
}

// A worm is drawn as a body with an edge around it: on every fill one of the two keeps 3, and so do the two between themselves.
TEST_P(BothPalettes, WormsStandOffEveryFill)
{
    const Palette& p = palette();
    EXPECT_GE(contrast(p.worm, p.wormEdge), 3.0);
    std::vector<QColor> fills{p.bedding, p.food, p.softened, p.inside};
    for (int days = 0; days <= Palette::ageSpanDays; days += 4) fills.push_back(p.ageColour(days));
    for (const QColor& fill : fills)
        EXPECT_GE(std::max(contrast(p.worm, fill), contrast(p.wormEdge, fill)), 3.0) << fill.name().toStdString();
}

TEST_P(BothPalettes, AgeScaleFallsAndItsClassesStandApart)
{
    EXPECT_EQ(faultsOfAgeScale(palette()), std::vector<std::string>{});
    double before = 101;
    for (int days = 0; days <= Palette::ageSpanDays; days += 8) {
        const double lightness = test::labOf(palette().ageColour(days)).L;
        EXPECT_LT(lightness, before) << "day " << days;
        before = lightness;
    }
    EXPECT_EQ(palette().ageColour(-5), palette().age.front());
    EXPECT_EQ(palette().ageColour(1000), palette().age.back());
}

// The bound is ours: below it castings of an old tray are lost on the ground of the tray they lie in.
TEST_P(BothPalettes, CastingsOfAnyAgeStandOffAnEmptyTray)
{
    const Palette& p = palette();
    const double bound = p.isDark ? 1.6 : 1.25;
    for (int days = 0; days <= Palette::ageSpanDays; days += 8) EXPECT_GE(contrast(p.ageColour(days), p.inside), bound) << "day " << days;
}

TEST_P(BothPalettes, DarkKeepsTheOrderOfRoles)
{
    // The theme turns light and dark round for grounds and inks; fills of strata keep their order among themselves.
    const Palette& p = palette();
    EXPECT_GT(test::luminance(p.bedding), test::luminance(p.food));
    EXPECT_GT(test::luminance(p.food), test::luminance(p.softened));
    EXPECT_GT(contrast(p.ink, p.ground), contrast(p.mutedInk, p.ground));
    EXPECT_GT(contrast(p.mutedInk, p.ground), contrast(p.line, p.ground));
    EXPECT_EQ(p.isDark, test::luminance(p.ground) < test::luminance(p.ink));
}

// Mutations: what the checks above must catch.
TEST(PaletteChecks, CatchAWeakTextAndAFlatAgeScale)
{
    Palette weak = Palette::light();
    weak.mutedInk = QColor{0x9A, 0x90, 0x86};
    EXPECT_FALSE(failingTextPairs(weak).empty());
    Palette flat = Palette::light();
    flat.age[3] = drawing::mixed(flat.age[2], flat.age[3], 0.2);
    EXPECT_FALSE(faultsOfAgeScale(flat).empty());
    Palette turned = Palette::dark();
    std::swap(turned.age[1], turned.age[2]);
    EXPECT_FALSE(faultsOfAgeScale(turned).empty());
}
