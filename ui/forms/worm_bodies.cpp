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

constexpr int mostWorms = 1000000;

class WeighBody final : public Body {
    Q_DECLARE_TR_FUNCTIONS(WeighBody)

public:
    WeighBody(FieldGrid& grid, const FormContext& context) : Body{grid, context}
    {
        worms_ = grid.add(tr("Worms"), new AmountField{ui::massUnits()});
        worms_->setZeroAllowed(true);
        worms_->setRequired(tr("What do the worms weigh?"));
        share_ = grid.add(tr("Share of the bed searched"), new ui::ShareField{0.1});
        share_->setHint(tr("all of it when left empty"));
        if (const auto* last = context.last<journal::Weigh>()) {
            worms_->setUnit(ui::inMeasures(last->worms).unit);
            share_->setShare(last->share);
        }
    }

    void fill(const journal::Action& action) override
    {
        const auto& weigh = std::get<journal::Weigh>(action);
        worms_->setAmount(weigh.worms);
        share_->setShare(weigh.share);
    }

    journal::Action action() const override { return journal::Weigh{worms_->amount().value.value_or(Amount{}), share_->share()}; }

private:
    AmountField* worms_ = nullptr;
    ui::ShareField* share_ = nullptr;
};

class CountBody final : public Body {
    Q_DECLARE_TR_FUNCTIONS(CountBody)

public:
    CountBody(FieldGrid& grid, const FormContext& context) : Body{grid, context}
    {
        number_ = grid.add(tr("Worms counted"), new AmountField{{Unit::count}});
        number_->setZeroAllowed(true);
        number_->setRequired(tr("How many worms?"));
        volume_ = grid.add(tr("In how much bed"), new ui::VolumeField);
        volume_->setHint(tr("the volume that was searched; without it the count says little"));
        if (const auto* last = context.last<journal::Count>()) volume_->setVolume(last->volume);
    }

    void fill(const journal::Action& action) override
    {
        const auto& count = std::get<journal::Count>(action);
        number_->setAmount(count.number);
        volume_->setVolume(count.volume);
    }

    journal::Action action() const override { return journal::Count{number_->amount().value.value_or(Amount{}), volume_->volume()}; }

private:
    AmountField* number_ = nullptr;
    ui::VolumeField* volume_ = nullptr;
};

class StockBody final : public Body {
    Q_DECLARE_TR_FUNCTIONS(StockBody)

public:
    StockBody(FieldGrid& grid, const FormContext& context) : Body{grid, context}
    {
        worms_ = grid.add(tr("Worms"), new AmountField{ui::massUnits()});
        worms_->setRequired(tr("What do the worms weigh?"));
        count_ = grid.add(tr("Counted"), new ui::CountField{1, mostWorms});
        count_->setHint(tr("only if you counted them; else a mixed colony is taken"));
        species_ = grid.add(tr("Species"), new ChoiceField);
        for (const materials::Species& each : materials::species()) {
            const QString name = QString::fromUtf8(each.name.data(), static_cast<qsizetype>(each.name.size()));
            species_->addChoice(each.name == journal::defaultSpecies ? tr("%1 (usual)").arg(name) : name, name);
        }
        if (const auto* last = context.lastHere<journal::Stock>()) {
            worms_->setUnit(ui::inMeasures(last->worms).unit);
            choose(last->species);
        } else {
            choose({});
        }
        QObject::connect(species_, &ui::Field::edited, &grid, [this] { sayChange(); });
    }

    void fill(const journal::Action& action) override
    {
        const auto& stock = std::get<journal::Stock>(action);
        worms_->setAmount(stock.worms);
        count_->setCount(stock.count);
        choose(stock.species);
    }

    journal::Action action() const override
    {
        const std::string chosen = species_->value().toString().toStdString();
        // As it was written when it still means the same: an empty one stays empty.
        const bool same = materials::speciesNamed(written_) == materials::speciesNamed(chosen);
        return journal::Stock{worms_->amount().value.value_or(Amount{}), same ? written_ : chosen, count_->count()};
    }

private:
    void choose(const std::string& written)
    {
        written_ = written;
        if (const materials::Species* species = materials::speciesNamed(written)) {
            species_->setValue(QString::fromUtf8(species->name.data(), static_cast<qsizetype>(species->name.size())));
        }
    }

