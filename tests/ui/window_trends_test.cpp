// What the charts show goes into files and to the printer, by key, and comes back as what it claims to be.
#include "tests/ui/window_fixture.h"

#include <QFile>
#include <QImage>
#include <QXmlStreamReader>

namespace tierloam::window {

namespace {

class TrendsFiles : public WindowTest {
protected:
    void SetUp() override
    {
        WindowTest::SetUp();
        openSample();
        press("Ctrl+2");
        ASSERT_EQ(desk().page(), Desk::Page::trends);
        desk().trends()->setFocus();
        settle();
    }
    QByteArray saved(const char* keys, const QString& name)
    {
        answers_.files << path(name);
        press(keys);
        QFile file{path(name)};
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray{};
    }
};

}

TEST_F(TrendsFiles, PictureHoldsEveryMeasureInTheColoursOfTheTheme)
{
    const QImage light = QImage::fromData(saved("Shift+P", QStringLiteral("light.png")));
    ASSERT_FALSE(light.isNull());
    EXPECT_GE(light.width(), 1800);
    EXPECT_GT(light.height(), 2 * 7 * 200) << "seven measures beneath each other";
    EXPECT_EQ(light.pixelColor(2, 2), theme_->palette().panel);
    EXPECT_TRUE(notices().join(u' ').contains(QStringLiteral("light.png")));
    theme_->setMode(ui::ThemeMode::dark);
    settle();
    const QImage dark = QImage::fromData(saved("Shift+P", QStringLiteral("dark.png")));
    EXPECT_EQ(dark.pixelColor(2, 2), drawing::Palette::dark().panel);
    EXPECT_EQ(dark.size(), light.size());
}

TEST_F(TrendsFiles, DrawingIsSoundXmlWithWordsAndLines)
{
    const QByteArray svg = saved("Shift+S", QStringLiteral("trends.svg"));
    QXmlStreamReader reader{svg};
    int texts = 0, ways = 0, pictures = 0;
    QString words;
    while (!reader.atEnd()) {
        if (reader.readNext() == QXmlStreamReader::Characters) words += reader.text();
        if (!reader.isStartElement()) continue;
        texts += reader.name() == QStringLiteral("text");
        ways += reader.name() == QStringLiteral("path") || reader.name() == QStringLiteral("polyline") || reader.name() == QStringLiteral("polygon");
        pictures += reader.name() == QStringLiteral("image");
    }
    EXPECT_FALSE(reader.hasError()) << reader.errorString().toStdString();
    EXPECT_GT(texts, 60);
    EXPECT_GT(ways, 60);
    EXPECT_EQ(pictures, 0) << "lines, no pictures of lines";
    EXPECT_TRUE(words.contains(QStringLiteral("Feed-to-cast"))) << words.left(300).toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("Scullery")));
}

TEST_F(TrendsFiles, PagesAndPrinterGetTheSameSheet)
{
    const QByteArray pdf = saved("Shift+D", QStringLiteral("trends.pdf"));
    EXPECT_TRUE(pdf.startsWith("%PDF-"));
    const auto pages = [](const QByteArray& bytes) { return bytes.count("/Type /Page\n"); };
    EXPECT_GE(pages(pdf), 3) << "21 charts";
    EXPECT_LE(pages(pdf), 12);
    const QByteArray printed = saved("P", QStringLiteral("printed.pdf"));
    EXPECT_EQ(pages(printed), pages(pdf));
    answers_.files << QString{};
    press("P");
    EXPECT_FALSE(notices().back().contains(QStringLiteral("printer does not"))) << "called off";
}

TEST_F(TrendsFiles, FiguresAreOfTheDaysThatAreSeen)
{
    const QByteArray all = saved("Shift+F", QStringLiteral("all.csv"));
    EXPECT_TRUE(all.startsWith("measure,stack,date,until,what,low,value,high,unit\r\n"));
    for (const char* measure : {"processing", "drainage", "colony", "feed-to-cast", "temperature", "moisture"}) EXPECT_TRUE(all.contains(QByteArray{QByteArray{"\r\n"} + measure + ','})) << measure;
    for (int i = 0; i < 6; ++i) press("+");
    settle();
    const QByteArray part = saved("Shift+F", QStringLiteral("part.csv"));
    EXPECT_LT(part.count('\n'), all.count('\n') * 2 / 3);
    answers_.files << QString{};
    press("Shift+F"); // called off: nothing is written, nothing is told
    answers_.files << path(QStringLiteral("no such folder/figures.csv"));
    press("Shift+F");
    EXPECT_TRUE(QTest::qWaitFor([this] { return notices().size() >= 1; }, patience));
    EXPECT_FALSE(QFile::exists(path(QStringLiteral("no such folder/figures.csv"))));
}

}
