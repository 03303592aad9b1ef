#include "ui/window/rail.h"

#include "ui/common/panels.h"
#include "ui/common/styled.h"

#include <QAction>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace tierloam::window {

namespace {

constexpr double roomyPadding = 11, tightPadding = 4; ///< px above and beneath the name of a page, as the style sheet has them

}

Rail::Rail(const ui::Theme& theme, QWidget* parent) : QFrame{parent}, theme_{theme}, pages_{new QVBoxLayout}
{
    setProperty("rail", true);
    setObjectName(QStringLiteral("rail"));
    auto* rows = new QVBoxLayout{this};
    rows->setContentsMargins(8, 16, 8, 12);
    rows->setSpacing(4);
    name_ = ui::makeLabel(QStringLiteral("Tierloam"), ui::TextRole::section, this);
    ui::setTone(name_, ui::Tone::moss);
    name_->setContentsMargins(12, 0, 0, 14);
    rows->addWidget(name_);
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
    ui::setStyled(button, "tight", tight_);
    buttons_ << Entry{action, button};
    fit();
}

void Rail::setPageShown(const QAction* action, bool shown)
{
    for (const Entry& entry : buttons_) {
        if (entry.action == action) entry.button->setVisible(shown);
    }
    tighten();
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

void Rail::setState(const QString& saved, const QString& holds, const QString& where)
{
    // A name that is longer than the rail is wide is cut in it and read whole in the tool tip.
    const int room = wantedWidth() - layout()->contentsMargins().left() - layout()->contentsMargins().right() - saved_->contentsMargins().left();
    QStringList words = saved.split(u' ');
    for (QString& word : words) word = saved_->fontMetrics().elidedText(word, Qt::ElideRight, room);
    saved_->setText(words.join(u' '));
    ui::setAccess(saved_, saved);
    saved_->setToolTip(saved_->text() == saved ? QString{} : saved);
    saved_->setVisible(!saved.isEmpty());
    holds_->setText(holds);
    holds_->setToolTip(where);
    ui::setAccess(holds_, holds, where);
    tighten();
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
    tighten();
}

void Rail::resizeEvent(QResizeEvent* event)
{
    QFrame::resizeEvent(event);
    tighten();
}

int Rail::neededHeight(bool tight, bool withHolds) const
{
    const QMargins around = layout()->contentsMargins();
    const auto inside = [this](const QLabel* label) { return label->heightForWidth(width() - layout()->contentsMargins().left() - layout()->contentsMargins().right()) + layout()->spacing(); };
    const auto shown = static_cast<int>(std::ranges::count_if(buttons_, [this](const Entry& entry) { return entry.button->isVisibleTo(this); }));
    const int line = QFontMetrics{theme_.font(ui::TextSize::body, true)}.height();
    int height = around.top() + around.bottom() + name_->sizeHint().height() + layout()->spacing() + shown * (std::max(line, theme_.px(18)) + 2 * theme_.px(tight ? tightPadding : roomyPadding) + pages_->spacing());
    if (!saved_->text().isEmpty()) height += inside(saved_);
    if (withHolds && !holds_->text().isEmpty()) height += inside(holds_);
    return height;
}

/// Where little height is left the pages stand closer, and then what the file holds is left out: no name lies over another.
void Rail::tighten()
{
    const bool tight = neededHeight(false, true) > height();
    holds_->setVisible(!holds_->text().isEmpty() && (!tight || neededHeight(true, true) <= height()));
    if (tight == std::exchange(tight_, tight)) return;
    for (const Entry& entry : buttons_) ui::setStyled(entry.button, "tight", tight);
}

}
