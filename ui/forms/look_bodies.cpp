#include "ui/common/amount_field.h"
#include "ui/common/choice_field.h"
#include "ui/common/formats.h"
#include "ui/common/number_field.h"
#include "ui/forms/body.h"

#include <QCoreApplication>

namespace tierloam::forms {

namespace {

using ui::ChoiceField;

constexpr double coldBed = 10.0; // °C; below it worms hardly eat: Tmin 3, and growth at 10 °C is a tenth of the best (model)

class ReadingBody final : public Body {
    Q_DECLARE_TR_FUNCTIONS(ReadingBody)

public:
    ReadingBody(FieldGrid& grid, const FormContext& context) : Body{grid, context}
    {
        bin_ = grid.add(tr("In the bed"), new ui::TemperatureField);
        air_ = grid.add(tr("Air around"), new ui::TemperatureField);
        humidity_ = grid.add(tr("Air humidity"), new ui::ShareField);
        moisture_ = grid.add(tr("Moisture of the bed"), new ui::ShareField);
        moisture_->setHint(tr("of wet mass"));
        squeeze_ = grid.add(tr("Squeezed in the hand"), new ChoiceField);
        squeeze_->addChoice(tr("not noted"));
        squeeze_->addChoice(tr("1: crumbles, dry"), 1);
        squeeze_->addChoice(tr("2: holds together, no shine"), 2);
        squeeze_->addChoice(tr("3: like a wrung-out sponge"), 3);
        squeeze_->addChoice(tr("4: drops fall"), 4);
        squeeze_->addChoice(tr("5: water runs"), 5);
        ph_ = grid.add(tr("pH"), new ui::NumberField{{{QString{}, 1.0, 0.0}}, {0.0, 14.0}});
        sump_ = grid.add(tr("Standing in the sump"), new ui::VolumeField{true});
        sump_->setHint(tr("read with a ruler or at its marks; nothing is drained"));
    }

    void fill(const journal::Action& action) override
    {
        const auto& reading = std::get<journal::Reading>(action);
        bin_->setTemperature(reading.bin);
        air_->setTemperature(reading.air);
        humidity_->setShare(reading.relativeHumidity);
        moisture_->setShare(reading.moisture);
        squeeze_->setValue(reading.squeeze ? QVariant{*reading.squeeze} : QVariant{});
        ph_->setValue(reading.ph);
        sump_->setVolume(reading.sump);
    }

    journal::Action action() const override
    {
        journal::Reading reading;
        reading.bin = bin_->temperature();
        reading.air = air_->temperature();
        reading.relativeHumidity = humidity_->share();
        reading.moisture = moisture_->share();
        if (!squeeze_->isEmpty()) reading.squeeze = squeeze_->value().toInt();
        reading.ph = ph_->value().value;
        reading.sump = sump_->volume();
        return reading;
    }

    QString wholeProblem() const override
    {
        for (const ui::Field* field : std::initializer_list<const ui::Field*>{bin_, air_, humidity_, moisture_, squeeze_, ph_, sump_}) {
            if (!field->isEmpty()) return {};
        }
        return tr("Give at least one reading.");
    }

    ui::Field* fieldFor(reckoning::LookKind look) const override
    {
        switch (look) {
        case reckoning::LookKind::bedTemperature: return bin_;
        case reckoning::LookKind::moisture: return moisture_;
        case reckoning::LookKind::squeeze: return squeeze_;
        case reckoning::LookKind::sumpLevel: return sump_;
        default: return nullptr;
        }
    }

    void follow(const journal::Standing* standing, std::optional<int>) override
    {
        if (standing) sump_->setHint(tr("read with a ruler or at its marks; it holds %1").arg(ui::volumeText(standing->settings.sump.base())));
    }

