#include "ui/rotation/wish_card.h"

#include "ui/common/date_field.h"
#include "ui/common/dates.h"
#include "ui/common/field_edit.h"
#include "ui/common/flow_layout.h"
#include "ui/common/formats.h"
#include "ui/common/number_field.h"
#include "ui/common/toggle.h"

#include <QCheckBox>
#include <QLabel>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace tierloam::rotation {

namespace {

constexpr double usualWishL = 20.0, usualWishGal = 5.0; ///< a round one in either system
constexpr int usualWishDays = 180;
constexpr double worthSaying = 0.005;        ///< of the chance

struct LeverLine {
    QString what;
    planning::WishAnswer then;
};

/// What raises the chance, most first; what does not is named below, so that nobody tries it.
QString leversText(const planning::WishAnswer& asItIs, std::vector<LeverLine> levers)
{
    const auto raises = [&](const LeverLine& each) { return each.then.chance >= asItIs.chance + worthSaying; };
    std::stable_sort(levers.begin(), levers.end(), [](const LeverLine& a, const LeverLine& b) { return a.then.chance > b.then.chance; });
    QStringList lines, vain;
    for (const LeverLine& each : levers) {
        if (raises(each)) lines << WishCard::tr("%1: %2 (%3)", "what is changed, chance, litres").arg(each.what, ui::percentText(each.then.chance), ui::volumeBand(each.then.litres));
        else vain << each.what;
    }
    if (!vain.isEmpty()) lines << WishCard::tr("Not raised by: %1.").arg(vain.join(QStringLiteral("; ")));
    return lines.join(u'\n');
}

/// What each stack would be given; one at its limit is given none, and nothing is said of an amount that it cannot bear.
QString moreFoodText(const planning::WishRaised& raised)
{
    const QString most = ui::mostText(raised.mostMoreFoodKg);
    if (most == ui::mostText(0.0)) return WishCard::tr("more food, which no stack can bear as they stand");
    return most == ui::mostText(raised.leastMoreFoodKg) ? WishCard::tr("%1 more food a week in each stack").arg(most)
                                                        : WishCard::tr("up to %1 more food a week in each stack, as far as it can bear it").arg(most);
}

}

WishCard::WishCard(household::Household& household, Background& background, QWidget* parent)
    : Card{parent}, household_{household}, background_{background}, today_{household.today()}, litres_{new ui::VolumeField}, by_{new ui::DateField{household.today()}},
      monthly_{new QCheckBox{tr("a little each month"), this}}, answer_{ui::makeLabel({}, ui::TextRole::body, this, true)},
      raised_{ui::makeLabel({}, ui::TextRole::small, this, true)}, ask_{ui::makeButton(tr("What would raise it?"), ui::Tone::plain, this)}
{
    setObjectName(QStringLiteral("wishCard"));
    ui::setAccess(this, tr("The garden's wish"));
    column()->addWidget(ui::makeLabel(tr("The garden's wish"), ui::TextRole::section, this));
    litres_->setName(tr("Castings wished for"));
    litres_->setVolume(ui::measures() == ui::Measures::us ? litres(usualWishGal * inBaseUnit(Unit::gal)) : litres(usualWishL));
    litres_->setMaximumWidth(fontMetrics().averageCharWidth() * 28);
    by_->setName(tr("Wished for by"));
    by_->propose(usualWishDays);
    by_->setMaximumWidth(fontMetrics().averageCharWidth() * 40);
    if (by_->timeButton()) by_->timeButton()->hide();
    auto* row = new QWidget{this};
    auto* flow = new ui::FlowLayout{row, 10};
    for (QWidget* each : std::initializer_list<QWidget*>{litres_, ui::makeLabel(tr("by"), ui::TextRole::body, row), by_, monthly_}) flow->addWidget(each);
    column()->addWidget(row);
    column()->addWidget(answer_);
    column()->addWidget(raised_);
    column()->addWidget(ask_, 0, Qt::AlignLeading);
    column()->addStretch(1);
    raised_->hide();
    ask_->setObjectName(QStringLiteral("raiseWish"));
    connect(litres_, &ui::Field::edited, this, [this] { answer(); });
    connect(by_, &ui::Field::edited, this, [this] { answer(); });
    connect(monthly_, &QCheckBox::toggled, this, [this] { answer(); });
    connect(ask_, &QPushButton::clicked, this, [this] { askWhatRaises(); });
    connect(&household_, &household::Household::changed, this, &WishCard::followDay);
    connect(&household_, &household::Household::reckoned, this, &WishCard::followDay);
}

void WishCard::giveKeys(QWidget* page)
{
    ui::giveKeys(ask_, ui::ActionId::raiseWish, page);
    ui::giveKeys(monthly_, ui::ActionId::wishMonthly, page);
}

/// Midnight may pass while the page stands: what was proposed goes on, what was chosen stays.
void WishCard::followDay()
{
    if (today_ == household_.today()) return;
    today_ = household_.today();
    by_->setToday(today_);
    answer();
}

void WishCard::setPlan(std::shared_ptr<const reckoning::Reckoning> basis, std::shared_ptr<const planning::YearPlan> plan)
{
    basis_ = std::move(basis);
    plan_ = std::move(plan);
    answer();
}

void WishCard::answer()
{
    ++question_;
    raised_->hide();
    const auto litres = litres_->volume();
    const auto by = by_->moment().value;
    ask_->setEnabled(plan_ && litres && by);
    if (!plan_ || !litres || !by) {
        answer_->setText(tr("Say how much is wished for, and by when."));
        return;
    }
    const planning::WishAnswer said = planning::answerWish(*plan_, {litres->base(), by->day, monthly_->isChecked()});
    QStringList text{tr("Chance %1. By %2 the plan gives %3.").arg(ui::percentText(said.chance), ui::shortDay(by->day, household_.today()), ui::volumeBand(said.litres))};
    if (monthly_->isChecked()) text << (said.monthsWithout == 0 ? tr("Something comes in each month.") : tr("In %n month(s) until then nothing is taken.", nullptr, said.monthsWithout));
    answer_->setText(text.join(u' '));
}

void WishCard::askWhatRaises()
{
    const auto litres = litres_->volume();
    const auto by = by_->moment().value;
    if (!plan_ || !basis_ || !litres || !by) return;
    raised_->setText(tr("Comparing…"));
    raised_->show();
    const planning::GardenWish wish{litres->base(), by->day, monthly_->isChecked()};
    background_.ask(QStringLiteral("wish"), [this, question = ++question_, basis = basis_, plan = plan_, wish](std::stop_token stop) -> Background::Use {
        const auto raised = planning::raiseWish(*basis, *plan, wish, stop);
        if (!raised) return {};
        return [this, question, raised = *raised, asItIs = planning::answerWish(*plan, wish)] {
            if (question != question_) return;
            raised_->setText(leversText(asItIs, {{moreFoodText(raised), raised.moreFood},
                                                 {tr("the beds %1 warmer").arg(ui::warmerText(2.0)), raised.warmer},
                                                 {tr("one tray more in each stack"), raised.moreTrays},
                                                 {tr("each harvest on the day it is due"), raised.onTheirTurns},
                                                 {tr("wanted %n day(s) later", nullptr, planning::WishRaised::laterDays), raised.later}}));
            raised_->show();
        };
    });
}

}
