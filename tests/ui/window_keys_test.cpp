// Each button of the shelf and the due list has a key of its own, which does on the chosen stack or in the line with the focus what a click does.
#include "tests/ui/window_fixture.h"

#include "ui/common/actions.h"
#include "ui/forms/action_form.h"
#include "ui/shelf/form_host.h"

#include <set>

namespace tierloam::window {
namespace {

class Keys : public WindowTest {
protected:
    /// One that wants food and bears less than is usual, one that is too warm: lines with every kind of button.
    void SetUp() override
    {
        auto busy = std::make_shared<reckoning::Reckoning>(*tests::sampleReckoning());
        for (reckoning::StackReckoning& each : busy->stacks) {
            if (each.name == "Scullery") {
                each.record.lastFeed = tests::sampleToday() - std::chrono::days{9};
                each.forecast.feedHighKg = each.forecast.feedNowKg = 0.2;
            } else {
                each.now.binTempC = {31, 32, 33};
            }
        }
        estimates_ = busy;
        WindowTest::SetUp();
    }
    QPushButton* of(const char* name, advice::Code code, int which = 0)
    {
        const QString of = u'/' % QString::number(static_cast<int>(code)); // the tray follows, where it is of one
        for (auto* each : desk().due()->findChildren<QPushButton*>(QString::fromLatin1(name)))
            if (each->isVisible() && QString{each->property("line").toString() % u'/'}.contains(QString{of % u'/'}) && which-- == 0) return each;
        return nullptr;
    }
    /// Puts the focus on "Why" of that line, or of its second.
    void goTo(advice::Code code)
    {
        ASSERT_TRUE(QTest::qWaitFor([&] { return household().reckoningIsCurrent(); }, patience)); // the list is not built anew in between
        settled();
        auto* why = of("dueWhy", code);
        QString told;
        for (const advice::Advice& each : desk().due()->lines()) told += QString::fromStdString(each.stack + ": " + each.text + "\n");
        ASSERT_NE(why, nullptr) << told.toStdString();
        why->setFocus();
        ASSERT_TRUE(why->hasFocus());
    }
};

TEST_F(Keys, EachButtonOfShelfAndDueListHasOne)
{
    openSample();
    std::set<QString> seen;
    for (QWidget* place : {static_cast<QWidget*>(desk().shelf()), static_cast<QWidget*>(desk().due())})
        for (const auto* each : place->findChildren<QPushButton*>()) {
            if (!each->isVisible()) continue;
            seen.insert(each->objectName());
            const QString key = ui::keyOf(*each).toString(QKeySequence::NativeText);
            EXPECT_FALSE(key.isEmpty()) << each->objectName().toStdString() << " " << each->text().toStdString();
            if (!each->isEnabled()) continue;
            EXPECT_TRUE(each->toolTip().endsWith(QString{u'(' % key % u')'})) << each->objectName().toStdString() << ": " << each->toolTip().toStdString();
        }
    for (const char* name : {"feedButton", "borneButton", "coverButton", "waterButton", "drainButton", "moreButton", "todayButton", "dueButton", "dueOther", "dueAnswer", "dueDone", "dueWhy", "dueLater"})
        EXPECT_TRUE(seen.contains(QString::fromLatin1(name))) << name;
}

TEST_F(Keys, WhatIsBorneIsFedByItsKey)
{
    openSample();
    const std::size_t before = entries();
    desk().shelf()->chooseStack(QStringLiteral("Scullery"));
    desk().shelf()->board()->column("Scullery")->canvas()->setFocus();
    press("Shift+L");
    ASSERT_TRUE(written(before + 2)) << "with its cover";
    const auto journal = household().journal();
    const auto fed = std::find_if(journal->entries.rbegin(), journal->entries.rend(), [](const journal::Entry& each) { return std::holds_alternative<journal::Feed>(each.action); });
    EXPECT_EQ(std::get<journal::Feed>(fed->action).food, (Amount{200, Unit::g}));
    EXPECT_EQ(fed->stack, "Scullery");
}

TEST_F(Keys, ALineWithTheFocusIsExplainedAnsweredAndPutOff)
{
    openSample();
    const std::size_t before = entries();
    goTo(advice::Code::heat);
    press("W");
    EXPECT_NE(desk().due()->findChild<QLabel*>(QStringLiteral("dueReasons")), nullptr);
    goTo(advice::Code::heat);
    const QString third = of("dueAnswer", advice::Code::heat, 2)->text();
    press("3");
    ASSERT_TRUE(written(before + 1));
    const auto* read = std::get_if<journal::Reading>(&household().journal()->entries.back().action);
    ASSERT_NE(read, nullptr);
    EXPECT_TRUE(third.startsWith(QString::number(std::lround(read->bin->base())))) << third.toStdString();
    const int lines = desk().due()->count();
    goTo(advice::Code::feedDue);
    press("P");
    EXPECT_TRUE(QTest::qWaitFor([&] { return desk().due()->count() == lines - 1; }, patience));
    EXPECT_EQ(entries(), before + 1);
    press("A");
    EXPECT_TRUE(QTest::qWaitFor([&] { return desk().due()->count() == lines; }, patience)) << "what was put off is shown again";
}

TEST_F(Keys, ALineWithTheFocusIsDoneNotedOrOpensItsForm)
{
    openSample();
    const std::size_t before = entries();
    goTo(advice::Code::feedDue);
    press("D");
    ASSERT_TRUE(written(before + 2)) << "food and cover";
    goTo(advice::Code::heat);
    press("N");
    ASSERT_TRUE(written(before + 3));
    EXPECT_TRUE(std::holds_alternative<journal::Note>(household().journal()->entries.back().action));
    desk().shelf()->setFocus();
    press("P");
    EXPECT_EQ(entries(), before + 3) << "no line has the focus";
}

TEST_F(Keys, ADotOpensTheFormOfTheLine)
{
    openSample();
    goTo(advice::Code::feedDue);
    press(".");
    const auto* form = qobject_cast<forms::ActionForm*>(desk().shelf()->host()->content());
    ASSERT_NE(form, nullptr);
    EXPECT_EQ(form->kind(), forms::FormKind::feed);
}

}
}
