#include "ui/shelf/shelf_board.h"

#include "ui/common/panels.h"
#include "ui/drawing/legend.h"
#include "ui/shelf/strips_view.h"

#include <QEvent>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace tierloam::shelf {

namespace {

constexpr int margin = 18, columnGap = 12;
constexpr double topSpace = 4;

}

ShelfBoard::ShelfBoard(const ui::Theme& theme, QWidget* parent) : QWidget{parent}, theme_{theme}, empty_{new QWidget{this}}
{
    setProperty("page", true);
    setObjectName(QStringLiteral("shelfBoard"));
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
    auto* column = new StackColumn{theme_, this};
    const auto named = [column] { return QString::fromStdString(column->key()); };
    connect(column, &StackColumn::feedWanted, this, [this, named] { Q_EMIT feedWanted(named()); });
    connect(column, &StackColumn::waterWanted, this, [this, named] { Q_EMIT waterWanted(named()); });
    connect(column, &StackColumn::drainWanted, this, [this, named] { Q_EMIT drainWanted(named()); });
    connect(column, &StackColumn::moreWanted, this, [this, named] { Q_EMIT moreWanted(named()); });
    connect(column->canvas(), &StackCanvas::partActivated, this, [this, named](int part) { Q_EMIT partActivated(named(), part); });
    connect(column->canvas(), &StackCanvas::neighbourWanted, this, [this, column](int by) { step(column, by); });
    connect(column->canvas(), &StackCanvas::walked, this, [this, column] {
        current_ = column->key();
        Q_EMIT columnWalked(column);
    });
    if (!columns_.empty()) setTabOrder(columns_.back()->moreButton(), column->canvas());
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

void ShelfBoard::setModel(std::shared_ptr<const ShelfModel> model)
{
    model_ = std::move(model);
    while (columns_.size() > model_->stacks.size()) {
        columns_.back()->deleteLater();
        columns_.back()->hide();
        columns_.pop_back();
    }
    while (columns_.size() < model_->stacks.size()) columns_.push_back(addColumn());
    for (std::size_t i = 0; i < columns_.size(); ++i) columns_[i]->setStack(model_, i);
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
    else layColumns();
}

void ShelfBoard::layEmpty()
{
    const int width = std::min(view_.width() - 2 * margin, theme_.px(560));
    const int height = std::max(empty_->layout()->heightForWidth(width), 10);
    empty_->setGeometry(layoutDirection() == Qt::RightToLeft ? view_.width() - margin - width : margin, theme_.px(40), width, height);
    legend_ = {};
    setMinimumSize(0, height + theme_.px(60));
    resize(std::max(view_.width(), 1), std::max(view_.height(), minimumHeight()));
}

void ShelfBoard::layColumns()
{
    const drawing::Type type = drawing::Type::from(font());
    const int count = static_cast<int>(columns_.size());
    std::vector<drawing::StackPicture> pictures;
    pictures.reserve(model_->stacks.size());
    for (const StackModel& stack : model_->stacks) pictures.push_back(stack.picture);

    ShelfFrame frame;
    frame.labels = drawing::labelSpace(pictures, type);
    double tallest = 1;
    for (const drawing::StackPicture& picture : pictures) tallest = std::max(tallest, drawing::heightCm(picture));
    const double least = drawing::smallestScale(pictures, frame.labels);
    const auto besideAt = [&](double pxPerCm) { return drawing::sideSpace({pxPerCm, 1}) + drawing::labelGap({pxPerCm, 1}) + frame.labels.width + 1; };

    // Width of a column: three share the view; where more fit comfortably, more do; none is narrower than its words and a readable tray.
    const double beside = besideAt(least);
    const double narrowest = beside + std::max(104.0, 7.2 * drawing::lineHeight(type.small));
    const double comfortable = narrowest * 1.35;
    const double room = view_.width() - 2.0 * margin + columnGap;
    const int together = std::min(count, std::max(3, static_cast<int>(room / (comfortable + columnGap))));
    const double widest = beside + theme_.px(520);
    const int width = static_cast<int>(std::clamp(room / together - columnGap, narrowest, widest));
    frame.boxWidth = width - beside;

    ColumnRows rows;
    for (std::size_t i = 0; i < columns_.size(); ++i) {
        frame.head = std::max(frame.head, std::ceil(StackCanvas::headHeight(model_->stacks[i], width - 4, type)));
        rows.verdict = std::max(rows.verdict, columns_[i]->verdictHeight(width));
        rows.buttons = std::max(rows.buttons, columns_[i]->buttonsHeight(width));
    }
    const double boardWidth = std::max<double>(count * (width + columnGap) - columnGap + 2 * margin, view_.width());
    const double legendWidth = view_.width() - 2.0 * margin;
    const double legendHeight = drawing::legendHeight(legendWidth, type);

    // What the words leave goes to the drawing first, a part of it to the small charts.
    const double leastStrips = std::ceil(StripsView::heightFor(font(), 0)), mostStrips = std::ceil(StripsView::heightFor(font(), 1));
    const double others = rows.total() + leastStrips + legendHeight + 3 * rows.gap + frame.head + topSpace + 4;
    const double smallest = tallest * least;
    const double spare = std::max(0.0, view_.height() - others - smallest);
    rows.strips = static_cast<int>(std::min(mostStrips, leastStrips + spare * 0.2));
    const double drawing = smallest + std::max(0.0, spare - (rows.strips - leastStrips));
    frame.scale = drawing::scaleFor(pictures, frame.labels, frame.boxWidth, drawing);
    // The space beside a box grows with the scale and takes from its width; once more with what came out.
    frame.side = drawing::sideSpace(frame.scale);
    frame.boxWidth = width - besideAt(frame.scale.pxPerCm);
    frame.scale = drawing::scaleFor(pictures, frame.labels, frame.boxWidth, drawing);
    rows.canvas = static_cast<int>(std::ceil(frame.head + topSpace + tallest * frame.scale.pxPerCm + 4));

    const int height = rows.total();
    const bool leftToRight = layoutDirection() == Qt::LeftToRight;
    for (int i = 0; i < count; ++i) {
        const int before = margin + i * (width + columnGap);
        const int x = leftToRight ? before : static_cast<int>(boardWidth) - before - width;
        columns_[static_cast<std::size_t>(i)]->setGeometry(x, 0, width, height);
        columns_[static_cast<std::size_t>(i)]->setRows(rows, frame);
    }
    legend_ = QRectF{leftToRight ? static_cast<double>(margin) : boardWidth - margin - legendWidth, height + 2.0 * rows.gap, legendWidth, legendHeight};
    setMinimumSize(static_cast<int>(boardWidth) > view_.width() ? static_cast<int>(boardWidth) : 0, static_cast<int>(legend_.bottom()) + rows.gap);
    resize(std::max(view_.width(), static_cast<int>(boardWidth)), std::max(view_.height(), minimumHeight()));
}

void ShelfBoard::paintEvent(QPaintEvent*)
{
    QPainter painter{this};
    painter.fillRect(rect(), theme_.palette().ground);
    if (legend_.isNull()) return;
    drawing::drawLegend(painter, legend_, theme_.palette(), drawing::Type::from(font()));
}

void ShelfBoard::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::LayoutDirectionChange) lay();
}

}
