// How many inputs the lines of the due list take in the window itself: a click, a key chord and a field typed into count one each.
#include "tests/ui/window_fixture.h"

#include "core/advice/put_off.h"
#include "core/store/setting_names.h"
#include "ui/window/due_line.h"
#include "ui/common/formats.h"
#include "ui/forms/action_form.h"
#include "ui/shelf/form_host.h"

#include <QLineEdit>

namespace tierloam::window {
namespace {

class Inputs : public WindowTest {
protected:
    /// The sample with one stack's estimates changed, open in the window.
    void openWith(const char* stack, const std::function<void(reckoning::StackReckoning&)>& change)
    {
        auto changed = std::make_shared<reckoning::Reckoning>(*tests::sampleReckoning());
        for (reckoning::StackReckoning& each : changed->stacks) {
            if (each.name == stack) change(each);
            else each.retired = true; // nothing of the others is told
        }
        estimates_ = changed;
        openSample();
        inputs_ = 0;
        before_ = entries();
    }
    void clickOn(const char* name, advice::Code code, const QString& text = {})
    {
        const auto& lines = desk().due()->lines();
        const auto line = std::find_if(lines.begin(), lines.end(), [code](const advice::Advice& each) { return each.code == code; });
        ASSERT_NE(line, lines.end());
        const QString key = lineKey(*line);
        for (auto* each : desk().due()->findChildren<QPushButton*>(QString::fromLatin1(name)))
            if (each->isVisible() && each->property("line").toString() == key && (text.isEmpty() || each->text() == text)) {
                ++inputs_;
                click(each);
                settle();
                return;
            }
        ADD_FAILURE() << name << " is not in that line";
    }
    void type(const char* text)
    {
        ++inputs_;
        QWidget* at = QApplication::focusWidget();
        ASSERT_NE(qobject_cast<QLineEdit*>(at), nullptr) << "the focus is in a field";
        QTest::keyClicks(at, QString::fromLatin1(text));
    }
    void key(const char* keys)
    {
        ++inputs_;
        press(keys);
    }
    /// The latest entry of that kind; nullptr when none came since the window was opened.
    template<class Action>
    const Action* wrote(std::size_t more = 1)
    {
        EXPECT_TRUE(written(before_ + more)) << entries() - before_ << " were written";
        journal_ = household().journal();
        for (auto entry = journal_->entries.rbegin(); entry != journal_->entries.rend(); ++entry)
            if (entry->date.day == today_ && std::holds_alternative<Action>(entry->action)) return entry_ = &*entry, &std::get<Action>(entry->action);
        return nullptr;
    }

