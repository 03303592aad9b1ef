#include "ui/journal/journal_page.h"

#include "ui/common/reading_order.h"
#include "ui/forms/entry_editor.h"
#include "ui/forms/take_keys.h"
#include "ui/journal/bulk_view.h"
#include "ui/journal/entry_series.h"
#include "ui/journal/entry_words.h"
#include "ui/journal/journal_model.h"

#include <QComboBox>
#include <QTableView>
#include <QVBoxLayout>

/// What is done with the chosen entries: editing one in place, more like it, several together, pictures, taking them out.
namespace tierloam::journal_page {

bool JournalPage::editing() const
{
    return (editor_ && editor_->touched()) || (series_ && series_->touched());
}

void JournalPage::editChosen()
{
    const auto ids = chosen();
    if (ids.size() != 1 || ids.front() <= journal::EntryId::none || household_.readOnly()) return;
    if (editor_ && editor_->entry() == ids.front()) {
        if (const QList<QWidget*> stops = ui::readingOrder(editor_); !stops.isEmpty()) stops.front()->setFocus(Qt::ShortcutFocusReason);
        return;
    }
    if (!makesWay()) return;
    closeEditor();
    editor_ = new forms::EntryEditor{household_, ids.front(), editorBox_};
    editor_->setObjectName(QStringLiteral("entryEditor"));
    editor_->setMayThrowAway(mayThrowAway_);
    editorBox_->layout()->addWidget(editor_);
    editorBox_->setMaximumWidth(theme_.px(720)); // a line of the form is not read across the whole window
    editorBox_->show();
    giveRoom();
    Q_EMIT formShown(true);
    connect(editor_, &forms::EntryEditor::finished, this, [this] {
        closeEditor();
        table_->setFocus();
    });
    // Once the editor has taken its room; the index is asked for then, since the journal may have been taken anew meanwhile.
    QMetaObject::invokeMethod(table_, [this] { table_->scrollTo(table_->currentIndex()); }, Qt::QueuedConnection);
}

/// Another form is asked for in the place of the one below.
bool JournalPage::makesWay()
{
    if (!editing()) return true;
    forms::TypedForm* open = editor_ != nullptr ? static_cast<forms::TypedForm*>(editor_) : series_->form();
    if (mayThrowAway_ && open->mayGo()) return true;
    forms::takeKeys(*open);
    return false;
}

void JournalPage::duplicateChosen()
{
    const auto ids = chosen();
    if (ids.size() != 1 || household_.readOnly() || !makesWay()) return;
    const journal::Entry* entry = model_->entryAt(model_->rowOf(ids.front()));
    if (entry) showSeries(new EntrySeries{household_, *entry, editorBox_});
}

void JournalPage::recordInRow()
{
    if (household_.readOnly() || !makesWay()) return;
    journal::Entry like;
    const auto ids = chosen();
    if (const journal::Entry* entry = ids.size() == 1 ? model_->entryAt(model_->rowOf(ids.front())) : nullptr) like = *entry;
    else like.action = journal::Feed{};
    const QString stack = stack_->currentData().isValid() ? stack_->currentData().toString() : QString::fromStdString(like.stack);
    showSeries(new EntrySeries{household_, stack, forms::kindOf(like), editorBox_});
}

void JournalPage::showSeries(EntrySeries* series)
{
    closeEditor();
    series_ = series;
    series_->setMayThrowAway(mayThrowAway_);
    editorBox_->layout()->addWidget(series);
    series->show(); // made while an editor stood there, it would stay hidden
    editorBox_->setMaximumWidth(theme_.px(720));
    editorBox_->show();
    giveRoom();
    tellCount();
    Q_EMIT formShown(true);
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
    Q_EMIT formShown(false);
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

}
