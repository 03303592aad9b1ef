#include "ui/shelf/shelf_board.h"

#include "ui/common/panels.h"

#include <QEvent>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace tierloam::shelf {

ShelfBoard::ShelfBoard(const ui::Theme& theme, QWidget* parent) : QWidget{parent}, theme_{theme}, empty_{new QWidget{this}}
{
    setProperty("page", true);
    setObjectName(QStringLiteral("shelfBoard"));
    setAttribute(Qt::WA_OpaquePaintEvent); // it fills its ground itself, so that scrolling moves pixels and paints only what comes into view
    ui::setAccess(this, tr("Shelf"), drawing::legendText());
    emptyTitle_ = ui::makeLabel({}, ui::TextRole::title, empty_, true);
    emptyText_ = ui::makeLabel({}, ui::TextRole::body, empty_, true);
    newStack_ = ui::makeButton(tr("Start a stack…"), ui::Tone::moss, empty_);
    newStack_->setObjectName(QStringLiteral("startStackButton"));
    auto* column = new QVBoxLayout{empty_};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(12);
    column->addWidget(emptyTitle_);
    column->addWidget(emptyText_);
    column->addWidget(newStack_, 0, Qt::AlignLeading);
    column->addStretch(1);
    empty_->hide();
    connect(newStack_, &QPushButton::clicked, this, &ShelfBoard::newStackWanted);
    connect(&theme_, &ui::Theme::changed, this, [this] {
        lay();
        update();
    });
}

StackColumn* ShelfBoard::addColumn()
{
    auto* column = new StackColumn{theme_, compact_, this};
    const auto named = [column] { return QString::fromStdString(column->key()); };
    connect(column, &StackColumn::feedWanted, this, [this, named] { Q_EMIT feedWanted(named()); });
    connect(column, &StackColumn::borneWanted, this, [this, named] { Q_EMIT borneWanted(named()); });
    connect(column, &StackColumn::coverWanted, this, [this, named] { Q_EMIT coverWanted(named()); });
    connect(column, &StackColumn::waterWanted, this, [this, named] { Q_EMIT waterWanted(named()); });
    connect(column, &StackColumn::drainWanted, this, [this, named] { Q_EMIT drainWanted(named()); });
    connect(column, &StackColumn::moreWanted, this, [this, named] { Q_EMIT moreWanted(named()); });
    connect(column->canvas(), &StackCanvas::partActivated, this, [this, named](int part) { Q_EMIT partActivated(named(), part); });
    connect(column->canvas(), &StackCanvas::neighbourWanted, this, [this, column](int by) { step(column, by); });
    connect(column->canvas(), &StackCanvas::walked, this, [this, column] {
        current_ = column->key();
        Q_EMIT columnWalked(column);
    });
    connect(column->canvas(), &StackCanvas::rowWanted, this, [this, column](int by) { stepRow(column, by); });
    connect(column->canvas(), &StackCanvas::dragged, this, [this, column](const QPoint& at) { dragTo(column, mapFromGlobal(at)); });
    connect(column->canvas(), &StackCanvas::dropped, this, [this, column](const QPoint& at) { drop(column, mapFromGlobal(at)); });
    connect(column->canvas(), &StackCanvas::dragEnded, this, [this, column] {
        column->canvas()->setLifted(false);
        dropAt_.reset();
        update();
    });
    column->show();
    return column;
}

void ShelfBoard::step(StackColumn* from, int by)
{
    const auto at = std::find(columns_.begin(), columns_.end(), from) - columns_.begin() + by;
    if (at < 0 || at >= static_cast<std::ptrdiff_t>(columns_.size())) return;
    StackColumn* to = columns_[static_cast<std::size_t>(at)];
    to->canvas()->setCurrentPart(from->canvas()->currentPart());
    to->canvas()->setFocus(Qt::OtherFocusReason);
}

void ShelfBoard::stepRow(StackColumn* from, int by)
{
    const auto at = std::find(columns_.begin(), columns_.end(), from) - columns_.begin() + by * perRow_;
    if (at < 0 || at >= static_cast<std::ptrdiff_t>(columns_.size())) return;
    StackCanvas* to = columns_[static_cast<std::size_t>(at)]->canvas();
    to->setCurrentPart(by < 0 ? 0 : to->partCount() - 1);
    to->setFocus(Qt::OtherFocusReason);
}

/// How many stacks would stand before one that is let go there.
int ShelfBoard::placeAt(QPoint at) const
{
    const bool leftToRight = layoutDirection() == Qt::LeftToRight;
    const int count = static_cast<int>(columns_.size());
    for (int first = 0; first < count; first += perRow_) {
        const int last = std::min(count, first + perRow_);
        const bool lastRow = last == count;
        if (!lastRow && at.y() > columns_[static_cast<std::size_t>(first)]->geometry().bottom()) continue;
        int place = first;
        while (place < last) {
            const int middle = columns_[static_cast<std::size_t>(place)]->geometry().center().x();
            if (leftToRight ? at.x() < middle : at.x() > middle) break;
            ++place;
        }
        return place;
    }
    return count;
}

void ShelfBoard::dragTo(StackColumn* column, QPoint at)
{
    column->canvas()->setLifted(true);
    const int place = placeAt(at);
    if (dropAt_ != place) {
        dropAt_ = place;
        update();
    }
    Q_EMIT dragMoved(at);
}

