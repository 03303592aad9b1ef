#include "tests/ui/forms_fixture.h"
#include "ui/common/formats.h"
#include "ui/forms/new_stack.h"
#include "ui/forms/welcome.h"

#include "core/materials/bedding.h"

#include <QScrollArea>
#include <QScrollBar>
#include <QSignalSpy>

/// The editor of entries, the guided first stack and the first-run page.
namespace tierloam::forms {

namespace {

template <class A>
journal::Entry lastOf(const journal::Entries& entries, const char* stack)
{
    for (auto entry = entries.rbegin(); entry != entries.rend(); ++entry) {
        if (entry->stack == stack && std::holds_alternative<A>(entry->action)) return *entry;
    }
    ADD_FAILURE() << "no such entry";
    return {};
}

journal::Entry byId(const journal::Entries& entries, journal::EntryId id)
{
    return *std::find_if(entries.begin(), entries.end(), [id](const journal::Entry& each) { return each.id == id; });
}

}

class InEitherMeasures : public FormsTest, public testing::WithParamInterface<ui::Measures> {
protected:
    void SetUp() override
    {
        FormsTest::SetUp();
        ui::setMeasures(GetParam());
    }
    void TearDown() override { ui::setMeasures(ui::Measures::metric); }
};

INSTANTIATE_TEST_SUITE_P(Measures, InEitherMeasures, testing::Values(ui::Measures::metric, ui::Measures::us), [](const auto& each) { return each.param == ui::Measures::us ? "us" : "metric"; });

TEST_P(InEitherMeasures, AnEntryOpenedAndSavedIsUnchangedWhateverItsKind)
{
    // One of every action, and of each its leanest and its fullest form, must come back as it was.
    const std::vector<journal::Action> actions{
        journal::Feed{{3, Unit::cup}, "", std::nullopt}, journal::Feed{{1.25, Unit::lb}, "banana peel", journal::Side::back},
        journal::Cover{}, journal::Cover{Amount{2, Unit::oz}, "office paper shredded"}, journal::Water{{0.25, Unit::gal}},
        journal::Routine{{100, Unit::mL}, journal::RoutineOf::water, std::nullopt}, journal::Routine{{0, Unit::g}, journal::RoutineOf::cover, 2},
        journal::Drain{Amount{0, Unit::L}, std::nullopt, std::nullopt, std::nullopt, std::nullopt}, journal::Drain{Amount{1.5, Unit::L}, true, 2.1, 12, journal::Spigot::shut},
        journal::Drain{std::nullopt, std::nullopt, std::nullopt, std::nullopt, journal::Spigot::open},
        journal::Flush{{2, Unit::L}, litres(2.25), 1.5, 3}, journal::Flush{{2, Unit::L}, std::nullopt, std::nullopt, std::nullopt},
        journal::Reading{celsius(21.5), celsius(-3), Share::fromPercent(60), Share::fromPercent(72), 3, 6.8}, journal::Reading{celsius(21.123456), {}, {}, {}, {}, {}},
        journal::Check{centimetres(3), Share::fromPercent(20), Share::fromPercent(25), journal::WormsSeen::few}, journal::Check{centimetres(9), {}, {}, {}}, journal::Check{{}, {}, {}, journal::WormsSeen::many},
        journal::Weigh{{0, Unit::g}, std::nullopt}, journal::Weigh{{1, Unit::kg}, Share::fromPercent(100)}, journal::Count{{14, Unit::count}, litres(0.5)},
        journal::TrayWeight{{5.2, Unit::kg}, kilograms(1.1)}, journal::TrayWeight{{11, Unit::lb}, std::nullopt}, journal::Lid{false}, journal::Lid{true},
        journal::Harvest{{500, Unit::g}, std::nullopt, Share::fromPercent(10)}, journal::Stock{{50, Unit::g}, "", 5}, journal::Stock{{50, Unit::g}, "Eisenia fetida", std::nullopt},
        journal::Bed{{100, Unit::g}, "pine shavings", Share::fromPercent(74)}, journal::Remove{{20, Unit::g}}, journal::Move{{20, Unit::g}, "Cellar"},
        journal::Event{"away", today + std::chrono::days{3}}, journal::Event{"a mouse", std::nullopt}, journal::Note{},
        journal::Setup{std::nullopt, std::nullopt, 4, std::nullopt, std::nullopt, std::nullopt, celsius(17), std::nullopt, std::nullopt},
        journal::OwnMaterial{"beer mash", journal::SofteningClass::coffee, Share::fromPercent(77), 3.1, 15, 600, 3, journal::Welcome::aLittle, journal::Doubt::starch}, journal::OwnMaterial{"straw dust", {}, {}, {}, {}, {}, {}},
    };
    for (const journal::Action& action : actions) {
        journal::Entry entry;
        entry.date = {today, 7 * 60 + 5};
        entry.action = action;
        entry.note = "as it was";
        if (!std::holds_alternative<journal::OwnMaterial>(action)) entry.stack = "Scullery";
        if (std::holds_alternative<journal::Bed>(action) || std::holds_alternative<journal::Harvest>(action)) entry.slot = 2;
        recorded_.clear();
        household().record(entry, QStringLiteral("given"));
        ASSERT_TRUE(QTest::qWaitFor([this] { return !recorded_.empty() || !failures_.isEmpty(); }, patience));
        ASSERT_TRUE(failures_.isEmpty()) << failures_.front().toStdString() << journal::actionName(action);
        const journal::EntryId id = recorded_.front().front();
        const journal::Entry before = byId(entries(), id);
        recorded_.clear();
        edit(id);
        // A change of the note alone forces a write; all else must stay to the bit.
        type(std::holds_alternative<journal::OwnMaterial>(action) ? "Source" : "Note", "looked at");
        pressEnter();
        ASSERT_TRUE(QTest::qWaitFor([this] { return !recorded_.empty() || !problems().isEmpty(); }, patience)) << journal::actionName(action);
        ASSERT_TRUE(finished()) << journal::actionName(action) << ": " << problems().toStdString();
        journal::Entry after = byId(entries(), id);
        EXPECT_EQ(after.note, "looked at");
        after.note = before.note;
        EXPECT_EQ(after, before) << journal::actionName(action);
    }
}

/// An undo, a change of many together, an import or another program, while the editor is open.
class ChangedMeanwhile : public FormsTest {
protected:
    journal::EntryId record(const journal::Action& action)
    {
        journal::Entry entry;
        entry.stack = "Scullery";
        entry.date.day = today;
        entry.action = action;
        household().record(entry, QStringLiteral("given"));
        EXPECT_TRUE(QTest::qWaitFor([this] { return !recorded_.empty(); }, patience));
        return recorded_.front().front();
    }
    void changeElsewhere(journal::EntryId id, double grams)
    {
        journal::Entry now = byId(entries(), id);
        now.action = journal::Feed{{grams, Unit::g}, "", std::nullopt};
        recorded_.clear();
        household().edit(now, QStringLiteral("elsewhere"));
        ASSERT_TRUE(QTest::qWaitFor([this] { return !recorded_.empty(); }, patience));
        recorded_.clear();
    }
    double grams(journal::EntryId id) { return std::get<journal::Feed>(byId(entries(), id).action).food.value; }
    bool saved() { return QTest::qWaitFor([this] { return !recorded_.empty(); }, patience); }
};

TEST_F(ChangedMeanwhile, WhatWasNotTouchedInTheEditorFollows)
{
    const auto id = record(journal::Feed{{300, Unit::g}, "", std::nullopt});
    edit(id);
    changeElsewhere(id, 500);
    type("Note", "looked at");
    pressEnter();
    ASSERT_TRUE(saved()) << problems().toStdString();
    EXPECT_EQ(grams(id), 500) << "the note alone was changed here";
    EXPECT_EQ(byId(entries(), id).note, "looked at");
}

TEST_F(ChangedMeanwhile, WhatWasTypedBeforeStandsBesideIt)
{
    const auto id = record(journal::Feed{{300, Unit::g}, "", std::nullopt});
    edit(id);
    type("Note", "looked at");
    changeElsewhere(id, 500);
    pressEnter();
    ASSERT_TRUE(saved()) << problems().toStdString();
    EXPECT_EQ(grams(id), 500);
    EXPECT_EQ(byId(entries(), id).note, "looked at");
}

TEST_F(ChangedMeanwhile, WhatWasChangedInBothIsSaidBeforeItIsWrittenOver)
{
    const auto id = record(journal::Feed{{300, Unit::g}, "", std::nullopt});
    EntryEditor& editor = edit(id);
    type("Amount", "400");
    changeElsewhere(id, 500);
    editor.save();
    EXPECT_TRUE(shell().problem().contains(QStringLiteral("changed elsewhere"))) << problems().toStdString();
    EXPECT_EQ(grams(id), 500) << "nothing is written before it has been said";
    editor.save();
    ASSERT_TRUE(saved()) << problems().toStdString();
    EXPECT_EQ(grams(id), 400);
}

TEST_F(FormsTest, AnUntouchedEntryIsNotWritten)
{
    const journal::Entry feed = lastOf<journal::Feed>(entries(), "Scullery");
    const int steps = household().undoStack()->count();
    edit(feed.id);
    pressEnter();
    EXPECT_TRUE(finished());
    household().finishWrites();
    QCoreApplication::processEvents();
    EXPECT_EQ(household().undoStack()->count(), steps);
}

TEST_F(FormsTest, EditChangesAmountAndDayAsOneStep)
{
    const journal::Entry feed = lastOf<journal::Feed>(entries(), "Scullery");
    const int steps = household().undoStack()->index();
    edit(feed.id);
    type("Amount", "275");
    type("Date", "2031-05-02");
    pressEnter();
    ASSERT_TRUE(QTest::qWaitFor([this] { return finished(); }, patience)) << problems().toStdString();
    const journal::Entry now = byId(entries(), feed.id);
    EXPECT_EQ(std::get<journal::Feed>(now.action).food.value, 275);
    EXPECT_EQ(now.date.day, today);
    EXPECT_EQ(household().undoStack()->index(), steps + 1);
}

TEST_F(FormsTest, AnEditThatMakesALaterStepImpossibleIsRefusedAndNamesIt)
{
    // The rotation in the cellar cannot go before its trays were bedded.
    const journal::Entry rotate = lastOf<journal::Rotate>(entries(), "Cellar");
    edit(rotate.id);
    type("Date", "2030-01-01");
    pressEnter();
    EXPECT_FALSE(shell().problem().isEmpty());
    EXPECT_FALSE(finished());
    EXPECT_EQ(byId(entries(), rotate.id).date, rotate.date);
}

TEST_F(FormsTest, AnEditThatMovesLaterEntriesSaysSoBefore)
{
    // Taking the rotation half a month back makes later feedings fall to another tray than before, or leaves them where they are; what
    // the household says of it is what the editor shows.
    const journal::Entry rotate = lastOf<journal::Rotate>(entries(), "Cellar");
    journal::Entry earlier = rotate;
    earlier.date.day = today - std::chrono::days{30};
    earlier.positionInDay = 0;
    journal::Edit asked;
    asked.replaced.push_back(earlier);
    ASSERT_TRUE(household().refusalOf(asked).isEmpty()) << household().refusalOf(asked).toStdString();
    const bool moves = !household().movedBy(asked).empty();
    edit(rotate.id);
    type("Date", "2031-04-02");
    QCoreApplication::processEvents();
    ASSERT_TRUE(QTest::qWaitFor([&] { return shell().effect().contains(QStringLiteral("another batch")) == moves; }, patience)) << shell().effect().toStdString();
}

TEST_F(FormsTest, DeleteTakesOutAndUndoBringsBack)
{
    const journal::Entry feed = lastOf<journal::Feed>(entries(), "Lean-to");
    edit(feed.id);
    click("delete");
    ASSERT_TRUE(QTest::qWaitFor([this] { return finished(); }, patience)) << problems().toStdString();
    const auto has = [&] {
        const auto now = entries();
        return std::any_of(now.begin(), now.end(), [&](const journal::Entry& each) { return each.id == feed.id; });
    };
    EXPECT_FALSE(has());
    household().undoStack()->undo();
    EXPECT_TRUE(QTest::qWaitFor(has, patience));
}

TEST_F(FormsTest, DeletingWhatALaterEntryRestsOnIsRefused)
{
    journal::Entry bed;
    for (const journal::Entry& entry : entries()) {
        if (entry.stack == "Lean-to" && std::holds_alternative<journal::Setup>(entry.action)) bed = entry;
    }
    edit(bed.id);
    click("delete");
    EXPECT_FALSE(shell().problem().isEmpty());
    EXPECT_FALSE(finished());
}

TEST_F(FormsTest, AnEntryThatIsGoneIsSaid)
{
    EntryEditor& editor = edit(journal::EntryId{987654});
    EXPECT_NE(editor.findChild<QLabel*>(), nullptr);
    EXPECT_EQ(editor.findChild<FormShell*>(), nullptr);
}

class NewStackTest : public FormsTest {
protected:
    NewStack& start() { return show(new NewStack{household()}, 520); }
};

TEST_F(NewStackTest, ANewcomerNeedsANameTheWormsAndEnter)
{
    NewStack& form = start();
    QSignalSpy started{&form, &NewStack::started};
    const int steps = household().undoStack()->index();
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("Balcony"));
    type("Worms put in", "250");
    const auto made = record();
    ASSERT_EQ(made.size(), 3u);
    const auto& setup = std::get<journal::Setup>(made[0].action);
    EXPECT_EQ(setup.area, squareMetres(0.16));
    EXPECT_EQ(setup.trays, 3);
    EXPECT_EQ(setup.spigot, journal::Spigot::open);
    EXPECT_EQ(std::get<journal::Stock>(made[2].action), (journal::Stock{{250, Unit::g}, "", std::nullopt}));
    EXPECT_EQ(household().undoStack()->index(), steps + 1) << "one step";
    ASSERT_EQ(started.count(), 1);
    EXPECT_EQ(started.front().front().toString(), u"Balcony");
    EXPECT_EQ(household().journal()->replay.stack("Balcony")->on(today)->trays(), 1);
    household().undoStack()->undo();
    EXPECT_TRUE(QTest::qWaitFor([this] { return !household().journal()->replay.stack("Balcony"); }, patience));
}

