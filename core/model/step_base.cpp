#include "core/model/step_processes.h"

namespace tierloam::model {

Kernels baseKernels() { return {&stepPair, &noise, &normalsOf, &exponentialsOf, &logarithmsOf}; }

}
