#pragma once

#include "tests/ui/long_texts.h"
#include "tests/ui/window_fixture.h"

#include <QAbstractButton>
#include <QAbstractItemModel>
#include <QAbstractItemView>
#include <QGroupBox>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QRegularExpression>

#include <functional>
#include <set>

/// Goes through all that a window says: what is read on it, what a screen reader says of it and of what is drawn, tool tips, tables.
namespace tierloam::window {

using tests::LongTexts;

struct Said {
    QString where;
    QString text;
};

inline void sayInterface(QAccessibleInterface* each, const QString& where, QList<Said>& said, int depth = 0)
{
    if (!each || depth > 40 || each->state().invisible) return;
    for (const auto kind : {QAccessible::Name, QAccessible::Description, QAccessible::Value}) {
        const QString text = each->text(kind);
        if (!text.isEmpty()) said << Said{where, text};
    }
    const bool table = each->tableInterface() != nullptr; // its model is read instead
    for (int n = 0; !table && n < each->childCount(); ++n) sayInterface(each->child(n), where, said, depth + 1);
}

inline QString nameOf(const QWidget* widget)
{
    QString name = QString::fromLatin1(widget->metaObject()->className()) % u' ' % widget->objectName();
    for (const QWidget* up = widget->parentWidget(); up; up = up->parentWidget()) {
        if (!up->objectName().isEmpty() && !up->objectName().startsWith(QLatin1StringView{"qt_"})) return name % QStringLiteral(" in ") % up->objectName();
    }
    return name;
}

/// All that the widget and those in it say.
inline QList<Said> saidBy(QWidget* root)
{
    QList<Said> said;
    sayInterface(QAccessible::queryAccessibleInterface(root), nameOf(root), said);
    for (QWidget* each : root->findChildren<QWidget*>()) {
        if (!each->isVisibleTo(root)) continue;
        if (!each->toolTip().isEmpty()) said << Said{nameOf(each), each->toolTip()};
        const auto* view = qobject_cast<QAbstractItemView*>(each);
        if (!view || !view->model()) continue;
        const QAbstractItemModel& model = *view->model();
        for (int column = 0; column < model.columnCount(); ++column) {
            said << Said{nameOf(each), model.headerData(column, Qt::Horizontal).toString()};
            for (int row = 0; row < std::min(model.rowCount(), 40); ++row) {
                for (const int role : {int{Qt::DisplayRole}, int{Qt::ToolTipRole}, int{Qt::AccessibleTextRole}}) said << Said{nameOf(each), model.index(row, column).data(role).toString()};
            }
        }
    }
    return said;
}

/// Where each thing stands and what it says.
inline QStringList placesIn(QWidget* root)
{
    QStringList places;
    for (QWidget* each : root->findChildren<QWidget*>()) {
        if (!each->isVisibleTo(root)) continue;
        const QRect at = each->geometry();
        const auto* label = qobject_cast<QLabel*>(each);
        places << QStringLiteral("%1 %2 %3 %4 %5").arg(at.x()).arg(at.y()).arg(at.width()).arg(at.height()).arg(label ? label->text() : QString{});
    }
    return places;
}

/// An answer from another thread that comes in the last turn of the event loop has changed a text, and its layout is still to come: waits until a few turns change nothing.
inline bool comesToRest(QWidget* root)
{
    constexpr int quietTurns = 3, mostTurns = 200;
    QStringList before = placesIn(root);
    for (int turn = 0, quiet = 0; turn < mostTurns; ++turn) {
        QCoreApplication::sendPostedEvents();
        QCoreApplication::processEvents();
        QStringList now = placesIn(root);
        quiet = now == before ? quiet + 1 : 0;
        if (quiet == quietTurns) return true;
        before = std::move(now);
    }
    return false;
}

/// Labels and buttons that are smaller than what they say.
inline QStringList clippedIn(QWidget* root)
{
    QStringList found;
    for (QWidget* each : root->findChildren<QWidget*>()) {
        if (!each->isVisibleTo(root)) continue;
        if (const auto* label = qobject_cast<QLabel*>(each)) {
            if (label->text().isEmpty()) continue;
            const bool wraps = label->wordWrap();
            const int over = wraps ? label->heightForWidth(label->width()) - label->height() : label->sizeHint().width() - label->width();
            if (over > 1) found << QStringLiteral("%1: «%2» lacks %3 px %4").arg(nameOf(each), label->text().left(60)).arg(over).arg(wraps ? QStringLiteral("of height") : QStringLiteral("of width"));
        } else if (const auto* button = qobject_cast<QAbstractButton*>(each)) {
            if (button->text().isEmpty()) continue;
            const int over = button->minimumSizeHint().width() - button->width();
            if (over > 1) found << QStringLiteral("%1: «%2» lacks %3 px").arg(nameOf(each), button->text().left(60)).arg(over);
        }
    }
    return found;
}

/// What is said without the brackets of LongTexts: texts that would stay English in every language. `own`: what people and files wrote.
inline QStringList plainIn(QWidget* root, const QStringList& own = {})
{
    static const QRegularExpression word{QStringLiteral("[A-Za-z]{2,}")}, date{QStringLiteral("^([A-Z][a-z]+ )?\\d{1,2} [A-Z][a-z]+( \\d{4})?$")};
    // Of people's own, of the program, signs of units.
    static const QStringList names{QStringLiteral("Scullery"), QStringLiteral("Cellar"), QStringLiteral("Lean-to"), QStringLiteral("mill"), QStringLiteral("Tierloam"), QStringLiteral("kg"), QStringLiteral("cm")};
    QStringList found;
    for (const Said& each : saidBy(root)) {
        if (each.text.contains(u'⟦') || !word.match(each.text).hasMatch() || date.match(each.text).hasMatch() || names.contains(each.text) || own.contains(each.text)) continue;
        found << each.where % QStringLiteral(": «") % each.text.left(100) % u'»';
    }
    return found;
}

/// Every page, then every form that can be opened for the first stack; `look` is told where it is.
inline void walkAll(MainWindow& window, const std::function<void(const QString&, QWidget*)>& look)
{
    Desk& desk = *window.desk();
    const auto settle = [&window] { comesToRest(&window); };
    const std::pair<Desk::Page, const char*> pages[] = {{Desk::Page::shelf, "shelf"},   {Desk::Page::trends, "trends"},       {Desk::Page::journal, "journal"},
                                                        {Desk::Page::rotation, "rotation"}, {Desk::Page::materials, "materials"}, {Desk::Page::handbook, "handbook"}};
    for (const auto& [page, name] : pages) {
        desk.showPage(page);
        if (page == Desk::Page::trends) desk.trends()->refreshNow(); // else the charts below follow one by one
        settle();
        look(QString::fromLatin1(name), &window);
    }
    desk.showPage(Desk::Page::shelf);
    for (QAction* act : desk.shelf()->stackActions()) {
        if (!act->isEnabled() || !act->text().contains(u'…')) continue;
        if (act->objectName() == QLatin1StringView{"moreActs"}) continue; // a menu
        act->trigger();
        settle();
        look(QStringLiteral("form ") % act->objectName(), &window);
        QTest::keyClick(QApplication::focusWidget() ? QApplication::focusWidget() : &window, Qt::Key_Escape);
        settle();
    }
}

}
