#include "ui/journal/journal_page.h"

#include "ui/common/actions.h"
#include "ui/common/menu_letters.h"
#include "ui/common/panels.h"
#include "ui/common/row_table.h"
#include "ui/common/seams.h"
#include "ui/forms/entry_editor.h"
#include "ui/journal/column_room.h"
#include "ui/journal/entry_series.h"
#include "ui/journal/journal_filter.h"
#include "ui/journal/journal_model.h"
#include "ui/journal/picture_strip.h"

#include <QAction>
#include <QHeaderView>
#include <QItemSelection>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>
#include <array>
#include <unordered_set>

namespace tierloam::journal_page {

namespace {

constexpr auto hiddenKey = "journal/hiddenColumns";
constexpr std::array<const char*, JournalModel::columns> columnNames{"when", "stack", "action", "details", "tray", "note"}; ///< as kept in the settings

}

JournalPage::JournalPage(household::Household& household, const ui::Theme& theme, ui::Settings& settings, QWidget* parent)
    : QWidget{parent}, household_{household}, theme_{theme}, settings_{settings}, model_{new JournalModel{this}}, filter_{new JournalFilter{model_, this}},
      head_{new ui::PageHead{this}}
{
    setObjectName(QStringLiteral("journalPage"));
    setProperty("page", true);
    ui::setAccess(this, tr("Journal"));
    auto* rows = new QVBoxLayout{this};
    rows->setContentsMargins(18, 14, 18, 14);
    rows->setSpacing(10);
    head_->setTitle(tr("Journal"));
    rows->addWidget(head_);
    buildTable();
    buildColumns();
    buildFilters(rows);
    rows->addWidget(table_, 3);
    nothing_ = ui::makeLabel({}, ui::TextRole::muted, this, true);
    nothing_->setAlignment(Qt::AlignHCenter | Qt::AlignTop);
    nothing_->setContentsMargins(20, 40, 20, 0);
    rows->addWidget(nothing_, 3);
    strip_ = new PictureStrip{household_, this};
    connect(strip_, &PictureStrip::wanted, this, &JournalPage::photosWanted);
    rows->addWidget(strip_);
    editorBox_ = new QWidget{this};
    auto* editorRows = new QVBoxLayout{editorBox_};
    editorRows->setContentsMargins(0, 0, 0, 0);
    editorBox_->hide();
    rows->addWidget(editorBox_, 4);

    connect(&household_, &household::Household::changed, this, [this] {
        stale_ = true;
        if (isVisible()) takeJournal();
    });
    connect(&theme_, &ui::Theme::changed, this, [this] { room_->forget(); stale_ = true; if (isVisible()) takeJournal(); });
    setFocusProxy(table_); // where its keys work
    tellCount();           // the journal is taken when the page is first shown
}

void JournalPage::buildTable()
{
    table_ = new QTableView{this};
    table_->setObjectName(QStringLiteral("journalTable"));
    table_->setModel(filter_);
    ui::setUpRowTable(*table_);
    table_->sortByColumn(JournalModel::when, Qt::DescendingOrder);
    table_->setSelectionMode(QAbstractItemView::ExtendedSelection);
    table_->horizontalHeader()->setSectionsMovable(true);
    room_ = new ColumnRoom{*table_, *model_};
    ui::setAccess(table_, tr("Journal"), tr("Enter edits the chosen entry, Delete takes it out"));
    table_->installEventFilter(this);
    connect(table_, &QTableView::doubleClicked, this, &JournalPage::editChosen);
    connect(table_->selectionModel(), &QItemSelectionModel::selectionChanged, this, [this] { tellCount(); });
}

void JournalPage::buildColumns()
{
    columns_ = new QMenu{tr("Columns"), this};
    ui::keepLettersApart(columns_);
    const QStringList hidden = settings_.value(QString::fromLatin1(hiddenKey)).toStringList();
    for (int column = 0; column < JournalModel::columns; ++column) {
        QAction* shown = columns_->addAction(model_->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString());
        shown->setCheckable(true);
        const QString name = QString::fromLatin1(columnNames[static_cast<std::size_t>(column)]);
        shown->setObjectName(name);
        shown->setChecked(!hidden.contains(name));
        shown->setEnabled(column != JournalModel::when); // a line without its day says little
        table_->setColumnHidden(column, !shown->isChecked());
        connect(shown, &QAction::toggled, this, [this, column](bool on) {
            table_->setColumnHidden(column, !on);
            room_->refit();
            QStringList kept;
            for (const QAction* each : columns_->actions()) if (!each->isChecked()) kept << each->objectName();
            settings_.setValue(QString::fromLatin1(hiddenKey), kept);
        });
    }
}

void JournalPage::chooseColumns() { columns_->popup(columnsButton_->mapToGlobal(QPoint{0, columnsButton_->height()})); }

void JournalPage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    if (stale_) takeJournal();
}

