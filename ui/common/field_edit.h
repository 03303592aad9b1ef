#pragma once

#include <QComboBox>
#include <QLineEdit>

/// The bare editors inside fields, with the manners of a form that stands in a window full of shortcuts.
namespace tierloam::ui {

/// A line to type in. Undo and redo keys belong to it only while it has something to undo or redo; else they go on to the window,
/// so that the last thing recorded is undone. Enter is left to the form.
class FieldEdit : public QLineEdit {
    Q_OBJECT

public:
    explicit FieldEdit(QWidget* parent = nullptr);
    /// Never so narrow that this text is cut, at any font and style.
    void setRoomFor(const QString& text);
    QSize minimumSizeHint() const override;

protected:
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    QString roomFor_;
};

/// A list to choose from, with an arrow that grows with the letters. The wheel passes it by unless it has the focus, so that scrolling a form changes nothing.
class FieldCombo : public QComboBox {
    Q_OBJECT

public:
    explicit FieldCombo(QWidget* parent = nullptr);

    void showPopup() override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
};

}
