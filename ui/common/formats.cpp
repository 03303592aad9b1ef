#include "ui/common/formats.h"

#include <QCoreApplication>
#include <QGuiApplication>
#include <QRegularExpression>

#include <algorithm>

namespace tierloam::ui {

namespace {

struct Formats {
    Q_DECLARE_TR_FUNCTIONS(Formats)
};

QString ratioNumber(double ratio)
{
    const int decimals = ratio < 0.995 ? 2 : ratio < 9.95 ? 1 : 0;
    return numberText(ratio, decimals);
}

}

QString joined(QString text)
{
    static const QRegularExpression stroke{QStringLiteral("(?<=[A-Za-z])/(?=[\\p{L}])")};
    static const QRegularExpression words{QStringLiteral("(/\u2060\\p{L}+) (?=\\p{L})")}; // "lb/sq ft"
    return text.replace(stroke, QStringLiteral("/\u2060")).replace(words, QStringLiteral("\\1\u00a0"));
}

QString unbroken(QString text)
{
    static const QRegularExpression apart{QStringLiteral("(?<=[\\d)]) (?=(?:: 1|%|g|kg|L|mL|cm|m²|°C|°F|oz|lb|gal|fl|in|sq|mS/cm|kg/m²|kg/m³|g/L)(?![\\w]))")};
    static const QRegularExpression compound{QStringLiteral("(?<=[a-zA-Z])/(?=(?:m²|m³|L|cm|wk)(?![\\w]))")};
    text.replace(apart, QStringLiteral("\u00a0"));
    text.replace(compound, QStringLiteral("/\u2060")); // nor a line between the two units
    return text.replace(QStringLiteral("\u00a0: 1"), QStringLiteral("\u00a0:\u00a01"));
}

QString oneStop(QString text)
{
    static const QRegularExpression twice{QStringLiteral("(?<![.])[.][.](?![.])")};
    return text.replace(twice, QStringLiteral("."));
}

QString ratioText(double feedToCast)
{
    if (feedToCast >= 998.5) return Formats::tr("no castings yet");
    const QString ratio = Formats::tr("%1 : 1").arg(ratioNumber(feedToCast)).replace(u' ', QChar::Nbsp);
    // Within words that run from right to left the two numbers would change places.
    return QGuiApplication::layoutDirection() == Qt::RightToLeft ? QChar{0x2066} % ratio % QChar{0x2069} : ratio;
}

QString ratioBand(const reckoning::Band& feedToCast)
{
    if (feedToCast.p50 >= 998.5) return ratioText(feedToCast.p50);
    return withRange(ratioText(feedToCast.p50), ratioNumber(feedToCast.p05), ratioNumber(std::min(feedToCast.p95, 999.0)));
}

}
