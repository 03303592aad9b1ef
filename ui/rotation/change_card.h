#pragma once

#include "core/household/household.h"
#include "core/planning/changes.h"
#include "ui/common/actions.h"
#include "ui/common/panels.h"
#include "ui/common/theme.h"
#include "ui/rotation/background.h"
#include "ui/rotation/tried_change.h"

class QGridLayout;
class QLabel;
class QPushButton;

namespace tierloam::ui {
class AmountField;
class ChoiceField;
class CountField;
class DateField;
class TemperatureField;
}

namespace tierloam::rotation {

class TwoCourses;

/// "What if": a change of one stack beside its usual course, on the same members with the same random numbers.
class ChangeCard : public ui::Card {
    Q_OBJECT

public:
    enum class Kind { feed, warmer, away, addTray, harvest, giveAway, anotherStack, wayBack, anotherPast, pastHarvest };

    ChangeCard(household::Household& household, Background& background, const ui::Theme& theme, QWidget* parent = nullptr);
    void refresh();
    /// The keys of that action compare, wherever the focus is on the page.
    void giveKeys(ui::ActionId compare, QWidget* page);
    void chooseKind(Kind kind);
    bool daysCanBe(Kind kind);
    void tryIt();
    /// Where larger charts stand beside it, its own small ones are left out.
    void leaveCoursesOut();
    /// What was tried last; an empty sentence: nothing, or it was forgotten.
    const TriedChange& shown() const { return shown_; }
    /// Takes the answer away, and the one under way: it is to another question, or rests on estimates that are no longer those of the household.
    void forget();

Q_SIGNALS:
    void tried();                    ///< shown() has changed

private:
    void showFields();
    void fillEntries();
    void askAnew();
    void followDay();
    void propose();
    void tellBedYear();
    void show(const TriedChange& change);

    household::Household& household_;
    Background& background_;
    const ui::Theme& theme_;
    Day today_{};                    ///< on which the fields stand
    ui::ChoiceField* stack_;
    ui::ChoiceField* kind_;
    ui::AmountField* kg_;
    ui::TemperatureField* temperature_;
    ui::DateField* from_;
    ui::DateField* on_;              ///< a past day
    ui::DateField* to_;
    ui::CountField* weeks_;
    ui::ChoiceField* entry_;
    QPushButton* go_;
    QLabel* sentence_;
    QLabel* feeding_;                ///< a line for each step
    QWidget* table_;
    TwoCourses* courses_;
    TriedChange shown_;
    bool withCourses_ = true;
    int question_ = 0;               ///< number of the one that stands
    std::shared_ptr<const reckoning::Reckoning> askedOf_; ///< what the answer shown, or under way, rests on
};

}
