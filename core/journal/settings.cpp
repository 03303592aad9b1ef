#include "core/journal/settings.h"

namespace tierloam::journal {

void applySetup(StackSettings& settings, const Setup& setup)
{
    settings.area = setup.area.value_or(settings.area);
    settings.height = setup.height.value_or(settings.height);
    settings.trays = setup.trays.value_or(settings.trays);
    settings.sump = setup.sump.value_or(settings.sump);
    settings.place = setup.place.value_or(settings.place);
    settings.temp = setup.temp.value_or(settings.temp);
    settings.stand = setup.stand.value_or(settings.stand);
}

}
