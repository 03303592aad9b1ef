#include "core/wording/formats.h"

#include "core/wording/percent.h"
#include "core/wording/shown_unit.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>
#include <cmath>

namespace tierloam::wording {

namespace {

struct Formats {
    Q_DECLARE_TR_FUNCTIONS(Formats)
};

Measures chosen = Measures::metric;
bool rightToLeft = false;

QString ofOneDirection(const QString& text) { return rightToLeft ? QString{QChar{0x2066} % text % QChar{0x2069}} : text; }

bool us() { return chosen == Measures::us; }

QString shownNumber(double value, const Shown& shown)
{
    double n = value / shown.size;
    if (shown.unit == Unit::g && std::abs(n) >= 100) n = std::round(n / 10.0) * 10.0; // an estimate is not worth single grams
    return numberText(n, shown.decimals);
}

QString withUnit(const QString& number, const QString& unit)
{
    return ofOneDirection(Formats::tr("%1\u00a0%2").arg(number, unit)); // never broken over two lines
}

QString rangeOf(const QString& low, const QString& high) { return low == high ? QString{} : ofOneDirection(Formats::tr("%1–%2").arg(low, high)); }

QString bandText(const reckoning::Band& band, const Shown& shown, const QString& unit)
{
    return withRange(withUnit(shownNumber(band.p50, shown), unit), shownNumber(band.p05, shown), shownNumber(band.p95, shown));
}

/// A rate of dry matter: its unit's size in g, and its decimals for a value.
double rateSize() { return us() ? 1000.0 * inBaseUnit(Unit::oz) : 1.0; }

int rateDecimals(double value)
{
    const double shown = std::abs(value) / rateSize();
    return shown < 0.995 && us() ? 2 : shown < 9.95 ? 1 : 0;
}

constexpr double squareFeetPerSquareMetre = 10.763910; // 1 ft = 0.3048 m
constexpr double poundsPerCubicFoot = 0.06242796;      // of 1 kg/m³
constexpr double poundsPerSquareFoot = 0.2048161;      // of 1 kg/m²
constexpr double ouncesPerGallon = 0.1335264;          // of 1 g/L

enum class System { either, metric, us };

System systemOf(Unit unit)
{
    switch (unit) {
    case Unit::g:
    case Unit::kg:
    case Unit::mL:
    case Unit::L: return System::metric;
    case Unit::oz:
    case Unit::lb:
    case Unit::gal:
    case Unit::floz: return System::us;
    case Unit::cup:
    case Unit::count: break;
    }
    return System::either;
}

}

double inDigits(double value, int digits)
{
    if (value == 0.0) return 0.0;
    const double step = std::pow(10.0, std::floor(std::log10(std::abs(value))) + 1.0 - digits);
    return step >= 1.0 ? std::round(value / step) * step : std::round(value * std::round(1.0 / step)) / std::round(1.0 / step);
}

Measures measures()
{
    return chosen;
}

void setMeasures(Measures wanted)
{
    chosen = wanted;
}

void setRightToLeft(bool on) { rightToLeft = on; }

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
    return low == high ? value : ofOneDirection(Formats::tr("%1 (%2–%3)").arg(value, low, high));
}

QString unitText(Unit unit)
{
    switch (unit) {
    case Unit::floz: return Formats::tr("fl oz");
    case Unit::cup: return Formats::tr("cup", "unit of volume, one of it");
    case Unit::count: return {};
    default: break;
    }
    const std::string_view name = nameOf(unit);
    return QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
}

QString unitText(Unit unit, double count)
{
    if (unit != Unit::cup || count == 1.0) return unitText(unit);
    return count < 2.0 ? Formats::tr("cup", "unit of volume, behind 0.5 or 1.75") : Formats::tr("cup", "unit of volume, behind 2 and more");
}

Amount inMeasures(const Amount& amount, int digits)
{
    const System system = systemOf(amount.unit);
    if (system == System::either || (system == System::us) == us()) return amount;
    const double base = amount.value * inBaseUnit(amount.unit);
    const Unit unit = kindOf(amount.unit) == UnitKind::mass ? massShown(base).unit : volumeShown(base).unit;
    return {inDigits(base / inBaseUnit(unit), digits), unit};
}

