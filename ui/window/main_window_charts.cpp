#include "ui/window/main_window.h"

#include "core/exchange/whole_file.h"
#include "ui/common/file_name.h"
#include "ui/paper/charts.h"
#include "ui/paper/page_flow.h"
#include "ui/paper/look.h"
#include "ui/trends/trend_csv.h"
#include "ui/trends/trends_page.h"
#include "ui/window/desk.h"
#include "ui/window/notices.h"

#include <QBuffer>
#include <QDir>
#include <QPainter>
#include <QPrinter>

#include <algorithm>

namespace tierloam::window {

namespace {

constexpr double leastPicture = 900; ///< px wide

}

void MainWindow::saveTrends(const QString& kind)
{
    const QString filter = kind == QStringLiteral("png") ? tr("Pictures (*.png)")
        : kind == QStringLiteral("svg") ? tr("Drawings (*.svg)")
        : kind == QStringLiteral("pdf") ? tr("Pages (*.pdf)")
                                        : tr("Tables (*.csv)");
    const QString path = dialogs_.fileToSave(this, tr("Save what the charts show"), QDir{proposedFolder()}.filePath(ui::fileNameOf(tr("%1 trends").arg(household_->name())) % u'.' % kind), filter, kind);
    if (path.isEmpty()) return;
    const trends::SeenTrends seen = desk_->trends()->seen();
    const double width = std::max(leastPicture, static_cast<double>(desk_->trends()->width()));
    std::optional<QString> why;
    const auto write = [&](const QByteArray& bytes) { why = exchange::writeWholeFile(path, {bytes.constData(), static_cast<std::size_t>(bytes.size())}); };
    if (kind == QStringLiteral("png")) {
        QBuffer buffer;
        buffer.open(QIODevice::WriteOnly);
        if (paper::chartsImage(seen, theme_, width).save(&buffer, "PNG")) write(buffer.data());
        else why = tr("The picture is too large to be drawn.");
    } else if (kind == QStringLiteral("svg")) {
        write(paper::chartsSvg(seen, theme_, width));
    } else if (kind == QStringLiteral("pdf")) {
        why = paper::saveAsPdf(paper::chartsSheet(seen, household_->today(), version_), path);
    } else {
        why = exchange::writeWholeFile(path, trends::seenCsv(seen));
    }
    if (why) notices_->show(Notices::Kind::failure, *why, QStringLiteral("export"));
    else notices_->show(Notices::Kind::done, tr("What the charts show was written to %1.").arg(QDir::toNativeSeparators(path)), QStringLiteral("export"));
}

void MainWindow::printTrends()
{
    QPrinter printer;
    printer.setResolution(paper::dotsPerInch());
    printer.setPageSize(paper::usualPage());
    printer.setPageMargins(paper::pageMargins(), QPageLayout::Millimeter);
    printer.setDocName(tr("%1 trends").arg(household_->name()));
    if (!dialogs_.choosePrinter(this, tr("Print what the charts show"), printer)) return;
    printer.setResolution(paper::dotsPerInch()); // a printer may come with its own
    QPainter painter;
    if (!painter.begin(&printer)) {
        notices_->show(Notices::Kind::failure, tr("The printer does not take the pages."), QStringLiteral("export"));
        return;
    }
    const int pages = paper::paintSheet(paper::chartsSheet(desk_->trends()->seen(), household_->today(), version_), painter, printer);
    painter.end();
    notices_->show(Notices::Kind::done, tr("%n page(s) went to the printer.", nullptr, pages), QStringLiteral("export"));
}

}
