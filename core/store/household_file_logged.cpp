#include "core/log/log.h"
#include "core/store/household_file_private.h"
#include "core/store/text.h"
#include "core/store/words.h"

#include <QDateTime>
#include <QSqlQuery>
#include <QStringList>

#include <algorithm>
#include <cmath>

/// Readings of loggers.
namespace tierloam::store {

namespace {

/// The schema that brought these tables.
constexpr int firstWithLogged = 4;

constexpr std::size_t stepOfProgress = 2000;

WriteFailure refusal(const QString& why)
{
    WriteFailure failure;
    failure.refused = true;
    failure.why = why;
    return failure;
}

/// The readings of one series by day, in the order of the days.
std::map<Day, LoggedDay> byDay(const LoggedSeries& series)
{
    std::map<Day, LoggedDay> days;
    for (const LoggedReading& reading : series.readings) {
        const Day on = dayOfSecond(reading.second);
        auto [found, isNew] = days.try_emplace(on, LoggedDay{on, series.kind, 0, reading.value, 0, reading.value});
        LoggedDay& day = found->second;
        ++day.readings;
        day.low = std::min(day.low, reading.value);
        day.high = std::max(day.high, reading.value);
        day.mean += reading.value;
    }
    for (auto& [on, day] : days) day.mean /= day.readings;
    return days;
}

}

std::optional<WriteFailure> HouseholdFile::Private::writeLogged(const LoggedJob& job, qint64 import, std::vector<qint64>& ids) const
{
    const QString now = QDateTime::currentDateTimeUtc().toString(Qt::ISODateWithMs);
    const QSqlDatabase database = connection().database();
    std::size_t of = 0, done = 0;
    for (const LoggedSeries& series : job.add) of += series.readings.size();
    QSqlQuery addSeries{database}, addReading{database}, addDay{database};
    if (!job.add.empty()) {
        if (!addSeries.prepare(QStringLiteral("INSERT INTO logged_series (import_id, stack, kind, readings, created_at) VALUES (?, ?, ?, ?, ?)"))) return failure(addSeries.lastError());
        if (!addReading.prepare(QStringLiteral("INSERT INTO logged_readings (series_id, number, second, value) VALUES (?, ?, ?, ?)"))) return failure(addReading.lastError());
        if (!addDay.prepare(QStringLiteral("INSERT INTO logged_days (series_id, day, readings, low, mean, high) VALUES (?, ?, ?, ?, ?, ?)"))) return failure(addDay.lastError());
    }
    for (const LoggedSeries& series : job.add) {
        addSeries.bindValue(0, import);
        addSeries.bindValue(1, toQString(series.stack));
        addSeries.bindValue(2, toQString(wordOf(series.kind)));
        addSeries.bindValue(3, static_cast<qlonglong>(series.readings.size()));
        addSeries.bindValue(4, now);
        if (!addSeries.exec()) return failure(addSeries.lastError());
        const qint64 id = addSeries.lastInsertId().toLongLong();
        ids.push_back(id);
        addReading.bindValue(0, id);
        qlonglong number = 0;
        for (const LoggedReading& reading : series.readings) {
            if (!std::isfinite(reading.value)) return refusal(StoreText::tr("A reading is not a number. Nothing was written."));
            addReading.bindValue(1, ++number);
            addReading.bindValue(2, static_cast<qlonglong>(reading.second));
            addReading.bindValue(3, reading.value);
            if (!addReading.exec()) return failure(addReading.lastError());
            if (++done % stepOfProgress != 0) continue;
            if (job.stop.stop_requested()) return refusal(StoreText::tr("Called off. Nothing was written."));
            if (job.progress) job.progress(static_cast<int>(done), static_cast<int>(of));
        }
        for (const auto& [on, day] : byDay(series)) {
            int place = 0;
            for (const QVariant& value : {QVariant{id}, QVariant{toQString(dayText(on))}, QVariant{day.readings}, QVariant{day.low}, QVariant{day.mean}, QVariant{day.high}})
                addDay.bindValue(place++, value);
            if (!addDay.exec()) return failure(addDay.lastError());
        }
    }
    if (job.stop.stop_requested()) return refusal(StoreText::tr("Called off. Nothing was written."));
    for (const bool removing : {true, false}) {
        for (const qint64 id : removing ? job.remove : job.bringBack) {
            QSqlQuery mark{database};
            const QString set = removing ? QStringLiteral("'%1' WHERE deleted_at IS NULL").arg(now) : QStringLiteral("NULL WHERE deleted_at IS NOT NULL");
            if (!mark.exec(QStringLiteral("UPDATE logged_series SET deleted_at = %1 AND id = %2").arg(set).arg(id))) return failure(mark.lastError());
            if (mark.numRowsAffected() != 1) return refusal(StoreText::tr("The readings have meanwhile been changed by another program. Nothing was written."));
        }
    }
    return std::nullopt;
}

std::optional<WriteFailure> HouseholdFile::Private::loggedFollows(const journal::Edit& edit) const
{
    QStringList returned, gone;
    for (const journal::Entry& entry : edit.added)
        if (static_cast<qint64>(entry.id) > 0) returned << QString::number(static_cast<qint64>(entry.id));
    for (const journal::EntryId id : edit.deleted) gone << QString::number(static_cast<qint64>(id));
    const auto mark = [&](const QStringList& entries, const QString& as, const QString& where) -> std::optional<WriteFailure> {
        if (entries.isEmpty()) return std::nullopt;
        QSqlQuery query{connection().database()};
        if (!query.exec(QStringLiteral("UPDATE logged_series SET deleted_at = %1 WHERE %2 AND import_id IN (SELECT import_id FROM entries WHERE id IN (%3))")
                            .arg(as, where, entries.join(QLatin1Char{','}))))
            return failure(query.lastError());
        return std::nullopt;
    };
    if (auto why = mark(returned, QStringLiteral("NULL"), QStringLiteral("deleted_at IS NOT NULL"))) return why;
    return mark(gone, QStringLiteral("'%1'").arg(QDateTime::currentDateTimeUtc().toString(Qt::ISODateWithMs)),
                QStringLiteral("deleted_at IS NULL AND NOT EXISTS (SELECT 1 FROM entries e WHERE e.import_id = logged_series.import_id AND e.deleted_at IS NULL)"));
}

LoggedWritten HouseholdFile::applyWithReadings(const journal::Edit& edit, const LoggedJob& job, const QString& importName, const Guard& guard)
{
    const log::Since since;
    std::vector<qint64> series;
    auto written = d_->onStandingLog([&] { return d_->applyReadingsInOne(edit, job, importName, guard, series); });
    if (std::holds_alternative<WriteFailure>(written)) return {std::move(written), {}};
    std::size_t readings = 0;
    for (const LoggedSeries& added : job.add) readings += added.readings.size();
    log::note(log::What::readingsImported, {{"readings", static_cast<qint64>(readings)}, {"taken-back", static_cast<qint64>(job.remove.size())},
                                            {"brought-back", static_cast<qint64>(job.bringBack.size())}, {"ms", since.milliseconds()}});
    return {std::move(written), std::move(series)};
}

Written HouseholdFile::Private::applyReadingsInOne(const journal::Edit& edit, const LoggedJob& job, const QString& importName, const Guard& guard, std::vector<qint64>& series) const
{
    series.clear();
    return writeInOne(edit, importName, guard, [&]() -> std::optional<WriteFailure> {
        const auto import = connection().value(QStringLiteral("SELECT max(id) FROM imports")); // the one that was noted with the entries
        if (const auto* error = std::get_if<QSqlError>(&import)) return failure(*error);
        return writeLogged(job, std::get<QVariant>(import).toLongLong(), series);
    });
}

std::variant<LoggedDays, WriteFailure> HouseholdFile::loggedDays() const
{
    LoggedDays days;
    if (d_->opened.schema < firstWithLogged) return days; // an older file that is only read has none
    QSqlQuery query{d_->connection().database()};
    query.setForwardOnly(true);
    if (!query.exec(QStringLiteral("SELECT s.stack, d.day, s.kind, sum(d.readings), min(d.low), sum(d.mean * d.readings) / sum(d.readings), max(d.high) "
                                   "FROM logged_days d JOIN logged_series s ON s.id = d.series_id WHERE s.deleted_at IS NULL GROUP BY s.stack, d.day, s.kind")))
        return d_->failure(query.lastError());
    while (query.next()) {
        const auto day = parseDay(query.value(1).toString().toStdString());
        const auto kind = choiceNamed<LoggedKind>(query.value(2).toString().toStdString());
        if (!day || !kind) return refusal(StoreText::tr("A reading cannot be read: its day or kind makes no sense to this release."));
        days[query.value(0).toString().toStdString()].push_back({*day, *kind, query.value(3).toInt(), query.value(4).toDouble(), query.value(5).toDouble(), query.value(6).toDouble()});
    }
    if (query.lastError().isValid()) return d_->failure(query.lastError());
    for (auto& [stack, held] : days) std::ranges::sort(held, {}, [](const LoggedDay& day) { return std::pair{day.day, day.kind}; });
    return days;
}

std::variant<LoggedBefore, WriteFailure> HouseholdFile::loggedBetween(const std::string& stack, Day from, Day to) const
{
    LoggedBefore before;
    if (d_->opened.schema < firstWithLogged) return before;
    const auto seconds = [](Day day) { return static_cast<qlonglong>(std::chrono::duration_cast<std::chrono::seconds>(day.time_since_epoch()).count()); };
    QSqlQuery readings{d_->connection().database()};
    readings.setForwardOnly(true);
    if (!readings.prepare(QStringLiteral("SELECT s.kind, r.second, r.value FROM logged_series s JOIN logged_readings r ON r.series_id = s.id "
                                         "WHERE s.deleted_at IS NULL AND s.stack = ? AND r.second >= ? AND r.second < ?")))
        return d_->failure(readings.lastError());
    readings.addBindValue(toQString(stack));
    readings.addBindValue(seconds(from));
    readings.addBindValue(seconds(to + std::chrono::days{1}));
    if (!readings.exec()) return d_->failure(readings.lastError());
    while (readings.next()) {
        const auto kind = choiceNamed<LoggedKind>(readings.value(0).toString().toStdString());
        if (kind) before.readings[static_cast<std::size_t>(*kind)].push_back({readings.value(1).toLongLong(), readings.value(2).toDouble()});
    }
    if (readings.lastError().isValid()) return d_->failure(readings.lastError());

    QSqlQuery entries{d_->connection().database()};
    entries.setForwardOnly(true);
    if (!entries.prepare(QStringLiteral("SELECT day, id FROM entries WHERE deleted_at IS NULL AND action = 'reading' AND stack = ? AND day BETWEEN ? AND ? "
                                        "AND import_id IN (SELECT import_id FROM logged_series WHERE deleted_at IS NULL)")))
        return d_->failure(entries.lastError());
    entries.addBindValue(toQString(stack));
    entries.addBindValue(toQString(dayText(from)));
    entries.addBindValue(toQString(dayText(to)));
    if (!entries.exec()) return d_->failure(entries.lastError());
    while (entries.next())
        if (const auto day = parseDay(entries.value(0).toString().toStdString())) before.entries.emplace(*day, journal::EntryId{entries.value(1).toLongLong()});
    if (entries.lastError().isValid()) return d_->failure(entries.lastError());
    return before;
}

}
