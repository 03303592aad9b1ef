#include "ui/handbook/lists.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace tierloam::handbook {

namespace {

/// Names of the model's parameters as core/model/parameters.cpp has them, here only so that they can be translated; a test holds the two together.
constexpr std::array names{
    QT_TRANSLATE_NOOP("Parameters", "ingestion of a worm of 1 g"),
    QT_TRANSLATE_NOOP("Parameters", "half-saturation of ingestion"),
    QT_TRANSLATE_NOOP("Parameters", "assimilated share"),
    QT_TRANSLATE_NOOP("Parameters", "maintenance of a worm of 1 g at 25 C"),
    QT_TRANSLATE_NOOP("Parameters", "mobilisation of the reserve"),
    QT_TRANSLATE_NOOP("Parameters", "share of the surplus to laying"),
    QT_TRANSLATE_NOOP("Parameters", "cocoons that hatch"),
    QT_TRANSLATE_NOOP("Parameters", "young of a cocoon that hatches"),
    QT_TRANSLATE_NOOP("Parameters", "incubation"),
    QT_TRANSLATE_NOOP("Parameters", "death"),
    QT_TRANSLATE_NOOP("Parameters", "crowding that halves the greatest mass"),
    QT_TRANSLATE_NOOP("Parameters", "crowding that slows laying"),
    QT_TRANSLATE_NOOP("Parameters", "softening of food, scale"),
    QT_TRANSLATE_NOOP("Parameters", "softening of paper, cardboard and slower, scale"),
    QT_TRANSLATE_NOOP("Parameters", "worms' help in softening"),
    QT_TRANSLATE_NOOP("Parameters", "respiration that halves the air"),
    QT_TRANSLATE_NOOP("Parameters", "respired in softening"),
    QT_TRANSLATE_NOOP("Parameters", "respiration of castings"),
    QT_TRANSLATE_NOOP("Parameters", "coldest for growth"),
    QT_TRANSLATE_NOOP("Parameters", "best for growth"),
    QT_TRANSLATE_NOOP("Parameters", "hottest for growth"),
    QT_TRANSLATE_NOOP("Parameters", "field capacity, scale"),
    QT_TRANSLATE_NOOP("Parameters", "poured water that runs through at once"),
    QT_TRANSLATE_NOOP("Parameters", "evaporation under the lid"),
    QT_TRANSLATE_NOOP("Parameters", "time constant of light-drying"),
    QT_TRANSLATE_NOOP("Parameters", "salts formed of what is eaten"),
    QT_TRANSLATE_NOOP("Parameters", "worms bought, true mass to mass written"),
    QT_TRANSLATE_NOOP("Parameters", "household's scale, true mass to mass read"),
    QT_TRANSLATE_NOOP("Parameters", "empty tray"),
    QT_TRANSLATE_NOOP("Parameters", "worms found in a search"),
    QT_TRANSLATE_NOOP("Parameters", "what is called some or many worms, log shift"),
    QT_TRANSLATE_NOOP("Parameters", "usual feedings not written down"),
};

}

QString parameterName(std::string_view name) { return QCoreApplication::translate("Parameters", std::string{name}.c_str()); }

bool isParameterTranslated(std::string_view name)
{
    return std::ranges::any_of(names, [name](const char* each) { return name == each; });
}

}
