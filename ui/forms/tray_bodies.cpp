#include "core/guide/figures.h"
#include "core/materials/bedding.h"
#include "ui/common/amount_field.h"
#include "ui/common/choice_field.h"
#include "ui/common/formats.h"
#include "ui/common/material_field.h"
#include "ui/common/number_field.h"
#include "ui/forms/body.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace tierloam::forms {

namespace {

using ui::AmountField;
using ui::ChoiceField;
using ui::MaterialField;

constexpr double mostMoisture = 99.0;         // at 100 % there would be no dry matter
constexpr double litresPerCmOnSquareMetre = 10.0;

class LidBody final : public Body {
    Q_DECLARE_TR_FUNCTIONS(LidBody)

public:
    LidBody(FieldGrid& grid, const FormContext& context) : Body{grid, context}
    {
        lid_ = grid.add(tr("The lid is"), new ChoiceField);
        lid_->addChoice(tr("on"), true);
        lid_->addChoice(tr("off"), false);
        const journal::Standing* now = context.standing(context.today);
        lid_->setValue(now ? !now->lidOn : false); // what is worth recording is the other
    }

    void fill(const journal::Action& action) override { lid_->setValue(std::get<journal::Lid>(action).on.value_or(true)); }
    journal::Action action() const override { return journal::Lid{lid_->value().toBool()}; }

private:
    ChoiceField* lid_ = nullptr;
};

class HarvestBody final : public Body {
    Q_DECLARE_TR_FUNCTIONS(HarvestBody)

public:
    HarvestBody(FieldGrid& grid, const FormContext& context) : Body{grid, context}
    {
        // First what has to be typed; the whole tray is the rule.
        amount_ = grid.add(tr("Castings"), new AmountField{ui::massAndVolumeUnits()});
        amount_->setRequired(tr("How much was taken? By mass or by volume."));
        how_ = grid.add(tr("Taken"), new ChoiceField);
        how_->addChoice(tr("the whole tray"), true);
        how_->addChoice(tr("a part; the batch goes on"), false);
        share_ = grid.add(tr("Share taken"), new ui::ShareField{0.1});
        share_->setRequired(tr("Which share of the tray?"));
        moisture_ = grid.add(tr("Their moisture"), new ui::ShareField{0.0, mostMoisture});
        moisture_->setHint(tr("of wet mass, if measured"));
        const auto* last = context.last<journal::Harvest>();
        amount_->setUnit(last ? ui::inMeasures(last->taken).unit : ui::measures() == ui::Measures::us ? Unit::lb : Unit::kg);
        show();
        QObject::connect(how_, &ui::Field::edited, &grid, [this] { show(); });
        QObject::connect(share_, &ui::Field::edited, &grid, [this] { sayExpected(); });
    }

    void fill(const journal::Action& action) override
    {
        const auto& harvest = std::get<journal::Harvest>(action);
        how_->setValue(harvest.whole());
        saidWhole_ = harvest.whole() && harvest.share;
        share_->setShare(harvest.whole() ? std::nullopt : harvest.share);
        amount_->setAmount(harvest.taken);
        moisture_->setShare(harvest.moisture);
        show();
    }

    journal::Action action() const override
    {
        journal::Harvest harvest;
        harvest.taken = amount_->amount().value.value_or(Amount{});
        harvest.moisture = moisture_->share();
        if (!whole()) harvest.share = share_->share();
        else if (saidWhole_) harvest.share = Share::fromPercent(100);
        return harvest;
    }

    void follow(const journal::Standing* standing, std::optional<int> slot) override
    {
        standing_ = standing ? std::optional{*standing} : std::nullopt;
        slot_ = slot;
        sayExpected();
    }

    void forEditing() override
    {
        editing_ = true; // what is expected now says nothing about a harvest long past
        amount_->setHint({});
    }

private:
    bool whole() const { return how_->value().toBool(); }

    void show()
    {
        grid_.setRowShown(share_, !whole());
        sayExpected();
    }

