#include "core/guide/figures.h"
#include "core/guide/harvest_watch.h"
#include "tests/support/pictures.h"
#include "tests/support/sample_reckoning.h"
#include "tests/ui/page_fixture.h"
#include "ui/common/field_edit.h"
#include "ui/common/number_field.h"
#include "ui/common/seams.h"
#include "ui/common/theme.h"
#include "ui/forms/caution_card.h"
#include "ui/forms/tray_lift.h"
#include "ui/handbook/handbook_page.h"
#include "ui/handbook/harvest_view.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

namespace tierloam::handbook {

namespace {

QString latin(const char* text) { return QString::fromUtf8(text); }

class HarvestTest : public tests::PageTest<HandbookPage> {
protected:
    void SetUp() override { showPage({1000, 800}); }
    void open(const char* stack)
    {
        page_->openHarvest(latin(stack));
        settle();
    }
    void settle()
    {
        for (int round = 0; round < 6; ++round) {
            QCoreApplication::sendPostedEvents();
            QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
            QCoreApplication::processEvents();
        }
    }
    QString said()
    {
        QString all;
        for (const QLabel* label : page_->harvest()->findChildren<QLabel*>()) all += label->text() + u'\n';
        return all;
    }
    const reckoning::StackReckoning& estimates(const char* stack) { kept_ = household_->reckoning(); return *kept_->stack(stack); }
    const journal::StackHistory& history(const char* stack) { view_ = household_->journal(); return *view_->replay.stack(stack); }

