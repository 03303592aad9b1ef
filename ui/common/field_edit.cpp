#include "ui/common/field_edit.h"

#include <QAbstractItemView>
#include <QKeyEvent>
#include <QWheelEvent>

namespace tierloam::ui {

namespace {

/// An undo or redo key that this editor has no use for.
bool isIdleUndo(const QLineEdit& edit, QKeyEvent* event)
{
    if (event->matches(QKeySequence::Undo)) return !edit.isUndoAvailable();
    if (event->matches(QKeySequence::Redo)) return !edit.isRedoAvailable();
    return false;
}

}

FieldEdit::FieldEdit(QWidget* parent) : QLineEdit{parent} {}

bool FieldEdit::event(QEvent* event)
{
    // QLineEdit claims undo keys before any shortcut sees them, whether or not it can undo.
    if (event->type() == QEvent::ShortcutOverride && isIdleUndo(*this, static_cast<QKeyEvent*>(event))) {
        event->ignore();
        return false;
    }
    return QLineEdit::event(event);
}

void FieldEdit::keyPressEvent(QKeyEvent* event)
{
    if (isIdleUndo(*this, event)) {
        event->ignore();
        return;
    }
    QLineEdit::keyPressEvent(event);
}

FieldCombo::FieldCombo(QWidget* parent) : QComboBox{parent}
{
    setFocusPolicy(Qt::StrongFocus); // not WheelFocus: the wheel must not take the focus either
    setSizeAdjustPolicy(QComboBox::AdjustToContents);
}

void FieldCombo::wheelEvent(QWheelEvent* event)
{
    if (hasFocus()) {
        QComboBox::wheelEvent(event);
    } else {
        event->ignore(); // goes on to the scroll area around the form
    }
}

void FieldCombo::keyPressEvent(QKeyEvent* event)
{
    const bool confirms = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (confirms && !view()->isVisible()) {
        event->ignore(); // Enter records; the list opens with Space or Alt and Down
        return;
    }
    QComboBox::keyPressEvent(event);
}

}
