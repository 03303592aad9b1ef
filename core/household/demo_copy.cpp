#include "core/household/demo_copy.h"

#include "core/exchange/journal_csv.h"
#include "core/household/text.h"
#include "core/store/household_file.h"

#include <QFileInfo>

#include <algorithm>

namespace tierloam::household {

int demoShift(Day last, Day today)
{
    const int apart = daysBetween(last, today);
    const int weeks = apart >= 0 ? apart / 7 : -((-apart + 6) / 7); // rounded down: nothing lies in the future
    return weeks * 7;
}

std::optional<QString> makeDemoHousehold(std::string_view csv, const QString& path, Day today)
{
    if (QFileInfo::exists(path)) return HouseholdText::tr("%1 is there already. It was left as it is.").arg(path);
    exchange::ReadJournal read = exchange::readJournal(csv, {});
    if (!read.faults.empty()) return exchange::faultText(QStringLiteral("journal.csv"), read.faults.front());
    journal::Entries& entries = read.edit.added;
    Day last{};
    for (const journal::Entry& entry : entries) last = std::max(last, entry.date.day);
    const std::chrono::days shift{entries.empty() ? 0 : demoShift(last, today)};
    for (journal::Entry& entry : entries) {
        entry.date.day += shift;
        if (auto* event = std::get_if<journal::Event>(&entry.action); event && event->until) *event->until += shift;
    }
    auto opened = store::HouseholdFile::open(path, store::HouseholdFile::Mode::createIfAbsent);
    if (const auto* failure = std::get_if<store::OpenFailure>(&opened)) return failure->why;
    auto file = std::move(std::get<std::unique_ptr<store::HouseholdFile>>(opened));
    const store::Written written = file->apply(read.edit);
    if (const auto* failure = std::get_if<store::WriteFailure>(&written)) {
        const QString why = failure->why;
        store::HouseholdFile::discard(std::move(file));
        return why;
    }
    return std::nullopt;
}

}
