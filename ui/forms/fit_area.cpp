#include "ui/forms/fit_area.h"

#include <QApplication>
#include <QEvent>
#include <QLayout>
#include <QScrollBar>
#include <QTimer>

#include <algorithm>

namespace tierloam::forms {

FitArea::FitArea(QWidget* parent) : QScrollArea{parent}
{
    setFrameShape(QFrame::NoFrame);
    setWidgetResizable(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFocusPolicy(Qt::NoFocus);
    viewport()->setAutoFillBackground(false); // it lies on the ground of its form
    QSizePolicy policy{QSizePolicy::Preferred, QSizePolicy::Preferred};
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

int FitArea::heightForWidth(int width) const
{
    const QWidget* content = widget();
    if (!content || !content->layout()) return QScrollArea::sizeHint().height();
    return content->layout()->hasHeightForWidth() ? content->layout()->totalHeightForWidth(width) : content->sizeHint().height();
}

QSize FitArea::sizeHint() const
{
    if (!widget()) return QScrollArea::sizeHint();
    const int width = std::max(widget()->sizeHint().width(), minimumSizeHint().width());
    return {width, heightForWidth(width)};
}

QSize FitArea::minimumSizeHint() const
{
    if (!widget()) return QScrollArea::minimumSizeHint();
    const QSize least = widget()->minimumSizeHint();
    const int aField = 3 * fontMetrics().height(); // with its label or its problem
    const int high = widget()->layout() && widget()->layout()->hasHeightForWidth() && width() > 0 ? heightForWidth(width()) : least.height();
    return {least.width() + verticalScrollBar()->sizeHint().width(), std::min(high, aField)};
}

void FitArea::resizeEvent(QResizeEvent* event)
{
    QScrollArea::resizeEvent(event);
    settleBar();
    QTimer::singleShot(0, this, &FitArea::keepFocusInSight); // when what is inside has its places again
}

void FitArea::keepFocusInSight()
{
    QWidget* focused = QApplication::focusWidget();
    if (focused && widget() && widget()->isAncestorOf(focused)) ensureWidgetVisible(focused, 0, fontMetrics().height() / 2);
}

void FitArea::showEvent(QShowEvent* event)
{
    QScrollArea::showEvent(event);
    settleBar();
}

/// The bar's own width can make the content taller; left to itself it would then stay although without it all would fit.
void FitArea::settleBar()
{
    const bool fits = !widget() || heightForWidth(width()) <= height();
    const Qt::ScrollBarPolicy policy = fits ? Qt::ScrollBarAlwaysOff : Qt::ScrollBarAlwaysOn;
    if (policy != verticalScrollBarPolicy()) setVerticalScrollBarPolicy(policy);
    // Sized before it was shown, the content still has the width it had without the bar.
    if (widget() && viewport()->width() > 0 && widget()->width() > viewport()->width()) {
        widget()->resize(viewport()->width(), std::max(viewport()->height(), heightForWidth(viewport()->width())));
    }
}

bool FitArea::eventFilter(QObject* watched, QEvent* event)
{
    const bool done = QScrollArea::eventFilter(watched, event);
    if (watched == widget() && event->type() == QEvent::LayoutRequest) { // a problem came or went
        updateGeometry();
        settleBar();
    }
    return done;
}

}
