#include "ui/window/notices.h"

#include "ui/common/panels.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace tierloam::window {

Notices::Notices(QWidget* parent) : QWidget{parent}, rows_{new QVBoxLayout{this}}
{
    setObjectName(QStringLiteral("notices"));
    rows_->setContentsMargins(18, 10, 18, 0);
    rows_->setSpacing(6);
    hide();
}

void Notices::show(Kind kind, const QString& text, const QString& key)
{
    if (text.isEmpty() || texts().contains(text)) return;
    if (!key.isEmpty()) settle(key);
    while (frames_.size() >= most) dismiss(frames_.front());
    auto* frame = new QFrame{this};
    frame->setObjectName(kind == Kind::failure ? QStringLiteral("failure") : QStringLiteral("notice"));
    frame->setProperty(kind == Kind::failure ? "failure" : "notice", true);
    frame->setProperty("key", key);
    auto* row = new QHBoxLayout{frame};
    row->setContentsMargins(12, 7, 8, 7);
    auto* label = ui::makeLabel(text, ui::TextRole::body, frame, true);
    label->setObjectName(QStringLiteral("noticeText"));
    label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    ui::setAccess(label, kind == Kind::failure ? tr("Not done: %1").arg(text) : text);
    row->addWidget(label, 1);
    auto* away = ui::makeButton(tr("Dismiss"), ui::Tone::plain, frame);
    ui::setAccess(away, tr("Dismiss this message"), text);
    connect(away, &QPushButton::clicked, this, [this, frame] { dismiss(frame); });
    row->addWidget(away, 0, Qt::AlignTop);
    rows_->addWidget(frame);
    frames_ << frame;
    QWidget::show();
}

void Notices::dismiss(QFrame* frame)
{
    frames_.removeOne(frame);
    rows_->removeWidget(frame);
    frame->hide();
    frame->deleteLater(); // its button may be the sender
    setVisible(!frames_.isEmpty());
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
