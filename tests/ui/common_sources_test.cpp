// Sources of figures, materials and cautions: titles of works stay, our own words are translated.
#include "core/guide/figures.h"
#include "core/materials/table.h"
#include "ui/common/figure_words.h"
#include "ui/common/source_words.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QRegularExpression>
#include <QTranslator>

namespace tierloam::ui {

namespace {

QString latin(std::string_view text) { return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size())); }

/// Names, years and numbers of works: a word in small letters that no title or name of them has is a word of ours.
bool looksLikeATitle(const QString& part)
{
    static const QStringList known{QStringLiteral("et"), QStringLiteral("al"), QStringLiteral("of"), QStringLiteral("for"), QStringLiteral("and"), QStringLiteral("kJ"), QStringLiteral("g"), QStringLiteral("d"), QStringLiteral("sd")};
    static const QRegularExpression small{QStringLiteral("(?<!\\p{L})\\p{Ll}\\p{L}*")};
    for (auto each = small.globalMatch(part); each.hasNext();)
        if (!known.contains(each.next().captured())) return false;
    return true;
}

class Shouted final : public QTranslator {
public:
    QString translate(const char* context, const char* text, const char*, int) const override
    {
        return QLatin1StringView{context} == QLatin1StringView{"Sources"} ? QString::fromUtf8(text).toUpper() : QString{};
    }
    bool isEmpty() const override { return false; }
};

}

TEST(SourceWords, EachPartIsATitleOrAPhraseThatIsTranslated)
{
    int phrases = 0;
    const auto walk = [&](const QString& source) {
        for (const QString& part : sourceParts(source)) {
            phrases += isOurPhrase(part);
            EXPECT_TRUE(isOurPhrase(part) || looksLikeATitle(part)) << part.toStdString() << " in " << source.toStdString();
        }
    };
    for (const materials::Material& row : materials::Table::builtIn().rows()) walk(latin(row.source));
    for (const guide::FigureRow& row : guide::figureTable()) walk(latin(row.source));
    EXPECT_GT(phrases, 150);
    EXPECT_FALSE(looksLikeATitle(QStringLiteral("from hearsay"))) << "words of ours that nobody translates must be noticed";
    EXPECT_FALSE(looksLikeATitle(QStringLiteral("Golueke 1972 read")));
    EXPECT_TRUE(looksLikeATitle(QStringLiteral("Atiyeh et al. 2000")));
}

TEST(SourceWords, LeaveTitlesAsTheyAre)
{
    const QString mixed = QStringLiteral("kept out: Dubey et al. 2011, J. Parasitol. 97:751; composition: our judgement");
    EXPECT_EQ(sourceWords(mixed), mixed) << "without a translation as it stands";
    Shouted language;
    QCoreApplication::installTranslator(&language);
    EXPECT_EQ(sourceWords(mixed), QStringLiteral("KEPT OUT: Dubey et al. 2011, J. Parasitol. 97:751; COMPOSITION: OUR JUDGEMENT"));
    EXPECT_EQ(sourceWords(QStringLiteral("Zziwa et al. 2021 (abstract)")), QStringLiteral("Zziwa et al. 2021 (ABSTRACT)"));
    EXPECT_EQ(sourceWords(QStringLiteral("NRAES-54 (N 2.0-6.0, C:N 9-25), memory; rest memory")), QStringLiteral("NRAES-54 (N 2.0-6.0, C:N 9-25), MEMORY; REST MEMORY"));
    EXPECT_EQ(sourceText(guide::figureRow(guide::Figure::stock)), QStringLiteral("COMMON PRACTICE, NO SOURCE"));
    EXPECT_EQ(sourceWords(QStringLiteral("NC State Extension")), QStringLiteral("NC State Extension"));
    QCoreApplication::removeTranslator(&language);
}

}
