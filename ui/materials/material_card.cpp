#include "ui/materials/material_card.h"

#include "ui/common/actions.h"
#include "ui/common/fact_list.h"
#include "ui/common/flow_layout.h"
#include "ui/common/formats.h"
#include "ui/common/material_names.h"
#include "ui/common/material_words.h"
#include "ui/common/source_words.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace tierloam::materials_page {

MaterialCard::MaterialCard(QWidget* parent) : ui::Card{parent}
{
    setObjectName(QStringLiteral("materialCard"));
    name_ = ui::makeLabel({}, ui::TextRole::section, this, true);
    welcome_ = ui::makeLabel({}, ui::TextRole::body, this, true);
    welcome_->setObjectName(QStringLiteral("welcomeLine"));
    facts_ = new ui::FactList{this};
    column()->addWidget(name_);
    column()->addWidget(welcome_);
    column()->addWidget(facts_);
    auto* buttons = new QWidget{this};
    auto* flow = new ui::FlowLayout{buttons, 6};
    const auto button = [&](ui::ActionId id, ui::Tone tone) {
        auto* made = ui::makeButton(ui::actionText(id), tone, buttons);
        made->setObjectName(QString::fromLatin1(ui::actionRow(id).name) % QStringLiteral("Button"));
        flow->addWidget(made);
        return made;
    };
    mix_ = button(ui::ActionId::mixMaterial, ui::Tone::moss);
    star_ = button(ui::ActionId::favouriteMaterial, ui::Tone::plain);
    edit_ = button(ui::ActionId::editMaterial, ui::Tone::plain);
    column()->addWidget(buttons);
    connect(star_, &QPushButton::clicked, this, &MaterialCard::favouriteToggled);
    connect(mix_, &QPushButton::clicked, this, &MaterialCard::mixWanted);
    connect(edit_, &QPushButton::clicked, this, &MaterialCard::editWanted);
    setMaterial(nullptr, false, false);
}

QString MaterialCard::welcomeLine() const { return welcome_->text(); }

void MaterialCard::setMaterial(const materials::Material* material, bool favourite, bool canEdit)
{
    if (material) material_ = *material;
    else material_.reset();
    for (QWidget* each : std::initializer_list<QWidget*>{welcome_, facts_, star_, mix_}) each->setVisible(material != nullptr);
    edit_->setVisible(material && material->own && canEdit);
    if (!material) {
        name_->setText(tr("No material is chosen."));
        return;
    }
    const QString name = ui::materialText(material->name);
    name_->setText(material->own ? tr("%1 (own)").arg(name) : name);
    const QString mark = ui::welcomeMark(material->welcome);
    const QString welcome = material->welcome == materials::Welcome::yes ? (material->own ? tr("your own, taken as welcome") : tr("welcome")) : material->welcome == materials::Welcome::aLittle ? tr("only a little at a time") : tr("keep it out");
    const QString why = ui::doubtText(material->doubt);
    welcome_->setText(why.isEmpty() ? tr("%1 %2.", "mark, word").arg(mark, welcome) : tr("%1 %2. %3", "mark, word, reason").arg(mark, welcome, why));
    ui::setTone(welcome_, material->welcome == materials::Welcome::yes ? ui::Tone::moss : material->welcome == materials::Welcome::aLittle ? ui::Tone::amber : ui::Tone::brick);
    ui::FactList::Facts facts;
    const auto percent = [](double value, int decimals) { return tr("%1 %").arg(ui::numberText(value, decimals)); };
    facts << std::pair{tr("C:N"), material->carbonToNitrogen ? tr("%1 : 1").arg(ui::numberText(*material->carbonToNitrogen, *material->carbonToNitrogen < 9.95 ? 1 : 0)) : tr("none: not a source of carbon")};
    facts << std::pair{tr("Moisture"), percent(material->moisturePercent, 0)};
    if (material->carbonToNitrogen)
        facts << std::pair{tr("Carbon, nitrogen"), tr("%1 and %2 of the dry matter").arg(percent(100 * material->carbonShare(), 1), percent(material->nitrogenPercent, 2))};
    facts << std::pair{tr("Bulk"), tr("%1, loose").arg(ui::bulkText(material->bulkKgPerM3))};
    facts << std::pair{tr("Holds"), tr("%1 of water for one of dry matter, by weight").arg(ui::numberText(material->waterHeldKgPerKg, 1))};
    facts << std::pair{tr("Softens like"), ui::softeningText(material->softening)};
    const QString source = material->own ? QString::fromStdString(material->source) : ui::sourceWords(std::string_view{material->source});
    facts << std::pair{tr("Source"), source.isEmpty() && material->own ? tr("none noted; what was left out is that of kitchen mix") : source};
    facts_->setFacts(facts);
    star_->setText(favourite ? tr("★ Favourite") : tr("☆ Make it a favourite"));
    setAccessibleName(name);
}

}
