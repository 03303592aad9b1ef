#include "ui/journal/entry_words.h"

#include "core/wording/action_words.h"
#include "ui/common/formats.h"
#include "ui/common/material_names.h"
#include "ui/common/material_words.h"

#include <QCoreApplication>
#include <QStringList>

namespace tierloam::journal_page {

namespace {

struct JournalWords {
    Q_DECLARE_TR_FUNCTIONS(JournalWords)
};

QString words(const std::string& text)
{
    return QString::fromStdString(text);
}

QString percent(const Share& share)
{
    return ui::percentText(share.fraction());
}

QString ofMaterial(const Amount& amount, const std::string& material, std::string_view otherwise)
{
    const std::string_view name = material.empty() ? otherwise : std::string_view{material};
    return JournalWords::tr("%1 %2").arg(ui::amountText(amount), ui::materialText(name));
}

QString sideWords(journal::Side side)
{
    switch (side) {
    case journal::Side::left: return JournalWords::tr("on the left");
    case journal::Side::right: return JournalWords::tr("on the right");
    case journal::Side::front: return JournalWords::tr("at the front");
    case journal::Side::back: return JournalWords::tr("at the back");
    case journal::Side::all: return JournalWords::tr("all over");
    }
    return {};
}

QString placeWords(journal::Place place)
{
    switch (place) {
    case journal::Place::indoors: return JournalWords::tr("indoors");
    case journal::Place::garage: return JournalWords::tr("in a garage");
    case journal::Place::outdoors: return JournalWords::tr("outdoors");
    }
    return {};
}

QString standWords(journal::Stand stand)
{
    switch (stand) {
    case journal::Stand::legs: return JournalWords::tr("on legs");
    case journal::Stand::base: return JournalWords::tr("on a base");
    case journal::Stand::none: return JournalWords::tr("on the floor");
    }
    return {};
}

QString spigotWords(journal::Spigot spigot)
{
    return spigot == journal::Spigot::open ? JournalWords::tr("spigot open") : JournalWords::tr("spigot shut");
}

QString strength(double milliSiemens)
{
    return JournalWords::tr("strength %1 mS/cm").arg(ui::numberText(milliSiemens, 2));
}

QString putBack(int worms)
{
    return JournalWords::tr("%n worm(s) put back", nullptr, worms);
}

/// One overload per action; what is absent stays unsaid.
struct Teller {
    QStringList parts;

