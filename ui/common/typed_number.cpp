#include "ui/common/typed_number.h"

#include "core/quantity/number_text.h"

#include <QLocale>

namespace tierloam::ui {

Typed<double> typedNumber(const QString& text)
{
    QString plain = text.trimmed();
    if (plain.isEmpty()) return {};
    plain.replace(QChar{0x2212}, QLatin1Char('-')); // the typographic minus that locales print
    plain.replace(QLatin1Char(','), QLatin1Char('.'));
    bool grouped = plain.count(QLatin1Char('.')) > 1;
    bool numeric = true;
    for (const QChar c : std::as_const(plain)) {
        if (c.isSpace() || c == QLatin1Char('\'') || c == QChar{0x2019}) grouped = true;
        else if (!(c.isDigit() || c == QLatin1Char('.') || c == QLatin1Char('-'))) numeric = false;
    }
    if (!numeric) return {std::nullopt, Field::tr("«%1» is not a number.").arg(text.trimmed())};
    if (grouped) return {std::nullopt, Field::tr("«%1» could be read in two ways: write it without a thousands mark.").arg(text.trimmed())};
    if (plain.startsWith(QLatin1Char('.'))) plain.prepend(QLatin1Char('0'));
    if (plain.endsWith(QLatin1Char('.'))) plain.chop(1);
    const std::optional<double> value = parseNumber(plain.toStdString());
    if (!value) return {std::nullopt, Field::tr("«%1» is not a number.").arg(text.trimmed())};
    return {value, {}};
}

QString typedText(double value)
{
    QString text = QString::fromStdString(tierloam::numberText(value));
    text.replace(QLatin1Char('.'), QLocale{}.decimalPoint());
    return text;
}

std::pair<QString, QString> partedUnit(const QString& text)
{
    const QString trimmed = text.trimmed();
    qsizetype end = trimmed.size();
    while (end > 0 && (trimmed[end - 1].isLetter() || trimmed[end - 1] == QChar{0xB0})) --end;
    return {trimmed.left(end).trimmed(), trimmed.mid(end)};
}

}
