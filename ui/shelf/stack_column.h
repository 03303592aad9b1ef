#pragma once

#include "ui/common/theme.h"
#include "ui/shelf/shelf_model.h"
#include "ui/shelf/stack_canvas.h"

#include <QWidget>

#include <memory>

class QLabel;
class QPushButton;

namespace tierloam::ui {
class FlowLayout;
}

namespace tierloam::shelf {

class StripsView;
class VerdictBox;

/// Heights that all columns share, so that drawings, boxes, buttons and charts stand in rows. A compact column has no box and no charts.
struct ColumnRows {
    int canvas = 0, verdict = 0, buttons = 0, strips = 0, gap = 8;
    int total() const { return canvas + (verdict > 0 ? verdict + gap : 0) + buttons + gap + (strips > 0 ? strips + gap : 0); }
};

/// All of one stack: drawing, verdict, the buttons of the daily things, small charts. In a compact shelf drawing and two buttons.
/// Everything beside the drawing is made when it is first asked for, so that hundreds of stacks stand at once.
class StackColumn : public QWidget {
    Q_OBJECT

public:
    StackColumn(const ui::Theme& theme, bool compact, QWidget* parent = nullptr);

    /// `moves` as in StackCanvas::setStack.
    void setStack(std::shared_ptr<const ShelfModel> model, std::size_t index, bool moves = false);
    void setRows(const ColumnRows& rows, const ShelfFrame& frame);
    int verdictHeight(int width);
    int buttonsHeight(int width);
    /// Makes what is not there yet.
    void furnish();
    bool furnished() const { return buttons_ != nullptr; }

    StackCanvas* canvas() const { return canvas_; }
    StripsView* strips() const { return strips_; }  ///< nullptr in a compact shelf
    QPushButton* feedButton() { furnish(); return feed_; }
    QPushButton* coverButton() { furnish(); return cover_; }
    QPushButton* waterButton() { furnish(); return water_; }
    QPushButton* drainButton() { furnish(); return drain_; }
    QPushButton* borneButton() { furnish(); return borne_; }
    QPushButton* moreButton() { furnish(); return more_; }
    std::string key() const { return canvas_->hasStack() ? canvas_->stack().key : std::string{}; }

Q_SIGNALS:
    void feedWanted();
    void borneWanted();              ///< what is borne of the usual feeding
    void coverWanted();
    void waterWanted();
    void drainWanted();
    void moreWanted();

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void place();
    void fill();

    const ui::Theme& theme_;
    bool compact_;
    std::shared_ptr<const ShelfModel> model_;
    std::size_t index_ = 0;
    StackCanvas* canvas_;
    VerdictBox* verdict_ = nullptr;
    QWidget* buttons_ = nullptr;
    ui::FlowLayout* flow_ = nullptr;
    QPushButton *feed_ = nullptr, *cover_ = nullptr, *water_ = nullptr, *drain_ = nullptr, *more_ = nullptr;
    QPushButton* borne_ = nullptr;   ///< only while less than the usual is borne
    QLabel* limit_ = nullptr;        ///< else; nullptr in a compact shelf, where the tip says it
    StripsView* strips_ = nullptr;
    ColumnRows rows_;
};

}
