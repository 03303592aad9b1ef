#include "ui/trends/trend_chart.h"

#include "ui/common/formats.h"
#include "ui/trends/time_ticks.h"
#include "ui/trends/trend_words.h"

#include <QFontMetricsF>
#include <QGraphicsLayout>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QSignalBlocker>
#include <QtCharts/QCategoryAxis>
#include <QtCharts/QChart>
#include <QtCharts/QLineSeries>

#include <algorithm>
#include <cmath>

namespace tierloam::trends {

namespace {

double number(Day day)
{
    return static_cast<double>(day.time_since_epoch().count());
}

constexpr double wheelStep = 120;    ///< an eighth of a degree each: one notch
constexpr double notchZoom = 0.8;
constexpr int dragBegins = 5;        ///< px
constexpr double labelMargin = 4;    ///< px above and below each label of an axis, in Qt Charts

/// Labels are keys of a category axis: one that comes again gets an unseen mark.
QString unlike(QString label, QStringList& used)
{
    while (used.contains(label)) label += QChar{0x200b};
    used << label;
    return label;
}

using Labels = std::vector<std::pair<QString, double>>;

/// Gives the axis these labels at these places. Each one that it is given or loses makes it lay out the whole chart: so it hears of the last alone, and
/// of none when they are those it has.
void relabel(QCategoryAxis& axis, double start, const Labels& labels)
{
    const QStringList had = axis.categoriesLabels();
    const auto stands = [&](const QString& label, const auto& wanted) { return label == wanted.first && axis.endValue(label) == wanted.second; };
    if (axis.startValue() == start && std::ranges::equal(had, labels, stands)) return;
    QSignalBlocker quiet{axis};
    if (labels.empty()) quiet.unblock();
    for (const QString& label : had) axis.remove(label);
    axis.setStartValue(start);
    for (const auto& [label, place] : labels) {
        if (label == labels.back().first) quiet.unblock();
        axis.append(label, place);
    }
}

}

TrendChart::TrendChart(const ui::Theme& theme, QWidget* parent) : QChartView{parent}, theme_{theme}
{
    chart()->legend()->hide();
    chart()->setAnimationOptions(QChart::NoAnimation);
    chart()->setMargins(QMargins{0, 0, 0, 0});
    chart()->layout()->setContentsMargins(0, 0, 0, 0);
    chart()->setBackgroundRoundness(0);
    setRenderHint(QPainter::Antialiasing);
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::StrongFocus);
    viewport()->setFocusPolicy(Qt::NoFocus); // a graphics view would make of it a second stop for Tab
    setMouseTracking(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);

    days_ = new QCategoryAxis{this};
    days_->setLabelsPosition(QCategoryAxis::AxisLabelsPositionOnValue);
    values_ = new QCategoryAxis{this};
    values_->setLabelsPosition(QCategoryAxis::AxisLabelsPositionOnValue);
    chart()->addAxis(days_, Qt::AlignBottom);
    chart()->addAxis(values_, Qt::AlignLeft);
    ground_ = new QLineSeries{this};
    ground_->setPen(Qt::NoPen);
    chart()->addSeries(ground_);
    ground_->attachAxis(days_);
    ground_->attachAxis(values_);
    layer_ = new PlotLayer{chart()};
    crosshair_ = new Crosshair{chart()};
    connect(&theme_, &ui::Theme::changed, this, [this] { style(); placeLayer(); layTicks(); layValueTicks(); });
    style();
    placeLayer();
}

void TrendChart::setContents(Measure measure, std::vector<Series> series, const Period& period, double top, double bottom)
{
    const bool restyle = measure != measure_;
    measure_ = measure;
    series_ = std::move(series);
    period_ = period;
    top_ = top;
    bottom_ = bottom;
    if (restyle) style();
    placeLayer();
    layTicks();
    layValueTicks();
    layer_->setContents(series_, period_, series_.size() > 1);
    layer_->setReadyLine(measure_ == Measure::feedToCast ? std::optional{readyAtRatio} : std::nullopt);
    setCursorDay(cursor_);
    chart()->layout()->activate(); // else the axes would follow in a second frame
}

