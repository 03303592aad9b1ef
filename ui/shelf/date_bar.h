#pragma once

#include "core/quantity/measures.h"

#include <QWidget>

class QLabel;
class QPushButton;
class QSlider;

namespace tierloam::shelf {

/// Shows the shelf as it stood on any day: a slider from the first day to today, the day in words, and the way back to today.
class DateBar : public QWidget {
    Q_OBJECT

public:
    explicit DateBar(QWidget* parent = nullptr);

    /// first ≤ shown ≤ today; hides itself when there is only today.
    void setDays(Day first, Day shown, Day today);
    Day shown() const;
    QSlider* slider() const { return slider_; }
    QPushButton* todayButton() const { return today_; }

Q_SIGNALS:
    void dayChosen(tierloam::Day day);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void say();
    void goTo(const QPoint& at);

    Day first_{}, todayDay_{};
    QLabel *from_, *word_;
    QSlider* slider_;
    QPushButton* today_;
};

}
