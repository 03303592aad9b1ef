#include "ui/trends/line_key.h"

#include "ui/common/flow_layout.h"
#include "ui/common/panels.h"
#include "ui/trends/mark_sign.h"
#include "ui/trends/series_pens.h"
#include "ui/trends/trend_words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>

#include <functional>

namespace tierloam::trends {

namespace {

/// A square that paints one sign.
class Sign final : public QWidget {
public:
    using Paint = std::function<void(QPainter&, const QRectF&)>;

    Sign(const ui::Theme& theme, double wide, Paint paint, QWidget* parent)
        : QWidget{parent}, theme_{theme}, wide_{wide}, paint_{std::move(paint)}
    {
        setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    }
    QSize sizeHint() const override { return {theme_.px(wide_), theme_.px(14)}; }

protected:
    void paintEvent(QPaintEvent*) override
    {
        QPainter painter{this};
        painter.setRenderHint(QPainter::Antialiasing);
        paint_(painter, rect());
    }

private:
    const ui::Theme& theme_;
    double wide_;
    Paint paint_;
};

QWidget* keyItem(const ui::Theme& theme, const QString& text, double wide, Sign::Paint paint, QWidget* parent)
{
    auto* item = new QWidget{parent};
    auto* row = new QHBoxLayout{item};
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(5);
    const bool wraps = text.size() > 40; // a long one would not fit a narrow window at large fonts
    row->addWidget(new Sign{theme, wide, std::move(paint), item});
    row->addWidget(ui::makeLabel(text, ui::TextRole::smallMuted, item, wraps), wraps ? 1 : 0);
    return item;
}

}

SignKey::SignKey(const ui::Theme& theme, QWidget* parent) : QWidget{parent}
{
    auto* flow = new ui::FlowLayout{this, 14};
    flow->addWidget(keyItem(theme, tr("estimate and its 90 % range"), 26, [&theme](QPainter& painter, const QRectF& box) {
        QColor band = theme.palette().moss;
        band.setAlphaF(0.22f);
        painter.fillRect(box.adjusted(0, 2, 0, -2), band);
        painter.setPen(QPen{theme.palette().moss, 1.6 * theme.scale()});
        painter.drawLine(QPointF{box.left(), box.center().y()}, QPointF{box.right(), box.center().y()});
    }, this));
    flow->addWidget(keyItem(theme, tr("forecast: fed as usual, no tray lifted"), 26, [&theme](QPainter& painter, const QRectF& box) {
        painter.fillRect(box, drawing::mixed(theme.palette().panel, theme.palette().rail, 0.75));
        painter.setPen(QPen{theme.palette().moss, 1.6 * theme.scale(), Qt::DashLine});
        painter.drawLine(QPointF{box.left(), box.center().y()}, QPointF{box.right(), box.center().y()});
    }, this));
    changed_ = keyItem(theme, tr("with the change that is tried"), 26, [&theme](QPainter& painter, const QRectF& box) {
        painter.fillRect(box.adjusted(0, 2, 0, -2), changedBrush(theme.palette().ink));
        painter.setPen(changedPen(theme.palette().ink, theme.scale()));
        painter.drawLine(QPointF{box.left(), box.center().y()}, QPointF{box.right(), box.center().y()});
    }, this);
    flow->addWidget(changed_);
    setChanged(false);
    flow->addWidget(keyItem(theme, tr("expected yield and its 90 % range"), 12, [&theme](QPainter& painter, const QRectF& box) {
        painter.setPen(QPen{theme.palette().ink, 1.3 * theme.scale()});
        painter.drawLine(QPointF{box.center().x(), box.top() + 1}, QPointF{box.center().x(), box.bottom() - 1});
        painter.setBrush(theme.palette().ink);
        painter.drawEllipse(box.center(), 2.2 * theme.scale(), 2.2 * theme.scale());
    }, this));
    for (const MarkKind kind : {MarkKind::feed, MarkKind::bedding, MarkKind::turn, MarkKind::harvest, MarkKind::worms, MarkKind::weighing,
                                MarkKind::water, MarkKind::reading, MarkKind::event, MarkKind::drainLow, MarkKind::drainHigh}) {
        flow->addWidget(keyItem(theme, markName(kind), 12, [&theme, kind](QPainter& painter, const QRectF& box) {
            paintSign(painter, kind, box.center(), 8 * theme.scale(), theme.palette());
        }, this));
    }
}

void SignKey::setChanged(bool changed) { changed_->setVisible(changed); }

LineSample::LineSample(const ui::Theme& theme, int place, bool bars, QWidget* parent) : QWidget{parent}, theme_{theme}, place_{place}, bars_{bars}
{
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
}

QSize LineSample::sizeHint() const
{
    return {theme_.px(bars_ ? 48 : 30), theme_.px(12)};
}

void LineSample::paintEvent(QPaintEvent*)
{
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    const QPen pen = penOf(place_, theme_.palette(), 1.8 * theme_.scale());
    const double line = theme_.px(29);
    painter.setPen(pen);
    painter.drawLine(QPointF{1.0, height() / 2.0}, QPointF{line, height() / 2.0});
    if (!bars_) return;
    painter.setPen(QPen{pen.color(), 1});
    painter.setBrush(fillOf(place_, pen.color()));
    painter.drawRect(QRectF{line + theme_.px(4), 0.5, width() - line - theme_.px(5), height() - 1.0});
}

}
