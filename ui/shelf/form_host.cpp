#include "ui/shelf/form_host.h"

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
    const bool whole = content->property("scrollsItself").toBool() && content->minimumSizeHint().height() + 24 <= room_;
    scroll_->setVisible(!whole);
    if (whole) layout()->addWidget(content);
    else scroll_->setWidget(content);
    content->setAutoFillBackground(false); // setWidget turns it on
    content->show();
    fit();
    QFrame::show();
}

void FormHost::clear()
{
    takeOut();
    hide();
}

void FormHost::setRoom(int height)
{
    room_ = height;
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

void FormHost::fit()
{
    if (!content_) return;
    const QMargins around = layout()->contentsMargins();
    const int given = isVisible() || !parentWidget() ? width() : parentWidget()->width() - 2 * sideSpace_;
    const int wide = std::max(1, given - around.left() - around.right() - 2);
    const auto heightAt = [this](int width) { return content_->hasHeightForWidth() ? content_->heightForWidth(width) : content_->sizeHint().height(); };
    int wanted = heightAt(wide);
    const int frame = around.top() + around.bottom() + 2;
    if (wanted + frame > room_ && scroll_->widget() == content_) wanted = heightAt(wide - scroll_->verticalScrollBar()->sizeHint().width());
    height_ = std::min(wanted + frame, std::max(room_, 60));
    updateGeometry();
}

}