    bool isAboutCold() const override
    {
        const auto bin = bin_->temperature();
        const auto air = air_->temperature();
        return (bin && bin->base() < coldBed) || (!bin && air && air->base() < coldBed);
    }

private:
    ui::TemperatureField* bin_ = nullptr;
    ui::TemperatureField* air_ = nullptr;
    ui::ShareField* humidity_ = nullptr;
    ui::ShareField* moisture_ = nullptr;
    ChoiceField* squeeze_ = nullptr;
    ui::NumberField* ph_ = nullptr;
    ui::VolumeField* sump_ = nullptr;
};

class CheckBody final : public Body {
    Q_DECLARE_TR_FUNCTIONS(CheckBody)

public:
    CheckBody(FieldGrid& grid, const FormContext& context) : Body{grid, context}
    {
        depth_ = grid.add(tr("Depth of castings"), new ui::LengthField{0.0, journal::StackSettings{}.height.base()});
        bits_ = grid.add(tr("Still recognisable"), new ui::ShareField);
        bits_->setHint(tr("how much of the tray you still know as food or bedding"));
        left_ = grid.add(tr("Left of the last feeding"), new ui::ShareField);
        worms_ = grid.add(tr("Worms seen"), new ChoiceField);
        worms_->addChoice(tr("not noted"));
        worms_->addChoice(tr("few"), static_cast<int>(journal::WormsSeen::few));
        worms_->addChoice(tr("some"), static_cast<int>(journal::WormsSeen::some));
        worms_->addChoice(tr("many"), static_cast<int>(journal::WormsSeen::many));
    }

    ui::Field* fieldFor(reckoning::LookKind look) const override
    {
        switch (look) {
        case reckoning::LookKind::depth: return depth_;
        case reckoning::LookKind::bits: return bits_;
        case reckoning::LookKind::left: return left_;
        case reckoning::LookKind::wormsSeen: return worms_;
        default: return nullptr;
        }
    }

    void fill(const journal::Action& action) override
    {
        const auto& check = std::get<journal::Check>(action);
        depth_->setLength(check.depth);
        bits_->setShare(check.bits);
        left_->setShare(check.left);
        worms_->choose(check.worms);
    }

    journal::Action action() const override
    {
        return journal::Check{depth_->length(), bits_->share(), left_->share(), worms_->chosen<journal::WormsSeen>()};
    }

    QString wholeProblem() const override
    {
        if (!depth_->isEmpty() || !bits_->isEmpty() || !left_->isEmpty() || !worms_->isEmpty()) return {};
        return tr("Note at least one thing that you saw.");
    }

    void follow(const journal::Standing* standing, std::optional<int>) override
    {
        if (standing) depth_->setRange({0.0, standing->settings.height.base()});
    }

private:
    ui::LengthField* depth_ = nullptr;
    ui::ShareField* bits_ = nullptr;
    ui::ShareField* left_ = nullptr;
    ChoiceField* worms_ = nullptr;
};

class TrayWeightBody final : public Body {
    Q_DECLARE_TR_FUNCTIONS(TrayWeightBody)

public:
    TrayWeightBody(FieldGrid& grid, const FormContext& context) : Body{grid, context}
    {
        weight_ = grid.add(tr("Tray with contents"), new ui::AmountField{ui::massUnits()});
        weight_->setRequired(tr("What does the scale show?"));
        tare_ = grid.add(tr("Empty tray"), new ui::MassField);
        const auto* last = context.last<journal::TrayWeight>();
        weight_->setUnit(last ? ui::inMeasures(last->weight).unit : ui::measures() == ui::Measures::us ? Unit::lb : Unit::kg);
        if (const auto* here = context.lastHere<journal::TrayWeight>()) tare_->setMass(here->tare);
    }

    void fill(const journal::Action& action) override
    {
        const auto& weighed = std::get<journal::TrayWeight>(action);
        weight_->setAmount(weighed.weight);
        tare_->setMass(weighed.tare);
    }

    journal::Action action() const override { return journal::TrayWeight{weight_->amount().value.value_or(Amount{}), tare_->mass()}; }

    QString wholeProblem() const override
    {
        const auto weight = weight_->amount().value;
        const auto tare = tare_->mass();
        if (!weight || !tare || weight->mass()->base() >= tare->base()) return {};
        return tr("The empty tray cannot weigh more than the tray with its contents.");
    }

private:
    ui::AmountField* weight_ = nullptr;
    ui::MassField* tare_ = nullptr;
};

}

std::unique_ptr<Body> makeReading(FieldGrid& grid, const FormContext& context) { return std::make_unique<ReadingBody>(grid, context); }
std::unique_ptr<Body> makeCheck(FieldGrid& grid, const FormContext& context) { return std::make_unique<CheckBody>(grid, context); }
std::unique_ptr<Body> makeTrayWeight(FieldGrid& grid, const FormContext& context) { return std::make_unique<TrayWeightBody>(grid, context); }

}
