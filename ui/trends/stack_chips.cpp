#include "ui/trends/stack_chips.h"

#include "ui/common/flow_layout.h"
#include "ui/common/panels.h"

#include <QPushButton>
#include <QSignalBlocker>
#include <QStringBuilder>

namespace tierloam::trends {

namespace {

/// So many stacks are shown at first; the others wait to be chosen.
constexpr int shownAtFirst = 4;

void say(QPushButton& chip)
{
    const QString box = chip.isChecked() ? QStringLiteral("☑ ") : QStringLiteral("☐ ");
    chip.setText(box % chip.property("stack").toString().replace(u'&', QStringLiteral("&&")));
}

}

StackChips::StackChips(QWidget* parent) : QWidget{parent} { new ui::FlowLayout{this, 8}; }

void StackChips::setStacks(const QStringList& names)
{
    if (names == stacks_ && layout()->count() == names.size()) return;
    int known = static_cast<int>(stacks_.size());
    for (const QString& name : names) {
        if (stacks_.contains(name)) continue;
        if (known >= shownAtFirst && names.size() > shownAtFirst + 2) hidden_.insert(name);
        ++known;
    }
    stacks_ = names;
    makeChips();
}

void StackChips::makeChips()
{
    QString focused;
    if (const QWidget* focus = focusWidget(); focus && focus->hasFocus()) focused = focus->property("stack").toString();
    while (QLayoutItem* item = layout()->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    setVisible(stacks_.size() > 1);
    for (const QString& name : stacks_) {
        auto* chip = ui::makeButton({}, ui::Tone::plain, this);
        chip->setCheckable(true);
        chip->setChecked(!hidden_.contains(name));
        chip->setProperty("stack", name);
        say(*chip);
        ui::setAccess(chip, tr("Show stack %1").arg(name));
        connect(chip, &QPushButton::toggled, chip, [chip] { say(*chip); });
        connect(chip, &QPushButton::toggled, this, [this, name](bool on) {
            setShown(name, on);
            Q_EMIT chosen();
        }, Qt::QueuedConnection);
        layout()->addWidget(chip);
        chip->show();
        if (name == focused) chip->setFocus();
    }
}

void StackChips::setShown(const QString& stack, bool shown)
{
    if (shown) hidden_.erase(stack);
    else hidden_.insert(stack);
    for (auto* chip : findChildren<QPushButton*>()) {
        if (chip->property("stack").toString() != stack || chip->isChecked() == shown) continue;
        const QSignalBlocker quiet{chip};
        chip->setChecked(shown);
        say(*chip);
    }
}

QStringList StackChips::shown() const
{
    QStringList names;
    for (const QString& name : stacks_)
        if (!hidden_.contains(name)) names << name;
    return names;
}

}
