#include "core/exchange/row.h"

#include "core/quantity/number_text.h"
#include "core/store/words.h"

namespace tierloam::exchange {

namespace {

using namespace journal;

/// Joins the pairs that are there.
class Pairs {
public:
    std::string text() && { return std::move(text_); }

    template <class Value>
    void put(std::string_view key, const std::optional<Value>& value)
    {
        if (value) write(key, cell(*value));
    }
    void yesNo(std::string_view key, std::optional<bool> value, std::string_view yes, std::string_view no)
    {
        if (value) write(key, std::string{*value ? yes : no});
    }
    void write(std::string_view key, std::string_view value)
    {
        if (!text_.empty()) text_ += ';';
        text_.append(key).append(1, '=').append(value);
    }

private:
    static std::string cell(double number) { return numberText(number); }
    static std::string cell(int number) { return std::to_string(number); }
    static std::string cell(Share share) { return numberText(share.percent()); }
    static std::string cell(Day day) { return dayText(day); }
    template <class Dimension>
    static std::string cell(Measure<Dimension> measure) { return numberText(measure.base()); }
    template <class Choice>
        requires std::is_enum_v<Choice>
    static std::string cell(Choice choice) { return std::string{store::wordOf(choice)}; }

    std::string text_;
};

std::string keyText(std::uint64_t key)
{
    std::string text(16, '0');
    for (std::size_t i = 16; i-- > 0; key >>= 4) text[i] = "0123456789abcdef"[key & 15];
    return text;
}

struct DetailWriter {
    Pairs& pairs;

    void operator()(const Setup& a)
    {
        pairs.put("area", a.area);
        pairs.put("height", a.height);
        pairs.put("trays", a.trays);
        pairs.put("sump", a.sump);
        pairs.put("spigot", a.spigot);
        pairs.put("place", a.place);
        pairs.put("temp", a.temp);
        pairs.put("stand", a.stand);
        if (a.key) pairs.write("key", keyText(*a.key));
    }
    void operator()(const OwnMaterial& a)
    {
        pairs.put("class", a.softening);
        pairs.put("moisture", a.moisture);
        pairs.put("n", a.nitrogenPercent);
        pairs.put("cn", a.carbonToNitrogen);
        pairs.put("bulk", a.bulkKgPerM3);
        pairs.put("water", a.waterHeldKgPerKg);
        pairs.put("welcome", a.welcome);
        pairs.put("doubt", a.doubt);
    }
    void operator()(const Stock& a) { pairs.put("count", a.count); }
    void operator()(const Bed& a) { pairs.put("moisture", a.moisture); }
    void operator()(const Feed& a) { pairs.put("side", a.side); }
    void operator()(const Routine& a) { pairs.put("every", a.everyDays); }
    void operator()(const Drain& a)
    {
        pairs.yesNo("emptied", a.emptied, "yes", "no");
        pairs.put("ec", a.ecMilliSiemensPerCm);
        pairs.put("worms", a.wormsPutBack);
        pairs.put("spigot", a.spigot);
    }
    void operator()(const Flush& a)
    {
        pairs.put("drained", a.drained);
        pairs.put("ec", a.ecMilliSiemensPerCm);
        pairs.put("worms", a.wormsPutBack);
    }
    void operator()(const Reading& a)
    {
        pairs.put("bin", a.bin);
        pairs.put("air", a.air);
        pairs.put("rh", a.relativeHumidity);
        pairs.put("moisture", a.moisture);
        pairs.put("squeeze", a.squeeze);
        pairs.put("ph", a.ph);
        pairs.put("sump", a.sump);
    }
    void operator()(const Check& a)
    {
        pairs.put("depth", a.depth);
        pairs.put("bits", a.bits);
        pairs.put("left", a.left);
        pairs.put("worms", a.worms);
    }
    void operator()(const Weigh& a) { pairs.put("share", a.share); }
    void operator()(const Count& a) { pairs.put("volume", a.volume); }
    void operator()(const TrayWeight& a) { pairs.put("tare", a.tare); }
    void operator()(const Lid& a) { pairs.yesNo("lid", a.on, "on", "off"); }
    void operator()(const Harvest& a)
    {
        pairs.put("moisture", a.moisture);
        pairs.put("share", a.share);
    }
    void operator()(const Move& a) { pairs.write("to", a.to); }
    void operator()(const Event& a) { pairs.put("until", a.until); }
    void operator()(const Cover&) {}
    void operator()(const Water&) {}
    void operator()(const Rotate&) {}
    void operator()(const Loosen&) {}
    void operator()(const Remove&) {}
    void operator()(const Note&) {}
    void operator()(const Retire&) {}
};

struct AmountReader {
    std::optional<Amount> operator()(const Stock& a) const { return a.worms; }
    std::optional<Amount> operator()(const Bed& a) const { return a.bedding; }
    std::optional<Amount> operator()(const Feed& a) const { return a.food; }
    std::optional<Amount> operator()(const Cover& a) const { return a.paper; }
    std::optional<Amount> operator()(const Water& a) const { return a.poured; }
    std::optional<Amount> operator()(const Routine& a) const { return a.each; }
    std::optional<Amount> operator()(const Drain& a) const { return a.volume; }
    std::optional<Amount> operator()(const Flush& a) const { return a.poured; }
    std::optional<Amount> operator()(const Weigh& a) const { return a.worms; }
    std::optional<Amount> operator()(const Count& a) const { return a.number; }
    std::optional<Amount> operator()(const TrayWeight& a) const { return a.weight; }
    std::optional<Amount> operator()(const Harvest& a) const { return a.taken; }
    std::optional<Amount> operator()(const Remove& a) const { return a.worms; }
    std::optional<Amount> operator()(const Move& a) const { return a.worms; }
    template <class Other>
    std::optional<Amount> operator()(const Other&) const { return std::nullopt; }
};

struct ItemReader {
    std::string operator()(const OwnMaterial& a) const { return a.name; }
    std::string operator()(const Stock& a) const { return a.species; }
    std::string operator()(const Bed& a) const { return a.material; }
    std::string operator()(const Feed& a) const { return a.material; }
    std::string operator()(const Cover& a) const { return a.material; }
    std::string operator()(const Routine& a) const { return std::string{store::wordOf(a.of)}; }
    std::string operator()(const Event& a) const { return a.what; }
    template <class Other>
    std::string operator()(const Other&) const { return {}; }
};

}

std::string detailText(const Action& action)
{
    Pairs pairs;
    std::visit(DetailWriter{pairs}, action);
    return std::move(pairs).text();
}

std::optional<Amount> amountOf(const Action& action) { return std::visit(AmountReader{}, action); }

std::string itemOf(const Action& action) { return std::visit(ItemReader{}, action); }

Row entryToRow(const Entry& entry)
{
    Row row;
    row[Column::date] = dayAndTimeText(entry.date);
    row[Column::stack] = entry.stack;
    row[Column::action] = actionName(entry.action);
    if (entry.slot) row[Column::slot] = std::to_string(*entry.slot);
    if (const auto amount = amountOf(entry.action)) {
        row[Column::amount] = numberText(amount->value);
        row[Column::unit] = nameOf(amount->unit);
    }
    row[Column::item] = itemOf(entry.action);
    row[Column::detail] = detailText(entry.action);
    row[Column::note] = entry.note;
    return row;
}

}
