#include "core/journal/edit.h"

#include <bit>
#include <type_traits>

namespace tierloam::journal {

namespace {

/// FNV-1a over a stream in which every value is told apart from its neighbours: texts carry their length, optionals a mark.
class Digest {
public:
    std::uint64_t value() const { return hash_; }

    void add(std::uint64_t word)
    {
        for (int shift = 0; shift < 64; shift += 8) byte(static_cast<unsigned char>(word >> shift));
    }
    void add(double number) { add(std::bit_cast<std::uint64_t>(number == 0.0 ? 0.0 : number)); }
    void add(int number) { add(static_cast<std::uint64_t>(static_cast<std::int64_t>(number))); }
    void add(bool flag) { byte(flag ? 1 : 0); }
    void add(const std::string& text)
    {
        add(static_cast<std::uint64_t>(text.size()));
        for (const char c : text) byte(static_cast<unsigned char>(c));
    }
    void add(Day day) { add(static_cast<int>(day.time_since_epoch().count())); }
    void add(Share share) { add(share.percent()); }
    void add(const Amount& amount)
    {
        add(amount.value);
        add(amount.unit);
    }
    template <class Dimension>
    void add(Measure<Dimension> measure) { add(measure.base()); }
    template <class Word>
        requires std::is_enum_v<Word>
    void add(Word word) { add(static_cast<int>(word)); }
    template <class Value>
    void add(const std::optional<Value>& value)
    {
        add(value.has_value());
        if (value) add(*value);
    }
    template <class... Values>
    void all(const Values&... values) { (add(values), ...); }

    void operator()(const Setup& a) { all(a.area, a.height, a.trays, a.sump, a.spigot, a.place, a.temp, a.stand, a.key); }
    void operator()(const OwnMaterial& a)
    {
        all(a.name, a.softening, a.moisture, a.nitrogenPercent, a.carbonToNitrogen, a.bulkKgPerM3, a.waterHeldKgPerKg);
        if (a.welcome || a.doubt) all(a.welcome, a.doubt); // where neither is given the digest is that of earlier releases
    }
    void operator()(const Stock& a) { all(a.worms, a.species, a.count); }
    void operator()(const Bed& a) { all(a.bedding, a.material, a.moisture); }
    void operator()(const Feed& a) { all(a.food, a.material, a.side); }
    void operator()(const Cover& a) { all(a.paper, a.material); }
    void operator()(const Water& a) { all(a.poured); }
    void operator()(const Routine& a) { all(a.each, a.of, a.everyDays); }
    void operator()(const Drain& a) { all(a.volume, a.emptied, a.ecMilliSiemensPerCm, a.wormsPutBack, a.spigot); }
    void operator()(const Flush& a) { all(a.poured, a.drained, a.ecMilliSiemensPerCm, a.wormsPutBack); }
    void operator()(const Reading& a)
    {
        all(a.bin, a.air, a.relativeHumidity, a.moisture, a.squeeze, a.ph);
        if (a.sump) add(*a.sump); // where it is not given the digest is that of earlier releases
    }
    void operator()(const Check& a) { all(a.depth, a.bits, a.left, a.worms); }
    void operator()(const Weigh& a) { all(a.worms, a.share); }
    void operator()(const Count& a) { all(a.number, a.volume); }
    void operator()(const TrayWeight& a) { all(a.weight, a.tare); }
    void operator()(const Lid& a) { all(a.on); }
    void operator()(const Harvest& a) { all(a.taken, a.moisture, a.share); }
    void operator()(const Remove& a) { all(a.worms); }
    void operator()(const Move& a) { all(a.worms, a.to); }
    void operator()(const Event& a) { all(a.what, a.until); }
    void operator()(const Rotate&) {}
    void operator()(const Loosen&) {}
    void operator()(const Note&) {}
    void operator()(const Retire&) {}

private:
    void byte(unsigned char value)
    {
        hash_ ^= value;
        hash_ *= 0x100000001b3ULL;
    }
    std::uint64_t hash_ = 0xcbf29ce484222325ULL;
};

}

std::uint64_t digest(std::span<const Entry> entries)
{
    Digest digest;
    for (const Entry& entry : entries) {
        digest.all(entry.date.day, entry.stack, entry.slot, static_cast<int>(entry.action.index()));
        std::visit(digest, entry.action);
    }
    return digest.value();
}

}
