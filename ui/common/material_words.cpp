#include "ui/common/material_words.h"

#include "ui/common/formats.h"

#include <QCoreApplication>

namespace tierloam::ui {

namespace {

struct MaterialWords {
    Q_DECLARE_TR_FUNCTIONS(MaterialWords)
};

}

QString welcomeText(materials::Welcome welcome)
{
    switch (welcome) {
    case materials::Welcome::yes: return MaterialWords::tr("yes");
    case materials::Welcome::aLittle: return MaterialWords::tr("a little");
    case materials::Welcome::no: return MaterialWords::tr("no");
    }
    return {};
}

QString welcomeMark(materials::Welcome welcome)
{
    switch (welcome) {
    case materials::Welcome::yes: return QStringLiteral("✓");
    case materials::Welcome::aLittle: return QStringLiteral("◐");
    case materials::Welcome::no: return QStringLiteral("✗");
    }
    return {};
}

QString doubtText(materials::Doubt doubt)
{
    using materials::Doubt;
    switch (doubt) {
    case Doubt::none:
    case Doubt::count: return {};
    case Doubt::acid: return MaterialWords::tr("Acid, and its peel keeps worms off until it has rotted: much of it sours the bed.");
    case Doubt::pungent: return MaterialWords::tr("Its sharp oils keep worms off, and it smells while it rots.");
    case Doubt::starch: return MaterialWords::tr("Starch in a lump ferments, heats and draws mites; a little, spread thin and covered, is fine.");
    case Doubt::salty: return MaterialWords::tr("Salt stays in the trays and dries worms out through their skin.");
    case Doubt::oily: return MaterialWords::tr("Oil shuts the air out, turns rancid and draws flies and rats.");
    case Doubt::animal: return MaterialWords::tr("It rots without air, smells, and draws flies, rats and mice.");
    case Doubt::dairy: return MaterialWords::tr("It sours, smells, and draws flies, rats and mice.");
    case Doubt::droppings: return MaterialWords::tr("It can carry germs and worm eggs that make people ill, and a worm bin does not get hot enough to kill them.");
    case Doubt::dewormer: return MaterialWords::tr("What was given against the animal's worms kills these too; let manure age, and ask when the animals were last treated.");
    case Doubt::hot: return MaterialWords::tr("So rich in nitrogen that it heats and gives off ammonia; only aged, and little.");
    case Doubt::heats: return MaterialWords::tr("In a thick layer it mats, heats and shuts the air out; wilted and spread thin it is fine.");
    case Doubt::seeds: return MaterialWords::tr("Seeds stay alive in a worm bin and come up where the castings go.");
    case Doubt::bags: return MaterialWords::tr("Many bags hold plastic that stays in the castings; tear them open and give the leaves.");
    case Doubt::coated: return MaterialWords::tr("Coatings, glossy inks and colour developers stay in the castings.");
    case Doubt::treated: return MaterialWords::tr("Preservatives and paint can hold metals that harm worms and stay in the castings.");
    case Doubt::caustic: return MaterialWords::tr("Caustic: it burns worms and skin. Against a sour bed use calcium carbonate only.");
    case Doubt::plastic: return MaterialWords::tr("It softens in hot piles only; in a worm bin it stays for years.");
    case Doubt::peatland: return MaterialWords::tr("It works, but it is dug from peatland; paper, cardboard and leaves serve as well.");
    }
    return {};
}

QString doubtName(materials::Doubt doubt)
{
    using materials::Doubt;
    switch (doubt) {
    case Doubt::none:
    case Doubt::count: return MaterialWords::tr("none", "caution");
    case Doubt::acid: return MaterialWords::tr("acid");
    case Doubt::pungent: return MaterialWords::tr("sharp oils");
    case Doubt::starch: return MaterialWords::tr("starch in lumps");
    case Doubt::salty: return MaterialWords::tr("salty");
    case Doubt::oily: return MaterialWords::tr("oily");
    case Doubt::animal: return MaterialWords::tr("meat or fish");
    case Doubt::dairy: return MaterialWords::tr("dairy");
    case Doubt::droppings: return MaterialWords::tr("pet droppings");
    case Doubt::dewormer: return MaterialWords::tr("wormed animals");
    case Doubt::hot: return MaterialWords::tr("rich in nitrogen");
    case Doubt::heats: return MaterialWords::tr("heats in a layer");
    case Doubt::seeds: return MaterialWords::tr("seeds");
    case Doubt::bags: return MaterialWords::tr("plastic in bags");
    case Doubt::coated: return MaterialWords::tr("coated or glossy");
    case Doubt::treated: return MaterialWords::tr("treated or painted");
    case Doubt::caustic: return MaterialWords::tr("caustic");
    case Doubt::plastic: return MaterialWords::tr("compostable plastic");
    case Doubt::peatland: return MaterialWords::tr("from peatland");
    }
    return {};
}

QString softeningText(materials::SofteningClass softening)
{
    using journal::SofteningClass;
    switch (softening) {
    case SofteningClass::soft: return MaterialWords::tr("soft fruit and leaves");
    case SofteningClass::mix: return MaterialWords::tr("mixed kitchen scraps");
    case SofteningClass::coffee: return MaterialWords::tr("grounds, grain and bread");
    case SofteningClass::paper: return MaterialWords::tr("paper");
    case SofteningClass::cardboard: return MaterialWords::tr("cardboard, straw and leaves");
    case SofteningClass::wood: return MaterialWords::tr("wood; it stays");
    case SofteningClass::coir: return MaterialWords::tr("coir and peat; it stays");
    case SofteningClass::mineral: return MaterialWords::tr("shell and grit; it stays");
    }
    return {};
}

QString kindText(materials::Kind kind)
{
    switch (kind) {
    case materials::Kind::food: return MaterialWords::tr("food");
    case materials::Kind::bedding: return MaterialWords::tr("bedding");
    case materials::Kind::mineral: return MaterialWords::tr("mineral");
    }
    return {};
}

QString measureText(materials::KitchenMeasure measure)
{
    using materials::KitchenMeasure;
    switch (measure) {
    case KitchenMeasure::gram: return QStringLiteral("g");
    case KitchenMeasure::kilogram: return QStringLiteral("kg");
    case KitchenMeasure::ounce: return QStringLiteral("oz");
    case KitchenMeasure::pound: return QStringLiteral("lb");
    case KitchenMeasure::millilitre: return QStringLiteral("mL");
    case KitchenMeasure::litre: return QStringLiteral("L");
    case KitchenMeasure::cup: return MaterialWords::tr("cup (US)");
    case KitchenMeasure::tablespoon: return MaterialWords::tr("tablespoon");
    case KitchenMeasure::handful: return MaterialWords::tr("handful");
    case KitchenMeasure::bucket: return MaterialWords::tr("bucket (%1)").arg(amountText({10.0, Unit::L}));
    case KitchenMeasure::count: break;
    }
    return {};
}

}
