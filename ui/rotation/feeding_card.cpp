#include "ui/rotation/feeding_card.h"

#include "core/planning/feeding_plan.h"
#include "core/store/setting_names.h"
#include "ui/common/amount_field.h"
#include "ui/common/formats.h"
#include "ui/common/material_names.h"

#include <QApplication>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QVBoxLayout>

#include <cmath>

namespace tierloam::rotation {

namespace {

QString sideText(journal::Side side)
{
    switch (side) {
    case journal::Side::left: return FeedingCard::tr("left");
    case journal::Side::right: return FeedingCard::tr("right");
    case journal::Side::front: return FeedingCard::tr("front");
    case journal::Side::back: return FeedingCard::tr("back");
    case journal::Side::all: return FeedingCard::tr("all over");
    }
    return {};
}

QString withText(const planning::StackFeeding& one)
{
    QStringList parts;
    if (one.with.paperKg > 0.0) parts << FeedingCard::tr("%1 of %2", "amount and material of a cover").arg(ui::massText(one.with.paperKg), ui::materialText(one.paper));
    else parts << FeedingCard::tr("its usual cover");
    if (one.with.waterL > 0.0) parts << FeedingCard::tr("%1 of water").arg(ui::volumeText(one.with.waterL));
    if (!one.with.waterReached && one.with.waterShare > 1.0) parts << FeedingCard::tr("no water");
    return parts.join(FeedingCard::tr(", "));
}

/// Where it goes and what goes with it; the day, where what was given lately leaves no room before.
QString whereText(const planning::StackFeeding& one, Day today)
{
    const QString most = ui::mostText(one.appetite.high);
    if (one.from <= today) return FeedingCard::tr("tray %1, %2; with it: %3. At most %4").arg(one.tray).arg(sideText(one.side), withText(one), most);
    return FeedingCard::tr("all of it from %1 on, since the days before count; tray %2, %3; with it: %4. At most %5").arg(ui::shortDay(one.from, today)).arg(one.tray).arg(sideText(one.side), withText(one), most);
}

double kgOf(const Amount& amount) { return amount.mass() ? amount.mass()->base() : 0.0; }

/// Rounded as the limit is that is named beside it, where it is that limit: a share never stands above it.
QString shareText(const planning::StackFeeding& one)
{
    const Amount share = ui::massAmount(one.kg), most = ui::mostOf(one.appetite.high);
    return ui::amountText(kgOf(share) > kgOf(most) ? most : share);
}

/// Lists that open from a field are windows of their own, and belong to it all the same.
bool isWithin(const QWidget* widget, const QWidget* field)
{
    while (widget != nullptr && widget != field) widget = widget->parentWidget();
    return widget != nullptr;
}

}

FeedingCard::FeedingCard(household::Household& household, QWidget* parent)
    : Card{parent}, household_{household}, supply_{new ui::AmountField{ui::massUnits()}}, learned_{ui::makeLabel({}, ui::TextRole::smallMuted, this, true)},
      rows_{nullptr}, body_{new QWidget{this}}, left_{ui::makeLabel({}, ui::TextRole::small, this, true)}
{
    setObjectName(QStringLiteral("feedingCard"));
    ui::setAccess(this, tr("Feeding this week"));
    column()->addWidget(ui::makeLabel(tr("Feeding this week"), ui::TextRole::section, this));
    auto* line = new QHBoxLayout;
    supply_->setName(tr("What the kitchen gives in a week"));
    supply_->setZeroAllowed(true);
    supply_->setMaximumWidth(fontMetrics().averageCharWidth() * 34);
    line->addWidget(ui::makeLabel(tr("From the kitchen"), ui::TextRole::body, this));
    line->addWidget(supply_);
    line->addStretch(1);
    column()->addLayout(line);
    column()->addWidget(learned_);
    column()->addWidget(body_);
    ui::setTone(left_, ui::Tone::amber);
    column()->addWidget(left_);
    column()->addStretch(1);
    connect(supply_, &ui::Field::edited, this, [this] {
        typing_ = true;
        showPlan();
    });
    connect(qApp, &QApplication::focusChanged, this, [this](const QWidget* from, const QWidget* to) {
        if (!isWithin(from, supply_) || isWithin(to, supply_)) return;
        keepSupply();
        showSupply();
    });
}

/// Its field gives up the focus while it goes, and is not to be asked any more.
FeedingCard::~FeedingCard() { disconnect(qApp, nullptr, this, nullptr); }

void FeedingCard::hideEvent(QHideEvent* event)
{
    Card::hideEvent(event);
    keepSupply(); // with the page or the window goes the focus, and nobody may be told of it
}

void FeedingCard::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) keepSupply();
    Card::keyPressEvent(event);
}