QString amountText(const Amount& typed)
{
    const Amount amount = inMeasures(typed);
    QLocale locale;
    locale.setNumberOptions(locale.numberOptions() | QLocale::OmitGroupSeparator);
    const QString number = locale.toString(amount.value, 'g', QLocale::FloatingPointShortest);
    return amount.unit == Unit::count ? number : withUnit(number, unitText(amount.unit, amount.value));
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
    return ofOneDirection(Formats::tr("%1–%2").arg(shownNumber(kg.p05, shown), shownNumber(kg.p95, shown)));
}

QString volumeText(double litres)
{
    const Shown shown = volumeShown(litres);
    return withUnit(shownNumber(litres, shown), unitText(shown.unit));
}

QString volumeBand(const reckoning::Band& litres)
{
    const Shown shown = volumeShown(litres);
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
    return us() ? withUnit(numberText(cm / 2.54, 1), Formats::tr("in")) : withUnit(numberText(cm, 1), Formats::tr("cm"));
}

QString lengthMeant(double cm)
{
    if (us()) return lengthText(cm);
    const auto isWhole = [](double value) { return value == std::round(value); };
    return withUnit(numberText(cm, isWhole(cm) ? 0 : isWhole(10.0 * cm) ? 1 : 2), Formats::tr("cm"));
}

QString lengthBand(const reckoning::Band& cm)
{
    const double size = us() ? 2.54 : 1.0;
    return withRange(lengthText(cm.p50), numberText(cm.p05 / size, 1), numberText(cm.p95 / size, 1));
}

QString temperatureText(double celsius)
{
    return us() ? withUnit(numberText(celsius * 1.8 + 32.0, 0), Formats::tr("°F")) : withUnit(numberText(celsius, 0), Formats::tr("°C"));
}

QString temperatureBand(const reckoning::Band& celsius)
{
    const auto number = [](double c) { return numberText(us() ? c * 1.8 + 32.0 : c, 0); };
    return withRange(temperatureText(celsius.p50), number(celsius.p05), number(celsius.p95));
}

QString massRead(double kg)
{
    const bool small = us() ? kg < inBaseUnit(Unit::lb) : kg < 0.1;
    const Unit unit = us() ? small ? Unit::oz : Unit::lb : small ? Unit::g : Unit::kg;
    return withUnit(numberText(kg / inBaseUnit(unit), small ? us() ? 1 : 0 : 2), unitText(unit));
}

QString volumeRead(double litres)
{
    if (!us()) return withUnit(numberText(litres, litres < 1.0 ? 2 : 1), unitText(Unit::L));
    const bool small = litres < 0.25 * inBaseUnit(Unit::gal);
    const Unit unit = small ? Unit::floz : Unit::gal;
    return withUnit(numberText(litres / inBaseUnit(unit), small ? 1 : 2), unitText(unit));
}

QString temperatureRead(double celsius)
{
    return us() ? withUnit(numberText(celsius * 1.8 + 32.0, 1), Formats::tr("°F")) : withUnit(numberText(celsius, 1), Formats::tr("°C"));
}

QString areaText(double squareMetres)
{
    const double value = us() ? squareMetres * squareFeetPerSquareMetre : squareMetres;
    return withUnit(numberText(value, value < 0.995 ? 2 : value < 9.95 ? 1 : 0), us() ? Formats::tr("sq ft") : Formats::tr("m²"));
}

QString volumePerArea(double litresPerSquareMetre)
{
    if (!us()) return withUnit(numberText(litresPerSquareMetre, 0), Formats::tr("L/m²"));
    return withUnit(numberText(litresPerSquareMetre / inBaseUnit(Unit::gal) / squareFeetPerSquareMetre, 2), Formats::tr("gal/sq ft"));
}

QString bulkUnit() { return us() ? Formats::tr("lb/cu ft") : Formats::tr("kg/m³"); }
double bulkFactor() { return us() ? poundsPerCubicFoot : 1.0; }

