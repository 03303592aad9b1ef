#pragma once

namespace tierloam::wording {

/// A fraction in whole per cent, as every text, ring and button tells it: what is not certain is never told as 100 %, nor what may be as 0 %. 100 from
/// 0.9995 on, 0 below 0.0005.
int percentShown(double fraction);

}
