#include "ui/window/desktop_notes.h"

#include <QApplication>
#include <QDBusConnection>
#include <QDBusMessage>
#include <QDBusPendingCallWatcher>
#include <QObject>
#include <QStyle>
#include <QSystemTrayIcon>
#include <QVariantMap>

namespace tierloam::window {

namespace {

constexpr int shownFor = 10'000; ///< ms

class SystemDesktopNotes final : public DesktopNotes {
public:
    void show(const QString& title, const QString& text) override
    {
        const QDBusConnection bus = QDBusConnection::sessionBus();
        if (!bus.isConnected()) {
            showInTray(title, text);
            return;
        }
        QDBusMessage call = QDBusMessage::createMethodCall(QStringLiteral("org.freedesktop.Notifications"), QStringLiteral("/org/freedesktop/Notifications"),
                                                           QStringLiteral("org.freedesktop.Notifications"), QStringLiteral("Notify"));
        // name of the program, replaces none, icon, summary, body (its marks are escaped, since it may hold markup), no actions, no hints, ms
        call << QCoreApplication::applicationName() << 0U << QStringLiteral("tierloam") << title << text.toHtmlEscaped() << QStringList{} << QVariantMap{} << shownFor;
        // The window does not wait for the answer; where no service answers, the tray does.
        auto* answer = new QDBusPendingCallWatcher{bus.asyncCall(call), &context_};
        QObject::connect(answer, &QDBusPendingCallWatcher::finished, &context_, [this, answer, title, text] {
            if (answer->isError()) showInTray(title, text);
            answer->deleteLater();
        });
    }

private:
    void showInTray(const QString& title, const QString& text)
    {
        if (!QSystemTrayIcon::isSystemTrayAvailable()) return; // the due list tells it all the same
        if (!tray_) {
            QIcon icon = QApplication::windowIcon();
            if (icon.isNull()) icon = QApplication::style()->standardIcon(QStyle::SP_MessageBoxInformation);
            tray_ = std::make_unique<QSystemTrayIcon>(icon);
        }
        tray_->show();
        tray_->showMessage(title, text, QSystemTrayIcon::Information, shownFor);
    }

    QObject context_;                ///< answers that come after its end are passed over
    std::unique_ptr<QSystemTrayIcon> tray_;
};

}

std::unique_ptr<DesktopNotes> systemDesktopNotes() { return std::make_unique<SystemDesktopNotes>(); }

}