    void operator()(const journal::Setup& a)
    {
        if (a.area) parts << JournalWords::tr("tray %1", "its area").arg(ui::areaText(a.area->base()));
        if (a.height) parts << JournalWords::tr("%1 deep").arg(ui::lengthText(a.height->base()));
        if (a.trays) parts << JournalWords::tr("%n tray(s)", nullptr, *a.trays);
        if (a.sump) parts << JournalWords::tr("sump %1").arg(ui::volumeText(a.sump->base()));
        if (a.spigot) parts << spigotWords(*a.spigot);
        if (a.place) parts << placeWords(*a.place);
        if (a.temp) parts << JournalWords::tr("usually %1").arg(ui::temperatureText(a.temp->base()));
        if (a.stand) parts << standWords(*a.stand);
    }
    void operator()(const journal::OwnMaterial& a)
    {
        parts << words(a.name);
        if (a.moisture) parts << JournalWords::tr("moisture %1").arg(percent(*a.moisture));
        if (a.nitrogenPercent) parts << JournalWords::tr("nitrogen %1 %").arg(ui::numberText(*a.nitrogenPercent, 2));
        if (a.carbonToNitrogen) parts << JournalWords::tr("C:N %1").arg(ui::numberText(*a.carbonToNitrogen, 0));
        if (a.bulkKgPerM3) parts << ui::bulkText(*a.bulkKgPerM3);
        if (a.welcome) parts << JournalWords::tr("welcome: %1").arg(ui::welcomeText(*a.welcome));
        if (a.doubt && *a.doubt != journal::Doubt::none) parts << ui::doubtText(*a.doubt);
    }
    void operator()(const journal::Stock& a)
    {
        parts << ofMaterial(a.worms, a.species, journal::defaultSpecies);
        if (a.count) parts << JournalWords::tr("%n counted", nullptr, *a.count);
    }
    void operator()(const journal::Bed& a)
    {
        parts << ofMaterial(a.bedding, a.material, {});
        if (a.moisture) parts << JournalWords::tr("wetted to %1").arg(percent(*a.moisture));
    }
    void operator()(const journal::Feed& a)
    {
        parts << ofMaterial(a.food, a.material, journal::defaultFood);
        if (a.side) parts << sideWords(*a.side);
    }
    void operator()(const journal::Cover& a)
    {
        if (a.paper) parts << ofMaterial(*a.paper, a.material, journal::defaultCover);
        else parts << ui::materialText(a.material.empty() ? journal::defaultCover : std::string_view{a.material}) << JournalWords::tr("amount not noted");
    }
    void operator()(const journal::Water& a) { parts << ui::amountText(a.poured); }
    void operator()(const journal::Routine& a)
    {
        const QString what = a.of == journal::RoutineOf::water ? JournalWords::tr("water") : JournalWords::tr("cover");
        if (a.each.value == 0) {
            parts << JournalWords::tr("%1: no longer").arg(what);
        } else {
            parts << JournalWords::tr("%1: %2, every %n day(s)", nullptr, a.everyDays.value_or(1)).arg(what, ui::amountText(a.each));
        }
    }
    void operator()(const journal::Drain& a)
    {
        if (a.volume) parts << ui::amountText(*a.volume);
        if (a.emptied && !*a.emptied) parts << JournalWords::tr("not emptied");
        if (a.ecMilliSiemensPerCm) parts << strength(*a.ecMilliSiemensPerCm);
        if (a.wormsPutBack) parts << putBack(*a.wormsPutBack);
        if (a.spigot) parts << spigotWords(*a.spigot);
    }
    void operator()(const journal::Flush& a)
    {
        parts << JournalWords::tr("%1 poured through").arg(ui::amountText(a.poured));
        if (a.drained) parts << JournalWords::tr("%1 ran out").arg(ui::volumeText(a.drained->base()));
        if (a.ecMilliSiemensPerCm) parts << strength(*a.ecMilliSiemensPerCm);
        if (a.wormsPutBack) parts << putBack(*a.wormsPutBack);
    }
    void operator()(const journal::Reading& a)
    {
        if (a.bin) parts << JournalWords::tr("bed %1").arg(ui::temperatureText(a.bin->base()));
        if (a.air) parts << JournalWords::tr("air %1").arg(ui::temperatureText(a.air->base()));
        if (a.relativeHumidity) parts << JournalWords::tr("air humidity %1").arg(percent(*a.relativeHumidity));
        if (a.moisture) parts << JournalWords::tr("moisture %1").arg(percent(*a.moisture));
        if (a.squeeze) parts << JournalWords::tr("squeeze %1 of 5").arg(*a.squeeze);
        if (a.ph) parts << JournalWords::tr("pH %1").arg(ui::numberText(*a.ph, 1));
        if (a.sump) parts << JournalWords::tr("%1 in the sump").arg(ui::volumeText(a.sump->base()));
    }
    void operator()(const journal::Check& a)
    {
        if (a.depth) parts << JournalWords::tr("castings %1 deep").arg(ui::lengthText(a.depth->base()));
        if (a.bits) parts << JournalWords::tr("%1 still recognisable").arg(percent(*a.bits));
        if (a.left) parts << JournalWords::tr("%1 of the last feeding left").arg(percent(*a.left));
        if (a.worms) {
            switch (*a.worms) {
            case journal::WormsSeen::few: parts << JournalWords::tr("few worms"); break;
            case journal::WormsSeen::some: parts << JournalWords::tr("some worms"); break;
            case journal::WormsSeen::many: parts << JournalWords::tr("many worms"); break;
            }
        }
    }
    void operator()(const journal::Weigh& a)
    {
        parts << ui::amountText(a.worms);
        if (a.share) parts << JournalWords::tr("in %1 of the bed").arg(percent(*a.share));
    }
    void operator()(const journal::Count& a)
    {
        parts << JournalWords::tr("%1 worms").arg(ui::amountText(a.number));
        if (a.volume) parts << JournalWords::tr("in %1 of bed").arg(ui::volumeText(a.volume->base()));
    }
    void operator()(const journal::TrayWeight& a)
    {
        parts << ui::amountText(a.weight);
        if (a.tare) parts << JournalWords::tr("empty tray %1").arg(ui::massText(a.tare->base()));
    }
    void operator()(const journal::Rotate&) { parts << JournalWords::tr("bottom tray to the top, to dry in the light"); }
    void operator()(const journal::Loosen&) { parts << JournalWords::tr("the drying castings"); }
    void operator()(const journal::Lid& a)
    {
        if (a.on) parts << (*a.on ? JournalWords::tr("put on") : JournalWords::tr("taken off"));
    }
    void operator()(const journal::Harvest& a)
    {
        parts << ui::amountText(a.taken);
        if (a.share) parts << JournalWords::tr("%1 of the tray").arg(percent(*a.share));
        if (a.moisture) parts << JournalWords::tr("moisture %1").arg(percent(*a.moisture));
    }
    void operator()(const journal::Remove& a) { parts << ui::amountText(a.worms); }
    void operator()(const journal::Move& a) { parts << JournalWords::tr("%1 to %2").arg(ui::amountText(a.worms), words(a.to)); }
    void operator()(const journal::Event& a)
    {
        parts << words(a.what);
        if (a.until) parts << JournalWords::tr("until %1").arg(ui::fullDay(*a.until));
    }
    void operator()(const journal::Note&) {}
    void operator()(const journal::Retire&) {}
};

}

QString actionWord(std::size_t alternative)
{
    return wording::actionWord(alternative);
}

QString actionWord(const journal::Action& action)
{
    return actionWord(action.index());
}

QString detailWords(const journal::Entry& entry)
{
    Teller teller;
    std::visit(teller, entry.action);
    return teller.parts.join(JournalWords::tr(", "));
}

}
