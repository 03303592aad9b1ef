#include "ui/rotation/rotation_page.h"

#include "core/planning/wish_text.h"
#include "core/store/setting_names.h"
#include "ui/common/choice_field.h"
#include "ui/common/dates.h"
#include "ui/common/field_edit.h"
#include "ui/common/flow_layout.h"
#include "ui/common/formats.h"
#include "ui/common/panels.h"
#include "ui/common/toggle.h"
#include "ui/rotation/change_card.h"
#include "ui/rotation/clock_card.h"
#include "ui/rotation/feeding_card.h"
#include "ui/rotation/gain_words.h"
#include "ui/rotation/lanes_key.h"
#include "ui/rotation/lanes_view.h"
#include "ui/rotation/step_readout.h"
#include "ui/rotation/track_text.h"
#include "ui/rotation/wish_card.h"

#include <QAction>
#include <QGridLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QScrollArea>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace tierloam::rotation {

namespace {

using planning::Gathering;

/// The name it is asked under, beside what the cards ask.
const QString planQuestion = QStringLiteral("plan");

constexpr int offeredWaits[] = {3, 7, 10, planning::usualWait, 21, planning::longestWait}; ///< days

constexpr ui::ActionId gatheringActions[] = {ui::ActionId::planAsTheyCome, ui::ActionId::planSpread, ui::ActionId::planGathered};

QString waitText(int days) { return RotationPage::tr("none waits more than %n day(s)", nullptr, days); }

bool anyTrayStands(const household::JournalView& journal, Day today)
{
    return std::any_of(journal.replay.stacks.begin(), journal.replay.stacks.end(), [today](const journal::StackHistory& stack) {
        const journal::Standing* now = stack.on(today);
        return now != nullptr && !now->retired && now->trays() > 0;
    });
}

}

