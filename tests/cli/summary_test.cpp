#include "program.h"

#include <QDate>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace tierloam::cli {

using testing::HasSubstr;

class Summary : public Program {
protected:
    const QString file_ = QStringLiteral("h.tierloam");

    void SetUp() override
    {
        write("j.csv", header + begun + "2031-01-09,Mill,feed,,300,g,,,\n2031-01-16,Mill,feed,,300,g,,,\n2031-01-20,Yard,setup,,,,,,\n");
        ASSERT_EQ(import(file_, QStringLiteral("j.csv")).code, 0);
    }
    QJsonObject summary(const char* at) const
    {
        const Answer answer = run({file_, QStringLiteral("--summary"), QStringLiteral("--at"), QString::fromUtf8(at)});
        EXPECT_EQ(answer.code, 0) << answer.err;
        EXPECT_EQ(answer.err, "");
        QJsonParseError error{};
        const QJsonDocument document = QJsonDocument::fromJson(QByteArray::fromStdString(answer.out), &error);
        EXPECT_EQ(error.error, QJsonParseError::NoError) << error.errorString().toStdString();
        return document.object();
    }
};

TEST_F(Summary, SaysHowTheStacksStandAtTheEndOfThatDay)
{
    const QJsonObject whole = summary("2031-02-01");
    EXPECT_EQ(whole[u"as_of"], QStringLiteral("2031-02-01"));
    EXPECT_EQ(whole[u"household"], QStringLiteral("h"));
    const QJsonArray stacks = whole[u"stacks"].toArray();
    ASSERT_EQ(stacks.size(), 1) << "the Yard has never been bedded";
    const QJsonObject mill = stacks[0].toObject();
    EXPECT_EQ(mill[u"name"], QStringLiteral("Mill"));
    EXPECT_EQ(mill[u"day"], 31);
    ASSERT_EQ(mill[u"slots"].toArray().size(), 1);
    const QJsonObject slot = mill[u"slots"].toArray()[0].toObject();
    EXPECT_EQ(slot[u"slot"], 1);
    EXPECT_EQ(slot[u"tray"], 1);
    EXPECT_EQ(slot[u"age_days"], 31);
    // 450 g were put in, the bias of what was bought is 25 %: the median cannot be far off a month later.
    const double colony = mill[u"colony_kg"].toObject()[u"p50"].toDouble();
    EXPECT_GT(colony, 0.15);
    EXPECT_LT(colony, 1.0);
}

TEST_F(Summary, ReadsTheJournalOnlyUpToThatDay)
{
    EXPECT_TRUE(summary("2030-12-31")[u"stacks"].toArray().isEmpty());
    EXPECT_EQ(summary("2031-01-01")[u"stacks"].toArray()[0].toObject()[u"day"], 0);
    const QJsonValue before = summary("2031-01-08")[u"stacks"];
    ASSERT_EQ(record(file_, "2031-06-01,Mill,feed,,900,g,,,").code, 0);
    EXPECT_EQ(summary("2031-01-08")[u"stacks"], before);
}

TEST_F(Summary, IsOfTodayByDefault)
{
    const Answer answer = run({file_, QStringLiteral("--summary")});
    EXPECT_EQ(answer.code, 0);
    EXPECT_THAT(answer.out, HasSubstr("\"as_of\": \"" + QDate::currentDate().toString(Qt::ISODate).toStdString() + "\""));
}

TEST_F(Summary, ChangesNothing)
{
    const std::string before = read("h.tierloam");
    summary("2031-02-01");
    EXPECT_EQ(read("h.tierloam"), before);
    EXPECT_EQ(names(), (QStringList{file_, QStringLiteral("j.csv")}));
}

TEST_F(Summary, ThatCannotBePrintedIsAFailure)
{
    const Answer answer = runCommand(QStringLiteral("/bin/sh"), {QStringLiteral("-c"), QStringLiteral(TIERLOAM_PROGRAM " h.tierloam --summary --at 2031-02-01 > /dev/full")}, folder().path(),
                                     bareEnvironment());
    EXPECT_EQ(answer.code, 1);
    EXPECT_THAT(answer.err, HasSubstr("could not be printed"));
}

}
