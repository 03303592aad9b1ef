#pragma once

#include "core/household/household.h"
#include "core/planning/year_plan.h"
#include "ui/drawing/lanes.h"

#include <QAbstractTableModel>

namespace tierloam::rotation {

/// One step of the plan: what a mark in the lanes and a row of the table speak of.
struct PlanStep {
    std::string stack;
    drawing::Lane::Mark::Kind kind{};
    Day on{};
    int batch = 0, tray = 0;
    bool pinned = false, done = false;
    std::optional<drawing::Lane::Window> window;
    std::optional<reckoning::Band> litres;   ///< of a lift and a take
    double readyWhenLifted = 0;
    int delay = 0;                           ///< days after it is due; negative: before
    bool isHarvest = false;                  ///< a harvest begins with it: its day can be chosen
    bool pending = false;                    ///< moved by hand, and the plan with it is not there yet
    QString ready = {};                      ///< when its tray is ready; of the tray that stands at the bottom today
};

/// A plan as it is drawn, and the step behind each mark.
struct YearLanes {
    drawing::Lanes lanes;
    std::vector<std::vector<PlanStep>> steps; ///< by lane and mark
};

/// `estimates`: those that the plan was made of; they say when the trays at the bottom are ready. nullptr: nothing is said.
YearLanes yearLanes(const planning::YearPlan& plan, const reckoning::Reckoning* estimates, const household::JournalView& journal, const household::StackOrder& order, Day today);

/// The harvest as it will stand once it was moved to that day, with its castings taken as long after it as before, until the plan that says what follows is there.
void moveStep(YearLanes& year, std::pair<int, int> mark, Day on);

/// The same of all harvests whose pins are other ones than the plan was made with: moved to where they are wanted, or let go.
void layPins(YearLanes& year, const planning::YearWishes& plannedWith, const planning::YearWishes& wanted);

/// When the bottom tray of a stack is ready; nullopt: nothing stands, it is in the light, or not within the year.
std::optional<drawing::Lane::Ready> readyOf(const reckoning::StackReckoning& stack, Day today);

/// In one sentence: "12 June: lift the bottom tray (tray 2); due 12 Jun (2 Jun – 3 Jul); 5.2 L (4.1–6.3)".
QString stepText(const PlanStep& step, Day today);
QString kindText(drawing::Lane::Mark::Kind kind);
QString windowText(const drawing::Lane::Window& window, Day today);

/// The table twin of the lanes: every step of the year by its day.
class StepTable : public QAbstractTableModel {
    Q_OBJECT

public:
    using QAbstractTableModel::QAbstractTableModel;
    void setSteps(const YearLanes& year, Day today);
    const PlanStep* stepAt(int row) const;
    std::optional<std::pair<int, int>> markAt(int row) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    struct Row { int lane, mark; PlanStep step; };
    std::vector<Row> rows_;
    Day today_{};
};

}
