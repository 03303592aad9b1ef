#pragma once

#include "core/journal/standing.h"
#include "ui/common/theme.h"
#include "ui/forms/form_kind.h"
#include "ui/forms/held_to_room.h"
#include "ui/shelf/part_story.h"
#include "ui/shelf/shelf_model.h"

#include <QWidget>

#include <optional>

class QBoxLayout;

namespace tierloam::forms {
class CautionCard;
}

namespace tierloam::shelf {

class StoryCharts;

/// What opens in place at a click on a tray, on the sump or on "…": what to beware of and what may be done to it first, then why a
/// step would be too early, then its story: facts beside charts, or over them where the place is narrow.
class PartPanel : public QWidget, public forms::HeldToRoom {
    Q_OBJECT

public:
    struct About {
        const StackModel& stack;
        const journal::Standing& standing;
        int otherStacks = 0;
        std::optional<int> part;       ///< absent: the whole stack
        PartStory story;
    };
    PartPanel(const ui::Theme& theme, const About& about, QWidget* parent = nullptr);

    std::string stack() const { return stack_; }
    std::optional<int> part() const { return part_; }
    StoryCharts* charts() const { return charts_; } ///< nullptr for the whole stack
    /// The act whose button has the focus, so that a panel made anew can give it back; nullopt when none has.
    std::optional<forms::FormKind> focusedAct() const;
    /// Focus to that act's button, else to the first.
    void focusAct(std::optional<forms::FormKind> kind);
    int heightForWidth(int width) const override;
    int holdTo(int height, int width) override; ///< cautions in few words above a third of the place; all below them scrolls

Q_SIGNALS:
    void actWanted(tierloam::forms::FormKind kind);
    void closeWanted();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void addActs(const About& about, const QString& name);
    void hideRarer(QWidget* acts);
    void addStory(const ui::Theme& theme, const About& about, const Part& part);
    void turn(int width) const;

    std::string stack_;
    std::optional<int> part_;
    StoryCharts* charts_ = nullptr;
    QBoxLayout* body_ = nullptr;
    forms::CautionCard* cautions_;
};

}