TEST_F(NewStackTest, HasFewerThanTwentyInputs)
{
    NewStack& form = start();
    int inputs = 0;
    for (const ui::Field* each : form.findChildren<ui::Field*>()) inputs += each->isVisible() ? 1 : 0;
    EXPECT_LT(inputs + 1, 20) << "the button included";
    EXPECT_GT(inputs, 10);
}

// With the button of the welcome page these are the inputs that DEVELOPERS.md counts.
TEST_F(NewStackTest, FourInputsMakeAStackWithWormsAndItsFirstFeeding)
{
    start();
    int inputs = 0;
    for (const auto& [name, text] : {std::pair{"Name", "Porch"}, {"Worms put in", "250"}, {"First feeding", "80"}}) {
        type(name, text);
        ++inputs;
    }
    const auto made = record(); // Enter
    ++inputs;
    ASSERT_EQ(made.size(), 4u) << "set up, bedded, stocked, fed; the rest is proposed";
    EXPECT_EQ(std::get<journal::Feed>(made.back().action).food, (Amount{80, Unit::g}));
    EXPECT_EQ(inputs, 4);
}

// 0.16 m² carry 0.8 kg at most: the upper end of the crowding that halves the greatest mass in the model's table, 5 kg/m².
TEST_F(NewStackTest, MoreWormsThanATrayCanCarryIsSaidToBeLookedAtAgainAndStoodByWithASecondPress)
{
    start();
    type("Name", "Porch");
    auto* doubt = window().findChild<QLabel*>(QStringLiteral("formDoubt"));
    type("Worms put in", "790");
    EXPECT_FALSE(doubt->isVisible());
    type("Worms put in", "4500");
    giveItsHeight();
    EXPECT_TRUE(doubt->isVisible());
    for (const QString& part : {QStringLiteral("Look again"), ui::amountText({4500, Unit::g}), ui::massText(0.8)}) EXPECT_TRUE(doubt->text().contains(part)) << doubt->text().toStdString();
    EXPECT_EQ(shell().acceptButton()->accessibleDescription(), doubt->text()) << "who does not see it hears it at the button";
    click("accept");
    EXPECT_TRUE(recorded_.empty());
    EXPECT_TRUE(shell().problem().contains(QStringLiteral("once more"))) << shell().problem().toStdString();
    // Put right, one press is enough.
    type("Worms put in", "450");
    EXPECT_FALSE(doubt->isVisible());
    EXPECT_TRUE(shell().problem().isEmpty());
    type("Worms put in", "4500");
    click("accept");
    EXPECT_TRUE(recorded_.empty()) << "it is asked again";
    click("accept");
    ASSERT_TRUE(QTest::qWaitFor([this] { return !recorded_.empty(); }, patience)) << "whoever means it is not held up";
}

