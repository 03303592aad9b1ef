#include "ui/paper/charts.h"

#include "ui/common/dates.h"
#include "ui/drawing/type.h"
#include "ui/paper/look.h"
#include "ui/paper/page_flow.h"
#include "ui/paper/sheet_figures.h"
#include "ui/trends/chart_picture.h"
#include "ui/trends/series_pens.h"
#include "ui/trends/trend_words.h"

#include <QCoreApplication>
#include <QGuiApplication>
#include <QLocale>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace tierloam::paper {

namespace {

struct ChartsText {
    Q_DECLARE_TR_FUNCTIONS(Charts)
};

constexpr double sharpness = 2;      ///< dots of a picture for each of the screen
constexpr double margin = 18, gap = 14;

QString titleOf(const trends::SeenTrends& seen)
{
    return ChartsText::tr("%1 · %2").arg(seen.household, ui::dayRange(seen.view.from, seen.view.until, seen.view.today));
}

/// Lays the page out from top to bottom; without a painter it only measures.
class Page {
public:
    Page(QPainter* painter, const ui::Theme& theme, double width) : painter_{painter}, theme_{theme}, type_{drawing::Type::from(theme.font(ui::TextSize::body))}, width_{width} {}

    double lay(const trends::SeenTrends& seen)
    {
        y_ = margin;
        words(titleOf(seen), type_.title, theme_.palette().ink, margin, inner());
        words(seen.changeSentence, type_.body, theme_.palette().ink, margin, inner());
        for (const trends::SeenMeasure& measure : seen.measures) {
            if (measure.charts.empty()) continue;
            y_ += gap;
            words(trends::measureName(measure.measure), type_.strong, theme_.palette().ink, margin, inner());
            words(measure.note, type_.small, theme_.palette().mutedInk, margin, inner());
            charts(measure, seen.view);
        }
        y_ += gap;
        const Figure key = chartKey(inner(), type_, theme_.palette());
        if (painter_) key.paint(*painter_, {margin, y_, key.size.width(), key.size.height()});
        return y_ + key.size.height() + margin;
    }

private:
    double inner() const { return width_ - 2 * margin; }

    double words(const QString& text, const QFont& font, const QColor& colour, double left, double width)
    {
        if (text.isEmpty()) return y_;
        const double height = drawing::wrappedHeight(font, text, width);
        if (painter_) drawing::drawWrapped(*painter_, {left, y_, width, height}, text, font, colour);
        return y_ += height + 2;
    }

    void charts(const trends::SeenMeasure& measure, const trends::Period& view)
    {
        const int columns = std::clamp(measure.columns, 1, static_cast<int>(measure.charts.size()));
        const double wide = (inner() - gap * (columns - 1)) / columns;
        const double high = std::round(theme_.px(170));
        for (std::size_t first = 0; first < measure.charts.size(); first += static_cast<std::size_t>(columns)) {
            const double top = y_;
            double bottom = top;
            for (std::size_t i = first; i < std::min(measure.charts.size(), first + static_cast<std::size_t>(columns)); ++i) {
                const trends::SeenChart& chart = measure.charts[i];
                const double left = margin + (wide + gap) * static_cast<double>(i - first);
                y_ = top;
                if (measure.charts.size() == 1 && chart.name.isEmpty()) legend(chart, left, wide, measure.measure == trends::Measure::drainage || measure.measure == trends::Measure::yield);
                else words(chart.name, type_.strong, theme_.palette().ink, left, wide);
                const bool any = std::ranges::any_of(chart.series, [](const trends::Series& one) { return !one.empty(); });
                if (any && painter_) trends::paintChart(*painter_, {left, y_, std::floor(wide), high}, theme_, measure.measure, chart.series, view, chart.ends);
                if (any) y_ += high + 2;
                bottom = std::max(bottom, words(chart.sentence, type_.small, theme_.palette().mutedInk, left, wide));
            }
            y_ = bottom + 6;
        }
    }

