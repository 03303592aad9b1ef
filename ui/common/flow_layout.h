#pragma once

#include <QLayout>

#include <vector>

namespace tierloam::ui {

/// Lays its items in reading direction and goes on in a new line when the width is used up, as words do; for rows of buttons that
/// must stay whole at large fonts.
class FlowLayout : public QLayout {
    Q_OBJECT

public:
    explicit FlowLayout(QWidget* parent = nullptr, int gap = 8);
    ~FlowLayout() override;

    void addItem(QLayoutItem* item) override;
    int count() const override { return static_cast<int>(items_.size()); }
    QLayoutItem* itemAt(int index) const override;
    QLayoutItem* takeAt(int index) override;
    Qt::Orientations expandingDirections() const override { return {}; }
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize minimumSize() const override;
    QSize sizeHint() const override;
    void setGeometry(const QRect& rect) override;
    /// What of the beginning of the first line is taken by something else, and how high that is.
    void setTaken(QSize taken) { taken_ = taken; }

private:
    /// Height used; items are moved only when `place`.
    int lay(const QRect& rect, bool place) const;

    std::vector<QLayoutItem*> items_;
    QSize taken_{0, 0};
    int gap_;
};

}
