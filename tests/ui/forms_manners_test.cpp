#include "tests/ui/forms_fixture.h"
#include "tests/core/store_power_vfs.h"
#include "ui/common/date_field.h"
#include "ui/common/material_field.h"
#include "ui/forms/new_stack.h"

#include <QAction>
#include <QCompleter>
#include <QSignalSpy>
#include <QSqlDatabase>
#include <QSqlError>
#include <QSqlQuery>
#include <QUndoStack>

/// How forms behave: keys, refusals, failures, order of Tab, cautions.
namespace tierloam::forms {

namespace {

/// A disk that can be full.
class Disk {
protected:
    store::samples::PowerVfs disk_;
};

/// A household on it: the disk is made before the household opens its file, and goes after it.
class FormsFullDisk : protected Disk, public FormsTest {};

/// Another program that holds the file's write lock while it lives.
class WriteLock {
public:
    explicit WriteLock(const QString& path)
    {
        auto database = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), name());
        database.setDatabaseName(path);
        if (!database.open()) ADD_FAILURE() << database.lastError().text().toStdString();
        QSqlQuery begin{database};
        if (!begin.exec(QStringLiteral("BEGIN IMMEDIATE"))) ADD_FAILURE() << begin.lastError().text().toStdString();
    }
    ~WriteLock()
    {
        {
            auto database = QSqlDatabase::database(name());
            QSqlQuery{database}.exec(QStringLiteral("ROLLBACK"));
            database.close();
        }
        QSqlDatabase::removeDatabase(name());
    }
    WriteLock(const WriteLock&) = delete;
    WriteLock& operator=(const WriteLock&) = delete;

private:
    static QString name() { return QStringLiteral("the other program"); }
};

bool says(const QList<Caution>& cautions, CautionTopic topic)
{
    return std::any_of(cautions.begin(), cautions.end(), [topic](const Caution& each) { return each.topic == topic; });
}

}

TEST_F(FormsTest, ADateThatWasNotChangedGoesOnWithTheDayWhenMidnightPasses)
{
    ActionForm& form = open(FormKind::water);
    auto* date = form.findChild<ui::DateField*>();
    clock_->set(today + std::chrono::days{1});
    household().remember(QStringLiteral("anything"), QStringLiteral("else"), QStringLiteral("a change after midnight"));
    household().finishWrites();
    EXPECT_EQ(date->moment().value->day, today + std::chrono::days{1});
    EXPECT_TRUE(date->hint().contains(QStringLiteral("today"))) << date->hint().toStdString();
    type("Date", "yesterday");
    EXPECT_EQ(date->moment().value->day, today);
    clock_->set(today + std::chrono::days{2});
    household().remember(QStringLiteral("anything"), QStringLiteral("more"), QStringLiteral("a change a day later"));
    household().finishWrites();
    EXPECT_EQ(date->moment().value->day, today) << "it was said of the day before";
}

TEST_F(FormsTest, AFormForANewStackGoesOnWithTheDayToo)
{
    NewStack& form = show(new NewStack{household()});
    auto* date = form.findChild<ui::DateField*>();
    clock_->set(today + std::chrono::days{1});
    household().remember(QStringLiteral("anything"), QStringLiteral("else"), QStringLiteral("a change after midnight"));
    household().finishWrites();
    EXPECT_EQ(date->moment().value->day, today + std::chrono::days{1});
}

TEST_F(FormsTest, EscGivesUpAndWritesNothing)
{
    open(FormKind::feed);
    type("Amount", "999");
    pressEscape();
    EXPECT_TRUE(finished());
    household().finishWrites();
    QCoreApplication::processEvents();
    EXPECT_TRUE(recorded_.empty());
}

