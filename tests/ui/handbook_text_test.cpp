// The words of the handbook: no number without a row, no link that leads nowhere, no diagram, caution or list that is not there.
#include "core/guide/figures.h"
#include "core/materials/mix.h"
#include "core/model/parameters.h"
#include "ui/common/dates.h"
#include "ui/common/figure_words.h"
#include "ui/handbook/handbook_html.h"
#include "ui/handbook/lists.h"
#include "ui/handbook/stages.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QRegularExpression>
#include <QSet>
#include <QXmlStreamReader>

namespace tierloam::handbook {

namespace {

bool holdsWords(BlockKind kind) { return kind != BlockKind::diagram && kind != BlockKind::caution && kind != BlockKind::list; }

/// Keys in braces.
QStringList keysIn(const QString& text)
{
    static const QRegularExpression braces{QStringLiteral("\\{([^}]*)\\}")};
    QStringList keys;
    for (auto match = braces.globalMatch(text); match.hasNext();) keys << match.next().captured(1);
    return keys;
}

/// Whether a text writes a number of its own: a digit outside braces, or braces without a row.
bool writesANumber(const QString& text)
{
    QString bare = text;
    for (const QString& key : keysIn(text)) {
        if (!guide::figureWithKey(key.toStdString())) return true;
        bare.remove(u'{' + key + u'}');
    }
    return bare.contains(QRegularExpression{QStringLiteral("[0-9]")}) || bare.contains(u'{') || bare.contains(u'}');
}

/// What speaks of matter that no worm is in, in the four languages.
bool speaksOfNoWorms(const QString& text)
{
    static const QRegularExpression words{QStringLiteral("worm-?free|(free|clear|clean) of (all |any )?worms?|without (any |the )?worms?|no worms? (is |are )?(left|remain|in)|(all|every|each) (of )?(the )?worms? (is|are|has|have|will|out|gone|leaves?|moves?)"
                                                         "|wurmfrei|frei von würmern|ohne (alle |die )?würmer|keine? würmer? (mehr|darin|übrig|im)|kein wurm|alle würmer (sind|wandern|heraus|verlassen)"
                                                         "|libre de lombrices|sin (las |ninguna )?lombri(z|ces)|ninguna lombriz|todas las lombrices (se|salen|están|bajan)"
                                                         "|sans (les |aucun )?vers?\\b|exempt de vers|aucun ver\\b|tous les vers (sont|partent|quittent|descendent)"),
                                          QRegularExpression::CaseInsensitiveOption | QRegularExpression::UseUnicodePropertiesOption};
    return words.match(text).hasMatch();
}

/// Whether a text holds out matter without worms: it speaks of it and does not say that it cannot be promised.
bool promisesNoWorms(const QString& text)
{
    static const QRegularExpression denial{QStringLiteral("cannot be promised|nicht versprechen|no se puede prometer|ne peut pas (le )?promettre"), QRegularExpression::CaseInsensitiveOption};
    return speaksOfNoWorms(text) && !denial.match(text).hasMatch();
}

}

/// A figure may be a range of its own ("15 to 25"): "between" before it would want an "and".
TEST(HandbookText, PutsNoRangeBetween)
{
    for (const Page& page : handbookPages())
        for (const Block& block : page.blocks) {
            const QString text = QString::fromUtf8(block.text);
            for (const QString& key : keysIn(text)) {
                const auto row = guide::figureWithKey(key.toStdString());
                if (!row || !row->high) continue;
                EXPECT_FALSE(text.contains(QString{QStringLiteral("between {") % key % u'}'})) << block.text;
            }
        }
}

TEST(HandbookText, WritesNoNumberThatHasNoRowInTheTableOfFigures)
{
    int blocks = 0;
    for (const Page& page : handbookPages()) {
        for (const Block& block : page.blocks) {
            if (!holdsWords(block.kind)) continue;
            ++blocks;
            EXPECT_FALSE(writesANumber(QString::fromUtf8(block.text))) << page.id << ": " << block.text;
        }
    }
    EXPECT_GT(blocks, 100);
    EXPECT_TRUE(writesANumber(QStringLiteral("Feed 300 g"))) << "a number typed into a text must be noticed";
    EXPECT_TRUE(writesANumber(QStringLiteral("Feed {no-such-row}")));
    EXPECT_FALSE(writesANumber(QStringLiteral("Feed every {feed-every}")));
}

TEST(HandbookText, ShowsEachOfItsFiguresWithItsSource)
{
    const QString sources = pagePlain(*pageWithId("sources"), {});
    for (const guide::FigureRow& row : guide::figureTable()) {
        EXPECT_TRUE(sources.contains(ui::sourceText(row))) << row.key;
        EXPECT_TRUE(sources.contains(figureName(row.figure) + QStringLiteral(" · ") + ui::figureText(row))) << row.key;
        EXPECT_FALSE(figureName(row.figure).isEmpty());
    }
    for (const Page& page : handbookPages()) {
        const QString shown = pagePlain(page, {});
        EXPECT_FALSE(shown.contains(u'{')) << page.id;
        for (const Block& block : page.blocks) {
            if (!holdsWords(block.kind)) continue;
            for (const QString& key : keysIn(QString::fromUtf8(block.text))) EXPECT_TRUE(shown.contains(ui::figureText(*guide::figureWithKey(key.toStdString())))) << page.id << " " << key.toStdString();
        }
    }
}

// Every text of the program, its own and in each translation, is looked through.
TEST(HandbookText, NoTextPromisesCastingsWithoutWorms)
{
    const QStringList ofTheStack{QStringLiteral("No worms in it"), QStringLiteral("Keine Würmer darin"), QStringLiteral("Sin lombrices"),
                                 QStringLiteral("A value of the last 60 days lies outside what the record leads to expect; readings of the bed do not fit the set-up; more was put in than a tray holds or its trays carry; usual feedings seem to be missing; or no worms are in a stack that has bedding.")}; // what a journal lacks, not what castings are
    for (const char* language : {"de", "es", "fr"}) {
        QFile file{QStringLiteral(TIERLOAM_SOURCE_DIR "/resources/translations/tierloam_%1.ts").arg(QString::fromLatin1(language))};
        ASSERT_TRUE(file.open(QIODevice::ReadOnly)) << language;
        QXmlStreamReader xml{&file};
        int texts = 0, denials = 0;
        while (!xml.atEnd()) {
            xml.readNext();
            if (!xml.isStartElement() || (xml.name() != QLatin1StringView{"source"} && xml.name() != QLatin1StringView{"translation"} && xml.name() != QLatin1StringView{"numerusform"})) continue;
            if (xml.name() == QLatin1StringView{"translation"} && xml.attributes().value(QLatin1StringView{"type"}) == QLatin1StringView{"vanished"}) continue;
            const QString text = xml.readElementText(QXmlStreamReader::IncludeChildElements);
            ++texts;
            denials += speaksOfNoWorms(text) && !promisesNoWorms(text) ? 1 : 0;
            EXPECT_TRUE(ofTheStack.contains(text) || !promisesNoWorms(text)) << language << ": " << text.toStdString();
        }
        EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
        EXPECT_GT(texts, 4000) << language;
        EXPECT_GE(denials, 6) << language << ": three times in each of two languages it is said that it cannot be";
    }
    for (const char* promise : {"After four days the castings are free of worms.", "Castings without worms: wait a week.", "By then all worms have left.", "Nach vier Tagen ist kein Wurm mehr im Humus.", "Humus ohne Würmer",
                                "Obtenga humus sin lombrices", "Un lombricompost sans vers"})
        EXPECT_TRUE(promisesNoWorms(QString::fromUtf8(promise))) << promise << " must be noticed";
    EXPECT_FALSE(promisesNoWorms(QStringLiteral("Some worms leave with the castings.")));
}

// A row that no page and no sum rests on would be a number without a use. Those of the sums are named here.
TEST(HandbookText, LeavesNoFigureUnused)
{
    using F = guide::Figure;
    QSet<int> used;
    for (const F each : {F::carbonAim, F::takenMoisture, F::castingsDryBulk, F::loadConstant, F::reachReference, F::reachFarthest, F::heightReference, F::heightLoss, F::heightMost,
                         F::travelReference, F::travelBase, F::travelShare, F::travelMost, F::twistLoss, F::twistMost, F::gripFair, F::gripPoor, F::reachBody, F::lightTray, F::flyDays, F::wetted,
                         F::softensAt, F::softensWith, F::moistureNear, F::mostTimes})
        used.insert(static_cast<int>(each));
    for (const Page& page : handbookPages())
        for (const Block& block : page.blocks)
            if (holdsWords(block.kind))
                for (const QString& key : keysIn(QString::fromUtf8(block.text)))
                    if (const guide::FigureRow* row = guide::figureWithKey(key.toStdString())) used.insert(static_cast<int>(row->figure));
    for (const guide::FigureRow& row : guide::figureTable()) EXPECT_TRUE(used.contains(static_cast<int>(row.figure))) << row.key;
}

namespace {

/// Texts for people in a source file, adjoining literals put together; placeholders and keys of figures taken out.
QStringList textsIn(const QString& source)
{
    static const QRegularExpression call{QStringLiteral("(?:\\btr|QT_TRANSLATE_NOOP\\(\"\\w+\",)\\s*\\(?\\s*((?:\"(?:[^\"\\\\]|\\\\.)*\"\\s*)+)")};
    static const QRegularExpression literal{QStringLiteral("\"((?:[^\"\\\\]|\\\\.)*)\"")};
    static const QRegularExpression taken{QStringLiteral("%L?\\d+|%n|\\{[a-z-]+\\}")};
    QStringList texts;
    for (auto each = call.globalMatch(source); each.hasNext();) {
        QString text;
        for (auto piece = literal.globalMatch(each.next().captured(1)); piece.hasNext();) text += piece.next().captured(1);
        texts << text.remove(taken);
    }
    return texts;
}

/// A number of its own in such a text. What a ratio ends with and the name of a range that the program's own row defines are none.
bool ownNumber(QString text)
{
    for (const QString& each : {QStringLiteral(" : 1"), QStringLiteral("90 % range"), QStringLiteral("bucket (10 L)")}) text.remove(each);
    return text.contains(QRegularExpression{QStringLiteral("[0-9]")});
}

}

// The pages with sums, the guided harvest, symptoms, cautions and reasons: no number is typed into any of their texts, so that each comes from a row of
// a table, from an entry, or from a sum of these. What the sums themselves rest on is held by the tests of core/guide and core/materials.
TEST(HandbookText, NoTextOfTheSumsHarvestSymptomsOrCautionsWritesANumberOfItsOwn)
{
    QStringList files;
    for (const QString& room : {QStringLiteral("materials"), QStringLiteral("handbook")})
        for (const QFileInfo& file : QDir{QStringLiteral(TIERLOAM_SOURCE_DIR "/ui/") + room}.entryInfoList({QStringLiteral("*.cpp")}))
            if (file.fileName() != QStringLiteral("parameter_names.cpp")) files << file.filePath(); // there a number says what a parameter is of: "of a worm of 1 g"
    for (const char* file : {"forms/cautions", "forms/tray_lift", "forms/own_material_body", "common/material_words"}) files << QStringLiteral(TIERLOAM_SOURCE_DIR "/ui/%1.cpp").arg(QString::fromLatin1(file));
    int texts = 0;
    for (const QString& path : files) {
        QFile file{path};
        ASSERT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
        for (const QString& text : textsIn(QString::fromUtf8(file.readAll()))) {
            ++texts;
            EXPECT_FALSE(ownNumber(text)) << path.toStdString() << ": " << text.toStdString();
        }
    }
    EXPECT_GT(texts, 400);
    const QStringList planted = textsIn(QStringLiteral("x = tr(\"Feed %1 of \"\n   \"300 g\").arg(y); tr(\"Feed {feed-every}\"); QT_TRANSLATE_NOOP(\"A\", \"at 7 °C\")"));
    ASSERT_EQ(planted.size(), 3);
    EXPECT_TRUE(ownNumber(planted[0]));
    EXPECT_FALSE(ownNumber(planted[1]));
    EXPECT_TRUE(ownNumber(planted[2]));
    EXPECT_EQ(guide::lowOf(guide::Figure::bandShare), 90) << "the range that texts name";
    EXPECT_EQ(guide::lowOf(guide::Figure::mostTimes), materials::mostTimesTheMix);
}

TEST(HandbookText, HasNoDeadLink)
{
    QSet<QString> ids, reached{QStringLiteral("first")};
    for (const Page& page : handbookPages()) {
        EXPECT_FALSE(ids.contains(QString::fromLatin1(page.id))) << page.id;
        ids.insert(QString::fromLatin1(page.id));
    }
    int links = 0;
    for (const Page& page : handbookPages()) {
        for (const QString& link : linksOf(page)) {
            ++links;
            EXPECT_TRUE(ids.contains(link)) << page.id << " leads to " << link.toStdString();
            EXPECT_NE(link, QString::fromLatin1(page.id)) << "a page that leads to itself";
            EXPECT_TRUE(pageHtml(page, {}, drawing::Palette::light()).contains(QStringLiteral("href=\"page:") + link));
        }
        EXPECT_FALSE(pageHtml(page, {}, drawing::Palette::light()).contains(QStringLiteral("http"))) << page.id << ": nothing leads out of the program";
        EXPECT_FALSE(pagePlain(page, {}).contains(QStringLiteral("[["))) << page.id;
    }
    EXPECT_GE(links, 10);
    EXPECT_EQ(pageWithId("no-such-page"), nullptr) << "a dead link must be noticed";
}

TEST(HandbookText, DrawsEachDiagramAndTellsEachCautionAndList)
{
    QSet<QString> drawn;
    for (const Page& page : handbookPages()) {
        for (const Block& block : page.blocks) {
            if (block.kind == BlockKind::diagram) {
                EXPECT_FALSE(stageNamed(block.text).stacks.empty()) << block.text;
                EXPECT_FALSE(stageNamed(block.text).caption.isEmpty()) << block.text;
                drawn.insert(QString::fromLatin1(block.text));
            }
            if (block.kind == BlockKind::list) { EXPECT_TRUE(madeList(block.text, {}).has_value()) << block.text; }
            if (block.kind != BlockKind::caution) continue;
            const Block only[] = {block};
            const Page alone{"x", "x", "", only};
            EXPECT_GT(pagePlain(alone, {}).size(), 40) << block.text;
        }
    }
    for (const auto name : stageNames()) EXPECT_TRUE(drawn.contains(QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size())))) << name << " is shown nowhere";
    EXPECT_TRUE(stageNamed("no such stage").stacks.empty());
    EXPECT_FALSE(madeList("no such list", {}).has_value());
}

