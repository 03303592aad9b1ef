#include "ui/window/notices.h"

#include "ui/common/panels.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

#include <chrono>

namespace tierloam::window {

Notices::Notices(QWidget* parent) : QWidget{parent}, rows_{new QVBoxLayout{this}}
{
    setObjectName(QStringLiteral("notices"));
    rows_->setContentsMargins(18, 10, 18, 0);
    rows_->setSpacing(6);
    hide();
}

void Notices::show(Kind kind, const QString& text, const QString& key, const Act& act)
{
    if (text.isEmpty() || texts().contains(text)) return;
    if (!key.isEmpty()) settle(key);
    while (frames_.size() >= most) dismiss(frames_.front());
    auto* frame = new QFrame{this};
    const char* sort = kind == Kind::failure ? "failure" : kind == Kind::done ? "done" : "notice";
    frame->setObjectName(QLatin1StringView{sort});
    frame->setProperty(sort, true);
    frame->setProperty("key", key);
    auto* row = new QHBoxLayout{frame};
    row->setContentsMargins(12, 7, 8, 7);
    auto* label = ui::makeLabel(text, ui::TextRole::body, frame, true);
    label->setObjectName(QStringLiteral("noticeText"));
    label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    ui::setAccess(label, kind == Kind::failure ? tr("Not done: %1").arg(text) : text);
    row->addWidget(label, 1);
    if (act.done) {
        auto* button = ui::makeButton(act.text, ui::Tone::plain, frame);
        button->setObjectName(QStringLiteral("noticeAct"));
        ui::setAccess(button, act.text, text);
        // What is done may take this message away, and the button with it.
        connect(button, &QPushButton::clicked, this, [this, done = act.done] { QTimer::singleShot(0, this, done); });
        row->addWidget(button, 0, Qt::AlignTop);
    }
    auto* away = ui::makeButton(tr("Dismiss"), ui::Tone::plain, frame);
    ui::setAccess(away, tr("Dismiss this message"), text);
    connect(away, &QPushButton::clicked, this, [this, frame] { dismiss(frame); });
    row->addWidget(away, 0, Qt::AlignTop);
    rows_->addWidget(frame);
    frames_ << frame;
    QWidget::show();
    place();
    if (kind == Kind::done) letGo(frame);
}

void Notices::setFloating(bool floating)
{
    auto* page = parentWidget() ? qobject_cast<QBoxLayout*>(parentWidget()->layout()) : nullptr;
    if (!page || floating == floating_) return;
    floating_ = floating;
    if (floating) {
        page->removeWidget(this);
        parentWidget()->installEventFilter(this);
        if (!frames_.isEmpty()) { // what stands there keeps its room, also when it goes
            room_ = new QWidget{parentWidget()};
            room_->setFixedHeight(heightIn(parentWidget()->width()));
            page->insertWidget(0, room_);
            room_->show();
        }
        place();
    } else {
        parentWidget()->removeEventFilter(this);
        delete room_;
        page->insertWidget(0, this);
    }
}

int Notices::heightIn(int width) const
{
    rows_->activate();
    return rows_->hasHeightForWidth() ? rows_->totalHeightForWidth(width) : rows_->totalSizeHint().height();
}

void Notices::place()
{
    if (!floating_ || frames_.isEmpty()) return;
    setGeometry(0, 0, parentWidget()->width(), heightIn(parentWidget()->width()));
    raise();
}

bool Notices::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == parentWidget() && event->type() == QEvent::Resize) place();
    return QWidget::eventFilter(watched, event);
}

/// Not while it is being read: under the pointer, or with the focus in it.
void Notices::letGo(QFrame* frame)
{
    QTimer::singleShot(std::chrono::seconds{secondsDone}, frame, [this, frame] {
        if (frame->underMouse() || (focusWidget() && frame->isAncestorOf(focusWidget()) && focusWidget()->hasFocus())) letGo(frame);
        else if (frames_.contains(frame)) dismiss(frame);
    });
}

void Notices::dismiss(QFrame* frame)
{
    frames_.removeOne(frame);
    rows_->removeWidget(frame);
    frame->hide();
    frame->deleteLater(); // its button may be the sender
    setVisible(!frames_.isEmpty());
    place();
}

void Notices::settle(const QString& key)
{
    const QList<QFrame*> frames = frames_;
    for (QFrame* frame : frames) {
        if (frame->property("key").toString() == key) dismiss(frame);
    }
}

void Notices::clear()
{
    while (!frames_.isEmpty()) dismiss(frames_.front());
}

QStringList Notices::texts() const
{
    QStringList list;
    for (const QFrame* frame : frames_) list << frame->findChild<QLabel*>(QStringLiteral("noticeText"))->text();
    return list;
}

}
