#include "core/store/household_file.h"

#include <QCoreApplication>
#include <QFile>
#include <QTemporaryDir>

#include <cstdlib>

/// Any bytes as a household file: refused and left as they are, or opened, read and written to. Never anything else.
extern "C" int LLVMFuzzerTestOneInput(const unsigned char* bytes, std::size_t length)
{
    using namespace tierloam;
    using store::HouseholdFile;
    static int count = 0;
    static const QCoreApplication application{count, nullptr};
    static const QTemporaryDir folder{QStringLiteral("/dev/shm/tierloam-fuzz-XXXXXX")};
    const QString path = folder.filePath(QStringLiteral("f.tierloam"));
    for (const char* suffix : {"", "-wal", "-shm", "-journal"}) QFile::remove(path + QLatin1StringView{suffix});
    const QByteArray given{reinterpret_cast<const char*>(bytes), static_cast<qsizetype>(length)};
    {
        QFile file{path};
        if (!file.open(QIODevice::WriteOnly) || file.write(given) != given.size()) std::abort();
    }
    for (const auto mode : {HouseholdFile::Mode::readOnly, HouseholdFile::Mode::mustExist}) {
        auto opened = HouseholdFile::open(path, mode, std::chrono::milliseconds{10});
        if (const auto* failure = std::get_if<store::OpenFailure>(&opened)) {
            if (failure->why.isEmpty()) std::abort();
            QFile file{path};
            if (mode == HouseholdFile::Mode::readOnly && (!file.open(QIODevice::ReadOnly) || file.readAll() != given)) std::abort();
            continue;
        }
        auto& file = *std::get<std::unique_ptr<HouseholdFile>>(opened);
        const auto read = file.entries();
        (void)file.deletedEntries();
        (void)file.settings();
        (void)file.endsOfDays();
        (void)file.loggedDays();
        (void)file.loggedBetween("Scullery", Day{std::chrono::year{2031} / std::chrono::month{5} / std::chrono::day{1}}, Day{std::chrono::year{2031} / std::chrono::month{6} / std::chrono::day{1}});
        if (mode == HouseholdFile::Mode::readOnly) continue;
        journal::Entry entry;
        entry.date.day = Day{std::chrono::year{2031} / std::chrono::month{5} / std::chrono::day{1}};
        entry.stack = "Mill";
        entry.action = journal::Note{};
        entry.note = "fuzz";
        const auto written = file.apply({{entry}, {}, {}});
        if (const auto* failure = std::get_if<store::WriteFailure>(&written); failure && failure->why.isEmpty()) std::abort();
    }
    return 0;
}
