// The page without a mouse, and what is in sight of it: a key for each button, the line of the chosen step, and a harvest that was moved.
#include "tests/ui/rotation_fixture.h"

#include "ui/common/actions.h"
#include "ui/common/dates.h"
#include "ui/common/field.h"
#include "ui/rotation/change_card.h"

#include <QAbstractItemView>
#include <QAction>
#include <QCheckBox>
#include <QPushButton>
#include <QScrollArea>

#include <algorithm>
#include <set>

namespace tierloam::rotation {
namespace {

/// Buttons that are no part of a field or a table, which have their own way by keys.
std::vector<QAbstractButton*> buttonsOf(const QWidget& page)
{
    std::vector<QAbstractButton*> buttons;
    for (auto* each : page.findChildren<QAbstractButton*>()) {
        const QWidget* above = each;
        while (above != nullptr && qobject_cast<const ui::Field*>(above) == nullptr) above = above->parentWidget();
        if (above == nullptr && qobject_cast<const QAbstractItemView*>(each->parentWidget()) == nullptr) buttons.push_back(each);
    }
    return buttons;
}

/// What of that has no key of its own that works on the page, no name, or does not tell its key.
QStringList withoutKey(const QWidget& page)
{
    QStringList wanting;
    std::set<QString> taken;
    for (const QAbstractButton* each : buttonsOf(page)) {
        const QKeySequence key = ui::keyOf(*each);
        const QString name = each->accessibleName().isEmpty() ? each->text() : each->accessibleName();
        const QList<QAction*> actions = page.actions();
        const bool works = std::any_of(actions.begin(), actions.end(), [&](const QAction* action) { return action->shortcuts().contains(key); });
        const bool told = each->toolTip().contains(key.toString(QKeySequence::NativeText));
        if (key.isEmpty() || name.isEmpty() || !works || !told || !taken.insert(key.toString()).second) wanting << each->objectName() % u':' % each->text();
    }
    return wanting;
}

TEST_F(RotationPageTest, EachButtonHasAKeyOfItsOwnAndAName)
{
    EXPECT_EQ(withoutKey(*page_), QStringList{});
    std::set<QString> seen;
    for (const QAbstractButton* each : buttonsOf(*page_)) seen.insert(each->objectName());
    for (const char* name : {"planAsTheyCome", "planSpread", "planGathered", "weekday0", "weekday6", "stepsAsTable", "pin", "unpin", "raiseWish", "compare"}) EXPECT_TRUE(seen.contains(QString::fromLatin1(name))) << name;
    QPushButton planted{QStringLiteral("planted"), page_.get()};
    EXPECT_EQ(withoutKey(*page_), QStringList{QStringLiteral(":planted")});
}

TEST_F(RotationPageTest, KeysChooseDaysKeepAHarvestAskAndCompare)
{
    page_->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(page_.get()));
    page_->lanes()->setFocus();
    QTest::keyClick(page_->lanes(), Qt::Key_1, Qt::AltModifier);
    EXPECT_EQ(page_->wishes().weekdays, 0x7eU) << "no Mondays";
    QTest::keyClick(page_->lanes(), Qt::Key_1, Qt::AltModifier);
    EXPECT_EQ(page_->wishes().weekdays, 0x7fU);
    const auto lift = firstLift();
    ASSERT_TRUE(lift);
    page_->lanes()->choose(lift);
    QTest::keyClick(page_->lanes(), Qt::Key_K);
    EXPECT_EQ(page_->wishes().pinned.size(), 1U);
    auto* monthly = page_->findChild<QWidget*>(QStringLiteral("wishCard"))->findChild<QCheckBox*>();
    QTest::keyClick(page_->lanes(), Qt::Key_M, Qt::ControlModifier);
    EXPECT_TRUE(monthly->isChecked());
    QTest::keyClick(page_->lanes(), Qt::Key_Return, Qt::ControlModifier);
    EXPECT_FALSE(text("changeSentence").isEmpty()) << "it is being compared";
}

/// However many lanes there are, what is told of the chosen step stands where it is seen.
TEST_F(RotationPageTest, TheLineOfTheChosenStepStaysInSightBesideTwelveStacks)
{
    ASSERT_TRUE(firstLift());
    YearLanes year = page_->lanes()->year();
    for (int i = 1; i < 12; ++i) {
        year.lanes.lanes.push_back(year.lanes.lanes.front());
        year.steps.push_back(year.steps.front());
        for (PlanStep& step : year.steps.back()) step.stack = "Stack " + std::to_string(i);
    }
    page_->lanes()->setYear(year, today_);
    auto* readout = page_->findChild<QWidget*>(QStringLiteral("chosenStep"));
    for (const QSize& size : {QSize{1280, 800}, QSize{1000, 640}}) {
        page_->resize(size);
        page_->lanes()->choose(std::pair{11, firstLift()->second});
        QCoreApplication::processEvents();
        ASSERT_GT(page_->lanes()->height(), size.height() / 2) << "or there is nothing to show";
        EXPECT_TRUE(text("chosenStep").startsWith(QStringLiteral("Stack 11")));
        const QRect seen = readout->visibleRegion().boundingRect();
        EXPECT_GE(seen.height(), std::min(readout->height(), size.height() / 6)) << size.height();
        EXPECT_GT(readout->height(), 0);
        auto* scroll = page_->findChild<QScrollArea*>();
        EXPECT_GT(scroll->viewport()->height(), size.height() / 3) << "the lanes keep most of the page";
    }
}

/// A moved harvest stands at once where it was put, is told as being reckoned, and goes on from there with the next key.
TEST_F(RotationPageTest, AMovedHarvestStandsAtItsNewPlaceAtOnce)
{
    const auto lift = firstLift();
    ASSERT_TRUE(lift);
    LanesView* lanes = page_->lanes();
    lanes->choose(lift);
    const PlanStep before = *lanes->chosen();
    const QPoint stood = lanes->markCentre(lift->first, lift->second);
    const int barsBefore = static_cast<int>(std::count_if(lanes->year().lanes.lanes.front().stays.begin(), lanes->year().lanes.lanes.front().stays.end(), [&](const auto& stay) { return stay.to == before.on; }));
    ASSERT_GT(barsBefore, 0);
    const auto plan = page_->plan();
    lanes->moveChosen(30);
    ASSERT_EQ(page_->plan(), plan) << "the new plan is not there yet";
    const auto* mark = &lanes->year().lanes.lanes.front().marks[static_cast<std::size_t>(lift->second)];
    EXPECT_EQ(lanes->chosen()->on, before.on + std::chrono::days{30});
    EXPECT_EQ(mark->day, before.on + std::chrono::days{30});
    EXPECT_TRUE(mark->pending);
    EXPECT_GT(lanes->markCentre(lift->first, lift->second).x(), stood.x() + 20);
    const auto& stays = lanes->year().lanes.lanes.front().stays;
    EXPECT_EQ(std::count_if(stays.begin(), stays.end(), [&](const auto& stay) { return stay.to == mark->day; }), barsBefore) << "its bars go along";
    EXPECT_TRUE(text("chosenStep").contains(QStringLiteral("is being reckoned"))) << text("chosenStep").toStdString();
    EXPECT_FALSE(text("chosenStep").contains(QStringLiteral("ready on that day"))) << "that is of the old day";
    EXPECT_TRUE(lanes->accessibleName().contains(QStringLiteral("is being reckoned")));
    EXPECT_EQ(lanes->year().lanes.lanes.front().note, QStringLiteral("being reckoned…"));
    lanes->moveChosen(1);
    const Day on = before.on + std::chrono::days{31};
    EXPECT_EQ(lanes->chosen()->on, on);
    ASSERT_TRUE(planned([&](const planning::YearPlan& made) {
        return std::any_of(made.stacks.front().planned.harvests.begin(), made.stacks.front().planned.harvests.end(), [&](const auto& each) { return each.batch == before.batch && each.liftOn == on; });
    }));
    EXPECT_EQ(lanes->chosen()->on, on);
    EXPECT_FALSE(lanes->chosen()->pending);
    EXPECT_FALSE(text("chosenStep").contains(QStringLiteral("is being reckoned")));
}

}
}
