#include "ui/rotation/change_card.h"

#include "core/planning/past_harvest.h"
#include "core/reckoning/bed_year.h"
#include "core/reckoning/outlook.h"
#include "ui/common/amount_field.h"
#include "ui/common/choice_field.h"
#include "ui/common/date_field.h"
#include "ui/common/dates.h"
#include "ui/common/field_edit.h"
#include "ui/common/flow_layout.h"
#include "ui/common/formats.h"
#include "ui/common/number_field.h"
#include "ui/common/toggle.h"
#include "ui/journal/entry_words.h"
#include "ui/rotation/change_words.h"
#include "ui/rotation/two_courses.h"

#include <QGridLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace tierloam::rotation {

namespace {

using Kind = ChangeCard::Kind;

constexpr int pastDays = 30;              ///< a harvest so long ago is proposed
constexpr int turningOffered = 12, weeklyOffered = 6;
constexpr int awayDays = 14;
constexpr double warmerByC = 2.0;
constexpr int leastKindLetters = 26, leastEntryLetters = 20; ///< average ones; wide ones

/// Entries whose absence would have made another stack of it.
bool isTurning(const journal::Action& action)
{
    return std::holds_alternative<journal::Bed>(action) || std::holds_alternative<journal::Harvest>(action) || std::holds_alternative<journal::Rotate>(action)
        || std::holds_alternative<journal::Stock>(action) || std::holds_alternative<journal::Remove>(action) || std::holds_alternative<journal::Move>(action);
}

bool isWeekly(const journal::Action& action) { return std::holds_alternative<journal::Water>(action) || std::holds_alternative<journal::Feed>(action); }

}

ChangeCard::ChangeCard(household::Household& household, Background& background, const ui::Theme& theme, QWidget* parent)
    : Card{parent}, household_{household}, background_{background}, theme_{theme}, today_{household.today()}, stack_{new ui::ChoiceField}, kind_{new ui::ChoiceField},
      kg_{new ui::AmountField{ui::massUnits()}}, temperature_{new ui::TemperatureField}, from_{new ui::DateField{household.today()}}, on_{new ui::DateField{household.today()}}, to_{new ui::DateField{household.today()}},
      weeks_{new ui::CountField{1, 52}}, entry_{new ui::ChoiceField}, go_{ui::makeButton(tr("Compare"), ui::Tone::moss, this)},
      sentence_{ui::makeLabel({}, ui::TextRole::body, this, true)}, feeding_{ui::makeLabel({}, ui::TextRole::small, this, true)}, table_{new QWidget{this}}, courses_{new TwoCourses{theme, this}}
{
    setObjectName(QStringLiteral("changeCard"));
    ui::setAccess(this, tr("Try a change"));
    column()->addWidget(ui::makeLabel(tr("Try a change"), ui::TextRole::section, this));
    auto* row = new QWidget{this};
    auto* flow = new ui::FlowLayout{row, 8};
    stack_->setName(tr("Stack"));
    kind_->setName(tr("Change"));
    for (const auto& [kind, text] : {std::pair{Kind::feed, tr("feed so much a week")}, std::pair{Kind::warmer, tr("keep the bed warmer or colder")}, std::pair{Kind::away, tr("be away")},
                                     std::pair{Kind::addTray, tr("add a tray on")}, std::pair{Kind::harvest, tr("take the bottom tray on")},
                                     std::pair{Kind::giveAway, tr("give worms away")}, std::pair{Kind::anotherStack, tr("start another stack from it")},
                                     std::pair{Kind::wayBack, tr("the shortest way back")}, std::pair{Kind::anotherPast, tr("if an entry had not been")},
                                     std::pair{Kind::pastHarvest, tr("if the bottom tray had been taken on")}})
        kind_->addChoice(text, static_cast<int>(kind));
    kind_->list()->setMinimumWidth(fontMetrics().averageCharWidth() * leastKindLetters); // some are sentences; in a small window they are cut while the list is closed
    kg_->setName(tr("Fresh food a week"));
    kg_->proposeRound(Amount{1.0, Unit::kg});
    kg_->setZeroAllowed(true);
    temperature_->setName(tr("Usual temperature of the bed"));
    from_->setName(tr("From"));
    to_->setName(tr("To"));
    on_->setName(tr("Day"));
    from_->propose(1);
    to_->propose(awayDays);
    on_->propose(-pastDays);
    weeks_->setName(tr("Weeks until it is back"));
    weeks_->setHint(weeks_->name()); // a number alone would say nothing
    weeks_->setCount(12);
    entry_->setName(tr("Entry"));
    entry_->list()->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon); // one as wide as its longest line would widen the page
    entry_->list()->setMinimumContentsLength(leastEntryLetters);
    for (ui::DateField* each : {from_, on_, to_})
        if (each->timeButton()) each->timeButton()->hide();
    const int character = fontMetrics().averageCharWidth();
    kg_->setMaximumWidth(character * 28);
    temperature_->setMaximumWidth(character * 40); // its hint is a sentence
    weeks_->setMaximumWidth(character * 30);
    from_->setMaximumWidth(character * 36);
    to_->setMaximumWidth(character * 36);
    on_->setMaximumWidth(character * 36);
    for (QWidget* each : std::initializer_list<QWidget*>{stack_, kind_, kg_, temperature_, from_, to_, on_, weeks_, entry_, go_}) flow->addWidget(each);
    column()->addWidget(row);
    column()->addWidget(sentence_);
    column()->addWidget(feeding_);
    column()->addWidget(table_);
    column()->addWidget(courses_);
    column()->addStretch(1);
    courses_->hide();
    go_->setObjectName(QStringLiteral("compare"));
    sentence_->setObjectName(QStringLiteral("changeSentence"));
    feeding_->setObjectName(QStringLiteral("changeFeeding"));
    feeding_->hide();
    connect(kind_, &ui::Field::edited, this, [this] { showFields(); });
    connect(stack_, &ui::Field::edited, this, [this] {
        askAnew();
        propose();
    });
    for (ui::Field* each : std::initializer_list<ui::Field*>{kg_, temperature_, from_, to_, on_, weeks_, entry_}) connect(each, &ui::Field::edited, this, [this] { askAnew(); });
    connect(temperature_, &ui::Field::edited, this, [this] { tellBedYear(); });
    connect(go_, &QPushButton::clicked, this, [this] { tryIt(); });
    connect(&household_, &household::Household::changed, this, &ChangeCard::followDay);
    connect(&household_, &household::Household::reckoned, this, &ChangeCard::followDay);
    showFields();
}

