#include "ui/handbook/harvest_view.h"

#include "core/guide/figures.h"
#include "ui/common/dates.h"
#include "ui/common/field_edit.h"
#include "ui/common/figure_words.h"
#include "ui/common/flow_layout.h"
#include "ui/common/formats.h"
#include "ui/common/number_field.h"
#include "ui/common/panels.h"
#include "ui/common/seams.h"
#include "ui/forms/caution_card.h"
#include "ui/forms/tray_lift.h"
#include "ui/handbook/handbook_text.h"
#include "ui/handbook/stack_choice.h"

#include <QCoreApplication>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <cmath>

namespace tierloam::handbook {

namespace {

using guide::Figure;

constexpr auto reachKey = "lifting/reachCm";
constexpr int outcomeDays = 60;          ///< a harvest is spoken of for so long: the second light-drying is due within it

QLabel* say(QVBoxLayout* rows, const QString& text, ui::TextRole role, QWidget* parent)
{
    auto* label = ui::makeLabel(text, role, parent, true);
    rows->addWidget(label);
    return label;
}

QString percents(const reckoning::Band& band)
{
    return ui::unbroken(HarvestView::tr("%1 %").arg(ui::withRange(ui::numberText(band.p50, 0), ui::numberText(band.p05, 0), ui::numberText(band.p95, 0))));
}

QString yieldWords(guide::Yield::Verdict verdict)
{
    switch (verdict) {
    case guide::Yield::Verdict::less: return HarvestView::tr("less than usual: some was not finished, or is still in the sump and the trays");
    case guide::Yield::Verdict::asExpected: return HarvestView::tr("as usual");
    case guide::Yield::Verdict::more: return HarvestView::tr("more than usual: bedding that stays, or water, is in it");
    }
    return {};
}

}

HarvestView::HarvestView(household::Household& household, const ui::Theme& theme, ui::Settings& settings, QWidget* parent)
    : QScrollArea{parent}, household_{household}, theme_{theme}, settings_{settings}
{
    setObjectName(QStringLiteral("harvestView"));
    setFrameShape(QFrame::NoFrame);
    setWidgetResizable(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFocusPolicy(Qt::NoFocus);
    auto* body = new QWidget;
    body->setProperty("page", true);
    column_ = new QVBoxLayout{body};
    column_->setContentsMargins(0, 0, 8, 12);
    column_->setSpacing(10);
    cautions_ = new forms::CautionCard{body};
    column_->addWidget(cautions_);
    stack_ = new StackChoice{household_, body};
    stack_->setObjectName(QStringLiteral("harvestStack"));
    column_->addWidget(stack_);
    line_ = ui::makeLabel({}, ui::TextRole::muted, body, true);
    column_->addWidget(line_);
    cards_ = new QWidget{body};
    column_->addWidget(cards_);
    reachLabel_ = ui::makeLabel(tr("Your reach while lifting, from the ankles forward to the hands (may be left empty: then it is taken from the tray's size):"), ui::TextRole::smallMuted, body, true);
    column_->addWidget(reachLabel_);
    reach_ = new ui::LengthField{10.0, 100.0, body};
    reach_->setName(tr("Your reach"));
    reach_->setObjectName(QStringLiteral("ownReach"));
    reach_->setMaximumWidth(theme_.px(240));
    if (const QVariant kept = settings_.value(QString::fromLatin1(reachKey)); kept.isValid()) reach_->setLength(centimetres(kept.toDouble()));
    forms::setOwnReach(reach_->length());
    column_->addWidget(reach_);
    column_->addStretch(1);
    setWidget(body);
    setFocusProxy(stack_->list());
    connect(stack_, &ui::Field::edited, this, [this] { build(); });
    connect(reach_, &ui::Field::edited, this, [this] {
        const auto length = reach_->length();
        settings_.setValue(QString::fromLatin1(reachKey), length ? QVariant{length->base()} : QVariant{});
        forms::setOwnReach(length);
        build();
    });
}

QString HarvestView::stack() const { return stack_->stack(); }

void HarvestView::chooseStack(const QString& stack)
{
    stack_->setValue(stack);
    build();
}

void HarvestView::follow()
{
    stack_->follow(true);
    build();
}

void HarvestView::build()
{
    column_->removeWidget(cards_);
    cards_->hide();
    cards_->deleteLater();
    cards_ = new QWidget{widget()};
    auto* rows = new QVBoxLayout{cards_};
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(10);
    stage_ = Stage::nothing;
    cautions_->setCautions({});
    const auto reckoning = household_.reckoning();
    const auto journal = household_.journal();
    const std::string name = stack().toStdString();
    const reckoning::StackReckoning* now = reckoning ? reckoning->stack(name) : nullptr;
    const journal::StackHistory* history = journal->replay.stack(name);
    const journal::Standing* standing = history ? history->on(household_.today()) : nullptr;
    if (!standing) line_->setText(tr("There is no stack yet to harvest."));
    else if (!now) line_->setText(tr("The estimates of this stack are being made."));
    else if (standing->drying) {
        stage_ = Stage::drying;
        line_->setText(tr("A tray of %1 is drying in the light.").arg(stack()));
        drying(rows, *history, *now);
    } else if (standing->trays() < 2) {
        line_->setText(tr("%1 has one tray. Nothing can be lifted over it: add a tray first, and its worms move up to the fresh food.").arg(stack()));
    } else if (now->now.slots.empty()) { // trays that have just come, as an import brings them
        line_->setText(tr("The estimates of this stack are being made."));
    } else {
        stage_ = Stage::beforeLifting;
        line_->setText(tr("The bottom tray of %1: ready %2, feed-to-cast %3.")
                           .arg(stack(), ui::percentText(now->now.slots.front().readyProbability), ui::ratioBand(now->now.slots.front().feedToCast)));
        beforeLifting(rows, *standing, *now);
    }
    if (standing && now) afterwards(rows, *standing, *history, *now);
    reachLabel_->setVisible(stage_ != Stage::nothing);
    reach_->setVisible(stage_ != Stage::nothing);
    column_->insertWidget(3, cards_); // after cautions, stack and line
    cards_->show();
}

void HarvestView::addButton(QWidget* buttons, const QString& text, bool first, const char* name, const journal::Action& action, std::optional<int> slot)
{
    auto* button = ui::makeButton(text, first ? ui::Tone::moss : ui::Tone::plain, buttons);
    button->setObjectName(QString::fromLatin1(name));
    button->setEnabled(!household_.readOnly());
    connect(button, &QPushButton::clicked, this, [this, action, slot] { Q_EMIT entryWanted(stack(), action, slot); });
    buttons->layout()->addWidget(button);
}

void HarvestView::beforeLifting(QVBoxLayout* rows, const journal::Standing& standing, const reckoning::StackReckoning& now)
{
    auto* card = new ui::Card{cards_, ui::Tone::amber};
    card->setObjectName(QStringLiteral("beforeLifting"));
    auto* in = card->column();
    say(in, tr("Before you lift"), ui::TextRole::section, card);
    cautions_->setCautions({forms::liftingCaution({}), forms::dustCaution()});
    for (auto tray = now.now.slots.rbegin(); tray != now.now.slots.rend(); ++tray) {
        const forms::TrayLiftWords lift = forms::trayLift(standing, tray->slot, tray->weightKg.p95);
        auto* label = say(in, tr("Slot %1: about %2. %3").arg(QString::number(tray->slot), ui::massBand(tray->weightKg), lift.words), tray->slot == 1 ? ui::TextRole::strong : ui::TextRole::body, card);
        label->setObjectName(QStringLiteral("lift%1").arg(tray->slot));
    }
    rows->addWidget(card);

    auto* steps = new ui::Card{cards_, ui::Tone::moss};
    say(steps->column(), tr("The sequence"), ui::TextRole::section, steps);
    int number = 0;
    for (const Block& block : pageWithId("harvest-now")->blocks) {
        if (block.kind == BlockKind::step) say(steps->column(), tr("%1. %2", "number, step").arg(QString::number(++number), ui::withFigures(QCoreApplication::translate(textContext, block.text))), ui::TextRole::body, steps);
    }
    auto* buttons = new QWidget{steps};
    new ui::FlowLayout{buttons, 6};
    addButton(buttons, tr("It stands on top: record the lifting…"), true, "recordLifting", journal::Rotate{});
    addButton(buttons, tr("Look into the bottom tray first…"), false, "lookFirst", journal::Check{}, 1);
    steps->column()->addWidget(buttons);
    rows->addWidget(steps);
}

void HarvestView::drying(QVBoxLayout* rows, const journal::StackHistory& history, const reckoning::StackReckoning& now)
{
    const auto journal = household_.journal();
    const std::vector<guide::DryingDay> days = guide::dryingDays(now, history, journal->entries, household_.today());
    for (auto day = days.rbegin(); day != days.rend(); ++day) {
        const bool today = day == days.rbegin();
        auto* card = new ui::Card{cards_, today ? ui::Tone::amber : ui::Tone::plain};
        card->setObjectName(QStringLiteral("dryingDay%1").arg(day->number));
        auto* in = card->column();
        say(in, tr("Day %1 in the light, %2").arg(QString::number(day->number), ui::longDay(day->day, household_.today())), today ? ui::TextRole::section : ui::TextRole::strong, card);
        say(in, tr("Worms left: %1 of those that were in it; moisture %2.").arg(percents({100 * day->wormsLeftLow, 100 * day->wormsLeft, 100 * day->wormsLeftHigh}), percents(day->moisturePct)),
            ui::TextRole::body, card);
        if (day->fedOnTop) ui::setTone(say(in, tr("Food went into the drying tray: that keeps worms in it."), ui::TextRole::body, card), ui::Tone::brick);
        if (!today) {
            if (day->tooWet) say(in, tr("Too wet that day."), ui::TextRole::small, card);
            rows->addWidget(card);
            continue;
        }
        const journal::Standing* standing = history.on(household_.today());
        forms::CautionFacts facts;
        facts.kind = forms::FormKind::harvest;
        if (!now.now.slots.empty() && standing && standing->dryingSlot()) {
            const auto& tray = now.now.slots.back();
            facts.weight = forms::CautionFacts::Weight{tray.weightKg.p05, tray.weightKg.p50, tray.weightKg.p95};
            facts.tray = tray.tray;
            facts.liftWords = forms::trayLift(*standing, tray.slot, tray.weightKg.p95).words;
        }
        cautions_->setCautions({forms::liftingCaution(facts), forms::dustCaution()});
        const bool take = guide::mayTake(*day);
        if (day->tooWet) say(in, tr("Too wet: worms stay where it is wet. Loosen it again, in ridges, and give it another day."), ui::TextRole::body, card);
        else say(in, take ? tr("Few worms are left: take the castings when they crumble.") : tr("Loosen it once today; the usual time is %1.").arg(ui::figureText(Figure::lightDrying)), ui::TextRole::body, card);
        say(in, tr("Feed only the tray below. Lid off, bright, out of the sun."), ui::TextRole::body, card);
        auto* buttons = new QWidget{card};
        new ui::FlowLayout{buttons, 6};
        addButton(buttons, tr("Loosened: record it…"), !take, "recordLoosening", journal::Loosen{});
        addButton(buttons, tr("Taken: weigh or measure…"), take, "recordTaking", journal::Harvest{});
        in->addWidget(buttons);
        rows->addWidget(card);
    }
    if (days.empty()) say(rows, tr("There is no estimate of these days yet."), ui::TextRole::muted, cards_);
}

/// The castings that were taken: the worms and cocoons in them, brought back by light or by bait, each step an entry of the journal.
void HarvestView::keepThem(QVBoxLayout* in, QWidget* card, const guide::HarvestOutcome& outcome)
{
    using std::chrono::days;
    const Day today = household_.today();
    const auto whole = [](double number) { return days{std::lround(number)}; };
    const Day from = outcome.day + whole(guide::lowOf(Figure::secondDrying)), to = outcome.day + whole(guide::highOf(Figure::secondDrying));
    const guide::CastingsCare care = guide::castingsCare(stack().toStdString(), outcome.day, household_.journal()->entries, today);
    say(in, tr("To keep them: a second light-drying of the castings between %1, when what was in the cocoons has hatched; or a bait tray of melon or pumpkin under damp paper for %2, carried back with all that sits in it.")
                .arg(ui::dayRange(from, to, today), ui::figureText(Figure::baitDays)),
        ui::TextRole::body, card);
    QStringList told;
    if (care.lightAgain)
        told << tr("In the light again since %1: loosen once a day, the stored castings in a flat layer on a sheet; what gathers under it goes back into the stack. The usual time is %2.")
                    .arg(ui::longDay(*care.lightAgain, today), ui::figureText(Figure::lightDrying));
    else if (today >= from && today <= to) told << tr("It is time for the second light-drying now.");
    if (care.baited) {
        const Day until = *care.baited + whole(guide::highOf(Figure::baitDays));
        told << (today < until ? tr("Bait laid on %1: keep it damp, look in a few days; carry it back by %2 at the latest.").arg(ui::longDay(*care.baited, today), ui::longDay(until, today))
                               : tr("Bait laid on %1: carry it back now, before it dries.").arg(ui::longDay(*care.baited, today)));
    }
    if (care.carriedBack) told << tr("Worms were put back on %1.").arg(ui::longDay(*care.carriedBack, today));
    for (const QString& each : told) say(in, each, ui::TextRole::strong, card)->setObjectName(QStringLiteral("castingsCare"));
    auto* buttons = new QWidget{card};
    new ui::FlowLayout{buttons, 6};
    if (!care.lightAgain) addButton(buttons, tr("Spread in the light again: record it…"), today >= from, "recordLightAgain", journal::Event{std::string{guide::lightAgainEvent}, {}});
    if (!care.baited) addButton(buttons, tr("Bait laid: record it…"), false, "recordBait", journal::Event{std::string{guide::baitEvent}, {}});
    if ((care.lightAgain || care.baited) && !care.carriedBack)
        addButton(buttons, tr("Worms carried back: weigh and record them…"), true, "recordCarriedBack", journal::Stock{{5, Unit::g}, {}, {}});
    in->addWidget(buttons);
    if (care.lightAgain && !care.carriedBack) {
        auto* dust = new forms::CautionCard{card};
        dust->setCautions({forms::dustCaution()});
        in->addWidget(dust);
    }
}

void HarvestView::afterwards(QVBoxLayout* rows, const journal::Standing& standing, const journal::StackHistory& history, const reckoning::StackReckoning& now)
{
    const auto journal = household_.journal();
    const auto outcome = guide::latestHarvest(now, history, journal->entries, household_.today(), outcomeDays);
    auto* card = new ui::Card{cards_};
    card->setObjectName(QStringLiteral("afterHarvest"));
    auto* in = card->column();
    if (outcome) {
        say(in, tr("The last harvest, %1").arg(ui::longDay(outcome->day, household_.today())), ui::TextRole::section, card);
        QString taken = tr("Taken: %1, about %2, dry %3").arg(ui::massText(outcome->taken.wet.base()), ui::volumeText(outcome->taken.volume().base()), ui::massText(outcome->taken.dry().base()));
        if (!outcome->moistureRead) taken = tr("%1 at an assumed moisture of %2").arg(taken, ui::figureText(Figure::takenMoisture));
        say(in, tr("%1.").arg(taken), ui::TextRole::body, card);
        if (outcome->expectedKg) say(in, tr("Expected before it was weighed: %1.").arg(ui::massBand(*outcome->expectedKg)), ui::TextRole::body, card);
        if (outcome->yield)
            say(in, tr("Of %1 dry put in, %2 to %3 dry is usual (%4): this is %5.")
                        .arg(ui::massText(outcome->dryInput.p50), ui::massText(outcome->yield->least.base()), ui::massText(outcome->yield->most.base()),
                             ui::sourceText(guide::figureRow(Figure::yieldRatio)), yieldWords(outcome->yield->verdict)),
                ui::TextRole::body, card);
        say(in, tr("With it went about %1 worms and %2 cocoons, by the estimate. That is normal; castings without any worm cannot be promised.")
                    .arg(ui::countText(outcome->wormsGone, true), ui::countText(outcome->cocoonsGone, true)),
            ui::TextRole::body, card);
        keepThem(in, card, *outcome);
    } else {
        say(in, tr("Afterwards"), ui::TextRole::section, card);
        say(in, tr("What you take, weighed or measured, is compared here with what was expected. Some cocoons and young worms leave with it: a second light-drying after %1 or a bait tray keeps many of them.")
                    .arg(ui::figureText(Figure::secondDrying)),
            ui::TextRole::body, card);
    }
    if (outcome && standing.spare() > 0) {
        auto* buttons = new QWidget{card};
        new ui::FlowLayout{buttons, 6};
        std::optional<journal::Bed> last;
        for (const journal::Entry& entry : journal->entries) {
            if (const auto* bed = std::get_if<journal::Bed>(&entry.action); bed && entry.stack == now.name) last = *bed;
        }
        if (last) addButton(buttons, tr("Bed a tray anew…"), false, "bedAnew", *last);
        in->addWidget(buttons);
    }
    rows->addWidget(card);
}

}
