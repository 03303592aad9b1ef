#pragma once

#include "ui/common/theme.h"
#include "ui/drawing/legend.h"

#include <QWidget>

namespace tierloam::shelf {

class ShelfBoard;

/// The board's legend over the lower edge of what is seen of the board, where its own lies beyond it: what the drawings mean stays in sight, however
/// long the words of a stack are. It covers nothing for good, since the board scrolls on by its height. Where it would take more than a sixth of the view
/// (large letters, a small window) it says what the shades mean alone; where that would take more than a third (a form is open), or the stacks stand in
/// rows, it stays away. It hears no mouse and is told by the board to those who hear.
class LegendBar : public QWidget {
    Q_OBJECT

public:
    /// `view`: what shows a part of the board.
    LegendBar(const ui::Theme& theme, const ShelfBoard& board, QWidget* view);
    /// To be called when the board was laid or scrolled.
    void follow();
    /// How much of the view it covers from below; 0 while it is away.
    int covered() const { return isHidden() ? 0 : height(); }
    drawing::LegendForm form() const { return form_; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const ui::Theme& theme_;
    const ShelfBoard& board_;
    drawing::LegendForm form_{};
};

}
