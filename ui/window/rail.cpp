#include "ui/window/rail.h"

#include "ui/common/panels.h"

#include <QAction>
#include <QLabel>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace tierloam::window {

Rail::Rail(const ui::Theme& theme, QWidget* parent) : QFrame{parent}, theme_{theme}, pages_{new QVBoxLayout}
{
    setProperty("rail", true);
    setObjectName(QStringLiteral("rail"));
    auto* rows = new QVBoxLayout{this};
    rows->setContentsMargins(8, 22, 8, 16);
    rows->setSpacing(4);
    auto* name = ui::makeLabel(QStringLiteral("Tierloam"), ui::TextRole::section, this);
    ui::setTone(name, ui::Tone::moss);
    name->setContentsMargins(12, 0, 0, 14);
    rows->addWidget(name);
    pages_->setSpacing(6);
    rows->addLayout(pages_);
    rows->addStretch(1);
    saved_ = ui::makeLabel({}, ui::TextRole::smallMuted, this, true);
    saved_->setObjectName(QStringLiteral("savedState"));
    holds_ = ui::makeLabel({}, ui::TextRole::smallMuted, this, true);
    for (QLabel* label : {saved_, holds_}) {
        label->setContentsMargins(12, 0, 0, 0);
        rows->addWidget(label);
    }
    connect(&theme_, &ui::Theme::changed, this, [this] { fit(); });
}

void Rail::addPage(QAction* action)
{
    auto* button = new QToolButton{this};
    button->setProperty("railButton", true);
    button->setDefaultAction(action);
    button->setToolButtonStyle(Qt::ToolButtonTextOnly);
    button->setFocusPolicy(Qt::StrongFocus);
    button->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    const QString text = QString{action->text()}.remove(u'&');
    // Set by hand: a tool button shows the action's icon text, which loses the page's name when the action changes.
    button->setText(text);
    connect(action, &QAction::changed, button, [button] { button->setText(button->accessibleName()); });
    ui::setAccess(button, text);
    pages_->addWidget(button);
    buttons_ << button;
    fit();
}

void Rail::setPageShown(const QAction* action, bool shown)
{
    for (QToolButton* button : buttons_) {
        if (button->defaultAction() == action) button->setVisible(shown);
    }
}

void Rail::setPageText(const QAction* action, const QString& text)
{
    for (QToolButton* button : buttons_) {
        if (button->defaultAction() != action) continue;
        ui::setAccess(button, text);
        button->setText(text);
    }
    fit();
}

void Rail::setState(const QString& saved, const QString& holds)
{
    saved_->setText(saved);
    saved_->setVisible(!saved.isEmpty());
    holds_->setText(holds);
    holds_->setVisible(!holds.isEmpty());
}

QString Rail::savedText() const
{
    return saved_->text();
}

int Rail::wantedWidth() const
{
    int width = theme_.px(96);
    const QFontMetrics metrics{theme_.font(ui::TextSize::body, true)};
    for (const QToolButton* button : buttons_) width = std::max(width, metrics.horizontalAdvance(button->text()) + theme_.px(28) + 16);
    return width;
}

void Rail::fit()
{
    setFixedWidth(wantedWidth());
}

}