    void sayExpected()
    {
        if (editing_ || !standing_) return;
        const std::optional<int> slot = slot_ ? slot_ : standing_->dryingSlot();
        const reckoning::TrayEstimate* tray = slot ? context_.tray(*slot) : nullptr;
        if (!tray) {
            amount_->setHint({});
            return;
        }
        const double part = whole() ? 1.0 : share_->share() ? share_->share()->fraction() : 1.0;
        const auto less = [part](double kg) { return std::max(0.0, kg - guide::lowOf(guide::Figure::lightTray)) * part; };
        const reckoning::Band& kg = tray->weightKg;
        const double volume = tray->depthCm * standing_->settings.area.base() * litresPerCmOnSquareMetre * part;
        amount_->setHint(tr("expected: about %1, or %2").arg(ui::massBand({less(kg.p05), less(kg.p50), less(kg.p95)}), ui::volumeText(volume)));
    }

    ChoiceField* how_ = nullptr;
    ui::ShareField* share_ = nullptr;
    AmountField* amount_ = nullptr;
    ui::ShareField* moisture_ = nullptr;
    std::optional<journal::Standing> standing_;
    std::optional<int> slot_;
    bool saidWhole_ = false;
    bool editing_ = false;
};

class BedBody final : public Body {
    Q_DECLARE_TR_FUNCTIONS(BedBody)

public:
    BedBody(FieldGrid& grid, const FormContext& context) : Body{grid, context}
    {
        material_ = grid.add(tr("Bedding"), new MaterialField{context.journal->materials, materials::Kind::bedding, context.beddingsLately(), {}});
        material_->setRequired(tr("Which bedding?"));
        amount_ = grid.add(tr("Amount, dry"), new AmountField{ui::massUnits()});
        amount_->setRequired(tr("How much bedding, as it comes to hand?"));
        moisture_ = grid.add(tr("Moisture once laid"), new ui::ShareField{0.0, mostMoisture});
        moisture_->setHint(tr("wetted like a wrung-out sponge when left empty"));
        const auto* last = context.last<journal::Bed>();
        material_->setMaterial(last ? std::string_view{last->material} : materials::usualBedding);
        if (const auto* here = context.lastHere<journal::Bed>()) amount_->propose(here->bedding);
        QObject::connect(material_, &ui::Field::edited, &grid, [this] { sayMix(); });
        QObject::connect(amount_, &ui::Field::edited, &grid, [this] { sayMix(); });
    }

    void fill(const journal::Action& action) override
    {
        const auto& bed = std::get<journal::Bed>(action);
        material_->setMaterial(bed.material);
        amount_->setAmount(bed.bedding);
        moisture_->setShare(bed.moisture);
        sayMix();
    }

    journal::Action action() const override
    {
        return journal::Bed{amount_->amount().value.value_or(Amount{}), material_->material().value.value_or(std::string{}), moisture_->share()};
    }

    void follow(const journal::Standing* standing, std::optional<int>) override
    {
        area_ = standing ? std::optional{standing->settings.area} : std::nullopt;
        const materials::Material* row = material_->row();
        if (amount_->isEmpty() && area_ && row && !proposed_) {
            const auto need = materials::beddingForTray(*area_, centimetres(guide::highOf(guide::Figure::beddingDepth)), *row);
            amount_->proposeRound(Amount{std::round(need.asItComes.base() * 100.0) * 10.0, Unit::g});
        }
        proposed_ = true; // once: an amount that was wiped out on purpose stays so
        sayMix();
    }

    const materials::Material* material() const override { return material_->row(); }

private:
    void sayMix()
    {
        const materials::Material* row = material_->row();
        const auto amount = amount_->amount().value;
        if (!row || !amount || !amount->mass() || !area_ || amount->value <= 0) {
            amount_->setHint({});
            return;
        }
        const Length depth = materials::laidDepth(*amount->mass(), *area_, *row);
        const Volume water = materials::waterForBedding(*amount->mass(), *row);
        amount_->setHint(tr("makes about %1; wet it with %2 of water").arg(ui::lengthText(depth.base()), ui::volumeText(water.base())));
    }

    MaterialField* material_ = nullptr;
    AmountField* amount_ = nullptr;
    ui::ShareField* moisture_ = nullptr;
    std::optional<Area> area_;
    bool proposed_ = false;
};

}

std::unique_ptr<Body> makeLid(FieldGrid& grid, const FormContext& context) { return std::make_unique<LidBody>(grid, context); }
std::unique_ptr<Body> makeHarvest(FieldGrid& grid, const FormContext& context) { return std::make_unique<HarvestBody>(grid, context); }
std::unique_ptr<Body> makeBed(FieldGrid& grid, const FormContext& context) { return std::make_unique<BedBody>(grid, context); }

}
