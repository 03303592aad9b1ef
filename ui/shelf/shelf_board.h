#pragma once

#include "ui/common/theme.h"
#include "ui/drawing/legend.h"
#include "ui/shelf/shelf_model.h"
#include "ui/shelf/stack_column.h"

#include <QWidget>

#include <memory>
#include <vector>

class QLabel;
class QPushButton;

namespace tierloam::shelf {

/// All stacks side by side at one scale, with the legend under them; or, when none stands, what to do first.
/// Meant to lie in a scroll area: up to three stacks share its width, more go on beyond it, and its height follows the size of the text.
/// From `compactFrom` stacks on they stand in rows, smaller: what is to be done, the drawing, the age, state and ring of each tray.
class ShelfBoard : public QWidget {
    Q_OBJECT

public:
    explicit ShelfBoard(const ui::Theme& theme, QWidget* parent = nullptr);

    static constexpr int compactFrom = 9;

    /// With `moves`, stacks whose trays were added, taken or lifted move for a moment.
    void setModel(std::shared_ptr<const ShelfModel> model, bool moves = false);
    /// Size of what can be seen of it; the board lays itself out for that.
    void setView(QSize view);

    bool compact() const { return compact_; }
    int perRow() const { return perRow_; }
    /// What of it is in view: columns there are furnished.
    void showPart(const QRect& seen);
    /// Where the legend stands on the board; null while no stack does.
    QRectF legend() const { return legend_; }
    drawing::LegendForm legendForm() const { return legendForm_; }
    /// Where a dragged stack would be put; null while none is dragged.
    QRect dropMark() const;

    const std::vector<StackColumn*>& columns() const { return columns_; }
    StackColumn* column(const std::string& stack) const;
    /// The stack whose canvas had the focus last, else the first; nullptr when none stands.
    StackColumn* current() const;
    void setCurrent(const std::string& stack);
    /// Somebody went to a stack, or did something in it; else current() is the first, unasked.
    bool anyChosen() const { return column(current_) != nullptr; }
    /// Marks the part whose panel is open, and no other.
    void markSelected(const std::string& stack, std::optional<int> part);

Q_SIGNALS:
    void feedWanted(const QString& stack);
    void borneWanted(const QString& stack);
    void coverWanted(const QString& stack);
    void waterWanted(const QString& stack);
    void drainWanted(const QString& stack);
    void moreWanted(const QString& stack);
    void partActivated(const QString& stack, int part);
    void newStackWanted();
    /// A stack was dragged to where `place` others stand before it.
    void placeWanted(const QString& stack, int place);
    /// A stack is being dragged over this place of the board.
    void dragMoved(const QPoint& at);
    /// Everything has its place, the legend too.
    void laid();
    /// This column should be brought into view.
    void columnWalked(QWidget* column);

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void lay();
    void layColumns();
    void layGrid();
    void layEmpty();
    void layLegend(double boardWidth, double top);
    int belowLegend() const;
    StackColumn* addColumn();
    void step(StackColumn* from, int by);
    void stepRow(StackColumn* from, int by);
    int placeAt(QPoint at) const;
    void dragTo(StackColumn* column, QPoint at);
    void drop(StackColumn* column, QPoint at);
    void followFocus(const std::string& stack, int part) const;

    const ui::Theme& theme_;
    std::shared_ptr<const ShelfModel> model_;
    std::vector<StackColumn*> columns_;
    std::string current_;
    bool compact_ = false;
    int perRow_ = 1;
    std::optional<int> dropAt_;
    std::string selectedStack_;
    std::optional<int> selectedPart_;
    QSize view_;
    QRectF legend_;
    drawing::LegendForm legendForm_ = drawing::LegendForm::roomy;
    QWidget* empty_;
    QLabel *emptyTitle_, *emptyText_;
    QPushButton* newStack_;
};

}
