#pragma once

#include "ui/common/panels.h"
#include "ui/common/theme.h"
#include "ui/trends/trend_data.h"

#include <optional>
#include <vector>

class QGridLayout;
class QLabel;
class QTableView;

namespace tierloam::trends {

class TrendChart;
class TrendTable;

/// One measure of the trends page: its heading and either a chart per stack on common axes, one chart with all stacks, or the table.
class MeasureSection : public ui::Card {
    Q_OBJECT

public:
    MeasureSection(Measure measure, const ui::Theme& theme, QWidget* parent = nullptr);

    struct Contents {
        std::vector<Series> series;
        Period period;
        bool together = false;
        bool table = false;
        bool anyStack = false;       ///< there are stacks to choose from
        bool reckoned = false;       ///< estimates are there; else the empty charts say that they are being made
    };
    void setContents(Contents contents);
    void setCursorDay(std::optional<Day> day);
    /// Of one chart; held to what can be read. Charts of stacks together get half as much again.
    void setChartHeight(int height);
    /// Rows of charts that it has at its present width; 0 as table.
    int chartRows() const;

Q_SIGNALS:
    void cursorMoved(std::optional<tierloam::Day> day);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    /// One cell: a chart with the name of its stack, what stands at the crosshair, and its sentence.
    struct Cell {
        QWidget* box = nullptr;
        QWidget* head = nullptr;
        QLabel* name = nullptr;
        QLabel* readout = nullptr;
        TrendChart* chart = nullptr;
        QLabel* sentence = nullptr;
    };
    Cell makeCell();
    void fillCell(Cell& cell, std::vector<Series> series, double top, double bottom);
    void fillKey();
    void tellReadouts();
    void layCells();
    int columnsFor(int width) const;

    Measure measure_;
    const ui::Theme& theme_;
    Contents contents_;
    std::optional<Day> cursor_;
    QLabel* note_;
    QLabel* nothing_;
    QWidget* key_;
    QWidget* charts_;
    QGridLayout* grid_;
    std::vector<Cell> cells_;
    TrendTable* model_;
    QTableView* table_;
    int columns_ = 0;
    int chartHeight_ = 0;
};

}
