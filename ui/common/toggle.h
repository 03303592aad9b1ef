#pragma once

#include "ui/common/actions.h"

class QPushButton;
class QWidget;

namespace tierloam::ui {

/// A checkable button at the end of `bar`'s layout that stands for an action of `page`: its shortcut presses the button.
QPushButton* addToggle(ActionId id, QWidget* page, QWidget* bar);

}
