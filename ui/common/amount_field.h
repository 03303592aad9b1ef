#pragma once

#include "core/quantity/units.h"
#include "ui/common/field.h"

#include <QList>

#include <vector>

namespace tierloam::ui {

class FieldCombo;
class FieldEdit;

/// A number and its unit, kept as typed. A unit may also be typed behind the number ("1,2 kg"): it is then chosen in the list.
/// Mass up to 1000 kg, volume up to 2000 L; 0 only when it is allowed.
class AmountField : public Field {
    Q_OBJECT

public:
    /// Units in the order of the list; `count` alone shows none.
    explicit AmountField(std::vector<Unit> units, QWidget* parent = nullptr);

    void setZeroAllowed(bool allowed);
    /// The program sets it; edited() is not emitted.
    void setAmount(const std::optional<Amount>& amount);
    /// What may be recorded, in the units chosen; an entry that is edited keeps its own.
    void propose(const Amount& amount);
    /// What the program thinks usual: in the units chosen a round amount of theirs.
    void proposeRound(const Amount& amount);
    /// Leaves the number and chooses the unit, when the list has it.
    void setUnit(Unit unit);
    Unit unit() const;
    Typed<Amount> amount() const;
    bool isEmpty() const override;

    FieldEdit* edit() const { return edit_; }
    FieldCombo* unitList() const { return list_; }

protected:
    QString problemOfValue() const override;
    void nameEditors(const QString& name) override;

private:
    void takeTypedUnit();

    std::vector<Unit> units_;
    FieldEdit* edit_ = nullptr;
    FieldCombo* list_ = nullptr;
    bool zeroAllowed_ = false;
};

/// Units of mass and volume, those of the chosen system of measures first.
std::vector<Unit> massUnits();
std::vector<Unit> volumeUnits();
std::vector<Unit> massAndVolumeUnits();

}
