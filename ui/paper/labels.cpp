#include "ui/paper/labels.h"

#include "core/exchange/whole_file.h"
#include "ui/common/formats.h"
#include "ui/paper/look.h"

#include <QCoreApplication>
#include <QGuiApplication>
#include <QPagedPaintDevice>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace tierloam::paper {

namespace {

struct LabelWords {
    Q_DECLARE_TR_FUNCTIONS(Labels)
};

constexpr double padMm = 4;

QFont sized(QFont font, double factor)
{
    font.setPointSizeF(font.pointSizeF() * factor);
    return font;
}

/// The largest of a few sizes at which the text fits one line, the smallest when none does.
QFont fitting(const QFont& font, const QString& text, double width)
{
    for (const double factor : {2.0, 1.6, 1.35, 1.15, 1.0, 0.85}) {
        const QFont tried = sized(font, factor);
        if (drawing::textWidth(tried, text) <= width) return tried;
    }
    return sized(font, 0.85);
}

QPageSize pageOf(const LabelSheet& sheet) { return QPageSize{sheet.letter ? QPageSize::Letter : QPageSize::A4}; }

}

std::vector<Label> labelsOf(const journal::Replay& replay, Day day, const household::StackOrder& order)
{
    std::vector<Label> labels;
    for (const journal::StackHistory& stack : household::inOrder(replay.stacks, order)) {
        const journal::Standing* standing = stack.on(day);
        if (!standing || standing->retired) continue;
        for (const int number : standing->slots) {
            const journal::Batch& batch = stack.batch(number);
            labels.push_back({QString::fromStdString(stack.name), batch.tray, batch.number, batch.bedded});
        }
    }
    return labels;
}

std::vector<LabelSheet> labelSheets()
{
    return {{false, 3, 8, 70, 36}, {false, 2, 7, 99, 38}, {true, 3, 7, 70, 38}, {true, 2, 5, 101.6, 50.8}};
}

LabelSheet usualLabelSheet()
{
    const bool letter = usualPage().id() == QPageSize::Letter;
    for (const LabelSheet& sheet : labelSheets())
        if (sheet.letter == letter) return sheet;
    return {};
}

QString nameOf(const LabelSheet& sheet)
{
    const QString page = sheet.letter ? QStringLiteral("Letter") : QStringLiteral("A4"), columns = QString::number(sheet.columns), rows = QString::number(sheet.rows);
    if (ui::measures() == ui::Measures::us) {
        const auto inches = [](double length) {
            const double value = std::round(length / 25.4 * 100.0) / 100.0; // sheets are sold by the hundredth of an inch
            return ui::numberText(value, value == std::round(value) ? 0 : 2);
        };
        return LabelWords::tr("%1, %2 × %3 labels of %4 × %5 in").arg(page, columns, rows, inches(sheet.width), inches(sheet.height));
    }
    const auto mm = [](double length) { return ui::numberText(length, length == static_cast<int>(length) ? 0 : 1); };
    return LabelWords::tr("%1, %2 × %3 labels of %4 × %5 mm").arg(page, columns, rows, mm(sheet.width), mm(sheet.height));
}

bool paintLabel(const Label& label, QPainter& painter, const QSizeF& size)
{
    const double pad = dots(padMm), width = size.width() - 2 * pad;
    const drawing::Type type = paperType();
    const QColor ink = paperPalette().ink, muted = paperPalette().mutedInk;
    struct Line { QString words; QFont font; QColor colour; };
    const std::vector<Line> lines{
        {label.stack, fitting(type.strong, label.stack, width), ink},
        {LabelWords::tr("Tray %1 · batch %2").arg(label.tray).arg(label.batch), fitting(type.strong, LabelWords::tr("Tray %1 · batch %2").arg(label.tray).arg(label.batch), width * 0.8), ink},
        {LabelWords::tr("Bedded %1", "a day").arg(ui::fullDay(label.bedded)), fitting(type.body, LabelWords::tr("Bedded %1", "a day").arg(ui::fullDay(label.bedded)), width * 0.62), ink},
        {LabelWords::tr("Lifted ______________  Taken ______________"), fitting(sized(type.small, 0.9), LabelWords::tr("Lifted ______________  Taken ______________"), width), muted}};
    double total = 0;
    for (const Line& line : lines) total += drawing::lineHeight(line.font);
    double y = std::max(pad * 0.6, (size.height() - total) / 2);
    bool fits = y + total <= size.height();
    for (const Line& line : lines) {
        fits &= drawing::drawLine(painter, {pad, y, width, drawing::lineHeight(line.font)}, line.words, line.font, line.colour);
        y += drawing::lineHeight(line.font);
    }
    return fits;
}

int paintLabels(const std::vector<Label>& labels, const LabelSheet& sheet, int skip, QPainter& painter, QPagedPaintDevice& device)
{
    const QRectF page{QPointF{}, device.pageLayout().fullRectPixels(dotsPerInch()).size()};
    // The device may keep margins of its own; places are counted from the edge of the sheet.
    const QPointF edge = device.pageLayout().fullRectPixels(dotsPerInch()).topLeft() - device.pageLayout().paintRectPixels(dotsPerInch()).topLeft();
    const QSizeF size{dots(sheet.width), dots(sheet.height)};
    const QPointF first = edge + QPointF{(page.width() - sheet.columns * size.width()) / 2, (page.height() - sheet.rows * size.height()) / 2};
    const bool leftToRight = QGuiApplication::layoutDirection() == Qt::LeftToRight;
    int place = std::clamp(skip, 0, sheet.places() - 1), pages = 1;
    for (const Label& label : labels) {
        if (place == sheet.places()) {
            device.newPage();
            place = 0;
            ++pages;
        }
        const int column = leftToRight ? place % sheet.columns : sheet.columns - 1 - place % sheet.columns;
        const int row = place / sheet.columns;
        painter.save();
        painter.translate(first + QPointF{column * size.width(), row * size.height()});
        painter.setPen(QPen{paperPalette().line, 0.5, Qt::DotLine});
        painter.drawRect(QRectF{QPointF{}, size});
        paintLabel(label, painter, size);
        painter.restore();
        ++place;
    }
    return pages;
}

std::optional<QString> saveLabels(const std::vector<Label>& labels, const LabelSheet& sheet, int skip, const QString& program, const QString& path)
{
    const QByteArray pdf = pdfBytes(LabelWords::tr("Labels for trays"), program, pageOf(sheet), {0, 0, 0, 0},
                                    [&](QPainter& painter, QPagedPaintDevice& device) { paintLabels(labels, sheet, skip, painter, device); });
    if (pdf.isEmpty()) return LabelWords::tr("The labels could not be drawn.");
    return exchange::writeWholeFile(path, {pdf.constData(), static_cast<std::size_t>(pdf.size())});
}

}
