#pragma once

#include "ui/paper/sheet.h"

#include <QMarginsF>
#include <QPageSize>

class QPagedPaintDevice;

/// A sheet broken into pages: headings stay with what follows, boxes, figures and rows are not torn, and the head of a table is repeated.
namespace tierloam::paper {

QMarginsF pageMargins();             ///< mm
/// Width in dots that a figure may take on such a page.
double contentWidth(const QPageSize& size);

/// Paints all pages at dotsPerInch() and returns how many there are. The painter is active on `device`.
int paintSheet(const Sheet& sheet, QPainter& painter, QPagedPaintDevice& device);

}
