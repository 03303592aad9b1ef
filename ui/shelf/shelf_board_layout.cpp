#include "ui/shelf/shelf_board.h"
#include "ui/shelf/strips_view.h"

#include <QLayout>

#include <algorithm>
#include <cmath>

/// Where everything on the shelf's board stands.
namespace tierloam::shelf {

namespace {

constexpr int margin = 18, columnGap = 12;
constexpr double topSpace = 4;
/// Words stand in one of its small charts and need a line of their own, or they would cross its axis.
bool saysWhatWillStand(const StackModel& stack)
{
    return !(stack.processing.nothing.isEmpty() && stack.drained.nothing.isEmpty() && stack.colony.nothing.isEmpty());
}

constexpr double widestGain = 2, tallestGain = 2.2; ///< of a compact stack over the smallest that can be read

}

void ShelfBoard::layEmpty()
{
    const int width = std::min(view_.width() - 2 * margin, theme_.px(560));
    const int height = std::max(empty_->layout()->heightForWidth(width), 10);
    empty_->setGeometry(layoutDirection() == Qt::RightToLeft ? view_.width() - margin - width : margin, theme_.px(40), width, height);
    legend_ = {};
    perRow_ = 1;
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
    const double narrowest = beside + std::max(86.0, 5.6 * drawing::lineHeight(type.small)); // three in long words at 1280 px, the due list beside them
    const double comfortable = (beside + std::max(104.0, 7.2 * drawing::lineHeight(type.small))) * 1.35;
    const double room = view_.width() - 2.0 * margin + columnGap;
    const int together = std::min(count, std::max(3, static_cast<int>(room / (comfortable + columnGap))));
    const double widest = beside + theme_.px(520);
    const int width = static_cast<int>(std::clamp(room / together - columnGap, narrowest, widest));
    frame.boxWidth = width - beside;

    ColumnRows rows;
    perRow_ = count;
    for (std::size_t i = 0; i < columns_.size(); ++i) {
        frame.head = std::max(frame.head, std::ceil(StackCanvas::headHeight(model_->stacks[i], width - 4, type, false)));
        rows.verdict = std::max(rows.verdict, columns_[i]->verdictHeight(width));
        rows.buttons = std::max(rows.buttons, columns_[i]->buttonsHeight(width));
    }
    const double boardWidth = std::max<double>(count * (width + columnGap) - columnGap + 2 * margin, view_.width());
    const auto legendHeight = [&] { return drawing::legendHeight(view_.width() - 2.0 * margin, type, legendForm_); };
    const auto legendGap = [&] { return legendForm_ == drawing::LegendForm::roomy ? 2.0 * rows.gap : 3.0 - rows.gap; }; // the small charts have theirs

    // What the words leave goes to the drawing first, a part of it to the small charts.
    double leastStrips = std::ceil(StripsView::heightFor(font(), 0));
    const double mostStrips = std::ceil(StripsView::heightFor(font(), 1));
    const double smallest = tallest * least;
    const auto around = [&] { return rows.total() + leastStrips + rows.gap + belowLegend() + frame.head + topSpace + 4 + legendHeight() + legendGap(); };
    legendForm_ = drawing::LegendForm::roomy;
    if (around() + smallest > view_.height()) { // the legend is to be in sight
        legendForm_ = drawing::LegendForm::tight;
        rows.gap = 6;
    }
    if (around() + smallest > view_.height()) {
        rows.gap = 4;
        if (std::ranges::none_of(model_->stacks, &saysWhatWillStand)) leastStrips = std::ceil(StripsView::heightFor(font(), drawing::pressedStrip));
    }
    if (around() + smallest > view_.height()) rows.gap = 2; // a last few pixels, in the language of the longest words
    const double others = around();
    const double spare = std::max(0.0, view_.height() - others - smallest - 2); // heights are rounded upwards
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
    layLegend(boardWidth, height + legendGap());
}

int ShelfBoard::belowLegend() const { return legendForm_ == drawing::LegendForm::roomy ? ColumnRows{}.gap : 2; }

void ShelfBoard::layLegend(double boardWidth, double top)
{
    const double width = view_.width() - 2.0 * margin;
    const double height = drawing::legendHeight(width, drawing::Type::from(font()), legendForm_);
    legend_ = QRectF{layoutDirection() == Qt::LeftToRight ? static_cast<double>(margin) : boardWidth - margin - width, top, width, height};
    setMinimumSize(static_cast<int>(boardWidth) > view_.width() ? static_cast<int>(boardWidth) : 0, static_cast<int>(std::ceil(legend_.bottom())) + belowLegend());
    resize(std::max(view_.width(), static_cast<int>(boardWidth)), std::max(view_.height(), minimumHeight()));
}

/// Rows of small stacks on one scale, as many beside each other as can be read.
void ShelfBoard::layGrid()
{
    const drawing::Type type = drawing::Type::from(font());
    const int count = static_cast<int>(columns_.size());
    std::vector<drawing::StackPicture> pictures;
    pictures.reserve(columns_.size());
    double tallest = 1;
    for (const StackColumn* column : columns_) {
        pictures.push_back(column->canvas()->picture());
        tallest = std::max(tallest, drawing::heightCm(pictures.back()));
    }
    ShelfFrame frame;
    frame.labels = drawing::labelSpace(pictures, type);
    const double least = drawing::smallestScale(pictures, frame.labels);
    const auto besideAt = [&](double pxPerCm) { return drawing::sideSpace({pxPerCm, 1}) + drawing::labelGap({pxPerCm, 1}) + frame.labels.width + 1; };
    const double narrowest = besideAt(least) + std::max(72.0, 4.5 * drawing::lineHeight(type.small));
    const double smallest = tallest * least;
    const double room = view_.width() - 2.0 * margin + columnGap;
    const int most = std::clamp(static_cast<int>(room / (narrowest + columnGap)), 1, count);
    const auto widthOf = [&](int perRow) { return std::clamp(room / perRow - columnGap, narrowest, narrowest * widestGain); };
    ColumnRows rows;
    rows.gap = 6;
    legendForm_ = drawing::LegendForm::roomy;
    const double legend = drawing::legendHeight(view_.width() - 2.0 * margin, type) + 3 * rows.gap;
    const double words = drawing::lineHeight(type.strong) + 2 * drawing::lineHeight(type.small) + 14 + 3 * rows.gap; // about, for the choice alone
    // As many beside each other as can be read; fewer and larger ones where the view has room for that.
    double best = 0;
    for (int perRow = most; perRow >= 1; --perRow) {
        const int lines = (count + perRow - 1) / perRow;
        const double high = ((view_.height() - legend) / lines - words) / smallest;
        const double wide = (widthOf(perRow) - besideAt(least)) / (narrowest - besideAt(least));
        const double gain = perRow == most ? 1.0 : std::min({high, wide, tallestGain});
        if (gain > best * 1.02) {
            best = gain;
            perRow_ = perRow;
        }
    }
    const int width = static_cast<int>(widthOf(perRow_));
    frame.boxWidth = width - besideAt(least);
    const auto widest = std::max_element(model_->stacks.begin(), model_->stacks.end(), [](const StackModel& a, const StackModel& b) { return a.feedLabel.size() < b.feedLabel.size(); });
    rows.buttons = columns_[static_cast<std::size_t>(widest - model_->stacks.begin())]->buttonsHeight(width);
    for (const StackModel& stack : model_->stacks) frame.head = std::max(frame.head, std::ceil(StackCanvas::headHeight(stack, width - 4, type, true)));

    const int lines = (count + perRow_ - 1) / perRow_;
    const double spare = (view_.height() - legend) / lines - frame.head - topSpace - 4 - rows.buttons - 3 * rows.gap;
    const double drawing = std::clamp(spare, smallest, smallest * tallestGain);
    frame.scale = drawing::scaleFor(pictures, frame.labels, frame.boxWidth, drawing);
    frame.side = drawing::sideSpace(frame.scale);
    frame.boxWidth = width - besideAt(frame.scale.pxPerCm);
    frame.scale = drawing::scaleFor(pictures, frame.labels, frame.boxWidth, drawing);
    rows.canvas = static_cast<int>(std::ceil(frame.head + topSpace + tallest * frame.scale.pxPerCm + 4));

    const int height = rows.total() + rows.gap;
    const double boardWidth = std::max<double>(perRow_ * (width + columnGap) - columnGap + 2 * margin, view_.width());
    for (int i = 0; i < count; ++i) {
        const int before = margin + i % perRow_ * (width + columnGap);
        const int x = layoutDirection() == Qt::LeftToRight ? before : static_cast<int>(boardWidth) - before - width;
        columns_[static_cast<std::size_t>(i)]->setGeometry(x, i / perRow_ * height, width, rows.total());
        columns_[static_cast<std::size_t>(i)]->setRows(rows, frame);
    }
    layLegend(boardWidth, lines * height + 1.0 * rows.gap);
    showPart(visibleRegion().boundingRect());
}

}
