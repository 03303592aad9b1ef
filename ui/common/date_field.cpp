#include "ui/common/date_field.h"

#include "ui/common/dates.h"
#include "ui/common/field_edit.h"

#include <QCalendarWidget>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLocale>
#include <QMenu>
#include <QToolButton>
#include <QVBoxLayout>
#include <QWidgetAction>

#include <algorithm>

namespace tierloam::ui {

namespace {

QString dateFormat()
{
    QString format = QLocale{}.dateFormat(QLocale::ShortFormat);
    if (!format.contains(QLatin1StringView("yyyy"))) format.replace(QLatin1StringView("yy"), QLatin1StringView("yyyy"));
    return format;
}

bool withinBounds(QDate date)
{
    return date.isValid() && date.year() >= firstYear && date.year() <= lastYear;
}

}

QString typedDayText(Day day)
{
    return QLocale{}.toString(qDate(day), dateFormat());
}

Typed<Day> typedDay(const QString& text, Day today)
{
    const QString typed = text.trimmed();
    if (typed.isEmpty()) return {};
    if (typed.compare(DateField::tr("today"), Qt::CaseInsensitive) == 0) return {today, {}};
    if (typed.compare(DateField::tr("yesterday"), Qt::CaseInsensitive) == 0) return {today - std::chrono::days{1}, {}};
    if (const auto iso = parseDay(typed.toStdString())) return {iso, {}};
    const QLocale locale;
    for (const QString& format : {dateFormat(), locale.dateFormat(QLocale::LongFormat), QStringLiteral("d MMM yyyy"), QStringLiteral("d MMMM yyyy")}) {
        const QDate date = locale.toDate(typed, format);
        if (withinBounds(date)) return {civilDay(date), {}};
    }
    return {std::nullopt, DateField::tr("«%1» is not a date from 1900 to 2199; write it like %2 or %3.")
                              .arg(typed, typedDayText(today), QString::fromStdString(dayText(today)))};
}

Typed<int> typedTime(const QString& text)
{
    const QString typed = text.trimmed();
    if (typed.isEmpty()) return {};
    const QLocale locale;
    for (const QString& format : {QStringLiteral("H:m"), QStringLiteral("HHmm"), QStringLiteral("H.m"), QStringLiteral("h:m ap"),
                                  QStringLiteral("h:map"), locale.timeFormat(QLocale::ShortFormat)}) {
        QTime time = QTime::fromString(typed, format);
        if (!time.isValid()) time = locale.toTime(typed, format);
        if (time.isValid()) return {time.hour() * 60 + time.minute(), {}};
    }
    return {std::nullopt, DateField::tr("«%1» is not a time of day; write it like 18:30.").arg(typed)};
}

DateField::DateField(Day today, QWidget* parent) : Field{parent}, today_{today}
{
    edit_ = new FieldEdit{this};
    edit_->setObjectName(QStringLiteral("date"));
    edit_->setRoomFor(QStringLiteral("00.00.0000"));
    addEditor(edit_, 2);
    calendar_ = new QToolButton{this};
    calendar_->setObjectName(QStringLiteral("calendar"));
    calendar_->setText(QStringLiteral("▾")); // a letter, so that it grows with the font
    addEditor(calendar_);
    calendar_->setProperty("fieldButton", true);
    addTime_ = new QToolButton{this};
    addTime_->setProperty("fieldButton", QStringLiteral("quiet"));
    addTime_->setObjectName(QStringLiteral("addTime"));
    addTime_->setText(tr("+ time"));
    addTime_->setToolTip(tr("Note the time of day as well"));
    addEditor(addTime_, 0, Row::beneath);
    time_ = new FieldEdit{this};
    time_->setObjectName(QStringLiteral("time"));
    time_->setPlaceholderText(QStringLiteral("18:30"));
    time_->setRoomFor(QStringLiteral("00:00 pm"));
    addEditor(time_, 0, Row::beneath);
    time_->hide();

    setMoment({today, std::nullopt});
    changed_ = false;
    const auto typed = [this] {
        changed_ = true;
        showDistance();
        noteEdited();
    };
    connect(edit_, &QLineEdit::textEdited, this, typed);
    connect(time_, &QLineEdit::textEdited, this, typed);
    connect(calendar_, &QToolButton::clicked, this, &DateField::openCalendar);
    connect(addTime_, &QToolButton::clicked, this, [this] {
        showTime(true);
        time_->setFocus();
    });
}

void DateField::setToday(Day today)
{
    if (today == today_) return; // what is selected or may be undone stays
    const std::optional<Day> meant = typedDay(edit_->text(), today_).value;
    today_ = today;
    if (!changed_) edit_->setText(typedDayText(today + std::chrono::days{proposed_}));
    else if (meant && typedDay(edit_->text(), today).value != meant) edit_->setText(typedDayText(*meant)); // "yesterday" was said of another today
    showDistance();
}

void DateField::propose(int daysFromToday)
{
    setMoment({today_ + std::chrono::days{daysFromToday}, std::nullopt});
    changed_ = false;
    proposed_ = daysFromToday;
}

void DateField::setMoment(const DayAndTime& moment)
{
    changed_ = true;
    edit_->setText(typedDayText(moment.day));
    showTime(moment.minuteOfDay.has_value());
    time_->setText(moment.minuteOfDay ? timeOfDay(*moment.minuteOfDay) : QString{});
    showDistance();
}

void DateField::clearMoment()
{
    changed_ = true;
    edit_->clear();
    time_->clear();
    showTime(false);
    showDistance();
}

Typed<DayAndTime> DateField::moment() const
{
    const Typed<Day> day = typedDay(edit_->text(), today_);
    if (!day.value) return {std::nullopt, day.problem};
    const Typed<int> time = typedTime(time_->text());
    if (!time.sound()) return {std::nullopt, time.problem};
    return {DayAndTime{*day.value, time.value}, {}};
}

bool DateField::isEmpty() const
{
    return edit_->text().trimmed().isEmpty();
}

QString DateField::problemOfValue() const
{
    const Typed<DayAndTime> typed = moment();
    if (!typed.value || typed.value->day <= latest()) return typed.problem;
    return tr("%1 has not come yet. What is recorded has been done: today at the latest.").arg(typedDayText(typed.value->day));
}

void DateField::setDone(bool done, std::optional<Day> standing)
{
    done_ = done;
    standing_ = standing;
    if (!shownProblem().isEmpty()) check();
}

Day DateField::latest() const
{
    const Day last = civilDay(QDate{lastYear, 12, 31});
    return done_ ? std::max(today_, standing_.value_or(today_)) : last;
}

void DateField::nameEditors(const QString& name)
{
    edit_->setAccessibleName(name);
    time_->setAccessibleName(tr("Time of day"));
    calendar_->setAccessibleName(tr("Choose the date from a calendar"));
    addTime_->setAccessibleName(tr("Note the time of day as well"));
}

bool DateField::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == edit_ && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Up || key == Qt::Key_Down) {
            stepDays(key == Qt::Key_Up ? 1 : -1);
            return true;
        }
    }
    return Field::eventFilter(watched, event);
}

