#include "ui/common/amount_field.h"
#include "ui/common/choice_field.h"
#include "ui/common/formats.h"
#include "ui/common/material_field.h"
#include "ui/common/number_field.h"
#include "ui/common/usual_amounts.h"
#include "ui/forms/body.h"

#include <QCheckBox>
#include <QCoreApplication>

namespace tierloam::forms {

namespace {

using ui::AmountField;
using ui::ChoiceField;
using ui::MaterialField;

constexpr Amount usualCover{journal::defaultCoverAmount};

class FeedBody final : public Body {
    Q_DECLARE_TR_FUNCTIONS(FeedBody)

public:
    FeedBody(FieldGrid& grid, const FormContext& context) : Body{grid, context}
    {
        amount_ = grid.add(tr("Amount"), new AmountField{ui::massAndVolumeUnits()});
        amount_->setRequired(tr("How much was fed?"));
        amount_->propose(context.usual.feed);
        material_ = grid.add(tr("Food"), new MaterialField{context.journal->materials, materials::Kind::food, context.foodsLately(), journal::defaultFood});
        material_->setMaterial(context.usual.feedMaterial);
        side_ = grid.add(tr("Side"), new ChoiceField);
        side_->addChoice(tr("not noted"));
        const auto add = [this](const QString& text, journal::Side side) { side_->addChoice(text, static_cast<int>(side)); };
        add(tr("left"), journal::Side::left);
        add(tr("right"), journal::Side::right);
        add(tr("front"), journal::Side::front);
        add(tr("back"), journal::Side::back);
        add(tr("all over"), journal::Side::all);
        if (const auto* last = context.lastHere<journal::Feed>()) side_->choose(last->side);
        withCover_ = new QCheckBox{tr("Covered with paper")};
        withCover_->setChecked(context.usual.coverWithFeed.has_value());
        grid.addWide(withCover_);
        cover_ = grid.add(tr("Cover"), new AmountField{ui::massUnits()});
        cover_->setRequired(tr("How much paper?"));
        cover_->propose(context.usual.coverWithFeed.value_or(ui::roundAmount(usualCover)));
        paper_ = grid.add(tr("Of"), new MaterialField{context.journal->materials, materials::Kind::bedding, context.coversLately(), journal::defaultCover});
        paper_->setMaterial(context.usual.coverMaterial);
        showCover();
        QObject::connect(withCover_, &QCheckBox::toggled, &grid, [this] {
            showCover();
            Q_EMIT grid_.edited();
        });
        QObject::connect(amount_, &ui::Field::edited, &grid, [this] { sayMass(); });
        QObject::connect(material_, &ui::Field::edited, &grid, [this] { sayMass(); });
        sayMass();
    }

    void fill(const journal::Action& action) override
    {
        const auto& feed = std::get<journal::Feed>(action);
        amount_->setAmount(feed.food);
        material_->setMaterial(feed.material);
        side_->choose(feed.side);
        sayMass();
    }

    journal::Action action() const override
    {
        return journal::Feed{amount_->amount().value.value_or(Amount{}), material_->material().value.value_or(std::string{}), side_->chosen<journal::Side>()};
    }

    std::optional<journal::Action> companion() const override
    {
        if (editing_ || !withCover_->isChecked()) return std::nullopt;
        return journal::Cover{cover_->amount().value, paper_->material().value.value_or(std::string{})};
    }

    void takeAmount(const Amount& amount) override
    {
        amount_->setAmount(amount);
        amount_->check();
        sayMass();
    }

    void forEditing() override
    {
        editing_ = true;
        grid_.setRowShown(withCover_, false);
        showCover();
    }

    const materials::Material* material() const override { return material_->row(); }

private:
    void showCover()
    {
        const bool shown = withCover_->isChecked() && !editing_;
        grid_.setRowShown(cover_, shown);
        grid_.setRowShown(paper_, shown);
    }

    /// A volume is reckoned as mass by the material's bulk: the figure is said, so that a slip is seen.
    void sayMass()
    {
        const auto amount = amount_->amount().value;
        const materials::Material* row = material_->row();
        if (!amount || !row || kindOf(amount->unit) != UnitKind::volume) {
            amount_->setHint({});
            return;
        }
        if (const auto mass = materials::freshMass(*amount, *row)) amount_->setHint(tr("about %1 by its bulk").arg(ui::massText(mass->base())));
    }

    AmountField* amount_ = nullptr;
    MaterialField* material_ = nullptr;
    ChoiceField* side_ = nullptr;
    QCheckBox* withCover_ = nullptr;
    AmountField* cover_ = nullptr;
    MaterialField* paper_ = nullptr;
    bool editing_ = false;
};

class CoverBody final : public Body {
    Q_DECLARE_TR_FUNCTIONS(CoverBody)

public:
    CoverBody(FieldGrid& grid, const FormContext& context) : Body{grid, context}
    {
        amount_ = grid.add(tr("Amount"), new AmountField{ui::massUnits()});
        amount_->setRequired(tr("How much paper?"));
        const auto* last = context.lastHere<journal::Cover>();
        amount_->propose(last && last->paper ? *last->paper : context.usual.coverWithFeed.value_or(ui::roundAmount(usualCover)));
        material_ = grid.add(tr("Of"), new MaterialField{context.journal->materials, materials::Kind::bedding, context.coversLately(), journal::defaultCover});
        material_->setMaterial(context.usual.coverMaterial);
    }

