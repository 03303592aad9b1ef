#pragma once

#include <QFileDialog>

namespace tierloam::ui {

/// A file dialog that tells what files are by their names and opens none of those it lists: reading the household or its log beside those who
/// write it is nobody's business (core/store/held_locks.h says what closing it again once did). One of the desktop's own stays as it is.
class FileDialog final : public QFileDialog {
    Q_OBJECT

public:
    /// `folder`: where to begin; a file in it that is proposed is given by selectFile().
    FileDialog(QWidget* parent, const QString& title, const QString& folder, const QString& filter = {});
};

/// Gives the dialog the size that its letters need, and its columns the width of what they hold; one of the desktop's own stays as it is.
void fitFileDialog(QFileDialog& dialog);

}
