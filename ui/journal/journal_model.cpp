#include "ui/journal/journal_model.h"

#include "ui/common/formats.h"
#include "ui/journal/entry_words.h"

#include <QFont>

#include <algorithm>
#include <unordered_set>

namespace tierloam::journal_page {

void JournalModel::setJournal(std::shared_ptr<const household::JournalView> journal)
{
    beginResetModel();
    journal_ = std::move(journal);
    const std::size_t count = journal_ ? journal_->entries.size() : 0;
    resolved_.assign(count, {});
    pending_.assign(count, false);
    search_.assign(count, {});
    if (journal_) {
        for (const journal::StackHistory& history : journal_->replay.stacks) {
            for (const journal::Step& step : history.steps) {
                if (step.incoming || step.entry >= count) continue;
                Resolved& resolved = resolved_[step.entry];
                resolved.slot = step.slot;
                resolved.batch = step.batch;
                if (step.batch) resolved.trayNumber = history.batch(*step.batch).tray;
            }
        }
        const std::unordered_set<journal::EntryId> pending{journal_->pending.begin(), journal_->pending.end()};
        for (std::size_t i = 0; i < count; ++i) {
            const journal::EntryId id = journal_->entries[i].id;
            pending_[i] = id == journal::EntryId::none || pending.contains(id);
        }
    }
    endResetModel();
}

const journal::Entry* JournalModel::entryAt(int row) const
{
    return journal_ && row >= 0 && row < rowCount() ? &journal_->entries[static_cast<std::size_t>(row)] : nullptr;
}

bool JournalModel::pendingAt(int row) const
{
    return row >= 0 && row < rowCount() && pending_[static_cast<std::size_t>(row)];
}

int JournalModel::rowOf(journal::EntryId id) const
{
    if (!journal_) return -1;
    const auto found = std::ranges::find(journal_->entries, id, &journal::Entry::id);
    return found == journal_->entries.end() ? -1 : static_cast<int>(found - journal_->entries.begin());
}

int JournalModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() || !journal_ ? 0 : static_cast<int>(journal_->entries.size());
}

int JournalModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : columns;
}

QString JournalModel::trayText(int row) const
{
    const Resolved& resolved = resolved_[static_cast<std::size_t>(row)];
    if (!resolved.slot) return {};
    if (!resolved.batch) return tr("slot %1").arg(*resolved.slot);
    return tr("slot %1 · tray %2 · batch %3").arg(QString::number(*resolved.slot), QString::number(resolved.trayNumber), QString::number(*resolved.batch));
}

QString JournalModel::text(int row, int column) const
{
    const journal::Entry& entry = journal_->entries[static_cast<std::size_t>(row)];
    switch (column) {
    case when: {
        const QString moment = ui::fullMoment(entry.date);
        return pending_[static_cast<std::size_t>(row)] ? tr("%1 · being saved").arg(moment) : moment;
    }
    case stack: return QString::fromStdString(entry.stack);
    case action: return actionWord(entry.action);
    case details: return detailWords(entry);
    case tray: return trayText(row);
    case note: return QString::fromStdString(entry.note);
    default: return {};
    }
}

QVariant JournalModel::data(const QModelIndex& index, int role) const
{
    if (!index.isValid() || !journal_) return {};
    const int row = index.row();
    switch (role) {
    case Qt::DisplayRole:
    case Qt::AccessibleTextRole: return text(row, index.column());
    case Qt::ToolTipRole: {
        const QString shown = text(row, index.column());
        return shown.isEmpty() ? QVariant{} : QVariant{shown};
    }
    case Qt::TextAlignmentRole: return QVariant{Qt::AlignLeading | Qt::AlignVCenter};
    case Qt::FontRole:
        if (pending_[static_cast<std::size_t>(row)]) {
            QFont font;
            font.setItalic(true);
            return font;
        }
        return {};
    case sortRole: return index.column() == when ? QVariant{row} : QVariant{text(row, index.column())};
    case searchRole: {
        QString& found = search_[static_cast<std::size_t>(row)];
        if (found.isEmpty()) {
            QStringList parts;
            for (int column = 0; column < columns; ++column) parts << text(row, column);
            found = parts.join(u'\n');
        }
        return found;
    }
    default: return {};
    }
}

QVariant JournalModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (role == Qt::TextAlignmentRole && orientation == Qt::Horizontal) return QVariant{Qt::AlignLeading | Qt::AlignVCenter};
    if (role != Qt::DisplayRole) return {};
    if (orientation == Qt::Vertical) return section + 1;
    switch (section) {
    case when: return tr("When");
    case stack: return tr("Stack");
    case action: return tr("What");
    case details: return tr("How much");
    case tray: return tr("Tray");
    case note: return tr("Note");
    default: return {};
    }
}

}
