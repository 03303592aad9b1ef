#include "ui/forms/setup_choices.h"

#include "ui/common/choice_field.h"

#include <QCoreApplication>

namespace tierloam::forms {

namespace {

struct SetupChoices {
    Q_DECLARE_TR_FUNCTIONS(SetupChoices)
};

}

void addPlaces(ui::ChoiceField& field)
{
    field.addChoice(SetupChoices::tr("indoors"), static_cast<int>(journal::Place::indoors));
    field.addChoice(SetupChoices::tr("garage, shed or porch"), static_cast<int>(journal::Place::garage));
    field.addChoice(SetupChoices::tr("outdoors"), static_cast<int>(journal::Place::outdoors));
}

void addStands(ui::ChoiceField& field)
{
    field.addChoice(SetupChoices::tr("legs"), static_cast<int>(journal::Stand::legs));
    field.addChoice(SetupChoices::tr("a base"), static_cast<int>(journal::Stand::base));
    field.addChoice(SetupChoices::tr("the floor"), static_cast<int>(journal::Stand::none));
}

void addSpigots(ui::ChoiceField& field)
{
    field.addChoice(SetupChoices::tr("open, over a jar"), static_cast<int>(journal::Spigot::open));
    field.addChoice(SetupChoices::tr("shut"), static_cast<int>(journal::Spigot::shut));
}

}