/// What is no amount stays where it was typed, with the reason beneath.
void FeedingCard::keepSupply()
{
    const auto typed = supply_->amount();
    if (!typing_ || !typed.sound()) return;
    typing_ = false;
    household_.keep(store::settingSupply, typed.value ? QString::number(kgOf(*typed.value), 'f', 3) : QString{}, tr("Supply of the kitchen"));
}

double FeedingCard::supply() const
{
    const auto journal = household_.journal();
    const auto learned = [&] { return planning::learnedSupply(journal->entries, journal->materials, household_.today()); };
    if (const auto typed = supply_->amount(); typing_ && typed.sound()) return typed.value ? kgOf(*typed.value) : learned();
    bool isKept = false;
    const double kg = household_.kept(store::settingSupply).toDouble(&isKept);
    return isKept ? kg : learned();
}

void FeedingCard::refresh()
{
    const auto journal = household_.journal();
    const double learned = planning::learnedSupply(journal->entries, journal->materials, household_.today());
    learned_->setText(tr("Learned from the journal: %1 a week over all stacks, the middle week of the last eight. Leave it empty to follow the journal.").arg(ui::massText(learned)));
    showSupply();
    showPlan();
}

void FeedingCard::showSupply()
{
    if (typing_ || supply_->isAncestorOf(focusWidget())) return;
    const double kg = supply();
    supply_->propose(kg < 1.0 ? Amount{std::round(kg * 1000.0), Unit::g} : Amount{std::round(kg * 100.0) / 100.0, Unit::kg});
}

void FeedingCard::showPlan()
{
    const auto journal = household_.journal();
    const auto reckoning = household_.reckoning();
    delete body_->layout();
    qDeleteAll(body_->findChildren<QWidget*>(Qt::FindDirectChildrenOnly));
    rows_ = new QGridLayout{body_};
    rows_->setContentsMargins(0, 0, 0, 0);
    rows_->setHorizontalSpacing(12);
    rows_->setVerticalSpacing(3);
    rows_->setColumnStretch(2, 1);
    left_->setVisible(false);
    if (!reckoning) return;
    const planning::FeedingPlan plan = planning::planFeeding(*reckoning, journal->entries, journal->materials, supply());
    int row = 0;
    for (const planning::StackFeeding& one : household::inOrder(plan.stacks, household_.stackOrder())) {
        const QString stack = QString::fromStdString(one.stack);
        const bool takes = one.slot > 0 && one.kg > 0.0;
        rows_->addWidget(ui::makeLabel(stack, ui::TextRole::strong, body_), row, 0, Qt::AlignTop);
        rows_->addWidget(ui::makeLabel(takes ? shareText(one) : tr("nothing"), ui::TextRole::strong, body_), row, 1, Qt::AlignTop | Qt::AlignRight);
        const QString where = one.slot == 0 ? tr("no tray takes food")
            : !one.withheld.empty()          ? ui::unbroken(QString::fromStdString(one.withheld))
            : !takes                         ? tr("it can bear %1 this week").arg(ui::mostText(one.appetite.high))
                                             : whereText(one, reckoning->asOf);
        rows_->addWidget(ui::makeLabel(where, ui::TextRole::small, body_, true), row, 2);
        ++row;
    }
    if (plan.stacks.empty()) rows_->addWidget(ui::makeLabel(tr("No stack takes food yet."), ui::TextRole::muted, body_), 0, 0);
    if (plan.leftOver > 0.0) {
        left_->setText(tr("%1 more than the stacks can bear as they stand: keep it until they have eaten, freeze it for a week with less, or put it on a compost heap. Given all the same, it heats and smells.").arg(ui::massText(plan.leftOver)));
        left_->setVisible(true);
    }
}

}
