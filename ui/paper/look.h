#pragma once

#include "ui/common/theme.h"
#include "ui/drawing/palette.h"
#include "ui/drawing/type.h"

#include <QByteArray>
#include <QMarginsF>
#include <QPagedPaintDevice>
#include <QPageSize>
#include <QSizeF>
#include <QString>

#include <functional>
#include <memory>

class QPainter;

/// How things look on paper: the light palette on white, one typeface, sizes of its own, whatever the window looks like.
namespace tierloam::paper {

/// Dots per inch of everything that is laid out here. It is that of the screen, so that text is measured and painted at one size: what is
/// painted is vectors, so nothing is lost by it.
int dotsPerInch();
/// A length in dots.
double dots(double millimetres);

QFont paperFont();
drawing::Type paperType();
const drawing::Palette& paperPalette();
std::unique_ptr<ui::Theme> paperTheme();

/// A4, or Letter where people use that.
QPageSize usualPage();

/// Paints a PDF: `paint` is called with a painter and its device, at dotsPerInch(). Fonts are embedded. Empty when it failed.
QByteArray pdfBytes(const QString& title, const QString& program, const QPageSize& size, const QMarginsF& millimetres,
                    const std::function<void(QPainter&, QPagedPaintDevice&)>& paint);
/// Paints an SVG of that size.
QByteArray svgBytes(const QSizeF& size, const std::function<void(QPainter&)>& paint);

}
