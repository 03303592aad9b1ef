#pragma once

#include <QList>

class QWidget;

/// Tab goes as one reads: down the page and along the line, in right-to-left languages from the right, whatever the order in which widgets
/// were made or were made anew. It is worked out from where things stand at the moment the key is pressed.
namespace tierloam::ui {

/// All that Tab stops at in that window or part of it, in reading order. Of choices that exclude each other only the one that is on.
/// `present` has its place among them even when it has just been hidden.
QList<QWidget*> readingOrder(QWidget* root, const QWidget* present = nullptr);

/// Moves the focus of the window to the next (or the previous) stop, round its end, and scrolls it into view; false when there is none.
/// To be called from QWidget::focusNextPrevChild() of a window.
bool focusInReadingOrder(QWidget* window, bool next);

}
