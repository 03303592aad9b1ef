#include "ui/shelf/stack_access.h"

#include "ui/shelf/stack_canvas.h"
#include "ui/shelf/story_charts.h"
#include "ui/shelf/strips_view.h"
#include "ui/shelf/verdict_box.h"

#include <QAccessible>
#include <QAccessibleWidget>
#include <QCoreApplication>
#include <QPointer>

#include <vector>

namespace tierloam::shelf {

namespace {

/// The sump or one tray of a canvas.
class PartAccess final : public QAccessibleInterface, public QAccessibleActionInterface {
public:
    PartAccess(StackCanvas* canvas, int part) : canvas_{canvas}, part_{part} {}

    bool isValid() const override { return canvas_ && part_ < canvas_->partCount(); }
    QObject* object() const override { return nullptr; }
    QWindow* window() const override { return canvas_ ? canvas_->window()->windowHandle() : nullptr; }
    QAccessibleInterface* parent() const override { return QAccessible::queryAccessibleInterface(canvas_); }
    QAccessibleInterface* child(int) const override { return nullptr; }
    QAccessibleInterface* childAt(int, int) const override { return nullptr; }
    int childCount() const override { return 0; }
    int indexOfChild(const QAccessibleInterface*) const override { return -1; }
    QAccessible::Role role() const override { return QAccessible::ListItem; }

    QString text(QAccessible::Text kind) const override
    {
        if (!isValid()) return {};
        const Part& part = canvas_->stack().parts[static_cast<std::size_t>(part_)];
        switch (kind) {
        case QAccessible::Name: return part.name;
        case QAccessible::Value:
        case QAccessible::Description: return part.value;
        default: return {};
        }
    }
    void setText(QAccessible::Text, const QString&) override {}

    QRect rect() const override
    {
        if (!isValid()) return {};
        const QRect local = canvas_->partRect(part_);
        return {canvas_->mapToGlobal(local.topLeft()), local.size()};
    }

    QAccessible::State state() const override
    {
        QAccessible::State state;
        if (!isValid()) {
            state.invalid = true;
            return state;
        }
        state.focusable = true;
        state.selectable = true;
        state.readOnly = true;
        state.focused = canvas_->hasFocus() && canvas_->currentPart() == part_;
        state.selected = canvas_->selectedPart() == part_;
        state.invisible = !canvas_->isVisible();
        return state;
    }

    void* interface_cast(QAccessible::InterfaceType type) override
    {
        return type == QAccessible::ActionInterface ? static_cast<QAccessibleActionInterface*>(this) : nullptr;
    }
    QStringList actionNames() const override { return {pressAction(), setFocusAction()}; }
    void doAction(const QString& name) override
    {
        if (!isValid()) return;
        if (name == setFocusAction()) {
            canvas_->setFocus();
            canvas_->setCurrentPart(part_);
        } else if (name == pressAction()) {
            canvas_->setCurrentPart(part_);
            Q_EMIT canvas_->partActivated(part_);
        }
    }
    QStringList keyBindingsForAction(const QString& name) const override { return name == pressAction() ? QStringList{QStringLiteral("Return")} : QStringList{}; }

private:
    QPointer<StackCanvas> canvas_;
    int part_;
};

class CanvasAccess final : public QAccessibleWidget {
public:
    explicit CanvasAccess(StackCanvas* canvas) : QAccessibleWidget{canvas, QAccessible::List} {}

    ~CanvasAccess() override
    {
        for (const QAccessible::Id id : children_)
            if (id) QAccessible::deleteAccessibleInterface(id);
    }

    int childCount() const override { return canvas()->partCount(); }

    QAccessibleInterface* child(int index) const override
    {
        if (index < 0 || index >= childCount()) return nullptr;
        if (children_.size() <= static_cast<std::size_t>(index)) children_.resize(static_cast<std::size_t>(index) + 1, 0);
        QAccessible::Id& id = children_[static_cast<std::size_t>(index)];
        if (!id) id = QAccessible::registerAccessibleInterface(new PartAccess{canvas(), index}); // owned by the registry, freed above
        return QAccessible::accessibleInterface(id);
    }

    int indexOfChild(const QAccessibleInterface* child) const override
    {
        for (int i = 0; i < childCount(); ++i)
            if (this->child(i) == child) return i;
        return -1;
    }

    QAccessibleInterface* childAt(int x, int y) const override
    {
        for (int i = 0; i < childCount(); ++i)
            if (child(i)->rect().contains(x, y)) return child(i);
        return nullptr;
    }

    QAccessibleInterface* focusChild() const override { return canvas()->hasFocus() ? child(canvas()->currentPart()) : nullptr; }

    QString text(QAccessible::Text kind) const override
    {
        if (kind == QAccessible::Value && canvas()->hasStack()) return canvas()->stack().value;
        return QAccessibleWidget::text(kind);
    }

private:
    StackCanvas* canvas() const { return static_cast<StackCanvas*>(widget()); }

    mutable std::vector<QAccessible::Id> children_;
};

/// What is drawn and not walked through: its value is what it says.
class ToldAccess final : public QAccessibleWidget {
public:
    ToldAccess(QWidget* widget, QAccessible::Role role) : QAccessibleWidget{widget, role} {}

    QString text(QAccessible::Text kind) const override { return QAccessibleWidget::text(kind == QAccessible::Value ? QAccessible::Description : kind); }
    QAccessible::State state() const override
    {
        QAccessible::State state = QAccessibleWidget::state();
        state.readOnly = true;
        return state;
    }
};

QAccessibleInterface* makeAccess(const QString&, QObject* object)
{
    if (auto* canvas = qobject_cast<StackCanvas*>(object)) return new CanvasAccess{canvas};
    if (auto* verdict = qobject_cast<VerdictBox*>(object)) return new ToldAccess{verdict, QAccessible::StaticText};
    if (auto* strips = qobject_cast<StripsView*>(object)) return new ToldAccess{strips, QAccessible::Chart};
    if (auto* charts = qobject_cast<StoryCharts*>(object)) return new ToldAccess{charts, QAccessible::Chart};
    return nullptr;
}

}

void installStackAccess()
{
    static const bool once = [] {
        QAccessible::installFactory(makeAccess);
        return true;
    }();
    Q_UNUSED(once)
}

}
