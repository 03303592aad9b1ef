#include "core/store/household_file_private.h"
#include "core/store/text.h"

#include <QDateTime>
#include <QSqlQuery>

/// Pictures of entries.
namespace tierloam::store {

namespace {

QString now() { return QDateTime::currentDateTimeUtc().toString(Qt::ISODateWithMs); }

}

std::variant<std::vector<Photo>, WriteFailure> HouseholdFile::photosOf(journal::EntryId entry) const
{
    QSqlQuery query{d_->connection().database()};
    query.setForwardOnly(true);
    if (d_->opened.schema < 2) return std::vector<Photo>{}; // an older file that is only read has no pictures
    if (!query.exec(QStringLiteral("SELECT id, media_type, width_px, height_px, caption, bytes FROM photos WHERE deleted_at IS NULL AND entry_id = %1 ORDER BY id")
                        .arg(static_cast<qint64>(entry))))
        return d_->failure(query.lastError());
    std::vector<Photo> photos;
    while (query.next())
        photos.push_back({query.value(0).toLongLong(), entry, query.value(1).toString(), query.value(2).toInt(), query.value(3).toInt(), query.value(4).toString(),
                          query.value(5).toByteArray()});
    if (query.lastError().isValid()) return d_->failure(query.lastError());
    return photos;
}

std::variant<qint64, WriteFailure> HouseholdFile::changePhoto(const PhotoJob& job)
{
    return d_->onStandingLog([&] { return d_->changePhotoInOne(job); });
}

std::variant<qint64, WriteFailure> HouseholdFile::Private::changePhotoInOne(const PhotoJob& job) const
{
    if (auto why = mayNotWrite()) return *why;
    const Transaction transaction{connection()};
    if (const auto error = transaction.begin()) return failure(*error);
    qint64 id = job.photo.id;
    {
        QSqlQuery query{connection().database()};
        if (job.what == PhotoJob::What::add) {
            const auto entry = readEntry(connection(), job.photo.entry);
            if (const auto* trouble = std::get_if<RowTrouble>(&entry)) return failure(*trouble);
            if (!std::get<std::optional<journal::Entry>>(entry)) {
                WriteFailure refusal;
                refusal.refused = true;
                refusal.why = StoreText::tr("The entry of this picture is not there any more. Nothing was written.");
                return refusal;
            }
            if (!query.prepare(QStringLiteral("INSERT INTO photos (entry_id, media_type, width_px, height_px, caption, bytes, created_at) VALUES (?, ?, ?, ?, ?, ?, ?)")))
                return failure(query.lastError());
            query.addBindValue(static_cast<qint64>(job.photo.entry));
            query.addBindValue(job.photo.mediaType);
            query.addBindValue(job.photo.width);
            query.addBindValue(job.photo.height);
            query.addBindValue(job.photo.caption.isNull() ? QStringLiteral("") : job.photo.caption);
            query.addBindValue(job.photo.bytes);
            query.addBindValue(now());
            if (!query.exec()) return failure(query.lastError());
            id = query.lastInsertId().toLongLong();
        } else {
            const bool removing = job.what == PhotoJob::What::remove;
            const QString set = removing ? QStringLiteral("'%1' WHERE deleted_at IS NULL").arg(now()) : QStringLiteral("NULL WHERE deleted_at IS NOT NULL");
            if (!query.exec(QStringLiteral("UPDATE photos SET deleted_at = %1 AND id = %2").arg(set).arg(id))) return failure(query.lastError());
            if (query.numRowsAffected() != 1) {
                WriteFailure refusal;
                refusal.refused = true;
                refusal.why = StoreText::tr("The picture has meanwhile been changed or deleted. Nothing was written.");
                return refusal;
            }
        }
    }
    if (auto why = commit(transaction)) return *why;
    return id;
}

}
