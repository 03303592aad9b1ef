#include "ui/common/view.h"

#include "ui/common/reading_order.h"

namespace tierloam::ui {

bool View::focusNextPrevChild(bool next) { return focusInReadingOrder(this, next); }

}
