#include "ui/window/bin_view.h"

#include "ui/common/dates.h"
#include "ui/common/panels.h"
#include "ui/journal/entry_words.h"

#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QLocale>
#include <QPointer>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace tierloam::window {

BinView::BinView(household::Household& household, QWidget* parent) : ui::View{parent}, household_{household}
{
    setObjectName(QStringLiteral("binView"));
    setAttribute(Qt::WA_DeleteOnClose);
    setWindowTitle(tr("Deleted entries"));
    auto* rows = new QVBoxLayout{this};
    rows->setContentsMargins(20, 18, 20, 14);
    rows->setSpacing(10);
    rows->addWidget(ui::makeLabel(tr("Deleted entries"), ui::TextRole::title, this));
    line_ = ui::makeLabel(tr("Looking…"), ui::TextRole::body, this, true);
    line_->setObjectName(QStringLiteral("binLine"));
    rows->addWidget(line_);
    table_ = new QTreeWidget{this};
    table_->setObjectName(QStringLiteral("binTable"));
    table_->setHeaderLabels({tr("Date"), tr("Stack"), tr("What was done"), tr("Details"), tr("Note"), tr("Deleted on")});
    table_->setRootIsDecorated(false);
    table_->setSelectionMode(QAbstractItemView::ExtendedSelection);
    table_->setAllColumnsShowFocus(true);
    ui::setAccess(table_, tr("Deleted entries"), tr("Choose those to be put back"));
    rows->addWidget(table_, 1);
    auto* buttons = new QDialogButtonBox{this};
    putBack_ = buttons->addButton(tr("&Put back"), QDialogButtonBox::ActionRole);
    putBack_->setObjectName(QStringLiteral("putBack"));
    auto* close = buttons->addButton(tr("Close"), QDialogButtonBox::RejectRole);
    rows->addWidget(buttons);
    connect(putBack_, &QPushButton::clicked, this, &BinView::putBackChosen);
    connect(table_, &QTreeWidget::itemActivated, this, &BinView::putBackChosen);
    connect(close, &QPushButton::clicked, this, &QDialog::close);
    connect(table_, &QTreeWidget::itemSelectionChanged, this, &BinView::syncButton);
    connect(&household_, &QObject::destroyed, this, &QDialog::close);
    connect(&household_, &household::Household::changed, this, [this] {
        if (household_.journal()->pending.empty()) list();
    });
    connect(&household_, &household::Household::failed, this, [this](household::Ticket ticket, const QString& why) {
        if (ticket == ticket_) line_->setText(why);
    });
    resize(820, 420);
    syncButton();
    list();
}

void BinView::list()
{
    household_.listDeleted([view = QPointer{this}](const std::vector<store::DeletedEntry>& deleted) {
        if (view) view->fill(deleted);
    });
}

void BinView::fill(const std::vector<store::DeletedEntry>& deleted)
{
    deleted_ = deleted;
    table_->clear();
    for (const auto& [entry, when] : deleted_)
        new QTreeWidgetItem{table_, {ui::fullDay(entry.date.day), QString::fromStdString(entry.stack), journal_page::actionWord(entry.action), journal_page::detailWords(entry),
                                     QString::fromStdString(entry.note), QLocale{}.toString(when.toLocalTime(), QLocale::ShortFormat)}};
    for (int column = 0; column < table_->columnCount(); ++column) table_->resizeColumnToContents(column);
    line_->setText(deleted_.empty() ? tr("Nothing has been deleted.")
                                    : tr("%n entry(ies) deleted. What is put back takes its old place, and that can be undone.", nullptr, static_cast<int>(deleted_.size())));
    syncButton();
}

void BinView::syncButton()
{
    putBack_->setEnabled(!table_->selectedItems().empty() && !household_.readOnly());
}

void BinView::putBackChosen()
{
    journal::Edit edit;
    const auto chosen = table_->selectedItems();
    for (QTreeWidgetItem* item : chosen) edit.added.push_back(deleted_.at(static_cast<std::size_t>(table_->indexOfTopLevelItem(item))).entry);
    if (edit.added.empty() || household_.readOnly()) return;
    if (const QString why = household_.refusalOf(edit); !why.isEmpty()) {
        line_->setText(why);
        return;
    }
    ticket_ = household_.apply(edit, tr("Put back %n entry(ies)", nullptr, static_cast<int>(edit.added.size())));
}

}
