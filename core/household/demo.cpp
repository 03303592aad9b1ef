#include "core/household/demo.h"

#include "core/exchange/journal_csv.h"
#include "core/household/text.h"
#include "core/store/setting_names.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QRegularExpression>
#include <QStandardPaths>

#include <signal.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>

namespace tierloam::household::demo {

namespace {

QString folder() { return QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) + QStringLiteral("/tierloam/demo"); }

/// "demo-PID-N": the program that made it, and which of its copies it is.
const QRegularExpression& copyName()
{
    static const QRegularExpression name{QStringLiteral("^demo-([0-9]+)-[0-9]+\\.tierloam(-wal|-shm|-journal)?$")};
    return name;
}

bool runs(qint64 pid) { return ::kill(static_cast<pid_t>(pid), 0) == 0 || errno == EPERM; }

void removeOldCopies(const QDir& dir)
{
    for (const QString& name : dir.entryList(QDir::Files)) {
        const auto match = copyName().match(name);
        if (match.hasMatch() && !runs(match.captured(1).toLongLong())) QFile::remove(dir.filePath(name));
    }
}

QString freshPath(const QDir& dir)
{
    for (int copy = 1;; ++copy) {
        const QString path = dir.filePath(QStringLiteral("demo-%1-%2.tierloam").arg(::getpid()).arg(copy));
        if (!QFileInfo::exists(path)) return path;
    }
}

/// By whole weeks, so that a Sunday's feeding stays one of a Sunday.
void shift(journal::Entries& entries, Day today)
{
    if (entries.empty()) return;
    const Day last = std::ranges::max_element(entries, {}, [](const journal::Entry& entry) { return entry.date.day; })->date.day;
    const int days = daysBetween(last, today);
    const int weeks = days >= 0 ? days / 7 : -((-days + 6) / 7);
    const std::chrono::days by{weeks * 7};
    for (journal::Entry& entry : entries) {
        entry.date.day += by;
        if (auto* event = std::get_if<journal::Event>(&entry.action); event && event->until) *event->until += by;
    }
}

store::OpenFailure cannotBeMade(const QString& why)
{
    return {store::OpenProblem::other, HouseholdText::tr("The demo household cannot be made: %1").arg(why)};
}

}

QByteArray journal()
{
    QFile file{QStringLiteral(":/demo/journal.csv")};
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray{};
}

std::variant<QString, store::OpenFailure> makeCopy(Day today, const QByteArray& journalCsv)
{
    const auto read = exchange::readJournal({journalCsv.constData(), static_cast<std::size_t>(journalCsv.size())}, {});
    if (!read.faults.empty()) return cannotBeMade(exchange::faultText(QStringLiteral("journal.csv"), read.faults.front()));
    journal::Edit edit = read.edit;
    shift(edit.added, today);

    const QDir dir{folder()};
    if (!dir.mkpath(QStringLiteral("."))) return cannotBeMade(HouseholdText::tr("there is no permission to make the folder %1.").arg(dir.path()));
    QFile::setPermissions(dir.path(), QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
    removeOldCopies(dir);
    const QString path = freshPath(dir);
    auto opened = store::HouseholdFile::open(path, store::HouseholdFile::Mode::createIfAbsent);
    if (auto* failure = std::get_if<store::OpenFailure>(&opened)) return std::move(*failure);
    auto file = std::move(std::get<std::unique_ptr<store::HouseholdFile>>(opened));
    const auto written = file->apply(edit);
    if (const auto* failure = std::get_if<store::WriteFailure>(&written)) {
        store::HouseholdFile::discard(std::move(file));
        return cannotBeMade(failure->why);
    }
    if (const auto failure = file->setSetting(store::settingHouseholdName, HouseholdText::tr("Mill cottage"))) return cannotBeMade(failure->why);
    return path;
}

bool isCopy(const QString& path)
{
    const QFileInfo file{path};
    return file.absolutePath() == QDir{folder()}.absolutePath() && copyName().match(file.fileName()).hasMatch();
}

}
