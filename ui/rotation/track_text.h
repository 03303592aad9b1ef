#pragma once

#include "core/household/household.h"
#include "ui/common/panels.h"

class QLabel;

namespace tierloam::rotation {

/// The diary of advice: which turns were advised and what was done, and how often it was right on the harvests that were weighed.
class TrackCard : public ui::Card {
    Q_OBJECT

public:
    explicit TrackCard(household::Household& household, QWidget* parent = nullptr);
    void refresh();
    QString recordText() const;

private:
    household::Household& household_;
    QLabel* record_;
    QLabel* diary_;
};

}
