#include "ui/materials/leachate_bench.h"

#include "core/guide/figures.h"
#include "ui/common/choice_field.h"
#include "ui/common/fact_list.h"
#include "ui/common/figure_words.h"
#include "ui/common/formats.h"
#include "ui/common/number_field.h"
#include "ui/common/panels.h"
#include "ui/forms/field_grid.h"

#include <QLabel>
#include <QVBoxLayout>

#include <cmath>

namespace tierloam::materials_page {

namespace {

using guide::Figure;

constexpr double usualVolume = 1.0; ///< L, while nothing was typed

QString cited(Figure figure) { return LeachateBench::tr("%1 (%2)", "figure, source").arg(ui::figureText(figure), ui::sourceText(guide::figureRow(figure))); }

QString spreadText(const guide::Spread& spread, int decimals)
{
    const auto number = [&](double value) { return ui::numberText(value, decimals); };
    return spread.high - spread.low < 1e-9 ? number(spread.middle) : ui::withRange(number(spread.middle), number(spread.low), number(spread.high));
}

/// Rounded up to a half: "6", "6.5".
QString halves(double parts)
{
    const double up = std::ceil(parts * 2) / 2;
    return ui::numberText(up, up == std::floor(up) ? 0 : 1);
}

ui::NumberField* strengthField(double least = 0.0) { return new ui::NumberField{{{QStringLiteral("mS/cm"), 1.0, 0.0}}, {least, 50.0}}; }

}

LeachateBench::LeachateBench(household::Household& household, const ui::Theme& theme, QWidget* parent) : Bench{household, theme, parent}
{
    auto* grid = new forms::FieldGrid{this};
    from_ = grid->add(tr("From"), new ui::ChoiceField);
    volume_ = grid->add(tr("Drained"), new ui::VolumeField);
    volume_->proposeVolume(litres(usualVolume));
    measured_ = grid->add(tr("Measured strength"), strengthField());
    measured_->setHint(tr("left empty: the estimate of the stack"));
    wished_ = grid->add(tr("Wished strength"), strengthField(0.01));
    wished_->setObjectName(QStringLiteral("wishedStrength"));
    wished_->setValue(guide::lowOf(Figure::targetSeedlings));
    wished_->setHint(tr("young plants %1, grown ones %2").arg(cited(Figure::targetSeedlings), cited(Figure::targetGrown)));
    water_ = grid->add(tr("Your water"), strengthField());
    water_->setValue(guide::lowOf(Figure::tapWater));
    water_->setHint(tr("tap water about %1").arg(cited(Figure::tapWater)));
    column_->addWidget(grid);
    say_ = ui::makeLabel({}, ui::TextRole::strong, this, true);
    say_->setObjectName(QStringLiteral("leachateSays"));
    column_->addWidget(say_);
    facts_ = new ui::FactList{this};
    column_->addWidget(facts_);
    addNote(tr("Leachate is what ran through the trays: salty water with whatever it met. It is no brewed tea and no plant food of known content; it may hold germs and the juice of "
               "unfinished scraps. Use it within %1, on soil around plants that are not eaten raw, or pour it back over the top tray.").arg(cited(Figure::leachateKeeps)));
    addNote(tr("Published: %1; harmless to worms %2; harmful about %3. One mS/cm is about %4 of salts.")
                .arg(cited(Figure::leachateStrength), cited(Figure::leachateHarmless), cited(Figure::leachateHarmful), cited(Figure::saltPerConductivity)));
    column_->addStretch(1);
    connect(from_, &ui::Field::edited, this, [this] { takeSump(); reckon(); });
    connect(grid, &forms::FieldGrid::edited, this, &LeachateBench::reckon);
    setCautions({forms::leachateCaution()});
    follow();
    takeSump();
    reckon();
}

void LeachateBench::follow()
{
    fillStacks(from_, {});
    reckon();
}

void LeachateBench::takeSump()
{
    const reckoning::StackReckoning* now = estimateOf(from_->value().toString());
    if (now && now->now.sumpL.p50 >= 0.1) volume_->proposeVolume(litres(std::round(10 * now->now.sumpL.p50) / 10));
}

guide::Spread LeachateBench::strength() const
{
    if (const auto measured = measured_->value().value) return {*measured, *measured, *measured};
    if (const reckoning::StackReckoning* now = estimateOf(from_->value().toString()))
        return {now->now.leachateEc.p05, now->now.leachateEc.p50, now->now.leachateEc.p95};
    return {guide::lowOf(Figure::leachateHarmless), guide::lowOf(Figure::leachateStrength), guide::lowOf(Figure::leachateHarmful)};
}

void LeachateBench::reckon()
{
    const guide::Spread strong = strength();
    const auto volume = volume_->volume();
    const auto wished = wished_->value().value, water = water_->value().value;
    ui::FactList::Facts facts;
    const bool estimated = !measured_->value().value && estimateOf(from_->value().toString());
    facts << std::pair{tr("Strength"), tr("%1 mS/cm, %2").arg(spreadText(strong, 1), measured_->value().value ? tr("as measured") : estimated ? tr("estimated, with its 90 % range") : tr("published values"))};
    facts << std::pair{tr("Salts"), ui::strengthBand({guide::saltsPerLitre(strong.low), guide::saltsPerLitre(strong.middle), guide::saltsPerLitre(strong.high)})};
    if (!wished || !water) {
        say_->setText(tr("The strength that is wished and that of your water make the dilution."));
        facts_->setFacts(facts);
        return;
    }
    const guide::Dilution dilution = guide::diluteTo(strong, *wished, *water, volume.value_or(litres(usualVolume)));
    switch (dilution.answer) {
    case guide::DilutionAnswer::dilute:
        say_->setText(tr("One part of leachate to %1 parts of water, to be on the safe side of the range.").arg(halves(dilution.parts.high)));
        facts << std::pair{tr("Water, in parts"), spreadText(dilution.parts, 1)};
        facts << std::pair{tr("Makes"), ui::volumeText(dilution.whole.high)};
        break;
    case guide::DilutionAnswer::weakEnough:
        say_->setText(tr("It is no stronger than wished; it still is leachate, with the cautions above."));
        break;
    case guide::DilutionAnswer::cannot:
        say_->setText(tr("Your water is as strong as what is wished: with it no dilution gets there. Take rain water, or wish for more."));
        break;
    }
    facts_->setFacts(facts);
}

}
