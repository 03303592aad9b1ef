#pragma once

#include "ui/common/panels.h"
#include "ui/common/theme.h"
#include "ui/trends/trend_seen.h"

#include <optional>
#include <vector>

class QGridLayout;
class QLabel;
class QTableView;

namespace tierloam::trends {

class ReadoutLine;
class TrendChart;
class TrendTable;

/// One measure of the trends page: its heading and either a chart per stack on common axes, one chart with all stacks, or the table.
class MeasureSection : public ui::Card {
    Q_OBJECT

public:
    MeasureSection(Measure measure, const ui::Theme& theme, QWidget* parent = nullptr);

    struct Contents {
        std::vector<Series> series;  ///< whole
        Period period;               ///< of which a part is seen
        Sums sums;
        bool together = false;
        bool table = false;
        bool anyStack = false;       ///< there are stacks to choose from
        bool reckoned = false;       ///< estimates are there; else the empty charts say that they are being made
    };
    void setContents(Contents contents, const Period& view);
    /// Another part of the period, charts only; words and table follow with tellView(). Charts that nobody sees wait until they are seen.
    void setView(const Period& view);
    void tellView();
    void setScrolling(bool on);

    /// What its charts show now.
    std::vector<SeenChart> seen() const;
    Measure measure() const { return measure_; }
    const Contents& contents() const { return contents_; }
    QString noteText() const;
    int columns() const { return std::max(1, columns_); }
    void setCursorDay(std::optional<Day> day);
    /// Of one chart; held to what can be read. Charts of stacks together get half as much again.
    void setChartHeight(int height);
    /// Rows of charts that it has at its present width; 0 as table.
    int chartRows() const;

Q_SIGNALS:
    void cursorMoved(std::optional<tierloam::Day> day);
    void zoomAsked(double factor, tierloam::Day about);
    void moveAsked(double share);
    void spanAsked(tierloam::Day from, tierloam::Day until);
    void wholeAsked();

protected:
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    /// One cell: a chart with the name of its stack, what stands at the crosshair, and its sentence.
    struct Cell {
        QWidget* box = nullptr;
        QWidget* head = nullptr;
        QLabel* name = nullptr;
        ReadoutLine* readout = nullptr;
        TrendChart* chart = nullptr;
        QLabel* sentence = nullptr;
    };
    Cell makeCell();
    void makeTable();
    void showView();
    std::vector<Series> seenSeries() const;
    void fillKey();
    void tellReadouts();
    void layCells();
    int columnsFor(int width) const;

    Measure measure_;
    const ui::Theme& theme_;
    Contents contents_;
    Period view_;
    bool waiting_ = false;           ///< the charts do not show the view yet
    std::optional<Day> cursor_;
    QLabel* note_;
    QLabel* nothing_;
    QWidget* key_;
    QWidget* charts_;
    QGridLayout* grid_;
    std::vector<Cell> cells_;
    std::vector<ReadoutLine*> keyReadouts_; ///< of the stacks together
    TrendTable* model_ = nullptr;    ///< both made when the table is first asked for
    QTableView* table_ = nullptr;
    int columns_ = 0;
    int chartHeight_ = 0;
};

}
