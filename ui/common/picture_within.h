#pragma once

#include <QByteArray>
#include <QPixmap>
#include <QSize>

namespace tierloam::ui {

/// The picture in these bytes as large as fits into `room` (px as widgets count them), with the pixels that a screen of that ratio shows there. It is
/// read at that size, so that large ones do not hold the window up. Empty when the bytes hold no picture.
QPixmap pictureWithin(QByteArray bytes, QSize room, qreal devicePixelRatio);

}