RotationPage::RotationPage(household::Household& household, const ui::Theme& theme, QWidget* parent)
    : QWidget{parent}, household_{household}, theme_{theme}, head_{new ui::PageHead{this}}, controls_{new QWidget{this}}, cost_{nullptr}, nothing_{nullptr},
      lanes_{nullptr}, key_{nullptr}, steps_{new StepTable{this}}, table_{nullptr}, feeding_{nullptr}, clock_{nullptr}, wish_{nullptr}, change_{nullptr}, content_{new QWidget}
{
    setObjectName(QStringLiteral("rotationPage"));
    setProperty("page", true);
    ui::setAccess(this, tr("Rotation"));
    auto* rows = new QVBoxLayout{this};
    rows->setContentsMargins(18, 14, 10, 6);
    rows->setSpacing(8);
    head_->setTitle(tr("Rotation"));
    rows->addWidget(head_);
    buildControls();
    rows->addWidget(controls_);

    content_->setProperty("page", true);
    auto* column = new QVBoxLayout{content_};
    column->setContentsMargins(0, 0, 8, 16);
    column->setSpacing(10);
    nothing_ = ui::makeLabel({}, ui::TextRole::muted, content_, true);
    column->addWidget(nothing_);
    auto* card = new ui::Card{content_};
    gain_ = ui::makeLabel({}, ui::TextRole::strong, card, true);
    gain_->setObjectName(QStringLiteral("planGain"));
    card->column()->addWidget(gain_);
    cost_ = ui::makeLabel({}, ui::TextRole::small, card, true);
    cost_->setObjectName(QStringLiteral("planCost"));
    card->column()->addWidget(cost_);
    lanes_ = new LanesView{theme_, card};
    card->column()->addWidget(lanes_);
    key_ = new LanesKey{theme_, card};
    card->column()->addWidget(key_);
    table_ = new QTableView{card};
    table_->setObjectName(QStringLiteral("stepTable"));
    table_->setModel(steps_);
    table_->verticalHeader()->hide();
    table_->horizontalHeader()->setStretchLastSection(true);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setTabKeyNavigation(false);
    table_->hide();
    ui::setAccess(table_, tr("Steps of the coming year"));
    card->column()->addWidget(table_);
    column->addWidget(card);

    auto* below = new QGridLayout;
    below->setSpacing(10);
    feeding_ = new FeedingCard{household_, content_};
    clock_ = new ClockCard{household_, background_, content_};
    wish_ = new WishCard{household_, background_, content_};
    wish_->giveKeys(this);
    change_ = new ChangeCard{household_, background_, theme_, content_};
    change_->giveKeys(ui::ActionId::compareChange, this);
    below->addWidget(feeding_, 0, 0);
    below->addWidget(clock_, 0, 1);
    below->addWidget(wish_, 1, 0);
    below->addWidget(change_, 1, 1);
    track_ = new TrackCard{household_, background_, content_};
    below->addWidget(track_, 2, 0, 1, 2);
    below->setColumnStretch(0, 1);
    below->setColumnStretch(1, 1);
    below_ = below;
    column->addLayout(below);
    column->addStretch(1);
    auto* scroll = new QScrollArea{this};
    scroll->setWidget(content_);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFocusPolicy(Qt::NoFocus);
    rows->addWidget(scroll, 1);
    readout_ = new StepReadout{this};
    ui::giveKeys(readout_->pin(), ui::ActionId::keepHarvest, this);
    rows->addWidget(readout_);

    connect(lanes_, &LanesView::chosenChanged, this, [this] { showChosen(); });
    connect(lanes_, &LanesView::moved, this, [this](const PlanStep& step, Day on) { pin(step.stack, step.batch, on); });
    connect(readout_->pin(), &QPushButton::clicked, lanes_, &LanesView::keepChosen);
    connect(readout_->unpin(), &QPushButton::clicked, this, [this] {
        if (const PlanStep* step = lanes_->chosen()) pin(std::string{step->stack}, step->batch, std::nullopt);
    });
    auto* unpin = ui::makeAction(ui::ActionId::unpinHarvest, this);
    addAction(unpin);
    connect(unpin, &QAction::triggered, this, [this] {
        if (readout_->unpin()->isVisible()) readout_->unpin()->click();
    });
    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this](const QModelIndex& row) { lanes_->choose(steps_->markAt(row.row())); });
    connect(&background_, &Background::busyChanged, this, [this] { showState(); });
    const auto changed = [this] {
        stale_ = true;
        if (isVisible()) replan();
    };
    connect(&household_, &household::Household::changed, this, changed);
    connect(&household_, &household::Household::reckoned, this, changed);
    syncControls();
    showChosen();
    showState();
}

RotationPage::~RotationPage() = default;

QPushButton* RotationPage::toggle(ui::ActionId id) { return ui::addToggle(id, this, controls_); }

void RotationPage::buildControls()
{
    new ui::FlowLayout{controls_, 8};
    for (std::size_t i = 0; i < std::size(gatheringActions); ++i) {
        QPushButton* button = toggle(gatheringActions[i]);
        connect(button, &QPushButton::clicked, this, [this, i] {
            planning::YearWishes now = wishes();
            now.gathering = static_cast<Gathering>(i);
            setWishes(now, ui::actionName(gatheringActions[i]));
        });
        gatherings_.push_back(button);
    }
    wait_ = new ui::ChoiceField{controls_};
    wait_->setObjectName(QStringLiteral("mostWait"));
    wait_->setName(tr("How long a harvest may wait for others"));
    connect(wait_, &ui::Field::edited, this, [this] {
        planning::YearWishes now = wishes();
        now.mostWait = wait_->value().toInt();
        setWishes(now, tr("How long a harvest may wait"));
    });
    for (const int days : offeredWaits) wait_->addChoice(waitText(days), days);
    controls_->layout()->addWidget(wait_);
    const QLocale locale;
    for (int day = 0; day < 7; ++day) {
        auto* button = ui::makeButton({}, ui::Tone::plain, controls_);
        button->setCheckable(true);
        button->setObjectName(QStringLiteral("weekday%1").arg(day));
        ui::setAccess(button, tr("Harvest on %1").arg(locale.dayName(day + 1)));
        ui::giveKeys(button, ui::ActionId::harvestDays, this, day);
        connect(button, &QPushButton::clicked, this, [this, day] {
            planning::YearWishes now = wishes();
            now.weekdays ^= 1U << day;
            setWishes(now, tr("Days for harvests"));
        });
        controls_->layout()->addWidget(button);
        weekdays_.push_back(button);
    }
    tableButton_ = toggle(ui::ActionId::stepsAsTable);
    connect(tableButton_, &QPushButton::clicked, this, [this](bool on) {
        table_->setVisible(on);
        lanes_->setVisible(!on);
        key_->setVisible(!on);
    });
}