void ChangeCard::giveKeys(ui::ActionId compare, QWidget* page) { ui::giveKeys(go_, compare, page); }

void ChangeCard::chooseKind(Kind kind)
{
    kind_->setValue(static_cast<int>(kind));
    showFields();
}

/// Midnight may pass while the page stands: what was proposed goes on, what was chosen stays. The answer was to days that are no longer asked for.
void ChangeCard::followDay()
{
    if (today_ == household_.today()) return;
    today_ = household_.today();
    for (ui::DateField* each : {from_, to_, on_}) each->setToday(today_);
    askAnew();
}

/// Another question: the answer to the one before must not stand under it.
void ChangeCard::askAnew()
{
    go_->setEnabled(household_.reckoning() && !household_.reckoning()->stacks.empty());
    forget();
}

void ChangeCard::showFields()
{
    askAnew();
    const auto kind = kind_->chosen<Kind>().value_or(Kind::feed);
    kg_->setVisible(kind == Kind::feed);
    temperature_->setVisible(kind == Kind::warmer);
    from_->setVisible(kind == Kind::away || kind == Kind::addTray || kind == Kind::harvest);
    to_->setVisible(kind == Kind::away);
    on_->setVisible(kind == Kind::pastHarvest);
    weeks_->setVisible(kind == Kind::giveAway || kind == Kind::anotherStack);
    entry_->setVisible(kind == Kind::anotherPast);
}

