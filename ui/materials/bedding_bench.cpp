#include "ui/materials/bedding_bench.h"

#include "core/guide/figures.h"
#include "ui/common/area_field.h"
#include "ui/common/choice_field.h"
#include "ui/common/fact_list.h"
#include "ui/common/figure_words.h"
#include "ui/common/formats.h"
#include "ui/common/material_field.h"
#include "ui/common/material_words.h"
#include "ui/common/number_field.h"
#include "ui/common/panels.h"
#include "ui/common/source_words.h"
#include "ui/forms/field_grid.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <cmath>

namespace tierloam::materials_page {

using guide::Figure;

BeddingBench::BeddingBench(household::Household& household, const ui::Theme& theme, QWidget* parent)
    : Bench{household, theme, parent}, table_{household.journal()->materials}
{
    grid_ = new forms::FieldGrid{this};
    stack_ = grid_->add(tr("For"), new ui::ChoiceField);
    stack_->setObjectName(QStringLiteral("beddingFor"));
    area_ = grid_->add(tr("Floor"), new ui::AreaField);
    area_->proposeArea(journal::StackSettings{}.area, ui::roundDigits);
    proposedFloor_ = area_->area().value;
    depth_ = grid_->add(tr("Depth, laid"), new ui::LengthField{0.5, 60.0});
    depth_->setObjectName(QStringLiteral("beddingDepth"));
    depth_->propose(guide::highOf(Figure::beddingDepth));
    depth_->setHint(tr("usual: %1 (%2)").arg(ui::figureText(Figure::beddingDepth), ui::sourceText(guide::figureRow(Figure::beddingDepth))));
    material_ = grid_->add(tr("Of"), new ui::MaterialField{table_, materials::Kind::bedding, {}, "corrugated cardboard shredded"});
    column_->addWidget(grid_);
    say_ = ui::makeLabel({}, ui::TextRole::strong, this, true);
    say_->setObjectName(QStringLiteral("beddingSays"));
    column_->addWidget(say_);
    facts_ = new ui::FactList{this};
    column_->addWidget(facts_);
    addTray_ = ui::makeButton({}, ui::Tone::moss, this);
    addTray_->setObjectName(QStringLiteral("addThisTray"));
    column_->addWidget(addTray_, 0, Qt::AlignLeading);
    addNote(tr("Bedding is wetted like a wrung-out sponge: to %1 of what it holds (%2). Press a handful: a few drops may come, no stream.")
                .arg(ui::figureText(Figure::wetted), ui::sourceText(guide::figureRow(Figure::wetted))));
    column_->addStretch(1);
    connect(stack_, &ui::Field::edited, this, [this] { takeFloor(); reckon(); });
    connect(grid_, &forms::FieldGrid::edited, this, &BeddingBench::reckon);
    connect(addTray_, &QPushButton::clicked, this, [this] {
        const auto laid = bedding();
        const materials::Material* row = material_->row();
        if (!laid || !row) return;
        const Amount amount = laid->asItComes.base() < 1.0 ? Amount{std::round(1000 * laid->asItComes.base()), Unit::g} : Amount{std::round(100 * laid->asItComes.base()) / 100, Unit::kg};
        Q_EMIT trayWanted(stack_->value().toString(), journal::Bed{amount, row->name, std::nullopt});
    });
    follow();
    takeFloor();
    reckon();
}

void BeddingBench::follow()
{
    fillStacks(stack_, tr("another tray"));
    if (!stack_->value().isValid() && !standingStacks().isEmpty() && area_->area().value == proposedFloor_)
        stack_->setValue(standingStacks().front());
    reckon();
}

void BeddingBench::setMaterial(const QString& material)
{
    material_->setMaterial(material.toStdString());
    reckon();
}

void BeddingBench::takeFloor()
{
    if (const journal::Standing* standing = standingOf(stack_->value().toString())) area_->setArea(standing->settings.area);
}

std::optional<materials::BeddingForTray> BeddingBench::bedding() const
{
    const auto area = area_->area().value;
    const auto depth = depth_->length();
    const materials::Material* row = material_->row();
    if (!area || !depth || !row) return std::nullopt;
    return materials::beddingForTray(*area, *depth, *row);
}

void BeddingBench::reckon()
{
    const auto laid = bedding();
    const materials::Material* row = material_->row();
    const QString stack = stack_->value().toString();
    addTray_->setVisible(laid && !stack.isEmpty() && !household_.readOnly());
    addTray_->setText(tr("Add this tray to %1…").arg(QString{stack}.replace(u'&', QStringLiteral("&&"))));
    if (!laid || !row) {
        say_->setText(tr("Floor, depth and material make the amounts."));
        facts_->setFacts({});
        setCautions({});
        return;
    }
    say_->setText(tr("%1 of bedding, dry as it comes, and %2 of water.").arg(ui::massText(laid->asItComes.base()), ui::volumeText(laid->water.base())));
    ui::FactList::Facts facts;
    facts << std::pair{tr("Loose"), tr("%1 before it is wetted").arg(ui::volumeText(laid->asItComes.base() / row->bulkKgPerM3 * 1000))};
    facts << std::pair{tr("Laid"), tr("%1 at %2 moisture, of it %3 dry").arg(ui::massText(laid->laid.base()), tr("%1 %").arg(ui::numberText(laid->moisturePercent, 0)), ui::massText(laid->dry.base()))};
    if (row->doubt != materials::Doubt::none) facts << std::pair{tr("Welcome"), tr("%1. %2").arg(ui::welcomeText(row->welcome), ui::doubtText(row->doubt))};
    facts << std::pair{tr("Source"), row->own ? QString::fromStdString(row->source) : ui::sourceWords(std::string_view{row->source})};
    facts_->setFacts(facts);
    setCautions(forms::isManure(*row) ? QList{forms::manureCaution()} : QList<forms::Caution>{});
}

}
