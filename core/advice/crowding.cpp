#include "core/advice/crowding.h"

#include "core/model/parameters.h"

namespace tierloam::advice {

Mass mostWorms(Area area)
{
    const model::ParameterRow& crowding = model::parameterTable()[static_cast<std::size_t>(model::Parameter::crowdingGrowth)];
    return kilograms(crowding.upper * area.base());
}

}
