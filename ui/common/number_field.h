#pragma once

#include "core/quantity/measures.h"
#include "ui/common/field.h"

#include <vector>

namespace tierloam::ui {

class FieldCombo;
class FieldEdit;

/// A number in one of several units of one dimension, handed over in the base unit, or a bare number with its unit beside it.
class NumberField : public Field {
    Q_OBJECT

public:
    /// base value = typed · perUnit + offset
    struct Scale {
        QString name;                ///< as people read it; empty: no unit is shown
        double perUnit = 1.0;
        double offset = 0.0;
    };
    struct Range {
        double least, most;          ///< in the base unit, both allowed
        bool whole = false;          ///< only whole numbers
    };

    NumberField(std::vector<Scale> scales, Range range, QWidget* parent = nullptr);

    /// In the base unit; the program sets it, edited() is not emitted. It is shown rounded, and comes back to the bit while nobody has
    /// changed number or unit.
    void setValue(std::optional<double> value);
    /// What may be typed over or left: in a unit that is not the base unit rounded to so many digits of it.
    void propose(double value, int digits = roundDigits);
    Typed<double> value() const;
    void setRange(Range range);
    bool isEmpty() const override;

    FieldEdit* edit() const { return edit_; }
    FieldCombo* unitList() const { return list_; }

protected:
    QString problemOfValue() const override;
    void nameEditors(const QString& name) override;
    void setScale(const QString& name);

private:
    const Scale& scale() const;
    QString shown(double base) const;

    std::vector<Scale> scales_;
    Range range_;
    FieldEdit* edit_ = nullptr;
    FieldCombo* list_ = nullptr;
    struct Given {
        double base;
        QString text;                ///< as it was shown
        int unit;                    ///< of the list
    };
    std::optional<Given> given_;     ///< what the program has set
};

/// A share in percent, 0 to 100 or within narrower bounds.
class ShareField : public NumberField {
    Q_OBJECT

public:
    explicit ShareField(double leastPercent = 0.0, double mostPercent = 100.0, QWidget* parent = nullptr);
    void setShare(const std::optional<Share>& share);
    std::optional<Share> share() const; ///< nullopt when empty or at fault
};

/// A length in cm, typed in cm or inches.
class LengthField : public NumberField {
    Q_OBJECT

public:
    LengthField(double leastCm, double mostCm, QWidget* parent = nullptr);
    void setLength(const std::optional<Length>& length);
    std::optional<Length> length() const;
};

/// −40 to 80 °C, typed in °C or °F.
class TemperatureField : public NumberField {
    Q_OBJECT

public:
    explicit TemperatureField(QWidget* parent = nullptr);
    void setTemperature(const std::optional<Temperature>& temperature);
    std::optional<Temperature> temperature() const;
};

/// A whole number of things.
class CountField : public NumberField {
    Q_OBJECT

public:
    CountField(int least, int most, QWidget* parent = nullptr);
    void setCount(std::optional<int> count);
    std::optional<int> count() const;
};

/// A volume in litres, for details that the journal keeps in litres: typed in any unit of volume.
class VolumeField : public NumberField {
    Q_OBJECT

public:
    explicit VolumeField(bool zeroAllowed = false, QWidget* parent = nullptr);
    /// The program sets it, in the unit in which texts name so much.
    void setVolume(const std::optional<Volume>& volume);
    void proposeVolume(Volume volume, int digits = roundDigits);
    std::optional<Volume> volume() const;
};

/// A mass in kg, above 0, for details that the journal keeps in kilograms: typed in any unit of mass.
class MassField : public NumberField {
    Q_OBJECT

public:
    explicit MassField(QWidget* parent = nullptr);
    void setMass(const std::optional<Mass>& mass);
    std::optional<Mass> mass() const;
};

}
