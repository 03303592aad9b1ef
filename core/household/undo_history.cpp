#include "core/household/undo_history.h"

#include <QUndoCommand>

#include <algorithm>

namespace tierloam::household {

journal::Edit UndoStep::undoing() const
{
    journal::Edit edit;
    edit.added = went;
    for (const auto& [before, after] : changed) edit.replaced.push_back(before);
    for (const auto& entry : came) edit.deleted.push_back(entry.id);
    return edit;
}

journal::Edit UndoStep::redoing() const
{
    journal::Edit edit;
    edit.added = came;
    for (const auto& [before, after] : changed) edit.replaced.push_back(after);
    for (const auto& entry : went) edit.deleted.push_back(entry.id);
    return edit;
}

bool UndoStep::touches(const std::set<journal::EntryId>& ids, const std::set<QString>& settings) const
{
    if (setting && settings.contains(setting->name)) return true;
    const auto one = [&](const journal::Entry& entry) { return ids.contains(entry.id); };
    return std::ranges::any_of(came, one) || std::ranges::any_of(went, one)
        || std::ranges::any_of(changed, [&](const auto& pair) { return one(pair.first); });
}

class UndoHistory::Command : public QUndoCommand {
public:
    Command(UndoHistory& history, StepRef step) : QUndoCommand{step->label}, history_{history}, step_{std::move(step)} {}
    void undo() override { history_.moved(step_, Direction::undo); }
    void redo() override { history_.moved(step_, Direction::redo); }
    const StepRef& step() const { return step_; }

private:
    UndoHistory& history_;
    StepRef step_;
};

void UndoHistory::push(UndoStep step)
{
    auto ref = std::make_shared<const UndoStep>(std::move(step));
    known_ = inStack();
    std::erase_if(known_, [](const Known& known) { return !known.asked; });
    known_.push_back({ref, true, true});
    quiet_ = true; // the first redo does nothing: the step is written already
    stack_.push(new Command{*this, std::move(ref)});
    quiet_ = false;
}

void UndoHistory::moved(const StepRef& step, Direction direction)
{
    if (quiet_) return;
    if (Known* known = find(step)) known->asked = direction == Direction::redo;
    ask_(step, direction);
}

void UndoHistory::done(const StepRef& step, Direction direction)
{
    if (Known* known = find(step)) known->applied = direction == Direction::redo;
}

void UndoHistory::allFailed()
{
    auto kept = inStack();
    for (Known& known : kept) known.asked = known.applied;
    rebuild(kept);
}

void UndoHistory::drop(const StepRef& step)
{
    auto kept = inStack();
    std::erase_if(kept, [&](const Known& known) { return known.step == step; });
    rebuild(kept);
}

int UndoHistory::dropTouching(const std::set<journal::EntryId>& ids, const std::set<QString>& settings)
{
    auto kept = inStack();
    const auto dropped = std::erase_if(kept, [&](const Known& known) { return known.step->touches(ids, settings); });
    if (dropped > 0) rebuild(kept);
    return static_cast<int>(dropped);
}

UndoHistory::Known* UndoHistory::find(const StepRef& step)
{
    const auto found = std::ranges::find(known_, step, &Known::step);
    return found == known_.end() ? nullptr : &*found;
}

/// What the stack holds, in its order, with what is known of each.
std::vector<UndoHistory::Known> UndoHistory::inStack() const
{
    std::vector<Known> held;
    for (int i = 0; i < stack_.count(); ++i) {
        const auto* command = static_cast<const Command*>(stack_.command(i));
        const auto known = std::ranges::find(known_, command->step(), &Known::step);
        if (known != known_.end()) held.push_back(*known);
    }
    return held;
}

/// QUndoStack cannot take a step out of its middle, nor move without running commands: it is filled anew, with its commands silent.
void UndoHistory::rebuild(const std::vector<Known>& kept)
{
    const auto standing = static_cast<int>(std::ranges::count_if(kept, &Known::asked));
    quiet_ = true;
    stack_.clear();
    for (const Known& known : kept) stack_.push(new Command{*this, known.step});
    stack_.setIndex(standing);
    quiet_ = false;
    known_ = kept;
}

}
