#include "ui/paper/page_flow.h"

#include "ui/paper/look.h"

#include <QCoreApplication>
#include <QGuiApplication>
#include <QPagedPaintDevice>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace tierloam::paper {

namespace {

struct PageFlow {
    Q_DECLARE_TR_FUNCTIONS(PageFlow)
};

constexpr double marginMm = 15, footMm = 9;

/// What is never torn: a line of a table, a box, a figure.
struct Piece {
    double gap = 0;                  ///< above it, unless it begins a page
    double height = 0;
    bool withNext = false;           ///< never the last on a page
    std::function<void(QPainter&, const QRectF&)> paint;
    std::shared_ptr<const Piece> head; ///< painted first when the piece begins a page
};

bool leftToRight() { return QGuiApplication::layoutDirection() == Qt::LeftToRight; }

/// Turns blocks into pieces of that width.
class Pieces {
public:
    Pieces(const Sheet& sheet, double width) : sheet_{sheet}, width_{width}, type_{paperType()}
    {
        text(sheet.report.title, title(), paperPalette().ink, 0, true);
        text(sheet.report.subtitle, type_.body, paperPalette().mutedInk, dots(1), false);
        for (const exchange::ReportBlock& block : sheet.report.blocks) std::visit([this](const auto& each) { add(each); }, block);
    }
    std::vector<Piece> take() && { return std::move(pieces_); }

private:
    QFont title() const
    {
        QFont font = type_.title;
        font.setPointSizeF(font.pointSizeF() * 1.35);
        return font;
    }

    void text(const QString& words, const QFont& font, const QColor& colour, double gap, bool withNext)
    {
        if (words.isEmpty()) return;
        const double height = drawing::wrappedHeight(font, words, width_);
        pieces_.push_back({gap, height, withNext, [=](QPainter& p, const QRectF& r) { drawing::drawWrapped(p, r, words, font, colour); }, {}});
    }

    void add(const exchange::ReportHeading& heading)
    {
        const QFont font = type_.title;
        const double height = drawing::wrappedHeight(font, heading.text, width_) + dots(1.5);
        pieces_.push_back({dots(6), height, true, [=, words = heading.text](QPainter& p, const QRectF& r) {
                               drawing::drawWrapped(p, r, words, font, paperPalette().ink);
                               p.setPen(QPen{paperPalette().line, 1});
                               p.drawLine(QPointF{r.left(), r.bottom() - 1}, QPointF{r.right(), r.bottom() - 1});
                           }, {}});
    }

    void add(const exchange::ReportParagraph& paragraph)
    {
        text(paragraph.text, paragraph.muted ? type_.small : type_.body, paragraph.muted ? paperPalette().mutedInk : paperPalette().ink, dots(1.5), false);
    }

    void add(const exchange::ReportBox& box)
    {
        const double pad = dots(1.6), bar = dots(1.2), inner = width_ - bar - 2 * pad - dots(1);
        struct Line { QString words; QFont font; QColor colour; double height; };
        std::vector<Line> lines;
        const auto line = [&](const QString& words, const QFont& font, const QColor& colour) {
            if (!words.isEmpty()) lines.push_back({words, font, colour, drawing::wrappedHeight(font, words, inner)});
        };
        line(box.title, type_.strong, paperPalette().ink);
        for (const QString& each : box.lines) line(each, type_.body, paperPalette().ink);
        line(box.source, type_.small, paperPalette().mutedInk);
        double height = 2 * pad;
        for (const Line& each : lines) height += each.height;
        const drawing::Palette& palette = paperPalette();
        const std::pair<QColor, QColor> tones = [&]() -> std::pair<QColor, QColor> {
            switch (box.tone) {
            case exchange::ReportTone::go: return {palette.moss, palette.mossSoft};
            case exchange::ReportTone::soon: return {palette.amber, palette.amberSoft};
            case exchange::ReportTone::danger: return {palette.brick, palette.brickSoft};
            case exchange::ReportTone::plain: break;
            }
            return {palette.outline, palette.ground};
        }();
        pieces_.push_back({dots(1.8), height, false, [=, edge = tones.first, fill = tones.second](QPainter& p, const QRectF& r) {
                               p.fillRect(r, fill);
                               p.fillRect(leftToRight() ? QRectF{r.left(), r.top(), bar, r.height()} : QRectF{r.right() - bar, r.top(), bar, r.height()}, edge);
                               double y = r.top() + pad;
                               for (const Line& each : lines) {
                                   drawing::drawWrapped(p, {r.left() + (leftToRight() ? bar + pad + dots(1) : pad), y, inner, each.height}, each.words, each.font, each.colour);
                                   y += each.height;
                               }
                           }, {}});
    }

