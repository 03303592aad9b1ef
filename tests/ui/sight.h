#pragma once

#include <QLabel>
#include <QRegion>
#include <QWidget>

/// What a person sees of a window, as far as geometry goes.
namespace tierloam::tests {

/// All of it can be painted: nothing is scrolled away, cut by an edge of anything around it, covered, or outside the window.
inline bool wholeInSight(const QWidget* widget)
{
    if (!widget->isVisible() || widget->rect().isEmpty() || widget->visibleRegion() != QRegion{widget->rect()}) return false;
    const QWidget* window = widget->window();
    return window->rect().contains(QRect{widget->mapTo(window, QPoint{}), widget->size()});
}

/// That, and it has room for all of its words.
inline bool canBeRead(const QLabel* label)
{
    return wholeInSight(label) && (!label->wordWrap() || label->height() >= label->heightForWidth(label->width()));
}

}
