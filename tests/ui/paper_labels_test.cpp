#include "tests/ui/paper_fixture.h"

#include "core/wording/formats.h"
#include "ui/common/dates.h"
#include "ui/paper/labels.h"
#include "ui/paper/look.h"

#include <QGuiApplication>
#include <QPainter>

namespace tierloam::paper {

namespace {

std::vector<Label> sampleLabels() { return labelsOf(journal::replay(tests::sampleJournal()), tests::sampleToday()); }

}

TEST(PaperLabels, OneForEachTrayThatStands)
{
    const auto labels = sampleLabels();
    ASSERT_EQ(labels.size(), 8u) << "three, two and three trays";
    EXPECT_EQ(labels.front().stack, QStringLiteral("Scullery"));
    EXPECT_TRUE(labelsOf(journal::replay(tests::sampleJournal()), Day{}).empty());
    const journal::Replay replay = journal::replay(tests::sampleJournal());
    for (const Label& label : labels) EXPECT_EQ(label.bedded, replay.stack(label.stack.toStdString())->batch(label.batch).bedded) << "the day on which its bedding was laid";
}

TEST(PaperLabels, SizesAreInInchesInUsUnits)
{
    QStringList names;
    for (const auto measures : {wording::Measures::metric, wording::Measures::us}) {
        wording::setMeasures(measures);
        names << nameOf(labelSheets().back()) << nameOf(labelSheets().front());
    }
    wording::setMeasures(wording::Measures::metric);
    EXPECT_EQ(names[0], QStringLiteral("Letter, 2 × 5 labels of 101.6 × 50.8 mm"));
    EXPECT_EQ(names[2], QStringLiteral("Letter, 2 × 5 labels of 4 × 2 in"));
    EXPECT_EQ(names[3], QStringLiteral("A4, 3 × 8 labels of 2.76 × 1.42 in")); // 70 and 36 mm
}

TEST(PaperLabels, EachNamesStackTrayBatchAndDay)
{
    const QTemporaryDir folder;
    const QString pdf = folder.filePath(QStringLiteral("l.pdf"));
    for (const LabelSheet& sheet : labelSheets()) {
        ASSERT_FALSE(saveLabels(sampleLabels(), sheet, 0, QStringLiteral("Tierloam 1"), pdf).has_value());
        const QString words = wordsOf(pdf);
        for (const Label& label : sampleLabels()) {
            EXPECT_TRUE(words.contains(label.stack));
            EXPECT_TRUE(words.contains(QStringLiteral("Tray %1 · batch %2").arg(label.tray).arg(label.batch))) << words.toStdString();
        }
        for (const Label& label : sampleLabels()) EXPECT_TRUE(words.contains(QStringLiteral("Bedded ") + ui::fullDay(label.bedded))) << words.toStdString();
        for (const QImage& page : pagesOf(pdf)) EXPECT_EQ(page.width() > 420, sheet.letter);
    }
}

TEST(PaperLabels, SheetsFitTheirPages)
{
    for (const LabelSheet& sheet : labelSheets()) {
        const QSizeF page = sheet.letter ? QSizeF{215.9, 279.4} : QSizeF{210, 297};
        EXPECT_LE(sheet.columns * sheet.width, page.width()) << nameOf(sheet).toStdString();
        EXPECT_LE(sheet.rows * sheet.height, page.height()) << nameOf(sheet).toStdString();
    }
    // A mutation that must not pass: one row more.
    EXPECT_GT(9 * LabelSheet{}.height, 297);
}

TEST(PaperLabels, PlacesLeftFreeAndPagesAdded)
{
    const QTemporaryDir folder;
    const QString pdf = folder.filePath(QStringLiteral("l.pdf"));
    const auto labels = sampleLabels();
    const LabelSheet sheet;
    ASSERT_FALSE(saveLabels(labels, sheet, 6, {}, pdf).has_value());
    QList<QImage> pages = pagesOf(pdf);
    ASSERT_EQ(pages.size(), 1);
    // Two rows of three are free: the first label begins at the third row.
    const double row = 36 / 25.4 * 50, above = (297 - 8 * 36) / 2.0 / 25.4 * 50;
    EXPECT_NEAR(inkOf(pages.front()).top(), above + 2 * row, 1.5);
    // From right to left the first place is the one at the right.
    const std::vector<Label> one{labels.front()};
    const auto middle = [&] {
        EXPECT_FALSE(saveLabels(one, sheet, 0, {}, pdf).has_value());
        const QImage page = pagesOf(pdf).front();
        return static_cast<double>(inkOf(page).center().x()) / page.width();
    };
    EXPECT_LT(middle(), 0.4);
    QGuiApplication::setLayoutDirection(Qt::RightToLeft);
    EXPECT_GT(middle(), 0.6);
    QGuiApplication::setLayoutDirection(Qt::LeftToRight);
    ASSERT_FALSE(saveLabels(labels, sheet, 20, {}, pdf).has_value());
    EXPECT_EQ(pagesOf(pdf).size(), 2) << "four on the first, four on the next";
}

TEST(PaperLabels, NamesFitTheirLabelsUpToALengthAndAreElidedBeyond)
{
    QImage image{400, 400, QImage::Format_RGB32};
    for (const LabelSheet& sheet : labelSheets()) {
        QPainter painter{&image};
        const QSizeF size{dots(sheet.width), dots(sheet.height)};
        Label label{QStringLiteral("Scullery by the north window"), 12, 123, tests::sampleToday()};
        EXPECT_TRUE(paintLabel(label, painter, size)) << nameOf(sheet).toStdString();
        label.stack = QString{300, u'w'};
        EXPECT_FALSE(paintLabel(label, painter, size));
    }
}

}
