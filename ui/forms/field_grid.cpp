#include "ui/forms/field_grid.h"

#include "ui/common/panels.h"

#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>

namespace tierloam::forms {

FieldGrid::FieldGrid(QWidget* parent) : QWidget{parent}
{
    rows_ = new QFormLayout{this};
    rows_->setContentsMargins(0, 0, 0, 0);
    rows_->setRowWrapPolicy(QFormLayout::WrapLongRows);
    rows_->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    rows_->setLabelAlignment(Qt::AlignLeading | Qt::AlignTop);
    rows_->setFormAlignment(Qt::AlignLeading | Qt::AlignTop);
    rows_->setHorizontalSpacing(10);
    rows_->setVerticalSpacing(7);
    QSizePolicy policy{QSizePolicy::Preferred, QSizePolicy::Minimum};
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void FieldGrid::addField(const QString& label, ui::Field* field)
{
    auto* words = ui::makeLabel(label, ui::TextRole::muted, this);
    words->setBuddy(field);
    words->setContentsMargins(0, 4, 0, 0);
    rows_->addRow(words, field);
    field->setName(label);
    fields_.append(field);
    connect(field, &ui::Field::edited, this, &FieldGrid::edited);
}

void FieldGrid::addWide(QWidget* widget)
{
    rows_->addRow(widget);
}

void FieldGrid::setRowShown(QWidget* field, bool shown)
{
    rows_->setRowVisible(field, shown);
}

bool FieldGrid::isRowShown(const QWidget* field) const
{
    return !field->isHidden();
}

bool FieldGrid::check()
{
    ui::Field* first = nullptr;
    for (ui::Field* field : std::as_const(fields_)) {
        if (field->isHidden() || field->check() || first) continue;
        first = field;
    }
    if (first) first->setFocus();
    return first == nullptr;
}

void FieldGrid::focusFirst()
{
    for (ui::Field* field : std::as_const(fields_)) {
        if (field->isHidden()) continue;
        field->setFocus(Qt::TabFocusReason);
        // The usual amount stands there: typing another replaces it.
        if (auto* line = qobject_cast<QLineEdit*>(field->focusProxy())) line->selectAll();
        return;
    }
}

}