TEST_F(FormsTest, WhatWasTypedIsThrownAwayByWordAlone)
{
    const auto holds = [this](TypedForm& form, const char* name, const char* text) {
        int asked = 0;
        bool lets = false;
        QString told;
        form.setMayThrowAway([&](const QString& title) {
            ++asked;
            told = title;
            return lets;
        });
        type(name, text);
        ASSERT_TRUE(form.touched());
        pressEscape();
        EXPECT_EQ(asked, 1);
        EXPECT_EQ(told, form.accessibleName());
        EXPECT_FALSE(told.isEmpty());
        EXPECT_FALSE(finished());
        click("cancel");
        EXPECT_EQ(asked, 2);
        EXPECT_FALSE(finished());
        EXPECT_EQ(static_cast<QLineEdit*>(field(name)->focusProxy())->text(), QString::fromUtf8(text));
        lets = true;
        pressEscape();
        EXPECT_TRUE(finished());
        EXPECT_EQ(asked, 3);
        household().finishWrites();
        QCoreApplication::processEvents();
        EXPECT_TRUE(recorded_.empty());
    };
    holds(open(FormKind::feed), "Amount", "999");
    const auto all = entries();
    const auto fed = std::ranges::find_if(all, [](const journal::Entry& each) { return std::holds_alternative<journal::Feed>(each.action); });
    ASSERT_NE(fed, all.end());
    holds(edit(fed->id), "Amount", "555");
    holds(show(new NewStack{household()}, 520), "Name", "Balcony");
}

TEST_F(FormsTest, NothingTypedNothingIsAsked)
{
    ActionForm& form = open(FormKind::feed);
    form.setMayThrowAway([](const QString&) {
        ADD_FAILURE() << "asked";
        return false;
    });
    pressEscape();
    EXPECT_TRUE(finished());
}

TEST_F(FormsTest, WalkingThroughAFormTypesNothing)
{
    for (const FormKind kind : {FormKind::feed, FormKind::cover, FormKind::drain, FormKind::reading, FormKind::check, FormKind::harvest, FormKind::bedding, FormKind::stock, FormKind::event, FormKind::setup}) {
        const ActionForm& form = open(kind);
        QWidget* first = QApplication::focusWidget();
        for (int i = 0; i < 60 && (i == 0 || QApplication::focusWidget() != first); ++i) QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
        EXPECT_FALSE(form.touched()) << formName(kind).toStdString();
    }
}

TEST_F(FormsTest, AnEntryThatGoesWhileItIsEditedTakesNothingTypedWithIt)
{
    const auto all = entries();
    const auto fed = std::find_if(all.rbegin(), all.rend(), [](const journal::Entry& each) { return std::holds_alternative<journal::Feed>(each.action); });
    ASSERT_NE(fed, all.rend());
    edit(fed->id);
    type("Amount", "555");
    const auto is = [&](bool there) {
        return QTest::qWaitFor([&] { return std::ranges::any_of(household().journal()->entries, [&](const journal::Entry& each) { return each.id == fed->id; }) == there && household().journal()->pending.empty(); }, patience);
    };
    household().remove({fed->id}, QStringLiteral("elsewhere"));
    ASSERT_TRUE(is(false));
    ASSERT_TRUE(QTest::qWaitFor([&] { return household().undoStack()->undoText() == QStringLiteral("elsewhere"); }, patience));
    EXPECT_TRUE(shell().problem().contains(QStringLiteral("taken out"))) << shell().problem().toStdString();
    pressEnter();
    EXPECT_FALSE(finished());
    EXPECT_EQ(static_cast<QLineEdit*>(field("Amount")->focusProxy())->text(), u"555");
    recorded_.clear();
    household().undoStack()->undo();
    ASSERT_TRUE(is(true));
    EXPECT_TRUE(shell().problem().isEmpty()) << shell().problem().toStdString();
    pressEnter();
    ASSERT_TRUE(QTest::qWaitFor([&] { return finished(); }, patience)) << problems().toStdString();
    const auto after = entries();
    const auto now = std::ranges::find_if(after, [&](const journal::Entry& each) { return each.id == fed->id; });
    ASSERT_NE(now, after.end());
    EXPECT_EQ(std::get<journal::Feed>(now->action).food.value, 555.0);
}

TEST_F(FormsTest, EnterOnCancelCancels)
{
    open(FormKind::water);
    window().findChild<QPushButton*>(QStringLiteral("cancel"))->setFocus();
    pressEnter();
    EXPECT_TRUE(finished());
    QCoreApplication::processEvents();
    EXPECT_TRUE(recorded_.empty());
}

TEST_F(FormsTest, TheRecordButtonRecords)
{
    open(FormKind::water);
    click("accept");
    EXPECT_TRUE(QTest::qWaitFor([this] { return recorded_.size() == 1; }, patience));
    EXPECT_TRUE(finished());
}