TEST_F(NewStackTest, FoodAndBeddingThatNoTrayHoldsAreDoubtedToo)
{
    start();
    auto* doubt = window().findChild<QLabel*>(QStringLiteral("formDoubt"));
    type("First feeding", "80");
    EXPECT_FALSE(doubt->isVisible());
    type("First feeding", "80000");
    EXPECT_TRUE(doubt->text().contains(QStringLiteral("of food"))) << doubt->text().toStdString();
    type("First feeding", "80");
    type("Amount, dry", "20000");
    EXPECT_TRUE(doubt->text().contains(QStringLiteral("of bedding"))) << doubt->text().toStdString();
}

TEST_F(NewStackTest, SaysHowMuchBeddingAndWaterAndFollowsTheTray)
{
    start();
    type("Name", "Porch");
    const auto* board = household().journal()->materials.find("corrugated cardboard shredded");
    const auto need = materials::beddingForTray(squareMetres(0.16), centimetres(5), *board);
    const auto grams = [this] { return static_cast<QLineEdit*>(field("Amount, dry")->focusProxy())->text().toDouble(); };
    EXPECT_NEAR(grams(), need.asItComes.base() * 1000, 5.0);
    EXPECT_NE(shell().effect().indexOf(QStringLiteral("water")), -1);
    const double before = grams();
    type("Depth once laid", "2.5");
    EXPECT_NEAR(grams(), before / 2, 6.0);
    type("Amount, dry", "333");
    type("Depth once laid", "4");
    EXPECT_EQ(grams(), 333) << "what was weighed stays";
    const auto made = record();
    ASSERT_EQ(made.size(), 2u) << "no worms yet";
    EXPECT_EQ(std::get<journal::Bed>(made[1].action).bedding, (Amount{333, Unit::g}));
}

