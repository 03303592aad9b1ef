#pragma once

#include <QDialog>

namespace tierloam::ui {

/// A window beside that of the program: Tab goes through it in reading order, Enter presses the button that has the focus.
class View : public QDialog {
    Q_OBJECT

public:
    explicit View(QWidget* parent = nullptr) : QDialog{parent} {}

protected:
    bool focusNextPrevChild(bool next) override;
    void keyPressEvent(QKeyEvent* event) override;
};

}
