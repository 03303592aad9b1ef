#include "ui/materials/mix_bench.h"

#include "core/guide/figures.h"
#include "ui/common/actions.h"
#include "ui/common/material_names.h"
#include "ui/common/choice_field.h"
#include "ui/common/fact_list.h"
#include "ui/common/field_edit.h"
#include "ui/common/figure_words.h"
#include "ui/common/flow_layout.h"
#include "ui/common/formats.h"
#include "ui/common/material_field.h"
#include "ui/common/material_words.h"
#include "ui/common/number_field.h"
#include "ui/common/panels.h"
#include "ui/forms/field_grid.h"
#include "ui/materials/gauge.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace tierloam::materials_page {

namespace {

using guide::Figure;
using materials::Obstacle;

constexpr double mostAmount = 100000;

QString quoted(const materials::Material& material) { return QStringLiteral("«") % ui::materialText(material.name) % QStringLiteral("»"); }

QString ratioOf(const materials::Mix& mix)
{
    const auto ratio = mix.carbonToNitrogen();
    return ratio ? MixBench::tr("%1 : 1").arg(ui::numberText(*ratio, *ratio < 9.95 ? 1 : 0)) : MixBench::tr("no C:N");
}

QString moistureOf(const materials::Mix& mix)
{
    const auto moisture = mix.moisturePercent();
    return moisture ? MixBench::tr("%1 %").arg(ui::numberText(*moisture, 0)) : QString{};
}

QString days(double count) { return ui::daysLong(static_cast<int>(std::lround(std::max(1.0, count)))); }

}

MixBench::MixBench(household::Household& household, const ui::Theme& theme, QWidget* parent)
    : Bench{household, theme, parent}, table_{household.journal()->materials}
{
    auto* lines = new QWidget{this};
    lineColumn_ = new QVBoxLayout{lines};
    lineColumn_->setContentsMargins(0, 0, 0, 0);
    lineColumn_->setSpacing(4);
    column_->addWidget(lines);
    auto* more = ui::makeButton(tr("+ another material"), ui::Tone::plain, this);
    more->setObjectName(QStringLiteral("moreMaterial"));
    ui::setAccess(more, tr("Another material in the mix"));
    ui::setAct(more, ui::ActionId::anotherInMix);
    more->setToolTip(ui::withKeys(ui::actionName(ui::ActionId::anotherInMix), more));
    connect(more, &QPushButton::clicked, this, [this] {
        newLine().material->list()->setFocus();
        reckon();
    });
    column_->addWidget(more, 0, Qt::AlignLeading);

    ratioGauge_ = new Gauge{theme_, this};
    moistureGauge_ = new Gauge{theme_, this};
    column_->addWidget(ratioGauge_);
    column_->addWidget(moistureGauge_);
    facts_ = new ui::FactList{this};
    column_->addWidget(facts_);

    auto* aims = new forms::FieldGrid{this};
    ratio_ = aims->add(tr("Aim at C:N"), new ui::NumberField{{{QString{}, 1.0, 0.0}}, {5.0, 200.0}});
    ratio_->setObjectName(QStringLiteral("aimRatio"));
    ratio_->setValue(guide::lowOf(Figure::carbonAim));
    moisture_ = aims->add(tr("and moisture"), new ui::ShareField{20.0, 95.0});
    moisture_->setObjectName(QStringLiteral("aimMoisture"));
    moisture_->setShare(Share::fromPercent(guide::lowOf(Figure::moistureBest)));
    added_ = aims->add(tr("by adding"), new ui::MaterialField{table_, materials::Kind::bedding, {}, "corrugated cardboard shredded"});
    added_->setObjectName(QStringLiteral("aimMaterial"));
    column_->addWidget(aims);
    connect(aims, &forms::FieldGrid::edited, this, &MixBench::reckon);

    auto* card = new ui::Card{this, ui::Tone::moss};
    advice_ = ui::makeLabel({}, ui::TextRole::body, card, true);
    advice_->setObjectName(QStringLiteral("mixAdvice"));
    card->column()->addWidget(advice_);
    take_ = ui::makeButton(tr("Put it into the mix"), ui::Tone::moss, card);
    take_->setObjectName(QStringLiteral("takeProposal"));
    connect(take_, &QPushButton::clicked, this, &MixBench::takeProposal);
    card->column()->addWidget(take_, 0, Qt::AlignLeading);
    column_->addWidget(card);
    const auto aim = [](const QString& what, Figure figure) -> QString { return tr("%1 %2 (%3)", "what, figure, source").arg(what, ui::figureText(figure), ui::sourceText(guide::figureRow(figure))); };
    addNote(QStringList{aim(tr("Aims: C:N"), Figure::carbonRange), aim(tr("moisture"), Figure::moistureRange), aim(tr("best"), Figure::moistureBest)}.join(QStringLiteral("; ")) % u'.');
    column_->addStretch(1);

    add(QStringLiteral("kitchen mix"), 1000);
}

