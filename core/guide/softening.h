#pragma once

#include "core/materials/table.h"

#include <span>
#include <utility>

namespace tierloam::guide {

/// How fast a mix becomes food: the rates of the model's first process, at a colony's density and the bed's temperature.
struct Softening {
    double staysShare = 0;             ///< of the dry matter: wood, coir, peat and shell, which never hold up a tray
    std::optional<double> halfDays;    ///< until half of what softens has done so; nullopt when nothing does
    std::optional<double> mostDays;    ///< until nine tenths have
};

/// What lies in a mix: material and fresh mass.
using Portions = std::vector<std::pair<materials::Material, Mass>>;

/// F[c] falls at k_c · 2^((T−25)/10) · (0.30 + w·b/(b + 0.5)), with the median worm factor w and `wormsKgPerM2` for b; rates, formula and their
/// basis are those of core/model/process_softening.h.
Softening softeningOf(const Portions& portions, double bedCelsius, double wormsKgPerM2);

}
