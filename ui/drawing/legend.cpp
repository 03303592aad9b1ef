#include "ui/drawing/legend.h"

#include "core/wording/formats.h"

#include "ui/drawing/ring.h"
#include "ui/drawing/strata.h"

#include <QCoreApplication>
#include <QGuiApplication>
#include <QPainter>
#include <QStringBuilder>

#include <algorithm>
#include <array>
#include <functional>
#include <vector>

namespace tierloam::drawing {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Legend)
public:
    static QString age() { return tr("Age of batch"); }
    static QString ageOf(int months)
    {
        return months == 0 ? tr("new") : tr("%1 mo", "short for months").arg(months);
    }
    static QString stratum(Stratum stratum)
    {
        switch (stratum) {
        case Stratum::castings: return tr("castings, by age");
        case Stratum::softened: return tr("softened");
        case Stratum::food: return tr("food");
        case Stratum::bedding: return tr("bedding");
        }
        return {};
    }
    static QString worm() { return tr("one for each %1 of worms").arg(wording::massText(0.05)); }
    static QString ring() { return tr("Ring: chance in % that the tray is ready"); }
    static QString ratio()
    {
        QString words = tr("0.07 : 1 = unprocessed to castings, dry");
        // Within words that run from right to left the two numbers would change places.
        if (QGuiApplication::layoutDirection() != Qt::RightToLeft) return words;
        const qsizetype end = words.indexOf(u" =");
        return end < 0 ? words : QChar{0x2066} % words.left(end) % QChar{0x2069} % words.mid(end);
    }
    static QString sump()
    {
        return wording::measures() == wording::Measures::us ? tr("Depths to one scale; sump levels twice as tall, a mark a quarter of a gallon")
                                                            : tr("Depths to one scale; sump levels twice as tall, a mark a litre");
    }
    static QString bars() { return tr("Bars: drained; marks: expected; bands: 90 % range"); }
};

constexpr int ageSteps = 24;

/// One item: its size at a width, and how it is drawn.
struct Item {
    QSizeF size;
    std::function<void(QPainter&, const QRectF&)> draw;
};

/// Width at which the names of ages stand apart: the last one is pushed inwards, towards the one before.
double agesApart(const Type& type) { return 4 * (textWidth(type.small, Words::ageOf(8)) + textWidth(type.small, Words::ageOf(6)) / 2 + 6); }

/// The bar of ages alone, youngest first in reading order.
void drawAgeBar(QPainter& painter, const QRectF& bar, const Palette& palette)
{
    const bool leftToRight = QGuiApplication::layoutDirection() == Qt::LeftToRight;
    for (int i = 0; i < ageSteps; ++i) {
        const int place = leftToRight ? i : ageSteps - 1 - i;
        const QRectF step{bar.left() + bar.width() * place / ageSteps, bar.top(), bar.width() / ageSteps - 0.6, bar.height()};
        painter.fillRect(step, palette.ageColour((i + 0.5) * Palette::ageSpanDays / ageSteps));
    }
    painter.setPen(QPen{palette.outline, 1});
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF{bar.left() + 0.5, bar.top() - 0.5, bar.width() - 1, bar.height() + 1});
}

void drawAges(QPainter& painter, const QRectF& room, const Palette& palette, const Type& type)
{
    const double text = lineHeight(type.small);
    drawLine(painter, room, Words::age(), type.small, palette.ink);
    const double barHeight = text * 0.62;
    const double top = room.top() + text + 1;
    drawAgeBar(painter, {room.left(), top, room.width(), barHeight}, palette);
    const bool leftToRight = QGuiApplication::layoutDirection() == Qt::LeftToRight;
    const int every = agesApart(type) <= room.width() + 0.5 ? 2 : 4;
    for (int months = 0; months <= 8; months += every) {
        const QString label = Words::ageOf(months);
        const double share = leftToRight ? months / 8.0 : 1 - months / 8.0;
        const double wide = textWidth(type.small, label);
        const double x = room.left() + std::clamp(room.width() * share - wide / 2, 0.0, room.width() - wide);
        painter.setFont(type.small);
        painter.setPen(palette.mutedInk);
        painter.drawText(QRectF{x, top + barHeight + 1, wide + 1, text}, Qt::AlignLeft | Qt::AlignAbsolute | Qt::AlignTop | Qt::TextDontClip, label);
    }
}

/// Words, youngest, bar and oldest one after the other in one line.
constexpr double ageGap = 5;
double tightAgesWidth(const Type& type)
{
    return textWidth(type.small, Words::age()) + textWidth(type.small, Words::ageOf(0)) + textWidth(type.small, Words::ageOf(8)) + 5 * lineHeight(type.small) + 4 * ageGap + 3;
}

