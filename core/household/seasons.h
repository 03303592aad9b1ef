#pragma once

#include <QLocale>

/// On which half of the globe a household lives. The bed of a garage or a yard is reckoned warmest in July in the north, in January in the south.
namespace tierloam::household {

class Household;

/// Where more of the people live south of the equator. A first guess for a new household, from where the machine is set up to be; it stands in the menu
/// and can be changed there. Geography, common knowledge.
bool liesSouth(QLocale::Territory territory);
/// What stands in the menu.
bool livesSouth(const Household& household);

}
