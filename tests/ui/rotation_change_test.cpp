// Try a change: each is answered beside the base case, what cannot be is named.
#include "tests/ui/rotation_fixture.h"

#include "core/reckoning/bed_year.h"
#include "ui/common/amount_field.h"
#include "ui/common/date_field.h"
#include "ui/common/dates.h"
#include "ui/common/formats.h"
#include "ui/rotation/change_card.h"
#include "ui/rotation/change_words.h"
#include "ui/rotation/gain_words.h"
#include "ui/rotation/two_courses.h"

#include <QComboBox>
#include <QPushButton>

#include <algorithm>
#include <array>

namespace tierloam::rotation {
namespace {

constexpr int late = 400; ///< ms, longer than a comparison takes

TEST_F(RotationPageTest, DaysThatCannotBeAreNamedAndNothingIsCompared)
{
    auto* card = page_->findChild<ChangeCard*>(QStringLiteral("changeCard"));
    const auto field = [&](const QString& name) {
        for (auto* each : card->findChildren<ui::DateField*>())
            if (each->name() == name) return each;
        return static_cast<ui::DateField*>(nullptr);
    };
    ui::DateField *from = field(QStringLiteral("From")), *to = field(QStringLiteral("To"));
    ASSERT_TRUE(from && to);
    card->chooseKind(ChangeCard::Kind::away);
    const auto said = [&](ui::DateField* one, int first, int last) {
        from->setMoment({today_ + std::chrono::days{first}, std::nullopt});
        to->setMoment({today_ + std::chrono::days{last}, std::nullopt});
        page_->findChild<QPushButton*>(QStringLiteral("compare"))->click();
        EXPECT_TRUE(text("changeSentence").isEmpty()) << "nothing is being compared";
        return one->shownProblem();
    };
    EXPECT_TRUE(said(from, 0, 9).contains(QStringLiteral("not ahead")));
    EXPECT_TRUE(said(to, 5, 4).contains(QStringLiteral("before the first")));
    EXPECT_TRUE(said(to, 5, 366).contains(QStringLiteral("reach to")));
    card->chooseKind(ChangeCard::Kind::addTray);
    EXPECT_TRUE(said(from, 400, 401).contains(QStringLiteral("reach to")));
}

/// What it asks for and is not there, and dates that are past, are called so.
TEST(ChangeWords, SayWhatIsInTheWayAndWhatIsAlready)
{
    const Day today{std::chrono::year{2031} / 5 / 2};
    reckoning::StackReckoning stack;
    stack.forecast.roomTopTrayFreshKg = 4.0;
    stack.record.spareTrays = 1;
    const auto words = [&](const reckoning::ChangedPlan& plan) {
        TriedChange made;
        addWhatIsInTheWay(made, stack, plan);
        return made.sentence;
    };
    reckoning::ChangedPlan plan;
    plan.feedKgPerWeek = 3.0;
    EXPECT_TRUE(words(plan).isEmpty());
    plan.feedKgPerWeek = 50.0;
    EXPECT_TRUE(words(plan).contains(QStringLiteral("only about 4.0"))) << words(plan).toStdString();
    plan = {};
    plan.trayAddedOn = today;
    EXPECT_TRUE(words(plan).isEmpty());
    stack.record.spareTrays = 0;
    EXPECT_TRUE(words(plan).contains(QStringLiteral("one more than there are")));
    reckoning::PlanComparison compared;
    compared.base.turnOn = {today - std::chrono::days{20}, today - std::chrono::days{9}, today + std::chrono::days{3}};
    compared.changed.turnOn = {today + std::chrono::days{2}, today + std::chrono::days{9}, today + std::chrono::days{30}};
    TriedChange made;
    addCourse(made, compared, today);
    const auto row = std::find_if(made.rows.begin(), made.rows.end(), [](const TriedChange::Row& each) { return each.name == QStringLiteral("top tray filled"); });
    ASSERT_NE(row, made.rows.end());
    EXPECT_EQ(row->usual, QStringLiteral("already"));
    EXPECT_TRUE(row->changed.contains(QStringLiteral("May")));
}

/// No figure with a sign where both are told by the same one.
TEST(ChangeWords, ADifferenceThatIsNoneIsToldAsNone)
{
    const Day today{std::chrono::year{2031} / 5 / 2};
    reckoning::StackReckoning as, other;
    as.now.colonyKg = {0.300, 0.4104, 0.500};
    const auto said = [&](double kg, std::optional<Day> harvested = std::nullopt) {
        other.now.colonyKg = {0.300, kg, 0.500};
        return ofAnotherPast(as, other, today, harvested).sentence;
    };
    EXPECT_EQ(said(0.4100), QStringLiteral("Without that entry the colony would be what it is today, 410\u00a0g."));
    EXPECT_EQ(said(0.4120, today - std::chrono::days{30}), QStringLiteral("With the bottom tray taken on 2 Apr the colony would be what it is today, 410\u00a0g."));
    EXPECT_TRUE(said(0.3300).contains(QStringLiteral("330\u00a0g today instead of 410\u00a0g, that is 80\u00a0g lighter."))) << said(0.33).toStdString();
    reckoning::PlanComparison compared;
    compared.bottomStays = true;
    compared.colonyMoreIn60Days.p50 = -0.0003;
    EXPECT_TRUE(ofPlans(compared, today).sentence.contains(QStringLiteral("as heavy as without"))) << ofPlans(compared, today).sentence.toStdString();
    compared.colonyMoreIn60Days = {-0.010, -0.0003, 0.020};
    EXPECT_TRUE(ofPlans(compared, today).sentence.contains(QStringLiteral("as heavy as without the change (from 10\u00a0g lighter to 20\u00a0g heavier)"))) << ofPlans(compared, today).sentence.toStdString();
    compared.colonyMoreIn60Days = {-0.05, -0.03, -0.01};
    EXPECT_TRUE(ofPlans(compared, today).sentence.contains(QStringLiteral("the colony is 30\u00a0g (10–50) lighter"))) << ofPlans(compared, today).sentence.toStdString();
    compared.colonyMoreIn60Days = {-0.010, 0.040, 0.090};
    compared.readyEarlierByDays = {-1, 3, 9};
    const QString sentence = ofPlans(compared, today).sentence;
    EXPECT_TRUE(sentence.contains(QStringLiteral("the colony is 40\u00a0g heavier (from 10\u00a0g lighter to 90\u00a0g heavier)"))) << sentence.toStdString();
    EXPECT_TRUE(sentence.contains(QStringLiteral("is ready %1 sooner (from %2 later to %3 sooner)").arg(ui::daysLong(3), ui::daysLong(1), ui::daysLong(9)))) << sentence.toStdString();
}

/// The new stack's course stands beside the old one's, with the day on which that is back.
TEST(ChangeWords, AnotherStackStandsBesideTheOldOne)
{
    const Day today{std::chrono::year{2031} / 5 / 2};
    const auto in = [today](int days) { return today + std::chrono::days{days}; };
    reckoning::StackReckoning stack;
    stack.now.colonyKg = {0.8, 1.0, 1.2};
    auto present = std::make_shared<reckoning::Present>();
    present->course.care.feedKg = 1.5;
    stack.present = present;
    planning::AnotherStack another;
    another.share = 0.3;
    another.give.share = 0.3;
    another.backOn = {in(14), in(28), in(56)};
    planning::NewStack& young = another.young;
    young.wormsKg = 0.3;
    young.beddingKg = 0.48;
    young.feed = {{in(1), 0.4}, {in(29), 0.6}};
    young.secondTray = {in(60), in(80), in(100)};
    young.firstReady = {in(120), in(150), in(200)};
    young.colonyIn60Days = {0.3, 0.4, 0.5};
    young.colonyInAYear = {0.5, 0.7, 0.9};
    young.days.resize(3);
    TriedChange made = ofAnotherStack(another, stack, 12, today);
    addCourse(made, {}, today);
    addNewStack(made, young, today);
    for (const reckoning::Dates& dates : {young.secondTray, young.firstReady, another.backOn}) EXPECT_TRUE(made.sentence.contains(ui::datesText(dates, today))) << made.sentence.toStdString();
    EXPECT_TRUE(made.sentence.contains(QStringLiteral("480\u00a0g of bedding"))) << made.sentence.toStdString();
    EXPECT_TRUE(made.sentence.contains(QStringLiteral("300\u00a0g of worms")));
    EXPECT_TRUE(made.sentence.contains(QStringLiteral("400\u00a0g a week, from %1 on 600\u00a0g").arg(ui::shortDay(in(29), today)))) << made.sentence.toStdString();
    EXPECT_FALSE(made.sentence.contains(QStringLiteral("buy the rest")));
    const auto row = [&](const char* name) {
        return *std::find_if(made.rows.begin(), made.rows.end(), [&](const TriedChange::Row& each) { return each.name == QString::fromLatin1(name); });
    };
    EXPECT_EQ(row("bottom tray ready").another, ui::datesText(young.firstReady, today));
    EXPECT_EQ(row("top tray filled").another, ui::datesText(young.secondTray, today));
    EXPECT_EQ(row("back at its rate").changed, ui::datesText(another.backOn, today));
    EXPECT_TRUE(row("colony in 60 days").another.contains(QStringLiteral("(300–500)"))) << row("colony in 60 days").another.toStdString();
    EXPECT_TRUE(row("worms at the beginning").changed.startsWith(QStringLiteral("700\u00a0g")));
    EXPECT_EQ(row("food a week").another, QStringLiteral("400\u00a0g, later up to 600\u00a0g")) << "each step stands in the sentence";
    EXPECT_EQ(made.another.size(), 3U);
    young.boughtKg = 0.1;
    EXPECT_TRUE(ofAnotherStack(another, stack, 12, today).sentence.contains(QStringLiteral("spare only 200\u00a0g within 12 week")));
    another.share = another.give.share = 0.0;
    EXPECT_TRUE(ofAnotherStack(another, stack, 12, today).sentence.startsWith(QStringLiteral("None")));
}

/// A feeding that grows in many steps is a line for each, and the sentence stays short.
TEST(ChangeWords, ALongFeedingIsListedLineByLine)
{
    const Day today{std::chrono::year{2031} / 5 / 2};
    const auto in = [today](int days) { return today + std::chrono::days{days}; };
    reckoning::StackReckoning stack;
    planning::WayBack way;
    way.newTray = true;
    way.on = in(90);
    way.feed = {{in(1), 0.2}, {in(29), 0.3}};
    EXPECT_TRUE(ofWayBack(way, stack, today).sentence.contains(QStringLiteral("200\u00a0g a week, from %1 on 300\u00a0g").arg(ui::shortDay(in(29), today))));
    EXPECT_TRUE(ofWayBack(way, stack, today).feeding.isEmpty());
    for (int step = 2; step < 6; ++step) way.feed.push_back({in(1 + 28 * step), 0.2 + 0.1 * step});
    const TriedChange made = ofWayBack(way, stack, today);
    ASSERT_EQ(made.feeding.size(), 6);
    EXPECT_EQ(made.feeding.front(), QStringLiteral("from %1 on: 200\u00a0g a week").arg(ui::shortDay(in(1), today)));
    EXPECT_EQ(made.feeding.back(), QStringLiteral("from %1 on: 700\u00a0g a week").arg(ui::shortDay(in(141), today)));
    EXPECT_TRUE(made.sentence.contains(QStringLiteral("200\u00a0g a week at first, step by step 700\u00a0g from %1 on").arg(ui::shortDay(in(141), today)))) << made.sentence.toStdString();
    EXPECT_FALSE(made.sentence.contains(ui::shortDay(in(57), today))) << made.sentence.toStdString();
}

/// What is typed as the usual temperature is the mean of the year: its coldest and warmest month stand beside it.
TEST(ChangeWords, AnotherUsualTemperatureIsAMeanRoundWhichTheSeasonGoesOn)
{
    reckoning::Surroundings around;
    around.settings.place = journal::Place::garage;
    around.settings.temp = celsius(14);
    TriedChange made{.sentence = QStringLiteral("Said before.")};
    addBedYear(made, around, 16.0);
    EXPECT_TRUE(made.sentence.startsWith(QStringLiteral("Said before. 16\u00a0°C is the mean of the whole year, and the season goes on around it"))) << made.sentence.toStdString();
    const reckoning::BedYear year = reckoning::bedYear(16.0, journal::Place::garage, false);
    EXPECT_TRUE(made.sentence.contains(QStringLiteral("%1 in January and %2 in July").arg(ui::temperatureText(year.coldestC), ui::temperatureText(year.warmestC)))) << made.sentence.toStdString();
    EXPECT_FALSE(made.sentence.contains(QStringLiteral("die")));
    ASSERT_EQ(made.rows.size(), 3U);
    EXPECT_EQ(made.rows[1].name, QStringLiteral("bed in January"));
    EXPECT_EQ(made.rows[1].usual, ui::temperatureText(reckoning::bedYear(14.0, journal::Place::garage, false).coldestC));
    EXPECT_EQ(made.rows[1].changed, ui::temperatureText(year.coldestC));
    around.southern = true;
    EXPECT_TRUE(bedYearText(16.0, journal::Place::garage, true).contains(QStringLiteral("in January."))) << "the warmest there";
    EXPECT_TRUE(bedYearText(7.0, journal::Place::garage, false).contains(QStringLiteral("Below")));
    EXPECT_TRUE(bedYearText(28.0, journal::Place::garage, false).contains(QStringLiteral("Above")));
}

/// Every estimate shows its range: of one direction as a range, of both with a word at each end.
TEST(GainWords, NameBothEndsWhereTheyLieInDifferentDirections)
{
    const QString none = QStringLiteral("no difference");
    const auto days = [](int number) { return ui::daysLong(number); };
    EXPECT_EQ(gainedText({9, 14, 20}, none), QStringLiteral("%1 sooner (9–20)").arg(days(14)));
    EXPECT_EQ(gainedText({-20, -14, -9}, none), QStringLiteral("%1 later (9–20)").arg(days(14)));
    EXPECT_EQ(gainedText({-6, -4, 0}, none), QStringLiteral("%1 later (0–6)").arg(days(4)));
    EXPECT_EQ(gainedText({-2, 3, 5}, none), QStringLiteral("%1 sooner (from %2 later to %3 sooner)").arg(days(3), days(2), days(5)));
    EXPECT_EQ(gainedText({-5, -3, 2}, none), QStringLiteral("%1 later (from %2 later to %3 sooner)").arg(days(3), days(5), days(2)));
    EXPECT_EQ(gainedText({0, 0, 3}, none), QStringLiteral("no difference (up to %1 sooner)").arg(days(3)));
    EXPECT_EQ(gainedText({-3, 0.2, 0.3}, none), QStringLiteral("no difference (up to %1 later)").arg(days(3)));
    EXPECT_EQ(gainedText({-3, 0, 2}, none), QStringLiteral("no difference (from %1 later to %2 sooner)").arg(days(3), days(2)));
    EXPECT_EQ(gainedText({0, 0, 0}, none), none);
    EXPECT_EQ(gainedText({4, 4, 4}, none), QStringLiteral("%1 sooner").arg(days(4)));
}

/// What was proposed goes on with the day, what was chosen stays where it was.
TEST_F(RotationPageTest, AfterMidnightTheProposedDaysGoOn)
{
    auto* card = page_->findChild<ChangeCard*>(QStringLiteral("changeCard"));
    const auto field = [](QWidget* within, const QString& name) {
        for (auto* each : within->findChildren<ui::DateField*>())
            if (each->name() == name) return each;
        return static_cast<ui::DateField*>(nullptr);
    };
    ui::DateField *from = field(card, QStringLiteral("From")), *to = field(card, QStringLiteral("To")), *day = field(card, QStringLiteral("Day"));
    ui::DateField* by = field(page_->findChild<QWidget*>(QStringLiteral("wishCard")), QStringLiteral("Wished for by"));
    ASSERT_TRUE(from && to && day && by);
    const auto away = [&](const ui::DateField* one) { return daysBetween(today_, one->moment().value->day); };
    const std::array before{away(from), away(to), away(day), away(by)};
    EXPECT_EQ(before, (std::array{1, 14, -30, 180}));
    const auto midnight = [&](int days) {
        clock_->set(today_ + std::chrono::days{days});
        Q_EMIT household_->changed({});
    };
    midnight(1);
    EXPECT_EQ((std::array{away(from), away(to), away(day), away(by)}), (std::array{2, 15, -29, 181}));
    to->setMoment({today_ + std::chrono::days{40}, std::nullopt});
    by->setMoment({today_ + std::chrono::days{100}, std::nullopt});
    midnight(2);
    EXPECT_EQ((std::array{away(from), away(to), away(day), away(by)}), (std::array{3, 40, -28, 100}));
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

/// Nor under estimates that it does not rest on, nor under another entry than the one it was asked of.
TEST_F(RotationPageTest, NewEstimatesTakeTheAnswerAwayAndLeaveTheEntryChosen)
{
    auto* card = page_->findChild<ChangeCard*>(QStringLiteral("changeCard"));
    auto* go = page_->findChild<QPushButton*>(QStringLiteral("compare"));
    card->chooseKind(ChangeCard::Kind::anotherPast);
    QComboBox* entries = nullptr;
    for (auto* box : card->findChildren<QComboBox*>())
        if (box->isVisibleTo(card) && box->itemText(0).contains(u':')) entries = box;
    ASSERT_NE(entries, nullptr);
    ASSERT_GT(entries->count(), 3);
    entries->setCurrentIndex(2);
    const QString chosen = entries->currentText();
    go->click();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !card->shown().sentence.isEmpty(); }, patience));
    const auto feed = [&](double kg) {
        const auto before = household_->reckoning();
        journal::Entry entry;
        entry.stack = "Mill";
        entry.date.day = today_;
        entry.action = journal::Feed{Amount{kg, Unit::kg}, "", {}};
        household_->record(entry, QStringLiteral("feed"));
        household_->finishWrites();
        return QTest::qWaitFor([&] { return household_->reckoningIsCurrent() && household_->reckoning() != before; }, patience);
    };
    ASSERT_TRUE(feed(1.0));
    EXPECT_TRUE(card->shown().sentence.isEmpty()) << card->shown().sentence.toStdString();
    EXPECT_TRUE(text("changeSentence").isEmpty());
    EXPECT_EQ(entries->currentText(), chosen);
    // Nor does one come late that was asked of the estimates before.
    go->click();
    ASSERT_EQ(text("changeSentence"), QStringLiteral("Comparing…"));
    ASSERT_TRUE(feed(0.5));
    QTest::qWait(late);
    EXPECT_TRUE(card->shown().sentence.isEmpty()) << card->shown().sentence.toStdString();
    EXPECT_TRUE(text("changeSentence").isEmpty());
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

/// An entry's words may be a line long: its list cuts them while it is closed, and the page stays as wide as it was.
TEST_F(RotationPageTest, ALongEntryDoesNotWidenThePage)
{
    journal::Entry entry;
    entry.stack = "Mill";
    entry.date.day = today_;
    entry.action = journal::Feed{Amount{1, Unit::kg}, "vegetable scraps mixed", journal::Side::front};
    household_->record(entry, QStringLiteral("feed"));
    household_->finishWrites();
    auto* card = page_->findChild<ChangeCard*>(QStringLiteral("changeCard"));
    card->refresh();
    card->chooseKind(ChangeCard::Kind::anotherPast);
    QCoreApplication::processEvents();
    EXPECT_LE(card->minimumSizeHint().width(), theme_.px(340));
    for (auto* box : card->findChildren<QComboBox*>()) {
        if (!box->isVisibleTo(card)) continue;
        EXPECT_LE(box->sizeHint().width(), box->fontMetrics().averageCharWidth() * 45) << box->currentText().toStdString();
    }
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

}
}
