// The year on the page: drawn from a real reckoning, moved by hand, kept and undone.
#include "core/household/household.h"
#include "core/planning/wish_text.h"
#include "core/store/setting_names.h"
#include "tests/support/households.h"
#include "ui/common/amount_field.h"
#include "ui/common/dates.h"
#include "ui/rotation/background.h"
#include "ui/rotation/change_card.h"
#include "ui/rotation/clock_card.h"
#include "ui/rotation/lanes_view.h"
#include "ui/rotation/rotation_page.h"
#include "ui/rotation/track_text.h"
#include "ui/rotation/wish_card.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>
#include <QUndoStack>

#include <set>

namespace tierloam::rotation {
namespace {

constexpr int patience = 60000;

class RotationPageTest : public testing::Test {
protected:
    void SetUp() override
    {
        const tests::MadeUp made = tests::makeHousehold(0x9a7d, 2, {}, {}, 400);
        today_ = made.asOf;
        theme_.setMode(ui::ThemeMode::light);
        theme_.apply();
        household::Household::Settings settings;
        settings.createIfAbsent = true;
        settings.members = 128;
        auto opened = household::Household::open(folder_.filePath(QStringLiteral("mill.tierloam")), std::make_shared<household::FixedClock>(today_), settings);
        household_ = std::move(std::get<std::unique_ptr<household::Household>>(opened));
        journal::Entries entries = made.entries;
        for (journal::Entry& entry : entries) entry.id = journal::EntryId::none;
        household_->recordAll(entries, QStringLiteral("made up"));
        household_->finishWrites();
        ASSERT_TRUE(QTest::qWaitFor([this] { return household_->reckoningIsCurrent(); }, patience));
        page_ = std::make_unique<RotationPage>(*household_, theme_);
        page_->resize(1000, 900);
        page_->show();
        ASSERT_TRUE(QTest::qWaitFor([this] { return page_->plan() != nullptr; }, patience));
    }
    void TearDown() override
    {
        page_.reset();
        household_.reset();
        qApp->setStyleSheet({});
    }

    /// The first harvest that can be moved.
    std::optional<std::pair<int, int>> firstLift() const
    {
        const auto& steps = page_->lanes()->year().steps.front();
        for (int i = 0; i < static_cast<int>(steps.size()); ++i)
            if (steps[static_cast<std::size_t>(i)].kind == drawing::Lane::Mark::Kind::lift) return std::pair{0, i};
        return std::nullopt;
    }
    bool planned(const std::function<bool(const planning::YearPlan&)>& is)
    {
        return QTest::qWaitFor([&] { return page_->plan() != nullptr && is(*page_->plan()); }, patience);
    }
    QString text(const char* label) const { return page_->findChild<QLabel*>(QString::fromLatin1(label))->text(); }

