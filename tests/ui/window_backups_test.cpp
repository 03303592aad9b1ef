// A chosen folder for backups that is not there is told for what it is, never as if there were no backups.
#include "tests/ui/window_fixture.h"

#include "core/household/backup_list.h"
#include "ui/window/backups_view.h"

#include <QFile>
#include <QTreeWidget>

namespace tierloam::window {

namespace {

class Backups : public WindowTest {
protected:
    /// A household that was there before, with its backups in `stick`.
    QString keptOnAStick()
    {
        openSample();
        const QString file = household().path();
        EXPECT_TRUE(QDir{folder_.path()}.mkdir(QStringLiteral("stick")));
        answers_.files << path(QStringLiteral("stick"));
        window_->action(ui::ActionId::backupFolder)->trigger();
        household().finishWrites();
        make();
        EXPECT_TRUE(window_->openFile(file));
        show();
        return file;
    }
    void change(const char* name)
    {
        household().rename(QString::fromLatin1(name));
        household().finishWrites();
        settle();
    }
    BackupsView* shown()
    {
        window_->action(ui::ActionId::backups)->trigger();
        auto* view = window_->findChild<BackupsView*>();
        EXPECT_TRUE(listed(view));
        return view;
    }
    QLabel* label(BackupsView* view, const char* name) { return view->findChild<QLabel*>(QString::fromLatin1(name)); }
    bool listed(BackupsView* view) { return QTest::qWaitFor([&] { return !label(view, "backupsLine")->text().contains(QStringLiteral("Looking")); }, patience); }
    int count(BackupsView* view) { return view->findChild<QTreeWidget*>()->topLevelItemCount(); }
};

}

TEST_F(Backups, AChosenFolderThatIsNotThereIsToldAndLookedForAgain)
{
    keptOnAStick();
    change("Mill"); // the day's backup, on the stick
    ASSERT_TRUE(QDir{folder_.path()}.rename(QStringLiteral("stick"), QStringLiteral("pocket")));
    BackupsView* view = shown();
    EXPECT_EQ(count(view), 0);
    EXPECT_FALSE(view->findChild<QPushButton*>(QStringLiteral("callOffRestore"))->isVisible()) << "there is nothing to call off";
    ASSERT_TRUE(label(view, "backupsFolder")->isVisible());
    const QString told = label(view, "backupsFolder")->text();
    EXPECT_TRUE(told.contains(QStringLiteral("not there")) && told.contains(path(QStringLiteral("stick")))) << told.toStdString();
    EXPECT_TRUE(told.contains(QStringLiteral("beside the household's file"))) << told.toStdString();
    EXPECT_FALSE(label(view, "backupsLine")->text().contains(QStringLiteral("yet"))) << label(view, "backupsLine")->text().toStdString();
    ASSERT_TRUE(QDir{folder_.path()}.rename(QStringLiteral("pocket"), QStringLiteral("stick")));
    click(button("lookForBackups", view));
    ASSERT_TRUE(listed(view));
    EXPECT_EQ(count(view), 1);
    EXPECT_FALSE(label(view, "backupsFolder")->isVisible());
    EXPECT_FALSE(view->findChild<QPushButton*>(QStringLiteral("lookForBackups"))->isVisible());
    EXPECT_FALSE(view->findChild<QPushButton*>(QStringLiteral("otherBackupFolder"))->isVisible());
    view->close();
}

TEST_F(Backups, MeanwhileTheyLieBesideTheFileAndAnotherFolderCanBeChosen)
{
    keptOnAStick();
    ASSERT_TRUE(QDir{path(QStringLiteral("stick"))}.removeRecursively());
    change("Mill");
    BackupsView* view = shown();
    EXPECT_EQ(count(view), 1) << "the day's, beside the file";
    EXPECT_TRUE(label(view, "backupsFolder")->isVisible()) << "told though there are some";
    ASSERT_TRUE(QDir{folder_.path()}.mkdir(QStringLiteral("drawer")));
    answers_.files << path(QStringLiteral("drawer"));
    click(button("otherBackupFolder", view));
    EXPECT_EQ(household().backupFolder(), path(QStringLiteral("drawer")));
    ASSERT_TRUE(listed(view));
    EXPECT_EQ(count(view), 1);
    EXPECT_FALSE(label(view, "backupsFolder")->isVisible());
    answers_.files << QString{};
    view->close();
}

TEST_F(Backups, OfAFileThatIsNotOpenTheyAreLookedForWhereSaid)
{
    const QString file = keptOnAStick();
    change("Mill");
    make();
    ASSERT_TRUE(QDir{folder_.path()}.rename(QStringLiteral("stick"), QStringLiteral("pocket")));
    QFile bytes{file};
    ASSERT_TRUE(bytes.open(QIODevice::ReadWrite));
    ASSERT_TRUE(bytes.resize(bytes.size() / 2));
    bytes.close();
    show();
    EXPECT_FALSE(window_->openFile(file));
    BackupsView* view = shown();
    ASSERT_TRUE(label(view, "backupsFolder")->isVisible());
    answers_.files << path(QStringLiteral("pocket"));
    click(button("otherBackupFolder", view));
    ASSERT_TRUE(listed(view));
    EXPECT_EQ(count(view), 1);
    view->close();
}

}
