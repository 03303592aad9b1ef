#include "ui/common/toggle.h"

#include "ui/common/panels.h"

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
    QObject::connect(action, &QAction::triggered, button, &QPushButton::click);
    bar->layout()->addWidget(button);
    return button;
}

}
