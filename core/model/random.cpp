#include "core/model/random.h"

#include "core/model/normals.h"
#include "core/model/step.h"

namespace tierloam::model {

static_assert(sizeof(Bits64) == sizeof(std::uint64_t));

std::uint64_t streamOf(std::uint64_t stackKey, int day, Use use, int number)
{
    std::uint64_t z = mixed(stackKey + golden);
    z = mixed(z ^ (static_cast<std::uint64_t>(static_cast<std::int64_t>(day)) * golden + 1));
    return mixed(z ^ ((static_cast<std::uint64_t>(use) << 32 | static_cast<std::uint32_t>(number)) * golden + 2));
}

double uniform(std::uint64_t stream, int member)
{
    return unit(mixed(stream + golden * (2 * static_cast<std::uint64_t>(member) + 1)));
}

double standardNormal(std::uint64_t stream, int member) { return normalOf(stream, member); }

void standardNormals(std::uint64_t stream, int index, Members& out) { chosenKernels().normals(stream, index, out); }

}
