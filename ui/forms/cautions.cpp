#include "ui/forms/cautions.h"

#include "ui/common/formats.h"
#include "ui/common/material_names.h"
#include "ui/common/material_words.h"
#include "ui/common/source_words.h"

#include <QCoreApplication>

namespace tierloam::forms {

namespace {

struct Cautions {
    Q_DECLARE_TR_FUNCTIONS(Cautions)
};

/// Our own words in a source are translated.
QString sourced(const char* source) { return ui::sourceWords(std::string_view{source}); }

Caution leachate()
{
    return {CautionTopic::leachate,
            Cautions::tr("Leachate: not on leaves that are eaten raw, and never to drink. Wash your hands afterwards."),
            sourced("UC Master Gardeners of Napa County; NC State Extension (Sherman)"), false,
            Cautions::tr("Leachate: never to drink, not on leaves eaten raw.")};
}

Caution wormsInSump()
{
    return {CautionTopic::wormsInSump, Cautions::tr("Worms in the sump are normal: put them back into the top tray."),
            sourced("common practice, no source"), true};
}

QString trayName(int tray)
{
    return tray > 0 ? Cautions::tr("Tray %1").arg(tray) : Cautions::tr("The tray");
}

Caution lifting(const CautionFacts& facts)
{
    const QString how = Cautions::tr("Lift it close to the body, knees bent, without a twist; if that is too heavy, in parts or with someone.");
    QString text, brief;
    if (facts.weight) {
        // One helper for every range of the program: the same digits as on the shelf.
        const reckoning::Band kg{facts.weight->low, facts.weight->middle, facts.weight->high};
        text = Cautions::tr("%1 weighs about %2.").arg(trayName(facts.tray), ui::massBand(kg)) + QLatin1Char(' ') + (facts.liftWords.isEmpty() ? QString{} : facts.liftWords + QLatin1Char(' ')) + how;
        brief = Cautions::tr("%1 weighs about %2: lift with knees bent, or in parts.").arg(trayName(facts.tray), ui::massBand(kg));
    } else {
        text = Cautions::tr("A full tray is heavy.") + QLatin1Char(' ') + how;
        brief = Cautions::tr("A full tray is heavy: lift with knees bent, or in parts.");
    }
    return {CautionTopic::lifting, text, sourced("Waters et al. 1993 (NIOSH lifting equation); the tray's weight: this program's estimate"), false, brief};
}

Caution dustAndMould()
{
    return {CautionTopic::dustAndMould,
            Cautions::tr("Dust of castings and compost can carry moulds and Legionella: keep it moist, your face away, wear a mask and gloves, wash your hands; cover wounds, keep tetanus vaccination up to date. With asthma or weak immunity, let someone else do it; what your doctor or health service says comes first."),
            sourced("CDC; National Aspergillosis Centre UK (moulds); Queensland WorkSafe and New Zealand health pages (Legionella); tetanus: memory"), false,
            Cautions::tr("Dust can carry moulds and Legionella: keep it moist, mask and gloves on, tetanus vaccination up to date; not with asthma or weak immunity.")};
}

Caution wounds()
{
    return {CautionTopic::wounds,
            Cautions::tr("Soil and bedding in a wound can bring tetanus: cover wounds, wear gloves, wash your hands, keep the vaccination up to date; what your doctor or health service says comes first."),
            sourced("tetanus: memory"), false,
            Cautions::tr("Cover wounds, wear gloves; tetanus vaccination up to date.")};
}

Caution wormsInBottomTray()
{
    return {CautionTopic::wormsInBottomTray, Cautions::tr("Worms left in the bottom tray are normal: they go down in the light."),
            sourced("common practice, no source"), true};
}

Caution cocoonsLeave()
{
    return {CautionTopic::cocoonsLeave,
            Cautions::tr("It is normal that cocoons and some young worms leave with the castings; castings without any worm cannot be promised."),
            sourced("common practice, no source"), true};
}

Caution manure()
{
    return {CautionTopic::manure,
            Cautions::tr("Manure: only aged, not of animals wormed lately: what kills their worms kills yours. Wear gloves, cover wounds, tetanus vaccination up to date, wash your hands; never cat or dog waste; in pregnancy or with weak immunity keep away from it."),
            sourced("dewormers: common practice, no source; cat and dog waste: Dubey et al. 2011, J. Parasitol. 97:751; tetanus and pregnancy: memory"), false,
            Cautions::tr("Manure: only aged, of animals not wormed lately; gloves, tetanus vaccination up to date; never cat or dog waste, not in pregnancy.")};
}

Caution heater()
{
    return {CautionTopic::heater,
            Cautions::tr("Against cold: wrap it or bring it in first. A heater only if it is rated for the place and away from water; the local electrical code and a licensed electrician come first."),
            sourced("common practice, no source; local code rules")};
}

Caution doubtful(const materials::Material& material)
{
    const QString name = ui::materialText(material.name);
    const QString told = material.welcome == materials::Welcome::no ? Cautions::tr("«%1» is best left out. It is recorded all the same.")
                                                                     : Cautions::tr("«%1» only a little at a time.");
    const QString why = ui::doubtText(material.doubt);
    const QString source = material.own && material.source.empty() ? Cautions::tr("the household's own material")
                           : material.own                         ? QString::fromStdString(material.source)
                                                                  : ui::sourceWords(std::string_view{material.source});
    return {CautionTopic::doubtfulMaterial, why.isEmpty() ? told.arg(name) : told.arg(name) + QLatin1Char(' ') + why, source, false, told.arg(name)};
}

Caution release()
{
    return {CautionTopic::giving,
            Cautions::tr("Give worms to other bins only. Never release them into woods, fields or water; keep to local rules on species."),
            sourced("Minnesota Department of Natural Resources")};
}

Caution remedy()
{
    return {CautionTopic::remedy,
            Cautions::tr("No pesticide or ant bait near worms or food. Against a sour bed calcium carbonate only, never slaked lime."),
            sourced("memory")};
}

Caution health()
{
    return {CautionTopic::dustAndMould,
         Cautions::tr("Wash your hands after each work, keep tools out of the kitchen sink, cover cuts, keep tetanus vaccination up to date. Composts can carry moulds and Legionella. With asthma or weak immunity, or when pregnant, let someone else do the dusty work; see a doctor if you fall ill after it."),
         sourced("CDC; National Aspergillosis Centre UK; Queensland WorkSafe; tetanus and pregnancy: memory")};
}

bool isLift(FormKind kind)
{
    return kind == FormKind::rotate || kind == FormKind::harvest || kind == FormKind::trayWeight;
}

bool isPestOrSour(const QString& word)
{
    static const QStringList words{QStringLiteral("flies"), QStringLiteral("mites"), QStringLiteral("ants"), QStringLiteral("sour bed"), QStringLiteral("smell")};
    return words.contains(word, Qt::CaseInsensitive);
}

}

Caution manureCaution() { return manure(); }
Caution leachateCaution() { return leachate(); }
QString sumpCautionsBrief() { return leachate().brief + QLatin1Char(' ') + wormsInSump().text; }
Caution liftingCaution(const CautionFacts& facts) { return lifting(facts); }
Caution dustCaution() { return dustAndMould(); }
Caution heaterCaution() { return heater(); }
Caution remedyCaution() { return remedy(); }
Caution healthCaution() { return health(); }

bool isManure(const materials::Material& material)
{
    if (material.doubt == materials::Doubt::dewormer || material.doubt == materials::Doubt::droppings) return true; // own ones have names of any language
    const QString name = QString::fromStdString(material.name);
    return name.contains(QStringLiteral("manure"), Qt::CaseInsensitive) || name.contains(QStringLiteral("droppings"), Qt::CaseInsensitive);
}

QList<Caution> cautionsFor(const CautionFacts& facts)
{
    QList<Caution> list;
    const FormKind kind = facts.kind;
    if (kind == FormKind::drain || kind == FormKind::flush) list.append({leachate(), wormsInSump()});
    if (isLift(kind)) list.append({lifting(facts), dustAndMould()});
    if (kind == FormKind::loosen) list.append(dustAndMould());
    const bool ofManure = facts.material && isManure(*facts.material);
    if ((kind == FormKind::bedding || kind == FormKind::addTray) && !ofManure) list.append(wounds()); // else manure says it
    if (kind == FormKind::rotate || kind == FormKind::trayWeight || kind == FormKind::harvest) list.append(wormsInBottomTray());
    if (kind == FormKind::rotate || kind == FormKind::harvest) list.append(cocoonsLeave());
    if (kind == FormKind::remove || kind == FormKind::retire) list.append(release());
    if (kind == FormKind::event && isPestOrSour(facts.eventWord)) list.append(remedy());
    if (ofManure) list.append(manure());
    if (facts.material && facts.firstOfMaterial && facts.material->welcome != materials::Welcome::yes) list.append(doubtful(*facts.material));
    if (facts.cold) list.append(heater());
    return list;
}

QList<Caution> allCautions()
{
    QList<Caution> list = firstRunCautions();
    list.append({lifting({}), dustAndMould(), wounds(), manure(), heater(), remedy(), release(), wormsInSump(), wormsInBottomTray(), cocoonsLeave()});
    return list;
}

QList<Caution> firstRunCautions()
{
    return {
        {CautionTopic::giving,
         Cautions::tr("Never release composting worms into woods, fields or water. Keep to local rules on species, on waste and on selling worms or castings."),
         sourced("Minnesota Department of Natural Resources")},
        {CautionTopic::heater,
         Cautions::tr("Local codes and licensed practice come first: for electrical heat, for what may be composted where you live, and for what you may give away or sell."),
         sourced("common practice, no source; local code rules")},
        health(),
        {CautionTopic::doubtfulMaterial,
         Cautions::tr("Meat, fish, dairy, oily food, pet droppings, glossy paper and treated wood stay out."),
         sourced("New York City Sanitation; Oregon Metro; Virginia Master Gardeners; Dubey et al. 2011 (cat and dog waste)")},
        leachate(),
    };
}

}