void DateField::stepDays(int days)
{
    const Typed<Day> day = typedDay(edit_->text(), today_);
    const Day next = day.value.value_or(today_) + std::chrono::days{day.value ? days : 0};
    if (!withinBounds(qDate(next)) || next > std::max(latest(), day.value.value_or(today_))) return;
    changed_ = true;
    edit_->selectAll(); // insert, not setText: what was typed can be brought back by undo
    edit_->insert(typedDayText(next));
    showDistance();
    noteEdited();
}

void DateField::openCalendar()
{
    QMenu menu;
    auto* action = new QWidgetAction{&menu};
    auto* calendar = new QCalendarWidget;
    calendar->setMinimumDate(QDate{firstYear, 1, 1});
    calendar->setMaximumDate(qDate(latest()));
    calendar->setSelectedDate(qDate(typedDay(edit_->text(), today_).value.value_or(today_)));
    calendar->setAccessibleName(tr("Calendar"));
    calendar->setVerticalHeaderFormat(QCalendarWidget::NoVerticalHeader);
    action->setDefaultWidget(calendar);
    menu.addAction(action);
    const auto take = [this, &menu](QDate date) {
        changed_ = true;
        edit_->setText(typedDayText(civilDay(date)));
        showDistance();
        noteEdited();
        menu.close();
    };
    connect(calendar, &QCalendarWidget::clicked, this, take);
    connect(calendar, &QCalendarWidget::activated, this, take);
    calendar->setFocus();
    menu.exec(calendar_->mapToGlobal(QPoint{0, calendar_->height()}));
    edit_->setFocus();
}

void DateField::showDistance()
{
    const Typed<Day> day = typedDay(edit_->text(), today_);
    if (!day.value) {
        setHint({});
        return;
    }
    const int past = daysBetween(*day.value, today_);
    const QString weekday = QLocale{}.dayName(qDate(*day.value).dayOfWeek());
    if (past == 0) setHint(tr("%1, today").arg(weekday));
    else if (past == 1) setHint(tr("%1, yesterday").arg(weekday));
    else if (past > 1) setHint(tr("%1, %n days ago", nullptr, past).arg(weekday));
    else if (past == -1) setHint(tr("%1, tomorrow").arg(weekday));
    else setHint(tr("%1, %n days from now", nullptr, -past).arg(weekday));
}

void DateField::showTime(bool shown)
{
    time_->setVisible(shown);
    addTime_->setVisible(!shown);
}

}
