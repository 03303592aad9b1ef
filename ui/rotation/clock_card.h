#pragma once

#include "core/household/household.h"
#include "core/planning/turn_clock.h"
#include "ui/common/panels.h"
#include "ui/rotation/background.h"

#include <map>

namespace tierloam::rotation {

/// For each stack the date of its next turn, what holds it back and how many days each lever gains.
class ClockCard : public ui::Card {
    Q_OBJECT

public:
    ClockCard(household::Household& household, Background& background, QWidget* parent = nullptr);
    /// Asks for the clocks of the present reckoning, in the background.
    void refresh();
    void refreshNow();
    using Clocks = std::map<std::string, planning::TurnClock>; ///< by stack
    /// In words; `of`: the reckoning that they were asked of.
    void tell(const Clocks& clocks, const reckoning::Reckoning& of);

private:
    static std::optional<Clocks> clocksOf(const reckoning::Reckoning& reckoning, const household::StackOrder& order, std::stop_token stop);

    household::Household& household_;
    Background& background_;
    QWidget* body_;
    Day today_{};
};

}
