#pragma once

class QMenu;

namespace tierloam::ui {

/// Whenever the menu opens each of its entries has a letter of its own: of those that share one all but the first get another out of their words, or
/// none where no letter is left. Translators need not think of it.
void keepLettersApart(QMenu* menu);

}
