#pragma once

#include <QColor>
#include <QDir>
#include <QImage>
#include <QString>

#include <cstdlib>

/// For tests that draw: looking at what was drawn, and counting in it.
namespace tierloam::tests {

/// Keeps the picture as NAME.png in the folder that TIERLOAM_PICTURES names, for people to look at; without it, does nothing.
inline void keepPicture(const QImage& image, const QString& name)
{
    if (const char* folder = std::getenv("TIERLOAM_PICTURES")) {
        const QDir dir{QString::fromLocal8Bit(folder)};
        if (!dir.mkpath(QStringLiteral(".")) || !image.save(dir.filePath(name + QStringLiteral(".png")))) qWarning("picture not kept");
    }
}

inline bool near(const QColor& a, const QColor& b, int tolerance = 3)
{
    return std::abs(a.red() - b.red()) <= tolerance && std::abs(a.green() - b.green()) <= tolerance && std::abs(a.blue() - b.blue()) <= tolerance;
}

/// Pixels of that colour within a rectangle.
inline int countColour(const QImage& image, const QRect& within, const QColor& colour, int tolerance = 3)
{
    int count = 0;
    const QRect area = within.intersected(image.rect());
    for (int y = area.top(); y <= area.bottom(); ++y)
        for (int x = area.left(); x <= area.right(); ++x)
            if (near(image.pixelColor(x, y), colour, tolerance)) ++count;
    return count;
}

}