    void add(const exchange::ReportList& list)
    {
        text(list.title, type_.strong, paperPalette().ink, dots(2.6), true);
        const double indent = dots(4);
        for (qsizetype i = 0; i < list.points.size(); ++i) {
            const QString& words = list.points[i];
            const double height = drawing::wrappedHeight(type_.body, words, width_ - indent);
            // The first two points stay together, so that no title ends a page with one line under it.
            pieces_.push_back({dots(0.5), height, i == 0 && list.points.size() > 1, [=, font = type_.body](QPainter& p, const QRectF& r) {
                                   const double x = leftToRight() ? r.left() : r.right() - indent;
                                   p.setPen(Qt::NoPen);
                                   p.setBrush(paperPalette().mutedInk);
                                   p.drawEllipse(QPointF{x + indent / 2, r.top() + drawing::lineHeight(font) / 2}, dots(0.45), dots(0.45));
                                   drawing::drawWrapped(p, r.adjusted(leftToRight() ? indent : 0, 0, leftToRight() ? 0 : -indent, 0), words, font, paperPalette().ink);
                               }, {}});
        }
    }

    void add(const exchange::ReportFigure& figure)
    {
        const PaintFigure paint = sheet_.figures[figures_++];
        text(figure.title, type_.strong, paperPalette().ink, dots(3), true);
        const QSizeF size{static_cast<double>(figure.width), static_cast<double>(figure.height)};
        // Made for the usual page; on a narrower one it is drawn smaller.
        const double scale = std::min(1.0, width_ / size.width());
        pieces_.push_back({dots(1.5), size.height() * scale, !figure.title.isEmpty(), [=](QPainter& p, const QRectF& r) {
                               p.save();
                               p.translate(leftToRight() ? r.topLeft() : QPointF{r.right() - size.width() * scale, r.top()});
                               p.scale(scale, scale);
                               paint(p, {QPointF{}, size});
                               p.restore();
                           }, {}});
    }

    /// Width of each column: as wide as its widest cell where there is room for all, else each at least as wide as its longest word.
    std::vector<double> columns(const exchange::ReportTable& table, double gap) const
    {
        const std::size_t count = static_cast<std::size_t>(table.head.isEmpty() ? table.rows.front().size() : table.head.size());
        std::vector<double> least(count, 1), wanted(count, 1);
        const auto look = [&](const QStringList& row, const QFont& font) {
            for (std::size_t i = 0; i < count && i < static_cast<std::size_t>(row.size()); ++i) {
                const QString& cell = row[static_cast<qsizetype>(i)];
                wanted[i] = std::max(wanted[i], std::min(drawing::textWidth(font, cell) + 1, width_));
                for (const QString& word : cell.split(u' ')) least[i] = std::max(least[i], std::min(drawing::textWidth(font, word) + 1, width_ / 4));
            }
        };
        look(table.head, type_.smallStrong);
        for (const QStringList& row : table.rows) look(row, type_.small);
        const double room = width_ - gap * static_cast<double>(count);
        double sumLeast = 0, sumWanted = 0;
        for (std::size_t i = 0; i < count; ++i) sumLeast += least[i], sumWanted += wanted[i];
        std::vector<double> widths(count);
        for (std::size_t i = 0; i < count; ++i) {
            if (sumWanted <= room) widths[i] = wanted[i] + (room - sumWanted) / static_cast<double>(count);
            else if (sumLeast >= room) widths[i] = least[i] / sumLeast * room;
            else widths[i] = least[i] + (room - sumLeast) * (wanted[i] - least[i]) / (sumWanted - sumLeast);
        }
        return widths;
    }

    Piece row(const QStringList& cells, const std::vector<double>& widths, double gap, const QList<int>& numbers, bool head, bool named = false) const
    {
        const QFont font = head ? type_.smallStrong : type_.small;
        const double pad = dots(0.7);
        double height = drawing::lineHeight(font);
        for (qsizetype i = 0; i < cells.size(); ++i) height = std::max(height, drawing::wrappedHeight(font, cells[i], widths[static_cast<std::size_t>(i)]));
        Piece piece;
        piece.height = height + 2 * pad;
        piece.paint = [=](QPainter& p, const QRectF& r) {
            if (head) p.fillRect(r, paperPalette().rail);
            p.setPen(QPen{paperPalette().line, 1});
            p.drawLine(r.bottomLeft(), r.bottomRight());
            double x = leftToRight() ? r.left() : r.right();
            for (qsizetype i = 0; i < cells.size(); ++i) {
                const double width = widths[static_cast<std::size_t>(i)];
                const QRectF cell{leftToRight() ? x + gap / 2 : x - gap / 2 - width, r.top() + pad, width, r.height()};
                const bool oneLine = drawing::textWidth(font, cells[i]) <= width;
                if (numbers.contains(static_cast<int>(i)) && oneLine) drawing::drawLine(p, cell, cells[i], font, paperPalette().ink, true);
                else drawing::drawWrapped(p, cell, cells[i], font, named && i == 0 ? paperPalette().mutedInk : paperPalette().ink);
                x += leftToRight() ? width + gap : -width - gap;
            }
        };
        return piece;
    }

