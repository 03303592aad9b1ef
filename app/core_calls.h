#pragma once

#include "app/command_line.h"

#include <string_view>

/// The calls that need no display and touch nothing of Qt Gui. Each needs a QCoreApplication, prints, and returns the exit code.
namespace tierloam::app {

/// Import and record: all rows or none, durable before anything is printed. FILE is made when it is not there, and is not left behind
/// when it holds nothing in the end.
int addToJournal(const CommandLine& call);
int exportJournal(const CommandLine& call);
int printSummary(const CommandLine& call);
/// Due list and the year's plan, with the wishes that the household keeps, as iCalendar.
int writeCalendar(const CommandLine& call);

/// To stdout, flushed; false when it did not get there.
bool print(std::string_view text);
/// To stderr: `tierloam: …`, one line.
void complain(const QString& why);

}
