#pragma once

#include "core/quantity/day_text.h"
#include "ui/common/field.h"

class QToolButton;

namespace tierloam::ui {

class FieldEdit;

/// A civil day and, when wished, a time of day. It stands on today, or so many days from it, until it is changed, also when midnight passes meanwhile.
/// Typed as the locale writes dates or as 2031-05-01; "today" and "yesterday" are understood; Up and Down go a day on and back.
class DateField : public Field {
    Q_OBJECT

public:
    explicit DateField(Day today, QWidget* parent = nullptr);

    /// Moves "today"; the field follows while it was not changed.
    void setToday(Day today);
    /// Stands so many days after today (negative: before), and goes on with it while it is not changed.
    void propose(int daysFromToday);
    /// What it dates has been done: a day after today is at fault. `standing`: one that stands in the journal already and may stay.
    void setDone(bool done, std::optional<Day> standing = std::nullopt);
    void setMoment(const DayAndTime& moment);
    /// Empties it, where a date may be left out.
    void clearMoment();
    Typed<DayAndTime> moment() const;
    bool isEmpty() const override;

    FieldEdit* edit() const { return edit_; }
    FieldEdit* timeEdit() const { return time_; }
    QToolButton* timeButton() const { return addTime_; }

protected:
    QString problemOfValue() const override;
    void nameEditors(const QString& name) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void stepDays(int days);
    void openCalendar();
    void showDistance();
    void showTime(bool shown);

    Day latest() const;

    Day today_;
    bool done_ = false;
    std::optional<Day> standing_;
    bool changed_ = false;
    int proposed_ = 0;               ///< days from today, while it is not changed
    FieldEdit* edit_ = nullptr;
    QToolButton* calendar_ = nullptr;
    QToolButton* addTime_ = nullptr;
    FieldEdit* time_ = nullptr;
};

/// A day as people type it; nullopt value without a problem when empty. Years 1900 to 2199.
Typed<Day> typedDay(const QString& text, Day today);
/// "18:30", "6:30 pm" or "1830"; minutes of the day.
Typed<int> typedTime(const QString& text);
/// As the field shows it: the locale's short date with all four figures of the year.
QString typedDayText(Day day);

}
