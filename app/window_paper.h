#pragma once

#include "app/command_line.h"

namespace tierloam::app {

/// Answers Call::report and Call::labels: makes the QApplication, needs no display, and returns the exit code.
int drawPaper(int& argc, char** argv, const CommandLine& call);

/// For drawing without a display: the same on every machine, whatever the desktop would have. Before a QApplication is made.
void needNoDisplay();

}