MixBench::Line& MixBench::newLine()
{
    auto* box = new QWidget{this};
    auto* flow = new ui::FlowLayout{box, 6};
    Line line{box, new ui::MaterialField{table_, materials::Kind::food, {}, {}}, new ui::NumberField{{{QString{}, 1.0, 0.0}}, {0.0, mostAmount}}, new ui::ChoiceField};
    line.material->setName(tr("Material"));
    line.amount->setName(tr("Amount"));
    line.amount->setMaximumWidth(theme_.px(80));
    line.measure->setName(tr("Measured in"));
    for (const materials::MeasureRow& row : materials::kitchenMeasures()) line.measure->addChoice(ui::measureText(row.measure), static_cast<int>(row.measure));
    line.measure->setValue(static_cast<int>(ui::measures() == ui::Measures::us ? materials::KitchenMeasure::ounce : materials::KitchenMeasure::gram));
    auto* drop = ui::makeButton(QStringLiteral("×"), ui::Tone::plain, box);
    drop->setObjectName(QStringLiteral("dropLine"));
    drop->setToolTip(tr("Take it out of the mix"));
    ui::setAccess(drop, tr("Take it out of the mix"));
    connect(drop, &QPushButton::clicked, this, [this, box] { dropLine(box); });
    for (QWidget* each : std::initializer_list<QWidget*>{line.material, line.amount, line.measure, drop}) flow->addWidget(each);
    for (ui::Field* field : std::initializer_list<ui::Field*>{line.material, line.amount, line.measure}) connect(field, &ui::Field::edited, this, &MixBench::reckon);
    lineColumn_->addWidget(box);
    box->show();
    lines_.push_back(line);
    fitLines();
    return lines_.back();
}

/// Names are read whole: where a line has no room for the rest beside them, that goes on beneath.
void MixBench::fitLines()
{
    const bool roomy = width() >= theme_.px(480);
    const int most = roomy ? theme_.px(260) : std::min(theme_.px(260), std::max(theme_.px(140), width() - column_->contentsMargins().left() - column_->contentsMargins().right()));
    for (const Line& line : lines_) {
        line.material->setMaximumWidth(most);
        line.material->setMinimumWidth(roomy ? theme_.px(240) : most);
    }
}

void MixBench::resizeEvent(QResizeEvent* event)
{
    Bench::resizeEvent(event);
    fitLines();
}

void MixBench::dropLine(const QWidget* box)
{
    const auto found = std::ranges::find(lines_, box, &Line::box);
    if (found == lines_.end()) return;
    found->box->hide();
    found->box->deleteLater();
    lines_.erase(found);
    if (lines_.empty()) {
        water_ = 0;
        newLine();
    }
    lines_.back().material->list()->setFocus();
    reckon();
}

void MixBench::add(const QString& material, double grams)
{
    const auto empty = std::ranges::find_if(lines_, [](const Line& line) { return line.material->isEmpty(); });
    Line& line = empty == lines_.end() ? newLine() : *empty;
    line.material->setMaterial(material.toStdString());
    const bool us = ui::measures() == ui::Measures::us;
    line.amount->setValue(us ? ui::inDigits(grams / (1000.0 * inBaseUnit(Unit::oz)), ui::roundDigits) : grams);
    line.measure->setValue(static_cast<int>(us ? materials::KitchenMeasure::ounce : materials::KitchenMeasure::gram));
    reckon();
}

void MixBench::follow()
{
    const auto journal = household_.journal();
    if (journal->materials.rows() == table_.rows()) return;
    // Own materials changed: the lines are made anew with what was typed in them.
    table_ = journal->materials;
    struct Typed { std::string name; std::optional<double> amount; QVariant measure; };
    std::vector<Typed> typed;
    for (const Line& line : lines_) typed.push_back({line.material->edit()->text().toStdString(), line.amount->value().value, line.measure->value()});
    for (const Line& line : lines_) { line.box->hide(); line.box->deleteLater(); }
    lines_.clear();
    for (const Typed& each : typed) {
        Line& line = newLine();
        if (!each.name.empty()) line.material->setMaterial(each.name);
        line.amount->setValue(each.amount);
        line.measure->setValue(each.measure);
    }
    reckon();
}

