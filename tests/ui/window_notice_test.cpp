// What is due today told on the desktop: only when asked for, at most once a day, also over restarts.
#include "tests/ui/window_fixture.h"

#include "ui/window/desktop_notes.h"
#include "ui/window/due_notice.h"

#include <QSettings>

#include <algorithm>

namespace tierloam::window {
namespace {

class CountedNotes final : public DesktopNotes {
public:
    void show(const QString& title, const QString& text) override { shown << title + u'\n' + text; }
    QStringList shown;
};

class DueOnTheDesktop : public WindowTest {
protected:
    void SetUp() override
    {
        desktop_ = &notes_;
        WindowTest::SetUp();
        settings_ = ui::systemSettings(); // the file itself, as from one start to the next
        make();
    }
    void TearDown() override
    {
        WindowTest::TearDown();
        QSettings{QSettings::IniFormat, QSettings::UserScope, QStringLiteral("tierloam"), QStringLiteral("tierloam")}.clear();
    }
    /// The program again, on a day so many days later, with estimates of that day.
    void startAgain(int daysLater, const char* file = "mill.tierloam")
    {
        window_.reset();
        settings_ = ui::systemSettings();
        today_ = tests::sampleToday() + std::chrono::days{daysLater};
        const auto later = std::make_shared<reckoning::Reckoning>(*estimates_);
        later->asOf = today_;
        for (auto& stack : later->stacks) stack.asOf = today_;
        estimates_ = later;
        make();
        ASSERT_TRUE(window_->openFile(path(QString::fromLatin1(file))));
        show();
        ASSERT_TRUE(QTest::qWaitFor([this] { return household().reckoningIsCurrent(); }, patience));
        settle();
    }
    static bool anyDayKept()
    {
        const QSettings kept{QSettings::IniFormat, QSettings::UserScope, QStringLiteral("tierloam"), QStringLiteral("tierloam")};
        const QStringList keys = kept.allKeys();
        return std::ranges::any_of(keys, [](const QString& key) { return key.startsWith(QStringLiteral("due/toldOn")); });
    }
    QAction* wish() { return window_->action(ui::ActionId::notifyDue); }
    /// Lines of the due list that are told.
    int dueToday()
    {
        return static_cast<int>(std::ranges::count_if(desk().due()->lines(), [&](const advice::Advice& line) { return line.severity != advice::Severity::hint && line.on <= today_; }));
    }
    CountedNotes notes_;
};

TEST_F(DueOnTheDesktop, IsOffUntilItIsAskedFor)
{
    openSample();
    ASSERT_GT(dueToday(), 0) << "or nothing could be told";
    EXPECT_TRUE(wish()->isCheckable());
    EXPECT_FALSE(wish()->isChecked());
    click(desk().due()->findChild<QPushButton*>(QStringLiteral("dueWhy")));
    settle();
    EXPECT_TRUE(notes_.shown.isEmpty());
    startAgain(1);
    ASSERT_GT(dueToday(), 0);
    EXPECT_FALSE(wish()->isChecked());
    EXPECT_TRUE(notes_.shown.isEmpty());
}

TEST_F(DueOnTheDesktop, IsToldOnceADayAndNotAgainAfterAChangeOrARestart)
{
    openSample();
    const int due = dueToday();
    const auto lines = desk().due()->lines();
    const auto first = std::ranges::find_if(lines, [&](const advice::Advice& line) { return line.severity != advice::Severity::hint && line.on <= today_; });
    ASSERT_NE(first, lines.end());
    wish()->trigger();
    ASSERT_EQ(notes_.shown.size(), 1);
    EXPECT_TRUE(notes_.shown.front().startsWith(QString::number(due))) << notes_.shown.front().toStdString();
    EXPECT_TRUE(notes_.shown.front().contains(QString::fromStdString(first->stack) % QStringLiteral(": ") % QString::fromStdString(first->text))) << notes_.shown.front().toStdString();
    click(desk().due()->findChild<QPushButton*>(QStringLiteral("dueWhy")));
    settle();
    EXPECT_EQ(notes_.shown.size(), 1) << "nothing nags twice";
    wish()->trigger();
    EXPECT_FALSE(wish()->isChecked());
    wish()->trigger();
    EXPECT_EQ(notes_.shown.size(), 1);
    startAgain(0);
    EXPECT_TRUE(wish()->isChecked()) << "the wish is kept";
    EXPECT_EQ(notes_.shown.size(), 1) << "and so is the day on which it was told";
    startAgain(1);
    ASSERT_GT(dueToday(), 0);
    EXPECT_EQ(notes_.shown.size(), 2);
    wish()->trigger();
    startAgain(2);
    EXPECT_FALSE(wish()->isChecked());
    EXPECT_EQ(notes_.shown.size(), 2);
}

TEST_F(DueOnTheDesktop, IsToldOfEachHouseholdThatIsOpenedThatDay)
{
    openSample();
    wish()->trigger();
    ASSERT_EQ(notes_.shown.size(), 1);
    EXPECT_TRUE(anyDayKept());
    std::optional<QString> copied;
    household().saveCopy(path(QStringLiteral("second.tierloam")), [&](const QString& why) { copied = why; });
    ASSERT_TRUE(QTest::qWaitFor([&] { return copied.has_value(); }, patience));
    ASSERT_EQ(copied, QString{});
    startAgain(0, "second.tierloam");
    ASSERT_GT(dueToday(), 0);
    EXPECT_EQ(notes_.shown.size(), 2);
    startAgain(0);
    startAgain(0, "second.tierloam");
    EXPECT_EQ(notes_.shown.size(), 2) << "once a day each";
}

TEST_F(DueOnTheDesktop, IsSilentWhenNothingIsDue)
{
    const auto calm = std::make_shared<reckoning::Reckoning>();
    calm->asOf = tests::sampleToday();
    estimates_ = calm;
    wish()->trigger();
    openSample();
    ASSERT_TRUE(wish()->isChecked());
    ASSERT_EQ(dueToday(), 0);
    EXPECT_TRUE(notes_.shown.isEmpty());
    EXPECT_FALSE(anyDayKept()) << "the day is still open for what may come";
    estimates_ = tests::sampleReckoning();
    startAgain(0);
    ASSERT_GT(dueToday(), 0);
    EXPECT_EQ(notes_.shown.size(), 1);
}

TEST_F(DueOnTheDesktop, WaitsForEstimatesOfToday)
{
    const auto yesterdays = std::make_shared<reckoning::Reckoning>(*tests::sampleReckoning());
    yesterdays->asOf = tests::sampleToday() - std::chrono::days{1};
    estimates_ = yesterdays;
    wish()->trigger();
    openSample();
    ASSERT_GT(desk().due()->count(), 0);
    EXPECT_TRUE(notes_.shown.isEmpty());
}

TEST_F(DueOnTheDesktop, LeavesOutWhatWasPutOff)
{
    openSample();
    const int due = dueToday();
    ASSERT_GT(due, 0);
    const auto lines = desk().due()->lines();
    QPushButton* later = nullptr;
    const advice::Advice* off = nullptr;
    const auto buttons = desk().due()->findChildren<QPushButton*>(QStringLiteral("dueLater"));
    ASSERT_EQ(buttons.size(), static_cast<qsizetype>(lines.size()));
    for (qsizetype i = 0; i < buttons.size(); ++i) {
        const advice::Advice& line = lines[static_cast<std::size_t>(i)];
        if (later == nullptr && buttons[i]->isEnabled() && line.severity != advice::Severity::hint && line.on <= today_) {
            later = buttons[i];
            off = &line;
        }
    }
    ASSERT_NE(later, nullptr);
    click(later);
    ASSERT_TRUE(QTest::qWaitFor([&] { return dueToday() == due - 1 && household().reckoningIsCurrent(); }, patience));
    wish()->trigger();
    ASSERT_EQ(notes_.shown.size(), due > 1 ? 1 : 0);
    if (due > 1) {
        EXPECT_FALSE(notes_.shown.front().contains(QString::fromStdString(off->stack) % QStringLiteral(": ") % QString::fromStdString(off->text)));
    }
}

}
}