QString bulkNumber(double kgPerCubicMetre)
{
    const double value = kgPerCubicMetre * bulkFactor();
    return numberText(value, us() && value < 9.95 ? 1 : 0);
}

QString bulkText(double kgPerCubicMetre) { return withUnit(bulkNumber(kgPerCubicMetre), bulkUnit()); }

namespace {

/// A band of a measure of one unit in each system.
QString bandIn(const reckoning::Band& band, double factor, int decimals, const QString& unit)
{
    const auto number = [&](double value) { return numberText(value * factor, decimals); };
    return withRange(withUnit(number(band.p50), unit), number(band.p05), number(band.p95));
}

}

QString perAreaBand(const reckoning::Band& kgPerSquareMetre)
{
    return us() ? bandIn(kgPerSquareMetre, poundsPerSquareFoot, 2, Formats::tr("lb/sq ft")) : bandIn(kgPerSquareMetre, 1.0, 1, Formats::tr("kg/m²"));
}

QString perAreaText(double kgPerSquareMetre) { return perAreaBand({kgPerSquareMetre, kgPerSquareMetre, kgPerSquareMetre}); }

QString strengthBand(const reckoning::Band& gramsPerLitre)
{
    return us() ? bandIn(gramsPerLitre, ouncesPerGallon, 2, Formats::tr("oz/gal")) : bandIn(gramsPerLitre, 1.0, 1, Formats::tr("g/L"));
}

QString strengthText(double gramsPerLitre) { return strengthBand({gramsPerLitre, gramsPerLitre, gramsPerLitre}); }

QString warmerText(double kelvin)
{
    const double shown = us() ? 1.8 * kelvin : kelvin;
    return withUnit(numberText(shown, std::abs(shown - std::round(shown)) < 0.05 ? 0 : 1), us() ? Formats::tr("°F") : Formats::tr("°C"));
}

int percentShown(double fraction)
{
    const int rounded = static_cast<int>(std::lround(fraction * 100));
    if (rounded == 100 && fraction < 0.9995) return 99;
    if (rounded == 0 && fraction >= 0.0005) return 1;
    return rounded;
}

QString percentText(double fraction)
{
    return Formats::tr("%1\u00a0%").arg(numberText(percentShown(fraction), 0));
}

namespace {

QString rateUnit() { return us() ? Formats::tr("oz/d") : Formats::tr("g/d"); }
QString rateNumber(double gramsPerDay, int decimals) { return numberText(gramsPerDay / rateSize(), decimals); }

}

QString rateText(double gramsPerDay)
{
    return withUnit(rateNumber(gramsPerDay, rateDecimals(gramsPerDay)), rateUnit());
}

QString rateBand(const reckoning::Band& gramsPerDay)
{
    const int decimals = rateDecimals(gramsPerDay.p50);
    return withRange(rateText(gramsPerDay.p50), rateNumber(gramsPerDay.p05, decimals), rateNumber(gramsPerDay.p95, decimals));
}

std::pair<QString, QString> rateParts(const reckoning::Band& gramsPerDay)
{
    const int decimals = rateDecimals(gramsPerDay.p50);
    return {rateText(gramsPerDay.p50), rangeOf(rateNumber(gramsPerDay.p05, decimals), rateNumber(gramsPerDay.p95, decimals))};
}

QString flowText(double litresPerWeek)
{
    return Formats::tr("%1/wk").arg(volumeText(litresPerWeek));
}

QString flowBand(const reckoning::Band& litresPerWeek)
{
    const Shown shown = volumeShown(litresPerWeek);
    return bandText(litresPerWeek, shown, Formats::tr("%1/wk").arg(unitText(shown.unit)));
}

std::pair<QString, QString> flowParts(const reckoning::Band& litresPerWeek)
{
    const Shown shown = volumeShown(litresPerWeek);
    return {withUnit(shownNumber(litresPerWeek.p50, shown), Formats::tr("%1/wk").arg(unitText(shown.unit))),
            rangeOf(shownNumber(litresPerWeek.p05, shown), shownNumber(litresPerWeek.p95, shown))};
}

}
