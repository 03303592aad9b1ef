#pragma once

#include <QLayout>

#include <vector>

namespace tierloam::forms {

/// Rows of a label and a field. All labels stand beside their fields when the widest of both fit, else all stand above them, so that a
/// form keeps one face at any width and font. Its height for a width is exact: a form that gets it does not scroll.
class RowsLayout : public QLayout {
    Q_OBJECT

public:
    explicit RowsLayout(QWidget* parent);
    ~RowsLayout() override;

    void addRow(QWidget* label, QWidget* field);
    /// Over the whole width.
    void addWide(QWidget* widget);
    void setRowShown(const QWidget* field, bool shown);

    void addItem(QLayoutItem* item) override; ///< as a wide row
    int count() const override;
    QLayoutItem* itemAt(int index) const override;
    QLayoutItem* takeAt(int index) override;
    Qt::Orientations expandingDirections() const override { return Qt::Horizontal; }
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize sizeHint() const override;
    QSize minimumSize() const override;
    void setGeometry(const QRect& rect) override;

private:
    struct Row {
        QLayoutItem* label = nullptr; ///< nullptr: wide
        QLayoutItem* field = nullptr;
        bool shown() const { return field && !field->isEmpty(); }
    };

    int labelWidth() const;
    int leastFieldWidth() const;
    bool labelsBeside(int width) const;
    /// Places all rows within `rect` when `place`, else only adds up; returns the height.
    int arrange(const QRect& rect, bool place) const;

    std::vector<Row> rows_;
};

}
