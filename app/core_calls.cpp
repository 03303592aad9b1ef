#include "app/core_calls.h"

#include "app/opened_file.h"
#include "core/advice/put_off.h"
#include "core/exchange/icalendar.h"
#include "core/exchange/journal_csv.h"
#include "core/exchange/refusal_text.h"
#include "core/exchange/summary.h"
#include "core/exchange/whole_file.h"
#include "core/household/seasons.h"
#include "core/planning/wish_text.h"
#include "core/store/household_file.h"
#include "core/store/setting_names.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <QLocale>

#include <cstdio>

namespace tierloam::app {

namespace {

using store::HouseholdFile;

class Text {
    Q_DECLARE_TR_FUNCTIONS(CoreCalls)
};

void tell(const QString& lines)
{
    const QByteArray bytes = lines.toUtf8();
    std::fwrite(bytes.constData(), 1, static_cast<std::size_t>(bytes.size()), stderr);
    std::fputc('\n', stderr);
}

/// What is to be added: a whole file of rows, or one row.
class Addition {
public:
    static std::optional<Addition> of(const CommandLine& call)
    {
        Addition made;
        if (call.call == Call::record) {
            made.source_ = QStringLiteral("row");
            made.bytes_ = QByteArray::fromStdString(call.row);
            return made;
        }
        made.source_ = call.csv;
        made.isFile_ = true;
        QFile csv{call.csv};
        if (csv.open(QIODevice::ReadOnly)) made.bytes_ = csv.readAll();
        if (!csv.isOpen() || csv.error() != QFileDevice::NoError) {
            complain(Text::tr("%1 cannot be read: %2").arg(call.csv, csv.errorString()));
            return std::nullopt;
        }
        return made;
    }

    exchange::ReadJournal readAgainst(const journal::Entries& existing) const
    {
        const std::string_view bytes{bytes_.constData(), static_cast<std::size_t>(bytes_.size())};
        return isFile_ ? exchange::readJournal(bytes, existing) : exchange::readRecord(bytes, existing);
    }
    void tellFaults(const exchange::ReadJournal& read) const
    {
        for (const exchange::Fault& fault : read.faults) tell(exchange::faultText(source_, fault));
        if (read.foreign && !read.faults.empty() && isFile_)
            complain(Text::tr("%1 is not in the journal's own format, which --import reads. The window reads other tables too (its menu Household, Import a table): it finds out columns, marks and "
                              "encoding, and asks what it cannot know.")
                         .arg(source_));
    }
    QString importName() const { return isFile_ ? QFileInfo{source_}.fileName() : QString{}; }

private:
    QString source_;
    QByteArray bytes_;
    bool isFile_ = false;
};

}

namespace {

/// As the window does for a new household.
void guessSeasons(HouseholdFile& file)
{
    if (!household::liesSouth(QLocale::system().territory())) return;
    if (const auto failure = file.setSetting(QString{store::settingHemisphere}, QString{store::hemisphereSouth})) return complain(failure->why);
    complain(Text::tr("The seasons are those south of the equator, since this machine is set up for there. The window's menu Household, Seasons, turns them."));
}

}

bool print(std::string_view text)
{
    return std::fwrite(text.data(), 1, text.size(), stdout) == text.size() && std::fflush(stdout) == 0;
}

void complain(const QString& why) { tell(QStringLiteral("tierloam: ") + why); }

int addToJournal(const CommandLine& call)
{
    const auto addition = Addition::of(call);
    if (!addition) return exitBadInput;
    const bool isNew = !QFileInfo::exists(call.file);
    if (isNew) { // bad rows must not even for a moment make a file
        const auto read = addition->readAgainst({});
        addition->tellFaults(read);
        if (!read.faults.empty()) return exitBadInput;
    }
    auto opened = openFile(call.file, HouseholdFile::Mode::createIfAbsent);
    if (!opened) return exitFailed;

    exchange::ReadJournal read = addition->readAgainst(opened->entries);
    const auto guard = [&](const journal::Entries& now) -> std::optional<QString> {
        read = addition->readAgainst(now);
        return read.faults.empty() ? std::nullopt : std::optional{Text::tr("another program has changed the journal meanwhile")};
    };
    if (read.faults.empty()) {
        // The rows themselves do not change when the guard reads them again; only what they mean in the journal can.
        const journal::Edit edit = read.edit;
        if (call.call == Call::importJournal)
            if (const auto trouble = opened->file->backUpBeforeImport()) complain(*trouble);
        const store::Written written = opened->file->apply(edit, addition->importName(), guard);
        if (const auto* ids = std::get_if<std::vector<journal::EntryId>>(&written)) {
            const bool single = call.call == Call::record;
            const std::string said = single ? std::to_string(static_cast<std::int64_t>(ids->front())) : "imported " + std::to_string(ids->size()) + " entries";
            const bool printed = print(said + '\n');
            if (isNew) guessSeasons(*opened->file);
            for (const journal::Warning& warning : read.warnings) complain(exchange::warningText(warning, read.effect.after));
            if (const QString moved = exchange::movedText(read.effect); !moved.isEmpty()) complain(moved);
            // A backup that fails is told; what was recorded stands, so the call has done what was asked.
            if (const auto trouble = opened->file->backUpIfDue()) complain(*trouble);
            if (!printed) complain(Text::tr("what was written is kept, but the answer could not be printed"));
            return printed ? exitDone : exitFailed;
        }
        if (read.faults.empty()) {
            complain(std::get<store::WriteFailure>(written).why);
            HouseholdFile::discard(std::move(opened->file));
            return exitFailed;
        }
    }
    addition->tellFaults(read);
    HouseholdFile::discard(std::move(opened->file));
    return exitBadInput;
}

int exportJournal(const CommandLine& call)
{
    if (isItsOwnTarget(call, Text::tr("the journal"))) return exitBadInput;
    const auto opened = openFile(call.file, HouseholdFile::Mode::readOnly);
    if (!opened) return exitFailed;
    if (const auto why = exchange::exportJournal(call.csv, opened->entries)) {
        complain(*why);
        return exitFailed;
    }
    return exitDone;
}

int printSummary(const CommandLine& call)
{
    const auto reckoned = reckonFile(call);
    if (!reckoned) return exitFailed;
    const exchange::SummaryHead head{TIERLOAM_VERSION, reckoned->household.toStdString()};
    if (print(exchange::summaryJson(head, reckoned->reckoning, reckoned->advice))) return exitDone;
    complain(Text::tr("the summary could not be printed"));
    return exitFailed;
}

int writeCalendar(const CommandLine& call)
{
    if (isItsOwnTarget(call, Text::tr("the calendar"))) return exitBadInput;
    const auto reckoned = reckonFile(call);
    if (!reckoned) return exitFailed;
    const auto wishes = planning::withAbsences(planning::wishesFrom(reckoned->yearWishes.toStdString()), reckoned->entries, reckoned->reckoning->asOf);
    const auto plan = planning::planYear(*reckoned->reckoning, wishes, threadsHere());
    const auto advice = advice::postponed(reckoned->advice, advice::putOffFrom(reckoned->putOff.toStdString()), reckoned->reckoning->asOf);
    const auto now = std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now());
    const auto events = exchange::calendarEvents(advice, *reckoned->reckoning, plan ? &*plan : nullptr, journal::replay(reckoned->entries));
    if (const auto why = exchange::writeWholeFile(call.csv, exchange::calendarText({TIERLOAM_VERSION, reckoned->household.toStdString(), now}, events))) {
        complain(*why);
        return exitFailed;
    }
    return exitDone;
}

}