TEST_F(NewStackTest, WithWaterFeedingAndAnotherSpeciesWhenWished)
{
    start();
    type("Name", "Porch");
    choose("Place", "outdoors");
    EXPECT_FALSE(shell().cautions().isEmpty()) << "heaters";
    type("Worms put in", "300");
    choose("Species", "Eisenia andrei");
    type("First feeding", "100");
    type("More water", "0.2");
    type("Started on", "2031-04-20");
    const auto made = record();
    ASSERT_EQ(made.size(), 5u);
    EXPECT_EQ(std::get<journal::Water>(made[2].action), (journal::Water{{0.2, Unit::L}}));
    EXPECT_EQ(std::get<journal::Stock>(made[3].action).species, "Eisenia andrei");
    EXPECT_EQ(std::get<journal::Feed>(made[4].action).food, (Amount{100, Unit::g}));
    for (const journal::Entry& each : made) EXPECT_EQ(each.date.day, today - std::chrono::days{12});
}

TEST_F(NewStackTest, ANameThatIsThereOrCannotBeWrittenIsRefusedBesideIt)
{
    start();
    pressEnter();
    EXPECT_FALSE(field("Name")->shownProblem().isEmpty());
    type("Name", "Scullery");
    pressEnter();
    EXPECT_NE(field("Name")->shownProblem().indexOf(QStringLiteral("already")), -1);
    type("Name", "a;b");
    pressEnter();
    EXPECT_FALSE(field("Name")->shownProblem().isEmpty());
    EXPECT_TRUE(recorded_.empty());
    EXPECT_FALSE(finished());
}