void drawTightAges(QPainter& painter, const QRectF& room, const Palette& palette, const Type& type)
{
    const bool leftToRight = QGuiApplication::layoutDirection() == Qt::LeftToRight;
    double taken = 0;
    const auto next = [&](double width) {
        const QRectF at{leftToRight ? room.left() + taken : room.right() - taken - width, room.top(), width, room.height()};
        taken += width + ageGap;
        return at;
    };
    const auto word = [&](const QString& words, const QColor& ink) { drawLine(painter, next(textWidth(type.small, words) + 1), words, type.small, ink); };
    word(Words::age(), palette.ink);
    word(Words::ageOf(0), palette.mutedInk);
    const double text = lineHeight(type.small);
    const QRectF bar = next(5 * text);
    drawAgeBar(painter, {bar.left(), bar.top() + text * 0.2, bar.width(), text * 0.62}, palette);
    word(Words::ageOf(8), palette.mutedInk);
}

std::vector<Item> items(double width, const Palette& palette, const Type& type, LegendForm form)
{
    std::vector<Item> all;
    const double text = lineHeight(type.small);
    if (form != LegendForm::roomy && tightAgesWidth(type) <= width) {
        all.push_back({{tightAgesWidth(type), text}, [&](QPainter& p, const QRectF& r) { drawTightAges(p, r, palette, type); }});
    } else {
        double agesWidth = 16;
        for (int months = 0; months <= 8; months += 2) agesWidth += textWidth(type.small, Words::ageOf(months)) + 16;
        agesWidth = std::max(agesWidth, agesApart(type));
        all.push_back({{std::min(width, std::max(agesWidth, 190.0)), text * 2.62 + 4}, [&](QPainter& p, const QRectF& r) { drawAges(p, r, palette, type); }});
    }
    const double swatch = text * 1.5;
    const auto withSwatch = [&](const QString& words, std::function<void(QPainter&, const QRectF&)> draw) {
        const double room = std::min(width, swatch + 6 + textWidth(type.small, words) + 1);
        const double height = std::max(text, wrappedHeight(type.small, words, room - swatch - 6));
        all.push_back({{room, height}, [=, &palette, &type](QPainter& p, const QRectF& r) {
                           const bool leftToRight = QGuiApplication::layoutDirection() == Qt::LeftToRight;
                           draw(p, {leftToRight ? r.left() : r.right() - swatch, r.top() + 1, swatch, text - 2});
                           drawWrapped(p, r.adjusted(leftToRight ? swatch + 6 : 0, 0, leftToRight ? 0 : -swatch - 6, 0), words, type.small, palette.mutedInk);
                       }});
    };
    for (const Stratum stratum : {Stratum::bedding, Stratum::food, Stratum::softened, Stratum::castings})
        withSwatch(Words::stratum(stratum), [&palette, stratum](QPainter& p, const QRectF& r) { drawSwatch(p, r, stratum, 150, palette); });
    if (form == LegendForm::shades) return all;
    withSwatch(Words::worm(), [&palette](QPainter& p, const QRectF& r) { drawWorm(p, r.center(), r.width() * 0.8, palette); });
    for (const QString& words : {Words::ring(), Words::ratio(), Words::sump(), Words::bars()}) {
        const double room = std::min(width, textWidth(type.small, words) + 1);
        all.push_back({{room, wrappedHeight(type.small, words, room)},
                       [=, &palette, &type](QPainter& p, const QRectF& r) { drawWrapped(p, r, words, type.small, palette.mutedInk); }});
    }
    return all;
}

/// Places items in rows; calls `place` with each one's rectangle relative to (0, 0); returns the height.
template <class Place>
double flow(const std::vector<Item>& all, double width, LegendForm form, Place place)
{
    const double between = form == LegendForm::roomy ? 5 : 1;
    double x = 0, y = 0, row = 0;
    for (const Item& item : all) {
        if (x > 0 && x + item.size.width() > width + 0.5) {
            x = 0;
            y += row + between;
            row = 0;
        }
        place(item, QRectF{QPointF{x, y}, item.size});
        x += item.size.width() + 18;
        row = std::max(row, item.size.height());
    }
    return y + row;
}

}

double legendHeight(double width, const Type& type, LegendForm form)
{
    return flow(items(width, Palette::light(), type, form), width, form, [](const Item&, const QRectF&) {});
}

double drawLegend(QPainter& painter, const QRectF& room, const Palette& palette, const Type& type, LegendForm form)
{
    painter.save();
    const bool leftToRight = QGuiApplication::layoutDirection() == Qt::LeftToRight;
    const double height = flow(items(room.width(), palette, type, form), room.width(), form, [&](const Item& item, QRectF rect) {
        if (!leftToRight) rect.moveLeft(room.width() - rect.right());
        item.draw(painter, rect.translated(room.topLeft()));
    });
    painter.restore();
    return height;
}

QString legendText()
{
    return QStringList{Words::ring(), Words::ratio(), Words::sump(), Words::bars(), Words::worm()}.join(u". ");
}

}
