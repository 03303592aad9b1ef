#pragma once

#include <QVariant>

class QWidget;

namespace tierloam::ui {

/// Sets a property that the style sheet asks for, and lets the sheet look at it: it does so only when a widget is polished.
void setStyled(QWidget* widget, const char* property, const QVariant& value);

}
