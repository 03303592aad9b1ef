#include "ui/common/picture_within.h"

#include <QBuffer>
#include <QImageReader>

namespace tierloam::ui {

QPixmap pictureWithin(QByteArray bytes, QSize room, qreal devicePixelRatio)
{
    QBuffer buffer{&bytes};
    buffer.open(QIODevice::ReadOnly);
    QImageReader reader{&buffer};
    const QSize whole = reader.size();
    const QSize pixels = (QSizeF{room} * devicePixelRatio).toSize();
    if (whole.isValid()) reader.setScaledSize(whole.scaled(pixels, Qt::KeepAspectRatio).expandedTo(QSize{1, 1})); // a narrow strip has no width left
    QPixmap shown = QPixmap::fromImage(reader.read());
    shown.setDevicePixelRatio(devicePixelRatio);
    return shown;
}

}
