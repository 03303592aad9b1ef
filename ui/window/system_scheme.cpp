#include "ui/window/system_scheme.h"

#include <QDBusConnection>

namespace tierloam::window {

namespace {

const QString service = QStringLiteral("org.freedesktop.portal.Desktop");
const QString path = QStringLiteral("/org/freedesktop/portal/desktop");
const QString interface = QStringLiteral("org.freedesktop.portal.Settings");
const QString appearance = QStringLiteral("org.freedesktop.appearance");
const QString scheme = QStringLiteral("color-scheme");

constexpr uint noPreference = 0, prefersDark = 1, prefersLight = 2;

}

SystemScheme::SystemScheme(ui::Theme& theme, QObject* parent) : QObject{parent}, theme_{theme}
{
    if (qEnvironmentVariableIsEmpty("DBUS_SESSION_BUS_ADDRESS")) return; // asking would start a bus
    QDBusConnection bus = QDBusConnection::sessionBus();
    bus.connect(service, path, interface, QStringLiteral("SettingChanged"), this, SLOT(settingChanged(QString,QString,QDBusVariant)));
    QDBusMessage call = QDBusMessage::createMethodCall(service, path, interface, QStringLiteral("Read"));
    call << appearance << scheme;
    bus.callWithCallback(call, this, SLOT(answered(QDBusMessage)));
}

void SystemScheme::settingChanged(const QString& space, const QString& key, const QDBusVariant& value)
{
    if (space != appearance || key != scheme) return;
    const uint wished = value.variant().toUInt();
    if (wished == noPreference) { // on many desktops the way back from dark
        theme_.readSystemPalette();
        return;
    }
    if (wished != prefersDark && wished != prefersLight) return;
    const bool dark = wished == prefersDark;
    theme_.setSystemReader([dark] { return dark; }); // said outright, it rules over what a palette looks like
    theme_.setSystemDark(dark);
}

void SystemScheme::answered(const QDBusMessage& answer)
{
    QVariant value = answer.arguments().value(0);
    while (value.canConvert<QDBusVariant>()) value = value.value<QDBusVariant>().variant(); // the answer is wrapped twice
    if (value.isValid()) settingChanged(appearance, scheme, QDBusVariant{value});
}

}
