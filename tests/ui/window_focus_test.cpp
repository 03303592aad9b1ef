// Where the keys are after a page was called, a form was recorded or a single letter was pressed: on a stack that can be seen to have them.
#include "tests/ui/window_fixture.h"

#include "ui/forms/action_form.h"
#include "ui/shelf/date_bar.h"
#include "ui/shelf/form_host.h"

#include <QDir>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QSlider>

#include <functional>

namespace tierloam::window {
namespace {

class Focus : public WindowTest {
protected:
    shelf::StackCanvas* canvas(std::size_t place) { return desk().shelf()->board()->columns()[place]->canvas(); }
    QPushButton* accept() { return desk().shelf()->host()->findChild<QPushButton*>(QStringLiteral("accept")); }
};

TEST_F(Focus, IsOnTheStackAfterCtrl1)
{
    openSample();
    press("Ctrl+4");
    press("Ctrl+1");
    EXPECT_TRUE(canvas(0)->hasFocus()) << "the first, as none was chosen";
    press("Right");
    ASSERT_TRUE(canvas(1)->hasFocus());
    desk().shelf()->dateBar()->slider()->setFocus();
    press("Ctrl+1");
    EXPECT_TRUE(canvas(1)->hasFocus()) << "the one that was chosen";
    press("Shift+F");
    QWidget* field = QApplication::focusWidget();
    ASSERT_TRUE(desk().shelf()->host()->content()->isAncestorOf(field));
    press("Ctrl+1");
    EXPECT_TRUE(field->hasFocus()) << "a form that is open keeps it";
}

/// The button that was pressed is disabled while the write is under way, and the focus must not go on to the date slider.
TEST_F(Focus, ReturnsToTheStackWhenAFormHasBeenRecorded)
{
    openSample();
    press("Ctrl+1");
    const Day today = household().today();
    for (const bool byButton : {true, false}) {
        const std::size_t before = entries();
        press("Shift+F");
        settle();
        ASSERT_NE(accept(), nullptr);
        if (byButton) {
            accept()->setFocus();
            press("Space");
        } else {
            press("Ctrl+Return");
        }
        EXPECT_FALSE(desk().shelf()->dateBar()->slider()->hasFocus()) << "while it is being written";
        ASSERT_TRUE(QTest::qWaitFor([&] { return entries() > before && !desk().shelf()->host()->content(); }, patience));
        settle();
        EXPECT_TRUE(canvas(0)->hasFocus()) << (QApplication::focusWidget() ? QApplication::focusWidget()->objectName().toStdString() : "nowhere");
        press("Left");
        EXPECT_EQ(desk().shelf()->shownDay(), today);
    }
    const std::size_t before = entries();
    press("F");
    ASSERT_TRUE(QTest::qWaitFor([&] { return entries() > before && household().journal()->pending.empty(); }, patience));
    settle();
    EXPECT_TRUE(canvas(0)->hasFocus());
}

TEST_F(Focus, ALetterWritesNothingIntoAStackThatNobodyChose)
{
    openSample();
    desk().shelf()->setFocus();
    const std::size_t before = entries();
    press("F");
    EXPECT_EQ(entries(), before);
    EXPECT_TRUE(canvas(0)->hasFocus());
    ASSERT_EQ(notices().size(), 1);
    EXPECT_TRUE(notices().front().contains(QStringLiteral("Scullery"))) << notices().front().toStdString();
    press("Right");
    press("F");
    ASSERT_TRUE(QTest::qWaitFor([&] { return entries() > before && household().journal()->pending.empty(); }, patience));
    EXPECT_EQ(household().journal()->entries.back().stack, "Lean-to");
    EXPECT_EQ(desk().savedText(), QString{QStringLiteral("Saved 18:42: ") % household().undoStack()->undoText()});
    EXPECT_TRUE(desk().savedText().contains(QStringLiteral("Lean-to"))) << desk().savedText().toStdString();
    EXPECT_TRUE(notices().isEmpty()) << "what was asked is answered";
    ASSERT_TRUE(QTest::qWaitFor([&] { return window_->action(ui::ActionId::undo)->isEnabled(); }, patience));
    press("Ctrl+Z");
    ASSERT_TRUE(written(before));
    settle();
    EXPECT_EQ(desk().savedText(), QStringLiteral("Saved 18:42")) << "what was taken back is not named as saved";
}

TEST_F(Focus, WhatIsDueIsDoneOnTheDayThatIsThenShown)
{
    openSample();
    desk().shelf()->showDay(household().today() - std::chrono::days{20});
    ASSERT_LT(desk().shelf()->shownDay(), household().today());
    click(button("dueButton", desk().due()));
    settle();
    EXPECT_EQ(desk().shelf()->shownDay(), household().today());
}

/// Of a window of 1440 x 900 a menu has some 700 px, and more wraps into columns over the page.
TEST_F(Focus, NoMenuIsHigherThanTheScreenInLargeLetters)
{
    theme_->setFontScale(150);
    openSample();
    settled();
    const auto menus = window_->menuBar()->findChildren<QMenu*>();
    ASSERT_GT(menus.size(), 8);
    int acts = 0;
    for (QMenu* menu : menus) {
        Q_EMIT menu->aboutToShow();
        EXPECT_LE(menu->sizeHint().height(), 700) << menu->title().toStdString();
        for (const QAction* each : menu->actions()) acts += desk().shelf()->stackActions().contains(each);
    }
    EXPECT_EQ(acts, desk().shelf()->stackActions().size()) << "each is in one of them, and in one alone";
}

/// Where fields and buttons of a form stand.
TEST_F(Focus, MessagesMoveNoFormThatIsOpen)
{
    openSample();
    press("Ctrl+1");
    press("Shift+F");
    settled();
    const auto place = [this] { return accept()->mapTo(window_.get(), QPoint{}); };
    const QPoint at = place();
    window_->notices()->show(Notices::Kind::notice, QStringLiteral("A message that comes while a form is open."), QStringLiteral("one"));
    settled();
    EXPECT_TRUE(window_->notices()->isVisible());
    EXPECT_GT(window_->notices()->height(), 20);
    EXPECT_EQ(place(), at);
    window_->notices()->settle(QStringLiteral("one"));
    settled();
    EXPECT_EQ(place(), at);
    window_->notices()->show(Notices::Kind::notice, QStringLiteral("A message that comes while a form is open."), QStringLiteral("one"));
    press("Esc");
    settled();
    EXPECT_FALSE(desk().shelf()->host()->content());
    EXPECT_FALSE(window_->notices()->isFloating());
    const QRect body{desk().mapTo(window_.get(), QPoint{}), desk().size()};
    const QRect told{window_->notices()->mapTo(window_.get(), QPoint{}), window_->notices()->size()};
    EXPECT_FALSE(body.intersects(told)) << "with the form closed it stands above the page again";
}

/// As the place of a new household, which is told as its first form comes up, and goes by itself.
TEST_F(Focus, AMessageThatStoodThereKeepsItsRoomWhileTheFormIsOpen)
{
    openSample();
    press("Ctrl+1");
    window_->notices()->show(Notices::Kind::done, QStringLiteral("A message that goes by itself."), QStringLiteral("one"));
    press("Shift+F");
    settled();
    const auto top = [this] { return desk().mapTo(window_.get(), QPoint{}).y(); };
    const int with = top();
    window_->notices()->settle(QStringLiteral("one"));
    settled();
    EXPECT_EQ(top(), with);
    EXPECT_TRUE(notices().isEmpty());
    press("Esc");
    settled();
    EXPECT_LT(top(), with) << "the room is given back with the form";
}

TEST_F(Focus, WhereTheHouseholdLiesIsFoundAfterItsMessageHasGone)
{
    openSample();
    answers_.texts << QString{};
    window_->action(ui::ActionId::renameHousehold)->trigger();
    EXPECT_TRUE(answers_.labels.value(0).contains(QDir::toNativeSeparators(household().path()))) << answers_.labels.value(0).toStdString();
}

}
}
