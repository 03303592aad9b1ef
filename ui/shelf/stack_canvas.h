#pragma once

#include "ui/common/theme.h"
#include "ui/drawing/stack_motion.h"
#include "ui/shelf/shelf_model.h"

#include <QVariantAnimation>
#include <QWidget>

#include <memory>
#include <optional>

class QPainter;

namespace tierloam::shelf {

/// Sizes that all stacks of a shelf share, so that they stand on one ground and can be compared by eye.
struct ShelfFrame {
    drawing::LabelSpace labels;
    drawing::ShelfScale scale;
    double side = 0;        ///< room at the start of a column for a leaning lid and the spigot
    double boxWidth = 100;  ///< of the widest tray
    double head = 0;        ///< height of the words above the drawing
};

/// One stack: its name and colony, and its drawing, whose trays and sump can be pointed at, walked with the arrow keys and opened
/// with a click or Enter. Up and down walk its parts, left and right go to the neighbouring stack. It can be dragged to another place.
/// In a compact shelf it shows what is to be said of the stack instead of its colony, and of each tray the age, the ring and the state.
/// For assistive techniques each tray and the sump is a child with a name and a value (stack_access.h).
class StackCanvas : public QWidget {
    Q_OBJECT

public:
    explicit StackCanvas(const ui::Theme& theme, QWidget* parent = nullptr);

    /// `model` is kept until the next call; `index` names the stack in it. With `moves`, trays that were added, taken or lifted are seen
    /// to move for a moment.
    void setStack(std::shared_ptr<const ShelfModel> model, std::size_t index, bool moves = false);
    void setCompact(bool compact);
    /// What is drawn: in a compact shelf with shorter labels.
    const drawing::StackPicture& picture() const { return picture_; }
    void setFrame(const ShelfFrame& frame);
    const StackModel& stack() const { return model_->stacks[index_]; }
    bool hasStack() const { return model_ && index_ < model_->stacks.size(); }

    /// Height of the words above a drawing at that width.
    static double headHeight(const StackModel& stack, double width, const drawing::Type& type, bool compact);
    /// As it is drawn in a compact shelf.
    static drawing::StackPicture compactPicture(const StackModel& stack);
    /// Runs while the stack moves from one standing to the next.
    QVariantAnimation* motion() { return &motion_; }
    static constexpr int motionMs = 200;
    void setLifted(bool lifted); ///< it is being dragged

    int currentPart() const { return part_; }     ///< a slot, or 0 for the sump
    void setCurrentPart(int part);                ///< held to what is there
    std::optional<int> selectedPart() const { return selected_; }
    void setSelectedPart(std::optional<int> part);///< whose panel is open
    int partCount() const;                        ///< sump and trays
    /// Where a part is drawn, labels included, in this widget.
    QRect partRect(int part) const;
    /// Of the last paint: every label was drawn whole.
    bool labelsFit() const { return fits_; }
    const drawing::StackLayout& layoutShown() const { return layout_; }

Q_SIGNALS:
    void partActivated(int part);
    /// −1: the stack before this one, +1: the one after it, in reading order.
    void neighbourWanted(int step);
    /// −1: the stack above this one, +1: the one beneath it, where stacks stand in several rows.
    void rowWanted(int step);
    /// Dragging, in global coordinates: begun and on its way, let go, called off.
    void dragged(const QPoint& at);
    void dropped(const QPoint& at);
    void dragEnded();
    /// It has the focus, or another part of it is current.
    void walked();

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void lay();
    void point(int part);
    const Part* partModel(int part) const;
    void tellFocus();
    void drawHead(QPainter& painter, QRectF head, const drawing::Type& type) const;
    void endDrag();

    const ui::Theme& theme_;
    std::shared_ptr<const ShelfModel> model_;
    std::size_t index_ = 0;
    ShelfFrame frame_;
    drawing::StackLayout layout_;
    int part_ = 1;
    int pointed_ = -1, pressed_ = -1;
    bool compact_ = false, lifted_ = false, dragging_ = false;
    std::optional<QPoint> pressedAt_;
    drawing::StackPicture picture_;
    std::optional<drawing::StackMoment> before_; ///< where a motion began
    QVariantAnimation motion_;
    std::optional<int> selected_;
    bool fits_ = true;
};

}
