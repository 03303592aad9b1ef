#pragma once

#include <QAbstractScrollArea>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QStringList>

/// What of a window's words and contents has less room than it needs.
namespace tierloam::tests {

inline QString wordsOf(const QWidget* widget)
{
    if (const auto* label = qobject_cast<const QLabel*>(widget)) return label->text();
    if (const auto* button = qobject_cast<const QPushButton*>(widget)) return QString{button->text()}.remove(u'&');
    return {};
}

inline bool isCut(const QWidget* widget)
{
    if (const auto* label = qobject_cast<const QLabel*>(widget)) {
        if (label->wordWrap()) return label->height() + 1 < label->heightForWidth(label->width());
        return label->width() + 1 < label->sizeHint().width();
    }
    return widget->width() < widget->fontMetrics().horizontalAdvance(wordsOf(widget));
}

/// What scrolls only down must not be wider than what can be seen of it.
inline bool isCutAtTheSide(const QWidget* widget)
{
    for (const QWidget* above = widget->parentWidget(); above; above = above->parentWidget()) {
        const auto* area = qobject_cast<const QAbstractScrollArea*>(above->parentWidget());
        if (!area || area->viewport() != above || area->horizontalScrollBarPolicy() != Qt::ScrollBarAlwaysOff) continue;
        if (widget->mapTo(above, QPoint{widget->width(), 0}).x() > above->width()) return true;
    }
    return false;
}

/// Words of labels and buttons that do not have the room they need.
inline QStringList cutWords(const QWidget& window)
{
    QStringList cut;
    for (const QWidget* widget : window.findChildren<QWidget*>()) {
        if (!widget->isVisible() || wordsOf(widget).isEmpty()) continue;
        if (isCut(widget)) cut << wordsOf(widget);
        if (isCutAtTheSide(widget)) cut << QStringLiteral("at the side: ") + wordsOf(widget);
    }
    return cut;
}

/// Contents that can only be scrolled down and are wider than what is seen of them: charts and cards whose right end nobody can reach.
inline QStringList cutContents(const QWidget& window)
{
    QStringList cut;
    for (const QScrollArea* area : window.findChildren<QScrollArea*>()) {
        if (!area->isVisible() || !area->widget() || area->horizontalScrollBarPolicy() != Qt::ScrollBarAlwaysOff) continue;
        if (area->widget()->width() <= area->viewport()->width()) continue;
        QStringList widest;
        for (const QWidget* each : area->widget()->findChildren<QWidget*>())
            if (each->isVisible() && each->minimumSizeHint().width() > area->viewport()->width() * 3 / 4)
                widest << QString::fromLatin1(each->metaObject()->className()) + u' ' + each->objectName() + u' ' + QString::number(each->minimumSizeHint().width());
        cut << QStringLiteral("%1 in %2: %3").arg(area->widget()->width()).arg(area->viewport()->width()).arg(widest.join(QStringLiteral(", ")));
    }
    return cut;
}

}
