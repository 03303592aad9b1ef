#pragma once

#include "core/household/household.h"
#include "core/planning/year_plan.h"
#include "ui/common/panels.h"
#include "ui/rotation/background.h"

class QCheckBox;
class QLabel;
class QPushButton;

namespace tierloam::ui {
class DateField;
class VolumeField;
}

namespace tierloam::rotation {

/// A wish from the garden: so many litres of castings by a day, the chance of it and what would raise it.
class WishCard : public ui::Card {
    Q_OBJECT

public:
    WishCard(household::Household& household, Background& background, QWidget* parent = nullptr);
    /// The keys of its buttons work wherever the focus is on the page.
    void giveKeys(QWidget* page);
    /// `basis`: the estimates on which the plan was made.
    void setPlan(std::shared_ptr<const reckoning::Reckoning> basis, std::shared_ptr<const planning::YearPlan> plan);
    const reckoning::Reckoning* basis() const { return basis_.get(); }

private:
    void answer();
    void followDay();
    void askWhatRaises();

    household::Household& household_;
    Background& background_;
    Day today_{};                    ///< on which the fields stand
    std::shared_ptr<const reckoning::Reckoning> basis_;
    std::shared_ptr<const planning::YearPlan> plan_;
    ui::VolumeField* litres_;
    ui::DateField* by_;
    QCheckBox* monthly_;
    QLabel* answer_;
    QLabel* raised_;
    QPushButton* ask_;
    int question_ = 0;               ///< counts them, and what was changed since: an answer that comes late is not shown
};

}