guide::Portions MixBench::portions() const
{
    guide::Portions portions;
    for (const Line& line : lines_) {
        const materials::Material* row = line.material->isEmpty() ? nullptr : line.material->row();
        const auto amount = line.amount->value().value;
        const auto measure = line.measure->chosen<materials::KitchenMeasure>();
        if (row && amount && *amount > 0 && measure) portions.emplace_back(*row, materials::freshMass(*amount, *measure, *row));
    }
    return portions;
}

materials::Mix MixBench::mix() const
{
    materials::Mix sum = materials::poured(litres(water_));
    for (const auto& [material, fresh] : portions()) sum = sum + materials::mixOf(fresh, material);
    return sum;
}

QString MixBench::adviceText() const { return advice_->text(); }

void MixBench::reckon()
{
    const guide::Portions parts = portions();
    if (parts.empty()) water_ = 0;
    const materials::Mix now = mix();
    const double ratio = ratio_->value().value.value_or(guide::lowOf(Figure::carbonAim));
    const auto share = moisture_->share();
    const double moisture = share ? share->percent() : guide::lowOf(Figure::moistureBest);
    const materials::Material* added = added_->row();
    proposal_ = {};
    QString advice;
    if (parts.empty()) advice = tr("Choose materials and how much of each: the mix is reckoned from their water, carbon and nitrogen.");
    else if (added) advice = advise(now, *added, moisture, ratio);
    else advice = tr("Choose a material that may be added.");
    advice_->setText(advice);
    const bool any = proposal_.material.base() > 0 || proposal_.water.base() > 0;
    take_->setVisible(any);

    const materials::Mix& after = proposal_.mix;
    const auto then = [&](const QString& text) { return any ? tr("then %1").arg(text) : QString{}; };
    Gauge::Reading reading;
    reading.title = tr("C:N");
    reading.now = now.carbonToNitrogen();
    reading.value = reading.now ? ratioOf(now) : QString{};
    reading.least = 8;
    reading.most = 200;
    reading.logarithmic = true;
    reading.from = guide::lowOf(Figure::carbonRange);
    reading.to = guide::highOf(Figure::carbonRange);
    reading.aim = tr("good: %1").arg(ui::figureText(Figure::carbonRange));
    if (any) reading.then = after.carbonToNitrogen();
    reading.after = then(ratioOf(after));
    ratioGauge_->setReading(reading);
    reading = {};
    reading.title = tr("Moisture");
    reading.now = now.moisturePercent();
    reading.value = moistureOf(now);
    reading.least = 0;
    reading.most = 100;
    reading.from = guide::lowOf(Figure::moistureRange);
    reading.to = guide::highOf(Figure::moistureRange);
    reading.aim = tr("good: %1, best %2").arg(ui::figureText(Figure::moistureRange), ui::figureText(Figure::moistureBest));
    if (any) reading.then = after.moisturePercent();
    reading.after = then(moistureOf(after));
    moistureGauge_->setReading(reading);

    ui::FactList::Facts facts;
    if (!parts.empty()) {
        const guide::Softening softening = guide::softeningOf(parts, guide::lowOf(Figure::softensAt), guide::lowOf(Figure::softensWith));
        facts << std::pair{tr("Weight"), tr("%1, of it %2 dry").arg(ui::massText(now.fresh().base()), ui::massText(now.dry.base()))};
        facts << std::pair{tr("Room, loose"), tr("%1 (%2)", "volume, weight by volume").arg(ui::volumeText(now.bulk.base()), ui::bulkText(now.bulk.base() > 0 ? now.fresh().base() / now.bulk.base() * 1000 : 0))};
        if (softening.halfDays)
            facts << std::pair{tr("Softens"), tr("half in %1, nine tenths in %2 (bed at %3, worms %4)")
                                                  .arg(days(*softening.halfDays), days(*softening.mostDays), ui::figureText(Figure::softensAt), ui::figureText(Figure::softensWith))};
        if (softening.staysShare > 0.005) facts << std::pair{tr("Stays"), tr("%1 of the dry matter: use as it is, or sift").arg(ui::percentText(softening.staysShare))};
        if (water_ > 0) facts << std::pair{tr("Poured"), ui::volumeText(water_)};
        QStringList doubts;
        for (const auto& [material, fresh] : parts) {
            if (material.doubt != materials::Doubt::none) doubts << tr("%1 (%2): %3").arg(quoted(material), ui::welcomeText(material.welcome), ui::doubtText(material.doubt));
        }
        facts << std::pair{tr("Welcome"), doubts.join(u' ')};
    }
    facts_->setFacts(facts);
    QList<forms::Caution> cautions;
    for (const auto& [material, fresh] : parts) {
        if (forms::isManure(material) && cautions.isEmpty()) cautions.append(forms::manureCaution());
    }
    setCautions(cautions);
}