    std::shared_ptr<const reckoning::Reckoning> kept_;
    std::shared_ptr<const household::JournalView> view_;
};

}

TEST_F(HarvestTest, TellsTheWeightsWithTheLiftingCautionBeforeAnythingIsLifted)
{
    open("Scullery");
    EXPECT_EQ(page_->harvest()->stage(), HarvestView::Stage::beforeLifting);
    auto* bottom = page_->findChild<QLabel*>(latin("lift1"));
    ASSERT_NE(bottom, nullptr);
    EXPECT_TRUE(bottom->text().contains(latin("kg")));
    EXPECT_TRUE(bottom->text().contains(latin("advised")));
    auto* caution = page_->harvest()->cautions();
    ASSERT_TRUE(caution->isVisible());
    EXPECT_TRUE(page_->rect().contains(QRect{caution->mapTo(page_.get(), QPoint{}), caution->size()})) << "without scrolling";
    QSignalSpy wanted{page_.get(), &HandbookPage::entryWanted};
    QTest::mouseClick(page_->findChild<QPushButton*>(latin("recordLifting")), Qt::LeftButton);
    ASSERT_EQ(wanted.count(), 1);
    EXPECT_TRUE(std::holds_alternative<journal::Rotate>(wanted.front()[1].value<journal::Action>()));
    tests::keepPicture(page_->grab().toImage(), latin("harvest-before"));
}

TEST_F(HarvestTest, KeepsTheLiftingCautionInSightInASmallWindowWithLargeLetters)
{
    theme_.setFontScale(200);
    theme_.apply();
    page_->resize(780, 620);
    for (const char* stack : {"Scullery", "Cellar"}) {
        open(stack);
        const QLabel* lifting = page_->harvest()->cautions()->findChild<QLabel*>();
        ASSERT_NE(lifting, nullptr) << stack;
        EXPECT_TRUE(lifting->text().contains(latin("knees bent"))) << stack;
        const QRect shown = page_->harvest()->viewport()->rect();
        const QRect at{lifting->mapTo(page_->harvest()->viewport(), QPoint{}), lifting->size()};
        EXPECT_TRUE(shown.contains(at)) << stack << " " << at.bottom() << " of " << shown.bottom();
        tests::keepPicture(page_->grab().toImage(), latin("harvest-small-%1").arg(latin(stack)));
    }
    theme_.setFontScale(100);
    theme_.apply();
}

TEST_F(HarvestTest, TakesAPersonsOwnReachAndKeepsIt)
{
    open("Scullery");
    const QString before = page_->findChild<QLabel*>(latin("lift1"))->text();
    auto* reach = page_->findChild<ui::LengthField*>(latin("ownReach"));
    reach->edit()->setFocus();
    QTest::keyClicks(reach->edit(), latin("55"));
    settle();
    EXPECT_NE(page_->findChild<QLabel*>(latin("lift1"))->text(), before) << "a longer reach advises less";
    EXPECT_EQ(settings_->value(latin("lifting/reachCm")).toDouble(), 55.0);
    EXPECT_EQ(forms::ownReach(), centimetres(55)) << "the forms of lifting and taking reckon with it as well";
    HandbookPage again{*household_, theme_, *settings_};
    EXPECT_EQ(forms::ownReach(), centimetres(55));
    forms::setOwnReach(std::nullopt);
}

TEST_F(HarvestTest, HasACardForEachDayOfLightDryingWithItsNumbers)
{
    open("Cellar");
    EXPECT_EQ(page_->harvest()->stage(), HarvestView::Stage::drying);
    const auto days = guide::dryingDays(estimates("Cellar"), history("Cellar"), household_->journal()->entries, household_->today());
    ASSERT_EQ(days.size(), 5u) << "lifted four days ago";
    for (std::size_t i = 1; i < days.size(); ++i) {
        EXPECT_LE(days[i].wormsLeft, days[i - 1].wormsLeft + 1e-9);
        EXPECT_EQ(days[i].number, static_cast<int>(i) + 1);
    }
    EXPECT_LT(days.back().wormsLeft, 0.5 * days.front().wormsLeft) << "they go down in the light";
    for (const guide::DryingDay& day : days) EXPECT_NE(page_->findChild<QWidget*>(latin("dryingDay%1").arg(day.number)), nullptr) << day.number;
    const QString all = said();
    EXPECT_TRUE(all.contains(latin("Feed only the tray below")));
    EXPECT_TRUE(all.contains(latin("cannot be promised")) || all.contains(latin("Some cocoons and young worms leave"))) << all.toStdString();
    EXPECT_FALSE(all.contains(latin("without worms")));
    tests::keepPicture(page_->grab().toImage(), latin("harvest-drying"));
}

TEST_F(HarvestTest, AsksForLooseningWhileWetAndForTakingWhenFewAreLeft)
{
    guide::DryingDay day;
    day.wormsLeft = guide::lowOf(guide::Figure::leftAfterDrying) / 100 + 0.001;
    EXPECT_FALSE(guide::mayTake(day));
    day.wormsLeft = guide::lowOf(guide::Figure::leftAfterDrying) / 100;
    EXPECT_TRUE(guide::mayTake(day));
}

TEST_F(HarvestTest, ComparesWhatWasTakenWithWhatIsExpected)
{
    journal::Entry entry;
    entry.stack = "Cellar";
    entry.date.day = household_->today();
    entry.action = journal::Harvest{{4, Unit::kg}, Share::fromPercent(70), {}};
    household_->record(entry, latin("taken"));
    household_->finishWrites();
    ASSERT_TRUE(QTest::qWaitFor([this] { return household_->journal()->pending.empty(); }, 20000));
    const auto outcome = guide::latestHarvest(estimates("Cellar"), history("Cellar"), household_->journal()->entries, household_->today(), 60);
    ASSERT_TRUE(outcome);
    EXPECT_NEAR(outcome->taken.dry().base(), 1.2, 1e-9);
    ASSERT_TRUE(outcome->yield);
    // By hand: the published ratio of 1.7 to 2.7, from the dry matter that went into the batch.
    EXPECT_NEAR(outcome->yield->least.base(), outcome->dryInput.p50 / 2.7, 1e-9);
    EXPECT_NEAR(outcome->yield->most.base(), outcome->dryInput.p50 / 1.7, 1e-9);
    EXPECT_GT(outcome->wormsGone, 0);
    open("Cellar");
    const QString all = said();
    EXPECT_TRUE(all.contains(latin("cannot be promised")));
    EXPECT_TRUE(all.contains(latin("second light-drying")));
    EXPECT_TRUE(all.contains(latin("bait tray")));
    EXPECT_TRUE(all.contains(latin("Lalander")));
    EXPECT_FALSE(guide::latestHarvest(estimates("Cellar"), history("Cellar"), household_->journal()->entries, household_->today() + std::chrono::days{61}, 60)) << "too long ago";
}

TEST_F(HarvestTest, FollowsTheCastingsThroughTheirSecondLightAndTheBait)
{
    const auto put = [&](journal::Action action, Day on) {
        journal::Entry entry;
        entry.stack = "Cellar";
        entry.date.day = on;
        entry.action = std::move(action);
        household_->record(entry, latin("step"));
        household_->finishWrites();
        ASSERT_TRUE(QTest::qWaitFor([this] { return household_->journal()->pending.empty(); }, 20000));
        settle();
    };
    const auto care = [&] { return guide::castingsCare("Cellar", household_->today(), household_->journal()->entries, household_->today()); };
    const Day today = household_->today();
    put(journal::Harvest{{4, Unit::kg}, Share::fromPercent(70), {}}, today);
    open("Cellar");
    EXPECT_EQ(page_->findChild<QPushButton*>(latin("recordCarriedBack")), nullptr) << "nothing to carry back yet";
    for (const auto& [name, word] : {std::pair{"recordLightAgain", guide::lightAgainEvent}, std::pair{"recordBait", guide::baitEvent}}) {
        QSignalSpy wanted{page_.get(), &HandbookPage::entryWanted};
        auto* button = page_->findChild<QPushButton*>(latin(name));
        ASSERT_NE(button, nullptr) << name;
        button->click();
        ASSERT_EQ(wanted.count(), 1);
        const auto action = wanted.front()[1].value<journal::Action>();
        ASSERT_TRUE(std::holds_alternative<journal::Event>(action)) << name;
        EXPECT_EQ(std::get<journal::Event>(action).what, word);
        put(action, today);
        open("Cellar");
        EXPECT_EQ(page_->findChild<QPushButton*>(latin(name)), nullptr) << "recorded: it is not asked again";
    }
    EXPECT_EQ(care().lightAgain, today);
    EXPECT_EQ(care().baited, today);
    EXPECT_FALSE(care().carriedBack);
    ASSERT_NE(page_->findChild<QPushButton*>(latin("recordCarriedBack")), nullptr);
    put(journal::Stock{{12, Unit::g}, {}, {}}, today);
    EXPECT_EQ(care().carriedBack, today);
    open("Cellar");
    EXPECT_TRUE(said().contains(latin("Worms were put back")));
    EXPECT_FALSE(guide::castingsCare("Cellar", today + std::chrono::days{1}, household_->journal()->entries, today + std::chrono::days{1}).baited) << "of a later harvest";
    EXPECT_FALSE(guide::castingsCare("Scullery", today, household_->journal()->entries, today).baited);
}

// Waters et al. 1993, by hand for a tray of 0.16 m² (reach 20 + 20 cm above 25 cm of height): see core_guide_tests for the equation itself.
TEST(TrayLift, SaysWhatIsAdvisedAndWarnsWhenItIsHeavier)
{
    journal::Standing standing;
    standing.settings.stand = journal::Stand::legs;
    standing.slots = {1, 2, 3};
    const auto light = forms::trayLift(standing, 1, 3.0), heavy = forms::trayLift(standing, 1, 25.0);
    ASSERT_TRUE(light.verdict.recommended);
    EXPECT_EQ(light.verdict.word, guide::LiftVerdict::Word::fine);
    EXPECT_NE(heavy.verdict.word, guide::LiftVerdict::Word::fine);
    EXPECT_NE(light.words, heavy.words);
    forms::setOwnReach(centimetres(90));
    EXPECT_EQ(forms::trayLift(standing, 1, 3.0).verdict.word, guide::LiftVerdict::Word::dont) << "a person's own reach counts for every lift";
    forms::setOwnReach(std::nullopt);
    EXPECT_EQ(forms::trayLift(standing, 1, 3.0).words, light.words);
}

}
