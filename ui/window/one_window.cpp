#include "ui/window/one_window.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFileInfo>
#include <QLocalServer>
#include <QLocalSocket>

#include <unistd.h>

namespace tierloam::window {

namespace {

/// A window that is alive answers within this; one that hangs must not keep people from their file.
constexpr int patienceMs = 500;
const char knock[] = "raise\n";

}

OneWindow::OneWindow(QObject* parent) : QObject{parent} {}

OneWindow::~OneWindow() = default;

QString OneWindow::address(const QString& path)
{
    const QFileInfo file{path};
    const QString canonical = file.canonicalFilePath();
    const QByteArray name = (canonical.isEmpty() ? file.absoluteFilePath() : canonical).toUtf8();
    const QByteArray digest = QCryptographicHash::hash(name, QCryptographicHash::Sha256).toHex().left(24);
    // The session's own folder; without a session the common one, where the user's number keeps users apart.
    const QString session = qEnvironmentVariable("XDG_RUNTIME_DIR");
    const QString folder = session.isEmpty() ? QDir::tempPath() % QStringLiteral("/tierloam-%1-").arg(getuid()) : session % QStringLiteral("/tierloam-");
    return folder % QString::fromLatin1(digest);
}

bool OneWindow::raiseOther(const QString& path)
{
    QLocalSocket socket;
    socket.connectToServer(address(path));
    if (!socket.waitForConnected(patienceMs)) return false;
    if (socket.write(knock) < 0 || !socket.waitForBytesWritten(patienceMs)) return false;
    // The answer is what counts: a window that is just closing takes the connection and never answers.
    return socket.waitForReadyRead(patienceMs) && socket.readAll().startsWith("here");
}

bool OneWindow::isTaken(const QString& path)
{
    QLocalSocket socket;
    socket.connectToServer(address(path));
    return socket.waitForConnected(patienceMs);
}

void OneWindow::take(const QString& path)
{
    delete server_;
    server_ = nullptr;
    if (path.isEmpty()) return;
    server_ = new QLocalServer{this};
    server_->setSocketOptions(QLocalServer::UserAccessOption);
    const QString where = address(path);
    if (!server_->listen(where)) {
        // Left behind by a program that was killed: nobody answers there, so it is taken over.
        if (raiseOther(path)) return;
        QLocalServer::removeServer(where);
        server_->listen(where);
    }
    connect(server_, &QLocalServer::newConnection, this, [this] {
        while (QLocalSocket* socket = server_->nextPendingConnection()) {
            connect(socket, &QLocalSocket::disconnected, socket, &QObject::deleteLater);
            connect(socket, &QLocalSocket::readyRead, this, [this, socket] {
                if (!socket->readAll().startsWith("raise")) return;
                socket->write("here\n");
                socket->flush();
                Q_EMIT asked();
            });
        }
    });
}

}
