#include "core/exchange/logger_plan.h"

#include "core/exchange/text.h"
#include "core/journal/replay.h"

#include <algorithm>
#include <cmath>
#include <unordered_map>

namespace tierloam::exchange {

namespace {

using store::LoggedKind;
using store::LoggedReading;

struct Sum {
    double sum = 0;
    int readings = 0;
    void add(double value)
    {
        sum += value;
        ++readings;
    }
    /// Hundredths, as finely as the instruments of the trade read.
    double mean() const { return std::round(sum / readings * 100.0) / 100.0; }
};

using DaySums = std::map<Day, std::array<Sum, store::loggedKinds>>;

journal::Reading meanOf(const std::array<Sum, store::loggedKinds>& sums)
{
    const auto mean = [&](LoggedKind kind) -> std::optional<double> {
        const Sum& sum = sums[static_cast<std::size_t>(kind)];
        return sum.readings > 0 ? std::optional{sum.mean()} : std::nullopt;
    };
    journal::Reading reading;
    if (const auto bin = mean(LoggedKind::bin)) reading.bin = celsius(*bin);
    if (const auto air = mean(LoggedKind::air)) reading.air = celsius(*air);
    if (const auto moisture = mean(LoggedKind::moisture)) reading.moisture = Share::fromPercent(*moisture);
    if (const auto humidity = mean(LoggedKind::humidity)) reading.relativeHumidity = Share::fromPercent(*humidity);
    return reading;
}

std::string noteOf(const std::array<Sum, store::loggedKinds>& sums)
{
    int most = 0;
    for (const Sum& sum : sums) most = std::max(most, sum.readings);
    return ExchangeText::tr("Mean of what a logger read on this day (%1)").arg(most).toStdString();
}

/// The days on which a stack stands.
struct Span {
    std::optional<Day> from, to;
    bool has(Day day) const { return from && day >= *from && (!to || day < *to); }
};

Span spanOf(const journal::Entries& entries, const std::string& stack)
{
    Span span;
    for (const journal::Entry& entry : entries) {
        if (entry.stack != stack) continue;
        if (!span.from && std::holds_alternative<journal::Setup>(entry.action)) span.from = entry.date.day;
        if (std::holds_alternative<journal::Retire>(entry.action)) span.to = entry.date.day;
    }
    return span;
}

/// The readings of a kind that are there already, each answering for one of the file.
class Held {
public:
    explicit Held(const std::vector<LoggedReading>& readings)
    {
        for (const LoggedReading& reading : readings) ++at_[reading.second].emplace_back(reading.value, 1).second;
    }
    bool take(const LoggedReading& reading)
    {
        const auto found = at_.find(reading.second);
        if (found == at_.end()) return false;
        for (auto& [value, count] : found->second) {
            if (count == 0 || std::abs(value - reading.value) > 1e-6) continue;
            count = 0;
            return true;
        }
        return false;
    }

private:
    std::unordered_map<std::int64_t, std::vector<std::pair<double, int>>> at_;
};

}

ReadingsPlan planReadings(const LoggerRead& read, const std::string& stack, const store::LoggedBefore& before, const journal::Entries& entries)
{
    ReadingsPlan plan;
    const Span span = spanOf(entries, stack);
    DaySums old, now;
    for (std::size_t kind = 0; kind < store::loggedKinds; ++kind) {
        Held held{before.readings[kind]};
        store::LoggedSeries series{stack, static_cast<LoggedKind>(kind), {}};
        for (const LoggedReading& reading : read.readings[kind]) {
            if (!span.has(store::dayOfSecond(reading.second))) {
                ++plan.outside;
            } else if (held.take(reading)) {
                ++plan.there;
            } else {
                now[store::dayOfSecond(reading.second)][kind].add(reading.value);
                series.readings.push_back(reading);
            }
        }
        plan.fresh += series.readings.size();
        if (!series.readings.empty()) plan.add.push_back(std::move(series));
        for (const LoggedReading& reading : before.readings[kind]) old[store::dayOfSecond(reading.second)][kind].add(reading.value);
    }
    std::unordered_map<std::int64_t, const journal::Entry*> byId;
    for (const journal::Entry& entry : entries) byId.emplace(static_cast<std::int64_t>(entry.id), &entry);
    for (const auto& [day, fresh] : now) {
        std::array<Sum, store::loggedKinds> all = fresh;
        if (const auto held = old.find(day); held != old.end())
            for (std::size_t kind = 0; kind < store::loggedKinds; ++kind) {
                all[kind].sum += held->second[kind].sum;
                all[kind].readings += held->second[kind].readings;
            }
        journal::Entry entry;
        const auto earlier = before.entries.find(day);
        const auto found = earlier == before.entries.end() ? byId.end() : byId.find(static_cast<std::int64_t>(earlier->second));
        if (found != byId.end()) {
            const auto* stood = std::get_if<journal::Reading>(&found->second->action);
            if (!stood || *stood != meanOf(old[day])) continue; // changed by hand: what people wrote stays
            entry = *found->second;
        } else if (old.contains(day)) {
            continue; // somebody took its entry out: it does not come back by itself
        }
        entry.date.day = day;
        entry.stack = stack;
        entry.action = meanOf(all);
        entry.note = noteOf(all);
        (found != byId.end() ? plan.edit.replaced : plan.edit.added).push_back(std::move(entry));
        ++plan.days;
    }
    return plan;
}

}
