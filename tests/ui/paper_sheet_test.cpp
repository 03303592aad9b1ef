#include "tests/support/calm_stack.h"
#include "tests/ui/long_texts.h"
#include "tests/ui/paper_fixture.h"

#include "core/exchange/report_html.h"
#include "ui/common/formats.h"
#include "ui/drawing/palette.h"
#include "ui/paper/look.h"
#include "ui/paper/page_flow.h"
#include "ui/paper/sheet_words.h"

#include <QRegularExpression>
#include <QXmlStreamReader>

namespace tierloam::paper {

namespace {

class PaperSheet : public testing::Test {
protected:
    QString savedPdf(const SheetInputs& inputs)
    {
        const auto sheet = makeSheet(inputs);
        EXPECT_TRUE(sheet.has_value());
        const QString path = folder_.filePath(QStringLiteral("sheet.pdf"));
        const auto why = saveAsPdf(*sheet, path);
        EXPECT_FALSE(why.has_value()) << why->toStdString();
        return path;
    }
    static QString html(const SheetInputs& inputs) { return QString::fromStdString(exchange::reportHtml(makeSheet(inputs)->report)); }

    QTemporaryDir folder_;
};

/// A stack of that name, with a note as long and as strange as people can make them.
SheetInputs strange(const std::string& name, const std::string& note)
{
    SheetInputs inputs = sampleSheet();
    journal::Entries entries = tests::sampleJournal();
    for (journal::Entry& entry : entries) {
        if (entry.stack == "Scullery") entry.stack = name;
        if (auto* move = std::get_if<journal::Move>(&entry.action); move && move->to == "Scullery") move->to = name;
        if (std::holds_alternative<journal::Bed>(entry.action)) entry.note = note;
    }
    inputs.journal = tests::viewOf(entries);
    auto reckoning = std::make_shared<reckoning::Reckoning>(*inputs.reckoning);
    for (auto& stack : reckoning->stacks)
        if (stack.name == "Scullery") stack.name = name;
    inputs.reckoning = reckoning;
    inputs.stack = name;
    return inputs;
}

}

TEST_F(PaperSheet, HoldsDrawingStoryChartsWhatIsDueAndCautions)
{
    const QString words = wordsOf(savedPdf(sampleSheet()));
    for (const char* wanted : {"Scullery", "Millrace Cottage", "as of 2 May 2031", "How it stands", "Colony", "What is due", "The story of its batches", "All batches", "being fed", "Processing rate",
                               "Drainage", "Colony", "Temperature", "Moisture", "Cautions", "Wash your hands", "Source:", "Page 1 of", "a look into the tray rules"})
        EXPECT_TRUE(words.contains(QString::fromLatin1(wanted))) << wanted;
    EXPECT_FALSE(words.contains(QStringLiteral("Lean-to"))) << "another stack's words";
}

/// The limit is rounded downwards: what is usual, rounded to the nearest, must not be printed above it.
TEST_F(PaperSheet, NothingIsPrintedAboveTheMost)
{
    reckoning::StackReckoning stack = tests::sampleReckoning()->stacks.front();
    const auto printed = [&](double low, double usual, double most) {
        stack.forecast.feedLowKg = low;
        stack.forecast.feedUsualKg = usual;
        stack.forecast.feedHighKg = stack.forecast.feedNowKg = most;
        for (const QStringList& row : estimateTable(stack).rows)
            if (row.front().startsWith(QStringLiteral("Fresh food"))) return QString{row.back()}.replace(QChar{0xA0}, u' ');
        return QString{};
    };
    EXPECT_EQ(printed(0.466, 0.468, 0.469), QStringLiteral("460 g, 460 g, 460 g"));
    EXPECT_EQ(printed(0.2, 0.6, 0.469), QStringLiteral("200 g, 460 g, 460 g"));
    EXPECT_EQ(printed(0.2, 0.3, 1.38), QStringLiteral("200 g, 300 g, 1.3 kg"));
}

TEST_F(PaperSheet, PdfEmbedsItsFontsAndCutsNothingOff)
{
    const QString pdf = savedPdf(sampleSheet());
    const QStringList fonts = poppler("pdffonts", {pdf}).split(u'\n', Qt::SkipEmptyParts).mid(2);
    ASSERT_FALSE(fonts.isEmpty());
    for (const QString& font : fonts) EXPECT_TRUE(font.contains(QRegularExpression{QStringLiteral("\\byes (yes|no)\\s+(yes|no)\\b")})) << font.toStdString();
    const QList<QImage> pages = pagesOf(pdf);
    ASSERT_GE(pages.size(), 3);
    for (const QImage& page : pages) {
        // Margins of 15 mm, 29 dots here; a stroke may lie half outside.
        const QRect room = page.rect().adjusted(27, 27, -27, -27);
        EXPECT_TRUE(room.contains(inkOf(page))) << inkOf(page).left() << ' ' << inkOf(page).top() << ' ' << inkOf(page).right() << ' ' << inkOf(page).bottom();
        EXPECT_GT(inkOf(page).height(), 40) << "an empty page";
    }
}

TEST_F(PaperSheet, HtmlIsOneWellFormedPageWithItsPictures)
{
    const QString page = html(sampleSheet());
    QXmlStreamReader reader{page};
    int figures = 0, texts = 0;
    QStringList spoken;
    while (!reader.atEnd()) {
        if (reader.readNext() != QXmlStreamReader::StartElement) continue;
        if (reader.name() == u"svg") {
            ++figures;
            spoken << reader.attributes().value(QStringLiteral("aria-label")).toString();
        }
        texts += reader.name() == u"text";
    }
    EXPECT_FALSE(reader.hasError()) << reader.errorString().toStdString();
    EXPECT_EQ(figures, 12) << "the stack, three trays and the sump, the key, six charts; nothing was taken, so yield is a sentence";
    EXPECT_GT(texts, 20) << "words of the charts are words, not shapes";
    for (const QString& words : spoken) EXPECT_FALSE(words.isEmpty());
    EXPECT_FALSE(page.contains(QStringLiteral("<image")));
}

/// Words, charts and what is due, as they are printed; and the same found again in the other system.
TEST_F(PaperSheet, InUsUnitsNoMetricUnitIsPrinted)
{
    static const QRegularExpression metric{QStringLiteral("(^|[\\d\\s\u00a0(])(kg|g|mg|L|mL|cm|mm|m²|°C)(?=$|[\\s\u00a0.,;:)/])")};
    static const QRegularExpression us{QStringLiteral("\\d[\\s\u00a0](lb|oz|gal|fl oz|in|°F)(?=$|[\\s\u00a0.,;:)/])")};
    const auto found = [&](const QRegularExpression& unit) {
        QStringList all;
        const QString words = wordsOf(savedPdf(sampleSheet()));
        for (auto each = unit.globalMatch(words); each.hasNext();) {
            const auto match = each.next();
            all << words.mid(std::max<qsizetype>(match.capturedStart() - 30, 0), 50);
        }
        return all;
    };
    EXPECT_GT(found(metric).size(), 20) << "metric units are seen";
    ui::setMeasures(ui::Measures::us);
    const QStringList left = found(metric), told = found(us);
    ui::setMeasures(ui::Measures::metric);
    for (const QString& each : left) ADD_FAILURE() << each.toStdString();
    EXPECT_GT(told.size(), 20);
}

TEST_F(PaperSheet, ColoursOfHtmlAreThoseOfThePalette)
{
    const QString page = html(sampleSheet());
    const drawing::Palette& p = drawing::Palette::light();
    for (const QColor& colour : {p.ground, p.panel, p.rail, p.line, p.ink, p.mutedInk, p.outline, p.moss, p.amber, p.brick, p.mossSoft, p.amberSoft, p.brickSoft})
        EXPECT_TRUE(page.contains(colour.name(QColor::HexRgb), Qt::CaseInsensitive)) << colour.name().toStdString();
}

TEST_F(PaperSheet, StrangeNamesAndNotesStayOnThePage)
{
    const std::string word(3000, 'w');
    for (const std::string& name : {std::string{"<b>&\"'</b>"}, word, std::string{"ein sehr langer Name mit vielen Wörtern, der kein Ende nehmen will und doch eines hat"}}) {
        const SheetInputs inputs = strange(name, "<i>" + word + "</i> & so on");
        const QString pdf = savedPdf(inputs);
        for (const QImage& page : pagesOf(pdf)) EXPECT_TRUE(page.rect().adjusted(27, 27, -27, -27).contains(inkOf(page))) << name.substr(0, 20);
        const QString words = wordsOf(pdf);
        EXPECT_TRUE(words.contains(QStringLiteral("<i>www"))) << "the note stands there as it was typed";
        const QString page = html(inputs);
        EXPECT_FALSE(page.contains(QStringLiteral("<i>")) || page.contains(QStringLiteral("<b>")));
        QXmlStreamReader reader{page};
        while (!reader.atEnd()) reader.readNext();
        EXPECT_FALSE(reader.hasError()) << reader.errorString().toStdString();
    }
    EXPECT_EQ(held(QStringLiteral("ab\U0001FAB1"), 3), QStringLiteral("ab…")) << "no half of a character";
}

TEST_F(PaperSheet, WithoutEstimatesItHoldsWhatTheJournalKnows)
{
    SheetInputs inputs = sampleSheet();
    inputs.reckoning = nullptr;
    const QString words = wordsOf(savedPdf(inputs));
    EXPECT_TRUE(words.contains(QStringLiteral("estimates are not there yet")));
    EXPECT_TRUE(words.contains(QStringLiteral("All batches")));
}

/// The rules of each stack alone ask for bits; the household is asked for one look at a time.
TEST_F(PaperSheet, AsksForTheLookThatTheDueListAsksFor)
{
    SheetInputs inputs = sampleSheet();
    auto reckoning = std::make_shared<reckoning::Reckoning>(*inputs.reckoning);
    for (auto& stack : reckoning->stacks) {
        const std::string name = stack.name;
        const bool wide = name == "Cellar"; // of which the look tells more
        stack = tests::calm();
        stack.name = name;
        stack.firstBedding = tests::in(-200);
        stack.record.lastLook = tests::in(-40);
        stack.now.slots[0].readyOn = {tests::in(10), tests::in(60), tests::in(wide ? 200 : 120)};
        stack.nextLooks = {{reckoning::LookKind::bits, 1, 0.7, 2.0}};
    }
    inputs.reckoning = reckoning;
    const auto asks = [&](const char* stack) {
        inputs.stack = stack;
        return html(inputs).contains(QStringLiteral("Look for bits in the bottom tray"));
    };
    EXPECT_TRUE(asks("Cellar"));
    EXPECT_FALSE(asks("Scullery"));
}

TEST_F(PaperSheet, NoSheetOfAStackThatIsNotThere)
{
    SheetInputs inputs = sampleSheet("Nowhere");
    EXPECT_FALSE(makeSheet(inputs).has_value());
    inputs.stack = "Scullery";
    inputs.today = Day{} + std::chrono::days{1};
    EXPECT_FALSE(makeSheet(inputs).has_value()) << "before its set-up";
}

TEST_F(PaperSheet, RetiredStackKeepsItsStory)
{
    SheetInputs inputs = sampleSheet();
    journal::Entries entries = tests::sampleJournal();
    journal::Entry end;
    end.date.day = inputs.today;
    end.stack = "Scullery";
    end.action = journal::Retire{};
    entries.push_back(end);
    inputs.journal = tests::viewOf(entries);
    const QString words = wordsOf(savedPdf(inputs));
    EXPECT_TRUE(words.contains(QStringLiteral("This stack has ended")));
    EXPECT_TRUE(words.contains(QStringLiteral("All batches")));
    EXPECT_FALSE(words.contains(QStringLiteral("stands"))) << "no batch stands in a stack that has ended";
    EXPECT_TRUE(words.contains(QStringLiteral("with the stack")));
    EXPECT_TRUE(words.contains(QStringLiteral("old when the stack ended")));
    EXPECT_EQ(stacksOn(inputs.journal->replay, inputs.today).back(), QStringLiteral("Scullery")) << "those that stand come first";
}

TEST_F(PaperSheet, FileThatCannotBeWrittenIsToldAndTheOldOneStays)
{
    const auto sheet = makeSheet(sampleSheet());
    for (const auto save : {saveAsPdf, saveAsHtml}) {
        const auto why = save(*sheet, folder_.filePath(QStringLiteral("none/deep.pdf")));
        ASSERT_TRUE(why.has_value());
        EXPECT_TRUE(why->contains(QStringLiteral("deep.pdf")));
    }
    EXPECT_TRUE(QDir{folder_.path()}.isEmpty());
}

TEST_F(PaperSheet, LanguageOfThePaperIsThatOfTheProgram)
{
    const QLocale before;
    QLocale::setDefault(QLocale{QLocale::German, QLocale::Germany});
    EXPECT_EQ(makeSheet(sampleSheet())->report.language, QStringLiteral("de"));
    EXPECT_TRUE(wordsOf(savedPdf(sampleSheet())).contains(QStringLiteral("0,0"))) << "numbers with the comma of the locale";
    EXPECT_EQ(usualPage().id(), QPageSize::A4);
    QLocale::setDefault(QLocale{QLocale::English, QLocale::UnitedStates});
    EXPECT_EQ(usualPage().id(), QPageSize::Letter);
    for (const QImage& page : pagesOf(savedPdf(sampleSheet()))) EXPECT_EQ(page.size(), QSize(425, 550));
    QLocale::setDefault(before);
}

/// Texts of a page of HTML that were not translated, names that people gave left out.
QStringList untranslatedIn(const QString& page)
{
    static const QRegularExpression word{QStringLiteral("[A-Za-z]{3,}")}, unit{QStringLiteral("^[^A-Za-z]*((kg|g|L|mL|cm|mS/cm|kg/m²|g/L|d)[^A-Za-z]*)+$")},
        day{QStringLiteral("^([A-Z][a-z]+,? )?(\\d{1,2} )?[A-Z][a-z]{2,8}( \\d{4})?$")};
    QStringList plain;
    QXmlStreamReader reader{page};
    bool style = false;
    while (!reader.atEnd()) {
        const auto token = reader.readNext();
        if (token == QXmlStreamReader::StartElement) style = reader.name() == u"style";
        if (token == QXmlStreamReader::StartElement && reader.attributes().hasAttribute(QStringLiteral("aria-label")) && !reader.attributes().value(QStringLiteral("aria-label")).contains(u'⟦'))
            plain << reader.attributes().value(QStringLiteral("aria-label")).toString();
        if (token != QXmlStreamReader::Characters || style) continue;
        const QString text = reader.text().toString().simplified();
        if (!text.contains(u'⟦') && !text.contains(u'⟧') && word.match(text).hasMatch() && !unit.match(text).hasMatch() && !day.match(text).hasMatch() && text != u"Scullery" && !text.startsWith(u"Tierloam")) plain << text;
    }
    return plain;
}

TEST_F(PaperSheet, EveryTextOfThePaperIsTranslated)
{
    tests::LongTexts texts;
    QCoreApplication::installTranslator(&texts);
    const QString page = html(sampleSheet());
    QCoreApplication::removeTranslator(&texts);
    EXPECT_EQ(untranslatedIn(page).join(QStringLiteral(" | ")).toStdString(), "");
    EXPECT_GT(untranslatedIn(html(sampleSheet())).size(), 80) << "each is found where nothing is translated";
}

TEST_F(PaperSheet, RightToLeftIsMirroredAndStaysOnThePage)
{
    qApp->setLayoutDirection(Qt::RightToLeft);
    const QString pdf = savedPdf(sampleSheet());
    qApp->setLayoutDirection(Qt::LeftToRight);
    const QList<QImage> pages = pagesOf(pdf);
    for (const QImage& page : pages) EXPECT_TRUE(page.rect().adjusted(27, 27, -27, -27).contains(inkOf(page)));
    // The title stands at the right.
    const QImage head = pages.front().copy(0, 27, pages.front().width(), 14);
    EXPECT_GT(inkOf(head).left(), head.width() / 2);
}

}
