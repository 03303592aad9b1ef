#include "ui/paper/sheet_view.h"

#include "ui/common/field_edit.h"
#include "ui/common/panels.h"
#include "ui/paper/look.h"
#include "ui/paper/page_flow.h"

#include <QFormLayout>
#include <QPainter>
#include <QPrinter>
#include <QPushButton>

namespace tierloam::paper {

SheetView::SheetView(const household::Household& household, const QString& stack, const QString& version, ui::Dialogs& dialogs, const QString& folder, QWidget* parent)
    : PaperView{tr("Sheet of a stack"), dialogs, folder, parent}, logged_{household.logged()}, stacks_{new ui::FieldCombo{this}}
{
    setObjectName(QStringLiteral("sheetView"));
    inputs_ = {household.name(), {}, household.today(), household.journal(), household.reckoning(), nullptr, version};
    for (const QString& name : stacksOn(inputs_.journal->replay, inputs_.today, household.stackOrder())) stacks_->addItem(name);
    stacks_->setObjectName(QStringLiteral("sheetStack"));
    ui::keepWheelOut(stacks_);
    ui::setAccess(stacks_, tr("Stack"));
    choices()->addRow(tr("&Stack:"), stacks_);
    connect(addButton(tr("Save as &HTML…"), "saveHtml"), &QPushButton::clicked, this, [this] {
        const QString path = askWhere(tr("Save as HTML"), tr("HTML (*.html)"), QStringLiteral("html"));
        if (!path.isEmpty()) tell(path, saveAsHtml(*sheet_, path));
    });
    stacks_->setCurrentText(stack);
    connect(stacks_, &QComboBox::currentTextChanged, this, &SheetView::choose);
    choose(stacks_->currentText());
    stacks_->setFocus();
}

void SheetView::choose(const QString& stack)
{
    inputs_.stack = stack.toStdString();
    const auto logged = logged_ ? logged_->find(inputs_.stack) : store::LoggedDays::const_iterator{};
    inputs_.logged = logged_ && logged != logged_->end() ? &logged->second : nullptr;
    sheet_ = makeSheet(inputs_);
    setReady(sheet_.has_value());
    paintAgain();
}

void SheetView::paintPages(QPrinter& printer)
{
    QPainter painter;
    if (sheet_ && painter.begin(&printer)) paintSheet(*sheet_, painter, printer);
}

QPageSize SheetView::pageSize() const { return usualPage(); }
QString SheetView::proposedName() const { return QString::fromStdString(inputs_.stack); }
std::optional<QString> SheetView::savePdf(const QString& path) { return saveAsPdf(*sheet_, path); }

}
