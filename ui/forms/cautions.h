#pragma once

#include "core/materials/table.h"
#include "ui/forms/form_kind.h"

#include <QList>
#include <QString>

#include <optional>

namespace tierloam::forms {

/// What a caution is about; each is told at most once in a form.
enum class CautionTopic {
    leachate, wormsInSump, lifting, dustAndMould, wounds, wormsInBottomTray, cocoonsLeave, manure, heater, doubtfulMaterial, giving, remedy
};

struct Caution {
    CautionTopic topic{};
    QString text;        ///< translated; one or two sentences
    QString source;      ///< on what it rests; titles of works as they are, "memory" and "common practice, no source" said as such
    bool normal = false; ///< says what is normal rather than what to beware of
    QString brief{};     ///< translated; what must be seen where there is no room for the text: one sentence. Empty: the text
};

/// What the cautions of a form depend on.
struct CautionFacts {
    FormKind kind{};
    /// Estimated weight in kg of the tray to be lifted, contents and tray: the 90 % range and its middle.
    struct Weight { double low, middle, high; };
    std::optional<Weight> weight;
    int tray = 0;                                     ///< its number; 0 unknown
    QString liftWords;                                ///< what the lifting equation says of it (tray_lift.h); empty unknown
    const materials::Material* material = nullptr;    ///< fed or bedded
    bool firstOfMaterial = false;                     ///< the household never recorded it before: a doubt is told once
    bool cold = false;                                ///< cold is what the form is about
    QString eventWord;                                ///< as written into the journal: "mites", …
};

/// What to say at the work itself, most pressing first.
QList<Caution> cautionsFor(const CautionFacts& facts);

/// What to know before the first worms are bought, for the first-run page.
QList<Caution> firstRunCautions();

/// For work outside a form, where the same cautions belong.
Caution manureCaution();
Caution leachateCaution();
QString sumpCautionsBrief();   ///< where one click drains or flushes: what to beware of, then what is normal
Caution liftingCaution(const CautionFacts& facts);
Caution dustCaution();
Caution heaterCaution();
Caution remedyCaution();
Caution healthCaution();   ///< hygiene, and when to see a doctor
/// All that the program ever says, for the handbook.
QList<Caution> allCautions();

/// Manure or droppings: by the reason against it, or by its name; own materials included.
bool isManure(const materials::Material& material);

}
