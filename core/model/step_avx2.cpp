#include "core/model/step_processes.h"

namespace tierloam::model {

void stepAvx2(StackBlock& stack, TrayBlock* trays, const TrayShape* shapes, int trayCount, const ParameterBlock& parameters,
              const MassClassTable& classes, const StepForcing& forcing)
{
    step(stack, trays, shapes, trayCount, parameters, classes, forcing);
}

}
