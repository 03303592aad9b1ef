#pragma once

#include "core/guide/leachate_use.h"
#include "ui/materials/bench.h"

class QLabel;

namespace tierloam::ui {
class FactList;
class ChoiceField;
class NumberField;
class VolumeField;
}

namespace tierloam::materials_page {

/// What ran out of a stack: how much, how strong with its uncertainty, how far to dilute it, and what it is not. Cautions above.
class LeachateBench final : public Bench {
    Q_OBJECT

public:
    LeachateBench(household::Household& household, const ui::Theme& theme, QWidget* parent = nullptr);

    void follow() override;
    /// The strength that is reckoned with: the reading when one was typed, else the estimate of the stack.
    guide::Spread strength() const;
    ui::FactList* facts() const { return facts_; }

private:
    void takeSump();
    void reckon();

    ui::ChoiceField* from_ = nullptr;
    ui::VolumeField* volume_ = nullptr;
    ui::NumberField* measured_ = nullptr;
    ui::NumberField* wished_ = nullptr;
    ui::NumberField* water_ = nullptr;
    QLabel* say_;
    ui::FactList* facts_;
};

}
