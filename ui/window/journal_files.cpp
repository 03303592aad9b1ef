#include "ui/window/journal_files.h"

#include "core/exchange/journal_csv.h"
#include "core/exchange/refusal_text.h"
#include "ui/common/panels.h"

#include <QApplication>
#include <QClipboard>
#include <QDialogButtonBox>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace tierloam::window {

Imported readJournalFile(const QString& path, const journal::Entries& existing)
{
    Imported imported;
    QFile file{path};
    if (!file.open(QIODevice::ReadOnly)) {
        imported.why = QObject::tr("%1 cannot be read: %2").arg(QDir::toNativeSeparators(path), file.errorString());
        return imported;
    }
    const QByteArray bytes = file.readAll();
    if (file.error() != QFileDevice::NoError) {
        imported.why = QObject::tr("%1 cannot be read: %2").arg(QDir::toNativeSeparators(path), file.errorString());
        return imported;
    }
    const exchange::ReadJournal read = exchange::readJournal({bytes.constData(), static_cast<std::size_t>(bytes.size())}, existing);
    const QString name = QFileInfo{path}.fileName();
    for (const exchange::Fault& fault : read.faults) imported.faults << exchange::faultText(name, fault);
    if (!imported.faults.isEmpty()) return imported;
    imported.entries = read.edit.added;
    for (const journal::Warning& warning : read.warnings) imported.warnings << exchange::warningText(warning, read.effect.after);
    return imported;
}

FaultsView::FaultsView(const QString& file, const QStringList& faults, QWidget* parent) : QDialog{parent}
{
    setObjectName(QStringLiteral("faultsView"));
    setAttribute(Qt::WA_DeleteOnClose);
    setWindowTitle(tr("Nothing was imported"));
    auto* rows = new QVBoxLayout{this};
    rows->setContentsMargins(20, 18, 20, 14);
    rows->setSpacing(10);
    rows->addWidget(ui::makeLabel(tr("Nothing was added: %n row(s) of %1 at fault. Put right what is listed and import again.", nullptr,
                                     static_cast<int>(faults.size())).arg(QFileInfo{file}.fileName()),
                                  ui::TextRole::body, this, true));
    auto* text = new QPlainTextEdit{this};
    text->setObjectName(QStringLiteral("faultsText"));
    text->setReadOnly(true);
    text->setPlainText(faults.join(u'\n'));
    text->setTabChangesFocus(true);
    ui::setAccess(text, tr("Rows at fault"));
    rows->addWidget(text, 1);
    auto* buttons = new QDialogButtonBox{this};
    auto* copy = buttons->addButton(tr("Copy"), QDialogButtonBox::ActionRole);
    auto* close = buttons->addButton(tr("Close"), QDialogButtonBox::RejectRole);
    connect(copy, &QPushButton::clicked, this, [text] { QApplication::clipboard()->setText(text->toPlainText()); });
    connect(close, &QPushButton::clicked, this, &QDialog::close);
    rows->addWidget(buttons);
    resize(680, 380);
}

}
