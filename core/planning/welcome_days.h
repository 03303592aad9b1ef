#pragma once

#include "core/planning/harvest_days.h"

#include <memory>
#include <vector>

/// Days on which a tray may be lifted: somebody is there, the day of the week is wished for, and one follows on which its castings can be taken.
namespace tierloam::planning {

inline constexpr int longestSearch = 400; ///< days after which no welcome day is looked for any more

bool isWelcome(int day, const HarvestWishes& wishes);

/// The welcome days of the years ahead, looked up instead of asked again and again. `wishes` outlive it.
class WelcomeDays {
public:
    explicit WelcomeDays(const HarvestWishes& wishes);
    bool operator()(int day) const { return day >= 0 && day < reach ? is_[static_cast<std::size_t>(day)] != 0 : isWelcome(day, wishes_); }
    const HarvestWishes& wishes() const { return wishes_; }

private:
    static constexpr int reach = 1024;
    const HarvestWishes& wishes_;
    std::vector<char> is_;
};

/// Of each stack: the household's, and what a stack's own absences leave of them. `wishes` outlive it.
class WelcomeOfEach {
public:
    WelcomeOfEach(const std::vector<StackTurns>& stacks, const HarvestWishes& wishes);
    const WelcomeDays& operator[](std::size_t stack) const { return own_[stack] ? own_[stack]->is : common_; }

private:
    struct Own {
        Own(const HarvestWishes& common, const std::vector<DaysAway>& away);
        HarvestWishes wishes;        ///< the stack's absences among them
        WelcomeDays is;
    };
    WelcomeDays common_;
    std::vector<std::unique_ptr<Own>> own_;
};

}
