#pragma once

#include "ui/common/panels.h"

class QHBoxLayout;
class QScrollArea;

namespace tierloam::rotation {

/// What is told of the chosen step, with the buttons for its day. It stands beneath what scrolls, so that it is in sight however many lanes there are; in a low
/// window it takes a fifth of the height at most, and a longer text is scrolled.
class StepReadout final : public ui::Card {
    Q_OBJECT

public:
    explicit StepReadout(QWidget* parent = nullptr);
    void setText(const QString& text);
    QPushButton* pin() const { return pin_; }
    QPushButton* unpin() const { return unpin_; }
    /// So high that the text is whole, but no higher than that part of the page's height.
    void fit(int pageHeight);

protected:
    void resizeEvent(QResizeEvent* event) override;
    bool event(QEvent* event) override;

private:
    QLabel* text_;
    QPushButton* pin_;
    QPushButton* unpin_;
    QScrollArea* scroll_;
    QHBoxLayout* row_;
    int pageHeight_ = 0;
};

}
