#include "core/household/seasons.h"

#include "core/household/household.h"
#include "core/store/setting_names.h"

#include <algorithm>
#include <iterator>

namespace tierloam::household {

/// By where most of the people live, not by area or capital: Ecuador by Guayaquil and Quito, Kenya by Nairobi and the coast, both Congos by Kinshasa,
/// Brazzaville and Pointe-Noire, Indonesia by Java; but Gabon, São Tomé, Uganda, Kiribati and the Maldives, though the equator crosses them, are north.
/// Within about five degrees of it the seasons hardly matter: there the guess may be wrong without harm.
bool liesSouth(QLocale::Territory territory)
{
    constexpr QLocale::Territory south[] = {
        // Africa and its islands
        QLocale::Angola, QLocale::AscensionIsland, QLocale::Botswana, QLocale::Burundi, QLocale::Comoros, QLocale::CongoBrazzaville, QLocale::CongoKinshasa,
        QLocale::Eswatini, QLocale::Kenya, QLocale::Lesotho, QLocale::Madagascar, QLocale::Malawi, QLocale::Mauritius, QLocale::Mayotte, QLocale::Mozambique,
        QLocale::Namibia, QLocale::Reunion, QLocale::Rwanda, QLocale::SaintHelena, QLocale::Seychelles, QLocale::SouthAfrica, QLocale::Tanzania,
        QLocale::TristanDaCunha, QLocale::Zambia, QLocale::Zimbabwe,
        // America
        QLocale::Argentina, QLocale::Bolivia, QLocale::Brazil, QLocale::Chile, QLocale::Ecuador, QLocale::FalklandIslands, QLocale::Paraguay, QLocale::Peru,
        QLocale::SouthGeorgiaAndSouthSandwichIslands, QLocale::Uruguay,
        // Asia and the Indian Ocean
        QLocale::BritishIndianOceanTerritory, QLocale::ChristmasIsland, QLocale::CocosIslands, QLocale::DiegoGarcia, QLocale::Indonesia, QLocale::TimorLeste,
        // Australia and the Pacific
        QLocale::AmericanSamoa, QLocale::Australia, QLocale::CookIslands, QLocale::Fiji, QLocale::FrenchPolynesia, QLocale::NauruTerritory, QLocale::NewCaledonia,
        QLocale::NewZealand, QLocale::Niue, QLocale::NorfolkIsland, QLocale::PapuaNewGuinea, QLocale::Pitcairn, QLocale::Samoa, QLocale::SolomonIslands,
        QLocale::TokelauTerritory, QLocale::Tonga, QLocale::TuvaluTerritory, QLocale::Vanuatu, QLocale::WallisAndFutuna,
        // The far south
        QLocale::Antarctica, QLocale::BouvetIsland, QLocale::FrenchSouthernTerritories, QLocale::HeardAndMcDonaldIslands};
    return std::ranges::find(south, territory) != std::end(south);
}

bool livesSouth(const Household& household) { return household.kept(store::settingHemisphere) == store::hemisphereSouth; }

}