    QTemporaryDir folder_;
    ui::Theme theme_;
    Day today_{};
    std::unique_ptr<household::Household> household_;
    std::unique_ptr<RotationPage> page_;
};

TEST_F(RotationPageTest, ShowsTheYearInLanesAndInTheTable)
{
    const YearLanes& year = page_->lanes()->year();
    ASSERT_EQ(year.lanes.lanes.size(), 1u);
    ASSERT_TRUE(firstLift());
    EXPECT_EQ(year.lanes.lanes.front().marks.size(), year.steps.front().size());
    EXPECT_TRUE(text("planCost").contains(QStringLiteral("castings")));
    auto* table = page_->findChild<QTableView*>(QStringLiteral("stepTable"));
    EXPECT_EQ(table->model()->rowCount(), static_cast<int>(year.steps.front().size()));
    QAbstractItemModelTester tester{table->model(), QAbstractItemModelTester::FailureReportingMode::Fatal};
    page_->findChild<QPushButton*>(QStringLiteral("stepsAsTable"))->click();
    EXPECT_TRUE(table->isVisible());
    table->setCurrentIndex(table->model()->index(0, 0));
    EXPECT_NE(page_->lanes()->chosen(), nullptr);
}

TEST_F(RotationPageTest, TheKeyStandsWholeAtEachWidth)
{
    auto* key = page_->findChild<QWidget*>(QStringLiteral("lanesKey"));
    ASSERT_NE(key, nullptr);
    std::set<int> heights;
    for (const int width : {700, 820, 860, 1000, 1400}) {
        page_->resize(width, 900);
        QCoreApplication::processEvents();
        EXPECT_EQ(key->height(), key->heightForWidth(key->width())) << width;
        heights.insert(key->height());
    }
    EXPECT_GT(heights.size(), 1U) << "more rows where it is narrow";
}

TEST_F(RotationPageTest, AHarvestIsMovedByKeysKeptAndTakenBackByUndo)
{
    const auto lift = firstLift();
    ASSERT_TRUE(lift);
    page_->lanes()->choose(lift);
    const PlanStep before = *page_->lanes()->chosen();
    EXPECT_TRUE(page_->lanes()->accessibleName().contains(QStringLiteral("lift the bottom tray")));
    QTest::keyClick(page_->lanes(), Qt::Key_Right, Qt::ShiftModifier | Qt::ControlModifier);
    const Day on = before.on + std::chrono::days{7};
    ASSERT_TRUE(planned([&](const planning::YearPlan& plan) {
        return std::any_of(plan.stacks.front().planned.harvests.begin(), plan.stacks.front().planned.harvests.end(), [&](const auto& each) { return each.batch == before.batch && each.liftOn == on; });
    }));
    const PlanStep* moved = page_->lanes()->chosen();
    ASSERT_NE(moved, nullptr);
    EXPECT_TRUE(moved->pinned);
    EXPECT_EQ(moved->batch, before.batch);
    EXPECT_TRUE(text("chosenStep").contains(QStringLiteral("chosen by hand")));
    EXPECT_EQ(planning::wishesFrom(household_->kept(store::settingYearWishes).toStdString()).pinned.at("Mill").at(before.batch), on);
    household_->undoStack()->undo();
    ASSERT_TRUE(planned([](const planning::YearPlan& plan) { return std::find(plan.stacks.front().pinned.begin(), plan.stacks.front().pinned.end(), true) == plan.stacks.front().pinned.end(); }));
    EXPECT_EQ(page_->lanes()->chosen()->on, before.on);
}

TEST_F(RotationPageTest, AHarvestIsDraggedToAnotherDay)
{
    const auto lift = firstLift();
    ASSERT_TRUE(lift);
    const PlanStep before = page_->lanes()->year().steps.front()[static_cast<std::size_t>(lift->second)];
    const QPoint at = page_->lanes()->markCentre(lift->first, lift->second);
    QTest::mousePress(page_->lanes(), Qt::LeftButton, {}, at);
    QMouseEvent move{QEvent::MouseMove, at + QPoint{60, 0}, page_->lanes()->mapToGlobal(at + QPoint{60, 0}), Qt::NoButton, Qt::LeftButton, {}};
    QApplication::sendEvent(page_->lanes(), &move);
    QTest::mouseRelease(page_->lanes(), Qt::LeftButton, {}, at + QPoint{60, 0});
    ASSERT_TRUE(planned([](const planning::YearPlan& plan) { return std::find(plan.stacks.front().pinned.begin(), plan.stacks.front().pinned.end(), true) != plan.stacks.front().pinned.end(); }));
    EXPECT_GT(page_->lanes()->chosen()->on, before.on);
    page_->findChild<QPushButton*>(QStringLiteral("unpin"))->click();
    ASSERT_TRUE(planned([](const planning::YearPlan& plan) { return std::find(plan.stacks.front().pinned.begin(), plan.stacks.front().pinned.end(), true) == plan.stacks.front().pinned.end(); }));
}

TEST_F(RotationPageTest, WeekdaysAndGatheringAreKeptAndObeyed)
{
    for (int day = 0; day < 5; ++day) page_->findChild<QPushButton*>(QStringLiteral("weekday%1").arg(day))->click();
    page_->findChild<QPushButton*>(QStringLiteral("planGathered"))->click();
    EXPECT_EQ(page_->wishes().weekdays, 0x60u);
    ASSERT_TRUE(planned([&](const planning::YearPlan& plan) {
        return std::all_of(plan.stacks.front().planned.harvests.begin(), plan.stacks.front().planned.harvests.end(),
                           [&](const auto& each) { return each.liftOn <= today_ || std::chrono::weekday{each.liftOn}.iso_encoding() >= 6; });
    }));
}

TEST_F(RotationPageTest, EveryChangeIsAnswered)
{
    auto* card = page_->findChild<ChangeCard*>(QStringLiteral("changeCard"));
    QStringList answers;
    for (const ChangeCard::Kind kind : {ChangeCard::Kind::feed, ChangeCard::Kind::warmer, ChangeCard::Kind::away, ChangeCard::Kind::addTray, ChangeCard::Kind::harvest,
                                        ChangeCard::Kind::giveAway, ChangeCard::Kind::anotherStack, ChangeCard::Kind::wayBack, ChangeCard::Kind::anotherPast,
                                        ChangeCard::Kind::pastHarvest}) {
        card->chooseKind(kind);
        bool tried = false;
        const auto once = QObject::connect(card, &ChangeCard::tried, card, [&tried] { tried = true; });
        page_->findChild<QPushButton*>(QStringLiteral("compare"))->click();
        ASSERT_TRUE(QTest::qWaitFor([&tried] { return tried; }, patience)) << static_cast<int>(kind);
        QObject::disconnect(once);
        const QString said = text("changeSentence");
        EXPECT_FALSE(said.isEmpty());
        EXPECT_FALSE(answers.contains(said)) << said.toStdString();
        answers << said;
    }
}

/// Each answer stands beside the base case: rows with a figure in both columns, and both courses of the year.
TEST_F(RotationPageTest, ChangesStandBesideTheBaseCase)
{
    auto* card = page_->findChild<ChangeCard*>(QStringLiteral("changeCard"));
    for (const ChangeCard::Kind kind : {ChangeCard::Kind::feed, ChangeCard::Kind::away, ChangeCard::Kind::addTray, ChangeCard::Kind::harvest, ChangeCard::Kind::giveAway,
                                        ChangeCard::Kind::anotherStack, ChangeCard::Kind::anotherPast, ChangeCard::Kind::pastHarvest}) {
        SCOPED_TRACE(static_cast<int>(kind));
        card->chooseKind(kind);
        bool tried = false;
        const auto once = QObject::connect(card, &ChangeCard::tried, card, [&tried] { tried = true; });
        page_->findChild<QPushButton*>(QStringLiteral("compare"))->click();
        ASSERT_TRUE(QTest::qWaitFor([&tried] { return tried; }, patience));
        QObject::disconnect(once);
        const TriedChange& shown = card->shown();
        if (kind == ChangeCard::Kind::giveAway || kind == ChangeCard::Kind::anotherStack) {
            if (shown.sentence.startsWith(QStringLiteral("None"))) continue; // nothing can go: there is no other course
        }
        ASSERT_GE(shown.rows.size(), 3u);
        for (const TriedChange::Row& row : shown.rows) {
            EXPECT_FALSE(row.usual.isEmpty()) << row.name.toStdString();
            EXPECT_FALSE(row.changed.isEmpty()) << row.name.toStdString();
        }
        EXPECT_EQ(shown.usual.size(), shown.changed.size());
        EXPECT_GT(shown.usual.size(), 40u);
        EXPECT_FALSE(shown.days.empty()) << "for the trends page";
        EXPECT_TRUE(page_->findChild<TwoCourses*>()->isVisibleTo(card));
        EXPECT_EQ(shown.sentence.contains(QStringLiteral("bottom tray taken")), kind == ChangeCard::Kind::harvest || kind == ChangeCard::Kind::pastHarvest) << shown.sentence.toStdString();
    }
}

/// An answer never stands under another question.
TEST_F(RotationPageTest, AnotherQuestionTakesTheAnswerAway)
{
    auto* card = page_->findChild<ChangeCard*>(QStringLiteral("changeCard"));
    auto* go = page_->findChild<QPushButton*>(QStringLiteral("compare"));
    const auto ask = [&] {
        go->click();
        return QTest::qWaitFor([&] { return !card->shown().sentence.isEmpty(); }, patience);
    };
    card->chooseKind(ChangeCard::Kind::away);
    ASSERT_TRUE(ask());
    card->chooseKind(ChangeCard::Kind::warmer);
    EXPECT_TRUE(card->shown().sentence.isEmpty());
    EXPECT_TRUE(text("changeSentence").isEmpty());
    EXPECT_FALSE(page_->findChild<TwoCourses*>()->isVisibleTo(card));
    // Nor does one that comes late.
    card->chooseKind(ChangeCard::Kind::away);
    go->click();
    EXPECT_TRUE(go->isEnabled()) << "a button that is switched off hands the focus on, to what is due today";
    EXPECT_EQ(text("changeSentence"), QStringLiteral("Comparing…"));
    card->chooseKind(ChangeCard::Kind::warmer);
    ASSERT_TRUE(ask());
    EXPECT_TRUE(card->shown().sentence.contains(QStringLiteral("bottom tray"))) << card->shown().sentence.toStdString();
    EXPECT_FALSE(card->shown().sentence.contains(QStringLiteral("Before you leave")));
}

/// What is proposed is what that stack is given, a quarter more: the usual case is one click.
TEST_F(RotationPageTest, AChangeBeginsWithWhatTheStackIsUsuallyGiven)
{
    auto* amount = page_->findChild<ChangeCard*>(QStringLiteral("changeCard"))->findChild<ui::AmountField*>();
    ASSERT_NE(amount, nullptr);
    const double usual = household_->reckoning()->stacks.front().record.usualFeedKgPerWeek;
    ASSERT_GT(usual, 0.0);
    ASSERT_TRUE(amount->amount().value);
    EXPECT_NEAR(amount->amount().value->mass()->base(), 1.25 * usual, 0.051);
}

TEST_F(RotationPageTest, AnotherPastOffersWhatTurnedTheStackInWords)
{
    auto* card = page_->findChild<ChangeCard*>(QStringLiteral("changeCard"));
    card->chooseKind(ChangeCard::Kind::anotherPast);
    QStringList offered;
    for (const auto* box : card->findChildren<QComboBox*>())
        for (int i = 0; i < box->count(); ++i) offered << box->itemText(i);
    const QString all = offered.join(u'\n');
    EXPECT_TRUE(all.contains(QStringLiteral("bedding"), Qt::CaseInsensitive) || all.contains(QStringLiteral("Bedded"), Qt::CaseInsensitive)) << all.toStdString();
    EXPECT_LE(all.count(QStringLiteral("Fed, ")), 6) << "the weekly feedings do not push the rest out";
    EXPECT_GT(all.count(QStringLiteral("Fed, ")), 0) << all.toStdString();
}

TEST_F(RotationPageTest, AHarvestIsKeptOnItsDayWithoutBeingMoved)
{
    const auto lift = firstLift();
    ASSERT_TRUE(lift);
    auto* pin = page_->findChild<QPushButton*>(QStringLiteral("pin"));
    page_->lanes()->choose(lift);
    ASSERT_TRUE(pin->isVisibleTo(page_.get()));
    EXPECT_FALSE(pin->accessibleName().isEmpty());
    const PlanStep before = *page_->lanes()->chosen();
    QTest::keyClick(page_->lanes(), Qt::Key_Return);
    const auto isPinned = [](const planning::YearPlan& plan) { return std::find(plan.stacks.front().pinned.begin(), plan.stacks.front().pinned.end(), true) != plan.stacks.front().pinned.end(); };
    ASSERT_TRUE(planned(isPinned));
    EXPECT_EQ(page_->lanes()->chosen()->on, before.on);
    EXPECT_TRUE(page_->lanes()->chosen()->pinned);
    EXPECT_FALSE(pin->isVisibleTo(page_.get()));
    page_->findChild<QPushButton*>(QStringLiteral("unpin"))->click();
    ASSERT_TRUE(planned([&](const planning::YearPlan& plan) { return !isPinned(plan); }));
    pin->click();
    ASSERT_TRUE(planned(isPinned));
}

/// What else was advised in the last 90 days stands in the diary, counted and line by line; the weekly feedings are counted alone.
TEST_F(RotationPageTest, TheDiarySaysWhatWasAdvisedAndWhatWasDone)
{
    auto* card = page_->findChild<TrackCard*>(QStringLiteral("trackCard"));
    const auto line = [this](advice::Code code, const char* text, int from, std::optional<int> to, std::optional<int> done) {
        const auto day = [this](int ago) { return today_ - std::chrono::days{ago}; };
        advice::DiaryLine made;
        made.advice.code = code;
        made.advice.text = text;
        made.from = day(from);
        if (to) made.to = day(*to);
        if (done) made.doneOn = day(*done);
        return made;
    };
    using advice::Code;
    card->tell({{"Mill", {line(Code::tooDry, "Pour 1.5 L of water over the bed", 9, 5, 7), line(Code::tooWet, "Mix dry shredded paper into the bed", 4, 1, std::nullopt),
                          line(Code::heat, "Move the stack", 2, std::nullopt, std::nullopt), line(Code::feedDue, "Feed", 30, 28, 28), line(Code::feedDue, "Feed", 20, 12, 12)}}});
    const QString said = card->recordText();
    EXPECT_TRUE(said.contains(QStringLiteral("eedings due in the last 90 days: 2, given within 3 days: 1"))) << said.toStdString();
    EXPECT_TRUE(said.contains(QStringLiteral("ther advice in that time: 2, followed: 1"))) << said.toStdString();
    EXPECT_TRUE(said.front().isUpper());
    QString diary;
    for (const auto* label : card->findChildren<QLabel*>()) diary += label->text() + u'\n';
    EXPECT_TRUE(diary.contains(QStringLiteral("Mill: “Pour 1.5\u00a0L of water over the bed”; done %1 later").arg(ui::daysLong(2)))) << diary.toStdString();
    EXPECT_TRUE(diary.contains(QStringLiteral("“Mix dry shredded paper into the bed”; not done, taken back after %1").arg(ui::daysLong(3))));
    EXPECT_TRUE(diary.contains(QStringLiteral("“Move the stack”; still due")));
    EXPECT_LT(diary.indexOf(QStringLiteral("Move the stack")), diary.indexOf(QStringLiteral("Pour 1.5"))) << "the latest first";
    EXPECT_FALSE(diary.contains(QStringLiteral("“Feed”")));
}

/// One clock in words, of a stack that it is asked of.
TEST_F(RotationPageTest, WhatRaisesAWishIsNotToldOfAnother)
{
    Background background;
    WishCard card{*household_, background};
    card.show();
    card.setPlan(household_->reckoning(), std::make_shared<const planning::YearPlan>(*page_->plan()));
    auto* ask = card.findChild<QPushButton*>(QStringLiteral("raiseWish"));
    ASSERT_TRUE(ask && ask->isEnabled());
    const auto told = [&] {
        EXPECT_TRUE(QTest::qWaitFor([&] { return !background.busy(); }, patience));
        const auto labels = card.findChildren<QLabel*>();
        return std::ranges::any_of(labels, [](const QLabel* each) { return each->isVisible() && each->text().contains(QStringLiteral("more food a week")); });
    };
    ask->click();
    EXPECT_TRUE(told());
    ask->click();
    card.findChild<QCheckBox*>()->toggle(); // another wish, while the answer is on its way
    EXPECT_FALSE(told());
}

class ClockWords : public RotationPageTest {
protected:
    QString said(const planning::TurnClock& clock, const std::function<void(reckoning::StackReckoning&)>& change = {})
    {
        auto all = std::make_shared<reckoning::Reckoning>(*household_->reckoning());
        if (change) change(all->stacks.front());
        ClockCard* card = page_->findChild<ClockCard*>(QStringLiteral("clockCard"));
        card->tell({{"Mill", clock}}, *all);
        QStringList lines;
        for (const auto* label : card->findChildren<QLabel*>()) lines << label->text();
        return lines.join(u'\n');
    }
};

TEST_F(ClockWords, SayOneDateWhatHoldsItBackAndWhatEachLeverGains)
{
    planning::TurnClock clock;
    clock.turn = {today_ + std::chrono::days{20}, today_ + std::chrono::days{30}, today_ + std::chrono::days{44}};
    clock.levers = {{planning::Limit::cold, 2.0, {9, 14, 20}}, {planning::Limit::food, 0.15, {4, 9, 12}}, {planning::Limit::worms, 0.2, {0, 0, 1}}, {planning::Limit::bedding, 0.5, {-6, -4, 0}},
                    {planning::Limit::water, 0.7, {0, 1, 2}}};
    clock.limit = planning::Limit::cold;
    const QString text = said(clock);
    const auto days = [](int number) { return ui::daysLong(number); };
    for (const QString& part : {QStringLiteral("Mill: "), QStringLiteral("Cold holds it back. Its turn would come: 2\u00a0°C warmer: %1 sooner; 150\u00a0g more a week: %2 sooner").arg(days(14), days(9)),
                                QStringLiteral("200\u00a0g more worms: no difference"), QStringLiteral("half the bedding in the top tray: %1 later").arg(days(4)),
                                QStringLiteral("0.7\u00a0L of water: %1 sooner").arg(days(1))})
        EXPECT_TRUE(text.contains(part)) << part.toStdString() << " is not in: " << text.toStdString();
    clock.limit = planning::Limit::none;
    EXPECT_TRUE(said(clock).contains(QStringLiteral("Nothing holds it back much.")));
    clock.turn = {};
    EXPECT_TRUE(said(clock).contains(QStringLiteral("Mill: not within a year")));
}

TEST_F(ClockWords, SayThatATurnHasComeOnlyWhereTheDueListDoes)
{
    planning::TurnClock clock;
    clock.has = true;
    const QString sure = QStringLiteral("Mill: its turn has come"), about = QStringLiteral("its turn is about now; it is told as due once it is 80 % sure");
    const auto with = [&](bool turn, bool ready, int spare) {
        return said(clock, [&](reckoning::StackReckoning& stack) {
            stack.turnSince = turn ? std::optional{today_} : std::nullopt;
            stack.readySince = ready ? std::optional{today_} : std::nullopt;
            stack.record.spareTrays = spare;
        });
    };
    EXPECT_TRUE(with(true, true, 0).contains(sure));
    EXPECT_TRUE(with(true, false, 1).contains(sure));
    EXPECT_TRUE(with(true, false, 0).contains(about)) << "the bottom tray is not raised as ready";
    EXPECT_TRUE(with(false, true, 0).contains(about));
    EXPECT_FALSE(with(false, true, 0).contains(sure));
}

TEST_F(ClockWords, OfAStackWithATrayInTheLightSayTheTakingAndTheTurnAfterIt)
{
    planning::TurnClock clock;
    clock.takenOn = today_ + std::chrono::days{5};
    clock.turn = {today_ + std::chrono::days{50}, today_ + std::chrono::days{60}, today_ + std::chrono::days{80}};
    clock.levers = {{planning::Limit::food, 0.15, {4, 4, 4}}};
    clock.limit = planning::Limit::food;
    const QString text = said(clock, [&](reckoning::StackReckoning& stack) { stack.turnSince = today_; });
    EXPECT_TRUE(text.contains(QStringLiteral("castings in the light, taken about "))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("the next turn "))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("Food holds it back.")));
    EXPECT_FALSE(text.contains(QStringLiteral("its turn has come")));
}

