#include "ui/window/rail.h"

#include "ui/common/panels.h"

#include <QAction>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace tierloam::window {

Rail::Rail(const ui::Theme& theme, QWidget* parent) : QFrame{parent}, theme_{theme}, pages_{new QVBoxLayout}
{
    setProperty("rail", true);
    setObjectName(QStringLiteral("rail"));
    auto* rows = new QVBoxLayout{this};
    rows->setContentsMargins(8, 16, 8, 12);
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
    const QString text = QString{action->text()}.remove(u'&');
    auto* button = new QPushButton{text, this};
    button->setProperty("railButton", true);
    button->setCheckable(true);
    button->setAutoDefault(false);
    button->setChecked(action->isChecked());
    button->setToolTip(action->toolTip());
    ui::setAccess(button, text);
    connect(button, &QPushButton::clicked, action, [button, action] {
        action->trigger();
        button->setChecked(action->isChecked()); // the window decides which page is shown
    });
    connect(action, &QAction::toggled, button, &QPushButton::setChecked);
    pages_->addWidget(button);
    buttons_ << Entry{action, button};
    fit();
}

void Rail::setPageShown(const QAction* action, bool shown)
{
    for (const Entry& entry : buttons_) {
        if (entry.action == action) entry.button->setVisible(shown);
    }
}

void Rail::setPageText(const QAction* action, const QString& text)
{
    for (const Entry& entry : buttons_) {
        if (entry.action != action) continue;
        ui::setAccess(entry.button, text);
        entry.button->setText(text);
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
    for (const Entry& entry : buttons_) width = std::max(width, metrics.horizontalAdvance(entry.button->text()) + theme_.px(28) + 16);
    return width;
}

void Rail::fit()
{
    setFixedWidth(wantedWidth());
}

}
