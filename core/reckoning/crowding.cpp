#include "core/reckoning/crowding.h"

#include "core/model/parameters.h"

namespace tierloam::reckoning {

Mass mostWorms(Area area)
{
    const model::ParameterRow& crowding = model::parameterTable()[static_cast<std::size_t>(model::Parameter::crowdingGrowth)];
    return kilograms(crowding.upper * area.base());
}

}
