#pragma once

#include "core/quantity/measures.h"

#include <QString>

namespace tierloam::window {

struct Demo {
    QString path;                    ///< of the fresh household; empty when it failed
    QString why;                     ///< what went wrong
};

/// A fresh private copy of the demo household in the user's data folder. Copies that no window shows any more are swept away.
Demo freshDemo(Day today);
/// Lies in the folder of the demo copies: never "the last file", never among the recent ones.
bool isDemo(const QString& path);

}