void RotationPage::syncControls()
{
    const planning::YearWishes now = wishes();
    const QLocale locale;
    for (std::size_t i = 0; i < gatherings_.size(); ++i) gatherings_[i]->setChecked(static_cast<std::size_t>(now.gathering) == i);
    wait_->setVisible(now.gathering == Gathering::gathered);
    if (wait_->list()->findData(now.mostWait) < 0) wait_->addChoice(waitText(now.mostWait), now.mostWait); // one that was kept by hand
    wait_->setValue(now.mostWait);
    for (std::size_t day = 0; day < weekdays_.size(); ++day) {
        const bool on = (now.weekdays >> day & 1U) != 0U;
        weekdays_[day]->setChecked(on);
        weekdays_[day]->setText((on ? QStringLiteral("☑ ") : QStringLiteral("☐ ")) % locale.dayName(static_cast<int>(day) + 1, QLocale::ShortFormat));
    }
}

planning::YearWishes RotationPage::wishes() const { return planning::wishesFrom(household_.kept(store::settingYearWishes).toStdString()); }

void RotationPage::setWishes(const planning::YearWishes& wishes, const QString& label)
{
    household_.keep(store::settingYearWishes, QString::fromStdString(planning::wishText(wishes)), label); // changed() plans anew
    syncControls();
}

void RotationPage::pin(const std::string& stack, int batch, std::optional<Day> on)
{
    planning::YearWishes now = wishes();
    if (on) now.pinned[stack][batch] = *on;
    else now.pinned[stack].erase(batch);
    if (now.pinned[stack].empty()) now.pinned.erase(stack);
    setWishes(now, on ? tr("Pin a harvest") : tr("Let a harvest come when it is due"));
    draw(); // at once; where no new plan comes, what was moved goes back to where it stood
}

void RotationPage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    if (stale_) replan();
}

void RotationPage::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    readout_->fit(height());
    // Two cards side by side only where each has room for its lines.
    const bool narrow = width() < theme_.px(820);
    if (narrow == narrow_) return;
    narrow_ = narrow;
    QWidget* cards[] = {feeding_, clock_, wish_, change_, track_};
    for (QWidget* card : cards) below_->removeWidget(card);
    for (int i = 0; i < 5; ++i) {
        if (narrow) below_->addWidget(cards[i], i, 0, 1, 2);
        else if (i < 4) below_->addWidget(cards[i], i / 2, i % 2);
        else below_->addWidget(cards[i], 2, 0, 1, 2);
    }
}

void RotationPage::replan()
{
    stale_ = false;
    syncControls();
    feeding_->refresh();
    track_->refresh();
    const auto reckoning = household_.reckoning();
    const QString wished = household_.kept(store::settingYearWishes);
    if (!reckoning) return showState();
    const bool newEstimates = reckoning != basis_;
    if (!newEstimates && wished == basisWishes_) {
        if (plan_ && household_.stackOrder() != basisOrder_) { // the same plan, its stacks put otherwise
            change_->refresh();
            clock_->refresh();
            take(plan_);
        }
        return showState();
    }
    const bool otherWishes = wished != basisWishes_;
    basis_ = reckoning;
    basisWishes_ = wished;
    if (otherWishes && !newEstimates) draw();
    const planning::YearWishes asked = planning::withAbsences(wishes(), household_.journal()->entries, household_.today());
    background_.ask(planQuestion, [this, reckoning, asked](std::stop_token stop) -> Background::Use {
        auto plan = planning::planYear(*reckoning, asked, 1, stop);
        if (!plan) return {};
        return [this, reckoning, made = std::make_shared<const planning::YearPlan>(std::move(*plan))] {
            plannedOn_ = reckoning;
            take(made);
        };
    }, Background::Turn::first); // what the page is opened for
    if (newEstimates) {
        clock_->refresh();
        change_->refresh();
    }
    showState();
}

