#include "ui/common/reading_order.h"

#include <QAbstractButton>
#include <QAbstractSpinBox>
#include <QApplication>
#include <QComboBox>
#include <QScrollArea>

#include <algorithm>
#include <vector>

namespace tierloam::ui {

namespace {

struct Piece {
    QRect place;
    QList<QWidget*> stops;
};

using Pieces = std::vector<Piece>;

bool isStop(const QWidget* widget, const QWidget* present)
{
    if (widget == present) return true;
    if (!widget->isVisible() || !widget->isEnabled() || widget->focusProxy() || !(widget->focusPolicy() & Qt::TabFocus)) return false;
    const auto* button = qobject_cast<const QAbstractButton*>(widget);
    if (!button || !button->autoExclusive() || button->isChecked()) return true;
    const auto siblings = button->parentWidget()->findChildren<QAbstractButton*>(Qt::FindDirectChildrenOnly);
    return std::ranges::none_of(siblings, [](const QAbstractButton* each) { return each->autoExclusive() && each->isChecked(); });
}

/// Splits at every gap between the pieces' extents along one axis; one group when there is none.
std::vector<Pieces> cut(Pieces pieces, bool across)
{
    const auto from = [across](const Piece& piece) { return across ? piece.place.left() : piece.place.top(); };
    const auto to = [across](const Piece& piece) { return across ? piece.place.right() : piece.place.bottom(); };
    std::ranges::stable_sort(pieces, {}, from);
    std::vector<Pieces> groups;
    int end = 0;
    for (Piece& piece : pieces) {
        const int last = to(piece);
        if (groups.empty() || from(piece) > end) {
            groups.emplace_back();
            end = last;
        }
        end = std::max(end, last);
        groups.back().push_back(std::move(piece));
    }
    return groups;
}

/// Lines first, then what stands beside each other in a line; what overlaps in both ways keeps its order from above.
void read(Pieces pieces, bool leftToRight, QList<QWidget*>& stops)
{
    for (Pieces& line : cut(std::move(pieces), false)) {
        std::vector<Pieces> beside = cut(std::move(line), true);
        if (!leftToRight) std::ranges::reverse(beside);
        for (Pieces& part : beside) {
            if (beside.size() > 1 && part.size() > 1) {
                read(std::move(part), leftToRight, stops);
                continue;
            }
            std::ranges::stable_sort(part, {}, [](const Piece& piece) { return piece.place.top(); });
            for (const Piece& piece : part) stops += piece.stops;
        }
    }
}

}

QList<QWidget*> readingOrder(QWidget* root, const QWidget* present)
{
    QList<QWidget*> stops;
    if (isStop(root, present) && !root->isWindow()) stops << root;
    if (qobject_cast<QComboBox*>(root) || qobject_cast<QAbstractSpinBox*>(root)) return stops; // their parts have no focus of their own
    Pieces pieces;
    for (QObject* object : root->children()) {
        auto* child = qobject_cast<QWidget*>(object);
        if (!child || child->isWindow()) continue;
        if (!child->isVisible() && child != present && !(present && child->isAncestorOf(present))) continue;
        if (QList<QWidget*> within = readingOrder(child, present); !within.isEmpty()) pieces.push_back({child->geometry(), std::move(within)});
    }
    read(std::move(pieces), root->layoutDirection() == Qt::LeftToRight, stops);
    return stops;
}

bool focusInReadingOrder(QWidget* window, bool next)
{
    QWidget* present = window->focusWidget();
    const QList<QWidget*> stops = readingOrder(window, present);
    const qsizetype count = stops.size();
    if (count == 0 || (count == 1 && stops.front() == present)) return false;
    const qsizetype at = stops.indexOf(present);
    QWidget* to = at < 0 ? (next ? stops.front() : stops.back()) : stops[(at + (next ? 1 : count - 1)) % count];
    to->setFocus(next ? Qt::TabFocusReason : Qt::BacktabFocusReason);
    for (QWidget* up = to->parentWidget(); up && up != window; up = up->parentWidget()) {
        auto* area = qobject_cast<QScrollArea*>(up);
        if (area && area->widget() && area->widget()->isAncestorOf(to)) area->ensureWidgetVisible(to, 0, area->fontMetrics().height());
    }
    return true;
}

}
