#include "ui/forms/form_kind.h"

#include <QCoreApplication>

namespace tierloam::forms {

namespace {

struct FormKinds {
    Q_DECLARE_TR_FUNCTIONS(FormKinds)
};

}

QString formName(FormKind kind)
{
    switch (kind) {
    case FormKind::feed: return FormKinds::tr("Feed");
    case FormKind::cover: return FormKinds::tr("Cover");
    case FormKind::water: return FormKinds::tr("Water");
    case FormKind::routine: return FormKinds::tr("Unwritten routine");
    case FormKind::drain: return FormKinds::tr("Drain");
    case FormKind::flush: return FormKinds::tr("Flush");
    case FormKind::reading: return FormKinds::tr("Reading");
    case FormKind::check: return FormKinds::tr("Check a tray");
    case FormKind::weigh: return FormKinds::tr("Weigh worms");
    case FormKind::count: return FormKinds::tr("Count worms");
    case FormKind::trayWeight: return FormKinds::tr("Weigh a tray");
    case FormKind::rotate: return FormKinds::tr("Lift the bottom tray");
    case FormKind::loosen: return FormKinds::tr("Loosen the castings");
    case FormKind::lid: return FormKinds::tr("Lid");
    case FormKind::harvest: return FormKinds::tr("Harvest");
    case FormKind::addTray: return FormKinds::tr("Add a tray");
    case FormKind::bedding: return FormKinds::tr("Add bedding");
    case FormKind::stock: return FormKinds::tr("Put worms in");
    case FormKind::remove: return FormKinds::tr("Take worms out");
    case FormKind::move: return FormKinds::tr("Move worms");
    case FormKind::event: return FormKinds::tr("Something happened");
    case FormKind::note: return FormKinds::tr("Note");
    case FormKind::retire: return FormKinds::tr("Retire the stack");
    case FormKind::setup: return FormKinds::tr("Change the stack");
    case FormKind::material: return FormKinds::tr("Own material");
    }
    return {};
}

QString formDeed(FormKind kind)
{
    switch (kind) {
    case FormKind::feed: return FormKinds::tr("feeding");
    case FormKind::cover: return FormKinds::tr("cover");
    case FormKind::water: return FormKinds::tr("watering");
    case FormKind::routine: return FormKinds::tr("routine");
    case FormKind::drain: return FormKinds::tr("drainage");
    case FormKind::flush: return FormKinds::tr("flush");
    case FormKind::reading: return FormKinds::tr("reading");
    case FormKind::check: return FormKinds::tr("look into a tray");
    case FormKind::weigh: return FormKinds::tr("weighing of worms");
    case FormKind::count: return FormKinds::tr("count of worms");
    case FormKind::trayWeight: return FormKinds::tr("weight of a tray");
    case FormKind::rotate: return FormKinds::tr("lift of the bottom tray");
    case FormKind::loosen: return FormKinds::tr("loosening");
    case FormKind::lid: return FormKinds::tr("lid");
    case FormKind::harvest: return FormKinds::tr("harvest");
    case FormKind::addTray: return FormKinds::tr("new tray");
    case FormKind::bedding: return FormKinds::tr("bedding");
    case FormKind::stock: return FormKinds::tr("worms put in");
    case FormKind::remove: return FormKinds::tr("worms taken out");
    case FormKind::move: return FormKinds::tr("worms moved");
    case FormKind::event: return FormKinds::tr("event");
    case FormKind::note: return FormKinds::tr("note");
    case FormKind::retire: return FormKinds::tr("end of the stack");
    case FormKind::setup: return FormKinds::tr("change of the stack");
    case FormKind::material: return FormKinds::tr("own material");
    }
    return {};
}

FormKind kindOf(const journal::Entry& entry)
{
    static constexpr FormKind byAction[] = {FormKind::setup, FormKind::material, FormKind::stock, FormKind::bedding, FormKind::feed,
                                            FormKind::cover, FormKind::water, FormKind::routine, FormKind::drain, FormKind::flush,
                                            FormKind::reading, FormKind::check, FormKind::weigh, FormKind::count, FormKind::trayWeight,
                                            FormKind::rotate, FormKind::loosen, FormKind::lid, FormKind::harvest, FormKind::remove,
                                            FormKind::move, FormKind::event, FormKind::note, FormKind::retire};
    static_assert(std::size(byAction) == std::variant_size_v<journal::Action>);
    const FormKind kind = byAction[entry.action.index()];
    return kind == FormKind::bedding && !entry.slot ? FormKind::addTray : kind;
}

QList<FormKind> kindsForTray(const journal::Standing& standing, int slot)
{
    if (standing.retired || !standing.has(slot)) return {};
    const bool drying = standing.dryingSlot() == slot;
    QList<FormKind> kinds;
    if (drying) kinds = {FormKind::harvest, FormKind::loosen, FormKind::lid, FormKind::check, FormKind::trayWeight};
    else kinds = {FormKind::feed, FormKind::cover, FormKind::water, FormKind::check, FormKind::reading, FormKind::trayWeight};
    if (slot == 1 && standing.trays() > 1) kinds.append(FormKind::rotate);
    if (!drying) kinds.append({FormKind::harvest, FormKind::bedding});
    kinds.append({FormKind::weigh, FormKind::count});
    if (!drying) kinds.append(FormKind::stock);
    kinds.append({FormKind::remove, FormKind::event, FormKind::note});
    return kinds;
}

QList<FormKind> kindsForSump(const journal::Standing& standing)
{
    if (standing.retired) return {};
    if (standing.trays() == 0) return {FormKind::drain};
    return {FormKind::drain, FormKind::flush};
}

QList<FormKind> kindsForStack(const journal::Standing& standing, int otherStacks)
{
    if (standing.retired) return {};
    QList<FormKind> kinds;
    const bool fed = standing.feedSlot().has_value();
    if (fed) kinds.append({FormKind::feed, FormKind::cover, FormKind::water});
    kinds.append(FormKind::drain);
    if (standing.trays() > 0) kinds.append(FormKind::flush);
    if (standing.trays() > 1) kinds.append(FormKind::rotate);
    if (standing.drying) kinds.append(FormKind::loosen);
    if (standing.trays() > 0) kinds.append(FormKind::harvest);
    if (standing.spare() > 0) kinds.append(FormKind::addTray);
    if (standing.trays() > 0) kinds.append({FormKind::bedding, FormKind::check, FormKind::reading, FormKind::weigh, FormKind::count, FormKind::trayWeight});
    kinds.append(FormKind::lid);
    if (fed) kinds.append({FormKind::stock, FormKind::routine});
    if (standing.trays() > 0) kinds.append(FormKind::remove);
    if (standing.trays() > 0 && otherStacks > 0) kinds.append(FormKind::move);
    kinds.append({FormKind::event, FormKind::note, FormKind::setup, FormKind::retire});
    return kinds;
}

}
