#include "ui/paper/look.h"

#include <QBuffer>
#include <QFontDatabase>
#include <QGuiApplication>
#include <QLocale>
#include <QPainter>
#include <QPdfWriter>
#include <QScreen>
#include <QSvgGenerator>

#include <cmath>

namespace tierloam::paper {

namespace {

constexpr double bodyPoints = 8.5;

}

int dotsPerInch()
{
    const QScreen* screen = QGuiApplication::primaryScreen();
    return screen ? static_cast<int>(std::lround(screen->logicalDotsPerInch())) : 96;
}

double dots(double millimetres) { return millimetres / 25.4 * dotsPerInch(); }

QFont paperFont()
{
    QFont font{QStringLiteral("DejaVu Sans")};
    font.setStyleHint(QFont::SansSerif);
    font.setPointSizeF(bodyPoints);
    font.setHintingPreference(QFont::PreferNoHinting); // letters keep their distances at any scale
    return font;
}

drawing::Type paperType() { return drawing::Type::from(paperFont()); }

const drawing::Palette& paperPalette() { return drawing::Palette::light(); }

std::unique_ptr<ui::Theme> paperTheme() { return ui::Theme::ofPaper(paperFont()); }

QPageSize usualPage()
{
    return QPageSize{QLocale{}.measurementSystem() == QLocale::ImperialUSSystem ? QPageSize::Letter : QPageSize::A4};
}

QByteArray pdfBytes(const QString& title, const QString& program, const QPageSize& size, const QMarginsF& millimetres,
                    const std::function<void(QPainter&, QPagedPaintDevice&)>& paint)
{
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer{&buffer};
        writer.setResolution(dotsPerInch());
        writer.setTitle(title);
        writer.setCreator(program);
        writer.setPageSize(size);
        writer.setPageMargins(millimetres, QPageLayout::Millimeter);
        QPainter painter;
        if (!painter.begin(&writer)) return {};
        paint(painter, writer);
        if (!painter.end()) return {};
    }
    return buffer.data();
}

QByteArray svgBytes(const QSizeF& size, const std::function<void(QPainter&)>& paint)
{
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    QSvgGenerator generator;
    generator.setOutputDevice(&buffer);
    generator.setResolution(dotsPerInch());
    generator.setSize(size.toSize());
    generator.setViewBox(QRectF{QPointF{}, size});
    QPainter painter{&generator};
    painter.setRenderHint(QPainter::Antialiasing);
    paint(painter);
    painter.end();
    return buffer.data();
}

}
