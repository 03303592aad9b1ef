#pragma once

#include "ui/common/theme.h"

#include <QWidget>

namespace tierloam::trends {

/// What stands at the crosshair: words in room of its own, one line or two as its width asks. Other words never move what lies below, since they
/// change with every step of the pointer. What does not fit ends in an ellipsis and stands whole in the tool tip and for a screen reader.
class ReadoutLine : public QWidget {
    Q_OBJECT

public:
    explicit ReadoutLine(const ui::Theme& theme, QWidget* parent = nullptr);
    void setText(const QString& text);
    const QString& text() const { return text_; }

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return {theme_.px(60), sizeHint().height()}; }
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const ui::Theme& theme_;
    QString text_;
};

}
