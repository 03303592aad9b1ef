#pragma once

#include "core/quantity/measures.h"

#include <QString>

#include <optional>
#include <string_view>

namespace tierloam::household {

/// Makes a household file at `path`, which must not exist, from a journal CSV. All dates are moved by whole weeks, so that the latest
/// entry falls in the week that ends today and weekdays stay as they were. Nothing is left behind on failure.
/// Returns why it failed: the CSV has faults, or the file could not be written.
std::optional<QString> makeDemoHousehold(std::string_view csv, const QString& path, Day today);

/// By how many days a journal that ends on `last` is moved; a multiple of 7.
int demoShift(Day last, Day today);

}
