#include "core/exchange/row_reader.h"

#include "core/exchange/cells.h"
#include "core/exchange/text.h"
#include "core/journal/names.h"

#include <algorithm>
#include <array>

namespace tierloam::exchange {

namespace {

using namespace journal;

constexpr Range percentRange{0, 100};
constexpr Range shareTaken{0, 100, false};
constexpr Range moistureRange{0, 99};       // at 100 there would be no dry matter at all
constexpr Range temperatureRange{-40, 80};
constexpr Range volumeRange{0, 2000};
constexpr Range ecRange{0, 100};
constexpr int mostWorms = 1'000'000;

template <class Quantity>
std::optional<Quantity> as(std::optional<double> value)
{
    return value ? std::optional{Quantity{*value}} : std::nullopt;
}

/// One function per action, named as the action; each reads its cells in the order of the columns.
class ActionReader {
public:
    ActionReader(Cells& cells, const materials::Table& table) : cells_{cells}, table_{table} {}

    Action read(std::size_t action)
    {
        using Reader = Action (ActionReader::*)();
        static constexpr std::array<Reader, std::variant_size_v<Action>> readers{
            &ActionReader::setup, &ActionReader::material, &ActionReader::stock, &ActionReader::bed, &ActionReader::feed, &ActionReader::cover,
            &ActionReader::water, &ActionReader::routine, &ActionReader::drain, &ActionReader::flush, &ActionReader::reading, &ActionReader::check,
            &ActionReader::weigh, &ActionReader::count, &ActionReader::trayWeight, &ActionReader::bare<Rotate>, &ActionReader::bare<Loosen>,
            &ActionReader::lid, &ActionReader::harvest, &ActionReader::remove, &ActionReader::move, &ActionReader::event, &ActionReader::note,
            &ActionReader::bare<Retire>};
        return (this->*readers[action])();
    }

private:
    void noItem() { cells_.nothing(Column::item, ExchangeText::tr("%1 has no item").arg(shown(cells_.text(Column::action)))); }

    std::string materialName(bool required)
    {
        const std::string& name = cells_.text(Column::item);
        if (name.empty() && !required) return name;
        if (name.empty() || !table_.find(name)) cells_.refuse(Column::item, Cells::quoted(table_.nearest(name)));
        return name;
    }

    template <class Bare>
    Action bare()
    {
        cells_.noAmount();
        noItem();
        cells_.keys({});
        return Bare{};
    }

    Action setup()
    {
        cells_.noAmount();
        noItem();
        cells_.keys({"area", "height", "trays", "sump", "spigot", "place", "temp", "stand", "key"});
        Setup a;
        a.area = as<Area>(cells_.decimal("area", {0, 10, false}));
        a.height = as<Length>(cells_.decimal("height", {1, 100}));
        a.trays = cells_.whole("trays", 1, 100);
        a.sump = as<Volume>(cells_.decimal("sump", {0, 2000, false}));
        a.spigot = cells_.choice<Spigot>("spigot");
        a.place = cells_.choice<Place>("place");
        a.temp = as<Temperature>(cells_.decimal("temp", temperatureRange));
        a.stand = cells_.choice<Stand>("stand");
        a.key = cells_.hex("key");
        return a;
    }

    Action material()
    {
        cells_.noAmount();
        OwnMaterial a;
        a.name = cells_.text(Column::item);
        if (a.name.empty() || a.name.front() == ' ' || a.name.back() == ' ')
            cells_.refuse(Column::item, ExchangeText::tr("the name of an own material, without blanks around it"));
        cells_.keys({"class", "moisture", "n", "cn", "bulk", "water", "welcome", "doubt"});
        a.softening = cells_.choice<SofteningClass>("class");
        a.moisture = cells_.percent("moisture", moistureRange);
        a.nitrogenPercent = cells_.decimal("n", {0, 50});
        a.carbonToNitrogen = cells_.decimal("cn", {0, 10000, false});
        a.bulkKgPerM3 = cells_.decimal("bulk", {0, 5000, false});
        a.waterHeldKgPerKg = cells_.decimal("water", {0, 50});
        a.welcome = cells_.choice<Welcome>("welcome");
        a.doubt = cells_.choice<Doubt>("doubt");
        return a;
    }

    Action stock()
    {
        Stock a;
        a.worms = cells_.mass();
        a.species = cells_.text(Column::item);
        if (!a.species.empty() && !materials::speciesNamed(a.species)) {
            QString known;
            for (const materials::Species& species : materials::species()) known += (known.isEmpty() ? QString{} : QStringLiteral(", ")) + toQString(species.name);
            cells_.refuse(Column::item, known);
        }
        cells_.keys({"count"});
        a.count = cells_.whole("count", 1, mostWorms);
        return a;
    }