void TrendChart::style()
{
    const drawing::Palette& palette = theme_.palette();
    // The theme of Qt Charts first: it overwrites every pen. It is slow, so only when it changes.
    if (const auto wanted = palette.isDark ? QChart::ChartThemeDark : QChart::ChartThemeLight; chart()->theme() != wanted) chart()->setTheme(wanted);
    chart()->setBackgroundVisible(false);
    chart()->setPlotAreaBackgroundVisible(false);
    setBackgroundBrush(palette.panel);
    const QFont small = theme_.font(ui::TextSize::small);
    for (QAbstractAxis* axis : {static_cast<QAbstractAxis*>(days_), static_cast<QAbstractAxis*>(values_)}) {
        axis->setLabelsFont(small);
        axis->setLabelsBrush(palette.mutedInk);
        axis->setGridLinePen(QPen{palette.line, 1});
        axis->setLinePen(QPen{palette.outline, 1});
        axis->setShadesVisible(false);
    }
    values_->setLinePen(Qt::NoPen);
    days_->setGridLineVisible(false);
    ground_->setPen(Qt::NoPen);
    // Water is the colour of what was drained; what was to be expected is drawn over it in ink.
    const QColor own = measure_ == Measure::processing ? palette.moss : measure_ == Measure::colony ? palette.brick : measure_ == Measure::temperature ? palette.amber : palette.outline;
    layer_->setLook(palette, theme_.scale(), own, small);
    crosshair_->setLook(palette);
}

void TrendChart::layValueTicks()
{
    const AxisUnit unit = axisUnit(measure_);
    const bool log = measure_ == Measure::feedToCast;
    const auto place = [log](double value) { return log ? std::log10(value) : value; };
    values_->setRange(place(bottom_), place(top_));
    Labels labels;
    QStringList used;
    const auto tick = [&](double base, double shown, int decimals) { labels.emplace_back(unlike(ui::numberText(shown, decimals), used), place(base)); };
    // The axis shares its height out evenly and writes dots where a label has less than its own height and a margin.
    const double room = QFontMetricsF{theme_.font(ui::TextSize::small)}.height() + 2 * labelMargin + 1;
    const int most = std::max(2, static_cast<int>(plotRect().height() / room));
    if (log) {
        // 1, 2 and 5 of each decade where there is room, else the decades alone, else every other one, every third…
        const auto inside = [&](double value) { return value > bottom_ * 0.999 && value < top_ * 1.001; };
        for (int every = 0; labels.empty() || static_cast<int>(labels.size()) > most; ++every) {
            if (every > 1 && labels.size() <= 2) break;
            labels.clear();
            used.clear();
            for (int decade = static_cast<int>(std::floor(std::log10(bottom_))); decade <= 2; ++decade) {
                if (every > 1 && decade % every != 0) continue;
                for (const double each : {1.0, 2.0, 5.0})
                    if (const double value = each * std::pow(10.0, decade); inside(value) && (each == 1.0 || every == 0)) tick(value, value, std::max(0, -decade));
            }
        }
        relabel(*values_, place(bottom_) - 1, labels);
        return;
    }
    // Up to four steps of a round number.
    const double low = unit.shown(bottom_), high = unit.shown(top_);
    const double rough = (high - low) / std::clamp(most - 1, 1, 4);
    const double size = std::pow(10.0, std::floor(std::log10(rough)));
    double step = size;
    for (const double s : {1.0, 2.0, 2.5, 5.0, 10.0}) {
        step = s * size;
        if (step >= rough * 0.999) break;
    }
    const int decimals = std::max(0, static_cast<int>(std::ceil(-std::log10(step) - 1e-9)) + (std::abs(step / size - 2.5) < 1e-9 ? 1 : 0));
    for (double k = std::ceil(low / step - 1e-9); k * step <= high + step * 1e-6; ++k) tick((k * step - unit.offset) / unit.factor, k * step, decimals);
    relabel(*values_, bottom_ - (top_ - bottom_), labels);
}

