#include "ui/portrait/portrait.h"

#include "core/exchange/whole_file.h"
#include "ui/handbook/handbook_page.h"
#include "ui/journal/journal_page.h"
#include "ui/materials/materials_page.h"
#include "ui/rotation/rotation_page.h"
#include "ui/shelf/shelf_page.h"
#include "ui/trends/trends_page.h"
#include "ui/window/desk.h"
#include "ui/window/main_window.h"

#include <QApplication>
#include <QBuffer>
#include <QDir>
#include <QEventLoop>
#include <QImage>
#include <QMenuBar>
#include <QPixmap>
#include <QTimer>

#include <string_view>
#include <vector>

namespace tierloam::portrait {

namespace {

/// Estimates of the largest household are there long before; past this something is broken, and it is said.
constexpr int patienceMs = 120'000;

bool awaitEstimates(household::Household& household)
{
    if (household.reckoningIsCurrent()) return true;
    QEventLoop loop;
    QTimer patience;
    patience.setSingleShot(true);
    QObject::connect(&patience, &QTimer::timeout, &loop, &QEventLoop::quit);
    QObject::connect(&household, &household::Household::reckoned, &loop, [&] {
        if (household.reckoningIsCurrent()) loop.quit();
    });
    patience.start(patienceMs);
    loop.exec();
    return household.reckoningIsCurrent();
}

/// Layouts settle in posted events, some of which post others.
void settle()
{
    for (int round = 0; round < 6; ++round) {
        QCoreApplication::sendPostedEvents();
        QCoreApplication::processEvents(QEventLoop::ExcludeUserInputEvents);
    }
}

struct Picture {
    QString name;
    QByteArray png;
};

}

std::optional<QString> drawPortraits(window::MainWindow& window, const QString& folder, QSize size)
{
    household::Household* household = window.household();
    if (!household || !window.desk()) return QObject::tr("No household is open.");
    if (!awaitEstimates(*household)) return QObject::tr("The estimates did not come.");
    window.menuBar()->hide();
    window.setMinimumSize(1, 1);
    window.resize(size);
    window.show();
    settle();

    window::Desk& desk = *window.desk();
    const struct {
        window::Desk::Page page;
        const char* name;
    } pages[] = {{window::Desk::Page::shelf, "shelf"}, {window::Desk::Page::trends, "trends"}, {window::Desk::Page::journal, "journal"},
                 {window::Desk::Page::materials, "materials"}, {window::Desk::Page::handbook, "handbook"}, {window::Desk::Page::rotation, "rotation"}};
    std::vector<Picture> pictures;
    for (const auto& [page, name] : pages) {
        desk.showPage(page);
        desk.shelf()->refreshNow();
        desk.trends()->refreshNow();
        desk.materials()->refreshNow();
        if (page == window::Desk::Page::rotation) desk.rotation()->refreshNow();
        desk.handbook()->refreshNow();
        settle();
        if (QWidget* focus = QApplication::focusWidget()) focus->clearFocus(); // a picture shows no one's place
        settle();
        const QImage image = window.grab().toImage();
        QByteArray png;
        QBuffer buffer{&png};
        buffer.open(QIODevice::WriteOnly);
        if (!image.save(&buffer, "PNG")) return QObject::tr("The page %1 could not be drawn.").arg(QString::fromLatin1(name));
        pictures.push_back({QString::fromLatin1(name) % QStringLiteral(".png"), png});
    }

    QDir target{folder};
    if (!target.mkpath(QStringLiteral("."))) return QObject::tr("The folder %1 cannot be made.").arg(folder);
    for (const Picture& picture : pictures) {
        const std::string_view bytes{picture.png.constData(), static_cast<std::size_t>(picture.png.size())};
        if (auto why = exchange::writeWholeFile(target.filePath(picture.name), bytes)) return why;
    }
    return std::nullopt;
}

}
