#pragma once

#include "core/reckoning/usual.h"

/// What the window proposes and what the advice proposes are one thing: see core/reckoning/usual.h.
namespace tierloam::household {

using reckoning::Usual;
using reckoning::usualOf;
using reckoning::usualOfAll;

}
