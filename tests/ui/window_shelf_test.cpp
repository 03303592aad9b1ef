#include "tests/ui/window_fixture.h"
#include "ui/common/fact_list.h"
#include "ui/forms/action_form.h"
#include "ui/paper/labels.h"
#include "ui/shelf/form_host.h"
#include "ui/shelf/part_panel.h"
#include "ui/shelf/story_charts.h"

#include <QAction>
#include <QComboBox>

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

// The order of the shelf rules wherever stacks are named one after the other.
TEST_F(WindowTest, WhereverStacksAreNamedTheyStandAsOnTheShelf)
{
    // Each stack has something due, or the order of the due list could not be seen.
    auto busy = std::make_shared<reckoning::Reckoning>(*tests::sampleReckoning());
    for (reckoning::StackReckoning& stack : busy->stacks) stack.record.lastFeed = tests::sampleToday() - std::chrono::days{10};
    estimates_ = busy;
    openSample();
    const auto chips = [this] {
        QStringList names;
        std::vector<std::pair<int, QString>> placed;
        for (const auto* chip : desk().trends()->findChildren<QPushButton*>())
            if (chip->isVisible() && chip->property("stack").isValid()) placed.emplace_back(chip->x(), chip->property("stack").toString());
        std::ranges::sort(placed);
        for (const auto& [x, name] : placed) names << name;
        return names;
    };
    const auto choices = [](const QComboBox* box) {
        QStringList names;
        for (int i = 0; i < box->count(); ++i)
            if (asSetUp.contains(box->itemText(i))) names << box->itemText(i);
        return names;
    };
    for (const QStringList& wanted : {asSetUp, moved}) {
        if (wanted == moved) {
            desk().shelf()->chooseStack(asSetUp[0]);
            desk().shelf()->action(ui::ActionId::moveStackRight)->trigger(); // by its key: above
            household().finishWrites();
            settle();
        }
        EXPECT_EQ(orderOf(desk()), wanted);
        desk().showPage(Desk::Page::trends);
        ASSERT_TRUE(QTest::qWaitFor([&] { return chips() == wanted; }, patience)) << chips().join(u' ').toStdString();
        desk().showPage(Desk::Page::journal);
        settle();
        EXPECT_EQ(choices(window_->findChild<QComboBox*>(QStringLiteral("stackFilter"))), wanted);
        window_->action(ui::ActionId::stackSheet)->trigger();
        auto* sheet = window_->findChild<QComboBox*>(QStringLiteral("sheetStack"));
        ASSERT_NE(sheet, nullptr);
        EXPECT_EQ(choices(sheet), wanted);
        sheet->window()->close();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        settle();
        QStringList due;
        for (const auto& line : desk().due()->lines())
            if (const QString name = QString::fromStdString(line.stack); !due.contains(name)) due << name;
        EXPECT_EQ(due, wanted);
        std::vector<std::pair<int, QString>> headings;
        for (const auto* label : desk().due()->findChildren<QLabel*>())
            if (label->isVisible() && asSetUp.contains(label->text())) headings.emplace_back(label->mapTo(desk().due(), QPoint{}).y(), label->text());
        std::ranges::sort(headings);
        QStringList headed;
        for (const auto& [y, name] : headings) headed << name;
        EXPECT_EQ(headed, wanted);
        QStringList labelled;
        for (const paper::Label& label : paper::labelsOf(household().journal()->replay, tests::sampleToday(), household().stackOrder()))
            if (!labelled.contains(label.stack)) labelled << label.stack;
        EXPECT_EQ(labelled, wanted);
        desk().showPage(Desk::Page::shelf);
        settle();
    }
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