TEST_F(FormsTest, TabWalksTheFieldsDownwardsAndThenTheButtons)
{
    for (const FormKind kind : {FormKind::feed, FormKind::drain, FormKind::harvest, FormKind::setup}) {
        open(kind);
        std::vector<QWidget*> walked;
        QWidget* first = QApplication::focusWidget();
        ASSERT_NE(first, nullptr);
        for (int i = 0; i < 60; ++i) {
            QWidget* now = QApplication::focusWidget();
            if (i > 0 && now == first) break;
            walked.push_back(now);
            QTest::keyClick(now, Qt::Key_Tab);
        }
        ASSERT_GE(walked.size(), 4u);
        EXPECT_EQ(walked[walked.size() - 2]->objectName(), u"cancel") << "as they stand";
        EXPECT_EQ(walked.back()->objectName(), u"accept");
        for (std::size_t i = 1; i + 2 < walked.size(); ++i) {
            const int above = walked[i - 1]->mapTo(&window(), QPoint{0, walked[i - 1]->height() / 2}).y();
            const int here = walked[i]->mapTo(&window(), QPoint{0, walked[i]->height() / 2}).y();
            EXPECT_GE(here, above - 8) << walked[i]->objectName().toStdString();
        }
        for (ui::Field* each : window().findChildren<ui::Field*>()) {
            if (!each->isVisible()) continue;
            EXPECT_NE(std::find(walked.begin(), walked.end(), each->focusProxy()), walked.end()) << each->name().toStdString() << " cannot be reached by Tab";
        }
    }
}

TEST_F(FormsTest, EveryEditorOfEveryFormHasAnAccessibleName)
{
    for (int kind = 0; kind <= static_cast<int>(FormKind::setup); ++kind) {
        open(static_cast<FormKind>(kind));
        for (const QWidget* each : window().findChildren<QWidget*>()) {
            const bool reached = (each->focusPolicy() & Qt::TabFocus) && each->isVisible() && each->window() == &window() && !each->focusProxy();
            const auto* button = qobject_cast<const QAbstractButton*>(each);
            if (reached) {
                EXPECT_FALSE(each->accessibleName().isEmpty() && (!button || button->text().isEmpty())) << kind << " " << each->metaObject()->className();
            }
        }
        EXPECT_FALSE(formName(static_cast<FormKind>(kind)).isEmpty());
        EXPECT_FALSE(formDeed(static_cast<FormKind>(kind)).isEmpty());
    }
}

/// Pounds for ounces is soon typed: that it finds no room is said before it is recorded, and it is recorded all the same.
TEST_F(FormsTest, AFeedingThatFindsNoRoomInItsTrayIsToldSo)
{
    const auto says = [this](bool wanted) {
        return QTest::qWaitFor([&] { return shell().doubt().contains(QStringLiteral("find room in the tray")) == wanted; }, patience);
    };
    open(FormKind::feed, "Scullery");
    EXPECT_TRUE(says(false)) << shell().doubt().toStdString();
    type("Amount", "45 kg");
    EXPECT_TRUE(says(true)) << shell().doubt().toStdString();
    EXPECT_TRUE(shell().doubt().contains(QStringLiteral("45\u00a0kg")));
    type("Amount", "400 g");
    EXPECT_TRUE(says(false)) << shell().doubt().toStdString();
    type("Amount", "45 kg");
    EXPECT_FALSE(record().empty()) << "it forbids nothing";
}

TEST_F(FormsTest, ARefusalIsToldInWordsAndNothingIsLost)
{
    open(FormKind::addTray, "Scullery"); // all three trays stand
    EXPECT_FALSE(shell().effect().isEmpty()) << "told before it is tried";
    type("Amount, dry", "444");
    pressEnter();
    EXPECT_NE(shell().problem().indexOf(QStringLiteral("storage")), -1) << shell().problem().toStdString();
    EXPECT_FALSE(finished());
    EXPECT_EQ(static_cast<QLineEdit*>(field("Amount, dry")->focusProxy())->text(), u"444");
    household().finishWrites();
    QCoreApplication::processEvents();
    EXPECT_TRUE(recorded_.empty());
}

TEST_F(FormsFullDisk, AFullDiskKeepsTheContentsAndSaysWhy)
{
    open(FormKind::feed);
    type("Amount", "321");
    type("Note", "kept");
    disk_.full = true;
    pressEnter();
    ASSERT_TRUE(QTest::qWaitFor([this] { return !failures_.isEmpty(); }, patience));
    disk_.full = false;
    EXPECT_FALSE(finished());
    EXPECT_TRUE(shell().problem().contains(u"full")) << shell().problem().toStdString();
    EXPECT_EQ(static_cast<QLineEdit*>(field("Amount")->focusProxy())->text(), u"321");
    EXPECT_EQ(static_cast<QLineEdit*>(field("Note")->focusProxy())->text(), u"kept");
    failures_.clear();
    const auto made = record(); // there is room again: the same Enter records
    ASSERT_FALSE(made.empty());
    EXPECT_EQ(made[0].note, "kept");
}