// Tools that gather texts for translators read the source and expand no macro: each text has to stand there within its own QT_TRANSLATE_NOOP.
TEST(HandbookText, CanBeTranslatedBlockByBlock)
{
    QString sources;
    for (const char* name : {"care", "turns", "year", "knowledge"}) {
        QFile file{QStringLiteral(TIERLOAM_SOURCE_DIR "/ui/handbook/pages_%1.cpp").arg(QString::fromLatin1(name))};
        ASSERT_TRUE(file.open(QIODevice::ReadOnly));
        sources += QString::fromUtf8(file.readAll());
    }
    const auto marked = [&](const char* text) { return sources.contains(QStringLiteral("QT_TRANSLATE_NOOP(\"Handbook\", \"") + QString::fromUtf8(text) + QStringLiteral("\")")); };
    for (const Page& page : handbookPages()) {
        EXPECT_TRUE(marked(page.title)) << page.id;
        EXPECT_TRUE(marked(page.also)) << page.id;
        for (const Block& block : page.blocks)
            if (holdsWords(block.kind)) { EXPECT_TRUE(marked(block.text)) << page.id << ": " << block.text; }
    }
    EXPECT_FALSE(marked("no such text"));
}

TEST(HandbookText, TellsEveryParameterOfTheModelWithRangeAndBasis)
{
    const QString inside = pagePlain(*pageWithId("inside"), {});
    for (const model::ParameterRow& row : model::parameterTable()) {
        EXPECT_TRUE(isParameterTranslated(row.name)) << row.name;
        EXPECT_TRUE(inside.contains(QString::fromUtf8(row.name.data(), static_cast<qsizetype>(row.name.size())))) << row.name;
        EXPECT_TRUE(inside.contains(QString::fromUtf8(row.basis.data(), static_cast<qsizetype>(row.basis.size())))) << row.name;
    }
    EXPECT_TRUE(inside.contains(QStringLiteral("0.280 · 0.110 to 0.300"))) << "ingestion: centre and range";
    EXPECT_FALSE(isParameterTranslated("no such parameter"));
}

