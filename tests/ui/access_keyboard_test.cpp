#include "tests/ui/access_fixture.h"

#include "core/reckoning/reckon.h"
#include "ui/rotation/lanes_view.h"
#include "ui/rotation/rotation_page.h"
#include "ui/window/due_list.h"

#include <QMenu>
#include <QMenuBar>
#include <QPushButton>
#include <QSignalSpy>

#include <map>

/// Every page, form and window by Tab, Shift+Tab and F6 alone; every action by its keys.
namespace tierloam::window {

namespace {

void tellFaults(const QString& where, QWidget* root)
{
    for (const QString& each : tabFaults(root)) ADD_FAILURE() << where.toStdString() << ": " << each.toStdString();
}

}

TEST_F(AccessTest, TabReachesEverythingInReadingOrder)
{
    everywhere(tellFaults);
}

TEST_F(AccessTest, EnterPressesTheButtonThatHasTheFocus)
{
    openSample();
    auto* button = desk().due()->findChild<QPushButton*>(QStringLiteral("dueWhy"));
    ASSERT_TRUE(button != nullptr && button->isVisible());
    QSignalSpy pressed{button, &QPushButton::clicked};
    button->setFocus();
    press("Return");
    EXPECT_EQ(pressed.count(), 1);
    press("Ctrl+Return");
    EXPECT_EQ(pressed.count(), 1);
}

// The lanes stand only where a year can be planned: estimates with their members, as the model makes them.
TEST_F(AccessTest, TabReachesTheLanesOfAPlannedYear)
{
    reckoning::Options options;
    options.asOf = today_;
    options.members = 64;
    journal::Entries entries = tests::sampleJournal();
    estimates_ = reckoning::reckon(entries, options);
    openSample();
    desk().showPage(Desk::Page::rotation);
    ASSERT_TRUE(QTest::qWaitFor([this] { return desk().rotation()->plan() != nullptr && seen<rotation::LanesView>(); }, patience));
    settle();
    const QList<QWidget*> worked = workedIn(window_.get());
    EXPECT_TRUE(std::ranges::any_of(worked, [](const QWidget* each) { return qobject_cast<const rotation::LanesView*>(each) != nullptr; }));
    tellFaults(QStringLiteral("rotation with its lanes"), window_.get());
    desk().rotation()->lanes()->setFocus();
    const auto& steps = desk().rotation()->lanes()->year().steps;
    if (std::ranges::all_of(steps, [](const auto& lane) { return lane.empty(); })) return;
    press("Right");
    EXPECT_NE(desk().rotation()->lanes()->chosen(), nullptr) << "also where nothing comes of the first stack";
}

TEST_F(AccessTest, DueListIsReachedByOneKeyFromEveryPageAndForm)
{
    openSample();
    const auto goes = [this](const QString& where) {
        press("F6");
        QWidget* at = QApplication::focusWidget();
        EXPECT_TRUE(at && at->objectName() == QLatin1StringView{"dueButton"} && at->isVisible()) << where.toStdString() << ": " << (at ? nameOf(at).toStdString() : "nothing");
    };
    inPlace([&](const QString& where, QWidget*) {
        QWidget* before = QApplication::focusWidget();
        goes(where);
        if (before) before->setFocus();
    });
    for (const char* page : {"Ctrl+1", "Ctrl+2", "Ctrl+3", "Ctrl+4", "Ctrl+5", "Ctrl+6"}) {
        press(page);
        settle();
        goes(QString::fromLatin1(page));
    }
}

TEST_F(AccessTest, EveryActionStandsInTheWindowWithTheKeysOfTheTable)
{
    openSample();
    std::map<QString, QList<QKeySequence>> there;
    for (const char* page : {"Ctrl+1", "Ctrl+2", "Ctrl+3", "Ctrl+4", "Ctrl+5", "Ctrl+6"}) {
        press(page);
        settle();
        if (QLatin1StringView{page} == QLatin1StringView{"Ctrl+2"}) {
            window_->findChild<QAction*>(QStringLiteral("tryChange"))->trigger(); // its card has a key of its own
            settle();
        }
    }
    for (const QAction* action : window_->findChildren<QAction*>())
        for (const QKeySequence& keys : action->shortcuts())
            if (!there[action->objectName()].contains(keys)) there[action->objectName()] << keys; // answers of one line have a key each
    for (const ui::ActionRow& row : ui::actionTable()) {
        if (row.where == ui::Where::form) continue; // a form answers to them itself: tests of forms
        const auto found = there.find(QString::fromLatin1(row.name));
        ASSERT_NE(found, there.end()) << row.name << " is in the table and nowhere in the window";
        EXPECT_EQ(found->second, ui::actionKeys(row.id)) << row.name;
        there.erase(found);
    }
    for (const auto& [name, keys] : there) {
        if (name.isEmpty() || name.startsWith(QLatin1StringView{"qt_"})) continue; // of Qt's own fields
        ADD_FAILURE() << name.toStdString() << " has keys that no table lists";
    }
}

// Letters to be pressed with Alt: of the menus, of buttons and of labels in front of fields, and the keys of actions that are alike.
TEST_F(AccessTest, NoTwoAnswerOneLetter)
{
    const auto look = [this](const QString& where, QWidget* root) {
        std::map<QKeySequence, QStringList> letters;
        if (root == window_.get())
            for (const QAction* menu : window_->menuBar()->actions()) letters[QKeySequence::mnemonic(menu->text())] << menu->text();
        for (QWidget* each : root->findChildren<QWidget*>()) {
            if (!each->isVisible() || each->window() != root) continue;
            if (const auto* button = qobject_cast<QAbstractButton*>(each)) letters[QKeySequence::mnemonic(button->text())] << button->text();
            if (const auto* label = qobject_cast<QLabel*>(each); label && label->buddy()) letters[QKeySequence::mnemonic(label->text())] << label->text();
            for (const QAction* action : each->actions())
                for (const QKeySequence& keys : action->shortcuts()) letters[keys] << action->objectName();
        }
        for (auto& [keys, who] : letters) {
            who.removeDuplicates();
            if (!keys.isEmpty() && keys[0].keyboardModifiers() == Qt::AltModifier && who.size() > 1) ADD_FAILURE() << where.toStdString() << ": " << keys.toString().toStdString() << " is " << who.join(QStringLiteral(" and ")).toStdString();
        }
    };
    openSample();
    walkAll(*window_, look);
    inPlace(look);
    beside(look);
}

TEST_F(AccessTest, TabReachesEverythingFromRightToLeft)
{
    QGuiApplication::setLayoutDirection(Qt::RightToLeft);
    make();
    openSample();
    walkAll(*window_, tellFaults);
    inPlace(tellFaults);
}

}