TEST_F(FormsTest, AFailedWriteKeepsTheContentsAndSaysWhy)
{
    open(FormKind::feed);
    type("Amount", "321");
    type("Note", "kept");
    {
        const WriteLock lock{path()};
        pressEnter();
        ASSERT_TRUE(QTest::qWaitFor([this] { return !failures_.isEmpty(); }, patience));
    }
    EXPECT_FALSE(finished());
    EXPECT_NE(shell().problem().indexOf(failures_.front()), -1) << shell().problem().toStdString();
    EXPECT_EQ(static_cast<QLineEdit*>(field("Amount")->focusProxy())->text(), u"321");
    EXPECT_EQ(static_cast<QLineEdit*>(field("Note")->focusProxy())->text(), u"kept");
    failures_.clear();
    const auto made = record(); // once the lock is gone the same Enter records
    ASSERT_FALSE(made.empty());
    EXPECT_EQ(made[0].note, "kept");
}

TEST_F(FormsTest, AFormOfAPastDaySaysWhichTrayItFallsTo)
{
    open(FormKind::feed, "Scullery");
    EXPECT_NE(shell().effect().indexOf(QStringLiteral("tray 3 in slot 3")), -1) << shell().effect().toStdString();
    type("Date", "2031-01-10"); // the third tray was bedded later
    ASSERT_TRUE(QTest::qWaitFor([this] { return shell().effect().contains(QStringLiteral("slot 2")); }, patience)) << shell().effect().toStdString();
    const auto made = record();
    ASSERT_FALSE(made.empty());
    const auto& steps = household().journal()->replay.stack("Scullery")->steps;
    const auto entries = household().journal()->entries;
    const auto step = std::find_if(steps.begin(), steps.end(), [&](const journal::Step& each) { return entries[each.entry].id == made[0].id; });
    ASSERT_NE(step, steps.end());
    EXPECT_EQ(step->slot, 2) << "what was said is what happened";
}

TEST_F(FormsTest, AFormOpenedOnAPastDayRecordsOnThatDay)
{
    auto* form = new ActionForm{household(), FormKind::water, QStringLiteral("Scullery")};
    form->setDay(today - std::chrono::days{9});
    show(form);
    EXPECT_FALSE(form->touched()) << "the program set the day, not the person";
    EXPECT_EQ(field("Date")->hint(), u"Wednesday, 9 days ago");
    const auto made = record();
    ASSERT_EQ(made.size(), 1u);
    EXPECT_EQ(made[0].date.day, today - std::chrono::days{9});
}

TEST_F(FormsTest, ABackDatedStepSaysWhatItMovesToAnotherBatch)
{
    open(FormKind::harvest, "Scullery", 3);
    type("Castings", "2");
    type("Date", "2031-04-01"); // later feedings went into that tray; now they fall to the one below
    ASSERT_TRUE(QTest::qWaitFor([this] { return shell().effect().contains(QStringLiteral("another batch")); }, patience)) << shell().effect().toStdString();
    EXPECT_EQ(record().size(), 1u);
}

