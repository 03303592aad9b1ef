#include "core/store/household_file.h"

#include "core/log/log.h"
#include "core/store/household_file_private.h"
#include "core/store/text.h"

#include <QDateTime>
#include <QFileInfo>
#include <QSqlQuery>

#include <algorithm>
#include <utility>

namespace tierloam::store {

HouseholdFile::HouseholdFile(std::unique_ptr<Private> d) : d_{std::move(d)} {}
HouseholdFile::~HouseholdFile() = default;

std::variant<std::unique_ptr<HouseholdFile>, OpenFailure> HouseholdFile::open(const QString& path, Mode mode, std::chrono::milliseconds busyTimeout, Check check)
{
    const log::Since since;
    auto d = std::make_unique<Private>();
    d->path = QFileInfo{path}.absoluteFilePath();
    // A link is followed once, here: the log, the journal and the backups lie beside the file itself.
    const QString real = QFileInfo{path}.canonicalFilePath();
    auto opened = openHousehold(real.isEmpty() ? d->path : real, mode, busyTimeout, check);
    if (auto* failure = std::get_if<OpenFailure>(&opened)) {
        log::note(log::What::openFailed, {{"problem", static_cast<qint64>(failure->problem)}, {"mode", static_cast<qint64>(mode)}, {"ms", since.milliseconds()}});
        return std::move(*failure);
    }
    d->opened = std::move(std::get<Opened>(opened));
    if (d->opened.origin != Origin::wasThere) d->backedUpOn = QDate::currentDate();
    log::note(log::What::opened, {{"schema", d->opened.schema}, {"bytes", d->connection().fileSize()}, {"read-only", d->opened.readOnly}, {"made", d->opened.origin != Origin::wasThere},
                                  {"file-system", d->connection().fileSystemType()}, {"ms", since.milliseconds()}});
    return std::unique_ptr<HouseholdFile>{new HouseholdFile{std::move(d)}};
}

std::optional<OpenFailure> HouseholdFile::whyNotWhole()
{
    if (!d_->opened.whole.valid()) return std::nullopt;
    auto failure = d_->opened.whole.get();
    if (failure) log::note(log::What::openFailed, {{"problem", static_cast<qint64>(failure->problem)}});
    return failure;
}

QString HouseholdFile::path() const { return d_->path; }
int HouseholdFile::schema() const { return d_->opened.schema; }
qint64 HouseholdFile::bytes() const { return d_->connection().fileSize(); }
bool HouseholdFile::readOnly() const { return d_->opened.readOnly; }
bool HouseholdFile::newerSchema() const { return d_->opened.newer; }
bool HouseholdFile::createdNow() const { return d_->opened.origin != Origin::wasThere; }
bool HouseholdFile::movedAway() const { return d_->connection().movedAway(); }

std::variant<journal::Entries, WriteFailure> HouseholdFile::entries() const
{
    auto read = readEntries(d_->connection());
    if (const auto* trouble = std::get_if<RowTrouble>(&read)) return d_->failure(*trouble);
    return std::move(std::get<journal::Entries>(read));
}

std::variant<std::vector<DeletedEntry>, WriteFailure> HouseholdFile::deletedEntries() const
{
    auto read = readDeleted(d_->connection());
    if (const auto* trouble = std::get_if<RowTrouble>(&read)) return d_->failure(*trouble);
    return std::move(std::get<std::vector<DeletedEntry>>(read));
}

std::variant<std::map<Day, std::int64_t>, WriteFailure> HouseholdFile::endsOfDays() const
{
    QSqlQuery query{d_->connection().database()};
    query.setForwardOnly(true);
    if (!query.exec(QStringLiteral("SELECT day, max(position_in_day) FROM entries GROUP BY day"))) return d_->failure(query.lastError());
    std::map<Day, std::int64_t> ends;
    while (query.next())
        if (const auto day = parseDay(query.value(0).toString().toStdString())) ends.emplace(*day, query.value(1).toLongLong());
    if (query.lastError().isValid()) return d_->failure(query.lastError());
    return ends;
}

std::variant<journal::Entries, WriteFailure> HouseholdFile::entriesWith(std::span<const journal::EntryId> ids) const
{
    journal::Entries entries;
    for (const auto id : ids) {
        auto read = readEntry(d_->connection(), id);
        if (const auto* trouble = std::get_if<RowTrouble>(&read)) return d_->failure(*trouble);
        if (auto& entry = std::get<std::optional<journal::Entry>>(read)) entries.push_back(std::move(*entry));
    }
    return entries;
}

std::optional<WriteFailure> HouseholdFile::Private::mayNotWrite() const
{
    if (connection().movedAway()) return goneFailure(path);
    if (!opened.readOnly) return std::nullopt;
    WriteFailure failure;
    failure.refused = true;
    failure.why = opened.newer ? openFailure(OpenProblem::newer, path).why : StoreText::tr("%1 is open for reading only. Nothing was written.").arg(path);
    return failure;
}

std::optional<WriteFailure> HouseholdFile::Private::checkAgain(const Guard& guard) const
{
    if (!guard) return std::nullopt;
    // Always: an edit asked while others were under way was looked at on a view that may not have held, and another program may have written.
    const auto now = readEntries(connection());
    if (const auto* trouble = std::get_if<RowTrouble>(&now)) return failure(*trouble);
    const auto why = guard(std::get<journal::Entries>(now));
    if (!why) return std::nullopt;
    WriteFailure failure;
    failure.refused = true;
    failure.why = *why;
    return failure;
}

std::variant<std::optional<qint64>, WriteFailure> HouseholdFile::Private::noteImport(const QString& name, std::size_t entries) const
{
    if (name.isEmpty()) return std::optional<qint64>{};
    QSqlQuery query{connection().database()};
    if (!query.prepare(QStringLiteral("INSERT INTO imports (name, made_at, entries) VALUES (?, ?, ?)"))) return failure(query.lastError());
    query.addBindValue(name);
    query.addBindValue(QDateTime::currentDateTimeUtc().toString(Qt::ISODateWithMs));
    query.addBindValue(static_cast<qlonglong>(entries));
    if (!query.exec()) return failure(query.lastError());
    return std::optional{query.lastInsertId().toLongLong()};
}

Written HouseholdFile::Private::write(const journal::Edit& edit, const QString& importName) const
{
    const auto import = noteImport(importName, edit.added.size());
    if (const auto* failure = std::get_if<WriteFailure>(&import)) return *failure;
    EntryChanges changes{connection(), std::get<std::optional<qint64>>(import)};
    // In the order of journal::applyEdit, so that both put new ends of days in the same order.
    for (const auto& entry : edit.replaced)
        if (const auto trouble = changes.replace(entry)) return failure(*trouble);
    for (const auto id : edit.deleted)
        if (const auto trouble = changes.remove(id)) return failure(*trouble);
    std::vector<journal::EntryId> ids;
    for (const auto& entry : edit.added) {
        if (static_cast<qint64>(entry.id) > 0) {
            if (const auto trouble = changes.bringBack(entry.id)) return failure(*trouble);
            ids.push_back(entry.id);
            continue;
        }
        const auto id = changes.insert(entry);
        if (const auto* trouble = std::get_if<RowTrouble>(&id)) return failure(*trouble);
        ids.push_back(std::get<journal::EntryId>(id));
    }
    for (const auto& entry : edit.replaced) ids.push_back(entry.id);
    return ids;
}

namespace {

/// The journal as a connection sees it, by ids; nothing where it cannot be read.
std::set<journal::EntryId> idsIn(const Connection& connection)
{
    std::set<journal::EntryId> ids;
    const auto read = readEntries(connection);
    if (const auto* entries = std::get_if<journal::Entries>(&read))
        for (const journal::Entry& entry : *entries) ids.insert(entry.id);
    return ids;
}

}

std::optional<WriteFailure> HouseholdFile::Private::standOnLog()
{
    if (connection().movedAway()) return goneFailure(path);
    if (!renewing && !connection().logTakenAway()) return std::nullopt;
    if (!renewing) idsBefore = idsIn(connection());
    renewing = true;
    auto error = opened.connection->renew();
    if (!error && !opened.readOnly) error = makeDurable(connection(), logIsSafeOn(connection().fileSystemType()));
    log::note(log::What::logTakenAway, {{"opened-anew", !error}});
    if (error) return failure(*error);
    renewing = false;
    ++renewals;
    const auto now = idsIn(connection());
    const bool whole = std::ranges::includes(now, idsBefore);
    toldOfLog = whole ? StoreText::tr("Another program removed the log of %1 while it was open here. The file was opened anew; nothing that was recorded is missing.").arg(path)
                      : StoreText::tr("Another program removed the log of %1 while it was open here, and entries with it or out of the file. Look at the journal, and at the backups "
                                      "for what is missing.").arg(path);
    return std::nullopt;
}

/// A file that is unlinked or moved meanwhile must not take a write that is then lost with it: asked before and after. So is its log.
std::optional<WriteFailure> HouseholdFile::Private::commit(const Transaction& transaction) const
{
    if (connection().movedAway()) return goneFailure(path);
    if (connection().logTakenAway()) return logTakenAwayFailure(path);
    if (const auto error = transaction.commit()) return leavesItOpen(*error) ? unconfirmedFailure(*error, path) : failure(*error);
    if (connection().movedAway()) return goneFailure(path);
    if (connection().logTakenAway()) return logTakenAwayFailure(path);
    return std::nullopt;
}

namespace {

void logFailure(const WriteFailure& failure, qint64 milliseconds)
{
    log::note(log::What::writeFailed, {{"in-use", failure.inUse}, {"disk-full", failure.diskFull}, {"gone", failure.gone}, {"refused", failure.refused}, {"ms", milliseconds}});
}

}

Written HouseholdFile::apply(const journal::Edit& edit, const QString& importName, const Guard& guard, const std::optional<SettingChange>& setting)
{
    const log::Since since;
    auto written = d_->onStandingLog([&] { return d_->applyInOne(edit, importName, guard, setting); });
    if (const auto* failure = std::get_if<WriteFailure>(&written)) logFailure(*failure, since.milliseconds());
    else
        log::note(log::What::written, {{"added", static_cast<qint64>(edit.added.size())}, {"replaced", static_cast<qint64>(edit.replaced.size())},
                                       {"deleted", static_cast<qint64>(edit.deleted.size())}, {"ms", since.milliseconds()}});
    return written;
}

Written HouseholdFile::Private::writeInOne(const journal::Edit& edit, const QString& importName, const Guard& guard, const std::function<std::optional<WriteFailure>()>& beside) const
{
    if (auto why = mayNotWrite()) return *why;
    const Transaction transaction{connection()};
    if (const auto error = transaction.begin()) return failure(*error);
    if (auto why = checkAgain(guard)) return *why;
    auto written = write(edit, importName);
    if (std::holds_alternative<WriteFailure>(written)) return written;
    if (auto why = beside()) return *why;
    if (auto why = commit(transaction)) return *why;
    return written;
}

Written HouseholdFile::Private::applyInOne(const journal::Edit& edit, const QString& importName, const Guard& guard, const std::optional<SettingChange>& setting) const
{
    return writeInOne(edit, importName, guard, [&]() -> std::optional<WriteFailure> {
        if (auto why = loggedFollows(edit)) return why;
        return setting ? writeSetting(*setting) : std::nullopt;
    });
}

std::optional<QString> HouseholdFile::setting(const QString& name) const { return d_->setting(name); }

std::optional<QString> HouseholdFile::Private::setting(const QString& name) const
{
    QSqlQuery query{connection().database()};
    query.setForwardOnly(true);
    if (!query.prepare(QStringLiteral("SELECT value FROM settings WHERE name = ?"))) return std::nullopt;
    query.addBindValue(name);
    if (!query.exec() || !query.next()) return std::nullopt;
    return query.value(0).toString();
}

std::variant<std::map<QString, QString>, WriteFailure> HouseholdFile::settings() const
{
    QSqlQuery query{d_->connection().database()};
    query.setForwardOnly(true);
    if (!query.exec(QStringLiteral("SELECT name, value FROM settings"))) return d_->failure(query.lastError());
    std::map<QString, QString> settings;
    while (query.next()) settings.emplace(query.value(0).toString(), query.value(1).toString());
    if (query.lastError().isValid()) return d_->failure(query.lastError());
    return settings;
}

std::optional<WriteFailure> HouseholdFile::setSetting(const QString& name, const QString& value, const std::optional<QString>& standing)
{
    return d_->onStandingLog([&] { return d_->setInOne({name, value, standing}); });
}

std::optional<WriteFailure> HouseholdFile::Private::setInOne(const SettingChange& change) const
{
    if (auto why = mayNotWrite()) return why;
    const Transaction transaction{connection()};
    if (const auto error = transaction.begin()) return failure(*error);
    if (auto why = writeSetting(change)) return why;
    return commit(transaction);
}

std::optional<WriteFailure> HouseholdFile::Private::writeSetting(const SettingChange& change) const
{
    if (change.standing && setting(change.name).value_or(QString{}) != *change.standing) {
        WriteFailure failure;
        failure.refused = true;
        failure.why = StoreText::tr("Another program has changed this meanwhile. What it wrote was kept, and nothing was written.");
        return failure;
    }
    QSqlQuery query{connection().database()};
    if (!query.prepare(QStringLiteral("INSERT INTO settings (name, value, changed_at) VALUES (?, ?, ?) "
                                      "ON CONFLICT (name) DO UPDATE SET value = excluded.value, changed_at = excluded.changed_at")))
        return failure(query.lastError());
    query.addBindValue(change.name);
    query.addBindValue(change.value.isNull() ? QStringLiteral("") : change.value);
    query.addBindValue(QDateTime::currentDateTimeUtc().toString(Qt::ISODateWithMs));
    if (!query.exec()) return failure(query.lastError());
    return std::nullopt;
}

qint64 HouseholdFile::dataVersion() const
{
    constexpr qint64 eachRenewal = qint64{1} << 32; // the number of a new connection begins anew
    d_->standOnLog(); // where that fails, so does the next line, or what is asked beside says why
    const auto version = d_->connection().value(QStringLiteral("PRAGMA data_version"));
    const auto* value = std::get_if<QVariant>(&version);
    return value ? d_->renewals * eachRenewal + value->toLongLong() : -1;
}

void HouseholdFile::discard(std::unique_ptr<HouseholdFile> file)
{
    if (!file) return;
    const QString path = file->d_->path;
    discardUnused(std::move(file->d_->opened), path);
}

}
