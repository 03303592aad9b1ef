#include "tests/ui/window_fixture.h"

#include "ui/window/due_line.h"
#include "ui/forms/action_form.h"
#include "ui/shelf/form_host.h"
#include "ui/shelf/stack_column.h"
#include "ui/window/due_acts.h"
#include "ui/window/system_scheme.h"

#include <QMenu>
#include <QMenuBar>
#include <QTableView>

namespace tierloam::window {

TEST_F(WindowTest, FeedByOneClickIsWrittenAndUndoTakesItBack)
{
    openSample();
    const std::size_t before = entries();
    auto* column = desk().shelf()->board()->column("Scullery");
    ASSERT_NE(column, nullptr);
    click(column->feedButton());
    ASSERT_TRUE(QTest::qWaitFor([&] { return entries() > before && household().journal()->pending.empty(); }, patience));
    const auto& last = household().journal()->entries.back();
    EXPECT_EQ(last.stack, "Scullery");
    EXPECT_EQ(last.date.day, tests::sampleToday());
    EXPECT_TRUE(desk().savedText().startsWith(QStringLiteral("Saved 18:42: Feed ")) && desk().savedText().contains(QStringLiteral("Scullery"))) << desk().savedText().toStdString();
    ASSERT_TRUE(QTest::qWaitFor([&] { return window_->action(ui::ActionId::undo)->isEnabled(); }, patience));
    EXPECT_TRUE(window_->action(ui::ActionId::undo)->text().contains(household().undoStack()->undoText()));
    press("Ctrl+Z");
    EXPECT_TRUE(written(before));
    press("Ctrl+Shift+Z");
    EXPECT_TRUE(QTest::qWaitFor([&] { return entries() > before; }, patience));
}

TEST_F(WindowTest, PagesAreReachedByKeyAndByTheRail)
{
    openSample();
    press("Ctrl+2");
    EXPECT_EQ(desk().page(), Desk::Page::trends);
    EXPECT_TRUE(desk().trends()->isVisible());
    press("Ctrl+4");
    EXPECT_TRUE(desk().journal()->isVisible());
    QStringList names;
    for (auto* rail : window_->findChildren<QPushButton*>()) {
        if (!rail->property("railButton").toBool() || !rail->isVisible()) continue;
        names << rail->accessibleName();
        if (rail->accessibleName() == QStringLiteral("Shelf")) QTest::mouseClick(rail, Qt::LeftButton);
    }
    EXPECT_EQ(names, (QStringList{QStringLiteral("Shelf"), QStringLiteral("Trends"), QStringLiteral("Rotation"), QStringLiteral("Journal"), QStringLiteral("Materials"), QStringLiteral("Handbook")}));
    // One order for the rail, the keys and the menu.
    QStringList inMenu;
    for (int page = 1; page <= 6; ++page)
        for (const ui::ActionRow& row : ui::actionTable())
            if (QString::fromLatin1(row.keys).startsWith(QStringLiteral("Ctrl+%1").arg(page)) && row.where == ui::Where::window && QString::fromLatin1(row.name).startsWith(QStringLiteral("page"))) inMenu << ui::actionName(row.id);
    EXPECT_EQ(inMenu, names) << "the keys";
    inMenu.clear();
    for (const QMenu* menu : window_->menuBar()->findChildren<QMenu*>()) {
        if (!menu->actions().contains(window_->action(ui::ActionId::pageShelf))) continue;
        for (const QAction* each : menu->actions())
            if (each->objectName().startsWith(QStringLiteral("page"))) inMenu << QString{each->text()}.remove(u'&');
    }
    EXPECT_EQ(inMenu, names) << "the menu";
    EXPECT_TRUE(desk().shelf()->isVisible());
    EXPECT_EQ(window_->windowTitle(), QStringLiteral("mill – Tierloam"));
}

TEST_F(WindowTest, ActOfAStackChosenInTheMenuOnAnotherPageOpensWhereTheStackIs)
{
    openSample();
    press("Ctrl+2");
    QAction* check = desk().shelf()->action(ui::ActionId::check);
    ASSERT_NE(check, nullptr);
    ASSERT_TRUE(check->isEnabled());
    check->trigger();
    EXPECT_EQ(desk().page(), Desk::Page::shelf);
    auto* form = qobject_cast<forms::ActionForm*>(desk().shelf()->host()->content());
    ASSERT_NE(form, nullptr);
    EXPECT_EQ(form->kind(), forms::FormKind::check);
    EXPECT_TRUE(form->isAncestorOf(QApplication::focusWidget())) << "one can go on typing";
}

TEST_F(WindowTest, DueListWritesAtOnceAndOpensFormsForTheRest)
{
    openSample();
    ASSERT_GT(desk().due()->count(), 0);
    bool written = false, opened = false;
    for (const auto& line : std::vector{desk().due()->lines()}) {
        const std::size_t before = entries();
        QPushButton* act = nullptr;
        for (auto* each : desk().due()->findChildren<QPushButton*>(QStringLiteral("dueButton"))) {
            if (each->isVisible() && each->property("line").toString() == lineKey(line)) act = each;
        }
        ASSERT_NE(act, nullptr) << line.text;
        EXPECT_FALSE(act->accessibleName().isEmpty());
        click(act);
        if (dueAct(household(), line)) {
            EXPECT_TRUE(QTest::qWaitFor([&] { return entries() > before && household().journal()->pending.empty(); }, patience));
            written = true;
        } else {
            auto* form = qobject_cast<forms::ActionForm*>(desk().shelf()->host()->content());
            ASSERT_NE(form, nullptr) << line.text;
            EXPECT_EQ(form->stack().toStdString(), line.stack);
            EXPECT_EQ(entries(), before) << "a form writes nothing before it is accepted";
            opened = true;
            desk().shelf()->closePanel(true);
        }
        settle();
    }
    EXPECT_TRUE(written || opened);

}

TEST_F(WindowTest, DueListMovesIntoTheRailWhenThereIsNoRoom)
{
    openSample({1440, 900});
    EXPECT_TRUE(desk().dueBeside());
    window_->resize(1000, 640);
    settle();
    EXPECT_FALSE(desk().dueBeside());
    EXPECT_FALSE(desk().due()->isVisible());
    press("F6");
    EXPECT_TRUE(desk().due()->isVisible());
    EXPECT_EQ(desk().page(), Desk::Page::due);
    EXPECT_EQ(QApplication::focusWidget()->objectName(), QStringLiteral("dueButton"));
    window_->resize(1440, 900);
    settle();
    EXPECT_TRUE(desk().dueBeside());
    EXPECT_EQ(desk().page(), Desk::Page::shelf);
}

TEST_F(WindowTest, JournalIsFilteredAsOneTypesAndEscShowsAll)
{
    openSample();
    press("Ctrl+4");
    auto* table = desk().journal()->table();
    const int all = table->model()->rowCount();
    ASSERT_EQ(all, static_cast<int>(entries()));
    press("Ctrl+F");
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("cellar fed"));
    const int some = table->model()->rowCount();
    EXPECT_GT(some, 0);
    EXPECT_LT(some, all);
    for (int row = 0; row < some; ++row) EXPECT_EQ(table->model()->index(row, 1).data().toString(), QStringLiteral("Cellar"));
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral(" nosuchword"));
    EXPECT_EQ(table->model()->rowCount(), 0);
    EXPECT_FALSE(table->isVisible()) << "a sentence stands where the table would be empty";
    press("Esc");
    EXPECT_EQ(table->model()->rowCount(), all);
}

