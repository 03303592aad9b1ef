// The built program, started as people start it, draws its pages without a display.
#include "tests/support/pictures.h"
#include "tests/ui/program_fixture.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QImage>

namespace tierloam::portrait {

namespace {

class Program : public tests::ProgramTest {
protected:
    QImage page(const char* folder, const char* name) { return QImage{path(folder) + u'/' + QString::fromLatin1(name) + QStringLiteral(".png")}; }
};

using tests::Ended;

constexpr const char* pages[] = {"shelf", "trends", "journal"};

}

TEST_F(Program, DrawsTheDemoWithoutADisplayAndTheSameEachTime)
{
    for (const char* folder : {"a", "b"}) {
        const Ended ended = run({QStringLiteral("--demo"), QStringLiteral("--portrait"), path(folder), QStringLiteral("--at"), QStringLiteral("2031-05-06")});
        ASSERT_EQ(ended.code, 0) << ended.said.toStdString();
    }
    EXPECT_EQ(QDir{path("a")}.entryList(QDir::Files), (QStringList{QStringLiteral("handbook.png"), QStringLiteral("journal.png"), QStringLiteral("materials.png"), QStringLiteral("rotation.png"), QStringLiteral("shelf.png"), QStringLiteral("trends.png")}));
    for (const char* name : pages) {
        EXPECT_EQ(page("a", name).size(), QSize(1440, 900)) << name;
        EXPECT_TRUE(page("a", name) == page("b", name)) << name;
    }
}

TEST_F(Program, OptionsChangeThePicture)
{
    const QStringList demo{QStringLiteral("--demo"), QStringLiteral("--at"), QStringLiteral("2031-05-06")};
    ASSERT_EQ(run(demo + QStringList{QStringLiteral("--portrait"), path("plain")}).code, 0);
    ASSERT_EQ(run(demo + QStringList{QStringLiteral("--portrait"), path("other"), QStringLiteral("--theme"), QStringLiteral("dark"), QStringLiteral("--font-scale"),
                                     QStringLiteral("200"), QStringLiteral("--size"), QStringLiteral("1000x640"), QStringLiteral("--lang"), QStringLiteral("de")})
                  .code,
              0);
    for (const char* name : pages) {
        const QImage other = page("other", name);
        EXPECT_EQ(other.size(), QSize(1000, 640)) << name;
        EXPECT_LT(qGray(other.pixel(500, 3)), 80) << name << " is not dark";
        EXPECT_GT(qGray(page("plain", name).pixel(500, 3)), 180) << name;
    }
    ASSERT_EQ(run({QStringLiteral("--demo"), QStringLiteral("--at"), QStringLiteral("2031-03-01"), QStringLiteral("--portrait"), path("earlier")}).code, 0);
    EXPECT_TRUE(page("earlier", "shelf") != page("plain", "shelf"));
}

TEST_F(Program, DrawsAHouseholdAndLeavesItsFileAsItWas)
{
    QFile csv{path("j.csv")};
    ASSERT_TRUE(csv.open(QIODevice::WriteOnly));
    csv.write("date,stack,action,slot,amount,unit,item,detail,note\n2031-01-01,Mill,setup,,,,,,\n2031-01-01,Mill,bed,,600,g,corrugated cardboard shredded,,\n"
              "2031-01-02,Mill,stock,,400,g,,,\n2031-01-08,Mill,feed,,300,g,,,\n");
    csv.close();
    ASSERT_EQ(run({path("h.tierloam"), QStringLiteral("--import"), path("j.csv")}).code, 0);
    const auto exported = [&] {
        EXPECT_EQ(run({path("h.tierloam"), QStringLiteral("--export"), path("out.csv")}).code, 0);
        QFile out{path("out.csv")};
        EXPECT_TRUE(out.open(QIODevice::ReadOnly));
        return out.readAll();
    };
    const QByteArray before = exported();
    const Ended ended = run({path("h.tierloam"), QStringLiteral("--portrait"), path("p"), QStringLiteral("--at"), QStringLiteral("2031-02-01")});
    ASSERT_EQ(ended.code, 0) << ended.said.toStdString();
    EXPECT_FALSE(page("p", "shelf").isNull());
    EXPECT_EQ(exported(), before);
}

TEST_F(Program, FileThatIsNotThereIsToldAndNotMade)
{
    const Ended drawn = run({path("none.tierloam"), QStringLiteral("--portrait"), path("p")});
    EXPECT_EQ(drawn.code, 1);
    EXPECT_TRUE(drawn.said.contains(QStringLiteral("none.tierloam"))) << drawn.said.toStdString();
    EXPECT_FALSE(QFile::exists(path("none.tierloam")));
    EXPECT_FALSE(QFile::exists(path("p"))) << "no folder for pages that were not drawn";
    QProcessEnvironment offscreen;
    offscreen.insert(QStringLiteral("QT_QPA_PLATFORM"), QStringLiteral("offscreen"));
    const Ended opened = run({path("none.tierloam")}, offscreen);
    EXPECT_EQ(opened.code, 1);
    EXPECT_TRUE(opened.said.contains(QStringLiteral("none.tierloam"))) << opened.said.toStdString();
    EXPECT_FALSE(QFile::exists(path("none.tierloam")));
}

TEST_F(Program, WindowWithoutADisplaySaysSoInsteadOfBreaking)
{
    const Ended ended = run({QStringLiteral("--demo")});
    EXPECT_EQ(ended.code, 1);
    EXPECT_TRUE(ended.said.contains(QStringLiteral("no display"))) << ended.said.toStdString();
}

}
