#pragma once

#include "ui/common/theme.h"
#include "ui/trends/trend_data.h"

#include <QWidget>

namespace tierloam::trends {

/// The key below the charts: what each sign, the band and the shade mean. Wraps as the width asks.
class SignKey : public QWidget {
    Q_OBJECT

public:
    explicit SignKey(const ui::Theme& theme, QWidget* parent = nullptr);
    /// Whether a tried change stands in the charts.
    void setChanged(bool changed);

private:
    QWidget* changed_;
};

/// A short piece of a stack's line, as it is drawn when stacks lie over each other.
class LineSample : public QWidget {
    Q_OBJECT

public:
    /// With `bars` also a piece of its bars.
    LineSample(const ui::Theme& theme, int place, bool bars, QWidget* parent = nullptr);
    QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const ui::Theme& theme_;
    int place_;
    bool bars_;
};

}