TEST(RotationPageEmpty, SaysInOneSentenceWhatWillAppearAndShowsNoCards)
{
    QTemporaryDir folder;
    ui::Theme theme;
    theme.setMode(ui::ThemeMode::light);
    theme.apply();
    household::Household::Settings settings;
    settings.createIfAbsent = true;
    auto opened = household::Household::open(folder.filePath(QStringLiteral("new.tierloam")), std::make_shared<household::FixedClock>(Day{std::chrono::year{2031} / 5 / 2}), settings);
    auto& household = std::get<std::unique_ptr<household::Household>>(opened);
    RotationPage page{*household, theme};
    page.resize(1000, 900);
    page.show();
    ASSERT_TRUE(QTest::qWaitFor([&] { return household->reckoningIsCurrent(); }, patience));
    int sentences = 0;
    for (const auto* label : page.findChildren<QLabel*>())
        if (label->isVisible() && label->text().contains(QStringLiteral("coming year appears here"))) ++sentences;
    EXPECT_EQ(sentences, 1);
    for (const char* card : {"feedingCard", "wishCard", "changeCard"}) {
        const auto* found = page.findChild<QWidget*>(QString::fromLatin1(card));
        ASSERT_NE(found, nullptr) << card;
        EXPECT_FALSE(found->isVisible()) << card;
    }
    qApp->setStyleSheet({});
}

}
}
