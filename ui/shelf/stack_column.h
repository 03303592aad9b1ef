#pragma once

#include "ui/common/theme.h"
#include "ui/shelf/shelf_model.h"
#include "ui/shelf/stack_canvas.h"

#include <QWidget>

#include <memory>

class QPushButton;

namespace tierloam::ui {
class FlowLayout;
}

namespace tierloam::shelf {

class StripsView;
class VerdictBox;

/// Heights that all columns share, so that drawings, boxes, buttons and charts stand in rows.
struct ColumnRows {
    int canvas = 0, verdict = 0, buttons = 0, strips = 0, gap = 8;
    int total() const { return canvas + verdict + buttons + strips + 3 * gap; }
};

/// All of one stack: drawing, verdict, the buttons of the daily things, small charts.
class StackColumn : public QWidget {
    Q_OBJECT

public:
    explicit StackColumn(const ui::Theme& theme, QWidget* parent = nullptr);

    void setStack(std::shared_ptr<const ShelfModel> model, std::size_t index);
    void setRows(const ColumnRows& rows, const ShelfFrame& frame);
    int verdictHeight(int width) const;
    int buttonsHeight(int width) const;

    StackCanvas* canvas() const { return canvas_; }
    StripsView* strips() const { return strips_; }
    QPushButton* feedButton() const { return feed_; }
    QPushButton* waterButton() const { return water_; }
    QPushButton* drainButton() const { return drain_; }
    QPushButton* moreButton() const { return more_; }
    std::string key() const { return canvas_->hasStack() ? canvas_->stack().key : std::string{}; }

Q_SIGNALS:
    void feedWanted();
    void waterWanted();
    void drainWanted();
    void moreWanted();

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void place();

    StackCanvas* canvas_;
    VerdictBox* verdict_;
    QWidget* buttons_;
    ui::FlowLayout* flow_;
    QPushButton *feed_, *water_, *drain_, *more_;
    StripsView* strips_;
    ColumnRows rows_;
};

}
