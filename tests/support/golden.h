#pragma once

#include "tests/support/pictures.h"

#include <QRect>

#include <cstdlib>
#include <vector>

/// Pictures that were looked at once and are kept. What may differ between machines (letters) is masked.
namespace tierloam::tests {

struct Difference {
    double share = 1;                ///< of the pixels that are compared, those that are another colour; 1 when the sizes differ
    QImage where;                    ///< those in red
};

/// `within`: what is compared; `masks`: what of it is not. A pixel is another colour when a channel differs by more than 40 of 255.
inline Difference differenceOf(const QImage& picture, const QImage& golden, const QRect& within, const std::vector<QRect>& masks)
{
    if (picture.size() != golden.size()) return {};
    constexpr int otherColour = 40;
    Difference difference{0, picture.copy()};
    int compared = 0, other = 0;
    for (int y = within.top(); y <= within.bottom(); ++y)
        for (int x = within.left(); x <= within.right(); ++x) {
            bool masked = false;
            for (const QRect& mask : masks) masked = masked || mask.contains(x, y);
            if (masked) continue;
            ++compared;
            if (near(picture.pixelColor(x, y), golden.pixelColor(x, y), otherColour)) continue;
            ++other;
            difference.where.setPixelColor(x, y, Qt::red);
        }
    difference.share = compared == 0 ? 1 : static_cast<double>(other) / compared;
    return difference;
}

/// The golden picture of that name from `folder`. With TIERLOAM_GOLDEN=write in the environment `now` takes its place first.
inline QImage golden(const QString& folder, const QString& name, const QImage& now)
{
    const QString path = QDir{folder}.filePath(name + QStringLiteral(".png"));
    if (const char* mode = std::getenv("TIERLOAM_GOLDEN"); mode && QByteArray{mode} == "write") {
        if (!QDir{}.mkpath(folder) || !now.save(path)) qWarning("golden picture not written");
    }
    return QImage{path}.convertToFormat(QImage::Format_RGB32);
}

}
