// A change tried on the trends page, on members of the model: it stands beside the base case and goes when it is dropped or outdated.
#include "core/household/household.h"
#include "tests/support/households.h"
#include "ui/common/seams.h"
#include "ui/rotation/change_card.h"
#include "ui/trends/trend_chart.h"
#include "ui/trends/trends_page.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QLabel>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>

namespace tierloam::trends {

namespace {

constexpr int patience = 60000;

class TrendsChange : public testing::Test {
protected:
    void SetUp() override
    {
        const tests::MadeUp made = tests::makeHousehold(0x9a7d, 2, {}, {}, 300);
        theme_.setMode(ui::ThemeMode::light);
        theme_.apply();
        household::Household::Settings settings;
        settings.createIfAbsent = true;
        settings.members = 64;
        auto opened = household::Household::open(folder_.filePath(QStringLiteral("mill.tierloam")), std::make_shared<household::FixedClock>(made.asOf), settings);
        household_ = std::move(std::get<std::unique_ptr<household::Household>>(opened));
        journal::Entries entries = made.entries;
        for (journal::Entry& entry : entries) entry.id = journal::EntryId::none;
        household_->recordAll(entries, QStringLiteral("made up"));
        household_->finishWrites();
        ASSERT_TRUE(QTest::qWaitFor([this] { return household_->reckoningIsCurrent(); }, patience));
        page_ = std::make_unique<TrendsPage>(*household_, theme_, *settings_);
        page_->resize(1100, 900);
        page_->show();
        page_->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(page_.get()));
    }
    void TearDown() override
    {
        page_.reset();
        household_.reset();
        qApp->setStyleSheet({});
    }
    rotation::ChangeCard* card() { return page_->findChild<rotation::ChangeCard*>(); }
    void compare(rotation::ChangeCard::Kind kind)
    {
        card()->chooseKind(kind);
        QTest::mouseClick(card()->findChild<QPushButton*>(QStringLiteral("compare")), Qt::LeftButton);
        ASSERT_TRUE(QTest::qWaitFor([this] { return !card()->shown().sentence.isEmpty(); }, patience));
    }
    Series series(Measure measure)
    {
        seen_ = page_->seen();
        for (const SeenMeasure& each : seen_.measures)
            if (each.measure == measure) return each.whole.front();
        std::abort();
    }

    QTemporaryDir folder_;
    ui::Theme theme_;
    std::unique_ptr<ui::Settings> settings_ = ui::passingSettings();
    std::unique_ptr<household::Household> household_;
    std::unique_ptr<TrendsPage> page_;
    SeenTrends seen_;
};

}

TEST_F(TrendsChange, StandsBesideTheBaseCaseAndGoesWithItsButton)
{
    EXPECT_EQ(card(), nullptr) << "made when it is first opened";
    QTest::keyClick(page_.get(), Qt::Key_C);
    ASSERT_TRUE(card()->isVisible());
    EXPECT_TRUE(card()->isAncestorOf(QApplication::focusWidget())) << "the keys go into it at once";
    compare(rotation::ChangeCard::Kind::warmer);
    const std::size_t base = series(Measure::colony).ahead.size();
    const Series colony = series(Measure::colony);
    ASSERT_GT(colony.changed.size(), 3u);
    EXPECT_EQ(colony.changed.size(), base) << "the same days as the base case";
    // What another usual temperature does to worms depends on the season; that it does something does not.
    EXPECT_NE(colony.changed.back().band.p50, colony.ahead.back().band.p50);
    EXPECT_FALSE(seen_.changeSentence.isEmpty());
    EXPECT_FALSE(series(Measure::feedToCast).changed.empty());
    EXPECT_TRUE(series(Measure::yield).changed.empty());
    bool told = false;
    for (const auto* chart : page_->findChildren<TrendChart*>()) told = told || chart->accessibleDescription().contains(QStringLiteral("With the change"));
    EXPECT_TRUE(told) << "also to those who do not see the lines";
    QTest::keyClick(page_.get(), Qt::Key_C);
    EXPECT_FALSE(card()->isVisible());
    EXPECT_TRUE(series(Measure::colony).changed.empty());
}

TEST_F(TrendsChange, AnAbsenceLeavesTheBaseCaseFromToday)
{
    page_->openChange(true);
    compare(rotation::ChangeCard::Kind::away);
    const Series away = series(Measure::processing);
    ASSERT_GT(away.changed.size(), 8u);
    EXPECT_EQ(away.changed.front().band.p50, away.ahead.front().band.p50) << "both leave today from the same estimate";
    bool differs = false;
    for (std::size_t i = 1; i < std::min(away.changed.size(), away.ahead.size()); ++i) differs = differs || away.changed[i].band.p50 != away.ahead[i].band.p50;
    EXPECT_TRUE(differs);
}

TEST_F(TrendsChange, AnEntryMakesItOutdated)
{
    page_->openChange(true);
    compare(rotation::ChangeCard::Kind::warmer);
    ASSERT_FALSE(series(Measure::temperature).changed.empty());
    journal::Entry entry;
    entry.stack = "Mill";
    entry.date.day = household_->today();
    journal::Reading reading;
    reading.bin = celsius(21);
    entry.action = reading;
    household_->record(entry, QStringLiteral("a reading"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return series(Measure::temperature).changed.empty(); }, patience)) << "it rests on estimates of before";
    EXPECT_TRUE(card()->shown().sentence.isEmpty());
    EXPECT_TRUE(page_->changeOpen());
}

}
