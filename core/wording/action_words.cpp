#include "core/wording/action_words.h"

#include <QCoreApplication>

#include <array>
#include <variant>

namespace tierloam::wording {

namespace {

constexpr std::array actionTexts{
    QT_TRANSLATE_NOOP("JournalWords", "Set up"), QT_TRANSLATE_NOOP("JournalWords", "Own material"), QT_TRANSLATE_NOOP("JournalWords", "Worms put in"),
    QT_TRANSLATE_NOOP("JournalWords", "Bedding"), QT_TRANSLATE_NOOP("JournalWords", "Fed"), QT_TRANSLATE_NOOP("JournalWords", "Covered"),
    QT_TRANSLATE_NOOP("JournalWords", "Watered"), QT_TRANSLATE_NOOP("JournalWords", "Routine"), QT_TRANSLATE_NOOP("JournalWords", "Drained"),
    QT_TRANSLATE_NOOP("JournalWords", "Flushed"), QT_TRANSLATE_NOOP("JournalWords", "Reading"), QT_TRANSLATE_NOOP("JournalWords", "Looked"),
    QT_TRANSLATE_NOOP("JournalWords", "Worms weighed"), QT_TRANSLATE_NOOP("JournalWords", "Worms counted"), QT_TRANSLATE_NOOP("JournalWords", "Tray weighed"),
    QT_TRANSLATE_NOOP("JournalWords", "Lifted"), QT_TRANSLATE_NOOP("JournalWords", "Loosened"), QT_TRANSLATE_NOOP("JournalWords", "Lid"),
    QT_TRANSLATE_NOOP("JournalWords", "Castings taken"), QT_TRANSLATE_NOOP("JournalWords", "Worms taken away"), QT_TRANSLATE_NOOP("JournalWords", "Worms moved"),
    QT_TRANSLATE_NOOP("JournalWords", "Seen"), QT_TRANSLATE_NOOP("JournalWords", "Note"), QT_TRANSLATE_NOOP("JournalWords", "Retired")};
static_assert(actionTexts.size() == std::variant_size_v<journal::Action>);

}

QString actionWord(std::size_t alternative)
{
    return alternative < actionTexts.size() ? QCoreApplication::translate("JournalWords", actionTexts[alternative]) : QString{};
}

}
