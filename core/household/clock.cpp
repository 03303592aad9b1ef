#include "core/household/clock.h"

#include <QDate>
#include <QTime>

namespace tierloam::household {

Day SystemClock::today() const
{
    const QDate date = QDate::currentDate();
    return Day{std::chrono::year{date.year()} / date.month() / date.day()};
}

int SystemClock::minuteOfDay() const
{
    const QTime time = QTime::currentTime();
    return time.hour() * 60 + time.minute();
}

}
