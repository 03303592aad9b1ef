#pragma once

#include "ui/common/theme.h"

#include <QWidget>

#include <optional>

namespace tierloam::materials_page {

/// One measure of a mix on a line: where it lies, the range that is aimed at as a bar, and where what is proposed would bring it.
/// Each mark has a shape of its own: a filled drop for now, an open one for the proposal.
class Gauge : public QWidget {
    Q_OBJECT

public:
    struct Reading {
        QString title, value, after;     ///< "C:N", "19 : 1", "then 30 : 1"
        double least = 0, most = 1;      ///< ends of the line
        double from = 0, to = 0;         ///< the range aimed at
        QString aim;                     ///< "aim 25 to 35"
        std::optional<double> now, then;
        bool logarithmic = false;
    };
    explicit Gauge(const ui::Theme& theme, QWidget* parent = nullptr);

    void setReading(const Reading& reading);
    const Reading& reading() const { return reading_; }
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const ui::Theme& theme_;
    Reading reading_;
};

}
