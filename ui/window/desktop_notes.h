#pragma once

#include <QString>

#include <memory>

namespace tierloam::window {

/// A short note on the desktop, outside the window; a seam, so that tests count them.
class DesktopNotes {
public:
    virtual ~DesktopNotes() = default;
    virtual void show(const QString& title, const QString& text) = 0;
};

/// The freedesktop notification service of the session bus (org.freedesktop.Notifications, Notify: Desktop Notifications Specification 1.2), the tray
/// of the desktop where there is none. Nothing is connected to before the first note.
std::unique_ptr<DesktopNotes> systemDesktopNotes();

}
