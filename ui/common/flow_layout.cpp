#include "ui/common/flow_layout.h"

#include <QStyle>
#include <QWidget>

#include <algorithm>

namespace tierloam::ui {

FlowLayout::FlowLayout(QWidget* parent, int gap) : QLayout{parent}, gap_{gap}
{
    setContentsMargins(0, 0, 0, 0);
}

FlowLayout::~FlowLayout()
{
    for (QLayoutItem* item : items_) delete item;
}

void FlowLayout::addItem(QLayoutItem* item)
{
    items_.push_back(item);
}

QLayoutItem* FlowLayout::itemAt(int index) const
{
    return index >= 0 && index < count() ? items_[static_cast<std::size_t>(index)] : nullptr;
}

QLayoutItem* FlowLayout::takeAt(int index)
{
    QLayoutItem* item = itemAt(index);
    if (item) items_.erase(items_.begin() + index);
    return item;
}

int FlowLayout::heightForWidth(int width) const
{
    return lay(QRect{0, 0, width, 0}, false);
}

QSize FlowLayout::minimumSize() const
{
    QSize size;
    for (const QLayoutItem* item : items_) size = size.expandedTo(item->minimumSize());
    const QMargins margins = contentsMargins();
    return size + QSize{margins.left() + margins.right(), margins.top() + margins.bottom()};
}

QSize FlowLayout::sizeHint() const
{
    int width = 0, height = 0;
    for (const QLayoutItem* item : items_) {
        if (item->isEmpty()) continue;
        width += item->sizeHint().width() + (width > 0 ? gap_ : 0);
        height = std::max(height, item->sizeHint().height());
    }
    const QMargins margins = contentsMargins();
    return {width + margins.left() + margins.right(), height + margins.top() + margins.bottom()};
}

void FlowLayout::setGeometry(const QRect& rect)
{
    QLayout::setGeometry(rect);
    lay(rect, true);
}

int FlowLayout::lay(const QRect& rect, bool place) const
{
    const QMargins margins = contentsMargins();
    const QRect inside = rect.marginsRemoved(margins);
    const Qt::LayoutDirection direction = parentWidget() ? parentWidget()->layoutDirection() : Qt::LeftToRight;
    int x = inside.left() + taken_.width(), y = inside.top(), line = taken_.height();
    std::vector<std::pair<QLayoutItem*, QRect>> inLine;
    const auto endLine = [&] {
        for (auto& [item, box] : inLine) {
            if (!place) break;
            box.moveTop(y + (line - box.height()) / 2); // small words beside large ones stand on their middle
            item->setGeometry(QStyle::visualRect(direction, inside, box));
        }
        inLine.clear();
    };
    for (QLayoutItem* item : items_) {
        if (item->isEmpty()) continue;
        QSize size = item->sizeHint().expandedTo(item->minimumSize());
        size.setWidth(std::min(size.width(), std::max(inside.width(), item->minimumSize().width())));
        if (item->hasHeightForWidth()) size.setHeight(std::max(size.height(), item->heightForWidth(size.width()))); // a narrow field whose fault takes two lines
        if (x > inside.left() && x + size.width() > inside.left() + inside.width()) {
            endLine();
            x = inside.left();
            y += line + gap_;
            line = 0;
        }
        inLine.emplace_back(item, QRect{QPoint{x, y}, size});
        x += size.width() + gap_;
        line = std::max(line, size.height());
    }
    endLine();
    return y + line - rect.top() + margins.bottom();
}

}
