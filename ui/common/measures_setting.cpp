#include "ui/common/measures_setting.h"

#include <QLocale>

namespace tierloam::ui {

Measures measuresOf(const QString& setting)
{
    if (setting == QLatin1StringView{"us"}) return Measures::us;
    if (setting == QLatin1StringView{"metric"}) return Measures::metric;
    const QLocale system = QLocale::system();
    // The locale without a country counts in United States measures for Qt; it says nothing of a person.
    return system.language() != QLocale::C && system.measurementSystem() == QLocale::ImperialUSSystem ? Measures::us : Measures::metric;
}

}
