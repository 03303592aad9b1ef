// The built program, started as a script starts it, writes sheets and labels without a display.
#include "tests/ui/paper_fixture.h"
#include "tests/ui/program_fixture.h"

namespace tierloam::paper {

namespace {

class PaperProgram : public tests::ProgramTest {
protected:
    void SetUp() override
    {
        write("j.csv", "date,stack,action,slot,amount,unit,item,detail,note\n2031-01-01,Mill <1>,setup,,,,,,\n2031-01-01,Mill <1>,bed,,600,g,corrugated cardboard shredded,,\n"
                       "2031-01-02,Mill <1>,stock,,400,g,,,\n2031-01-08,Mill <1>,feed,,300,g,,,\n2031-01-20,Mill <1>,check,,,,,depth=1.5,<script>alert(1)</script>\n");
        ASSERT_EQ(run({path("h.tierloam"), QStringLiteral("--import"), path("j.csv")}).code, 0);
    }
    tests::Ended report(const char* stack, const char* out, const QStringList& more = {})
    {
        return run(QStringList{path("h.tierloam"), QStringLiteral("--report"), QString::fromUtf8(stack), QStringLiteral("--out"), path(out), QStringLiteral("--at"), QStringLiteral("2031-02-01")} + more);
    }
};

}

TEST_F(PaperProgram, WritesTheSheetOfAStack)
{
    const tests::Ended pdf = report("Mill <1>", "a.pdf");
    EXPECT_EQ(pdf.code, 0) << pdf.said.toStdString();
    EXPECT_TRUE(pdf.said.isEmpty()) << pdf.said.toStdString();
    const QString words = wordsOf(path("a.pdf"));
    EXPECT_TRUE(words.contains(QStringLiteral("Mill <1>")));
    EXPECT_TRUE(words.contains(QStringLiteral("<script>alert(1)</script>")));
    EXPECT_TRUE(words.contains(QStringLiteral("31 days")) || words.contains(QStringLiteral("31 d"))) << "as of the day asked for";
    ASSERT_EQ(report("mill <1>", "a.HTML").code, 0) << "case of name and ending does not matter";
    const QString html = QString::fromUtf8(read("a.HTML"));
    EXPECT_TRUE(html.startsWith(QStringLiteral("<!DOCTYPE html>")));
    EXPECT_TRUE(html.contains(QStringLiteral("&lt;script&gt;alert(1)")));
    EXPECT_FALSE(html.contains(QStringLiteral("<script")));
}

TEST_F(PaperProgram, LanguageIsAsAsked)
{
    ASSERT_EQ(report("Mill <1>", "de.html", {QStringLiteral("--lang"), QStringLiteral("de")}).code, 0);
    EXPECT_TRUE(QString::fromUtf8(read("de.html")).contains(QStringLiteral("lang=\"de\"")));
}

TEST_F(PaperProgram, WhatCannotBeDoneEndsAsTheOtherCallsDo)
{
    const tests::Ended unknown = report("Barn", "a.pdf");
    EXPECT_EQ(unknown.code, 2);
    EXPECT_TRUE(unknown.said.contains(QStringLiteral("found «Barn»; allowed: Mill <1>"))) << unknown.said.toStdString();
    EXPECT_FALSE(QFile::exists(path("a.pdf")));

    EXPECT_EQ(run({path("none.tierloam"), QStringLiteral("--report"), QStringLiteral("Mill"), QStringLiteral("--out"), path("a.pdf")}).code, 1);
    write("keep.pdf", "what was there");
    EXPECT_EQ(run({path("none.tierloam"), QStringLiteral("--report"), QStringLiteral("Mill"), QStringLiteral("--out"), path("keep.pdf")}).code, 1);
    EXPECT_EQ(read("keep.pdf"), "what was there");

    const tests::Ended nowhere = report("Mill <1>", "no/such/folder.pdf");
    EXPECT_EQ(nowhere.code, 1);
    EXPECT_TRUE(nowhere.said.contains(QStringLiteral("folder.pdf"))) << nowhere.said.toStdString();
    QFile::copy(path("h.tierloam"), path("own.pdf"));
    const QByteArray before = read("own.pdf");
    EXPECT_EQ(run({path("own.pdf"), QStringLiteral("--report"), QStringLiteral("Mill <1>"), QStringLiteral("--out"), path("own.pdf")}).code, 2) << "never over the household itself";
    EXPECT_EQ(read("own.pdf"), before);
}

TEST_F(PaperProgram, WritesLabels)
{
    ASSERT_EQ(run({path("h.tierloam"), QStringLiteral("--labels"), path("l.pdf"), QStringLiteral("--at"), QStringLiteral("2031-02-01")}).code, 0);
    EXPECT_TRUE(wordsOf(path("l.pdf")).contains(QStringLiteral("Tray 1 · batch 1")));
    const tests::Ended none = run({path("h.tierloam"), QStringLiteral("--labels"), path("m.pdf"), QStringLiteral("--at"), QStringLiteral("2030-02-01")});
    EXPECT_EQ(none.code, 2);
    EXPECT_FALSE(QFile::exists(path("m.pdf")));
}

}
