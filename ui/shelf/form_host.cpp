#include "ui/shelf/form_host.h"

#include "ui/forms/held_to_room.h"

#include <QApplication>
#include <QEvent>
#include <QResizeEvent>
#include <QScrollArea>
#include <QScrollBar>
#include <QVBoxLayout>

#include <algorithm>

namespace tierloam::shelf {

FormHost::FormHost(QWidget* parent) : QFrame{parent}, scroll_{new QScrollArea{this}}
{
    setProperty("card", true);
    scroll_->setFrameShape(QFrame::NoFrame);
    scroll_->setWidgetResizable(true);
    scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll_->viewport()->setAutoFillBackground(false);
    scroll_->setFocusPolicy(Qt::NoFocus);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(14, 10, 14, 10);
    column->addWidget(scroll_);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Preferred);
    hide();
}

void FormHost::takeOut()
{
    if (!content_) return;
    content_->removeEventFilter(this);
    if (scroll_->widget() == content_) scroll_->takeWidget();
    layout()->removeWidget(content_);
    content_->hide();
    content_->deleteLater();
    content_ = nullptr;
}

void FormHost::show(QWidget* content)
{
    takeOut();
    content_ = content;
    content->installEventFilter(this);
    content->setParent(this); // takes the font of the place before it is measured
    content->ensurePolished();
    fit();
    content->show();
    fit();
    QFrame::show();
}

/// The whole of it beside the frame, or within what scrolls.
void FormHost::place(bool whole)
{
    const bool within = scroll_->widget() == content_;
    if (layout()->indexOf(content_) >= 0 ? whole : within && !whole) return;
    QWidget* focus = content_->isAncestorOf(QApplication::focusWidget()) ? QApplication::focusWidget() : nullptr;
    scroll_->setVisible(!whole);
    if (whole) {
        if (within) scroll_->takeWidget();
        layout()->addWidget(content_);
    } else {
        layout()->removeWidget(content_);
        scroll_->setWidget(content_);
    }
    content_->setAutoFillBackground(false); // setWidget turns it on
    if (!focus) return;
    content_->show();
    focus->setFocus(Qt::OtherFocusReason);
}

void FormHost::clear()
{
    takeOut();
    hide();
}

void FormHost::setRoom(int height, int most)
{
    room_ = height;
    most_ = std::max(height, most);
    fit();
}

void FormHost::resizeEvent(QResizeEvent* event)
{
    QFrame::resizeEvent(event);
    // Not at once: the layout that gave the width is still at work.
    if (event->oldSize().width() != width()) QMetaObject::invokeMethod(this, &FormHost::fit, Qt::QueuedConnection);
}

bool FormHost::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == content_ && event->type() == QEvent::LayoutRequest) fit();
    return QFrame::eventFilter(watched, event);
}

int FormHost::heightAt(int width) const
{
    return content_->hasHeightForWidth() ? content_->heightForWidth(width) : content_->sizeHint().height();
}

void FormHost::fit()
{
    if (!content_) return;
    const QMargins around = layout()->contentsMargins();
    const int given = isVisible() || !parentWidget() ? width() : parentWidget()->width() - 2 * sideSpace_;
    const int wide = std::max(1, given - around.left() - around.right() - 2);
    const int frame = around.top() + around.bottom() + 2;
    int room = std::max(room_, 60);
    auto* held = dynamic_cast<forms::HeldToRoom*>(content_);
    bool whole = false;
    int least = held ? held->holdTo(room - frame, wide) + frame : 0;
    if (held && least > room) room = std::min(least, most_);
    if (content_->property("scrollsItself").toBool()) {
        whole = held ? least <= room : content_->minimumSizeHint().height() + frame <= room;
    }
    place(whole);
    int wanted = heightAt(wide);
    if (wanted + frame > room && !whole) {
        const int beside = wide - scroll_->verticalScrollBar()->sizeHint().width();
        if (held) held->holdTo(room - frame, beside);
        wanted = heightAt(beside);
    }
    height_ = std::min(wanted + frame, room);
    updateGeometry();
    Q_EMIT fitted(height_);
}

}
