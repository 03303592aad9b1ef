#include "core/exchange/report_html.h"

#include <gtest/gtest.h>

#include <QRegularExpression>
#include <QSet>
#include <QXmlStreamReader>

namespace tierloam::exchange {

namespace {

/// Names and notes as nobody should have to meet them.
const QStringList hostile{QStringLiteral("<script>alert(1)</script>"), QStringLiteral("\"><img src=x onerror=alert(1)>"), QStringLiteral("' onmouseover='x"),
                          QStringLiteral("</title></style></svg><b>"), QStringLiteral("&lt;b&gt; & &amp; &#60;"), QStringLiteral("]]><!--"),
                          QStringLiteral("javascript:alert(1)"), QStringLiteral("Größe × 2 — 虫 \U0001FAB1 \u202e reversed"), QStringLiteral("{{7*7}} ${x} %1 %n")};

Report reportWith(const QString& text)
{
    Report report;
    report.language = QStringLiteral("en");
    report.title = report.subtitle = report.foot = text;
    report.program = QStringLiteral("Tierloam 1");
    const QByteArray svg = "<?xml version=\"1.0\"?><svg width=\"10mm\" height=\"5mm\" viewBox=\"0 0 40 20\" xmlns=\"http://www.w3.org/2000/svg\"><title>Qt</title><defs>"
                           "<clipPath id=\"a\"/></defs><g clip-path=\"url(#a)\"><text>" + text.toHtmlEscaped().toUtf8() + "</text></g></svg>";
    report.blocks = {ReportHeading{text}, ReportParagraph{text, true}, ReportBox{ReportTone::soon, text, {text, text}, text}, ReportList{text, {text, text}},
                     ReportTable{text, {text, text}, {{text, text}, {text, text}}, {1}}, ReportFigure{text, text, 40, 20, svg}, ReportFigure{text, text, 40, 20, svg}};
    return report;
}

/// What is wrong with a page: not well-formed, an element or attribute that no page of ours has, an id twice, anything loaded from elsewhere.
/// `times`: how often `text` was found as text or as an attribute's value.
QStringList faultsOf(const std::string& html, const QString& text = {}, int* times = nullptr)
{
    static const QString elements = QStringLiteral(" html head meta title style body main h1 h2 h3 p div strong ul li table caption thead tbody tr th td figure figcaption footer br "
                                                   "svg g defs clipPath path text polyline rect circle ellipse image ");
    QStringList faults;
    QSet<QString> ids;
    QXmlStreamReader reader{QString::fromStdString(html)};
    QString running;
    const auto count = [&](const QString& found) {
        if (times && found == text) ++*times;
    };
    while (!reader.atEnd()) {
        switch (reader.readNext()) {
        case QXmlStreamReader::StartElement:
            running.clear();
            if (!elements.contains(u' ' % reader.name() % u' ')) faults << QStringLiteral("element ") % reader.name();
            for (const QXmlStreamAttribute& attribute : reader.attributes()) {
                const QString value = attribute.value().toString();
                if (attribute.name().startsWith(u"on")) faults << QStringLiteral("attribute ") % attribute.name();
                if (attribute.name() == u"src" || (attribute.name() == u"href" && !value.startsWith(u'#') && !value.startsWith(QStringLiteral("data:")))) faults << QStringLiteral("loads ") % value;
                if (attribute.name() == u"id") {
                    if (ids.contains(value)) faults << QStringLiteral("id twice ") % value;
                    ids << value;
                }
                count(value);
            }
            break;
        case QXmlStreamReader::Characters: running += reader.text(); break;
        case QXmlStreamReader::EndElement:
            count(running);
            running.clear();
            break;
        default: break;
        }
    }
    if (reader.hasError()) faults << reader.errorString();
    return faults;
}

}

TEST(ExchangeReportHtml, WhatUsersTypedStandsThereAsTextAndNothingElse)
{
    for (const QString& text : hostile) {
        int times = 0;
        const QStringList faults = faultsOf(reportHtml(reportWith(text)), text, &times);
        EXPECT_TRUE(faults.isEmpty()) << text.toStdString() << ": " << faults.join(u'\n').toStdString();
        // title, h1, subtitle; heading, paragraph, box 4, list 3, table 7, figures 2 × (caption, name, text in the picture). The foot shares its element.
        EXPECT_EQ(times, 3 + 1 + 1 + 4 + 3 + 7 + 6) << text.toStdString();
    }
}

TEST(ExchangeReportHtml, TheCheckSeesWhatIsNotEscaped)
{
    const std::string good = reportHtml(reportWith(QStringLiteral("quiet")));
    ASSERT_TRUE(faultsOf(good).isEmpty());
    for (const char* planted : {"<script>x</script>", "<p onclick=\"x\">y</p>", "<p>", "a & b", "<svg><image src=\"http://host/x\"/></svg>", "<g id=\"p1-a\"/>"}) {
        std::string broken = good;
        broken.insert(broken.find("<footer>"), planted);
        EXPECT_FALSE(faultsOf(broken).isEmpty()) << planted;
    }
}

TEST(ExchangeReportHtml, CharactersThatNoPageMayHoldAreLeftOut)
{
    const QString nasty = QStringLiteral("a") % QChar{0} % QChar{7} % QChar{0x1b} % QChar{0x85} % QChar{0xFFFE} % QChar{0xD800} % QStringLiteral("b");
    EXPECT_TRUE(faultsOf(reportHtml(reportWith(nasty))).isEmpty());
    EXPECT_EQ(htmlText(QStringLiteral("a\u0000\u0007\tb")), QStringLiteral("a\tb"));
}

TEST(ExchangeReportHtml, PagesNeedNothingBesideThem)
{
    const QString html = QString::fromStdString(reportHtml(reportWith(QStringLiteral("x"))));
    EXPECT_TRUE(html.contains(QStringLiteral("default-src 'none'")));
    EXPECT_FALSE(html.contains(QRegularExpression{QStringLiteral("(src|href)=\"(?!#|data:)")}));
    EXPECT_FALSE(html.contains(QStringLiteral("@import")) || html.contains(QStringLiteral("url(h")));
}

TEST(ExchangeReportHtml, LanguageAndDirectionAreNamed)
{
    Report report = reportWith(QStringLiteral("x"));
    report.language = QStringLiteral("ar");
    report.rightToLeft = true;
    EXPECT_NE(reportHtml(report).find("lang=\"ar\" dir=\"rtl\""), std::string::npos);
}

TEST(ExchangeReportHtml, PictureThatIsNoneIsLeftOut)
{
    EXPECT_TRUE(inlineSvg("not a picture", {}, {}).isEmpty());
    EXPECT_TRUE(inlineSvg("<svg><g></svg>", {}, {}).isEmpty());
    EXPECT_TRUE(inlineSvg({}, {}, {}).isEmpty());
}

}
