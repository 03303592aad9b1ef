#pragma once

#include "tests/ui/walk.h"

#include <QAbstractSpinBox>
#include <QCalendarWidget>
#include <QCheckBox>
#include <QComboBox>
#include <QRadioButton>
#include <QSlider>
#include <QStackedWidget>
#include <QTextBrowser>

#include <optional>

/// Goes through a window with Tab and Shift+Tab and says what is wrong: what cannot be reached, what keeps the focus, what comes out of order.
namespace tierloam::window {

/// A widget that people work: by what it is, not by whether Tab stops at it.
inline bool isWorked(const QWidget* widget)
{
    if (widget->focusPolicy() & Qt::TabFocus) return true;
    return qobject_cast<const QAbstractButton*>(widget) || qobject_cast<const QLineEdit*>(widget) || qobject_cast<const QComboBox*>(widget) || qobject_cast<const QAbstractSpinBox*>(widget)
        || qobject_cast<const QAbstractItemView*>(widget) || qobject_cast<const QSlider*>(widget);
}

/// A part of a larger widget that has the focus for it: the line of a spin box, the list of a combo box, the corner and heads of a table,
/// what clears a line edit.
inline bool isPart(const QWidget* widget)
{
    if (widget->focusProxy()) return true;
    if (widget->metaObject()->className() == QByteArrayLiteral("QTableCornerButton") || widget->inherits("QHeaderView") || widget->inherits("QLineEditIconButton") || widget->inherits("QScrollBar")) return true;
    for (const QWidget* up = widget->parentWidget(); up; up = up->parentWidget())
        if (qobject_cast<const QAbstractSpinBox*>(up) || qobject_cast<const QComboBox*>(up) || qobject_cast<const QCalendarWidget*>(up) || qobject_cast<const QMenuBar*>(up)) return true;
    return false;
}

/// Of choices that exclude each other Tab stops at the one that is on; arrows go to the others.
inline bool isOtherChoice(const QWidget* widget)
{
    const auto* button = qobject_cast<const QAbstractButton*>(widget);
    if (!button || !button->autoExclusive() || button->isChecked()) return false;
    const auto siblings = button->parentWidget()->findChildren<QAbstractButton*>(Qt::FindDirectChildrenOnly);
    return std::ranges::any_of(siblings, [](const QAbstractButton* each) { return each->autoExclusive() && each->isChecked(); });
}

inline QList<QWidget*> workedIn(QWidget* root)
{
    QList<QWidget*> found;
    for (QWidget* each : root->findChildren<QWidget*>())
        if (each->window() == root->window() && each->isVisible() && each->isEnabled() && isWorked(each) && !isPart(each) && !isOtherChoice(each)) found << each;
    return found;
}

inline QRect placeIn(const QWidget* root, const QWidget* widget) { return {widget->mapTo(root, QPoint{}), widget->size()}; }

/// Whether `b` is read after `a`: beneath it, or beside it towards the end of the line.
inline bool readAfter(const QRect& a, const QRect& b, bool leftToRight)
{
    const int common = std::min(a.bottom(), b.bottom()) - std::max(a.top(), b.top()) + 1;
    const bool oneLine = 2 * common > std::min(a.height(), b.height());
    if (oneLine) return leftToRight ? b.center().x() >= a.center().x() : b.center().x() <= a.center().x();
    return b.center().y() > a.center().y();
}

/// The children of their nearest common ancestor that hold them.
inline std::pair<QWidget*, QWidget*> branches(QWidget* a, QWidget* b)
{
    const auto lineOf = [](QWidget* widget) {
        QList<QWidget*> line;
        for (QWidget* up = widget; up; up = up->isWindow() ? nullptr : up->parentWidget()) line.prepend(up);
        return line;
    };
    const QList<QWidget*> ofA = lineOf(a), ofB = lineOf(b);
    qsizetype same = 0;
    while (same + 1 < std::min(ofA.size(), ofB.size()) && ofA[same + 1] == ofB[same + 1]) ++same;
    return {ofA.value(same + 1, a), ofB.value(same + 1, b)};
}

inline QStringList tabFaults(QWidget* window)
{
    QStringList faults;
    const QList<QWidget*> wanted = workedIn(window);
    if (wanted.isEmpty()) return {QStringLiteral("nothing to work")};
    const bool leftToRight = window->layoutDirection() == Qt::LeftToRight;
    const auto go = [&](Qt::KeyboardModifiers with) -> QWidget* {
        QWidget* at = QApplication::focusWidget();
        QTest::keyClick(at ? at : window, with ? Qt::Key_Backtab : Qt::Key_Tab, with);
        return QApplication::focusWidget();
    };
    QList<QWidget*> way;
    QWidget* first = go({});
    if (!first) return {QStringLiteral("Tab leads nowhere")};
    way << first;
    const qsizetype most = 2 * wanted.size() + 20;
    while (way.size() < most) {
        QWidget* next = go({});
        // In a page of text Tab goes from link to link before it leaves.
        for (int links = 0; next == way.last() && qobject_cast<QTextBrowser*>(next) && links < 300; ++links) next = go({});
        if (next == way.last()) return {QStringLiteral("Tab stays at ") + nameOf(next)};
        if (!next || next == first) break;
        if (way.contains(next)) return {QStringLiteral("Tab goes round without ") + nameOf(first) + QStringLiteral(", by ") + nameOf(next)};
        way << next;
    }
    for (QWidget* each : wanted)
        if (!way.contains(each) && !way.contains(each->focusProxy())) faults << QStringLiteral("not reached: ") + nameOf(each);
    for (const QWidget* each : way)
        if (!each->isVisible() || !each->isEnabled()) faults << QStringLiteral("the focus is at what cannot be seen: ") + nameOf(each);
    // Round once: the step from the last one in reading to the first one is the only one that leads back.
    int back = 0;
    QStringList backs;
    for (qsizetype i = 0; i < way.size(); ++i) {
        QWidget* from = way[i];
        QWidget* to = way[(i + 1) % way.size()];
        const auto [a, b] = branches(from, to);
        if (a == b || from->isAncestorOf(to) || readAfter(placeIn(window, a), placeIn(window, b), leftToRight)) continue;
        ++back;
        backs << nameOf(from) + QStringLiteral(" → ") + nameOf(to);
    }
    if (back > 1) faults << QStringLiteral("out of order: ") + backs.join(QStringLiteral("; "));
    // The same way back.
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Backtab, Qt::ShiftModifier);
    for (qsizetype i = way.size() - 1; i >= 0; --i) {
        QWidget* at = QApplication::focusWidget();
        if (at != way[i]) {
            faults << QStringLiteral("Shift+Tab comes to ") + (at ? nameOf(at) : QStringLiteral("nothing")) + QStringLiteral(" instead of ") + nameOf(way[i]);
            break;
        }
        for (int links = 0; QApplication::focusWidget() == at && links < 300; ++links) {
            QTest::keyClick(at, Qt::Key_Backtab, Qt::ShiftModifier);
            if (!qobject_cast<QTextBrowser*>(at)) break;
        }
    }
    return faults;
}

}
