#include "ui/trends/readout_line.h"

#include "ui/common/panels.h"

#include <QFontMetrics>
#include <QPainter>

#include <algorithm>

namespace tierloam::trends {

namespace {

constexpr int charactersOfALine = 44, mostLines = 3;

}

ReadoutLine::ReadoutLine(const ui::Theme& theme, QWidget* parent) : QWidget{parent}, theme_{theme}
{
    setObjectName(QStringLiteral("readout"));
    QSizePolicy policy{QSizePolicy::Expanding, QSizePolicy::Fixed};
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    connect(&theme_, &ui::Theme::changed, this, [this] {
        updateGeometry();
        update();
    });
}

void ReadoutLine::setText(const QString& text)
{
    if (text == text_) return;
    text_ = text;
    setAccessibleName(text);
    setToolTip(text.toHtmlEscaped());
    update();
}

QSize ReadoutLine::sizeHint() const
{
    const QFontMetrics metrics{theme_.font(ui::TextSize::small)};
    return {metrics.averageCharWidth() * charactersOfALine, metrics.height()};
}

int ReadoutLine::heightForWidth(int width) const
{
    const QFontMetrics metrics{theme_.font(ui::TextSize::small)};
    const int wanted = metrics.averageCharWidth() * charactersOfALine;
    return std::clamp((wanted + width - 1) / std::max(1, width), 1, mostLines) * metrics.lineSpacing();
}

void ReadoutLine::paintEvent(QPaintEvent*)
{
    QPainter painter{this};
    const QFont font = theme_.font(ui::TextSize::small);
    const QFontMetrics metrics{font};
    painter.setFont(font);
    painter.setPen(theme_.palette().mutedInk);
    const int lines = std::max(1, height() / std::max(1, metrics.lineSpacing()));
    QString words = text_;
    if (lines == 1) words = metrics.elidedText(words, Qt::ElideRight, width());
    painter.drawText(rect(), static_cast<int>(Qt::AlignLeading | Qt::AlignTop) | (lines > 1 ? static_cast<int>(Qt::TextWordWrap) : 0), words);
}

}
