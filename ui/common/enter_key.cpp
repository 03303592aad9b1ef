#include "ui/common/enter_key.h"

#include <QAbstractButton>
#include <QCheckBox>
#include <QKeyEvent>

namespace tierloam::ui {

bool pressFocused(const QWidget* within, const QKeyEvent& key)
{
    const bool enter = key.key() == Qt::Key_Return || key.key() == Qt::Key_Enter;
    auto* button = enter && !(key.modifiers() & Qt::ControlModifier) ? qobject_cast<QAbstractButton*>(within->focusWidget()) : nullptr;
    if (button == nullptr || !button->isEnabled() || qobject_cast<QCheckBox*>(button) != nullptr) return false;
    button->click();
    return true;
}

}
