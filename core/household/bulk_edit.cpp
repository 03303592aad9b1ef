#include "core/household/bulk_edit.h"

#include "core/exchange/row_reader.h"
#include "core/household/text.h"
#include "core/quantity/day_text.h"

#include <set>

namespace tierloam::household {

namespace {

using exchange::Column;

exchange::Row withValue(exchange::Row row, BulkField field, const std::string& value)
{
    switch (field) {
    case BulkField::item: row[Column::item] = value; break;
    case BulkField::slot: row[Column::slot] = value; break;
    case BulkField::stack: row[Column::stack] = value; break;
    case BulkField::note: row[Column::note] = value; break;
    case BulkField::amount: {
        const auto blank = value.find_last_of(' ');
        row[Column::amount] = value.substr(0, blank);
        row[Column::unit] = blank == std::string::npos ? std::string{} : value.substr(blank + 1);
        break;
    }
    }
    return row;
}

}

std::string bulkValueOf(const journal::Entry& entry, BulkField field)
{
    const exchange::Row row = exchange::entryToRow(entry);
    switch (field) {
    case BulkField::item: return row[Column::item];
    case BulkField::slot: return row[Column::slot];
    case BulkField::stack: return row[Column::stack];
    case BulkField::note: return row[Column::note];
    case BulkField::amount: break;
    }
    return row[Column::amount].empty() ? std::string{} : row[Column::amount] + ' ' + row[Column::unit];
}

std::map<std::string, int> bulkValues(const journal::Entries& all, const std::vector<journal::EntryId>& chosen, BulkField field)
{
    const std::set<journal::EntryId> ids{chosen.begin(), chosen.end()};
    std::map<std::string, int> values;
    for (const auto& entry : all)
        if (ids.contains(entry.id)) ++values[bulkValueOf(entry, field)];
    return values;
}

BulkEdit bulkEdit(const journal::Entries& all, const std::vector<journal::EntryId>& chosen, BulkField field, const std::string& before, const std::string& after,
                  const materials::Table& table)
{
    const std::set<journal::EntryId> ids{chosen.begin(), chosen.end()};
    BulkEdit made;
    for (const auto& entry : all) {
        if (!ids.contains(entry.id)) continue;
        if (bulkValueOf(entry, field) != before) {
            made.staying.push_back(entry.id);
            continue;
        }
        auto read = exchange::rowToEntry(withValue(exchange::entryToRow(entry), field, after), table);
        if (const auto* fault = std::get_if<exchange::Fault>(&read)) {
            made.fault = HouseholdText::tr("%1, %2: found «%3»; allowed: %4")
                             .arg(QString::fromStdString(dayText(entry.date.day)), QString::fromStdString(std::string{journal::actionName(entry.action)}), fault->found, fault->allowed);
            made.edit = {};
            made.changing.clear();
            return made;
        }
        auto changed = std::move(std::get<journal::Entry>(read));
        changed.id = entry.id;
        changed.positionInDay = entry.positionInDay;
        made.changing.push_back(entry.id);
        if (changed != entry) made.edit.replaced.push_back(std::move(changed));
    }
    return made;
}

}
