#include "ui/handbook/stack_choice.h"

namespace tierloam::handbook {

StackChoice::StackChoice(const household::Household& household, QWidget* parent) : ChoiceField{parent}, household_{household} { setName(tr("Stack")); }

void StackChoice::follow(bool dryingFirst)
{
    const QString before = stack();
    QStringList names;
    QString dries;
    for (const journal::StackHistory& history : household::inOrder(household_.journal()->replay.stacks, household_.stackOrder())) {
        const journal::Standing* standing = history.on(household_.today());
        if (!standing || standing->retired || standing->trays() == 0) continue;
        names << QString::fromStdString(history.name);
        if (standing->drying && dries.isEmpty()) dries = names.back();
    }
    clearChoices();
    for (const QString& name : names) addChoice(name, name);
    if (names.contains(before)) setValue(before);
    else if (dryingFirst && !dries.isEmpty()) setValue(dries);
    else if (!names.isEmpty()) setValue(names.front());
}

}
