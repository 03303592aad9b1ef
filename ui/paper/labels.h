#pragma once

#include "core/household/stack_order.h"
#include "core/journal/replay.h"

#include <QSizeF>
#include <QString>

#include <optional>
#include <vector>

class QPagedPaintDevice;
class QPainter;

/// Labels for trays: which stack, which tray, which batch, since when, and room to write by hand when it was lifted and taken.
namespace tierloam::paper {

struct Label {
    QString stack;
    int tray = 0, batch = 0;
    Day bedded{};
    bool operator==(const Label&) const = default;
};

/// A label for each tray that stands on that day, by stack and from the bottom up.
std::vector<Label> labelsOf(const journal::Replay& replay, Day day, const household::StackOrder& order = {});

/// A sheet of labels, mm. The rows and columns stand in the middle of the page without gaps, as on sheets that are sold uncut; on plain
/// paper thin lines show where to cut.
struct LabelSheet {
    bool letter = false;             ///< the page: Letter, else A4
    int columns = 3, rows = 8;
    double width = 70, height = 36;
    int places() const { return columns * rows; }
    bool operator==(const LabelSheet&) const = default;
};
/// The sheets to choose from: on A4 3 × 8 and 2 × 7, on Letter 3 × 7 and 2 × 5.
std::vector<LabelSheet> labelSheets();
QString nameOf(const LabelSheet& sheet);
/// The first of those for the page that people use.
LabelSheet usualLabelSheet();

/// Paints the labels, `skip` places of the first page left free, at dotsPerInch(); returns the number of pages.
int paintLabels(const std::vector<Label>& labels, const LabelSheet& sheet, int skip, QPainter& painter, QPagedPaintDevice& device);
/// One label in a rectangle of that size in dots; false when a line of it did not fit and was elided.
bool paintLabel(const Label& label, QPainter& painter, const QSizeF& size);

/// Why they could not be written, as a sentence.
std::optional<QString> saveLabels(const std::vector<Label>& labels, const LabelSheet& sheet, int skip, const QString& program, const QString& path);

}
