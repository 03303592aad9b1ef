#include "core/advice/put_off.h"

#include "core/quantity/day_text.h"

#include <algorithm>

namespace tierloam::advice {

namespace {

constexpr std::string_view ofLook = "/look";
constexpr std::string_view asDone = "/done";
constexpr int doneKept = 90;           ///< days: as far back as the diary of advice goes

bool isOf(const PutOff& each, const Advice& advice) { return !each.done && each.code == advice.code && each.look == advice.look.has_value() && each.stack == advice.stack; }

std::optional<Code> codeNamed(std::string_view name)
{
    for (int i = 0; i < codeCount; ++i)
        if (codeName(Code{i}) == name) return Code{i};
    return std::nullopt;
}

std::string_view word(std::string_view& line)
{
    const std::size_t end = std::min(line.find(' '), line.size());
    const std::string_view first = line.substr(0, end);
    line.remove_prefix(std::min(end + 1, line.size()));
    return first;
}

}

std::string putOffText(const std::vector<PutOff>& all)
{
    std::string text;
    for (const PutOff& each : all) text += dayText(each.until) + ' ' + std::string{codeName(each.code)} + std::string{each.done ? asDone : each.look ? ofLook : ""} + ' ' + each.stack + '\n';
    return text;
}

std::vector<PutOff> putOffFrom(std::string_view text)
{
    std::vector<PutOff> all;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find('\n'), text.size());
        std::string_view line = text.substr(0, end);
        text.remove_prefix(std::min(end + 1, text.size()));
        const auto until = parseDay(word(line));
        std::string_view name = word(line);
        const bool look = name.ends_with(ofLook);
        if (look) name.remove_suffix(ofLook.size());
        const bool done = name.ends_with(asDone);
        if (done) name.remove_suffix(asDone.size());
        const auto code = codeNamed(name);
        if (until && code && !line.empty()) all.push_back({std::string{line}, *code, *until, look, done});
    }
    return all;
}

std::vector<PutOff> withPutOff(std::vector<PutOff> all, const Advice& advice, Day until, Day today)
{
    std::erase_if(all, [&](const PutOff& each) { return !each.done && (each.until <= today || isOf(each, advice)); });
    if (until > today) all.push_back({advice.stack, advice.code, until, advice.look.has_value(), false});
    return all;
}

std::vector<PutOff> withDone(std::vector<PutOff> all, const Advice& advice, Day today)
{
    std::erase_if(all, [&](const PutOff& each) { return each.done && daysBetween(each.until, today) > doneKept; });
    all.push_back({advice.stack, advice.code, today, false, true});
    return all;
}

std::vector<PutOff> withoutPutOffs(std::vector<PutOff> all)
{
    std::erase_if(all, [](const PutOff& each) { return !each.done; });
    return all;
}

bool isNotedDone(const std::vector<PutOff>& all, const Advice& advice, Day day)
{
    return std::any_of(all.begin(), all.end(), [&](const PutOff& each) { return each.done && each.until == day && each.code == advice.code && each.stack == advice.stack; });
}

bool isPutOff(const std::vector<PutOff>& all, const Advice& advice, Day today)
{
    if (advice.severity == Severity::urgent) return false;
    return std::any_of(all.begin(), all.end(), [&](const PutOff& each) { return isOf(each, advice) && today < each.until; });
}

std::vector<Advice> postponed(std::vector<Advice> all, const std::vector<PutOff>& putOff, Day today)
{
    for (Advice& advice : all)
        for (const PutOff& each : putOff)
            if (isOf(each, advice) && isPutOff({each}, advice, today)) advice.on = std::max(advice.on, each.until);
    return all;
}

int usualDelay(Code code)
{
    switch (code) {
    case Code::feedDue:
    case Code::hungry:
    case Code::tooDry:
    case Code::tooWet:
    case Code::sumpFull:
    case Code::heat:
    case Code::cold:
    case Code::dryingDone:
    case Code::dryingLong: return 2;
    default: return 7;
    }
}

}
