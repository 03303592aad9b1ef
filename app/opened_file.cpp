#include "app/opened_file.h"

#include "app/core_calls.h"
#include "core/household/clock.h"
#include "core/reckoning/reckon.h"
#include "core/store/setting_names.h"

#include <QCoreApplication>
#include <QFileInfo>

#include <algorithm>
#include <thread>

namespace tierloam::app {

using store::HouseholdFile;

namespace {

class Text {
    Q_DECLARE_TR_FUNCTIONS(CoreCalls)
};

}

std::optional<Opened> openFile(const QString& path, HouseholdFile::Mode mode)
{
    auto opened = HouseholdFile::open(path, mode);
    if (const auto* failure = std::get_if<store::OpenFailure>(&opened)) {
        complain(failure->why);
        return std::nullopt;
    }
    Opened result{std::move(std::get<std::unique_ptr<HouseholdFile>>(opened)), {}};
    if (const QString told = result.file->toldWhenOpened(); !told.isEmpty()) complain(told);
    auto read = result.file->entries();
    if (const auto* failure = std::get_if<store::WriteFailure>(&read)) {
        complain(failure->why);
        HouseholdFile::discard(std::move(result.file));
        return std::nullopt;
    }
    result.entries = std::move(std::get<journal::Entries>(read));
    return result;
}

QString settingOf(const HouseholdFile& file, QLatin1StringView name)
{
    const auto settings = file.settings();
    const auto* all = std::get_if<std::map<QString, QString>>(&settings);
    const auto found = all ? all->find(QString{name}) : std::map<QString, QString>::const_iterator{};
    return all && found != all->end() ? found->second : QString{};
}

Day dayOf(const CommandLine& call) { return call.at ? *call.at : household::SystemClock{}.today(); }

bool isItsOwnTarget(const CommandLine& call, const QString& what)
{
    const QString target = QFileInfo{call.csv}.canonicalFilePath();
    if (target.isEmpty() || target != QFileInfo{call.file}.canonicalFilePath()) return false;
    complain(Text::tr("%1 is the household file itself; name another file for %2").arg(call.csv, what));
    return true;
}

int threadsHere() { return std::clamp(static_cast<int>(std::thread::hardware_concurrency()), 1, 8); }

std::optional<Reckoned> reckonFile(const CommandLine& call)
{
    auto opened = openFile(call.file, HouseholdFile::Mode::readOnly);
    if (!opened) return std::nullopt;
    const auto settings = opened->file->settings();
    if (const auto* failure = std::get_if<store::WriteFailure>(&settings)) {
        complain(failure->why);
        return std::nullopt;
    }
    const auto setting = [&](QLatin1StringView name) {
        const auto& all = std::get<std::map<QString, QString>>(settings);
        const auto found = all.find(QString{name});
        return found == all.end() ? QString{} : found->second;
    };
    Reckoned made;
    made.household = setting(store::settingHouseholdName);
    if (made.household.isEmpty()) made.household = QFileInfo{call.file}.completeBaseName();
    made.yearWishes = setting(store::settingYearWishes);
    made.putOff = setting(store::settingPutOff);
    const bool southern = setting(store::settingHemisphere) == store::hemisphereSouth;
    auto logged = opened->file->loggedDays();
    if (const auto* failure = std::get_if<store::WriteFailure>(&logged)) {
        complain(failure->why);
        return std::nullopt;
    }
    made.logged = std::move(std::get<store::LoggedDays>(logged));
    opened->file.reset(); // the reckoning takes a while; nobody need wait for the file meanwhile
    made.entries = std::move(opened->entries);

    reckoning::Options options;
    options.asOf = dayOf(call);
    options.southern = southern;
    options.threads = threadsHere();
    made.reckoning = reckoning::reckon(made.entries, options);
    made.advice = advice::adviceForAll(*made.reckoning);
    return made;
}

}
