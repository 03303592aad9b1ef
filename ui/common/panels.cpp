#include "ui/common/panels.h"

#include <QAbstractSpinBox>
#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QStyle>
#include <QVBoxLayout>

namespace tierloam::ui {

namespace {

QString nameOf(Tone tone)
{
    switch (tone) {
    case Tone::plain: break;
    case Tone::moss: return QStringLiteral("moss");
    case Tone::amber: return QStringLiteral("amber");
    case Tone::brick: return QStringLiteral("brick");
    case Tone::water: return QStringLiteral("water");
    }
    return {};
}

QString nameOf(TextRole role)
{
    switch (role) {
    case TextRole::body: break;
    case TextRole::strong: return QStringLiteral("strong");
    case TextRole::small: return QStringLiteral("small");
    case TextRole::muted: return QStringLiteral("muted");
    case TextRole::smallMuted: return QStringLiteral("smallMuted");
    case TextRole::section: return QStringLiteral("section");
    case TextRole::title: return QStringLiteral("title");
    }
    return {};
}

/// The style sheet looks at properties only when a widget is polished.
void setStyled(QWidget* widget, const char* property, const QVariant& value)
{
    if (widget->property(property) == value) return;
    widget->setProperty(property, value);
    widget->style()->unpolish(widget);
    widget->style()->polish(widget);
    widget->update();
}

class WheelKeeper final : public QObject {
public:
    using QObject::QObject;
    bool eventFilter(QObject* watched, QEvent* event) override
    {
        if (event->type() != QEvent::Wheel) return false;
        const auto* widget = qobject_cast<QWidget*>(watched);
        if (!widget || widget->hasFocus()) return false;
        event->ignore(); // so that it goes on to the page, which scrolls
        return true;
    }
};

}

QLabel* makeLabel(const QString& text, TextRole role, QWidget* parent, bool wraps)
{
    auto* label = new QLabel{parent};
    label->setTextFormat(Qt::PlainText);
    label->setText(text);
    label->setWordWrap(wraps);
    setRole(label, role);
    return label;
}

void setRole(QWidget* widget, TextRole role)
{
    setStyled(widget, "role", nameOf(role));
}

QPushButton* makeButton(const QString& text, Tone tone, QWidget* parent)
{
    auto* button = new QPushButton{text, parent};
    button->setAutoDefault(false);
    setTone(button, tone);
    return button;
}

void setTone(QWidget* widget, Tone tone)
{
    const QString name = nameOf(tone);
    setStyled(widget, "tone", name.isEmpty() ? QVariant{} : QVariant{name});
}

Card::Card(QWidget* parent, Tone tone) : QFrame{parent}, column_{new QVBoxLayout{this}}
{
    setProperty("card", true);
    setTone(this, tone);
    column_->setContentsMargins(12, 9, 12, 9);
    column_->setSpacing(6);
}

QFrame* makeHairline(QWidget* parent)
{
    auto* line = new QFrame{parent};
    line->setProperty("hairline", true);
    line->setFixedHeight(1);
    return line;
}

PageHead::PageHead(QWidget* parent)
    : QWidget{parent}, title_{makeLabel({}, TextRole::title, this, true)}, line_{makeLabel({}, TextRole::muted, this, true)}, buttons_{new QHBoxLayout}
{
    title_->setObjectName(QStringLiteral("pageTitle"));
    line_->setObjectName(QStringLiteral("pageLine"));
    for (QLabel* label : {title_, line_}) {
        label->setMinimumWidth(0);
        QSizePolicy policy{QSizePolicy::Ignored, QSizePolicy::Preferred};
        policy.setHeightForWidth(true);
        label->setSizePolicy(policy);
    }
    auto* row = new QHBoxLayout;
    row->addWidget(title_, 1);
    buttons_->setSpacing(8);
    row->addLayout(buttons_);
    row->setAlignment(buttons_, Qt::AlignTop);
    // The line has the whole width: beside the buttons there would be no room for it in large text.
    auto* rows = new QVBoxLayout{this};
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(2);
    rows->addLayout(row);
    rows->addWidget(line_);
}

void PageHead::setTitle(const QString& title)
{
    title_->setText(title);
}

void PageHead::setLine(const QString& line)
{
    line_->setText(line);
}

void PageHead::addButton(QWidget* button)
{
    buttons_->addWidget(button);
}

void setAccess(QWidget* widget, const QString& name, const QString& description)
{
    widget->setAccessibleName(name);
    widget->setAccessibleDescription(description);
}

void keepWheelOut(QWidget* field)
{
    field->setFocusPolicy(Qt::StrongFocus);
    field->installEventFilter(new WheelKeeper{field});
}

}
