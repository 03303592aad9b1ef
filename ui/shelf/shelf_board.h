#pragma once

#include "ui/common/theme.h"
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
class ShelfBoard : public QWidget {
    Q_OBJECT

public:
    explicit ShelfBoard(const ui::Theme& theme, QWidget* parent = nullptr);

    void setModel(std::shared_ptr<const ShelfModel> model);
    /// Size of what can be seen of it; the board lays itself out for that.
    void setView(QSize view);

    const std::vector<StackColumn*>& columns() const { return columns_; }
    StackColumn* column(const std::string& stack) const;
    /// The stack whose canvas had the focus last, else the first; nullptr when none stands.
    StackColumn* current() const;
    void setCurrent(const std::string& stack);
    /// Marks the part whose panel is open, and no other.
    void markSelected(const std::string& stack, std::optional<int> part);

Q_SIGNALS:
    void feedWanted(const QString& stack);
    void waterWanted(const QString& stack);
    void drainWanted(const QString& stack);
    void moreWanted(const QString& stack);
    void partActivated(const QString& stack, int part);
    void newStackWanted();
    /// This column should be brought into view.
    void columnWalked(QWidget* column);

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void lay();
    void layColumns();
    void layEmpty();
    StackColumn* addColumn();
    void step(StackColumn* from, int by);

    const ui::Theme& theme_;
    std::shared_ptr<const ShelfModel> model_;
    std::vector<StackColumn*> columns_;
    std::string current_;
    QSize view_;
    QRectF legend_;
    QWidget* empty_;
    QLabel *emptyTitle_, *emptyText_;
    QPushButton* newStack_;
};

}
