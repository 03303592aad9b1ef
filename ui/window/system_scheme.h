#pragma once

#include "ui/common/theme.h"

#include <QDBusMessage>
#include <QDBusVariant>
#include <QObject>

namespace tierloam::window {

/// Follows the desktop's choice of light or dark while the program runs, where the desktop tells it over the session bus: the interface
/// org.freedesktop.portal.Settings, namespace org.freedesktop.appearance, key color-scheme (1 dark, 2 light, 0 no preference).
/// Without a session bus, or without somebody who answers, nothing happens; palettes that change are followed by the theme itself.
class SystemScheme : public QObject {
    Q_OBJECT

public:
    explicit SystemScheme(ui::Theme& theme, QObject* parent = nullptr);

public Q_SLOTS:
    void settingChanged(const QString& space, const QString& key, const QDBusVariant& value);

private Q_SLOTS:
    void answered(const QDBusMessage& answer);

private:
    ui::Theme& theme_;
};

}
