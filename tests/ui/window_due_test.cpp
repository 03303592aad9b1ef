// The due list: put off, brought back, and why.
#include "tests/ui/window_fixture.h"

#include "core/household/stack_order.h"
#include "core/store/setting_names.h"
#include "ui/common/formats.h"
#include "ui/forms/action_form.h"
#include "ui/window/due_acts.h"

#include <QScrollArea>
#include <QScrollBar>
#include <QSet>

namespace tierloam::window {
namespace {

class Due : public WindowTest {
protected:
    bool shows(int lines)
    {
        return QTest::qWaitFor([&] { return desk().due()->count() == lines; }, patience);
    }
    QPushButton* lineButton(const char* name) { return button(name, desk().due()); }
};

TEST_F(Due, ALineIsPutOffByOneClickAndBroughtBackByUndo)
{
    openSample();
    const int before = desk().due()->count();
    ASSERT_GE(before, 1);
    QPushButton* later = nullptr;
    for (auto* each : desk().due()->findChildren<QPushButton*>(QStringLiteral("dueLater")))
        if (each->isVisible() && each->isEnabled() && later == nullptr) later = each;
    ASSERT_NE(later, nullptr);
    EXPECT_FALSE(later->accessibleName().isEmpty());
    click(later);
    EXPECT_TRUE(shows(before - 1));
    EXPECT_TRUE(button("dueAgain", desk().due())->text().contains(u'1'));
    household().finishWrites();
    household().undoStack()->undo();
    EXPECT_TRUE(shows(before));
}

TEST_F(Due, WhatWasPutOffIsShownAgainOnDemand)
{
    openSample();
    const int before = desk().due()->count();
    for (auto* each : desk().due()->findChildren<QPushButton*>(QStringLiteral("dueLater")))
        if (each->isVisible() && each->isEnabled()) {
            click(each);
            break;
        }
    ASSERT_TRUE(shows(before - 1));
    click(button("dueAgain", desk().due()));
    EXPECT_TRUE(shows(before));
}

/// By stacks as people put them; of a stack what presses most, and of that the soonest.
TEST_F(Due, LinesStandInTheOrderOfStacksThenByWhatPresses)
{
    auto changed = std::make_shared<reckoning::Reckoning>(*tests::sampleReckoning());
    for (reckoning::StackReckoning& each : changed->stacks) {
        each.record.lastFeed = tests::sampleToday() - std::chrono::days{5}; // due in two days
        each.forecast.roomTopTrayFreshKg = 3.0;
        each.forecast.topTrayFullOn.p50 = tests::sampleToday() + std::chrono::days{1};
        each.history[each.history.size() - 2].ahead.emplace().topTrayFullOn.p50 = tests::sampleToday(); // of the evening before
        each.now.binTempC = {31, 32, 34};
    }
    estimates_ = changed;
    openSample();
    const auto inOrderOf = [this](const std::vector<std::string>& stacks) {
        const auto& lines = desk().due()->lines();
        const auto place = [&](const advice::Advice& line) { return std::ranges::find(stacks, line.stack) - stacks.begin(); };
        return std::ranges::is_sorted(lines, [&](const advice::Advice& a, const advice::Advice& b) {
            if (place(a) != place(b)) return place(a) < place(b);
            return a.severity != b.severity ? a.severity > b.severity : a.on < b.on;
        });
    };
    // As they are painted, from above: each stack once, however many of its lines are in sight.
    const auto painted = [this] {
        settled();
        std::vector<std::pair<int, std::string>> lines;
        for (const auto* button : desk().due()->findChildren<QPushButton*>(QStringLiteral("dueButton")))
            if (button->isVisible()) lines.emplace_back(button->mapTo(desk().due(), QPoint{}).y(), button->property("line").toString().section(u'/', 0, 0).toStdString());
        std::ranges::sort(lines);
        std::vector<std::string> stacks;
        for (const auto& [y, stack] : lines)
            if (stacks.empty() || stacks.back() != stack) stacks.push_back(stack);
        return stacks;
    };
    ASSERT_GE(desk().due()->count(), 8);
    EXPECT_EQ(painted(), (std::vector<std::string>{"Scullery", "Lean-to", "Cellar"}));
    EXPECT_TRUE(inOrderOf({"Scullery", "Lean-to", "Cellar"}));
    EXPECT_FALSE(inOrderOf({"Cellar", "Lean-to", "Scullery"})) << "another order would be seen";
    household().keep(store::settingStackOrder, household::orderText({"Cellar", "Lean-to", "Scullery"}), QStringLiteral("order"));
    EXPECT_TRUE(QTest::qWaitFor([&] { return inOrderOf({"Cellar", "Lean-to", "Scullery"}); }, patience));
    EXPECT_EQ(painted(), (std::vector<std::string>{"Cellar", "Lean-to", "Scullery"}));
}

TEST_F(Due, WhySaysTheRuleAndWhatFollows)
{
    openSample();
    click(lineButton("dueWhy"));
    settle();
    auto* reasons = desk().due()->findChild<QLabel*>(QStringLiteral("dueReasons"));
    ASSERT_NE(reasons, nullptr);
    const auto code = desk().due()->lines().front().code;
    EXPECT_TRUE(reasons->text().contains(ui::unbroken(QString::fromStdString(advice::ruleOf(code)))));
    EXPECT_TRUE(reasons->text().contains(ui::unbroken(QString::fromStdString(advice::ifLeft(code)))));
}

/// One act a code that asks nothing; the others open a form.
TEST_F(Due, OneClickWritesWhatNeedsNoAnswerAndUndoTakesItBack)
{
    openSample();
    using advice::Code;
    const auto piece = [](Code code, double kg, double litres) {
        advice::Advice made;
        made.stack = "Scullery";
        made.code = code;
        made.kg = kg;
        made.litres = litres;
        return made;
    };
    struct Case { advice::Advice advice; std::string_view action; std::size_t entries; };
    const std::vector<Case> cases = {{piece(Code::feedDue, 0.123, 0), "feed", 2}, {piece(Code::hungry, 0.4, 0), "feed", 2}, {piece(Code::tooDry, 0, 0.3), "water", 1},
                                     {piece(Code::tooWet, 0, 0), "cover", 1},     {piece(Code::lowCarbon, 0.06, 0), "cover", 1}, {piece(Code::sumpFull, 0, 0), "drain", 1}};
    for (const Case& each : cases) {
        const auto before = household().journal()->entries.size();
        Q_EMIT desk().due()->act(each.advice);
        settle();
        household().finishWrites();
        const auto journal = household().journal();
        ASSERT_EQ(journal->entries.size(), before + each.entries) << each.action;
        const auto written = std::find_if(journal->entries.rbegin(), journal->entries.rend(), [&](const journal::Entry& entry) { return journal::actionName(entry.action) == each.action; });
        ASSERT_NE(written, journal->entries.rend());
        EXPECT_EQ(written->stack, "Scullery");
        EXPECT_EQ(written->date.day, household().today());
        if (const auto* fed = std::get_if<journal::Feed>(&written->action); fed != nullptr && each.advice.code == Code::feedDue) {
            EXPECT_EQ(fed->food, (Amount{120, Unit::g})) << "a limit is rounded downwards";
        }
        if (const auto* watered = std::get_if<journal::Water>(&written->action)) {
            EXPECT_EQ(watered->poured, (Amount{300, Unit::mL}));
        }
        household().undoStack()->undo();
        household().finishWrites();
        EXPECT_EQ(household().journal()->entries.size(), before) << "one undo takes all of it back";
    }
    for (const Code code : {Code::lookNext, Code::staleRecord, Code::heat, Code::dryingDone, Code::harvestReady, Code::readyNoHurry}) EXPECT_FALSE(dueAct(household(), piece(code, 0, 0))) << static_cast<int>(code);
}

TEST_F(Due, WhatOneClickWritesCanBeHadWithAForm)
{
    openSample();
    auto* other = desk().due()->findChild<QPushButton*>(QStringLiteral("dueOther"));
    ASSERT_NE(other, nullptr);
    EXPECT_FALSE(other->accessibleName().isEmpty());
    const auto before = household().journal()->entries.size();
    click(other);
    settle();
    EXPECT_NE(desk().shelf()->findChild<forms::ActionForm*>(), nullptr);
    EXPECT_EQ(household().journal()->entries.size(), before);
}

TEST_F(Due, OfVeryManyLinesThoseFarDownAreMadeAsOneScrolls)
{
    estimates_ = tests::sampleReckoning(240);
    openSample();
    settled();
    const auto made = [this] { return static_cast<int>(desk().due()->findChildren<QPushButton*>(QStringLiteral("dueButton")).size()); };
    const int all = desk().due()->count();
    ASSERT_GE(all, 60);
    EXPECT_LE(made(), all / 2) << "a window of 200 stacks would stand still while all are made";
    EXPECT_GE(made(), 10) << "more than are seen";
    QScrollBar* bar = desk().due()->findChild<QScrollArea*>(QStringLiteral("dueScroll"))->verticalScrollBar();
    for (int turn = 0; turn < all && made() < all; ++turn) {
        bar->setValue(bar->maximum());
        settled();
    }
    EXPECT_EQ(made(), all);
    // After a change there are lines again where one was looking.
    Q_EMIT household().reckoned();
    settled();
    EXPECT_EQ(made(), all);
    EXPECT_EQ(desk().due()->count(), all);
}

/// Every line can be reached and read from the keyboard alone, though most are not made when one begins.
TEST_F(Due, HundredsOfLinesAreReachedByArrowKeysAndByTabAlone)
{
    estimates_ = tests::sampleReckoning(240);
    openSample();
    settled();
    const int all = desk().due()->count();
    const auto made = [this] { return static_cast<int>(desk().due()->findChildren<QPushButton*>(QStringLiteral("dueButton")).size()); };
    const auto lineAt = [] { return QApplication::focusWidget() ? QApplication::focusWidget()->property("line").toString() : QString{}; };
    const auto inSight = [this] {
        const QWidget* at = QApplication::focusWidget();
        const QWidget* port = desk().due()->findChild<QScrollArea*>(QStringLiteral("dueScroll"))->viewport();
        return at && QRect{QPoint{}, port->size()}.contains(QRect{at->mapTo(port, QPoint{}), at->size()});
    };
    const auto toList = [this] {
        press("F6");
        settled();
    };
    toList();
    ASSERT_LE(made(), all / 2);
    QStringList met{lineAt()};
    for (int step = 1; step < all + 5; ++step) {
        press("Down");
        settled();
        if (lineAt() == met.back()) break; // the end
        ASSERT_TRUE(inSight()) << step;
        met << lineAt();
    }
    EXPECT_EQ(met.size(), all);
    EXPECT_EQ(QSet<QString>(met.begin(), met.end()).size(), all) << "each once";
    press("Up");
    settled();
    EXPECT_EQ(lineAt(), met[all - 2]);
    press("Home");
    settled();
    EXPECT_EQ(lineAt(), met.front());
    EXPECT_TRUE(inSight());

    estimates_ = tests::sampleReckoning(240);
    make();
    ASSERT_TRUE(window_->openFile(path(QStringLiteral("mill.tierloam"))));
    show();
    ASSERT_TRUE(QTest::qWaitFor([this] { return household().reckoning() != nullptr; }, patience));
    settled();
    toList();
    ASSERT_LE(made(), all / 2);
    press("End");
    settled();
    EXPECT_EQ(lineAt(), met.back());
    EXPECT_TRUE(inSight());

    make();
    ASSERT_TRUE(window_->openFile(path(QStringLiteral("mill.tierloam"))));
    show();
    ASSERT_TRUE(QTest::qWaitFor([this] { return household().reckoning() != nullptr; }, patience));
    settled();
    toList();
    ASSERT_LE(made(), all / 2);
    QSet<QString> tabbed;
    for (int presses = 0; presses < 12 * all && desk().due()->isAncestorOf(QApplication::focusWidget()); ++presses) {
        if (QApplication::focusWidget()->objectName() == QLatin1StringView{"dueButton"}) tabbed << lineAt();
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
        settle();
    }
    EXPECT_EQ(tabbed.size(), all);
}

TEST_F(Due, TheCalendarIsWrittenFromTheWindow)
{
    openSample();
    const QString ics = path(QStringLiteral("year.ics"));
    ASSERT_TRUE(window_->exportCalendar(ics));
    QFile file{ics};
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QByteArray bytes = file.readAll();
    EXPECT_TRUE(bytes.startsWith("BEGIN:VCALENDAR\r\n"));
    EXPECT_GE(bytes.count("BEGIN:VEVENT"), 1);
    EXPECT_FALSE(window_->exportCalendar(path(QStringLiteral("no/such/folder.ics"))));
}

}
}
