#include "ui/paper/labels_view.h"

#include "ui/common/field_edit.h"
#include "ui/common/panels.h"
#include "ui/paper/look.h"

#include <QFormLayout>
#include <QListWidget>
#include <QPainter>
#include <QPrinter>
#include <QSpinBox>

namespace tierloam::paper {

LabelsView::LabelsView(const household::Household& household, const QString& version, ui::Dialogs& dialogs, const QString& folder, QWidget* parent)
    : PaperView{tr("Labels for trays"), dialogs, folder, parent}, labels_{labelsOf(household.journal()->replay, household.today(), household.stackOrder())}, program_{QStringLiteral("Tierloam ") % version},
      trays_{new QListWidget{this}}, sheets_{new ui::FieldCombo{this}}, first_{new QSpinBox{this}}
{
    setObjectName(QStringLiteral("labelsView"));
    for (const Label& label : labels_) {
        auto* item = new QListWidgetItem{tr("%1, tray %2, batch %3").arg(label.stack, QString::number(label.tray), QString::number(label.batch)), trays_};
        item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
        item->setCheckState(Qt::Checked);
    }
    trays_->setObjectName(QStringLiteral("labelTrays"));
    trays_->setMaximumHeight(5 * trays_->fontMetrics().height() + 12);
    ui::setAccess(trays_, tr("Trays"), tr("Each that is ticked gets a label"));
    const LabelSheet usual = usualLabelSheet();
    for (const LabelSheet& each : labelSheets()) {
        sheets_->addItem(nameOf(each));
        if (each == usual) sheets_->setCurrentIndex(sheets_->count() - 1);
    }
    sheets_->setObjectName(QStringLiteral("labelSheet"));
    ui::setAccess(sheets_, tr("Sheet"));
    first_->setObjectName(QStringLiteral("firstPlace"));
    first_->setButtonSymbols(QAbstractSpinBox::NoButtons); // typed, or by the arrow keys; its arrows do not grow with the letters
    first_->setRange(1, sheet().places());
    ui::setAccess(first_, tr("First free place on the sheet"), tr("Counted in the direction of reading; those before it stay empty"));
    for (QWidget* field : {static_cast<QWidget*>(sheets_), static_cast<QWidget*>(first_)}) ui::keepWheelOut(field);
    choices()->addRow(tr("&Trays:"), trays_);
    choices()->addRow(tr("S&heet:"), sheets_);
    choices()->addRow(tr("&First free place:"), first_);
    connect(trays_, &QListWidget::itemChanged, this, &LabelsView::chosenAnew);
    connect(sheets_, &QComboBox::currentIndexChanged, this, [this] {
        first_->setMaximum(sheet().places());
        chosenAnew();
    });
    connect(first_, &QSpinBox::valueChanged, this, &LabelsView::chosenAnew);
    chosenAnew();
    trays_->setFocus();
}

std::vector<Label> LabelsView::chosen() const
{
    std::vector<Label> ticked;
    for (int row = 0; row < trays_->count(); ++row)
        if (trays_->item(row)->checkState() == Qt::Checked) ticked.push_back(labels_[static_cast<std::size_t>(row)]);
    return ticked;
}

LabelSheet LabelsView::sheet() const { return labelSheets()[static_cast<std::size_t>(std::max(0, sheets_->currentIndex()))]; }
int LabelsView::skip() const { return first_->value() - 1; }

void LabelsView::chosenAnew()
{
    setReady(!chosen().empty());
    paintAgain();
}

void LabelsView::paintPages(QPrinter& printer)
{
    QPainter painter;
    if (painter.begin(&printer)) paintLabels(chosen(), sheet(), skip(), painter, printer);
}

QPageSize LabelsView::pageSize() const { return QPageSize{sheet().letter ? QPageSize::Letter : QPageSize::A4}; }
QString LabelsView::proposedName() const { return tr("Labels"); }
std::optional<QString> LabelsView::savePdf(const QString& path) { return saveLabels(chosen(), sheet(), skip(), program_, path); }

}
