#include "tests/ui/window_fixture.h"
#include "ui/common/fact_list.h"
#include "ui/forms/action_form.h"
#include "ui/shelf/form_host.h"
#include "ui/shelf/part_panel.h"
#include "ui/shelf/story_charts.h"

#include <QAction>

/// The shelf in the real window, by mouse and by keys alone.
namespace tierloam::window {

namespace {

QStringList orderOf(const Desk& desk)
{
    QStringList names;
    for (const shelf::StackColumn* column : desk.shelf()->board()->columns()) names << QString::fromStdString(column->key());
    return names;
}

const QStringList asSetUp{QStringLiteral("Scullery"), QStringLiteral("Lean-to"), QStringLiteral("Cellar")};
const QStringList moved{QStringLiteral("Lean-to"), QStringLiteral("Scullery"), QStringLiteral("Cellar")};

}

TEST_F(WindowTest, ATrayIsOpenedReadAndActedOnByKeysAlone)
{
    openSample();
    press("Ctrl+1");
    shelf::StackCanvas* canvas = desk().shelf()->board()->columns()[0]->canvas();
    canvas->setFocus(Qt::TabFocusReason);
    press("End");
    press("Up"); // the bottom tray
    press("Return");
    auto* panel = qobject_cast<shelf::PartPanel*>(desk().shelf()->host()->content());
    ASSERT_TRUE(panel);
    EXPECT_EQ(panel->part(), 1);
    EXPECT_EQ(panel->window(), window_.get()) << "in place, no window of its own";
    EXPECT_FALSE(panel->findChild<ui::FactList*>(QStringLiteral("panelFacts"))->value(QStringLiteral("Cocoons")).isEmpty());
    press("Space"); // the act that is meant stands first and has the focus
    auto* form = qobject_cast<forms::ActionForm*>(desk().shelf()->host()->content());
    ASSERT_TRUE(form);
    EXPECT_EQ(form->kind(), forms::FormKind::rotate);
    press("Esc");
    settle();
    EXPECT_FALSE(desk().shelf()->host()->content());
    EXPECT_TRUE(canvas->hasFocus());
    press("Down");
    press("Return"); // the sump
    panel = qobject_cast<shelf::PartPanel*>(desk().shelf()->host()->content());
    ASSERT_TRUE(panel && panel->charts());
    EXPECT_EQ(panel->part(), 0);
    press("Esc");
    EXPECT_TRUE(canvas->hasFocus());
}

TEST_F(WindowTest, StacksAreMovedAndTheMoveIsUndoneAndKept)
{
    openSample();
    ASSERT_EQ(orderOf(desk()), asSetUp);
    desk().shelf()->board()->columns()[0]->canvas()->setFocus();
    press("Alt+Right");
    EXPECT_EQ(orderOf(desk()), moved);
    household().finishWrites();
    ASSERT_TRUE(QTest::qWaitFor([&] { return household().undoStack()->canUndo(); }, patience));
    press("Ctrl+Z");
    EXPECT_EQ(orderOf(desk()), asSetUp);
    household().finishWrites();
    press("Ctrl+Shift+Z");
    EXPECT_EQ(orderOf(desk()), moved);
    household().finishWrites();
    const QString file = household().path();
    make();
    ASSERT_TRUE(window_->openFile(file));
    show();
    EXPECT_EQ(orderOf(desk()), moved) << "another day";
}

TEST_F(WindowTest, LessMotionIsAskedForByAKeyAndRemembered)
{
    openSample();
    ASSERT_TRUE(theme_->moves());
    press("Ctrl+Alt+M");
    EXPECT_FALSE(theme_->moves());
    ui::Theme again;
    theme_->remember(*settings_);
    again.restore(*settings_);
    EXPECT_TRUE(again.lessMotion());
    press("Ctrl+Alt+M");
    EXPECT_TRUE(theme_->moves());
}

}
