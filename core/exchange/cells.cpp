#include "core/exchange/cells.h"

#include "core/exchange/text.h"
#include "core/quantity/number_text.h"

#include <QStringBuilder>

#include <algorithm>
#include <charconv>
#include <cmath>

namespace tierloam::exchange {

namespace {

constexpr double mostKilograms = 1000.0;
constexpr double mostLitres = 2000.0;
constexpr double mostCounted = 1'000'000.0;

std::string_view trimmed(std::string_view text)
{
    while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
    while (!text.empty() && text.back() == ' ') text.remove_suffix(1);
    return text;
}

QString numberQ(double value) { return toQString(numberText(value)); }

}

QString Range::text() const
{
    return lowIncluded ? ExchangeText::tr("%1 to %2").arg(numberQ(low), numberQ(high)) : ExchangeText::tr("above %1, at most %2").arg(numberQ(low), numberQ(high));
}

void Cells::append(QString& list, std::string_view name)
{
    if (!list.isEmpty()) list += QStringLiteral(", ");
    list += toQString(name);
}

void Cells::appendQuoted(QString& list, std::string_view name)
{
    if (!list.isEmpty()) list += QStringLiteral(", ");
    list += u'«' % toQString(name) % u'»';
}

void Cells::refuse(Column column, const QString& allowed)
{
    if (!fault_) fault_ = Fault{0, columnText(column), shown(row_[column]), allowed};
}

void Cells::refusePair(std::string_view key, const QString& allowedValue)
{
    if (fault_) return;
    const auto pair = pairs_.find(key);
    std::string found{key};
    if (pair != pairs_.end()) found.append(1, '=').append(pair->second);
    fault_ = Fault{0, columnText(Column::detail), shown(found), toQString(key) + QLatin1Char{'='} + allowedValue};
}

void Cells::nothing(Column column, const QString& why)
{
    if (!row_[column].empty()) refuse(column, ExchangeText::tr("nothing (%1)").arg(why));
}

void Cells::noAmount()
{
    const QString why = ExchangeText::tr("%1 has no amount").arg(shown(row_[Column::action]));
    nothing(Column::amount, why);
    nothing(Column::unit, why);
}

Amount Cells::amount(bool masses, bool volumes, Zero zero)
{
    const auto value = parseNumber(row_[Column::amount]);
    if (!value) {
        // Of other people's tables only an empty cell comes as far as this: what is no number in their way of writing is told by that way.
        refuse(Column::amount, row_[Column::amount].empty() ? ExchangeText::tr("an amount, which is missing") : ExchangeText::tr("a plain decimal with a point, such as 0.35"));
        return {};
    }
    const auto unit = unitNamed(row_[Column::unit]);
    const bool fits = unit && ((masses && kindOf(*unit) == UnitKind::mass) || (volumes && kindOf(*unit) == UnitKind::volume));
    if (!fits) {
        QString units;
        for (const Unit known : allUnits)
            if ((masses && kindOf(known) == UnitKind::mass) || (volumes && kindOf(known) == UnitKind::volume)) append(units, nameOf(known));
        refuse(Column::unit, units);
        return {};
    }
    const Amount read{*value, *unit};
    const bool isMass = kindOf(*unit) == UnitKind::mass;
    const Range range{0.0, isMass ? mostKilograms : mostLitres, zero == Zero::allowed};
    if (!range.has(*value * inBaseUnit(*unit))) refuse(Column::amount, range.text() + (isMass ? QStringLiteral(" kg") : QStringLiteral(" L")));
    return read;
}

Amount Cells::mass(Zero zero) { return amount(true, false, zero); }
Amount Cells::volume(Zero zero) { return amount(false, true, zero); }
Amount Cells::massOrVolume() { return amount(true, true, Zero::refused); }

Amount Cells::number()
{
    const auto value = parseNumber(row_[Column::amount]);
    if (!value || *value != std::floor(*value) || *value < 0.0 || *value > mostCounted) {
        refuse(Column::amount, ExchangeText::tr("a whole number, 0 to %1").arg(numberQ(mostCounted)));
        return {};
    }
    if (row_[Column::unit] != nameOf(Unit::count)) refuse(Column::unit, toQString(nameOf(Unit::count)));
    return {*value, Unit::count};
}

void Cells::keys(std::initializer_list<std::string_view> known)
{
    pairs_.clear();
    const std::string_view cell = row_[Column::detail];
    if (cell.empty()) return;
    if (known.size() == 0) {
        nothing(Column::detail, ExchangeText::tr("%1 has no detail").arg(shown(row_[Column::action])));
        return;
    }
    const auto refuseText = [&](std::string_view found, const QString& allowed) {
        if (!fault_) fault_ = Fault{0, columnText(Column::detail), shown(found), allowed};
    };
    std::size_t at = 0;
    while (at <= cell.size()) {
        const std::size_t end = std::min(cell.find(';', at), cell.size());
        const std::string_view pair = trimmed(cell.substr(at, end - at));
        const std::size_t equals = pair.find('=');
        const std::string_view key = trimmed(pair.substr(0, equals));
        if (std::find(known.begin(), known.end(), key) == known.end()) return refuseText(pair, ExchangeText::tr("key=value with the keys %1").arg(joined(known)));
        if (equals == std::string_view::npos || trimmed(pair.substr(equals + 1)).empty()) return refuseText(pair, toQString(key) + ExchangeText::tr("= and a value"));
        if (!pairs_.emplace(key, trimmed(pair.substr(equals + 1))).second) return refuseText(pair, ExchangeText::tr("%1 once").arg(toQString(key)));
        at = end + 1;
    }
}

std::optional<std::string> Cells::word(std::string_view key)
{
    const auto pair = pairs_.find(key);
    if (pair == pairs_.end()) return std::nullopt;
    return std::string{pair->second};
}

std::optional<double> Cells::decimal(std::string_view key, Range range)
{
    const auto pair = pairs_.find(key);
    if (pair == pairs_.end()) return std::nullopt;
    const auto value = parseNumber(pair->second);
    if (!value || !range.has(*value)) {
        refusePair(key, range.text());
        return std::nullopt;
    }
    return value;
}

std::optional<int> Cells::whole(std::string_view key, int low, int high)
{
    const auto pair = pairs_.find(key);
    if (pair == pairs_.end()) return std::nullopt;
    const auto value = parseNumber(pair->second);
    if (!value || *value != std::floor(*value) || *value < low || *value > high) {
        refusePair(key, ExchangeText::tr("a whole number, %1 to %2").arg(QString::number(low), QString::number(high)));
        return std::nullopt;
    }
    return static_cast<int>(*value);
}

std::optional<Share> Cells::percent(std::string_view key, Range range)
{
    const auto value = decimal(key, range);
    return value ? Share::fromPercent(*value) : std::nullopt;
}

std::optional<bool> Cells::yesNo(std::string_view key, std::string_view yes, std::string_view no)
{
    const auto value = word(key);
    if (!value) return std::nullopt;
    if (*value != yes && *value != no) refusePair(key, joined(std::array{yes, no}));
    return *value == yes;
}

std::optional<Day> Cells::date(std::string_view key)
{
    const auto value = word(key);
    if (!value) return std::nullopt;
    const auto day = parseDay(*value);
    if (!day) refusePair(key, ExchangeText::tr("a date from 1900 to 2199, such as 2031-05-01"));
    return day;
}

std::optional<std::uint64_t> Cells::hex(std::string_view key)
{
    const auto pair = pairs_.find(key);
    if (pair == pairs_.end()) return std::nullopt;
    std::uint64_t value = 0;
    const auto [end, error] = std::from_chars(pair->second.data(), pair->second.data() + pair->second.size(), value, 16);
    if (pair->second.size() != 16 || error != std::errc{} || end != pair->second.data() + pair->second.size()) {
        refusePair(key, ExchangeText::tr("16 digits of 0 to 9 and a to f, as given by an export"));
        return std::nullopt;
    }
    return value;
}

}
