// What the due list says of the record itself, and where its buttons lead.
#include "tests/ui/window_fixture.h"

#include "ui/window/due_line.h"
#include "ui/forms/action_form.h"
#include "ui/forms/entry_editor.h"
#include "ui/forms/form_shell.h"
#include "ui/shelf/form_host.h"

namespace tierloam::window {
namespace {

class OddRecordTest : public WindowTest {
protected:
    void SetUp() override
    {
        WindowTest::SetUp();
        // Some entry of the sample is said to be odd; which one does not matter to where the button leads.
        auto odd = std::make_shared<reckoning::Reckoning>(*tests::sampleReckoning());
        for (auto& stack : odd->stacks) {
            if (stack.name != "Scullery") continue;
            stack.disagreements.push_back({oddEntry, missed, reckoning::LookKind::weigh, 0, 0.9, {0.2, 0.35, 0.52}});
            reckoning::UnwrittenGuess guess;
            guess.from = guess.to = missed;
            guess.feedings = 1;
            guess.probability = 0.82;
            guess.kgEach = 0.62;
            guess.material = "coffee grounds";
            guess.days = {missed};
            stack.unwritten.push_back(guess);
        }
        estimates_ = odd;
    }

    QPushButton* lineButton(bool unwritten)
    {
        const auto& lines = desk().due()->lines();
        const auto line = std::ranges::find_if(lines, [&](const advice::Advice& each) { return each.stack == "Scullery" && each.code == advice::Code::recordDisagrees && each.unwritten.has_value() == unwritten; });
        const QString key = line != lines.end() ? lineKey(*line) : QStringLiteral("nowhere");
        for (auto* each : desk().due()->findChildren<QPushButton*>(QStringLiteral("dueButton"))) {
            if (each->isVisible() && each->property("line").toString() == key) return each;
        }
        ADD_FAILURE() << "no line " << key.toStdString();
        return nullptr;
    }

    static constexpr std::int64_t oddEntry = 3;
    const Day missed = tests::sampleToday() - std::chrono::days{12};
};

TEST_F(OddRecordTest, AnUnwrittenFeedingIsFilledInAndAddedWithOneMoreClick)
{
    openSample();
    const std::size_t before = entries();
    QPushButton* write = lineButton(true);
    ASSERT_NE(write, nullptr);
    EXPECT_EQ(write->text(), QStringLiteral("Write"));
    EXPECT_TRUE(write->accessibleName().contains(QStringLiteral("not to have been written down (82"))) << write->accessibleName().toStdString();
    click(write);
    EXPECT_EQ(desk().page(), Desk::Page::shelf);
    auto* form = qobject_cast<forms::ActionForm*>(desk().shelf()->host()->content());
    ASSERT_NE(form, nullptr);
    EXPECT_EQ(form->kind(), forms::FormKind::feed);
    EXPECT_EQ(form->stack(), QStringLiteral("Scullery"));
    EXPECT_FALSE(form->touched()) << "a stray click may close it";
    EXPECT_EQ(entries(), before) << "nothing is written before it is accepted";
    settle();
    click(form->findChild<forms::FormShell*>()->acceptButton());
    ASSERT_TRUE(QTest::qWaitFor([&] { return entries() > before && household().journal()->pending.empty(); }, patience));
    int found = 0;
    for (const journal::Entry& entry : household().journal()->entries) {
        if (const auto* feed = std::get_if<journal::Feed>(&entry.action); feed && entry.stack == "Scullery" && entry.date.day == missed) {
            EXPECT_EQ(feed->food, (Amount{620, Unit::g}));
            EXPECT_EQ(feed->material, "coffee grounds");
            ++found;
        }
    }
    EXPECT_EQ(found, 1);
}

TEST_F(OddRecordTest, ADisagreementLeadsToItsEntryInTheJournal)
{
    openSample();
    const std::size_t before = entries();
    QPushButton* check = lineButton(false);
    ASSERT_NE(check, nullptr);
    EXPECT_EQ(check->text(), QStringLiteral("Check"));
    click(check);
    EXPECT_EQ(desk().page(), Desk::Page::journal);
    EXPECT_EQ(desk().journal()->chosen(), std::vector{journal::EntryId{oddEntry}});
    auto* editor = desk().journal()->findChild<forms::EntryEditor*>();
    ASSERT_NE(editor, nullptr);
    EXPECT_EQ(editor->entry(), journal::EntryId{oddEntry});
    EXPECT_EQ(entries(), before);
}

TEST_F(OddRecordTest, ABedThatTheSetUpDoesNotLetExpectLeadsToTheUsualTemperature)
{
    auto odd = std::make_shared<reckoning::Reckoning>(*estimates_);
    for (auto& stack : odd->stacks) {
        if (stack.name != "Scullery") continue;
        stack.unwritten.clear();
        stack.disagreements = {{oddEntry, missed, reckoning::LookKind::bedTemperature, 0, 9.0, {17, 19, 22}}};
        stack.record.lastBedRead = missed;
        stack.record.bedReadC = 9.0;
        stack.record.bedReadUnder = missed - std::chrono::days{5};
    }
    estimates_ = odd;
    openSample();
    QPushButton* correct = lineButton(false);
    ASSERT_NE(correct, nullptr);
    EXPECT_EQ(correct->text(), QStringLiteral("Correct"));
    click(correct);
    settle();
    EXPECT_EQ(desk().page(), Desk::Page::shelf);
    auto* form = qobject_cast<forms::ActionForm*>(desk().shelf()->host()->content());
    ASSERT_NE(form, nullptr);
    EXPECT_EQ(form->kind(), forms::FormKind::setup);
    EXPECT_EQ(form->stack(), QStringLiteral("Scullery"));
    ASSERT_NE(QApplication::focusWidget(), nullptr);
    EXPECT_TRUE(QApplication::focusWidget()->accessibleName().contains(QStringLiteral("Usual bed temperature"))) << QApplication::focusWidget()->accessibleName().toStdString();
}

TEST_F(OddRecordTest, AnEntryThatIsGoneOpensNoOther)
{
    openSample();
    press("Ctrl+4");
    desk().journal()->choose(journal::EntryId{oddEntry + 1});
    Q_EMIT desk().due()->act([] {
        advice::Advice gone;
        gone.stack = "Scullery";
        gone.code = advice::Code::recordDisagrees;
        gone.entry = 999'999;
        return gone;
    }());
    settle();
    EXPECT_EQ(desk().page(), Desk::Page::journal);
    EXPECT_EQ(desk().journal()->findChild<forms::EntryEditor*>(), nullptr);
}

}
}
