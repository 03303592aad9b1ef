#include "ui/forms/rows_layout.h"

#include <QStyle>
#include <QWidget>

#include <algorithm>

namespace tierloam::forms {

namespace {

constexpr int between = 7;       // px between rows
constexpr int besideLabel = 10;  // px between a label and its field
constexpr int belowLabel = 2;    // px between a label and the field under it

int heightOf(const QLayoutItem& item, int width)
{
    return item.hasHeightForWidth() ? item.heightForWidth(width) : item.sizeHint().height();
}

}

RowsLayout::RowsLayout(QWidget* parent) : QLayout{parent}
{
    setContentsMargins(0, 0, 0, 0);
}

RowsLayout::~RowsLayout()
{
    for (const Row& row : rows_) {
        delete row.label;
        delete row.field;
    }
}

void RowsLayout::addRow(QWidget* label, QWidget* field)
{
    addChildWidget(label);
    addChildWidget(field);
    rows_.push_back({new QWidgetItem{label}, new QWidgetItem{field}});
    invalidate();
}

void RowsLayout::addWide(QWidget* widget)
{
    addChildWidget(widget);
    rows_.push_back({nullptr, new QWidgetItem{widget}});
    invalidate();
}

void RowsLayout::setRowShown(const QWidget* field, bool shown)
{
    for (const Row& row : rows_) {
        if (row.field->widget() != field) continue;
        row.field->widget()->setVisible(shown);
        if (row.label) row.label->widget()->setVisible(shown);
    }
    invalidate();
}

void RowsLayout::addItem(QLayoutItem* item)
{
    rows_.push_back({nullptr, item});
    invalidate();
}

int RowsLayout::count() const
{
    int n = 0;
    for (const Row& row : rows_) n += (row.label ? 1 : 0) + (row.field ? 1 : 0);
    return n;
}

QLayoutItem* RowsLayout::itemAt(int index) const
{
    for (const Row& row : rows_) {
        if (row.label && index-- == 0) return row.label;
        if (row.field && index-- == 0) return row.field;
    }
    return nullptr;
}

QLayoutItem* RowsLayout::takeAt(int index)
{
    for (auto row = rows_.begin(); row != rows_.end(); ++row) {
        for (QLayoutItem* Row::*part : {&Row::label, &Row::field}) {
            QLayoutItem* item = (*row).*part;
            if (!item || index-- != 0) continue;
            (*row).*part = nullptr;
            if (!row->label && !row->field) rows_.erase(row);
            return item;
        }
    }
    return nullptr;
}

int RowsLayout::heightForWidth(int width) const
{
    return arrange(QRect{0, 0, width, 0}, false);
}

QSize RowsLayout::sizeHint() const
{
    int widestField = 0;
    for (const Row& row : rows_) {
        if (row.shown()) widestField = std::max(widestField, row.field->sizeHint().width() + (row.label ? 0 : -labelWidth()));
    }
    const int width = labelWidth() + besideLabel + widestField;
    return {width, heightForWidth(width)};
}

QSize RowsLayout::minimumSize() const
{
    const int width = std::max(leastFieldWidth(), labelWidth());
    return {width, 0}; // the height depends on the width: see heightForWidth
}

void RowsLayout::setGeometry(const QRect& rect)
{
    QLayout::setGeometry(rect);
    arrange(rect, true);
}

int RowsLayout::labelWidth() const
{
    int widest = 0;
    for (const Row& row : rows_) {
        if (row.label && row.shown()) widest = std::max(widest, row.label->sizeHint().width());
    }
    return widest;
}

int RowsLayout::leastFieldWidth() const
{
    int widest = 0;
    for (const Row& row : rows_) {
        if (row.shown()) widest = std::max(widest, row.field->minimumSize().width());
    }
    return widest;
}

bool RowsLayout::labelsBeside(int width) const
{
    int widest = 0;
    for (const Row& row : rows_) {
        if (row.label && row.shown()) widest = std::max(widest, row.field->minimumSize().width());
    }
    return labelWidth() + besideLabel + widest <= width;
}

int RowsLayout::arrange(const QRect& rect, bool place) const
{
    const bool beside = labelsBeside(rect.width());
    const int indent = beside ? labelWidth() + besideLabel : 0;
    const auto put = [&](QLayoutItem* item, int x, int y, int width, int height) {
        if (place) item->setGeometry(QStyle::visualRect(parentWidget()->layoutDirection(), rect, QRect{rect.x() + x, y, width, height}));
    };
    int y = rect.y();
    bool first = true;
    for (const Row& row : rows_) {
        if (!row.shown()) continue;
        if (!first) y += between;
        first = false;
        if (!row.label) {
            const int height = heightOf(*row.field, rect.width());
            put(row.field, 0, y, rect.width(), height);
            y += height;
            continue;
        }
        const int labelHeight = row.label->sizeHint().height();
        const int width = rect.width() - indent;
        const int height = heightOf(*row.field, width);
        if (beside) {
            put(row.label, 0, y, labelWidth(), std::min(height, labelHeight + 2 * belowLabel));
            put(row.field, indent, y, width, height);
            y += std::max(height, labelHeight);
        } else {
            put(row.label, 0, y, rect.width(), labelHeight);
            y += labelHeight + belowLabel;
            put(row.field, 0, y, width, height);
            y += height;
        }
    }
    return y - rect.y();
}

}
