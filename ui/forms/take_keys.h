#pragma once

#include <QWidget>

namespace tierloam::forms {

/// The keys go back to a form: to where they were in it, else to its first field. A form itself hears none.
inline void takeKeys(QWidget& form)
{
    QWidget* at = form.focusWidget();
    if (at == nullptr || at == &form) at = form.nextInFocusChain();
    at->setFocus(Qt::OtherFocusReason);
}

}
