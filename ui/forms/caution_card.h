#pragma once

#include "ui/common/panels.h"
#include "ui/forms/cautions.h"

class QPushButton;

namespace tierloam::forms {

/// The cautions of a work, at the place of the work: a card that is hidden while there are none. The source of each is its tool tip.
/// Where the whole text would take the room of the work itself, the one sentence of each that must be seen stands there; a click shows the rest.
class CautionCard : public ui::Card {
    Q_OBJECT

public:
    explicit CautionCard(QWidget* parent = nullptr);

    void setCautions(const QList<Caution>& cautions);
    QList<Caution> cautions() const { return cautions_; }
    /// The height (px) that it may take at `width`; if the whole text is higher, it is brief.
    void holdTo(int height, int width);
    /// In few words now.
    bool isBrief() const { return brief_; }

private:
    void say(bool brief);

    QList<Caution> cautions_;
    QWidget* whole_ = nullptr;     ///< the labels of the whole text; measured while hidden, too
    QWidget* few_ = nullptr;       ///< those of few words; nullptr when there is nothing to leave out
    QPushButton* less_ = nullptr;
    bool brief_ = false, asked_ = false; ///< asked_: people wanted the whole text
};

}