void JournalPage::takeJournal()
{
    stale_ = false;
    taking_ = true; // half-way the table is empty: hiding it then would cost it the focus
    const std::vector<journal::EntryId> kept = chosen();
    const QModelIndex current = filter_->mapToSource(table_->currentIndex());
    const int column = std::max(0, current.column());
    const journal::Entry* was = model_->entryAt(current.row());
    const journal::EntryId currentId = was ? was->id : journal::EntryId::none;
    const int oldPlace = table_->currentIndex().row();
    model_->setJournal(household_.journal());
    fillStacks();
    if (const QItemSelection rows = rowsOf(kept); !rows.isEmpty()) table_->selectionModel()->select(rows, QItemSelectionModel::Select | QItemSelectionModel::Rows);
    const int row = currentId == journal::EntryId::none ? -1 : model_->rowOf(currentId);
    QModelIndex place = row < 0 ? QModelIndex{} : filter_->mapFromSource(model_->index(row, column));
    // What was chosen is gone (deleted): the row that moved up takes its place, so that several can go one after the other.
    if (!place.isValid() && filter_->rowCount() > 0) place = filter_->index(std::clamp(oldPlace, 0, filter_->rowCount() - 1), column);
    if (place.isValid()) {
        const bool any = table_->selectionModel()->hasSelection();
        table_->selectionModel()->setCurrentIndex(place, any ? QItemSelectionModel::NoUpdate : QItemSelectionModel::Select | QItemSelectionModel::Rows);
    }
    table_->verticalHeader()->setDefaultSectionSize(table_->fontMetrics().height() + theme_.px(12));
    if (editor_ && !editor_->touched() && model_->rowOf(editor_->entry()) < 0) closeEditor(); // what was typed stays: the entry may come back
    taking_ = false;
    tellCount();
    room_->refit();
}

void JournalPage::tellCount()
{
    if (taking_) return;
    const int all = model_->rowCount(), shown = filter_->rowCount();
    const int picked = static_cast<int>(table_->selectionModel()->selectedRows().size());
    QString line = shown == all ? tr("%n entry(ies)", nullptr, all) : tr("%1 of %n entry(ies)", nullptr, all).arg(shown);
    if (picked > 1) line = tr("%1, %2 chosen").arg(line).arg(picked);
    head_->setLine(line);
    edit_->setEnabled(picked == 1 && !household_.readOnly());
    photos_->setEnabled(picked == 1);
    together_->setEnabled(picked > 1 && !household_.readOnly());
    delete_->setEnabled(picked > 0 && !household_.readOnly());
    showAll_->setVisible(filter_->anySet());
    more_->setEnabled(!household_.readOnly());
    strip_->follow(picked == 1 ? chosen().front() : journal::EntryId::none);
    giveRoom();
    nothing_->setVisible(shown == 0);
    nothing_->setText(all == 0 ? tr("Here stands every feeding, look and harvest, newest first, once the first one is recorded.")
                               : tr("No entry is like that. %1 shows all again.").arg(ui::keysText(ui::ActionId::clearFilters)));
}

std::vector<journal::EntryId> JournalPage::chosen() const
{
    std::vector<journal::EntryId> ids;
    for (const QModelIndex& index : table_->selectionModel()->selectedRows()) {
        if (const journal::Entry* entry = model_->entryAt(filter_->mapToSource(index).row())) ids.push_back(entry->id);
    }
    return ids;
}

/// In one piece for each run of rows: thousands that are chosen row by row hold the window up.
QItemSelection JournalPage::rowsOf(const std::vector<journal::EntryId>& ids) const
{
    const std::unordered_set<journal::EntryId> wanted{ids.begin(), ids.end()};
    QItemSelection rows;
    if (wanted.empty()) return rows;
    int first = -1;
    const int count = filter_->rowCount();
    for (int row = 0; row <= count; ++row) {
        const journal::Entry* entry = row < count ? model_->entryAt(filter_->mapToSource(filter_->index(row, 0)).row()) : nullptr;
        const bool is = entry != nullptr && entry->id != journal::EntryId::none && wanted.contains(entry->id);
        if (is && first < 0) first = row;
        if (is || first < 0) continue;
        rows.append(QItemSelectionRange{filter_->index(first, 0), filter_->index(row - 1, 0)});
        first = -1;
    }
    return rows;
}

void JournalPage::choose(journal::EntryId id)
{
    if (stale_) takeJournal();
    const int row = model_->rowOf(id);
    if (row < 0) return;
    QModelIndex index = filter_->mapFromSource(model_->index(row, 0));
    if (!index.isValid()) {
        showAll();
        index = filter_->mapFromSource(model_->index(row, 0));
    }
    table_->selectionModel()->setCurrentIndex(index, QItemSelectionModel::ClearAndSelect | QItemSelectionModel::Rows);
    table_->scrollTo(index);
}

/// In a small window with large letters title and filters, at the largest the table too, give way to the form, whose cautions and buttons need their place.
void JournalPage::giveRoom()
{
    const bool tight = (editor_ || series_) && height() < theme_.px(420);
    head_->setHidden(tight);
    filters_->setVisible(model_->rowCount() > 0 && !tight && !(series_ && height() < theme_.px(560)));
    table_->setVisible(filter_->rowCount() > 0 && !(tight && height() < theme_.px(300))); // the form names the entry
}

void JournalPage::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    giveRoom();
}

}
