#include "ui/trends/trend_chart.h"

#include "ui/trends/plot_layer.h"
#include "ui/trends/time_ticks.h"
#include "ui/trends/trend_words.h"

#include <QFontMetricsF>
#include <QGraphicsLayout>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QtCharts/QCategoryAxis>
#include <QtCharts/QChart>
#include <QtCharts/QLineSeries>
#include <QtCharts/QValueAxis>

#include <algorithm>
#include <cmath>

namespace tierloam::trends {

namespace {

double number(Day day)
{
    return static_cast<double>(day.time_since_epoch().count());
}

QList<QPointF> pointsOf(const std::vector<Point>& points, const AxisUnit& unit)
{
    QList<QPointF> list;
    list.reserve(static_cast<qsizetype>(points.size()));
    for (const Point& point : points) list << QPointF{number(point.day), unit.shown(point.band.p50)};
    return list;
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
    values_ = new QValueAxis{this};
    chart()->addAxis(days_, Qt::AlignBottom);
    chart()->addAxis(values_, Qt::AlignLeft);
    ground_ = new QLineSeries{this};
    ground_->setPen(Qt::NoPen);
    chart()->addSeries(ground_);
    ground_->attachAxis(days_);
    ground_->attachAxis(values_);
    layer_ = new PlotLayer{chart()};
    connect(chart(), &QChart::plotAreaChanged, this, [this](const QRectF& area) { layer_->setArea(area); });
    connect(&theme_, &ui::Theme::changed, this, [this] { style(); layTicks(); });
    style();
}

int TrendChart::minimumPlotHeight() const
{
    return theme_.px(130);
}

void TrendChart::setContents(Measure measure, std::vector<Series> series, const Period& period, double top, double bottom)
{
    measure_ = measure;
    series_ = std::move(series);
    period_ = period;
    top_ = top;
    bottom_ = bottom;
    rebuildLines();
    style();
    const AxisUnit unit = axisUnit(measure_);
    days_->setRange(number(period_.from), number(period_.until));
    values_->setRange(unit.shown(bottom_), unit.shown(top_));
    layTicks();
    layer_->setContents(series_, period_, series_.size() > 1);
    placeLayer();
    setCursorDay(cursor_);
}

void TrendChart::rebuildLines()
{
    const std::size_t wanted = series_.size() * 2;
    while (lines_.size() > wanted) {
        chart()->removeSeries(lines_.back());
        delete lines_.back();
        lines_.pop_back();
    }
    while (lines_.size() < wanted) {
        auto* line = new QLineSeries{this};
        chart()->addSeries(line);
        line->attachAxis(days_);
        line->attachAxis(values_);
        lines_.push_back(line);
    }
    const AxisUnit unit = axisUnit(measure_);
    for (std::size_t i = 0; i < series_.size(); ++i) {
        lines_[2 * i]->replace(pointsOf(series_[i].past, unit));
        lines_[2 * i + 1]->replace(pointsOf(series_[i].ahead, unit));
        lines_[2 * i]->setName(series_[i].stack);
    }
}

void TrendChart::style()
{
    const drawing::Palette& palette = theme_.palette();
    // The theme of Qt Charts first: it overwrites every pen.
    chart()->setTheme(palette.isDark ? QChart::ChartThemeDark : QChart::ChartThemeLight);
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
    for (std::size_t i = 0; i < series_.size(); ++i) {
        QPen pen = penOf(series_.size() > 1 ? series_[i].place : 0, palette, 1.6 * theme_.scale());
        if (series_.size() == 1) pen.setColor(own);
        lines_[2 * i]->setPen(pen);
        QColor faint = pen.color();
        faint.setAlphaF(0.75f);
        pen.setColor(faint);
        pen.setStyle(series_.size() > 1 ? pen.style() : Qt::DashLine);
        lines_[2 * i + 1]->setPen(pen);
    }
    layer_->setLook(palette, theme_.scale(), own);
    placeLayer();
}

void TrendChart::layTicks()
{
    const QFontMetricsF metrics{theme_.font(ui::TextSize::small)};
    const double span = (top_ - bottom_) * axisUnit(measure_).factor;
    // Three or four steps of a round number.
    const double rough = span / 4;
    const double size = std::pow(10.0, std::floor(std::log10(rough)));
    double step = size;
    for (const double s : {1.0, 2.0, 2.5, 5.0, 10.0}) {
        step = s * size;
        if (step >= rough * 0.999) break;
    }
    const int decimals = std::max(0, static_cast<int>(std::ceil(-std::log10(step) - 1e-9)) + (std::abs(step / size - 2.5) < 1e-9 ? 1 : 0));
    values_->setTickType(QValueAxis::TicksDynamic);
    values_->setTickAnchor(0);
    values_->setTickInterval(step);
    values_->setLabelFormat(QStringLiteral("%.%1f").arg(std::max(0, decimals)));

    const double plotWidth = std::max(80.0, plotRect().width());
    const auto fit = [&](const QString& label) {
        return std::clamp(static_cast<int>(plotWidth / (metrics.horizontalAdvance(label) * 1.5)), 2, 14);
    };
    for (const QString& label : days_->categoriesLabels()) days_->remove(label);
    days_->setStartValue(number(period_.from));
    QStringList used;
    for (const Tick& tick : timeTicks(period_.from, period_.until, fit(QStringLiteral("88 Mmm")), fit(QStringLiteral("8888")))) {
        // Category labels are keys: a month that comes again gets an unseen mark.
        QString label = tick.label;
        while (used.contains(label)) label += QChar{0x200b};
        used << label;
        days_->append(label, number(tick.day));
    }
    days_->setRange(number(period_.from), number(period_.until));
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
    if (chart()->plotArea() != plotRect()) chart()->setPlotArea(plotRect());
    const AxisUnit unit = axisUnit(measure_);
    layer_->setPlace([this, unit](double day, double value) { return chart()->mapToPosition(QPointF{day, unit.shown(value)}, ground_); });
    layer_->setArea(chart()->plotArea());
    layer_->update();
}

void TrendChart::setCursorDay(std::optional<Day> day)
{
    cursor_ = day;
    layer_->setCursor(day);
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

void TrendChart::mouseMoveEvent(QMouseEvent* event)
{
    const QPointF inChart = chart()->mapFromScene(mapToScene(event->position().toPoint()));
    if (chart()->plotArea().contains(inChart)) {
        const double day = chart()->mapToValue(inChart, ground_).x();
        Q_EMIT cursorMoved(Day{std::chrono::days{static_cast<int>(std::floor(day + 0.5))}});
    } else {
        Q_EMIT cursorMoved(std::nullopt);
    }
    QChartView::mouseMoveEvent(event);
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
    if (event->oldSize().width() != event->size().width()) layTicks();
    placeLayer();
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
    event->ignore(); // the page scrolls
}

}
