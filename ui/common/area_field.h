#pragma once

#include "core/quantity/measures.h"
#include "ui/common/field.h"

class QLabel;

namespace tierloam::ui {

class FieldCombo;
class FieldEdit;

/// The floor of a tray: width and length in cm or inches, or its area in m² or square feet. From 0.01 to 10 m².
class AreaField final : public Field {
    Q_OBJECT

public:
    explicit AreaField(QWidget* parent = nullptr);

    void setArea(const std::optional<Area>& area);           ///< shown as an area
    void proposeArea(Area area, int digits);                 ///< in square feet to so many digits
    void setSides(Length width, Length length);              ///< shown as width and length
    Typed<Area> area() const;
    bool isEmpty() const override;

    FieldEdit* first() const { return first_; }              ///< the width, or the area
    FieldEdit* second() const { return second_; }            ///< the length; hidden for an area
    FieldCombo* way() const { return way_; }

protected:
    QString problemOfValue() const override;
    void nameEditors(const QString& name) override;

private:
    void showWay();

    FieldEdit* first_ = nullptr;
    FieldEdit* second_ = nullptr;
    QLabel* times_ = nullptr;
    FieldCombo* way_ = nullptr;
};

}
