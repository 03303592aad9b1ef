#include "ui/common/toggle.h"

#include "ui/common/panels.h"

#include <QAbstractButton>
#include <QAction>
#include <QLayout>
#include <QPushButton>

namespace tierloam::ui {

QPushButton* addToggle(ActionId id, QWidget* page, QWidget* bar)
{
    QAction* action = makeAction(id, page);
    page->addAction(action);
    auto* button = makeButton(actionName(id), Tone::plain, bar);
    button->setCheckable(true);
    button->setObjectName(QString::fromLatin1(actionRow(id).name));
    button->setToolTip(action->toolTip());
    setAct(button, id);
    QObject::connect(action, &QAction::triggered, button, &QPushButton::click);
    bar->layout()->addWidget(button);
    return button;
}

void giveKeys(QAbstractButton* button, ActionId id, QWidget* page, std::optional<int> which)
{
    QAction* action = makeAction(id, button);
    if (which) action->setShortcuts(actionKeys(id).mid(*which, 1));
    page->addAction(action);
    setAct(button, id, which.value_or(0));
    button->setToolTip(withKeys(button->accessibleName().isEmpty() ? actionName(id) : button->accessibleName(), button));
    QObject::connect(action, &QAction::triggered, button, [button] {
        if (button->isVisible() && button->isEnabled()) button->click();
    });
}

}