TEST_F(WindowTest, EntriesAreDeletedFromTheKeyboardAndComeBack)
{
    openSample();
    press("Ctrl+4");
    press("Ctrl+F");
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("fed"));
    press("Return");
    auto* table = desk().journal()->table();
    ASSERT_EQ(QApplication::focusWidget(), table);
    ASSERT_EQ(desk().journal()->chosen().size(), 1u);
    const std::size_t before = entries();
    press("Del");
    ASSERT_TRUE(written(before - 1)) << notices().join(u' ').toStdString();
    ASSERT_EQ(desk().journal()->chosen().size(), 1u) << "the next row is chosen, so that Del can go on";
    press("Del");
    ASSERT_TRUE(written(before - 2));
    EXPECT_EQ(QApplication::focusWidget(), table);
    ASSERT_TRUE(QTest::qWaitFor([&] { return household().undoStack()->index() == 2; }, patience));
    press("Ctrl+Z");
    ASSERT_TRUE(written(before - 1));
    press("Ctrl+Z");
    EXPECT_TRUE(written(before));
}

TEST_F(WindowTest, DeletionThatWouldBreakLaterEntriesIsRefusedInWords)
{
    openSample();
    press("Ctrl+4");
    const auto& journal = household().journal()->entries;
    const auto setup = std::ranges::find_if(journal, [](const journal::Entry& entry) { return std::holds_alternative<journal::Setup>(entry.action); });
    desk().journal()->choose(setup->id);
    const std::size_t before = entries();
    press("Del");
    EXPECT_EQ(entries(), before);
    ASSERT_FALSE(notices().isEmpty());
    EXPECT_FALSE(notices().front().isEmpty());
}

