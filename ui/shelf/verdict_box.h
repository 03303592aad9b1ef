#pragma once

#include "ui/common/theme.h"
#include "ui/shelf/shelf_model.h"

#include <QWidget>

namespace tierloam::shelf {

/// What is to be said of a stack: a sign and a word for its state, then what to do and why, in numbers, then what is normal.
class VerdictBox : public QWidget {
    Q_OBJECT

public:
    explicit VerdictBox(const ui::Theme& theme, QWidget* parent = nullptr);
    void setVerdict(const Verdict& verdict, const QString& stack);
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const ui::Theme& theme_;
    Verdict verdict_;
};

/// The colour that a tone has on a ground of the palette; plain: that of outlines.
QColor toneColour(ui::Tone tone, const drawing::Palette& palette);
/// The sign alone, in a square.
void drawSign(QPainter& painter, const QRectF& square, Sign sign, const QColor& colour, const QColor& ground);

}
