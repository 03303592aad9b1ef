#pragma once

#include "core/advice/household_advice.h"
#include "core/household/household.h"
#include "ui/common/panels.h"
#include "ui/rotation/background.h"

#include <map>

class QLabel;

namespace tierloam::rotation {

/// The diary of advice: which turns were advised and what was done, and how often it was right on the harvests that were weighed; what else was
/// advised in the last 90 days, and whether it was followed.
class TrackCard : public ui::Card {
    Q_OBJECT

public:
    TrackCard(household::Household& household, Background& background, QWidget* parent = nullptr);
    void refresh();
    /// All of it at once, in this thread.
    void refreshNow();
    QString recordText() const;
    using Care = std::map<std::string, std::vector<advice::DiaryLine>>; ///< by stack
    /// In words, beside the turns and harvests of the present reckoning.
    void tell(Care care);

private:
    static Care careOf(const reckoning::Reckoning& reckoning, const household::StackOrder& order, const household::JournalView& journal, const std::vector<advice::PutOff>& kept, std::stop_token stop);
    std::vector<advice::PutOff> kept() const;
    void tell();

    household::Household& household_;
    Background& background_;
    Care care_;
    QLabel* record_;
    QLabel* diary_;
};

}
