#pragma once

#include "ui/drawing/palette.h"
#include "ui/trends/plot_frame.h"

#include <QGraphicsItem>

#include <optional>
#include <utility>

namespace tierloam::trends {

/// The line of the crosshair and the days that are being dragged over, above everything else.
class Crosshair : public QGraphicsItem {
public:
    explicit Crosshair(QGraphicsItem* parent);

    void setLook(const drawing::Palette& palette);
    void setFrame(const Frame& frame);
    void setDay(std::optional<Day> day);
    void setSpan(std::optional<std::pair<double, double>> x);

    QRectF boundingRect() const override;
    void paint(QPainter* painter, const QStyleOptionGraphicsItem* option, QWidget* widget) override;

private:
    Frame frame_;
    std::optional<Day> day_;
    std::optional<std::pair<double, double>> span_;
    drawing::Palette palette_;
};

}
