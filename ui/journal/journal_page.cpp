#include "ui/journal/journal_page.h"

#include "ui/common/actions.h"
#include "ui/common/field_edit.h"
#include "ui/common/flow_layout.h"
#include "ui/common/formats.h"
#include "ui/common/menu_letters.h"
#include "ui/common/panels.h"
#include "ui/common/reading_order.h"
#include "ui/common/row_table.h"
#include "ui/common/seams.h"
#include "ui/forms/entry_editor.h"
#include "ui/journal/bulk_view.h"
#include "ui/journal/column_room.h"
#include "ui/journal/entry_series.h"
#include "ui/journal/entry_words.h"
#include "ui/journal/journal_filter.h"
#include "ui/journal/journal_model.h"
#include "ui/journal/picture_strip.h"

#include <QAction>
#include <QComboBox>
#include <QHeaderView>
#include <QItemSelection>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>
#include <array>
#include <unordered_set>

namespace tierloam::journal_page {

namespace {

QString known(const std::string& text)
{
    return QString::fromStdString(text);
}

constexpr auto hiddenKey = "journal/hiddenColumns";
constexpr std::array<const char*, JournalModel::columns> columnNames{"when", "stack", "action", "details", "tray", "note"}; ///< as kept in the settings

/// Fills a combo box anew and keeps what was chosen in it.
void refill(QComboBox* box, const QList<std::pair<QString, QVariant>>& items)
{
    const QVariant chosen = box->currentData();
    const QSignalBlocker quiet{box};
    box->clear();
    for (const auto& [text, value] : items) box->addItem(text, value);
    box->setCurrentIndex(std::max(0, box->findData(chosen)));
}

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

void JournalPage::buildFilters(QVBoxLayout* rows)
{
    QAction* find = ui::makeAction(ui::ActionId::find, this);
    QAction* edit = ui::makeAction(ui::ActionId::editEntry, this);
    QAction* remove = ui::makeAction(ui::ActionId::deleteEntry, this);
    QAction* all = ui::makeAction(ui::ActionId::clearFilters, this);
    addAction(find);
    // Return, Del and Esc mean something else in the editor below the table, so they work in the table and the filters only.
    QAction* together = ui::makeAction(ui::ActionId::editTogether, this);
    QAction* photos = ui::makeAction(ui::ActionId::photos, this);
    QAction* duplicate = ui::makeAction(ui::ActionId::duplicateEntry, this);
    QAction* inRow = ui::makeAction(ui::ActionId::recordInRow, this);
    QAction* columns = ui::makeAction(ui::ActionId::chooseColumns, this);
    table_->addActions({edit, duplicate, together, photos, remove, all});
    addActions({inRow, columns});
    connect(duplicate, &QAction::triggered, this, &JournalPage::duplicateChosen);
    connect(inRow, &QAction::triggered, this, &JournalPage::recordInRow);
    connect(columns, &QAction::triggered, this, &JournalPage::chooseColumns);
    connect(photos, &QAction::triggered, this, &JournalPage::askForPhotos);
    connect(together, &QAction::triggered, this, &JournalPage::changeTogether);
    connect(find, &QAction::triggered, this, &JournalPage::find);
    connect(all, &QAction::triggered, this, &JournalPage::showAll);
    connect(edit, &QAction::triggered, this, &JournalPage::editChosen);
    connect(remove, &QAction::triggered, this, &JournalPage::deleteChosen);

    filters_ = new QWidget{this};
    auto* flow = new ui::FlowLayout{filters_, 8};
    filters_->addAction(all);
    words_ = new ui::FieldEdit{filters_};
    words_->setObjectName(QStringLiteral("findField"));
    words_->setPlaceholderText(tr("Find (%1)").arg(ui::keysText(ui::ActionId::find)));
    words_->setClearButtonEnabled(true);
    words_->setMinimumWidth(190);
    words_->installEventFilter(this);
    ui::setAccess(words_, tr("Find in the journal"), tr("All words must be in the row"));
    flow->addWidget(words_);
    const auto combo = [&](const QString& name, const QString& object) {
        auto* box = new ui::FieldCombo{filters_};
        box->setObjectName(object);
        box->setSizeAdjustPolicy(QComboBox::AdjustToContents);
        const auto narrow = [this, box] { box->setMaximumWidth(theme_.px(180)); }; // two in a line of a small window in large letters
        narrow();
        connect(&theme_, &ui::Theme::changed, box, narrow);
        ui::setAccess(box, name);
        flow->addWidget(box);
        return box;
    };
    stack_ = combo(tr("Stack"), QStringLiteral("stackFilter"));
    action_ = combo(tr("What was done"), QStringLiteral("actionFilter"));
    period_ = combo(tr("Period"), QStringLiteral("periodFilter"));
    showAll_ = ui::makeButton(ui::actionName(ui::ActionId::clearFilters), ui::Tone::plain, filters_);
    showAll_->setToolTip(all->toolTip());
    showAll_->setObjectName(QStringLiteral("showAll"));
    flow->addWidget(showAll_);
    columnsButton_ = ui::makeButton(ui::actionText(ui::ActionId::chooseColumns), ui::Tone::plain, filters_);
    columnsButton_->setToolTip(columns->toolTip());
    columnsButton_->setObjectName(QStringLiteral("columnsButton"));
    connect(columnsButton_, &QPushButton::clicked, this, &JournalPage::chooseColumns);
    flow->addWidget(columnsButton_);
    more_ = ui::makeButton(ui::actionText(ui::ActionId::recordInRow), ui::Tone::plain, filters_);
    more_->setObjectName(QStringLiteral("recordInRowButton"));
    more_->setToolTip(inRow->toolTip());
    ui::setAccess(more_, tr("Record several entries one after the other"));
    connect(more_, &QPushButton::clicked, this, &JournalPage::recordInRow);
    flow->addWidget(more_); // here it wraps; the head would widen the window
    rows->addWidget(filters_);

    edit_ = ui::makeButton(ui::actionText(ui::ActionId::editEntry), ui::Tone::moss, this);
    edit_->setObjectName(QStringLiteral("editButton"));
    edit_->setToolTip(edit->toolTip());
    ui::setAccess(edit_, tr("Edit the chosen entry"));
    delete_ = ui::makeButton(ui::actionText(ui::ActionId::deleteEntry), ui::Tone::plain, this);
    delete_->setObjectName(QStringLiteral("deleteButton"));
    delete_->setToolTip(remove->toolTip());
    ui::setAccess(delete_, tr("Take the chosen entries out of the journal"));
    together_ = ui::makeButton(ui::actionText(ui::ActionId::editTogether), ui::Tone::plain, this);
    together_->setObjectName(QStringLiteral("togetherButton"));
    together_->setToolTip(together->toolTip());
    ui::setAccess(together_, tr("Change the chosen entries together"));
    connect(together_, &QPushButton::clicked, this, &JournalPage::changeTogether);
    photos_ = ui::makeButton(ui::actionText(ui::ActionId::photos), ui::Tone::plain, this);
    photos_->setObjectName(QStringLiteral("photosButton"));
    photos_->setToolTip(photos->toolTip());
    ui::setAccess(photos_, tr("Pictures of the chosen entry"));
    connect(photos_, &QPushButton::clicked, this, &JournalPage::askForPhotos);
    head_->addButton(edit_);
    head_->addButton(together_);
    head_->addButton(photos_);
    head_->addButton(delete_);

    connect(words_, &QLineEdit::textChanged, this, [this](const QString& text) { filter_->setWords(text); tellCount(); });
    connect(stack_, &QComboBox::currentIndexChanged, this, [this] { filter_->setStack(stack_->currentData().toString()); tellCount(); });
    connect(action_, &QComboBox::currentIndexChanged, this, [this] {
        const QVariant chosen = action_->currentData();
        filter_->setAction(chosen.isValid() ? std::optional{static_cast<std::size_t>(chosen.toULongLong())} : std::nullopt);
        tellCount();
    });
    connect(period_, &QComboBox::currentIndexChanged, this, [this] { applyPeriod(); });
    connect(showAll_, &QPushButton::clicked, this, &JournalPage::showAll);
    connect(edit_, &QPushButton::clicked, this, &JournalPage::editChosen);
    connect(delete_, &QPushButton::clicked, this, &JournalPage::deleteChosen);

    refill(period_, {{tr("All days"), {}}, {tr("Last 30 days"), 30}, {tr("Last 90 days"), 90}, {tr("Last year"), 365}, {tr("Last 2 years"), 730}});
    QList<std::pair<QString, QVariant>> actions{{tr("All actions"), {}}};
    for (std::size_t i = 0; i < std::variant_size_v<journal::Action>; ++i) actions.append({actionWord(i), QVariant::fromValue(static_cast<qulonglong>(i))});
    refill(action_, actions);
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
    if (editor_ && model_->rowOf(editor_->entry()) < 0) closeEditor();
    taking_ = false;
    tellCount();
    room_->refit();
}

void JournalPage::fillStacks()
{
    QList<std::pair<QString, QVariant>> items{{tr("All stacks"), {}}};
    for (const journal::StackHistory& stack : household::inOrder(household_.journal()->replay.stacks, household_.stackOrder())) items.append({known(stack.name), known(stack.name)});
    refill(stack_, items);
}

void JournalPage::applyPeriod()
{
    const int days = period_->currentData().toInt();
    filter_->setSince(days > 0 ? std::optional{household_.today() - std::chrono::days{days}} : std::nullopt);
    tellCount();
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

bool JournalPage::editing() const
{
    return (editor_ && editor_->touched()) || (series_ && series_->touched());
}

void JournalPage::find()
{
    words_->setFocus(Qt::ShortcutFocusReason);
    words_->selectAll();
}

void JournalPage::showAll()
{
    if (!editing()) closeEditor();
    words_->clear();
    for (QComboBox* box : {stack_, action_, period_}) box->setCurrentIndex(0);
    if (table_->isVisible()) table_->setFocus();
}

void JournalPage::editChosen()
{
    const auto ids = chosen();
    if (ids.size() != 1 || ids.front() <= journal::EntryId::none || household_.readOnly()) return;
    if (editor_ && editor_->entry() == ids.front()) {
        if (const QList<QWidget*> stops = ui::readingOrder(editor_); !stops.isEmpty()) stops.front()->setFocus(Qt::ShortcutFocusReason);
        return;
    }
    if (keepsTyped()) return;
    closeEditor();
    editor_ = new forms::EntryEditor{household_, ids.front(), editorBox_};
    editor_->setObjectName(QStringLiteral("entryEditor"));
    editorBox_->layout()->addWidget(editor_);
    editorBox_->setMaximumWidth(theme_.px(720)); // a line of the form is not read across the whole window
    editorBox_->show();
    giveRoom();
    connect(editor_, &forms::EntryEditor::finished, this, [this] {
        closeEditor();
        table_->setFocus();
    });
    // Once the editor has taken its room; the index is asked for then, since the journal may have been taken anew meanwhile.
    QMetaObject::invokeMethod(table_, [this] { table_->scrollTo(table_->currentIndex()); }, Qt::QueuedConnection);
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

/// Says so when something typed below would be lost.
bool JournalPage::keepsTyped()
{
    if (!editing()) return false;
    Q_EMIT refused(tr("The entry below has been changed and is not saved. Save it or give it up first."));
    return true;
}

void JournalPage::duplicateChosen()
{
    const auto ids = chosen();
    if (ids.size() != 1 || household_.readOnly() || keepsTyped()) return;
    const journal::Entry* entry = model_->entryAt(model_->rowOf(ids.front()));
    if (entry) showSeries(new EntrySeries{household_, *entry, editorBox_});
}

void JournalPage::recordInRow()
{
    if (household_.readOnly() || keepsTyped()) return;
    journal::Entry like;
    const auto ids = chosen();
    if (const journal::Entry* entry = ids.size() == 1 ? model_->entryAt(model_->rowOf(ids.front())) : nullptr) like = *entry;
    else like.action = journal::Feed{};
    const QString stack = stack_->currentData().isValid() ? stack_->currentData().toString() : known(like.stack);
    showSeries(new EntrySeries{household_, stack, forms::kindOf(like), editorBox_});
}

void JournalPage::showSeries(EntrySeries* series)
{
    closeEditor();
    series_ = series;
    editorBox_->layout()->addWidget(series);
    editorBox_->setMaximumWidth(theme_.px(720));
    editorBox_->show();
    giveRoom();
    tellCount();
    connect(series, &EntrySeries::recorded, this, [this](qint64 id) {
        stale_ = true; // the table still has it as being saved
        choose(journal::EntryId{id});
    });
    connect(series, &EntrySeries::finished, this, [this] {
        closeEditor();
        tellCount();
        table_->setFocus();
    });
}

void JournalPage::closeEditor()
{
    if (!editor_ && !series_) return;
    editor_ = nullptr;
    series_ = nullptr;
    editorBox_->hide();
    giveRoom();
    while (QLayoutItem* item = editorBox_->layout()->takeAt(0)) {
        item->widget()->hide();
        item->widget()->deleteLater(); // it may be the sender
        delete item;
    }
}

void JournalPage::changeTogether()
{
    auto ids = chosen();
    std::erase_if(ids, [](journal::EntryId id) { return id <= journal::EntryId::none; }); // still being written
    if (ids.size() < 2 || household_.readOnly()) return;
    (new BulkView{household_, std::move(ids), this})->show();
}

void JournalPage::askForPhotos()
{
    const auto ids = chosen();
    if (ids.size() == 1 && ids.front() > journal::EntryId::none) Q_EMIT photosWanted(static_cast<qint64>(ids.front()));
}

void JournalPage::deleteChosen()
{
    auto ids = chosen();
    std::erase_if(ids, [](journal::EntryId id) { return id <= journal::EntryId::none; }); // still being written: not known by name yet
    if (ids.empty() || household_.readOnly()) return;
    journal::Edit edit;
    edit.deleted = ids;
    const QString why = household_.refusalOf(edit);
    if (!why.isEmpty()) {
        Q_EMIT refused(why);
        return;
    }
    QString label;
    if (ids.size() == 1) {
        const journal::Entry* entry = model_->entryAt(model_->rowOf(ids.front()));
        label = tr("Delete “%1”").arg(entry ? actionWord(entry->action) : QString{});
    } else {
        label = tr("Delete %n entry(ies)", nullptr, static_cast<int>(ids.size()));
    }
    household_.remove(ids, label);
}

bool JournalPage::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == words_ && event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool down = key->key() == Qt::Key_Down || key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
        if (down && table_->isVisible()) {
            table_->setFocus();
            if (!table_->selectionModel()->hasSelection() && filter_->rowCount() > 0) table_->selectRow(0);
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

}
