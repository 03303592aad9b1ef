#include "ui/common/popup_keys.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QComboBox>
#include <QKeyEvent>
#include <QPointer>
#include <QScopedValueRollback>

#include <optional>

namespace tierloam::ui {

namespace {

/// The list that a drop-down list has opened; nullptr for a menu and whatever else is open.
QAbstractItemView* openedList(const QWidget& popup)
{
    const auto* box = qobject_cast<QComboBox*>(popup.parentWidget());
    return box && box->view() && popup.isAncestorOf(box->view()) ? box->view() : nullptr;
}

class PopupKeys final : public QObject {
public:
    using QObject::QObject;

    bool eventFilter(QObject* watched, QEvent* event) override
    {
        switch (event->type()) {
        case QEvent::ShortcutOverride: return asked(watched, static_cast<QKeyEvent&>(*event)) || QObject::eventFilter(watched, event);
        case QEvent::KeyPress:
            if (isOfTheList(static_cast<QKeyEvent&>(*event))) return true;
            break;
        case QEvent::KeyRelease: // that of a key held down comes again and again
            if (!static_cast<QKeyEvent*>(event)->isAutoRepeat()) chosenWith_.reset();
            break;
        default: break;
        }
        return QObject::eventFilter(watched, event);
    }

private:
    /// Qt asks whoever gets a key whether it wants it, before it looks for a shortcut. A list takes Enter, and Esc, by that question already:
    /// it hears it, and whatever it answers, no shortcut of the page is looked for.
    bool asked(QObject* watched, QKeyEvent& key)
    {
        const QPointer<QWidget> popup = QApplication::activePopupWidget();
        if (asking_ || !popup) return false;
        const QScopedValueRollback asking{asking_, true};
        QAbstractItemView* list = openedList(*popup);
        if (list && key.key() == Qt::Key_Space) { // takes what is lit, as it does on the closed list
            QKeyEvent enter{QEvent::ShortcutOverride, Qt::Key_Return, Qt::NoModifier};
            QCoreApplication::sendEvent(list, &enter);
        } else {
            QCoreApplication::sendEvent(watched, &key);
        }
        // The press itself would come to the form behind, where Enter saves.
        if (list && QApplication::activePopupWidget() != popup) {
            chosenWith_ = key.key();
            pressed_ = false;
        }
        key.accept();
        return true;
    }

    /// One press for the list that was closed, and what comes of holding the key down.
    bool isOfTheList(const QKeyEvent& press)
    {
        if (chosenWith_ != press.key() || (pressed_ && !press.isAutoRepeat())) {
            chosenWith_.reset();
            return false;
        }
        pressed_ = true;
        return true;
    }

    bool asking_ = false;
    std::optional<int> chosenWith_; ///< the key that closed a list, until it is let go
    bool pressed_ = false;
};

}

void keepKeysInPopups()
{
    static QPointer<PopupKeys> keys;
    if (keys || !qApp) return;
    keys = new PopupKeys{qApp};
    qApp->installEventFilter(keys);
}

}
