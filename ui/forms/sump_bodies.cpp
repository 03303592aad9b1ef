#include "ui/common/amount_field.h"
#include "ui/common/choice_field.h"
#include "ui/common/formats.h"
#include "ui/common/number_field.h"
#include "ui/forms/body.h"

#include <QCoreApplication>

namespace tierloam::forms {

namespace {

using ui::AmountField;
using ui::ChoiceField;

constexpr double greatestEc = 100.0; // mS/cm; sea water has about 50
constexpr int mostWorms = 1000000;

std::optional<double> read(const ui::NumberField& field)
{
    return field.value().value;
}

struct SumpFields {
    Q_DECLARE_TR_FUNCTIONS(SumpFields)
};

ui::NumberField* addEc(FieldGrid& grid)
{
    return grid.add(SumpFields::tr("Conductivity"), new ui::NumberField{{{SumpFields::tr("mS/cm"), 1.0, 0.0}}, {0.0, greatestEc}});
}

ui::CountField* addWorms(FieldGrid& grid)
{
    return grid.add(SumpFields::tr("Worms put back"), new ui::CountField{0, mostWorms});
}

class DrainBody final : public Body {
    Q_DECLARE_TR_FUNCTIONS(DrainBody)

public:
    DrainBody(FieldGrid& grid, const FormContext& context) : Body{grid, context}
    {
        volume_ = grid.add(tr("Drained"), new AmountField{ui::volumeUnits()});
        volume_->setZeroAllowed(true);
        volume_->propose(context.usual.drain);
        emptied_ = grid.add(tr("The sump"), new ChoiceField);
        emptied_->addChoice(tr("is empty now"), true);
        emptied_->addChoice(tr("still holds some"), false);
        worms_ = addWorms(grid);
        spigot_ = grid.add(tr("Spigot"), new ChoiceField);
        spigot_->addChoice(tr("stays as it is"));
        spigot_->addChoice(tr("open from now on"), static_cast<int>(journal::Spigot::open));
        spigot_->addChoice(tr("shut from now on"), static_cast<int>(journal::Spigot::shut));
        ec_ = addEc(grid);
    }

    void fill(const journal::Action& action) override
    {
        const auto& drain = std::get<journal::Drain>(action);
        volume_->setAmount(drain.volume);
        saidEmptied_ = drain.emptied.has_value();
        emptied_->setValue(drain.emptied.value_or(true));
        ec_->setValue(drain.ecMilliSiemensPerCm);
        worms_->setCount(drain.wormsPutBack);
        spigot_->choose(drain.spigot);
    }

    journal::Action action() const override
    {
        journal::Drain drain;
        drain.volume = volume_->amount().value;
        const bool emptied = emptied_->value().toBool();
        if (drain.volume && (!emptied || saidEmptied_)) drain.emptied = emptied;
        drain.ecMilliSiemensPerCm = read(*ec_);
        drain.wormsPutBack = worms_->count();
        drain.spigot = spigot_->chosen<journal::Spigot>();
        return drain;
    }

    QString wholeProblem() const override
    {
        if (!volume_->isEmpty() || !spigot_->isEmpty()) return {};
        return tr("Give the volume that was drained, or say how the spigot stands from now on.");
    }

    void follow(const journal::Standing* standing, std::optional<int>) override
    {
        if (!standing) return;
        spigot_->setHint(standing->spigot == journal::Spigot::open ? tr("it is open on that day") : tr("it is shut on that day"));
    }

private:
    AmountField* volume_ = nullptr;
    ChoiceField* emptied_ = nullptr;
    ui::NumberField* ec_ = nullptr;
    ui::CountField* worms_ = nullptr;
    ChoiceField* spigot_ = nullptr;
    bool saidEmptied_ = false;
};

class FlushBody final : public Body {
    Q_DECLARE_TR_FUNCTIONS(FlushBody)

public:
    FlushBody(FieldGrid& grid, const FormContext& context) : Body{grid, context}
    {
        poured_ = grid.add(tr("Water poured"), new AmountField{ui::volumeUnits()});
        poured_->setZeroAllowed(true);
        poured_->setRequired(tr("How much water went through?"));
        poured_->setHint(tr("spigot shut, water through, everything drained at once"));
        const auto* last = context.lastHere<journal::Flush>();
        if (last) poured_->propose(last->poured);
        else poured_->proposeRound({2.0, Unit::L});
        drained_ = grid.add(tr("Drained"), new ui::VolumeField{true});
        worms_ = addWorms(grid);
        ec_ = addEc(grid);
    }

    void fill(const journal::Action& action) override
    {
        const auto& flush = std::get<journal::Flush>(action);
        poured_->setAmount(flush.poured);
        drained_->setVolume(flush.drained);
        ec_->setValue(flush.ecMilliSiemensPerCm);
        worms_->setCount(flush.wormsPutBack);
    }

    journal::Action action() const override
    {
        return journal::Flush{poured_->amount().value.value_or(Amount{}), drained_->volume(), read(*ec_), worms_->count()};
    }

private:
    AmountField* poured_ = nullptr;
    ui::VolumeField* drained_ = nullptr;
    ui::NumberField* ec_ = nullptr;
    ui::CountField* worms_ = nullptr;
};

}

std::unique_ptr<Body> makeDrain(FieldGrid& grid, const FormContext& context) { return std::make_unique<DrainBody>(grid, context); }
std::unique_ptr<Body> makeFlush(FieldGrid& grid, const FormContext& context) { return std::make_unique<FlushBody>(grid, context); }

}