    Action bed()
    {
        Bed a;
        a.bedding = cells_.mass();
        a.material = materialName(true);
        cells_.keys({"moisture"});
        a.moisture = cells_.percent("moisture", moistureRange);
        return a;
    }

    Action feed()
    {
        Feed a;
        a.food = cells_.massOrVolume();
        a.material = materialName(false);
        cells_.keys({"side"});
        a.side = cells_.choice<Side>("side");
        return a;
    }

    Action cover()
    {
        Cover a;
        if (cells_.hasAmount()) a.paper = cells_.mass();
        a.material = materialName(false);
        cells_.keys({});
        return a;
    }

    Action water()
    {
        Water a{cells_.volume()};
        noItem();
        cells_.keys({});
        return a;
    }

    Action routine()
    {
        Routine a;
        const auto of = store::choiceNamed<RoutineOf>(cells_.text(Column::item));
        a.of = of.value_or(RoutineOf::water);
        // The item says of what the amount is, so it is looked at first; a wrong one is told before a unit that may be right.
        if (!of) cells_.refuse(Column::item, Cells::joined(store::Words<RoutineOf>::all));
        a.each = a.of == RoutineOf::water ? cells_.volume(Zero::allowed) : cells_.mass(Zero::allowed);
        cells_.keys({"every"});
        a.everyDays = cells_.whole("every", 1, 365);
        return a;
    }

    Action drain()
    {
        Drain a;
        const bool measured = cells_.hasAmount();
        if (measured) a.volume = cells_.volume(Zero::allowed);
        noItem();
        cells_.keys({"emptied", "ec", "worms", "spigot"});
        a.emptied = cells_.yesNo("emptied", "yes", "no");
        a.ecMilliSiemensPerCm = cells_.decimal("ec", ecRange);
        a.wormsPutBack = cells_.whole("worms", 0, mostWorms);
        a.spigot = cells_.choice<Spigot>("spigot");
        if (!measured && !a.spigot) cells_.refuse(Column::amount, ExchangeText::tr("a volume, or spigot=open or spigot=shut in detail"));
        return a;
    }

    Action flush()
    {
        Flush a;
        a.poured = cells_.volume(Zero::allowed);
        noItem();
        cells_.keys({"drained", "ec", "worms"});
        a.drained = as<Volume>(cells_.decimal("drained", volumeRange));
        a.ecMilliSiemensPerCm = cells_.decimal("ec", ecRange);
        a.wormsPutBack = cells_.whole("worms", 0, mostWorms);
        return a;
    }

    Action reading()
    {
        cells_.noAmount();
        noItem();
        cells_.keys({"bin", "air", "rh", "moisture", "squeeze", "ph", "sump"});
        Reading a;
        a.bin = as<Temperature>(cells_.decimal("bin", temperatureRange));
        a.air = as<Temperature>(cells_.decimal("air", temperatureRange));
        a.relativeHumidity = cells_.percent("rh", percentRange);
        a.moisture = cells_.percent("moisture", percentRange);
        a.squeeze = cells_.whole("squeeze", 1, 5);
        a.ph = cells_.decimal("ph", {0, 14});
        a.sump = as<Volume>(cells_.decimal("sump", volumeRange));
        needsOne(ExchangeText::tr("at least one of bin, air, rh, moisture, squeeze, ph, sump"));
        return a;
    }

    Action check()
    {
        cells_.noAmount();
        noItem();
        cells_.keys({"depth", "bits", "left", "worms"});
        Check a;
        a.depth = as<Length>(cells_.decimal("depth", {0, 100}));
        a.bits = cells_.percent("bits", percentRange);
        a.left = cells_.percent("left", percentRange);
        a.worms = cells_.choice<WormsSeen>("worms");
        needsOne(ExchangeText::tr("at least one of depth, bits, left, worms"));
        return a;
    }

    Action weigh()
    {
        Weigh a;
        a.worms = cells_.mass(Zero::allowed);
        noItem();
        cells_.keys({"share"});
        a.share = cells_.percent("share", shareTaken);
        return a;
    }

    Action count()
    {
        Count a;
        a.number = cells_.number();
        noItem();
        cells_.keys({"volume"});
        a.volume = as<Volume>(cells_.decimal("volume", {0, 2000, false}));
        return a;
    }

    Action trayWeight()
    {
        TrayWeight a;
        a.weight = cells_.mass();
        noItem();
        cells_.keys({"tare"});
        a.tare = as<Mass>(cells_.decimal("tare", {0, 1000, false}));
        return a;
    }

