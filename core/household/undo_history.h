#pragma once

#include "core/journal/edit.h"
#include "core/store/photo.h"

#include <QString>
#include <QUndoStack>

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <set>
#include <utility>
#include <vector>

namespace tierloam::household {

/// One step that can be undone, as rows of the file: those that came, those that were changed (before and after), those that went.
struct UndoStep {
    struct Setting {
        QString name, before, after;
    };
    QString label;
    journal::Entries came;
    std::vector<std::pair<journal::Entry, journal::Entry>> changed;
    journal::Entries went;
    std::optional<Setting> setting;
    std::vector<qint64> series;              ///< logged series that came
    std::optional<store::PhotoJob> photo;    ///< what was done, with its id and without its bytes

    journal::Edit undoing() const;
    journal::Edit redoing() const;
    bool touches(const std::set<journal::EntryId>& ids, const std::set<QString>& settings) const;
};

enum class Direction { undo, redo };

/// The undo stack of a household whose steps are asynchronous writes. The stack moves at once when somebody presses undo; whether the
/// write came about is told afterwards, and the stack is put right when it did not.
class UndoHistory {
public:
    using StepRef = std::shared_ptr<const UndoStep>;
    /// Called when somebody undoes or redoes a step; must answer through done, failed or drop, later.
    using Ask = std::function<void(const StepRef&, Direction)>;

    explicit UndoHistory(Ask ask) : ask_{std::move(ask)} {}

    QUndoStack* stack() { return &stack_; }
    /// A step that is durable already. Whatever could be redone goes.
    void push(UndoStep step);
    void done(const StepRef& step, Direction direction);
    /// Nothing that was asked for and not yet done will be: the stack stands again where the file stands.
    void allFailed();
    /// The step has become impossible: it leaves the stack.
    void drop(const StepRef& step);
    /// Drops the steps that touch these rows; how many.
    int dropTouching(const std::set<journal::EntryId>& ids, const std::set<QString>& settings = {});

private:
    class Command;
    struct Known {
        StepRef step;
        bool applied = true;  ///< in the file
        bool asked = true;    ///< in the file once all that is under way is done
    };

    void moved(const StepRef& step, Direction direction);
    std::vector<Known> inStack() const;
    void rebuild(const std::vector<Known>& kept);
    Known* find(const StepRef& step);

    QUndoStack stack_;
    std::vector<Known> known_; ///< in the order of the stack; may hold steps that the stack has already let go
    Ask ask_;
    bool quiet_ = false;       ///< the stack is being put right: commands do nothing
};

}
