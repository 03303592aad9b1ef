#include "core/model/crowding.h"

#include "core/model/parameters.h"

namespace tierloam::model {

Mass mostWorms(Area area)
{
    const ParameterRow& crowding = parameterTable()[static_cast<std::size_t>(Parameter::crowdingGrowth)];
    return kilograms(crowding.upper * area.base());
}

}