QString MixBench::advise(const materials::Mix& mix, const materials::Material& added, double moisture, double ratio)
{
    proposal_ = materials::addForBoth(mix, added, moisture, ratio);
    if (proposal_.obstacle == Obstacle::tooWet) {
        // A few points beside the wished moisture, and still within the range that is published as good, are no obstacle in practice.
        const materials::Addition forRatio = materials::addForCarbonToNitrogen(mix, added, ratio);
        const auto wet = forRatio.mix.moisturePercent();
        if (forRatio.obstacle == Obstacle::none && wet && *wet - moisture <= guide::lowOf(Figure::moistureNear) && *wet <= guide::highOf(Figure::moistureRange)) proposal_ = forRatio;
    }
    const auto parts = [&]() -> QString {
        const bool some = proposal_.material.base() > 0.0005, wet = proposal_.water.base() > 0.0005;
        const QString stuff = tr("%1 of %2").arg(ui::massText(proposal_.material.base()), quoted(added));
        const QString water = tr("%1 of water").arg(ui::volumeText(proposal_.water.base()));
        return some && wet ? tr("%1 and %2", "two things to add").arg(stuff, water) : some ? stuff : water;
    };
    const auto holds = [&] { return tr("C:N %1, moisture %2").arg(ratioOf(proposal_.mix), moistureOf(proposal_.mix)); };
    const bool any = proposal_.material.base() > 0.0005 || proposal_.water.base() > 0.0005;
    if (!any) proposal_ = {Mass{}, Volume{}, mix, proposal_.obstacle};
    if (proposal_.obstacle == Obstacle::none) return any ? tr("Add %1: then it has %2.").arg(parts(), holds()) : tr("It is as wished: %1.").arg(holds());

    QStringList said;
    const QString aim = tr("C:N %1 and moisture %2 cannot both be reached with %3.").arg(ui::numberText(ratio, 0), tr("%1 %").arg(ui::numberText(moisture, 0)), quoted(added));
    switch (proposal_.obstacle) {
    case Obstacle::nothingThere: return tr("There is no carbon or no nitrogen in the mix, so that it has no C:N to be brought anywhere.");
    case Obstacle::tooWet: {
        const materials::Addition forRatio = materials::addForCarbonToNitrogen(mix, added, ratio);
        said << aim << tr("At that C:N the mix would be at %1, and water cannot be taken out.").arg(moistureOf(forRatio.mix));
        break;
    }
    case Obstacle::wrongWay:
        said << aim << tr("The mix has C:N %1, and %2 with C:N %3 leads away from the aim.")
                           .arg(ratioOf(mix), quoted(added), added.carbonToNitrogen ? ui::numberText(*added.carbonToNitrogen, 0) : tr("none"));
        break;
    case Obstacle::notFarEnough: said << aim << tr("Even %1 times as much of it as of the mix does not get there.").arg(ui::figureText(Figure::mostTimes)); break;
    case Obstacle::none: break;
    }
    said << (any ? tr("The nearest mix: add %1; then it has %2.").arg(parts(), holds()) : tr("The nearest mix is the one you have: %1.").arg(holds()));
    Mass amount;
    if (const materials::Material* other = reaching(mix, moisture, ratio, &amount))
        said << tr("With %1 it can be done: %2.").arg(quoted(*other), ui::massText(amount.base()));
    else said << tr("No welcome material of the table does it alone; a drier or a milder aim can be reached.");
    return said.join(u' ');
}

const materials::Material* MixBench::reaching(const materials::Mix& mix, double moisture, double ratio, Mass* amount) const
{
    const materials::Material* best = nullptr;
    for (const materials::Material& row : table_.rows()) {
        if (row.welcome != materials::Welcome::yes || row.kind == materials::Kind::mineral) continue;
        const materials::Addition addition = materials::addForBoth(mix, row, moisture, ratio);
        if (addition.obstacle != Obstacle::none || (best && !(addition.material < *amount))) continue;
        best = &row;
        *amount = addition.material;
    }
    return best;
}

void MixBench::takeProposal()
{
    const materials::Addition taken = proposal_;
    const materials::Material* added = added_->row();
    if (taken.water.base() > 0) water_ += taken.water.base();
    if (added && taken.material.base() > 0) add(QString::fromStdString(added->name), std::round(taken.material.base() * 1e6) / 1000.0);
    else reckon();
}

}
