#pragma once

#include "core/reckoning/reckoning.h"
#include "ui/drawing/strip.h"

#include <QString>
#include <QStringList>

#include <string>
#include <vector>

namespace tierloam::rotation {

/// What a tried change comes to, as it is shown: rows of figures, the usual course beside the changed one.
struct TriedChange {
    QString sentence = {};
    QStringList feeding = {};        ///< a line for each step of a feeding that grows, where there are more than a sentence holds
    struct Row { QString name, usual, changed, another = {}; }; ///< `another`: of a new stack that begins with the change; empty: it has no such figure
    std::vector<Row> rows = {};
    std::vector<drawing::StripPoint> usual = {}, changed = {}, another = {}; ///< colony, kg, week by week; the last of a new stack
    std::string stack = {};          ///< that it was asked of
    std::vector<reckoning::StackEstimate> days = {}; ///< of that stack with the change, ascending; of another past the past too
};

}
