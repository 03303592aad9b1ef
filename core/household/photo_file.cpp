#include "core/household/photo_file.h"

#include "core/household/text.h"

#include <QBuffer>
#include <QImage>
#include <QImageReader>

#include <algorithm>
#include <cstring>

namespace tierloam::household {

namespace {

constexpr int quality = 85;

/// The pixels alone: texts and the like that a QImage carries along stay behind.
QImage pixelsOf(const QImage& image)
{
    const QImage plain = image.convertToFormat(QImage::Format_RGB32);
    QImage pixels{plain.size(), QImage::Format_RGB32};
    for (int y = 0; y < plain.height(); ++y) std::memcpy(pixels.scanLine(y), plain.constScanLine(y), static_cast<std::size_t>(plain.bytesPerLine()));
    return pixels;
}

}

std::variant<store::Photo, QString> readPhoto(const QString& path)
{
    QImageReader reader{path};
    reader.setAutoTransform(true);
    const QSize size = reader.size();
    if (size.isValid() && std::max(size.width(), size.height()) > longestSide)
        reader.setScaledSize(size.scaled(longestSide, longestSide, Qt::KeepAspectRatio).expandedTo(QSize{1, 1})); // read small: a large one need not fit into memory
    QImage image = reader.read();
    if (image.isNull()) return HouseholdText::tr("%1 cannot be used as a picture: %2").arg(path, reader.errorString());
    if (std::max(image.width(), image.height()) > longestSide)
        image = image.scaled(image.size().scaled(longestSide, longestSide, Qt::KeepAspectRatio).expandedTo(QSize{1, 1}), Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
    image = pixelsOf(image);
    store::Photo photo;
    photo.mediaType = QStringLiteral("image/jpeg");
    photo.width = image.width();
    photo.height = image.height();
    QBuffer buffer{&photo.bytes};
    if (!buffer.open(QIODevice::WriteOnly) || !image.save(&buffer, "JPEG", quality))
        return HouseholdText::tr("%1 cannot be used as a picture: it could not be made smaller.").arg(path);
    return photo;
}

}