void ShelfBoard::drop(StackColumn* column, QPoint at)
{
    const int from = static_cast<int>(std::find(columns_.begin(), columns_.end(), column) - columns_.begin());
    const int before = placeAt(at);
    const int place = before > from ? before - 1 : before; // it stands there no more once it is lifted
    if (place != from) Q_EMIT placeWanted(QString::fromStdString(column->key()), place);
}

QRect ShelfBoard::dropMark() const
{
    if (!dropAt_ || columns_.empty()) return {};
    const bool after = *dropAt_ > 0 && (*dropAt_ >= static_cast<int>(columns_.size()) || *dropAt_ % perRow_ == 0);
    const QRect beside = columns_[static_cast<std::size_t>(after && *dropAt_ >= static_cast<int>(columns_.size()) ? *dropAt_ - 1 : *dropAt_)]->geometry();
    const bool end = after && *dropAt_ >= static_cast<int>(columns_.size());
    const bool atRight = end == (layoutDirection() == Qt::LeftToRight);
    return {atRight ? beside.right() + 4 : beside.left() - 8, beside.top() + 4, 4, beside.height() - 8};
}

void ShelfBoard::showPart(const QRect& seen)
{
    if (!compact_) return;
    const QRect wanted = seen.adjusted(0, -seen.height() / 2, 0, seen.height() / 2);
    for (StackColumn* column : columns_)
        if (!column->furnished() && column->geometry().intersects(wanted)) column->furnish();
}

/// Columns stand for places, not for stacks: when the order changes, the focus goes with its stack.
void ShelfBoard::followFocus(const std::string& stack, int part) const
{
    StackColumn* to = column(stack);
    if (!to || to->canvas()->hasFocus()) return;
    to->canvas()->setCurrentPart(part);
    to->canvas()->setFocus(Qt::OtherFocusReason);
}

void ShelfBoard::setModel(std::shared_ptr<const ShelfModel> model, bool moves)
{
    model_ = std::move(model);
    const auto focused = std::find_if(columns_.begin(), columns_.end(), [](const StackColumn* each) { return each->canvas()->hasFocus(); });
    const std::optional<std::pair<std::string, int>> focus = focused == columns_.end() ? std::nullopt : std::optional{std::pair{(*focused)->key(), (*focused)->canvas()->currentPart()}};
    const bool compact = static_cast<int>(model_->stacks.size()) >= compactFrom;
    if (compact != compact_) {
        for (StackColumn* column : columns_) {
            column->hide();
            column->deleteLater();
        }
        columns_.clear();
        compact_ = compact;
    }
    while (columns_.size() > model_->stacks.size()) {
        columns_.back()->deleteLater();
        columns_.back()->hide();
        columns_.pop_back();
    }
    while (columns_.size() < model_->stacks.size()) columns_.push_back(addColumn());
    for (std::size_t i = 0; i < columns_.size(); ++i) columns_[i]->setStack(model_, i, moves);
    if (model_->past()) {
        emptyTitle_->setText(tr("No stack stood on this day"));
        emptyText_->setText(tr("The first one was started later. Move the slider on, or go back to today."));
    } else if (model_->retiredOnly) {
        emptyTitle_->setText(tr("No stack stands any more"));
        emptyText_->setText(tr("All stacks are retired. Their journal is kept, and the slider still shows them as they stood."));
    } else {
        emptyTitle_->setText(tr("No stack stands here yet"));
        emptyText_->setText(tr("Once a stack is started, it is drawn here from the side: its trays with what lies in them, its worms and its sump, "
                               "and under it what to do next."));
    }
    newStack_->setVisible(!model_->past());
    empty_->setVisible(columns_.empty());
    lay();
    update();
    markSelected(selectedStack_, selectedPart_);
    if (focus) followFocus(focus->first, focus->second);
}

StackColumn* ShelfBoard::column(const std::string& stack) const
{
    const auto found = std::find_if(columns_.begin(), columns_.end(), [&](const StackColumn* each) { return each->key() == stack; });
    return found == columns_.end() ? nullptr : *found;
}

StackColumn* ShelfBoard::current() const
{
    if (StackColumn* found = column(current_)) return found;
    return columns_.empty() ? nullptr : columns_.front();
}

void ShelfBoard::setCurrent(const std::string& stack) { current_ = stack; }

void ShelfBoard::markSelected(const std::string& stack, std::optional<int> part)
{
    selectedStack_ = stack;
    selectedPart_ = part;
    for (StackColumn* each : columns_) each->canvas()->setSelectedPart(each->key() == stack ? part : std::nullopt);
}

void ShelfBoard::setView(QSize view)
{
    if (view == view_) return;
    view_ = view;
    lay();
}

void ShelfBoard::lay()
{
    if (!model_ || view_.isEmpty()) return;
    if (columns_.empty()) layEmpty();
    else if (compact_) layGrid();
    else layColumns();
    Q_EMIT laid();
}

void ShelfBoard::paintEvent(QPaintEvent*)
{
    QPainter painter{this};
    painter.fillRect(rect(), theme_.palette().ground);
    if (dropAt_) painter.fillRect(dropMark(), theme_.palette().moss);
    if (legend_.isNull()) return;
    drawing::drawLegend(painter, legend_, theme_.palette(), drawing::Type::from(font()), legendForm_);
}

void ShelfBoard::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::LayoutDirectionChange) lay();
}

}