    void fill(const journal::Action& action) override
    {
        const auto& cover = std::get<journal::Cover>(action);
        amount_->setAmount(cover.paper);
        if (!cover.paper) { // an amount that was left out stays left out
            amount_->setRequired({});
            amount_->setHint(tr("not noted; reckoned as about %1").arg(ui::amountText(ui::roundAmount(usualCover))));
        }
        material_->setMaterial(cover.material);
    }

    journal::Action action() const override
    {
        return journal::Cover{amount_->amount().value, material_->material().value.value_or(std::string{})};
    }

    const materials::Material* material() const override { return material_->row(); }

private:
    AmountField* amount_ = nullptr;
    MaterialField* material_ = nullptr;
};

class WaterBody final : public Body {
    Q_DECLARE_TR_FUNCTIONS(WaterBody)

public:
    WaterBody(FieldGrid& grid, const FormContext& context) : Body{grid, context}
    {
        amount_ = grid.add(tr("Amount"), new AmountField{ui::volumeUnits()});
        amount_->setRequired(tr("How much water?"));
        amount_->propose(context.usual.water);
    }

    void fill(const journal::Action& action) override { amount_->setAmount(std::get<journal::Water>(action).poured); }
    journal::Action action() const override { return journal::Water{amount_->amount().value.value_or(Amount{})}; }

private:
    AmountField* amount_ = nullptr;
};

class RoutineBody final : public Body {
    Q_DECLARE_TR_FUNCTIONS(RoutineBody)

public:
    RoutineBody(FieldGrid& grid, const FormContext& context) : Body{grid, context}
    {
        of_ = grid.add(tr("Of"), new ChoiceField);
        of_->addChoice(tr("water"), static_cast<int>(journal::RoutineOf::water));
        of_->addChoice(tr("paper cover"), static_cast<int>(journal::RoutineOf::cover));
        water_ = grid.add(tr("Each time"), new AmountField{ui::volumeUnits()});
        paper_ = grid.add(tr("Each time"), new AmountField{ui::massUnits()});
        for (AmountField* field : {water_, paper_}) {
            field->setZeroAllowed(true);
            field->setRequired(tr("How much each time? 0 ends the routine."));
            field->setHint(tr("done without being written down, until changed; 0 ends it"));
        }
        water_->proposeRound(Amount{0.1, Unit::L});
        paper_->propose(ui::roundAmount(usualCover));
        every_ = grid.add(tr("Every so many days"), new ui::CountField{1, 365});
        every_->setCount(1);
        if (const auto* last = context.lastHere<journal::Routine>()) fill(*last);
        show();
        QObject::connect(of_, &ui::Field::edited, &grid, [this] { show(); });
    }

    void fill(const journal::Action& action) override
    {
        const auto& routine = std::get<journal::Routine>(action);
        of_->choose(std::optional{routine.of});
        (routine.of == journal::RoutineOf::water ? water_ : paper_)->setAmount(routine.each);
        every_->setCount(routine.everyDays.value_or(1));
        leftOut_ = !routine.everyDays;
        show();
    }

    journal::Action action() const override
    {
        std::optional<int> every = every_->count();
        if (leftOut_ && every == 1) every.reset();
        const auto of = of_->chosen<journal::RoutineOf>().value_or(journal::RoutineOf::water);
        return journal::Routine{(of == journal::RoutineOf::water ? water_ : paper_)->amount().value.value_or(Amount{}), of, every};
    }

private:
    void show()
    {
        const bool water = of_->chosen<journal::RoutineOf>() == journal::RoutineOf::water;
        grid_.setRowShown(water_, water);
        grid_.setRowShown(paper_, !water);
    }

    ChoiceField* of_ = nullptr;
    AmountField* water_ = nullptr;
    AmountField* paper_ = nullptr;
    ui::CountField* every_ = nullptr;
    bool leftOut_ = true;
};

}

std::unique_ptr<Body> makeFeed(FieldGrid& grid, const FormContext& context) { return std::make_unique<FeedBody>(grid, context); }
std::unique_ptr<Body> makeCover(FieldGrid& grid, const FormContext& context) { return std::make_unique<CoverBody>(grid, context); }
std::unique_ptr<Body> makeWater(FieldGrid& grid, const FormContext& context) { return std::make_unique<WaterBody>(grid, context); }
std::unique_ptr<Body> makeRoutine(FieldGrid& grid, const FormContext& context) { return std::make_unique<RoutineBody>(grid, context); }

}
