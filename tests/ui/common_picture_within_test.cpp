#include "ui/common/picture_within.h"

#include <gtest/gtest.h>

#include <QBuffer>
#include <QImage>

namespace tierloam::ui {
namespace {

QByteArray picture(int width, int height)
{
    QImage image{width, height, QImage::Format_RGB32};
    image.fill(Qt::darkGreen);
    QByteArray bytes;
    QBuffer buffer{&bytes};
    buffer.open(QIODevice::WriteOnly);
    EXPECT_TRUE(image.save(&buffer, "PNG"));
    return bytes;
}

TEST(PictureWithin, HasThePixelsThatTheScreenShowsThere)
{
    const QPixmap single = pictureWithin(picture(1600, 1200), {120, 120}, 1.0);
    EXPECT_EQ(single.size(), QSize(120, 90));
    const QPixmap twice = pictureWithin(picture(1600, 1200), {120, 120}, 2.0);
    EXPECT_EQ(twice.size(), QSize(240, 180)) << "else it is blurred at 200 %";
    EXPECT_EQ(twice.deviceIndependentSize(), QSizeF(120, 90));
}

TEST(PictureWithin, OfANarrowStripIsStillSeen)
{
    const QPixmap strip = pictureWithin(picture(1, 1600), {72, 72}, 1.0);
    ASSERT_FALSE(strip.isNull());
    EXPECT_EQ(strip.size(), QSize(1, 72));
}

TEST(PictureWithin, OfNoPictureIsNone)
{
    EXPECT_TRUE(pictureWithin("no picture", {72, 72}, 2.0).isNull());
}

}
}
