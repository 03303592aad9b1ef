#pragma once

#include "core/household/household.h"
#include "ui/common/panels.h"

class QGridLayout;
class QLabel;

namespace tierloam::ui {
class AmountField;
}

namespace tierloam::rotation {

/// The week's food over all stacks: how much each, into which tray and on which side, with how much paper and water; what does not fit.
/// While the supply is typed only the plan follows; it is written, as one step, when the field is left, on Enter, and when the card is hidden.
class FeedingCard : public ui::Card {
    Q_OBJECT

public:
    explicit FeedingCard(household::Household& household, QWidget* parent = nullptr);
    ~FeedingCard() override;
    void refresh();
    /// kg fresh: as typed, else as kept, else as learned.
    double supply() const;

protected:
    void hideEvent(QHideEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void keepSupply();
    void showSupply();
    void showPlan();

    household::Household& household_;
    ui::AmountField* supply_;
    bool typing_ = false;            ///< what stands in supply_ is not written yet
    QLabel* learned_;
    QGridLayout* rows_ = nullptr;
    QWidget* body_;
    QLabel* left_;
};

}
