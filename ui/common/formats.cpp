#include "ui/common/formats.h"

#include <QCoreApplication>
#include <QGuiApplication>
#include <QLocale>
#include <QRegularExpression>

#include <algorithm>
#include <cmath>

namespace tierloam::ui {

namespace {

struct Formats {
    Q_DECLARE_TR_FUNCTIONS(Formats)
};

Measures chosen = Measures::metric;

/// A unit that a value is shown in, how large one of it is in the base unit, and how many decimals it is worth.
struct Shown {
    double size;
    int decimals;
    Unit unit;
};

Shown massShown(double kg)
{
    const double m = std::abs(kg);
    if (chosen == Measures::us) {
        const double lb = m / inBaseUnit(Unit::lb);
        if (lb < 0.995) return {inBaseUnit(Unit::oz), m / inBaseUnit(Unit::oz) < 9.95 ? 1 : 0, Unit::oz};
        return {inBaseUnit(Unit::lb), lb < 99.5 ? 1 : 0, Unit::lb};
    }
    if (m < 0.995) return {0.001, 0, Unit::g};
    return {1.0, m < 9.95 ? 1 : 0, Unit::kg};
}

Shown volumeShown(double litres)
{
    const double v = std::abs(litres);
    if (chosen == Measures::us) {
        const double gal = v / inBaseUnit(Unit::gal);
        if (gal < 0.245) return {inBaseUnit(Unit::floz), 0, Unit::floz};
        return {inBaseUnit(Unit::gal), gal < 9.95 ? 2 : 1, Unit::gal};
    }
    if (v > 0 && v < 0.0995) return {0.001, 0, Unit::mL};
    return {1.0, v < 99.5 ? 1 : 0, Unit::L};
}

QString shownNumber(double value, const Shown& shown)
{
    double n = value / shown.size;
    if (shown.unit == Unit::g && std::abs(n) >= 100) n = std::round(n / 10.0) * 10.0; // an estimate is not worth single grams
    return numberText(n, shown.decimals);
}

QString withUnit(const QString& number, const QString& unit)
{
    return Formats::tr("%1\u00a0%2").arg(number, unit); // never broken over two lines
}

QString bandText(const reckoning::Band& band, const Shown& shown, const QString& unit)
{
    return withRange(withUnit(shownNumber(band.p50, shown), unit), shownNumber(band.p05, shown), shownNumber(band.p95, shown));
}

int rateDecimals(double value)
{
    return std::abs(value) < 9.95 ? 1 : 0;
}

QString ratioNumber(double ratio)
{
    const int decimals = ratio < 0.995 ? 2 : ratio < 9.95 ? 1 : 0;
    return numberText(ratio, decimals);
}

}

Measures measures()
{
    return chosen;
}

void setMeasures(Measures wanted)
{
    chosen = wanted;
}

QString numberText(double value, int decimals)
{
    QLocale locale;
    locale.setNumberOptions(locale.numberOptions() | QLocale::OmitGroupSeparator);
    const double scale = std::pow(10.0, decimals);
    double rounded = std::round(value * scale) / scale;
    if (rounded == 0.0) rounded = 0.0; // never "-0"
    return locale.toString(rounded, 'f', decimals);
}

QString countText(double count, bool rough)
{
    double n = std::round(count);
    if (rough && std::abs(n) >= 100) {
        const double step = std::pow(10.0, std::floor(std::log10(std::abs(n))) - 1.0);
        n = std::round(n / step) * step;
    }
    QLocale locale;
    locale.setNumberOptions(locale.numberOptions() & ~QLocale::OmitGroupSeparator);
    return locale.toString(static_cast<qlonglong>(n));
}

QString withRange(const QString& value, const QString& low, const QString& high)
{
    return low == high ? value : Formats::tr("%1 (%2–%3)").arg(value, low, high);
}

QString unitText(Unit unit)
{
    switch (unit) {
    case Unit::floz: return Formats::tr("fl oz");
    case Unit::count: return {};
    default: break;
    }
    const std::string_view name = nameOf(unit);
    return QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
}

QString amountText(const Amount& amount)
{
    QLocale locale;
    locale.setNumberOptions(locale.numberOptions() | QLocale::OmitGroupSeparator);
    const QString number = locale.toString(amount.value, 'g', QLocale::FloatingPointShortest);
    return amount.unit == Unit::count ? number : withUnit(number, unitText(amount.unit));
}

QString massText(double kg)
{
    const Shown shown = massShown(kg);
    return withUnit(shownNumber(kg, shown), unitText(shown.unit));
}

Amount massAmount(double kg)
{
    const Shown shown = massShown(kg);
    if (shown.unit == Unit::g) return {std::round(kg * 100.0) * 10.0, Unit::g};
    const double scale = std::pow(10.0, shown.decimals);
    return {std::round(kg / shown.size * scale) / scale, shown.unit};
}

Amount volumeAmount(double litres)
{
    if (chosen == Measures::us) return {std::max(std::round(litres / inBaseUnit(Unit::floz)), 1.0), Unit::floz};
    return litres < 1.0 ? Amount{std::max(std::round(litres * 100.0) * 10.0, 10.0), Unit::mL} : Amount{std::round(litres * 10.0) / 10.0, Unit::L};
}

Amount mostOf(double kg)
{
    const Shown shown = massShown(kg);
    if (shown.unit == Unit::g) return {std::floor(std::max(kg, 0.0) * 100.0 + 1e-6) * 10.0, Unit::g};
    const double scale = std::pow(10.0, shown.decimals);
    return {std::floor(std::max(kg, 0.0) / shown.size * scale + 1e-6) / scale, shown.unit};
}

QString mostText(double kg) { return amountText(mostOf(kg)); }

QString massBand(const reckoning::Band& kg)
{
    const Shown shown = massShown(kg.p50);
    return bandText(kg, shown, unitText(shown.unit));
}

QString massRange(const reckoning::Band& kg)
{
    const Shown shown = massShown(kg.p50);
    return Formats::tr("%1–%2").arg(shownNumber(kg.p05, shown), shownNumber(kg.p95, shown));
}

QString volumeText(double litres)
{
    const Shown shown = volumeShown(litres);
    return withUnit(shownNumber(litres, shown), unitText(shown.unit));
}

QString volumeBand(const reckoning::Band& litres)
{
    const Shown shown = volumeShown(litres.p50);
    return bandText(litres, shown, unitText(shown.unit));
}

QString volumeOf(double litres, double whole)
{
    const Shown shown = volumeShown(whole);
    const double size = whole / shown.size;
    const bool round = std::abs(size - std::round(size)) < 0.05;
    return Formats::tr("%1 of %2").arg(withUnit(shownNumber(litres, shown), unitText(shown.unit)), numberText(size, round ? 0 : 1));
}

QString lengthText(double cm)
{
    return chosen == Measures::us ? withUnit(numberText(cm / 2.54, 1), Formats::tr("in")) : withUnit(numberText(cm, 1), Formats::tr("cm"));
}

QString lengthBand(const reckoning::Band& cm)
{
    const double size = chosen == Measures::us ? 2.54 : 1.0;
    return withRange(lengthText(cm.p50), numberText(cm.p05 / size, 1), numberText(cm.p95 / size, 1));
}

QString temperatureText(double celsius)
{
    return chosen == Measures::us ? withUnit(numberText(celsius * 1.8 + 32.0, 0), Formats::tr("°F")) : withUnit(numberText(celsius, 0), Formats::tr("°C"));
}

QString temperatureBand(const reckoning::Band& celsius)
{
    const auto number = [](double c) { return numberText(chosen == Measures::us ? c * 1.8 + 32.0 : c, 0); };
    return withRange(temperatureText(celsius.p50), number(celsius.p05), number(celsius.p95));
}

QString percentText(double fraction)
{
    return Formats::tr("%1\u00a0%").arg(numberText(fraction * 100.0, 0));
}

QString unbroken(QString text)
{
    static const QRegularExpression apart{QStringLiteral("(?<=\\d) (?=(?:: 1|%|g|kg|L|mL|cm|°C|mS/cm)(?![\\w]))")};
    text.replace(apart, QStringLiteral("\u00a0"));
    return text.replace(QStringLiteral("\u00a0: 1"), QStringLiteral("\u00a0:\u00a01"));
}

QString rateText(double gramsPerDay)
{
    return Formats::tr("%1\u00a0g/d").arg(numberText(gramsPerDay, rateDecimals(gramsPerDay)));
}

QString rateBand(const reckoning::Band& gramsPerDay)
{
    const int decimals = rateDecimals(gramsPerDay.p50);
    return withRange(rateText(gramsPerDay.p50), numberText(gramsPerDay.p05, decimals), numberText(gramsPerDay.p95, decimals));
}

QString flowText(double litresPerWeek)
{
    return Formats::tr("%1/wk").arg(volumeText(litresPerWeek));
}

QString flowBand(const reckoning::Band& litresPerWeek)
{
    const Shown shown = volumeShown(litresPerWeek.p50);
    return bandText(litresPerWeek, shown, Formats::tr("%1/wk").arg(unitText(shown.unit)));
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