    int inputs_ = 0;
    std::size_t before_ = 0;
    std::shared_ptr<const household::JournalView> journal_;
    const journal::Entry* entry_ = nullptr;
};

TEST_F(Inputs, FeedingWhatIsDueTakesOne)
{
    openWith("Scullery", [](auto& stack) { stack.record.lastFeed = tests::sampleToday() - std::chrono::days{9}; });
    clickOn("dueButton", advice::Code::feedDue);
    ASSERT_NE(wrote<journal::Feed>(2), nullptr) << "with its cover";
    EXPECT_EQ(inputs_, 1);
}

TEST_F(Inputs, DrainingWhatIsDueTakesOne)
{
    openWith("Lean-to", [](auto&) {});
    const auto* caution = desk().due()->findChild<QLabel*>(QStringLiteral("dueCaution"));
    ASSERT_NE(caution, nullptr) << "said where it is done, not afterwards alone";
    EXPECT_TRUE(caution->text().contains(QStringLiteral("never to drink"))) << caution->text().toStdString();
    EXPECT_TRUE(caution->text().contains(QStringLiteral("Worms in the sump are normal")));
    clickOn("dueButton", advice::Code::sumpFull);
    ASSERT_NE(wrote<journal::Drain>(), nullptr);
    EXPECT_EQ(inputs_, 1);
}

TEST_F(Inputs, LiftingTakesOneAndItsCautionStandsInTheLine)
{
    openWith("Scullery", [](auto& stack) { stack.readySince = stack.turnSince = tests::sampleToday(); });
    const auto* caution = desk().due()->findChild<QLabel*>(QStringLiteral("dueCaution"));
    ASSERT_NE(caution, nullptr);
    EXPECT_TRUE(caution->text().contains(QStringLiteral("advised"))) << caution->text().toStdString();
    EXPECT_TRUE(caution->text().contains(QStringLiteral("kg")));
    clickOn("dueButton", advice::Code::harvestReady);
    ASSERT_NE(wrote<journal::Rotate>(), nullptr);
    EXPECT_EQ(inputs_, 1);
    const auto* standing = household().journal()->replay.stack("Scullery")->on(today_);
    EXPECT_TRUE(standing->drying.has_value());
}

// Lifting before its turn asks first: the form says why and when it would be right.
TEST_F(Inputs, LiftingBeforeItsTurnOpensTheForm)
{
    openWith("Scullery", [](auto& stack) { stack.readySince = tests::sampleToday(); });
    clickOn("dueButton", advice::Code::readyNoHurry);
    EXPECT_NE(desk().shelf()->findChild<forms::ActionForm*>(), nullptr);
    EXPECT_EQ(entries(), before_);
}

TEST_F(Inputs, TakingTheCastingsTakesThreeSinceTheyAreWeighed)
{
    openWith("Cellar", [](auto& stack) {
        stack.record.dryingSince = tests::sampleToday() - std::chrono::days{4};
        stack.now.slots.back().wormShare = {0.0, 0.0, 0.001};
        for (auto& each : stack.history)
            if (!each.slots.empty() && each.slots.back().state == reckoning::TrayState::drying) each.slots.back().wormShare = {0.0, 0.0, 0.001};
    });
    clickOn("dueButton", advice::Code::dryingDone);
    type("4.2");
    key("Return");
    const auto* taken = wrote<journal::Harvest>();
    ASSERT_NE(taken, nullptr);
    EXPECT_DOUBLE_EQ(taken->taken.value, 4.2);
    EXPECT_EQ(inputs_, 3);
}

TEST_F(Inputs, ALookForBitsTakesOne)
{
    openWith("Scullery", [](auto& stack) {
        stack.forecast.readyAndTurnWithin14Days = 0.6;
        stack.forecast.turnLikelyOn = tests::sampleToday() + std::chrono::days{5};
    });
    clickOn("dueAnswer", advice::Code::harvestSoon, QStringLiteral("1 in 8"));
    const auto* check = wrote<journal::Check>();
    ASSERT_NE(check, nullptr);
    EXPECT_EQ(check->bits, Share::fromPercent(12.5));
    EXPECT_EQ(entry_->slot, 1);
    EXPECT_EQ(inputs_, 1);
}

TEST_F(Inputs, AHandfulSqueezedTakesOneAndIsOfTheTrayThatWasAskedFor)
{
    openWith("Scullery", [](auto& stack) {
        stack.now.slots.back().waterShare = {0.45, 0.75, 0.95};
        stack.record.lastWater.reset();
        stack.record.lastMoistureLook.reset();
    });
    clickOn("dueAnswer", advice::Code::tooDry, QStringLiteral("1 crumbles"));
    const auto* reading = wrote<journal::Reading>();
    ASSERT_NE(reading, nullptr);
    EXPECT_EQ(reading->squeeze, 1);
    EXPECT_EQ(entry_->slot, 3) << "the trays beneath are wetter";
    EXPECT_EQ(inputs_, 1);
}

TEST_F(Inputs, ATemperatureThatIsReadTakesOne)
{
    openWith("Scullery", [](auto& stack) { stack.now.binTempC = {30.2, 32, 33.1}; });
    clickOn("dueAnswer", advice::Code::heat, QStringLiteral("34\u00a0°C"));
    const auto* reading = wrote<journal::Reading>();
    ASSERT_NE(reading, nullptr);
    EXPECT_EQ(reading->bin, celsius(34));
    EXPECT_EQ(inputs_, 1);
}

TEST_F(Inputs, ADepthThatIsMeasuredTakesOneAndIsOfTheTrayThatWasAskedFor)
{
    openWith("Scullery", [](auto& stack) {
        stack.forecast.turnLikelyOn = tests::sampleToday() + std::chrono::days{3};
        stack.record.spareTrays = 1;
        stack.record.lastLook.reset();
    });
    clickOn("dueAnswer", advice::Code::lookNext, QStringLiteral("2\u00a0cm"));
    const auto* check = wrote<journal::Check>();
    ASSERT_NE(check, nullptr);
    EXPECT_EQ(check->depth, centimetres(2));
    EXPECT_EQ(entry_->slot, 3);
    EXPECT_EQ(inputs_, 1);
}

/// Half degrees, and what lies outside the buttons.
TEST_F(Inputs, ATemperatureThatIsTypedTakesThree)
{
    openWith("Scullery", [](auto& stack) { stack.now.binTempC = {31, 32, 33}; });
    clickOn("dueButton", advice::Code::heat);
    type("31.5");
    key("Return");
    const auto* reading = wrote<journal::Reading>();
    ASSERT_NE(reading, nullptr);
    EXPECT_EQ(reading->bin, celsius(31.5));
    EXPECT_EQ(inputs_, 3);
}

/// A ruler tells the sump better than a few buttons could, and the date of a full sump rests on it.
TEST_F(Inputs, ALevelOfTheSumpIsTypedAndTakesThree)
{
    openWith("Lean-to", [](auto& stack) {
        stack.forecast.sumpFullOn = {tests::sampleToday() + std::chrono::days{2}, tests::sampleToday() + std::chrono::days{20}, tests::sampleToday() + std::chrono::days{60}};
        stack.record.lastSumpLook.reset();
    });
    clickOn("dueButton", advice::Code::sumpFull);
    type("1.8");
    EXPECT_FALSE(QApplication::focusWidget()->visibleRegion().isEmpty()) << "it has been scrolled into sight";
    key("Return");
    const auto* reading = wrote<journal::Reading>();
    ASSERT_NE(reading, nullptr);
    EXPECT_EQ(reading->sump, litres(1.8));
    EXPECT_FALSE(reading->bin) << "not into the first field of the form";
    EXPECT_EQ(inputs_, 3);
}

TEST_F(Inputs, WhatLeavesNoFigureIsNotedAsDoneByOneAndToldNoMore)
{
    openWith("Scullery", [](auto& stack) { stack.now.binTempC = {31, 32, 33}; });
    const int lines = desk().due()->count();
    clickOn("dueDone", advice::Code::heat);
    ASSERT_NE(wrote<journal::Note>(), nullptr);
    EXPECT_TRUE(entry_->note.starts_with("Done: Cool the stack"));
    const auto kept = [&] { return advice::putOffFrom(household().kept(store::settingPutOff).toStdString()); };
    advice::Advice heat;
    heat.code = advice::Code::heat;
    heat.stack = "Scullery";
    EXPECT_TRUE(advice::isNotedDone(kept(), heat, tests::sampleToday())) << "whichever words the note has";
    EXPECT_TRUE(advice::isPutOff(kept(), heat, tests::sampleToday()));
    EXPECT_EQ(inputs_, 1);
    EXPECT_TRUE(QTest::qWaitFor([&] { return desk().due()->count() == lines - 1; }, patience));
}

TEST_F(Inputs, PuttingOffTakesOne)
{
    openWith("Scullery", [](auto& stack) { stack.record.lastFeed = tests::sampleToday() - std::chrono::days{9}; });
    const int lines = desk().due()->count();
    clickOn("dueLater", advice::Code::feedDue);
    EXPECT_TRUE(QTest::qWaitFor([&] { return desk().due()->count() == lines - 1; }, patience));
    EXPECT_EQ(inputs_, 1);
    EXPECT_EQ(entries(), before_);
}

// What the line proposes is what the shelf's button proposes: one usual feeding.
TEST_F(Inputs, TheDueListAndTheFeedingButtonProposeTheSame)
{
    openWith("Scullery", [](auto& stack) {
        stack.record.lastFeed = tests::sampleToday() - std::chrono::days{9};
        stack.forecast.feedUsualKg = stack.record.usualFeedKgPerWeek = 1.1; // a week's sum of two feedings
        const household::Usual usual = household::usualOf(tests::sampleJournal(), materials::Table::builtIn(), "Scullery", tests::sampleToday());
        stack.record.usualFeed = usual.feed;
        stack.record.usualFeedKg = *reckoning::usualFeedKg(usual, materials::Table::builtIn());
        stack.forecast.feedHighKg = stack.forecast.feedNowKg = 3.0;
    });
    const QString amount = ui::amountText(household().usual("Scullery").feed);
    const auto* column = desk().shelf()->board()->findChild<QPushButton*>(QStringLiteral("feedButton"));
    ASSERT_NE(column, nullptr);
    EXPECT_TRUE(column->text().contains(amount)) << column->text().toStdString();
    const auto& lines = desk().due()->lines();
    const auto line = std::find_if(lines.begin(), lines.end(), [](const advice::Advice& each) { return each.code == advice::Code::feedDue; });
    ASSERT_NE(line, lines.end());
    EXPECT_TRUE(ui::unbroken(QString::fromStdString(line->text)).contains(amount)) << line->text << " beside " << amount.toStdString();
    clickOn("dueButton", advice::Code::feedDue);
    const auto* fed = wrote<journal::Feed>(2);
    ASSERT_NE(fed, nullptr);
    EXPECT_EQ(fed->food, household().usual("Scullery").feed);
}

}
}
