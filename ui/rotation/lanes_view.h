#pragma once

#include "ui/common/theme.h"
#include "ui/rotation/year_lanes.h"

#include <QWidget>

namespace tierloam::rotation {

/// The lanes on the page: a harvest is chosen with the mouse or the arrow keys, and moved by dragging it or with Shift and the arrow keys.
/// Home and End go to the first and last step. What is chosen is its accessible value.
class LanesView : public QWidget {
    Q_OBJECT

public:
    explicit LanesView(const ui::Theme& theme, QWidget* parent = nullptr);

    void setYear(YearLanes year, Day today);
    const YearLanes& year() const { return year_; }
    const PlanStep* chosen() const;
    void choose(std::optional<std::pair<int, int>> mark);
    /// Moves the chosen harvest by so many days.
    void moveChosen(int days);
    /// Keeps it on the day where it stands.
    void keepChosen();
    bool canMove(const PlanStep& step) const;
    drawing::LanesLayout layoutNow() const;
    /// What is told over the line of a stack's readiness; empty where there is none.
    QString readyText(int lane) const;
    /// The days ahead on which nobody is there for that lane's stack, those of it alone called so; empty where there are none.
    QString awayText(int lane) const;
    /// What is told over days on which nobody is there; empty elsewhere.
    QString awayTextAt(QPointF at) const;
    /// Centre of a mark, for tests that drag it.
    QPoint markCentre(int lane, int mark) const;

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    bool hasHeightForWidth() const override { return true; } ///< names go on in more lines where there is less room beside the lanes
    int heightForWidth(int width) const override;

Q_SIGNALS:
    void chosenChanged();
    /// A harvest is to be lifted on that day. It stands there already, as being reckoned, until setYear() shows the plan that holds it.
    void moved(const tierloam::rotation::PlanStep& step, tierloam::Day on);

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    bool event(QEvent* event) override;

private:
    void tell();
    void moveTo(Day on);
    void step(int by);
    void changeLane(int by);

    const ui::Theme& theme_;
    YearLanes year_;
    Day today_{};
    bool dragging_ = false;
};

}
