#include "ui/shelf/part_panel.h"

#include "ui/common/fact_list.h"
#include "ui/common/flow_layout.h"
#include "ui/common/panels.h"
#include "ui/forms/caution_card.h"
#include "ui/shelf/story_charts.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace tierloam::shelf {

namespace {

constexpr int actsAtFirst = 6;

/// The act that a part is most often opened for stands out.
bool isMeant(forms::FormKind kind, const StackModel& stack, std::optional<int> part)
{
    if (part == 0) return kind == forms::FormKind::drain;
    if (!part) return kind == forms::FormKind::feed;
    const auto& tray = stack.picture.trays[static_cast<std::size_t>(*part) - 1];
    if (tray.drying) return kind == forms::FormKind::harvest;
    using reckoning::TrayState;
    const bool ready = tray.ready && (tray.ready->state == TrayState::ready || tray.ready->state == TrayState::overdue);
    return *part == 1 && ready && kind == forms::FormKind::rotate;
}

}

PartPanel::PartPanel(const ui::Theme& theme, const About& about, QWidget* parent) : QWidget{parent}, stack_{about.stack.key}, part_{about.part}, cautions_{new forms::CautionCard{this}}
{
    const StackModel& stack = about.stack;
    const Part* part = part_ && *part_ < static_cast<int>(stack.parts.size()) ? &stack.parts[static_cast<std::size_t>(*part_)] : nullptr;
    const QString name = part ? tr("%1: %2", "a stack and one of its trays").arg(stack.title, part->name) : tr("%1: everything that can be recorded").arg(stack.title);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);

    auto* head = new QHBoxLayout;
    auto* title = ui::makeLabel(name, ui::TextRole::section, this, true);
    title->setObjectName(QStringLiteral("panelTitle"));
    auto* close = ui::makeButton(tr("Close"), ui::Tone::plain, this);
    close->setObjectName(QStringLiteral("closePanelButton"));
    close->setToolTip(tr("Close (Esc)"));
    connect(close, &QPushButton::clicked, this, &PartPanel::closeWanted);
    head->addWidget(title, 1);
    head->addWidget(close, 0, Qt::AlignTop);
    column->addLayout(head);

    column->addWidget(cautions_);
    cautions_->setCautions(about.story.cautions);
    addActs(about, part ? part->name : stack.title);
    for (const QString& reason : about.story.reasons) column->addWidget(ui::makeLabel(reason, ui::TextRole::small, this, true));
    if (part) addStory(theme, about, *part);
    column->addStretch(1);
    ui::setAccess(this, name, part ? part->value : QString{});
}

void PartPanel::addActs(const About& about, const QString& name)
{
    QList<forms::FormKind> kinds = !part_        ? forms::kindsForStack(about.standing, about.otherStacks)
                                         : *part_ == 0 ? forms::kindsForSump(about.standing)
                                                       : forms::kindsForTray(about.standing, *part_);
    std::stable_partition(kinds.begin(), kinds.end(), [&](forms::FormKind kind) { return isMeant(kind, about.stack, part_); });
    auto* acts = new QWidget{this};
    auto* flow = new ui::FlowLayout{acts, 6};
    flow->setContentsMargins(0, 2, 0, 0);
    for (const forms::FormKind kind : kinds) {
        const ui::Tone tone = isMeant(kind, about.stack, part_) ? ui::Tone::moss : ui::Tone::plain;
        auto* button = ui::makeButton(tr("%1…", "an act that opens a form").arg(forms::formName(kind)), tone, acts);
        button->setProperty("kind", static_cast<int>(kind));
        ui::setAccess(button, tr("%1, %2", "an act, and what it is done to").arg(forms::formName(kind), name));
        connect(button, &QPushButton::clicked, this, [this, kind] { Q_EMIT actWanted(kind); });
        flow->addWidget(button);
    }
    if (part_ && kinds.size() > actsAtFirst + 1) hideRarer(acts);
    layout()->addWidget(acts);
    if (!kinds.isEmpty()) setFocusProxy(acts->findChild<QPushButton*>());
}

/// The rarer acts come up at a click, so that the story is seen first.
void PartPanel::hideRarer(QWidget* acts)
{
    const QList<QPushButton*> buttons = acts->findChildren<QPushButton*>();
    const QList<QPushButton*> rarer = buttons.mid(actsAtFirst);
    for (QPushButton* button : rarer) button->hide();
    auto* more = ui::makeButton(tr("More…"), ui::Tone::plain, acts);
    more->setObjectName(QStringLiteral("moreActsButton"));
    ui::setAccess(more, tr("%n more act(s) for it", nullptr, static_cast<int>(rarer.size())));
    connect(more, &QPushButton::clicked, this, [this, more, rarer] {
        for (QPushButton* button : rarer) button->show();
        more->hide();
        rarer.front()->setFocus(Qt::OtherFocusReason);
        updateGeometry();
    });
    acts->layout()->addWidget(more);
}

void PartPanel::addStory(const ui::Theme& theme, const About& about, const Part& part)
{
    auto* words = new QVBoxLayout;
    words->setSpacing(6);
    auto* facts = new ui::FactList{this};
    facts->setObjectName(QStringLiteral("panelFacts"));
    facts->setFacts(part.facts + about.story.facts);
    words->addWidget(facts);
    for (const QString& note : part.notes) words->addWidget(ui::makeLabel(note, ui::TextRole::smallMuted, this, true));
    words->addStretch(1);
    charts_ = new StoryCharts{theme, about.story, this};
    body_ = new QBoxLayout{QBoxLayout::LeftToRight};
    body_->setContentsMargins(0, 4, 0, 0);
    body_->setSpacing(16);
    body_->addLayout(words, 1);
    body_->addWidget(charts_, 1, Qt::AlignTop);
    static_cast<QBoxLayout*>(layout())->addLayout(body_);
}

/// Charts under the facts where both side by side would be narrow.
void PartPanel::turn(int width) const
{
    if (!body_) return;
    const bool beside = width >= 46 * fontMetrics().averageCharWidth() * 2;
    body_->setDirection(beside ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
}

int PartPanel::heightForWidth(int width) const
{
    turn(width);
    return layout()->totalHeightForWidth(width);
}

int PartPanel::holdTo(int height, int width)
{
    cautions_->holdTo(height / 3, width);
    int least = 0; // down to the cautions
    for (int i = 0; i < layout()->count(); ++i) {
        QLayoutItem* item = layout()->itemAt(i);
        if (!item->isEmpty()) least += (item->hasHeightForWidth() ? item->heightForWidth(width) : item->sizeHint().height()) + layout()->spacing();
        if (item->widget() == cautions_) break;
    }
    return least;
}

void PartPanel::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    turn(width());
}

std::optional<forms::FormKind> PartPanel::focusedAct() const
{
    const QWidget* focus = focusWidget();
    const QVariant kind = focus && focus->hasFocus() ? focus->property("kind") : QVariant{};
    return kind.isValid() ? std::optional{static_cast<forms::FormKind>(kind.toInt())} : std::nullopt;
}

void PartPanel::focusAct(std::optional<forms::FormKind> kind)
{
    for (QPushButton* button : findChildren<QPushButton*>()) {
        if (!kind || button->property("kind") != static_cast<int>(*kind)) continue;
        if (button->isHidden()) findChild<QPushButton*>(QStringLiteral("moreActsButton"))->click();
        return button->setFocus(Qt::OtherFocusReason);
    }
    setFocus(Qt::OtherFocusReason);
}

void PartPanel::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape) {
        Q_EMIT closeWanted();
        return;
    }
    QWidget::keyPressEvent(event);
}

}
