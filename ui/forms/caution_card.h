#pragma once

#include "ui/common/panels.h"
#include "ui/forms/cautions.h"

namespace tierloam::forms {

/// The cautions of a work, at the place of the work: a card that is hidden while there are none. The source of each is its tool tip.
class CautionCard : public ui::Card {
    Q_OBJECT

public:
    explicit CautionCard(QWidget* parent = nullptr);

    void setCautions(const QList<Caution>& cautions);
    QList<Caution> cautions() const { return cautions_; }

private:
    QList<Caution> cautions_;
};

}
