#pragma once

#include "core/household/household.h"
#include "core/planning/year_plan.h"
#include "ui/common/actions.h"
#include "ui/common/theme.h"
#include "ui/rotation/background.h"

#include <QWidget>

#include <functional>
#include <memory>

class QLabel;
class QPushButton;
class QGridLayout;
class QTableView;
class QVBoxLayout;

namespace tierloam::ui {
class ChoiceField;
class PageHead;
}

namespace tierloam::rotation {

class ChangeCard;
class ClockCard;
class FeedingCard;
class LanesView;
class StepReadout;
class StepTable;
class TrackCard;
class WishCard;

/// The rotation page: the coming year of all stacks as lanes, the days chosen for its harvests and what they cost; beneath them the week's
/// feeding, what limits each stack's next turn, the garden's wish and changes tried side by side. All that asks the model runs in a thread of
/// its own; the page shows the plan before until the new one is there.
class RotationPage : public QWidget {
    Q_OBJECT

public:
    RotationPage(household::Household& household, const ui::Theme& theme, QWidget* parent = nullptr);
    ~RotationPage() override;

    ui::PageHead* head() const { return head_; }
    LanesView* lanes() const { return lanes_; }
    const planning::YearPlan* plan() const { return plan_.get(); }
    /// Whether it was made from the estimates, wishes and absences that stand now: it is made anew only while the page is seen.
    bool planIsPresent() const;
    planning::YearWishes wishes() const;
    void setWishes(const planning::YearWishes& wishes, const QString& label);
    /// Plans and draws at once, in this thread; for portraits, the calendar and tests.
    void refreshNow();

Q_SIGNALS:
    void planned();

protected:
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void buildControls();
    void syncControls();
    void replan();
    void take(std::shared_ptr<const planning::YearPlan> plan);
    void draw();
    void showState();
    void showChosen();
    void pin(const std::string& stack, int batch, std::optional<Day> on);
    QPushButton* toggle(ui::ActionId id);

    household::Household& household_;
    const ui::Theme& theme_;
    Background background_;
    std::shared_ptr<const planning::YearPlan> plan_;
    std::shared_ptr<const reckoning::Reckoning> basis_;   ///< what plan_ rests on, or what is being planned
    std::shared_ptr<const reckoning::Reckoning> plannedOn_; ///< what plan_ was made from
    QString basisWishes_;
    household::StackOrder basisOrder_;
    bool stale_ = true;

    ui::PageHead* head_;
    QWidget* controls_;
    std::vector<QPushButton*> gatherings_;
    std::vector<QPushButton*> weekdays_;
    ui::ChoiceField* wait_ = nullptr;
    QPushButton* tableButton_ = nullptr;
    StepReadout* readout_ = nullptr;
    QLabel* gain_ = nullptr;
    QLabel* cost_ = nullptr;
    QLabel* nothing_ = nullptr;
    LanesView* lanes_ = nullptr;
    QWidget* key_ = nullptr;
    StepTable* steps_;
    QTableView* table_ = nullptr;
    FeedingCard* feeding_ = nullptr;
    ClockCard* clock_ = nullptr;
    WishCard* wish_ = nullptr;
    ChangeCard* change_ = nullptr;
    TrackCard* track_ = nullptr;
    QGridLayout* below_ = nullptr;
    bool narrow_ = false;
    QWidget* content_;
};

}
