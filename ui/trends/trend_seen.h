#pragma once

#include "ui/trends/trend_data.h"

/// What the trends page shows at a moment, as plain values for pictures, pages and tables of it.
namespace tierloam::trends {

/// One chart.
struct SeenChart {
    QString name;                    ///< of the stack; empty when stacks lie over each other
    QString sentence;
    std::vector<Series> series;
    Ends ends;
};

struct SeenMeasure {
    Measure measure{};
    QString note;
    int columns = 1;                 ///< charts beside each other
    std::vector<SeenChart> charts;
    std::vector<Series> whole;       ///< the same series as fine as they are known, of all the period
};

struct SeenTrends {
    QString household;
    Period view;
    bool changed = false;            ///< a tried change stands in the charts
    QString changeSentence;          ///< what it comes to
    std::vector<SeenMeasure> measures;
};

}