TEST_F(WindowTest, EntryIsEditedInPlace)
{
    openSample();
    press("Ctrl+4");
    const auto& journal = household().journal()->entries;
    const auto fed = std::find_if(journal.rbegin(), journal.rend(), [](const journal::Entry& entry) { return std::holds_alternative<journal::Feed>(entry.action); });
    const journal::EntryId id = fed->id;
    desk().journal()->choose(id);
    desk().journal()->table()->setFocus();
    press("Return");
    auto* editor = window_->findChild<QWidget*>(QStringLiteral("entryEditor"));
    ASSERT_NE(editor, nullptr) << QApplication::focusWidget()->objectName().toStdString() << desk().journal()->chosen().size();
    ASSERT_TRUE(editor->isVisible());
    // The first field that has the focus is what is most often put right: the amount.
    QWidget* field = QApplication::focusWidget();
    ASSERT_TRUE(editor->isAncestorOf(field));
    QTest::keySequence(field, QKeySequence::SelectAll);
    QTest::keyClicks(field, QStringLiteral("321"));
    QTest::keyClick(field, Qt::Key_Return);
    ASSERT_TRUE(QTest::qWaitFor([&] {
        for (const journal::Entry& entry : household().journal()->entries) {
            if (entry.id == id && household().journal()->pending.empty()) return std::get<journal::Feed>(entry.action).food.value == 321.0;
        }
        return false;
    }, patience));
    EXPECT_TRUE(QTest::qWaitFor([&] { return window_->findChild<QWidget*>(QStringLiteral("entryEditor")) == nullptr; }, patience));
    EXPECT_EQ(desk().journal()->chosen(), std::vector{id});
}

TEST_F(WindowTest, ThemeAndTextSizeByKey)
{
    openSample();
    press("Ctrl+Alt+D");
    EXPECT_EQ(QApplication::palette().color(QPalette::Window), drawing::Palette::dark().ground);
    press("Ctrl++");
    press("Ctrl++");
    EXPECT_EQ(theme_->fontScale(), 150);
    press("Ctrl+-");
    EXPECT_EQ(theme_->fontScale(), 125) << "and a step back";
    press("Ctrl+0");
    EXPECT_EQ(theme_->fontScale(), 100);
    press("F11");
    EXPECT_TRUE(window_->isFullScreen());
    press("F11");
    EXPECT_FALSE(window_->isFullScreen());
    ui::Theme later;
    later.restore(*settings_);
    EXPECT_EQ(later.mode(), ui::ThemeMode::dark);
}

TEST_F(WindowTest, ColoursFollowTheDesktopWhileTheWindowStands)
{
    openSample();
    press("Ctrl+Alt+S");
    SystemScheme scheme{*theme_};
    const auto ground = [this] { return window_->grab(QRect{window_->width() / 2, window_->height() - 40, 1, 1}).toImage().pixelColor(0, 0); };
    scheme.settingChanged(QStringLiteral("org.freedesktop.appearance"), QStringLiteral("color-scheme"), QDBusVariant{1u});
    settle();
    EXPECT_TRUE(theme_->dark());
    const QColor dark = ground();
    scheme.settingChanged(QStringLiteral("org.freedesktop.appearance"), QStringLiteral("color-scheme"), QDBusVariant{2u});
    settle();
    EXPECT_FALSE(theme_->dark());
    EXPECT_GT(ground().lightness(), dark.lightness() + 100) << "the window was painted anew";
    scheme.settingChanged(QStringLiteral("org.freedesktop.appearance"), QStringLiteral("contrast"), QDBusVariant{1u});
    EXPECT_FALSE(theme_->dark()) << "another setting";
    // Desktops whose usual style is light say "no preference" when they go back from dark: then their palette counts.
    scheme.settingChanged(QStringLiteral("org.freedesktop.appearance"), QStringLiteral("color-scheme"), QDBusVariant{1u});
    settle();
    EXPECT_TRUE(theme_->dark());
    scheme.settingChanged(QStringLiteral("org.freedesktop.appearance"), QStringLiteral("color-scheme"), QDBusVariant{0u});
    settle();
    EXPECT_FALSE(theme_->dark());
    press("Ctrl+Alt+L");
    scheme.settingChanged(QStringLiteral("org.freedesktop.appearance"), QStringLiteral("color-scheme"), QDBusVariant{1u});
    EXPECT_FALSE(theme_->dark()) << "light was asked for";
}

TEST_F(WindowTest, ShortcutsPageListsEveryAction)
{
    openSample();
    press("Ctrl+K");
    auto* view = window_->findChild<QWidget*>(QStringLiteral("shortcutsView"));
    ASSERT_NE(view, nullptr);
    QStringList texts;
    for (const QLabel* label : view->findChildren<QLabel*>()) texts << label->text();
    for (const ui::ActionRow& row : ui::actionTable()) {
        EXPECT_TRUE(texts.contains(ui::actionName(row.id))) << row.name;
        EXPECT_TRUE(texts.join(u'\n').contains(ui::keysText(row.id))) << row.name;
    }
    view->close();
}

TEST_F(WindowTest, EverythingThatTakesTheFocusHasAName)
{
    openSample();
    for (const char* page : {"Ctrl+1", "Ctrl+2", "Ctrl+3"}) {
        press(page);
        settle();
        for (const QWidget* widget : window_->findChildren<QWidget*>()) {
            if (!widget->isVisible() || !(widget->focusPolicy() & Qt::TabFocus)) continue;
            const QAccessibleInterface* access = QAccessible::queryAccessibleInterface(const_cast<QWidget*>(widget));
            ASSERT_NE(access, nullptr);
            EXPECT_FALSE(access->text(QAccessible::Name).isEmpty())
                << page << ": " << widget->metaObject()->className() << ' ' << widget->objectName().toStdString();
        }
    }
}

}
