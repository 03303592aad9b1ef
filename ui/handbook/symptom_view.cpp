#include "ui/handbook/symptom_view.h"

#include "ui/common/field_edit.h"
#include "ui/common/figure_words.h"
#include "ui/common/flow_layout.h"
#include "ui/common/formats.h"
#include "ui/common/panels.h"
#include "ui/common/usual_amounts.h"
#include "ui/forms/caution_card.h"
#include "ui/handbook/handbook_text.h"
#include "ui/handbook/stack_choice.h"
#include "ui/handbook/symptom_words.h"

#include <QCoreApplication>
#include <QLabel>
#include <QPushButton>
#include <QStringBuilder>
#include <QVBoxLayout>

namespace tierloam::handbook {

namespace {

constexpr std::size_t shownAtMost = 5;

}

SymptomView::SymptomView(household::Household& household, const ui::Theme& theme, QWidget* parent) : QScrollArea{parent}, household_{household}, theme_{theme}
{
    setObjectName(QStringLiteral("symptomView"));
    setFrameShape(QFrame::NoFrame);
    setWidgetResizable(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFocusPolicy(Qt::NoFocus);
    auto* body = new QWidget;
    body->setProperty("page", true);
    column_ = new QVBoxLayout{body};
    column_->setContentsMargins(0, 0, 8, 12);
    column_->setSpacing(10);
    const auto ownWords = [&](BlockKind kind, ui::TextRole role) {
        for (const Block& block : pageWithId("symptoms")->blocks) {
            if (block.kind == kind) column_->addWidget(ui::makeLabel(QCoreApplication::translate(textContext, block.text), role, body, true));
        }
    };
    ownWords(BlockKind::paragraph, ui::TextRole::muted);
    stack_ = new StackChoice{household_, body};
    stack_->setObjectName(QStringLiteral("symptomStack"));
    column_->addWidget(stack_);
    column_->addWidget(ui::makeLabel(tr("What do you notice?"), ui::TextRole::section, body));
    auto* chips = new QWidget{body};
    auto* flow = new ui::FlowLayout{chips, 6};
    for (int s = 0; s < static_cast<int>(guide::Symptom::count); ++s) {
        const auto symptom = static_cast<guide::Symptom>(s);
        auto* chip = ui::makeButton(symptomText(symptom), ui::Tone::plain, chips);
        chip->setCheckable(true);
        chip->setObjectName(QStringLiteral("symptom%1").arg(s));
        connect(chip, &QPushButton::clicked, this, [this, symptom] { choose(symptom); });
        flow->addWidget(chip);
        chips_.push_back(chip);
    }
    column_->addWidget(chips);
    line_ = ui::makeLabel({}, ui::TextRole::muted, body, true);
    column_->addWidget(line_);
    note_ = ui::makeButton(tr("Write down that you noticed it…"), ui::Tone::plain, body);
    note_->setObjectName(QStringLiteral("noteSymptom"));
    connect(note_, &QPushButton::clicked, this, [this] {
        if (symptom_) Q_EMIT entryWanted(stack(), journal::Event{std::string{guide::eventWord(*symptom_)}, {}}, std::nullopt);
    });
    column_->addWidget(note_, 0, Qt::AlignLeading);
    results_ = new QWidget{body};
    column_->addWidget(results_);
    ownWords(BlockKind::why, ui::TextRole::smallMuted);
    column_->addStretch(1);
    setWidget(body);
    connect(stack_, &ui::Field::edited, this, [this] { rank(); });
    setFocusProxy(chips_.front());
}

QString SymptomView::stack() const { return stack_->stack(); }

void SymptomView::chooseStack(const QString& stack)
{
    stack_->setValue(stack);
    rank();
}

void SymptomView::follow()
{
    stack_->follow();
    rank();
}

void SymptomView::choose(guide::Symptom symptom)
{
    symptom_ = symptom;
    rank();
    // In a small window the first remedy would lie below the edge; once its place is known it is brought into sight.
    QMetaObject::invokeMethod(this, &SymptomView::showFirstRemedy, Qt::QueuedConnection);
}

void SymptomView::showChoice()
{
    QMetaObject::invokeMethod(this, [this] { bringIntoSight(chips_.front()->parentWidget()); }, Qt::QueuedConnection);
}

void SymptomView::showFirstRemedy()
{
    if (const auto* remedy = results_->findChild<QLabel*>(QStringLiteral("remedyText"))) bringIntoSight(remedy);
}

void SymptomView::bringIntoSight(const QWidget* part)
{
    widget()->layout()->activate();
    QCoreApplication::sendPostedEvents(widget(), QEvent::LayoutRequest);
    const QPoint top = part->mapTo(widget(), QPoint{});
    ensureVisible(0, top.y() + part->height(), 0, 0);
    ensureVisible(0, top.y(), 0, 0);
}

void SymptomView::rank()
{
    for (std::size_t i = 0; i < chips_.size(); ++i) chips_[i]->setChecked(symptom_ && static_cast<std::size_t>(*symptom_) == i);
    ranking_ = {};
    column_->removeWidget(results_);
    results_->hide();
    results_->deleteLater();
    results_ = new QWidget{widget()};
    auto* rows = new QVBoxLayout{results_};
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(10);
    column_->insertWidget(column_->count() - 2, results_); // before the reason and the stretch
    const auto reckoning = household_.reckoning();
    const auto journal = household_.journal();
    const reckoning::StackReckoning* now = reckoning ? reckoning->stack(stack().toStdString()) : nullptr;
    const journal::StackHistory* history = journal->replay.stack(stack().toStdString());
    note_->setVisible(symptom_.has_value() && history && !household_.readOnly());
    if (!history) {
        line_->setText(tr("There is no stack yet that anything could be wrong with."));
        return;
    }
    if (!now) {
        line_->setText(tr("The estimates of this stack are being made."));
        return;
    }
    if (!symptom_) {
        line_->setText(tr("One click puts the causes in order, by what is known of this stack."));
        return;
    }
    ranking_ = guide::rankCauses(*symptom_, *now, guide::circumstancesOf(journal->entries, *history, journal->materials, household_.today()));
    line_->setText(tr("%1 in %2: causes by what the estimates and the journal say today.").arg(symptomText(*symptom_), stack()));
    // Something else has its place among the causes, by its chance; what the record speaks against has its numbers, and no remedy.
    std::size_t shown = 0;
    bool elsewhereTold = false;
    const auto tellElsewhere = [&] {
        rows->addWidget(elsewhereCard(shown == 0));
        elsewhereTold = true;
    };
    QStringList rest;
    for (const guide::Ranked& each : ranking_.causes) {
        if (!elsewhereTold && ranking_.elsewhere >= each.probability) tellElsewhere();
        if (shown < shownAtMost && each.isWorthARemedy()) {
            rows->addWidget(causeCard(each, *now, shown == 0 && !elsewhereTold));
            ++shown;
        } else {
            rest << tr("%1 – %2: %3", "cause, its chance, evidence").arg(causeText(each.cause), ui::percentText(each.probability), evidenceLines(each).join(QStringLiteral("; ")));
        }
    }
    if (!elsewhereTold) tellElsewhere();
    if (!rest.isEmpty()) {
        auto* unlikely = ui::makeLabel(tr("Hardly, by the record:") % u'\n' % rest.join(u'\n'), ui::TextRole::smallMuted, results_, true);
        unlikely->setObjectName(QStringLiteral("unlikelyCauses"));
        rows->addWidget(unlikely);
    }
    for (const forms::Caution& caution : {forms::healthCaution()}) {
        auto* card = new forms::CautionCard{results_};
        card->setCautions({caution});
        rows->addWidget(card);
    }
    results_->show(); // with all that is in it, so that the place of each part is known
}

QStringList SymptomView::evidenceLines(const guide::Ranked& ranked)
{
    QStringList lines;
    for (const guide::Evidence& each : ranked.evidence) lines << tr("%1 %2", "mark, evidence").arg(each.speaksFor ? QStringLiteral("●") : QStringLiteral("○"), ui::unbroken(evidenceText(each)));
    if (lines.isEmpty()) lines << tr("%1 %2", "mark, evidence").arg(QStringLiteral("○"), tr("the journal says nothing of it"));
    return lines;
}

QWidget* SymptomView::elsewhereCard(bool first)
{
    auto* card = new ui::Card{results_, first ? ui::Tone::moss : ui::Tone::plain};
    card->setObjectName(QStringLiteral("elsewhere"));
    const QString chance = ui::percentText(ranking_.elsewhere);
    auto* title = ui::makeLabel(first ? tr("The record shows none of the usual causes – %1").arg(chance) : tr("Something else – %1").arg(chance), ui::TextRole::strong, card, true);
    card->column()->addWidget(title);
    auto* byHand = ui::makeLabel(tr("To look at by hand: %1").arg(byHandText(*symptom_)), ui::TextRole::body, card, true);
    byHand->setObjectName(QStringLiteral("remedyText"));
    card->column()->addWidget(byHand);
    if (first && !ranking_.causes.empty())
        card->column()->addWidget(ui::makeLabel(tr("In case the record lacks something: %1").arg(lookText(ranking_.causes.front().cause)), ui::TextRole::small, card, true));
    auto* look = ui::makeButton(tr("Record the look…"), first ? ui::Tone::moss : ui::Tone::plain, card);
    look->setObjectName(QStringLiteral("look"));
    ui::setAccess(look, tr("%1: %2").arg(tr("Something else"), look->text()));
    look->setEnabled(!household_.readOnly());
    connect(look, &QPushButton::clicked, this, [this] { Q_EMIT entryWanted(stack(), journal::Check{}, std::nullopt); });
    card->column()->addWidget(look, 0, Qt::AlignLeading);
    ui::setAccess(card, title->text(), byHand->text());
    return card;
}

QWidget* SymptomView::causeCard(const guide::Ranked& ranked, const reckoning::StackReckoning& stack, bool first)
{
    auto* card = new ui::Card{results_, first ? ui::Tone::moss : ui::Tone::plain};
    const guide::Cause cause = ranked.cause;
    card->setObjectName(QStringLiteral("cause%1").arg(static_cast<int>(cause)));
    auto* title = ui::makeLabel(tr("%1 – %2", "cause, its chance").arg(causeText(cause), ui::percentText(ranked.probability)), ui::TextRole::strong, card, true);
    card->column()->addWidget(title);
    const QStringList why = evidenceLines(ranked);
    auto* evidence = ui::makeLabel(why.join(u'\n'), ui::TextRole::smallMuted, card, true);
    evidence->setToolTip(tr("● speaks for this cause, ○ does not"));
    card->column()->addWidget(evidence);
    auto* remedy = ui::makeLabel(ui::withFigures(remedyText(cause)), ui::TextRole::body, card, true);
    remedy->setObjectName(QStringLiteral("remedyText"));
    card->column()->addWidget(remedy);
    auto* cautions = new forms::CautionCard{card};
    card->column()->addWidget(cautions);
    cautions->setCautions(remedyCautions(cause));
    card->column()->addWidget(ui::makeLabel(tr("To be sure: %1").arg(lookText(cause)), ui::TextRole::small, card, true));
    auto* buttons = new QWidget{card};
    auto* flow = new ui::FlowLayout{buttons, 6};
    const household::Usual usual = ui::roundDefaults(household_.usual(stack.name));
    const auto button = [&](const QString& text, ui::Tone tone, const char* name, const Proposed& proposed) {
        auto* made = ui::makeButton(text, tone, buttons);
        made->setObjectName(QString::fromLatin1(name));
        ui::setAccess(made, tr("%1: %2").arg(causeText(cause), text));
        made->setEnabled(!household_.readOnly());
        connect(made, &QPushButton::clicked, this, [this, proposed] { Q_EMIT entryWanted(this->stack(), proposed.action, proposed.slot); });
        flow->addWidget(made);
    };
    const Proposed entry = remedyEntry(cause, *symptom_, stack, usual);
    button(remedyButton(cause, entry), first ? ui::Tone::moss : ui::Tone::plain, "remedy", entry);
    button(lookButton(cause), ui::Tone::plain, "look", lookEntry(cause));
    card->column()->addWidget(buttons);
    ui::setAccess(card, title->text(), why.join(QStringLiteral("; ")));
    return card;
}

}
