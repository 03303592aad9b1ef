// The year on the page: drawn from a real reckoning, moved by hand, kept and undone.
#include "core/household/household.h"
#include "core/planning/wish_text.h"
#include "core/store/setting_names.h"
#include "tests/support/households.h"
#include "ui/rotation/change_card.h"
#include "ui/rotation/lanes_view.h"
#include "ui/rotation/rotation_page.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>
#include <QUndoStack>

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
                                        ChangeCard::Kind::giveAway, ChangeCard::Kind::anotherStack, ChangeCard::Kind::wayBack, ChangeCard::Kind::anotherPast}) {
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
