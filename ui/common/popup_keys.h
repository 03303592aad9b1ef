#pragma once

namespace tierloam::ui {

/// While a menu or a list is open over the window, keys are its own: the letter underlined in it, and nothing of the page below, whose widget
/// keeps the focus and whose single letters would write into the journal. In a drop-down list Enter and Space take what is lit, and are not heard
/// by the form behind, which Enter would save. Done once for the program; an action of the table sees to it.
void keepKeysInPopups();

}
