#include "core/store/entry_row.h"

#include "core/store/text.h"
#include "core/store/words.h"

#include <charconv>
#include <cmath>

namespace tierloam::store {

namespace {

/// Puts the details of one action into its columns.
class DetailsIntoRow {
public:
    explicit DetailsIntoRow(EntryRow& row) : row_{row} {}

    void operator()(const journal::Setup& a)
    {
        put(Column::area, a.area);
        put(Column::height, a.height);
        put(Column::trays, a.trays);
        put(Column::sump, a.sump);
        put(Column::spigot, a.spigot);
        put(Column::place, a.place);
        put(Column::temp, a.temp);
        put(Column::stand, a.stand);
        if (a.key) row_[Column::stackKey] = QStringLiteral("%1").arg(*a.key, 16, 16, QLatin1Char('0'));
    }
    void operator()(const journal::OwnMaterial& a)
    {
        row_[Column::item] = toQString(a.name);
        put(Column::softening, a.softening);
        put(Column::moisture, a.moisture);
        put(Column::nitrogen, a.nitrogenPercent);
        put(Column::carbonToNitrogen, a.carbonToNitrogen);
        put(Column::bulk, a.bulkKgPerM3);
        put(Column::waterHeld, a.waterHeldKgPerKg);
        put(Column::welcome, a.welcome);
        put(Column::doubt, a.doubt);
    }
    void operator()(const journal::Stock& a)
    {
        amount(a.worms);
        row_[Column::item] = toQString(a.species);
        put(Column::count, a.count);
    }
    void operator()(const journal::Bed& a)
    {
        amount(a.bedding);
        row_[Column::item] = toQString(a.material);
        put(Column::moisture, a.moisture);
    }
    void operator()(const journal::Feed& a)
    {
        amount(a.food);
        row_[Column::item] = toQString(a.material);
        put(Column::side, a.side);
    }
    void operator()(const journal::Cover& a)
    {
        if (a.paper) amount(*a.paper);
        row_[Column::item] = toQString(a.material);
    }
    void operator()(const journal::Water& a) { amount(a.poured); }
    void operator()(const journal::Routine& a)
    {
        amount(a.each);
        row_[Column::item] = toQString(wordOf(a.of));
        put(Column::every, a.everyDays);
    }
    void operator()(const journal::Drain& a)
    {
        if (a.volume) amount(*a.volume);
        put(Column::emptied, a.emptied);
        put(Column::ec, a.ecMilliSiemensPerCm);
        put(Column::wormsPutBack, a.wormsPutBack);
        put(Column::spigot, a.spigot);
    }
    void operator()(const journal::Flush& a)
    {
        amount(a.poured);
        put(Column::drained, a.drained);
        put(Column::ec, a.ecMilliSiemensPerCm);
        put(Column::wormsPutBack, a.wormsPutBack);
    }
    void operator()(const journal::Reading& a)
    {
        put(Column::bin, a.bin);
        put(Column::air, a.air);
        put(Column::humidity, a.relativeHumidity);
        put(Column::moisture, a.moisture);
        put(Column::squeeze, a.squeeze);
        put(Column::ph, a.ph);
        put(Column::sump, a.sump);
    }
    void operator()(const journal::Check& a)
    {
        put(Column::depth, a.depth);
        put(Column::bits, a.bits);
        put(Column::left, a.left);
        put(Column::wormsSeen, a.worms);
    }
    void operator()(const journal::Weigh& a)
    {
        amount(a.worms);
        put(Column::share, a.share);
    }
    void operator()(const journal::Count& a)
    {
        amount(a.number);
        put(Column::volume, a.volume);
    }
    void operator()(const journal::TrayWeight& a)
    {
        amount(a.weight);
        put(Column::tare, a.tare);
    }
    void operator()(const journal::Rotate&) {}
    void operator()(const journal::Loosen&) {}
    void operator()(const journal::Lid& a) { put(Column::lid, a.on); }
    void operator()(const journal::Harvest& a)
    {
        amount(a.taken);
        put(Column::moisture, a.moisture);
        put(Column::share, a.share);
    }
    void operator()(const journal::Remove& a) { amount(a.worms); }
    void operator()(const journal::Move& a)
    {
        amount(a.worms);
        row_[Column::moveTo] = toQString(a.to);
    }
    void operator()(const journal::Event& a)
    {
        row_[Column::item] = toQString(a.what);
        if (a.until) row_[Column::until] = toQString(dayText(*a.until));
    }
    void operator()(const journal::Note&) {}
    void operator()(const journal::Retire&) {}

private:
    void amount(const Amount& amount)
    {
        row_[Column::amount] = amount.value;
        row_[Column::unit] = toQString(nameOf(amount.unit));
    }
    template <class D>
    void put(Column column, const std::optional<Measure<D>>& measure) { if (measure) row_[column] = measure->base(); }
    void put(Column column, const std::optional<Share>& share) { if (share) row_[column] = share->percent(); }
    void put(Column column, const std::optional<double>& number) { if (number) row_[column] = *number; }
    void put(Column column, const std::optional<int>& number) { if (number) row_[column] = *number; }
    void put(Column column, const std::optional<bool>& yes) { if (yes) row_[column] = *yes ? 1 : 0; }
    template <class Choice>
        requires std::is_enum_v<Choice>
    void put(Column column, const std::optional<Choice>& choice) { if (choice) row_[column] = toQString(wordOf(*choice)); }

