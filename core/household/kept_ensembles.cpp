#include "core/household/kept_ensembles.h"

#include "core/household/kept_file.h"
#include "core/journal/replay.h"
#include "core/reckoning/reckon.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

namespace tierloam::household {

namespace {

const QString suffix = QStringLiteral(".members");
constexpr int foldersKept = 5;

}

KeptEnsembles::KeptEnsembles(QString folder, const QString& householdPath, std::string program) : root_{std::move(folder)}, program_{std::move(program)}
{
    if (!root_.isEmpty()) folder_ = QDir{root_}.filePath(keptName(householdPath) + suffix);
}

QString KeptEnsembles::fileOf(const std::string& stack) const { return QDir{folder_}.filePath(hex(journal::stackKey(stack))); }

std::shared_ptr<const reckoning::Reckoning> KeptEnsembles::with(std::shared_ptr<const reckoning::Reckoning> estimates, bool southern)
{
    if (folder_.isEmpty() || !estimates) return estimates;
    auto filled = std::make_shared<reckoning::Reckoning>(*estimates);
    for (reckoning::StackReckoning& stack : filled->stacks) {
        const QByteArray bytes = keptIn(fileOf(stack.name));
        if (bytes.isEmpty()) continue;
        stack.snapshots = reckoning::membersFromKept({bytes.constData(), static_cast<std::size_t>(bytes.size())}, {program_, southern}, stack, held_[stack.name]);
    }
    return filled;
}

void KeptEnsembles::write(const reckoning::Reckoning& reckoning, bool southern, const std::stop_token& stop)
{
    if (folder_.isEmpty()) return;
    const bool many = reckoning.stacks.size() > reckoning::manyStacks;
    bool any = false;
    for (const reckoning::StackReckoning& stack : reckoning.stacks) {
        if (many && stop.stop_requested()) return; // the few take some tens of milliseconds
        reckoning::KeptSnapshots& held = held_[stack.name];
        if (held.standFor(stack)) continue;
        reckoning::KeptSnapshots now;
        const std::string bytes = reckoning::keptMembers(stack, {program_, southern}, many, now);
        if (bytes.empty() || !QDir{}.mkpath(folder_)) continue;
        if (keepIn(fileOf(stack.name), bytes, Sync::no)) held = std::move(now); // a torn file is told by its checksum
        any = true;
    }
    if (any) clear(reckoning);
}

/// Files of stacks that are no more, and folders of households that were not opened for long.
void KeptEnsembles::clear(const reckoning::Reckoning& reckoning) const
{
    QStringList wanted;
    for (const reckoning::StackReckoning& stack : reckoning.stacks) wanted << QFileInfo{fileOf(stack.name)}.fileName();
    const QDir own{folder_};
    for (const QString& file : own.entryList(QDir::Files))
        if (!wanted.contains(file)) QFile::remove(own.filePath(file));
    const QFileInfoList all = QDir{root_}.entryInfoList({QLatin1Char{'*'} + suffix}, QDir::Dirs, QDir::Time);
    for (qsizetype i = foldersKept; i < all.size(); ++i) QDir{all[i].filePath()}.removeRecursively();
}

}
