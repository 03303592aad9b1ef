#include "ui/materials/castings_bench.h"

#include "core/guide/figures.h"
#include "ui/common/amount_field.h"
#include "ui/common/choice_field.h"
#include "ui/common/dates.h"
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

QString cited(Figure figure) { return CastingsBench::tr("%1 (%2)", "figure, source").arg(ui::figureText(figure), ui::sourceText(guide::figureRow(figure))); }

/// "0.8 m²" or square feet.
QString ground(Area area)
{
    return ui::areaText(area.base());
}

/// The latest harvest of a stack; nullptr when there was none.
const journal::Entry* latestHarvest(const journal::Entries& entries, const std::string& stack)
{
    for (auto entry = entries.rbegin(); entry != entries.rend(); ++entry) {
        if (entry->stack == stack && std::holds_alternative<journal::Harvest>(entry->action)) return &*entry;
    }
    return nullptr;
}

}

CastingsBench::CastingsBench(household::Household& household, const ui::Theme& theme, QWidget* parent) : Bench{household, theme, parent}
{
    auto* grid = new forms::FieldGrid{this};
    from_ = grid->add(tr("Castings of"), new ui::ChoiceField);
    amount_ = grid->add(tr("Amount"), new ui::AmountField{ui::massAndVolumeUnits()});
    amount_->proposeRound(Amount{5, Unit::L});
    moisture_ = grid->add(tr("Moisture"), new ui::ShareField{0.0, 95.0});
    moisture_->setShare(Share::fromPercent(guide::lowOf(Figure::takenMoisture)));
    potting_ = grid->add(tr("Share of a potting mix"), new ui::ShareField{1.0, 100.0});
    potting_->setObjectName(QStringLiteral("pottingShare"));
    potting_->setShare(Share::fromPercent(guide::lowOf(Figure::pottingShare)));
    depth_ = grid->add(tr("Depth of a top-dressing"), new ui::LengthField{0.1, 10.0});
    depth_->propose(guide::lowOf(Figure::topDressing));
    column_->addWidget(grid);
    facts_ = new ui::FactList{this};
    column_->addWidget(facts_);
    addNote(tr("Tested in potting mixes: %1; at most %2; never alone: it packs, and is too salty for seedlings. Top-dressing: %3, again after %4.")
                .arg(cited(Figure::pottingShare), cited(Figure::pottingMost), cited(Figure::topDressing), cited(Figure::topDressingTwice)));
    addNote(tr("Sift through a mesh of %1; what stays on it goes back into a tray. Store vented and cool, shaded, near %2 moisture, for %3. Castings from a worm bin always hold some cocoons and young worms.")
                .arg(cited(Figure::sieve), cited(Figure::storageMoisture), cited(Figure::storageMonths)));
    column_->addStretch(1);
    connect(from_, &ui::Field::edited, this, [this] { takeBatch(); reckon(); });
    connect(grid, &forms::FieldGrid::edited, this, &CastingsBench::reckon);
    setCautions({forms::dustCaution()});
    follow();
    takeBatch();
    reckon();
}

void CastingsBench::follow()
{
    fillStacks(from_, tr("an amount of my own"));
    reckon();
}

/// What was taken last; for a stack that was never harvested, what the estimate says lies in its bottom tray.
void CastingsBench::takeBatch()
{
    const QString stack = from_->value().toString();
    if (stack.isEmpty()) return;
    const auto journal = household_.journal();
    if (const journal::Entry* entry = latestHarvest(journal->entries, stack.toStdString())) {
        const auto& harvest = std::get<journal::Harvest>(entry->action);
        amount_->propose(harvest.taken);
        amount_->setHint(tr("taken on %1").arg(ui::longDay(entry->date.day, household_.today())));
        if (harvest.moisture) moisture_->setShare(harvest.moisture);
        return;
    }
    const reckoning::StackReckoning* now = estimateOf(stack);
    if (!now || now->now.slots.empty()) return;
    const reckoning::TrayEstimate& tray = now->now.slots.front();
    amount_->proposeRound(Amount{std::round(10 * guide::CastingsBatch{kilograms(tray.castingsDryKg.p50), 0}.volume().base()) / 10, Unit::L});
    amount_->setHint(tr("an estimate of what lies in the bottom tray"));
    moisture_->setShare(Share::fromPercent(std::round(tray.moisturePct.p50)));
}

std::optional<guide::CastingsBatch> CastingsBench::batch() const
{
    const auto amount = amount_->amount().value;
    const auto moisture = moisture_->share();
    if (!amount || !moisture) return std::nullopt;
    if (const auto mass = amount->mass()) return guide::CastingsBatch{*mass, moisture->percent()};
    return guide::batchOf(*amount->volume(), moisture->percent());
}

void CastingsBench::reckon()
{
    const auto castings = batch();
    const auto share = potting_->share();
    const auto depth = depth_->length();
    ui::FactList::Facts facts;
    if (castings) {
        facts << std::pair{tr("Castings"), tr("%1, about %2").arg(ui::volumeText(castings->volume().base()), ui::massText(castings->wet.base()))};
        if (share) {
            const guide::PottingMix mix = guide::pottingMix(castings->volume(), share->percent());
            QString said = tr("%1 of mix: with %2 of potting soil, coir or compost").arg(ui::volumeText(mix.whole.base()), ui::volumeText(mix.other.base()));
            if (mix.held) said = tr("%1 – reckoned with %2, the most that is advised").arg(said, ui::figureText(Figure::pottingMost));
            facts << std::pair{tr("Potting mix"), said};
        }
        if (depth) facts << std::pair{tr("Top-dressing"), tr("covers %1").arg(ground(guide::covered(castings->volume(), *depth)))};
        const Mass off = guide::toDryOffBeforeStoring(*castings);
        facts << std::pair{tr("To store it"), off.base() > 0.005 ? tr("let %1 of water dry off, in the shade").arg(ui::massText(off.base())) : tr("dry enough; keep it vented")};
    }
    facts_->setFacts(facts);
}

}