TEST_F(FormsTest, CtrlZGoesToTheWindowOnlyWhenTheFieldHasNothingToUndo)
{
    open(FormKind::feed);
    auto* undo = new QAction{&window()};
    undo->setShortcut(QKeySequence::Undo);
    window().addAction(undo);
    QSignalSpy undone{undo, &QAction::triggered};
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(undone.count(), 1);
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("5"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(undone.count(), 1);
    EXPECT_EQ(static_cast<QLineEdit*>(field("Amount")->focusProxy())->text(), u"450");
    field("Food")->setFocus();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(undone.count(), 2) << "a list to type in has the same manners";
}

TEST_F(FormsTest, CautionsStandAtTheWork)
{
    open(FormKind::drain, "Lean-to");
    EXPECT_TRUE(says(shell().cautions(), CautionTopic::leachate));
    EXPECT_TRUE(says(shell().cautions(), CautionTopic::wormsInSump));
    open(FormKind::rotate);
    EXPECT_TRUE(says(shell().cautions(), CautionTopic::dustAndMould));
    EXPECT_TRUE(says(shell().cautions(), CautionTopic::wormsInBottomTray));
    EXPECT_TRUE(shell().cautions().front().text.contains(QStringLiteral("7.0\u00a0kg (6.3–7.7)"))) << "the estimated weight: " << shell().cautions().front().text.toStdString();
    for (const FormKind kind : {FormKind::rotate, FormKind::harvest, FormKind::trayWeight}) {
        open(kind);
        const QList<Caution> said = shell().cautions();
        const auto dust = std::ranges::find(said, CautionTopic::dustAndMould, &Caution::topic);
        ASSERT_NE(dust, said.end());
        for (const QString& told : {dust->text, dust->brief})
            for (const char* word : {"Legionella", "tetanus vaccination", "mask", "moist", "gloves"}) EXPECT_TRUE(told.contains(QLatin1String{word})) << word << ": " << told.toStdString();
        EXPECT_TRUE(dust->text.contains(QStringLiteral("health service says comes first")));
    }
    open(FormKind::bedding);
    ASSERT_TRUE(says(shell().cautions(), CautionTopic::wounds));
    EXPECT_TRUE(std::ranges::any_of(shell().cautions(), [](const Caution& each) { return each.text.contains(QStringLiteral("tetanus")); }));
    open(FormKind::reading);
    EXPECT_TRUE(shell().cautions().isEmpty());
    type("In the bed", "6");
    EXPECT_TRUE(says(shell().cautions(), CautionTopic::heater)) << "cold is handled";
    open(FormKind::check);
    EXPECT_TRUE(shell().cautions().isEmpty()) << "a look needs none";
    open(FormKind::event);
    type("What", "mites");
    EXPECT_TRUE(says(shell().cautions(), CautionTopic::remedy));
    for (const FormKind kind : {FormKind::drain, FormKind::harvest, FormKind::remove}) {
        open(kind);
        for (const Caution& each : shell().cautions()) EXPECT_FALSE(each.source.isEmpty()) << each.text.toStdString();
    }
}

TEST_F(FormsTest, ADoubtfulMaterialIsToldOnceAndNeverBlocks)
{
    open(FormKind::feed);
    EXPECT_FALSE(says(shell().cautions(), CautionTopic::doubtfulMaterial));
    type("Food", "lemon peel");
    EXPECT_TRUE(says(shell().cautions(), CautionTopic::doubtfulMaterial));
    EXPECT_FALSE(record().empty());
    open(FormKind::feed);
    type("Food", "lemon peel");
    EXPECT_FALSE(says(shell().cautions(), CautionTopic::doubtfulMaterial)) << "once";
    type("Food", "horse manure aged");
    EXPECT_TRUE(says(shell().cautions(), CautionTopic::manure));
    const QList<Caution> said = shell().cautions();
    EXPECT_TRUE(std::ranges::any_of(said, [](const Caution& each) { return each.topic == CautionTopic::manure && each.text.contains(QStringLiteral("tetanus")); }));
}

TEST_F(FormsTest, AHouseholdForReadingOnlySaysSoAtOnce)
{
    household().finishWrites();
    QFile::setPermissions(path(), QFileDevice::ReadOwner);
    QFile::remove(path()); // moved away while it is open: nothing can be written any more
    household().lookForForeignWrites();
    if (!QTest::qWaitFor([this] { return household().readOnly(); }, 5000)) FAIL() << "the household did not notice that its file is gone";
    open(FormKind::feed);
    EXPECT_FALSE(shell().problem().isEmpty());
    EXPECT_FALSE(window().findChild<QPushButton*>(QStringLiteral("accept"))->isEnabled());
}

TEST_F(FormsTest, KindsOfferedAreThoseThatCanBeDone)
{
    const auto standing = [this](const char* stack) { return *household().journal()->replay.stack(stack)->on(today); };
    EXPECT_TRUE(kindsForTray(standing("Scullery"), 1).contains(FormKind::rotate));
    EXPECT_FALSE(kindsForTray(standing("Scullery"), 2).contains(FormKind::rotate));
    EXPECT_FALSE(kindsForTray(standing("Cellar"), 3).contains(FormKind::feed)) << "a drying tray is not fed";
    EXPECT_EQ(kindsForTray(standing("Cellar"), 3).front(), FormKind::harvest);
    EXPECT_TRUE(kindsForTray(standing("Scullery"), 4).isEmpty());
    EXPECT_FALSE(kindsForStack(standing("Scullery"), 2).contains(FormKind::addTray)) << "no spare tray";
    EXPECT_TRUE(kindsForStack(standing("Lean-to"), 2).contains(FormKind::addTray));
    EXPECT_FALSE(kindsForStack(standing("Lean-to"), 0).contains(FormKind::move));
    EXPECT_TRUE(kindsForSump(standing("Lean-to")).contains(FormKind::drain));
    // Nothing that is offered is refused as the stack stands.
    for (const char* stack : {"Scullery", "Lean-to", "Cellar"}) {
        for (const FormKind kind : kindsForStack(standing(stack), 2)) {
            open(kind, stack);
            EXPECT_FALSE(shell().effect().contains(QStringLiteral("Not possible"))) << stack << " " << formName(kind).toStdString();
        }
    }
}

TEST(MaterialField, CompletesOffersTheNearestAndRefusesTheUnknown)
{
    journal::Entry own;
    own.action = journal::OwnMaterial{"beer mash", {}, {}, {}, {}, {}, {}};
    const journal::Entries entries{own};
    ui::MaterialField field{materials::Table::withOwn(entries), materials::Kind::food, {"banana peel"}, "kitchen mix"};
    field.setName(QStringLiteral("Food"));
    EXPECT_EQ(field.list()->itemText(0), u"banana peel") << "used lately comes first";
    EXPECT_EQ(field.list()->itemText(1), u"beer mash") << "own ones next";
    EXPECT_TRUE(field.problem().isEmpty()) << "empty means the usual";
    EXPECT_EQ(field.row()->name, "kitchen mix");
    QCompleter* completer = field.list()->completer();
    completer->setCompletionPrefix(QStringLiteral("GROUNDS"));
    EXPECT_EQ(completer->currentCompletion(), u"coffee grounds") << "a word inside is enough, in any case";
    field.setMaterial("Coffee Grounds");
    EXPECT_EQ(field.material().value, "coffee grounds") << "as the table writes it";
    EXPECT_EQ(field.list()->toolTip(), u"Coffee Grounds") << "whole, however narrow the form";
    field.setMaterial("cofee grounds");
    EXPECT_FALSE(field.material().value);
    EXPECT_NE(field.problem().indexOf(QStringLiteral("coffee grounds")), -1);
    EXPECT_EQ(field.edit()->accessibleName(), u"Food");
}

// What is recorded has been done. An absence alone is planned.
TEST_F(FormsTest, ADayThatHasNotComeIsRefusedAtTheField)
{
    open(FormKind::feed);
    const auto before = entries().size();
    type("Date", "2199-01-01");
    pressEnter();
    EXPECT_TRUE(field("Date")->shownProblem().contains(QStringLiteral("has not come"))) << problems().toStdString();
    EXPECT_FALSE(finished());
    EXPECT_EQ(entries().size(), before);
    type("Date", "today");
    EXPECT_TRUE(field("Date")->shownProblem().isEmpty());
    EXPECT_FALSE(record().empty());
}

TEST_F(FormsTest, AnAbsenceMayLieAheadAndNoOtherEventMay)
{
    open(FormKind::event);
    type("What", "away");
    type("Date", "2199-01-01");
    type("Until", "2199-01-14");
    EXPECT_TRUE(field("Date")->problem().isEmpty()) << field("Date")->problem().toStdString();
    type("What", "smell");
    EXPECT_FALSE(field("Date")->problem().isEmpty());
    type("What", "away");
    EXPECT_EQ(record().size(), 1U);
}

TEST_F(FormsTest, AnEntryThatStandsAheadCanStillBeEdited)
{
    journal::Entry ahead = entries().back();
    ahead.id = journal::EntryId::none;
    ahead.action = journal::Note{};
    ahead.slot.reset();
    ahead.note = "come in by the command line";
    ahead.date.day = household().today() + std::chrono::days{30};
    household().recordAll({ahead}, QStringLiteral("ahead"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return entries().back().note == ahead.note && household().journal()->pending.empty(); }, 5000));
    edit(entries().back().id);
    type("Note", "changed");
    EXPECT_TRUE(field("Date")->problem().isEmpty());
    type("Date", "2199-01-01");
    EXPECT_FALSE(field("Date")->problem().isEmpty());
}

}
