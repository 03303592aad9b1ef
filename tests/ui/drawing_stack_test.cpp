#include "tests/support/pictures.h"
#include "tests/support/sample_pictures.h"
#include "core/wording/formats.h"
#include "ui/drawing/legend.h"
#include "ui/drawing/palette.h"
#include "ui/drawing/stack_drawing.h"
#include "ui/drawing/strata.h"

#include <QGuiApplication>
#include <QPainter>

#include <gtest/gtest.h>

using namespace tierloam;
using namespace tierloam::drawing;

namespace {

/// The stacks side by side at one scale, as a page draws them.
struct Shelf {
    std::vector<StackPicture> pictures;
    Type type;
    LabelSpace labels;
    ShelfScale scale;
    std::vector<StackLayout> layouts;
    QImage image;
    bool fits = true;
    const Palette* palette = nullptr;

    explicit Shelf(std::vector<StackPicture> made, bool dark = false, int fontPercent = 100, QSize size = {960, 420}) : pictures{std::move(made)}
    {
        QFont font = QGuiApplication::font();
        font.setPointSizeF(font.pointSizeF() * fontPercent / 100);
        type = Type::from(font);
        palette = dark ? &Palette::dark() : &Palette::light();
        labels = labelSpace(pictures, type);
        const double column = static_cast<double>(size.width()) / static_cast<double>(pictures.size());
        const double box = column - labels.width - 60;
        scale = scaleFor(pictures, labels, box, size.height() - 20);
        double height = size.height();
        for (const StackPicture& picture : pictures) height = std::max(height, heightCm(picture) * scale.pxPerCm + 20);
        image = QImage{size.width(), static_cast<int>(height), QImage::Format_RGB32};
        image.fill(palette->ground);
        QPainter painter{&image};
        for (std::size_t i = 0; i < pictures.size(); ++i) {
            layouts.push_back(layOut(pictures[i], scale, labels, static_cast<double>(i) * column + 36, box, image.height() - 8));
            fits &= drawStack(painter, pictures[i], layouts[i], scale, labels, *palette, type);
        }
    }
};

/// Mean height of a colour in px per column over the inner width; patterns and lines are counted with the stratum they lie on by
/// drawing the surface between its neighbours: here, from the first to the last pixel of the colour in each column.
double meanThickness(const QImage& image, const QRectF& inside, const QColor& colour)
{
    double sum = 0;
    int columns = 0;
    for (int x = static_cast<int>(inside.left()) + 3; x < static_cast<int>(inside.right()) - 3; ++x, ++columns) {
        int first = -1, last = -1;
        for (int y = static_cast<int>(inside.top()); y <= static_cast<int>(inside.bottom()); ++y)
            if (tests::near(image.pixelColor(x, y), colour, 2)) {
                if (first < 0) first = y;
                last = y;
            }
        if (first >= 0) sum += last - first + 1;
    }
    return sum / columns;
}

StackPicture oneTray(const reckoning::Strata& strata, int age = 150)
{
    StackPicture picture;
    TrayPicture tray;
    tray.strata = strata;
    tray.ageDays = age;
    tray.ageLabel = QStringLiteral("150 d");
    picture.trays = {tray};
    return picture;
}

}

TEST(StackDrawing, SampleIsDrawnInBothThemes)
{
    for (const bool dark : {false, true}) {
        const Shelf shelf{tests::samplePictures(), dark};
        tests::keepPicture(shelf.image, dark ? QStringLiteral("stacks-dark") : QStringLiteral("stacks-light"));
        EXPECT_TRUE(shelf.fits);
        // Every stratum of the first stack's top tray and the water of its sump are there.
        const StackLayout& layout = shelf.layouts.front();
        for (int s = 0; s < stratumCount; ++s)
            EXPECT_GT(tests::countColour(shelf.image, layout.trays.back().inside.toRect(), stratumColour(Stratum{s}, 41, *shelf.palette), 2), 100) << s;
        EXPECT_GT(tests::countColour(shelf.image, layout.sumpInside.toRect(), shelf.palette->waterFill, 2), 300);
    }
}

TEST(StackDrawing, StrataAreAsTallAsTheEstimates)
{
    const reckoning::Strata strata{4.0, 2.0, 1.5, 2.5};
    const Shelf shelf{{oneTray(strata)}, false, 100, {400, 420}};
    const double cm = shelf.scale.pxPerCm;
    const QRectF inside = shelf.layouts[0].trays[0].inside;
    const auto colour = [&](Stratum s) { return stratumColour(s, 150, *shelf.palette); };
    // One px of ink line and its smoothing is not counted at each face.
    EXPECT_NEAR(meanThickness(shelf.image, inside, colour(Stratum::castings)), 4.0 * cm, 2.0);
    EXPECT_NEAR(meanThickness(shelf.image, inside, colour(Stratum::softened)), 2.0 * cm, 2.5);
    EXPECT_NEAR(meanThickness(shelf.image, inside, colour(Stratum::food)), 1.5 * cm, 2.5);
    EXPECT_NEAR(meanThickness(shelf.image, inside, colour(Stratum::bedding)), 2.5 * cm, 2.5);
}

