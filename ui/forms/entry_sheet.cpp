#include "ui/forms/entry_sheet.h"

#include "ui/common/choice_field.h"
#include "ui/common/date_field.h"
#include "ui/common/field_edit.h"
#include "ui/common/formats.h"
#include "ui/forms/said_ahead.h"
#include "ui/forms/slot_choices.h"
#include "ui/forms/tray_lift.h"

#include <QPushButton>
#include <QSet>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

namespace tierloam::forms {

namespace {

constexpr qsizetype mostNotes = 200;

/// Notes of the journal, latest first, each once.
QStringList notesLately(const journal::Entries& entries)
{
    QStringList notes;
    QSet<QString> known;
    for (auto entry = entries.rbegin(); entry != entries.rend() && notes.size() < mostNotes; ++entry) {
        const QString note = QString::fromStdString(entry->note);
        if (note.isEmpty() || known.contains(note)) continue;
        known.insert(note);
        notes << note;
    }
    return notes;
}

constexpr int pauseMs = 120; // looking ahead replays the journal: once per pause in the typing is enough

}

EntrySheet::EntrySheet(household::Household& household, FormKind kind, const std::string& stack, std::optional<int> slot, QWidget* parent)
    : FormShell{parent}, household_{household}, kind_{kind}, clickedSlot_{slot}, context_{FormContext::of(household, stack)}
{
    build();
}

EntrySheet::EntrySheet(household::Household& household, const journal::Entry& entry, QWidget* parent)
    : FormShell{parent}, household_{household}, kind_{kindOf(entry)}, edited_{entry}, clickedSlot_{entry.slot},
      context_{FormContext::of(household, entry.stack)}
{
    build();
}

EntrySheet::~EntrySheet() = default;

bool EntrySheet::hasSlot() const
{
    return meaningOfEmptySlot(kind_) != SlotMeans::nothing || (edited_ && edited_->slot);
}

void EntrySheet::build()
{
    auto* content = new QWidget;
    auto* column = new QVBoxLayout{content};
    column->setContentsMargins(0, 0, 2, 0);
    grid_ = new FieldGrid{content};
    column->addWidget(grid_);
    column->addStretch(1);
    body_ = makeBody(kind_, *grid_, context_);
    if (kind_ == FormKind::note) { // the note is what the form is for
        note_ = grid_->add(tr("Note"), new ui::TextField);
        note_->setRequired(tr("What is there to note?"));
    }
    if (hasSlot()) slot_ = grid_->add(tr("Tray"), new ui::ChoiceField);
    date_ = grid_->add(tr("Date"), new ui::DateField{context_.today});
    date_->setRequired(tr("On which day?"));
    // The note of an own material is where its figures come from: the page of materials shows it as the source.
    if (!note_) note_ = grid_->add(kind_ == FormKind::material ? tr("Source") : tr("Note"), new ui::TextField);
    note_->suggest(notesLately(context_.journal->entries));
    if (edited_) {
        body_->fill(edited_->action);
        body_->forEditing();
        date_->setMoment(edited_->date);
        note_->setText(QString::fromStdString(edited_->note));
    }
    sayWhatIsDone();
    setContent(content);
    setTitle(formName(kind_));
    refreshTrays();
    refreshCautions();
    ahead_.setSingleShot(true);
    connect(&ahead_, &QTimer::timeout, this, &EntrySheet::lookAhead);
    connect(grid_, &FieldGrid::edited, this, &EntrySheet::noteEdited);
    connect(this, &FormShell::insteadWanted, this, &EntrySheet::takeInstead);
    if (slot_) connect(slot_, &ui::Field::edited, this, [this] { body_->follow(context_.standing(day()), slot()); });
    connect(date_, &ui::Field::edited, this, &EntrySheet::refreshTrays);
    // Another entry, a foreign write or new estimates: what is said ahead must hold for the journal as it is.
    connect(&household_, &household::Household::changed, this, [this] {
        context_ = FormContext::of(household_, context_.stack);
        followDay();
        refreshTrays();
        ahead_.start(0);
    });
    connect(&household_, &household::Household::reckoned, this, [this] {
        context_.reckoning = household_.reckoning();
        followDay(); // those of a new day come by themselves
        body_->follow(context_.standing(day()), slot());
        refreshCautions();
        ahead_.start(0);
    });
    lookAhead();
}

std::optional<int> EntrySheet::slot() const
{
    if (!slot_) return kind_ == FormKind::rotate || kind_ == FormKind::loosen ? std::nullopt : edited_ ? edited_->slot : std::nullopt;
    const QVariant chosen = slot_->value();
    return chosen.isValid() ? std::optional{chosen.toInt()} : std::nullopt;
}

Day EntrySheet::day() const
{
    const auto moment = date_->moment().value;
    return moment ? moment->day : context_.today;
}

void EntrySheet::setDay(Day day)
{
    if (day != context_.today) date_->setMoment({day, std::nullopt});
    refreshTrays();
    lookAhead();
}

/// Midnight may have passed since the form was opened.
void EntrySheet::followDay()
{
    context_.today = household_.today();
    const auto dates = grid_->findChildren<ui::DateField*>();
    for (ui::DateField* each : dates) each->setToday(context_.today);
}

/// Being away is planned; everything else that is recorded has been done.
void EntrySheet::sayWhatIsDone()
{
    date_->setDone(body_->eventWord() != QLatin1StringView{"away"}, edited_ ? std::optional{edited_->date.day} : std::nullopt);
}

bool EntrySheet::rebase(const journal::Entry& now)
{
    const journal::Entry before = *edited_;
    const journal::Entry typed = entryWith(body_->action());
    bool apart = false;
    const auto follows = [&apart](const auto& was, const auto& here, const auto& there) {
        if (was == there || here == there) return false;
        if (was == here) return true;
        apart = true;
        return false;
    };
    edited_ = now;
    if (follows(before.action, typed.action, now.action)) {
        body_->fill(now.action);
        body_->forEditing();
    }
    if (follows(before.date, typed.date, now.date)) date_->setMoment(now.date);
    if (follows(before.note, typed.note, now.note)) note_->setText(QString::fromStdString(now.note));
    const bool otherSlot = follows(before.slot, typed.slot, now.slot);
    sayWhatIsDone();
    if (otherSlot) clickedSlot_ = now.slot;
    if (otherSlot && slot_) slot_->clearChoices(); // refreshTrays() then takes the one that is given
    refreshTrays();
    refreshCautions();
    lookAhead();
    return !apart;
}

void EntrySheet::propose(const journal::Action& action)
{
    body_->fill(action);
    sayWhatIsDone();
    refreshCautions();
    lookAhead();
}

/// The trays as they stood on the day of the entry; what was chosen stays chosen, also when it is not there on that day.
void EntrySheet::refreshTrays()
{
    if (slot_) fillSlots(*slot_, kind_, context_, day(), slot_->list()->count() ? slot() : clickedSlot_);
    body_->follow(context_.standing(day()), slot());
}

void EntrySheet::refreshCautions()
{
    CautionFacts facts;
    facts.kind = kind_;
    facts.material = body_->material();
    facts.firstOfMaterial = facts.material && !edited_ && context_.neverUsed(facts.material->name);
    facts.cold = body_->isAboutCold();
    facts.eventWord = body_->eventWord();
    const journal::Standing* standing = context_.standing(day());
    std::optional<int> lifted = slot();
    if (kind_ == FormKind::rotate) lifted = 1;
    else if (!lifted && standing) lifted = kind_ == FormKind::harvest ? standing->dryingSlot() : std::optional{standing->trays()};
    // The estimate is of the trays as they stand now; a past day's tray may have been another.
    if (lifted && standing && standing->has(*lifted)) {
        const int batch = standing->batchIn(*lifted);
        facts.tray = context_.history()->batch(batch).tray;
        if (const reckoning::TrayEstimate* tray = context_.tray(*lifted); tray && tray->batch == batch) {
            facts.weight = CautionFacts::Weight{tray->weightKg.p05, tray->weightKg.p50, tray->weightKg.p95};
            facts.liftWords = trayLift(*standing, *lifted, tray->weightKg.p95).words;
        }
    }
    setCautions(cautionsFor(facts));
}

void EntrySheet::noteEdited()
{
    touched_ = true;
    sayWhatIsDone();
    if (!problem().isEmpty()) setProblem(body_->wholeProblem());
    refreshCautions();
    ahead_.start(pauseMs);
}

bool EntrySheet::check()
{
    if (!grid_->check()) {
        setProblem({});
        return false;
    }
    const QString whole = body_->wholeProblem();
    setProblem(whole);
    if (!whole.isEmpty()) grid_->focusFirst();
    return whole.isEmpty();
}

journal::Entry EntrySheet::entryWith(const journal::Action& action) const
{
    journal::Entry entry;
    if (edited_) entry = *edited_;
    else entry.stack = context_.stack;
    const DayAndTime moment = date_->moment().value.value_or(DayAndTime{context_.today, std::nullopt});
    if (edited_ && moment.day != edited_->date.day) entry.positionInDay = 0; // appended to its new day
    entry.date = moment;
    entry.slot = slot();
    entry.note = note_->text().toStdString();
    entry.action = action;
    return entry;
}

journal::Edit EntrySheet::edit() const
{
    journal::Edit edit;
    const journal::Entry entry = entryWith(body_->action());
    if (edited_) {
        edit.replaced.push_back(entry);
        return edit;
    }
    edit.added.push_back(entry);
    if (const auto companion = body_->companion()) {
        journal::Entry second = entryWith(*companion);
        second.note.clear();
        edit.added.push_back(second);
    }
    return edit;
}

void EntrySheet::lookAhead()
{
    ahead_.stop();
    if (isBusy()) return; // the journal holds what is being written already
    if (!date_->problem().isEmpty()) {
        setEffect({});
        return;
    }
    const journal::Edit ahead = edit();
    const Intended intended{kind_, edited_.has_value(), day(), slot()};
    const Doubt doubt = doubtOf(context_, intended, body_->action());
    instead_ = doubt.instead;
    setDoubt(doubt.words, instead_ ? tr("Make it %1").arg(ui::amountText(*instead_)) : QString{});
    const journal::EditEffect effect = journal::applyEdit(context_.journal->entries, ahead);
    if (effect.refusal) {
        // While a field is still wrong or empty the refusal may be of that; the field speaks for itself.
        const auto fields = grid_->fields();
        const bool whole = std::all_of(fields.begin(), fields.end(), [](const ui::Field* each) { return each->isHidden() || each->problem().isEmpty(); });
        setEffect(whole ? tr("Not possible so: %1").arg(household_.refusalOf(ahead)) : QString{});
        return;
    }
    setEffect(effectText(context_, intended, effect, edited_ ? ahead.replaced.front() : ahead.added.front()));
}

/// The amount that is not doubted stands in the place of the typed one; it is recorded by another press, as any other.
void EntrySheet::takeInstead()
{
    if (!instead_) return;
    body_->takeAmount(*instead_);
    noteEdited();
    lookAhead();
    acceptButton()->setFocus(Qt::OtherFocusReason);
}

void EntrySheet::focusFirst()
{
    if (asked_ == nullptr || asked_->isHidden()) return grid_->focusFirst();
    grid_->focusOn(asked_);
    grid_->bringIntoSight(asked_);
}

void EntrySheet::askFor(reckoning::LookKind look)
{
    asked_ = body_->fieldFor(look);
    if (isVisible()) focusFirst();
}

}
