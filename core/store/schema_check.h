#pragma once

#include "core/store/connection.h"

namespace tierloam::store {

/// Whether each table of that schema stands in the file word for word as this program makes it: no view in its place, no computed
/// column, no other check. What else a file holds (a table, a trigger, a view that somebody added) is never read.
std::variant<bool, QSqlError> tablesAreOurs(const Connection& connection, int schema);

}