void RotationPage::refreshNow()
{
    stale_ = false;
    background_.forget();
    syncControls();
    feeding_->refresh();
    track_->refreshNow();
    change_->refresh();
    const auto reckoning = household_.reckoning();
    if (!reckoning) return;
    basis_ = reckoning;
    basisWishes_ = household_.kept(store::settingYearWishes);
    const planning::YearWishes asked = planning::withAbsences(wishes(), household_.journal()->entries, household_.today());
    plannedOn_ = reckoning;
    if (auto plan = planning::planYear(*reckoning, asked, 2)) take(std::make_shared<const planning::YearPlan>(std::move(*plan)));
    clock_->refreshNow();
}

bool RotationPage::planIsPresent() const
{
    return plan_ && plannedOn_ == household_.reckoning()
        && plan_->wishes == planning::withAbsences(wishes(), household_.journal()->entries, household_.today());
}

void RotationPage::take(std::shared_ptr<const planning::YearPlan> plan)
{
    plan_ = std::move(plan);
    draw();
    wish_->setPlan(plannedOn_, plan_); // not the estimates that wait for a plan of their own
    showState();
    Q_EMIT planned();
}

/// The plan that there is, and on it what was pinned or let go since it was made.
void RotationPage::draw()
{
    if (!plan_) return;
    basisOrder_ = household_.stackOrder();
    const Day today = household_.today();
    YearLanes year = yearLanes(*plan_, plannedOn_.get(), *household_.journal(), basisOrder_, today);
    const planning::YearWishes asked = planning::withAbsences(wishes(), household_.journal()->entries, today);
    year.lanes.away = asked.away;
    for (drawing::Lane& lane : year.lanes.lanes)
        if (const auto own = asked.awayOf.find(lane.name.toStdString()); own != asked.awayOf.end()) lane.away = own->second;
    layPins(year, plan_->wishes, asked);
    steps_->setSteps(year, today);
    table_->resizeColumnsToContents();
    table_->setMinimumHeight(std::min(14, steps_->rowCount() + 2) * fontMetrics().height() * 2);
    lanes_->setYear(std::move(year), today);
}

