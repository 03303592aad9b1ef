#include "core/reckoning/kept.h"

#include <cstring>
#include <type_traits>

namespace tierloam::reckoning {

namespace {

constexpr std::string_view mark = "tierloam estimates 1\n";

/// FNV-1a over words of eight bytes: finds what a disk or a killed program leaves, not what somebody forges.
std::uint64_t checksum(std::string_view bytes)
{
    std::uint64_t hash = 0xcbf29ce484222325u;
    const auto mix = [&](std::uint64_t word) { hash = (hash ^ word) * 0x100000001b3u; };
    std::size_t at = 0;
    for (; at + 8 <= bytes.size(); at += 8) {
        std::uint64_t word = 0;
        std::memcpy(&word, bytes.data() + at, 8);
        mix(word);
    }
    for (; at < bytes.size(); ++at) mix(static_cast<unsigned char>(bytes[at]));
    return hash ^ bytes.size();
}

template <class Value>
concept Plain = std::is_arithmetic_v<Value> || std::is_enum_v<Value> || std::is_same_v<Value, Day>;

class Out {
public:
    static constexpr bool reading = false;
    explicit Out(std::string& to) : to_{to} {}
    bool good() const { return true; }
    void raw(void* from, std::size_t size) { to_.append(static_cast<const char*>(from), size); }

private:
    std::string& to_;
};

class In {
public:
    static constexpr bool reading = true;
    explicit In(std::string_view from) : from_{from} {}
    bool good() const { return good_; }
    bool atEnd() const { return from_.empty(); }
    std::size_t left() const { return from_.size(); }
    void fail() { good_ = false; }
    void raw(void* to, std::size_t size)
    {
        if (size > from_.size()) {
            good_ = false;
            std::memset(to, 0, size);
            return;
        }
        std::memcpy(to, from_.data(), size);
        from_.remove_prefix(size);
    }

private:
    std::string_view from_;
    bool good_ = true;
};

template <class Archive, Plain Value>
void pass(Archive& archive, Value& value) { archive.raw(&value, sizeof value); }

/// How many there are; of what is read no more than the bytes could hold.
template <class Archive>
std::uint64_t passSize(Archive& archive, std::size_t size)
{
    std::uint64_t many = size;
    archive.raw(&many, sizeof many);
    if constexpr (Archive::reading)
        if (many > archive.left()) {
            archive.fail();
            return 0;
        }
    return many;
}

template <class Archive>
void pass(Archive& archive, std::string& text)
{
    text.resize(passSize(archive, text.size()));
    archive.raw(text.data(), text.size());
}

template <class Archive, class... Values>
void each(Archive& archive, Values&... values);

template <class Archive, class Value>
void pass(Archive& archive, std::optional<Value>& value)
{
    bool is = value.has_value();
    archive.raw(&is, sizeof is);
    if constexpr (Archive::reading) value = is ? std::optional{Value{}} : std::nullopt;
    if (is) each(archive, *value);
}

template <class Archive, class Value>
void pass(Archive& archive, std::vector<Value>& values)
{
    values.resize(passSize(archive, values.size()));
    for (Value& value : values) {
        if (!archive.good()) return;
        each(archive, value);
    }
}

// One list of fields for both ways. Each names every member of its type, so that a new one does not compile before it stands here.

template <class Archive>
void pass(Archive& archive, Band& of)
{
    auto& [p05, p50, p95] = of;
    each(archive, p05, p50, p95);
}

template <class Archive>
void pass(Archive& archive, Amount& of)
{
    auto& [value, unit] = of;
    each(archive, value, unit);
}

template <class Archive>
void pass(Archive& archive, Dates& of)
{
    auto& [p10, p50, p90] = of;
    each(archive, p10, p50, p90);
}

template <class Archive>
void pass(Archive& archive, Strata& of)
{
    auto& [castings, softened, food, bedding] = of;
    each(archive, castings, softened, food, bedding);
}

template <class Archive>
void pass(Archive& archive, TrayEstimate& of)
{
    auto& [slot, tray, batch, age, state, input, castings, unprocessed, slow, depth, ratio, ready, nearly, carbonToNitrogen, moisture, water, worms, cocoons,
           weight, wormsPerArea, air, height, strata, readyOn] = of;
    each(archive, slot, tray, batch, age, state, input, castings, unprocessed, slow, depth, ratio, ready, nearly, carbonToNitrogen, moisture, water, worms,
         cocoons, weight, wormsPerArea, air, height, strata, readyOn);
}

template <class Archive>
void pass(Archive& archive, StackEstimate& of)
{
    auto& [day, colony, worms, adults, processing, ration, temperature, sump, strength, drained, slots] = of;
    each(archive, day, colony, worms, adults, processing, ration, temperature, sump, strength, drained, slots);
}

template <class Archive>
void pass(Archive& archive, Forecast& of)
{
    auto& [days, turn, sumpFull, trayFull, drained, both, turnLikely, colonyLater, feedLow, feedUsual, feedHigh, airLow, ownWarmth, carbon, nitrogen, room] = of;
    each(archive, days, turn, sumpFull, trayFull, drained, both, turnLikely, colonyLater, feedLow, feedUsual, feedHigh, airLow, ownWarmth, carbon, nitrogen, room);
}

template <class Archive>
void pass(Archive& archive, Record& of)
{
    auto& [entry, feed, drain, water, look, gap, usualFeed, drying, shut, sump, spare, height, area, flush, added, dryingSince, awayFrom, awayUntil, squeezed,
           squeeze, waterPerWeek, sumpLook, moistureLook, usual, usualKg] = of;
    each(archive, entry, feed, drain, water, look, gap, usualFeed, drying, shut, sump, spare, height, area, flush, added, dryingSince, awayFrom, awayUntil,
         squeezed, squeeze, waterPerWeek, sumpLook, moistureLook, usual, usualKg);
}

template <class Archive>
void pass(Archive& archive, DrainCheck& of)
{
    auto& [day, litres, expected] = of;
    each(archive, day, litres, expected);
}

template <class Archive>
void pass(Archive& archive, HarvestCheck& of)
{
    auto& [day, batch, taken, expected, lifted, ready] = of;
    each(archive, day, batch, taken, expected, lifted, ready);
}

template <class Archive>
void pass(Archive& archive, TurnNote& of)
{
    auto& [what, batch, from, to, done] = of;
    each(archive, what, batch, from, to, done);
}

template <class Archive>
void pass(Archive& archive, Disagreement& of)
{
    auto& [entry, day, kind, slot, value, expected] = of;
    each(archive, entry, day, kind, slot, value, expected);
}

template <class Archive>
void pass(Archive& archive, UnwrittenGuess& of)
{
    auto& [from, to, feedings, probability, kg, material, days] = of;
    each(archive, from, to, feedings, probability, kg, material, days);
}

template <class Archive>
void pass(Archive& archive, LookChoice& of)
{
    auto& [kind, slot, minutes, cut] = of;
    each(archive, kind, slot, minutes, cut);
}

template <class Archive>
void pass(Archive& archive, BitsRule& of)
{
    auto& [fewer, otherwise] = of;
    each(archive, fewer, otherwise);
}

template <class Archive>
void pass(Archive& archive, StackReckoning& of)
{
    auto& [name, digest, firstBedding, asOf, now, history, forecast, record, turnProbability, turnSince, readySince, flags, disagreements, unwritten, drains,
           harvests, turns, nextLooks, bitsRule, effectiveSize, retired, present, snapshots] = of;
    each(archive, name, digest, firstBedding, asOf, now, history, forecast, record, turnProbability, turnSince, readySince, flags, disagreements, unwritten,
         drains, harvests, turns, nextLooks, bitsRule, effectiveSize, retired);
    static_cast<void>(present); // the members stay out
    static_cast<void>(snapshots);
}

template <class Archive>
void pass(Archive& archive, Reckoning& of)
{
    auto& [asOf, digest, members, stacks] = of;
    each(archive, asOf, digest, members, stacks);
}

template <class Archive>
void pass(Archive& archive, KeptFor& of)
{
    auto& [program, southern] = of;
    each(archive, program, southern);
}

template <class Archive, class... Values>
void each(Archive& archive, Values&... values)
{
    (pass(archive, values), ...);
}

}

std::string keptBytes(const Reckoning& reckoning, const KeptFor& made)
{
    std::string body;
    Out out{body};
    KeptFor key = made;
    Reckoning copy = reckoning; // one list of fields serves both ways, and reading needs them mutable
    each(out, key, copy);
    std::uint64_t sum = checksum(body);
    std::string all{mark};
    all.append(reinterpret_cast<const char*>(&sum), sizeof sum);
    return all + body;
}

std::shared_ptr<const Reckoning> fromKept(std::string_view bytes, const KeptFor& wanted)
{
    std::uint64_t sum = 0;
    if (!bytes.starts_with(mark) || bytes.size() < mark.size() + sizeof sum) return nullptr;
    std::memcpy(&sum, bytes.data() + mark.size(), sizeof sum);
    const std::string_view body = bytes.substr(mark.size() + sizeof sum);
    if (checksum(body) != sum) return nullptr;
    In in{body};
    KeptFor key;
    each(in, key);
    if (!in.good() || !(key == wanted)) return nullptr;
    auto reckoning = std::make_shared<Reckoning>();
    each(in, *reckoning);
    return in.good() && in.atEnd() ? reckoning : nullptr;
}

}
