#pragma once

#include <QRegularExpression>
#include <QStringBuilder>
#include <QTranslator>

namespace tierloam::tests {

/// A language that nobody speaks: each text is 40 % longer, its vowels bear accents and brackets stand around it. What is read without
/// them was not translated. Placeholders, keys, links and tags stay; formats of dates and the list of words for reading loggers are left alone.
class LongTexts final : public QTranslator {
public:
    bool isEmpty() const override { return false; }
    QString translate(const char* context, const char* source, const char*, int) const override
    {
        const QString text = QString::fromUtf8(source);
        const QLatin1StringView room{context};
        static const QRegularExpression format{QStringLiteral("^[dMy ,.]+$")};
        if (room == QLatin1StringView{"LoggerWords"} || (room.startsWith(QLatin1StringView{"Q"}) && room != QLatin1StringView{"QObject"}) || format.match(text).hasMatch()) return {};
        static const QRegularExpression kept{QStringLiteral("%L?\\d+|%L?n|\\{[a-z0-9-]+\\}|\\[\\[[a-z0-9-]+\\||\\]\\]|</?[a-z][^>]*>|&|\\(\\*[^)]*\\)")};
        QString longer = QStringLiteral("⟦");
        qsizetype from = 0;
        for (auto each = kept.globalMatch(text); each.hasNext();) {
            const auto match = each.next();
            longer += accented(text.sliced(from, match.capturedStart() - from)) % match.captured();
            from = match.capturedEnd();
        }
        longer += accented(text.sliced(from));
        int more = static_cast<int>(text.size()) * 2 / 5;
        for (const QString piece = QStringLiteral("~öö "); more > 0; more -= 4) longer += piece.first(std::min(more, 4));
        return longer % QStringLiteral("⟧");
    }

private:
    static QString accented(QString text)
    {
        static const QString plain = QStringLiteral("aeiouAEIOU"), other = QStringLiteral("åéîöüÅÉÎÖÜ");
        for (QChar& each : text) {
            if (const qsizetype at = plain.indexOf(each); at >= 0) each = other[at];
        }
        return text;
    }
};

}
