#include "ui/common/area_field.h"

#include "ui/common/field_edit.h"
#include "ui/common/formats.h"
#include "ui/common/typed_number.h"

#include <QLabel>

#include <cmath>

namespace tierloam::ui {

namespace {

constexpr double least = 0.01, most = 10.0;                  // m²: a cup-sized tray; the journal's bound
constexpr double squareMetresPerSquareFoot = 0.09290304;
enum Way { centimetreSides, inchSides, squareMetre, squareFoot };

bool hasSides(int way)
{
    return way == centimetreSides || way == inchSides;
}

}

AreaField::AreaField(QWidget* parent) : Field{parent}
{
    first_ = new FieldEdit{this};
    first_->setObjectName(QStringLiteral("width"));
    times_ = new QLabel{QStringLiteral("×"), this};
    second_ = new FieldEdit{this};
    second_->setObjectName(QStringLiteral("length"));
    way_ = new FieldCombo{this};
    way_->setObjectName(QStringLiteral("way"));
    way_->addItem(QStringLiteral("cm × cm"), centimetreSides);
    way_->addItem(tr("in × in"), inchSides);
    way_->addItem(QStringLiteral("m²"), squareMetre);
    way_->addItem(tr("sq ft"), squareFoot);
    for (FieldEdit* edit : {first_, second_}) {
        edit->setAlignment(Qt::AlignRight);
        edit->setRoomFor(QStringLiteral("00.00"));
        connect(edit, &QLineEdit::textEdited, this, &AreaField::noteEdited);
    }
    addEditor(first_, 1);
    addEditor(times_);
    addEditor(second_, 1);
    addEditor(way_);
    way_->setCurrentIndex(measures() == Measures::us ? inchSides : centimetreSides);
    connect(way_, &QComboBox::activated, this, [this] {
        showWay();
        noteEdited();
    });
    showWay();
}

void AreaField::setArea(const std::optional<Area>& area)
{
    way_->setCurrentIndex(measures() == Measures::us ? squareFoot : squareMetre);
    showWay();
    second_->clear();
    const double unit = way_->currentIndex() == squareFoot ? squareMetresPerSquareFoot : 1.0;
    first_->setText(area ? typedText(unit == 1.0 ? area->base() : std::round(area->base() / unit * 1e3) / 1e3) : QString{});
}

void AreaField::proposeArea(Area area, int digits)
{
    setArea(area);
    if (way_->currentIndex() == squareFoot) first_->setText(typedText(inDigits(area.base() / squareMetresPerSquareFoot, digits)));
}

void AreaField::setSides(Length width, Length length)
{
    const bool us = measures() == Measures::us;
    way_->setCurrentIndex(us ? inchSides : centimetreSides);
    const double unit = us ? 2.54 : 1.0;
    first_->setText(typedText(std::round(width.base() / unit * 10) / 10));
    second_->setText(typedText(std::round(length.base() / unit * 10) / 10));
    showWay();
}

Typed<Area> AreaField::area() const
{
    const int way = way_->currentIndex();
    const Typed<double> a = typedNumber(first_->text());
    if (!a.value) return {std::nullopt, a.problem};
    double squareMetres = *a.value;
    if (hasSides(way)) {
        const Typed<double> b = typedNumber(second_->text());
        if (!b.sound()) return {std::nullopt, b.problem};
        if (!b.value) return {std::nullopt, tr("Give the length as well.")};
        if (*a.value <= 0 || *b.value <= 0) return {std::nullopt, tr("Width and length must be more than zero.")};
        const double unit = way == inchSides ? 0.0254 : 0.01;
        squareMetres = *a.value * unit * (*b.value * unit);
    } else if (way == squareFoot) {
        squareMetres *= squareMetresPerSquareFoot;
    }
    squareMetres = std::round(squareMetres * 1e6) / 1e6;
    if (squareMetres < least || squareMetres > most) {
        return {std::nullopt, tr("That is %1; a tray has from %2 to %3.").arg(areaText(squareMetres), areaText(least), areaText(most))};
    }
    return {tierloam::squareMetres(squareMetres), {}};
}

bool AreaField::isEmpty() const
{
    return first_->text().trimmed().isEmpty() && (second_->isHidden() || second_->text().trimmed().isEmpty());
}

QString AreaField::problemOfValue() const
{
    if (first_->text().trimmed().isEmpty()) return tr("Give the width as well.");
    return area().problem;
}

void AreaField::nameEditors(const QString& name)
{
    first_->setAccessibleName(hasSides(way_->currentIndex()) ? tr("%1: width").arg(name) : name);
    second_->setAccessibleName(tr("%1: length").arg(name));
    way_->setAccessibleName(tr("%1: how it is given").arg(name));
}

void AreaField::showWay()
{
    const bool sides = hasSides(way_->currentIndex());
    times_->setVisible(sides);
    second_->setVisible(sides);
    if (!name().isEmpty()) nameEditors(name());
}

}
