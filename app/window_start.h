#pragma once

#include "app/command_line.h"

namespace tierloam::app {

/// Answers Call::window and Call::portrait: makes the QApplication and returns the exit code. Only in a build with ui.
int startWindow(int& argc, char** argv, const CommandLine& call);

}
