#include "ui/common/view.h"

#include "ui/common/enter_key.h"
#include "ui/common/reading_order.h"

#include <QKeyEvent>

namespace tierloam::ui {

bool View::focusNextPrevChild(bool next) { return focusInReadingOrder(this, next); }

void View::keyPressEvent(QKeyEvent* event)
{
    if (!pressFocused(this, *event)) QDialog::keyPressEvent(event);
}

}
