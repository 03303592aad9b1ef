#pragma once

#include "ui/common/theme.h"
#include "ui/rotation/tried_change.h"

#include <QWidget>

namespace tierloam::rotation {

/// Two small charts on one axis and one scale, one above the other: as usual, and with the change.
class TwoCourses : public QWidget {
    Q_OBJECT

public:
    explicit TwoCourses(const ui::Theme& theme, QWidget* parent = nullptr);
    void setCourses(const TriedChange& change, Day today);
    QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const ui::Theme& theme_;
    TriedChange change_;
    Day today_{};
};

}
