#include "ui/common/popup_keys.h"

#include <QApplication>
#include <QEvent>
#include <QPointer>

namespace tierloam::ui {

namespace {

class PopupKeys final : public QObject {
public:
    using QObject::QObject;

    /// Qt asks whoever gets a key whether it wants it, before it looks for a shortcut.
    bool eventFilter(QObject* watched, QEvent* event) override
    {
        if (event->type() != QEvent::ShortcutOverride || !QApplication::activePopupWidget()) return QObject::eventFilter(watched, event);
        event->accept();
        return true;
    }
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
