#include "core/model/step_processes.h"

namespace tierloam::model {

Kernels avx512Kernels() { return {&stepPair, &noise, &normalsOf, &exponentialsOf, &logarithmsOf}; }

}
