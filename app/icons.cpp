// Makes the pictures of the program's icon from its drawing:  tierloam-icons DRAWING.svg FOLDER SIZE…
// Writes FOLDER/SIZE.png for each size. Run while building; no picture is kept in the source.
#include <QCoreApplication>
#include <QDir>
#include <QImage>
#include <QPainter>
#include <QSvgRenderer>

#include <cstdio>

int main(int argc, char** argv)
{
    const QCoreApplication application{argc, argv};
    const QStringList arguments = QCoreApplication::arguments().mid(1);
    QSvgRenderer drawing;
    if (arguments.size() < 3 || !drawing.load(arguments[0]) || !QDir{}.mkpath(arguments[1])) {
        std::fputs("tierloam-icons: needs a drawing, a folder and sizes\n", stderr);
        return 1;
    }
    for (const QString& word : arguments.mid(2)) {
        const int size = word.toInt();
        QImage picture{size, size, QImage::Format_ARGB32_Premultiplied};
        picture.fill(Qt::transparent);
        QPainter painter{&picture};
        painter.setRenderHint(QPainter::Antialiasing);
        drawing.render(&painter);
        painter.end();
        if (size < 1 || !picture.save(arguments[1] + QLatin1Char('/') + word + QStringLiteral(".png"), "PNG")) {
            std::fprintf(stderr, "tierloam-icons: no picture of size %s\n", qPrintable(word));
            return 1;
        }
    }
    return 0;
}
