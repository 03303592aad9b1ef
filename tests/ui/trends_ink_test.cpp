// Lines and bands that are painted in pieces look as if they were painted in one.
#include "tests/support/pictures.h"
#include "ui/trends/dense_ink.h"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>

namespace tierloam::trends {

namespace {

const QRectF area{40.4, 12.7, 420, 160};
const QColor moss{74, 110, 58};

QPolygonF wave(int points, double height, double shift)
{
    QPolygonF line;
    for (int i = 0; i < points; ++i) line << QPointF{area.left() + 6.3 + (area.width() - 12) * i / (points - 1), area.center().y() + shift + height * std::sin(i * 0.7)};
    return line;
}

QImage painted(double sharp, bool inPieces, const std::function<void(DenseInk&)>& paint)
{
    QImage image{(area.size() * sharp).toSize() + QSize{1, 1}, QImage::Format_ARGB32_Premultiplied};
    image.setDevicePixelRatio(sharp);
    image.fill(Qt::white);
    QPainter painter{&image};
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(-area.topLeft());
    DenseInk ink = inPieces ? DenseInk{painter, area, sharp} : DenseInk{painter};
    paint(ink);
    painter.end();
    return image.convertToFormat(QImage::Format_RGB32);
}

/// How far the furthest channel of any pixel is off, and how many are off by more than a tenth of its range.
struct Off {
    int most = 0;
    int many = 0;
};

Off offOf(const QImage& one, const QImage& other)
{
    Off off;
    for (int y = 0; y < one.height(); ++y)
        for (int x = 0; x < one.width(); ++x) {
            const QColor a = one.pixelColor(x, y), b = other.pixelColor(x, y);
            const int here = std::max({std::abs(a.red() - b.red()), std::abs(a.green() - b.green()), std::abs(a.blue() - b.blue())});
            off.most = std::max(off.most, here);
            off.many += here > 25;
        }
    return off;
}

Off piecesBesideWhole(double sharp, const char* name, const std::function<void(DenseInk&)>& paint)
{
    const QImage pieces = painted(sharp, true, paint), whole = painted(sharp, false, paint);
    tests::keepPicture(pieces, QString::fromLatin1(name) + QStringLiteral("-pieces"));
    tests::keepPicture(whole, QString::fromLatin1(name) + QStringLiteral("-whole"));
    EXPECT_GT(tests::countColour(whole, whole.rect(), Qt::white, 2), whole.width() * whole.height() / 10);
    EXPECT_LT(tests::countColour(whole, whole.rect(), Qt::white, 2), whole.width() * whole.height() - 500) << "nothing was painted";
    return offOf(pieces, whole);
}

}

TEST(DenseInkTest, ABandInPiecesHasNoSeams)
{
    for (const double sharp : {1.0, 1.5, 2.0}) {
        QColor faint = moss;
        faint.setAlphaF(0.5F);
        const Off off = piecesBesideWhole(sharp, "ink-band", [&](DenseInk& ink) {
            ink.veiled(faint, [](const DenseInk& on, const QColor& colour) {
                on.painter().setBrush(colour);
                on.between(wave(230, 20, -30), wave(230, 26, 30));
            });
        });
        EXPECT_LE(off.most, 6) << sharp;
    }
}

TEST(DenseInkTest, ABandBeyondTheAreaIsCutThereAndEndsWhereItEnds)
{
    const auto far = [](double shift) {
        QPolygonF line = wave(300, 10, shift);
        line.front().setX(-5000);
        line.back().setX(5000);
        return line;
    };
    EXPECT_LE(piecesBesideWhole(1, "ink-far", [&](DenseInk& ink) {
        ink.painter().setBrush(moss);
        ink.between(far(-20), far(20));
    }).most, 6);
    const auto until = [](double shift) {
        QPolygonF line = wave(300, 10, shift);
        line.remove(200, 100);
        return line;
    };
    EXPECT_LE(piecesBesideWhole(1, "ink-end", [&](DenseInk& ink) {
        ink.painter().setBrush(moss);
        ink.between(until(-20), until(20));
    }).most, 6);
}

TEST(DenseInkTest, ALineInPiecesKeepsItsDashesAndItsCorners)
{
    for (const Qt::PenStyle style : {Qt::SolidLine, Qt::DashLine, Qt::DashDotDotLine}) {
        const auto line = [style](int points, double height) {
            return [=](DenseInk& ink) {
                ink.painter().setPen(QPen{moss, 1.6, style, Qt::RoundCap, Qt::RoundJoin});
                ink.polyline(wave(points, height, 0));
            };
        };
        const Off sparse = piecesBesideWhole(1, "ink-line", line(60, 30));
        EXPECT_LE(sparse.many, 120) << style;
        const Off dense = piecesBesideWhole(1, "ink-dense", line(230, 30));
        EXPECT_LE(dense.many, 120) << style;
    }
}

TEST(DenseInkTest, WhatShinesThroughDoesSoTogether)
{
    QColor faint = moss;
    faint.setAlphaF(0.4F);
    const QImage twice = painted(1, true, [&](DenseInk& ink) {
        ink.veiled(faint, [](const DenseInk& on, const QColor& colour) {
            on.painter().fillRect(QRectF{60, 40, 100, 60}, colour);
            on.painter().fillRect(QRectF{100, 40, 100, 60}, colour);
        });
    });
    const QColor once = twice.pixelColor(40, 50), both = twice.pixelColor(90, 50);
    EXPECT_TRUE(tests::near(once, both, 1)) << "each piece of a shape lies on the others";
    EXPECT_NEAR(once.red(), 255 - 0.4 * (255 - moss.red()), 2);
}

}
