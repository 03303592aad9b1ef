#pragma once

class QFileDialog;

namespace tierloam::ui {

/// Gives the dialog the size that its letters need, and its columns the width of what they hold; one of the desktop's own stays as it is.
void fitFileDialog(QFileDialog& dialog);

}
