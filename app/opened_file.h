#pragma once

#include "app/command_line.h"
#include "core/advice/household_advice.h"
#include "core/journal/entry.h"
#include "core/reckoning/reckoning.h"
#include "core/store/household_file.h"

#include <memory>
#include <optional>
#include <vector>

/// A household file for one call of the command line. What fails is told at once, on stderr.
namespace tierloam::app {

/// The file and its journal.
struct Opened {
    std::unique_ptr<store::HouseholdFile> file;
    journal::Entries entries;
};
/// nullopt after having said why not.
std::optional<Opened> openFile(const QString& path, store::HouseholdFile::Mode mode);

/// A setting that the household keeps; empty when it was never set or cannot be read.
QString settingOf(const store::HouseholdFile& file, QLatin1StringView name);

/// A household reckoned for a call that asks about it.
struct Reckoned {
    QString household;
    journal::Entries entries;
    store::LoggedDays logged;
    QString yearWishes;
    QString putOff;                  ///< advice that is not to be told before a day
    std::shared_ptr<const reckoning::Reckoning> reckoning;
    std::vector<advice::Advice> advice;
};
/// As of `call.at`, today when it is absent. nullopt after having said why not.
std::optional<Reckoned> reckonFile(const CommandLine& call);

/// The day of the call.
Day dayOf(const CommandLine& call);
/// Threads that this machine has for the reckoning.
int threadsHere();
/// Says so, and returns true, when what is to be written is the household file itself.
bool isItsOwnTarget(const CommandLine& call, const QString& what);

}
