#pragma once

#include "core/journal/standing.h"
#include "ui/forms/form_kind.h"
#include "ui/shelf/shelf_model.h"

#include <QWidget>

#include <optional>

namespace tierloam::shelf {

/// What opens in place at a click on a tray, on the sump or on "…": what it is and how it stands, and every act that can be recorded for it.
class PartPanel : public QWidget {
    Q_OBJECT

public:
    /// `part` absent: the whole stack.
    PartPanel(const StackModel& stack, const journal::Standing& standing, int otherStacks, std::optional<int> part, QWidget* parent = nullptr);

    std::string stack() const { return stack_; }
    std::optional<int> part() const { return part_; }

Q_SIGNALS:
    void actWanted(tierloam::forms::FormKind kind);
    void closeWanted();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    std::string stack_;
    std::optional<int> part_;
};

}
