#pragma once

#include "core/reckoning/usual.h"

namespace tierloam::wording {

/// What is proposed before anything is known, as a round amount of the measures chosen: 0.5 L is a pint of 16 fl oz, 30 g an ounce. By metric
/// measures it stays as it is. To be shown and recorded alike.
Amount roundAmount(const Amount& proposed);
/// The usual amounts of a stack with its defaults so; what was ever recorded stays as it was typed.
reckoning::Usual roundDefaults(reckoning::Usual usual);

}
