#include "ui/paper/paper_view.h"

#include "ui/common/file_name.h"
#include "ui/common/panels.h"
#include "ui/paper/look.h"
#include "ui/paper/page_flow.h"

#include <QAbstractScrollArea>
#include <QDir>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPrintPreviewWidget>
#include <QPrinter>
#include <QPushButton>
#include <QScreen>
#include <QScrollBar>
#include <QVBoxLayout>

#include <algorithm>

namespace tierloam::paper {

PaperView::PaperView(const QString& title, ui::Dialogs& dialogs, QString folder, QWidget* parent)
    : ui::View{parent}, dialogs_{dialogs}, folder_{std::move(folder)}, choices_{new QFormLayout}, printer_{std::make_unique<QPrinter>(QPrinter::ScreenResolution)}
{
    setAttribute(Qt::WA_DeleteOnClose);
    setWindowTitle(title);
    auto* rows = new QVBoxLayout{this};
    rows->setContentsMargins(20, 18, 20, 14);
    rows->setSpacing(10);
    rows->addWidget(ui::makeLabel(title, ui::TextRole::title, this));
    choices_->setRowWrapPolicy(QFormLayout::WrapLongRows);
    rows->addLayout(choices_);
    preview_ = new QPrintPreviewWidget{printer_.get(), this};
    preview_->setMinimumSize(240, 180);
    ui::setAccess(preview_, tr("The pages"));
    rows->addWidget(preview_, 1);
    result_ = ui::makeLabel({}, ui::TextRole::body, this, true);
    result_->setObjectName(QStringLiteral("paperResult"));
    result_->hide();
    rows->addWidget(result_);
    row_ = new QHBoxLayout;
    rows->addLayout(row_);
    connect(addButton(tr("&Print…"), "printPaper"), &QPushButton::clicked, this, &PaperView::print);
    connect(addButton(tr("Save as P&DF…"), "savePdf"), &QPushButton::clicked, this, [this] {
        const QString path = askWhere(tr("Save as PDF"), tr("PDF (*.pdf)"), QStringLiteral("pdf"));
        if (!path.isEmpty()) tell(path, savePdf(path));
    });
    row_->addStretch(1);
    auto* close = ui::makeButton(tr("Close"), ui::Tone::plain, this);
    close->setAutoDefault(false); // Enter in a field is not to close the view
    connect(close, &QPushButton::clicked, this, &QDialog::close);
    row_->addWidget(close);
    connect(preview_, &QPrintPreviewWidget::paintRequested, this, [this](QPrinter* printer) {
        fit(*printer);
        paintPages(*printer);
    });
    resize(QSize{std::max(720, fontMetrics().averageCharWidth() * 80), std::max(820, fontMetrics().height() * 34)}.boundedTo(screen()->availableSize()));
}

PaperView::~PaperView()
{
    delete preview_; // it paints on the printer
}

QPushButton* PaperView::addButton(const QString& text, const char* name)
{
    auto* button = ui::makeButton(text, ui::Tone::plain, this);
    button->setObjectName(QString::fromLatin1(name));
    button->setAutoDefault(false);
    row_->insertWidget(static_cast<int>(buttons_.size()), button);
    buttons_ << button;
    return button;
}

void PaperView::setReady(bool ready)
{
    for (QPushButton* button : buttons_) button->setEnabled(ready);
}

void PaperView::fit(QPrinter& printer) const
{
    printer.setResolution(dotsPerInch());
    printer.setFullPage(wholePage());
    printer.setPageSize(pageSize());
    printer.setPageMargins(wholePage() ? QMarginsF{} : pageMargins(), QPageLayout::Millimeter);
}

void PaperView::paintAgain()
{
    result_->hide();
    preview_->updatePreview();
    preview_->fitToWidth();
}

void PaperView::showEvent(QShowEvent* event)
{
    ui::View::showEvent(event);
    // What was fitted before it had its size stands somewhere in its middle.
    preview_->fitToWidth();
    for (auto* area : preview_->findChildren<QAbstractScrollArea*>()) area->verticalScrollBar()->setValue(area->verticalScrollBar()->minimum());
}

QString PaperView::resultText() const { return result_->isHidden() ? QString{} : result_->text(); }

QString PaperView::askWhere(const QString& title, const QString& kinds, const QString& suffix)
{
    return dialogs_.fileToSave(this, title, folder_ % u'/' % ui::fileNameOf(proposedName()) % u'.' % suffix, kinds, suffix);
}

void PaperView::tell(const QString& path, const std::optional<QString>& why)
{
    result_->setText(why ? *why : tr("Written to %1.").arg(QDir::toNativeSeparators(path)));
    result_->show();
}

void PaperView::print()
{
    QPrinter printer{QPrinter::ScreenResolution};
    printer.setDocName(proposedName());
    fit(printer);
    if (!dialogs_.choosePrinter(this, windowTitle(), printer)) return;
    printer.setResolution(dotsPerInch()); // a printer that was chosen brings its own
    paintPages(printer);
    const bool failed = printer.printerState() == QPrinter::Error || printer.printerState() == QPrinter::Aborted;
    result_->setText(failed ? tr("The printer took nothing.") : tr("Handed to the printer."));
    result_->show();
}

}
