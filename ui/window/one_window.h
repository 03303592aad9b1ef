#pragma once

#include <QObject>
#include <QString>

class QLocalServer;

namespace tierloam::window {

/// Sees to it that a household file has one window: the window that shows it listens at a local socket named after the file, and a
/// program that is asked to open the file again knocks there and leaves. Nothing leaves the machine.
class OneWindow : public QObject {
    Q_OBJECT

public:
    explicit OneWindow(QObject* parent = nullptr);
    ~OneWindow() override;

    /// true when another window shows the file and has been asked to come to the front.
    static bool raiseOther(const QString& path);
    /// A window shows the file; it is left alone.
    static bool isTaken(const QString& path);
    /// Listens for the file from now on, and no longer for the one before; an empty path only stops.
    void take(const QString& path);
    /// Where a file's window listens; equal for all ways to write its path.
    static QString address(const QString& path);

Q_SIGNALS:
    void asked();

private:
    QLocalServer* server_ = nullptr;
};

}