/// Deeds that turned the stack, and the latest of what is given week by week; newest first.
void ChangeCard::fillEntries()
{
    const QVariant before = entry_->value();
    entry_->clearChoices();
    const auto journal = household_.journal();
    const std::string stack = stack_->value().toString().toStdString();
    int turning = 0, weekly = 0;
    for (auto entry = journal->entries.rbegin(); entry != journal->entries.rend() && turning < turningOffered; ++entry) {
        if (entry->stack != stack) continue;
        const bool turns = isTurning(entry->action);
        if (!turns && !(isWeekly(entry->action) && weekly < weeklyOffered)) continue;
        ++(turns ? turning : weekly);
        entry_->addChoice(tr("%1: %2, %3", "day, what was done, how much of what").arg(ui::shortDay(entry->date.day, household_.today()), journal_page::actionWord(entry->action), journal_page::detailWords(*entry)),
                          QVariant::fromValue(static_cast<qint64>(entry->id)));
    }
    entry_->setValue(before);
    if (entry_->value() != before) askAnew(); // it went, or another stack's are offered
}

/// What this stack is usually given, a quarter more; two degrees above the usual mean of its bed. Another stack, other amounts.
void ChangeCard::propose()
{
    fillEntries();
    const auto reckoning = household_.reckoning();
    const auto* stack = reckoning ? reckoning->stack(stack_->value().toString().toStdString()) : nullptr;
    if (stack == nullptr) return;
    if (stack->present) temperature_->setTemperature(celsius(stack->present->course.surroundings.settings.temp.base() + warmerByC));
    tellBedYear();
    const double usual = stack->record.usualFeedKgPerWeek > 0.0 ? stack->record.usualFeedKgPerWeek : stack->forecast.feedHighKg;
    kg_->propose(ui::massAmount(std::max(std::round(usual * 1.25 / 0.05) * 0.05, 0.05)));
}

/// What the mean that stands in the field makes of the year.
void ChangeCard::tellBedYear()
{
    const auto reckoning = household_.reckoning();
    const auto* stack = reckoning ? reckoning->stack(stack_->value().toString().toStdString()) : nullptr;
    const auto mean = temperature_->temperature();
    if (stack == nullptr || !stack->present || !mean) return temperature_->setHint(tr("the mean of the whole year; the place makes winter and summer of it"));
    const reckoning::Surroundings& around = stack->present->course.surroundings;
    const reckoning::BedYear year = reckoning::bedYear(mean->base(), around.settings.place, around.southern);
    const auto month = [](int number) { return QLocale{}.standaloneMonthName(number); };
    temperature_->setHint(tr("mean of the year: about %1 in %2, %3 in %4", "temperature, month, temperature, month")
                              .arg(ui::temperatureText(year.coldestC), month(year.coldestMonth), ui::temperatureText(year.warmestC), month(year.warmestMonth)));
}

void ChangeCard::refresh()
{
    const QVariant before = stack_->value();
    stack_->clearChoices();
    const auto reckoning = household_.reckoning();
    if (askedOf_ && askedOf_ != reckoning) forget();
    bool there = false;
    if (reckoning)
        for (const reckoning::StackReckoning& stack : household::inOrder(reckoning->stacks, household_.stackOrder())) {
            stack_->addChoice(QString::fromStdString(stack.name), QString::fromStdString(stack.name));
            there = there || before.toString().toStdString() == stack.name;
        }
    if (there) stack_->setValue(before);
    go_->setEnabled(reckoning && !reckoning->stacks.empty());
    there ? fillEntries() : propose(); // what was typed for that stack stays
}

/// Days ahead, in their order, and no further than the estimates reach. Says so where they are not.
bool ChangeCard::daysCanBe(Kind kind)
{
    const Day today = household_.today(), last = today + std::chrono::days{reckoning::outlookDays};
    for (ui::DateField* each : {from_, to_}) {
        const bool asked = each == to_ ? kind == Kind::away : kind == Kind::away || kind == Kind::addTray || kind == Kind::harvest;
        const auto moment = each->moment().value;
        if (!asked || !moment) continue;
        const QString why = moment->day <= today ? tr("That day is not ahead: take tomorrow or a later one.")
            : moment->day > last                 ? tr("The estimates reach to %1.").arg(ui::shortDay(last, today))
            : each == to_ && from_->moment().value && moment->day < from_->moment().value->day ? tr("That is before the first day.")
                                                                                                   : QString{};
        if (why.isEmpty()) continue;
        each->showProblem(why);
        return false;
    }
    return true;
}

