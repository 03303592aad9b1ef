#include "ui/handbook/stages.h"

#include "ui/drawing/stack_drawing.h"

#include <QCoreApplication>
#include <QPainter>

#include <array>
#include <cmath>

namespace tierloam::handbook {

namespace {

using drawing::StackPicture;
using drawing::TrayPicture;

struct Stages {
    Q_DECLARE_TR_FUNCTIONS(Stages)
};

constexpr std::array<std::string_view, 9> names{"first", "bedded", "fed", "water", "two", "three", "drying", "after", "split"};

struct In {
    double castings, softened, food, bedding;   ///< cm
    int age;                                    ///< days
    double wormsKg;
    QString label;
};

TrayPicture tray(int slot, const In& in)
{
    TrayPicture made;
    made.slot = slot;
    made.batch = slot + 1;
    made.ageDays = in.age;
    made.strata = reckoning::Strata{in.castings, in.softened, in.food, in.bedding};
    made.wormsKg = in.wormsKg;
    made.labels = QStringList{in.label};
    return made;
}

StackPicture stack(const std::vector<In>& trays, double sumpL = 0.8, journal::Spigot spigot = journal::Spigot::shut)
{
    StackPicture made;
    made.stand = journal::Stand::legs;
    for (const In& in : trays) made.trays.push_back(tray(static_cast<int>(made.trays.size()) + 1, in));
    made.sump.levelL = sumpL;
    made.sump.spigot = spigot;
    made.sump.labels = QStringList{spigot == journal::Spigot::open ? Stages::tr("spigot open") : Stages::tr("sump")};
    return made;
}

In bottom() { return {5.2, 0.1, 0, 0.5, 220, 0.05, Stages::tr("ready: castings")}; }
In middle() { return {4.4, 0.5, 0.4, 1.2, 140, 0.25, Stages::tr("working")}; }
In fedTop() { return {2.8, 0.8, 1.8, 2.2, 70, 0.5, Stages::tr("fed here")}; }

}

std::span<const std::string_view> stageNames() { return names; }

Stage stageNamed(std::string_view name)
{
    Stage stage;
    const auto one = [&](StackPicture picture, const QString& caption) {
        stage.caption = caption;
        stage.stacks.push_back(std::move(picture));
    };
    if (name == "first") one(stack({{0, 0, 0, 5, 0, 0.35, Stages::tr("bedding and worms")}}, 0.1, journal::Spigot::open), Stages::tr("The first day: one tray of wet bedding over the sump, worms in it, the spigot open."));
    if (name == "bedded") one(stack({{3.4, 0.4, 0.5, 1.0, 90, 0.3, Stages::tr("castings")}, {0, 0, 0, 5, 0, 0.05, Stages::tr("fresh bedding")}}), Stages::tr("A new tray of bedding on top of one that is filled."));
    if (name == "fed") one(stack({{1.2, 0.5, 1.6, 3.6, 35, 0.4, Stages::tr("food under cover")}}, 0.6), Stages::tr("A feeding lies flat under the cover; castings gather at the floor."));
    if (name == "water") one(stack({{2.2, 0.6, 1.2, 2.4, 60, 0.4, Stages::tr("drips through")}}, 3.1), Stages::tr("What the tray does not hold runs into the sump: this one wants draining."));
    if (name == "two") one(stack({{3.2, 0.6, 0.8, 1.6, 85, 0.35, Stages::tr("filled")}, {0.2, 0.2, 0.8, 4.2, 6, 0.1, Stages::tr("fed here")}}), Stages::tr("The first tray is filled, the second is fed from now on."));
    if (name == "three") one(stack({bottom(), middle(), fedTop()}, 1.4), Stages::tr("A stack in full work: oldest castings at the bottom, food at the top."));
    if (name == "drying") {
        StackPicture picture = stack({middle(), fedTop(), {5.2, 0.1, 0, 0.5, 222, 0.04, Stages::tr("drying, lid off")}}, 1.0);
        picture.trays.back().drying = true;
        picture.lidOn = false;
        one(std::move(picture), Stages::tr("The bottom tray stands on top, lid off, loosened: its worms go down from the light. Feed only the tray below it."));
    }
    if (name == "after") one(stack({middle(), fedTop(), {0, 0, 0, 5, 0, 0.05, Stages::tr("bedded anew")}}, 0.6), Stages::tr("The castings are taken; the tray is bedded anew and stands on top."));
    if (name == "split") {
        one(stack({middle(), fedTop()}, 0.9), Stages::tr("Two stacks of one: each goes on with a part of the colony."));
        stage.stacks.push_back(stack({{0.8, 0.4, 0.8, 3.6, 10, 0.2, Stages::tr("new stack")}}, 0.2));
    }
    return stage;
}

QImage drawStage(const Stage& stage, double width, double height, double pixelRatio, const drawing::Palette& palette, const drawing::Type& type, bool rightToLeft)
{
    const drawing::LabelSpace labels = drawing::labelSpace(stage.stacks, type);
    const double count = static_cast<double>(stage.stacks.size());
    const double each = width / count;
    // The side space depends on the scale and the scale on the room that it leaves: a second look settles it.
    drawing::ShelfScale scale = drawing::scaleFor(stage.stacks, labels, each * 0.4, height);
    const double around = drawing::sideSpace(scale) * 2 + drawing::labelGap(scale) + labels.width;
    scale = drawing::scaleFor(stage.stacks, labels, std::max(40.0, std::min(each - around, 1.5 * height)), height);
    const double boxWidth = 100.0 * std::sqrt(stage.stacks.front().trayAreaM2) * scale.pxPerWidthCm;
    double top = height;
    double right = 0;
    std::vector<drawing::StackLayout> layouts;
    double left = drawing::sideSpace(scale) + 4;
    for (const StackPicture& picture : stage.stacks) {
        layouts.push_back(drawing::layOut(picture, scale, labels, left, boxWidth, 0));
        top = std::min(top, layouts.back().top);
        right = left + boxWidth + drawing::labelGap(scale) + labels.width + 4;
        left = right + drawing::sideSpace(scale) + 8;
    }
    const QSizeF size{std::ceil(right), std::ceil(-top) + 6};
    QImage image{(size * pixelRatio).toSize(), QImage::Format_ARGB32_Premultiplied};
    image.setDevicePixelRatio(pixelRatio);
    image.fill(Qt::transparent);
    QPainter painter{&image};
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    painter.translate(0, -top + 3);
    for (std::size_t i = 0; i < layouts.size(); ++i) {
        if (rightToLeft) layouts[i].mirror(size.width() / 2);
        drawing::drawStack(painter, stage.stacks[i], layouts[i], scale, labels, palette, type);
    }
    return image;
}

}
