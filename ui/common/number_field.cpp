#include "ui/common/number_field.h"

#include "core/quantity/units.h"
#include "ui/common/field_edit.h"
#include "ui/common/formats.h"
#include "ui/common/typed_number.h"

#include <QLabel>

#include <algorithm>
#include <cmath>

namespace tierloam::ui {

namespace {

/// Conversions leave tails like 21.111111; four decimals are more than any of these measures can tell.
double trimmed(double value)
{
    return std::round(value * 1e4) / 1e4;
}

std::vector<NumberField::Scale> inOrder(NumberField::Scale metric, NumberField::Scale us)
{
    if (measures() == Measures::us) return {std::move(us), std::move(metric)};
    return {std::move(metric), std::move(us)};
}

std::vector<NumberField::Scale> scalesOf(const std::vector<Unit>& units)
{
    std::vector<NumberField::Scale> scales;
    scales.reserve(units.size());
    for (const Unit unit : units) scales.push_back({unitText(unit), inBaseUnit(unit), 0.0});
    return scales;
}

/// Litres stay litres; in US units what texts call so much: fluid ounces or gallons.
Unit unitFor(Volume volume) { return measures() == Measures::us ? inMeasures({volume.base(), Unit::L}).unit : Unit::L; }

constexpr double centimetresPerInch = 2.54;
constexpr double leastVolumeLitres = 1e-4;

}

NumberField::NumberField(std::vector<Scale> scales, Range range, QWidget* parent) : Field{parent}, scales_{std::move(scales)}, range_{range}
{
    edit_ = new FieldEdit{this};
    edit_->setObjectName(QStringLiteral("number"));
    edit_->setAlignment(Qt::AlignRight);
    edit_->setRoomFor(QStringLiteral("0000.00"));
    addEditor(edit_, 1);
    list_ = new FieldCombo{this};
    list_->setObjectName(QStringLiteral("unit"));
    for (const Scale& each : scales_) list_->addItem(each.name);
    if (scales_.size() > 1) {
        addEditor(list_);
        connect(list_, &QComboBox::activated, this, &NumberField::noteEdited);
    } else {
        list_->hide();
        if (!scales_.front().name.isEmpty()) addEditor(new QLabel{scales_.front().name, this});
    }
    connect(edit_, &QLineEdit::textEdited, this, &NumberField::noteEdited);
}

void NumberField::setValue(std::optional<double> value)
{
    edit_->setText(value ? shown(*value) : QString{});
    given_ = value ? std::optional{Given{*value, edit_->text(), list_->currentIndex()}} : std::nullopt;
}

void NumberField::propose(double value, int digits)
{
    const Scale& chosen = scale();
    const bool isBase = chosen.perUnit == 1.0 && chosen.offset == 0.0;
    setValue(value);
    if (!isBase) edit_->setText(typedText(inDigits((value - chosen.offset) / chosen.perUnit, digits)));
}

void NumberField::setScale(const QString& name)
{
    const auto found = std::ranges::find(scales_, name, &Scale::name);
    if (found != scales_.end()) list_->setCurrentIndex(static_cast<int>(found - scales_.begin()));
}

Typed<double> NumberField::value() const
{
    const Typed<double> read = typedNumber(edit_->text());
    if (!read.value) return read;
    const Scale& chosen = scale();
    const bool asTyped = chosen.perUnit == 1.0 && chosen.offset == 0.0;
    const bool untouched = given_ && given_->text == edit_->text() && given_->unit == list_->currentIndex();
    const double base = untouched ? given_->base : asTyped ? *read.value : trimmed(*read.value * chosen.perUnit + chosen.offset);
    if (range_.whole && base != std::floor(base)) return {std::nullopt, tr("A whole number is wanted here.")};
    if (base < range_.least || base > range_.most) {
        const QString most = chosen.name.isEmpty() ? shown(range_.most) : QString{shown(range_.most) + QChar{0xA0} + chosen.name};
        return {std::nullopt, tr("From %1 to %2.").arg(shown(range_.least), most)};
    }
    return {base, {}};
}

void NumberField::setRange(Range range)
{
    range_ = range;
}

bool NumberField::isEmpty() const
{
    return edit_->text().trimmed().isEmpty();
}

QString NumberField::problemOfValue() const
{
    return value().problem;
}

void NumberField::nameEditors(const QString& name)
{
    const bool unitBeside = scales_.size() == 1 && !scales_.front().name.isEmpty();
    edit_->setAccessibleName(unitBeside ? tr("%1 in %2").arg(name, scales_.front().name) : name);
    list_->setAccessibleName(tr("Unit of %1").arg(name));
}

const NumberField::Scale& NumberField::scale() const
{
    return scales_[static_cast<std::size_t>(std::max(0, list_->currentIndex()))];
}

QString NumberField::shown(double base) const
{
    const Scale& chosen = scale();
    if (chosen.perUnit == 1.0 && chosen.offset == 0.0) return typedText(base);
    return typedText(std::round((base - chosen.offset) / chosen.perUnit * 1e3) / 1e3);
}

ShareField::ShareField(double leastPercent, double mostPercent, QWidget* parent)
    : NumberField{{{QStringLiteral("%"), 1.0, 0.0}}, {leastPercent, mostPercent}, parent}
{
}

void ShareField::setShare(const std::optional<Share>& share)
{
    setValue(share ? std::optional{share->percent()} : std::nullopt);
}

std::optional<Share> ShareField::share() const
{
    const Typed<double> percent = value();
    return percent.value ? Share::fromPercent(*percent.value) : std::nullopt;
}

LengthField::LengthField(double leastCm, double mostCm, QWidget* parent)
    : NumberField{inOrder({QStringLiteral("cm"), 1.0, 0.0}, {tr("in"), centimetresPerInch, 0.0}), {leastCm, mostCm}, parent}
{
}

void LengthField::setLength(const std::optional<Length>& length)
{
    setValue(length ? std::optional{length->base()} : std::nullopt);
}

std::optional<Length> LengthField::length() const
{
    const Typed<double> cm = value();
    return cm.value ? std::optional{centimetres(*cm.value)} : std::nullopt;
}

TemperatureField::TemperatureField(QWidget* parent)
    : NumberField{inOrder({QStringLiteral("°C"), 1.0, 0.0}, {QStringLiteral("°F"), 1.0 / 1.8, -32.0 / 1.8}), {-40.0, 80.0}, parent}
{
}

void TemperatureField::setTemperature(const std::optional<Temperature>& temperature)
{
    setValue(temperature ? std::optional{temperature->base()} : std::nullopt);
}

std::optional<Temperature> TemperatureField::temperature() const
{
    const Typed<double> degrees = value();
    return degrees.value ? std::optional{celsius(*degrees.value)} : std::nullopt;
}

CountField::CountField(int least, int most, QWidget* parent)
    : NumberField{{{QString{}, 1.0, 0.0}}, {static_cast<double>(least), static_cast<double>(most), true}, parent}
{
}

void CountField::setCount(std::optional<int> count)
{
    setValue(count ? std::optional{static_cast<double>(*count)} : std::nullopt);
}

std::optional<int> CountField::count() const
{
    const Typed<double> number = value();
    return number.value ? std::optional{static_cast<int>(*number.value)} : std::nullopt;
}

VolumeField::VolumeField(bool zeroAllowed, QWidget* parent)
    : NumberField{scalesOf(measures() == Measures::us ? std::vector{Unit::cup, Unit::gal, Unit::floz, Unit::L, Unit::mL}
                                                      : std::vector{Unit::L, Unit::mL, Unit::cup, Unit::gal, Unit::floz}),
                  {zeroAllowed ? 0.0 : leastVolumeLitres, 2000.0}, parent}
{
}

void VolumeField::setVolume(const std::optional<Volume>& volume)
{
    if (volume) setScale(unitText(unitFor(*volume)));
    setValue(volume ? std::optional{volume->base()} : std::nullopt);
}

void VolumeField::proposeVolume(Volume volume, int digits)
{
    setScale(unitText(unitFor(volume)));
    propose(volume.base(), digits);
}

std::optional<Volume> VolumeField::volume() const
{
    const Typed<double> inLitres = value();
    return inLitres.value ? std::optional{litres(*inLitres.value)} : std::nullopt;
}

MassField::MassField(QWidget* parent)
    : NumberField{scalesOf(measures() == Measures::us ? std::vector{Unit::lb, Unit::oz, Unit::kg, Unit::g}
                                                      : std::vector{Unit::kg, Unit::g, Unit::lb, Unit::oz}),
                  {0.001, 1000.0}, parent}
{
}

void MassField::setMass(const std::optional<Mass>& mass)
{
    setValue(mass ? std::optional{mass->base()} : std::nullopt);
}

std::optional<Mass> MassField::mass() const
{
    const Typed<double> kg = value();
    return kg.value ? std::optional{kilograms(*kg.value)} : std::nullopt;
}

}
