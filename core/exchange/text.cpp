#include "core/exchange/text.h"

namespace tierloam::exchange {

QString shown(std::string_view cell)
{
    constexpr qsizetype most = 60;
    const QString whole = toQString(cell);
    QString text;
    for (qsizetype at = 0; at < whole.size(); ++at) {
        const QChar c = whole[at];
        if (text.size() >= most && !c.isLowSurrogate()) {
            text += QChar{0x2026};
            break;
        }
        // A line break, the paragraph marks and whatever turns the direction of writing would garble the message around it.
        const bool breaks = c.category() == QChar::Other_Control || c.category() == QChar::Separator_Line || c.category() == QChar::Separator_Paragraph
            || (c.category() == QChar::Other_Format && c.unicode() != 0x200C && c.unicode() != 0x200D);
        if (breaks) text += QStringLiteral("U+%1").arg(static_cast<int>(c.unicode()), 4, 16, QLatin1Char{'0'}).toUpper();
        else text += c;
    }
    return text;
}

}
