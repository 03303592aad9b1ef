// The due list between a deed and the estimates that know of it, and where the focus is meanwhile.
#include "tests/support/other_process.h"
#include "tests/ui/window_fixture.h"

#include "core/store/setting_names.h"
#include "ui/forms/action_form.h"
#include "ui/window/due_acts.h"
#include "ui/window/due_line.h"

#include <algorithm>
#include <set>

namespace tierloam::window {
namespace {

class DueDone : public WindowTest {
protected:
    static constexpr int aWhile = 60'000; ///< ms that estimates take, unless current() lets them go

    /// Estimates with something to do on each stack: food, a tray that fills up, a bed that is too warm.
    void SetUp() override
    {
        const auto busy = std::make_shared<reckoning::Reckoning>(*tests::sampleReckoning());
        for (reckoning::StackReckoning& each : busy->stacks) {
            each.record.lastFeed = tests::sampleToday() - std::chrono::days{5};
            each.forecast.roomTopTrayFreshKg = 3.0;
            each.forecast.topTrayFullOn.p50 = tests::sampleToday() + std::chrono::days{1};
            each.history[each.history.size() - 2].ahead.emplace().topTrayFullOn.p50 = tests::sampleToday();
            each.now.binTempC = {31, 32, 34};
        }
        estimates_ = busy;
        WindowTest::SetUp();
    }

