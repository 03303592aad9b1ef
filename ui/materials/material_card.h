#pragma once

#include "core/materials/table.h"
#include "ui/common/panels.h"

#include <optional>

class QLabel;
class QPushButton;

namespace tierloam::ui {
class FactList;
}

namespace tierloam::materials_page {

/// All that is known of one material: its figures, whether it is welcome and why not, its source, its cautions; and what can be done with it.
class MaterialCard : public ui::Card {
    Q_OBJECT

public:
    explicit MaterialCard(QWidget* parent = nullptr);

    /// nullptr: none is chosen.
    void setMaterial(const materials::Material* material, bool favourite, bool canEdit);
    const std::optional<materials::Material>& material() const { return material_; }
    ui::FactList* facts() const { return facts_; }
    QString welcomeLine() const;

Q_SIGNALS:
    void favouriteToggled();
    void mixWanted();
    void editWanted();

private:
    std::optional<materials::Material> material_;
    QLabel* name_;
    QLabel* welcome_;
    ui::FactList* facts_;
    QPushButton* star_;
    QPushButton* mix_;
    QPushButton* edit_;
};

}
