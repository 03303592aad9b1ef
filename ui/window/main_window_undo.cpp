#include "core/household/household.h"
#include "ui/window/main_window.h"

#include <QAction>
#include <QUndoStack>

#include <utility>

/// Undo and redo. A step comes onto the stack only when it is durable; who asks for undo before that means this step, not the one before it, and is
/// not to wait and press once more.
namespace tierloam::window {

void MainWindow::followSteps()
{
    undoFrom_.reset();
    const household::Household* household = household_.get();
    const QUndoStack* undo = household->undoStack();
    connect(undo, &QUndoStack::indexChanged, this, &MainWindow::syncUndo);
    connect(undo, &QUndoStack::canUndoChanged, this, &MainWindow::syncUndo);
    connect(undo, &QUndoStack::canRedoChanged, this, &MainWindow::syncUndo);
    connect(household, &household::Household::failed, this, [this] { undoFrom_.reset(); }); // it is not there: the one before it was not meant
    connect(household, &household::Household::stepUnderWayChanged, this, &MainWindow::stepsWritten);
}

void MainWindow::undoAsked()
{
    if (!household_) return;
    if (household_->stepUnderWay()) undoFrom_ = household_->undoStack()->index(); // asked for again it is still one step
    else household_->undoStack()->undo();
    syncUndo();
}

void MainWindow::redoAsked()
{
    if (!household_) return;
    if (household_->stepUnderWay()) undoFrom_.reset(); // it stays
    else household_->undoStack()->redo();
    syncUndo();
}

void MainWindow::stepsWritten()
{
    if (household_ && !household_->stepUnderWay()) {
        const auto from = std::exchange(undoFrom_, std::nullopt);
        QUndoStack* undo = household_->undoStack();
        if (from && undo->index() > *from) undo->undo();
    }
    syncUndo();
}

void MainWindow::syncUndo()
{
    const QUndoStack* undo = household_ ? household_->undoStack() : nullptr;
    const bool writing = household_ && household_->stepUnderWay();
    const auto sync = [&](ui::ActionId id, bool can, const QString& step) {
        action(id)->setEnabled(can);
        action(id)->setText(step.isEmpty() ? ui::actionText(id) : QStringLiteral("%1: %2").arg(ui::actionText(id), step));
    };
    if (writing) { // what will be on the stack in a moment: nothing flickers
        const QString step = household_->labelUnderWay();
        sync(ui::ActionId::undo, !undoFrom_, step);
        sync(ui::ActionId::redo, undoFrom_.has_value(), undoFrom_ ? step : QString{});
        return;
    }
    sync(ui::ActionId::undo, undo && undo->canUndo(), undo && undo->canUndo() ? undo->undoText() : QString{});
    sync(ui::ActionId::redo, undo && undo->canRedo(), undo && undo->canRedo() ? undo->redoText() : QString{});
}

}
