#pragma once

#include "core/materials/bedding.h"
#include "ui/materials/bench.h"

class QLabel;
class QPushButton;

namespace tierloam::ui {
class FactList;
class AreaField;
class ChoiceField;
class LengthField;
class MaterialField;
}
namespace tierloam::forms {
class FieldGrid;
}

namespace tierloam::materials_page {

/// Bedding for a new tray: from floor and depth to the mass of dry bedding and the litres of water. The floor of a stack is filled in.
class BeddingBench final : public Bench {
    Q_OBJECT

public:
    BeddingBench(household::Household& household, const ui::Theme& theme, QWidget* parent = nullptr);

    void follow() override;
    void setMaterial(const QString& material);
    std::optional<materials::BeddingForTray> bedding() const;
    ui::FactList* facts() const { return facts_; }

Q_SIGNALS:
    /// The tray is to be added to that stack, filled in as reckoned.
    void trayWanted(const QString& stack, const tierloam::journal::Bed& bed);

private:
    void makeGrid();
    void takeFloor();
    void reckon();

    materials::Table table_;
    forms::FieldGrid* grid_ = nullptr;
    ui::ChoiceField* stack_ = nullptr;
    ui::MaterialField* material_ = nullptr;
    ui::AreaField* area_ = nullptr;
    std::optional<Area> proposedFloor_;  ///< that of no stack, until another is typed or chosen
    ui::LengthField* depth_ = nullptr;
    ui::FactList* facts_;
    QLabel* say_;
    QPushButton* addTray_;
};

}
