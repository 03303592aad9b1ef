#include "core/exchange/journal_csv.h"
#include "ui/exchange/journal_sheet_view.h"
#include "ui/exchange/readings_view.h"
#include "ui/window/main_window.h"
#include "ui/window/notices.h"

#include <QDir>
#include <QFileInfo>
#include <QPointer>

/// What comes in from tables and goes out as one.
namespace tierloam::window {

void MainWindow::importFile(const QString& csv)
{
    auto* view = new exchange_view::JournalSheetView{csv, household_.get(), [clock = clock_] { return clock->today(); }, dialogs_, settings_, this};
    connect(view, &exchange_view::JournalSheetView::importWanted, this,
            [this, csv, view](const journal::Entries& entries, const QStringList& warnings) { addImported(csv, entries, warnings, view); });
    connect(view, &exchange_view::JournalSheetView::readingsWanted, this, [this, csv] { importReadings(csv); });
    view->show();
}

void MainWindow::addImported(const QString& csv, const journal::Entries& entries, const QStringList& warnings, exchange_view::JournalSheetView* view)
{
    const QFileInfo file{csv};
    if (!household_) {
        const QString path = dialogs_.fileToSave(this, tr("New household for the imported journal"),
                                                 QDir{proposedFolder()}.filePath(file.completeBaseName() % QStringLiteral(".tierloam")),
                                                 tr("Households (*.tierloam)"), QStringLiteral("tierloam"));
        if (path.isEmpty() || !createFile(path)) {
            view->refused(tr("Nothing was imported: there is no household yet that could hold it."));
            return;
        }
    }
    const int count = static_cast<int>(entries.size());
    const household::Ticket ticket = household_->importAll(entries, file.fileName(), tr("Import %n entry(ies)", nullptr, count));
    for (const QString& warning : warnings) notices_->show(Notices::Kind::notice, warning);
    auto* once = new QObject{household_.get()};
    connect(household_.get(), &household::Household::recorded, once, [this, ticket, once, count, file, view = QPointer{view}](household::Ticket done) {
        if (done != ticket) return;
        notices_->show(Notices::Kind::done, tr("%n entry(ies) imported from %1.", nullptr, count).arg(file.fileName()), QStringLiteral("import"));
        if (view) view->written();
        once->deleteLater();
    });
    connect(household_.get(), &household::Household::failed, once, [ticket, once, view = QPointer{view}](household::Ticket failed, const QString& why) {
        if (failed != ticket) return;
        if (view) view->refused(why);
        once->deleteLater();
    });
}

void MainWindow::importReadings(const QString& csv)
{
    if (!household_) {
        notices_->show(Notices::Kind::notice, tr("Readings of a logger belong to a stack. Open a household or start one first."), QStringLiteral("import"));
        return;
    }
    auto* view = new exchange_view::ReadingsView{csv, *household_, dialogs_, this};
    connect(view, &exchange_view::ReadingsView::imported, this, [this](const QString& words) { notices_->show(Notices::Kind::done, words, QStringLiteral("import")); });
    view->show();
}

bool MainWindow::exportFile(const QString& csv)
{
    if (!household_) return false;
    household_->finishWrites(); // the file is to hold what has been recorded, all of it
    if (const auto why = exchange::exportJournal(csv, household_->journal()->entries)) {
        notices_->show(Notices::Kind::failure, *why, QStringLiteral("export"));
        return false;
    }
    notices_->show(Notices::Kind::done, tr("The journal was written to %1.").arg(QDir::toNativeSeparators(csv)), QStringLiteral("export"));
    return true;
}

}
