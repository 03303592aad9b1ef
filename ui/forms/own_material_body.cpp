#include "ui/common/formats.h"
#include "ui/common/choice_field.h"
#include "ui/common/material_words.h"
#include "ui/common/number_field.h"
#include "ui/forms/body.h"

#include <QCoreApplication>

namespace tierloam::forms {

namespace {

class OwnMaterialBody final : public Body {
    Q_DECLARE_TR_FUNCTIONS(OwnMaterialBody)

public:
    OwnMaterialBody(FieldGrid& grid, const FormContext& context) : Body{grid, context}
    {
        using journal::SofteningClass;
        name_ = grid.add(tr("Name"), new ui::TextField);
        name_->setRequired(tr("What is it called?"));
        softens_ = grid.add(tr("Softens like"), new ui::ChoiceField);
        softens_->addChoice(tr("not said"));
        for (const SofteningClass each : {SofteningClass::soft, SofteningClass::mix, SofteningClass::coffee, SofteningClass::paper, SofteningClass::cardboard,
                                          SofteningClass::wood, SofteningClass::coir, SofteningClass::mineral}) {
            softens_->addChoice(ui::softeningText(each), static_cast<int>(each));
        }
        moisture_ = grid.add(tr("Moisture"), new ui::ShareField{0.0, 99.0});
        nitrogen_ = grid.add(tr("Nitrogen"), new ui::NumberField{{{tr("% of dry matter"), 1.0, 0.0}}, {0.0, 50.0}});
        ratio_ = grid.add(tr("C:N"), new ui::NumberField{{{QString{}, 1.0, 0.0}}, {0.1, 10000.0}});
        bulk_ = grid.add(tr("Bulk, loose"), new ui::NumberField{{{ui::bulkUnit(), 1.0 / ui::bulkFactor(), 0.0}}, {1.0, 5000.0}});
        water_ = grid.add(tr("Water it holds"), new ui::NumberField{{{tr("by weight of dry"), 1.0, 0.0}}, {0.0, 50.0}});
        welcome_ = grid.add(tr("Welcome in a bin"), new ui::ChoiceField);
        welcome_->addChoice(tr("not said"));
        for (const materials::Welcome each : {materials::Welcome::yes, materials::Welcome::aLittle, materials::Welcome::no}) {
            welcome_->addChoice(ui::welcomeText(each), static_cast<int>(each));
        }
        doubt_ = grid.add(tr("Reason against it"), new ui::ChoiceField);
        doubt_->addChoice(ui::doubtName(materials::Doubt::none));
        for (int each = static_cast<int>(materials::Doubt::none) + 1; each < static_cast<int>(materials::Doubt::count); ++each) {
            doubt_->addChoice(ui::doubtName(static_cast<materials::Doubt>(each)), each);
        }
        QObject::connect(welcome_, &ui::Field::edited, &grid, [this] { showDoubt(); });
    }

    void fill(const journal::Action& action) override
    {
        const auto& own = std::get<journal::OwnMaterial>(action);
        name_->setText(QString::fromStdString(own.name));
        softens_->choose(own.softening);
        moisture_->setShare(own.moisture);
        nitrogen_->setValue(own.nitrogenPercent);
        ratio_->setValue(own.carbonToNitrogen);
        bulk_->setValue(own.bulkKgPerM3);
        water_->setValue(own.waterHeldKgPerKg);
        welcome_->choose(own.welcome);
        doubt_->choose(own.doubt);
        showDoubt();
    }

    journal::Action action() const override
    {
        return journal::OwnMaterial{name_->text().toStdString(), softens_->chosen<journal::SofteningClass>(), moisture_->share(),
                                    nitrogen_->value().value,    ratio_->value().value,                       bulk_->value().value,
                                    water_->value().value,       welcome_->chosen<journal::Welcome>(),               doubt_->chosen<journal::Doubt>()};
    }

private:
    /// What is welcome has nothing against it.
    void showDoubt() { grid_.setRowShown(doubt_, welcome_->chosen<journal::Welcome>() != journal::Welcome::yes); }

    ui::TextField* name_ = nullptr;
    ui::ChoiceField* softens_ = nullptr;
    ui::ShareField* moisture_ = nullptr;
    ui::NumberField* nitrogen_ = nullptr;
    ui::NumberField* ratio_ = nullptr;
    ui::NumberField* bulk_ = nullptr;
    ui::NumberField* water_ = nullptr;
    ui::ChoiceField* welcome_ = nullptr;
    ui::ChoiceField* doubt_ = nullptr;
};

}

std::unique_ptr<Body> makeOwnMaterial(FieldGrid& grid, const FormContext& context) { return std::make_unique<OwnMaterialBody>(grid, context); }

}
