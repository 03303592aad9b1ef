#include "ui/common/source_words.h"

#include <QCoreApplication>
#include <QHash>

#include <functional>

namespace tierloam::ui {

namespace {

constexpr const char* phrases[] = {
    QT_TRANSLATE_NOOP("Sources", "common practice, no source"),
    QT_TRANSLATE_NOOP("Sources", "memory"),
    QT_TRANSLATE_NOOP("Sources", "from memory"),
    QT_TRANSLATE_NOOP("Sources", "memory, weak"),
    QT_TRANSLATE_NOOP("Sources", "second hand"),
    QT_TRANSLATE_NOOP("Sources", "read"),
    QT_TRANSLATE_NOOP("Sources", "read in abstract"),
    QT_TRANSLATE_NOOP("Sources", "abstract"),
    QT_TRANSLATE_NOOP("Sources", "abstracts"),
    QT_TRANSLATE_NOOP("Sources", "about"),
    QT_TRANSLATE_NOOP("Sources", "our judgement"),
    QT_TRANSLATE_NOOP("Sources", "judgement"),
    QT_TRANSLATE_NOOP("Sources", "a rule of this program"),
    QT_TRANSLATE_NOOP("Sources", "this program's estimate"),
    QT_TRANSLATE_NOOP("Sources", "local code rules"),
    QT_TRANSLATE_NOOP("Sources", "rest memory"),
    QT_TRANSLATE_NOOP("Sources", "loose bulk and water memory"),
    QT_TRANSLATE_NOOP("Sources", "N and C:N memory"),
    QT_TRANSLATE_NOOP("Sources", "C:N from 50 % carbon"),
    QT_TRANSLATE_NOOP("Sources", "kept for completeness"),
    QT_TRANSLATE_NOOP("Sources", "not recommended (peatland)"),
    QT_TRANSLATE_NOOP("Sources", "ours: an assumed mixture, not for checks"),
    QT_TRANSLATE_NOOP("Sources", "not a carbon source"),
    QT_TRANSLATE_NOOP("Sources", "check for dewormers"),
    QT_TRANSLATE_NOOP("Sources", "N = protein/6.25, C = (100-ash)/1.8 of dry matter"),
    QT_TRANSLATE_NOOP("Sources", "softening class, bulk, water held and welcome"),
    QT_TRANSLATE_NOOP("Sources", "softening class, bulk and water held"),
    QT_TRANSLATE_NOOP("Sources", "kept out"),
    QT_TRANSLATE_NOOP("Sources", "round figures from memory of the USDA National Nutrient Database"),
    QT_TRANSLATE_NOOP("Sources", "composition"),
    QT_TRANSLATE_NOOP("Sources", "composition as of spent tea"),
    QT_TRANSLATE_NOOP("Sources", "composition as of horse manure"),
    QT_TRANSLATE_NOOP("Sources", "composition as of office paper"),
    QT_TRANSLATE_NOOP("Sources", "composition as of shavings"),
    QT_TRANSLATE_NOOP("Sources", "that many bags hold plastic"),
    QT_TRANSLATE_NOOP("Sources", "that they carry a colour developer"),
    QT_TRANSLATE_NOOP("Sources", "a third of it clay and size"),
    QT_TRANSLATE_NOOP("Sources", "welcome"),
    QT_TRANSLATE_NOOP("Sources", "caustic, it burns worms and skin"),
    QT_TRANSLATE_NOOP("Sources", "the only lime for a sour bed, never slaked or quick lime"),
    QT_TRANSLATE_NOOP("Sources", "softens in hot piles, not in a worm bin"),
    QT_TRANSLATE_NOOP("Sources", "bulk 21-36 kg/m3 and 3 parts water to 1 paper"),
    QT_TRANSLATE_NOOP("Sources", "about 94 % CaCO3"),
    QT_TRANSLATE_NOOP("Sources", "C:N 40-80 read"),
    QT_TRANSLATE_NOOP("Sources", "C:N 20 NRAES-54 second hand"),
    QT_TRANSLATE_NOOP("Sources", "C:N 19 second hand"),
    QT_TRANSLATE_NOOP("Sources", "Golueke 1972 read"),
    QT_TRANSLATE_NOOP("Sources", "40-80 kg/m3 dry"),
    QT_TRANSLATE_NOOP("Sources", "holds 7.5-11"),
    QT_TRANSLATE_NOOP("Sources", "water Spiehs et al. 2013 (3.6 g/g when fine)"),
    QT_TRANSLATE_NOOP("Sources", "NRAES-54 nitrogen"),
    QT_TRANSLATE_NOOP("Sources", "NRAES-54 table A.1"),
    QT_TRANSLATE_NOOP("Sources", "NRAES-54 softwood 212-1313"),
    QT_TRANSLATE_NOOP("Sources", "NRAES-54 C:N range 398-852"),
    QT_TRANSLATE_NOOP("Sources", "NRAES-54 broiler and layer manure (N 1.6-10, C:N 3-14)"),
    QT_TRANSLATE_NOOP("Sources", "NRAES-54 vegetable produce"),
    QT_TRANSLATE_NOOP("Sources", "fresh food a day for their own mass of worms"),
    QT_TRANSLATE_NOOP("Sources", "parts of water for one of paper"),
    QT_TRANSLATE_NOOP("Sources", "common practice (a wrung-out sponge), no source"),
    QT_TRANSLATE_NOOP("Sources", "the share itself is ours"),
    QT_TRANSLATE_NOOP("Sources", "for composting"),
    QT_TRANSLATE_NOOP("Sources", "the middle of Cooperband 2002"),
    QT_TRANSLATE_NOOP("Sources", "as fitted for the model"),
    QT_TRANSLATE_NOOP("Sources", "a litre of moist castings"),
    QT_TRANSLATE_NOOP("Sources", "at 25 °C"),
    QT_TRANSLATE_NOOP("Sources", "Lalander et al. 2015 and Zziwa et al. 2021"),
    QT_TRANSLATE_NOOP("Sources", "46 to 60 % lost"),
    QT_TRANSLATE_NOOP("Sources", "after the hatching time of Venter & Reinecke 1988"),
    QT_TRANSLATE_NOOP("Sources", "a journal's abstract"),
    QT_TRANSLATE_NOOP("Sources", "dry matter"),
    QT_TRANSLATE_NOOP("Sources", "the same as in the reckoning"),
    QT_TRANSLATE_NOOP("Sources", "where the entry names none"),
    QT_TRANSLATE_NOOP("Sources", "it differs from place to place: measure yours"),
    QT_TRANSLATE_NOOP("Sources", "an empty tray, where none was weighed"),
    QT_TRANSLATE_NOOP("Sources", "for a square metre, once"),
    QT_TRANSLATE_NOOP("Sources", "from egg to fly in a warm room"),
    QT_TRANSLATE_NOOP("Sources", "revised NIOSH lifting equation"),
    QT_TRANSLATE_NOOP("Sources", "NIOSH lifting equation"),
    QT_TRANSLATE_NOOP("Sources", "the tray's weight"),
    QT_TRANSLATE_NOOP("Sources", "moulds"),
    QT_TRANSLATE_NOOP("Sources", "Queensland WorkSafe and New Zealand health pages"),
    QT_TRANSLATE_NOOP("Sources", "dewormers"),
    QT_TRANSLATE_NOOP("Sources", "cat and dog waste"),
    QT_TRANSLATE_NOOP("Sources", "tetanus and pregnancy"),
    QT_TRANSLATE_NOOP("Sources", "tetanus"),
    QT_TRANSLATE_NOOP("Sources", "fitted within the range to measured pots"),
    QT_TRANSLATE_NOOP("Sources", "0.70 g/d fresh x M^(2/3)"),
    QT_TRANSLATE_NOOP("Sources", "0.25 to 0.5 of their mass a day, fresh"),
    QT_TRANSLATE_NOOP("Sources", "worm yield 3.5 to 10 % of DM"),
    QT_TRANSLATE_NOOP("Sources", "0.0036: 58 J/d at 1 g, 25 C; 16 kJ/g DM"),
    QT_TRANSLATE_NOOP("Sources", "2.45 cocoons a week, peak 4.9"),
    QT_TRANSLATE_NOOP("Sources", "23 d at 25 C"),
    QT_TRANSLATE_NOOP("Sources", "mean life 590 d"),
    QT_TRANSLATE_NOOP("Sources", "Michon 1954 through a review"),
    QT_TRANSLATE_NOOP("Sources", "1.6 best"),
    QT_TRANSLATE_NOOP("Sources", "x1.5 to 3.8 on decay"),
    QT_TRANSLATE_NOOP("Sources", "a thesis of Makerere University"),
    QT_TRANSLATE_NOOP("Sources", "whole-bin loss 0.46 to 0.60"),
    QT_TRANSLATE_NOOP("Sources", "within its range for the timing of the trade"),
    QT_TRANSLATE_NOOP("Sources", "leachate 2.6 mS/cm"),
    QT_TRANSLATE_NOOP("Sources", "1.5 to 3 harmless"),
    QT_TRANSLATE_NOOP("Sources", "Beta(2, 18) as a logit-normal of the same median and 90 % range"),
};

/// The phrase as it stands in the source; nullptr when the part is none of ours.
const char* phraseOf(const QString& part)
{
    static const QHash<QString, const char*> known = [] {
        QHash<QString, const char*> made;
        for (const char* each : phrases) made.insert(QString::fromUtf8(each), each);
        return made;
    }();
    return known.value(part, nullptr);
}

/// Where the mark stands outside of brackets; -1 when nowhere.
qsizetype outside(const QString& text, const QString& mark)
{
    int depth = 0;
    for (qsizetype i = 0; i < text.size(); ++i) {
        if (text[i] == u'(') ++depth;
        else if (text[i] == u')') --depth;
        else if (depth == 0 && QStringView{text}.sliced(i).startsWith(mark)) return i;
    }
    return -1;
}

/// Calls `each` for the least parts and puts the text together again from what it returns.
QString rebuilt(const QString& text, const std::function<QString(const QString&)>& each)
{
    if (phraseOf(text)) return each(text);
    for (const QString& mark : {QStringLiteral("; "), QStringLiteral(": "), QStringLiteral(", ")}) {
        if (const qsizetype at = outside(text, mark); at > 0) return rebuilt(text.left(at), each) + mark + rebuilt(text.mid(at + mark.size()), each);
    }
    const qsizetype open = text.indexOf(QStringLiteral(" ("));
    if (open > 0 && text.endsWith(u')')) return rebuilt(text.left(open), each) + QStringLiteral(" (") + rebuilt(text.sliced(open + 2).chopped(1), each) + u')';
    return each(text);
}

}

QString sourceWords(std::string_view source)
{
    return rebuilt(QString::fromUtf8(source.data(), static_cast<qsizetype>(source.size())), [](const QString& part) {
        const char* phrase = phraseOf(part);
        return phrase ? QCoreApplication::translate("Sources", phrase) : part;
    });
}

QStringList sourceParts(const QString& source)
{
    QStringList parts;
    rebuilt(source, [&](const QString& part) {
        parts << part;
        return part;
    });
    return parts;
}

bool isOurPhrase(const QString& part) { return phraseOf(part) != nullptr; }

}
