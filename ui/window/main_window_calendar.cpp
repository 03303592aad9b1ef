#include "ui/window/main_window.h"

#include "core/advice/household_advice.h"
#include "core/advice/put_off.h"
#include "core/exchange/icalendar.h"
#include "core/exchange/whole_file.h"
#include "core/store/setting_names.h"
#include "ui/rotation/rotation_page.h"
#include "ui/window/desk.h"
#include "ui/window/notices.h"

#include <QDir>

#include <chrono>

namespace tierloam::window {

bool MainWindow::exportCalendar(const QString& ics)
{
    const auto reckoning = household_ ? household_->reckoning() : nullptr;
    if (!reckoning || !desk_ || !household_->reckoningIsCurrent()) { // what was done last is not to be told as due
        notices_->show(Notices::Kind::failure, tr("The calendar was not written: the estimates are still being made. Try again in a moment."), QStringLiteral("export"));
        return false;
    }
    if (!desk_->rotation()->planIsPresent()) desk_->rotation()->refreshNow(); // else a tray that was emptied meanwhile is to be lifted
    std::vector<advice::Advice> all = advice::postponed(advice::adviceForAll(*reckoning), advice::putOffFrom(household_->kept(store::settingPutOff).toStdString()), household_->today());
    const auto now = std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now());
    const auto events = exchange::calendarEvents(all, *reckoning, desk_->rotation()->plan(), household_->journal()->replay);
    if (const auto why = exchange::writeWholeFile(ics, exchange::calendarText({version_.toStdString(), household_->name().toStdString(), now}, events))) {
        notices_->show(Notices::Kind::failure, *why, QStringLiteral("export"));
        return false;
    }
    notices_->show(Notices::Kind::done, tr("%n event(s) were written to %1.", nullptr, static_cast<int>(events.size())).arg(QDir::toNativeSeparators(ics)), QStringLiteral("export"));
    return true;
}

}
