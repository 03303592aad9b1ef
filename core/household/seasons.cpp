#include "core/household/seasons.h"

#include <algorithm>
#include <iterator>

namespace tierloam::household {

bool liesSouth(QLocale::Territory territory)
{
    constexpr QLocale::Territory south[] = {
        QLocale::Angola,       QLocale::Argentina, QLocale::Australia, QLocale::Bolivia,      QLocale::Botswana,   QLocale::Brazil,  QLocale::Burundi,  QLocale::Chile,       QLocale::Comoros,
        QLocale::CongoKinshasa, QLocale::Eswatini, QLocale::Fiji,      QLocale::FalklandIslands, QLocale::FrenchPolynesia, QLocale::Indonesia, QLocale::Lesotho, QLocale::Madagascar, QLocale::Malawi,
        QLocale::Mauritius,    QLocale::Mozambique, QLocale::Namibia,  QLocale::NewCaledonia, QLocale::NewZealand, QLocale::PapuaNewGuinea, QLocale::Paraguay, QLocale::Peru,  QLocale::Reunion,
        QLocale::Rwanda,       QLocale::Samoa,     QLocale::SolomonIslands, QLocale::SouthAfrica, QLocale::Tanzania, QLocale::TimorLeste, QLocale::Tonga,  QLocale::Uruguay,  QLocale::Vanuatu,
        QLocale::Zambia,       QLocale::Zimbabwe};
    return std::ranges::find(south, territory) != std::end(south);
}

}
