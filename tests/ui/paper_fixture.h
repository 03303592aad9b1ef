#pragma once

#include "tests/support/sample_shelf.h"
#include "ui/paper/sheet.h"

#include <QDir>
#include <QFile>
#include <QImage>
#include <QProcess>
#include <QStandardPaths>
#include <QStringList>
#include <QTemporaryDir>

#include <gtest/gtest.h>

/// Pages read back by another program (poppler), so that nothing is believed to be on them that is not.
namespace tierloam::paper {

inline SheetInputs sampleSheet(const std::string& stack = "Scullery")
{
    SheetInputs inputs;
    inputs.household = QStringLiteral("Millrace Cottage");
    inputs.stack = stack;
    inputs.today = tests::sampleToday();
    inputs.journal = tests::viewOf(tests::sampleJournal());
    inputs.reckoning = tests::sampleReckoning();
    inputs.version = QStringLiteral("1.2.3");
    return inputs;
}

inline QString poppler(const char* tool, const QStringList& arguments)
{
    const QString program = QStandardPaths::findExecutable(QString::fromLatin1(tool));
    EXPECT_FALSE(program.isEmpty()) << "install poppler-utils: tests/packages.txt";
    QProcess process;
    process.start(program, arguments);
    EXPECT_TRUE(process.waitForFinished(60'000));
    EXPECT_EQ(process.exitCode(), 0) << process.readAllStandardError().toStdString();
    return QString::fromUtf8(process.readAllStandardOutput());
}

/// The words of a PDF, blanks and line breaks as one blank each.
inline QString wordsOf(const QString& pdf) { return poppler("pdftotext", {pdf, QStringLiteral("-")}).simplified(); }

/// Each page as a picture at 50 dots an inch.
inline QList<QImage> pagesOf(const QString& pdf)
{
    const QTemporaryDir folder;
    poppler("pdftoppm", {QStringLiteral("-r"), QStringLiteral("50"), QStringLiteral("-png"), pdf, folder.filePath(QStringLiteral("p"))});
    QList<QImage> pages;
    const QStringList names = QDir{folder.path()}.entryList(QDir::Files, QDir::Name);
    for (const QString& name : names) pages << QImage{folder.filePath(name)}.convertToFormat(QImage::Format_RGB32);
    return pages;
}

/// The rectangle that holds everything on a page that is not white; where it touches an edge, something may be cut off.
inline QRect inkOf(const QImage& page)
{
    QRect ink;
    for (int y = 0; y < page.height(); ++y)
        for (int x = 0; x < page.width(); ++x)
            if (qGray(page.pixel(x, y)) < 245) ink |= QRect{x, y, 1, 1};
    return ink;
}

}