void RotationPage::showState()
{
    const auto reckoning = household_.reckoning();
    const bool some = plan_ && !plan_->stacks.empty();
    QString line = household_.name();
    if (background_.busy(planQuestion)) line = tr("%1 · the year is being planned").arg(line);
    head_->setLine(line);
    lanes_->parentWidget()->setVisible(some);
    readout_->setVisible(some);
    // Without a stack there is nothing to plan: one sentence, and no cards that would be empty.
    const bool any = anyTrayStands(*household_.journal(), household_.today());
    controls_->setVisible(any);
    for (QWidget* card : std::initializer_list<QWidget*>{feeding_, clock_, wish_, change_, track_}) card->setVisible(any);
    QString nothing;
    if (!some) {
        if (!any) nothing = tr("Once a stack stands, its coming year appears here: when each tray is ready, added, lifted and taken, what to feed it this week, what would bring its next step forward, and what a change would do.");
        else if (!reckoning || background_.busy(planQuestion)) nothing = tr("The year is being planned; it stands here in a moment.");
        else nothing = tr("No stack holds a tray whose next step could be foreseen.");
    }
    nothing_->setText(nothing);
    nothing_->setVisible(!nothing.isEmpty());
    // Of the plan that stands there, not of the wishes that the next one is made for.
    const Gathering manner = some ? plan_->wishes.gathering : Gathering::asTheyCome;
    gain_->setText(manner == Gathering::gathered ? gatheredText(*plan_) : QString{});
    gain_->setVisible(manner == Gathering::gathered);
    if (!some) return cost_->setText({});
    const auto open = [](const reckoning::RotationCourse& course) { return static_cast<int>(std::ranges::count_if(course.harvests, [](const auto& each) { return !each.begun; })); };
    int harvests = 0, natural = 0;
    for (const planning::StackYear& year : plan_->stacks) {
        harvests += open(year.planned);
        natural += open(year.natural);
    }
    const planning::YearCastings castings = planning::yearCastings(*plan_);
    QStringList parts{tr("%n harvest(s) in the coming year", nullptr, harvests), tr("about %1 of castings").arg(volumeOfYear(castings.planned)),
                      tr("on %n day(s)", nullptr, plan_->liftDays)};
    // Where gathering says what it costs, a second sum, of the harvests within the year alone, would only contradict it.
    if (!gainedByGathering(*plan_)) parts << tr("put off by %1 in all").arg(ui::daysLong(plan_->delayDays));
    if (natural > harvests) parts << tr("%n more would come within the year if none waited", nullptr, natural - harvests);
    if (plan_->delayDays > 0 && volumeOfYear(castings.natural) != volumeOfYear(castings.planned)) parts << tr("each when it is due, they would give %1").arg(volumeOfYear(castings.natural));
    if (const auto waiting = plan_->delayDays > 0 ? waitingText(planning::colonyLost(*plan_)) : std::nullopt) parts << *waiting;
    // What the choice weighs, so that a delay can be judged.
    if (manner == Gathering::gathered) parts << tr("a day of lifting saved counts as %1 of delay").arg(ui::daysLong(static_cast<int>(std::lround(planning::tripFor(plan_->wishes.mostWait)))));
    if (manner == Gathering::spread) parts << tr("two harvests close together count as %1 of delay").arg(ui::daysLong(static_cast<int>(std::lround(planning::HarvestWishes{}.crowd))));
    if (manner != Gathering::asTheyCome) parts << (plan_->days.exact ? tr("no better choice of days exists") : tr("a good choice of days, not proved to be the best"));
    cost_->setText(parts.join(QStringLiteral("; ")) % QStringLiteral("."));
}

void RotationPage::showChosen()
{
    const PlanStep* step = lanes_->chosen();
    const bool pinned = step && step->pinned;
    readout_->unpin()->setVisible(pinned);
    readout_->pin()->setVisible(step && !pinned && lanes_->canMove(*step));
    if (!step) {
        readout_->setText(tr("Choose a step with the mouse or the arrow keys. A harvest is moved by dragging it, or with Shift and the arrow keys; what that costs is shown here."));
        return;
    }
    QStringList sentences{stepText(*step, household_.today()) % QStringLiteral(".")};
    if (QString away = lanes_->awayText(lanes_->year().lanes.chosen->first); !away.isEmpty()) {
        away[0] = away[0].toUpper();
        sentences << away % QStringLiteral(".");
    }
    if (step->isHarvest && plan_ && !step->pending) { // of a moved one the plan knows nothing yet
        for (const planning::StackYear& year : plan_->stacks) {
            if (year.stack != step->stack || (year.delayDays == 0 && !pinned)) continue;
            const planning::YearCastings castings = planning::yearCastings(*plan_, year.stack);
            sentences << tr("In this stack: harvests %1 later in all; castings in the year %2, each when it is due %3; colony at its end %4, usually %5.")
                             .arg(ui::daysLong(year.delayDays), volumeOfYear(castings.planned), volumeOfYear(castings.natural), ui::massBand(year.planned.colonyAtEnd),
                                  ui::massBand(year.natural.colonyAtEnd));
        }
        if (step->readyWhenLifted < 0.5) sentences << tr("On that day much of the tray is likely not castings yet.");
    }
    readout_->setText(sentences.join(u' '));
}

}