TEST(StackDrawing, TwiceTheCastingsAreDrawnTwiceAsTall)
{
    const Shelf shelf{{oneTray({3, 0, 0, 0}), oneTray({6, 0, 0, 0})}};
    const double one = meanThickness(shelf.image, shelf.layouts[0].trays[0].inside, shelf.palette->ageColour(150));
    const double two = meanThickness(shelf.image, shelf.layouts[1].trays[0].inside, shelf.palette->ageColour(150));
    EXPECT_NEAR(two / one, 2.0, 0.07);
}

TEST(StackDrawing, AllStacksHaveOneScale)
{
    std::vector<StackPicture> pictures = tests::samplePictures();
    pictures[1].trayHeightCm = 22;
    pictures[2].trayAreaM2 = 0.09;
    const Shelf shelf{pictures};
    const double one = shelf.layouts[0].trays[0].box.height() / 11;
    EXPECT_NEAR(shelf.layouts[1].trays[0].box.height() / 22, one, 1e-9);
    EXPECT_NEAR(shelf.layouts[2].trays[0].box.width() / 30, shelf.layouts[0].trays[0].box.width() / 40, 1e-9);
    for (const StackLayout& layout : shelf.layouts) EXPECT_GE(layout.top, 0);
}

TEST(StackDrawing, SumpLevelIsItsShareOfTheSump)
{
    for (const double litres : {0.5, 2.0, 4.0}) {
        StackPicture picture = oneTray({3, 0, 0, 0});
        picture.sump.levelL = litres;
        const Shelf shelf{{picture}, false, 100, {400, 420}};
        const QRectF inside = shelf.layouts[0].sumpInside;
        EXPECT_NEAR(meanThickness(shelf.image, inside.adjusted(10, -2, -20, 1), shelf.palette->waterFill), inside.height() * litres / 4 - 1, 2.0) << litres;
    }
}

TEST(StackDrawing, ASumpToldAsEmptyHasNoWaterAndAnyWaterStandsOnItsFloor)
{
    StackPicture picture = oneTray({3, 0, 0, 0});
    const auto water = [](const Shelf& shelf, const QRectF& where) { return tests::countColour(shelf.image, where.toRect(), shelf.palette->waterFill, 2) + tests::countColour(shelf.image, where.toRect(), shelf.palette->water, 2); };
    picture.sump.levelL = 0.03; // told as 0.0 L of 4
    picture.sump.spigot = journal::Spigot::shut;
    const Shelf empty{{picture}, false, 100, {400, 420}};
    EXPECT_EQ(water(empty, empty.layouts[0].sump), 0);
    picture.sump.levelL = 0.1;
    const Shelf wet{{picture}, false, 100, {400, 420}};
    const QRectF sump = wet.layouts[0].sump;
    EXPECT_GT(water(wet, QRectF{sump.left() + 30, sump.bottom() - 4, sump.width() - 60, 2}), static_cast<int>(sump.width()) - 80);
}

/// Vents and the wood between them are of one width, and whole.
TEST(StackDrawing, TheLidHasWholeVents)
{
    for (const int width : {300, 337, 380, 401, 460}) {
        const Shelf shelf{{oneTray({3, 0, 0, 0})}, false, 100, {width, 420}};
        const QRectF lid = shelf.layouts[0].lid;
        const int y = static_cast<int>(lid.center().y());
        std::vector<int> runs;
        int run = 0;
        for (int x = static_cast<int>(lid.left()) + 2; x < static_cast<int>(lid.right()) - 1; ++x) {
            const bool vent = tests::countColour(shelf.image, {x, y, 1, 1}, shelf.palette->ground, 60) > 0;
            if (vent) ++run;
            else if (run > 0) runs.push_back(std::exchange(run, 0));
        }
        ASSERT_GT(runs.size(), 2U);
        EXPECT_LE(*std::ranges::max_element(runs) - *std::ranges::min_element(runs), 2) << width;
    }
}

/// In units that people measure in; of a large sump not so many that they cannot be counted.
TEST(StackDrawing, SumpsAreMarkedInTheUnitsChosen)
{
    EXPECT_DOUBLE_EQ(sumpMark(4), 1.0);
    EXPECT_DOUBLE_EQ(sumpMark(20), 5.0);
    wording::setMeasures(wording::Measures::us);
    EXPECT_NEAR(sumpMark(4), 3.785411784 / 4, 1e-9);
    EXPECT_NEAR(sumpMark(20), 3.785411784, 1e-9);
    EXPECT_TRUE(legendText().contains(QStringLiteral("a mark a quarter of a gallon"))) << legendText().toStdString();
    EXPECT_FALSE(legendText().contains(QStringLiteral("litre")));
    wording::setMeasures(wording::Measures::metric);
    EXPECT_TRUE(legendText().contains(QStringLiteral("a mark a litre")));
}

