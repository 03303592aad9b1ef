#include "ui/common/styled.h"

#include <QStyle>
#include <QWidget>

namespace tierloam::ui {

void setStyled(QWidget* widget, const char* property, const QVariant& value)
{
    if (widget->property(property) == value) return;
    widget->setProperty(property, value);
    widget->style()->unpolish(widget);
    widget->style()->polish(widget);
    widget->update();
}

}
