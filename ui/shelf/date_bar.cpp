#include "ui/shelf/date_bar.h"

#include "ui/common/actions.h"
#include "ui/common/dates.h"
#include "ui/common/panels.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QMouseEvent>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSlider>
#include <QStyle>
#include <QStyleOptionSlider>

#include <algorithm>

namespace tierloam::shelf {

DateBar::DateBar(QWidget* parent)
    : QWidget{parent},
      from_{ui::makeLabel({}, ui::TextRole::smallMuted, this)},
      word_{ui::makeLabel({}, ui::TextRole::strong, this)},
      slider_{new QSlider{Qt::Horizontal, this}},
      today_{ui::makeButton(tr("Today"), ui::Tone::plain, this)}
{
    slider_->setObjectName(QStringLiteral("daySlider"));
    today_->setObjectName(QStringLiteral("todayButton"));
    slider_->setPageStep(7);
    slider_->installEventFilter(this);
    slider_->setMinimumWidth(80);
    ui::keepWheelOut(slider_);
    ui::setAccess(slider_, tr("Day shown"), tr("Shows the shelf as it stood on any day. Left and right: a day; page up and down: a week."));
    ui::setAccess(today_, tr("Back to today"));
    ui::setAct(today_, ui::ActionId::backToToday);
    today_->setToolTip(ui::withKeys(tr("Back to today"), today_));
    auto* row = new QHBoxLayout{this};
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(10);
    row->addWidget(from_);
    row->addWidget(slider_, 1);
    word_->setAlignment(Qt::AlignTrailing | Qt::AlignVCenter);
    row->addWidget(word_);
    row->addWidget(today_);
    connect(slider_, &QSlider::valueChanged, this, [this] {
        say();
        Q_EMIT dayChosen(shown());
    });
    connect(today_, &QPushButton::clicked, slider_, [this] { slider_->setValue(slider_->maximum()); });
}

/// The day under that place becomes the one shown, its handle under the pointer.
void DateBar::goTo(const QPoint& at)
{
    QStyleOptionSlider option;
    option.initFrom(slider_);
    option.orientation = Qt::Horizontal;
    option.minimum = slider_->minimum();
    option.maximum = slider_->maximum();
    option.sliderPosition = option.sliderValue = slider_->sliderPosition();
    option.upsideDown = slider_->invertedAppearance() != (slider_->layoutDirection() == Qt::RightToLeft);
    const QRect handle = slider_->style()->subControlRect(QStyle::CC_Slider, &option, QStyle::SC_SliderHandle, slider_);
    if (handle.contains(at)) return; // it is dragged
    const QRect groove = slider_->style()->subControlRect(QStyle::CC_Slider, &option, QStyle::SC_SliderGroove, slider_);
    const int span = groove.width() - handle.width();
    if (span <= 0) return;
    slider_->setValue(QStyle::sliderValueFromPosition(slider_->minimum(), slider_->maximum(), at.x() - groove.x() - handle.width() / 2, span, option.upsideDown));
}

/// A click goes to the day that was clicked and not a week towards it; the press then takes hold of the handle, which stands there.
bool DateBar::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == slider_ && event->type() == QEvent::MouseButtonPress) {
        const auto* press = static_cast<QMouseEvent*>(event);
        if (press->button() == Qt::LeftButton) goTo(press->position().toPoint());
    }
    return QWidget::eventFilter(watched, event);
}

Day DateBar::shown() const { return first_ + std::chrono::days{slider_->value()}; }

void DateBar::setDays(Day first, Day shown, Day today)
{
    const QSignalBlocker quiet{slider_};
    first_ = std::min(first, today);
    todayDay_ = today;
    const int span = daysBetween(first_, today);
    slider_->setRange(0, span);
    slider_->setTickInterval(std::max(1, span / 12));
    slider_->setValue(std::clamp(daysBetween(first_, shown), 0, span));
    from_->setText(ui::shortDay(first_, today));
    setVisible(span > 0);
    say();
}

void DateBar::say()
{
    // The widest day of the year, so that the slider keeps its length while it moves.
    word_->setMinimumWidth(word_->fontMetrics().horizontalAdvance(tr("%1 – the past").arg(ui::fullDay(todayDay_))));
    const bool past = shown() < todayDay_;
    word_->setText(past ? tr("%1 – the past").arg(ui::shortDay(shown(), todayDay_)) : tr("today"));
    ui::setTone(word_, past ? ui::Tone::amber : ui::Tone::plain);
    today_->setEnabled(past);
}

}