void TrendChart::layTicks()
{
    const QFontMetricsF metrics{theme_.font(ui::TextSize::small)};
    const double plotWidth = std::max(80.0, plotRect().width());
    const auto fit = [&](const QString& label) {
        return std::clamp(static_cast<int>(plotWidth / (metrics.horizontalAdvance(label) * 1.5)), 2, 14);
    };
    Labels labels;
    QStringList used;
    for (const Tick& tick : timeTicks(period_.from, period_.until, fit(QStringLiteral("88 Mmm")), fit(QStringLiteral("8888")))) labels.emplace_back(unlike(tick.label, used), number(tick.day));
    days_->setRange(number(period_.from), number(period_.until));
    relabel(*days_, number(period_.from) - 1, labels);
}

QRectF TrendChart::plotRect() const
{
    // Fixed by the font, not by the labels of the moment, so that the days of all charts stand below each other.
    const QFontMetricsF metrics{theme_.font(ui::TextSize::small)};
    const double left = metrics.horizontalAdvance(QStringLiteral("0000")) + 10;
    const double right = metrics.horizontalAdvance(QStringLiteral("00")) / 2;
    const double top = metrics.height() / 2 + 3; // the topmost label is centred on its line
    return QRectF{left, top, std::max(20.0, width() - left - right), std::max(20.0, height() - top - metrics.height() - 10)};
}

void TrendChart::placeLayer()
{
    const QRectF area = plotRect();
    if (chart()->plotArea() != area) chart()->setPlotArea(area);
    frame_ = {area, number(period_.from), number(std::max(period_.until, period_.from + std::chrono::days{1})), bottom_, top_, measure_ == Measure::feedToCast};
    layer_->setFrame(frame_);
    crosshair_->setFrame(frame_);
}

QPointF TrendChart::inChart(const QPointF& position) const
{
    return chart()->mapFromScene(mapToScene(position.toPoint()));
}

void TrendChart::setCursorDay(std::optional<Day> day)
{
    cursor_ = day;
    crosshair_->setDay(day);
    QStringList parts;
    if (day) {
        for (const Series& series : series_) {
            const QString readout = readoutOf(measure_, series, *day, period_.today);
            parts << (series_.size() > 1 ? series.stack % QStringLiteral(", ") % readout : readout);
        }
    }
    const QString reading = parts.join(QStringLiteral("; "));
    setStatusTip(reading);
    const QString told = reading.isEmpty() ? sentence_ : reading % QStringLiteral(". ") % sentence_;
    if (told == accessibleDescription()) return;
    setAccessibleDescription(told); // tells assistive techniques by itself
}

void TrendChart::setSentence(const QString& sentence)
{
    sentence_ = sentence;
    setCursorDay(cursor_);
}

void TrendChart::mousePressEvent(QMouseEvent* event)
{
    if (event->button() == Qt::LeftButton && frame_.area.contains(inChart(event->position()))) pressed_ = inChart(event->position()).x();
    QChartView::mousePressEvent(event);
    event->accept(); // a drag is this chart's
}

void TrendChart::mouseMoveEvent(QMouseEvent* event)
{
    const QPointF here = inChart(event->position());
    if (pressed_ && (dragging_ || std::abs(here.x() - *pressed_) >= dragBegins)) {
        dragging_ = true;
        crosshair_->setSpan(std::pair{*pressed_, here.x()});
    }
    if (dragging_ || frame_.area.contains(here)) Q_EMIT cursorMoved(frame_.dayAt(here.x()));
    else Q_EMIT cursorMoved(std::nullopt);
    QChartView::mouseMoveEvent(event);
}