TEST_F(NewStackTest, EscGivesUp)
{
    start();
    pressEscape();
    EXPECT_TRUE(finished());
}

TEST(WelcomePage, ThreeWaysInEachByItsButton)
{
    Welcome page;
    page.setRecentFiles({QStringLiteral("/pantry/one.tierloam"), QStringLiteral("/pantry/tea & oats.tierloam")});
    page.resize(1000, 640);
    page.show();
    QSignalSpy start{&page, &Welcome::startFirstStack};
    QSignalSpy demo{&page, &Welcome::openDemo};
    QSignalSpy open{&page, &Welcome::openFile};
    QSignalSpy import{&page, &Welcome::importJournal};
    QSignalSpy recent{&page, &Welcome::openRecent};
    for (const char* name : {"startFirstStack", "openDemo", "openFile", "importJournal"}) {
        auto* button = page.findChild<QPushButton*>(QLatin1StringView{name});
        ASSERT_NE(button, nullptr);
        QTest::mouseClick(button, Qt::LeftButton);
        EXPECT_FALSE(button->accessibleDescription().isEmpty());
    }
    EXPECT_EQ(start.count(), 1);
    EXPECT_EQ(demo.count(), 1);
    EXPECT_EQ(open.count(), 1);
    EXPECT_EQ(import.count(), 1);
    for (QPushButton* button : page.findChildren<QPushButton*>()) {
        if (button->text() == u"tea && oats") QTest::mouseClick(button, Qt::LeftButton);
    }
    ASSERT_EQ(recent.count(), 1);
    EXPECT_EQ(recent.front().front().toString(), u"/pantry/tea & oats.tierloam");
    QWidget* card = page.findChild<QWidget*>(QStringLiteral("cautions"));
    QCoreApplication::processEvents();
    EXPECT_EQ(card->visibleRegion().boundingRect(), card->rect()) << "cautions in full without scrolling at 1000 by 640";
    EXPECT_GE(firstRunCautions().size(), 4);
    for (const Caution& each : firstRunCautions()) EXPECT_FALSE(each.source.isEmpty());
}

// The day stands last and out of sight: the form scrolls to it and to what is wrong with it.
TEST_F(NewStackTest, WhatIsWrongIsScrolledTo)
{
    start();
    type("Name", "Shed");
    type("Started on", "31.11.2026");
    field("Name")->focusProxy()->setFocus();
    window().resize(window().width(), 420);
    auto* area = window().findChild<QScrollArea*>();
    ASSERT_TRUE(area);
    for (int i = 0; i < 5; ++i) QCoreApplication::processEvents();
    area->verticalScrollBar()->setValue(0);
    ui::Field* date = field("Started on");
    const auto inSight = [&] { return area->viewport()->rect().contains(QRect{date->mapTo(area->viewport(), QPoint{}), date->size()}); };
    ASSERT_FALSE(inSight()) << "else there is nothing to scroll";
    pressEnter();
    EXPECT_TRUE(QTest::qWaitFor(inSight, 2000));
    EXPECT_FALSE(date->shownProblem().isEmpty());
    EXPECT_TRUE(date->isAncestorOf(QApplication::focusWidget()));
    type("Started on", "2199-01-01");
    pressEnter();
    EXPECT_TRUE(date->shownProblem().contains(QStringLiteral("has not come")));
}

}
