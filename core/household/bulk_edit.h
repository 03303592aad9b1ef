#pragma once

#include "core/exchange/row.h"
#include "core/journal/edit.h"
#include "core/materials/table.h"

#include <QString>

#include <map>
#include <string>
#include <vector>

namespace tierloam::household {

/// Many entries changed together: those among the chosen ones that hold the same old value get the new one, the others stay as they are.
/// Values are the cells of the journal CSV; an amount is "450 g".
struct BulkEdit {
    journal::Edit edit;                        ///< ready for Household::apply
    std::vector<journal::EntryId> changing;
    std::vector<journal::EntryId> staying;     ///< chosen, but with another value
    QString fault;                             ///< why the new value cannot stand in one of them; then `edit` is empty
};

/// What can be changed together.
enum class BulkField { item, amount, slot, stack, note };

std::string bulkValueOf(const journal::Entry& entry, BulkField field);
/// The values that the chosen entries hold, with how many hold each.
std::map<std::string, int> bulkValues(const journal::Entries& all, const std::vector<journal::EntryId>& chosen, BulkField field);
BulkEdit bulkEdit(const journal::Entries& all, const std::vector<journal::EntryId>& chosen, BulkField field, const std::string& before, const std::string& after,
                  const materials::Table& table);

}