TEST(StackDrawing, SpigotOpenAndShutDiffer)
{
    StackPicture open = oneTray({3, 0, 0, 0});
    StackPicture shut = open;
    shut.sump.spigot = journal::Spigot::shut;
    EXPECT_NE(Shelf{{open}}.image, Shelf{{shut}}.image);
}

TEST(StackDrawing, OverfullTrayIsCutAtItsRim)
{
    const Shelf shelf{{oneTray({8, 4, 4, 9})}, false, 100, {400, 420}};
    const QRectF rim = shelf.layouts[0].trays[0].rim;
    const QRect above{static_cast<int>(rim.left()), static_cast<int>(shelf.layouts[0].top) - 60, static_cast<int>(rim.width()), 58};
    EXPECT_EQ(tests::countColour(shelf.image, above, shelf.palette->bedding), 0);
}

TEST(StackDrawing, WormsFollowTheirMass)
{
    EXPECT_EQ(wormsDrawn(0), 0);
    EXPECT_EQ(wormsDrawn(0.004), 0);
    EXPECT_EQ(wormsDrawn(0.01), 1);
    EXPECT_EQ(wormsDrawn(0.5), 10);
    EXPECT_EQ(wormsDrawn(50), 40);
    EXPECT_EQ(wormsDrawn(std::nan("")), 0);
    const auto ink = [](double kg) {
        StackPicture picture = oneTray({5, 0, 0, 0});
        picture.trays[0].wormsKg = kg;
        const Shelf shelf{{picture}, false, 100, {400, 420}};
        return tests::countColour(shelf.image, shelf.layouts[0].trays[0].inside.toRect(), shelf.palette->worm, 12);
    };
    EXPECT_EQ(ink(0), 0);
    EXPECT_GT(ink(0.2), 20);
    EXPECT_GT(ink(0.6), 2 * ink(0.2));
}

TEST(StackDrawing, IsTheSameEachTime) { EXPECT_EQ(Shelf{tests::samplePictures()}.image, Shelf{tests::samplePictures()}.image); }

TEST(StackDrawing, TrayWithoutEstimateShowsNoStratum)
{
    StackPicture picture = oneTray({});
    picture.trays[0].strata.reset();
    picture.sump.levelL.reset();
    const Shelf shelf{{picture}, false, 100, {400, 420}};
    for (int s = 0; s < stratumCount; ++s)
        EXPECT_EQ(tests::countColour(shelf.image, shelf.layouts[0].trays[0].inside.toRect(), stratumColour(Stratum{s}, 150, *shelf.palette), 0), 0);
    const QRect inside = shelf.layouts[0].trays[0].inside.toRect();
    EXPECT_LT(tests::countColour(shelf.image, inside, shelf.palette->inside, 4), inside.width() * inside.height() * 9 / 10); // hatched
    EXPECT_EQ(tests::countColour(shelf.image, shelf.layouts[0].sump.toRect(), shelf.palette->waterFill, 0), 0);
}

TEST(StackDrawing, LabelsNeverClipAndNeverOverlap)
{
    for (const int percent : {100, 150, 200}) {
        const Shelf shelf{tests::samplePictures(), false, percent, {percent * 11, 420}};
        tests::keepPicture(shelf.image, QStringLiteral("stacks-%1").arg(percent));
        EXPECT_TRUE(shelf.fits) << percent;
        for (const StackLayout& layout : shelf.layouts) {
            for (std::size_t i = 0; i < layout.trays.size(); ++i) {
                EXPECT_GE(layout.trays[i].labels.height() + 0.01, shelf.labels.height) << percent;
                EXPECT_LE(layout.trays[i].labels.right(), shelf.image.width()) << percent;
                if (i > 0) {
                    EXPECT_LE(layout.trays[i].labels.bottom(), layout.trays[i - 1].labels.top() + 0.01);
                }
            }
            EXPECT_GE(layout.sumpLabels.height() + 0.01, shelf.labels.sumpHeight) << percent;
        }
    }
    // What the check above must catch: a label wider than the space measured for it.
    Shelf shelf{tests::samplePictures()};
    shelf.pictures[0].trays[0].labels[0] = QStringLiteral("a label that is much too long for its space");
    QPainter painter{&shelf.image};
    EXPECT_FALSE(drawStack(painter, shelf.pictures[0], shelf.layouts[0], shelf.scale, shelf.labels, *shelf.palette, shelf.type));
}

TEST(StackDrawing, MirroredKeepsPartsAndTurnsSides)
{
    const Shelf shelf{tests::samplePictures()};
    StackLayout turned = shelf.layouts[0];
    turned.mirror(160);
    EXPECT_LT(turned.trays[0].labels.right(), turned.trays[0].box.left());
    EXPECT_EQ(turned.partAt(turned.trays[1].box.center()), 2);
    EXPECT_EQ(turned.partAt(turned.sump.center()), 0);
    EXPECT_EQ(turned.partAt({-50, -50}), -1);
    turned.mirror(160);
    EXPECT_EQ(turned.trays[2].box, shelf.layouts[0].trays[2].box);
}
