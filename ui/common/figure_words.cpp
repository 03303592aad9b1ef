#include "ui/common/figure_words.h"

#include "ui/common/formats.h"
#include "ui/common/source_words.h"

#include <QCoreApplication>

#include <cmath>

namespace tierloam::ui {

namespace {

struct FigureWords {
    Q_DECLARE_TR_FUNCTIONS(FigureWords)
};

/// At most four digits and none that say nothing.
QString plainNumber(double value)
{
    for (int decimals = 0; decimals < 4; ++decimals) {
        const double scale = std::pow(10.0, decimals);
        if (std::fabs(value * scale - std::round(value * scale)) < 1e-6 * scale) return numberText(value, decimals);
    }
    return numberText(value, 4);
}

QString ranged(double low, const std::optional<double>& high)
{
    return high ? FigureWords::tr("%1 to %2", "a range of numbers").arg(plainNumber(low), plainNumber(*high)) : plainNumber(low);
}

/// Values that have a formatter of their own, which knows the system of measures.
template <class Format>
QString formatted(const guide::FigureRow& row, Format format)
{
    const QString low = format(row.low), high = row.high ? format(*row.high) : low;
    return low == high ? low : FigureWords::tr("%1 to %2", "a range of numbers").arg(low, high);
}

}

QString figureText(const guide::FigureRow& row)
{
    using guide::FigureUnit;
    const auto in = [&](const QString& withUnit) { return unbroken(withUnit.arg(ranged(row.low, row.high))); };
    switch (row.unit) {
    case FigureUnit::none:
    case FigureUnit::share:
        if (row.unit == FigureUnit::share)
            return unbroken(FigureWords::tr("%1 %").arg(ranged(100 * row.low, row.high ? std::optional{100 * *row.high} : std::nullopt)));
        return ranged(row.low, row.high);
    case FigureUnit::kilogram: return formatted(row, massText);
    case FigureUnit::gram: return formatted(row, [](double g) { return massText(g / 1000.0); });
    case FigureUnit::litre: return formatted(row, volumeText);
    case FigureUnit::centimetre:
        return measures() == Measures::metric ? in(FigureWords::tr("%1 cm")) : formatted(row, lengthText);
    case FigureUnit::millimetre:
        return measures() == Measures::metric ? in(FigureWords::tr("%1 mm")) : formatted(row, [](double mm) { return lengthText(mm / 10.0); });
    case FigureUnit::days: return !row.high && row.low == 1.0 ? FigureWords::tr("one day") : in(FigureWords::tr("%1 days"));
    case FigureUnit::months: return in(FigureWords::tr("%1 months"));
    case FigureUnit::percent: return in(FigureWords::tr("%1 %"));
    case FigureUnit::celsius:
        return measures() == Measures::metric ? in(FigureWords::tr("%1 °C")) : formatted(row, temperatureText);
    case FigureUnit::milliSiemens: return in(FigureWords::tr("%1 mS/cm"));
    case FigureUnit::kilogramPerSquareMetre:
        return measures() == Measures::metric ? in(FigureWords::tr("%1 kg/m²")) : formatted(row, perAreaText);
    case FigureUnit::kilogramPerCubicMetre:
        return measures() == Measures::metric ? in(FigureWords::tr("%1 kg/m³")) : formatted(row, bulkText);
    case FigureUnit::gramPerLitre:
        return measures() == Measures::metric ? in(FigureWords::tr("%1 g/L")) : formatted(row, strengthText);
    case FigureUnit::degrees: return in(FigureWords::tr("%1°"));
    case FigureUnit::ratio: return in(FigureWords::tr("%1 : 1"));
    }
    return {};
}

QString basisText(guide::Basis basis)
{
    switch (basis) {
    case guide::Basis::published: return FigureWords::tr("published");
    case guide::Basis::secondHand: return FigureWords::tr("second hand");
    case guide::Basis::memory: return FigureWords::tr("memory");
    case guide::Basis::commonPractice: return FigureWords::tr("common practice");
    case guide::Basis::judgement: return FigureWords::tr("ours");
    }
    return {};
}

QString sourceText(const guide::FigureRow& row)
{
    return sourceWords(row.source);
}

QString withFigures(const QString& text)
{
    QString out;
    qsizetype from = 0;
    while (true) {
        const qsizetype open = text.indexOf(u'{', from);
        const qsizetype close = open < 0 ? -1 : text.indexOf(u'}', open);
        if (close < 0) break;
        const std::string key = text.mid(open + 1, close - open - 1).toStdString();
        const guide::FigureRow* row = guide::figureWithKey(key);
        out += QStringView{text}.mid(from, open - from);
        out += row ? figureText(*row) : text.mid(open, close - open + 1);
        from = close + 1;
    }
    return out + QStringView{text}.mid(from);
}

}