TEST(HandbookText, IsFoundByTitleByOtherWordsAndByText)
{
    const auto first = [](const char* words) { const auto hits = findPages(QString::fromLatin1(words), {}); return hits.isEmpty() ? std::string{} : std::string{hits.front().page->id}; };
    EXPECT_EQ(first("feeding"), "feeding");
    EXPECT_EQ(first("holiday"), "away");
    EXPECT_EQ(first("pregnancy"), "cautions");
    EXPECT_EQ(first("bait melon"), "harvest");
    EXPECT_EQ(first("xyzzy"), "");
    EXPECT_EQ(findPages({}, {}).size(), static_cast<qsizetype>(handbookPages().size()));
}

TEST(HandbookText, TellsTheCautionsOfProductAndDefersToLocalRules)
{
    const QString said = pagePlain(*pageWithId("cautions"), {});
    for (const char* word : {"hands", "asthma", "weak immunity", "tetanus", "pregnan", "cat", "weighs|heavy", "eaten raw", "never to drink|never drunk", "Meat", "glossy", "treated wood",
                             "electrician", "local electrical code", "calcium carbonate only", "never slaked lime", "ant bait", "Never release", "local rules", "see a doctor", "Legionella"}) {
        EXPECT_TRUE(said.contains(QRegularExpression{QString::fromLatin1(word)})) << word;
    }
}

