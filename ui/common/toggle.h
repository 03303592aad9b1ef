#pragma once

#include "ui/common/actions.h"

#include <optional>

class QAbstractButton;
class QPushButton;
class QWidget;

namespace tierloam::ui {

/// A checkable button at the end of `bar`'s layout that stands for an action of `page`: its shortcut presses the button.
QPushButton* addToggle(ActionId id, QWidget* page, QWidget* bar);

/// The keys of an action press that button wherever the focus is on `page`, as long as it can be seen and pressed; they are told in its tool tip. `which`: of an
/// action that has a key for each of several buttons, the number of this one's.
void giveKeys(QAbstractButton* button, ActionId id, QWidget* page, std::optional<int> which = {});

}
