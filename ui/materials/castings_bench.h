#pragma once

#include "core/guide/castings_use.h"
#include "ui/materials/bench.h"

class QLabel;

namespace tierloam::ui {
class FactList;
class AmountField;
class ChoiceField;
class LengthField;
class NumberField;
class ShareField;
}

namespace tierloam::materials_page {

/// What a batch of castings is good for: potting mix, top-dressing, storing; cautions above. The batch is typed, or taken from the stack's latest
/// harvest or the estimate of its bottom tray.
class CastingsBench final : public Bench {
    Q_OBJECT

public:
    CastingsBench(household::Household& household, const ui::Theme& theme, QWidget* parent = nullptr);

    void follow() override;
    std::optional<guide::CastingsBatch> batch() const;
    ui::FactList* facts() const { return facts_; }

private:
    void takeBatch();
    void reckon();

    ui::ChoiceField* from_ = nullptr;
    ui::AmountField* amount_ = nullptr;
    ui::ShareField* moisture_ = nullptr;
    ui::ShareField* potting_ = nullptr;
    ui::LengthField* depth_ = nullptr;
    ui::FactList* facts_;
};

}
