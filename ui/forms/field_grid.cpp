#include "ui/forms/field_grid.h"

#include "ui/common/panels.h"
#include "ui/forms/rows_layout.h"

#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <QShowEvent>
#include <QTimer>

namespace tierloam::forms {

FieldGrid::FieldGrid(QWidget* parent) : QWidget{parent}
{
    rows_ = new RowsLayout{this};
    QSizePolicy policy{QSizePolicy::Preferred, QSizePolicy::Minimum};
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void FieldGrid::addField(const QString& label, ui::Field* field)
{
    auto* words = ui::makeLabel(label, ui::TextRole::muted, this);
    words->setBuddy(field);
    words->setAlignment(Qt::AlignLeading | Qt::AlignTop);
    words->setContentsMargins(0, 5, 0, 0);
    rows_->addRow(words, field);
    field->setName(label);
    fields_.append(field);
    connect(field, &ui::Field::edited, this, &FieldGrid::edited);
}

void FieldGrid::addWide(QWidget* widget)
{
    rows_->addWide(widget);
}

void FieldGrid::setRowShown(QWidget* field, bool shown)
{
    rows_->setRowShown(field, shown);
}

bool FieldGrid::isRowShown(const QWidget* field) const
{
    return !field->isHidden();
}

/// A style sheet takes hold of widgets only when they are shown, and tells no layout that they grew by it.
void FieldGrid::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    for (ui::Field* field : std::as_const(fields_)) {
        field->layout()->invalidate();
        field->updateGeometry();
    }
    rows_->invalidate();
    updateGeometry();
}

FieldGrid::~FieldGrid()
{
    // A field that loses the focus settles what was typed, which it cannot any more while it is being destroyed; and nobody is told of it,
    // since the form around this grid has gone already.
    blockSignals(true);
    for (ui::Field* field : std::as_const(fields_)) field->blockSignals(true);
    QWidget* focus = focusWidget();
    if (focus && isAncestorOf(focus)) focus->clearFocus();
}

bool FieldGrid::check()
{
    ui::Field* first = nullptr;
    for (ui::Field* field : std::as_const(fields_)) {
        if (field->isHidden() || field->check() || first) continue;
        first = field;
    }
    if (first) {
        first->setFocus();
        bringIntoSight(first);
    }
    return first == nullptr;
}

void FieldGrid::bringIntoSight(ui::Field* field)
{
    QTimer::singleShot(0, field, [field] {
        for (QWidget* each = field->parentWidget(); each != nullptr; each = each->parentWidget())
            if (auto* area = qobject_cast<QScrollArea*>(each)) area->ensureWidgetVisible(field, 0, area->fontMetrics().height());
    });
}

void FieldGrid::focusFirst()
{
    for (ui::Field* field : std::as_const(fields_)) {
        if (field->isHidden()) continue;
        focusOn(field);
        return;
    }
}

void FieldGrid::focusOn(ui::Field* field)
{
    field->setFocus(Qt::TabFocusReason);
    // The usual amount stands there: typing another replaces it.
    if (auto* line = qobject_cast<QLineEdit*>(field->focusProxy())) line->selectAll();
}

}
