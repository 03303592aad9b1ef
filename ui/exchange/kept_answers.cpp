#include "ui/exchange/kept_answers.h"

#include "core/household/household.h"
#include "ui/common/seams.h"

#include <QStringList>

namespace tierloam::exchange_view {

namespace {

constexpr QLatin1StringView key{"tables/answers"}; // each: the table's name, a line break, what was said
constexpr QChar between{u'\n'};

QStringList withoutIt(const ui::Settings& settings, const QString& name)
{
    QStringList all = settings.value(key).toStringList();
    all.removeIf([&](const QString& each) { return each.section(between, 0, 0) == name; });
    return all;
}

exchange::TableAnswers aside(const ui::Settings& settings, const QString& name)
{
    for (const QString& each : settings.value(key).toStringList())
        if (each.section(between, 0, 0) == name) return exchange::tableFrom(each.section(between, 1));
    return {};
}

}

exchange::TableAnswers keptFor(const exchange::Sheet& sheet, const ui::Settings& settings, const household::Household* household)
{
    const QString name = exchange::wordsName(sheet.header);
    return exchange::together(aside(settings, name), household ? exchange::tableFrom(household->remembered(name)) : exchange::TableAnswers{});
}

void keepAside(const exchange::Sheet& sheet, ui::Settings& settings, const exchange::TableAnswers& answers)
{
    const QString name = exchange::wordsName(sheet.header);
    QStringList all = withoutIt(settings, name);
    all.prepend(name + between + exchange::tableText(exchange::together(answers, aside(settings, name))));
    while (all.size() > mostTablesKept) all.removeLast();
    settings.setValue(key, all);
}

void keepIn(household::Household& household, const exchange::Sheet& sheet, ui::Settings& settings, const exchange::TableAnswers& answers, const QString& label)
{
    const QString name = exchange::wordsName(sheet.header);
    const QString text = exchange::tableText(exchange::together(answers, keptFor(sheet, settings, &household)));
    if (text != household.remembered(name)) household.remember(name, text, label);
    settings.setValue(key, withoutIt(settings, name));
}

}
