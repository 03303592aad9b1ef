#include "ui/shelf/part_panel.h"

#include "ui/common/flow_layout.h"
#include "ui/common/panels.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace tierloam::shelf {

namespace {

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

PartPanel::PartPanel(const StackModel& stack, const journal::Standing& standing, int otherStacks, std::optional<int> part, QWidget* parent)
    : QWidget{parent}, stack_{stack.key}, part_{part}
{
    const Part* about = part && *part < static_cast<int>(stack.parts.size()) ? &stack.parts[static_cast<std::size_t>(*part)] : nullptr;
    const QString name = about ? tr("%1: %2", "a stack and one of its trays").arg(stack.title, about->name) : tr("%1: everything that can be recorded").arg(stack.title);
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

    if (about) {
        auto* facts = ui::makeLabel(about->facts.join(QStringLiteral("  ·  ")), ui::TextRole::small, this, true);
        facts->setObjectName(QStringLiteral("panelFacts"));
        column->addWidget(facts);
    }
    const QList<forms::FormKind> kinds = !part        ? forms::kindsForStack(standing, otherStacks)
                                         : *part == 0 ? forms::kindsForSump(standing)
                                                      : forms::kindsForTray(standing, *part);
    auto* acts = new QWidget{this};
    auto* flow = new ui::FlowLayout{acts, 6};
    flow->setContentsMargins(0, 2, 0, 0);
    for (const forms::FormKind kind : kinds) {
        const ui::Tone tone = isMeant(kind, stack, part) ? ui::Tone::moss : ui::Tone::plain;
        auto* button = ui::makeButton(tr("%1…", "an act that opens a form").arg(forms::formName(kind)), tone, acts);
        button->setProperty("kind", static_cast<int>(kind));
        ui::setAccess(button, tr("%1, %2", "an act, and what it is done to").arg(forms::formName(kind), about ? about->name : stack.title));
        connect(button, &QPushButton::clicked, this, [this, kind] { Q_EMIT actWanted(kind); });
        flow->addWidget(button);
    }
    column->addWidget(acts);
    ui::setAccess(this, name, about ? about->facts.join(QStringLiteral(". ")) : QString{});
    if (!kinds.isEmpty()) setFocusProxy(acts->findChild<QPushButton*>());
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