void ChangeCard::tryIt()
{
    const auto reckoning = household_.reckoning();
    const std::string name = stack_->value().toString().toStdString();
    if (!reckoning || !reckoning->stack(name)) return;
    const Kind kind = kind_->chosen<Kind>().value_or(Kind::feed);
    const Day today = household_.today();
    const Day tomorrow = today + std::chrono::days{1};
    const auto typed = [&](const ui::DateField* field) { return field->moment().value ? std::max(field->moment().value->day, tomorrow) : tomorrow; };
    for (ui::Field* each : std::initializer_list<ui::Field*>{kg_, temperature_, from_, to_, on_, weeks_})
        if (each->isVisibleTo(this) && !each->check()) return;

    if (!daysCanBe(kind)) return;
    reckoning::ChangedPlan plan;
    const Day from = typed(from_);
    const Day to = std::max(typed(to_), from);
    const int weeks = weeks_->count().value_or(12);
    switch (kind) {
    case Kind::feed: plan.feedKgPerWeek = kg_->amount().value && kg_->amount().value->mass() ? kg_->amount().value->mass()->base() : 0.0; break;
    case Kind::warmer: plan.usualTemperature = temperature_->temperature().value_or(celsius(22)).base(); break;
    case Kind::addTray: plan.trayAddedOn = from; break;
    case Kind::harvest: plan.harvestOn = from; break;
    default: break;
    }
    const auto journal = household_.journal();
    const auto without = static_cast<journal::EntryId>(entry_->value().toLongLong());
    const Day on = on_->moment().value ? on_->moment().value->day : today;
    askedOf_ = reckoning;
    sentence_->setText(tr("Comparing…")); // the button stays as it is: the focus would go from it to what is to be done today
    const int question = ++question_;
    background_.ask(QStringLiteral("change"), [this, question, reckoning, journal, name, kind, plan, from, to, weeks, today, without, on](std::stop_token stop) -> Background::Use {
        const reckoning::StackReckoning& stack = *reckoning->stack(name);
        std::optional<TriedChange> made;
        const Day next = stack.asOf + std::chrono::days{1};
        // The course of an answer that is more than one changed plan: the same plan, all members.
        const auto follow = [&](const reckoning::ChangedPlan& course) {
            if (const auto compared = reckoning::comparePlans(stack, course, 1, stop)) addCourse(*made, *compared, today);
        };
        switch (kind) {
        case Kind::feed:
        case Kind::warmer:
        case Kind::addTray:
        case Kind::harvest:
            if (const auto compared = reckoning::comparePlans(stack, plan, 1, stop)) made = ofPlans(*compared, today);
            if (made) addWhatIsInTheWay(*made, stack, plan);
            if (made && (plan.trayAddedOn || plan.harvestOn)) made->rows.insert(made->rows.begin(), {tr("day"), QStringLiteral("–"), ui::shortDay(from, today)});
            if (made && plan.feedKgPerWeek) made->rows.insert(made->rows.begin(), {tr("food a week"), ui::massText(stack.present->course.care.feedKg), ui::massText(*plan.feedKgPerWeek)});
            if (made && plan.usualTemperature) addBedYear(*made, stack.present->course.surroundings, *plan.usualTemperature);
            break;
        case Kind::away:
            if (const auto leave = planning::prepareAbsence(stack, from, to, 1, stop)) {
                made = ofAbsence(*leave, from, to, today);
                follow(planning::planOf(*leave, from, to));
            }
            break;
        case Kind::anotherStack:
            if (const auto another = planning::startAnother(stack, 7 * weeks, 1, stop)) {
                made = ofAnotherStack(*another, stack, weeks, today);
                if (another->share <= 0.0) break;
                follow(planning::planOf(*another, next));
                addNewStack(*made, another->young, today);
            }
            break;
        case Kind::giveAway:
            if (const auto give = planning::mostToGiveAway(stack, 7 * weeks, 1, stop)) {
                made = ofGiveAway(*give, weeks);
                reckoning::ChangedPlan given;
                if (give->share > 0.0) given.split = reckoning::ChangedPlan::Split{next, give->share};
                if (given.split) follow(given);
            }
            break;
        case Kind::wayBack: {
            const auto way = planning::shortestWayBack(stack, 1, stop);
            made = ofWayBack(way, stack, today);
            if (way) follow(planning::planOf(*way, next));
            break;
        }
        case Kind::anotherPast:
        case Kind::pastHarvest: {
            reckoning::AnotherPast past;
            if (kind == Kind::anotherPast) past.without = {without};
            else if (auto harvested = planning::pastWithHarvest(journal->entries, stack, on)) past = std::move(*harvested);
            else {
                made = TriedChange{.sentence = tr("Nothing stood there on that day, or it is not past yet.")};
                break;
            }
            reckoning::Options options;
            options.asOf = reckoning->asOf;
            options.members = reckoning->members;
            options.threads = 1;
            options.southern = stack.present && stack.present->course.surroundings.southern;
            options.previous = reckoning;
            const auto answer = reckoning::reckonAnotherPast(journal->entries, past, options, stop);
            const auto* other = answer.reckoning ? answer.reckoning->stack(name) : nullptr;
            if (other != nullptr) made = ofAnotherPast(stack, *other, today, kind == Kind::pastHarvest ? std::optional{on} : std::nullopt);
            else if (!stop.stop_requested())
                made = TriedChange{.sentence = kind == Kind::anotherPast ? tr("It cannot have been so: later entries rest on that one.") : tr("It cannot have been so: later entries rest on that tray.")};
            break;
        }
        }
        if (stop.stop_requested()) return {};
        if (made) made->stack = name;
        return [this, question, made = made.value_or(TriedChange{.sentence = tr("The estimates hold no members to ask; wait until they are made anew.")})] {
            if (question != question_) return;
            show(made);
        };
    });
}