    Action lid()
    {
        cells_.noAmount();
        noItem();
        cells_.keys({"lid"});
        Lid a{cells_.yesNo("lid", "on", "off")};
        needsOne(ExchangeText::tr("lid=on, lid=off"));
        return a;
    }

    Action harvest()
    {
        Harvest a;
        a.taken = cells_.massOrVolume();
        noItem();
        cells_.keys({"moisture", "share"});
        a.moisture = cells_.percent("moisture", moistureRange);
        a.share = cells_.percent("share", shareTaken);
        return a;
    }

    Action remove()
    {
        Remove a{cells_.mass()};
        noItem();
        cells_.keys({});
        return a;
    }

    Action move()
    {
        Move a;
        a.worms = cells_.mass();
        noItem();
        cells_.keys({"to"});
        a.to = cells_.word("to").value_or(std::string{});
        needsOne(ExchangeText::tr("to= and the name of another stack"));
        return a;
    }

    Action event()
    {
        cells_.noAmount();
        Event a;
        a.what = cells_.text(Column::item);
        if (a.what.empty()) cells_.refuse(Column::item, ExchangeText::tr("a word such as smell, flies, mites, escape, mould, away"));
        cells_.keys({"until"});
        a.until = cells_.date("until");
        const auto day = parseDayAndTime(cells_.text(Column::date));
        if (a.until && day && *a.until < day->day) cells_.refusePair("until", ExchangeText::tr("a day not before the row's own date"));
        return a;
    }

    Action note()
    {
        cells_.noAmount();
        noItem();
        cells_.keys({});
        if (cells_.text(Column::note).empty()) cells_.refuse(Column::note, ExchangeText::tr("a text"));
        return Note{};
    }

    void needsOne(const QString& allowed)
    {
        if (cells_.noPairs()) cells_.refuse(Column::detail, allowed);
    }

    Cells& cells_;
    const materials::Table& table_;
};

/// Control characters, the line break of a note apart.
std::optional<Fault> controlCharacter(const Row& row)
{
    for (std::size_t i = 0; i < columnCount; ++i) {
        std::string cell = row.cells[i];
        if (static_cast<Column>(i) == Column::note) {
            for (std::size_t at = 0; (at = cell.find("\r\n", at)) != std::string::npos;) cell.erase(at, 1);
            std::replace(cell.begin(), cell.end(), '\n', ' ');
        }
        if (hasControlCharacter(cell)) return Fault{0, columnText(static_cast<Column>(i)), shown(row.cells[i]), ExchangeText::tr("text without control characters")};
    }
    return std::nullopt;
}

bool takesSlot(std::string_view action)
{
    constexpr std::array without{"setup", "material", "drain", "flush", "lid", "retire"};
    return std::find(without.begin(), without.end(), action) == without.end();
}

std::optional<int> readSlot(Cells& cells)
{
    constexpr int highest = 1000;
    const std::string& text = cells.text(Column::slot);
    if (text.empty()) return std::nullopt;
    if (!takesSlot(cells.text(Column::action))) {
        cells.nothing(Column::slot, ExchangeText::tr("%1 is of the whole stack").arg(shown(cells.text(Column::action))));
        return std::nullopt;
    }
    int slot = 0;
    for (const char c : text) {
        if (c < '0' || c > '9' || slot > highest) {
            slot = 0;
            break;
        }
        slot = slot * 10 + (c - '0');
    }
    if (slot < 1 || slot > highest) cells.refuse(Column::slot, ExchangeText::tr("a whole number from 1 (bottom), or nothing"));
    return slot;
}

}

std::variant<Entry, Fault> rowToEntry(const Row& row, const materials::Table& table)
{
    if (auto fault = controlCharacter(row)) return std::move(*fault);
    Cells cells{row};
    Entry entry;
    const auto date = parseDayAndTime(row[Column::date]);
    if (!date) cells.refuse(Column::date, ExchangeText::tr("a date from 1900 to 2199, such as 2031-05-01 or 2031-05-01T18:30"));
    else entry.date = *date;
    entry.stack = row[Column::stack];
    const auto action = std::find(std::begin(actionNames), std::end(actionNames), row[Column::action]);
    if (action == std::end(actionNames)) {
        cells.refuse(Column::action, Cells::joined(actionNames));
        return *cells.fault();
    }
    entry.slot = readSlot(cells);
    if (cells.fault()) return *cells.fault();
    entry.action = ActionReader{cells, table}.read(static_cast<std::size_t>(action - std::begin(actionNames)));
    entry.note = row[Column::note];
    if (cells.fault()) return *cells.fault();
    return entry;
}

}