    EntryRow& row_;
};

/// Takes the details out of their columns; the first column that makes no sense is kept as `wrong`.
class DetailsOfRow {
public:
    explicit DetailsOfRow(const EntryRow& row) : row_{row} {}

    std::optional<Column> wrong;

    std::string text(Column column) const { return row_[column].toString().toStdString(); }
    Amount amount()
    {
        const auto given = amountIfAny();
        if (!given) blame(Column::amount);
        return given.value_or(Amount{});
    }
    std::optional<Amount> amountIfAny()
    {
        const auto value = number(Column::amount);
        if (!value) return std::nullopt;
        const auto unit = unitNamed(text(Column::unit));
        if (!unit) blame(Column::unit);
        return Amount{*value, unit.value_or(Unit::g)};
    }
    template <class M>
    std::optional<M> measure(Column column)
    {
        const auto value = number(column);
        return value ? std::optional{M{*value}} : std::nullopt;
    }
    std::optional<Share> share(Column column)
    {
        const auto value = number(column);
        if (!value) return std::nullopt;
        const auto share = Share::fromPercent(*value);
        if (!share) blame(column);
        return share;
    }
    std::optional<double> number(Column column)
    {
        const QVariant& value = row_[column];
        if (value.isNull()) return std::nullopt;
        bool ok = false;
        const double number = value.toDouble(&ok);
        if (!ok || !std::isfinite(number)) blame(column);
        return number;
    }
    std::optional<int> whole(Column column)
    {
        const QVariant& value = row_[column];
        if (value.isNull()) return std::nullopt;
        bool ok = false;
        const int number = value.toInt(&ok);
        if (!ok) blame(column);
        return number;
    }
    std::optional<bool> yes(Column column)
    {
        const auto number = whole(column);
        if (!number) return std::nullopt;
        if (*number != 0 && *number != 1) blame(column);
        return *number != 0;
    }
    template <class Choice>
    std::optional<Choice> choice(Column column)
    {
        if (row_[column].isNull()) return std::nullopt;
        const auto choice = choiceNamed<Choice>(text(column));
        if (!choice) blame(column);
        return choice;
    }
    std::optional<Day> day(Column column)
    {
        if (row_[column].isNull()) return std::nullopt;
        const auto day = parseDay(text(column));
        if (!day) blame(column);
        return day;
    }
    std::optional<std::uint64_t> key(Column column)
    {
        if (row_[column].isNull()) return std::nullopt;
        const std::string hex = text(column);
        std::uint64_t key = 0;
        const auto [end, error] = std::from_chars(hex.data(), hex.data() + hex.size(), key, 16);
        if (error != std::errc{} || end != hex.data() + hex.size()) blame(column);
        return key;
    }
    void blame(Column column)
    {
        if (!wrong) wrong = column;
    }

private:
    const EntryRow& row_;
};

template <class A>
A read(DetailsOfRow& row);

template <> journal::Setup read(DetailsOfRow& r)
{
    return {r.measure<Area>(Column::area), r.measure<Length>(Column::height), r.whole(Column::trays), r.measure<Volume>(Column::sump),
            r.choice<journal::Spigot>(Column::spigot), r.choice<journal::Place>(Column::place), r.measure<Temperature>(Column::temp),
            r.choice<journal::Stand>(Column::stand), r.key(Column::stackKey)};
}
template <> journal::OwnMaterial read(DetailsOfRow& r)
{
    return {r.text(Column::item), r.choice<journal::SofteningClass>(Column::softening), r.share(Column::moisture), r.number(Column::nitrogen),
            r.number(Column::carbonToNitrogen), r.number(Column::bulk), r.number(Column::waterHeld),
            r.choice<journal::Welcome>(Column::welcome), r.choice<journal::Doubt>(Column::doubt)};
}
template <> journal::Stock read(DetailsOfRow& r) { return {r.amount(), r.text(Column::item), r.whole(Column::count)}; }
template <> journal::Bed read(DetailsOfRow& r) { return {r.amount(), r.text(Column::item), r.share(Column::moisture)}; }
template <> journal::Feed read(DetailsOfRow& r) { return {r.amount(), r.text(Column::item), r.choice<journal::Side>(Column::side)}; }
template <> journal::Cover read(DetailsOfRow& r) { return {r.amountIfAny(), r.text(Column::item)}; }
template <> journal::Water read(DetailsOfRow& r) { return {r.amount()}; }
template <> journal::Routine read(DetailsOfRow& r)
{
    const auto of = r.choice<journal::RoutineOf>(Column::item);
    if (!of) r.blame(Column::item);
    return {r.amount(), of.value_or(journal::RoutineOf::water), r.whole(Column::every)};
}
template <> journal::Drain read(DetailsOfRow& r)
{
    return {r.amountIfAny(), r.yes(Column::emptied), r.number(Column::ec), r.whole(Column::wormsPutBack),
            r.choice<journal::Spigot>(Column::spigot)};
}
template <> journal::Flush read(DetailsOfRow& r)
{
    return {r.amount(), r.measure<Volume>(Column::drained), r.number(Column::ec), r.whole(Column::wormsPutBack)};
}
template <> journal::Reading read(DetailsOfRow& r)
{
    return {r.measure<Temperature>(Column::bin), r.measure<Temperature>(Column::air), r.share(Column::humidity), r.share(Column::moisture),
            r.whole(Column::squeeze), r.number(Column::ph), r.measure<Volume>(Column::sump)};
}
template <> journal::Check read(DetailsOfRow& r)
{
    return {r.measure<Length>(Column::depth), r.share(Column::bits), r.share(Column::left), r.choice<journal::WormsSeen>(Column::wormsSeen)};
}
template <> journal::Weigh read(DetailsOfRow& r) { return {r.amount(), r.share(Column::share)}; }
template <> journal::Count read(DetailsOfRow& r) { return {r.amount(), r.measure<Volume>(Column::volume)}; }
template <> journal::TrayWeight read(DetailsOfRow& r) { return {r.amount(), r.measure<Mass>(Column::tare)}; }
template <> journal::Rotate read(DetailsOfRow&) { return {}; }
template <> journal::Loosen read(DetailsOfRow&) { return {}; }
template <> journal::Lid read(DetailsOfRow& r) { return {r.yes(Column::lid)}; }
template <> journal::Harvest read(DetailsOfRow& r) { return {r.amount(), r.share(Column::moisture), r.share(Column::share)}; }
template <> journal::Remove read(DetailsOfRow& r) { return {r.amount()}; }
template <> journal::Move read(DetailsOfRow& r) { return {r.amount(), r.text(Column::moveTo)}; }
template <> journal::Event read(DetailsOfRow& r) { return {r.text(Column::item), r.day(Column::until)}; }
template <> journal::Note read(DetailsOfRow&) { return {}; }
template <> journal::Retire read(DetailsOfRow&) { return {}; }

template <std::size_t... index>
journal::Action readAction(DetailsOfRow& reader, std::size_t which, std::index_sequence<index...>)
{
    using Read = journal::Action (*)(DetailsOfRow&);
    static constexpr Read reads[] = {[](DetailsOfRow& r) -> journal::Action { return read<std::variant_alternative_t<index, journal::Action>>(r); }...};
    return reads[which](reader);
}

}

EntryRow rowOf(const journal::Entry& entry)
{
    EntryRow row;
    row[Column::day] = toQString(dayText(entry.date.day));
    if (entry.date.minuteOfDay) row[Column::minute] = *entry.date.minuteOfDay;
    row[Column::positionInDay] = static_cast<qlonglong>(entry.positionInDay);
    row[Column::stack] = toQString(entry.stack);
    if (entry.slot) row[Column::slot] = *entry.slot;
    row[Column::action] = toQString(journal::actionNames[entry.action.index()]);
    row[Column::item] = QStringLiteral("");
    row[Column::note] = toQString(entry.note);
    std::visit(DetailsIntoRow{row}, entry.action);
    return row;
}

std::variant<journal::Entry, Column> entryOf(const EntryRow& row)
{
    DetailsOfRow reader{row};
    journal::Entry entry;
    if (const auto day = reader.day(Column::day)) entry.date.day = *day;
    else return Column::day;
    entry.date.minuteOfDay = reader.whole(Column::minute);
    entry.positionInDay = row[Column::positionInDay].toLongLong();
    entry.stack = reader.text(Column::stack);
    entry.slot = reader.whole(Column::slot);
    entry.note = reader.text(Column::note);
    const std::string action = reader.text(Column::action);
    std::size_t which = 0;
    while (which < std::size(journal::actionNames) && journal::actionNames[which] != action) ++which;
    if (which == std::size(journal::actionNames)) return Column::action;
    entry.action = readAction(reader, which, std::make_index_sequence<std::variant_size_v<journal::Action>>{});
    if (reader.wrong) return *reader.wrong;
    return entry;
}

std::optional<Column> notFinite(const EntryRow& row)
{
    for (std::size_t i = 0; i < columnCount; ++i) {
        const QVariant& value = row.values[i];
        if (value.typeId() == QMetaType::Double && !std::isfinite(value.toDouble())) return static_cast<Column>(i);
    }
    return std::nullopt;
}

}