void ChangeCard::leaveCoursesOut()
{
    withCourses_ = false;
    courses_->hide();
}

void ChangeCard::forget()
{
    ++question_; // nor is the one under way answered
    askedOf_.reset();
    sentence_->clear();
    if (!shown_.sentence.isEmpty()) show({});
}

void ChangeCard::show(const TriedChange& change)
{
    table_->setMinimumHeight(change.sentence.isEmpty() ? table_->height() : 0); // while another question is put, what is beneath must not jump under the pointer
    shown_ = change;
    sentence_->setText(change.sentence);
    feeding_->setText(change.feeding.join(u'\n'));
    feeding_->setVisible(!change.feeding.isEmpty());
    delete table_->layout();
    qDeleteAll(table_->findChildren<QWidget*>(Qt::FindDirectChildrenOnly));
    auto* grid = new QGridLayout{table_};
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(14);
    grid->setVerticalSpacing(2);
    for (const int column : {1, 2, 3}) grid->setColumnStretch(column, 1); // the last is empty where no other stack begins: what belongs together stays side by side
    const bool begins = std::ranges::any_of(change.rows, [](const TriedChange::Row& each) { return !each.another.isEmpty(); });
    if (!change.rows.empty()) {
        grid->addWidget(ui::makeLabel(tr("as usual"), ui::TextRole::smallMuted, table_), 0, 1);
        grid->addWidget(ui::makeLabel(tr("with the change"), ui::TextRole::smallMuted, table_), 0, 2);
        if (begins) grid->addWidget(ui::makeLabel(tr("the new stack"), ui::TextRole::smallMuted, table_), 0, 3);
    }
    int row = 1;
    if (!change.usual.empty()) {
        auto* note = ui::makeLabel(begins ? tr("All go on without lifting a tray; the plan of the year lifts them when they are due. The new stack gets its second tray when the first is full.") : tr("Both go on without lifting a tray; the plan of the year lifts them when they are due."), ui::TextRole::smallMuted, table_, true);
        grid->addWidget(note, static_cast<int>(change.rows.size()) + 1, 0, 1, 4);
    }
    for (const TriedChange::Row& each : change.rows) {
        grid->addWidget(ui::makeLabel(each.name, ui::TextRole::small, table_, true), row, 0);
        grid->addWidget(ui::makeLabel(each.usual, ui::TextRole::small, table_, true), row, 1);
        auto* changed = ui::makeLabel(each.changed, ui::TextRole::small, table_, true);
        ui::setRole(changed, ui::TextRole::strong);
        grid->addWidget(changed, row, 2);
        if (begins) grid->addWidget(ui::makeLabel(each.another.isEmpty() ? tr("–") : each.another, ui::TextRole::small, table_, true), row, 3);
        ++row;
    }
    if (withCourses_) courses_->setCourses(change, household_.today());
    Q_EMIT tried();
}

}