    void sayChange()
    {
        const auto* last = context_.lastHere<journal::Stock>();
        const auto chosen = materials::speciesNamed(species_->value().toString().toStdString());
        const bool other = last && materials::speciesNamed(last->species) != chosen;
        species_->setHint(other ? tr("this stack was stocked with another species before; the latest rules its reckoning") : QString{});
    }

    AmountField* worms_ = nullptr;
    ui::CountField* count_ = nullptr;
    ChoiceField* species_ = nullptr;
    std::string written_;
};

class RemoveBody final : public Body {
    Q_DECLARE_TR_FUNCTIONS(RemoveBody)

public:
    RemoveBody(FieldGrid& grid, const FormContext& context) : Body{grid, context}
    {
        worms_ = grid.add(tr("Worms"), new AmountField{ui::massUnits()});
        worms_->setRequired(tr("What do the worms weigh?"));
        if (const auto* last = context.last<journal::Remove>()) worms_->setUnit(ui::inMeasures(last->worms).unit);
        if (const auto* now = context.estimates()) worms_->setHint(tr("of a colony of about %1").arg(ui::massBand(now->now.colonyKg)));
    }

    void fill(const journal::Action& action) override { worms_->setAmount(std::get<journal::Remove>(action).worms); }
    journal::Action action() const override { return journal::Remove{worms_->amount().value.value_or(Amount{})}; }

private:
    AmountField* worms_ = nullptr;
};

class MoveBody final : public Body {
    Q_DECLARE_TR_FUNCTIONS(MoveBody)

public:
    MoveBody(FieldGrid& grid, const FormContext& context) : Body{grid, context}
    {
        worms_ = grid.add(tr("Worms"), new AmountField{ui::massUnits()});
        worms_->setRequired(tr("What do the worms weigh?"));
        to_ = grid.add(tr("Into"), new ChoiceField);
        to_->setRequired(tr("Choose the stack that they go to."));
        for (const std::string& name : context.otherStacks(context.today)) to_->addChoice(QString::fromStdString(name), QString::fromStdString(name));
        if (const auto* last = context.lastHere<journal::Move>()) {
            worms_->setUnit(ui::inMeasures(last->worms).unit);
            to_->setValue(QString::fromStdString(last->to));
        }
        if (const auto* now = context.estimates()) worms_->setHint(tr("of a colony of about %1").arg(ui::massBand(now->now.colonyKg)));
    }

    void fill(const journal::Action& action) override
    {
        const auto& move = std::get<journal::Move>(action);
        worms_->setAmount(move.worms);
        const QString to = QString::fromStdString(move.to);
        to_->setValue(to);
        if (to_->value() != QVariant{to}) { // it may have been retired since
            to_->addChoice(to, to);
            to_->setValue(to);
        }
    }

    journal::Action action() const override { return journal::Move{worms_->amount().value.value_or(Amount{}), to_->value().toString().toStdString()}; }

private:
    AmountField* worms_ = nullptr;
    ChoiceField* to_ = nullptr;
};

}

std::unique_ptr<Body> makeWeigh(FieldGrid& grid, const FormContext& context) { return std::make_unique<WeighBody>(grid, context); }
std::unique_ptr<Body> makeCount(FieldGrid& grid, const FormContext& context) { return std::make_unique<CountBody>(grid, context); }
std::unique_ptr<Body> makeStock(FieldGrid& grid, const FormContext& context) { return std::make_unique<StockBody>(grid, context); }
std::unique_ptr<Body> makeRemove(FieldGrid& grid, const FormContext& context) { return std::make_unique<RemoveBody>(grid, context); }
std::unique_ptr<Body> makeMove(FieldGrid& grid, const FormContext& context) { return std::make_unique<MoveBody>(grid, context); }

}