    std::vector<QPushButton*> buttons(const char* name)
    {
        std::vector<QPushButton*> seen;
        for (auto* each : desk().due()->findChildren<QPushButton*>(QString::fromLatin1(name)))
            if (each->isVisible()) seen.push_back(each);
        return seen;
    }
    QPushButton* buttonOf(const QString& line, const char* name)
    {
        for (QPushButton* each : buttons(name))
            if (each->property("line").toString() == line) return each;
        return nullptr;
    }
    /// The key of a line that writes at one click, or of one that opens a form.
    QString lineThat(bool writes)
    {
        for (const QPushButton* each : buttons("dueButton")) {
            const QString line = each->property("line").toString();
            if (each->isEnabled() && (buttonOf(line, "dueOther") != nullptr) == writes) return line;
        }
        QStringList all;
        for (const advice::Advice& each : desk().due()->lines()) all << QString::fromStdString(each.stack + ": " + each.text);
        ADD_FAILURE() << "no such line among " << all.join(u'\n').toStdString();
        return {};
    }
    bool current()
    {
        estimatesTake_ = 0;
        const bool there = QTest::qWaitFor([this] { return household().reckoningIsCurrent(); }, patience);
        settled();
        return there;
    }
    static journal::Entry feeding()
    {
        journal::Entry entry;
        entry.date.day = tests::sampleToday();
        entry.stack = "Scullery";
        entry.action = journal::Feed{{200, Unit::g}, "", {}};
        return entry;
    }
    QString focused()
    {
        const QWidget* at = QApplication::focusWidget();
        return at ? at->objectName() + u' ' + at->property("line").toString() : QStringLiteral("nowhere");
    }
};

TEST_F(DueDone, ADeedCannotBeWrittenTwiceByASecondClick)
{
    openSample();
    ASSERT_TRUE(current());
    const auto before = entries();
    const int steps = household().undoStack()->count();
    const QString line = lineThat(true);
    estimatesTake_ = aWhile;
    QPushButton* pressed = buttonOf(line, "dueButton");
    const QPoint at = pressed->mapTo(window_.get(), pressed->rect().center());
    QTest::mouseClick(pressed, Qt::LeftButton);
    const auto once = entries();
    EXPECT_GT(once, before);
    settled();
    ASSERT_FALSE(household().reckoningIsCurrent()) << "the estimates do not know of it yet";
    ASSERT_NE(buttonOf(line, "dueButton"), nullptr);
    EXPECT_FALSE(buttonOf(line, "dueButton")->isEnabled());
    EXPECT_EQ(desk().due()->findChildren<QLabel*>(QStringLiteral("dueAtRest")).size(), 1) << "and it is said";
    for (QWidget* under : std::initializer_list<QWidget*>{buttonOf(line, "dueButton"), window_->childAt(at)})
        if (under) QTest::mouseClick(under, Qt::LeftButton);
    household().finishWrites();
    settled();
    EXPECT_EQ(entries(), once);
    EXPECT_EQ(household().undoStack()->count(), steps + 1);
    ASSERT_TRUE(current());
    EXPECT_TRUE(buttonOf(line, "dueButton")->isEnabled()) << "these estimates advise it again";
}

/// What is advised of each tray, and of what is missing in the record beside an odd value, are lines of their own.
TEST_F(DueDone, LinesOfOneCodeAreToldApart)
{
    const auto wet = std::make_shared<reckoning::Reckoning>(*estimates_);
    for (reckoning::StackReckoning& each : wet->stacks) {
        const auto soak = [](reckoning::StackEstimate& day) {
            for (std::size_t i = 0; i < day.slots.size(); ++i)
                if (day.slots[i].state != reckoning::TrayState::drying) day.slots[i].waterShare = {1.3, 1.4, 1.5};
        };
        soak(each.now);
        for (reckoning::StackEstimate& day : each.history) soak(day);
    }
    estimates_ = wet;
    openSample();
    ASSERT_TRUE(current());
    std::vector<advice::Advice> two;
    for (const advice::Advice& each : desk().due()->lines())
        if (each.code == advice::Code::tooWet && (two.empty() || each.stack == two.front().stack)) two.push_back(each);
    ASSERT_GE(two.size(), 2u);
    const QString first = lineKey(two[0]), second = lineKey(two[1]);
    EXPECT_EQ(std::ranges::count_if(buttons("dueWhy"), [&](const QPushButton* each) { return each->property("line").toString() == second; }), 1);
    click(buttonOf(second, "dueWhy"));
    settled();
    EXPECT_EQ(desk().due()->findChildren<QLabel*>(QStringLiteral("dueReasons")).size(), 1) << "one is explained";
    EXPECT_TRUE(buttonOf(second, "dueWhy")->isChecked());
    EXPECT_FALSE(buttonOf(first, "dueWhy")->isChecked());
    estimatesTake_ = aWhile;
    const auto before = entries();
    ASSERT_TRUE(dueAct(household(), two[1]));
    click(buttonOf(second, "dueButton"));
    settled();
    ASSERT_GT(entries(), before);
    EXPECT_FALSE(buttonOf(second, "dueButton")->isEnabled()) << "written down";
    EXPECT_TRUE(buttonOf(first, "dueButton")->isEnabled()) << "of the other tray nothing was";
}

TEST(DueLineKeys, DifferBySlotEntryAndKind)
{
    std::vector<advice::Advice> all(7);
    for (advice::Advice& each : all) {
        each.stack = "Mill";
        each.code = advice::Code::recordDisagrees;
    }
    all[1].slot = 1;
    all[2].slot = 3;
    all[3].entry = 3;
    all[4].unwritten = advice::UnwrittenFeeding{};
    all[5].wormsMissing = true;
    all[6].look = reckoning::LookKind::weigh;
    std::set<QString> keys;
    for (const advice::Advice& each : all) keys.insert(lineKey(each));
    EXPECT_EQ(keys.size(), all.size());
    advice::Advice later = all[2];
    later.on += std::chrono::days{3};
    later.text = "with other figures";
    EXPECT_EQ(lineKey(later), lineKey(all[2]));
}

TEST_F(DueDone, TheFirstLineIsNotDoneTwiceByItsKeys)
{
    estimates_ = tests::sampleReckoning(); // the one line is a sump to be drained
    openSample();
    ASSERT_TRUE(current());
    estimatesTake_ = aWhile;
    ASSERT_TRUE(dueAct(household(), desk().due()->lines().front())) << "the first line writes at one click";
    const auto before = entries();
    desk().doFirstDue();
    const auto once = entries();
    EXPECT_GT(once, before);
    desk().doFirstDue();
    EXPECT_EQ(entries(), once);
}

TEST_F(DueDone, ALineWhoseWriteFailedCanBeDoneAgain)
{
    openSample();
    ASSERT_TRUE(current());
    const QString line = lineThat(true);
    {
        auto lock = tests::OtherProcess::holdingLock(path(QStringLiteral("mill.tierloam")));
        click(buttonOf(line, "dueButton"));
        household().finishWrites();
    }
    settled();
    ASSERT_TRUE(household().reckoningIsCurrent());
    EXPECT_TRUE(buttonOf(line, "dueButton")->isEnabled());
}

TEST_F(DueDone, ALineThatOpensAFormDoesNotRest)
{
    openSample();
    ASSERT_TRUE(current());
    estimatesTake_ = aWhile;
    household().record(feeding(), QStringLiteral("a feeding"));
    settled();
    ASSERT_FALSE(household().reckoningIsCurrent());
    const QString line = lineThat(false);
    click(buttonOf(line, "dueButton"));
    settled();
    desk().showPage(Desk::Page::trends); // the form that has just been opened is left
    settled();
    ASSERT_FALSE(household().reckoningIsCurrent());
    EXPECT_TRUE(buttonOf(line, "dueButton")->isEnabled()) << "nothing has been written down";
}

/// What was kept from days ago may advise what has been done since.
TEST_F(DueDone, LinesOfOldEstimatesRestWhereTheStackHasEntriesSince)
{
    const auto old = std::make_shared<reckoning::Reckoning>(*estimates_);
    old->asOf -= std::chrono::days{10};
    estimates_ = old;
    openSample();
    settled();
    const auto journal = household().journal();
    const auto entriesSince = [&](const std::string& stack) {
        return std::ranges::any_of(journal->entries, [&](const journal::Entry& entry) { return entry.stack == stack && entry.date.day > old->asOf; });
    };
    int resting = 0;
    for (const QPushButton* each : buttons("dueButton")) {
        const QString line = each->property("line").toString();
        const bool since = entriesSince(line.section(u'/', 0, 0).toStdString());
        EXPECT_EQ(each->isEnabled(), !since) << line.toStdString();
        resting += since ? 1 : 0;
    }
    EXPECT_GE(resting, 1);
}

TEST_F(DueDone, TheFocusStaysOnTheButtonItWasOnWhenTheListIsMadeAnew)
{
    openSample();
    ASSERT_TRUE(current());
    int round = 0;
    const auto changed = [&] {
        household().keep(QStringLiteral("anything"), QString::number(++round), QStringLiteral("a setting"));
        household().finishWrites();
        settled();
    };
    for (const char* name : {"dueButton", "dueWhy", "dueLater", "dueOther"}) {
        QStringList lines;
        for (const QPushButton* each : buttons(name))
            if (each->isEnabled()) lines << each->property("line").toString();
        ASSERT_FALSE(lines.isEmpty()) << name;
        for (const QString& line : std::as_const(lines)) {
            buttonOf(line, name)->setFocus();
            const QString before = focused();
            changed();
            EXPECT_EQ(focused(), before);
        }
    }
}

/// Whoever works by keys stays where they were, and a key pressed once too often does nothing that was not meant.
TEST_F(DueDone, AfterADeedTheFocusWaitsAtWhyOfItsLineOrOfTheNext)
{
    openSample();
    ASSERT_TRUE(current());
    const QString line = lineThat(true);
    estimatesTake_ = aWhile;
    buttonOf(line, "dueButton")->setFocus();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    settled();
    EXPECT_EQ(focused(), QStringLiteral("dueWhy ") + line);
    ASSERT_TRUE(current());
    EXPECT_EQ(focused(), QStringLiteral("dueWhy ") + line);
    const int lines = desk().due()->count();
    buttonOf(line, "dueLater")->setFocus();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    household().finishWrites();
    settled();
    EXPECT_EQ(desk().due()->count(), lines - 1);
    EXPECT_TRUE(focused().startsWith(QStringLiteral("dueWhy "))) << focused().toStdString();
}

/// A note that it is done, and the line told no more for a while: one undo takes back both.
TEST_F(DueDone, DoneIsOneStep)
{
    openSample();
    ASSERT_TRUE(current());
    QPushButton* done = nullptr;
    for (QPushButton* each : buttons("dueDone"))
        if (buttonOf(each->property("line").toString(), "dueLater")->isEnabled()) done = each; // what is urgent is told all the same
    ASSERT_NE(done, nullptr);
    const auto before = entries();
    const int steps = household().undoStack()->count();
    const int lines = desk().due()->count();
    click(done);
    ASSERT_TRUE(written(before + 1));
    settled();
    EXPECT_EQ(desk().due()->count(), lines - 1);
    EXPECT_EQ(household().undoStack()->count(), steps + 1);
    household().undoStack()->undo();
    ASSERT_TRUE(written(before));
    settled();
    EXPECT_EQ(desk().due()->count(), lines);
    EXPECT_TRUE(household().kept(store::settingPutOff).isEmpty());
}

TEST_F(DueDone, TheCalendarIsNotWrittenFromEstimatesBeforeIt)
{
    openSample();
    ASSERT_TRUE(current());
    const QString ics = path(QStringLiteral("year.ics"));
    estimatesTake_ = aWhile;
    click(buttonOf(lineThat(true), "dueButton"));
    EXPECT_FALSE(window_->exportCalendar(ics));
    EXPECT_TRUE(notices().join(u'\n').contains(QStringLiteral("estimates are still being made"))) << notices().join(u'|').toStdString();
    EXPECT_FALSE(QFile::exists(ics));
    ASSERT_TRUE(current());
    EXPECT_TRUE(window_->exportCalendar(ics));
}

}
}