void TrendChart::endDrag()
{
    pressed_.reset();
    dragging_ = false;
    crosshair_->setSpan(std::nullopt);
}

void TrendChart::mouseReleaseEvent(QMouseEvent* event)
{
    const std::optional<double> began = dragging_ ? pressed_ : std::nullopt;
    endDrag();
    QChartView::mouseReleaseEvent(event);
    if (!began) return;
    const Day one = frame_.dayAt(*began), other = frame_.dayAt(inChart(event->position()).x());
    Q_EMIT spanAsked(std::min(one, other), std::max(one, other));
}

void TrendChart::mouseDoubleClickEvent(QMouseEvent* event)
{
    endDrag();
    if (event->button() == Qt::LeftButton) Q_EMIT wholeAsked();
    event->accept();
}

void TrendChart::leaveEvent(QEvent* event)
{
    if (!hasFocus()) Q_EMIT cursorMoved(std::nullopt);
    QChartView::leaveEvent(event);
}

void TrendChart::walk(int days)
{
    const Day from = cursor_.value_or(period_.today);
    Q_EMIT cursorMoved(std::clamp(from + std::chrono::days{days}, period_.from, period_.until));
}

void TrendChart::keyPressEvent(QKeyEvent* event)
{
    const int step = event->modifiers().testFlag(Qt::ControlModifier) ? 7 : 1;
    switch (event->key()) {
    case Qt::Key_Left: walk(-step); return;
    case Qt::Key_Right: walk(step); return;
    case Qt::Key_Home: Q_EMIT cursorMoved(period_.from); return;
    case Qt::Key_End: Q_EMIT cursorMoved(period_.until); return;
    case Qt::Key_Escape:
        if (!pressed_) break;
        endDrag();
        return;
    default: break;
    }
    // Up, Down and the page keys belong to the page, which scrolls.
    event->ignore();
}

void TrendChart::focusInEvent(QFocusEvent* event)
{
    QChartView::focusInEvent(event);
    viewport()->update();
    if (!cursor_ && event->reason() != Qt::MouseFocusReason) Q_EMIT cursorMoved(period_.today);
}

void TrendChart::focusOutEvent(QFocusEvent* event)
{
    QChartView::focusOutEvent(event);
    viewport()->update();
    Q_EMIT cursorMoved(std::nullopt);
}

void TrendChart::resizeEvent(QResizeEvent* event)
{
    QChartView::resizeEvent(event);
    placeLayer();
    if (event->oldSize().width() != event->size().width()) layTicks();
    if (event->oldSize().height() != event->size().height()) layValueTicks();
    // Axes are laid with the plot area of before, and nothing tells them of the new one while their labels stay the same.
    chart()->layout()->invalidate();
    chart()->layout()->activate();
}

void TrendChart::paintEvent(QPaintEvent* event)
{
    QChartView::paintEvent(event);
    if (!hasFocus()) return;
    QPainter painter{viewport()};
    painter.setPen(QPen{theme_.palette().moss, 2});
    painter.drawRect(viewport()->rect().adjusted(1, 1, -1, -1));
}

void TrendChart::wheelEvent(QWheelEvent* event)
{
    const QPointF here = inChart(event->position());
    if (scrolling_ || !frame_.area.contains(here) || event->modifiers().testFlag(Qt::ControlModifier)) {
        event->ignore(); // the page scrolls
        return;
    }
    const QPoint turned = event->angleDelta();
    event->accept();
    if (turned.x() != 0 || event->modifiers().testFlag(Qt::ShiftModifier)) {
        Q_EMIT moveAsked(-(turned.x() != 0 ? turned.x() : turned.y()) / wheelStep * 0.1);
    } else if (turned.y() != 0) {
        Q_EMIT zoomAsked(std::pow(notchZoom, turned.y() / wheelStep), frame_.dayAt(here.x()));
    }
}

}
