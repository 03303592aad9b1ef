#include "ui/common/field_edit.h"

#include <QAbstractItemView>
#include <QKeyEvent>
#include <QPainter>
#include <QScreen>
#include <QStyle>
#include <QStyleOptionFrame>
#include <QTimer>
#include <QWheelEvent>

#include <algorithm>

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

void FieldEdit::setRoomFor(const QString& text)
{
    roomFor_ = text;
    updateGeometry();
}

QSize FieldEdit::minimumSizeHint() const
{
    const QSize least = QLineEdit::minimumSizeHint();
    if (roomFor_.isEmpty()) return least;
    QStyleOptionFrame frame;
    initStyleOption(&frame);
    constexpr int innerMargin = 2; // px that QLineEdit keeps on either side of its text, and one for the cursor
    const QSize text{fontMetrics().horizontalAdvance(roomFor_) + 2 * innerMargin + 1, fontMetrics().height()};
    return {std::max(least.width(), style()->sizeFromContents(QStyle::CT_LineEdit, &frame, text, this).width()), least.height()};
}

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

namespace {

/// Qt leaves out the paddings of the style sheet when it reckons how high the list is: half a line would be cut where all could be in sight.
void showAllLines(const QComboBox& combo)
{
    QAbstractItemView* lines = combo.view();
    QWidget* list = lines->window();
    if (!lines->isVisible() || list == combo.window() || combo.count() == 0 || combo.count() > combo.maxVisibleItems()) return;
    const auto place = [&](int row) { return lines->visualRect(lines->model()->index(row, combo.modelColumn(), combo.rootModelIndex())); };
    const int lacking = place(combo.count() - 1).bottom() - place(0).top() + 1 - lines->viewport()->height();
    if (lacking <= 0) return;
    const QRect room = combo.screen()->availableGeometry();
    const int height = std::min(list->height() + lacking, room.height());
    list->setGeometry(list->x(), std::max(room.top(), std::min(list->y(), room.bottom() + 1 - height)), list->width(), height);
    lines->scrollTo(lines->currentIndex());
}

/// A list that is held narrow in its form opens as wide as its longest words.
void showAllWords(const QComboBox& combo)
{
    QAbstractItemView* lines = combo.view();
    QWidget* list = lines->window();
    if (!lines->isVisible() || list == combo.window()) return;
    const int lacking = lines->sizeHintForColumn(combo.modelColumn()) - lines->viewport()->width();
    if (lacking <= 0) return;
    const QRect room = combo.screen()->availableGeometry();
    const int width = std::min(list->width() + lacking, room.width());
    list->setGeometry(std::clamp(list->x(), room.left(), room.right() + 1 - width), list->y(), width, list->height());
}

}

FieldCombo::FieldCombo(QWidget* parent) : QComboBox{parent}
{
    setFocusPolicy(Qt::StrongFocus); // not WheelFocus: the wheel must not take the focus either
    setSizeAdjustPolicy(QComboBox::AdjustToContents);
    setProperty("field", true);
}

void FieldCombo::paintEvent(QPaintEvent* event)
{
    QComboBox::paintEvent(event);
    // A style sheet that sets the frame of a list can draw its arrow only from a picture file, which neither scales nor follows the theme.
    const double half = fontMetrics().height() * 0.24;
    const double across = fontMetrics().height() * 0.75;
    const double middle = layoutDirection() == Qt::LeftToRight ? width() - across : across;
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen{palette().color(isEnabled() ? QPalette::Active : QPalette::Disabled, QPalette::Text), std::max(1.0, half * 0.35), Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin});
    const double y = height() / 2.0 - half / 2;
    painter.drawPolyline(QPolygonF{{QPointF{middle - half, y}, QPointF{middle, y + half}, QPointF{middle + half, y}}});
}

void FieldCombo::showPopup()
{
    QComboBox::showPopup();
    QTimer::singleShot(0, this, [this] { showAllLines(*this); showAllWords(*this); }); // once the style has given the list its paddings
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
