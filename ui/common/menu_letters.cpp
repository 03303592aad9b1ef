#include "ui/common/menu_letters.h"

#include <QAction>
#include <QMenu>

#include <set>

namespace tierloam::ui {

namespace {

/// Text without the mark of its letter; "&&", which is shown as one, stays. `letter`: what was marked, lower case, or none.
QString unmarked(const QString& text, QChar* letter)
{
    QString plain;
    for (qsizetype i = 0; i < text.size(); ++i) {
        if (text[i] != u'&' || i + 1 == text.size()) {
            plain += text[i];
        } else if (text[i + 1] == u'&') {
            plain += QStringLiteral("&&");
            ++i;
        } else if (letter->isNull()) {
            *letter = text[i + 1].toLower();
        }
    }
    return plain;
}

/// With the first letter that is free, if there is one; those that begin a word come first.
QString marked(const QString& plain, std::set<QChar>& taken)
{
    for (const bool atStart : {true, false}) {
        for (qsizetype i = 0; i < plain.size(); ++i) {
            const bool starts = i == 0 || !plain[i - 1].isLetterOrNumber();
            if (starts != atStart || !plain[i].isLetterOrNumber() || !taken.insert(plain[i].toLower()).second) continue;
            return QString{plain}.insert(i, u'&');
        }
    }
    return plain;
}

void part(const QMenu& menu)
{
    std::set<QChar> taken;
    QList<QAction*> without;
    const auto entries = menu.actions();
    for (QAction* entry : entries) {
        if (entry->isSeparator() || !entry->isVisible()) continue;
        QChar letter;
        (void)unmarked(entry->text(), &letter);
        if (letter.isNull() || !taken.insert(letter).second) without << entry;
    }
    for (QAction* entry : without) {
        QChar letter;
        entry->setText(marked(unmarked(entry->text(), &letter), taken));
    }
}

}

void keepLettersApart(QMenu* menu)
{
    QObject::connect(menu, &QMenu::aboutToShow, menu, [menu] { part(*menu); });
}

}
