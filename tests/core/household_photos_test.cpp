#include "core/household/photo_file.h"
#include "tests/core/household_fixture.h"

#include <QImage>

namespace tierloam::household {

namespace {

class HouseholdPhotos : public HouseholdTest {
protected:
    /// A JPEG with a position in its EXIF part, lying on its side as cameras write it (orientation 6: to be turned by 90°).
    QString cameraPicture(QSize size)
    {
        QImage image{size, QImage::Format_RGB32};
        image.fill(0xff406020);
        image.setText(QStringLiteral("Comment"), QStringLiteral("SECRETPLACE"));
        const QString path = folder() + QStringLiteral("/camera.jpg");
        image.save(path, "JPEG", 80);
        QFile file{path};
        EXPECT_TRUE(file.open(QIODevice::ReadWrite));
        const QByteArray jpeg = file.readAll();
        // APP1: TIFF, little-endian, one directory: orientation 6 and the pointer to a GPS directory with latitude reference "N" and text.
        QByteArray tiff = QByteArray::fromHex("49492a0008000000" "0200" "1201030001000000" "06000000" "2588040001000000" "26000000" "00000000"
                                              "0100" "0100020002000000" "4e000000" "00000000");
        tiff += "GPSLatitude 51.4779";
        QByteArray app1 = QByteArray::fromHex("ffe1") + QByteArray(1, static_cast<char>((tiff.size() + 8) >> 8)) + QByteArray(1, static_cast<char>((tiff.size() + 8) & 0xff))
            + QByteArray("Exif\0\0", 6) + tiff;
        file.seek(0);
        file.write(jpeg.left(2) + app1 + jpeg.mid(2));
        return path;
    }
    std::vector<store::Photo> photosNow(journal::EntryId entry)
    {
        std::optional<std::vector<store::Photo>> got;
        household().listPhotos(entry, [&](const std::vector<store::Photo>& photos) { got = photos; });
        EXPECT_TRUE(QTest::qWaitFor([&] { return got.has_value(); }, patience));
        return got.value_or(std::vector<store::Photo>{});
    }
};

TEST_F(HouseholdPhotos, AreKeptSmallTurnedAndWithoutAPlace)
{
    const QString path = cameraPicture({2400, 1200});
    QFile file{path};
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    ASSERT_TRUE(file.readAll().contains("GPSLatitude")) << "the camera wrote it";
    const auto read = readPhoto(path);
    const auto* photo = std::get_if<store::Photo>(&read);
    ASSERT_NE(photo, nullptr);
    EXPECT_EQ(photo->width, 800);
    EXPECT_EQ(photo->height, 1600);
    for (const char* trace : {"Exif", "GPS", "SECRETPLACE", "51.4779"}) EXPECT_FALSE(photo->bytes.contains(trace)) << trace;
    EXPECT_EQ(QImage::fromData(photo->bytes).size(), QSize(800, 1600));
}

TEST_F(HouseholdPhotos, WhatIsNoPictureIsTold)
{
    QFile junk{folder() + QStringLiteral("/junk.jpg")};
    ASSERT_TRUE(junk.open(QIODevice::WriteOnly));
    junk.write("no picture");
    junk.close();
    EXPECT_TRUE(std::get<QString>(readPhoto(junk.fileName())).contains(QStringLiteral("junk.jpg")));
    EXPECT_TRUE(std::holds_alternative<QString>(readPhoto(QStringLiteral("/no/such.png"))));
}

TEST_F(HouseholdPhotos, ComeGoAndComeBackByUndoAndOverARestart)
{
    open();
    const auto entry = recordNow(newStack(start));
    const auto photo = std::get<store::Photo>(readPhoto(cameraPicture({300, 200})));
    ASSERT_TRUE(done(household().addPhoto(entry, photo, QStringLiteral("Picture"))));
    ASSERT_EQ(photosNow(entry).size(), 1U);
    EXPECT_EQ(photosNow(entry)[0].bytes, photo.bytes);
    undoNow();
    EXPECT_TRUE(photosNow(entry).empty());
    redoNow();
    ASSERT_EQ(photosNow(entry).size(), 1U);
    open();
    ASSERT_EQ(photosNow(entry).size(), 1U);
    ASSERT_TRUE(done(household().removePhoto(photosNow(entry)[0], QStringLiteral("Take out"))));
    EXPECT_TRUE(photosNow(entry).empty());
    undoNow();
    EXPECT_EQ(photosNow(entry).size(), 1U);
    const Ticket nowhere = household().addPhoto(journal::EntryId{9999}, photo, QStringLiteral("Picture"));
    EXPECT_FALSE(done(nowhere));
    EXPECT_EQ(inFile(), entries());
    // A copy holds them too.
    std::optional<QString> why;
    household().saveCopy(folder() + QStringLiteral("/copy.tierloam"), [&](const QString& told) { why = told; });
    ASSERT_TRUE(QTest::qWaitFor([&] { return why.has_value(); }, patience));
    EXPECT_EQ(*why, QString{});
    const auto copy = store::HouseholdFile::open(folder() + QStringLiteral("/copy.tierloam"), store::HouseholdFile::Mode::readOnly);
    EXPECT_EQ(std::get<std::vector<store::Photo>>(std::get<std::unique_ptr<store::HouseholdFile>>(copy)->photosOf(entry)).size(), 1U);
}

}

}