    void add(const exchange::ReportTable& table)
    {
        text(table.title, type_.strong, paperPalette().ink, dots(3), true);
        const double gap = dots(2.4);
        if (table.rows.isEmpty()) return;
        const std::vector<double> widths = columns(table, gap);
        std::shared_ptr<Piece> head;
        if (!table.head.isEmpty()) {
            head = std::make_shared<Piece>(row(table.head, widths, gap, table.numbers, true));
            head->gap = dots(1);
            head->withNext = true;
            pieces_.push_back(*head);
        }
        for (qsizetype i = 0; i < table.rows.size(); ++i) {
            Piece piece = row(table.rows[i], widths, gap, table.numbers, false, !head);
            if (i > 0) piece.head = head; // the first has it above anyway
            else piece.withNext = !head;
            pieces_.push_back(std::move(piece));
        }
    }

    const Sheet& sheet_;
    double width_;
    drawing::Type type_;
    qsizetype figures_ = 0;
    std::vector<Piece> pieces_;
};

struct Placed {
    int page;
    double y;
    const Piece* piece;
};

std::vector<Placed> place(const std::vector<Piece>& pieces, double height, int& pages)
{
    std::vector<Placed> placed;
    double y = 0;
    int page = 0;
    bool fresh = true;
    for (std::size_t i = 0; i < pieces.size();) {
        // A run that must stay together, up to what a page can hold.
        std::size_t end = i + 1;
        double needed = (fresh ? 0 : pieces[i].gap) + pieces[i].height;
        while (end < pieces.size() && pieces[end - 1].withNext && needed + pieces[end].gap + pieces[end].height <= height) {
            needed += pieces[end].gap + pieces[end].height;
            ++end;
        }
        if (!fresh && y + needed > height) {
            ++page;
            y = 0;
            fresh = true;
        }
        for (; i < end; ++i) {
            if (fresh && pieces[i].head) {
                placed.push_back({page, y, pieces[i].head.get()});
                y += pieces[i].head->height;
                fresh = false;
            }
            y += fresh ? 0 : pieces[i].gap;
            placed.push_back({page, y, &pieces[i]});
            y += pieces[i].height;
            fresh = false;
        }
    }
    pages = page + 1;
    return placed;
}

}

QMarginsF pageMargins() { return {marginMm, marginMm, marginMm, marginMm}; }

double contentWidth(const QPageSize& size)
{
    return std::floor(dots(size.size(QPageSize::Millimeter).width() - 2 * marginMm));
}

int paintSheet(const Sheet& sheet, QPainter& painter, QPagedPaintDevice& device)
{
    const QRectF page{QPointF{}, device.pageLayout().paintRectPixels(dotsPerInch()).size()};
    const double foot = dots(footMm);
    const std::vector<Piece> pieces = Pieces{sheet, page.width()}.take();
    int pages = 0;
    const std::vector<Placed> placed = place(pieces, page.height() - foot, pages);
    const drawing::Type type = paperType();
    int current = 0;
    const auto footer = [&] {
        const QRectF room{page.left(), page.bottom() - foot + dots(3), page.width(), foot - dots(3)};
        painter.setPen(QPen{paperPalette().line, 1});
        painter.drawLine(room.topLeft(), room.topRight());
        const QString number = PageFlow::tr("Page %1 of %2").arg(current + 1).arg(pages);
        const double width = drawing::textWidth(type.small, number) + dots(3);
        const QRectF below = room.translated(0, dots(1));
        drawing::drawLine(painter, below.adjusted(leftToRight() ? 0 : width, 0, leftToRight() ? -width : 0, 0), sheet.report.foot, type.small, paperPalette().mutedInk);
        drawing::drawLine(painter, below, number, type.small, paperPalette().mutedInk, true);
    };
    painter.setRenderHint(QPainter::Antialiasing);
    for (const Placed& each : placed) {
        while (current < each.page) {
            footer();
            device.newPage();
            ++current;
        }
        painter.save();
        each.piece->paint(painter, {page.left(), each.y, page.width(), each.piece->height});
        painter.restore();
    }
    footer();
    return pages;
}

}
