#include "core/exchange/rows_against_journal.h"

#include "core/exchange/outline.h"
#include "core/exchange/refusal_text.h"
#include "core/exchange/row_reader.h"
#include "core/exchange/text.h"

#include <unordered_set>

namespace tierloam::exchange {

namespace {

Fault wholeRow(std::string_view raw, const QString& allowed) { return {0, {}, shown(raw), allowed}; }

class Importer {
public:
    Importer(std::vector<GivenRow> lines, const journal::Entries& existing) : lines_{std::move(lines)}, existing_{existing} {}

    RowsRead read()
    {
        readEach();
        replayAll();
        RowsRead result;
        for (GivenRow& line : lines_) result.faults.push_back(std::move(line.fault));
        result.edit = std::move(edit_);
        result.effect = std::move(effect_);
        result.entries = std::move(sound_);
        return result;
    }

private:
    // While rows and journal stand side by side, an added row bears the negative of its place in the file as its id.
    static bool isAdded(const journal::Entry& entry) { return isAddedRow(entry); }
    GivenRow& lineOf(const journal::Entry& entry) { return lines_[static_cast<std::size_t>(-static_cast<std::int64_t>(entry.id)) - 1]; }

    void readRow(std::size_t index, const materials::Table& table, std::vector<std::optional<journal::Entry>>& read)
    {
        GivenRow& line = lines_[index];
        auto made = rowToEntry(line.row, table);
        if (auto* fault = std::get_if<Fault>(&made)) {
            line.fault = std::move(*fault);
            read[index] = outlineOf(line.row);
            if (!read[index]) return;
        } else {
            read[index] = std::move(std::get<journal::Entry>(made));
            sound_[index] = read[index];
        }
        read[index]->id = journal::EntryId{-static_cast<std::int64_t>(index) - 1};
    }

    /// Own materials first: they serve all rows.
    void readEach()
    {
        std::vector<std::optional<journal::Entry>> read(lines_.size());
        sound_.resize(lines_.size());
        const auto isMaterial = [](const GivenRow& line) { return line.row[Column::action] == "material"; };
        journal::Entries own;
        for (const journal::Entry& entry : existing_)
            if (std::holds_alternative<journal::OwnMaterial>(entry.action)) own.push_back(entry);
        for (std::size_t i = 0; i < lines_.size(); ++i) {
            if (lines_[i].fault || !isMaterial(lines_[i])) continue;
            readRow(i, materials::Table::builtIn(), read);
            if (read[i]) own.push_back(*read[i]);
            else own.push_back(nameOnly(lines_[i].row)); // so that rows that use it are not told as well
        }
        const materials::Table table = materials::Table::withOwn(own);
        for (std::size_t i = 0; i < lines_.size(); ++i)
            if (!lines_[i].fault && !isMaterial(lines_[i])) readRow(i, table, read);
        for (auto& entry : read)
            if (entry) edit_.added.push_back(std::move(*entry));
    }

    static journal::Entry nameOnly(const Row& row)
    {
        journal::OwnMaterial material;
        material.name = row[Column::item];
        journal::Entry entry;
        entry.action = std::move(material);
        return entry;
    }

    /// Stacks whose trays cannot be followed: what seems impossible there may only follow from a bad row, which is told already.
    std::unordered_set<std::string> unsureStacks() const
    {
        std::unordered_set<std::string> unsure;
        for (const GivenRow& line : lines_)
            if (line.fault && leavesTraysUnknown(line.row)) unsure.insert(line.row[Column::stack]);
        return unsure;
    }

    void replayAll()
    {
        effect_ = journal::applyEdit(existing_, edit_);
        if (!effect_.refusal) return;
        const auto unsure = unsureStacks();
        const journal::Entries& after = effect_.after;
        AllowedTexts allowed{after};
        for (const journal::Refusal& refusal : journal::replay(after).refusals) {
            if (unsure.contains(refusal.stack)) continue;
            const journal::Entry& refused = after[refusal.entry];
            if (isAdded(refused)) {
                GivenRow& line = lineOf(refused);
                const Column column = columnOf(refusal, refused);
                if (!line.fault) line.fault = Fault{0, columnText(column), shown(line.row[column]), allowed.of(refusal)};
            } else if (GivenRow* line = culprit(refusal)) {
                if (!line->fault)
                    line->fault = wholeRow(line->raw, ExchangeText::tr("a row that leaves later entries possible; this one stands against entry %1 (%2): %3")
                                                          .arg(QString::number(static_cast<qint64>(refused.id)), entryText(refused), refusalText(refusal, after)));
            }
        }
    }

    /// The added row behind an entry that was possible before: the last one before it in that stack that moves trays.
    GivenRow* culprit(const journal::Refusal& refusal)
    {
        GivenRow* last = nullptr;
        for (std::size_t i = 0; i < refusal.entry; ++i) {
            const journal::Entry& entry = effect_.after[i];
            if (!isAdded(entry) || entry.stack != refusal.stack) continue;
            const auto& action = entry.action;
            const bool movesTrays = std::holds_alternative<journal::Setup>(action) || std::holds_alternative<journal::Bed>(action) || std::holds_alternative<journal::Feed>(action)
                || std::holds_alternative<journal::Cover>(action) || std::holds_alternative<journal::Rotate>(action)
                || std::holds_alternative<journal::Harvest>(action) || std::holds_alternative<journal::Retire>(action);
            if (movesTrays) last = &lineOf(entry);
        }
        return last;
    }

    std::vector<GivenRow> lines_;
    const journal::Entries& existing_;
    std::vector<std::optional<journal::Entry>> sound_;
    journal::Edit edit_;
    journal::EditEffect effect_;
};

}

bool isAddedRow(const journal::Entry& entry) { return static_cast<std::int64_t>(entry.id) < 0; }

RowsRead readRows(std::vector<GivenRow> rows, const journal::Entries& existing) { return Importer{std::move(rows), existing}.read(); }

}
