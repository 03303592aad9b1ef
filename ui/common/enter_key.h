#pragma once

class QKeyEvent;
class QWidget;

namespace tierloam::ui {

/// Enter presses the button that has the focus, as Space does; boxes that are ticked are left alone. True when there was one to press.
bool pressFocused(const QWidget* within, const QKeyEvent& key);

}