    /// A piece of each stack's line and its name, where stacks lie over each other.
    void legend(const trends::SeenChart& chart, double left, double wide, bool bars)
    {
        const double line = drawing::lineHeight(type_.small), sample = 30 * theme_.scale(), patch = bars ? 16 * theme_.scale() : 0;
        for (const trends::Series& series : chart.series) {
            if (painter_) {
                painter_->setPen(trends::penOf(series.place, theme_.palette(), 1.8 * theme_.scale()));
                painter_->drawLine(QPointF{left, y_ + line / 2}, QPointF{left + sample, y_ + line / 2});
                const QColor colour = painter_->pen().color();
                painter_->setPen(QPen{colour, 1});
                painter_->setBrush(trends::fillOf(series.place, colour));
                if (bars) painter_->drawRect(QRectF{left + sample + 4, y_ + line * 0.2, patch - 5, line * 0.6});
                painter_->setBrush(Qt::NoBrush);
            }
            words(series.stack, type_.small, theme_.palette().ink, left + sample + patch + 6, wide - sample - patch - 6);
        }
    }

    QPainter* painter_;
    const ui::Theme& theme_;
    drawing::Type type_;
    double width_, y_ = 0;
};

QSizeF sizeOf(const trends::SeenTrends& seen, const ui::Theme& theme, double width) { return {width, std::ceil(Page{nullptr, theme, width}.lay(seen))}; }

void paint(QPainter& painter, const trends::SeenTrends& seen, const ui::Theme& theme, const QSizeF& size)
{
    painter.fillRect(QRectF{QPointF{}, size}, theme.palette().panel);
    Page{&painter, theme, size.width()}.lay(seen);
}

}

QImage chartsImage(const trends::SeenTrends& seen, const ui::Theme& theme, double width)
{
    const QSizeF size = sizeOf(seen, theme, width);
    QImage image{(size * sharpness).toSize(), QImage::Format_RGB32};
    image.setDevicePixelRatio(sharpness);
    QPainter painter{&image};
    painter.setRenderHint(QPainter::Antialiasing);
    paint(painter, seen, theme, size);
    painter.end();
    return image;
}

QByteArray chartsSvg(const trends::SeenTrends& seen, const ui::Theme& theme, double width)
{
    const QSizeF size = sizeOf(seen, theme, width);
    return svgBytes(size, [&](QPainter& painter) { paint(painter, seen, theme, size); });
}

Sheet chartsSheet(const trends::SeenTrends& seen, Day today, const QString& version)
{
    Sheet sheet;
    exchange::Report& report = sheet.report;
    report.language = QLocale{}.bcp47Name();
    report.rightToLeft = QGuiApplication::layoutDirection() == Qt::RightToLeft;
    report.program = QStringLiteral("Tierloam ") % version;
    report.title = titleOf(seen);
    report.subtitle = ChartsText::tr("As of %1. Lines are estimates, bands the range that holds nine times in ten; what is shaded is the forecast.").arg(ui::fullDay(today));
    report.foot = ChartsText::tr("%1. Estimates, no measurements: a look into the tray rules over any number here.").arg(ui::fullDay(today));
    const double width = contentWidth(usualPage());
    const auto figure = [&](const QString& title, const QString& words, const Figure& drawn) {
        report.blocks << exchange::ReportFigure{title, words, static_cast<int>(std::lround(drawn.size.width())), static_cast<int>(std::lround(drawn.size.height())), {}};
        sheet.figures << drawn.paint;
    };
    if (!seen.changeSentence.isEmpty()) report.blocks << exchange::ReportParagraph{seen.changeSentence, false};
    figure({}, ChartsText::tr("The signs in the charts"), chartKey(width));
    for (const trends::SeenMeasure& measure : seen.measures) {
        if (measure.charts.empty()) continue;
        report.blocks << exchange::ReportHeading{trends::measureName(measure.measure)} << exchange::ReportParagraph{measure.note, true};
        for (const trends::SeenChart& chart : measure.charts) {
            QStringList names;
            for (const trends::Series& series : chart.series) names << series.stack;
            if (std::ranges::any_of(chart.series, [](const trends::Series& one) { return !one.empty(); }))
                figure(names.join(QStringLiteral(", ")), chart.sentence, chartFigure(measure.measure, chart.series, seen.view, width));
            else report.blocks << exchange::ReportParagraph{names.join(QStringLiteral(", ")), false};
            report.blocks << exchange::ReportParagraph{chart.sentence, true};
        }
    }
    return sheet;
}

}
