#include "ui/common/amount_field.h"

#include "ui/common/field_edit.h"
#include "ui/common/formats.h"
#include "ui/common/typed_number.h"

#include <algorithm>
#include <cmath>

namespace tierloam::ui {

namespace {

constexpr double greatestKg = 1000.0, greatestLitres = 2000.0, greatestCount = 1e6; // the journal's bounds

/// As typed by people: without regard to case, in the words of their language or by the journal's names.
std::optional<Unit> unitTyped(const QString& text, const std::vector<Unit>& among)
{
    for (const Unit unit : among) {
        const std::string_view name = nameOf(unit);
        const auto journalName = QLatin1StringView(name.data(), static_cast<qsizetype>(name.size()));
        if (text.compare(journalName, Qt::CaseInsensitive) == 0 || text.compare(unitText(unit), Qt::CaseInsensitive) == 0) return unit;
        for (const double count : {0.5, 2.0})
            if (text.compare(unitText(unit, count), Qt::CaseInsensitive) == 0) return unit;
    }
    return std::nullopt;
}

}

AmountField::AmountField(std::vector<Unit> units, QWidget* parent) : Field{parent}, units_{std::move(units)}
{
    edit_ = new FieldEdit{this};
    edit_->setObjectName(QStringLiteral("amount"));
    edit_->setAlignment(Qt::AlignRight);
    edit_->setRoomFor(QStringLiteral("00000.00"));
    addEditor(edit_, 1);
    list_ = new FieldCombo{this};
    list_->setObjectName(QStringLiteral("unit"));
    for (const Unit unit : units_) list_->addItem(unitText(unit));
    if (units_.size() < 2) {
        list_->hide();
    } else {
        addEditor(list_);
    }
    connect(edit_, &QLineEdit::textEdited, this, &AmountField::noteEdited);
    connect(edit_, &QLineEdit::editingFinished, this, &AmountField::takeTypedUnit);
    connect(list_, &QComboBox::activated, this, &AmountField::noteEdited);
}

void AmountField::setZeroAllowed(bool allowed)
{
    zeroAllowed_ = allowed;
}

void AmountField::setAmount(const std::optional<Amount>& amount)
{
    if (!amount) {
        edit_->clear();
        return;
    }
    edit_->setText(typedText(amount->value));
    if (std::find(units_.begin(), units_.end(), amount->unit) == units_.end()) { // an entry may hold a unit that this list left out
        units_.push_back(amount->unit);
        list_->addItem(unitText(amount->unit));
    }
    setUnit(amount->unit);
}

void AmountField::propose(const Amount& amount) { setAmount(inMeasures(amount)); }

void AmountField::proposeRound(const Amount& amount) { setAmount(inMeasures(amount, roundDigits)); }

void AmountField::setUnit(Unit unit)
{
    const auto found = std::find(units_.begin(), units_.end(), unit);
    if (found != units_.end()) list_->setCurrentIndex(static_cast<int>(found - units_.begin()));
}

Unit AmountField::unit() const
{
    return units_[static_cast<std::size_t>(std::max(0, list_->currentIndex()))];
}

Typed<Amount> AmountField::amount() const
{
    const auto [number, unitBehind] = partedUnit(edit_->text());
    Unit chosen = unit();
    if (!unitBehind.isEmpty()) {
        const std::optional<Unit> typed = unitTyped(unitBehind, units_);
        if (!typed) return {std::nullopt, tr("«%1» is not a unit that fits here.").arg(unitBehind)};
        chosen = *typed;
        if (number.isEmpty()) return {std::nullopt, tr("«%1» is not a number.").arg(edit_->text().trimmed())};
    }
    const Typed<double> read = typedNumber(number);
    if (!read.value) return {std::nullopt, read.problem};
    const Amount amount{*read.value, chosen};
    if (*read.value < 0) return {std::nullopt, tr("An amount cannot be below zero.")};
    if (*read.value == 0 && !zeroAllowed_) return {std::nullopt, tr("The amount must be more than zero.")};
    if (chosen == Unit::count && *read.value != std::floor(*read.value)) return {std::nullopt, tr("A count is a whole number.")};
    if (chosen == Unit::count && *read.value > greatestCount) return {std::nullopt, tr("At most %1.").arg(typedText(greatestCount))};
    if (const auto mass = amount.mass(); mass && mass->base() > greatestKg) {
        return {std::nullopt, tr("At most %1 in one entry.").arg(amountText({greatestKg, Unit::kg}))};
    }
    if (const auto volume = amount.volume(); volume && volume->base() > greatestLitres) {
        return {std::nullopt, tr("At most %1 in one entry.").arg(amountText({greatestLitres, Unit::L}))};
    }
    return {amount, {}};
}

bool AmountField::isEmpty() const
{
    return edit_->text().trimmed().isEmpty();
}

QString AmountField::problemOfValue() const
{
    return amount().problem;
}

void AmountField::nameEditors(const QString& name)
{
    edit_->setAccessibleName(name);
    list_->setAccessibleName(tr("Unit of %1").arg(name));
}

void AmountField::takeTypedUnit()
{
    const auto [number, unitBehind] = partedUnit(edit_->text());
    if (unitBehind.isEmpty() || number.isEmpty()) return;
    if (const auto typed = unitTyped(unitBehind, units_)) {
        setUnit(*typed);
        edit_->setText(number);
    }
}

std::vector<Unit> massUnits()
{
    if (measures() == Measures::us) return {Unit::oz, Unit::lb, Unit::g, Unit::kg};
    return {Unit::g, Unit::kg, Unit::oz, Unit::lb};
}

std::vector<Unit> volumeUnits()
{
    if (measures() == Measures::us) return {Unit::cup, Unit::gal, Unit::floz, Unit::L, Unit::mL};
    return {Unit::L, Unit::mL, Unit::cup, Unit::gal, Unit::floz};
}

std::vector<Unit> massAndVolumeUnits()
{
    std::vector<Unit> units = massUnits();
    for (const Unit unit : volumeUnits()) units.push_back(unit);
    return units;
}

}
