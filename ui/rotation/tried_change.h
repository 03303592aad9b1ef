#pragma once

#include "core/reckoning/reckoning.h"
#include "ui/drawing/strip.h"

#include <QString>

#include <string>
#include <vector>

namespace tierloam::rotation {

/// What a tried change comes to, as it is shown: rows of figures, the usual course beside the changed one.
struct TriedChange {
    QString sentence;
    struct Row { QString name, usual, changed; };
    std::vector<Row> rows;
    std::vector<drawing::StripPoint> usual, changed; ///< colony, kg, week by week
    std::string stack = {};          ///< that it was asked of
    std::vector<reckoning::StackEstimate> days = {}; ///< of that stack with the change, ascending; of another past the past too
};

}
