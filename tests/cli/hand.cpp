#include "core/store/household_file.h"
#include "core/store/setting_names.h"

#include <QCoreApplication>

#include <cstdio>
#include <cstring>
#include <string>

/// A hand on a household file for the tests that break things: what the window does, through the same store, in a process that may die.
///     hand FILE edit            replaces the first entry, takes out the second, adds a third, in one transaction; prints "done"
///     hand FILE readings N      imports N readings of a logger, one every five minutes, with the entry of their day; prints "done"
///     hand FILE feed N LOG      adds N entries one by one, writing each id to LOG once it is durable
/// Exit 1 with the reason on stderr when the store says no.
namespace {

using namespace tierloam;

int fail(const QString& why)
{
    std::fprintf(stderr, "%s\n", qPrintable(why));
    return 1;
}

int edit(store::HouseholdFile& file)
{
    const auto read = file.entries();
    if (const auto* failure = std::get_if<store::WriteFailure>(&read)) return fail(failure->why);
    const auto& entries = std::get<journal::Entries>(read);
    journal::Edit edit;
    edit.replaced = {entries.at(1)};
    edit.replaced[0].note = std::string(6000, 'e');
    edit.deleted = {entries.back().id};
    edit.added = {entries.front()};
    edit.added[0].id = journal::EntryId::none;
    edit.added[0].action = journal::Note{};
    edit.added[0].note = "the new row";
    const auto written = file.apply(edit);
    if (const auto* failure = std::get_if<store::WriteFailure>(&written)) return fail(failure->why);
    std::printf("done\n");
    return std::fflush(stdout) == 0 ? 0 : 1;
}

int readings(store::HouseholdFile& file, int count)
{
    const auto read = file.entries();
    if (const auto* failure = std::get_if<store::WriteFailure>(&read)) return fail(failure->why);
    const Day day{std::chrono::year{2031} / std::chrono::month{5} / std::chrono::day{1}};
    store::LoggedJob job;
    job.add.push_back({std::get<journal::Entries>(read).back().stack, store::LoggedKind::bin, {}});
    for (int i = 0; i < count; ++i)
        job.add.front().readings.push_back({std::chrono::duration_cast<std::chrono::seconds>(day.time_since_epoch()).count() + 300LL * i, 20.0 + i % 7 * 0.25});
    journal::Entry entry;
    entry.date.day = day;
    entry.stack = job.add.front().stack;
    entry.action = journal::Reading{celsius(20.75), {}, {}, {}, {}, {}};
    const auto both = file.applyWithReadings({{entry}, {}, {}}, job, QStringLiteral("logger.csv"));
    if (const auto* failure = std::get_if<store::WriteFailure>(&both.written)) return fail(failure->why);
    std::printf("done\n");
    return std::fflush(stdout) == 0 ? 0 : 1;
}

int feed(store::HouseholdFile& file, int count, const char* log)
{
    std::FILE* told = std::fopen(log, "a");
    if (!told) return fail(QStringLiteral("no log"));
    for (int i = 0; i < count; ++i) {
        journal::Entry entry;
        entry.date.day = Day{std::chrono::year{2031} / std::chrono::month{5} / std::chrono::day{1}};
        entry.stack = "Mill";
        entry.action = journal::Note{};
        entry.note = std::string(static_cast<std::size_t>(i % 3000), 'n');
        const auto written = file.apply({{entry}, {}, {}});
        if (const auto* failure = std::get_if<store::WriteFailure>(&written)) return fail(failure->why);
        std::fprintf(told, "%lld\n", static_cast<long long>(std::get<std::vector<journal::EntryId>>(written).front()));
        std::fflush(told);
        if (const auto trouble = file.backUpIfDue()) std::fprintf(stderr, "%s\n", qPrintable(*trouble));
        if (i % 40 == 39) (void)file.backUpBeforeImport();
    }
    std::fclose(told);
    return 0;
}

}

int main(int argc, char** argv)
{
    const QCoreApplication application{argc, argv};
    if (argc < 3) return 2;
    auto opened = store::HouseholdFile::open(QString::fromUtf8(argv[1]), store::HouseholdFile::Mode::createIfAbsent);
    if (const auto* failure = std::get_if<store::OpenFailure>(&opened)) return fail(failure->why);
    auto& file = *std::get<std::unique_ptr<store::HouseholdFile>>(opened);
    if (std::strcmp(argv[2], "edit") == 0) return edit(file);
    if (std::strcmp(argv[2], "readings") == 0 && argc == 4) return readings(file, std::stoi(argv[3]));
    if (std::strcmp(argv[2], "feed") == 0 && argc == 5) return feed(file, std::stoi(argv[3]), argv[4]);
    return 2;
}
