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
class FeedingCard : public ui::Card {
    Q_OBJECT

public:
    explicit FeedingCard(household::Household& household, QWidget* parent = nullptr);
    void refresh();
    /// kg fresh: as typed, else as learned.
    double supply() const;

private:
    household::Household& household_;
    ui::AmountField* supply_;
    QLabel* learned_;
    QGridLayout* rows_ = nullptr;
    QWidget* body_;
    QLabel* left_;
};

}
