#include "ui/forms/event_words.h"

#include <QCoreApplication>

#include <array>

namespace tierloam::forms {

namespace {

constexpr const char* context = "Events";
constexpr std::array words{
    QT_TRANSLATE_NOOP("Events", "smell"),          QT_TRANSLATE_NOOP("Events", "flies"),  QT_TRANSLATE_NOOP("Events", "mites"),
    QT_TRANSLATE_NOOP("Events", "ants"),           QT_TRANSLATE_NOOP("Events", "escape"), QT_TRANSLATE_NOOP("Events", "dead worms"),
    QT_TRANSLATE_NOOP("Events", "mould"),          QT_TRANSLATE_NOOP("Events", "heat"),   QT_TRANSLATE_NOOP("Events", "cold"),
    QT_TRANSLATE_NOOP("Events", "standing water"), QT_TRANSLATE_NOOP("Events", "sour bed"), QT_TRANSLATE_NOOP("Events", "few worms"),
    QT_TRANSLATE_NOOP("Events", "no castings"),    QT_TRANSLATE_NOOP("Events", "away"),
    QT_TRANSLATE_NOOP("Events", "second light-drying"), QT_TRANSLATE_NOOP("Events", "bait tray"),
};

}

QStringList suggestedEvents()
{
    QStringList list;
    for (const char* word : words) list.append(QCoreApplication::translate(context, word));
    return list;
}

QString eventWritten(const QString& typed)
{
    for (const char* word : words) {
        if (typed.compare(QCoreApplication::translate(context, word), Qt::CaseInsensitive) == 0) return QString::fromLatin1(word);
    }
    return typed;
}

QString eventShown(const QString& written)
{
    for (const char* word : words) {
        if (written.compare(QLatin1StringView{word}, Qt::CaseInsensitive) == 0) return QCoreApplication::translate(context, word);
    }
    return written;
}

}