TEST(HandbookText, TrackRecordHoldsWhenATrayWasSaidToBeReadyAgainstItsLifting)
{
    using namespace std::chrono;
    auto reckoning = std::make_shared<reckoning::Reckoning>();
    reckoning::StackReckoning stack;
    stack.name = "Porch";
    const Day lifted = sys_days{2031y / 6 / 20};
    for (int day = 0; day < 30; ++day) {
        reckoning::StackEstimate on;
        on.day = lifted - days{29 - day};
        reckoning::TrayEstimate tray;
        tray.batch = 4;
        tray.readyProbability = day < 20 ? 0.79 : 0.8;
        on.slots = {tray};
        stack.history.push_back(on);
    }
    reckoning::HarvestCheck harvest;
    harvest.batch = 4;
    harvest.liftedOn = lifted;
    harvest.readyWhenLifted = 0.8;
    reckoning::HarvestCheck early = harvest;
    early.readyWhenLifted = 0.59;
    stack.harvests = {early, harvest};
    reckoning->stacks = {stack};
    const auto record = madeList("track-record", PageFacts{reckoning, lifted});
    ASSERT_TRUE(record);
    const auto row = std::ranges::find_if(record->rows, [](const QStringList& cells) { return cells.contains(QStringLiteral("ready dates")); });
    ASSERT_NE(row, record->rows.end());
    EXPECT_TRUE(row->at(2).startsWith(QStringLiteral("1 of 2"))) << row->at(2).toStdString();
    EXPECT_TRUE(row->at(3).contains(ui::fullDay(lifted - days{9}))) << row->at(3).toStdString();
    EXPECT_TRUE(row->at(3).contains(ui::fullDay(lifted)));
}

}
